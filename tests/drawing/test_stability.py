"""The picture after a fold, an edit or another depth: pinned exactly, order kept, nothing lost."""

from __future__ import annotations

import copy
import itertools

from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross
from tests.drawing.random_books import books as drawn_books
from tests.network.random_books import books as all_origins

QUICK = settings(max_examples=15, deadline=None)


def books() -> st.SearchStrategy[Book]:
    return st.one_of(drawn_books(), all_origins(most=14))


def net_of(book: Book) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(book)


def assert_whole(placed: Placed) -> None:
    """Every shown plant stands once, no blocks touch, parents stand above, lines end at blocks."""
    codes = [code for item in placed.blocks for code in item.block.codes]
    assert len(codes) == len(set(codes))
    assert set(codes) == placed.view.shown()
    for one, other in itertools.combinations(placed.blocks, 2):
        assert (
            one.right <= other.x
            or other.right <= one.x
            or one.bottom <= other.y
            or other.bottom <= one.y
        ), f"{one.block.key} lies on {other.block.key}"
    drawn = [link for line in placed.lines for link, _ in line.routes]
    assert sorted(map(repr, drawn)) == sorted(map(repr, placed.view.links))
    for line in placed.lines:
        for link, points in line.routes:
            above, below = placed.block(link.above), placed.block(link.below)
            assert above is not None
            assert below is not None
            assert line.back or above.bottom < below.y
            if not line.back:
                (x0, y0), (x1, y1) = points[0], points[-1]
                assert above.x <= x0 <= above.right
                assert above.y <= y0 <= above.bottom
                assert below.x <= x1 <= below.right
                assert below.y <= y1 <= below.bottom


def flips(old: Placed, new: Placed) -> tuple[int, int]:
    """Pairs of tags in one row of both pictures that changed sides, and all such pairs."""
    both = [(item, new.block(item.block.key)) for item in old.blocks if item.block.codes]
    kept = [(a, b) for a, b in both if b is not None]
    turned = pairs = 0
    for (a, b), (c, d) in itertools.combinations(kept, 2):
        if a.y == c.y and b.y == d.y:
            pairs += 1
            turned += (a.x < c.x) != (b.x < d.x)
    return turned, pairs


@QUICK
@given(books(), st.data())
def test_every_origin_has_a_whole_picture(book, data):
    net = net_of(book)
    focus = data.draw(st.sampled_from([None, *net.codes]))
    placed = place(choose(net, Look(focus=focus)))
    assert_whole(placed)
    assert place(choose(net_of(book), Look(focus=focus))) == placed


@QUICK
@given(books(), st.data())
def test_a_fold_leaves_the_focus_exactly_where_it_is(book, data):
    net = net_of(book)
    focus = data.draw(st.sampled_from(net.codes))
    before = place(choose(net, Look(focus=focus)))
    folds = [i.block.key for i in before.blocks if i.block.sort in ("pack", "chain")]
    # Without a fold in the picture the other relatives of the focus are opened.
    key = data.draw(st.sampled_from(folds)) if folds else f"down:{focus}"
    look = Look(focus=focus, unfolded=frozenset({key}))
    opened = place(choose(net, look), before)
    closed = place(choose(net, Look(focus=focus)), opened)
    for placed in (opened, closed):
        assert_whole(placed)
        assert placed.block_of(focus).middle == before.block_of(focus).middle


@QUICK
@given(books(), st.data())
def test_an_edit_leaves_the_focus_exactly_where_it_is(book, data):
    net = net_of(book)
    focus, other = (data.draw(st.sampled_from(net.codes)) for _ in range(2))
    before = place(choose(net, Look(focus=focus)))
    edited = copy.deepcopy(book)
    add_cross(edited, "new", focus, other)
    edited.add(Plant("new-1", cross="new"))
    after = place(choose(net_of(edited), Look(focus=focus)), before)
    assert_whole(after)
    # A plant that was in a fold gets a tag of its own when it becomes a parent.
    if before.view.block_of(focus) == after.view.block_of(focus):
        assert after.block_of(focus).middle == before.block_of(focus).middle


def test_order_holds_over_many_edits():
    """Of all pairs of tags in a row fewer than 8 in 100 change sides when a cross is added."""
    book = Book()
    codes = [f"V{number}" for number in range(6)]
    for code in codes:
        book.add(Plant(code, kind="variety"))
    turned = pairs = 0
    before = None
    for step in range(24):
        seed, pollen = codes[(7 * step) % len(codes)], codes[(5 * step + 3) % len(codes)]
        add_cross(book, f"x{step}", seed, pollen)
        for number in range(1 + step % 3):
            book.add(Plant(f"x{step}-{number}", cross=f"x{step}"))
        codes.append(f"x{step}-0")
        after = place(choose(net_of(copy.deepcopy(book)), Look(focus="V0", up=3, down=3)), before)
        assert_whole(after)
        if before is not None:
            some, of = flips(before, after)
            turned, pairs = turned + some, pairs + of
            assert after.block_of("V0").middle == before.block_of("V0").middle
        before = after
    assert pairs > 100
    assert turned < 0.08 * pairs
