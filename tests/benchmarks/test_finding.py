"""Finding as one types, over codes, names, crosses, scores, statuses and notes of a whole book."""

from __future__ import annotations

import os
from typing import Any

import numpy as np
import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant, Score, Trait
from tests.benchmarks.pedigrees import scaled

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

TYPED = ("p", "a", "p00", "dwarf", "kept", "sweet 8", "dwarf kept", "dwarf sweet 8 kept")


def _book(plants: int) -> Book:
    rng = np.random.default_rng(2)
    book = Book()
    book.add(Trait("height", "category", values="tall;dwarf"))
    book.add(Trait("sweet", "score", low=1, high=9))
    crosses = max(1, plants // 50)
    for number in range(crosses):
        book.add(Cross(f"21-{number:04d}", f"P{number:06d}", f"P{number + 1:06d}"))
    status = ("kept", "culled", "growing", "")
    for number in range(plants):
        code = f"P{number:06d}"
        note = "Pods that split early in a wet year" if number % 3 == 0 else ""
        name, cross = f"Name {number}", f"21-{number % crosses:04d}"
        book.add(Plant(code, name=name, cross=cross, status=status[number % 4], note=note))
        book.add(Score(code, "height", value=("tall", "dwarf")[int(rng.integers(2))]))
        book.add(Score(code, "sweet", value=str(int(rng.integers(1, 10)))))
    return book


@pytest.mark.parametrize("typed", TYPED)
def test_finding(bench: Any, typed: str) -> None:
    from pedigreeview.window.find import PlantFinder

    plants = scaled(100_000)
    book = _book(plants)
    finder = PlantFinder(book, list(book.plants))
    texts = ["\n".join(finder.texts(row)).casefold() for row in range(plants)]
    words = typed.split()

    def search() -> int:
        rows = finder.found(typed)
        for row in rows.first(60):
            finder.why(row, typed)
        return len(rows)

    def by_hand() -> int:
        return sum(all(word in text for word in words) for text in texts)

    found, expected = bench(
        f"'{typed}' found among {plants:,} plants, with the reasons of the first 60",
        search,
        reference="a pass through one text a plant",
        run_reference=by_hand,
        reach="at most 50 ms at full size",
    )
    assert 0 < found <= expected
