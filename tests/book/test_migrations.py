"""Books of every earlier version open as they are meant, from a stored file of each."""

from __future__ import annotations

import os
import shutil
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book import backups, migrations
from pedigreeview.book.backups import list_backups
from pedigreeview.book.book import BookSettings
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.file_faults import BookDamaged, DiskFull
from pedigreeview.book.records import Plant, Sowing
from pedigreeview.book.schema import VERSION, statements
from tests.book.garden import content, garden, integrity, raw

DATA = Path(__file__).parent / "data"
VERSIONS = range(migrations.OLDEST, VERSION + 1)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return Path(shutil.copyfile(DATA / "version_1.pedbook", tmp_path / "peas.pedbook"))


def parts(path: Path) -> dict[tuple[str, str], list[str]]:
    with raw(path) as connection:
        return {
            (kind, name): sql.split()
            for kind, name, sql in connection.execute(
                "SELECT type, name, sql FROM sqlite_master "
                "WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%'"
            )
        }


def expected() -> dict[tuple[str, str], list[str]]:
    return {part: sql.split() for part, sql in statements().items()}


@pytest.mark.parametrize("version", VERSIONS)
def test_a_stored_file_of_every_version_opens(version: int, tmp_path: Path) -> None:
    path = Path(shutil.copyfile(DATA / f"version_{version}.pedbook", tmp_path / "b.pedbook"))
    with BookFile.open(path) as file:
        assert not file.read_only
        with file.edit("Plant") as edit:
            edit.add(Plant("new"))
        file.undo()
    assert parts(path) == expected()
    assert integrity(path) == "ok"


def test_the_stored_file_of_this_version_is_what_is_made() -> None:
    """Fails when the records changed: then raise the version, as `migrations` says at its head."""
    assert parts(DATA / f"version_{VERSION}.pedbook") == expected()


def test_what_the_first_version_held_is_all_there(path: Path) -> None:
    with BookFile.open(path) as file:
        book = file.book
        assert book.settings == BookSettings("Peas", "pea", 2, extra={"bed": "3"})
        assert book.plants == {
            "V": Plant("V", kind="variety", fixation=0.9, extra={"colour": "red"}),
            "W": Plant("W", kind="variety"),
            "A": Plant("A", "first", cross="X", selfings=2, sown="2021-05", status="kept"),
        }
        assert book.crosses["X"].direction_known is True
        assert book.crosses["X"].pollen_doubt == "probable"
        assert book.pollinations["P1"].bud == ""
        assert book.sowings == {"B1": Sowing("B1", "", "", "2021-04", 5, 4, 3, "bed 3")}
        assert [score.value for score in book.scores] == ["3", "3"]
        assert book.notes[0].text == "×⊗○"
        assert book.unknown_tables == {"rain": "mm\n3\n"}
        assert book.descriptor == {"title": "Peas"}
        for name in "ab":
            assert file.file(f"photos/{name}.jpg") == b"\xff\xd8a"
        with file.edit("Plant") as edit:
            edit.add(Plant("new"))
        # The ids of rows that are gone are not given again.
        assert edit.changes[0].row_id == 10


def test_a_backup_is_made_before(path: Path) -> None:
    before = path.read_bytes()
    with BookFile.open(path) as file:
        (_, old) = file.backups()
    with raw(old.path) as connection:
        assert connection.execute("PRAGMA user_version").fetchone()[0] == 1
    # And leads back to what was there.
    with BookFile.open(path) as file:
        with file.edit("Plant") as edit:
            edit.add(Plant("new"))
        file.restore(old)
        assert list(file.book.plants) == ["V", "W", "A"]
    assert path.read_bytes() != before


def test_without_a_backup_nothing_is_brought_up_to_date(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = path.read_bytes()

    def full(*_: Any, **__: Any) -> None:
        raise DiskFull(path)

    monkeypatch.setattr(backups, "make", full)
    with BookFile.open(path) as file:
        assert file.read_only
        assert "no backup" in file.read_only_because
        assert list(file.book.plants) == ["V", "W", "A"]
    assert path.read_bytes() == before


def test_for_reading_the_file_stays_as_it_is(path: Path) -> None:
    before = path.read_bytes()
    with BookFile.open(path, read_only=True) as file:
        assert file.book.plants["A"].selfings == 2
        assert file.file("photos/a.jpg") == b"\xff\xd8a"
        assert file.refresh() is None
    assert path.read_bytes() == before
    assert os.listdir(path.parent) == ["peas.pedbook"]


def test_all_or_nothing(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def half(connection: Any) -> None:
        migrations._from_1(connection)
        raise ZeroDivisionError

    before = parts(path)
    with monkeypatch.context() as patch:
        patch.setitem(migrations._STEPS, 1, half)
        with pytest.raises(ZeroDivisionError):
            BookFile.open(path)
    assert parts(path) == before
    with raw(path) as connection:
        connection.execute("UPDATE plants SET source = 'nobody' WHERE plant = 'A'")
    with pytest.raises(BookDamaged, match="names what is not there"):
        BookFile.open(path)
    assert parts(path) == before
    assert len(list_backups(path)) == 2


def test_the_steps_of_the_second_version_can_be_undone(tmp_path: Path) -> None:
    path = Path(shutil.copyfile(DATA / "version_2.pedbook", tmp_path / "b.pedbook"))
    with BookFile.open(path) as file:
        assert (file.undo_words, file.redo_words) == ("Photo", "Plant C")
        file.redo()
        assert file.book.plants["C"].cross == "X"
        file.undo()
        file.undo()
        assert content(file.book) == content(garden())
