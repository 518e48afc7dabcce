"""Where the card lies, and when it folds to its title.  Common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, QRectF, Qt
from pytestqt.qtbot import QtBot

from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


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
