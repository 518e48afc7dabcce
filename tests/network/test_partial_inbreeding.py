"""The parts of inbreeding by founder: add up on books of every origin, and agree with counting."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled
from pedigreeview.network import PedigreeArrays, PedigreeNetwork
from pedigreeview.network import partial_inbreeding as module
from pedigreeview.network.partial_inbreeding import PartialInbreeding, partial_inbreeding
from tests.network.random_books import books
from tests.published.cases import CHECKS, pedigree_book

TOLERANCE = 1e-12


def _sum(parts: PartialInbreeding) -> float:
    named = (*parts.founders, *parts.taken_as_fixed)
    return sum(value for _, value in named) + parts.unknown


def test_the_two_parts_of_wrights_example() -> None:
    """PI1: Lynch & Walsh 1998, ch. 7 example 1, after Wright 1922 (figures read)."""
    case = CHECKS["PI1"]
    net = PedigreeNetwork.from_records(pedigree_book(case["input"]["rows"]))
    row = {code: net._compiled[0].of_plant[code] for code in net.codes}
    parts = partial_inbreeding(net.arrays, row[case["input"]["target"]])
    expected = {row[code]: float(value) for code, value in case["expected"]["partial"].items()}
    assert dict(parts.founders) == expected
    assert parts.unknown == 0
    assert parts.total == 0.140625


@settings(max_examples=150)
@given(books(ploidies=(2, 2, 4, 6)))
def test_the_parts_add_up_to_the_inbreeding(book: Book) -> None:
    arrays = PedigreeNetwork.from_records(book).arrays
    for row in range(len(arrays)):
        parts = partial_inbreeding(arrays, row)
        assert _sum(parts) == pytest.approx(arrays.inbreeding()[row], abs=TOLERANCE)
        assert parts.total == arrays.inbreeding()[row]
        share = dict(zip(arrays.founders.tolist(), arrays.founder_shares([row])[0], strict=True))
        for founder, value in parts.founders:
            assert 0 < value <= share[founder] + TOLERANCE
        assert parts.unknown > -TOLERANCE
        lines = {line for line, _ in parts.taken_as_fixed}
        assert not np.isnan(arrays.fixation[list(lines)]).any()


@st.composite
def _small(draw: st.DrawFn) -> tuple[list[tuple[int, int]], list[float]]:
    """Parents of few diploid plants, and the fixation, 0 or 1, of founders."""
    founders = draw(st.integers(1, 3))
    parents = [(-1, -1)] * founders
    for row in range(founders, founders + draw(st.integers(1, 5))):
        parents.append((draw(st.integers(-1, row - 1)), draw(st.integers(0, row - 1))))
    return parents, [draw(st.sampled_from((0.0, 1.0))) for _ in range(founders)]


@settings(max_examples=60)
@given(_small())
def test_the_parts_are_those_of_counting_all_patterns(
    small: tuple[list[tuple[int, int]], list[float]],
) -> None:
    """The oracle lists every way in which the alleles can fall and counts whose copy is double."""
    parents, fixed = small
    seeds, pollens = zip(*parents, strict=True)
    fixation = [*fixed, *[np.nan] * (len(parents) - len(fixed))]
    arrays = PedigreeArrays.from_parents(seeds, pollens, fixation=fixation)
    sides = [(row, p) for row, pair in enumerate(parents) for p in pair if pair != (-1, -1)]
    known = [side for side in sides if side[1] >= 0]
    counted: dict[int, Fraction] = {}
    last = len(parents) - 1
    for pattern in product((0, 1), repeat=len(known)):
        choice = iter(pattern)
        genotypes: list[list[tuple[int, int]]] = []
        for row, pair in enumerate(parents):
            if pair == (-1, -1):
                genotypes.append([(row, 0), (row, 0 if fixed[row] else 1)])
            else:
                genotypes.append([(-1, row) if p < 0 else genotypes[p][next(choice)] for p in pair])
        first, second = genotypes[last]
        if first == second:
            counted[first[0]] = counted.get(first[0], Fraction(0)) + Fraction(1, 2 ** len(known))
    parts = partial_inbreeding(arrays, last)
    assert dict(parts.founders) == pytest.approx(
        {founder: float(value) for founder, value in counted.items() if founder >= 0}
    )
    assert parts.unknown == pytest.approx(float(counted.get(-1, 0)))


def test_a_varietys_own_fixation_counts_for_it() -> None:
    """F2 of two pure lines: ½ of F from each; worked by hand."""
    arrays = PedigreeArrays.from_parents([-1, -1, 0, 2], [-1, -1, 1, 2], pool=[1, 1, 0, 0])
    assert partial_inbreeding(arrays, 0).founders == ((0, 1.0),)
    assert partial_inbreeding(arrays, 2).founders == ()
    assert partial_inbreeding(arrays, 3).founders == ((0, 0.25), (1, 0.25))


def test_what_a_line_was_taken_to_be_is_named_apart() -> None:
    """A line of A × B taken as fixed: descent gives ½, ¼ from each parent; the rest is taken."""
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0], [-1, -1, 1], pool=[1, 1, 1], fixation=[1.0, 1.0, 1.0]
    )
    parts = partial_inbreeding(arrays, 2)
    assert parts.founders == ((0, 0.25), (1, 0.25))
    assert parts.taken_as_fixed == ((2, 0.5),)


def test_an_unknown_parents_alleles_are_the_unknown_part() -> None:
    arrays = PedigreeArrays.from_parents([-1, 0, 1], [-1, -1, 1])
    parts = partial_inbreeding(arrays, 2)
    assert parts.founders == ((0, 0.25),)
    assert parts.unknown == 0.25


def test_many_ancestors_go_by_sweeps_to_the_same_parts(monkeypatch: pytest.MonkeyPatch) -> None:
    rng = np.random.default_rng(4)
    seeds = [-1] * 6 + [int(rng.integers(max(0, row - 12), row)) for row in range(6, 120)]
    pollens = [-1] * 6 + [int(rng.integers(max(0, row - 12), row)) for row in range(6, 120)]
    arrays = PedigreeArrays.from_parents(seeds, pollens)
    by_table = partial_inbreeding(arrays, 119)
    monkeypatch.setattr(module, "_LARGEST_TABLE", 0)
    by_sweeps = partial_inbreeding(arrays, 119)
    assert dict(by_sweeps.founders) == pytest.approx(dict(by_table.founders), abs=TOLERANCE)
    assert _sum(by_table) == pytest.approx(arrays.inbreeding()[119], abs=TOLERANCE)


def test_the_split_can_be_cancelled() -> None:
    def stop(done: int, of: int) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        partial_inbreeding(PedigreeArrays.from_parents([-1, 0], [-1, 0]), 1, tick=stop)
