"""Blank sheets for the garden: their order, their numbers, room to write."""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Pollination, Score, Sowing, Trait, columns
from pedigreeview.reports.garden_lists import garden_parts
from pedigreeview.reports.garden_sheets import (
    GardenSheet,
    is_sheet_number,
    pollination_sheet,
    row_sheet,
    scale_of,
    score_sheet,
)
from tests.reports.garden import garden


def test_score_sheet_has_plants_in_order_by_traits():
    sheet = score_sheet(garden())
    assert sheet.rows == ("WC", "21-01-1", "21-01-3")
    assert sheet.columns == ("height", "sweet", "pods")
    own = score_sheet(garden(), ["21-01-3", "TP", "WC"], ["sweet"])
    assert (own.rows, own.columns) == (("21-01-3", "TP", "WC"), ("sweet",))
    assert own.known[0][1] == "TP × BA"


def test_row_sheet_has_the_sowings_of_the_latest_year():
    assert row_sheet(garden()).rows == ("S2",)
    sheet = row_sheet(garden(), ["S1", "S2"])
    assert sheet.known[0] == ("21-01", "TP × BA", "F1", "2022-03-29", "8", "bed 2, row 1")
    assert sheet.known[1][:2] == ("TP", "Tarnwick Pale")


def test_columns_are_those_of_the_records_that_rows_become():
    names = {column.name for column in columns(Pollination)}
    assert set(pollination_sheet().columns) - names == {"seed_parent", "pollen_parent"}
    names = {column.name for column in columns(Sowing)}
    assert set(row_sheet(garden()).columns) - names == {"off-types"}
    assert "value" in {column.name for column in columns(Score)}


def test_the_number_stands_for_what_the_sheet_asks():
    sheet = score_sheet(garden())
    assert sheet.number == score_sheet(garden()).number
    assert is_sheet_number(sheet.number)
    assert GardenSheet.from_record(sheet.as_record()).number == sheet.number
    others = [
        score_sheet(garden(), ["21-01-3", "21-01-1", "WC"]),
        score_sheet(garden(), traits=["sweet", "height", "pods"]),
        score_sheet(garden(), ["WC", "21-01-1"]),
        row_sheet(garden()),
        pollination_sheet(),
        pollination_sheet(25),
    ]
    numbers = [sheet.number, *(other.number for other in others)]
    assert len(set(numbers)) == len(numbers)


@given(st.lists(st.text("ABC123-", min_size=1, max_size=8), min_size=1, max_size=30, unique=True))
def test_a_number_that_was_misread_is_noticed(rows):
    number = GardenSheet("scores", tuple(rows), ("height",)).number
    assert is_sheet_number(number.lower())
    assert is_sheet_number(number.replace("-", ""))
    signs = number.replace("-", "")
    letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
    for at in range(4):
        for other in letters:
            if other != signs[at] and {other, signs[at]} != {"0", "Z"}:
                assert not is_sheet_number(signs[:at] + other + signs[at + 1 :])
    for a, b in itertools.combinations(range(4), 2):
        swapped = list(signs)
        swapped[a], swapped[b] = swapped[b], swapped[a]
        pair = {signs[a], signs[b]}
        if len(pair) == 2 and pair != {"0", "Z"}:
            assert not is_sheet_number("".join(swapped))


@pytest.mark.parametrize("text", ["", "7F3K", "7F3K-QQ", "ILOU-1", "?", "7F3Kä"])
def test_what_is_no_number(text):
    assert not is_sheet_number(text)


def test_what_may_be_written_for_a_trait():
    traits = garden().traits
    assert scale_of(traits["height"]) == "tall / dwarf"
    assert scale_of(traits["sweet"]) == "1 to 9, high is better"
    assert scale_of(traits["pods"]) == "pods"
    assert scale_of(Trait("x", "yes_no")) == "yes / no"
    assert scale_of(Trait("x", "score", low=1, high=5, better="low")) == "1 to 5, low is better"


def test_sheets_on_paper_are_numbered_row_by_row(qapp):
    book = garden()
    for sheet in (pollination_sheet(30), score_sheet(book), row_sheet(book, ["S1", "S2"])):
        (part,) = garden_parts(book, sheet, landscape=True)
        assert part.sheet == sheet.number
        assert len(part.blocks) == len(sheet.rows)
        for at, block in enumerate(part.blocks):
            shown = [mark.text for mark in block.marks if mark.what == "text"]
            assert shown[0] == str(at + 1)
            assert block.height >= 80
    assert [m.text for m in part.blocks[0].marks if m.text][:2] == ["1", "21-01"]


def test_faults():
    book = garden()
    with pytest.raises(Fault, match="no plant 'X'"):
        score_sheet(book, ["X"])
    with pytest.raises(Fault, match="no trait 'X'"):
        score_sheet(book, traits=["X"])
    with pytest.raises(Fault, match="no sowing 'X'"):
        row_sheet(book, ["X"])
    with pytest.raises(Fault, match="0 rows"):
        pollination_sheet(0)
    for make in (score_sheet, row_sheet):
        with pytest.raises(Fault):
            make(Book())
    book.traits.clear()
    with pytest.raises(Fault, match="no traits"):
        score_sheet(book)
