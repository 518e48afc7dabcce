"""What the long run found, each by itself; other finds stand with the tests of their own module."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest

from pedigreeview.book.book import BookSettings
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.file_faults import BookDamaged
from pedigreeview.book.rescue import rescue
from pedigreeview.exchange import breeding_api, data_package, pedbook
from pedigreeview.exchange.import_plan import guess_plan
from pedigreeview.exchange.importing import carry_out
from pedigreeview.exchange.spreadsheets import read_table
from pedigreeview.network import PedigreeNetwork
from tests.book.garden import garden, raw


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, garden()).close()
    return path


def test_a_head_of_a_format_that_is_none(path: Path, tmp_path: Path) -> None:
    data = bytearray(path.read_bytes())
    # The format that a reader must know (sqlite.org/fileformat.html, from memory).
    data[18:20] = b"\x09\x09"
    path.write_bytes(data)
    with pytest.raises(BookDamaged):
        BookFile.open(path)
    found = rescue(path, tmp_path / "new.pedbook")
    assert found.came["plants"] == 4
    assert any("head" in said for said in found.lost)


def test_odds_of_a_selfing_whose_seed_parent_was_lost(path: Path, tmp_path: Path) -> None:
    with raw(path) as other:
        other.execute("PRAGMA ignore_check_constraints = ON")
        other.execute("UPDATE crosses SET seed_parent = '' WHERE \"cross\" = 'Y'")
    found = rescue(path, tmp_path / "new.pedbook")
    assert any("selfing of 'Y'" in said for said in found.lost)
    book = pedbook.read(tmp_path / "new.pedbook")
    assert [item.candidate for item in book.pollen_candidates] == ["W"]
    # What came over can be written and read again anywhere.
    pedbook.write_folder(book, tmp_path / "folder")
    assert list(data_package.read(tmp_path / "folder").plants) == list(book.plants)


@pytest.mark.parametrize("version", [1, 2])
def test_an_older_book_is_written_to_a_new_file_with_its_photos(
    version: int, tmp_path: Path, root: Path
) -> None:
    stored = tmp_path / "old.pedbook"
    shutil.copyfile(root / "tests" / "book" / "data" / f"version_{version}.pedbook", stored)
    before = stored.read_bytes()
    book = pedbook.read(stored)
    assert book.files
    pedbook.write(book, tmp_path / "new.pedbook").close()
    assert stored.read_bytes() == before
    with (
        BookFile.open(stored, read_only=True, backups=False) as old,
        BookFile.open(tmp_path / "new.pedbook", backups=False) as new,
    ):
        assert list(new.book.files) == list(old.book.files)
        for name in old.book.files:
            assert new.file(name) == old.file(name)
        assert new.book.plants == old.book.plants


def test_a_trait_of_a_column_without_a_heading() -> None:
    sheets = read_table(b"plant,seed_parent,\nA,,3\nB,,4\n", "t.csv")
    plan = guess_plan(sheets).meaning(2, "trait")
    book = carry_out(sheets, plan).book
    assert list(book.traits) == ["Column 3"]
    assert [score.trait for score in book.scores] == ["Column 3", "Column 3"]


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("variety_fixation", 1.5), ("variety_fixation", True), ("plant_fixation", -0.1),
        ("ploidy", 2.5), ("ploidy", 0), ("crop", 7), ("founders_as", "tree"), ("outcrossing", "x"),
        ("double_reduction", 10**400),
    ],
)  # fmt: skip
def test_settings_that_cannot_be_are_left_out(name: str, value: object) -> None:
    document = json.loads(breeding_api.to_text(garden()))
    settings = document["germplasm"]["metadata"]["additionalInfo"]["settings"]
    settings |= {"outcrossing": 0.25, name: value}
    read = breeding_api.parse(json.dumps(document)).settings
    assert getattr(read, name) == getattr(BookSettings(), name)
    assert read.outcrossing == (None if name == "outcrossing" else 0.25)


@pytest.mark.parametrize(
    ("version", "statement"),
    [
        (0, "UPDATE plants SET \"cross\" = 'gone' WHERE plant = 'A'"),
        (0, "DELETE FROM crosses WHERE \"cross\" = 'X'"),
        (0, "UPDATE scores SET trait = 'gone'"),
        (99, "DROP TABLE about"),
        (99, "UPDATE plants SET \"cross\" = 'gone' WHERE plant = 'A'"),
    ],
)
def test_a_book_that_lacks_what_it_names_is_damaged(
    version: int, statement: str, path: Path, tmp_path: Path
) -> None:
    with raw(path) as other:
        other.execute("PRAGMA foreign_keys = OFF")
        other.execute(statement)
        if version:
            other.execute(f"PRAGMA user_version = {version}")
    before = path.read_bytes()
    with pytest.raises(BookDamaged) as caught:
        BookFile.open(path)
    assert "rescue" in caught.value.ways
    assert path.read_bytes() == before
    assert rescue(path, tmp_path / "new.pedbook").came["plants"] == 4
    BookFile.open(tmp_path / "new.pedbook", backups=False).close()


def test_an_older_book_with_a_cell_that_no_longer_fits(tmp_path: Path, root: Path) -> None:
    stored = tmp_path / "old.pedbook"
    shutil.copyfile(root / "tests" / "book" / "data" / "version_1.pedbook", stored)
    with raw(stored) as other:
        other.execute("PRAGMA ignore_check_constraints = ON")
        other.execute("UPDATE plants SET sown = 'in May'")
    before = stored.read_bytes()
    with pytest.raises(BookDamaged):
        BookFile.open(stored, backups=False)
    assert stored.read_bytes() == before
    assert any("sown" in said for said in rescue(stored, tmp_path / "new.pedbook").lost)


def test_a_name_longer_than_any_file_has(tmp_path: Path) -> None:
    pedbook.write_folder(garden(), tmp_path / "folder")
    place = tmp_path / "folder" / "datapackage.json"
    document = json.loads(place.read_text("utf-8"))
    document["resources"].append({"name": "x", "path": "é" * 200 + ".csv"})
    place.write_text(json.dumps(document), "utf-8")
    book = data_package.read(tmp_path / "folder")
    assert any("no plain file" in remark for remark in book.remarks)
    data_package.write(book, tmp_path / "other")


@pytest.mark.parametrize("raised", ["seed_of", "cutting_of", "doubled_haploid_of", "cross"])
def test_a_plant_whose_source_was_lost(raised: str, path: Path, tmp_path: Path) -> None:
    with raw(path) as other:
        other.execute("PRAGMA foreign_keys = OFF")
        other.execute("PRAGMA ignore_check_constraints = ON")
        other.execute(
            "UPDATE plants SET raised = ?, \"cross\" = NULL, source = NULL WHERE plant = 'A'",
            (raised,),
        )
    with BookFile.open(path, backups=False) as file:
        net = PedigreeNetwork.from_records(file.book)
    # Its ancestry is not known, and nothing else follows.
    assert net.founder_shares("A") == {"A": 1.0}
    found = rescue(path, tmp_path / "new.pedbook")
    assert any("what it came from was lost" in said for said in found.lost)
    assert pedbook.read(tmp_path / "new.pedbook").plants["A"].raised == ""
