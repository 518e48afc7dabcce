"""Gene drop at one locus, the second oracle: it agrees with the engine on books of every origin."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.network import PedigreeArrays, PedigreeNetwork
from pedigreeview.network.gene_drop import alleles_held, drop_alleles, estimate, members_drawn
from tests.network.random_books import books
from tests.published.cases import CHECKS

REPLICATES = 3000


def _bound(truth: np.ndarray, replicates: int) -> np.ndarray:
    """Six standard errors at most: a share per replicate within 0 and 1 has variance p(1 − p)."""
    spread = np.sqrt(np.maximum(truth * (1 - truth), 0) / replicates)
    return 6 * spread + 10 / replicates * (spread > 1e-9) + 1e-9


@settings(max_examples=60, derandomize=True)
@given(books(most=14, ploidies=(2, 2, 4, 6)))
def test_gene_drop_and_engine_agree(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    arrays = net.arrays
    rows = np.arange(len(arrays))
    if not len(rows) or members_drawn(arrays, rows) > 400:
        return
    found = estimate(arrays, rows.tolist(), REPLICATES, seed=len(rows))
    theta = arrays.coancestry_columns(rows)
    inbreeding = arrays.inbreeding()
    assert (np.abs(found.inbreeding - inbreeding) <= _bound(inbreeding, REPLICATES)).all()
    assert (np.abs(found.coancestry - theta) <= _bound(theta, REPLICATES)).all()


def test_the_stated_error_is_that_of_the_estimate() -> None:
    arrays = PedigreeArrays.from_parents([-1, -1, 0, 2, 2], [-1, -1, 1, 2, 2])
    many = [estimate(arrays, [3, 4], 200, seed=seed) for seed in range(200)]
    found = np.array([one.inbreeding[0] for one in many])
    assert found.std() == pytest.approx(many[0].inbreeding_error[0], rel=0.2)
    between = np.array([one.coancestry[0, 1] for one in many])
    assert between.std() == pytest.approx(many[0].coancestry_error[0, 1], rel=0.25)
    assert abs(between.mean() - 0.5) < 0.01


def test_double_reduction_of_one_in_seven() -> None:
    """T02: outcross F = α/3, first selfing (1 + 2α)/6 (formula from memory)."""
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 0], [-1, -1, 1, 0], ploidy=4, double_reduction=1 / 7
    )
    found = estimate(arrays, range(4), 40_000, seed=3)
    expected = CHECKS["T02"]["expected"]
    assert expected["F of unrelated cross"] == "1/21"
    assert found.inbreeding[2] == pytest.approx(1 / 21, abs=6 * found.inbreeding_error[2])
    assert found.inbreeding[3] == pytest.approx(3 / 14, abs=6 * found.inbreeding_error[3])
    assert found.coancestry[0, 2] == pytest.approx(1 / 8, abs=6 * found.coancestry_error[0, 2])


def test_the_same_seed_gives_the_same_alleles() -> None:
    arrays = PedigreeArrays.from_parents([-1, -1, 0, 0], [-1, -1, 1, 1])
    first, again, other = (
        [block[0] for block in drop_alleles(arrays, [3], 300, seed=seed)] for seed in (5, 5, 6)
    )
    np.testing.assert_array_equal(np.concatenate(first), np.concatenate(again))
    assert (np.concatenate(first) != np.concatenate(other)).any()


def test_a_plant_asked_for_twice_is_one_and_a_pool_gives_two_members() -> None:
    arrays = PedigreeArrays.from_parents([-1, -1, 0], [-1, -1, 1], pool=[0, 0, 1])
    plant, same, member, other = next(drop_alleles(arrays, [0, 0, 2, 2], 500))
    np.testing.assert_array_equal(plant, same)
    assert (member != other).any()


def test_alleles_held_by_the_progeny_of_a_founder() -> None:
    """n progeny hold 2 (1 − ½^n) alleles of an unrelated parent at a locus; worked by hand."""
    arrays = PedigreeArrays.from_parents([-1, -1, 0, 0, 0], [-1, -1, 1, 1, -1])
    of_founder, of_unknown = alleles_held(arrays, [2, 3, 4], replicates=20_000)
    assert of_founder[0] == pytest.approx(1.75, abs=0.02)
    assert of_founder[1] == pytest.approx(1.5, abs=0.02)
    assert of_unknown[4] == 1


def test_a_family_holds_all_that_its_parents_hold() -> None:
    arrays = PedigreeArrays.from_parents([-1, -1, 0], [-1, -1, 1], pool=[0, 1, 1])
    of_founder, _ = alleles_held(arrays, [2], replicates=50)
    assert of_founder == {0: 2.0, 1: 1.0}


def test_pools_behind_pools_too_deep_are_refused() -> None:
    count = 20
    arrays = PedigreeArrays.from_parents(
        [-1, *range(count)],
        [-1] * (count + 1),
        pool=[True] * (count + 1),
        fixation=[0.0] + [np.nan] * count,
        raised=["founder"] + ["sibbed_in"] * count,
    )
    with pytest.raises(Fault, match="too many generations"):
        drop_alleles(arrays, [count], 100)
    assert members_drawn(arrays, [3]) == 15


def test_the_drop_can_be_cancelled() -> None:
    def stop(done: int, of: int) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        estimate(PedigreeArrays.from_parents([-1], [-1]), [0], 100, tick=stop)
