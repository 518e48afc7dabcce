"""Deleting with its ways out, and correcting the past with what was there kept."""

from __future__ import annotations

import pytest

from pedigreeview.book.edits import ChangedElsewhere, Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.correcting import (
    amend,
    correct_cross,
    give_parent,
    move_to_cross,
    repoint,
)
from pedigreeview.book.recording.crosses import record_cross, record_selfing
from pedigreeview.book.recording.deleting import (
    cull_instead,
    delete,
    delete_cross_with_progeny,
    delete_with_progeny,
    give_progeny_unknown_parent,
    skip_instead,
)
from pedigreeview.book.recording.doubt import set_candidates
from pedigreeview.book.recording.findings import record_finding
from pedigreeview.book.recording.hanging import descendants, what_hangs_on
from pedigreeview.book.recording.harvests import record_harvest
from pedigreeview.book.recording.notes import record_note
from pedigreeview.book.recording.plants import clone, raise_plants
from pedigreeview.book.recording.pollen import record_pollen
from pedigreeview.book.recording.pollinations import record_fruits, record_pollination
from pedigreeview.book.recording.scores import record_score
from pedigreeview.book.recording.sowings import record_sowing
from pedigreeview.book.recording.traits import record_trait
from pedigreeview.book.records import SELF, Bookmark, ParentFinding


@pytest.fixture
def family(edit, today):
    """p1 × p2 with pollination, seed, three plants, one of them selfed and grown on, a cutting."""
    (cross,) = record_cross(edit, "p1", "p2", today=today)
    record_pollination(edit, cross.cross, today=today, date="2024-06-01", flowers=4)
    _, packet = record_harvest(edit, cross.cross, today=today, date="2024-07-20", seeds=9)
    record_sowing(edit, today=today, packet=packet.packet, date="2025-03-01", seeds=5)
    plants = raise_plants(edit, count=3, today=today, sowing="B25-1")
    selfing = record_selfing(edit, plants[0].plant, today=today)
    raise_plants(edit, selfing.cross, 2, today=today, sown="2026-03-01")
    clone(edit, "p1", today=today)
    record_trait(edit, "height", "measure")
    record_score(edit, "p1", "height", "50", date="2024-06-01")
    record_note(edit, "plants", "p1", "Tall.")
    record_pollen(edit, "p1; p2", today=today)
    edit.add(Bookmark("Here", "p1", "p1;p2"))
    return cross.cross


def test_what_hangs_on_a_plant_is_counted(edit, family):
    hangs = what_hangs_on(edit.book, edit.book.plants["p1"])
    counts = {one.what: one.count for one in hangs.hanging}
    assert counts["progeny"] == 4
    assert counts["cross as seed parent"] == 1
    assert counts["score"] == 1
    assert not hangs.free
    assert hangs.ways == ("cull", "repoint", "unknown_parent", "with_progeny")
    assert "4 progeny (24-01-01, 24-01-02, 24-01-03, p1 c1)" in hangs.sentence("p1")
    with pytest.raises(Fault, match="On p1 hang"):
        delete(edit, edit.book.plants["p1"])


def test_one_finding_is_said_in_the_singular(edit, family):
    edit.add(ParentFinding("24-01-02", "p1"))
    of_its_own = what_hangs_on(edit.book, edit.book.plants["24-01-02"]).sentence("24-01-02")
    assert "1 parent finding of its own" in of_its_own
    assert "1 parent finding that names it" in what_hangs_on(
        edit.book, edit.book.plants["p1"]
    ).sentence("p1")


def test_what_nothing_hangs_on_goes_with_its_own_data(edit, family):
    leaf = edit.book.plants["24-01-01-1"]
    record_score(edit, leaf.plant, "height", "30", date="2026-06-01")
    record_note(edit, "plants", leaf.plant, "Weak.")
    assert what_hangs_on(edit.book, leaf).ways == ("delete",)
    delete(edit, leaf)
    assert leaf.plant not in edit.book.plants
    assert all(score.plant != leaf.plant for score in edit.book.scores)
    assert all(leaf.plant not in note.about for note in edit.book.notes)


def test_culling_and_skipping_delete_nothing(edit, family, today):
    before = len(edit.book.plants)
    assert cull_instead(edit, "p1", date="2024-08-01").status == "culled"
    assert len(edit.book.plants) == before
    (cross,) = record_cross(edit, "TP", "BA", today=today)
    assert skip_instead(edit, cross.cross).state == "skipped"


def test_deleting_with_all_progeny(edit, family):
    wanted = descendants(edit.book, ["p1"])
    assert len(wanted) == 7
    gone = delete_with_progeny(edit, "p1")
    assert set(gone) == wanted
    assert set(edit.book.plants) == {"TP", "BA", "p2"}
    assert edit.book.crosses == {}
    assert edit.book.pollinations == edit.book.harvests == {}
    assert edit.book.packets == edit.book.sowings == {}
    assert edit.book.scores == []
    assert edit.book.pollen_lots["L24-1"].plant == "p2"
    assert (edit.book.bookmarks["Here"].focus, edit.book.bookmarks["Here"].pinned) == ("", "p2")


def test_an_unknown_parent_in_its_place(edit, family, book):
    record_finding(edit, "24-01-02", SELF, date="2025-07-01")
    give_progeny_unknown_parent(edit, "p1", date="2026-01-01")
    cross = edit.book.crosses[family]
    assert (cross.seed_parent, cross.pollen_parent) == ("", "p2")
    assert edit.book.parent_findings[0].pollen_parent == ""
    cutting = edit.book.plants["p1 c1"]
    assert (cutting.raised, cutting.source) == ("founder", "")
    texts = [note.text for note in edit.book.notes]
    assert "The seed parent was p1, which was deleted." in texts
    assert "Was cutting of p1, which was deleted." in texts
    assert "p1" not in edit.book.plants
    assert "p1" in book.plants


def test_a_candidate_that_is_deleted_leaves_its_odds_unknown(edit, today):
    (cross,) = record_cross(edit, "TP", "BA", today=today)
    set_candidates(edit, cross.cross, {"BA": 0.5, "p1": 0.3})
    delete_with_progeny(edit, "p1")
    assert [(row.candidate, row.odds) for row in edit.book.pollen_candidates] == [("BA", 0.5)]


def test_deleting_a_cross(edit, family, today):
    hangs = what_hangs_on(edit.book, edit.book.crosses[family])
    assert hangs.ways == ("move", "with_progeny")
    gone = delete_cross_with_progeny(edit, family)
    assert len(gone) == 5
    assert set(edit.book.plants) == {"TP", "BA", "p1", "p2", "p1 c1"}
    (cross,) = record_cross(edit, "TP", "BA", today=today)
    record_pollination(edit, cross.cross, today=today)
    delete(edit, cross)
    assert edit.book.crosses == edit.book.pollinations == {}
    assert record_cross(edit, "TP", "BA", today=today)[0].cross not in (family, cross.cross)


def test_another_plant_in_its_place(edit, family):
    kept = repoint(edit, "p1", "TP2", date="2026-01-01") if "TP2" in edit.book.plants else None
    assert kept is None
    with pytest.raises(Fault, match="is a variety"):
        repoint(edit, "p1", "TP")
    with pytest.raises(Fault, match="cannot be a parent here"):
        repoint(edit, "p1", "24-01-01-1")
    with pytest.raises(Fault, match="its own place"):
        repoint(edit, "p1", "p1")


def test_two_codes_of_one_plant_become_one(edit, today):
    record_cross(edit, "p1", "p2", today=today)
    record_cross(edit, "BA", "p1", today=today)
    record_trait(edit, "height", "measure")
    record_score(edit, "p1", "height", "50")
    record_pollen(edit, "p1;p2", today=today)
    kept = repoint(edit, "p1", "p2", date="2024-07-01")
    assert kept.plant == "p2"
    first, second = edit.book.crosses.values()
    assert (first.seed_parent, first.pollen_parent, first.intended) == ("p2", "p2", "selfing")
    assert (second.seed_parent, second.pollen_parent) == ("BA", "p2")
    assert edit.book.scores[0].plant == "p2"
    assert edit.book.pollen_lots["L24-1"].plant == "p2"
    assert "p1" not in edit.book.plants


def test_odds_of_two_candidates_that_are_one_add_up(edit, today):
    (cross,) = record_cross(edit, "TP", "BA", today=today)
    set_candidates(edit, cross.cross, {"p1": 0.25, "p2": 0.5})
    repoint(edit, "p1", "p2")
    assert [(row.candidate, row.odds) for row in edit.book.pollen_candidates] == [("p2", 0.75)]


# Correcting -------------------------------------------------------------------------------------


def test_a_cross_gets_another_parent_and_keeps_what_it_had(edit, family):
    cross = correct_cross(edit, family, pollen_parent="BA", date="2026-01-01", why="Tag misread.")
    assert cross.pollen_parent == "BA"
    (row,) = edit.book.evidence
    assert (row.side, row.for_or_against) == ("pollen", "against")
    assert row.text == "Was p2 until this correction. Tag misread."
    selfed = correct_cross(edit, family, pollen_parent="p1", date="2026-01-02")
    assert selfed.intended == "selfing"
    assert correct_cross(edit, family, pollen_parent="", date="2026-01-03").intended == ""
    with pytest.raises(Fault, match="cannot be a parent here"):
        correct_cross(edit, family, seed_parent="24-01-01", date="")


def test_a_self_keeps_its_seed_parent_known(edit, family):
    record_finding(edit, "24-01-02", SELF, date="2025-07-01")
    with pytest.raises(Fault, match="must be known"):
        correct_cross(edit, family, seed_parent="", date="2026")


def test_many_plants_move_to_another_cross(edit, family, today):
    (other,) = record_cross(edit, "TP", "BA", today=today)
    moved = move_to_cross(
        edit, ["24-01-02", "24-01-03"], other.cross, date="2026-01-01", why="Packets mixed up."
    )
    assert {plant.cross for plant in moved} == {other.cross}
    assert edit.book.crosses[other.cross].state == "made"
    assert edit.book.notes[-1].text == (
        f"Came from the cross {family} until this correction; now the cross {other.cross}. "
        "Packets mixed up."
    )
    with pytest.raises(Fault, match="cutting of p1"):
        move_to_cross(edit, ["p1 c1"], other.cross, date="")
    with pytest.raises(Fault, match="cannot be a parent here"):
        move_to_cross(edit, ["p1"], family, date="")


def test_a_founder_gets_parents_and_loses_what_follows_from_them(edit, today):
    edit.update(edit.book.plants["p2"], fixation=0.5)
    (cross,) = record_cross(edit, "TP", "BA", today=today)
    (plant,) = move_to_cross(edit, ["p2"], cross.cross, date="")
    assert (plant.raised, plant.kind, plant.fixation) == ("cross", "plant", None)


def test_many_plants_get_another_parent_in_one_step(edit, family, today):
    (cross,) = give_parent(
        edit, ["24-01-02", "24-01-03"], pollen_parent="BA", today=today, date="2026-01-01"
    )
    assert (cross.seed_parent, cross.pollen_parent) == ("p1", "BA")
    assert edit.book.plants["24-01-02"].cross == cross.cross
    assert edit.book.plants["24-01-01"].cross == family
    again = give_parent(edit, ["24-01-01"], pollen_parent="BA", today=today, date="2026-01-02")
    assert again == (cross,)
    with pytest.raises(Fault, match="both of its parents"):
        give_parent(edit, ["BA"], pollen_parent="TP", today=today, date="")
    (unknown,) = give_parent(edit, ["24-01-03"], pollen_parent="", today=today, date="2026")
    assert (unknown.seed_parent, unknown.pollen_parent, unknown.intended) == ("p1", "", "")


def test_amending_refuses_what_makes_an_error(edit, family):
    plant = edit.book.plants["24-01-01"]
    with pytest.raises(Fault, match="before its cross 24-01 was made"):
        amend(edit, plant, sown="2023-01-01")
    cross = edit.book.crosses[family]
    with pytest.raises(Fault, match="cannot be a parent here"):
        amend(edit, cross, seed_parent="24-01-01")


def test_amending_sees_what_was_changed_elsewhere(edit, family):
    shown = edit.book.plants["p2"]
    amend(edit, shown, name="One")
    with pytest.raises(ChangedElsewhere):
        amend(edit, shown, name="Two")
    assert amend(edit, shown, place="Bed 1").name == "One"


def test_an_error_that_was_there_before_does_not_bar_the_rest(book, today):
    edit = Edit(book, "x")
    (cross,) = record_cross(edit, "p1", "p2", today=today)
    record_pollination(edit, cross.cross, today=today, flowers=2)
    # As another program might have written it.
    edit.update(edit.book.pollinations["P24-1"], set=5)
    record_pollination(edit, cross.cross, today=today, flowers=3)
    record_fruits(edit, "P24-2", fruits=1)
    with pytest.raises(Fault, match="4 fruits set of 3"):
        record_fruits(edit, "P24-2", fruits=4)
