"""Slash notation: published examples, ambiguity, and the way there and back."""

from __future__ import annotations

import json
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.faults import Fault
from pedigreeview.exchange import slash_notation
from pedigreeview.exchange.parentage_tree import Crossed, Named, Tree, alike, outline, shares

CHECKS = Path(__file__).resolve().parent.parent / "published" / "checks.json"


def published() -> list[Any]:
    """N01: Kephart 1993, read.  N02: course page on pedigree records, read.  N03: Blake and others
    2011, strings read, shares worked out.  N06: Bernard and others 1988, from memory."""
    held = json.loads(CHECKS.read_text(encoding="utf-8"))
    cases = held if isinstance(held, list) else held["checks"]
    return [
        pytest.param(item, id=f"{case['id']} {item['text']}")
        for case in cases
        if case["id"] in ("N01", "N02", "N03", "N06")
        for item in case["input"]["strings"]
    ]


@pytest.mark.parametrize("item", published())
def test_published_strings(item: dict[str, Any]) -> None:
    tree = slash_notation.parse(item["text"])
    if "tree" in item:
        assert outline(tree) == item["tree"]
    if "shares" in item:
        assert shares(tree) == {name: Fraction(text) for name, text in item["shares"].items()}
    if "same_as" in item:
        assert alike(tree, slash_notation.parse(item["same_as"]))
    if "last_cross" in item:
        assert isinstance(tree, Crossed)
        assert [outline(tree.seed), outline(tree.pollen)] == item["last_cross"]
    assert alike(slash_notation.parse(slash_notation.write(tree)), tree)


@pytest.mark.parametrize(
    ("text", "written"),
    [
        ("A / B", "A/B"),
        ("A/B//C", "A/B//C"),
        ("A/B/2/C/3/D", "A/B//C/3/D"),
        ("A/B///C", "A/B//C"),
        ("A*3/B", "A*3/B"),
        ("B/3*A", "B/3*A"),
        ("A/B*3", "A/3*B"),
        ("A*2/B//C/4*D", "A*2/B//C/4*D"),
        ("A/1*B", "A/B"),
        ("A//B/A", "A//B/A"),
        ("A/A", "A/A"),
        ("A", "A"),
        ("5 / 7 // B", "5 / 7 // B"),
    ],
)
def test_how_it_is_written(text: str, written: str) -> None:
    assert slash_notation.write(slash_notation.parse(text)) == written


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("A/B/C", "leave open which cross came first"),
        ("A/B//C//D", "leave open which cross came first"),
        ("A*2/B*3", "Both sides"),
        ("A*3", "no cross"),
        ("A/", "no name beside it"),
        ("/B", "no name beside it"),
        ("", "no name beside it"),
        ("A/(B/C)", "inside brackets"),
        ("A*0/B", "0 doses"),
        ("A*101/B", "101 doses"),
        ("A**2/B", "counts no doses"),
        ("A/0/B", "no height"),
    ],
)
def test_what_is_refused(text: str, what: str) -> None:
    with pytest.raises(Fault, match=what):
        slash_notation.parse(text)


NAMES = st.sampled_from(["A", "Turkey Red", "A.K. (Harrow)", "21-01-3", "7", "K-7 b"])


def trees() -> st.SearchStrategy[Tree]:
    return st.recursive(
        NAMES.map(Named), lambda inner: st.builds(Crossed, inner, inner), max_leaves=12
    )


@settings(max_examples=60)
@given(trees())
def test_a_tree_comes_back(tree: Tree) -> None:
    assert alike(slash_notation.parse(slash_notation.write(tree)), tree)


@settings(max_examples=100)
@given(st.text("AB/*23() ", max_size=24))
def test_any_text_is_read_or_refused(text: str) -> None:
    try:
        tree = slash_notation.parse(text)
    except Fault:
        return
    assert sum(shares(tree).values()) == 1


def test_five_thousand_crosses_in_a_row_are_read() -> None:
    text = "A" + "".join(f"/{height}/B" for height in range(1, 3000))
    tree = slash_notation.parse(text)
    assert shares(tree)["A"] == Fraction(1, 2**2999)
    with pytest.raises(Fault, match="too long"):
        slash_notation.parse("A" * 300_000)


def test_marks_inside_a_name_are_replaced_by_signs_that_part_nothing() -> None:
    assert slash_notation.write(Crossed(Named("A/B"), Named("C*"))) == "A\u2215B/C\u2217"
