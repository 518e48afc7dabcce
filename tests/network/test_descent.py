"""Descendants counted together are those counted one by one, whatever the number of plants."""

from __future__ import annotations

import numpy as np
import pytest

from pedigreeview.network import descent


@pytest.mark.parametrize("compiled_from", [0, 10**9])
@pytest.mark.parametrize("count", [0, 1, 63, 64, 65, 200])
def test_counts_of_any_number_of_plants(
    monkeypatch: pytest.MonkeyPatch, count: int, compiled_from: int
) -> None:
    monkeypatch.setattr(descent, "COMPILED_FROM", compiled_from)
    monkeypatch.setattr(descent, "_AT_ONCE", 50)
    rng = np.random.default_rng(count)
    parents = [
        sorted(set(rng.integers(0, row, 2).tolist())) if row and rng.random() < 0.8 else []
        for row in range(count)
    ]
    reached: list[set[int]] = []
    for older in parents:
        reached.append(set(older).union(*(reached[parent] for parent in older)))
    expected = [sum(row in behind for behind in reached) for row in range(count)]
    starts = np.cumsum([0, *map(len, parents)])
    older_rows = np.array([parent for older in parents for parent in older], np.int64)
    found = descent.descendant_counts(starts, older_rows, np.arange(count), count)
    assert found == expected


@pytest.mark.parametrize("compiled_from", [0, 10**9])
def test_a_loop_is_gone_round(monkeypatch: pytest.MonkeyPatch, compiled_from: int) -> None:
    monkeypatch.setattr(descent, "COMPILED_FROM", compiled_from)
    # 0 is a founder and a parent of 3; 1, 2 and 3 go round in a loop.
    starts, older = np.array([0, 0, 1, 2, 4]), np.array([2, 3, 0, 1])
    assert descent.descendant_counts(starts, older, np.arange(4), 1) == [3, 3, 3, 3]
