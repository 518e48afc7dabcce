"""The quick line: what is read, what is refused, and that reading changes nothing."""

from __future__ import annotations

import contextlib
import datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.quick import EXAMPLES, read_line
from pedigreeview.book.records import Cross, Harvest, Packet, Plant, Trait

TODAY = datetime.date(2026, 6, 1)


def _book() -> Book:
    book = Book(settings=BookSettings(crop="pea"))
    book.add(Plant("TP", "Tarnwick Pale", kind="variety"))
    book.add(Plant("BA", "Brockle Amber", kind="variety"))
    book.add(Cross("24-03", "TP", "BA", state="made", made_on="2024-06-02"))
    for number in (7, 8, 19):
        book.add(Plant(f"23-{number:02}", kind="plant", raised="cross", cross="24-03"))
    book.add(Harvest("H1", "24-03", "2024-08-01", 7, 24))
    book.add(Packet("K1", "H1", "F1", seeds=24, left=24))
    book.add(Trait("sweet", "score", low=1, high=9))
    return book


def _done(line: str) -> Book:
    book = _book()
    edit = Edit(book, "")
    read_line(line, book, TODAY).record(edit)
    return edit.book


@pytest.mark.parametrize("line", EXAMPLES)
def test_every_example_is_read_and_recorded(line: str) -> None:
    book = _book()
    entry = read_line(line, book, TODAY)
    assert entry.words
    assert entry.said.endswith(".") or line.startswith("note")
    entry.record(Edit(book, entry.words))


def test_two_plants_with_flowers_make_a_cross_and_its_pollination() -> None:
    book = _done("BA x TP both 12 flowers petals off tag 17 by AB 3.5.")
    crosses = [cross for cross in book.crosses.values() if cross.cross != "24-03"]
    assert [(one.seed_parent, one.pollen_parent, one.state) for one in crosses] == [
        ("BA", "TP", "made")
    ]
    rows = list(book.pollinations.values())
    assert [(row.flowers, row.cover, row.tag, row.by, row.date) for row in rows] == [
        (12, "petals off", "17", "AB", "2026-05-03"),
        (12, "petals off", "", "AB", "2026-05-03"),
    ]


def test_a_code_that_looks_like_a_date_is_a_code() -> None:
    book = _done("keep 23-07 23-19")
    assert [book.plants[code].status for code in ("23-07", "23-08", "23-19")] == [
        "kept",
        "",
        "kept",
    ]


def test_the_word_before_its_number_and_behind_it() -> None:
    book = _book()
    edit = Edit(book, "")
    read_line("pollinate 24-03 9 flowers", book, TODAY).record(edit)
    read_line("fruits 24-03 3 lost 1", edit.book, TODAY).record(edit)
    (row,) = edit.book.pollinations.values()
    assert (row.flowers, row.set, row.dropped) == (9, 3, 1)


def test_plants_raised_from_a_plant_come_from_the_cross_that_it_bore() -> None:
    edit = Edit(_book(), "")
    read_line("self 23-07", edit.book, TODAY).record(edit)
    read_line("raise 23-07 3", edit.book, TODAY).record(edit)
    (selfing,) = [one for one in edit.book.crosses.values() if one.pollen_parent == "23-07"]
    assert [p.cross for p in edit.book.plants.values()].count(selfing.cross) == 3


def test_sowing_by_the_cross_takes_from_its_packet() -> None:
    book = _done("sow 24-03 10 seeds 3.4.")
    assert book.packets["K1"].left == 14
    (row,) = book.sowings.values()
    assert (row.packet, row.date, row.seeds) == ("K1", "2026-04-03", 10)


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("", "Nothing is typed yet."),
        ("fly 3", "begins with 'fly'"),
        ("keep", "what to keep"),
        ("cross V 3", "two plants"),
        ("TX x BA", "no plant 'TX'"),
        ("raise 24-03", "how many plants"),
        ("score 23-07 swet 8", "no trait 'swet'"),
        ("TP x BA nonsense", "'nonsense' was not understood"),
    ],
)
def test_what_is_not_understood_says_what(line: str, told: str) -> None:
    with pytest.raises(Fault) as raised:
        read_line(line, _book(), TODAY)
    assert told in raised.value.what
    assert raised.value.todo


_WORDS = st.sampled_from(
    ["TP", "BA", "x", "×", "both", "24-03", "23-07", "keep", "sow", "score", "sweet", "8", "12",
     "flowers", "seeds", "lost", "bag", "tag", "by", "3.5.", "today", "note", "self", "petals",
     "off", "", "¿", "-2", "99999999999"]
)  # fmt: skip


@settings(max_examples=150, deadline=None)
@given(st.lists(_WORDS, max_size=8))
def test_any_line_is_read_or_refused_and_reading_changes_nothing(words: list[str]) -> None:
    book, same = _book(), _book()
    with contextlib.suppress(Fault):
        entry = read_line(" ".join(words), book, TODAY)
        entry.record(Edit(book, entry.words))
    assert book == same
