"""The Data Package folder: lossless, described in full, and safe."""

import csv
import json
import os
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.book.number_ranges import RANGES
from pedigreeview.book.records import (
    TABLES,
    Cross,
    Harvest,
    ParentFinding,
    Photo,
    Plant,
    PollenCandidate,
    columns,
)
from pedigreeview.exchange import data_package

DRAWN_BY_ANY = st.characters(exclude_categories=["Cs", "Cc"], exclude_characters="\ufffe\uffff")
TEXT = st.text(DRAWN_BY_ANY | st.sampled_from("\t\n\r\x7f\x85"), max_size=10)
NAME = st.text("abcAB1 -×é", min_size=1, max_size=6).map(str.strip).filter(bool)
REFERENCES = {
    "candidate": "plants",
    "pollen_parent": "plants",
    "sown_from": "plants",
    "pinned": "plants",
}


def cell(draw, record_type, column, keys):
    """A value for one column that breaks no rule; keys are those drawn before."""
    if column.kind == "flag":
        return (
            draw(st.booleans()) if column.default is True else draw(st.sampled_from([None, True]))
        )
    if column.kind == "whole":
        low, high = RANGES.get((record_type.TABLE, column.name), (0, 10**6))
        number = st.integers(low, high)
        return draw(number) if column.default == 0 else draw(st.none() | number)
    if column.kind == "number":
        if column.name in ("fixation", "odds"):
            number = st.floats(0, 0.2)
        else:
            number = st.floats(0, allow_nan=False, allow_infinity=False)
        return draw(number) if column.required else draw(st.none() | number)
    if column.kind == "date":
        return draw(st.sampled_from(["", "2021", "2021-05", "2021-05-17"]))
    if column.choices:
        return draw(st.sampled_from(column.choices if column.required else ("", *column.choices)))
    table = column.names or REFERENCES.get(column.name, "")
    if record_type.TABLE == "pollen_lots" and column.name == "plant":
        table = "plants"
    if table:
        known = keys[table]
        return draw(st.sampled_from(known if column.required else ["", *known]))
    return draw(NAME) if column.required else draw(TEXT)


@st.composite
def books(draw):
    """Books with every table filled, none of the rules broken."""
    book = Book()
    book.settings = BookSettings(
        name=draw(TEXT), crop=draw(TEXT), ploidy=draw(st.none() | st.integers(1, 8)),
        founders_as=draw(st.sampled_from(["", "plant"])), variety_fixation=draw(st.floats(0, 1)),
        double_reduction=draw(st.floats(0, 1 / 6)), outcrossing=draw(st.none() | st.floats(0, 1)),
        extra=draw(st.dictionaries(st.sampled_from(["k", "l,"]), TEXT.filter(bool))),
    )  # fmt: skip
    for key in ("name", "crop"):
        if not getattr(book.settings, key).strip():
            setattr(book.settings, key, "")
    keys = {name: draw(st.lists(NAME, min_size=1, max_size=3, unique=True)) for name in TABLES}
    for name, record_type in TABLES.items():
        count = len(keys[name])
        for index in range(count):
            values = {
                column.name: cell(draw, record_type, column, keys)
                for column in columns(record_type)
            }
            if record_type.KEY:
                values[record_type.KEY[0]] = keys[name][index]
            record = record_type(**values)
            extra = draw(st.dictionaries(st.sampled_from(["e", 'f"']), TEXT.filter(bool)))
            record.extra = extra
            if isinstance(record, Plant):
                record.raised = record.source = record.kind = ""
                record.fixation = None
                record.cross = keys["crosses"][0]
            elif isinstance(record, Cross):
                record.intended = record.pollen_parent = ""
            elif isinstance(record, PollenCandidate):
                record.cross, record.candidate = keys["crosses"][0], keys["plants"][0]
                if index:
                    continue
            elif isinstance(record, ParentFinding):
                record.plant, record.odds = keys["plants"][0], 0.1
            book.add(record)
    book.unknown_tables = draw(st.dictionaries(st.sampled_from(["weather", "w.tsv"]), TEXT))
    return book


def same(one, other):
    assert one.settings == other.settings
    assert list(one.records()) == list(other.records())
    assert one.unknown_tables == other.unknown_tables


@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck))
@given(book=books())
def test_book_to_folder_to_book(book, tmp_path_factory):
    folder = tmp_path_factory.mktemp("book")
    data_package.write(book, folder)
    back = data_package.read(folder)
    same(back, book)
    first = {path.name: path.read_bytes() for path in folder.iterdir()}
    data_package.write(back, folder)
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == first
    assert data_package.lost(book) == []


def small():
    book = Book()
    book.settings.name = "Two Peas"
    for record in (
        Plant("TP", kind="variety", extra={"colour": "white"}),
        Plant("BA", kind="variety"),
        Cross("21-01", "TP", "BA", intended="cross", made_on="2021-06"),
        Plant("21-01-1", cross="21-01", selfings=0),
        Plant("21-01-2", cross="21-01", selfings=2),
        Harvest("H1", "21-01", date="2021-08-01", seeds=24),
    ):
        book.add(record)
    return book


@pytest.fixture
def folder(tmp_path):
    path = tmp_path / "book"
    data_package.write(small(), path)
    return path


def described(folder):
    return json.loads((folder / "datapackage.json").read_text(encoding="utf-8"))


def change(folder, **changes):
    held = described(folder) | changes
    (folder / "datapackage.json").write_text(json.dumps(held))


def faults_of(folder):
    with pytest.raises(FileFaults) as caught:
        data_package.read(folder)
    assert all(fault.what.endswith(".") and fault.todo for fault in caught.value.faults)
    return caught.value.faults


def table(folder, name, text):
    """Replace one table of the folder and list it."""
    (folder / f"{name}.csv").write_text(text, encoding="utf-8")
    resources = described(folder)["resources"]
    if not any(item["name"] == name for item in resources):
        change(folder, resources=[*resources, {"name": name, "path": f"{name}.csv"}])


# What is written ---------------------------------------------------------------------------------


def test_the_descriptor(folder):
    held = described(folder)
    assert (held["profile"], held["name"], held["title"]) == (
        "tabular-data-package",
        "two-peas",
        "Two Peas",
    )
    by_name = {item["name"]: item for item in held["resources"]}
    assert list(by_name) == ["book", "plants", "crosses", "harvests"]
    schema = by_name["plants"]["schema"]
    fields = {item["name"]: item for item in schema["fields"]}
    assert schema["primaryKey"] == "plant"
    assert fields["plant"]["constraints"] == {"required": True, "unique": True}
    assert fields["kind"]["constraints"]["enum"] == ["variety", "plant", "family"]
    assert fields["fixation"] == {
        "name": "fixation", "type": "number", "constraints": {"minimum": 0, "maximum": 1},
    }  # fmt: skip
    assert fields["colour"] == {"name": "colour", "type": "string"}
    flag = {item["name"]: item for item in by_name["crosses"]["schema"]["fields"]}[
        "direction_known"
    ]
    assert (flag["type"], flag["trueValues"], flag["falseValues"]) == (
        "boolean",
        ["true"],
        ["false"],
    )
    foreign = {item["fields"]: item["reference"] for item in schema["foreignKeys"]}
    assert foreign == {
        "cross": {"resource": "crosses", "fields": "cross"},
        "source": {"resource": "", "fields": "plant"},
    }
    # A key into a table that is not in the folder is not declared: nothing could resolve it.
    harvests = by_name["harvests"]["schema"]["foreignKeys"]
    assert [item["fields"] for item in harvests] == ["cross"]


def test_the_schema_lists_the_headings_of_the_file(folder):
    for item in described(folder)["resources"]:
        heading = (folder / item["path"]).read_text(encoding="utf-8").splitlines()[0]
        assert heading.split(",") == [held["name"] for held in item["schema"]["fields"]]


def test_fit_for_git(folder):
    for path in folder.iterdir():
        data = path.read_bytes()
        assert b"\r" not in data
        assert data.endswith(b"\n")
        assert not data.startswith(b"\xef\xbb\xbf")
    lines = (folder / "plants.csv").read_text(encoding="utf-8").splitlines()
    assert lines[1].startswith("TP,,variety,")
    assert lines[3].startswith("21-01-1,,,,21-01,,,")
    assert (folder / "crosses.csv").read_text(encoding="utf-8").splitlines()[1] == (
        "21-01,TP,BA,,cross,true,2021-06,,,,"
    )


def test_an_empty_book(tmp_path):
    data_package.write(Book(), tmp_path / "b")
    assert sorted(os.listdir(tmp_path / "b")) == ["datapackage.json", "plants.csv"]
    assert not data_package.read(tmp_path / "b").plants


def test_a_table_that_is_no_longer_filled_goes(folder):
    book = data_package.read(folder)
    book.harvests.clear()
    (folder / "mine.txt").write_text("stays")
    data_package.write(book, folder)
    assert not (folder / "harvests.csv").exists()
    assert (folder / "mine.txt").read_text() == "stays"
    same(data_package.read(folder), book)


def test_what_others_wrote_into_the_descriptor_stays(folder):
    change(folder, licenses=[{"name": "CC0-1.0"}])
    data_package.write(data_package.read(folder), folder)
    assert described(folder)["licenses"] == [{"name": "CC0-1.0"}]


def test_unknown_tables_and_columns_come_back_as_they_were(folder):
    entry = {"name": "rain", "path": "rain.csv", "schema": {"fields": [{"name": "mm"}]}}
    change(folder, resources=[*described(folder)["resources"], entry])
    (folder / "rain.csv").write_bytes(b"mm\r\n3\r\n")
    book = data_package.read(folder)
    assert book.unknown_tables == {"rain": "mm\r\n3\r\n"}
    assert any("'rain' is not known" in remark for remark in book.remarks)
    assert any("'colour'" in remark for remark in book.remarks)
    data_package.write(book, folder)
    assert (folder / "rain.csv").read_bytes() == b"mm\r\n3\r\n"
    assert described(folder)["resources"][-1] == entry


def test_photos_go_along(folder, tmp_path):
    (folder / "photos").mkdir()
    (folder / "photos" / "a.jpg").write_bytes(b"picture")
    book = data_package.read(folder)
    book.add(Photo("a.jpg", "TP"))
    book.add(Photo("../secret", "TP"))
    (folder / "secret").write_text("x")
    data_package.write(book, tmp_path / "copy")
    assert (tmp_path / "copy" / "photos" / "a.jpg").read_bytes() == b"picture"
    assert os.listdir(tmp_path / "copy" / "photos") == ["a.jpg"]


def test_other_peoples_folders_are_left_alone(tmp_path):
    (tmp_path / "thesis.doc").write_text("mine")
    with pytest.raises(Fault, match="not empty"):
        data_package.write(small(), tmp_path)
    (tmp_path / "datapackage.json").write_text('{"profile": "other", "resources": []}')
    with pytest.raises(Fault, match="not empty"):
        data_package.write(small(), tmp_path)
    assert sorted(os.listdir(tmp_path)) == ["datapackage.json", "thesis.doc"]
    with pytest.raises(Fault, match="This is a file"):
        data_package.write(small(), tmp_path / "thesis.doc")
    with pytest.raises(Fault, match="cannot be written"):
        data_package.write(small(), tmp_path / "none" / "book")


def test_a_failed_writing_harms_nothing(folder, monkeypatch):
    before = {path.name: path.read_bytes() for path in folder.iterdir()}
    book = data_package.read(folder)
    book.plants["TP"].name = "new"

    def full(_descriptor):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(Fault, match="No space left"):
        data_package.write(book, folder)
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == before


# What can be wrong -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "path",
    ["../plants.csv", "/etc/passwd", "sub/plants.csv", "..", "a\\b.csv", "C:x.csv",
     "https://example.org/plants.csv", "file:plants.csv"],
)  # fmt: skip
def test_paths_that_lead_out(folder, path):
    resources = described(folder)["resources"]
    resources[3]["path"] = path
    change(folder, resources=resources)
    (fault,) = faults_of(folder)
    assert "no plain file name" in fault.what
    assert fault.where.file.endswith("datapackage.json")


def test_a_descriptor_full_of_nonsense(folder):
    nonsense = [{"name": [1], "path": {"a": 1}}, {"name": {}, "path": "\ud800.csv"}, None, []]
    change(folder, resources=[*described(folder)["resources"], *nonsense])
    assert len(faults_of(folder)) == 4
    # Still a folder of ours, so a sound book may be written over it.
    data_package.write(small(), folder)
    same(data_package.read(folder), small())


def test_a_link_in_a_circle(folder):
    (folder / "harvests.csv").unlink()
    (folder / "harvests.csv").symlink_to("harvests.csv")
    (fault,) = faults_of(folder)
    assert fault.where.file


@pytest.mark.parametrize("name", ["../x", "a/b", "..", "plants", "datapackage.json", "a\\b.csv"])
def test_further_tables_stay_in_the_folder(tmp_path, name):
    book = small()
    book.unknown_tables[name] = "a\n"
    with pytest.raises(Fault, match="cannot be a file of the folder"):
        data_package.write(book, tmp_path / "b")
    assert not os.listdir(tmp_path)


def test_links_that_lead_out(folder, tmp_path):
    (tmp_path / "outside.csv").write_text("harvest,cross\n")
    (folder / "harvests.csv").unlink()
    (folder / "harvests.csv").symlink_to(tmp_path / "outside.csv")
    (fault,) = faults_of(folder)
    assert "a link that leads out" in fault.what


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("{", "is no JSON"),
        ("[]", "no list 'resources'"),
        ('{"resources": 1}', "no list 'resources'"),
        ("[" * 100_000, "no JSON|nested too deeply"),
    ],
)
def test_descriptors_that_are_none(folder, text, says):
    (folder / "datapackage.json").write_text(text)
    with pytest.raises(Fault, match=says):
        data_package.read(folder)


def test_resources_that_are_none(folder):
    resources = described(folder)["resources"]
    change(folder, resources=[*resources, {"name": "x"}, 3, {"name": "plants", "path": "p.csv"}])
    assert [fault.what for fault in faults_of(folder)] == [
        "Resource 5 names no file.",
        "Resource 6 names no file.",
        "The table 'plants' is listed twice.",
    ]
    change(folder, resources=[{"name": "crosses", "path": "crosses.csv"}])
    assert any("lists no table 'plants'" in fault.what for fault in faults_of(folder))
    change(folder, resources=[*resources, {"name": "traits", "path": "traits.csv"}])
    assert faults_of(folder)[0].what == "There is no such file."


def test_a_file_that_is_not_listed_is_said(folder):
    (folder / "traits.csv").write_text("trait,type\n")
    remarks = data_package.read(folder).remarks
    assert any("'traits.csv' is not listed" in remark for remark in remarks)


def test_references_that_name_nothing(folder):
    table(folder, "harvests", "harvest,cross\nH1,21-1\nH2,zzzz\n")
    first, second = faults_of(folder)
    assert first.what == "The cross '21-1' is no cross of this book."
    assert first.todo == "Did you mean '21-01'?"
    assert (first.where.row, first.where.column) == (2, "cross")
    assert str(first.where).startswith("harvests.csv, row 2")
    assert second.todo == "Add it to crosses, or clear the cell."


@pytest.mark.parametrize(
    ("name", "text", "column"),
    [
        ("pollen_candidates", "cross,candidate,odds\n21-01,nobody,0.5\n", "candidate"),
        ("parent_findings", "plant,pollen_parent\n21-01-1,nobody\n", "pollen_parent"),
        ("pollen_lots", "pollen_lot,plant\nL,TP; nobody\n", "plant"),
        ("bookmarks", "name,pinned\nB,TP;nobody\n", "pinned"),
        ("sowings", "sowing,sown_from\nS,nobody\n", "sown_from"),
        ("scores", "plant,trait\nTP,none\n", "trait"),
    ],
)
def test_references_of_every_sort(folder, name, text, column):
    table(folder, name, text)
    assert column in [fault.where.column for fault in faults_of(folder)]


def test_references_that_are_right(folder):
    table(folder, "pollen_lots", "pollen_lot,plant\nL,TP; BA\n")
    table(folder, "sowings", "sowing,sown_from\nS,21-01\nT,TP\n")
    table(folder, "parent_findings", "plant,pollen_parent,odds\n21-01-1,self,\n21-01-2,,\n")
    assert data_package.read(folder).parent_findings[0].pollen_parent == "self"


@pytest.mark.parametrize(
    ("name", "text", "column", "what"),
    [
        ("plants", "plant,kind\nTP,Variety\nBA,\n", "kind", "not one of its words"),
        ("plants", "plant,ploidy\nTP,x\nBA,\n", "ploidy", "no whole number"),
        ("plants", "plant,fixation\nTP,2\nBA,\n", "fixation", "over 1"),
        ("plants", "plant,sown\nTP,1.5.2021\nBA,\n", "sown", "no date"),
        ("plants", "plant,name\nTP,\nBA,\n,x\n", "plant", "no plant"),
        ("plants", "plant\nTP\nBA\nTP\n", "plant", "stands in row 2 already"),
        ("plants", "plant,raised\nTP,seed_of\nBA,\n", "raised", "names no source"),
        ("plants", "plant,source\nTP,\nBA,TP\n", "raised", "has parents, so it is no founder"),
        ("plants", "plant,raised,source\nTP,,\nBA,cutting_of,TP\n", "source", "a pool of many"),
        ("plants", "plant\nTP\nBA\na:b\n", "plant", "':' or ';'"),
        ("plants", "plant,cross,source\nTP,,\nBA,21-01,TP\n", "source", "both a cross and a source"),  # noqa: E501
        ("plants", "code,name\nTP,\nBA,\n", "plant", "'plant' is missing"),
        ("crosses", "cross,seed_parent,direction_known\n21-01,TP,yes\n", "direction_known", "true"),
        ("crosses", "cross,seed_parent,pollen_parent,intended\n21-01,TP,BA,open\n", "intended", "open"),  # noqa: E501
        ("crosses", "cross,seed_parent,pollen_parent,intended\n21-01,TP,BA,selfing\n", "intended", "two"),  # noqa: E501
        ("crosses", "cross,seed_parent,pollen_parent\n21-01,TP,self\n", "pollen_parent", "no plant"),  # noqa: E501
        ("book", "key,value\nploidy,two\n", "value", "no whole number"),
        ("book", "key,value\nvariety_fixation,1.5\n", "value", "over 1"),
        ("book", "key,value\nfounders_as,plants\n", "value", "not one of its words"),
        ("book", "key,value\nname,a\nname,b\n", "key", "stands in row 2 already"),
        ("parent_findings", "plant,pollen_parent\nTP,BA\n", "plant", "came from no cross"),
        ("parent_findings", "plant,pollen_parent\n21-01-1,BA\n21-01-1,TP\n", "odds", "add up to 2"),
        ("harvests", "harvest,cross\nH,\n", "cross", "no cross"),
        ("harvests", "harvest,cross,seeds\nH,21-01,-3\n", "seeds", "negative"),
    ],
)  # fmt: skip
def test_bad_tables(folder, name, text, column, what):
    if name == "plants":
        (folder / "crosses.csv").write_text("cross,seed_parent,pollen_parent\n21-01,TP,BA\n")
    table(folder, name, text)
    found = faults_of(folder)
    assert any(fault.where.column == column and what in fault.what for fault in found), found


def test_a_key_of_two_columns(folder):
    (folder / "crosses.csv").write_text("cross,seed_parent\n21-01,TP\n")
    table(folder, "pollen_candidates", "cross,candidate,odds\n21-01,BA,0.2\n21-01,BA,0.3\n")
    (fault,) = faults_of(folder)
    assert fault.what == "'21-01' and 'BA' stand together in row 2 already."
    table(folder, "pollen_candidates", "cross,candidate,odds\n21-01,BA,0.2\n21-01,TP,0.9\n")
    assert "add up to 1.1" in faults_of(folder)[0].what


def test_all_faults_of_all_tables_at_once(folder):
    table(folder, "plants", "plant,kind\nTP,x\nBA,y\n21-01-1,\n")
    table(folder, "harvests", "harvest,cross,seeds\nH,21-01,x\nH,21-01,\n")
    assert len(faults_of(folder)) == 4


def test_free_text_is_kept_and_codes_are_trimmed(folder):
    table(folder, "plants", 'plant,note\n TP ," two\r\nlines "\nBA,\n21-01-1,\n21-01-2,\n')
    book = data_package.read(folder)
    assert book.plants["TP"].note == " two\r\nlines "


def test_semicolons_and_decimal_commas(folder):
    table(folder, "plants", "plant;fixation\nTP;0,5\nBA;\n21-01-1;\n21-01-2;\n")
    assert data_package.read(folder).plants["TP"].fixation == 0.5


def test_a_loop_is_no_fault(folder):
    (folder / "crosses.csv").write_text("cross,seed_parent,pollen_parent\n21-01,TP,21-01-1\n")
    assert data_package.read(folder).crosses["21-01"].pollen_parent == "21-01-1"


def test_no_cell_of_a_folder_runs_as_a_formula_and_each_comes_back(tmp_path: Path) -> None:
    names = ["=1+1", "'=1+1", "-twice", "+x", "@home", "\tindented", "'", "'plain", "-3.5"]
    book = Book()
    for at, name in enumerate(names):
        book.add(Plant(f"P{at}", kind="variety", name=name, extra={"own": name}))
    book.settings.extra["remark"] = "=cmd"
    data_package.write(book, tmp_path / "folder")
    texts = [(tmp_path / "folder" / name).read_text() for name in ("plants.csv", "book.csv")]
    with (tmp_path / "folder" / "plants.csv").open(newline="") as file:
        cells = [cell for row in csv.reader(file) for cell in row]
    assert [cell for cell in cells if cell[:1] in ("=", "+", "@", "\t")] == []
    assert {cell for cell in cells if cell[:1] == "-"} == {"-3.5"}
    assert "'=cmd" in texts[1]
    back = data_package.read(tmp_path / "folder")
    assert [plant.name for plant in back.plants.values()] == names
    assert [plant.extra["own"] for plant in back.plants.values()] == names
    assert back.settings.extra["remark"] == "=cmd"
