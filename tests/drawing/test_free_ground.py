"""What a picture asks to be kept clear of a card: against each block and line, one by one."""

from __future__ import annotations

import itertools

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF

from pedigreeview.book.book import Book
from pedigreeview.drawing.free_ground import Boxes, boxes_of, ground_of
from pedigreeview.drawing.free_spots import spot_at
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import books

AROUND = QRectF(0, 0, 900, 600)


def holds(boxes: Boxes, rect: QRectF, air: float = 0.0) -> bool:
    """Whether a rectangle, with air about it, is one of the boxes."""
    wanted = np.array(
        (rect.left() - air, rect.top() - air, rect.right() + air, rect.bottom() + air)
    )
    return bool(len(boxes)) and bool((np.abs(boxes - wanted).max(axis=1) < 1e-6).any())


@settings(max_examples=30, deadline=None)
@given(books(), st.sampled_from(("down", "right")), st.data())
def test_every_block_and_line_in_sight_is_on_the_ground(
    book: Book, orientation: str, data: st.DataObject
) -> None:
    net = PedigreeNetwork.from_records(book)
    focus = data.draw(st.sampled_from(list(net.codes)))
    pin = data.draw(st.sampled_from(list(net.codes)))
    placed = place(choose(net, Look(focus=focus, pins=(pin,))), orientation=orientation)
    scale = data.draw(st.sampled_from((0.4, 1.0, 1.7)))
    start = QPointF(data.draw(st.integers(-400, 400)), data.draw(st.integers(-400, 400)))
    lying = ground_of(placed, focus, (pin,), start=start, scale=scale, around=AROUND)

    def on_stage(x: float, y: float, right: float, bottom: float) -> QRectF:
        corner = QPointF(x * scale, y * scale) + start
        return QRectF(corner, QPointF(right * scale, bottom * scale) + start)

    own = placed.view.block_of(focus)
    born = {link.above for link in placed.view.links if link.below == own}
    for item in placed.blocks:
        rect = on_stage(item.x, item.y, item.right, item.bottom)
        if not rect.intersects(AROUND):
            continue
        if item.block.key == own:
            assert lying.tag.contains(rect)
        elif item.block.key in born or pin in item.block.codes:
            assert holds(lying.forbidden, rect)
        else:
            assert holds(lying.others, rect, 5.0)
    for line in placed.lines:
        for link, points in line.routes:
            for (x, y), (far_x, far_y) in itertools.pairwise(points):
                rect = on_stage(min(x, far_x), min(y, far_y), max(x, far_x), max(y, far_y))
                if rect.adjusted(-2, -2, 2, 2).intersects(AROUND):
                    assert holds(lying.lines, rect, 2.0)
                    if link.below == own or link.below in born:
                        assert holds(lying.forbidden, rect, 2.0)


@settings(max_examples=40, deadline=None)
@given(
    st.lists(
        st.builds(
            QRectF,
            st.integers(0, 800),
            st.integers(0, 500),
            st.integers(1, 90),
            st.integers(1, 90),
        ),
        max_size=9,
    )
)
def test_what_is_added_is_forbidden(rects: list[QRectF]) -> None:
    net = PedigreeNetwork.from_records(Book())
    placed = place(choose(net, Look()))
    lying = ground_of(placed, "", start=QPointF(0, 0), scale=1.0, around=AROUND).without(rects)
    card = QRectF(200, 100, 300, 200)
    assert spot_at(lying, card).forbidden == sum(card.intersects(rect) for rect in rects) + (
        card.intersects(lying.tag)
    )
    assert boxes_of(rects).shape == (len(rects), 4)
