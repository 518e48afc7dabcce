"""Crossing list, crossing plan and map of the beds, on the small garden."""

from __future__ import annotations

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Plant
from pedigreeview.reports.bed_plan import Spot, bed_plan_parts, bed_rows, spot_of
from pedigreeview.reports.crossing_list import crossing_list_parts, crossing_rows
from pedigreeview.reports.crossing_plan import crossing_plan, crossing_plan_parts
from pedigreeview.reports.paper_lists import lay_out_lists
from tests.reports.garden import garden


def shown(part) -> list[str]:
    return [mark.text for block in part.blocks for mark in block.marks if mark.what == "text"]


def test_the_list_holds_what_is_planned_and_what_is_worked_that_day():
    rows = crossing_rows(garden(), "2021-06-12", wanted={"23-01": 6})
    assert [row.cross for row in rows] == ["21-02", "23-01"]
    planned = rows[1]
    assert (planned.wanted, planned.done, planned.set) == (6, 0, 0)
    assert planned.seed_place == "bed 1, row 3, plant 2"
    assert planned.cautions == ("WC is poor as a seed parent with TP.", "WC: Pods seldom.")
    # TP flowered from 9 to 27 June that year; of WC nothing is recorded.
    assert (planned.seed_flower, planned.pollen_flower) == ("", "in flower")
    assert [row.cross for row in crossing_rows(garden(), "2021-06-13")] == ["23-01"]
    # All pollinations of a cross count: 5 and 4 flowers, 3 and 0 set.
    (row,) = crossing_rows(garden(), "2021-06-13", ["21-01"])
    assert (row.done, row.set, row.wanted) == (9, 3, None)


def test_the_list_goes_by_the_seed_parents_place():
    rows = crossing_rows(garden(), "2021-06-11", ["23-01", "21-02", "21-01"])
    assert [row.mating.seed for row in rows] == ["TP", "BA", "WC"]


@pytest.mark.parametrize("landscape", [False, True])
@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_the_list_on_paper_is_one_table_with_rows_to_spare(qapp, paper, landscape):
    codes = ["21-01", "22-01", "22-02", "22-03"]
    parts = crossing_list_parts(garden(), "2021-06-11", codes, paper=paper, landscape=landscape)
    (part,) = parts
    assert "2021-06-11" in part.below
    assert len(part.blocks) == len(codes) + 4
    words = shown(part)
    assert words.index("TP") < words.index("BA")
    assert {"selfed", "open-pollinated"} <= set(words)
    signs = {mark.what for block in part.blocks for mark in block.marks}
    assert {"selfing", "open"} <= signs
    heads = [mark.what for mark in part.heading.marks]
    assert heads.index("female") < heads.index("cross") < heads.index("male")


def test_the_plan_has_seed_parents_in_rows_and_pollen_parents_in_columns():
    plan = crossing_plan(garden(), "2021", wanted={"21-01": 12})
    assert plan.seed_parents == ("TP", "BA", "WC")
    assert plan.pollen_parents == ("TP", "BA")
    cell = plan.cells["TP", "BA"]
    assert (cell.crosses, cell.wanted, cell.done, cell.set) == (["21-01"], 12, 9, 3)
    assert plan.cells["BA", "TP"].crosses == ["21-02"]
    assert ("TP", "TP") not in plan.cells
    assert plan.blooms["TP"] == "bloom 06-09 to 06-27"
    # Bloom of another year says which.
    assert plan.blooms["BA"] == "bloom 2020-06-01 to 07-04"
    # The planned cross is there; the one that was skipped is not.
    assert plan.cells["WC", "TP"].crosses == ["23-01"]
    assert ("WC", "BA") not in plan.cells


def test_selfings_lie_on_the_diagonal_and_open_pollination_has_the_last_column(qapp):
    plan = crossing_plan(garden(), crosses=["22-02", "22-01", "21-01"])
    assert plan.cells["21-01-1", "21-01-1"].crosses == ["22-01"]
    assert plan.pollen_parents[-1] == ""
    (part,) = crossing_plan_parts(garden(), plan)
    heads = [mark.text for mark in part.heading.marks if mark.what == "text"]
    assert heads[:2] == ["seed parent", "BA"]
    assert "open-pollinated" in heads
    assert shown(part)[0] == "BA"
    assert "____ wanted, 9 done, 3 set" in shown(part)


def test_a_plan_of_nothing():
    book = garden()
    book.crosses["23-01"].state = "made"
    with pytest.raises(Fault, match="no crosses in 1999"):
        crossing_plan(book, "1999")
    with pytest.raises(Fault, match="no cross 'X'"):
        crossing_plan(garden(), crosses=["X"])
    with pytest.raises(Fault, match="no cross 'X'"):
        crossing_rows(garden(), "2021-06-11", ["X"])
    with pytest.raises(Fault, match="No cross is planned"):
        crossing_rows(Book(), "2021-06-11")


@pytest.mark.parametrize(
    ("place", "spot"),
    [
        ("bed 2, row 3, plant 12", Spot("bed 2", "row 3", 12)),
        ("Bed 2; Row 3; no. 7", Spot("Bed 2", "Row 3", 7)),
        ("bed 2, north end", Spot("bed 2, north end", "", None)),
        ("row 19-4", Spot("", "row 19-4", None)),
        ("tunnel,  stake 61 , position 3", Spot("tunnel", "stake 61", 3)),
        ("Bed 2 / row 3 / 7", Spot("Bed 2", "row 3", 7)),
        ("Bed 2 / row 3", Spot("Bed 2", "row 3", None)),
        ("", Spot("", "", None)),
    ],
)
def test_a_place_is_read(place, spot):
    assert spot_of(place) == spot


def test_rows_of_the_beds_count_from_the_stake():
    rows = bed_rows(garden())
    assert [(row.bed, row.row) for row in rows] == [
        ("bed 1", "row 1"),
        ("bed 1", "row 2"),
        ("bed 1", "row 3"),
        ("bed 2", "row 1"),
    ]
    # The culled plant at 3 is gone, and its position stays.
    assert rows[3].plants == ((2, "21-01-1"), (4, "21-01-3"))
    assert rows[3].counted
    whole = bed_rows(garden(), ["bed 2"], all_plants=True)
    assert whole[0].plants == ((2, "21-01-1"), (3, "21-01-2"), (4, "21-01-3"))


def test_beds_stand_in_the_order_of_their_numbers():
    book = Book()
    for bed in (10, 2, 1):
        book.add(Plant(f"P{bed}", kind="plant", place=f"bed {bed}"))
    assert [row.bed for row in bed_rows(book)] == ["bed 1", "bed 2", "bed 10"]


def test_a_family_gives_way_to_its_plants_in_the_same_row():
    book = Book()
    for number in (1, 2):
        book.add(Plant(f"F-{number}", kind="plant", place="row 1"))
    book.add(Plant("F", kind="family", place="row 1"))
    (row,) = bed_rows(book)
    assert row.plants == ((1, "F-1"), (2, "F-2"))
    assert not row.counted


def test_the_map_on_paper(qapp):
    (part,) = bed_plan_parts(garden(), bed_rows(garden(), ["bed 2"], all_plants=True))
    words = shown(part)
    assert words[:2] == ["bed 2", "row 1"]
    # Positions 1 to 4, the first of them empty.
    assert [word for word in words if word.isdigit()] == ["1", "2", "3", "4"]
    frames = [m for block in part.blocks for m in block.marks if m.what == "frame"]
    # The stake, and the plant that is kept.
    assert len(frames) == 2
    struck = [m for block in part.blocks for m in block.marks if m.what == "rule" and m.height == 0]
    assert len(struck) == 1
    lists = lay_out_lists([part], book="b", landscape=True)
    assert lists.count == 1


def test_a_long_row_goes_on_in_further_strips_within_the_page(qapp):
    book = Book()
    for number in range(60):
        book.add(Plant(f"22-01-{number}", kind="plant", place=f"bed 1, row 1, plant {number + 1}"))
    (part,) = bed_plan_parts(book, bed_rows(book), landscape=False)
    assert len(part.blocks) > 4
    assert all(
        mark.x + mark.width <= 2100 - 240 + 0.5 for block in part.blocks for mark in block.marks
    )
    assert sum(word.startswith("22-01-") for word in shown(part)) == 60


def test_a_mistyped_position_does_not_draw_a_thousand_boxes(qapp):
    book = Book()
    book.add(Plant("A", kind="plant", place="bed 1, plant 1"))
    book.add(Plant("B", kind="plant", place="bed 1, plant 9999"))
    (part,) = bed_plan_parts(book, bed_rows(book))
    assert [word for word in shown(part) if word.isdigit()] == ["1", "9999"]


def test_beds_that_are_not_there():
    with pytest.raises(Fault, match="no bed or row 'bed 9'") as told:
        bed_rows(garden(), ["bed 9"])
    assert "bed 1" in told.value.todo
    with pytest.raises(Fault, match="has a place"):
        bed_rows(Book())
