"""Tetraploid doses against check values and against drawing two of four copies by listing."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.planning.ratios import ratio_of_doses
from pedigreeview.planning.tetraploid import (
    DoseChances,
    dose_distribution,
    dose_gametes,
    doses_crossed,
    doses_of,
    doses_selfed,
)
from tests.published.cases import CHECKS


@pytest.mark.parametrize("key", ["M03", "M04", "M06"])
def test_published_gametes_and_selfed_doses(key: str) -> None:
    """M03, M04: Helms, autotetraploids part II (read in part); M06: Haldane 1930 (from memory)."""
    entry = CHECKS[key]
    dose = entry["input"]["genotype"].count("A")
    alpha = Fraction(entry["input"].get("double_reduction", "0"))
    expected = entry["expected"]
    assert [str(x) for x in reversed(dose_gametes(dose, alpha))] == [
        str(Fraction(x)) for x in expected["gametes_AA_Aa_aa"]
    ]
    selfed = doses_selfed(doses_of(dose), alpha)
    assert selfed[0] == Fraction(expected["selfed_recessive"])
    if "selfed_by_dose_4_to_0" in expected:
        assert list(reversed(selfed)) == [Fraction(x) for x in expected["selfed_by_dose_4_to_0"]]


@pytest.mark.parametrize("dose", range(5))
def test_gametes_by_listing_pairs_of_copies(dose: int) -> None:
    copies = [1] * dose + [0] * (4 - dose)
    listed = [sum(pair) for pair in combinations(copies, 2)]
    assert list(dose_gametes(dose)) == [Fraction(listed.count(k), 6) for k in range(3)]


@given(st.integers(0, 4), st.integers(0, 4), st.fractions(0, Fraction(1, 6), max_denominator=30))
def test_doses_sum_to_one_and_keep_the_mean(a: int, b: int, alpha: Fraction) -> None:
    found = doses_crossed(doses_of(a), doses_of(b), alpha)
    assert sum(found) == 1
    assert sum(k * share for k, share in enumerate(found)) == Fraction(a + b, 2)


def test_named_ratios_of_tetraploids() -> None:
    """35:1, 5:1, 11:1 and, with double reduction 1/7, 187:9 (from memory, M06)."""
    assert ratio_of_doses(2).name == "35:1"
    assert ratio_of_doses(2, 0).name == "5:1"
    assert ratio_of_doses(2, 1).name == "11:1"
    assert ratio_of_doses(1).name == "3:1"
    assert ratio_of_doses(2, double_reduction=Fraction(1, 7)).name == "187:9"
    with pytest.raises(ValueError, match="look alike"):
        ratio_of_doses(4)


def test_both_ploidies_and_refusals() -> None:
    assert dose_distribution(1, 1, 2) == (Fraction(1, 4), Fraction(1, 2), Fraction(1, 4))
    assert dose_distribution(2, 0, 4) == (Fraction(1, 6), Fraction(2, 3), Fraction(1, 6), 0, 0)
    chances = DoseChances(doses_selfed(doses_of(2)))
    assert chances.shows_dominant == Fraction(35, 36)
    assert chances.shows_recessive == Fraction(1, 36)
    assert "duplex 0.5" in chances.sentence()
    for bad in (
        lambda: dose_gametes(5),
        lambda: dose_gametes(2, Fraction(1, 2)),
        lambda: doses_of(-1),
    ):
        with pytest.raises(ValueError, match=r"0 to 4|0 to 1/6"):
            bad()
    with pytest.raises(ValueError, match="2x and 4x"):
        dose_distribution(1, 1, 6)
