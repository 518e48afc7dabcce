"""How much room the window needs, at every size of the text, and where its pages begin."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.places import demo
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.pages import page_words
from pedigreeview.window.style import step

Settle = Callable[[], None]
SMALL = {100: (1024, 700), 200: (1280, 800)}
"""The room that the window gets along with, by the size of the text in percent."""


@pytest.fixture
def book(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    window.open_path(path)
    settle()
    return window


@pytest.mark.parametrize("text", [100, 200])
def test_no_page_form_or_card_makes_the_window_wider_than_a_small_screen(
    book: MainWindow, settle: Settle, text: int
) -> None:
    wide, high = SMALL[text]
    book.set_text_size(text)
    book.resize(1920, 1080)
    book.unfinished_strip.show_places(["Note"], [("records", "", "the score sheet of 2026-05-03")])
    names = [entry.name for group in book.writing.entries() for entry in group]
    for words in page_words():
        book.show_page(words.name)
        settle()
        for name in names if words.name == "checks" else ["raise"]:
            book.bench.clear()
            book.writing.open(name)
            QApplication.processEvents()
            least = book.minimumSizeHint()
            assert (least.width() <= wide, least.height() <= high) == (True, True), (
                words.name, name, least,
            )  # fmt: skip
    book.pedigree.index_button.setChecked(True)
    book.pedigree.open_card(book.pedigree.focus)
    book.resize(wide, high)
    for words in page_words():
        book.show_page(words.name)
        settle()
        assert (book.width(), book.height()) == (wide, high), words.name
        area = book.pages.parentWidget().parentWidget()
        assert area.isVisible()
        # The page is whole, on the screen or in its scroll area.
        page = book.pages.currentWidget()
        assert page.width() >= page.minimumSizeHint().width()
        assert page.height() >= page.minimumSizeHint().height()
        bench = book.bench
        assert bench.mapTo(book, QPoint(bench.width(), 0)).x() <= wide


def test_a_page_visited_asks_for_no_room_once_it_is_left(book: MainWindow, settle: Settle) -> None:
    book.set_text_size(200)
    book.show_page("checks")
    settle()
    before = book.pages.minimumSizeHint()
    book.show_page("records")
    settle()
    assert book.pages.minimumSizeHint().width() > before.width()
    book.show_page("checks")
    settle()
    assert book.pages.minimumSizeHint() == before


@pytest.mark.parametrize("text", [100, 200])
def test_the_titles_of_all_pages_stand_at_one_place(
    qtbot: QtBot, book: MainWindow, settle: Settle, text: int
) -> None:
    book.set_text_size(text)
    places: dict[str, tuple[int, int]] = {}
    book.resize(1920 if text == 100 else 1280, 900)
    for words in page_words():
        book.show_page(words.name)
        settle()
        page = book.book_pages[words.name]
        for label in page.findChildren(QLabel):
            shown = label.isVisible() and label.property("role") == "heading2"
            if shown and label.text() == words.text:
                at = label.mapTo(page, QPoint(0, 0))
                places[words.name] = (at.x(), at.y())
    # The picture, the map and the table of relatedness begin with their tools.
    assert set(places) == {"reciprocals", "judging", "parents", "season", "records", "checks"}
    assert set(places.values()) == {(2 * step(), 3 * step())}, places


@pytest.mark.parametrize("high", [560, 760])
def test_the_founders_give_way_to_the_buttons_on_a_small_screen(
    book: MainWindow, high: int
) -> None:
    book.set_text_size(200)
    book.asides.show_base()
    panel = book.dialog
    assert panel is not None
    panel.resize(1200, high)
    QApplication.processEvents()
    table, button = panel.table, panel.change  # type: ignore[attr-defined]
    assert panel.height() <= max(high, panel.minimumSizeHint().height())
    assert table.geometry().bottom() < button.geometry().top()
    assert button.geometry().bottom() <= panel.height()
