"""Another look or size of text comes to every part of the window, a part at a time."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.book_page import LazyPage
from pedigreeview.window.labels import LinkLabel
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.season_page import SeasonPage
from pedigreeview.window.style import colours_of

PEAS = demo("two_peas_both_ways")
Settle = Callable[[], None]


def test_the_frame_changes_at_once_and_every_page_after_it(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    for name in peas.book_pages:
        peas.show_page(name)
        settle()
    qtbot.mouseClick(peas.look_button, Qt.MouseButton.LeftButton)
    dark = colours_of("dark")
    ink = dark.ink.name()
    assert peas.book_name.palette().windowText().color().name() == ink
    assert peas.dressing.busy
    settle()
    for name, page in peas.book_pages.items():
        peas.show_page(name)
        settle()
        labels = [one for one in page.findChildren(QLabel) if one.property("role") == "text"]
        for label in labels:
            assert label.palette().windowText().color().name() == ink, (name, label.text())
        held = page.grab().toImage()
        assert held.pixelColor(2, held.height() - 3).lightness() < 90, name


def test_a_dialog_that_opens_later_wears_it_too(
    peas: MainWindow, settle: Settle, qtbot: QtBot
) -> None:
    peas.set_look("dark")
    settle()
    peas.door.new_book()
    assert peas.dialog is not None
    qtbot.waitExposed(peas.dialog)
    picture = peas.dialog.grab().toImage()
    assert picture.pixelColor(3, 3).lightness() < 90
    peas.dialog.reject()


def test_the_usual_look_comes_back_whole(peas: MainWindow, settle: Settle) -> None:
    peas.set_look("dark")
    peas.set_text_size(150)
    peas.set_text_size(100)
    peas.set_look("light")
    settle()
    assert [page.styleSheet() for page in peas.every_page()] == [""] * len(peas.every_page())
    assert peas.book_name.palette().windowText().color() == colours_of("light").ink


def test_links_take_the_colour_of_the_look(peas: MainWindow, settle: Settle, qtbot: QtBot) -> None:
    label = LinkLabel('<a href="plant:TP">TP</a>')
    label.setParent(peas.pedigree)
    label.resize(80, 30)
    label.show()
    peas.set_look("dark")
    settle()
    link = colours_of("dark").accent
    picture = label.grab().toImage()
    near = [
        (x, y)
        for x in range(picture.width())
        for y in range(picture.height())
        if abs(picture.pixelColor(x, y).red() - link.red()) < 12
        and abs(picture.pixelColor(x, y).green() - link.green()) < 12
        and abs(picture.pixelColor(x, y).blue() - link.blue()) < 12
    ]
    assert near


def test_the_ground_of_the_window_changes_too(peas: MainWindow, settle: Settle) -> None:
    """Seen beside the bar that a page scrolls by, which lies on nothing else."""
    peas.show_page("records")
    peas.set_text_size(200)
    peas.resize(1280, 640)
    peas.set_look("dark")
    settle()
    bar = peas.area.verticalScrollBar()
    assert bar.isVisible()
    spot = bar.mapTo(peas, bar.rect().topLeft())
    assert peas.grab().toImage().pixelColor(spot).lightness() < 90


def _rest(shown: MainWindow, qtbot: QtBot) -> None:
    lazy = [page for page in shown.book_pages.values() if isinstance(page, LazyPage)]

    def rests() -> bool:
        making = any(page.making for page in lazy)
        return not (shown.errands.awaits() or shown.dressing.busy or making)

    qtbot.waitUntil(rests, timeout=15000)
    QApplication.processEvents()


def _still(page: QWidget, qtbot: QtBot) -> QImage:
    """The page, once two pictures of it are the same."""
    taken = [page.grab().toImage()]

    def same() -> bool:
        taken.append(page.grab().toImage())
        return taken[-1] == taken[-2]

    qtbot.waitUntil(same)
    return taken[-1]


def _sights(shown: MainWindow, qtbot: QtBot) -> dict[str, QImage]:
    """Every page and every part of the season, each as it looks."""
    found = {}
    for name, page in shown.book_pages.items():
        shown.show_page(name)
        # Nothing is pointed at, wherever a test before left the mouse.
        QTest.mouseMove(shown, QPoint(shown.width() // 2, 4))
        _rest(shown, qtbot)
        found[name] = _still(page, qtbot)
    shown.show_page("season")
    lazy = shown.book_pages["season"]
    assert isinstance(lazy, LazyPage)
    season = lazy.page()
    assert isinstance(season, SeasonPage)
    for row in reversed(range(season.parts.count())):
        season.parts.setCurrentRow(row)
        _rest(shown, qtbot)
        found[f"season {row}"] = _still(lazy, qtbot)
    return found


def _unlike(one: QImage, other: QImage) -> float:
    """Share of the pixels that differ by more than smoothing does; 1 for another size."""
    if one.size() != other.size():
        return 1.0

    def values(image: QImage) -> np.ndarray:
        held = image.convertToFormat(QImage.Format.Format_RGB32)
        rows = np.frombuffer(held.constBits(), np.uint8)
        return rows.reshape(held.height(), held.width(), 4)[:, :, :3].astype(int)

    return float((np.abs(values(one) - values(other)).max(axis=2) > 24).mean())


@pytest.mark.parametrize("early", [True, False])
def test_a_page_looks_as_if_it_had_worn_the_look_from_the_first(
    preferences: Preferences, qtbot: QtBot, early: bool
) -> None:
    """early : whether the pages are made before the look changes, or after"""
    sights = []
    for looks in (("dark",), ("light", "dark")):
        preferences.look = looks[0]
        window = MainWindow(preferences)
        qtbot.addWidget(window)
        window.resize(1280, 800)
        window.show()
        qtbot.waitExposed(window)
        window.open_path(PEAS)
        _rest(window, qtbot)
        if early:
            _sights(window, qtbot)
        for look in looks[1:]:
            window.set_look(look)
            _rest(window, qtbot)
        if not early:
            # Lists that come while a page is seen for the first time are laid out when it is again.
            _sights(window, qtbot)
        sights.append(_sights(window, qtbot))
        window.close()
    first, changed = sights
    unlike = {name: _unlike(first[name], changed[name]) for name in first}
    # The canvas may have moved by a little; a ground left behind would be most of it.
    most = {"pedigree": 0.05}
    assert {name: by for name, by in unlike.items() if by > most.get(name, 0.001)} == {}


def test_a_size_of_text_and_back_leave_nothing_behind(peas: MainWindow, qtbot: QtBot) -> None:
    _sights(peas, qtbot)
    before = _sights(peas, qtbot)
    peas.set_look("dark")
    peas.set_text_size(200)
    _rest(peas, qtbot)
    peas.set_text_size(100)
    peas.set_look("light")
    _rest(peas, qtbot)
    after = _sights(peas, qtbot)
    # The canvas keeps its zoom, and a table of judging the height that large text asked for.
    alike = [name for name in before if name not in ("pedigree", "judging")]
    unlike = {name: _unlike(before[name], after[name]) for name in alike}
    assert {name: share for name, share in unlike.items() if share > 0.001} == {}
