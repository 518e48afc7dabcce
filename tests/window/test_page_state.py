"""Where one stands in the picture through undo and redo: with the plant, as far as there is one."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.crosses import record_cross
from pedigreeview.book.recording.plants import raise_plants
from pedigreeview.book.records import Plant
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
CONTROL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def grown(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    """A book that was empty, with two varieties, their cross and three plants of it."""
    import datetime

    path, day = tmp_path / "new.pedbook", datetime.date(2026, 5, 3)
    BookFile.create(path, Book()).close()
    window.open_path(path)
    settle()
    made: list[str] = []

    def cross(edit: Edit) -> str:
        return record_cross(edit, "A", "B", today=day)[0].cross

    for code in ("A", "B"):
        plant = Plant(plant=code, kind="variety", fixation=1.0)
        window.desk.record(code, lambda edit, plant=plant: edit.add(plant))  # type: ignore[misc]
    window.desk.record("cross", cross, made.append)
    settle()
    window.desk.record("plants", lambda edit: raise_plants(edit, made[0], 3, today=day))
    settle()
    return window


def undo(qtbot: QtBot, window: MainWindow, settle: Settle, times: int) -> None:
    for _ in range(times):
        qtbot.keyClick(window, Qt.Key.Key_Z, CONTROL)
        settle()


def redo(qtbot: QtBot, window: MainWindow, settle: Settle, times: int) -> None:
    for _ in range(times):
        window.menus.actions["redo"].trigger()
        settle()


def test_undo_and_redo_of_everything_lead_back_to_the_plant_in_focus(
    qtbot: QtBot, grown: MainWindow, settle: Settle
) -> None:
    page = grown.pedigree
    assert grown.desk.book is not None
    code = next(code for code in grown.desk.book.plants if code not in ("A", "B"))
    grown.show_plant(code)
    settle()
    undo(qtbot, grown, settle, 4)
    assert grown.desk.book is not None
    assert not grown.desk.book.plants
    redo(qtbot, grown, settle, 4)
    assert page.focus == code
    assert page.selected == code
    assert not page.whole_button.isChecked()
    assert code in page.canvas.visible_codes()


def test_a_walk_in_between_is_not_taken_back_by_redo(
    qtbot: QtBot, grown: MainWindow, settle: Settle
) -> None:
    page = grown.pedigree
    assert grown.desk.book is not None
    code = next(code for code in grown.desk.book.plants if code not in ("A", "B"))
    grown.show_plant(code)
    undo(qtbot, grown, settle, 1)
    assert page.focus in ("A", "B")
    grown.show_plant("B")
    redo(qtbot, grown, settle, 1)
    assert page.focus == "B"


def test_the_focus_stays_while_its_plant_stays(
    qtbot: QtBot, grown: MainWindow, settle: Settle
) -> None:
    grown.show_plant("B")
    undo(qtbot, grown, settle, 2)
    assert grown.pedigree.focus == "B"
    redo(qtbot, grown, settle, 2)
    assert grown.pedigree.focus == "B"


def test_the_whole_book_stays_the_whole_book(
    qtbot: QtBot, grown: MainWindow, settle: Settle
) -> None:
    page = grown.pedigree
    grown.show_plant("A")
    qtbot.mouseClick(page.whole_button, Qt.MouseButton.LeftButton)
    settle()
    undo(qtbot, grown, settle, 4)
    redo(qtbot, grown, settle, 4)
    assert page.focus == ""
    assert page.whole_button.isChecked()


def test_the_first_plant_of_an_empty_book_comes_into_focus(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "new.pedbook"
    BookFile.create(path, Book()).close()
    window.open_path(path)
    settle()
    for code in ("A", "B"):
        plant = Plant(plant=code, kind="variety", fixation=1.0)
        window.desk.record(code, lambda edit, plant=plant: edit.add(plant))  # type: ignore[misc]
        settle()
        assert window.pedigree.focus == "A"
