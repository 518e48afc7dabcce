"""Traits, scores in a grid, garden sheets typed back, the map of beds."""

from __future__ import annotations

import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.crosses import record_cross
from pedigreeview.book.recording.moving import bed_map, move_plants, places_before
from pedigreeview.book.recording.place_names import GardenPlace, numbered_places, read_place
from pedigreeview.book.recording.plants import set_status
from pedigreeview.book.recording.pollinations import record_pollination
from pedigreeview.book.recording.scores import (
    GridFaults,
    pasted,
    record_score,
    record_scores,
    score_grid,
)
from pedigreeview.book.recording.sheets import blank_sheet, in_order, type_in
from pedigreeview.book.recording.sowings import record_sowing
from pedigreeview.book.recording.traits import change_trait, fitting_value, record_trait
from pedigreeview.book.records import Trait


@pytest.fixture
def traits(edit):
    record_trait(edit, "height", "measure", unit="cm", low=0, high=300)
    record_trait(edit, "colour", "category", values="purple;white;pink")
    record_trait(edit, "sweet", "score", low=1, high=9, better="high")
    record_trait(edit, "stringless", "yes_no")


@pytest.mark.parametrize(
    ("trait", "typed", "kept"),
    [
        (Trait("h", "measure", "cm"), "52,5 cm", "52.5"),
        (Trait("h", "measure"), "−3", "-3"),
        (Trait("s", "score", "", 1, 9), "9", "9"),
        (Trait("c", "category", values="purple;white"), "PURPLE", "purple"),
        (Trait("c", "category", values="purple;white"), "w", "white"),
        (Trait("y", "yes_no"), "x", "yes"),
        (Trait("y", "yes_no"), "0", "no"),
        (Trait("y", "yes_no"), "  ", ""),
    ],
)
def test_what_is_kept_of_a_typed_value(trait, typed, kept):
    assert fitting_value(trait, typed) == kept


@pytest.mark.parametrize(
    ("trait", "typed"),
    [
        (Trait("h", "measure", "cm"), "tall"),
        (Trait("h", "measure", "cm"), "1e5"),
        (Trait("s", "score", "", 1, 9), "10"),
        (Trait("c", "category", values="purple;pink"), "p"),
        (Trait("y", "yes_no"), "maybe"),
    ],
)
def test_values_that_do_not_fit(trait, typed):
    with pytest.raises(Fault):
        fitting_value(trait, typed)


@pytest.mark.parametrize(
    ("values", "says"),
    [
        ({"name": "", "type_": "score"}, "no name"),
        ({"name": "Colour ", "type_": "yes_no"}, "already"),
        ({"name": "a", "type_": "score", "low": 1}, "no lowest or no highest"),
        ({"name": "a", "type_": "score", "low": 9, "high": 1}, "not above"),
        ({"name": "a", "type_": "category", "values": "red; Red"}, "fewer than two"),
        ({"name": "a", "type_": "mood"}, "not one of the words"),
    ],
)
def test_traits_that_cannot_be(edit, traits, values, says):
    with pytest.raises(Fault, match=says):
        record_trait(edit, values.pop("name"), **values)


def test_a_trait_keeps_room_for_its_scores(edit, traits):
    record_score(edit, "p1", "sweet", "9")
    with pytest.raises(Fault, match="would no longer fit"):
        change_trait(edit, "sweet", high=5)
    assert change_trait(edit, "sweet", high=10).high == 10


def test_a_grid_takes_a_block_from_a_spreadsheet(edit, traits):
    grid = score_grid(edit.book, ["p1", "p2"], ["height", "colour", "sweet"], date="2024-07-01")
    cells = pasted(grid, 'white\t7\r\n"purple"\t\r\n', 0, 1)
    assert cells == {(0, 1): "white", (0, 2): "7", (1, 1): "purple", (1, 2): ""}
    kept = record_scores(edit, grid, cells, by="RW")
    assert [(s.plant, s.trait, s.value, s.by) for s in kept] == [
        ("p1", "colour", "white", "RW"),
        ("p1", "sweet", "7", "RW"),
        ("p2", "colour", "purple", "RW"),
    ]
    again = score_grid(edit.book, grid.plants, grid.traits, date="2024-07-01")
    assert again.values == {(0, 1): "white", (0, 2): "7", (1, 1): "purple"}
    with pytest.raises(Fault, match="3 rows, and from here the grid has 1"):
        pasted(grid, "a\nb\nc", 1, 0)
    with pytest.raises(Fault, match="2 columns, and from here the grid has 1"):
        pasted(grid, "a\tb", 0, 2)


def test_every_bad_cell_is_named_and_nothing_is_taken(edit, traits):
    grid = score_grid(edit.book, ["p1", "p2"], ["height", "sweet"])
    with pytest.raises(GridFaults) as caught:
        record_scores(edit, grid, {(0, 0): "tall", (0, 1): "5", (1, 1): "12"})
    assert set(caught.value.faults) == {(0, 0), (1, 1)}
    assert caught.value.faults[1, 1].where.row == 2
    assert caught.value.faults[1, 1].where.column == "sweet"
    assert caught.value.faults[1, 1].where.plant == "p2"
    assert edit.book.scores == []


def test_a_blank_takes_a_score_away_and_another_day_is_another_score(edit, traits):
    record_score(edit, "p1", "sweet", "7", date="2024-07-01")
    record_score(edit, "p1", "sweet", "8", date="2024-07-09")
    record_score(edit, "p1", "sweet", "6", date="2024-07-09", of="seed")
    assert len(edit.book.scores) == 3
    assert record_score(edit, "p1", "sweet", "", date="2024-07-09") is None
    assert [(s.value, s.of) for s in edit.book.scores] == [("7", "plant"), ("6", "seed")]
    with pytest.raises(Fault, match="before it was sown"):
        record_score(edit, "p1", "sweet", "7", date="2023-07-01")


# Sheets -----------------------------------------------------------------------------------------


def test_a_sheet_is_typed_in_its_own_order(edit, traits):
    move_plants(edit, {"p1": "Bed 1 / row 10 / 1", "p2": "Bed 1 / row 2 / 1"}, date="")
    sheet = blank_sheet(edit.book, "scores", ["p1", "p2"], traits=["height"], order="place")
    assert [row.key for row in sheet.rows] == ["p2", "p1"]
    assert type_in(edit, sheet, {(0, 0): "40", (1, 0): "90"}, today=None, date="2024-07-01") == 2
    assert {s.plant: s.value for s in edit.book.scores} == {"p2": "40", "p1": "90"}
    assert in_order(edit.book, ["p1", "p2", "TP"], "place") == ["p2", "p1", "TP"]


def test_a_pollination_sheet(edit, today):
    for pair in (("TP", "BA"), ("BA", "TP")):
        record_cross(edit, *pair, today=today)
    sheet = blank_sheet(edit.book, "pollinations", ["24-02", "24-01"], order="code")
    assert [row.key for row in sheet.rows] == ["24-01", "24-02"]
    column = {name: place for place, name in enumerate(sheet.columns)}
    cells = {
        (0, column["date"]): "9.6.",
        (0, column["flowers"]): "4",
        (1, column["flowers"]): "2",
        (1, column["bud"]): "Closed",
    }
    assert type_in(edit, sheet, cells, today=today, date="2024-06-10", by="RW") == 2
    found = [(p.cross, p.date, p.flowers, p.by) for p in edit.book.pollinations.values()]
    assert found == [("24-01", "2024-06-09", 4, "RW"), ("24-02", "2024-06-10", 2, "RW")]
    fruits = blank_sheet(edit.book, "fruits", list(edit.book.pollinations))
    with pytest.raises(GridFaults) as caught:
        type_in(edit, fruits, {(0, 0): "three", (1, 0): "1", (1, 1): "5"}, today=today)
    assert set(caught.value.faults) == {(0, 0), (1, 1)}


def test_a_seedling_sheet(edit, today):
    record_sowing(edit, today=today, sown_from="TP", date="2024-04-01", seeds=9, place="Bed 1")
    sheet = blank_sheet(edit.book, "seedlings", ["B24-1"])
    assert sheet.rows[0].words == "TP, 2024-04-01, 9 sown"
    type_in(edit, sheet, {(0, 0): "8", (0, 1): "6"}, today=today)
    assert (edit.book.sowings["B24-1"].up, edit.book.sowings["B24-1"].kept) == (8, 6)


@pytest.mark.parametrize(
    ("kind", "keys", "more"),
    [("fruits", ["P1"], {}), ("scores", ["p1"], {}), ("scores", ["p1"], {"order": "size"})],
)
def test_sheets_that_cannot_be(edit, kind, keys, more):
    with pytest.raises(Fault):
        blank_sheet(edit.book, kind, keys, **more)


def test_a_record_is_typed_for_the_cross_of_the_row(edit, today):
    (cross,) = record_cross(edit, "TP", "BA", today=today)
    record_pollination(edit, cross.cross, today=today, flowers=3)
    sheet = blank_sheet(edit.book, "fruits", ["P24-1"])
    type_in(edit, sheet, {(0, 0): "2"}, today=today)
    type_in(edit, sheet, {(0, 1): "1"}, today=today)
    held = edit.book.pollinations["P24-1"]
    assert (held.set, held.dropped) == (2, 1)


# Places -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("", None),
        ("bed 2", GardenPlace("bed 2")),
        ("7", GardenPlace("7")),
        ("Bed 2 / row 3 / 7", GardenPlace("Bed 2", "row 3", 7)),
        ("Bed 2/row 3/ plant 7", GardenPlace("Bed 2", "row 3", 7)),
        ("House / shelf / left / 2", GardenPlace("House", "shelf / left", 2)),
        ("Bed 2 / 7", GardenPlace("Bed 2", "", 7)),
    ],
)
def test_places_are_read(text, place):
    assert read_place(text) == place
    if place is not None:
        assert read_place(place.text()) == place


def test_plants_of_a_row_are_numbered_from_the_stake():
    assert numbered_places("Bed 1 / row 2", 1, 2) == ["Bed 1 / row 2 / 1", "Bed 1 / row 2 / 2"]
    assert numbered_places("Bed 1 / row 2 / 5", 1, 2)[1] == "Bed 1 / row 2 / 6"
    assert numbered_places("bed 2, north end", 1, 2) == ["bed 2, north end"] * 2
    assert numbered_places("", 1, 2) == ["", ""]


def test_the_map_and_a_move(edit):
    move_plants(
        edit, {"p1": "Bed 10 / row 1 / 3", "p2": "bed 2 / row 1", "TP": "Bed 2 / row 1 / 1"},
        date="2024-05-01",
    )  # fmt: skip
    found = bed_map(edit.book)
    assert [bed.bed for bed in found.beds] == ["Bed 2", "Bed 10"]
    row = found.beds[0].rows[0]
    assert (row.standing, row.elsewhere) == (((1, ("TP",)),), ("p2",))
    assert found.without_place == ("BA",)
    with pytest.raises(Fault, match="stands TP already"):
        move_plants(edit, {"p2": "Bed 2 / row 1 / 1"}, date="2024-05-02")


def test_two_plants_change_places_in_one_step(edit):
    move_plants(edit, {"p1": "B / r / 1", "p2": "B / r / 2"}, date="2024-05-01")
    move_plants(edit, {"p1": "B / r / 2", "p2": "B / r / 1"}, date="2024-05-03", why="Shade.")
    assert edit.book.plants["p1"].place == "B / r / 2"
    assert places_before(edit.book, "p1") == (
        ("2024-05-01", "Moved from no place to B / r / 1."),
        ("2024-05-03", "Moved from B / r / 1 to B / r / 2. Shade."),
    )


def test_plants_that_are_gone_leave_their_place(edit):
    move_plants(edit, {"p1": "B / r / 1"}, date="")
    set_status(edit, ["p1"], "culled")
    move_plants(edit, {"p2": "B / r / 1"}, date="")
    assert bed_map(edit.book).beds[0].rows[0].standing == ((1, ("p2",)),)


def test_a_letter_before_digits_is_no_number():
    trait = Trait("weight", "measure", unit="g")
    for text in ("J3", "A1,5", "[4", "3-"):
        with pytest.raises(Fault):
            fitting_value(trait, text)
    assert fitting_value(trait, "-3") == "-3"
