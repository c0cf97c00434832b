"""What a call costs beside what one would have written instead. Ratios within one run; single times mean little.

    python benchmarks/models.py
"""

from __future__ import annotations

import math
import timeit
from collections.abc import Callable

import numpy as np

import wortmath as wm


def best(run: Callable[[], object], number: int) -> float:
    """Seconds per call: the fastest of five."""
    return min(timeit.repeat(run, number=number, repeat=5)) / number


def row(what: str, ours: float, theirs: float, instead: str, per: float = 1.0, unit: str = "ns") -> None:
    print(f"{what:46} {1e9 * ours / per:9.2f} {unit}  {theirs / ours:6.2f} x  {instead}")


def asbc(s):  # type: ignore[no-untyped-def]
    return ((135.997 * s - 630.272) * s + 1111.14) * s - 616.868


def tinseth(g, t):  # type: ignore[no-untyped-def]
    return 1.65 * 0.000125 ** (g - 1.0) * (1.0 - np.exp(-0.04 * t)) / 4.15


def tinseth_float(g: float, t: float) -> float:
    return float(1.65 * 0.000125 ** (g - 1.0) * (1.0 - math.exp(-0.04 * t)) / 4.15)


def main() -> None:
    print(f"instruction set {wm._core.instruction_set()}; more than 1 x: ours is faster\n")
    from_gravity, utilisation = wm.extract.from_gravity, wm.bitterness.utilisation
    n = 200_000
    print("one call")
    row("extract.from_gravity(1.048)", best(lambda: from_gravity(1.048), n), best(lambda: math.exp(1.048), n), "math.exp")
    row("extract.from_gravity(1.048)", best(lambda: from_gravity(1.048), n), best(lambda: asbc(1.048), n), "the formula in Python")
    row("bitterness.utilisation(1.05, 60.0)", best(lambda: utilisation(1.05, 60.0), n), best(lambda: tinseth_float(1.05, 60.0), n), "the formula in Python")
    for size in (1_000, 1_000_000):
        g, t = np.linspace(1.03, 1.09, size), np.linspace(1.0, 90.0, size)
        k = max(5, 5_000_000 // size // 5)
        print(f"\narrays of {size}, per element")
        row("extract.from_gravity(g)", best(lambda: from_gravity(g), k), best(lambda: asbc(g), k), "Horner in NumPy", size)
        row("bitterness.utilisation(g, 60.0)", best(lambda: utilisation(g, 60.0), k), best(lambda: tinseth(g, 60.0), k), "NumPy", size)
        row("bitterness.utilisation(g, t)", best(lambda: utilisation(g, t), k), best(lambda: tinseth(g, t), k), "NumPy", size)
        g32 = g.astype(np.float32)
        row("bitterness.utilisation(g, 60.0), float32", best(lambda: utilisation(g32, 60.0), k), best(lambda: tinseth(g32, np.float32(60.0)), k), "NumPy", size)
        gs = np.repeat(g, 2)[::2]
        row("bitterness.utilisation(g[::2], 60.0)", best(lambda: utilisation(gs, 60.0), k), best(lambda: tinseth(gs, 60.0), k), "NumPy", size)
    batch = wm.batch.read(wm.batch.demo_path())
    text = wm.batch.demo_path().read_text(encoding="utf-8")
    print("\na batch")
    print(f"{'read the demo file':46} {1e6 * best(lambda: wm.batch.read_text(text), 50):9.1f} us")
    print(f"{'forecast it, as a dict':46} {1e6 * best(batch.forecast, 50):9.1f} us")


if __name__ == "__main__":
    main()
