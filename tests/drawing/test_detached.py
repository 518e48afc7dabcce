"""A pinned plant that no line joins to the picture stands close to the rest of it.

Common practice, no source.
"""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import pedigreeview
from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.theme import sizes
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from tests.drawing.random_books import add_cross, books
from tests.drawing.test_own_tracks import bars_too_close, uprights_too_close

GRID, GAP = sizes().grid, sizes().tag_gap
FRESH, HELD = 2 * GAP + GRID, 6 * GAP + GRID
"""Most room beside a part that no line joins to the rest: in a new picture, and where it stood."""


def joined(placed: Placed, key: str) -> set[str]:
    """Keys of all blocks that lines join to one."""
    beside: dict[str, set[str]] = {item.block.key: set() for item in placed.blocks}
    for link in placed.view.links:
        beside[link.above].add(link.below)
        beside[link.below].add(link.above)
    seen, ahead = {key}, [key]
    while ahead:
        for other in beside[ahead.pop()] - seen:
            seen.add(other)
            ahead.append(other)
    return seen


def room_beside(placed: Placed, code: str) -> float:
    """How far a pinned plant stands beside all blocks and lines that are not joined to it."""
    own = joined(placed, placed.view.block_of(code))
    rest = [item for item in placed.blocks if item.block.key not in own]
    part = [item for item in placed.blocks if item.block.key in own]
    if not rest or placed.view.block_of(placed.view.focus or "") in own:
        return 0.0
    left, right = min(item.x for item in part), max(item.right for item in part)
    points = [
        x
        for line in placed.lines
        for link, way in line.routes
        if link.above not in own
        for x, _ in way
    ]
    end = max([item.right for item in rest] + points)
    start = min([item.x for item in rest] + points)
    return max(left - end, start - right, 0.0)


def overlapping(placed: Placed) -> list[tuple[str, str]]:
    return [
        (one.block.key, other.block.key)
        for one, other in itertools.combinations(placed.blocks, 2)
        if one.x < other.right
        and other.x < one.right
        and one.y < other.bottom
        and other.y < one.bottom
    ]


def with_strangers(book: Book) -> Book:
    """A second family of some generations that has nothing to do with the first."""
    for code in ("Z1", "Z2"):
        book.add(Plant(plant=code, kind="variety"))
    add_cross(book, "z", "Z1", "Z2")
    for number in range(3):
        book.add(Plant(plant=f"z-{number}", cross="z"))
    add_cross(book, "zz", "z-0", "z-0")
    book.add(Plant(plant="zz-0", cross="zz"))
    return book


STRANGERS = ("Z1", "Z2", "z-1", "zz-0")


@settings(max_examples=40, deadline=None)
@given(books(), st.data())
def test_strangers_stand_close_and_nothing_overlaps(book: Book, data: st.DataObject) -> None:
    net = PedigreeNetwork.from_records(with_strangers(book))
    own = [code for code in net.codes if not code.lower().startswith("z")]
    pins = tuple(data.draw(st.lists(st.sampled_from(STRANGERS), min_size=1, max_size=3)))
    first, second = data.draw(st.sampled_from(own)), data.draw(st.sampled_from(own))
    placed = place(choose(net, Look(focus=first, pins=pins)))
    then = place(choose(net, Look(focus=second, pins=pins)), placed)
    for made in (placed, then):
        assert overlapping(made) == []
        assert bars_too_close(made) == []
        assert uprights_too_close(made) == []
    for made, most in ((placed, FRESH), (then, HELD)):
        strange = sorted(set(pins))
        # Each pin is close to the rest, in which the pins before it are counted.
        near = min(room_beside(made, code) for code in strange)
        assert near <= most


@pytest.mark.parametrize(
    ("name", "most"),
    [("two_peas_both_ways", 114), ("a_leaf_for_hollin_plate", 762), ("tansy_and_the_moths", 258)],
)
def test_in_the_demos_none_stands_far_away(name: str, most: int) -> None:
    """most : the room there was before anything saw to it, in the same pictures"""
    net = pedigreeview.read(demo(name))
    codes = list(net.codes)
    assert most > FRESH
    for focus, pin in zip(codes[3::17], reversed(codes[::17]), strict=False):
        placed = place(choose(net, Look(focus=focus, pins=(pin,))))
        assert room_beside(placed, pin) <= FRESH
        assert overlapping(placed) == []


def test_the_focus_stands_still_when_a_stranger_is_pinned() -> None:
    net = pedigreeview.read(demo("a_leaf_for_hollin_plate"))
    before = place(choose(net, Look(focus="18-01-07")))
    for pin in list(net.codes)[::40]:
        after = place(choose(net, Look(focus="18-01-07", pins=(pin,))), before)
        one, other = before.block_of("18-01-07"), after.block_of("18-01-07")
        assert one is not None
        assert other is not None
        assert (one.x, one.y) == (other.x, other.y)
