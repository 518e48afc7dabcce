"""What is due, the board, the takes and the crossing list."""

from __future__ import annotations

import datetime

import pytest

from pedigreeview.book.board import STAGES, board, seasons_of_crosses
from pedigreeview.book.book import Book
from pedigreeview.book.crops import crop_fact, crop_named
from pedigreeview.book.crossing_list import crossing_list
from pedigreeview.book.due import due, fruits_hanging
from pedigreeview.book.records import (
    Bloom,
    Compatibility,
    Cross,
    Harvest,
    Packet,
    Plant,
    PollenLot,
    Pollination,
    Score,
    Sowing,
    Trait,
)
from pedigreeview.book.season import (
    OwnDays,
    cover_off_window,
    flowering_window,
    harvest_window,
    relabel_window,
)
from pedigreeview.book.success import takes_by

DAY = datetime.date(2024, 6, 10)


def book_of(*records, crop="pea"):
    book = Book()
    book.settings.crop = crop
    for record in (
        Plant("A", kind="variety"), Plant("B", kind="variety"), Cross("X", "A", "B", state="made"),
        *records,
    ):  # fmt: skip
        book.add(record)
    return book


def works(book, on=DAY, ahead=14):
    return {(one.work, one.key): one for one in due(book, on, ahead=ahead)}


# Windows ----------------------------------------------------------------------------------------


def test_pods_ripen_by_the_crops_figure():
    book = book_of(Pollination("P", "X", date="2024-06-01"))
    window = harvest_window(book, book.pollinations["P"], OwnDays(book))
    # Pea 35-50 days: trade-terms, numbers by crop (a single grower's or gardening page).
    assert (window.first, window.last) == (datetime.date(2024, 7, 6), datetime.date(2024, 7, 21))
    assert window.basis.words == "Pea pods ripen 35 to 50 days after pollination."
    assert window.basis.source == "a single grower's or gardening page"
    assert not window.basis.own


def test_own_records_come_first_where_there_are_enough():
    records = []
    for number in range(5):
        records += [
            Cross(f"C{number}", "A", "B"),
            Pollination(f"Q{number}", f"C{number}", date="2023-06-01"),
            Harvest(f"H{number}", f"C{number}", date=f"2023-07-{20 + number}"),
        ]
    row = Pollination("P", "X", date="2024-06-01")
    few = book_of(*records[:-3], row)
    assert not harvest_window(few, row, OwnDays(few)).basis.own
    enough = book_of(*records, row)
    assert OwnDays(enough).days("pea") == (49, 50, 51, 52, 53)
    window = harvest_window(enough, row, OwnDays(enough))
    assert window.basis.own
    assert (window.first, window.last) == (datetime.date(2024, 7, 20), datetime.date(2024, 7, 24))
    assert window.basis.words == (
        "5 crosses of pea were harvested 49 to 53 days after pollination."
    )


def test_rough_dates_make_no_window():
    book = book_of(Pollination("P", "X", date="2024-06"), Pollination("Q", "X"))
    for row in book.pollinations.values():
        assert harvest_window(book, row, OwnDays(book)) is None
        assert cover_off_window(book, row) is None
        assert relabel_window(book, row) is None


def test_an_unknown_crop_has_a_cover_but_no_harvest_window():
    book = book_of(Pollination("P", "X", date="2024-06-01"), crop="medlar")
    row = book.pollinations["P"]
    assert harvest_window(book, row, OwnDays(book)) is None
    assert cover_off_window(book, row).basis.source == "common practice, no source"


@pytest.mark.parametrize("crop", ["squash", "bearded iris", "dahlia"])
def test_open_ranges_and_single_values(crop):
    book = book_of(Pollination("P", "X", date="2024-06-01"), crop=crop)
    window = harvest_window(book, book.pollinations["P"], OwnDays(book))
    fact = crop_fact(crop_named(crop), "days_to_ripe")
    assert (window.first - datetime.date(2024, 6, 1)).days == fact.low
    assert (window.last is None) == (fact.high is None)
    assert ("petal fall" in window.basis.words) == (crop == "dahlia")


def test_flowering_as_noted_and_as_expected():
    book = book_of(
        Plant("p", kind="plant", sown="2024-04-01"), Plant("q", kind="plant"),
        Bloom("A", "2024-06-05", "2024-06-20"), Bloom("A", "2023-06-01", "2023-06-09"),
    )  # fmt: skip
    noted = flowering_window(book, book.plants["A"], DAY)
    assert (noted.first, noted.last) == (datetime.date(2024, 6, 5), datetime.date(2024, 6, 20))
    expected = flowering_window(book, book.plants["p"], DAY)
    # Pea 45 to 70 days from sowing (from memory).
    assert (expected.first, expected.last) == (datetime.date(2024, 5, 16), None)
    assert expected.basis.words == "Pea first flowers 45 to 70 days after sowing."
    assert flowering_window(book, book.plants["q"], DAY) is None
    assert flowering_window(book, book.plants["B"], DAY) is None


# Due --------------------------------------------------------------------------------------------


def test_a_pollination_goes_through_its_work():
    row = Pollination("P", "X", date="2024-06-01", flowers=4, cover="bag", tag="7")
    book = book_of(row)
    found = works(book, datetime.date(2024, 6, 8))
    assert set(found) == {("cover_off", "P"), ("count_fruits", "P")}
    assert found["cover_off", "P"].words == (
        "Take the bag off X (A × B), tag 7, pollinated on 2024-06-01."
    )
    assert found["cover_off", "P"].state(datetime.date(2024, 6, 8)) == "now"
    assert found["cover_off", "P"].state(datetime.date(2024, 6, 30)) == "late"
    row.set, row.extra["cover_off"] = 3, "2024-06-09"
    found = works(book, datetime.date(2024, 7, 1))
    assert set(found) == {("relabel", "P"), ("harvest", "P")}
    assert found["harvest", "P"].words == "Harvest 3 fruits of X (A × B), pollinated on 2024-06-01."
    row.extra["relabelled"] = "2024-07-01"
    book.add(Harvest("H", "X", date="2024-07-20", fruits=2))
    assert works(book, datetime.date(2024, 7, 20))["harvest", "P"].words.startswith(
        "Harvest 1 fruit of"
    )
    book.add(Harvest("I", "X", date="2024-07-21", fruits=1))
    assert works(book, datetime.date(2024, 7, 21)) == {}


def test_flowers_without_fruit_and_seasons_long_over_are_not_due():
    book = book_of(
        Pollination("P", "X", date="2024-06-01", flowers=4, set=0, cover="bag"),
        Pollination("Q", "X", date="2024-06-01", flowers=4, set=2, dropped=2, cover="bag"),
        Pollination("R", "X", date="2022-06-01", flowers=4, set=2, cover="bag"),
        Pollination("S", "X", date="2024-07-01", flowers=4, cover="none"),
    )
    assert works(book, datetime.date(2024, 6, 20)) == {}


def test_fruits_hanging_are_taken_off_in_order():
    book = book_of(
        Pollination("P", "X", date="2024-06-01", set=3),
        Pollination("Q", "X", date="2024-06-05", set=3, dropped=1),
        Pollination("R", "X", date="2024-08-01", set=2),
        Pollination("S", "X", date="2024-06-09"),
        Harvest("H", "X", date="2024-07-20", fruits=4),
    )
    assert fruits_hanging(book) == {"P": 0, "Q": 1, "R": 2, "S": None}
    book.add(Harvest("I", "X", date="2024-07-25"))
    assert fruits_hanging(book) == {"P": 0, "Q": 0, "R": 2, "S": 0}


def test_planned_pollinations_wait_for_both_blooms():
    book = book_of(Cross("Y", "B", "A", state="planned"))
    assert works(book)["pollinate", "Y"].first is None
    book.add(Bloom("A", "2024-06-05", "2024-06-20"))
    book.add(Bloom("B", "2024-06-12", ""))
    found = works(book)["pollinate", "Y"]
    assert (found.first, found.last) == (datetime.date(2024, 6, 12), datetime.date(2024, 6, 20))
    assert found.plants == ("B", "A")
    assert ("pollinate", "Y") not in works(book, datetime.date(2024, 6, 21))
    book.add(Pollination("P", "Y"))
    assert ("pollinate", "Y") not in works(book)


def test_no_cross_is_due_with_a_plant_that_is_gone():
    book = book_of(Plant("p", kind="plant", status="culled"), Cross("Y", "p", "A", state="planned"))
    assert works(book) == {}


def test_seed_to_sow_and_how_long_it_keeps():
    book = book_of(
        Harvest("H", "X", date="2021-08-01"), Packet("K", "H", "F1", "A", seeds=9, left=9),
        Harvest("I", "X", date="2023-08-01"), Packet("L", "I", "F1", "A", seeds=9, left=4),
        Packet("M", "I", "F1", "A", seeds=9, left=0), Sowing("S", "L", date="2024-03-01", seeds=5),
        Sowing("T", sown_from="A", date="2024-06-15"),
    )  # fmt: skip
    found = works(book)
    # Pea seed keeps 3 years: harvested 2021, last good in 2024.
    assert found["sow", "K"].words == (
        "Sow 9 seeds of X (A × B) (F1) in the packet K: not sown yet, good until 2024."
    )
    assert found["sow", "K"].last == datetime.date(2024, 12, 31)
    assert found["sow", "T"].first == datetime.date(2024, 6, 15)
    assert {key for work, key in found if work == "sow"} == {"K", "T"}
    later = works(book, datetime.date(2026, 2, 1))
    assert ("sow", "L") not in works(book, datetime.date(2027, 2, 1))
    assert later["sow", "L"].words.endswith("the rest, good until 2026.")
    assert later["sow", "K"].words.endswith("was good until 2024; test its germination.")
    assert later["sow", "K"].state(datetime.date(2026, 2, 1)) == "late"


def test_seedlings_not_counted_and_scores_missing():
    book = book_of(
        Sowing("S", sown_from="A", date="2024-05-20"),
        Sowing("T", sown_from="A", date="2024-05-20", up=3),
        Trait("height", "measure"), Trait("taste", "score"),
        *(Plant(f"p{n}", kind="plant", cross="X", status="growing") for n in range(4)),
        *(Score(f"p{n}", "height", value="50") for n in range(3)),
        Score("p0", "taste", value="5"),
    )  # fmt: skip
    found = works(book)
    assert set(found) == {("count_seedlings", "S"), ("score", "X")}
    assert found["score", "X"].words == "Score 'height' of 1 of 4 plants of X: p3."
    assert found["score", "X"].state(DAY) == "any time"


def test_what_ends_first_stands_first_and_what_has_no_day_last():
    book = book_of(
        Cross("Y", "B", "A", state="planned"),
        Pollination("P", "X", date="2024-06-03", cover="bag", set=2),
        Pollination("Q", "X", date="2024-06-01", cover="bag", set=2),
    )
    found = [(one.work, one.key) for one in due(book, DAY, ahead=0)]
    assert found == [("cover_off", "Q"), ("cover_off", "P"), ("pollinate", "Y")]


# Board and takes --------------------------------------------------------------------------------


def test_each_cross_stands_in_its_furthest_stage():
    records = [Cross("planned", "A", "B", state="planned")]
    for number, stage in enumerate(STAGES[1:], 1):
        records.append(Cross(stage, "A", "B", state="made", made_on="2024-06-01"))
        records.append(
            Pollination(f"P{number}", stage, date="2024-06-01", flowers=5,
                        set=2 if number > 1 else None)
        )  # fmt: skip
        if number > 2:
            records.append(Harvest(f"H{number}", stage, seeds=9))
        if number > 3:
            records.append(Packet(f"K{number}", f"H{number}", seeds=9, left=9 - number))
        if number > 4:
            records.append(Sowing(f"S{number}", f"K{number}", seeds=number, up=4))
        if number > 5:
            records.append(Plant("p", cross=stage))
    records += [
        Cross("skipped", "A", "B", state="skipped"),
        Cross("failed", "A", "B"), Pollination("F", "failed", date="2023-06-01", flowers=3, set=0),
        Cross("lost", "A", "B"), Pollination("L", "lost", flowers=3, set=1, dropped=1),
    ]  # fmt: skip
    book = book_of(*records)
    del book.crosses["X"]
    found = board(book)
    assert {stage: [card.cross for card in cards] for stage, cards in found.stages} == {
        stage: [stage] for stage in STAGES
    }
    assert {card.cross: card.ended for card in found.ended} == {
        "skipped": "skipped", "failed": "no take", "lost": "dropped",
    }  # fmt: skip
    (raised,) = dict(found.stages)["raised"]
    assert (raised.flowers, raised.fruits_set, raised.seeds, raised.packets) == (5, 2, 9, 1)
    assert (raised.left, raised.sown, raised.up, raised.plants) == (3, 6, 4, 1)
    assert found.count("sown") == 1
    assert seasons_of_crosses(book) == ("2024", "2023")
    of_year = board(book, year="2023")
    assert [card.cross for card in of_year.ended] == ["failed"]
    assert of_year.count("planned") == 1


def test_takes_with_the_numbers_behind_them():
    book = book_of(
        Cross("Y", "B", "A"),
        Pollination("1", "X", date="2024-06-01", flowers=6, set=3, by="RW", cover="Bag"),
        Pollination("2", "X", date="2024-06-02", flowers=4, set=3, by="JT", cover="bag"),
        Pollination("3", "Y", date="2024-07-01", flowers=5, set=1, by="RW"),
        Pollination("4", "Y", date="2024-07", flowers=5, by="RW"),
    )
    rows = takes_by(book, "seed_parent")
    assert [(row.group, row.fruits, row.flowers, row.left_out) for row in rows] == [
        ("A", 6, 10, 0), ("B", 1, 5, 1),
    ]  # fmt: skip
    assert rows[0].take == 0.6
    assert [row.group for row in takes_by(book, "direction")] == ["A × B", "B × A"]
    assert [(r.group, r.fruits) for r in takes_by(book, "by")] == [("RW", 4), ("JT", 3)]
    assert [r.group for r in takes_by(book, "month")] == ["2024-06", "2024-07"]
    assert [r.group for r in takes_by(book, "date")][-1] == ""
    assert [(r.group, r.pollinations) for r in takes_by(book, "cover")] == [("bag", 2), ("", 1)]
    assert takes_by(book, "year", year="2023") == ()
    assert [r.group for r in takes_by(book, "pollen_parent")] == ["B", "A"]


def test_a_group_without_counts_has_no_rate():
    (row,) = takes_by(book_of(Pollination("1", "X")), "cross")
    assert (row.take, row.left_out) == (None, 1)


# Crossing list ----------------------------------------------------------------------------------


def test_the_crossing_list_of_a_day():
    book = book_of(
        Plant("p", "One", "plant", place="Bed 1 / row 1 / 2"), Plant("q", kind="plant"),
        Cross("Y", "p", "q", state="planned"), Cross("Z", "q", "p", state="planned"),
        Bloom("p", "2024-06-05", ""), Bloom("q", "2024-05-01", "2024-06-01"),
        PollenLot("L", "q", "2024-05-31"), PollenLot("M", "q", "2024-06-20"),
        Compatibility("q", "", "sterile"), Pollination("1", "Y", flowers=2),
    )  # fmt: skip
    first, second = crossing_list(book, DAY)
    assert (first.cross, first.pollen, first.flowers_done) == ("Y", ("L, 10 days old",), 2)
    assert (first.seed_parent.place, first.seed_parent.flower) == ("Bed 1 / row 1 / 2", "in flower")
    assert first.pollen_parent.flower == "over"
    assert second.remarks == ("q is sterile as a seed parent.",)
    assert [line.cross for line in crossing_list(book, DAY, all_planned=False)] == ["Y"]
