"""Where a card lies on a picture: at the right side, and on nothing that is looked at.

That what a person reads again and again lies at one place: common practice, no source.
"""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QRectF, QSizeF

from pedigreeview.drawing.free_ground import Ground, boxes_of
from pedigreeview.drawing.free_spots import home_spot, settled_spot, spot_at, spot_for

STAGE = QRectF(0, 0, 1000, 600)
TAG = QRectF(100, 100, 120, 60)
HOME = QRectF(692, 8, 300, 400)
"""Where a card of 300 by 400 lies at the right side of the stage, 8 pixels from its edges."""


def test_it_lies_at_the_right_side_of_the_stage_from_its_top() -> None:
    spot = spot_for(Ground(STAGE, TAG), [QSizeF(300, 400)], 8.0)
    assert spot.good
    assert spot.rect == HOME


@settings(max_examples=40, deadline=None)
@given(st.integers(10, 560), st.integers(10, 530))
def test_it_lies_there_whichever_plant_is_looked_at(x: int, y: int) -> None:
    other = QRectF(x, y, 120, 60)
    spot = spot_for(Ground(STAGE, other), [QSizeF(300, 400)], 8.0, QRectF(50, 60, 300, 400))
    assert spot.rect == HOME


def test_what_lies_low_at_the_right_side_makes_it_shorter_there() -> None:
    low = boxes_of([QRectF(800, 300, 90, 60)])
    wanted = [QSizeF(300, 400), QSizeF(300, 200)]
    spot = spot_for(Ground(STAGE, TAG, codes=low), wanted, 8.0)
    assert spot.rect == QRectF(692, 8, 300, 292)


def test_what_lies_high_at_the_right_side_lets_it_lie_low_there() -> None:
    high = boxes_of([QRectF(800, 100, 90, 60)])
    wanted = [QSizeF(300, 400), QSizeF(300, 200)]
    low = spot_for(Ground(STAGE, TAG, codes=high), wanted, 8.0)
    assert low.rect == QRectF(692, 192, 300, 400)
    # It stays low while that is good enough, and goes up where it could show much more of itself.
    assert spot_for(Ground(STAGE, TAG), wanted, 8.0, low.rect).rect == low.rect
    poor = QRectF(692, 390, 300, 202)
    assert spot_for(Ground(STAGE, TAG), wanted, 8.0, poor).rect == HOME


def test_it_lies_beside_lines_where_it_can_and_else_upon_them() -> None:
    line = boxes_of([QRectF(700, 250, 290, 4)])
    wanted = [QSizeF(300, 400), QSizeF(300, 200)]
    assert spot_for(Ground(STAGE, TAG, lines=line), wanted, 8.0).rect.bottom() == 250
    assert spot_for(Ground(STAGE, TAG, lines=line), wanted[:1], 8.0).rect == HOME


def test_where_the_right_side_is_taken_it_lies_near_its_tag() -> None:
    taken = boxes_of([QRectF(900, 0, 60, 600)])
    spot = spot_for(Ground(STAGE, TAG, taken), [QSizeF(300, 400)], 8.0)
    assert home_spot(Ground(STAGE, TAG, taken), [QSizeF(300, 400)], 8.0) is None
    assert spot.good
    assert spot.rect.left() - TAG.right() < 20


def test_forbidden_ground_is_left_free_at_any_price() -> None:
    parents = QRectF(240, 0, 380, 600)
    tags = boxes_of(QRectF(650 + 90 * n, 200, 80, 50) for n in range(3))
    spot = spot_for(Ground(STAGE, TAG, boxes_of([parents]), tags), [QSizeF(300, 560)], 8.0)
    assert not spot.rect.intersects(parents)
    assert spot.hidden == 3
    assert not spot.good


def test_a_smaller_card_is_better_than_one_that_hides() -> None:
    row = boxes_of(QRectF(10 + 100 * n, 330, 90, 60) for n in range(10))
    wanted = [QSizeF(300, 560), QSizeF(300, 300)]
    spot = spot_for(Ground(STAGE, TAG, others=row), wanted, 8.0)
    assert (spot.rect.height(), spot.hidden) == (322, 0)


def test_a_good_spot_is_kept_where_the_right_side_is_taken() -> None:
    lying = Ground(STAGE, TAG, boxes_of([QRectF(900, 0, 60, 600)]))
    was = QRectF(460, 120, 300, 400)
    assert spot_for(lying, [QSizeF(300, 400)], 8.0, was).rect == was
    assert spot_for(lying, [QSizeF(300, 400)], 8.0).rect != was


def test_a_settled_spot_is_at_the_right_side_or_there_is_none() -> None:
    wanted, strip = [QSizeF(300, 400), QSizeF(300, 200)], [QSizeF(200, 60)]
    # Tags across the right side, 70 pixels from the top and from the foot: a strip fits, no card.
    column = boxes_of(QRectF(800, 78 + 150 * n, 90, 60) for n in range(4))
    lying = Ground(STAGE, TAG, codes=column)
    was = QRectF(300, 180, 300, 400)
    assert settled_spot(lying, wanted, 8.0, was) is None
    assert spot_for(lying, wanted, 8.0, was).good
    found = settled_spot(lying, strip, 8.0, was)
    assert found is not None
    assert found.rect == QRectF(792, 8, 200, 60)
    home = settled_spot(Ground(STAGE, TAG), wanted, 8.0, was)
    assert home is not None
    assert home.rect == HOME


def test_what_is_under_a_rectangle_is_counted() -> None:
    lying = Ground(STAGE, TAG, boxes_of([QRectF(0, 0, 50, 50)]), boxes_of([QRectF(300, 0, 50, 50)]))
    spot = spot_at(lying, QRectF(0, 0, 400, 120))
    assert (spot.hidden, spot.forbidden) == (1, 2)


RECTS = st.builds(
    QRectF,
    st.integers(0, 900),
    st.integers(0, 500),
    st.integers(20, 160),
    st.integers(20, 80),
)


@settings(max_examples=60, deadline=None)
@given(st.lists(RECTS, max_size=14))
def test_a_good_spot_hides_no_code(codes: list[QRectF]) -> None:
    lying = Ground(STAGE, TAG, codes=boxes_of(codes))
    spot = spot_for(lying, [QSizeF(300, 400), QSizeF(300, 200)], 8.0)
    hidden = sum(spot.rect.intersects(code) for code in codes)
    assert spot.codes == hidden
    assert spot.good == (hidden == 0 and not spot.forbidden)
    assert not spot.good or STAGE.contains(spot.rect)


def test_a_card_larger_than_the_stage_has_no_good_spot() -> None:
    assert not spot_for(Ground(STAGE, TAG), [QSizeF(1200, 400)], 8.0).good
