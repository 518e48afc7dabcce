"""Where the card lies, and when it folds to its title.  Common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

import pytest
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
