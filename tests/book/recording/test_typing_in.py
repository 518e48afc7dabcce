"""Printed garden sheets are found again by their number and typed in, all of it or nothing."""

from __future__ import annotations

import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.printed_sheets import (
    MOST,
    PrintedSheet,
    keep_sheets,
    printed_sheets,
    sheet_number,
    sheet_numbered,
)
from pedigreeview.book.recording.scores import GridFaults
from pedigreeview.book.recording.typing_in import CONTENTS, sheet_columns, type_sheet_in
from pedigreeview.book.records import Cross, Pollination, Score, Sowing, Trait

TODAY = datetime.date(2024, 6, 10)


def sheet(kind: str, *rows: str, columns: tuple[str, ...] = ()) -> PrintedSheet:
    return PrintedSheet("7F3K-Q", kind, rows, columns or CONTENTS[kind], "2024-06-09")


def cells(held: PrintedSheet, *rows: dict[str, str]) -> dict[tuple[int, int], str]:
    names = sheet_columns(held)
    return {
        (row, names.index(name)): text
        for row, said in enumerate(rows)
        for name, text in said.items()
    }


# Kept by number ---------------------------------------------------------------------------------


def test_a_kept_sheet_is_found_by_its_number_however_it_is_typed(edit: Edit):
    keep_sheets(edit, [sheet("scores", "p1", "p2", columns=("height",))])
    for typed in ("7F3K-Q", "7f3kq", " 7F3K Q ", "7f3k–q"):
        assert sheet_numbered(edit.book, typed).rows == ("p1", "p2")


def test_letters_that_no_number_has_are_read_as_what_they_look_like():
    assert sheet_number("oilu-2") == "011V-2"


def test_an_unknown_number_names_the_nearest_one(edit: Edit):
    keep_sheets(edit, [sheet("pollinations", "")])
    with pytest.raises(Fault, match="No garden sheet 7F3M-Q") as found:
        sheet_numbered(edit.book, "7F3M-Q")
    assert "7F3K-Q" in found.value.todo


def test_the_sheet_printed_last_stands_first_and_the_oldest_are_forgotten(edit: Edit):
    for at in range(MOST + 5):
        keep_sheets(edit, [PrintedSheet(f"N{at:03}-A", "pollinations", ("",), ("date",))])
    held = [one.number for one in printed_sheets(edit.book)]
    assert held == [f"N{at:03}-A" for at in range(MOST + 4, 4, -1)]


def test_other_settings_of_the_book_stay_and_a_spoilt_sheet_is_passed_over(edit: Edit):
    edit.set_settings(extra={"garden sheet X": "no json", "colour": "red"})
    keep_sheets(edit, [sheet("pollinations", "")])
    assert edit.book.settings.extra["colour"] == "red"
    assert [one.number for one in printed_sheets(edit.book)] == ["7F3K-Q"]
    assert edit.change().pedigree is False


@given(
    st.lists(st.text("ABCx1-;\"'\n", max_size=6), min_size=1, max_size=20),
    st.lists(st.text("abc {}[],\\", min_size=1, max_size=8), min_size=1, max_size=5),
)
def test_rows_and_columns_come_back_as_they_were(rows: list[str], columns: list[str]):
    edit = Edit(Book(), "")
    held = PrintedSheet("AAAA-B", "scores", tuple(rows), tuple(columns), "2024-01-02")
    keep_sheets(edit, [held])
    assert printed_sheets(edit.book) == (held,)


# Pollinations -----------------------------------------------------------------------------------


def test_free_rows_record_crosses_selfings_and_open_seed(edit: Edit):
    held = sheet("pollinations", *[""] * 6)
    typed = cells(
        held,
        {"seed_parent": "TP", "pollen_parent": "BA", "date": "8.6.", "flowers": "4", "bud": "c"},
        {},
        {"seed_parent": "p1", "pollen_parent": "self", "flowers": "3", "by": "RW"},
        {"seed_parent": "BA", "pollen_parent": "open"},
        {"seed_parent": "TP", "pollen_parent": "BA", "flowers": "2", "tag": "7"},
    )
    keep_sheets(edit, [held])
    assert type_sheet_in(edit, held, typed, today=TODAY, date="2024-06-09", by="AN") == 4
    rows = list(edit.book.pollinations.values())
    parents = [
        (edit.book.crosses[row.cross].seed_parent, edit.book.crosses[row.cross].pollen_parent)
        for row in rows
    ]
    assert parents == [("TP", "BA"), ("p1", "p1"), ("BA", ""), ("TP", "BA")]
    assert rows[0].cross == rows[3].cross
    assert [row.date for row in rows] == ["2024-06-08", "2024-06-09", "2024-06-09", "2024-06-09"]
    assert [row.by for row in rows] == ["AN", "RW", "AN", "AN"]
    assert rows[0].bud == "closed"
    assert len(edit.book.crosses) == 3
    assert printed_sheets(edit.book)[0].typed == "2024-06-10"


def test_a_row_of_a_crossing_list_is_its_cross(edit: Edit):
    edit.add(Cross("24-01", "TP", "BA", state="planned"))
    held = sheet("crossing", "24-01", "")
    typed = cells(held, {"flowers": "5"}, {"cross": "24-01", "flowers": "1"})
    assert type_sheet_in(edit, held, typed, today=TODAY, date="2024-06-09") == 2
    assert [row.flowers for row in edit.book.pollinations.values()] == [5, 1]
    assert edit.book.crosses["24-01"].state == "made"
    assert edit.book.crosses["24-01"].made_on == "2024-06-09"


@pytest.mark.parametrize(
    ("said", "column", "what"),
    [
        ({"flowers": "some"}, "seed_parent", "no seed parent"),
        ({"seed_parent": "TP", "pollen_parent": "BA", "flowers": "x"}, "flowers", "whole number"),
        ({"seed_parent": "TP"}, "pollen_parent", "no pollen parent"),
        ({"seed_parent": "ZZ", "pollen_parent": "BA"}, "seed_parent", "'ZZ'"),
        ({"cross": "24-01", "seed_parent": "BA"}, "seed_parent", "24-01 is TP × BA"),
        ({"cross": "24-01", "pollen_parent": "self"}, "pollen_parent", "24-01 is TP × BA"),
        ({"cross": "24-01", "bud": "shut"}, "bud", "'shut'"),
        ({"cross": "24-01", "date": "32.13."}, "date", "32.13."),
        ({"cross": "nope"}, "cross", "'nope'"),
    ],
)
def test_what_cannot_be_stands_at_its_cell(edit: Edit, said, column: str, what: str):
    edit.add(Cross("24-01", "TP", "BA", state="planned"))
    held = sheet("pollinations", "", "")
    good = {"cross": "24-01", "flowers": "1"}
    if said.get("flowers") == "some":
        said = {"tag": "7"}
    with pytest.raises(GridFaults) as found:
        type_sheet_in(edit, held, cells(held, good, said), today=TODAY, date="2024-06-09")
    ((cell, fault),) = found.value.faults.items()
    assert cell == (1, held.columns.index(column))
    assert what in fault.what


# Fruits, rows, scores ---------------------------------------------------------------------------


def test_fruits_fill_what_is_said_and_leave_the_rest(edit: Edit):
    edit.add(Cross("24-01", "TP", "BA", state="made"))
    edit.add(Pollination("P1", "24-01", "2024-06-01", 4, set=2))
    edit.add(Pollination("P2", "24-01", "2024-06-02", 4))
    held = sheet("fruits", "P1", "P2")
    type_sheet_in(edit, held, cells(held, {"dropped": "1"}, {"set": "3"}), today=TODAY)
    one, two = edit.book.pollinations.values()
    assert (one.set, one.dropped, two.set, two.dropped) == (2, 1, 3, None)
    with pytest.raises(GridFaults) as found:
        type_sheet_in(edit, held, cells(held, {"set": "9"}), today=TODAY)
    assert list(found.value.faults) == [(0, 0)]


def test_rows_of_seedlings_take_place_off_types_and_note(edit: Edit):
    edit.add(Sowing("S1", "", "TP", "2024-03-29", 8))
    held = sheet("rows", "S1", "S9")
    said = {"up": "6", "kept": "5", "off-types": "1", "place": "bed 2 / row 3", "note": "pale"}
    type_sheet_in(edit, held, cells(held, said), today=TODAY)
    row = edit.book.sowings["S1"]
    assert (row.up, row.kept, row.place) == (6, 5, "bed 2 / row 3")
    assert row.note == "pale; off-types: 1"
    with pytest.raises(GridFaults, match="not in the book any more") as found:
        type_sheet_in(edit, held, cells(held, {}, {"up": "1"}), today=TODAY)
    assert list(found.value.faults) == [(1, 0)]


def test_scores_come_in_the_order_of_the_paper_with_notes(edit: Edit):
    edit.add(Trait("height", "measure", "cm"))
    edit.add(Trait("sweet", "score", low=1, high=9))
    held = sheet("scores", "p2", "p1", columns=("height", "sweet"))
    assert sheet_columns(held) == ("height", "sweet", "note")
    typed = cells(held, {"height": "120", "note": "leans"}, {"sweet": "7"})
    type_sheet_in(edit, held, typed, today=TODAY, date="2024-06-09", by="RW")
    assert edit.book.scores == [
        Score("p2", "height", "2024-06-09", "plant", "120", "RW"),
        Score("p1", "sweet", "2024-06-09", "plant", "7", "RW"),
    ]
    assert [(note.about, note.text) for note in edit.book.notes] == [("plant p2", "leans")]


def test_scores_that_cannot_be_are_all_named_at_their_cells(edit: Edit):
    edit.add(Trait("sweet", "score", low=1, high=9))
    held = sheet("scores", "gone", "p1", "p2", columns=("lost", "sweet"))
    typed = {(0, 1): "5", (1, 0): "3", (1, 1): "12", (2, 1): "8", (2, 2): "tall"}
    with pytest.raises(GridFaults) as found:
        type_sheet_in(edit, held, typed, today=TODAY, date="2024-06-09")
    assert list(found.value.faults) == [(0, 1), (1, 0), (1, 1)]


def test_a_score_from_before_the_sowing_stands_at_its_plant(edit: Edit):
    edit.add(Trait("sweet", "score", low=1, high=9))
    held = sheet("scores", "TP", "p1", columns=("sweet",))
    with pytest.raises(GridFaults) as found:
        type_sheet_in(edit, held, {(1, 0): "5"}, today=TODAY, date="2023-06-09")
    assert list(found.value.faults) == [(1, 0)]


def test_an_empty_sheet_says_so(edit: Edit):
    with pytest.raises(Fault, match="Nothing is typed in"):
        type_sheet_in(edit, sheet("pollinations", ""), {(0, 0): "  "}, today=TODAY)
