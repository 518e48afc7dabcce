"""The window mirrored, for languages written from right to left: panels turn, pictures do not."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
from tests.window.conftest import PEAS


@pytest.fixture
def mirrored(qtbot: QtBot, preferences: Preferences) -> Iterator[MainWindow]:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    app.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    try:
        window = MainWindow(preferences)
        qtbot.addWidget(window)
        window.resize(1280, 800)
        window.show()
        qtbot.waitExposed(window)
        window.open_path(PEAS)
        qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
        yield window
        window.close()
    finally:
        app.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def left_of(window: MainWindow, widget) -> int:
    return widget.mapTo(window, widget.rect().topLeft()).x()


def test_panels_mirror_and_the_seed_parent_stays_left(mirrored: MainWindow, qtbot: QtBot) -> None:
    page = mirrored.pedigree
    assert left_of(mirrored, mirrored.rail) > left_of(mirrored, page)
    assert left_of(mirrored, mirrored.find_field) < left_of(mirrored, mirrored.book_name)
    page.index_button.click()
    assert left_of(mirrored, page.drawer) > left_of(mirrored, page.canvas)
    page.focus_on("21-01-3")
    canvas = page.canvas
    qtbot.waitUntil(lambda: not canvas.moving())
    assert 0 <= canvas.where("TP").x() < canvas.where("BA").x()


def test_clicks_find_what_is_painted(mirrored: MainWindow, qtbot: QtBot) -> None:
    canvas = mirrored.pedigree.canvas
    qtbot.waitUntil(lambda: not canvas.moving())
    code = next(code for code in canvas.visible_codes() if code != canvas.selected_code())
    qtbot.mouseClick(canvas.viewport(), Qt.MouseButton.LeftButton, pos=canvas.where(code))
    qtbot.waitUntil(lambda: mirrored.pedigree.focus == code)


def test_the_picture_is_painted_the_same_way_round(mirrored: MainWindow, qtbot: QtBot) -> None:
    """Same pixels as from left to right: no text is turned about or set at the other side."""
    canvas = mirrored.pedigree.canvas
    qtbot.waitUntil(lambda: not canvas.moving())
    canvas.fit()
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    before = canvas.viewport().grab().toImage()
    app.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
    canvas.fit()
    assert canvas.viewport().grab().toImage() == before
