"""The tabs of tags, which say how much is folded away: they meet no line, no other block, no tab.

A property over random books: that a mark beside a line must not look like part of it is common
practice, no source.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

import pedigreeview
from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.mirrored import mirrored
from pedigreeview.drawing.painter import paint
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.tabs import TAB_TYPE, has_chevron, tab_number, tab_rects
from pedigreeview.drawing.tags import draw_tabs
from pedigreeview.drawing.theme import Theme, sizes, theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from tests.drawing.random_books import books
from tests.network.random_books import books as all_origins

DETAILS = (0.35, 0.45, 0.6, 0.8, 1.0, 2.0)
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


@pytest.mark.parametrize("more", [1, 27, 276, 1500, 23456])
@pytest.mark.parametrize("detail", DETAILS)
def test_its_number_has_room(more: int, detail: float) -> None:
    _, tab = tab_rects(Block("x", "tag", 0, more_down=more), TAG, detail)
    assert tab is not None
    number = tab_number(more, detail)
    large = tab.height() / 14
    room = tab.width() - (10 * large if has_chevron(detail) else 0)
    # A digit of a common sans serif type is 0.56 to 0.64 of its size wide; from memory.
    assert 0.6 * len(number.text) * TAB_TYPE * large * number.narrow <= room


@pytest.mark.parametrize("detail", [*DETAILS, 0.5, 0.7, 0.79, 0.92])
def test_all_tabs_of_a_picture_are_as_high_and_their_type_as_tall(detail: float) -> None:
    tags = [Block("x", "tag", 0, more_down=more) for more in (1, 27, 276, 1500, 23456)]
    highs = {tab_rects(tag, TAG, detail)[1].height() for tag in tags}
    larges = {tab_number(tag.more_down, detail).large for tag in tags}
    assert len(highs) == len(larges) == 1


@pytest.mark.parametrize("detail", [0.45, 0.5, 0.6, 0.7, 0.79, 0.8, 0.92, 1.0])
@pytest.mark.parametrize("more", [7, 27, 276])
def test_far_out_a_number_is_as_tall_as_near(more: int, detail: float) -> None:
    """10 pixels of type from 0.45 on; one of three digits is little more than a third narrower."""
    number = tab_number(more, detail)
    assert TAB_TYPE * number.large * detail >= 9.0
    assert number.narrow >= 0.64


def test_far_out_the_chevrons_of_all_go_before_the_numbers_grow_small() -> None:
    assert has_chevron(1.0)
    assert not has_chevron(0.6)


def test_a_number_is_exact_as_long_as_it_has_room() -> None:
    assert [tab_number(more, 1.0).text for more in (3, 1500, 9999)] == ["3", "1500", "9999"]
    assert tab_number(23456, 1.0).text == "999+"


def test_a_tab_lies_above_the_ring_about_its_neighbour(gui: object) -> None:
    """The tab of the tag at the left reaches as far as the ring about the focus at the right."""
    net = pedigreeview.read(demo("a_leaf_for_hollin_plate"))
    placed = place(choose(net, Look(focus="18-01-07", up=2, down=2)))
    focus = next(item for item in placed.blocks if item.block.code == "18-01-07")
    reach = rect_of(focus).adjusted(-12, -12, 12, 12)
    close = [
        (item, tab)
        for item in placed.blocks
        if item is not focus
        for tab in tab_rects(item.block, rect_of(item), 1.0)[1:]
        if tab is not None and tab.intersects(reach)
    ]
    assert close
    look = theme("light")
    for item, tab in close:
        alone = _painted(
            look, tab, lambda on, one=item: draw_tabs(on, one.block, rect_of(one), look)
        )
        whole = _painted(look, tab, lambda on: paint(on, placed, look))
        assert alone == whole


def _painted(look: Theme, tab: QRectF, draw: Callable[[QPainter], None]) -> QImage:
    """What lies within a tab's edge."""
    inner = tab.adjusted(2, 2, -2, -2)
    image = QImage(round(inner.width()), round(inner.height()), QImage.Format.Format_RGB32)
    image.fill(QColor(look["ground"]))
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(-inner.left(), -inner.top())
        draw(painter)
    finally:
        painter.end()
    return image
