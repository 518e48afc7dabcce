"""The demo books are what their script makes, and their records hang together."""

from __future__ import annotations

import json
from pathlib import Path

import make_demos
import newcomers_table
import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.dates import is_date, surely_before
from pedigreeview.book.problems import counts_as_problem
from pedigreeview.book.records import SELF, TABLES, columns
from pedigreeview.exchange import data_package, plant_table
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo, demos

_KEYED = ("pollinations", "harvests", "packets", "sowings", "traits", "loci", "pollen_lots")
_SHOWS = {
    "Le": ("height", "tall", "dwarf"),
    "A": ("flower", "purple", "white"),
    "Gp": ("pod", "green", "yellow"),
    "C": ("leaf", "regular", "potato"),
    "E": ("eye", "eye", "no eye"),
}
"""Trait of each gene that is scored on the plant, with its dominant and its recessive value."""

SCENARIOS = pytest.mark.parametrize("scenario", make_demos.SCENARIOS, ids=lambda s: s.FOLDER)


def _files(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def _true_book(scenario) -> Book:
    """The book without an error that was planted."""
    book = scenario.build()
    if hasattr(scenario, "mend"):
        scenario.mend(book)
    return book


def test_script_writes_the_shipped_demos_byte_for_byte(tmp_path):
    make_demos.write_all(tmp_path)
    assert _files(tmp_path) == _files(demos())


@SCENARIOS
def test_package_says_whose_book_it_is(scenario):
    package = json.loads((demo(scenario.FOLDER) / "datapackage.json").read_text(encoding="utf-8"))
    assert package["title"] == scenario.build().settings.name


@SCENARIOS
def test_every_code_that_is_named_is_recorded(scenario):
    book = data_package.read(demo(scenario.FOLDER))
    known = {name: set(getattr(book, name)) for name in ("plants", "crosses", *_KEYED)}
    missing = [
        (table, column.name, code)
        for table, record_type in TABLES.items()
        for column in columns(record_type)
        if column.names
        for record in book.table(table)
        if (code := getattr(record, column.name)) and code not in known[column.names]
    ]
    assert missing == []
    named = {row.pollen_parent for row in book.parent_findings} - {"", SELF}
    named |= {row.candidate for row in book.pollen_candidates} - {SELF}
    for row in book.pollen_lots.values():
        named |= set(row.plant.split(";"))
    for row in book.bookmarks.values():
        named |= set(filter(None, row.pinned.split(";")))
    assert named <= known["plants"]
    assert {row.sown_from for row in book.sowings.values()} - {""} <= known["plants"]
    about = {"plant": "plants", "cross": "crosses"}
    for note in book.notes:
        kind, _, code = note.about.partition(" ")
        assert code in known[about[kind]]


@SCENARIOS
def test_every_date_is_one(scenario):
    wrong = [
        (table, column.name, text)
        for table, record_type in TABLES.items()
        for column in columns(record_type)
        if column.kind == "date"
        for record in data_package.read(demo(scenario.FOLDER)).table(table)
        if (text := getattr(record, column.name)) and not is_date(text)
    ]
    assert wrong == []


@SCENARIOS
def test_parents_are_sown_before_they_are_used_and_progeny_after(scenario):
    book = _true_book(scenario)
    sown = {code: plant.sown for code, plant in book.plants.items()}
    for cross in book.crosses.values():
        for parent in filter(None, (cross.seed_parent, cross.pollen_parent)):
            assert not surely_before(cross.made_on, sown[parent]), (cross.cross, parent)
    for plant in book.plants.values():
        if plant.cross:
            assert surely_before(book.crosses[plant.cross].made_on, plant.sown), plant.plant
        if plant.source:
            assert not surely_before(plant.sown, sown[plant.source]), plant.plant


@SCENARIOS
def test_work_goes_from_flower_to_fruit_to_packet_to_row(scenario):
    book = _true_book(scenario)
    for row in book.pollinations.values():
        cross = book.crosses[row.cross]
        assert not surely_before(row.date, cross.made_on)
        assert not surely_before(row.date, row.emasculated_on)
        if row.pollen_lot:
            assert not surely_before(row.date, book.pollen_lots[row.pollen_lot].collected)
            assert book.pollen_lots[row.pollen_lot].plant == cross.pollen_parent
    for harvest in book.harvests.values():
        assert surely_before(book.crosses[harvest.cross].made_on, harvest.date)
        assert book.packets[harvest.packet].harvest == harvest.harvest
    for packet in book.packets.values():
        assert packet.borne_on == book.crosses[book.harvests[packet.harvest].cross].seed_parent
    for sowing in book.sowings.values():
        if sowing.packet:
            harvest = book.harvests[book.packets[sowing.packet].harvest]
            assert surely_before(harvest.date, sowing.date)


@SCENARIOS
def test_seeds_and_plants_add_up(scenario):
    book = _true_book(scenario)
    taken: dict[str, int] = {}
    up: dict[str, int] = {}
    for sowing in book.sowings.values():
        assert sowing.seeds >= sowing.up >= sowing.kept
        if sowing.packet:
            taken[sowing.packet] = taken.get(sowing.packet, 0) + sowing.seeds
            cross = book.harvests[book.packets[sowing.packet].harvest].cross
            up[cross] = up.get(cross, 0) + sowing.up
    for code, packet in book.packets.items():
        assert packet.left == packet.seeds - taken.get(code, 0)
    for row in book.pollinations.values():
        assert row.flowers >= row.set >= row.dropped
    singles: dict[str, int] = {}
    for plant in book.plants.values():
        if plant.cross and plant.kind == "plant":
            singles[plant.cross] = singles.get(plant.cross, 0) + 1
    for cross, count in singles.items():
        assert count == up[cross], cross
    for cross in {row.cross for row in book.pollinations.values()}:
        taken_off = sum(r.fruits for r in book.harvests.values() if r.cross == cross)
        rows = [row for row in book.pollinations.values() if row.cross == cross]
        assert taken_off == sum(row.set - row.dropped for row in rows), cross


@SCENARIOS
def test_scores_fall_in_the_life_of_their_plant_and_within_the_scale(scenario):
    book = _true_book(scenario)
    for score in book.scores:
        trait = book.traits[score.trait]
        assert not surely_before(score.date, book.plants[score.plant].sown), score
        if trait.type in ("score", "measure"):
            value = float(score.value)
            assert trait.low is None or value >= trait.low
            assert trait.high is None or value <= trait.high
        else:
            assert score.value in trait.values.split(";")


@SCENARIOS
def test_genotypes_fit_what_is_seen(scenario):
    book = _true_book(scenario)
    seen = {(score.plant, score.trait): score.value for score in book.scores}
    for row in book.genotypes:
        best, least = book.loci[row.locus].alleles.split(";")
        alleles = row.genotype.split("/")
        assert set(alleles) <= {best, least}, row
        if row.locus in _SHOWS:
            trait, dominant, recessive = _SHOWS[row.locus]
            wanted = dominant if best in alleles else recessive
            assert seen.get((row.plant, trait), wanted) == wanted, row


@SCENARIOS
def test_two_recessive_parents_give_no_dominant_plant(scenario):
    book = _true_book(scenario)
    seen = {(score.plant, score.trait): score.value for score in book.scores}
    found_out = {row.plant for row in book.parent_findings}
    tested = 0
    for plant in book.plants.values():
        if not plant.cross or plant.plant in found_out:
            continue
        cross = book.crosses[plant.cross]
        for trait, dominant, recessive in _SHOWS.values():
            parents = [seen.get((code, trait)) for code in (cross.seed_parent, cross.pollen_parent)]
            if parents == [recessive, recessive]:
                tested += 1
                assert seen.get((plant.plant, trait)) != dominant, (plant.plant, trait)
    assert tested or scenario.FOLDER != "two_peas_both_ways"


@SCENARIOS
def test_every_page_has_something_to_show(scenario):
    book = scenario.build()
    optional = {"pollen_candidates", "accepted_checks", "photos"}
    assert [name for name in TABLES if name not in optional and not book.table(name)] == []
    assert {plant.status for plant in book.plants.values()} >= {"growing", "kept", "culled"}


def test_newcomers_table_opens_and_its_founders_say_nothing():
    book = plant_table.read(demo(newcomers_table.FILE))
    assert len(book.plants) == 26
    assert book.silent_founders() == ["Lantern", "Horn", "Plum"]
    net = PedigreeNetwork.from_records(book)
    (pair,) = [pair for pair in net.reciprocal_pairs() if pair.level == "plant"]
    assert pair.parents == ("Lantern", "Horn")
    assert net.generation_name("BC1") == "BC1F1"
    assert net.inbreeding("LH2-2-2-1") == 7 / 8
    assert net.loops() == []
    # The one open-pollinated plant, of a crop that the table does not name.
    wrong = [problem for problem in net.problems() if counts_as_problem(problem)]
    assert {code for problem in wrong for code in problem.plants} <= {"Odd", "Plum"}


def test_nothing_but_the_demos_lies_beside_them():
    names = {scenario.FOLDER for scenario in make_demos.SCENARIOS} | {newcomers_table.FILE}
    assert {path.name for path in demos().iterdir()} == names
