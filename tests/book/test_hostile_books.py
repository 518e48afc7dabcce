"""Files made to do harm: nothing in them runs, and nothing unknown is opened for writing."""

from __future__ import annotations

from pathlib import Path

import pytest

from pedigreeview.book import connections
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.file_faults import BookDamaged, FileFault, NotABook, StrangeBook
from pedigreeview.book.records import Plant
from pedigreeview.book.rescue import rescue
from tests.book.garden import content, garden, raw


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, garden()).close()
    return path


def harm(path: Path, *statements: str) -> None:
    with raw(path) as other:
        other.execute("PRAGMA foreign_keys = OFF")
        other.execute("PRAGMA writable_schema = ON")
        for statement in statements:
            other.execute(statement)


STRANGE = {
    "trigger": ["CREATE TRIGGER t AFTER INSERT ON plants BEGIN DELETE FROM crosses; END"],
    "view": ["CREATE VIEW v AS SELECT 1"],
    "view in the place of a table": [
        "ALTER TABLE notes RENAME TO n",
        "CREATE VIEW notes AS SELECT * FROM n",
    ],
    "virtual table": ["CREATE VIRTUAL TABLE f USING fts5(x)"],
    "computed column": ["ALTER TABLE notes ADD COLUMN c TEXT AS (hex(randomblob(9)))"],
    "computed index": ["CREATE INDEX i ON plants (lower(plant))"],
    "partial index": ["CREATE INDEX i ON plants (plant) WHERE length(name) > 1"],
    "plain index": ["CREATE INDEX i ON plants (name)"],
    "further table": ["CREATE TABLE plan (x TEXT)"],
    "further column": ["ALTER TABLE plants ADD COLUMN scent TEXT"],
    "constraint that calls a function": [
        "UPDATE sqlite_master SET sql = replace(sql, '\"name\" TEXT', "
        "'\"name\" TEXT CHECK (load_extension(1))') WHERE name = 'plants'",
    ],
    "trigger whose kind is hidden": [
        "CREATE TRIGGER t AFTER INSERT ON plants BEGIN DELETE FROM crosses; END",
        "UPDATE sqlite_master SET name = 'plants' WHERE name = 't'",
    ],
}


@pytest.mark.parametrize("statements", STRANGE.values(), ids=STRANGE)
def test_what_this_program_does_not_make_is_refused(
    statements: list[str], path: Path, tmp_path: Path
) -> None:
    harm(path, *statements)
    before = path.read_bytes()
    with pytest.raises(FileFault) as found:
        BookFile.open(path)
    assert isinstance(found.value, StrangeBook | BookDamaged)
    assert found.value.todo
    assert path.read_bytes() == before
    if isinstance(found.value, StrangeBook) and "in the place" not in str(statements):
        rescue(path, tmp_path / "new.pedbook")
        with BookFile.open(tmp_path / "new.pedbook", backups=False) as file:
            assert list(file.book.plants) == ["V", "W", "A", "B"]
            with file.edit("Safe") as edit:
                edit.add(Plant("C"))
            assert list(file.book.crosses) == ["X", "Y"]


@pytest.mark.parametrize(
    "statement",
    [
        "CREATE TRIGGER t AFTER INSERT ON plants BEGIN DELETE FROM crosses; END",
        "CREATE VIEW v AS SELECT 1",
        "CREATE VIRTUAL TABLE f USING fts5(x)",
        "ALTER TABLE notes ADD COLUMN c TEXT AS (hex(text))",
        "CREATE INDEX i ON plants (lower(plant))",
    ],
)
def test_a_newer_version_may_hold_plain_tables_alone(statement: str, path: Path) -> None:
    harm(path, statement, "PRAGMA user_version = 9")
    with pytest.raises(StrangeBook):
        BookFile.open(path)


def test_a_stranger_that_comes_while_the_book_lies_open(path: Path) -> None:
    with BookFile.open(path, backups=False) as file:
        harm(path, STRANGE["trigger"][0])
        with pytest.raises(StrangeBook), file.edit("Late") as edit:
            edit.add(Plant("C"))
        with raw(path) as other:
            assert other.execute("SELECT count(*) FROM crosses").fetchone()[0] == 2


def test_a_database_of_another_program(path: Path) -> None:
    harm(path, "PRAGMA application_id = 7")
    with pytest.raises(NotABook, match="another program"):
        BookFile.open(path)


@pytest.mark.parametrize("version", [0, -1])
def test_a_version_that_is_none(version: int, path: Path) -> None:
    harm(path, f"PRAGMA user_version = {version}")
    with pytest.raises(BookDamaged):
        BookFile.open(path)


WRONG = {
    "text in the place of a number": "UPDATE plants SET fixation = 'much'",
    "bytes in the place of text": "UPDATE plants SET name = x'ff00'",
    "nothing where something must be": "UPDATE plants SET name = NULL",
    "a word that is none": "UPDATE plants SET kind = 'tree'",
    "further columns that are no JSON": "UPDATE plants SET extra = '{'",
    "further columns that are numbers": "UPDATE plants SET extra = '{\"a\": 1}'",
    "further columns nested deeply": f"UPDATE plants SET extra = '{'[' * 50_000}'",
    "a description that is none": "UPDATE about SET descriptor = '[]'",
    "no settings": "DELETE FROM book",
}


@pytest.mark.parametrize("which", WRONG)
def test_cells_of_another_type_are_damage(which: str, path: Path) -> None:
    """The file says that its tables are ours, but what lies in them was written past that."""
    with raw(path) as other:
        said = other.execute("SELECT name, sql FROM sqlite_master WHERE type = 'table'").fetchall()
        other.execute("PRAGMA writable_schema = ON")
        other.execute(
            "UPDATE sqlite_master SET sql = replace(replace(replace(sql, ' STRICT', ''), "
            "'CHECK (\"kind\" IN', 'CHECK (1 OR \"kind\" IN'), 'NOT NULL', '') "
            "WHERE name IN ('plants', 'about', 'book')"
        )
    with raw(path) as other:
        other.execute(WRONG[which])
    with raw(path) as other:
        other.execute("PRAGMA writable_schema = ON")
        for name, sql in said:
            other.execute("UPDATE sqlite_master SET sql = ? WHERE name = ?", (sql, name))
    with pytest.raises(BookDamaged) as found:
        BookFile.open(path)
    assert found.value.ways == ("restore", "rescue")


def test_text_that_is_none_is_damage(path: Path) -> None:
    data = path.read_bytes()
    at = data.index("×⊗○".encode())
    path.write_bytes(data[:at] + b"\xff\xfe" + data[at + 2 :])
    with pytest.raises(BookDamaged):
        BookFile.open(path)


def test_a_size_that_is_not_believed(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert connections._LARGEST_CELL == 128 * 1024 * 1024
    monkeypatch.setattr(connections, "_LARGEST_CELL", 1_000_000)
    with raw(path) as other:
        other.execute("INSERT INTO contents VALUES ('x', zeroblob(1000001))")
    with BookFile.open(path, backups=False) as file:
        # Photos are read one by one, and this one never.
        assert content(file.book) == content(garden())
    with raw(path) as other:
        other.execute("DELETE FROM contents")
        other.execute("UPDATE notes SET text = CAST(zeroblob(1000001) AS TEXT)")
    with pytest.raises(FileFault):
        BookFile.open(path, backups=False)


def test_text_is_only_ever_text(path: Path) -> None:
    said = "x'); DROP TABLE plants; --"
    with BookFile.open(path, backups=False) as file:
        with file.edit(said) as edit:
            edit.add(Plant("C", name=said, note="<script>", extra={said: said}))
        assert file.undo_words == said
        file.undo()
        file.redo()
    with BookFile.open(path, backups=False) as file:
        assert file.book.plants["C"] == Plant("C", name=said, note="<script>", extra={said: said})


def test_a_path_is_only_ever_a_path(tmp_path: Path) -> None:
    path = tmp_path / "a?mode=memory#b%41.pedbook"
    with BookFile.create(path, garden()) as file, file.edit("Plant") as edit:
        edit.add(Plant("C"))
    with BookFile.open(path, backups=False) as file:
        assert "C" in file.book.plants
    assert [item.name for item in tmp_path.iterdir()] == [path.name]
