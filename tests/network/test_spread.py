"""The spread of realised shares, by gene drop along chromosomes, against what is known exactly."""

from __future__ import annotations

from math import comb, exp, sqrt

import numpy as np
import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.book.crops import crop_named, crops
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.network import PedigreeArrays, PedigreeNetwork
from pedigreeview.network.gene_drop import members_drawn
from pedigreeview.network.origins import Origin, Row
from pedigreeview.network.spread import ShareSpread, map_lengths, share_spread
from tests.network.random_books import books

REPLICATES = 8000


def gamete_variance(morgans: float, backcrosses: int = 1) -> float:
    """Variance of the donor's share of one chromosome after so many meioses in line.

    (¼)^t Σ_k C(t, k) (2kL − 1 + e^(−2kL)) / (2k²L²), k = 1 … t: crossovers without interference
    (Stam 1980; Hill 1993, formula from memory and derived again: two points at distance d are both
    passed on t times with chance [(1 + e^(−2d))/4]^t).
    """
    t, length = backcrosses, morgans
    parts = (
        comb(t, k) * (2 * k * length - 1 + exp(-2 * k * length)) / (2 * k**2 * length**2)
        for k in range(1, t + 1)
    )
    return sum(parts) / 4**t


def _family(*rows: tuple[int, int]) -> PedigreeArrays:
    """Two varieties (pure lines), their F1 and plants after it."""
    parents = [(-1, -1), (-1, -1), (0, 1), *rows]
    pool = [True, True, *[False] * (len(parents) - 2)]
    return PedigreeArrays.from_parents(*zip(*parents, strict=True), pool=pool)


def _of(arrays: PedigreeArrays, lengths: list[float], founder: int, row: int = -1) -> ShareSpread:
    found = share_spread(arrays, row % len(arrays), lengths, replicates=REPLICATES, seed=11)
    return next(share for share in found.founders if share.founder == founder)


def _agrees(share: ShareSpread, expected: float, variance: float) -> None:
    assert share.expected == pytest.approx(expected)
    assert share.mean == pytest.approx(expected, abs=6 * sqrt(variance / REPLICATES) + 1e-9)
    # The standard error of an sd is about sd/√(2n); thick tails make it a little larger.
    assert share.sd == pytest.approx(sqrt(variance), rel=8 / sqrt(2 * REPLICATES))


@pytest.mark.parametrize("lengths", [[50.0], [100.0, 100.0], [200.0, 60.0, 130.5], [600.0]])
def test_f2_and_first_backcross(lengths: list[float]) -> None:
    whole = sum(lengths)
    gamete = sum((each / whole) ** 2 * gamete_variance(each / 100) for each in lengths)
    _agrees(_of(_family((2, 2)), lengths, 0), 0.5, gamete / 2)
    _agrees(_of(_family((2, 0)), lengths, 0), 0.75, gamete / 4)


@pytest.mark.parametrize("backcrosses", [2, 4])
def test_later_backcrosses(backcrosses: int) -> None:
    arrays = _family(*[(row, 0) for row in range(2, 2 + backcrosses)])
    variance = gamete_variance(1.2, backcrosses) / 4 / 10
    _agrees(_of(arrays, [120.0] * 10, 1), 0.5 ** (backcrosses + 1), variance)


@pytest.mark.parametrize("selfings", [1, 2, 3])
def test_a_chromosome_of_no_length_is_one_locus(selfings: int) -> None:
    """At one locus of an F2, F3, F4 plant the variance is (1 + F)/8, F counted from the F2 on."""
    arrays = _family(*[(row, row) for row in range(2, 2 + selfings)])
    f = 1 - 0.5 ** (selfings - 1)
    _agrees(_of(arrays, [0.0], 0), 0.5, (1 + f) / 8)
    # Many such chromosomes are as many independent loci.
    _agrees(_of(arrays, [0.0] * 50, 0), 0.5, (1 + f) / 8 / 50)


def test_doubled_haploids_spread_as_their_gametes() -> None:
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2],
        [-1, -1, 1, -1],
        raised=["founder", "founder", "cross", "doubled_haploid_of"],
    )
    share = _of(arrays, [100.0] * 7, 0)
    _agrees(share, 0.5, gamete_variance(1.0) / 7)
    assert share.low < 0.5 - share.sd < 0.5 + share.sd < share.high


def test_most_plants_lie_between() -> None:
    """With many chromosomes the share is nearly normal: 1.645 standard deviations each way."""
    share = _of(_family((2, 2)), [100.0] * 20, 0)
    assert share.low == pytest.approx(0.5 - 1.645 * share.sd, abs=0.004)
    assert share.high == pytest.approx(0.5 + 1.645 * share.sd, abs=0.004)


def test_chromosomes_of_tetraploids_pair_at_random() -> None:
    """One locus, a gamete of two chromosomes of a simplex plant holds the one with chance ½.

    Progeny of an F1 of two founders, A's share of a gamete by two of four chromosomes, two of them
    A's: 0, ½, 1 with chances 1, 4, 1 in 6 (check M03), so variance 1/12; a plant of two: 1/24.
    """
    arrays = PedigreeArrays.from_parents([-1, -1, 0, 2], [-1, -1, 1, 2], ploidy=4)
    _agrees(_of(arrays, [0.0], 0), 0.5, 1 / 24)
    along = _of(arrays, [100.0], 0)
    assert 0.03 < along.sd < sqrt(1 / 24)


def test_the_one_unseen_father_is_one_for_all_chromosomes() -> None:
    """Candidates ½ and ½: a plant has all its pollen side from one of them."""
    arrays = PedigreeArrays.from_parents(
        [-1, -1, -1, 0], [-1] * 4, candidates=[(3, 1, 0.5), (3, 2, 0.5)]
    )
    share = _of(arrays, [100.0] * 12, 1)
    assert (share.low, share.high) == pytest.approx((0.0, 0.5))
    _agrees(share, 0.25, 1 / 16)


@settings(max_examples=40, derandomize=True)
@given(books(most=10, ploidies=(2, 2, 4)))
def test_means_are_the_expected_shares(book: Book) -> None:
    arrays = PedigreeNetwork.from_records(book).arrays
    row = len(arrays) - 1
    if members_drawn(arrays, [row]) > 100:
        return
    found = share_spread(arrays, row, [20.0, 0.0, 35.0], replicates=500, seed=1)
    assert sum(share.expected for share in found.founders) == pytest.approx(1)
    assert sum(share.mean for share in found.founders) == pytest.approx(1)
    for share in found.founders:
        error = 6 * sqrt(share.expected * (1 - share.expected) / 500)
        assert share.mean == pytest.approx(share.expected, abs=error + 0.03)
        assert 0 <= share.low <= share.high <= 1


def test_a_line_taken_as_fixed_is_fixed_and_one_for_all_uses() -> None:
    """At one locus a line of A × B is all A or all B, and so are two plants grown from it."""
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2, 2, 3],
        [-1, -1, 1, -1, -1, 4],
        pool=[0, 0, 1, 0, 0, 0],
        fixation=[0.0, 0.0, 1.0, np.nan, np.nan, np.nan],
        raised=["founder", "founder", "cross", "seed_of", "seed_of", "cross"],
    )
    for row in (2, 3, 5):
        _agrees(_of(arrays, [0.0], 0, row), 0.5, 1 / 4)


def test_a_triploid_kept_by_cuttings_is_all_its_own() -> None:
    arrays = PedigreeArrays.from_rows(
        [Row(Origin.FOUNDER, fixation=0.0, ploidy=3), Row(Origin.CLONE, 0, ploidy=3)]
    )
    (share,) = share_spread(arrays, 1, [100.0], replicates=10).founders
    assert (share.founder, share.expected, share.mean, share.sd) == (0, 1.0, pytest.approx(1), 0)
    seedling = PedigreeArrays.from_rows(
        [Row(Origin.FOUNDER, fixation=0.0, ploidy=3), Row(Origin.SELF, 0, ploidy=3)]
    )
    with pytest.raises(Fault, match="even ploidies"):
        share_spread(seedling, 1, [100.0], replicates=10)


def test_the_same_seed_gives_the_same_numbers() -> None:
    arrays = _family((2, 2))
    first = share_spread(arrays, 3, [100.0], replicates=100, seed=1)
    assert first == share_spread(arrays, 3, [100.0], replicates=100, seed=1)
    assert first != share_spread(arrays, 3, [100.0], replicates=100, seed=2)


def test_plants_are_forgotten_only_when_done_with() -> None:
    """A pool's member may be drawn late, from parents that nothing else uses any more."""
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2, 3, 3, 5],
        [-1, -1, 1, 2, -1, -1, 4],
        pool=[0, 0, 0, 1, 0, 0, 0],
        raised=["founder", "founder", "cross", "cross", "seed_of", "seed_of", "cross"],
    )
    found = share_spread(arrays, 6, [0.0], replicates=4000, seed=3)
    assert [share.founder for share in found.founders] == [0, 1]
    # Two gametes from two F2 plants: each one locus of an F1, variance ¼, taken half and half.
    assert found.founders[0].sd == pytest.approx(sqrt(1 / 8), rel=0.05)


def test_what_cannot_be_followed_is_refused() -> None:
    arrays = _family((2, 2))
    for lengths in ([], [-1.0]):
        with pytest.raises(ValueError, match="chromosomes of 0 cM or more"):
            share_spread(arrays, 3, lengths)

    def stop(done: int, of: int) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        share_spread(arrays, 3, [100.0], tick=stop)
    count = 12
    pools = PedigreeArrays.from_parents(
        [-1, *range(count)],
        [-1] * (count + 1),
        pool=[True] * (count + 1),
        fixation=[0.0] + [np.nan] * count,
        raised=["founder"] + ["sibbed_in"] * count,
    )
    with pytest.raises(Fault, match="too many generations"):
        share_spread(pools, count, [100.0])


def test_every_crop_has_map_lengths() -> None:
    for crop in crops():
        lengths = map_lengths(crop)
        assert lengths is not None
        assert crop.chromosomes == len(lengths) * crop.ploidy
        assert all(30 <= length <= 250 for length in lengths)
        assert crop.facts["map"]["length_cM"]["source"]
        stated = crop.facts["map"]["length_cM"]
        assert sum(lengths) == pytest.approx(stated["value"])
        assert stated.get("low", 0) <= stated["value"] <= stated.get("high", 1e9)
    pea = crop_named("pea")
    assert pea is not None
    assert len(map_lengths(pea) or ()) == 7
