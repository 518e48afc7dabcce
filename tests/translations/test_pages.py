"""Every page of the window in the second language: nothing that is seen or heard stays English."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape

import pytest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.telling import tell_with
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.translating import languages, speak
from tests.translations.papers_in import english_in
from tests.window.conftest import PEAS

LANGUAGES = languages()[1:]
OF_QT = ("qt_", "Scroll")
"""Parts of Qt's own widgets begin with these names."""


@pytest.fixture(params=LANGUAGES)
def foreign(
    request: pytest.FixtureRequest,
    qtbot: QtBot,
    preferences: Preferences,
    one_application: QApplication,
) -> Iterator[MainWindow]:
    preferences.language = str(request.param)
    window = MainWindow(preferences)
    qtbot.addWidget(window)
    window.resize(1280, 800)
    window.show()
    qtbot.waitExposed(window)
    window.open_path(PEAS)
    qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
    yield window
    if window.dialog is not None:
        window.dialog.reject()
    window.close()
    speak(one_application, "en")
    tell_with(None)


def texts_of(top: QWidget) -> Iterator[str]:
    """What is written on widgets, what they are called, and their tips."""
    for widget in [top, *top.findChildren(QWidget)]:
        if widget.objectName().startswith(OF_QT):
            continue
        yield widget.accessibleName()
        yield widget.accessibleDescription()
        yield widget.toolTip()
        if isinstance(widget, QLabel | QAbstractButton):
            yield widget.text()
        elif isinstance(widget, QLineEdit):
            yield widget.placeholderText()
        for action in widget.actions():
            yield action.text()


def plain(text: str) -> str:
    return unescape(re.sub(r"<[^>]*>", " ", text)).replace("&", "")


@pytest.mark.parametrize(
    "page",
    ["pedigree", "map", "reciprocals", "judging", "relatedness", "parents", "season", "records",
     "checks"],
)  # fmt: skip
def test_no_page_holds_an_english_word(foreign: MainWindow, qtbot: QtBot, page: str) -> None:
    foreign.show_page(page)
    QApplication.processEvents()
    qtbot.waitUntil(lambda: not foreign.errands.awaits(), timeout=15000)
    QApplication.processEvents()
    assert foreign.opened is not None
    shown = foreign.book_pages[page]
    told = {plain(text) for text in texts_of(shown) if text}
    assert english_in(foreign.opened.net, foreign.preferences.language, sorted(told)) == {}


def test_no_menu_and_no_foot_holds_an_english_word(foreign: MainWindow) -> None:
    assert foreign.opened is not None
    told = {plain(text) for action in foreign.menus.actions.values() if (text := action.text())}
    told |= {plain(text) for text in texts_of(foreign.rail) if text}
    told.add(plain(foreign.said.text()))
    assert english_in(foreign.opened.net, foreign.preferences.language, sorted(told)) == {}
