"""The tabs of tags, which say how much is folded away: they meet no line, no other block, no tab.

A property over random books: that a mark beside a line must not look like part of it is common
practice, no source.
"""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QRectF

import pedigreeview
from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.mirrored import mirrored
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.tabs import TAB_TYPE, has_chevron, tab_rects
from pedigreeview.drawing.theme import sizes
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from tests.drawing.random_books import books
from tests.network.random_books import books as all_origins

DETAILS = (0.35, 0.45, 0.6, 1.0, 2.0)
TAG = QRectF(0, 0, 108, 60)


def rect_of(item) -> QRectF:
    return QRectF(item.x, item.y, item.width, item.height)


def tabs_of(placed: Placed, detail: float) -> list[tuple[str, QRectF]]:
    return [
        (item.block.key, tab)
        for item in placed.blocks
        for tab in tab_rects(item.block, rect_of(item), detail)
        if tab is not None
    ]


def strokes(placed: Placed) -> list[tuple[str, QRectF]]:
    """Every straight piece of every line, and the short lines of unknown parents, as thick as
    they are drawn."""
    pieces = [
        (line.key, one, other)
        for line in placed.lines
        for _, points in line.routes
        for one, other in itertools.pairwise(points)
    ]
    for end in placed.open_ends:
        down = placed.orientation == "down"
        far = (end.x, end.y - end.length) if down else (end.x - end.length, end.y)
        pieces.append((end.knot, (end.x, end.y), far))
    half = sizes().line / 2
    return [
        (
            key,
            QRectF(min(a[0], b[0]), min(a[1], b[1]), abs(a[0] - b[0]), abs(a[1] - b[1])).adjusted(
                -half, -half, half, half
            ),
        )
        for key, a, b in pieces
    ]


def touching(placed: Placed, detail: float) -> list[tuple[str, str]]:
    """Tabs with what they touch: a line, a block that is not theirs, another tab."""
    tabs, lines = tabs_of(placed, detail), strokes(placed)
    blocks = [(item.block.key, rect_of(item)) for item in placed.blocks]
    found = [(key, line) for key, tab in tabs for line, rect in lines if tab.intersects(rect)]
    found += [
        (key, other)
        for key, tab in tabs
        for other, rect in blocks
        if other != key and tab.intersects(rect)
    ]
    found += [
        (one[0], other[0])
        for one, other in itertools.combinations(tabs, 2)
        if one[1].intersects(other[1])
    ]
    return found


@settings(max_examples=40, deadline=None)
@given(st.one_of(books(), all_origins(most=14)), st.data())
def test_a_tab_meets_no_line_and_no_other_block(book, data) -> None:
    net = PedigreeNetwork.from_records(book)
    focus = data.draw(st.sampled_from(list(net.codes)))
    up, down = data.draw(st.integers(0, 2)), data.draw(st.integers(0, 2))
    view = choose(net, Look(focus=focus, up=up, down=down))
    for orientation in ("down", "right"):
        placed = place(view, orientation=orientation)
        for detail in DETAILS:
            assert touching(placed, detail) == []


@pytest.mark.parametrize("name", ["two_peas_both_ways", "a_leaf_for_hollin_plate"])
@pytest.mark.parametrize("columns", [1, 3])
def test_nor_does_it_in_a_mirrored_pair(name: str, columns: int) -> None:
    net = pedigreeview.read(demo(name))
    seen = 0
    for cross in net.book.crosses:
        for other in net.reciprocal_of(cross):
            held = net.book.crosses[cross]
            sides = ((held.seed_parent, held.pollen_parent), ((cross,), (other,)))
            placed = mirrored(net, *sides, columns=columns).placed
            seen += len(tabs_of(placed, 1.0))
            for detail in DETAILS:
                assert touching(placed, detail) == []
    assert seen


@pytest.mark.parametrize("more", [1, 27, 276, 1500])
@pytest.mark.parametrize("detail", DETAILS)
def test_its_number_has_room(more: int, detail: float) -> None:
    _, tab = tab_rects(Block("x", "tag", 0, more_down=more), TAG, detail)
    assert tab is not None
    block = Block("x", "tag", 0, more_down=more)
    large = tab.height() / 14
    # A digit of a common sans serif type is 0.56 to 0.64 of its size wide; from memory.
    room = tab.width() - (13 * large if has_chevron(block, detail) else 0)
    assert 0.6 * len(str(more)) * TAB_TYPE * large <= room


def test_far_out_a_short_number_is_as_large_as_before_it_had_to_keep_clear() -> None:
    """10 pixels of type from 0.45 on, as everywhere near; the chevron goes first."""
    for detail in (0.45, 0.6, 0.9):
        block = Block("x", "tag", 0, more_down=7)
        _, tab = tab_rects(block, TAG, detail)
        assert tab is not None
        assert TAB_TYPE * tab.height() / 14 * detail >= 9.0
    assert has_chevron(Block("x", "tag", 0, more_down=7), 1.0)
    assert not has_chevron(Block("x", "tag", 0, more_down=7), 0.4)
