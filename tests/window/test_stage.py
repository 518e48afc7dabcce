"""The stage of the Pedigree page: the card keeps its place, and card and key keep clear of things.

That what a person reads again and again lies at one place: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.card_rows import rows_of
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
PEAS = demo("two_peas_both_ways")
TOMATOES = demo("a_leaf_for_hollin_plate")
DAYLILIES = demo("tansy_and_the_moths")
DEMOS = (PEAS, TOMATOES, DAYLILIES)
KEYS = (
    Qt.Key.Key_Up,
    Qt.Key.Key_Right,
    Qt.Key.Key_Return,
    Qt.Key.Key_Down,
    Qt.Key.Key_Right,
    Qt.Key.Key_Down,
)


@pytest.fixture
def opened(window: MainWindow, settle: Settle) -> Callable[[Path, int, int], MainWindow]:
    """A demo in a window of a size."""

    def open_it(path: Path, wide: int, high: int) -> MainWindow:
        window.resize(wide, high)
        window.pedigree.canvas.reduced_motion = True
        window.open_path(path)
        settle()
        come_to_rest(window)
        return window

    return open_it


def come_to_rest(window: MainWindow) -> None:
    """What comes a moment after the picture has moved, at once."""
    for _ in range(3):
        QApplication.processEvents()
    window.pedigree.cards.lay()
    QApplication.processEvents()


def hidden_by_card(window: MainWindow) -> list[str]:
    """Codes and knots under the card, of what can be seen."""
    page = window.pedigree
    assert page.placed is not None
    canvas, area = page.canvas, QRectF(page.canvas.viewport().rect())
    shift = canvas.viewport().mapTo(page.stage, QPoint(0, 0))
    found = []
    for item in page.placed.blocks:
        end = item.y + item.height * (0.7 if item.block.codes else 1.0)
        rect = QRectF(canvas.to_view(item.x, item.y), canvas.to_view(item.right, end))
        rect = rect.intersected(area).translated(shift)
        if rect.intersects(QRectF(page.card.geometry())):
            found.append(item.block.key)
    return found


# One place from plant to plant --------------------------------------------------------------------


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.name)
def test_walking_from_plant_to_plant_leaves_the_card_where_it_is(
    qtbot: QtBot, opened: Callable[[Path, int, int], MainWindow], settle: Settle, path: Path
) -> None:
    window = opened(path, 1920, 1080)
    page = window.pedigree
    places, plants = [page.card.pos()], {page.selected}
    for key in KEYS:
        page.canvas.setFocus()
        qtbot.keyClick(page.canvas, key)
        settle()
        come_to_rest(window)
        places.append(page.card.pos())
        plants.add(page.selected)
        assert hidden_by_card(window) == []
    assert len(plants) >= 4
    assert set(places) == {places[0]}
    right = page.stage.width() - page.card.geometry().right() - 1
    assert right == places[0].y() == 8


AROUND = (
    *(Qt.Key.Key_Down, Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Left, Qt.Key.Key_Down),
    *(Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Return, Qt.Key.Key_Right, Qt.Key.Key_Right),
)


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.name)
def test_in_a_small_window_it_keeps_to_the_right_side_folded_if_need_be(
    qtbot: QtBot, opened: Callable[[Path, int, int], MainWindow], settle: Settle, path: Path
) -> None:
    window = opened(path, 1280, 800)
    page = window.pedigree
    for key in AROUND:
        page.canvas.setFocus()
        qtbot.keyClick(page.canvas, key)
        settle()
        come_to_rest(window)
        card = page.card.geometry()
        assert page.stage.width() - card.right() - 1 == 8
        assert hidden_by_card(window) == []


def test_two_pins_in_a_small_window_leave_the_folded_card_at_the_right_side(
    opened: Callable[[Path, int, int], MainWindow], settle: Settle
) -> None:
    window = opened(TOMATOES, 1280, 800)
    page = window.pedigree
    for code in ("18-01-07", "HP"):
        page.pin(code)
        settle()
        come_to_rest(window)
    assert page.card.folded
    assert page.stage.width() - page.card.geometry().right() - 1 == 8
    assert hidden_by_card(window) == []


def test_within_a_picture_it_grows_narrower_but_not_wide_again(
    opened: Callable[[Path, int, int], MainWindow],
) -> None:
    card = opened(PEAS, 1280, 800).pedigree.card
    wide = card.wanted_width()
    card._set_folded(False)
    assert card.open_width("one picture") == wide
    card.resize(wide - 80, 300)
    card.hold_width()
    assert card.open_width("one picture") == card.open_width() == wide - 80
    assert max(size.width() for size in card._open_sizes()) == wide - 80
    assert card.open_width("another picture") == wide


def test_a_new_picture_keeps_clear_of_the_card_where_all_of_it_has_room(
    opened: Callable[[Path, int, int], MainWindow], settle: Settle
) -> None:
    window = opened(PEAS, 1600, 900)
    page = window.pedigree
    for code in ("61-2", "TP"):
        window.show_plant(code)
        settle()
        come_to_rest(window)
        canvas = page.canvas
        if canvas._fits(canvas._everything(), canvas._covered):
            area = canvas._everything()
            end = canvas.to_view(area.right(), area.bottom()).x()
            assert end <= page.card.x() + 1


# Its foot -----------------------------------------------------------------------------------------


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.name)
def test_no_line_is_cut_through_at_the_foot_of_the_card(
    opened: Callable[[Path, int, int], MainWindow], settle: Settle, path: Path
) -> None:
    window = opened(path, 1280, 800)
    page = window.pedigree
    net = page.net
    assert net is not None
    seen = 0
    for code in (page.selected, net.codes[0]):
        window.show_plant(code)
        settle()
        come_to_rest(window)
        card = page.card
        bar = card._area.verticalScrollBar()
        if card.folded or not bar.maximum():
            continue
        seen += 1
        inner = card._area.widget()
        for part in (0.0, 0.21, 0.5, 0.77):
            bar.setValue(round(part * bar.maximum()))
            QApplication.processEvents()
            foot = card._foot
            cut = bar.value() + foot.y() - card._area.viewport().y()
            assert foot.isVisible()
            assert not [row for row in rows_of(inner) if row[0] < cut < row[1]]
            if part == 0.0:
                # Snapped: nothing but the mark stands below the last line.
                assert foot.height() == foot.least()
        bar.setValue(bar.maximum())
        assert not card._foot.isVisible()
    assert seen


# Large type ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.name)
def test_at_twice_the_type_card_and_key_lie_on_nothing(
    qtbot: QtBot,
    opened: Callable[[Path, int, int], MainWindow],
    settle: Settle,
    path: Path,
) -> None:
    window = opened(path, 1280, 800)
    page = window.pedigree
    window.set_text_size(200)
    settle()
    net = page.net
    assert net is not None
    for code in (page.selected, net.codes[0]):
        window.show_plant(code)
        settle()
        come_to_rest(window)
        assert hidden_by_card(window) == []
    page.key_button.setChecked(True)
    for _ in range(3):
        settle()
        come_to_rest(window)
        assert page.key.isVisible()
        assert not page.key.geometry().intersects(page.card.geometry())
        assert hidden_by_card(window) == []
        assert page.stage.rect().contains(page.card.geometry())
        assert page.stage.rect().contains(page.key.geometry())
        page.key.turn()


def test_the_short_strip_has_room_for_its_code_and_opens_again(
    qtbot: QtBot,
    opened: Callable[[Path, int, int], MainWindow],
    settle: Settle,
) -> None:
    window = opened(PEAS, 1280, 800)
    window.set_text_size(200)
    settle()
    come_to_rest(window)
    page = window.pedigree
    card = page.card
    assert card.folded
    assert card.short
    assert page.stage.shelved
    assert page.canvas.geometry().bottom() < card.y()
    code = card._title.itemAt(0).widget()
    assert code.width() >= code.fontMetrics().horizontalAdvance(card.code)
    assert not card.pin_button.isVisible()
    for button in (card.fold_button, card.close_button):
        assert card.rect().contains(button.rect().translated(button.mapTo(card, QPoint(0, 0))))
    qtbot.mouseClick(card.fold_button, LEFT)
    come_to_rest(window)
    assert not card.folded
    assert card.pin_button.isVisible()
    qtbot.mouseClick(card.close_button, LEFT)
    assert page.canvas.height() == page.stage.height()


def test_the_folded_key_gives_way_to_a_card_that_is_laid_by_hand(
    qtbot: QtBot, opened: Callable[[Path, int, int], MainWindow], settle: Settle
) -> None:
    window = opened(PEAS, 1280, 800)
    page = window.pedigree
    page.key_button.setChecked(True)
    page.key.turn()
    settle()
    come_to_rest(window)
    page.card.move_to(page.key.pos() - QPoint(20, 10))
    page.cards.lay()
    assert page.card.moved
    assert not page.key.geometry().intersects(page.card.geometry())


# What it costs ------------------------------------------------------------------------------------


def test_the_ground_of_an_unchanged_picture_is_worked_out_once(
    opened: Callable[[Path, int, int], MainWindow],
) -> None:
    window = opened(PEAS, 1280, 800)
    stage = window.pedigree.stage
    assert stage._ground() is stage._ground()
    before = stage._ground()
    window.pedigree.canvas.zoom_by(1.2)
    assert stage._ground() is not before
