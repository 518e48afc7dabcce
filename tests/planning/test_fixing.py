"""Fixing by selfing and winning back a parent by backcrossing."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.network import PedigreeArrays
from pedigreeview.planning.fixing import (
    backcrosses_until,
    chance_all_fixed,
    inbreeding_after,
    recurrent_share,
    recurrent_share_of,
    segregating_share,
    segregating_share_of,
    selfings_until,
    selfings_until_of,
    variation_within,
)
from tests.published.cases import CHECKS


def test_heterozygous_loci_left_after_three_selfings() -> None:
    """S02: a worked question of a course page (figures read)."""
    value = CHECKS["S02"]["expected"]["values"]["three selfings"][1]
    assert segregating_share(3) == float(value)


def test_fixed_share_after_seven_selfings() -> None:
    """S04: East and Jones 1919, p. 94, 99 per cent (figures read)."""
    value = CHECKS["S04"]["expected"]["values"]["homozygous percent after seven"][1]
    found = 100 * (1 - segregating_share(7))
    assert found == pytest.approx(float(value), abs=float(CHECKS["S04"]["tolerance"]))
    assert found == 99.21875


@pytest.mark.parametrize("name", CHECKS["S03"]["expected"]["values"])
def test_chance_of_full_fixation(name: str) -> None:
    """S03: course on the backcross method, University of Nebraska (formula read)."""
    value = CHECKS["S03"]["expected"]["values"][name][1]
    words = name.split()
    selfings, loci = int(words[0][2:]), int(words[1][2:])
    scale = 100 if "percent" in words else 1
    tolerance = float(CHECKS["S03"]["tolerance"]) if scale == 100 else 1e-12
    found = scale * chance_all_fixed(loci, selfings)
    assert found == pytest.approx(float(Fraction(value)), abs=tolerance)


@pytest.mark.parametrize("name", CHECKS["B01"]["expected"]["values"])
def test_share_of_the_recurrent_parent(name: str) -> None:
    """B01: the same course (formula read), percentages from memory; and as a pedigree has it."""
    value = float(CHECKS["B01"]["expected"]["values"][name][1])
    backcrosses = int(name[2:])
    tolerance = float(CHECKS["B01"]["tolerance"])
    assert 100 * recurrent_share(backcrosses) == pytest.approx(value, abs=tolerance)
    rows = [(-1, -1), (-1, -1), (0, 1), *((row, 0) for row in range(2, 2 + backcrosses))]
    arrays = PedigreeArrays.from_parents(*zip(*rows, strict=True))
    assert recurrent_share_of(arrays, len(arrays) - 1, 0) == recurrent_share(backcrosses)
    assert backcrosses_until(recurrent_share(backcrosses)) == backcrosses


def test_selfing_of_tetraploids() -> None:
    """T01: (1 + 5F)/6 each time (recursion read); T02: (1 + 2α)/6 (formula from memory)."""
    expected = CHECKS["T01"]["expected"]
    for n in (1, 2, 3):
        value = float(Fraction(expected[f"F after selfing {n}"]))
        assert inbreeding_after(n, ploidy=4) == pytest.approx(value)
        assert segregating_share(n, ploidy=4) == pytest.approx(1 - value)
    value = float(Fraction(CHECKS["T02"]["expected"]["F after selfing 1"]))
    assert inbreeding_after(1, ploidy=4, double_reduction=1 / 7) == pytest.approx(value)


@given(
    st.floats(0, 0.999),
    st.floats(0, 1),
    st.sampled_from((2, 4, 6)),
    st.sampled_from((0.0, 1 / 7)),
)
def test_selfings_until_are_the_fewest(
    fixation: float, inbreeding: float, ploidy: int, double_reduction: float
) -> None:
    def reached(selfings: int) -> float:
        return inbreeding_after(
            selfings, inbreeding=inbreeding, ploidy=ploidy, double_reduction=double_reduction
        )

    found = selfings_until(
        fixation, inbreeding=inbreeding, ploidy=ploidy, double_reduction=double_reduction
    )
    assert reached(found) >= fixation - 1e-9
    assert found == 0 or reached(found - 1) < fixation


@given(st.floats(0, 0.9999))
def test_backcrosses_until_are_the_fewest(share: float) -> None:
    found = backcrosses_until(share)
    assert recurrent_share(found) >= share - 1e-9
    assert found == 0 or recurrent_share(found - 1) < share


def test_figures_of_a_plant_are_those_of_the_pedigree() -> None:
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2, 3, 2], [-1, -1, 1, 2, 3, 2], pool=[1, 1, 0, 0, 0, 1]
    )
    assert segregating_share_of(arrays, 2) == 1
    assert segregating_share_of(arrays, 2, 2) == segregating_share_of(arrays, 4) == 0.25
    assert selfings_until_of(arrays, 2, 0.99) == 7
    assert selfings_until_of(arrays, 4, 0.75) == 0
    # An F2 as a family: two of its plants share ½; a plant segregates at half of its loci.
    assert variation_within(arrays, 5) == 0.5
    assert segregating_share_of(arrays, 5) == 0.5
    assert recurrent_share_of(arrays, 5, 0) == 0.5


def test_arguments_outside_their_range_are_refused() -> None:
    with pytest.raises(ValueError, match="below 1"):
        selfings_until(1.0)
    assert selfings_until(1.0, inbreeding=1.0) == 0
    with pytest.raises(ValueError, match="below 1"):
        backcrosses_until(1.0)
    with pytest.raises(ValueError, match="0 or more"):
        segregating_share(-1)
    with pytest.raises(ValueError, match="0 or more"):
        chance_all_fixed(-1, 2)
    with pytest.raises(ValueError, match="0 or more"):
        recurrent_share(-1)
    with pytest.raises(ValueError, match="even ploidies"):
        inbreeding_after(1, ploidy=3)
    with pytest.raises(ValueError, match="from 0 to 1"):
        inbreeding_after(1, inbreeding=2.0)
