"""Printing tags and lists, and typing a garden sheet in, by real clicks and keys."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from pedigreeview.book.recording.printed_sheets import printed_sheets
from pedigreeview.reports.paper_choices import Chosen
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.papers.opening import open_papers
from pedigreeview.window.papers.papers_dialog import PapersDialog
from tests.window.season_book import ago, season_book
from tests.window.test_season_page import book_of, page_of

Settle = Callable[[], None]


@pytest.fixture
def garden(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    window.open_path(season_book(tmp_path))
    settle()
    return window


@pytest.fixture
def opened(garden: MainWindow, qtbot: QtBot) -> Callable[..., PapersDialog]:
    def make(paper: str, offers: dict[str, Chosen] | None = None) -> PapersDialog:
        dialog = open_papers(garden, paper, offers)
        assert dialog is not None
        ready(qtbot, dialog)
        return dialog

    return make


def ready(qtbot: QtBot, dialog: PapersDialog) -> None:
    qtbot.waitUntil(lambda: dialog.paper is not None, timeout=10000)
    qtbot.waitUntil(lambda: not dialog.preview.page.image.isNull(), timeout=10000)


def test_the_menu_opens_the_dialog_with_live_pages(garden: MainWindow, qtbot: QtBot):
    garden.menus.actions["print_papers"].trigger()
    dialog = garden.dialog
    assert isinstance(dialog, PapersDialog)
    ready(qtbot, dialog)
    assert dialog.preview.where.text() == "Page 1 of 1"
    # Two pollinations and two planned crosses without any.
    assert dialog.facts.text().startswith("4 labels on 1 sheet")
    image = dialog.preview.page.image
    dark = sum(
        image.pixelColor(x, y).lightness() < 90
        for x in range(0, image.width(), 3)
        for y in range(0, image.height() // 8, 3)
    )
    assert dark > 200


def test_keys_and_boxes_change_what_is_printed(opened, qtbot: QtBot):
    dialog = opened("flowers")
    dialog.form.start.setFocus()
    dialog.form.start.selectAll()
    qtbot.keyClicks(dialog.form.start, "64")
    qtbot.waitUntil(lambda: dialog.paper is None)
    ready(qtbot, dialog)
    assert dialog.paper.count == 2
    page = dialog.preview.page
    qtbot.keyClick(page, Qt.Key.Key_PageDown)
    assert dialog.preview.where.text() == "Page 2 of 2"
    qtbot.keyClick(page, Qt.Key.Key_Home)
    assert dialog.preview.at == 0
    qtbot.mouseClick(dialog.form.qr, Qt.MouseButton.LeftButton, pos=QPoint(10, 10))
    ready(qtbot, dialog)
    assert dialog.paper.labels.qr


def test_what_is_chosen_stands_before_what_is_due(opened):
    dialog = opened("fruits", {"the cross": Chosen(crosses=("A-1",))})
    assert dialog.form.source.currentText() == "the cross: 1"
    assert {text.code for text in dialog.paper.labels.labels} == {"A-1"}


def test_what_does_not_fit_is_said_before_printing(opened, qtbot: QtBot):
    dialog = opened("packets")
    dialog.form.stock.setCurrentIndex(dialog.form.stock.findData("own"))
    dialog.form.measures.setFocus()
    qtbot.keyClicks(dialog.form.measures, "roll 22x12")
    ready(qtbot, dialog)
    qtbot.waitUntil(lambda: dialog.paper is not None and bool(dialog.paper.warnings))
    assert "has no room for" in dialog.warnings.text()
    assert dialog.warnings.isVisible()


def test_nothing_to_print_says_why_and_prints_nothing(opened, qtbot: QtBot, garden: MainWindow):
    dialog = opened("stakes") if book_of(garden).sowings else open_papers(garden, "stakes")
    assert dialog is not None
    qtbot.waitUntil(lambda: bool(dialog.preview.page.words), timeout=10000)
    assert "no sowings" in dialog.preview.page.words
    assert not dialog.print_button.isEnabled()
    assert not dialog.save_button.isEnabled()


def test_a_printer_gets_every_page_at_its_true_size(opened, qtbot: QtBot, tmp_path: Path):
    dialog = opened("flowers")
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setFullPage(True)
    path = tmp_path / "tags.pdf"
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(path))
    with qtbot.waitSignal(dialog.printed, timeout=10000):
        dialog.print_to(printer)
    assert path.read_bytes().startswith(b"%PDF")
    assert printer.fullPage()


@pytest.mark.parametrize("paper", ["pots", "plan", "beds", "fruit sheet", "scores", "pollinations"])
def test_every_paper_is_laid_out(opened, paper: str):
    dialog = opened(paper)
    assert dialog.paper.count >= 1
    assert bool(dialog.paper.sheets) == (paper in ("fruit sheet", "scores", "pollinations"))


def test_a_printed_sheet_is_typed_in_by_its_number(
    opened, garden: MainWindow, qtbot: QtBot, settle: Settle, tmp_path: Path
):
    dialog = opened("scores")
    number = dialog.paper.sheets[0].number
    with qtbot.waitSignal(dialog.printed, timeout=10000):
        dialog.save_to(tmp_path / "scores.pdf")
    settle()
    (kept,) = printed_sheets(book_of(garden))
    assert (kept.number, kept.rows) == (number, ("A-6-1", "A-6-2"))
    assert garden.desk.undo_words == f"garden sheet {number}"

    garden.activateWindow()
    garden.show_page("season")
    page = page_of(garden)
    page.go_to("sheets")
    settle()
    sheets = page.sheets
    qtbot.keyClicks(sheets.number, number.lower().replace("-", ""))
    qtbot.keyClick(sheets.number, Qt.Key.Key_Return)
    assert sheets.model.headerData(0, Qt.Orientation.Vertical) == "1   A-6-1"
    for text in ("120", "abc"):
        qtbot.keyClicks(sheets.view, text[0])
        editor = sheets.view.indexWidget(sheets.view.currentIndex())
        assert isinstance(editor, QLineEdit)
        qtbot.keyClicks(editor, text[1:])
        qtbot.keyClick(editor, Qt.Key.Key_Return)
        # The editor is closed with the next events, and the keys go down.
        QApplication.processEvents()
    qtbot.mouseClick(sheets.record_button, Qt.MouseButton.LeftButton)
    settle()
    assert book_of(garden).scores == []
    assert list(sheets.model.faults) == [(1, 0)]
    assert sheets.model.cells == {(0, 0): "120", (1, 0): "abc"}
    assert "Nothing is recorded" in sheets.said.text()

    sheets.view.setCurrentIndex(sheets.model.index(1, 0))
    sheets.model.put({(1, 0): "95"})
    qtbot.keyClick(sheets.view, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    settle()
    scores = book_of(garden).scores
    assert [(one.plant, one.value, one.date) for one in scores] == [
        ("A-6-1", "120", ago(0)),
        ("A-6-2", "95", ago(0)),
    ]
    assert sheets.model.cells == {}
    qtbot.mouseClick(sheets.undo.undo, Qt.MouseButton.LeftButton)
    settle()
    assert book_of(garden).scores == []


def test_a_number_that_was_misread_is_noticed(
    opened, garden: MainWindow, qtbot: QtBot, settle: Settle, tmp_path: Path
):
    dialog = opened("crossing")
    with qtbot.waitSignal(dialog.printed, timeout=10000):
        dialog.save_to(tmp_path / "list.pdf")
    settle()
    garden.show_page("season")
    page = page_of(garden)
    page.go_to("sheets")
    sheets = page.sheets
    assert sheets.model.fixed(0, 0)
    assert sheets.model.data(sheets.model.index(0, 0)) == "TP"
    right = sheets.number.text()
    wrong = ("A" if right[0] != "A" else "B") + right[1:]
    sheets.number.selectAll()
    qtbot.keyClicks(sheets.number, wrong)
    qtbot.keyClick(sheets.number, Qt.Key.Key_Return)
    assert "its last sign checks the others" in sheets.said.text()


def test_a_block_from_a_spreadsheet_fills_the_sheet(
    opened, garden: MainWindow, qtbot: QtBot, settle: Settle, tmp_path: Path
):
    dialog = opened("pollinations")
    with qtbot.waitSignal(dialog.printed, timeout=10000):
        dialog.save_to(tmp_path / "blank.pdf")
    settle()
    garden.show_page("season")
    page = page_of(garden)
    page.go_to("sheets")
    sheets = page.sheets
    sheets.view.setCurrentIndex(sheets.model.index(0, 0))
    sheets.paste("TP\tBA\t\t\t4\nWC\tself\t\t\t2\n")
    sheets.record()
    settle()
    worked = list(book_of(garden).pollinations.values())[2:]
    assert [(row.cross, row.flowers) for row in worked] == [("A-1", 4), ("A-6", 2)]
    sheets.paste("x\n" * 40)
    assert "reaches beyond" in sheets.said.text()
