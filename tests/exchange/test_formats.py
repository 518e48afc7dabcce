"""Every format that holds a book: there and back, what it cannot carry, and hostile files."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.book.records import Cross, Plant, Pollination, Score, Trait
from pedigreeview.exchange import breeding_api, graph_files, graph_reading, passport, read_book
from pedigreeview.exchange.formats import (
    FORMATS,
    format_of_bytes,
    format_of_path,
    lost,
    read_bytes_as,
    to_bytes,
)
from pedigreeview.exchange.json_files import read_json
from pedigreeview.exchange.matrices import matrix, matrix_bytes, write_matrix
from pedigreeview.exchange.spreadsheet_writing import table_text, workbook_bytes
from pedigreeview.exchange.spreadsheets import read_table
from pedigreeview.network import PedigreeNetwork
from tests.exchange.test_table_writing import books as odd_books
from tests.network.random_books import books

GRAPHS = ("graphml", "gexf", "node-link")


def back(book: Book, name: str) -> Book:
    held = FORMATS[name]
    data = to_bytes(PedigreeNetwork.from_records(book), held)
    return read_bytes_as(data, held, "t")


def even(book: Book) -> Book:
    """The book with no plant of a single set, of which coefficients are not asked here."""
    for plant in book.plants.values():
        plant.ploidy = 2 if plant.ploidy == 1 else plant.ploidy
    return book


def odds(book: Book) -> list[tuple[str, str, float]]:
    return sorted((item.cross, item.candidate, item.odds) for item in book.pollen_candidates)


@settings(max_examples=25)
@given(books(most=12), st.sampled_from((*GRAPHS, "brapi")))
def test_plants_and_crosses_come_back(book: Book, name: str) -> None:
    found = back(book, name)
    assert found.plants == book.plants
    assert found.crosses == book.crosses
    assert odds(found) == odds(book)
    if name != "brapi":
        assert found.settings == book.settings
        assert sorted(map(str, found.parent_findings)) == sorted(map(str, book.parent_findings))
        assert lost(book, FORMATS[name]) == []
    elif book.parent_findings:
        assert "parent_findings" in " ".join(lost(book, FORMATS[name]))


@settings(max_examples=25)
@given(odd_books().map(even), st.sampled_from((*GRAPHS, "brapi", "xlsx")))
def test_odd_codes_and_texts_come_back(book: Book, name: str) -> None:
    found = back(book, name)
    assert found.plants == book.plants
    assert found.crosses == book.crosses


@settings(max_examples=20)
@given(books(most=10))
def test_a_spreadsheet_says_the_same_as_the_plant_table(book: Book) -> None:
    assert back(book, "xlsx").plants == back(book, "table").plants


@pytest.mark.parametrize("name", [name for name, held in FORMATS.items() if held.endings])
def test_every_format_is_told_by_its_ending_and_writes_the_same_bytes(name: str) -> None:
    held = FORMATS[name]
    assert all(format_of_path(f"a{ending}") is held for ending in held.endings)
    if not held.writes:
        with pytest.raises(Fault, match="read, but not written"):
            to_bytes(PedigreeNetwork.from_records(Book()), held)
        return
    book = Book()
    for record in (Plant("A"), Plant("B"), Cross("1", "A", "B"), Plant("C", cross="1")):
        book.add(record)
    net = PedigreeNetwork.from_records(book)
    data = to_bytes(net, held)
    if name != "book":
        assert to_bytes(net, held) == data
    if name in ("table", "xlsx", "brapi", "graphml", "gexf", "node-link", "book"):
        assert format_of_bytes(data, "t") is held
    if not held.reads:
        with pytest.raises(Fault, match="written only"):
            read_bytes_as(data, held, "t")


def test_what_is_not_carried_is_listed() -> None:
    book = Book()
    for record in (
        Plant("A", status="kept"), Cross("1", "A", "A"), Plant("B", cross="1"),
        Pollination("p", "1"), Trait("h", "measure"), Score("A", "h", value="1"),
    ):  # fmt: skip
        book.add(record)
    book.settings.name = "Mine"
    assert lost(book, FORMATS["brapi"]) == [
        "The table 'traits' with its 1 row.", "The table 'scores' with its 1 row.",
        "The book's settings name.",
    ]  # fmt: skip
    assert lost(book, FORMATS["graphml"])[0] == "The table 'pollinations' with its 1 row."
    said = lost(book, FORMATS["passport"])
    assert said[0] == "1 plant that is no founder: only founders have passport data."
    assert "What is said of founders under 'status'." in said
    assert lost(book, FORMATS["dot"]) == ["DOT is for drawing alone and is not read again."]


# The Breeding API -----------------------------------------------------------------------------


def test_the_answers_have_the_standard_s_fields() -> None:
    book = Book()
    for record in (
        Plant("A", name="Ash"), Plant("B"), Cross("1", "A", "B", made_on="2024-05-01"),
        Cross("2", "B", "B", intended="selfing", state="planned"), Plant("K", cross="1"),
        Pollination("p", "1", "2024-05-01", 4, set=2), Plant("C", raised="cutting_of", source="K"),
    ):  # fmt: skip
        book.add(record)
    document = json.loads(breeding_api.to_text(book))
    assert set(document) == set(breeding_api.QUESTIONS)
    crosses = document["crosses"]["result"]["data"]
    assert [cross["crossDbId"] for cross in crosses] == ["1"]
    assert crosses[0]["crossType"] == "BIPARENTAL"
    assert (crosses[0]["parent1"]["germplasmDbId"], crosses[0]["parent1"]["parentType"]) == (
        "A", "FEMALE",
    )  # fmt: skip
    assert crosses[0]["parent2"]["parentType"] == "MALE"
    assert crosses[0]["pollinationEvents"] == [
        {
            "pollinationNumber": "p",
            "pollinationSuccessful": True,
            "pollinationTimeStamp": "2024-05-01T00:00:00Z",
        }
    ]
    (planned,) = document["plannedcrosses"]["result"]["data"]
    assert (planned["plannedCrossDbId"], planned["status"], planned["crossType"]) == (
        "2", "TODO", "SELF",
    )  # fmt: skip
    nodes = {node["germplasmDbId"]: node for node in document["pedigree"]["result"]["data"]}
    assert [p["parentType"] for p in nodes["K"]["parents"]] == ["FEMALE", "MALE"]
    assert [p["parentType"] for p in nodes["C"]["parents"]] == ["CLONAL"]
    assert nodes["K"]["crossingYear"] == 2024
    plants = {plant["germplasmDbId"]: plant for plant in document["germplasm"]["result"]["data"]}
    assert plants["K"]["pedigree"] == "A/B"
    assert back(book, "brapi").pollinations == book.pollinations


def test_answers_of_others_are_read_alone_or_together() -> None:
    nodes = [
        {"germplasmDbId": "g3", "germplasmName": "Scout", "parents": [
            {"germplasmDbId": "g1", "parentType": "MALE"},
            {"germplasmDbId": "g2", "parentType": "FEMALE"}]},
        {"germplasmDbId": "g4", "germplasmName": "S1", "parents": [
            {"germplasmDbId": "g3", "parentType": "SELF"}]},
        {"germplasmDbId": "g5", "germplasmName": "g5", "parents": [
            {"germplasmDbId": "g3", "parentType": "POPULATION"},
            {"germplasmDbId": "g1", "parentType": "POPULATION"}]},
    ]  # fmt: skip
    for document in (nodes, {"result": {"data": nodes}}, {"pedigree": {"result": {"data": nodes}}}):
        book = breeding_api.parse(json.dumps(document))
        cross = book.crosses[book.plants["g3"].cross]
        assert (cross.seed_parent, cross.pollen_parent) == ("g2", "g1")
        assert book.plants["g3"].name == "Scout"
        assert book.crosses[book.plants["g4"].cross].intended == "selfing"
        assert not book.crosses[book.plants["g5"].cross].direction_known
    planned = {
        "plannedCrossDbId": "c1", "plannedCrossName": "my cross", "crossType": "BIPARENTAL",
        "status": "SKIPPED", "parent1": {"germplasmName": "Ash", "parentType": "MALE"},
        "parent2": {"germplasmName": "Moss", "parentType": "FEMALE"}, "additionalInfo": None,
    }  # fmt: skip
    cross = breeding_api.parse(json.dumps(planned)).crosses["c1"]
    assert (cross.seed_parent, cross.pollen_parent, cross.state) == ("Moss", "Ash", "skipped")
    germplasm = {"germplasmDbId": "7", "germplasmName": "Ash", "genus": "Pisum",
                 "biologicalStatusOfAccessionCode": "500"}  # fmt: skip
    event = {"pollinationTimeStamp": "2020-03-02T10:00:00Z", "pollinationSuccessful": True}
    made = {
        "crossDbId": "c",
        "crossType": "BIPARENTAL",
        "parent1": {"germplasmName": "Ash"},
        "parent2": {"germplasmDbId": "8"},
        "pollinationEvents": [event],
    }
    book = breeding_api.parse(json.dumps([germplasm, made]))
    assert (book.plants["7"].name, book.plants["7"].kind) == ("Ash", "variety")
    assert book.plants["7"].extra["genus"] == "Pisum"
    assert (book.crosses["c"].seed_parent, book.crosses["c"].direction_known) == ("7", False)
    assert [p.date for p in book.pollinations.values()] == ["2020-03-02"]


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("", "no JSON"), ("[1]", "other than objects"), ("7", "no answer"), ("{}", "neither"),
        ('{"a": NaN}', "NaN is no number"), ("[" * 200, "nested too deep"),
        ('{"crossDbId": "a:b"}', "1 fault"), ('[{"germplasmDbId": "A"}, {"germplasmDbId": "A"}]',
                                              "1 fault"),
        ('{"germplasmDbId": "' + "\\ud800" + '"}', "1 fault"),
    ],
)  # fmt: skip
def test_other_json_is_refused(text: str, what: str) -> None:
    with pytest.raises(Fault, match=what):
        breeding_api.parse(text)


JSON = st.recursive(
    st.none() | st.booleans() | st.integers(-3, 3) | st.sampled_from(["", "A", "B", "FEMALE"]),
    lambda inner: (
        st.lists(inner, max_size=3)
        | st.dictionaries(
            st.sampled_from(
                [
                    "germplasmDbId",
                    "crossDbId",
                    "plannedCrossDbId",
                    "parent1",
                    "parents",
                    "parentType",
                    "additionalInfo",
                    "crossingBook",
                    "extra",
                    "pollinationEvents",
                    "pollenCandidates",
                    "result",
                    "data",
                    "nodes",
                    "links",
                    "id",
                    "record",
                    "type",
                    "metadata",
                    "settings",
                ]
            ),
            inner,
            max_size=4,
        )
    ),
    max_leaves=14,
)


@settings(max_examples=120)
@given(JSON)
def test_any_json_is_read_or_refused(document: object) -> None:
    text = json.dumps(document)
    for name in ("brapi", "node-link"):
        try:
            assert isinstance(read_bytes_as(text.encode(), FORMATS[name], "t"), Book)
        except Fault:
            continue


# Passport data -----------------------------------------------------------------------------------


def test_founders_come_from_passport_data() -> None:
    text = (
        "INSTCODE,ACCENUMB,GENUS,CROPNAME,ACCENAME,ACQDATE,SAMPSTAT,ANCEST,DONORNAME,REMARKS\n"
        "ABC001,PI 12,Pisum,pea,Ash;Old Ash,201903--,300,Moss/Fern,Ann,tall\n"
        "ABC001,PI:13,Pisum,pea,,,416,,,\nABC001,PI 14,Pisum,,,,412,,,\n"
    )
    book = passport.parse(text.encode())
    plant = book.plants["PI 12"]
    assert (plant.name, plant.kind, plant.crop, plant.obtained_from, plant.note) == (
        "Ash;Old Ash", "variety", "pea", "Ann", "tall",
    )  # fmt: skip
    assert plant.extra["ACQDATE"] == "201903--"
    assert [p.kind for p in book.plants.values()] == ["variety", "plant", "family"]
    assert "The number 'PI:13' was read as 'PI-13'." in book.remarks
    again = passport.parse(table_text(passport.DESCRIPTORS, passport.rows(book)).encode())
    assert again.plants == book.plants
    with pytest.raises(Fault, match="no headings of passport data"):
        passport.parse(b"a,b\n1,2\n")
    with pytest.raises(FileFaults):
        passport.parse(b"ACCENUMB,GENUS,SAMPSTAT\n,Pisum,300\n")


@pytest.mark.parametrize(
    ("text", "date"),
    [("20190314", "2019-03-14"), ("201903--", "2019-03"), ("20190000", "2019"), ("2019", "2019"),
     ("20191314", ""), ("soon", "")],
)  # fmt: skip
def test_dates_of_passport_data(text: str, date: str) -> None:
    # Rule read: YYYYMMDD, hyphens or '00' where month or day is missing.
    assert passport.passport_date(text) == date


@settings(max_examples=25)
@given(odd_books().map(even))
def test_founders_come_back_from_passport_data(book: Book) -> None:
    found = back(book, "passport")
    founders = [p for p in book.plants.values() if book.raised(p) == "founder"]
    assert list(found.plants) == [plant.plant for plant in founders]
    for plant in founders:
        other = found.plants[plant.plant]
        assert (other.name, other.crop, other.note.strip()) == (
            plant.name, plant.crop, plant.note.strip(),
        )  # fmt: skip
        assert other.kind == book.kind(plant)


# Graphs ------------------------------------------------------------------------------------------


def small() -> PedigreeNetwork:
    book = Book()
    for record in (Plant("A"), Plant("B"), Cross("1", "A", "B"), Plant("C", cross="1")):
        book.add(record)
    return PedigreeNetwork.from_records(book)


def test_edges_that_were_changed_are_not_believed() -> None:
    document = json.loads(graph_files.node_link_text(small()))
    document["links"][0]["role"] = "pollen"
    with pytest.raises(Fault, match="do not fit its records"):
        graph_reading.parse(json.dumps(document).encode(), ".json", "t")
    document["links"].pop()
    with pytest.raises(Fault, match="do not fit its records"):
        graph_reading.parse(json.dumps(document).encode(), ".json", "t")


@pytest.mark.parametrize(
    ("suffix", "text", "what"),
    [
        (".graphml", '<!DOCTYPE x [<!ENTITY a "b">]><graphml/>', "document type or entities"),
        (".gexf", "<!doctype x><gexf/>", "document type or entities"),
        (".graphml", "<graphml", "cannot be read"),
        (".gexf", "<gexf/>", "cannot be read"),
        (".graphml", '<graphml xmlns="http://graphml.graphdrawing.org/xmlns"><graph '
         'edgedefault="directed"><node id="a"/></graph></graphml>', "not written by this program"),
        (".json", '{"nodes": [{"id": "a"}], "links": []}', "not written by this program"),
        (".json", '{"nodes": [{"id": 1}], "links": []}', "not written by this program"),
    ],
)  # fmt: skip
def test_graphs_of_others_are_refused(suffix: str, text: str, what: str) -> None:
    with pytest.raises(Fault, match=what):
        graph_reading.parse(text.encode(), suffix, "t")
    with pytest.raises(Fault, match="UTF-8"):
        graph_reading.parse(text.encode("utf-16"), ".graphml", "t")


@settings(max_examples=60)
@given(
    st.sampled_from(("graphml", "gexf", "node-link")),
    st.lists(st.tuples(st.integers(0, 4000), st.integers(0, 255)), min_size=1, max_size=4),
)
def test_damaged_graphs_are_read_or_refused(name: str, changes: list[tuple[int, int]]) -> None:
    data = bytearray(to_bytes(small(), FORMATS[name]))
    for at, byte in changes:
        data[at % len(data)] = byte
    try:
        read_bytes_as(bytes(data), FORMATS[name], "t")
    except Fault:
        return


def test_deep_json_in_a_text_is_no_depth() -> None:
    assert read_json('{"a": "[[[[' + "[" * 300 + '"}', "t") == {"a": "[" * 304}


# Matrices and reading by ending -------------------------------------------------------------------


@settings(max_examples=15)
@given(books(most=8))
def test_a_matrix_holds_the_coefficients(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    codes = list(net.codes)[::-1]
    for kind, ask in (("coancestry", net.coancestry), ("relationship", net.relationship)):
        held = matrix(net, codes, kind)
        for i, a in enumerate(codes):
            for j, b in enumerate(codes):
                if a in net.withheld or b in net.withheld:
                    assert np.isnan(held[i, j])
                    continue
                expected = ask(a, b)
                if expected is None:
                    assert np.isnan(held[i, j])
                elif a != b or not book.is_pool(book.plants[a]):
                    assert held[i, j] == pytest.approx(expected, abs=1e-12)


def test_matrix_files(tmp_path: Path) -> None:
    net = small()
    assert matrix_bytes(net, ["C", "A"], ".csv") == b"coancestry,C,A\nC,0.5,0.5\nA,0.5,1\n"
    (table, base) = read_table(matrix_bytes(net, ["C", "A"], ".xlsx"), "m.xlsx").tables
    assert table.rows[1] == (2, ["C", 0.5, 0.5])
    assert "founders" in str(base.rows[1][1][0])
    write_matrix(net, tmp_path / "m.npz", ["C", "A"], "numerator")
    with np.load(tmp_path / "m.npz", allow_pickle=False) as held:
        assert held["codes"].tolist() == ["C", "A"]
        assert held["matrix"].tolist() == [[1.0, 1.0], [1.0, 2.0]]
        assert str(held["base"]) == net.base_sentence()
    with pytest.raises(Fault, match=r"ends in \.doc"):
        matrix_bytes(net, ["A"], ".doc")


def test_read_book_opens_what_it_knows(tmp_path: Path) -> None:
    net = small()
    for name in ("xlsx", "brapi", "graphml", "gexf", "node-link", "passport"):
        path = tmp_path / f"b{FORMATS[name].endings[0]}"
        path.write_bytes(to_bytes(net, FORMATS[name]))
        assert "A" in read_book(path).plants
        assert read_book(path, founders_as="plant").settings.founders_as == "plant"
    plain = tmp_path / "b.json"
    plain.write_text(breeding_api.to_text(net.book), encoding="utf-8")
    assert set(read_book(plain).plants) == {"A", "B", "C"}
    foreign = tmp_path / "f.xlsx"
    foreign.write_bytes(workbook_bytes([("S", ["Mother"], [["A"]])]))
    with pytest.raises(Fault, match="No sheet of the file has the headings"):
        read_book(foreign)
