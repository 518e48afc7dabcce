"""Deleting with its ways out, and correcting parents: dialogs by clicks and keys."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.places import demo
from pedigreeview.window.deleting_dialog import DeletingDialog, ask_delete
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def kept(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    window.open_path(path)
    settle()
    return window


def book_of(window: MainWindow) -> Book:
    assert window.desk.book is not None
    return window.desk.book


def asked(window: MainWindow, code: str) -> DeletingDialog:
    book = book_of(window)
    ask_delete(window, book.plants.get(code) or book.crosses[code])
    assert isinstance(window.dialog, DeletingDialog)
    return window.dialog


def test_the_menu_asks_about_the_plant_that_is_looked_at(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.show_plant("23-07")
    kept.menus.actions["delete"].trigger()
    assert isinstance(kept.dialog, DeletingDialog)
    assert "12 progeny" in kept.dialog.hanging.text()
    assert "Scores: " in kept.dialog.hanging.text()
    assert "scores" not in kept.dialog.hanging.text()
    assert list(kept.dialog.choices) == ["cull", "repoint", "unknown_parent", "with_progeny"]


def test_culling_is_offered_first_and_deletes_nothing(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    plants = len(book_of(kept).plants)
    dialog = asked(kept, "23-07")
    assert dialog.way == "cull"
    qtbot.keyClicks(dialog.why.editor, "mildew")
    qtbot.keyClick(dialog, Qt.Key.Key_Return)
    settle()
    assert kept.dialog is None
    assert book_of(kept).plants["23-07"].status == "culled"
    assert len(book_of(kept).plants) == plants
    assert any("mildew" in note.text for note in book_of(kept).notes)
    kept.desk.undo()
    settle()
    assert book_of(kept).plants["23-07"].status != "culled"


def test_all_that_came_from_it_goes_with_it_in_one_step(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    before = set(book_of(kept).plants)
    dialog = asked(kept, "23-07")
    qtbot.mouseClick(dialog.choices["with_progeny"], LEFT)
    text = dialog.choices["with_progeny"].text()
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    gone = before - set(book_of(kept).plants)
    # The plant itself is not counted among what came from it.
    assert f"{len(gone) - 1} plants" in text
    assert {"23-07", "07-1"} <= gone
    kept.desk.undo()
    settle()
    assert set(book_of(kept).plants) == before


def test_progeny_get_an_unknown_parent(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    dialog = asked(kept, "23-07")
    qtbot.mouseClick(dialog.choices["unknown_parent"], LEFT)
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    book = book_of(kept)
    assert "23-07" not in book.plants
    assert book.crosses[book.plants["07-1"].cross].seed_parent == ""


def test_another_plant_takes_its_place_and_one_that_cannot_is_refused_beside_the_field(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    dialog = asked(kept, "23-07")
    qtbot.mouseClick(dialog.choices["repoint"], LEFT)
    qtbot.mouseClick(dialog.go_button, LEFT)
    field = dialog.fields["repoint"]
    assert "Choose the plant" in field.said()  # type: ignore[attr-defined]
    editor = field.focusProxy()
    assert isinstance(editor, QLineEdit)
    qtbot.keyClicks(editor, "23-19")
    qtbot.keyClick(editor, Qt.Key.Key_Escape)
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    book = book_of(kept)
    assert "23-07" not in book.plants
    assert book.crosses[book.plants["07-1"].cross].seed_parent == "23-19"


def test_the_progeny_of_a_cross_move_and_it_is_deleted(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    moved = [one.plant for one in book_of(kept).plants.values() if one.cross == "21-01"]
    dialog = asked(kept, "21-01")
    assert dialog.way == "move"
    editor = dialog.fields["move"].focusProxy()
    assert isinstance(editor, QLineEdit)
    qtbot.keyClicks(editor, "21-02")
    qtbot.keyClick(editor, Qt.Key.Key_Escape)
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    book = book_of(kept)
    assert "21-01" not in book.crosses
    assert {book.plants[code].cross for code in moved} == {"21-02"}


def test_what_hangs_on_nothing_is_deleted_at_once(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    dialog = asked(kept, "07-1")
    # It is culled already.
    assert list(dialog.choices) == ["delete"]
    qtbot.mouseClick(dialog.choices["delete"], LEFT)
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    assert "07-1" not in book_of(kept).plants
    assert kept.desk.undo_words == "deleting plant 07-1"
