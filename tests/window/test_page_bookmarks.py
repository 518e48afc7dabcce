"""Bookmarks and the last pins, kept in a book of its own and there again when it is opened."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Bookmark
from pedigreeview.places import demo
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.page_bookmarks import LAST_PINS, pinned_codes

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def path(tmp_path: Path) -> Path:
    found, book = tmp_path / "peas.pedbook", read(demo("two_peas_both_ways")).book
    book.bookmarks.clear()
    BookFile.create(found, book).close()
    return found


@pytest.fixture
def kept(window: MainWindow, settle: Settle, path: Path) -> MainWindow:
    window.open_path(path)
    settle()
    assert window.desk.can_write
    return window


def marks(window: MainWindow) -> dict[str, Bookmark]:
    book = window.desk.book
    assert book is not None
    return book.bookmarks


def test_a_place_is_bookmarked_gone_to_renamed_and_removed(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    page = kept.pedigree
    kept.show_plant("23-07")
    page.pin("23-61")
    settle()
    qtbot.keyClick(page.canvas, Qt.Key.Key_D, CTRL)
    dialog = page.bookmarks.dialog
    assert dialog is not None
    assert dialog.name.text() == "23-07"
    qtbot.waitUntil(dialog.name.hasFocus)
    qtbot.keyClicks(dialog.name, "the good one")
    qtbot.keyClick(dialog.name, Qt.Key.Key_Return)
    settle()
    assert page.bookmarks.dialog is None
    assert marks(kept)["the good one"] == Bookmark("the good one", "23-07", "23-61")
    assert page.focus == "23-07"
    page.pin("23-61")
    kept.show_plant("TP")
    menu = page.tools.marks_menu
    menu.aboutToShow.emit()
    entry = next(action for action in menu.actions() if action.text() == "the good one")
    entry.trigger()
    assert (page.focus, page.pins) == ("23-07", ("23-61",))
    page.commands["bookmarks"].trigger()
    dialog = page.bookmarks.dialog
    assert dialog is not None
    assert dialog.list.item(0).text() == "the good one – 23-07, 1 pin"
    dialog.name.selectAll()
    qtbot.keyClicks(dialog.name, "better")
    qtbot.mouseClick(dialog.rename_button, LEFT)
    settle()
    assert "better" in marks(kept)
    dialog.list.setCurrentRow(0)
    qtbot.mouseClick(dialog.remove_button, LEFT)
    settle()
    assert page.bookmarks.held() == {}
    assert dialog.list.count() == 0
    kept.desk.undo()
    settle()
    assert list(page.bookmarks.held()) == ["better"]
    dialog.name.setText(LAST_PINS)
    qtbot.mouseClick(dialog.keep_button, LEFT)
    assert "kept for the last pins" in dialog.message.text()
    dialog.reject()


def test_pins_are_there_again_when_the_book_is_opened(
    qtbot: QtBot, kept: MainWindow, settle: Settle, path: Path
) -> None:
    page = kept.pedigree
    page.pin("TP")
    page.pin("23-07")
    page.bookmarks.keep_pins()
    settle()
    assert pinned_codes(marks(kept)[LAST_PINS]) == ["TP", "23-07"]
    assert page.pins == ("TP", "23-07")
    assert page.bookmarks.held() == {}
    menu = QMenu()
    page.bookmarks.fill(menu)
    assert LAST_PINS not in [action.text() for action in menu.actions()]
    kept.close_book()
    settle()
    kept.open_path(path)
    settle()
    assert page.pins == ("TP", "23-07")
    page.pin("TP")
    page.pin("23-07")
    page.bookmarks.keep_pins()
    settle()
    assert LAST_PINS not in marks(kept)


def test_undo_passes_over_pins(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    page = kept.pedigree
    page.bookmarks.keep("here")
    settle()
    page.pin("TP")
    page.bookmarks.keep_pins()
    settle()
    assert LAST_PINS in marks(kept)
    assert kept.desk.undo_words != kept.tr("Pins")
    kept.desk.undo()
    settle()
    assert list(marks(kept)) == [LAST_PINS]
    page.pin("BA")
    page.bookmarks.keep_pins()
    settle()
    assert marks(kept)[LAST_PINS].pinned == "TP;BA"
    # Pins are no step: what was undone can still be made again.
    kept.desk.redo()
    settle()
    assert sorted(marks(kept)) == [LAST_PINS, "here"]
    assert page.pins == ("TP", "BA")


def test_a_bookmark_in_a_table_is_kept_with_the_book_it_becomes(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    table = tmp_path / "peas.csv"
    table.write_text(
        "plant,seed_parent,pollen_parent,kind\nTP,,,plant\nBA,,,plant\nF1,TP,BA,plant\n",
        encoding="utf-8",
    )
    window.open_path(table)
    settle()
    page = window.pedigree
    page.pin("TP")
    page.bookmarks.keep_pins()
    settle()
    assert not window.desk.can_write
    page.bookmarks.keep("first cross")
    settle()
    assert window.desk.can_write
    assert "first cross" in marks(window)
