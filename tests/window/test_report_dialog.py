"""The report dialog: from the menu, parts and words chosen, pages seen, saved and printed."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.report_dialog import ReportDialog

LEFT = Qt.MouseButton.LeftButton
Settle = Callable[[], None]


def opened(window: MainWindow, settle: Settle, code: str, action: str) -> ReportDialog:
    window.show_plant(code)
    settle()
    window.menus.actions[action].trigger()
    assert isinstance(window.dialog, ReportDialog)
    settle()
    return window.dialog


def laid_out(dialog: ReportDialog, settle: Settle) -> None:
    """Do not wait for the short delay after a key."""
    dialog._delay.stop()
    dialog._lay_out()
    settle()


def written(dialog: ReportDialog) -> str:
    assert dialog.pages is not None
    return " ".join(
        piece.text
        for page in dialog.pages.pages
        for _, block in page
        for piece in block.pieces
        if piece.kind == "text"
    )


def test_history_of_the_plant_in_view(
    peas: MainWindow, settle: Settle, qtbot: QtBot, tmp_path: Path
) -> None:
    dialog = opened(peas, settle, "19-4-2", "report_line")
    assert dialog.pages is not None
    assert dialog.pages.report.title == "The history of 19-4-2"
    assert not dialog.preview.page.image.isNull()
    assert dialog.facts.text() == dialog.pages.words()
    # Parts, by click; the others stay.
    assert "Both directions of the cross" in written(dialog)
    box = dialog.form.boxes["reciprocals"]
    qtbot.mouseClick(box, LEFT, pos=QPoint(8, box.height() // 2))
    assert not box.isChecked()
    assert not dialog.pdf_button.isEnabled()
    laid_out(dialog, settle)
    assert dialog.pdf_button.isEnabled()
    assert "Both directions of the cross" not in written(dialog)
    # The person's own words, by keys.
    dialog.form.caption.clear()
    qtbot.keyClicks(dialog.form.caption, "Sweet & dwarf.")
    dialog.form.person.clear()
    qtbot.keyClicks(dialog.form.person, "R. W.")
    dialog.form.date.setText("2026-09-01")
    dialog.form.paper.setCurrentIndex(dialog.form.paper.findData("Letter"))
    laid_out(dialog, settle)
    assert "of Letter." in dialog.facts.text()
    assert "Sweet & dwarf." in written(dialog)
    assert "R. W., 2026-09-01" in written(dialog)
    path = tmp_path / "history.html"
    with qtbot.waitSignal(dialog.saved) as signal:
        dialog.save_to(path)
    settle()
    assert signal.args == [path]
    text = "".join(ElementTree.parse(path).getroot().itertext())
    assert "Sweet & dwarf." in text
    assert "Both directions of the cross" not in text
    assert "history.html" in peas.said.text()
    # The name and the paper are proposed again.
    again = opened(peas, settle, "23-07", "report_plant")
    assert again.form.person.toPlainText() == "R. W."
    assert again.form.paper.currentData() == "Letter"


def test_report_on_a_plant_to_pdf_by_the_button(
    peas: MainWindow, settle: Settle, qtbot: QtBot, tmp_path: Path
) -> None:
    dialog = opened(peas, settle, "21-01-3", "report_plant")
    assert dialog.report is not None
    assert dialog.report.kind == "plant"
    qtbot.mouseClick(dialog.pdf_button, LEFT)
    asked = next(d for d in dialog.findChildren(QFileDialog))
    assert asked.defaultSuffix() == "pdf"
    asked.reject()
    with qtbot.waitSignal(dialog.saved):
        dialog.save_to(tmp_path / "plant.pdf")
    assert (tmp_path / "plant.pdf").read_bytes().startswith(b"%PDF")


def test_the_other_kind_is_made_when_it_is_chosen(peas: MainWindow, settle: Settle) -> None:
    dialog = opened(peas, settle, "19-4-2", "report_plant")
    assert "generations" not in dialog.form.boxes
    dialog.form.kind.setCurrentIndex(1)
    settle()
    assert "generations" in dialog.form.boxes
    assert dialog.pages is not None
    assert dialog.pages.report.kind == "line"


def test_a_founder_is_offered_no_history(peas: MainWindow, settle: Settle) -> None:
    dialog = opened(peas, settle, "TP", "report_line")
    assert dialog.form.kind.count() == 1
    assert dialog.report is not None
    assert dialog.report.kind == "plant"


def test_printing_goes_to_the_printer_at_its_true_size(
    peas: MainWindow, settle: Settle, qtbot: QtBot, tmp_path: Path
) -> None:
    dialog = opened(peas, settle, "19-4-2", "report_plant")
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    with qtbot.waitSignal(dialog.printed) as signal:
        dialog.print_to(printer)
    assert signal.args is not None
    assert "printed.pdf" in signal.args[0]
    assert (tmp_path / "printed.pdf").read_bytes().startswith(b"%PDF")


def test_what_cannot_be_written_is_said_and_the_dialog_stays(
    peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    dialog = opened(peas, settle, "19-4-2", "report_plant")
    dialog.save_to(tmp_path / "no" / "a.pdf")
    settle()
    assert dialog.isVisible()
    assert "cannot be written" in dialog.message.text()
    assert dialog.pdf_button.isEnabled()


@pytest.mark.parametrize("size", [100, 200])
def test_nothing_is_cut_off(peas: MainWindow, settle: Settle, size: int) -> None:
    peas.set_text_size(size)
    dialog = opened(peas, settle, "19-4-2", "report_line")
    for button in (dialog.pdf_button, dialog.html_button, dialog.print_button):
        assert button.width() >= button.minimumSizeHint().width()
    for box in dialog.form.boxes.values():
        assert box.accessibleName() or box.text()
        assert box.width() >= box.minimumSizeHint().width()
