"""The door: files that cannot be opened, and the way on from each."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.file_faults import BookTooNew, DiskFull
from pedigreeview.places import demo
from pedigreeview.window.backups_dialog import BackupsDialog
from pedigreeview.window.faults_dialog import FaultsDialog, way_words
from pedigreeview.window.help_pages import HelpSheet
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.rescue_dialog import RescueDialog

Settle = Callable[[], None]


@pytest.fixture
def book(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    return path


def damage(path: Path) -> None:
    """Write over the page that the table of notes begins on."""
    with closing(sqlite3.connect(path)) as connection:
        (page,) = connection.execute(
            "SELECT rootpage FROM sqlite_master WHERE name = 'scores' AND type = 'table'"
        ).fetchone()
        (size,) = connection.execute("PRAGMA page_size").fetchone()
    data = bytearray(path.read_bytes())
    data[(page - 1) * size : page * size] = b"\xff" * size
    path.write_bytes(bytes(data))


def faults(window: MainWindow) -> FaultsDialog:
    assert isinstance(window.dialog, FaultsDialog)
    return window.dialog


def test_a_damaged_book_is_rescued_into_a_new_one_with_a_report(
    qtbot: QtBot, window: MainWindow, settle: Settle, book: Path
) -> None:
    damage(book)
    window.open_path(book)
    settle()
    assert set(faults(window).ways) == {"restore", "rescue"}
    faults(window).ways["rescue"].click()
    dialog = window.dialog
    assert isinstance(dialog, RescueDialog)
    dialog.go_button.click()
    settle()
    lines = [dialog.report.item(row).text() for row in range(dialog.report.count())]
    assert lines[0].startswith("Came over: 237 plants")
    assert len(lines) > 1
    assert "Nothing was lost." not in lines
    dialog.go_button.click()
    settle()
    assert window.opened is not None
    assert window.opened.path == book.with_name("peas rescued.pedbook")
    assert len(window.opened.net.book.plants) == 237


def test_a_damaged_book_goes_back_to_its_backup(
    qtbot: QtBot, window: MainWindow, settle: Settle, book: Path
) -> None:
    with BookFile.open(book) as held:
        held.back_up(always=True)
    damage(book)
    window.open_path(book)
    settle()
    faults(window).ways["restore"].click()
    dialog = window.dialog
    assert isinstance(dialog, BackupsDialog)
    assert not dialog.now_button.isVisible()
    dialog.restore_button.click()
    assert "damaged file is kept" in dialog.message.text()
    dialog.restore_button.click()
    settle()
    assert window.opened is not None
    assert window.opened.path == book
    assert list(book.with_name("peas.backups").glob("* damaged.pedbook"))


def test_a_book_that_is_gone_is_tried_again(window: MainWindow, settle: Settle, book: Path) -> None:
    away = book.rename(book.with_name("away.pedbook"))
    window.open_path(book)
    settle()
    assert "again" in faults(window).ways
    away.rename(book)
    faults(window).ways["again"].click()
    settle()
    assert window.opened is not None
    assert window.opened.path == book


def test_a_book_is_opened_to_read_only_and_an_edit_offers_a_copy(
    window: MainWindow, settle: Settle, book: Path
) -> None:
    window.open_path(book)
    settle()
    window.show_dialog(window.door.fault_dialog(BookTooNew(book, 9, 1)))
    assert set(faults(window).ways) == {"read_only", "save_copy", "update"}
    faults(window).ways["read_only"].click()
    settle()
    assert window.desk.file is not None
    assert window.desk.file.read_only
    window.desk.record("x", lambda edit: edit.update(edit.book.plants["TP"], name="X"))
    settle()
    assert set(faults(window).ways) == {"save_copy"}


def test_how_to_get_the_newer_version_is_told(
    window: MainWindow, settle: Settle, book: Path
) -> None:
    window.open_path(book)
    settle()
    window.show_dialog(window.door.fault_dialog(BookTooNew(book, 9, 1)))
    faults(window).ways["update"].click()
    assert isinstance(window.dialog, HelpSheet)
    assert "Version" in window.dialog.text.text()


def test_a_backup_that_could_not_be_made_is_said_quietly(
    window: MainWindow, settle: Settle, book: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object, **__: object) -> None:
        raise DiskFull(book)

    monkeypatch.setattr(BookFile, "back_up", full)
    window.open_path(book)
    settle()
    assert window.opened is not None
    assert window.dialog is None
    assert window.said.text().startswith("No backup was made: The disk is full")


def test_every_way_has_words() -> None:
    from pedigreeview.book import file_faults

    kinds = [getattr(file_faults, name) for name in file_faults.__all__]
    ways = {way for kind in kinds for way in kind.ways}
    assert ways == set(way_words())
