"""Where the card lies, and when it folds to its title.  Common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, QPointF, QRectF, QSizeF, Qt
from pytestqt.qtbot import QtBot

from pedigreeview.window.card_placing import Ground, spot_at, spot_for
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
STAGE = QRectF(0, 0, 1000, 600)
TAG = QRectF(100, 100, 120, 60)


def test_it_lies_beside_its_tag_on_free_ground() -> None:
    spot = spot_for(Ground(STAGE, TAG), [QSizeF(300, 400)], 8.0)
    assert spot.good
    assert not spot.rect.intersects(TAG)
    assert spot.rect.left() - TAG.right() < 20


def test_forbidden_ground_is_left_free_at_any_price() -> None:
    parents = QRectF(240, 0, 380, 600)
    tags = tuple(QRectF(650 + 90 * n, 200, 80, 50) for n in range(3))
    spot = spot_for(Ground(STAGE, TAG, (parents,), tags), [QSizeF(300, 560)], 8.0)
    assert not spot.rect.intersects(parents)
    assert spot.hidden == 3
    assert not spot.good


def test_a_smaller_card_is_better_than_one_that_hides() -> None:
    row = tuple(QRectF(10 + 100 * n, 330, 90, 60) for n in range(10))
    spot = spot_for(Ground(STAGE, TAG, (), row), [QSizeF(300, 560), QSizeF(300, 300)], 8.0)
    assert (spot.rect.height(), spot.hidden) == (300, 0)


def test_a_good_spot_near_the_last_one_is_kept() -> None:
    lying = Ground(STAGE, TAG)
    right = QPointF(640, 100)
    near = spot_for(lying, [QSizeF(300, 400)], 8.0)
    kept = spot_for(lying, [QSizeF(300, 400)], 8.0, right)
    assert (kept.rect.topLeft() - right).manhattanLength() < (
        near.rect.topLeft() - right
    ).manhattanLength()


def test_what_is_under_a_rectangle_is_counted() -> None:
    lying = Ground(STAGE, TAG, (QRectF(0, 0, 50, 50),), (QRectF(300, 0, 50, 50),))
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
    lying = Ground(STAGE, TAG, codes=tuple(codes))
    spot = spot_for(lying, [QSizeF(300, 400), QSizeF(300, 200)], 8.0)
    hidden = sum(spot.rect.intersects(code) for code in codes)
    assert spot.codes == hidden
    assert spot.good == (hidden == 0 and not spot.forbidden)
    assert not spot.good or STAGE.contains(spot.rect)


def test_a_card_larger_than_the_stage_has_no_good_spot() -> None:
    assert not spot_for(Ground(STAGE, TAG), [QSizeF(1200, 400)], 8.0).good


def hidden_codes(window: MainWindow) -> list[str]:
    """Tags whose code lies under the card."""
    page = window.pedigree
    assert page.placed is not None
    canvas, area = page.canvas, QRectF(page.canvas.viewport().rect())
    found = []
    for item in page.placed.blocks:
        written = QRectF(
            canvas.to_view(item.x, item.y), canvas.to_view(item.right, item.y + item.height * 0.7)
        ).intersected(area)
        under = written.translated(canvas.viewport().mapTo(page.stage, QPoint(0, 0)))
        if item.block.codes and under.intersects(QRectF(page.card.geometry())):
            found.append(item.block.title)
    return found


@pytest.mark.parametrize("zoom", [1.0, 1.6])
def test_no_code_is_under_the_card_in_a_small_window(
    peas: MainWindow, settle: Settle, zoom: float
) -> None:
    peas.resize(1024, 768)
    page = peas.pedigree
    page.canvas.reduced_motion = True
    for code in ("21-01-3", "TP", "21-02-2"):
        peas.show_plant(code)
        settle()
        page.canvas.zoom_by(zoom)
        page.canvas.show_code(code)
        page.card.let_go()
        page.cards.lay()
        assert page.card.isVisible()
        assert page.stage.rect().contains(page.card.geometry())
        assert hidden_codes(peas) == []
        assert page.canvas.viewport().rect().contains(page.canvas.rect_of(code))


def test_a_crowded_picture_makes_room_for_the_card_at_its_side(
    peas: MainWindow, settle: Settle
) -> None:
    peas.resize(1024, 768)
    page = peas.pedigree
    page.canvas.reduced_motion = True
    beside = False
    for code in ("TP", "21-02-2", "21-01-3"):
        peas.show_plant(code)
        settle()
        for _ in range(5):
            page.canvas.zoom_by(1.15)
            page.canvas.show_code(code)
            page.card.let_go()
            page.cards.lay()
            beside = page.canvas.geometry().right() < page.card.geometry().left()
            if beside:
                break
        if beside:
            break
    assert beside
    assert not page.card.folded
    assert page.canvas.width() >= 560
    scale = page.canvas.zoom()
    page.card.shut()
    assert page.canvas.width() == page.stage.width()
    assert page.canvas.zoom() == scale


def test_the_card_is_laid_for_where_the_picture_comes_to_rest(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    peas.show_plant("23-07")
    settle()
    page.cards.lay()
    early = page.card.geometry()
    with qtbot.waitSignal(page.came_to_rest, timeout=3000):
        page.cards.follow()
    qtbot.waitUntil(lambda: not page.canvas.moving(), timeout=3000)
    page.cards.lay()
    assert (page.card.geometry().topLeft() - early.topLeft()).manhattanLength() < 120


@pytest.mark.parametrize("code", ["21-01-3", "TP", "23-07"])
def test_tag_parents_and_pins_stay_in_sight(
    qtbot: QtBot, peas: MainWindow, settle: Settle, code: str
) -> None:
    page = peas.pedigree
    peas.show_plant(code)
    page.pin("21-02-2")
    settle()
    with qtbot.waitSignal(page.came_to_rest, timeout=3000):
        page.fit()
    net = page.net
    assert net is not None
    card = page.card.geometry()
    for plant in (code, "21-02-2", *net.parent_codes(code)):
        rect = page.canvas.rect_of(plant)
        assert rect.isValid()
        assert not card.intersects(rect), plant


def test_two_pins_fold_the_card_and_a_click_opens_it(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    peas.show_plant("21-01-3")
    settle()
    page.pin("TP")
    page.pin("BA")
    settle()
    card = page.card
    assert card.folded
    assert card.height() < 80
    assert card.pin_button.width() >= card.pin_button.sizeHint().width()
    qtbot.mouseClick(card._head, LEFT, pos=QPoint(20, 10))
    assert not card.folded
    assert card.figures["inbreeding"].isVisible()
    qtbot.mouseClick(card.fold_button, LEFT)
    assert card.folded


def test_a_tall_stage_shows_the_whole_card(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    peas.resize(1900, 1600)
    peas.show_plant("21-01-3")
    settle()
    with qtbot.waitSignal(peas.pedigree.came_to_rest, timeout=3000):
        peas.pedigree.fit()
    card = peas.pedigree.card
    assert not card.folded
    assert not card._area.verticalScrollBar().isVisible()
