"""Forms propose what is open to do: an unsown packet, a sowing of which no plants are raised."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.crosses import record_cross
from pedigreeview.book.recording.harvests import record_harvest
from pedigreeview.book.recording.plants import raise_plants, raise_row
from pedigreeview.book.recording.pollinations import record_pollination
from pedigreeview.book.recording.sowings import record_seedlings, record_sowing
from pedigreeview.book.records import Plant
from pedigreeview.window.forms.open_work import open_sowings, still_to_raise, unsown_packets
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
DAY = datetime.date(2026, 6, 1)


@pytest.fixture
def made(tmp_path: Path) -> Path:
    """Two varieties, their cross, harvested into a packet; nothing of it sown yet."""
    path = tmp_path / "mine.pedbook"
    BookFile.create(path, Book()).close()
    with BookFile.open(path) as file, file.edit("all") as edit:
        for code in ("A", "B"):
            edit.add(Plant(plant=code, kind="variety", fixation=1.0))
        (cross,) = record_cross(edit, "A", "B", today=DAY)
        record_pollination(edit, cross.cross, today=DAY, date="2025-06-20", flowers=6)
        record_harvest(
            edit, cross.cross, today=DAY, date="2025-08-05", fruits=3, seeds=20, into="new"
        )
    return path


def after(path: Path, *acts: Callable[[Edit], Any]) -> Book:
    with BookFile.open(path) as file:
        with file.edit("more") as edit:
            for act in acts:
                act(edit)
        return file.book


def sow(edit: Edit) -> None:
    (packet,) = edit.book.packets
    record_sowing(edit, today=DAY, packet=packet, date="2026-04-01", seeds=10)


def came_up(edit: Edit) -> None:
    record_seedlings(edit, next(iter(edit.book.sowings)), up=8)


def raising(count: int, sown: str = "") -> Callable[[Edit], object]:
    def act(edit: Edit) -> object:
        (cross,) = edit.book.crosses
        sowing = "" if sown else next(iter(edit.book.sowings))
        return raise_plants(edit, cross, count, today=DAY, sowing=sowing, sown=sown)

    return act


def test_a_packet_is_open_until_it_is_sown_from(made: Path) -> None:
    with BookFile.open(made) as file:
        assert unsown_packets(file.book) == list(file.book.packets)
    assert unsown_packets(after(made, sow)) == []


def test_a_sowing_is_open_until_its_plants_are_raised(made: Path) -> None:
    book = after(made, sow)
    (sowing,) = book.sowings
    assert open_sowings(book) == [sowing]
    assert still_to_raise(book, sowing) is None
    assert open_sowings(after(made, raising(3))) == []


def test_as_many_stay_open_as_came_up_and_are_not_raised(made: Path) -> None:
    book = after(made, sow, came_up)
    (sowing,) = book.sowings
    assert still_to_raise(book, sowing) == 8
    # The seedlings raised are those kept: the rest was thinned out.
    assert open_sowings(after(made, raising(3))) == []


def test_plants_with_another_date_are_of_the_only_sowing_before_it(made: Path) -> None:
    assert open_sowings(after(made, sow, raising(3, "2026-04-02"))) == []


def test_plants_from_before_the_sowing_are_not_of_it(made: Path) -> None:
    book = after(made, raising(3, "2026-02-01"), sow)
    assert open_sowings(book) == list(book.sowings)


def test_a_row_stands_for_all_that_came_up(made: Path) -> None:
    def row(edit: Edit) -> None:
        (cross,) = edit.book.crosses
        raise_row(edit, cross, today=DAY, sown="2026-04-01")

    assert open_sowings(after(made, sow, came_up, row)) == []


def proposed(window: MainWindow) -> dict[str, str]:
    form = window.bench.form
    assert form is not None
    return form._typed()


def test_the_keys_propose_one_step_after_the_other(
    qtbot: QtBot, window: MainWindow, settle: Settle, made: Path
) -> None:
    def opened(*acts: Callable[[Edit], Any]) -> Book:
        window.close_book()
        settle()
        book = after(made, *acts)
        window.open_path(made)
        settle()
        window.show_plant("A")
        settle()
        return book

    book = opened()
    (packet,) = book.packets
    (cross,) = book.crosses
    qtbot.keyClick(window, Qt.Key.Key_F8)
    assert proposed(window)["packet"] == packet
    qtbot.keyClick(window, Qt.Key.Key_F9)
    assert (proposed(window)["of"], proposed(window)["sowing"]) == ("", "")
    book = opened(sow, came_up)
    (sowing,) = book.sowings
    qtbot.keyClick(window, Qt.Key.Key_F8)
    assert proposed(window)["packet"] == ""
    qtbot.keyClick(window, Qt.Key.Key_F9)
    held = proposed(window)
    assert (held["of"], held["sowing"], held["count"]) == (cross, sowing, "8")
    opened(raising(8))
    qtbot.keyClick(window, Qt.Key.Key_F9)
    held = proposed(window)
    assert (held["of"], held["sowing"]) == ("", "")
    form = window.bench.form
    assert form is not None
    form._fields["of"].set_text(cross)
    held = proposed(window)
    assert (held["sowing"], held["count"]) == ("", "12")
