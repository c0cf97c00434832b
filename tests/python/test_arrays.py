"""Arrays, labels, masks, quantities of numbers, warnings: what NumPy users expect of a ufunc."""

from __future__ import annotations

import inspect
import math
import threading
import warnings

import numpy as np
import pytest

import wortmath as wm

U = wm.bitterness.utilisation
A = wm.extract.from_gravity


def test_scalars_stay_scalars() -> None:
    for x in (1.048, np.float64(1.048)):
        assert type(A(x)) is float
    assert A(1) == A(1.0)
    assert isinstance(A(np.array(1.048)), (float, np.floating))
    assert isinstance(A(np.float32(1.048)), float)
    assert A(gravity=1.048) == A(1.048)
    assert type(wm.package.bottle_count(19.0, 0.0, 0.5)) is int


def test_broadcasting_and_layouts() -> None:
    g, t = np.linspace(1.03, 1.09, 5)[:, None], np.linspace(1.0, 90.0, 7)
    table = U(g, t)
    assert table.shape == (5, 7)
    assert table[2, 3] == pytest.approx(U(float(g[2, 0]), float(t[3])), rel=1e-13)
    assert np.array_equal(A(g[::2]), A(g)[::2])
    assert np.array_equal(A(np.asfortranarray(np.tile(g, (1, 4)))), np.tile(A(g), (1, 4)))
    assert np.array_equal(A(g[::-1]), A(g)[::-1])
    assert A(np.empty((0, 3))).shape == (0, 3)
    big = np.linspace(1.03, 1.09, 10_007)
    assert np.array_equal(A(big)[1234:1240], A(big[1234:1240]))


def test_out_and_where() -> None:
    g = np.array([1.03, 1.05, 1.07])
    out = np.zeros(3)
    assert A(g, out=out) is out
    assert out[1] == A(1.05)
    kept = A(g, out=np.full(3, -1.0), where=np.array([True, False, True]))
    assert kept[1] == -1.0
    same = g.copy()
    assert np.array_equal(A(same, out=same), A(g))


def test_float32_is_kept_and_its_limits_are_too() -> None:
    g = np.array([1.03, 1.05], dtype=np.float32)
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        got = U(g, np.float32(60.0))
    assert got.dtype == np.float32
    assert np.allclose(got, U(g.astype(float), 60.0, policy="extrapolate"), rtol=3e-7)


@pytest.mark.parametrize("dtype", [np.int16, np.int64, np.uint8])
def test_whole_numbers_are_computed_in_double(dtype: type) -> None:
    t = np.array([10, 20], dtype=dtype)
    assert wm.water.density(t).dtype == np.float64
    assert np.array_equal(wm.water.density(t), wm.water.density(t.astype(float)))


def test_refused_elements() -> None:
    g = np.array([1.05, 1.2, np.nan, 12.0])
    with pytest.warns(wm.RangeWarning, match="2 of 4 elements became NaN .1 outside the validated range, 1 impossible"):
        got = U(g, 60.0)
    assert np.isnan(got).tolist() == [False, True, True, True]
    with pytest.raises(wm.RangeError, match="boil_gravity = 1.2"):
        U(g[:2], 60.0, policy="raise")
    with pytest.raises(wm.RangeError, match="degrees Plato"):
        U(g, 60.0, policy="extrapolate")
    assert not np.isnan(U(g[:2], 60.0, policy="extrapolate")).any()
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        assert np.isnan(U(np.array([np.nan, 1.05]), 60.0)).tolist() == [True, False]  # NaN passes silently


def test_the_bare_ufunc_is_one() -> None:
    assert isinstance(U.ufunc, np.ufunc)
    g = np.array([1.05, 1.06])
    assert np.array_equal(U.ufunc(g, 60.0, 4.15), U(g, 60.0))
    with pytest.warns(RuntimeWarning, match="invalid value"):
        assert np.isnan(U.ufunc(np.array([1.5]), 60.0, 4.15)).all()


def test_joint_ranges_act_alike() -> None:
    """The cubic refractometer formula holds for 65 to 85 % attenuation only (its author's data, 2011)."""
    cubic = wm.refractometer.final_gravity.terrill_cubic
    assert cubic(12.48, 6.5) == pytest.approx(1.0125093, abs=5e-8)
    with pytest.raises(wm.RangeError, match="65"):
        cubic(12.48, 11.0)
    assert cubic(12.48, 11.0, policy="extrapolate") > 1.0
    with pytest.warns(wm.RangeWarning, match="inputs and result together"):
        got = cubic(np.array([12.48, 12.48]), np.array([6.5, 11.0]))
    assert np.isnan(got).tolist() == [False, True]


def test_several_results_words_and_levels_in_arrays() -> None:
    blend = wm.balance.blend.volume(np.array([5.0, 10.0]), 20.0, 5.0, 0.0)
    assert blend._fields == ("volume", "extract")
    assert blend.extract.shape == (2,)
    assert wm.colour.word(np.array([3.0, 20.0])).tolist() == [wm.colour.word(3.0), wm.colour.word(20.0)]
    level = wm.package.caution("unrated_glass", np.array([2.0, 5.0, 7.0, np.nan]), 2.4, None, True)
    assert level.dtype == np.int64
    assert level.tolist() == [0, 1, 2, 2]
    assert wm.room.caution(np.array([500.0, np.nan, np.inf])).tolist()[1:] == [2, 2]
    with pytest.raises(wm.RangeError):
        wm.package.bottle_count(np.array([19.0, np.nan]), 0.0, 0.5)


def test_lists_broadcast_over_leading_dimensions() -> None:
    one = wm.thermal.mix.wort_enthalpy([1000.0, 3000.0], [0.0, 0.0], [10.0, 30.0])
    assert type(one) is float
    table = wm.thermal.mix.wort_enthalpy(np.array([[1000.0, 3000.0], [3000.0, 1000.0]]), [0.0, 0.0], [10.0, 30.0])
    assert table.shape == (2,)
    assert table[0] == pytest.approx(one, rel=1e-14)
    with pytest.raises(ValueError, match="differ in length"):
        wm.thermal.mix.wort_enthalpy([1000.0, 3000.0], [0.0], [10.0, 30.0])
    with pytest.raises(TypeError, match="a list is expected"):
        wm.thermal.mix.wort_enthalpy(1000.0, [0.0], [10.0])


def test_masked_pandas_and_xarray_stay_what_they_are() -> None:
    masked = A(np.ma.array([1.03, 1.05, 1.07], mask=[False, True, False]))
    assert isinstance(masked, np.ma.MaskedArray)
    assert masked.mask.tolist() == [False, True, False]
    pandas = pytest.importorskip("pandas")
    series = A(pandas.Series([1.03, 1.05], index=["a", "b"], name="kettle"))
    assert isinstance(series, pandas.Series)
    assert series["b"] == A(1.05)
    xarray = pytest.importorskip("xarray")
    data = A(xarray.DataArray([1.03, 1.05], dims="sample", coords={"sample": [7, 8]}))
    assert isinstance(data, xarray.DataArray)
    assert data.sel(sample=8).item() == A(1.05)


def test_what_is_no_number_is_refused() -> None:
    for nonsense in ("1.05", None, 1j, b"1", [1.03, "x"], np.array(["a"]), True, np.array([True])):
        with pytest.raises(TypeError, match="gravity"):
            A(nonsense)
    with pytest.raises(TypeError, match='did you mean "boil_minutes"'):
        U(1.05, boil_minuts=60)
    with pytest.raises(TypeError, match="given twice"):
        U(1.05, 60.0, boil_gravity=1.05)
    with pytest.raises(TypeError, match="is missing"):
        U(1.05)
    with pytest.raises(TypeError, match="takes 3 arguments"):
        U(1, 2, 3, 4)
    with pytest.raises(ValueError, match="policy"):
        U(1.05, 60.0, policy="hope")
    with pytest.raises(wm.RangeError, match='did you mean "sucrose"'):
        wm.priming.sugar_yield("sucros")


def test_messages_say_what_was_probably_meant() -> None:
    for value, words in ((12, "degrees Plato"), (1048, "1.0480"), (1.110, "extract.from_gravity.nbs covers it")):
        with pytest.raises(wm.RangeError, match=words):
            A(value)
    with pytest.raises(wm.RangeError, match=r"12 % is 0\.12") as refused:
        wm.bitterness.alpha_dosed(28.0, 12.0, 20.0)
    assert refused.value.argument == "alpha"
    assert refused.value.region == "impossible"
    with pytest.raises(wm.RangeError, match="is it degF"):
        wm.carbonation.pressure(72.0, 2.5)


def test_looking_at_a_model() -> None:
    assert list(inspect.signature(U).parameters) == ["boil_gravity", "boil_minutes", "brewery_constant", "policy"]
    assert U.tinseth.valid["boil_gravity"] == (1.03, 1.13)
    assert U.tinseth is U
    assert "Tinseth" in U.source
    assert "Parameters" in U.__doc__
    assert "<table>" in U._repr_html_()
    compared = A.compare(1.048)
    assert compared["asbc"] == A(1.048)
    assert "manning" not in compared  # another scale
    assert math.isnan(A.compare(1.15)["asbc"])


def test_threads_do_not_see_each_other() -> None:
    wrong: list[str] = []

    def work(gravity: float, nan: bool) -> None:
        column = np.full(20_000, gravity)
        for _ in range(30):
            with warnings.catch_warnings():
                got = U(column, 60.0, policy="nan" if nan else "extrapolate")
            if np.isnan(got).all() != nan:
                wrong.append(f"{gravity} {nan}")

    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        threads = [threading.Thread(target=work, args=(1.2, k % 2 == 0)) for k in range(4)]
        for t in threads:
            t.start()
        for t in threads:
            t.join()
    assert not wrong


@pytest.mark.parametrize("which", [0, 1, 2])
def test_instruction_sets_agree(which: int) -> None:
    g = np.linspace(1.03, 1.09, 1001)
    try:
        wm._core.instruction_set(which)
        assert np.allclose(U(g, 45.0), [U(float(x), 45.0) for x in g], rtol=2e-15 * 4, atol=0)
        assert np.array_equal(A(g), [A(float(x)) for x in g])  # only + and *: the same to the bit
    finally:
        wm._core.instruction_set(-1)
