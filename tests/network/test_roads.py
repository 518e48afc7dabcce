"""Every road to the same numbers: block and traversal, plain and compiled."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.network import PedigreeArrays, PedigreeNetwork, sweeps
from pedigreeview.network.inbreeding import compute
from tests.network.random_books import books


def _agree(arrays: PedigreeArrays) -> None:
    by_block, by_walks = compute(arrays, "block"), compute(arrays, "traversal")
    for name in ("inbreeding", "self_coancestry", "innovation"):
        np.testing.assert_allclose(getattr(by_block, name), getattr(by_walks, name), atol=1e-12)


def _again(arrays: PedigreeArrays) -> PedigreeArrays:
    return PedigreeArrays.from_rows(
        [arrays.row(index) for index in range(len(arrays))], arrays.double_reduction
    )


@settings(max_examples=80)
@given(books(ploidies=(2, 2, 4)))
def test_block_and_traversal_agree(book: Book) -> None:
    _agree(_again(PedigreeNetwork.from_records(book).arrays))


@settings(max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(book=books(ploidies=(2, 2, 4)))
def test_compiled_kernels_give_the_plain_numbers(
    monkeypatch: pytest.MonkeyPatch, book: Book
) -> None:
    plain = PedigreeNetwork.from_records(book).arrays
    everything = np.arange(len(plain))
    expected = plain.coancestry_columns(everything)
    among = plain.coancestry_between(everything[::2], everything[::3])
    with monkeypatch.context() as patch:
        patch.setattr(sweeps, "COMPILED_FROM", 0)
        fast = _again(plain)
        assert fast.weights.compiled or not len(fast)
        _agree(fast)
        np.testing.assert_allclose(fast.inbreeding(), plain.inbreeding(), atol=1e-12)
        np.testing.assert_allclose(fast.coancestry_columns(everything), expected, atol=1e-12)
        found = fast.coancestry_between(everything[::2], everything[::3])
        np.testing.assert_allclose(found, among, atol=1e-12)
        for row in range(0, len(plain), 5):
            np.testing.assert_allclose(fast.coancestry_with(row), expected[:, row], atol=1e-12)


def _random_parents(
    count: int, founders: int, seed: int, back: int
) -> tuple[np.ndarray, np.ndarray]:
    rng = np.random.default_rng(seed)
    seeds, pollens = np.full(count, -1), np.full(count, -1)
    for row in range(founders, count):
        low = max(0, row - back)
        seeds[row], pollens[row] = rng.integers(low, row, 2)
    return seeds, pollens


@pytest.mark.parametrize("back", [20, 400])
def test_roads_agree_on_larger_pedigrees(back: int) -> None:
    seeds, pollens = _random_parents(600, 10, 7, back)
    arrays = PedigreeArrays.from_parents(seeds, pollens)
    _agree(arrays)
    theta = np.zeros((600, 600))
    for row in range(600):
        s, p = seeds[row], pollens[row]
        if s < 0:
            theta[row, row] = 0.5
            continue
        theta[row, :row] = theta[:row, row] = 0.5 * (theta[s, :row] + theta[p, :row])
        f = theta[s, p] if s != p else theta[s, s]
        theta[row, row] = 0.5 * (1 + f)
    np.testing.assert_allclose(arrays.coancestry_columns(np.arange(600)), theta, atol=1e-12)


@given(st.integers(0, 5))
def test_a_founder_book_of_any_size_has_only_itself(count: int) -> None:
    arrays = PedigreeArrays.from_parents([-1] * count, [-1] * count)
    np.testing.assert_array_equal(arrays.inbreeding(), np.zeros(count))
    np.testing.assert_array_equal(arrays.coancestry_columns(range(count)), 0.5 * np.eye(count))
