"""Pollen carried from one tag to another asks for the cross of the two."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QMenu
from pytestqt.qtbot import QtBot

from pedigreeview.book.book_file import BookFile
from pedigreeview.exchange import read_book
from pedigreeview.places import demo
from pedigreeview.window.main_window import MainWindow

LEFT = Qt.MouseButton.LeftButton
Settle = Callable[[], None]


@pytest.fixture
def kept(window: MainWindow, settle: Settle, tmp_path: Path, qtbot: QtBot) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read_book(demo("two_peas_both_ways"))).close()
    window.open_path(path)
    settle()
    window.show_plant("21-01-3")
    settle()
    canvas = window.pedigree.canvas
    qtbot.waitUntil(lambda: not canvas.moving(), timeout=3000)
    return window


def _carry(qtbot: QtBot, window: MainWindow, start: QPoint, end: QPoint) -> None:
    view = window.pedigree.canvas.viewport()
    qtbot.mousePress(view, LEFT, pos=start)
    qtbot.mouseMove(view, start + QPoint(30, 0))
    qtbot.mouseMove(view, end)
    qtbot.mouseRelease(view, LEFT, pos=end)


def _menu(window: MainWindow) -> QMenu:
    held = [menu for menu in window.findChildren(QMenu) if menu.isVisible()]
    assert len(held) == 1
    return held[0]


def test_a_tag_dragged_on_another_offers_both_directions(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    canvas = kept.pedigree.canvas
    before = set(kept.desk.book.crosses)
    _carry(qtbot, kept, canvas.where("23-07"), canvas.where("23-19"))
    menu = _menu(kept)
    texts = [action.text() for action in menu.actions() if action.text()]
    # The plant that the pollen falls on bears the seed, and stands first.
    assert texts[0] == "Plan 23-19 × 23-07"
    assert texts[1] == "Plan 23-07 × 23-19"
    qtbot.keyClick(menu, Qt.Key.Key_Down)
    qtbot.keyClick(menu, Qt.Key.Key_Down)
    qtbot.keyClick(menu, Qt.Key.Key_Down)
    qtbot.keyClick(menu, Qt.Key.Key_Return)
    settle()
    new = [cross for code, cross in kept.desk.book.crosses.items() if code not in before]
    assert sorted((one.seed_parent, one.pollen_parent, one.state) for one in new) == [
        ("23-07", "23-19", "planned"),
        ("23-19", "23-07", "planned"),
    ]
    assert kept.pedigree.focus == "21-01-3"


def test_pollen_dropped_on_the_ground_does_nothing(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    canvas = kept.pedigree.canvas
    where = canvas.where("23-07")
    _carry(qtbot, kept, where, QPoint(5, 5))
    assert not [menu for menu in kept.findChildren(QMenu) if menu.isVisible()]
    assert canvas.where("23-07") == where
    assert not kept.desk.undo_words


def test_the_ground_still_moves_the_picture(qtbot: QtBot, kept: MainWindow) -> None:
    canvas = kept.pedigree.canvas
    where = canvas.where("23-07")
    ground = next(
        QPoint(x, y)
        for y in range(20, canvas.viewport().height(), 11)
        for x in range(200, canvas.viewport().width(), 11)
        if not canvas.part_at(QPoint(x, y))
        and QApplication.widgetAt(canvas.viewport().mapToGlobal(QPoint(x, y))) is canvas.viewport()
    )
    _carry(qtbot, kept, ground, ground + QPoint(40, 25))
    assert canvas.where("23-07") == where + QPoint(40, 25)
