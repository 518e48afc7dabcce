"""A line that is cut short with an ellipsis, and the title of the book in the head of the window.

That a cut text says so and gives the whole as a tip: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QFontMetrics, QImage
from pytestqt.qtbot import QtBot

from pedigreeview.window.elided_label import ElidedLabel
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LONG = "All the peas that were ever crossed in the long bed behind the old glasshouse, and after"


def made(qtbot: QtBot, text: str, width: int) -> ElidedLabel:
    label = ElidedLabel("heading2")
    qtbot.addWidget(label)
    label.setText(text)
    label.resize(width, label.sizeHint().height())
    label.show()
    return label


@pytest.mark.parametrize("width", [40, 120, 300])
def test_a_long_line_ends_in_an_ellipsis_within_its_room(qtbot: QtBot, width: int) -> None:
    label = made(qtbot, LONG, width)
    shown = label.shown_text()
    assert shown.endswith("…")
    assert LONG.startswith(shown[:-1])
    assert QFontMetrics(label.font()).horizontalAdvance(shown) <= width
    assert label.text() == label.accessibleName() == label.toolTip() == LONG


def test_a_line_that_has_room_is_whole_and_needs_no_tip(qtbot: QtBot) -> None:
    label = made(qtbot, "Two peas", 900)
    assert (label.shown_text(), label.toolTip()) == ("Two peas", "")
    label.resize(QSize(30, label.height()))
    assert label.shown_text().endswith("…")
    assert label.toolTip() == "Two peas"
    label.resize(QSize(900, label.height()))
    assert label.toolTip() == ""


def test_what_is_cut_is_not_painted(qtbot: QtBot) -> None:
    """The same pixels as a label that holds the shortened text from the first."""

    def painted(label: ElidedLabel) -> QImage:
        return label.grab().toImage()

    label = made(qtbot, LONG, 160)
    short = made(qtbot, label.shown_text(), 160)
    assert painted(label) == painted(short)
    assert painted(label) != painted(made(qtbot, "", 160))


@pytest.mark.parametrize("percent", [100, 200])
def test_the_title_of_the_book_is_cut_with_an_ellipsis(
    peas: MainWindow, settle: Settle, percent: int
) -> None:
    if percent != 100:
        peas.set_text_size(percent)
        settle()
    peas.book_name.setText(LONG)
    settle()
    name = peas.book_name
    assert name.shown_text().endswith("…")
    shown = QFontMetrics(name.font()).horizontalAdvance(name.shown_text())
    assert shown <= name.width()
    assert name.geometry().right() < peas.find_field.geometry().left()
    assert name.toolTip() == name.accessibleName() == LONG
