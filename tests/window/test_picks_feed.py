"""Plants picked by a band or by Shift and a click, in the picture or on the map, feed all pages."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import QAbstractScrollArea
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.places import demo
from pedigreeview.window.book_page import LazyPage
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.papers.papers_dialog import PapersDialog
from pedigreeview.window.parents_page import ParentsPage
from pedigreeview.window.records_page import SCORES, RecordsPage
from pedigreeview.window.relatedness_page import RelatednessPage
from pedigreeview.window.season_page import SeasonPage

Settle = Callable[[], None]
LEFT, SHIFT = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def book(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    window.resize(1600, 900)
    window.open_path(path)
    settle()
    return window


def drag(qtbot: QtBot, view: QAbstractScrollArea, band: QRect) -> None:
    """Shift, press, move in two steps, release: as a hand does it."""
    port = view.viewport()
    qtbot.mousePress(port, LEFT, SHIFT, band.topLeft())
    qtbot.mouseMove(port, band.center())
    qtbot.mouseMove(port, band.bottomRight())
    qtbot.mouseRelease(port, LEFT, SHIFT, band.bottomRight())


def around(spots: list[QPoint], inside: QRect) -> QRect:
    """A band a little larger than some places, within the view."""
    box = QRect(spots[0], spots[0])
    for spot in spots:
        box = box.united(QRect(spot, spot))
    return box.adjusted(-8, -8, 8, 8).intersected(inside.adjusted(2, 2, -2, -2))


def page(window: MainWindow, name: str) -> object:
    held = window.book_pages[name]
    assert isinstance(held, LazyPage)
    return held.page()


def fed(window: MainWindow, settle: Settle, picked: tuple[str, ...]) -> None:
    """Every page works with the picked plants when it is turned to."""
    assert window.picked == picked
    for name in ("relatedness", "parents", "season", "records"):
        window.show_page(name)
        settle()
    relatedness, parents = page(window, "relatedness"), page(window, "parents")
    assert isinstance(relatedness, RelatednessPage)
    assert relatedness.plants.name == "picked"
    assert relatedness.plants.plants() == list(picked)
    assert isinstance(parents, ParentsPage)
    assert parents.candidates.seeds.name == "picked"
    assert parents.candidates.seeds.plants() == list(picked)
    records = page(window, "records")
    assert isinstance(records, RecordsPage)
    window._show_part("records", SCORES)
    settle()
    assert records.scores.which.currentData() == "picked"
    assert records.scores.plants() == list(picked)
    season = page(window, "season")
    assert isinstance(season, SeasonPage)
    window.show_page("season")
    season.print_button.click()
    assert isinstance(window.dialog, PapersDialog)
    offered = window.dialog.form._offers["the picked plants"]
    assert offered.plants == picked
    window.dialog.reject()


def test_a_band_in_the_picture_then_shift_and_a_click_feed_the_other_pages(
    qtbot: QtBot, book: MainWindow, settle: Settle
) -> None:
    canvas = book.pedigree.canvas
    with qtbot.waitSignal(book.pedigree.came_to_rest, timeout=3000):
        book.pedigree.fit()
    room = canvas.viewport().rect()
    spots = {code: canvas.where(code) for code in ("TP", "BA")}
    assert all(room.contains(spot) for spot in spots.values())
    drag(qtbot, canvas, around(list(spots.values()), room))
    picked = book.picked
    assert {"TP", "BA"} <= set(picked)
    fed(book, settle, picked)
    # One more by Shift and a click: pages that were looked at already follow as well.
    book.show_page("pedigree")
    settle()
    more = next(code for code in canvas.visible_codes() if code not in picked)
    block = canvas.placed.view.block_of(more)  # type: ignore[union-attr]
    qtbot.mouseClick(canvas.viewport(), LEFT, SHIFT, canvas.where(more))
    assert more in book.picked
    assert book.picked[: len(picked)] == picked
    assert block
    fed(book, settle, book.picked)


def test_a_band_on_the_map_feeds_the_other_pages(
    qtbot: QtBot, book: MainWindow, settle: Settle
) -> None:
    book.show_page("map")
    settle()
    shown = book.map.map
    room = shown.viewport().rect()
    spots = [shown.where(code) for code in ("TP", "BA")]
    assert all(room.contains(spot) for spot in spots)
    drag(qtbot, shown, around(spots, room))
    assert {"TP", "BA"} <= set(book.picked)
    fed(book, settle, book.picked)
