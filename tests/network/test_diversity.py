"""Diversity of groups."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from math import inf, isnan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled
from pedigreeview.network import PedigreeArrays, PedigreeNetwork, sweeps
from pedigreeview.network.diversity import (
    diversity,
    effective_ancestors,
    genome_equivalents_by_retention,
)
from tests.network.random_books import books
from tests.published.cases import CHECKS, pedigree_book

TOLERANCE = 1e-12


def test_bottleneck() -> None:
    """F02: definitions of Boichard et al. 1997 from memory, figures worked out."""
    case = CHECKS["F02"]
    expected = case["expected"]
    net = PedigreeNetwork.from_records(pedigree_book(case["input"]["rows"]))
    row = net._compiled[0].of_plant
    group = [row[code] for code in case["input"]["group"]]
    found = diversity(net.arrays, group)
    shares = {row[code]: float(Fraction(p)) for code, p in expected["contribution"].items()}
    assert dict(found.founder_shares) == shares
    assert found.founder_equivalents == float(expected["founder_equivalents"])
    assert found.status_number == pytest.approx(float(Fraction(expected["mean_kinship_form"])))
    ancestors = effective_ancestors(net.arrays, group)
    assert ancestors.low == ancestors.high == float(expected["effective_ancestors"])
    assert ancestors.ancestors == ((row["P"], 0.5), (row["Q"], 0.5))
    assert ancestors.left == 0


@settings(max_examples=80)
@given(books(ploidies=(2, 2, 4)), st.data())
def test_sums_over_the_group_are_those_of_the_table(book: Book, data: st.DataObject) -> None:
    arrays = PedigreeNetwork.from_records(book).arrays
    rows = data.draw(st.lists(st.integers(0, len(arrays) - 1), min_size=1, unique=True))
    found = diversity(arrays, rows)
    theta = arrays.coancestry_columns(rows)[rows]
    assert found.mean_coancestry == pytest.approx(theta.mean(), abs=TOLERANCE)
    if len(rows) > 1:
        others = theta[~np.eye(len(rows), dtype=bool)].mean()
        assert found.mean_coancestry_of_others == pytest.approx(others, abs=TOLERANCE)
    else:
        assert isnan(found.mean_coancestry_of_others)
    shares = arrays.founder_shares(rows).mean(axis=0)
    assert found.unknown_share == pytest.approx(1 - shares.sum(), abs=TOLERANCE)
    assert found.founder_equivalents <= 1 / np.sum(shares**2) + 1e-9 if shares.any() else True
    ancestors = effective_ancestors(arrays, rows)
    total = sum(value for _, value in ancestors.ancestors) + ancestors.left
    contributions = [value for _, value in ancestors.ancestors]
    assert all(b <= a + 1e-9 for a, b in pairwise(contributions))
    if found.unknown_share < TOLERANCE:
        assert total == pytest.approx(1)
        assert ancestors.left == pytest.approx(0, abs=1e-9)
        assert ancestors.high <= found.founder_equivalents + 1e-6
    assert ancestors.low <= ancestors.high


def _at(group: list[int], row: int) -> list[int]:
    return [place for place, member in enumerate(group) if member == row]


def _by_definition(arrays: PedigreeArrays, group: list[int]) -> list[float]:
    """Marginal contributions with the pedigree truly cut and computed anew each time."""
    seed, pollen = arrays.seed.copy(), np.full(len(arrays), -1)
    single = np.diff(arrays.option_starts) == 1
    pollen[single] = arrays.options[arrays.option_starts[:-1][single]]
    table = arrays.contributions(group)
    behind = {
        row for row in range(len(arrays)) if (np.delete(table[row], _at(group, row)) > 0).any()
    }
    chosen: list[int] = []
    found: list[float] = []
    while True:
        cut = PedigreeArrays.from_parents(seed, pollen)
        table = cut.contributions(range(len(cut)))
        q = table[:, group].mean(axis=1)
        explained = table[chosen].sum(axis=0) if chosen else np.zeros(len(cut))
        marginal = q * (1 - explained)
        for row in range(len(cut)):
            if row in chosen or not (row in behind or arrays.origin[row] == 0):
                marginal[row] = 0
        if marginal.max() < 1e-12:
            return found
        best = int(np.argmax(marginal >= marginal.max() - TOLERANCE))
        found.append(float(marginal[best]))
        chosen.append(best)
        seed[best] = pollen[best] = -1


@settings(max_examples=60)
@given(st.integers(0, 10_000))
def test_marginal_contributions_are_those_of_cutting(number: int) -> None:
    rng = np.random.default_rng(number)
    count, founders = int(rng.integers(6, 30)), int(rng.integers(2, 6))
    seeds = [-1] * founders + [int(rng.integers(max(0, n - 9), n)) for n in range(founders, count)]
    pollens = [-1] * founders + [
        int(rng.integers(max(0, n - 9), n)) for n in range(founders, count)
    ]
    # Two different parents: the oracle below reads seed and pollen parents alone.
    pollens = [
        p if p != s or p < 0 else (p + 1) % n
        for n, (s, p) in enumerate(zip(seeds, pollens, strict=True))
    ]
    arrays = PedigreeArrays.from_parents(seeds, pollens)
    group = sorted(rng.choice(count, size=int(rng.integers(1, 6)), replace=False).tolist())
    found = effective_ancestors(arrays, group)
    expected = _by_definition(arrays, group)
    assert [value for _, value in found.ancestors] == pytest.approx(expected, abs=1e-9)
    assert found.high == pytest.approx(1 / np.sum(np.square(expected)))


def test_the_range_holds_where_the_choice_is_cut_short() -> None:
    rng = np.random.default_rng(2)
    seeds = [-1] * 12 + [int(rng.integers(max(0, n - 30), n)) for n in range(12, 200)]
    pollens = [-1] * 12 + [int(rng.integers(max(0, n - 30), n)) for n in range(12, 200)]
    arrays = PedigreeArrays.from_parents(seeds, pollens)
    whole = effective_ancestors(arrays, range(180, 200))
    assert whole.low == pytest.approx(whole.high)
    for most in (1, 3, 6):
        part = effective_ancestors(arrays, range(180, 200), most=most)
        assert len(part.ancestors) == most
        assert part.low <= whole.high <= part.high
        assert part.left > 0


def test_unknown_parents_are_founders_of_their_own() -> None:
    """Two plants of A by unknown parents: shares ½, ¼, ¼, so fe = 1/(¼ + ⅛) = 8/3; by hand."""
    arrays = PedigreeArrays.from_parents([-1, 0, 0], [-1, -1, -1])
    found = diversity(arrays, [1, 2])
    assert found.unknown_share == 0.5
    assert found.founder_equivalents == pytest.approx(8 / 3)
    ancestors = effective_ancestors(arrays, [1, 2])
    assert ancestors.high == pytest.approx(8 / 3)
    assert ancestors.ancestors == ((0, 0.5),)
    # As a pool each seed has its own: endlessly many, which add nothing to the sum of squares.
    pool = PedigreeArrays.from_parents([-1, 0], [-1, -1], pool=[0, 1])
    assert diversity(pool, [1]).founder_equivalents == 4


def test_clones_and_pools_in_a_group() -> None:
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2, 2, 0],
        [-1, -1, 1, -1, -1, 1],
        pool=[1, 1, 0, 0, 0, 1],
        raised=["founder"] * 2 + ["cross", "cutting_of", "cutting_of", "cross"],
    )
    clones = diversity(arrays, [3, 4])
    assert clones.mean_coancestry == 0.5
    assert clones.status_number == 1
    assert effective_ancestors(arrays, [3, 4]).ancestors == ((2, 1.0),)
    assert diversity(arrays, [0]).status_number == 0.5
    assert diversity(arrays, [5]).mean_coancestry == 0.5
    unrelated = PedigreeArrays.from_parents([-1], [-1], pool=[1], fixation=0.0)
    assert diversity(unrelated, [0]).status_number == inf


def test_retention_of_founders_that_are_all_held_or_half_lost() -> None:
    """Lacy 1989's Σ p²/r: two founders with one offspring keep half of their alleles; by hand."""
    arrays = PedigreeArrays.from_parents([-1, -1, 0], [-1, -1, 1])
    assert genome_equivalents_by_retention(arrays, [0, 1], replicates=50) == 2
    # p = ½ each, r = ½ each: 1/(½ + ½) = 1, as by mean kinship (½ for one plant).
    assert genome_equivalents_by_retention(arrays, [2], replicates=50) == 1
    many = PedigreeArrays.from_parents([-1, -1] + [0] * 30, [-1, -1] + [1] * 30)
    held = genome_equivalents_by_retention(many, range(2, 32), replicates=400)
    assert held == pytest.approx(2, abs=1e-4)
    # A parent known for one side: the unknown parent is a founder with one offspring too.
    half = PedigreeArrays.from_parents([-1, 0], [-1, -1])
    assert genome_equivalents_by_retention(half, [1], replicates=50) == 1


@pytest.mark.parametrize(("ploidy", "expected"), [(2, 1.0), (4, 2.0)])
def test_pure_lines_and_polyploids_count_as_by_kinship(ploidy: int, expected: float) -> None:
    plant = PedigreeArrays.from_parents([-1], [-1], ploidy=ploidy)
    assert diversity(plant, [0]).status_number == pytest.approx(expected)
    assert genome_equivalents_by_retention(plant, [0], replicates=50) == pytest.approx(expected)
    line = PedigreeArrays.from_parents([-1], [-1], pool=[1], ploidy=ploidy)
    assert diversity(line, [0]).status_number == 0.5
    assert genome_equivalents_by_retention(line, [0], replicates=50) == 0.5


def test_compiled_and_plain_roads_agree(monkeypatch: pytest.MonkeyPatch) -> None:
    rng = np.random.default_rng(9)
    seeds = [-1] * 8 + [int(rng.integers(max(0, n - 20), n)) for n in range(8, 120)]
    pollens = [-1] * 8 + [int(rng.integers(max(0, n - 20), n)) for n in range(8, 120)]

    def found() -> tuple[float, ...]:
        arrays = PedigreeArrays.from_parents(seeds, pollens)
        group = diversity(arrays, range(100, 120))
        ancestors = effective_ancestors(arrays, range(100, 120))
        return group.mean_coancestry, group.founder_equivalents, ancestors.low, ancestors.high

    plain = found()
    monkeypatch.setattr(sweeps, "COMPILED_FROM", 0)
    assert found() == pytest.approx(plain, abs=1e-12)


def test_an_empty_group_is_refused_and_a_long_choice_can_be_cancelled() -> None:
    arrays = PedigreeArrays.from_parents([-1], [-1])
    with pytest.raises(ValueError, match="one plant or more"):
        diversity(arrays, [])

    def stop(done: int, of: int) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        effective_ancestors(arrays, [0], tick=stop)
