"""The row of tools: joined zoom, menus with a caret, toggles that show when they are on."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QToolButton
from pytestqt.qtbot import QtBot

from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


def _ink(button: QToolButton) -> set[str]:
    """Colours along the upper edge."""
    image = button.grab().toImage()
    return {image.pixelColor(x, 1).name() for x in range(8, image.width() - 8)}


def test_zoom_is_one_piece_of_three_and_leaves_the_row_as_one(
    qtbot: QtBot, peas: MainWindow
) -> None:
    tools = peas.pedigree.tools
    parts = [tools.further, tools.fit, tools.nearer]
    edges = [(part.geometry().left(), part.geometry().right()) for part in parts]
    assert edges[0][1] + 1 == edges[1][0]
    assert edges[1][1] + 1 == edges[2][0]
    before = peas.pedigree.canvas.zoom()
    qtbot.mouseClick(tools.nearer, Qt.MouseButton.LeftButton)
    assert peas.pedigree.canvas.zoom() > before
    peas.set_text_size(200)
    tools.arrange()
    if tools.zoom.isHidden():
        assert {"Nearer", "Further"} <= set(tools.left_out())
    peas.set_text_size(100)


def test_menus_have_a_caret_and_other_tools_have_none(peas: MainWindow) -> None:
    tools = peas.pedigree.tools
    for button in (tools.ways, tools.marks, peas.pedigree.bars.filters.status):
        assert button.menu() is not None
        assert button.property("caret") is True
        plain = button.fontMetrics().horizontalAdvance(button.text())
        assert button.sizeHint().width() > plain + 24
    assert not tools.whole.property("caret")


def test_a_tool_that_is_on_is_told_apart_by_its_edge(peas: MainWindow, settle: Settle) -> None:
    tools = peas.pedigree.tools
    off = _ink(tools.sideways)
    tools.sideways.click()
    settle()
    assert tools.sideways.isChecked()
    assert not (_ink(tools.sideways) & off)
