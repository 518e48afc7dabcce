"""Findings on one plant, pollen lots and mixes, sterility, blooms."""

from __future__ import annotations

import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.blooms import record_bloom
from pedigreeview.book.recording.compatibility import record_compatibility, remarks_on_pair
from pedigreeview.book.recording.crosses import record_cross
from pedigreeview.book.recording.findings import record_finding, withdraw_finding
from pedigreeview.book.recording.notes import notes_about, photo_name, record_note, record_photo
from pedigreeview.book.recording.plants import raise_plants, set_status
from pedigreeview.book.recording.pollen import (
    age_of_pollen,
    cross_with_mixed_pollen,
    lots_of,
    record_pollen,
)


@pytest.fixture
def plant(edit, today):
    (cross,) = record_cross(edit, "p1", "p2", today=today)
    return raise_plants(edit, cross.cross, 1, today=today, sown="2024-06-09")[0].plant


def test_this_one_is_a_selfing(edit, plant):
    (row,) = record_finding(
        edit, plant, "p1", date="2024-07-01", grade="certain", text="Dwarf and white."
    )
    assert (row.pollen_parent, row.odds, row.grade) == ("self", None, "certain")
    assert edit.book.findings()[plant] == [row]


def test_a_later_finding_holds_and_the_older_stays(edit, plant):
    record_finding(edit, plant, "self", date="2024-07-01")
    record_finding(edit, plant, {"TP": 0.5, "BA": 0.25}, date="2024-08-01")
    assert len(edit.book.parent_findings) == 3
    assert {row.pollen_parent for row in edit.book.findings()[plant]} == {"TP", "BA"}
    with pytest.raises(Fault, match="would still hold"):
        record_finding(edit, plant, "", date="2024-07-15")
    with pytest.raises(Fault, match="already"):
        record_finding(edit, plant, "", date="2024-08-01")
    record_finding(edit, plant, "", date="2024-08-01", instead=True)
    assert [row.pollen_parent for row in edit.book.findings()[plant]] == [""]
    withdraw_finding(edit, plant, "2024-08-01")
    assert [row.pollen_parent for row in edit.book.findings()[plant]] == ["self"]


@pytest.mark.parametrize(
    ("pollen", "date", "says"),
    [
        ("TP", "", "no date"),
        ({"TP": 0.9, "BA": 0.2}, "2024", "over 1"),
        ("nobody", "2024", "no plant"),
    ],
)
def test_findings_that_cannot_be(edit, plant, pollen, date, says):
    with pytest.raises(Fault, match=says):
        record_finding(edit, plant, pollen, date=date)


def test_no_finding_makes_a_loop_or_is_on_a_founder(edit, today, plant):
    with pytest.raises(Fault, match="cannot be a parent here"):
        record_finding(edit, plant, plant, date="2024")
    with pytest.raises(Fault, match="came from no cross"):
        record_finding(edit, "p1", "self", date="2024")


def test_pollen_and_its_age(edit, today):
    lot = record_pollen(edit, "p1", today=today, collected="2024-06-07", stored="in the fridge")
    assert (lot.pollen_lot, lot.plant) == ("L24-1", "p1")
    assert age_of_pollen(edit.book, "L24-1", "2024-06-10").words() == "3 days old"
    assert age_of_pollen(edit.book, "L24-1", "2024-06-07").words() == "collected the same day"
    assert age_of_pollen(edit.book, "L24-1", "2024-06").words() == "0 to 23 days old"
    with pytest.raises(Fault, match="after 2024-06-01"):
        age_of_pollen(edit.book, "L24-1", "2024-06-01")
    newer = record_pollen(edit, "p1", today=today, collected="2024-06-09")
    record_pollen(edit, ["p1", "p2"], today=today)
    assert lots_of(edit.book, "p1") == (newer, lot)


def test_mixed_pollen_gives_candidates(edit, today):
    lot = record_pollen(edit, "p1; p2; BA", today=today)
    cross = cross_with_mixed_pollen(edit, "TP", lot.pollen_lot, today=today)
    assert (cross.pollen_parent, cross.drawn, cross.pollen_doubt) == ("", "each", "possible")
    odds = {row.candidate: row.odds for row in edit.book.pollen_candidates}
    assert set(odds) == {"p1", "p2", "BA"}
    assert sum(odds.values()) == pytest.approx(1)
    with pytest.raises(Fault, match="of one plant"):
        cross_with_mixed_pollen(edit, "TP", {"p1": 1.0}, today=today)


def test_sterility_and_refusal_are_said_before_the_cross(edit):
    record_compatibility(edit, "p1", as_pollen="sterile")
    record_compatibility(edit, "p2", "p2", as_seed="sterile")
    record_compatibility(edit, "p2", "p1", as_seed="poor")
    set_status(edit, ["p1"], "lost")
    assert remarks_on_pair(edit.book, "p2", "p1") == (
        "p1 is sterile as a pollen parent.",
        "p2 is poor as a seed parent with p1.",
        "p1 is lost.",
    )
    assert remarks_on_pair(edit.book, "p2", "p2") == ("p2 refuses its own pollen.",)
    assert remarks_on_pair(edit.book, "TP", "BA") == ()
    record_compatibility(edit, "p1", as_pollen="fertile", note="Better in June.")
    assert len([row for row in edit.book.compatibility if row.plant == "p1"]) == 1


def test_bloom_of_one_season_is_one_record(edit):
    record_bloom(edit, "p1", first="2024-05-20")
    row = record_bloom(edit, "p1", last="2024-06-20")
    assert (row.first_flower, row.last_flower) == ("2024-05-20", "2024-06-20")
    record_bloom(edit, "TP", first="2023-06-01")
    record_bloom(edit, "TP", first="2024-06-01")
    record_bloom(edit, "TP", last="2024-07-01")
    assert [(r.first_flower, r.last_flower) for r in edit.book.blooms[1:]] == [
        ("2023-06-01", ""), ("2024-06-01", "2024-07-01"),
    ]  # fmt: skip
    with pytest.raises(Fault, match="before its first"):
        record_bloom(edit, "p2", first="2024-06-10", last="2024-06-01")


def test_notes_and_photos(edit):
    record_note(edit, "plants", "p1", "Tall.", date="2024-06-10")
    assert [note.text for note in notes_about(edit.book, "plants", "p1")] == ["Tall."]
    assert notes_about(edit.book, "plants", "p2") == ()
    with pytest.raises(Fault, match="no 'p9'"):
        record_note(edit, "plants", "p9", "?")
    name = photo_name(edit.book, "p1", "My pod (2).JPG")
    assert name == "p1-My-pod-2.jpg"
    record_photo(edit, name, "p1", caption="A pod.")
    assert photo_name(edit.book, "p1", "My pod (2).JPG") == "p1-My-pod-2-2.jpg"
    with pytest.raises(Fault, match="plain file name"):
        record_photo(edit, "../x.jpg", "p1")
