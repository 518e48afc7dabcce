"""Texts searched by their bytes, beside plain comparison of one text after the other."""

from __future__ import annotations

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.text_field import TextField, folded

LETTERS = st.text("aBß8- é", max_size=6)


@given(st.lists(LETTERS, max_size=12), LETTERS.map(folded).filter(bool))
@settings(max_examples=60, deadline=None)
def test_a_field_finds_what_plain_comparison_finds(texts: list[str], typed: str) -> None:
    field = TextField(texts)
    held = [folded(text) for text in texts]
    assert field.holding(typed).tolist() == [typed in text for text in held]
    assert field.beginning(typed).tolist() == [text.startswith(typed) for text in held]
    assert field.being(typed).tolist() == [text == typed for text in held]


def test_a_hundred_thousand_plants_are_searched_in_arrays() -> None:
    """What takes long must not be Python: the figures stand in tests/benchmarks/test_finding.py."""
    field = TextField([f"P{number:06d}" for number in range(100_000)])
    assert np.flatnonzero(field.holding("p04242")).tolist() == list(range(42420, 42430))
    assert field.holding("0").sum() == sum("0" in f"P{n:06d}" for n in range(100_000))


def test_texts_of_a_row() -> None:
    field = TextField(["a", "b", "c"], [1, 1, 4])
    assert [field.of_row(row) for row in range(6)] == [[], ["a", "b"], [], [], ["c"], []]
