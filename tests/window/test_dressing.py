"""Another look or size of text comes to every part of the window, a part at a time."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.window.labels import LinkLabel
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.style import colours_of

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
