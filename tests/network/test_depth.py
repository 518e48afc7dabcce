"""Depth and completeness of pedigrees."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.network import PedigreeArrays, PedigreeNetwork
from pedigreeview.network.depth import (
    completeness_index,
    generation_equivalents,
    known_share_by_generation,
)
from pedigreeview.network.origins import Origin
from tests.network.random_books import books
from tests.published.cases import CHECKS, pedigree_book


def test_the_six_calves() -> None:
    """G01: pedigree of Mrode 2014 (read); definitions of Maignel et al. 1996, Boichard et al. 1997
    and MacCluer et al. 1983 from memory, figures worked out."""
    case = CHECKS["G01"]
    net = PedigreeNetwork.from_records(pedigree_book(case["input"]["rows"]))
    row = net._compiled[0].of_plant
    expected = case["expected"]
    found = generation_equivalents(net.arrays)
    for code, value in expected["generation_equivalents"].items():
        assert found[row[code]] == float(Fraction(value))
    known = known_share_by_generation(net.arrays, [row["6"]], 3)[0]
    shares = expected["known_share_by_generation"]["6"]
    assert known.tolist() == [float(Fraction(shares[str(n)])) for n in (1, 2, 3)]
    index = expected["completeness_index"]["6"]
    assert completeness_index(net.arrays, row["6"], index["generations"]) == pytest.approx(
        float(Fraction(index["value"]))
    )


def _complete(generations: int) -> PedigreeArrays:
    count = 2**generations
    seeds, pollens = [-1] * count, [-1] * count
    first = 0
    for step in range(generations):
        width = 2 ** (generations - step)
        seeds += [first + 2 * at for at in range(width // 2)]
        pollens += [first + 2 * at + 1 for at in range(width // 2)]
        first += width
    return PedigreeArrays.from_parents(seeds, pollens)


@pytest.mark.parametrize("generations", [1, 3, 5])
def test_a_complete_pedigree_has_index_one(generations: int) -> None:
    arrays = _complete(generations)
    last = len(arrays) - 1
    assert generation_equivalents(arrays)[last] == generations
    assert completeness_index(arrays, last, generations) == 1
    known = known_share_by_generation(arrays, [last], generations + 1)[0]
    assert known.tolist() == [1.0] * generations + [0.0]


def test_steps_that_make_seed_count_and_cuttings_do_not() -> None:
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2, 2, 2, 2, 0],
        [-1, -1, 1, -1, -1, -1, 2, 1],
        selfings=[0, 0, 0, 0, 0, 0, 0, 3],
        raised=["founder"] * 2
        + ["cross", "cutting_of", "doubled_haploid_of", "doubled_of", "cross", "cross"],
    )
    assert generation_equivalents(arrays).tolist() == [0, 0, 1, 1, 2, 1, 2, 4]
    assert completeness_index(arrays, 3, 1) == completeness_index(arrays, 6, 2) == 1
    assert completeness_index(arrays, 7, 4) == 1
    assert completeness_index(arrays, 7, 5) == pytest.approx(4 / 5)
    assert completeness_index(arrays, 0, 3) == 0


def test_an_uncertain_pollen_parent_is_known_as_far_as_its_odds() -> None:
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2], [-1, -1, -1, 2], candidates=[(2, 1, 0.25), (2, 0, 0.25)]
    )
    assert generation_equivalents(arrays)[2] == 0.75
    assert known_share_by_generation(arrays, [3], 3)[0].tolist() == [1, 0.75, 0]
    # 4 · ½ · ¼ / (½ + ¼)
    assert completeness_index(arrays, 2, 1) == pytest.approx(2 / 3)


@settings(max_examples=60)
@given(books(ploidies=(2, 4)))
def test_equivalents_are_the_sum_of_the_known_shares(book: Book) -> None:
    arrays = PedigreeNetwork.from_records(book).arrays
    rows = [row for row in range(len(arrays)) if arrays.origin[row] != Origin.FATHER]
    equivalents = generation_equivalents(arrays)
    deepest = len(arrays) + int(arrays.selfings.sum())
    known = known_share_by_generation(arrays, rows, deepest)
    np.testing.assert_allclose(known.sum(axis=1), equivalents[rows], atol=1e-12)
    assert ((known >= 0) & (known <= 1 + 1e-12)).all()
    assert (np.diff(known, axis=1) <= 1e-12).all()
    for row in rows:
        assert 0 <= completeness_index(arrays, row, 4) <= 1 + 1e-12


def test_an_index_over_no_generation_is_refused() -> None:
    with pytest.raises(ValueError, match="one generation or more"):
        completeness_index(PedigreeArrays.from_parents([-1], [-1]), 0, 0)
