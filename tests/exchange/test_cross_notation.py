"""Multiplication signs: read, written, and what tells the direction."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.faults import Fault
from pedigreeview.exchange import cross_notation
from pedigreeview.exchange.parentage_tree import Crossed, Named, Tree, alike, outline


@pytest.mark.parametrize(
    ("text", "shape", "known"),
    [
        # The registry of rhododendrons lists seed parent × pollen parent (NN1, read), but the
        # text alone does not say so.
        ("Loderi Pink Diamond × Polar Bear", "(Loderi Pink Diamond x Polar Bear)", False),
        ("(King of Shrubs × Crest) × Golden Star", "((King of Shrubs x Crest) x Golden Star)", 0),
        ("A x B", "(A x B)", False),
        ("A X (B x C)", "(A x (B x C))", False),
        ("A ♀ × B ♂", "(A x B)", True),
        ("A ♂ × B", "(B x A)", True),
        ("A × ♀ B", "(B x A)", True),
        ("A.K. (Harrow) × B", "(A.K. (Harrow) x B)", False),
        ("Max", "Max", None),
        ("((A×B))", "(A x B)", False),
    ],
)
def test_what_is_read(text: str, shape: str, known: bool | None) -> None:
    tree = cross_notation.parse(text)
    assert outline(tree) == shape
    assert (tree.direction_known if isinstance(tree, Crossed) else None) == known
    if isinstance(tree, Crossed):
        sure = cross_notation.parse(text, seed_parent_first=True)
        assert isinstance(sure, Crossed)
        assert sure.direction_known


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("A × B × C", "side by side"),
        ("A ×", "no name"),
        ("(A × B", "not closed"),
        ("A × B)", "not opened"),
        ("A ♀ × B ♀", "Both parents"),
        ("A (B × C)", "without a sign"),
        ("(A × B)(C × D)", "side by side"),
    ],
)
def test_what_is_refused(text: str, what: str) -> None:
    with pytest.raises(Fault, match=what):
        cross_notation.parse(text)


def test_the_order_follows_the_code() -> None:
    tree = Crossed(Named("Zeal"), Crossed(Named("Moss"), Named("Ash"), False))
    assert cross_notation.write(tree) == "Zeal × (Ash × Moss)"
    assert cross_notation.write(tree, order="alphabetical") == "(Ash × Moss) × Zeal"
    assert cross_notation.write(Crossed(Named("B"), Named("A")), signs=True) == "B ♀ × A ♂"


def trees() -> st.SearchStrategy[Tree]:
    names = st.sampled_from(["A", "Turkey Red", "A.K. (Harrow)", "21-01-3"])
    return st.recursive(
        names.map(Named), lambda inner: st.builds(Crossed, inner, inner), max_leaves=12
    )


@settings(max_examples=60)
@given(trees())
def test_a_tree_comes_back(tree: Tree) -> None:
    text = cross_notation.write(tree)
    assert alike(cross_notation.parse(text, seed_parent_first=True), tree)


@settings(max_examples=100)
@given(st.text("AB×x()♀♂ ", max_size=24))
def test_any_text_is_read_or_refused(text: str) -> None:
    try:
        assert outline(cross_notation.parse(text))
    except Fault:
        return


def test_thousands_of_brackets_are_no_trouble() -> None:
    tree = cross_notation.parse("(" * 5000 + "A" + " × B)" * 5000)
    assert isinstance(tree, Crossed)
