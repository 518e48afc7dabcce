"""Crosses in both directions, selfings, open-pollinated seed, backcrosses, states."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.crosses import (
    crosses_between,
    record_backcross,
    record_cross,
    record_open,
    record_selfing,
    recurrent_parents,
    set_cross_state,
)
from pedigreeview.book.recording.plants import raise_plants
from pedigreeview.book.recording.pollinations import record_pollination
from pedigreeview.book.records import Cross, Plant, PollenCandidate


def test_both_ways_gives_this_direction_first(edit, today):
    one, other = record_cross(edit, "TP", "BA", today=today, both_ways=True)
    assert (one.cross, one.seed_parent, one.pollen_parent) == ("24-01", "TP", "BA")
    assert (other.cross, other.seed_parent, other.pollen_parent) == ("24-02", "BA", "TP")
    assert {one.intended, other.intended} == {"cross"}
    assert list(edit.book.crosses) == ["24-01", "24-02"]


def test_what_is_there_is_found_first(edit, today):
    (one,) = record_cross(edit, "BA", "TP", today=today, code="old")
    found = record_cross(edit, "TP", "BA", today=today, both_ways=True)
    assert found[1] == one
    assert crosses_between(edit.book, "TP", "BA").other_way == (one,)
    again = record_cross(edit, "TP", "BA", today=today, repeat=True)
    assert again[0].cross not in {cross.cross for cross in found}


@settings(max_examples=20)
@given(st.lists(st.sampled_from(["TP", "BA", "C"]), min_size=2, max_size=2, unique=True))
def test_asking_twice_for_both_ways_changes_nothing(pair):
    import datetime

    today = datetime.date(2024, 6, 10)
    book = Book(plants={code: Plant(code) for code in ("TP", "BA", "C")})
    first = Edit(book, "both")
    crosses = record_cross(first, *pair, today=today, both_ways=True)
    second = Edit(first.book, "again")
    assert record_cross(second, *pair, today=today, both_ways=True) == crosses
    assert record_cross(second, *reversed(pair), today=today, both_ways=True) == crosses[::-1]
    assert second.changes == []
    assert len(second.book.crosses) == 2


def test_a_planned_cross_is_made_by_asking_for_it(edit, today):
    record_cross(edit, "TP", "BA", today=today)
    (made,) = record_cross(edit, "TP", "BA", today=today, state="made", made_on="2024-06-09")
    assert (made.cross, made.state, made.made_on) == ("24-01", "made", "2024-06-09")


def test_parents_are_found_as_typed_and_missing_ones_named(edit, today):
    (cross,) = record_cross(edit, " tp", "Ba ", today=today)
    assert (cross.seed_parent, cross.pollen_parent) == ("TP", "BA")
    with pytest.raises(Fault, match=r"no plant 'TPX'.*Did you mean"):
        record_cross(edit, "TP", "TPX", today=today)
    with pytest.raises(Fault, match="No plant is named"):
        record_cross(edit, "", "TP", today=today)


def test_a_cross_before_a_parent_was_sown_is_refused(edit, today):
    with pytest.raises(Fault, match="before its parent p1 was sown"):
        record_cross(edit, "p1", "BA", today=today, made_on="2023-06-01", state="made")


def test_a_code_of_ones_own(edit, today):
    record_cross(edit, "TP", "BA", today=today, code="my cross")
    with pytest.raises(Fault, match="in the book as my cross"):
        record_cross(edit, "TP", "BA", today=today, code="other")
    with pytest.raises(Fault, match="looks like 'my cross'"):
        record_cross(edit, "BA", "TP", today=today, code="My  Cross")


def test_selfing_and_open_pollinated(edit, today):
    selfing = record_selfing(edit, "p1", today=today)
    assert (selfing.cross, selfing.seed_parent, selfing.pollen_parent) == ("p1 ⊗", "p1", "p1")
    assert selfing.intended == "selfing"
    assert record_selfing(edit, "p1", today=today) == selfing
    open_ = record_open(edit, "p1", today=today)
    assert (open_.cross, open_.pollen_parent, open_.intended) == ("p1 ○", "", "open")
    assert record_open(edit, "p1", today=today) == open_
    assert record_open(edit, "p1", today=today, repeat=True).cross == "p1 ○ 2"
    with pytest.raises(Fault, match="one direction"):
        record_cross(edit, "p1", "p1", today=today, both_ways=True)


def test_backcross_wants_a_parent_of_the_hybrid(edit, today):
    (first,) = record_cross(edit, "TP", "BA", today=today, state="made")
    (hybrid,) = raise_plants(edit, first.cross, 1, today=today)
    assert recurrent_parents(edit.book, hybrid.plant) == ("TP", "BA")
    (back,) = record_backcross(edit, hybrid.plant, "BA", today=today, state="made")
    assert (back.seed_parent, back.pollen_parent) == (hybrid.plant, "BA")
    (bc1,) = raise_plants(edit, back.cross, 1, today=today)
    assert recurrent_parents(edit.book, bc1.plant)[0] == "BA"
    (again,) = record_backcross(edit, bc1.plant, "BA", today=today, hybrid_as_seed_parent=False)
    assert (again.seed_parent, again.pollen_parent) == ("BA", bc1.plant)
    with pytest.raises(Fault, match="no backcross"):
        record_backcross(edit, bc1.plant, "p2", today=today)


def test_states(edit, today):
    (cross,) = record_cross(edit, "TP", "BA", today=today, note="Try.")
    (skipped,) = set_cross_state(edit, [cross.cross], "skipped", why="Too late.")
    assert (skipped.state, skipped.note) == ("skipped", "Try. Too late.")
    with pytest.raises(Fault, match="was skipped"):
        record_pollination(edit, cross.cross, today=today)
    set_cross_state(edit, [cross.cross], "planned")
    record_pollination(edit, cross.cross, today=today)
    with pytest.raises(Fault, match="has a pollination"):
        set_cross_state(edit, [cross.cross], "skipped")


def test_a_skipped_cross_is_not_taken_for_one_that_is_there(edit, today):
    (cross,) = record_cross(edit, "TP", "BA", today=today)
    set_cross_state(edit, [cross.cross], "skipped")
    (new,) = record_cross(edit, "TP", "BA", today=today)
    assert new.cross != cross.cross


def test_crosses_of_unknown_direction_are_not_taken_for_either(book, today):
    book.add(Cross("X", "TP", "BA", direction_known=False))
    book.add(Cross("Y", "TP"))
    book.add(PollenCandidate("Y", "BA", 0.5))
    found = crosses_between(book, "TP", "BA")
    assert found.this_way == found.other_way == ()
