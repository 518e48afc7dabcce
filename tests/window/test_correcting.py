"""Correcting parents: for picked plants or for a whole cross, foreseen and made in one step."""

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
from pedigreeview.book.records import Plant
from pedigreeview.places import demo
from pedigreeview.window.correcting_dialog import CorrectingDialog
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


def opened(window: MainWindow, cross: str = "") -> CorrectingDialog:
    window.menus.book_acts.correct_parents(cross)
    assert isinstance(window.dialog, CorrectingDialog)
    return window.dialog


def type_in(qtbot: QtBot, dialog: CorrectingDialog, name: str, text: str) -> None:
    editor = dialog.fields[name].focusProxy()
    assert isinstance(editor, QLineEdit)
    editor.setFocus()
    editor.selectAll()
    qtbot.keyClicks(editor, text)
    qtbot.keyClick(editor, Qt.Key.Key_Escape) if _list_open(dialog, name) else None


def _list_open(dialog: CorrectingDialog, name: str) -> bool:
    found = getattr(dialog.fields[name], "found", None)
    return found is not None and not found.isHidden()


def test_picked_plants_get_another_pollen_parent_and_the_past_is_kept(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.pedigree.canvas.set_picked(["21-01-1", "21-01-2"])
    dialog = opened(kept)
    assert dialog.fields["plants"].text() == "21-01-1, 21-01-2"
    type_in(qtbot, dialog, "pollen_parent", "TP")
    qtbot.waitUntil(lambda: "2 plants would change" in dialog.preview.text(), timeout=5000)
    assert "New in the book" in dialog.preview.text()
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    book = book_of(kept)
    for code in ("21-01-1", "21-01-2"):
        cross = book.crosses[book.plants[code].cross]
        assert (cross.seed_parent, cross.pollen_parent) == ("TP", "TP")
        assert any(
            note.about == f"plant {code}" and "Came from the cross 21-01" in note.text
            for note in book.notes
        )
    assert book.plants["21-01-3"].cross == "21-01"
    kept.desk.undo()
    settle()
    assert book_of(kept).plants["21-01-1"].cross == "21-01"


def test_a_whole_cross_gets_another_parent_and_keeps_its_code(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    dialog = opened(kept, "21-01")
    assert dialog.of_cross.isChecked()
    type_in(qtbot, dialog, "pollen_parent", "?")
    qtbot.waitUntil(lambda: "would change" in dialog.preview.text(), timeout=5000)
    type_in(qtbot, dialog, "why", "two tags were mixed up")
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    book = book_of(kept)
    assert book.crosses["21-01"].pollen_parent == ""
    assert any("Was BA" in row.text and "mixed up" in row.text for row in book.evidence)


def test_problems_are_foreseen_and_what_cannot_be_is_refused(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.desk.record("carrot", lambda edit: edit.add(Plant("CT", kind="variety", crop="carrot")))
    settle()
    kept.pedigree.canvas.set_picked(["21-01-1"])
    dialog = opened(kept)
    type_in(qtbot, dialog, "pollen_parent", "CT")
    qtbot.waitUntil(lambda: "It would make 1 problem" in dialog.preview.text(), timeout=5000)
    assert "different crops" in dialog.preview.text()
    # 23-01 is progeny of 21-01-3: it cannot be its parent.
    type_in(qtbot, dialog, "plants", "21-01-3")
    type_in(qtbot, dialog, "pollen_parent", "23-01")
    qtbot.waitUntil(lambda: dialog.preview.property("role") == "fault", timeout=5000)
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    assert dialog.isVisible()
    assert book_of(kept).plants["21-01-3"].cross == "21-01"


def test_plants_move_to_another_cross(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    kept.pedigree.canvas.set_picked(["21-01-1", "21-01-6"])
    dialog = opened(kept)
    qtbot.mouseClick(dialog.moved, LEFT)
    qtbot.mouseClick(dialog.go_button, LEFT)
    assert dialog.fields["cross"].said()  # type: ignore[attr-defined]
    type_in(qtbot, dialog, "cross", "21-02")
    qtbot.waitUntil(lambda: "21-02: BA × TP" in dialog.preview.text(), timeout=5000)
    qtbot.mouseClick(dialog.go_button, LEFT)
    settle()
    assert {book_of(kept).plants[code].cross for code in ("21-01-1", "21-01-6")} == {"21-02"}
