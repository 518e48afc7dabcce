"""Schedules against handbook tables; the spread of shares against simulated chromosomes."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest

from pedigreeview.planning.linkage_drag import drag_around, flank_stays, plants_for_recombinant
from pedigreeview.planning.schedules import (
    backcross_schedule,
    heterozygous_share_sd,
    recurrent_share_sd,
    selfing_schedule,
    sib_schedule,
)
from pedigreeview.planning.schemes import population, sib_mating
from pedigreeview.planning.targets import Target, WantedTrait, from_copies
from tests.published.cases import CHECKS


def test_heterozygosity_and_ten_fixed_loci() -> None:
    """Trade terms: F2 1/2 ... F8 1/128; ten loci fixed F5 52%, F6 73%, F8 93% of plants (they
    print 93, the exact figure is 92.46)."""
    found = {line.generation: line for line in selfing_schedule(10)}
    left = [found[f"F{g}"].heterozygous for g in (2, 3, 4, 5, 6, 8)]
    assert left == [
        Fraction(1, 2),
        Fraction(1, 4),
        Fraction(1, 8),
        Fraction(1, 16),
        Fraction(1, 32),
        Fraction(1, 128),
    ]
    shown = [round(100 * float(found[f"F{g}"].all_fixed)) for g in (5, 6, 8)]
    assert shown == [52, 73, 92]
    assert found["F8"].like_wanted == (Fraction(127, 256)) ** 10
    assert found["F5"].sentence().startswith("F5: 6.25%")
    # S02 (course question, read) and S04 (East and Jones 1919, read).
    assert found["F4"].heterozygous == Fraction(
        CHECKS["S02"]["expected"]["values"]["three selfings"][1]
    )
    assert round(100 * float(1 - found["F8"].heterozygous)) == 99


def test_recovery_of_the_recurrent_parent() -> None:
    """B01 (University of Nebraska, read; percentages from memory)."""
    found = {line.generation: line for line in backcross_schedule()}
    for n in range(1, 7):
        printed = float(CHECKS["B01"]["expected"]["values"][f"BC{n}"][1])
        assert 100 * float(found[f"BC{n}F1"].share) == pytest.approx(printed, abs=0.006)
    assert found["BC2F1"].all_back == Fraction(3, 4)
    assert found["BC1F1"].sentence() == "BC1F1: 75% of the recurrent parent expected."
    assert "give or take" in backcross_schedule(2, lengths=[100])[2].sentence()
    for bad in (lambda: backcross_schedule(0), lambda: selfing_schedule(-1)):
        with pytest.raises(ValueError, match="0 or more"):
            bad()


def test_sib_mating_by_the_chain_and_by_the_scheme() -> None:
    """F is 0, 1/2, 1/2, 5/8, 11/16, 3/4, of sibs out of two lines (Wright 1921, from memory)."""
    found = sib_schedule(6)
    assert found == [
        Fraction(1),
        Fraction(1, 2),
        Fraction(1, 2),
        Fraction(3, 8),
        Fraction(5, 16),
        Fraction(1, 4),
    ]
    gene = Target.of(WantedTrait("a", ("A",), "recessive"))
    for times in range(1, 6):
        plants = population(gene, sib_mating(times), from_copies([2]), from_copies([0]))
        assert plants[1] + plants[2] == found[times]


def _strands(rng: np.random.Generator, runs: int, length: float, points: int) -> np.ndarray:
    """(runs, points) which strand of the parent a gamete follows along a chromosome of cM."""
    r = (1 - np.exp(-2 * length / 100 / points)) / 2
    switch = rng.random((runs, points)) < r
    switch[:, 0] = rng.random(runs) < 0.5
    return np.logical_xor.accumulate(switch, axis=1)


@pytest.mark.parametrize(("times", "lengths"), [(1, [100.0]), (3, [150.0, 60.0])])
def test_spread_of_the_recurrent_share_by_simulation(times: int, lengths: list[float]) -> None:
    rng = np.random.default_rng(11)
    runs, whole = 8000, sum(lengths)
    share = np.zeros(runs)
    for length in lengths:
        points = 120
        donor = np.ones((runs, points), bool)
        for _ in range(times):
            donor &= _strands(rng, runs, length, points)
        share += donor.mean(axis=1) * length / whole
    found = recurrent_share_sd(times, lengths)
    assert (share / 2).std() == pytest.approx(found, rel=0.04)
    assert 1 - share.mean() / 2 == pytest.approx(1 - 0.5 ** (times + 1), abs=0.01)


def test_spread_of_heterozygosity_by_simulation() -> None:
    rng = np.random.default_rng(5)
    runs, points = 8000, 120
    one, two = np.zeros((runs, points), bool), np.ones((runs, points), bool)
    for _ in range(2):
        a, b = (_strands(rng, runs, 90.0, points) for _ in range(2))
        one, two = np.where(a, two, one), np.where(b, two, one)
    assert (one != two).mean(axis=1).std() == pytest.approx(
        heterozygous_share_sd(2, [90.0]), rel=0.04
    )


def test_spread_at_its_ends() -> None:
    # A single locus is all or nothing.
    assert recurrent_share_sd(1, [0.0]) == pytest.approx(0.25)
    assert recurrent_share_sd(0, [100.0]) == 0
    assert recurrent_share_sd(2, [1e-5]) == pytest.approx((3 / 16) ** 0.5 / 2, rel=1e-4)
    # Many chromosomes spread less than one.
    assert recurrent_share_sd(1, [100.0] * 12) == pytest.approx(
        recurrent_share_sd(1, [100.0]) / 12**0.5
    )
    with pytest.raises(ValueError, match="chromosomes"):
        recurrent_share_sd(1, [])


def test_drag_against_drawn_crossovers() -> None:
    rng = np.random.default_rng(2)
    t, length, position = 4, 120.0, 30.0
    found = drag_around(t, length, position)
    runs = 40_000
    drawn = [
        np.minimum(rng.exponential(100.0, (runs, t)).min(axis=1), arm)
        for arm in (position, length - position)
    ]
    for side, mean, sd in (
        (drawn[0], found.left, found.left_sd),
        (drawn[1], found.right, found.right_sd),
    ):
        assert side.mean() == pytest.approx(mean, rel=0.02)
        assert side.std() == pytest.approx(sd, rel=0.03)
    assert ((drawn[0] + drawn[1]) <= found.upper).mean() >= 0.95
    assert (drawn[0] == position).mean() == pytest.approx(found.whole_arm[0], abs=0.01)
    assert found.both == found.left + found.right
    assert found.sentence().startswith("After 4 backcrosses about ")


def test_drag_of_six_backcrosses_on_a_long_chromosome() -> None:
    """100/t cM a side far from the ends (Stam and Zeven 1981, from memory)."""
    assert drag_around(6, 10_000, 5_000).left == pytest.approx(100 / 6)
    assert drag_around(3, 100, 0).left == 0
    with pytest.raises(ValueError, match="lies on"):
        drag_around(1, 50, 60)


def test_flanks_and_recombinants() -> None:
    r = (1 - np.exp(-0.2)) / 2
    assert flank_stays(3, 10) == pytest.approx((1 - r) ** 3)
    n = plants_for_recombinant(10)
    assert (1 - r / 2) ** n <= 0.05 < (1 - r / 2) ** (n - 1)
    with pytest.raises(ValueError, match="above 0"):
        plants_for_recombinant(0)
