"""Save as …, Copy table, Copy picture and parentage as text, by clicks and keys."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from pytestqt.qtbot import QtBot

from pedigreeview.exchange import read_book
from pedigreeview.exchange.spreadsheets import open_table
from pedigreeview.window.export_dialog import MATRIX, TABLE, ExportDialog
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.notation_dialog import NotationDialog

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


def saving(peas: MainWindow, settle: Settle) -> ExportDialog:
    peas.menus.actions["save_as"].trigger()
    settle()
    found = peas.dialog
    assert isinstance(found, ExportDialog)
    return found


def write_to(qtbot: QtBot, dialog: ExportDialog, path: Path, settle: Settle) -> None:
    dialog.file.selectAll()
    qtbot.keyClicks(dialog.file, str(path))
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()


def test_every_format_is_written_and_read_again(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    assert peas.opened is not None
    wanted = set(peas.opened.net.book.plants)
    for kind, name in (
        ("book", "out.pedbook"),
        ("folder", "out"),
        ("table", "out.csv"),
        ("xlsx", "out.xlsx"),
        ("brapi", "out.brapi.json"),
        ("graphml", "out.graphml"),
        ("gexf", "out.gexf"),
        ("node-link", "out.json"),
    ):
        dialog = saving(peas, settle)
        dialog.choose(kind)
        write_to(qtbot, dialog, tmp_path / name, settle)
        assert peas.dialog is None, kind
        assert set(read_book(tmp_path / name).plants) == wanted, kind


def test_what_a_format_cannot_carry_is_said_before_it_writes(
    peas: MainWindow, settle: Settle
) -> None:
    dialog = saving(peas, settle)
    dialog.choose("passport")
    settle()
    assert dialog.lost.text().startswith("It cannot carry:")
    dialog.choose("dot")
    settle()
    assert "is not read again" in dialog.lost.text()
    dialog.choose("book")
    settle()
    assert "not read again" not in dialog.lost.text()


def test_a_file_that_is_there_is_replaced_only_when_said(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "old.graphml"
    path.write_text("mine")
    dialog = saving(peas, settle)
    dialog.choose("graphml")
    write_to(qtbot, dialog, path, settle)
    assert path.read_text() == "mine"
    assert "is there already" in dialog.message.text()
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert path.read_text() != "mine"


def test_a_matrix_of_named_plants(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    dialog = saving(peas, settle)
    dialog.choose(MATRIX)
    settle()
    dialog.which.setCurrentIndex(dialog.which.findData("named"))
    assert dialog.named.isVisible()
    qtbot.keyClicks(dialog.named, "TP, nobody")
    dialog.ending.setCurrentIndex(dialog.ending.findText(".npz"))
    write_to(qtbot, dialog, tmp_path / "m.npz", settle)
    assert "nobody is no plant of this book" in dialog.message.text()
    dialog.named.selectAll()
    qtbot.keyClicks(dialog.named, "TP, BA, 21-01-3")
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    with np.load(tmp_path / "m.npz") as held:
        # Two pure lines that have nothing in common, and their F1: 1, 0 and 1/2 (by hand).
        assert held["matrix"].tolist() == [[1, 0, 0.5], [0, 1, 0.5], [0.5, 0.5, 0.5]]
        assert list(held["codes"]) == ["TP", "BA", "21-01-3"]


def test_the_table_on_show_is_copied_and_saved_as_it_is_shown(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    peas.menus.actions["copy_table"].trigger()
    assert peas.said.text() == "This page shows no table to copy."
    peas.show_page("records")
    settle()
    page = peas.pages.currentWidget().page()  # type: ignore[attr-defined]
    qtbot.keyClicks(page.search, "TP")
    rows = page.model.rowCount()
    assert peas.opened is not None
    assert 0 < rows < len(peas.opened.net.book.plants)
    peas.menus.actions["copy_table"].trigger()
    lines = QGuiApplication.clipboard().text().splitlines()
    assert len(lines) == rows + 1
    assert lines[0].split("\t")[0] == "Plant"
    dialog = saving(peas, settle)
    dialog.choose(TABLE)
    assert dialog.kinds.currentItem().text() == "The table on show: Plants"
    dialog.ending.setCurrentIndex(dialog.ending.findText(".xlsx"))
    write_to(qtbot, dialog, tmp_path / "t.xlsx", settle)
    (sheet,) = open_table(tmp_path / "t.xlsx").tables
    assert len(sheet.rows) == rows + 1
    dialog = saving(peas, settle)
    dialog.choose(TABLE)
    write_to(qtbot, dialog, tmp_path / "t.csv", settle)
    with (tmp_path / "t.csv").open(encoding="utf-8-sig", newline="") as held:
        assert len(list(csv.reader(held))) == rows + 1


def test_the_picture_is_copied_as_image_and_as_svg(peas: MainWindow, settle: Settle) -> None:
    peas.menus.actions["copy_picture"].trigger()
    settle()
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert bytes(data.data("image/svg+xml").data()).lstrip().startswith(b"<?xml")
    assert peas.said.text() == "The picture is on the clipboard."


def test_the_parentage_of_a_plant_as_text(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    peas.show_plant("21-01-3")
    settle()
    peas.menus.actions["notation"].trigger()
    dialog = peas.dialog
    assert isinstance(dialog, NotationDialog)
    assert dialog.text.toPlainText() == "TP/BA"
    qtbot.keyClick(dialog.styles["cross"], Qt.Key.Key_Space)
    assert dialog.text.toPlainText() == "TP × BA"
    qtbot.keyClick(dialog.names, Qt.Key.Key_Space)
    assert dialog.text.toPlainText() == "Tarnwick Pale × Brockle Amber"
    qtbot.mouseClick(dialog.copy_button, LEFT)
    assert QGuiApplication.clipboard().text() == "Tarnwick Pale × Brockle Amber"
