"""Two focuses side by side: own focus, own zoom, what they share lit, and back to one."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QMenu
from pytestqt.qtbot import QtBot

from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.page_compare import shared_lines
from tests.window.test_filter_bar import small_book

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
CTRL_SHIFT = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier


def beside(qtbot: QtBot, window: MainWindow, left: str, right: str) -> None:
    page = window.pedigree
    window.show_plant(left)
    page.canvas.menu_wanted.emit(right, QPoint(200, 200))
    menu = page.stage.findChild(QMenu, options=Qt.FindChildOption.FindDirectChildrenOnly)
    assert menu is not None
    inner = [action for held in menu.findChildren(QMenu) for action in held.actions()]
    action = next(a for a in inner if a.text() == f"Compare with {left}, side by side")
    action.trigger()
    menu.close()
    QApplication.processEvents()


def test_the_second_picture_has_its_own_focus_and_zoom(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    beside(qtbot, peas, "23-07", "23-61")
    assert page.compare.frame.isVisible()
    assert not page.card.isVisible()
    left, right = page.canvas, page.compare.canvas
    assert abs(left.width() - right.width()) < 12
    assert (left.placed.view.focus, right.placed.view.focus) == ("23-07", "23-61")  # type: ignore[union-attr]
    assert "its lines meet those of" in page.compare.words.text()
    for canvas, focus in ((left, "23-07"), (right, "23-61")):
        lit = {code for path in canvas.lit_paths() for code in path}
        assert {"TP", "BA", focus} <= lit
        assert {"TP", "BA"} <= canvas.placed.view.shown()  # type: ignore[union-attr]
    was = left.zoom()
    right.setFocus()
    qtbot.keyClick(right, Qt.Key.Key_Plus, Qt.KeyboardModifier.ControlModifier)
    assert left.zoom() == was
    assert right.zoom() > 0
    qtbot.keyClick(right, Qt.Key.Key_Up)
    assert right.selected_code() == "21-02-2"
    qtbot.keyClick(right, Qt.Key.Key_Return)
    assert page.compare.code == "21-02-2"
    assert page.focus == "23-07"
    qtbot.mouseClick(page.compare.swap_button, LEFT)
    assert (page.focus, page.compare.code) == ("21-02-2", "23-07")
    qtbot.mouseClick(page.compare.close_button, LEFT)
    assert not page.compare.frame.isVisible()
    assert page.canvas.lit_paths() == []
    assert not page.compare.open


def test_both_pictures_have_a_heading_one_scale_and_one_beginning(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    beside(qtbot, peas, "23-07", "TP")
    settle()
    left, right = page.canvas, page.compare.canvas
    qtbot.waitUntil(lambda: abs(left.zoom() - right.zoom()) < 1e-6, timeout=3000)
    assert "23-07" in page.compare.first_words.text()
    tops = [one.mapTo(peas, QPoint(0, 0)).y() for one in (left.viewport(), right.viewport())]
    assert tops[0] == tops[1]
    page.compare.close()
    assert not page.compare.first_head.isVisible()


def test_by_keys_with_a_pin_and_another_focus_keeps_it_open(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    page.pin("BA")
    peas.show_plant("TP")
    qtbot.keyClick(page.canvas, Qt.Key.Key_B, CTRL_SHIFT)
    assert page.compare.code == "BA"
    assert "shares no ancestor in this book" in page.compare.words.text()
    assert page.canvas.lit_paths() == []
    page.focus_on("21-01-3")
    assert page.compare.code == "BA"
    assert "its lines meet" in page.compare.words.text()
    page.focus_on("BA")
    assert "the same plant on both sides" in page.compare.words.text()
    page.go("", "BA", say=True)
    settle()
    assert not page.compare.open


def test_it_asks_for_a_second_plant(qtbot: QtBot, peas: MainWindow) -> None:
    peas.show_plant("TP")
    qtbot.keyClick(peas.pedigree.canvas, Qt.Key.Key_B, CTRL_SHIFT)
    assert not peas.pedigree.compare.open
    assert "Mark or pin a plant" in peas.said.text()


def test_shared_lines_are_the_steps_between_common_ancestors_and_the_two() -> None:
    net = PedigreeNetwork.from_records(small_book())
    met, steps = shared_lines(net, "P1", "P2")
    assert set(met) == {"TP", "BA"}
    assert set(steps) == {("TP", "P1"), ("BA", "P1"), ("TP", "P2"), ("BA", "P2")}
    assert shared_lines(net, "TP", "BA") == ((), [])
