"""Everything wrong with a folder or a table is listed at once, and nothing that only follows."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange import data_package, plant_table

HEAD = "plant,seed_parent,pollen_parent"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    book = Book()
    for record in (
        Plant("TP", kind="variety"),
        Plant("BA", kind="variety"),
        Cross("X", "TP", "BA"),
        Plant("P", cross="X"),
    ):
        book.add(record)
    path = tmp_path / "book"
    data_package.write(book, path)
    return path


def put(folder: Path, name: str, text: str) -> None:
    """Put a table in the folder and list it."""
    (folder / f"{name}.csv").write_text(text, encoding="utf-8")
    held = json.loads((folder / "datapackage.json").read_text(encoding="utf-8"))
    if not any(item["name"] == name for item in held["resources"]):
        held["resources"].append({"name": name, "path": f"{name}.csv"})
    (folder / "datapackage.json").write_text(json.dumps(held), encoding="utf-8")


def of_folder(folder: Path) -> list[Fault]:
    with pytest.raises(FileFaults) as caught:
        data_package.read(folder)
    return caught.value.faults


def of_table(text: str) -> list[Fault]:
    with pytest.raises(FileFaults) as caught:
        plant_table.parse(text, "t.csv")
    return caught.value.faults


def places(faults: list[Fault]) -> list[tuple[str, int | None, str]]:
    return [(Path(f.where.file).stem, f.where.row, f.where.column) for f in faults]


# Selfings of a folder -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("parents", "candidates", "what"),
    [
        (",", "", "names no parent"),
        ("TP,BA", "", "has two parents"),
        ("TP,", "X,BA,1", "other than a certain 'self'"),
        ("TP,", "X,self,0.9", "other than a certain 'self'"),
        ("TP,", "X,self,0.5\nX,BA,0.5", "other than a certain 'self'"),
    ],
)
def test_what_is_no_selfing(folder: Path, parents: str, candidates: str, what: str) -> None:
    put(folder, "crosses", f"cross,seed_parent,pollen_parent,intended\nX,{parents},selfing\n")
    put(folder, "pollen_candidates", f"cross,candidate,odds\n{candidates}\n")
    (fault,) = of_folder(folder)
    assert what in fault.what
    assert places([fault]) == [("crosses", 2, "intended")]


@pytest.mark.parametrize(
    ("parents", "candidates"),
    [("TP,TP", ""), ("TP,", ""), (",TP", ""), ("TP,", "X,self,1"), ("TP,", "X,TP,1")],
)
def test_what_is_a_selfing(folder: Path, parents: str, candidates: str) -> None:
    put(folder, "crosses", f"cross,seed_parent,pollen_parent,intended\nX,{parents},selfing\n")
    put(folder, "pollen_candidates", f"cross,candidate,odds\n{candidates}\n")
    assert data_package.read(folder).crosses["X"].intended == "selfing"


# Ranges -------------------------------------------------------------------------------------------


def test_the_schema_states_the_ranges(folder: Path) -> None:
    held = json.loads((folder / "datapackage.json").read_text(encoding="utf-8"))
    plants = next(item for item in held["resources"] if item["name"] == "plants")
    fields = {item["name"]: item.get("constraints") for item in plants["schema"]["fields"]}
    assert fields["selfings"] == {"minimum": 0, "maximum": 1000}
    assert fields["ploidy"] == {"minimum": 1, "maximum": 64}
    put(folder, "book", "key,value\nploidy,65\n")
    assert "over 64" in of_folder(folder)[0].what


# Characters ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("sign", ["\x07", "\x0b", "\ufffe", "\uffff", "\x1b"])
@pytest.mark.parametrize("column", ["name", "note", "crop", "colour", "plant", "cross"])
def test_characters_that_no_picture_can_show(folder: Path, sign: str, column: str) -> None:
    held = {"plant": "A", "seed_parent": "B", "pollen_parent": "C", column: f"x{sign}y"}
    table = ",".join(held) + "\n" + ",".join(held.values()) + "\n"
    (fault,) = of_table(table)
    assert (fault.where.row, fault.where.column) == (2, column)
    assert f"U+{ord(sign):04X}" in fault.what
    assert "xy" in fault.todo or "x y" in fault.todo
    if column == "cross":
        return
    table = f"plant,cross,{column}\nTP,,x{sign}y\nBA,,\nP,X,\n"
    if column == "plant":
        table = f"plant,cross\nTP,\nBA,\nP,X\nx{sign}y,\n"
    put(folder, "plants", table)
    (fault,) = of_folder(folder)
    assert f"U+{ord(sign):04X}" in fault.what
    assert fault.where.column == column


def test_half_a_surrogate_pair() -> None:
    (fault,) = of_table(f"{HEAD},note\nA,,,x\ud800\n")
    assert "U+D800" in fault.what


def test_headings_and_settings_with_such_characters(folder: Path) -> None:
    assert places(of_table(f"{HEAD},a\x07b\nA,,,\n")) == [("t", 1, "a\x07b")]
    put(folder, "book", "key,value\nname,a\x07b\nmine,\x08\n")
    assert places(of_folder(folder)) == [("book", 2, "value"), ("book", 3, "value")]


def test_tabs_and_line_ends_stay(folder: Path) -> None:
    book = plant_table.parse(f'{HEAD},note\nA,,,"x\ty\nz"\n', "t.csv")
    assert book.plants["A"].note == "x\ty\nz"


def test_a_large_table_says_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    text = f"{HEAD},note\nA,,,\nB,A,A,x\x07\n"
    small = [fault.sentence() for fault in of_table(text)]
    monkeypatch.setattr(plant_table, "COLUMNS_FROM", 0)
    assert [fault.sentence() for fault in of_table(text)] == small


# All at once --------------------------------------------------------------------------------------


def test_a_bad_cell_hides_no_other_rule_of_its_row() -> None:
    found = of_table(f"{HEAD},raised,selfings,sown\nA,,,seed_of,2,yesterday\n")
    assert {fault.where.column for fault in found} == {"raised", "selfings", "sown"}
    found = of_table(f"{HEAD},pollen_odds,fixation,status\nA,S,,B:0.9; C:0.8,0.5,gone\n")
    assert {fault.where.column for fault in found} == {"pollen_odds", "fixation", "status"}


def test_a_bad_cell_of_the_source_hides_nothing_that_does_not_follow() -> None:
    text = f"{HEAD},kind,raised,sown\nV,,,variety,,never\nA,V,,,cutting_of,\n"
    assert places(of_table(text)) == [("t", 2, "sown"), ("t", 3, "seed_parent")]
    text = f"{HEAD},kind,raised\nV,,,varity,\nA,V,,,cutting_of\n"
    assert places(of_table(text)) == [("t", 2, "kind")]


def test_a_row_with_a_blank_or_repeated_code_is_looked_at() -> None:
    found = of_table(f"{HEAD},fixation\nA,,,\n,,,2\nA,,,3\nA,,,3\n,B,x:y,\n")
    assert places(found) == [
        ("t", 3, "plant"),
        ("t", 3, "fixation"),
        ("t", 4, "plant"),
        ("t", 4, "fixation"),
        ("t", 5, "plant"),
        ("t", 5, "fixation"),
        ("t", 6, "plant"),
        ("t", 6, "pollen_parent"),
    ]


def test_a_missing_column_hides_no_fault_of_the_others() -> None:
    found = of_table("plant,fixation,selfings,raised\nA,2,x,cross\nA,,,\n")
    assert places(found) == [
        ("t", 1, "seed_parent"),
        ("t", 1, "pollen_parent"),
        ("t", 2, "selfings"),
        ("t", 2, "fixation"),
        ("t", 3, "plant"),
    ]
    found = of_table("seed_parent,pollen_parent,fixation\nA:B,,2\n")
    assert places(found) == [("t", 1, "plant"), ("t", 2, "fixation"), ("t", 2, "seed_parent")]


def test_the_same_in_a_folder(folder: Path) -> None:
    put(folder, "plants", "plant,cross,fixation,selfings,sown\nTP,,2,3,\nBA,,,,\nP,X,,,\n,zz,5,,\n"
        "TP,yy,,,never\n")  # fmt: skip
    assert sorted(places(of_folder(folder))) == [
        ("plants", 2, "fixation"),
        ("plants", 2, "selfings"),
        ("plants", 5, "cross"),
        ("plants", 5, "fixation"),
        ("plants", 5, "plant"),
        ("plants", 6, "cross"),
        ("plants", 6, "plant"),
        ("plants", 6, "sown"),
    ]


def test_a_missing_column_of_a_folder(folder: Path) -> None:
    put(folder, "harvests", "harvest,seeds,packet\nH,x,nothing\nK,-1,\n")
    assert places(of_folder(folder)) == [
        ("harvests", 1, "cross"),
        ("harvests", 2, "seeds"),
        ("harvests", 3, "seeds"),
        ("harvests", 2, "packet"),
    ]
    # Without their codes the crosses cannot be told, so nothing is said of what names them.
    put(folder, "harvests", "harvest,cross\nH,X\n")
    put(folder, "crosses", "code,drawn\nX,twice\n")
    assert places(of_folder(folder)) == [("crosses", 1, "cross"), ("crosses", 2, "drawn")]


def test_a_blank_needed_cell_does_not_take_the_row_away(folder: Path) -> None:
    put(folder, "harvests", "harvest,cross\nH,\n")
    put(folder, "packets", "packet,harvest\nK,H\n")
    assert places(of_folder(folder)) == [("harvests", 2, "cross")]


def test_a_table_that_cannot_be_read_makes_no_other_faults(folder: Path) -> None:
    put(folder, "crosses", 'cross,seed_parent\n"X,TP\n')
    assert places(of_folder(folder)) == [("crosses", 2, "")]
    (folder / "crosses.csv").unlink()
    assert places(of_folder(folder)) == [("crosses", None, "")]


# Crosses without a code ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("parents", "usual"), [("A,B", "one"), ("A,", "each"), ("A,A", "one"), ("A,A", "each")]
)
def test_a_blank_and_the_usual_word_share_a_cross(parents: str, usual: str) -> None:
    for words in (("", usual), (usual, "")):
        book = plant_table.parse(
            f"{HEAD},drawn\nC,{parents},{words[0]}\nD,{parents},{words[1]}\n", "t.csv"
        )
        (cross,) = book.crosses.values()
        assert cross.drawn == usual
        assert book.plants["C"].cross == book.plants["D"].cross == cross.cross


def test_two_words_for_the_same_parents_want_codes() -> None:
    text = f"{HEAD},drawn,cross\nC,A,B,one,{{}}\nE,A,B,,\nD,A,B,each,{{}}\n"
    (fault,) = of_table(text.format("", ""))
    assert places([fault]) == [("t", 4, "drawn")]
    assert "row 2" in fault.what
    assert "cross" in fault.todo
    assert len(plant_table.parse(text.format("21-1", "21-2"), "t.csv").crosses) == 3
