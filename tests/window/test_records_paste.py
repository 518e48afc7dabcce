"""Pasting in the Records page: all of it or nothing, and wide tables open at once."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.places import demo
from pedigreeview.window.faults_dialog import FaultsDialog
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.records_page import RecordsPage


def test_what_does_not_fit_is_not_pasted_by_half(
    qtbot: QtBot, window: MainWindow, settle: Callable[[], None], tmp_path: Path
) -> None:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    window.open_path(path)
    settle()
    window.show_page("records")
    settle()
    (page,) = window.book_pages["records"].findChildren(RecordsPage)
    assert window.desk.book is not None
    before = window.desk.book.plants
    column = next(at for at, held in enumerate(page.model.columns) if held.name == "note")
    last = page.model.rowCount() - 1
    page.view.setCurrentIndex(page.model.index(last, column))
    page.paste("one\ntwo\n")
    settle()
    assert isinstance(window.dialog, FaultsDialog)
    window.dialog.reject()
    assert window.desk.book.plants == before
    page.view.setCurrentIndex(page.model.index(last - 1, column))
    page.paste("one\r\ntwo\r\n")
    settle()
    assert window.dialog is None
    notes = [plant.note for plant in window.desk.book.plants.values()]
    assert notes[-2:] == ["one", "two"]
    QApplication.processEvents()


def test_the_first_rows_alone_say_how_wide_the_columns_are(
    window: MainWindow, settle: Callable[[], None], peas: MainWindow
) -> None:
    window.show_page("records")
    settle()
    (page,) = window.book_pages["records"].findChildren(RecordsPage)
    assert 0 < page.view.horizontalHeader().resizeContentsPrecision() <= 100
