"""A fresh window for each test, with settings of its own, closed and waited for at the end."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.book_page import LazyPage
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences

PEAS = demo("two_peas_both_ways")
TOMATOES = demo("a_leaf_for_hollin_plate")


@pytest.fixture
def preferences(tmp_path: Path) -> Preferences:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    found = Preferences(settings)
    found.look = "light"
    found.language = "en"
    return found


@pytest.fixture
def window(qtbot: QtBot, preferences: Preferences) -> Iterator[MainWindow]:
    made = MainWindow(preferences)
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    qtbot.waitExposed(made)
    yield made
    if made.dialog is not None:
        made.dialog.reject()
    made.close()


@pytest.fixture
def settle(qtbot: QtBot, window: MainWindow) -> Callable[[], None]:
    """Wait until the page on show is made and dressed and every answer asked for has come."""

    def rests() -> bool:
        lazy = [page for page in window.book_pages.values() if isinstance(page, LazyPage)]
        making = any(page.making for page in lazy)
        return not (window.errands.awaits() or window.dressing.busy or making)

    def wait() -> None:
        qtbot.waitUntil(rests, timeout=15000)
        # Widgets put into a layout are shown with the next events.
        QApplication.processEvents()

    return wait


@pytest.fixture
def peas(window: MainWindow, settle: Callable[[], None]) -> MainWindow:
    window.open_path(PEAS)
    settle()
    assert window.opened is not None
    return window
