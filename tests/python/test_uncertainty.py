"""Uncertainty and reconciliation against the tables of tests/reference/uncertainty, each of which names its source, and
against two general-purpose packages on the same inputs (uncertainties, scipy)."""

from __future__ import annotations

import copy
import math
import warnings

import numpy as np
import pytest

import wortmath as wm
from expression import read_table
from wortmath import _core, reconcile
from wortmath.uncertainty import (Input, Instrument, budget, coverage_factor, covariance, dof, interval, monte_carlo, multivariate, type_a, type_b)

parts = _core._uncertainty.parts


def rows(name: str) -> list[dict[str, str]]:
    found: list[dict[str, str]] = read_table(f"uncertainty/{name}.csv")[1]
    assert found
    return found


def values(name: str, key: str = "quantity") -> dict[str, tuple[float, float]]:
    return {r[key]: (float(r["value"]), float(r["tolerance"])) for r in rows(name)}


def check(table: dict[str, tuple[float, float]], **got: float) -> None:
    for name, x in got.items():
        want, tolerance = table.pop(name)
        assert abs(x - want) <= tolerance * (1 + 1e-9), (name, x, want)


# ---- tables ----------------------------------------------------------------------------------------------------------

@pytest.mark.parametrize("row", rows("student_t"), ids=lambda r: r["dof"])
def test_student(row: dict[str, str]) -> None:
    # 68.27 and 95.45 % are one and two standard deviations of a normal quantity, in full
    for column, p in (("k_6827", math.erf(1 / math.sqrt(2))), ("k_95", 0.95), ("k_9545", math.erf(math.sqrt(2))), ("k_99", 0.99)):
        assert coverage_factor.student(p, float(row["dof"])) == pytest.approx(float(row[column]), abs=1e-6)


@pytest.mark.parametrize("row", rows("chi_square"), ids=lambda r: r["dof"])
def test_chi_square(row: dict[str, str]) -> None:
    n = int(row["dof"])
    for column, p in (("q_90", 0.90), ("q_95", 0.95), ("q_99", 0.99)):
        q = float(row[column])
        assert parts.ellipsoid_factor(p, n) == pytest.approx(math.sqrt(q), abs=1e-6)
        assert parts.chi_square(q, n) == pytest.approx(1 - p, abs=1e-6)


def test_effective_dof() -> None:
    for r in rows("effective_dof"):
        assert dof.welch_satterthwaite([float(r["u1"]), float(r["u2"])], [float(r["dof1"]), float(r["dof2"])]) == pytest.approx(float(r["dof_effective"]), abs=0.05)


@pytest.mark.parametrize("row", rows("numerical_tolerance"), ids=lambda r: r["value"])
def test_numerical_tolerance(row: dict[str, str]) -> None:
    assert parts.tolerance_numerical(float(row["value"]), int(row["digits"])) == pytest.approx(float(row["tolerance"]), rel=1e-12)


@pytest.mark.parametrize("row", rows("sample_intervals"), ids=lambda r: r["size"])
def test_sample_intervals(row: dict[str, str]) -> None:
    m, p = int(row["size"]), float(row["probability"])
    y = -np.log(1 - (np.arange(1, m + 1) - 0.5) / m)
    np.random.default_rng(1).shuffle(y)
    low, high = interval.symmetric(y, p)
    assert (low, high) == pytest.approx((float(row["symmetric_low"]), float(row["symmetric_high"])), abs=1e-9)
    low, high = interval.shortest(y, p)
    assert (low, high) == pytest.approx((float(row["shortest_low"]), float(row["shortest_high"])), abs=1e-9)


@pytest.mark.parametrize("row", rows("shared_instrument"), ids=lambda r: r["x1"] + "-" + r["u_scale"])
def test_shared_instrument(row: dict[str, str]) -> None:
    x1, x2, r, o, s = (float(row[k]) for k in ("x1", "x2", "u_reading", "u_offset", "u_scale"))
    v = covariance.shared_terms([x1, x2], r, o, s)
    assert math.sqrt(v[0, 0] + v[1, 1] - 2 * v[0, 1]) == pytest.approx(float(row["u_difference"]), rel=1e-8)
    assert math.sqrt(v[0, 0] + v[1, 1]) == pytest.approx(float(row["u_if_independent"]), rel=1e-8)
    assert v[0, 1] / math.sqrt(v[0, 0] * v[1, 1]) == pytest.approx(float(row["correlation"]), rel=1e-8)
    # the same through inputs that share an instrument, in a budget and by drawing
    tool = Instrument(r, o, s, name="tool")
    inputs = [tool.read(x1, "a"), tool.read(x2, "b")]
    b = budget.first_order(lambda a, b: a - b, inputs)
    assert b.uncertainty == pytest.approx(float(row["u_difference"]), rel=1e-8)
    assert b.names == ["a", "tool offset", "tool scale", "b"]
    assert list(b.sensitivities) == pytest.approx([1, 0, x1 - x2, -1], abs=1e-9)
    assert monte_carlo.adaptive(lambda a, b: a - b, inputs).uncertainty == pytest.approx(float(row["u_difference"]), rel=0.01)


def _end_gauge() -> tuple[object, list[Input]]:
    inputs = [Input(50000623, 25, 18, name="l_s"), Input(215, 9.7, 25.6, name="d"), Input.rectangular(11.5e-6, 2e-6, name="alpha_s"), Input(0, type_b.rectangular(1e-6), 50, name="d_alpha"),
              Input(0, type_b.rectangular(0.05), 2, name="d_theta"), Input(-0.1, 0.41, name="theta")]
    return lambda ls, d, a, da, dt, t: ls + d - ls * (da * t + a * dt), inputs


def test_end_gauge_of_gum_h1() -> None:
    t = values("gum_h1")
    model, inputs = _end_gauge()
    b = budget.first_order(model, inputs)
    with pytest.warns(RuntimeWarning, match="second-order"):
        second = budget.second_order(model, inputs)
    of = dict(zip(b.names, b.components))
    u_d = budget.first_order([1, 1, 1], [5.8, 3.9, 6.7])
    check(t, l=b.value, u_first_order=b.uncertainty, u_second_order=second.uncertainty, component_l_s=of["l_s"], component_d_theta=of["d_theta"], component_d_alpha=of["d_alpha"],
          u_d=u_d.uncertainty, dof_d=dof.welch_satterthwaite(u_d.components, [24, 5, 8]), dof_effective=b.dof)
    assert not t, f"rows without a check: {list(t)}"
    # as the head of the table has them, with the comparator's 9.68 in full
    inputs[1] = Input(215, u_d.uncertainty, dof.welch_satterthwaite(u_d.components, [24, 5, 8]), name="d")
    b = budget.first_order(model, inputs)
    with pytest.warns(RuntimeWarning, match="second-order"):
        second = budget.second_order(model, inputs)
    assert b.uncertainty == pytest.approx(31.66, abs=0.005) and b.dof == pytest.approx(16.75, abs=0.005)
    # The head's 33.81 leaves out the product of alpha_s and d_theta, which JCGM 100, H.1.7 counts (1.7 nm beside 11.7 nm).
    ls = 50000623
    assert second.uncertainty == pytest.approx(math.sqrt(b.uncertainty ** 2 + (ls * type_b.rectangular(1e-6) * 0.41) ** 2 + (ls * type_b.rectangular(2e-6) * type_b.rectangular(0.05)) ** 2), rel=1e-6)


def test_impedance_of_gum_h2() -> None:
    t = values("gum_h2")
    data = {k: [float(r[k]) for r in rows("gum_h2_data")] for k in ("V", "I", "phi")}
    means = {k: type_a.mean(x) for k, x in data.items()}
    scaled = {"V": 1.0, "I": 1e-3, "phi": 1.0}
    v = np.array([[parts.type_a_covariance_means(data[a], data[b]) * scaled[a] * scaled[b] for b in data] for a in data])
    u = np.sqrt(np.diag(v))
    inputs = [Input(means[k].mean * scaled[k], float(w), name=k) for k, w in zip(data, u)]
    models = [lambda V, I, p: V / I * math.cos(p), lambda V, I, p: V / I * math.sin(p), lambda V, I, p: V / I]
    j = multivariate.first_order(models, inputs, v / np.outer(u, u))
    w, r = np.sqrt(np.diag(j.covariance)), j.correlations
    check(t, R=j.values[0], X=j.values[1], Z=j.values[2], u_R=w[0], u_X=w[1], u_Z=w[2], r_RX=r[0, 1], r_RZ=r[0, 2], r_XZ=r[1, 2])
    assert not t
    assert j.ellipsoid_factor == pytest.approx(math.sqrt(7.814728), abs=1e-6)
    # the same from the numbers
    V, I, p = (i.value for i in inputs)
    z = V / I
    jacobian = [[math.cos(p) / I, -z * math.cos(p) / I, -z * math.sin(p)], [math.sin(p) / I, -z * math.sin(p) / I, z * math.cos(p)], [1 / I, -z / I, 0]]
    assert multivariate.first_order(jacobian, v).covariance == pytest.approx(j.covariance, rel=1e-4)
    b = budget.first_order(models[0], inputs, v / np.outer(u, u))
    assert b.uncertainty == pytest.approx(w[0], rel=1e-9) and math.isnan(b.dof) and b.cross_share == pytest.approx(1 - sum(b.shares))


# Table H.6 of JCGM 100, H.3, from memory: a thermometer calibrated at 11 points; the correction at 30 degC is -0.1494 with u 0.0041.
def test_line_of_gum_h3() -> None:
    t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511]
    b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160]
    a, slope, u_a, u_b, r, s, n = parts.fit_line([x - 20 for x in t], b)
    assert (a, slope) == (pytest.approx(-0.1712, abs=5e-5), pytest.approx(0.00218, abs=5e-6))
    assert (u_a, u_b, r, s, n) == (pytest.approx(0.0029, abs=5e-5), pytest.approx(0.00067, abs=5e-6), pytest.approx(-0.930, abs=5e-4), pytest.approx(0.0035, abs=5e-5), 9)
    assert math.sqrt(u_a ** 2 + 100 * u_b ** 2 + 20 * r * u_a * u_b) == pytest.approx(0.0041, abs=5e-5)


def test_mass_of_jcgm_101() -> None:
    t = values("jcgm101_mass")
    inputs = [Input(100000, 0.05), Input(1.234, 0.02), Input.rectangular(1.2, 0.1), Input.rectangular(8000, 1000), Input.rectangular(8000, 50)]

    def model(m, d, a, w, r):  # type: ignore[no-untyped-def]
        return (m + d) * (1 + (a - 1.2) * (1 / w - 1 / r)) - 100000

    b = budget.first_order(model, inputs)
    with pytest.warns(RuntimeWarning, match="second-order"):
        second = budget.second_order(model, inputs)
    mc = monte_carlo.adaptive(model, inputs, interval="shortest")
    assert mc.converged and mc.refused == 0
    check(t, estimate=b.value, u_first_order=b.uncertainty, u_second_order=second.uncertainty, u_monte_carlo=mc.uncertainty, shortest_low=mc.low, shortest_high=mc.high)
    assert not t
    k = coverage_factor.student(0.95)
    low, high = interval.shortest(mc.samples)
    assert (low, high) == (mc.low, mc.high)
    assert not parts.agreement_jcgm_101((b.value - k * b.uncertainty, b.value + k * b.uncertainty), (mc.low, mc.high), b.uncertainty, 1)[0]


@pytest.mark.parametrize("row", rows("jcgm101_additive"), ids=lambda r: r["case"])
def test_sum_of_jcgm_101(row: dict[str, str]) -> None:
    wide = Input.rectangular(0, 10 * math.sqrt(3))
    one = Input if row["case"] == "four_normal" else lambda x, u: Input.rectangular(x, u * math.sqrt(3))
    inputs = [one(0, 1) for _ in range(3)] + [wide if row["case"] == "one_wide_rectangular" else one(0, 1)]
    mc = monte_carlo.adaptive(lambda a, b, c, d: a + b + c + d, inputs, seed=2)
    assert mc.uncertainty == pytest.approx(float(row["u"]), abs=float(row["tolerance_u"]))
    for end in (-mc.low, mc.high):
        assert end == pytest.approx(float(row["half_width_95"]), abs=float(row["tolerance_half_width"]))


def test_phase_near_zero_of_jcgm_102() -> None:
    for r in rows("jcgm102_polar"):
        inputs = [Input(float(r["re"]), 0.01), Input(0, 0.01)]
        given = [[1, float(r["r"])], [float(r["r"]), 1]]
        mc = monte_carlo.adaptive([np.hypot, lambda re, im: np.arctan2(im, re)], inputs, given)
        assert mc.value[0] == pytest.approx(float(r["magnitude"]), abs=0.0005) and mc.uncertainty[0] == pytest.approx(float(r["u_magnitude"]), abs=0.0005)
        assert mc.value[1] == pytest.approx(float(r["phase"]), abs=0.02) and mc.uncertainty[1] == pytest.approx(float(r["u_phase"]), abs=0.005)
        assert mc.samples.shape == (2, mc.trials) and mc.covariance.shape == (2, 2)
        # first order says 10 rad for an angle that cannot leave half a turn
        re = float(r["re"])
        assert budget.first_order([0, 1 / re], [0.01, 0.01]).uncertainty == pytest.approx(10, abs=0.01)


def test_viscometer_of_tn1900() -> None:
    t = values("tn1900_viscometer")
    inputs = [Input(4.63, 0.0463), Input(61.0, 6.1), Input(36.6, 5.49), Input(2217, 0.5), Input(1180, 0.5), Input(810, 0.5)]

    def model(mu_c, t_m, t_c, rho_b, rho_m, rho_c):  # type: ignore[no-untyped-def]
        return mu_c * t_m * (rho_b - rho_m) / (t_c * (rho_b - rho_c))

    mc = monte_carlo.adaptive(model, inputs)
    b = budget.first_order(model, inputs)
    check(t, estimate_first_order=b.value, mean_monte_carlo=mc.value, u_monte_carlo=mc.uncertainty, low_95=mc.low, high_95=mc.high)
    assert not t
    with pytest.warns(RuntimeWarning):
        second = budget.second_order(model, inputs)
    # the bias explains why the two means differ (5.82 against 5.69)
    assert b.value + second.bias == pytest.approx(5.82, abs=0.015)


def test_logarithm_of_npl() -> None:
    t = values("npl_logarithm")
    x = Input.rectangular(0.6, 0.5)
    first = budget.first_order([1 / x.value], [x.uncertainty])
    mc = monte_carlo.adaptive(math.log, [x], interval="shortest")
    check(t, estimate_first_order=math.log(x.value), u_first_order=first.uncertainty, upper_95_first_order=math.log(x.value) + coverage_factor.student(0.95) * first.uncertainty,
          mean=mc.value, u=mc.uncertainty, shortest_low=mc.low, shortest_high=mc.high)
    assert not t


def test_instrument_limits() -> None:
    # Each row once; the proposals of the presets follow from the printed limits as a rectangular limit does.
    t = {r["instrument"]: r for r in rows("instrument_limits")}
    limit = {name: float(r["limit"]) for name, r in t.items()}
    assert Instrument.preset("fine_hydrometer").offset_uncertainty == pytest.approx(type_b.rectangular(limit["plain_sg_hydrometer"]), abs=5e-5)
    assert Instrument.preset("hydrometer").offset_uncertainty == pytest.approx(type_b.rectangular(limit["thermohydrometer_sg"]), abs=5e-5)
    assert Instrument.preset("hydrometer").offset_uncertainty == pytest.approx(type_b.rectangular(limit["iso649_M50"]), abs=5e-5)
    assert Instrument.preset("household_hydrometer").offset_uncertainty == pytest.approx(type_b.rectangular(limit["household_hydrometer"]), abs=5e-5)
    assert Instrument.preset("kitchen_thermometer").offset_uncertainty == pytest.approx(type_b.rectangular(limit["kitchen_thermometer"]), abs=0.05)
    assert Instrument.preset("thermometer").offset_uncertainty == pytest.approx(type_b.rectangular(limit["thermometer_in_thermohydrometer"] / 1.8), abs=0.05)
    assert Instrument.preset("hand_refractometer").offset_uncertainty == pytest.approx(type_b.rectangular(limit["hand_refractometer"]), abs=0.005)
    assert Instrument.preset("volume_marks").scale_uncertainty == pytest.approx(type_b.rectangular(limit["kettle_mark"] / 100), abs=5e-4)
    assert Instrument.preset("litre_cylinder").offset_uncertainty == pytest.approx(type_b.rectangular(limit["measuring_cylinder_class_b_1000mL"] / 1000), abs=3e-4)
    assert 0.003 == pytest.approx(type_b.rectangular(limit["hop_contract_alpha"] / 100 * 0.10), abs=2e-4)
    # one HPLC result, 0.2 % of the packet's 10 %: below the trade tolerance
    assert type_b.critical_difference(limit["alpha_acids_hplc"]) == pytest.approx(0.2056, abs=1e-4)
    assert type_b.expanded(limit["nist_calibrated_hydrometer"]) < limit["calibrated_hydrometer_in_use"] < 0.0004
    assert type_b.rectangular(2 * limit["scale_class_iii_to_500e"]) == pytest.approx(0.6, abs=0.03) and limit["scale_class_iii_full"] == 1.5
    assert len(t) == 15


def test_reconcile_flows() -> None:
    t = rows("reconcile_flows")
    y = [float(r["measured"]) for r in t]
    a = [[1, -1, -1, 0, 0, 0], [0, 1, 0, -1, 0, 0], [0, 0, 1, 0, -1, 0], [0, 0, 0, 1, 1, -1]]
    r = reconcile.linear.least_squares(y, np.eye(6), a, np.zeros(4))
    assert list(r.values) == pytest.approx([float(x["reconciled"]) for x in t], abs=0.005)
    assert r.objective == pytest.approx(6.4075, abs=5e-5) and r.dof == 4
    # removing the one fault lowers the objective by z^2
    for i in range(6):
        off = np.array(y)
        off[i] -= r.bias[i]
        assert reconcile.linear.least_squares(off, np.eye(6), a, np.zeros(4)).objective == pytest.approx(r.objective - r.z[i] ** 2, abs=1e-9)


U_BATCH = np.array([0.03, 0.15, 0.15, 0.03, 0.20, 0.10])
CASES = {"consistent": [2.760, 12.30, 22.60, 8.00, 20.45, 13.55], "unmixed_sample": [2.760, 12.30, 22.60, 8.00, 20.45, 12.10]}


def _balances(x, z):  # type: ignore[no-untyped-def]
    e, k, p, w, f, q = x
    return [e - k * p / 100, k + w - f, k * p / 100 - f * q / 100]


@pytest.mark.parametrize("case", CASES)
def test_reconcile_batch(case: str) -> None:
    t = [r for r in rows("reconcile_batch") if r["case"] == case]
    grams = np.array([1000, 1000, 1, 1000, 1000, 1])
    for r, unit in ((reconcile.nonlinear.least_squares(_balances, CASES[case], np.diag(U_BATCH ** 2)), 1),
                    (reconcile.partial_boil.least_squares(CASES[case] * grams, U_BATCH * grams), grams)):
        for i, row in enumerate(t):
            for got, column, tolerance in ((r.values / unit, "reconciled", 5e-6), (r.uncertainties / unit, "u_reconciled", 5e-6), (r.z, "z", 5e-5), (r.bias / unit, "bias_if_only_fault", 5e-5)):
                assert got[i] == pytest.approx(float(row[column]), abs=tolerance * 1.01), (row["reading"], column)
        assert r.objective == pytest.approx(float(t[0]["objective"]), abs=5e-5)
        assert r.probability == pytest.approx(float(t[0]["p_value"]), rel=1e-3) and r.dof == 3
        assert r.critical_z == pytest.approx(2.631, abs=5e-4)
        assert _core._uncertainty.parts.sidak(0.05, 1) == pytest.approx(1.960, abs=5e-4)
    if case == "unmixed_sample":
        assert list(r.balance_z) == pytest.approx([-0.39, -0.60, 6.06], abs=0.005)
        assert int(np.argmax(abs(r.z))) == 5
        assert [abs(x) for x in r.z[[2, 3]]] == pytest.approx([9.61, 9.85], abs=0.005)
    else:
        assert list(r.detectable_bias[[0, 1, 3, 4, 5]] / np.array(grams)[[0, 1, 3, 4, 5]]) == pytest.approx([0.11, 0.54, 0.41, 0.64, 0.36], abs=0.008)
        assert r.detectable_bias[2] == pytest.approx(0.66, abs=0.005)


def test_reconcile_batch_with_an_unmeasured_value() -> None:
    t = rows("reconcile_batch_unmeasured")
    y, u = [float(r["measured"]) for r in t[:5]], [float(r["u"]) for r in t[:5]]
    r = reconcile.nonlinear.least_squares(lambda x, z: _balances([*x, z[0]], None), y, np.diag(np.square(u)), [12.0])
    assert list(r.values) == pytest.approx([float(x["reconciled"]) for x in t[:5]], abs=5.1e-6)
    assert r.unmeasured[0] == pytest.approx(float(t[5]["reconciled"]), abs=5.1e-6) and r.unmeasured_uncertainties[0] == pytest.approx(0.08117, abs=5e-6)
    assert r.objective == pytest.approx(0.86614, abs=5e-6) and r.dof == 2
    assert list(r.z) == pytest.approx([-0.72, -0.01, 0.72, -0.84, 0.84], abs=0.005)
    assert np.isnan(r.balance_z[2]) and not np.isnan(r.balance_z[:2]).any()


# ---- outside packages ------------------------------------------------------------------------------------------------

def test_against_uncertainties() -> None:
    outside = pytest.importorskip("uncertainties")
    umath = pytest.importorskip("uncertainties.umath")

    def model(a, b, c, exp=math.exp):  # type: ignore[no-untyped-def]
        return a * b / c + exp(b / 10) - c ** 2

    # small uncertainties: half the change over 2 u is then the derivative
    inputs = [Input(2.0, 2e-5), Input(3.0, 3e-5), Input(1.5, 1e-5)]
    a, b, c = (outside.ufloat(i.value, i.uncertainty) for i in inputs)
    want = model(a, b, c, umath.exp)
    got = budget.first_order(model, inputs)
    assert got.value == pytest.approx(want.nominal_value) and got.uncertainty == pytest.approx(want.std_dev, rel=1e-8)
    for component, variable in zip(got.components, (a, b, c)):
        assert component == pytest.approx(want.error_components()[variable], rel=1e-8)
    # a quantity used twice
    x = Input(2.0, 1e-5)
    v = outside.ufloat(2.0, 1e-5)
    assert budget.first_order(lambda p, q: p * q - p, [x, copy.copy(x)]).uncertainty == pytest.approx((v * v - v).std_dev, rel=1e-8)


def test_against_scipy() -> None:
    stats = pytest.importorskip("scipy.stats")
    optimize = pytest.importorskip("scipy.optimize")
    for n in (0.7, 1, 2, 3.5, 12, 1e3, 1e6):
        for p in (0.01, 0.5, 0.95, 0.999999):
            assert coverage_factor.student(p, n) == pytest.approx(stats.t.ppf(0.5 + p / 2, n), rel=1e-9)
    for n in (1, 2, 7, 40):
        for g in (1e-9, 0.3, 8.0, 300.0, 1000.0):
            assert parts.chi_square(g, n) == pytest.approx(stats.chi2.sf(g, n), rel=1e-9)
    y = np.array(CASES["unmixed_sample"])
    found = optimize.minimize(lambda x: np.sum(((x - y) / U_BATCH) ** 2), y, constraints={"type": "eq", "fun": lambda x: _balances(x, None)}, method="SLSQP", options={"ftol": 1e-14, "maxiter": 500})
    r = reconcile.nonlinear.least_squares(_balances, y, np.diag(U_BATCH ** 2))
    assert list(r.values) == pytest.approx(list(found.x), abs=1e-4) and r.objective == pytest.approx(found.fun, rel=1e-6)


# ---- rules -----------------------------------------------------------------------------------------------------------

def test_statements() -> None:
    assert type_b.trapezoidal(1, 1) == pytest.approx(type_b.rectangular(1)) and type_b.trapezoidal(1, 0) == pytest.approx(type_b.triangular(1))
    assert type_b.log_normal(1, 2) == pytest.approx(0.389, abs=5e-4)
    for made, u in ((Input.rectangular(5, 3), type_b.rectangular(3)), (Input.triangular(5, 3), type_b.triangular(3)), (Input.arcsine(5, 3), type_b.arcsine(3)),
                    (Input.trapezoidal(5, 3, 0.4), type_b.trapezoidal(3, 0.4)), (Input.curvilinear_trapezoid(5, 3, 1), type_b.curvilinear_trapezoid(3, 1)), (Input.expanded(5, 3), 1.5),
                    (Input.resolution(5, 3), type_b.resolution(3)), (Input.critical_difference(5, 3), type_b.critical_difference(3)), (Input(5, 3, 6), 3 * math.sqrt(6 / 4)),
                    (Input.readings([4, 5, 6, 5, 5, 5, 5]), None)):
        mc = monte_carlo.adaptive(lambda x: x, [made], digits=1)
        want = u if u is not None else made.uncertainty * math.sqrt(6 / 4)
        assert mc.uncertainty == pytest.approx(want, rel=0.02), made
        assert mc.value == pytest.approx(5, abs=0.05)
    mc = monte_carlo.adaptive(lambda x: x, [Input.log_normal(5, 2)], digits=1)
    assert np.median(mc.samples) == pytest.approx(5, rel=0.01) and mc.uncertainty == pytest.approx(5 * 0.389, rel=0.03)
    assert np.mean((mc.samples > 2.5) & (mc.samples < 10)) == pytest.approx(0.95, abs=0.002)


def test_identity_of_inputs() -> None:
    x, same, other = Input(1, 0.1, name="x"), None, Input(1, 0.1)
    same = copy.copy(x)
    minus = lambda a, b: a - b  # noqa: E731
    assert budget.first_order(minus, [x, same]).uncertainty == 0 and len(budget.first_order(minus, [x, same]).names) == 1
    assert budget.first_order(minus, [x, copy.deepcopy(x)]).uncertainty == 0
    assert budget.first_order(minus, [x, other]).uncertainty == pytest.approx(0.1 * math.sqrt(2)) and budget.first_order(minus, [x, other]).names == ["x", "x2"]
    assert monte_carlo.adaptive(lambda a, b: a + b, [x, x]).uncertainty == pytest.approx(0.2, rel=0.01)
    zero = budget.first_order(minus, [x, x])
    assert all(math.isnan(s) for s in zero.shares) and math.isnan(zero.cross_share)
    og, fg = (Instrument(0.0005, 0.001, name="hydrometer"),) * 2
    inputs = [og.read(1.050, "OG"), fg.read(1.010, "FG")]
    assert budget.first_order(minus, inputs).uncertainty == pytest.approx(0.00071, abs=5e-6)
    with pytest.raises(ValueError, match="give one of the two"):
        budget.first_order(minus, inputs, [[1, 0.5], [0.5, 1]])


def test_catalogue_models() -> None:
    og, fg = (Instrument.preset("hydrometer").read(1.050),), None
    b = budget.first_order(wm.extract.from_gravity, [og[0]])
    assert b.value == wm.extract.from_gravity(1.050)
    slope = (wm.extract.from_gravity(1.0505) - wm.extract.from_gravity(1.0495)) / 0.001
    assert b.uncertainty == pytest.approx(slope * math.hypot(0.0003, 0.0006), rel=1e-4)
    mc = monte_carlo.adaptive(wm.extract.from_gravity, og)
    assert mc.uncertainty == pytest.approx(b.uncertainty, rel=0.01) and mc.value == pytest.approx(b.value, abs=0.005)
    assert fg is None


def test_refused_draws() -> None:
    mc = monte_carlo.adaptive(math.sqrt, [Input(1.0, 0.5)])
    share = 0.5 * math.erfc(2 / math.sqrt(2))
    assert mc.refused == np.isnan(mc.samples).sum() and mc.refused / mc.trials == pytest.approx(share, rel=0.1) and not mc.converged
    assert mc.upper(0.9) > np.nanquantile(mc.samples, 0.95)  # refused draws lie above
    assert mc.upper(0.99) == math.inf
    few = monte_carlo.adaptive(math.sqrt, [Input(1.0, 0.1)], digits=1)
    assert few.refused == 0 and few.converged
    with pytest.raises(ValueError, match="refused every one"):
        monte_carlo.adaptive(math.sqrt, [Input(-1.0, 0.01)])


def test_seeds_and_the_most_trials() -> None:
    x = [Input(0, 1)]
    a, b, c = (monte_carlo.adaptive(lambda v: v, x, seed=s, digits=1) for s in (7, 7, 8))
    assert (a.samples == b.samples).all() and (a.value, a.low, a.trials) == (b.value, b.low, b.trials) and a.value != c.value
    with pytest.raises(ValueError, match="100000") as e:
        monte_carlo.adaptive(lambda v: v, x, most_trials=5e4)
    assert "50000" in str(e.value)
    capped = monte_carlo.adaptive(lambda v: v, x, digits=3, most_trials=1.2e5)
    assert capped.trials == 120000 and not capped.converged
    assert (monte_carlo.adaptive(lambda v: v, x, seed=7).samples[:10000] == a.samples[:10000]).all()


def test_products_are_exact_at_second_order() -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", RuntimeWarning)
        two = budget.second_order(lambda a, b: a * b, [Input(1, 0.5), Input(1, 0.35)])
        three = budget.second_order(lambda a, b, c: a * b * c, [Input(1, 0.5), Input(1, 0.35), Input(1, 0.6)])
    assert two.uncertainty ** 2 == pytest.approx(0.5 ** 2 + 0.35 ** 2 + (0.5 * 0.35) ** 2, rel=1e-9)
    assert three.uncertainty == pytest.approx(0.947, abs=5e-4)


@pytest.mark.parametrize("call, words", [
    (lambda: type_a.mean([1.0]), "at least two"),
    (lambda: type_b.rectangular(-1), "the limit is -1"),
    (lambda: Input(1, -0.1), "the uncertainty is -0.1"),
    (lambda: type_b.log_normal(1, 1), "above 1"),
    (lambda: budget.first_order([1, 2], [1]), "as many"),
    (lambda: budget.first_order([1, 2], [1, -1]), "-1"),
    (lambda: budget.first_order([1, 2], [1, 1], [[1, 0.2], [0.3, 1]]), "not symmetric"),
    (lambda: budget.first_order([1, 2], [1, 1], [[0.9, 0.2], [0.2, 1]]), "diagonal"),
    (lambda: budget.first_order([1, 2, 3], [1, 1, 1], [[1, 0.9, -0.9], [0.9, 1, 0.9], [-0.9, 0.9, 1]]), "negative eigenvalue"),
    (lambda: coverage_factor.student(1.0), "between 0 and 1"),
    (lambda: coverage_factor.student(0.0), "between 0 and 1"),
    (lambda: interval.symmetric([1, 2, 3], 0.95), "too few"),
    (lambda: interval.shortest([1.0, math.nan] * 100, 0.95), "not a number"),
    (lambda: Instrument.preset("spoon"), "known: fine_hydrometer"),
    (lambda: monte_carlo.adaptive(lambda x: x, [Input.readings([1, 2, 3])]), "four readings"),
    (lambda: monte_carlo.adaptive(lambda x, y: x, [Input.rectangular(1, 1), Input(1, 1)], [[1, 0.5], [0.5, 1]]), "normal inputs only"),
    (lambda: reconcile.linear.least_squares([1, 2], np.eye(2), [[1, -1], [2, -2]], [0, 0]), "balance 2 is redundant"),
    (lambda: reconcile.linear.least_squares([1, 2], np.diag([0.0, 1.0]), [[1, 0]], [0]), "balance 1 holds no reading"),
    (lambda: reconcile.nonlinear.least_squares(lambda x, z: [x[0] - z[0] - z[1]], [1.0], np.eye(1), [0.5, 0.5]), "1 and unmeasured|1 and 2 cannot be determined"),
    (lambda: reconcile.linear.least_squares([1, 2], np.eye(2), [[1, -1]], [0], error_rate=1.5), "error rate"),
])
def test_errors_are_sentences(call, words: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(ValueError, match=words):
        call()


def test_hidden_faults_of_reconciliation() -> None:
    # A reading that no balance checks, and two that cannot be told apart.
    r = reconcile.linear.least_squares([1.0, 1.2, 7.0], np.eye(3), [[1, -1, 0]], [0])
    assert r.z[2] == 0 and math.isnan(r.bias[2]) and r.detectable_bias[2] == math.inf and abs(r.z[0]) == pytest.approx(abs(r.z[1]))
    # functions that complex numbers do not go through
    for f in (lambda x, z: [math.log(x[0]) - math.log(x[1])], lambda x, z: [abs(x[0]) - abs(x[1])], lambda x, z: [np.log(x[0] / x[1])]):
        got = reconcile.nonlinear.least_squares(f, [1.0, 1.2], np.diag([0.01, 0.01]))
        assert got.values[0] == pytest.approx(got.values[1], rel=1e-9) and got.values[0] == pytest.approx(1.1, abs=0.001)
