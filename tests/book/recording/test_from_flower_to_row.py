"""Pollination, fruits, harvest, packet, sowing, plants: counts that hang together."""

from __future__ import annotations

from fractions import Fraction

import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.crosses import record_cross, record_selfing
from pedigreeview.book.recording.doubt import (
    accept_proposed_odds,
    odds_of_itself,
    record_evidence,
    set_candidates,
    set_doubt,
)
from pedigreeview.book.recording.harvests import record_harvest
from pedigreeview.book.recording.naming import name_as_variety, rename_cross, rename_plant
from pedigreeview.book.recording.packets import (
    TooFewSeeds,
    correct_count,
    keeping,
    record_germination,
    record_packet,
)
from pedigreeview.book.recording.place_names import read_place
from pedigreeview.book.recording.plants import clone, double, raise_plants, raise_row, set_status
from pedigreeview.book.recording.pollinations import (
    last_used,
    note_relabelled,
    record_fruits,
    record_pollination,
    take_cover_off,
)
from pedigreeview.book.recording.sowings import (
    correct_sown,
    record_seedlings,
    record_sowing,
    undo_sowing,
)
from pedigreeview.book.recording.varieties import how_kept, record_variety
from pedigreeview.book.records import SELF


@pytest.fixture
def cross(edit, today):
    return record_cross(edit, "TP", "BA", today=today)[0].cross


@pytest.fixture
def packet(edit, today, cross):
    record_pollination(edit, cross, today=today, date="2024-06-01", flowers=5, cover="bag")
    _, packet = record_harvest(
        edit, cross, today=today, date="2024-07-20", fruits=4, seeds=24, place="tin"
    )
    return packet.packet


def test_a_pollination_makes_the_cross(edit, today, cross):
    row = record_pollination(
        edit, cross, today=today, date="2024-06-09", flowers=3, cover="tape", by="RW", bud="closed"
    )
    assert row.pollination == "P24-1"
    held = edit.book.crosses[cross]
    assert (held.state, held.made_on) == ("made", "2024-06-09")
    used = last_used(edit.book)
    assert (used.flowers, used.cover, used.by, used.bud) == (3, "tape", "RW", "closed")


def test_fruits_never_exceed_flowers(edit, today, cross):
    record_pollination(edit, cross, today=today, flowers=3)
    with pytest.raises(Fault, match="4 fruits set of 3 flowers"):
        record_fruits(edit, "P24-1", fruits=4)


def test_fruits_lost_are_of_those_that_set(edit, today, cross):
    record_pollination(edit, cross, today=today, flowers=3)
    with pytest.raises(Fault, match="2 fruits lost of 1 set"):
        record_fruits(edit, "P24-1", fruits=1, dropped=2)
    row = record_fruits(edit, "P24-1", fruits=2, dropped=1, note="Hail.")
    assert (row.set, row.dropped, row.note) == (2, 1, "Hail.")


def test_cover_and_label_are_noted_with_their_days(edit, today, cross):
    record_pollination(edit, cross, today=today, date="2024-06-09", cover="bag")
    assert take_cover_off(edit, "P24-1", date="2024-06-17").extra == {"cover_off": "2024-06-17"}
    row = note_relabelled(edit, "P24-1", date="2024-06-20")
    assert row.extra == {"cover_off": "2024-06-17", "relabelled": "2024-06-20"}
    with pytest.raises(Fault, match="after 2024-06-01"):
        take_cover_off(edit, "P24-1", date="2024-06-01")


# Odds and doubt ---------------------------------------------------------------------------------


def test_odds_of_itself_are_the_mean_by_flowers(edit, today, cross):
    assert odds_of_itself(edit.book, cross) is None
    for flowers, bud in ((6, "closed"), (3, "unsure"), (1, "open")):
        record_pollination(edit, cross, today=today, flowers=flowers, bud=bud)
    record_pollination(edit, cross, today=today, flowers=9)
    found = odds_of_itself(edit.book, cross)
    # (6·0 + 3·1/10 + 1·2/10) / 10 = 1/20
    assert found.odds == pytest.approx(float(Fraction(1, 20)), abs=1e-15)
    assert found.by == "flowers"
    assert found.left_out == ("P24-4",)


def test_odds_of_itself_by_seeds_where_fruits_tell_them(edit, today, cross):
    record_pollination(edit, cross, today=today, date="2024-06-01", flowers=5, bud="closed")
    record_pollination(edit, cross, today=today, date="2024-06-02", flowers=5, bud="open")
    record_fruits(edit, "P24-1", fruits=3)
    record_fruits(edit, "P24-2", fruits=1)
    record_harvest(edit, cross, today=today, date="2024-07-30", fruits=4, seeds=20)
    found = odds_of_itself(edit.book, cross)
    assert found.by == "seeds"
    assert found.odds == pytest.approx(0.2 / 4, abs=1e-15)


def test_odds_are_only_proposed_and_then_taken(edit, today, cross):
    record_pollination(edit, cross, today=today, flowers=5, bud="open")
    assert edit.book.pollen_candidates == []
    rows = accept_proposed_odds(edit, cross)
    assert {row.candidate: row.odds for row in rows} == {"BA": 0.8, SELF: 0.2}
    assert edit.book.crosses[cross].pollen_parent == ""
    assert odds_of_itself(edit.book, cross) is None
    set_candidates(edit, cross, {"BA": 1.0})
    assert edit.book.crosses[cross].pollen_parent == "BA"
    assert edit.book.pollen_candidates == []


def test_no_odds_of_itself_for_a_selfing(edit, today):
    selfing = record_selfing(edit, "p1", today=today)
    record_pollination(edit, selfing.cross, today=today, flowers=2, bud="open")
    assert odds_of_itself(edit.book, selfing.cross) is None
    with pytest.raises(Fault, match="No odds"):
        accept_proposed_odds(edit, selfing.cross)


@pytest.mark.parametrize(
    ("odds", "says"),
    [
        ({"BA": 0.7, "p1": 0.4}, "over 1"),
        ({"BA": 1.4}, "cannot be"),
        ({"nobody": 0.4}, "no plant"),
    ],
)
def test_odds_that_cannot_be(edit, today, cross, odds, says):
    with pytest.raises(Fault, match=says):
        set_candidates(edit, cross, odds)


def test_a_candidate_cannot_descend_from_the_cross(edit, today, cross):
    (plant,) = raise_plants(edit, cross, 1, today=today)
    with pytest.raises(Fault, match="cannot be a parent here"):
        set_candidates(edit, cross, {plant.plant: 0.5})


def test_grades_keep_what_was_believed(edit, today, cross):
    set_doubt(edit, cross, "pollen", "probable", date="2024-06-10")
    assert edit.book.evidence == []
    held = set_doubt(
        edit, cross, "pollen", "certain", date="2024-08-01", because="All six are purple."
    )
    assert held.pollen_doubt == "certain"
    (row,) = edit.book.evidence
    assert (row.side, row.for_or_against, row.date) == ("pollen", "for", "2024-08-01")
    assert row.text == "All six are purple. (Was probable before.)"
    record_evidence(edit, cross, "pollen", "against", "One is white.", date="2024-08-02")
    assert len(edit.book.evidence) == 2
    with pytest.raises(Fault, match="not one of the words"):
        set_doubt(edit, cross, "seed", "sure", date="")


# Seed -------------------------------------------------------------------------------------------


def test_a_harvest_has_a_packet_one_generation_ahead(edit, today, packet, cross):
    held = edit.book.packets[packet]
    assert (held.generation, held.borne_on, held.covered) == ("F1", "TP", True)
    assert (held.seeds, held.left, held.place) == (24, 24, "tin")
    assert edit.book.harvests["H24-1"].packet == packet


def test_more_seed_of_the_same_cross_goes_into_the_packet(edit, today, packet, cross):
    record_harvest(edit, cross, today=today, date="2024-07-25", seeds=6, fruits=1, into=packet)
    assert (edit.book.packets[packet].seeds, edit.book.packets[packet].left) == (30, 30)
    other = record_cross(edit, "BA", "TP", today=today)[0].cross
    with pytest.raises(Fault, match="holds seed of the cross 24-01"):
        record_harvest(edit, other, today=today, into=packet)


def test_a_harvest_before_the_cross_is_refused(edit, today, packet, cross):
    with pytest.raises(Fault, match="before the cross was made"):
        record_harvest(edit, cross, today=today, date="2024-05-01")


def test_the_count_falls_as_seed_is_sown(edit, today, packet):
    record_sowing(edit, today=today, packet=packet, date="2025-03-20", seeds=10)
    assert edit.book.packets[packet].left == 14
    with pytest.raises(TooFewSeeds) as caught:
        record_sowing(edit, today=today, packet=packet, seeds=15)
    assert (caught.value.left, caught.value.wanted) == (14, 15)
    assert "correct the count" in caught.value.todo


def test_the_way_out_when_more_was_sown_than_was_left(edit, today, packet):
    record_sowing(edit, today=today, packet=packet, seeds=20, date="2025-03-20")
    record_sowing(edit, today=today, packet=packet, seeds=6, left_in_packet=7, date="2025-04-01")
    held = edit.book.packets[packet]
    assert held.left == 1
    assert held.seeds == 27
    assert edit.book.notes[-1].text == "Count corrected from 4 to 7."


def test_a_sowing_is_corrected_and_taken_back(edit, today, packet):
    record_sowing(edit, today=today, packet=packet, seeds=10)
    correct_sown(edit, "B24-1", 12)
    assert edit.book.packets[packet].left == 12
    correct_sown(edit, "B24-1", 2)
    assert edit.book.packets[packet].left == 22
    undo_sowing(edit, "B24-1")
    assert edit.book.packets[packet].left == 24
    assert edit.book.sowings == {}


def test_seedlings(edit, today, packet):
    record_sowing(edit, today=today, packet=packet, seeds=8)
    row = record_seedlings(edit, "B24-1", up=6)
    assert (row.up, row.kept) == (6, None)
    assert edit.book.packets[packet].germination == 0.75
    with pytest.raises(Fault, match="6 up but 7 kept"):
        record_seedlings(edit, "B24-1", kept=7)


def test_a_sowing_names_one_origin(edit, today, packet, cross):
    for wrong in ({}, {"packet": packet, "sown_from": cross}):
        with pytest.raises(Fault, match="either its packet"):
            record_sowing(edit, today=today, **wrong)
    assert record_sowing(edit, today=today, sown_from="tp", seeds=9).sown_from == "TP"


def test_counts_and_germination_are_noted(edit, today, packet):
    correct_count(edit, packet, left=30, date="2024-09-01", why="Recounted.")
    correct_count(edit, packet, left=30, date="2024-09-02", why="Some look mouldy.")
    assert edit.book.notes[-1].text == "Some look mouldy."
    edit.remove(edit.book.notes[-1])
    held = edit.book.packets[packet]
    assert (held.left, held.seeds) == (30, 30)
    record_germination(edit, packet, 0.9, date="2025-01-10")
    assert [note.text for note in edit.book.notes] == [
        "Count corrected from 24 to 30. Recounted.",
        "Germination tested: 90%.",
    ]
    # A pea keeps 3 years by resources/crops.json.
    assert keeping(edit.book, edit.book.packets[packet]).until == 2027


def test_a_bought_packet(edit, today):
    packet = record_packet(edit, today=today, borne_on="TP", seeds=50, note="Swap.")
    assert (packet.packet, packet.left, packet.borne_on) == ("K24-1", 50, "TP")


# Plants -----------------------------------------------------------------------------------------


def test_twenty_four_numbered_plants_in_one_go(edit, today, packet):
    record_sowing(edit, today=today, packet=packet, date="2025-03-20", seeds=24)
    plants = raise_plants(edit, count=24, today=today, sowing="B25-1", place="Bed 2 / row 3")
    assert [plants[0].plant, plants[-1].plant] == ["24-01-01", "24-01-24"]
    assert {plant.cross for plant in plants} == {"24-01"}
    assert {plant.sown for plant in plants} == {"2025-03-20"}
    assert plants[6].place == "Bed 2 / row 3 / 7"
    assert read_place(plants[6].place).position == 7
    assert edit.book.sowings["B25-1"].kept == 24


def test_no_more_plants_than_came_up(edit, today, packet):
    record_sowing(edit, today=today, packet=packet, seeds=8)
    record_seedlings(edit, "B24-1", up=3)
    with pytest.raises(Fault, match="3 came up"):
        raise_plants(edit, count=4, today=today, sowing="B24-1")


def test_plants_of_a_variety_and_of_a_single_plant(edit, today):
    (plant,) = raise_plants(edit, "TP", 1, today=today)
    assert (plant.raised, plant.source, plant.plant) == ("seed_of", "TP", "TP-1")
    with pytest.raises(Fault, match="p1 is one plant"):
        raise_plants(edit, "p1", 1, today=today)


def test_some_codes_typed_and_the_rest_proposed(edit, today, cross):
    plants = raise_plants(edit, cross, 3, today=today, codes=["first"])
    assert [plant.plant for plant in plants] == ["first", "24-01-01", "24-01-02"]
    with pytest.raises(Fault, match="is taken"):
        raise_plants(edit, cross, 1, today=today, codes=["first"])


def test_rows_are_pools(edit, today, cross):
    row = raise_row(edit, cross, today=today, place="Bed 1")
    assert (row.plant, row.kind, row.cross) == ("24-01 row 1", "family", cross)
    next_ = raise_row(edit, row.plant, today=today, sibbed=True)
    assert (next_.raised, next_.source) == ("sibbed_in", row.plant)
    with pytest.raises(Fault, match="Sib mating"):
        raise_row(edit, cross, today=today, sibbed=True)


def test_clones_and_doubled_haploids(edit, today):
    one, two = clone(edit, "p1", 2, today=today, way="division", date="2024-05-01")
    assert (one.plant, one.raised, one.source, one.note) == (
        "p1 c1", "cutting_of", "p1", "Division.",
    )  # fmt: skip
    assert two.plant == "p1 c2"
    (sport,) = clone(edit, "p1", 1, today=today, way="sport", name="Gold")
    assert (sport.name, sport.note) == ("Gold", "Sport.")
    (haploid,) = double(edit, "p1", today=today)
    assert (haploid.plant, haploid.raised) == ("p1 DH1", "doubled_haploid_of")
    assert double(edit, "p1", today=today, haploid=False)[0].raised == "doubled_of"
    with pytest.raises(Fault, match="pool of many plants"):
        clone(edit, "TP", today=today)


def test_culling_is_a_state_with_a_day(edit):
    (plant,) = set_status(edit, ["p1"], "culled", date="2024-07-01", why="Mildew.")
    assert plant.status == "culled"
    assert (edit.book.notes[0].about, edit.book.notes[0].text) == (
        "plant p1", "Status: culled. Mildew.",
    )  # fmt: skip
    set_status(edit, ["p1"], "culled", date="2024-07-02")
    assert len(edit.book.notes) == 1
    # Words are never lost, though the status was the same already.
    set_status(edit, ["p1"], "culled", date="2024-07-03", why="And rot.")
    assert [note.text for note in edit.book.notes][1:] == ["And rot."]


@pytest.mark.parametrize(
    ("kept", "kind", "fixation"),
    [("seed", "variety", None), ("mixed", "variety", 0.0), ("clone", "plant", None),
     ("f1", "plant", None)],
)  # fmt: skip
def test_how_a_variety_is_kept_decides_what_it_is(edit, kept, kind, fixation):
    plant = record_variety(edit, name="Hollin Red", kept=kept, obtained_from="a swap")
    assert (plant.plant, plant.kind, plant.fixation) == ("HR", kind, fixation)
    assert how_kept(edit.book, plant) == kept
    assert edit.book.raised(plant) == "founder"


def test_a_code_is_made_of_the_name_and_never_taken_twice(edit):
    assert record_variety(edit, name="True Pea").plant == "TP2"
    assert record_variety(edit, name="Gold").plant == "GOL"
    with pytest.raises(Fault, match="neither a code nor a name"):
        record_variety(edit)


def test_a_finished_line_is_named(edit, today, cross):
    row = raise_row(edit, cross, today=today)
    variety = name_as_variety(edit, row.plant, "Two Ways", today=today)
    assert (variety.plant, variety.kind, variety.fixation) == (row.plant, "variety", 1.0)
    (plant,) = raise_plants(edit, cross, 1, today=today)
    other = name_as_variety(edit, plant.plant, "Tall Ways", today=today)
    assert (other.plant, other.kind) == ("TW", "variety")
    assert edit.book.crosses[other.cross].seed_parent == plant.plant
    assert edit.book.plants[plant.plant].kind == "plant"
    with pytest.raises(Fault, match="is that of"):
        name_as_variety(edit, raise_row(edit, cross, today=today).plant, "two  ways", today=today)
    with pytest.raises(Fault, match="variety already"):
        name_as_variety(edit, "TP", "New", today=today)


def test_renaming_goes_everywhere(edit, today, cross):
    raise_plants(edit, cross, 1, today=today)
    rename_plant(edit, "TP", "Tarn")
    rename_cross(edit, cross, "first")
    assert edit.book.crosses["first"].seed_parent == "Tarn"
    assert edit.book.plants["24-01-01"].cross == "first"
    with pytest.raises(Fault, match="looks like 'BA'"):
        rename_plant(edit, "Tarn", "b a")


def test_plants_of_nothing_are_refused_with_what_is_wanted(edit, today):
    with pytest.raises(Fault, match="No cross, variety or family is named"):
        raise_plants(edit, count=3, today=today)


def test_seedlings_of_which_nothing_is_said_are_refused(edit, today, packet):
    row = record_sowing(edit, today=today, packet=packet, date="2025-03-01", seeds=5)
    with pytest.raises(Fault, match=f"Nothing is said of the seedlings of the sowing {row.sowing}"):
        record_seedlings(edit, row.sowing)
    assert edit.book.sowings[row.sowing] == row
