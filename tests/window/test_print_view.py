"""Printing: what the sheets hold, to a PDF and to a printer that is not there."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.window import print_view
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.print_view import PrintView
from tests.reports.pdf_marks import inked

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def dialog(
    peas: MainWindow, settle: Callable[[], None], monkeypatch: pytest.MonkeyPatch
) -> PrintView:
    monkeypatch.setattr(print_view, "printer_names", lambda: [])
    peas.menus.actions["print_picture"].trigger()
    assert isinstance(peas.dialog, PrintView)
    return peas.dialog


def previewed(dialog: PrintView, settle: Callable[[], None]) -> str:
    dialog._delay.stop()
    dialog._draw_preview()
    settle()
    return dialog.sheets_note.text()


def test_the_preview_shows_the_sheets_that_will_be_printed(
    dialog: PrintView, settle: Callable[[], None]
) -> None:
    assert previewed(dialog, settle).startswith("1 sheet of A4")
    assert not dialog.preview.image.isNull()
    whole = dialog.preview.image
    dialog.sheets.setCurrentIndex(1)
    dialog.what.setCurrentIndex(1)
    dialog.paper.setCurrentText("A5")
    note = previewed(dialog, settle)
    assert " sheets of A5" in note
    assert dialog.preview.image != whole
    assert dialog.preview.accessibleDescription() == note


def test_grey_is_grey(dialog: PrintView, settle: Callable[[], None]) -> None:
    def coloured() -> int:
        image = dialog.preview.image
        spots = [
            image.pixelColor(x, y)
            for x in range(0, image.width(), 3)
            for y in range(0, image.height(), 3)
        ]
        return sum(spot.saturation() > 60 and spot.alpha() > 200 for spot in spots)

    previewed(dialog, settle)
    assert coloured() > 50
    dialog.grey.setChecked(True)
    previewed(dialog, settle)
    assert coloured() == 0


def test_margins_and_a_caption_are_printed(
    dialog: PrintView, settle: Callable[[], None], qtbot: QtBot, tmp_path: Path
) -> None:
    previewed(dialog, settle)
    usual = dialog.preview.image.copy()
    assert (dialog.margin.value(), dialog.margin.minimum()) == (10, 5)
    dialog.caption.setFocus()
    qtbot.keyClicks(dialog.caption, "In my own words")
    assert dialog._delay.isActive()
    previewed(dialog, settle)
    told = dialog.preview.image.copy()
    dialog.margin.setValue(30)
    previewed(dialog, settle)
    assert usual != told != dialog.preview.image
    path = tmp_path / "picture.pdf"
    dialog.file.setText(str(path))
    with qtbot.waitSignal(dialog.printed, timeout=15000):
        qtbot.mouseClick(dialog.save_button, LEFT)
    (page,) = inked(path)
    assert page.blank_mm() == pytest.approx((30,) * 4, abs=0.4)


def test_without_a_printer_a_pdf_is_written(
    peas: MainWindow,
    dialog: PrintView,
    settle: Callable[[], None],
    qtbot: QtBot,
    tmp_path: Path,
) -> None:
    assert dialog.to_file()
    assert dialog.copies.isHidden()
    path = tmp_path / "picture.pdf"
    dialog.file.setText(str(path))
    with qtbot.waitSignal(dialog.printed, timeout=15000) as heard:
        qtbot.mouseClick(dialog.save_button, LEFT)
    assert heard.args == [1, "picture.pdf"]
    assert path.read_bytes().startswith(b"%PDF-")
    assert peas.said.text() == "1 sheet sent to picture.pdf"
    assert [one.name for one in tmp_path.glob("*.pdf*")] == ["picture.pdf"]


def test_what_cannot_be_written_is_said_and_the_dialog_stays(
    dialog: PrintView, settle: Callable[[], None], qtbot: QtBot, tmp_path: Path
) -> None:
    dialog.file.setText(str(tmp_path / "nowhere" / "picture.pdf"))
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert dialog.isVisible()
    assert dialog.save_button.isEnabled()
    assert dialog.message.text() not in ("", "Printing …")
    dialog.file.setText("  ")
    qtbot.mouseClick(dialog.save_button, LEFT)
    assert dialog.message.text() == "Say which file is to be written."


def test_printers_come_before_the_file(peas: MainWindow, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(print_view, "printer_names", lambda: ["Office", "Potting shed"])
    peas.menus.actions["print_picture"].trigger()
    dialog = peas.dialog
    assert isinstance(dialog, PrintView)
    assert [dialog.printer.itemText(at) for at in (0, 1)] == ["Office", "Potting shed"]
    assert not dialog.to_file()
    assert not dialog.copies.isHidden()
    assert dialog.file.isHidden()
    assert dialog.save_button.text() == "Print"
