"""Two people's books put together: clashes renamed by a rule, differences chosen, photos along."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Cross, Photo, Plant, Record
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.merging_dialog import MergingDialog, merge_with

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


def book_file(path: Path, *records: Record, files: dict[str, bytes] | None = None) -> Path:
    book = Book()
    for record in records:
        book.add(record)
    BookFile.create(path, book, files=dict(files or {})).close()
    return path


@pytest.fixture
def mine(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = book_file(
        tmp_path / "mine.pedbook",
        Plant("A", note="from my row"),
        Plant("B"),
        Plant("C"),
        Cross("1", "A", "B"),
        Plant("K", cross="1"),
        Photo("a.jpg", "A"),
        files={"photos/a.jpg": b"mine"},
    )
    window.open_path(path)
    settle()
    return window


@pytest.fixture
def theirs(tmp_path: Path) -> Path:
    return book_file(
        tmp_path / "theirs.pedbook",
        Plant("A", note="a gift", place="bed 2"),
        Plant("C"),
        Plant("D"),
        Cross("1", "C", "A"),
        Plant("K", cross="1"),
        Photo("a.jpg", "C"),
        Photo("d.jpg", "D"),
        files={"photos/a.jpg": b"theirs", "photos/d.jpg": b"of D"},
    )


def merging(window: MainWindow, path: Path, settle: Settle) -> MergingDialog:
    merge_with(window, path)
    settle()
    found = window.dialog
    assert isinstance(found, MergingDialog)
    return found


def test_clashes_follow_a_rule_that_is_seen_and_changed_first(
    qtbot: QtBot, mine: MainWindow, theirs: Path, settle: Settle
) -> None:
    dialog = merging(mine, theirs, settle)
    shown = {
        (dialog.names.item(row, 1).text(), dialog.names.item(row, 2).text())
        for row in range(dialog.names.rowCount())
    }
    assert shown == {("K", "K (2)"), ("1", "1 (2)"), ("a.jpg", "a.jpg (2)")}
    dialog.behind.selectAll()
    qtbot.keyClick(dialog.behind, Qt.Key.Key_Delete)
    qtbot.keyClicks(dialog.before, "Ann-")
    qtbot.waitUntil(
        lambda: dialog.names.item(0, 2).text().startswith("Ann-") and not dialog.busy, timeout=8000
    )
    qtbot.mouseClick(dialog.differences.theirs_button, LEFT)
    qtbot.mouseClick(dialog.main_button, LEFT)
    settle()
    book = mine.desk.book
    assert book is not None
    assert set(book.plants) == {"A", "B", "C", "D", "K", "Ann-K"}
    assert book.crosses["Ann-1"].seed_parent == "C"
    assert book.plants["Ann-K"].cross == "Ann-1"
    assert (book.plants["A"].note, book.plants["A"].place) == ("a gift", "bed 2")
    assert mine.desk.file is not None
    assert mine.desk.file.file("photos/Ann-a.jpg") == b"theirs"
    assert mine.desk.file.file("photos/a.jpg") == b"mine"
    assert mine.desk.file.file("photos/d.jpg") == b"of D"
    assert "K became Ann-K" in dialog.report.text.toPlainText()
    qtbot.mouseClick(dialog.main_button, LEFT)
    assert mine.desk.undo_words == "bringing in theirs.pedbook"
    mine.desk.undo()
    settle()
    assert mine.desk.book is not None
    assert set(mine.desk.book.plants) == {"A", "B", "C", "K"}


def test_mine_stays_unless_it_is_blank(
    qtbot: QtBot, mine: MainWindow, theirs: Path, settle: Settle
) -> None:
    dialog = merging(mine, theirs, settle)
    assert dialog.differences.isVisible()
    qtbot.keyClick(dialog.main_button, Qt.Key.Key_Space)
    settle()
    book = mine.desk.book
    assert book is not None
    assert (book.plants["A"].note, book.plants["A"].place) == ("from my row", "bed 2")


def test_a_book_that_holds_nothing_new_says_so(
    mine: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    dialog = merging(mine, book_file(tmp_path / "same.pedbook", Plant("B")), settle)
    assert not dialog.main_button.isEnabled()
    assert "nothing that yours does not" in dialog.message.text()


def test_a_book_that_cannot_be_read_changes_nothing(
    qtbot: QtBot, mine: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "torn.pedbook"
    path.write_bytes(b"no book at all")
    before = mine.desk.book
    dialog = merging(mine, path, settle)
    assert dialog.message.text()
    assert not dialog.main_button.isEnabled()
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert mine.dialog is None
    assert mine.desk.book is before
