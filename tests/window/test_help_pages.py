"""The sheets of help: every row is there, as tall as it needs, and laid out once for a width."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.window.help_pages import HelpSheet, cautions, words


@pytest.mark.parametrize("width", [300, 517, 900])
def test_rows_are_as_tall_as_any_label_with_that_text(qtbot: QtBot, width: int) -> None:
    sheet = HelpSheet("Words", [("", words())])
    qtbot.addWidget(sheet)
    plain = QLabel(sheet.text.text())
    qtbot.addWidget(plain)
    plain.setTextFormat(Qt.TextFormat.RichText)
    plain.setWordWrap(True)
    plain.setFont(sheet.text.font())
    assert sheet.text.heightForWidth(width) == plain.heightForWidth(width)
    assert sheet.text.heightForWidth(width) == plain.heightForWidth(width)


def test_larger_text_makes_the_rows_taller(qtbot: QtBot) -> None:
    sheet = HelpSheet("Cautions", [("", cautions())])
    qtbot.addWidget(sheet)
    before = sheet.text.heightForWidth(500)
    font = sheet.text.font()
    font.setPointSizeF(2 * font.pointSizeF())
    sheet.text.setFont(font)
    assert sheet.text.heightForWidth(500) > before


def test_every_row_can_be_scrolled_to(qtbot: QtBot) -> None:
    sheet = HelpSheet("Words", [("", words())])
    qtbot.addWidget(sheet)
    sheet.resize(420, 300)
    sheet.show()
    qtbot.waitExposed(sheet)
    text = sheet.text
    qtbot.waitUntil(lambda: text.height() >= text.heightForWidth(text.width()), timeout=2000)
    for term, _ in words():
        assert term in text.text()
