"""Backups: when they are made, which are kept, and the way back."""

from __future__ import annotations

import datetime
import os
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book import backups
from pedigreeview.book.backups import KEPT, folder_of, list_backups, make, restore_over
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.file_faults import BookDamaged, BookTooNew, DiskFull, NotABook
from pedigreeview.book.records import Photo, Plant
from tests.book.garden import content, garden, integrity, raw


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, garden()).close()
    return path


def add(file: BookFile, code: str) -> None:
    with file.edit(f"Plant {code}") as edit:
        edit.add(Plant(code))


def damage(path: Path) -> None:
    """Overwrite the page on which the notes lie."""
    data = bytearray(path.read_bytes())
    at = data.index("×⊗○".encode())
    start = at // 4096 * 4096
    data[start : start + 64] = b"\x55" * 64
    path.write_bytes(data)


def test_a_backup_is_made_on_opening_when_the_book_has_changed(path: Path) -> None:
    with BookFile.open(path) as file:
        assert len(file.backups()) == 1
        add(file, "C")
    with BookFile.open(path) as file:
        newest, oldest = file.backups()
    with BookFile.open(path) as file:
        assert file.backups() == [newest, oldest]
        assert file.backup_fault is None
    assert newest.path.parent == folder_of(path) == path.parent / "peas.backups"
    with BookFile.open(oldest.path, read_only=True) as held:
        assert content(held.book) == content(garden())
    with BookFile.open(newest.path, read_only=True) as held:
        assert "C" in held.book.plants
    assert sorted(os.listdir(path.parent)) == ["peas.backups", "peas.pedbook"]
    assert integrity(newest.path) == "ok"


def test_another_folder(path: Path, tmp_path: Path) -> None:
    elsewhere = tmp_path / "elsewhere"
    with BookFile.open(path, backup_folder=elsewhere) as file:
        assert [backup.path.parent for backup in file.backups()] == [elsewhere]
    assert not folder_of(path).exists()


def test_reading_makes_none(path: Path) -> None:
    BookFile.open(path, read_only=True).close()
    BookFile.open(path, backups=False).close()
    assert list_backups(path) == []


def test_the_last_ten_and_one_a_month_are_kept(path: Path) -> None:
    made = [
        datetime.datetime(2025, month, day, 9, 30)
        for month in (1, 2, 3)
        for day in (1, 5, 9, 13, 17, 21)
    ]
    with BookFile.open(path, backups=False) as file:
        for now in made:
            make(file._connection, path, always=True, now=now)
    kept = [backup.made_at for backup in list_backups(path)]
    assert len(made[-KEPT:]) == KEPT == 10
    # Of January only the newest is older than the last ten.
    assert kept == [*reversed(made[-10:]), datetime.datetime(2025, 1, 21, 9, 30)]


def test_what_is_no_backup_of_this_book_is_left_alone(path: Path) -> None:
    folder = folder_of(path)
    folder.mkdir()
    others = [
        "notes.txt",
        "peas 2020-01-01 10.00.00 damaged.pedbook",
        "x 2020-01-01 10.00.00.pedbook",
    ]
    for name in others:
        (folder / name).write_text("x")
    with BookFile.open(path, backups=False) as file:
        for day in range(1, 20):
            make(file._connection, path, always=True, now=datetime.datetime(2025, 1, day))
    assert set(others) < set(os.listdir(folder))
    assert len(list_backups(path)) == KEPT


def test_two_backups_in_one_second(path: Path) -> None:
    now = datetime.datetime(2025, 1, 1, 10)
    with BookFile.open(path, backups=False) as file:
        for _ in range(2):
            make(file._connection, path, always=True, now=now)
    assert [backup.made_at.second for backup in list_backups(path)] == [1, 0]


def test_a_damaged_book_pushes_no_good_backup_out(path: Path) -> None:
    BookFile.open(path).close()
    file = BookFile.open(path, backups=False)
    damage(path)
    file._connection.execute("PRAGMA shrink_memory")
    with pytest.raises(BookDamaged):
        make(BookFileLike(path).connection, path, always=True)
    file.close()
    assert len(list_backups(path)) == 1
    with pytest.raises(BookDamaged):
        BookFile.open(path)
    assert len(list_backups(path)) == 1


class BookFileLike:
    """A connection to a file that `BookFile` would not open."""

    def __init__(self, path: Path) -> None:
        from pedigreeview.book.connections import connect

        self.connection = connect(path, write=False)


def test_a_full_disk_does_not_keep_anyone_from_the_book(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: Any) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patch:
        patch.setattr(os, "fsync", full)
        file = BookFile.open(path)
    assert isinstance(file.backup_fault, DiskFull)
    add(file, "C")
    file.close()
    assert list_backups(path) == []
    assert os.listdir(folder_of(path)) == []


def test_going_back_keeps_what_was_there(path: Path) -> None:
    with BookFile.open(path) as file:
        (first,) = file.backups()
        with file.edit("Photo") as edit:
            edit.add_photo(Photo("n.jpg", "A"), b"picture")
        with BookFile.open(path, backups=False) as other:
            change = file.restore(first)
            assert change.pedigree
            assert content(file.book) == content(garden())
            # The other window sees it, and neither writes over the other.
            assert other.refresh() is not None
            assert content(other.book) == content(garden())
            add(other, "C")
            file.refresh()
            assert "C" in file.book.plants
        present = file.backups()[0]
        file.restore(present.path)
        assert "n.jpg" in file.book.photos
        assert file.file("photos/n.jpg") == b"picture"
        assert file.undo_words == "Photo"
    assert integrity(path) == "ok"
    assert sorted(os.listdir(path.parent)) == ["peas.backups", "peas.pedbook"]


def test_a_backup_that_is_none_changes_nothing(path: Path, tmp_path: Path) -> None:
    (tmp_path / "none.pedbook").write_text("x")
    with BookFile.open(path) as file:
        (good,) = file.backups()
        with pytest.raises(NotABook):
            file.restore(tmp_path / "none.pedbook")
        with raw(good.path) as other:
            other.execute("PRAGMA user_version = 99")
        with pytest.raises(BookTooNew):
            file.restore(good)
        damage(good.path)
        with raw(good.path) as other:
            other.execute("PRAGMA user_version = 2")
        with pytest.raises(BookDamaged):
            file.restore(good)
        assert content(file.book) == content(garden())
        add(file, "C")
    assert [backup.path for backup in list_backups(path)] == [good.path]


def test_going_back_from_a_book_that_cannot_be_opened(path: Path) -> None:
    BookFile.open(path).close()
    (good,) = list_backups(path)
    damage(path)
    broken = path.read_bytes()
    path.with_name("peas.pedbook-journal").write_bytes(b"left")
    kept = restore_over(path, good.path)
    assert kept is not None
    assert kept.read_bytes() == broken
    assert kept.with_name(f"{kept.name}-journal").read_bytes() == b"left"
    with BookFile.open(path, backups=False) as file:
        assert content(file.book) == content(garden())
    assert list_backups(path) == [good]
    assert sorted(os.listdir(path.parent)) == ["peas.backups", "peas.pedbook"]
    # Where the book is gone altogether.
    path.unlink()
    assert restore_over(path, good.path) is None
    BookFile.open(path, backups=False).close()


def test_a_way_back_that_fails_leaves_the_damaged_book(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    BookFile.open(path).close()
    (good,) = list_backups(path)
    damage(path)
    broken = path.read_bytes()

    def full(*_: Any) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(backups.shutil, "copyfile", full)
    with pytest.raises(DiskFull):
        restore_over(path, good.path)
    assert path.read_bytes() == broken
