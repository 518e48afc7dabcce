"""Copies, backups, the list of what was done, and the settings of the book."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.places import demo
from pedigreeview.window.backups_dialog import BackupsDialog
from pedigreeview.window.base_panel import BasePanel
from pedigreeview.window.book_settings import BookSettingsDialog
from pedigreeview.window.edits_list import EditsList
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.save_copy import SaveCopy

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def kept(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    window.open_path(path)
    settle()
    return window


def rename(window: MainWindow, name: str) -> None:
    def work(edit: Edit) -> None:
        edit.update(edit.book.plants["TP"], name=name)

    window.desk.record(f"name {name}", work)


def name_of(window: MainWindow) -> str:
    assert window.desk.book is not None
    return window.desk.book.plants["TP"].name


def test_a_backup_is_gone_back_to_and_what_was_there_becomes_one(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    was = name_of(kept)
    rename(kept, "Another")
    settle()
    kept.menus.actions["backups"].trigger()
    dialog = kept.dialog
    assert isinstance(dialog, BackupsDialog)
    assert dialog.table.rowCount() == 1
    assert dialog.table.item(0, 1).text()
    qtbot.mouseClick(dialog.restore_button, LEFT)
    assert name_of(kept) == "Another"
    assert "becomes a backup first" in dialog.message.text()
    qtbot.mouseClick(dialog.restore_button, LEFT)
    settle()
    assert kept.dialog is None
    assert name_of(kept) == was
    assert kept.desk.file is not None
    newest = kept.desk.file.backups()[0]
    with BookFile.open(newest.path, read_only=True) as held:
        assert held.book.plants["TP"].name == "Another"


def test_a_backup_is_made_by_hand_and_a_choice_can_be_taken_back(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.door.show_backups()
    dialog = kept.dialog
    assert isinstance(dialog, BackupsDialog)
    qtbot.mouseClick(dialog.now_button, LEFT)
    settle()
    assert dialog.table.rowCount() == 2
    dialog.ask()
    dialog.table.selectRow(1)
    assert not dialog.message.isVisible()
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert kept.dialog is None


def test_a_copy_is_whole_and_one_goes_on_in_it(
    qtbot: QtBot, kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    rename(kept, "Another")
    settle()
    kept.menus.actions["save_copy"].trigger()
    dialog = kept.dialog
    assert isinstance(dialog, SaveCopy)
    assert dialog.file.text() == str(tmp_path / "peas copy.pedbook")
    dialog.file.setText(str(tmp_path / "peas.pedbook"))
    qtbot.keyClick(dialog.file, Qt.Key.Key_Return)
    settle()
    assert "of this name" in dialog.message.text()
    dialog.file.setText(str(tmp_path / "second.pedbook"))
    qtbot.mouseClick(dialog.go_on, LEFT, pos=dialog.go_on.rect().center().__class__(8, 10))
    qtbot.keyClick(dialog.file, Qt.Key.Key_Return)
    settle()
    assert kept.opened is not None
    assert kept.opened.path == tmp_path / "second.pedbook"
    assert name_of(kept) == "Another"
    assert kept.desk.undo_words == "name Another"


def test_what_was_done_is_listed_and_undone_to_a_place(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    was = name_of(kept)
    for name in ("One", "Two", "Three"):
        rename(kept, name)
    settle()
    kept.menus.actions["done"].trigger()
    settle()
    dialog = kept.dialog
    assert isinstance(dialog, EditsList)
    shown = [dialog.table.item(row, 0).text() for row in range(dialog.table.rowCount())]
    assert shown == ["Name Three", "Name Two", "Name One"]
    year = str(datetime.date.today().year)
    assert year in dialog.table.item(0, 1).text()
    dialog.table.selectRow(1)
    assert "2 steps" in dialog.undo_button.text()
    qtbot.mouseClick(dialog.undo_button, LEFT)
    settle()
    settle()
    assert name_of(kept) == "One"
    assert "(undone)" in dialog.table.item(0, 0).text()
    qtbot.mouseClick(dialog.redo_button, LEFT)
    settle()
    assert name_of(kept) == "Two"
    dialog.table.selectRow(2)
    qtbot.mouseClick(dialog.undo_button, LEFT)
    settle()
    assert name_of(kept) == was


def test_settings_are_one_step_and_numbers_follow(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    assert kept.opened is not None
    assert kept.opened.net.inbreeding("BA") == 1.0
    kept.menus.actions["settings"].trigger()
    dialog = kept.dialog
    assert isinstance(dialog, BookSettingsDialog)
    fixation = dialog.fields["variety_fixation"].focusProxy()
    assert isinstance(fixation, QLineEdit)
    fixation.setFocus()
    fixation.selectAll()
    qtbot.keyClicks(fixation, "1,5")
    qtbot.mouseClick(dialog.save_button, LEFT)
    assert "1.5" in dialog.fields["variety_fixation"].said()
    fixation.selectAll()
    qtbot.keyClicks(fixation, "0,5")
    name = dialog.fields["name"].focusProxy()
    assert isinstance(name, QLineEdit)
    name.selectAll()
    qtbot.keyClicks(name, "Peas of the yard")
    cross = dialog.codes.fields["cross"]
    cross.set_text("{yyyy}/{cross:3}")
    year = datetime.date.today().year
    assert f"gives {year}/001" in cross.said()
    order = next(b for b in dialog.orders.buttons() if b.objectName() == "month-day")
    order.setChecked(True)
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert kept.dialog is None
    assert kept.desk.book is not None
    settings = kept.desk.book.settings
    assert settings.name == "Peas of the yard"
    assert settings.variety_fixation == 0.5
    assert settings.code_pattern == "cross={yyyy}/{cross:3}"
    assert kept.preferences.date_order == "month-day"
    assert kept.book_name.text() == "Peas of the yard"
    # BA states no fixation of its own, and F of a founder is its fixation.
    assert kept.opened.net.inbreeding("BA") == 0.5
    kept.desk.undo()
    settle()
    assert kept.desk.book.settings.code_pattern == ""
    assert kept.desk.undo_words == ""


def test_a_pattern_that_cannot_be_read_is_said_and_nothing_is_kept(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.menus.book_acts.settings()
    dialog = kept.dialog
    assert isinstance(dialog, BookSettingsDialog)
    dialog.codes.fields["plant"].set_text("{cross}{plant}")
    assert "runs into" in dialog.codes.fields["plant"].said()
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert dialog.isVisible()
    assert "runs into" in dialog.message.text()
    assert kept.desk.undo_words == ""


def test_the_base_leads_to_the_settings_of_a_book(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.asides.show_base()
    panel = kept.dialog
    assert isinstance(panel, BasePanel)
    assert panel.change.isVisible()
    qtbot.mouseClick(panel.change, LEFT)
    assert isinstance(kept.dialog, BookSettingsDialog)
    ploidy = kept.dialog.fields["ploidy"].focusProxy()
    assert isinstance(ploidy, QComboBox)
