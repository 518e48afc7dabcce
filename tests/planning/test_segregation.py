"""Segregation tests against published values, SciPy, and listing of all counts."""

from __future__ import annotations

from fractions import Fraction
from itertools import product
from math import factorial, prod

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import binomtest, chi2, chisquare

from pedigreeview.planning.multiplicity import holm
from pedigreeview.planning.ratios import NAMED_RATIOS, Ratio, named_ratios, ratio_of_parents
from pedigreeview.planning.segregation import (
    exact_p,
    plants_for_power,
    plants_to_tell,
    power_to_reject,
    ratio_test,
    ratio_tests,
    tell_by_one_threshold,
    which_fit,
)
from pedigreeview.planning.targets import from_copies
from tests.published.cases import CHECKS

THREE_ONE, NINE_SEVEN = Ratio((3, 1)), Ratio((9, 7))


@pytest.mark.parametrize("key", ["C01", "C02", "C04", "C05"])
def test_published_chi_squares(key: str) -> None:
    """C01 NDSU course after Mendel 1866; C02 Mendel; C04, C05 worked answers (all read)."""
    entry = CHECKS[key]
    found = ratio_test(entry["input"]["observed"], Ratio(tuple(entry["input"]["ratio"])))
    due = entry["expected"]
    assert found.statistic == pytest.approx(float(due["chi_square"]), abs=float(entry["tolerance"]))
    assert found.freedom == due["df"]
    assert found.method == "chi-square"
    if "expected_counts" in due:
        for got, printed in zip(found.expected, due["expected_counts"], strict=True):
            assert got == pytest.approx(
                float(printed), abs=max(float(due["count_tolerance"]), 1e-9)
            )
    if "P_above" in due:
        assert found.p > float(due["P_above"])
    ours = chisquare(entry["input"]["observed"], found.expected)
    assert found.p == pytest.approx(float(ours.pvalue))


def test_five_per_cent_points() -> None:
    """C07 (Emigh, read): a statistic at the printed point has p near 0.05."""
    for freedom, point in CHECKS["C07"]["expected"]["critical_5_percent"].items():
        assert float(chi2.isf(0.05, int(freedom))) == pytest.approx(float(point), abs=0.0055)


@settings(max_examples=40)
@given(st.lists(st.integers(0, 5), min_size=2, max_size=4), st.data())
def test_exact_p_by_listing_every_count(counts: list[int], data: st.DataObject) -> None:
    n = sum(counts)
    if n == 0:
        return
    parts = [data.draw(st.integers(1, 9)) for _ in counts]
    shares = [Fraction(p, sum(parts)) for p in parts]

    def chance(table: tuple[int, ...]) -> Fraction:
        ways = Fraction(factorial(n), prod(map(factorial, table)))
        return ways * prod((s**k for s, k in zip(shares, table, strict=True)), start=Fraction(1))

    seen = chance(tuple(counts))
    due = sum(
        (
            c
            for table in product(range(n + 1), repeat=len(counts))
            if sum(table) == n and (c := chance(table)) <= seen
        ),
        Fraction(0),
    )
    assert exact_p(counts, [float(s) for s in shares]) == pytest.approx(float(due))


def test_exact_test_of_two_classes_is_scipys() -> None:
    found = ratio_test([14, 1], THREE_ONE)
    assert found.method == "exact"
    assert found.p == pytest.approx(binomtest(14, 15, 0.75).pvalue)


def test_drawn_p_lies_within_its_error() -> None:
    ratio = Ratio((9, 3, 3, 1))
    exact = ratio_test([20, 9, 3, 3], ratio)
    drawn = ratio_test([20, 9, 3, 3], ratio, most_tables=10, draws=40_000)
    assert (exact.method, drawn.method) == ("exact", "drawn")
    assert drawn.p_error > 0
    assert abs(drawn.p - exact.p) < 4 * drawn.p_error
    assert "error of p" in drawn.sentence()


@pytest.mark.parametrize(
    ("counts", "parts", "verdict"),
    [
        ((52, 19, 20, 5), (9, 3, 3, 1), "fits"),
        ((31, 9), (3, 1), "fits"),
        ((35, 1), (35, 1), "fits"),
        ((13, 11), (1, 1), "fits"),
        ((9, 3), (3, 1), "too few to tell"),
        ((20, 20), (3, 1), "does not fit"),
    ],
)
def test_counts_of_the_demos(counts: tuple[int, ...], parts: tuple[int, ...], verdict: str) -> None:
    found = ratio_test(counts, Ratio(parts))
    assert found.verdict == verdict
    assert verdict.split()[0] in found.sentence()


def test_statistics_of_the_demos() -> None:
    """Demo A: 52:19:20:5, chi-square 0.52, 3 df, p 0.91.  Demo B: 13 carriers, 11 not, 0.17."""
    pea = ratio_test([52, 19, 20, 5], Ratio((9, 3, 3, 1)))
    assert (round(pea.statistic, 2), pea.freedom, round(pea.p, 2)) == (0.52, 3, 0.91)
    assert round(ratio_test([13, 11], Ratio((1, 1))).statistic, 2) == 0.17


def test_telling_three_to_one_from_nine_to_seven() -> None:
    """Course page on distinguishing two ratios (read in part): about 95 plants; worse error 3% at
    95 and 4.4% at 80 (trade terms, worked out there)."""
    assert plants_to_tell(THREE_ONE, NINE_SEVEN) == 95
    assert round(100 * tell_by_one_threshold(THREE_ONE, NINE_SEVEN, 95)) == 3
    assert round(100 * tell_by_one_threshold(THREE_ONE, NINE_SEVEN, 80), 1) == 4.4
    assert plants_to_tell(THREE_ONE, Ratio((6, 2))) is None
    assert plants_to_tell(THREE_ONE, Ratio((1, 2, 1))) is None
    few = which_fit([33, 15], [THREE_ONE, NINE_SEVEN])
    assert few.verdict == "too few to tell"
    assert few.apart == 95
    assert any("about 95 would" in line for line in few.sentences())


def test_which_ratios_fit() -> None:
    assert which_fit([150, 10]).fitting[0].name == "15:1"
    assert which_fit([500, 500]).sentences()[0].startswith("Of the ratios tried only this")
    none = which_fit([2, 400])
    assert none.verdict == "does not fit"
    assert none.sentences() == ["None of the ratios tried fits this count."]
    assert {ratio.name for ratio in named_ratios(2, 4)} == {
        "35:1", "5:1", "11:1", "3:1", "1:1", "187:9",
    }  # fmt: skip
    assert len({(r.name, r.ploidy) for r in NAMED_RATIOS}) == len(NAMED_RATIOS)


def test_power_is_the_sum_over_rejected_counts() -> None:
    n = 30
    rejected = [k for k in range(n + 1) if ratio_test([k, n - k], THREE_ONE).p < 0.05]
    due = sum(binomtest_pmf(k, n, 9 / 16) for k in rejected)
    assert power_to_reject(THREE_ONE, (9 / 16, 7 / 16), n) == pytest.approx(due)
    needed = plants_for_power(THREE_ONE, (9 / 16, 7 / 16))
    assert needed is not None
    assert power_to_reject(THREE_ONE, (9 / 16, 7 / 16), needed) >= 0.8
    assert plants_for_power(THREE_ONE, (0.75, 0.25), most=60) is None


def binomtest_pmf(k: int, n: int, p: float) -> float:
    return factorial(n) / factorial(k) / factorial(n - k) * p**k * (1 - p) ** (n - k)


def test_power_of_many_classes_is_near_the_truth() -> None:
    import numpy as np

    ratio = Ratio((9, 3, 3, 1))
    truth = (0.25, 0.25, 0.25, 0.25)
    rng = np.random.default_rng(1)
    drawn = rng.multinomial(40, truth, 2000)
    shares = np.array(ratio.shares) * 40
    rejected = (((drawn - shares) ** 2 / shares).sum(axis=1) > chi2.isf(0.05, 3)).mean()
    assert power_to_reject(ratio, truth, 40) == pytest.approx(rejected, abs=0.03)


def test_many_families_are_corrected_by_holm() -> None:
    """0.01, 0.04, 0.03 become 0.03, 0.06, 0.06 (Holm's steps by hand)."""
    assert holm([0.01, None, 0.04, 0.03]) == pytest.approx([0.03, None, 0.06, 0.06], nan_ok=False)
    found = ratio_tests([((20, 20), THREE_ONE), ((30, 10), THREE_ONE)])
    assert found[0].p_adjusted == pytest.approx(2 * found[0].p)
    assert "after Holm's correction" in found[0].sentence()
    with pytest.raises(ValueError, match="from 0 to 1"):
        holm([1.5])


def test_ratios_from_the_parents() -> None:
    two = from_copies([1, 1])
    looks = [("a", "A", "A"), ("b", "B", "B")]
    found = ratio_of_parents(two, None, looks)
    assert found.name == "9:3:3:1"
    assert found.classes == ("A B", "A b", "a B", "a b")
    assert ratio_of_parents(two, from_copies([0, 0]), looks).name == "1:1:1:1"
    epistatic = [("white", "dyed", "dyed"), ("", "", "")]
    assert ratio_of_parents(two, None, epistatic).name == "3:1"
    shown = ratio_of_parents(from_copies([1]), None, [("white", "pink", "red")])
    assert (shown.name, shown.classes) == ("2:1:1", ("pink", "red", "white"))
    in_order = ratio_of_parents(
        from_copies([1]),
        None,
        [("white", "pink", "red")],
        classes=[("red",), ("pink",), ("white",)],
    )
    assert in_order.name == "1:2:1"
    linked = ratio_of_parents(two, from_copies([0, 0]), looks, recombination=[0.1])
    assert linked.shares == pytest.approx((0.25,) * 4)
    with pytest.raises(ValueError, match="look alike"):
        ratio_of_parents(from_copies([2]), from_copies([0]), [("a", "A", "A")])
    assert Ratio((0.7, 0.3)).name == "70:30 (per cent)"


def test_impossible_counts_are_refused() -> None:
    for bad in ([1, 2, 3], [0, 0], [-1, 5]):
        with pytest.raises(ValueError, match="a count has"):
            ratio_test(bad, THREE_ONE)
    with pytest.raises(ValueError, match="two parts"):
        Ratio((1,))
