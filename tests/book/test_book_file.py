"""The book's own file: what goes in comes out, every edit is on disk, no window loses another's."""

from __future__ import annotations

import multiprocessing
import os
import sqlite3
import threading
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book import book_file, lock_holders, undo
from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edit_faults import ChangedElsewhere, KeyTaken
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.book.file_faults import (
    BookBusy,
    BookExists,
    BookGone,
    BookNotWritable,
    BookTooNew,
    CannotUndo,
    DiskFull,
    FileFault,
    NotABook,
    UnfitBook,
)
from pedigreeview.book.records import Bookmark, Photo, Plant, Score
from tests.book.garden import content, garden, integrity, raw


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, garden()).close()
    return path


def opened(path: Path, **words: Any) -> BookFile:
    return BookFile.open(path, backups=False, **words)


# In and out --------------------------------------------------------------------------------------


def test_what_goes_in_comes_out(path: Path) -> None:
    with opened(path) as file:
        assert content(file.book) == content(garden())
        assert file.book.crosses["X"].direction_known is False
        assert type(file.book.traits["t"].low) is float
    assert os.listdir(path.parent) == ["peas.pedbook"]
    assert integrity(path) == "ok"


def test_an_empty_book(tmp_path: Path) -> None:
    with BookFile.create(tmp_path / "new.pedbook") as file:
        assert content(file.book) == content(Book())
        with file.edit("First plant") as edit:
            edit.add(Plant("A"))
    with opened(tmp_path / "new.pedbook") as file:
        assert list(file.book.plants) == ["A"]


def test_the_head_of_the_file_says_what_it_is(path: Path) -> None:
    with raw(path) as connection:
        said = [
            connection.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("application_id", "user_version", "journal_mode")
        ]
    assert said == [0x43726F73, 2, "delete"]


def test_nothing_is_made_over_what_is_there(path: Path, tmp_path: Path) -> None:
    before = path.read_bytes()
    with pytest.raises(BookExists):
        BookFile.create(path, Book())
    assert path.read_bytes() == before
    BookFile.create(path, Book(), replace=True).close()
    with opened(path) as file:
        assert file.book.plants == {}
    with pytest.raises(BookExists):
        BookFile.create(tmp_path, Book(), replace=True)
    with pytest.raises(BookGone, match="no such folder"):
        BookFile.create(tmp_path / "none" / "x.pedbook")


@pytest.mark.parametrize(
    "bad",
    [
        Plant("N", cross="nothing"),
        Plant("N", kind="tree"),
        Plant("N", sown="May"),
        Plant("N", note="\ud800"),
        Plant("N", ploidy=2**70),
        Score("A", "nothing"),
    ],
)
def test_records_that_break_a_rule_make_no_file(bad: Any, tmp_path: Path) -> None:
    book = garden()
    book.add(bad)
    with pytest.raises(UnfitBook):
        BookFile.create(tmp_path / "bad.pedbook", book)
    assert os.listdir(tmp_path) == []


def test_cancelling_leaves_nothing(tmp_path: Path) -> None:
    def tick() -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        BookFile.create(tmp_path / "new.pedbook", garden(), tick=tick)
    assert os.listdir(tmp_path) == []


# Edits -------------------------------------------------------------------------------------------


def test_an_edit_is_on_disk_when_it_ends(path: Path) -> None:
    file = opened(path)
    before = file.book
    kept = content(before)
    with file.edit("Name A") as edit:
        edit.update(file.book.plants["A"], name="first", extra={"x": "y"})
        edit.add(Plant("C", cross="X"))
        edit.remove(file.book.scores[0])
        edit.set_settings(name="Two peas")
    assert file.last_change is not None
    assert file.last_change.keys["plants"] == {"A", "C"}
    assert content(before) == kept
    # Read by another while the first is still open.
    with opened(path) as other:
        assert content(other.book) == content(file.book)
        assert other.book.plants["A"].extra == {"x": "y"}
    file.close()
    assert integrity(path) == "ok"
    assert os.listdir(path.parent) == ["peas.pedbook"]


def test_an_edit_that_fails_changes_nothing(path: Path) -> None:
    with opened(path) as file:
        before = content(file.book)
        with pytest.raises(KeyTaken), file.edit("Bad") as edit:
            edit.add_all([Plant("C"), Plant("A")])

        def bug() -> None:
            with file.edit("Bug") as edit:
                edit.add(Plant("C"))
                raise ZeroDivisionError

        with pytest.raises(ZeroDivisionError):
            bug()
        assert content(file.book) == before
        assert file.undo_words == ""
        with file.edit("Nothing"):
            pass
        assert file.undo_words == ""
        with file.edit("Good") as edit:
            edit.add(Plant("C"))
        assert file.undo_words == "Good"
    with opened(path) as file:
        assert list(file.book.plants) == ["V", "W", "A", "B", "C"]


def test_keys_that_change_hands(path: Path) -> None:
    with opened(path) as file:
        with file.edit("Swap") as edit:
            edit.rename(edit.book.plants["A"], "tmp")
            edit.rename(edit.book.plants["B"], "A")
            edit.rename(edit.book.plants["tmp"], "B")
            first, second = edit.book.pollen_candidates
            edit.update(first, candidate="V")
            edit.update(second, candidate="W")
        with file.edit("Anew") as edit:
            edit.remove(edit.book.plants["A"])
            edit.add(Plant("A", cross="X", name="another"))
        now = content(file.book)
        assert list(file.book.plants) == ["V", "W", "B", "A"]
        assert file.book.plants["B"].note.startswith("<b>")
    with opened(path) as file:
        assert content(file.book) == now
        file.undo()
        file.undo()
        assert content(file.book) == content(garden())


def test_a_photo_is_kept_in_the_book(path: Path) -> None:
    with opened(path) as file:
        with file.edit("Photo") as edit:
            edit.add_photo(Photo("n.jpg", "A"), b"\xff\xd8picture")
        assert file.file("photos/n.jpg") == b"\xff\xd8picture"
        with file.edit("Remove") as edit:
            edit.remove(edit.book.photos["n.jpg"])
        with pytest.raises(Fault, match="no file"):
            file.file("photos/n.jpg")
        file.undo()
        assert file.file("photos/n.jpg") == b"\xff\xd8picture"


def test_pictures_that_nothing_names_any_more_are_let_go(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def held() -> int:
        with raw(path) as other:
            return int(other.execute("SELECT count(*) FROM contents").fetchone()[0])

    with opened(path) as file:
        with file.edit("Photos") as edit:
            edit.add_photo(Photo("n.jpg"), b"one")
            edit.add_photo(Photo("m.jpg"), b"two")
        with file.edit("Remove") as edit:
            edit.remove(edit.book.photos["n.jpg"])
    # A step could bring it back.
    assert held() == 2
    monkeypatch.setattr(undo, "LIMIT", 1)
    with opened(path) as file, file.edit("Name") as edit:
        edit.set_settings(name="x")
    assert held() == 1
    with opened(path) as file:
        assert file.file("photos/m.jpg") == b"two"


def test_a_file_that_was_kept_in_another_way_is_one_file_again(path: Path) -> None:
    with raw(path) as other:
        assert other.execute("PRAGMA journal_mode = WAL").fetchone()[0] == "wal"
        other.execute("UPDATE plants SET name = 'wal' WHERE plant = 'A'")
    with opened(path) as file:
        assert file.book.plants["A"].name == "wal"
    assert os.listdir(path.parent) == ["peas.pedbook"]
    with raw(path) as other:
        assert other.execute("PRAGMA journal_mode").fetchone()[0] == "delete"


def test_an_empty_journal_that_a_killed_program_left_is_cleared(path: Path) -> None:
    path.with_name("peas.pedbook-journal").touch()
    opened(path).close()
    assert os.listdir(path.parent) == ["peas.pedbook"]


# Several windows ---------------------------------------------------------------------------------


def test_another_window_sees_what_is_written(path: Path) -> None:
    with opened(path) as one, opened(path) as two:
        assert two.refresh() is None
        untouched = two.book.plants["V"]
        with one.edit("Name A") as edit:
            edit.update(one.book.plants["A"], name="first")
        with one.edit("Plant C") as edit:
            edit.add(Plant("C", cross="X"))
        one.undo()
        change = two.refresh()
        assert change is not None
        assert change.keys == {"plants": {"A", "C"}}
        assert change.pedigree
        assert content(two.book) == content(one.book)
        # Followed row by row, not read anew.
        assert two.book.plants["V"] is untouched
        assert two.undo_words == "Name A"
        assert two.redo_words == "Plant C"
        assert two.refresh() is None


def test_no_update_is_lost(path: Path) -> None:
    with opened(path) as one, opened(path) as two:
        shown = two.book.plants["A"]
        with one.edit("Name") as edit:
            edit.update(one.book.plants["A"], name="first")
        with pytest.raises(ChangedElsewhere), two.edit("Name") as edit:
            edit.update(shown, name="second")
        # The change of the other is known now, and told with the next edit.
        with two.edit("Note") as edit:
            edit.update(shown, note="n")
        assert edit.change().keys == {"plants": {"A"}}
        one.refresh()
        for file in (one, two):
            assert (file.book.plants["A"].name, file.book.plants["A"].note) == ("first", "n")


def test_a_failed_edit_still_tells_of_the_others(path: Path) -> None:
    with opened(path) as one, opened(path) as two:
        with one.edit("Plant") as edit:
            edit.add(Plant("C"))
        with pytest.raises(KeyTaken), two.edit("Plant") as edit:
            edit.add(Plant("C"))
        change = two.refresh()
        assert change is not None
        assert change.keys == {"plants": {"C"}}


def test_undo_of_what_another_wrote_asks_first(path: Path) -> None:
    with opened(path) as one, opened(path) as two:
        with one.edit("First") as edit:
            edit.add(Plant("C"))
        two.refresh()
        with one.edit("Second") as edit:
            edit.add(Plant("D"))
        with pytest.raises(CannotUndo) as found:
            two.undo()
        assert (found.value.why, found.value.words) == ("meanwhile", "Second")
        # It is shown now, and so can be undone.
        assert "D" in two.book.plants
        assert two.undo_words == "Second"
        two.undo()
        assert "D" not in two.book.plants


def test_what_is_written_in_the_moment_of_opening_is_seen(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    really = book_file.open_file

    def open_and_be_slow(*places: Any, **words: Any) -> Any:
        found = really(*places, **words)
        with raw(path) as other:
            other.execute("UPDATE plants SET name = 'theirs' WHERE plant = 'A'")
        return found

    monkeypatch.setattr(book_file, "open_file", open_and_be_slow)
    with opened(path) as file:
        shown = file.book.plants["A"]
        with pytest.raises(ChangedElsewhere), file.edit("Name") as edit:
            edit.update(shown, name="mine")
        assert file.book.plants["A"].name == "theirs"


def test_rows_written_past_all_edits_are_seen(path: Path) -> None:
    with opened(path) as file:
        with raw(path) as other:
            other.execute("UPDATE plants SET name = 'by hand' WHERE plant = 'A'")
        change = file.refresh()
        assert change is not None
        assert change.pedigree
        assert file.book.plants["A"].name == "by hand"


def _many_edits(path: str, letter: str, count: int) -> None:
    with BookFile.open(path, backups=False) as file:
        for number in range(count):
            with file.edit(f"{letter}{number}") as edit:
                edit.add(Plant(f"{letter}{number}"))
                held = edit.book.plants["A"]
                edit.update(held, selfings=held.selfings + 1)


def test_two_processes_write_at_once(path: Path) -> None:
    context = multiprocessing.get_context("spawn")
    others = [context.Process(target=_many_edits, args=(str(path), letter, 12)) for letter in "MN"]
    for other in others:
        other.start()
    for other in others:
        other.join(60)
        assert other.exitcode == 0
    with opened(path) as file:
        assert file.book.plants["A"].selfings == 24
        assert len(file.book.plants) == 4 + 24
    assert integrity(path) == "ok"


def test_two_threads_write_at_once(path: Path) -> None:
    with opened(path) as file:

        def work(letter: str) -> None:
            for number in range(10):
                with file.edit("") as edit:
                    edit.add(Plant(f"{letter}{number}"))

        threads = [threading.Thread(target=work, args=(letter,)) for letter in "MN"]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        assert len(file.book.plants) == 24


# Faults ------------------------------------------------------------------------------------------


def test_a_busy_book_says_who_holds_it(path: Path) -> None:
    with opened(path) as file, raw(path) as other:
        file._connection.execute("PRAGMA busy_timeout = 10")
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(BookBusy) as found, file.edit("Wait") as edit:
            edit.add(Plant("C"))
        assert "again" in found.value.ways
        # This very process holds it, and Linux says so.
        if lock_holders._LOCKS.exists():
            assert found.value.holder == "another window of this program"
        assert file.refresh() is None
        other.execute("ROLLBACK")
        with file.edit("Now") as edit:
            edit.add(Plant("C"))
    assert "C" in file.book.plants


def test_who_holds_a_file(tmp_path: Path) -> None:
    held, locks = tmp_path / "held", tmp_path / "locks"
    held.touch()
    inode = held.stat().st_ino
    locks.write_text(
        f"1: POSIX  ADVISORY  READ  11 fe:00:{inode} 0 EOF\n"
        f"1: -> POSIX  ADVISORY  WRITE 12 fe:00:{inode} 0 EOF\n"
        f"2: POSIX  ADVISORY  WRITE 999999999 fe:00:{inode} 0 EOF\n"
    )
    assert lock_holders.holder_of(held, locks) == "a program (process 999999999)"
    assert lock_holders.holder_of(tmp_path / "none", locks) == ""
    assert lock_holders.holder_of(held, tmp_path / "none") == ""


def test_a_full_disk_changes_nothing(path: Path) -> None:
    with opened(path) as file:
        before = content(file.book)
        pages = file._connection.execute("PRAGMA page_count").fetchone()[0]
        file._connection.execute(f"PRAGMA max_page_count = {pages}")
        with pytest.raises(DiskFull), file.edit("Much") as edit:
            edit.add_all(Plant(f"N{number}", note="long " * 20) for number in range(2000))
        assert content(file.book) == before
        file._connection.execute("PRAGMA max_page_count = 1000000")
        with file.edit("Much") as edit:
            edit.add(Plant("C"))
    with opened(path) as file:
        assert list(file.book.plants)[-1] == "C"


def test_a_disk_that_fills_while_a_book_is_made(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: Any) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(DiskFull):
        BookFile.create(tmp_path / "new.pedbook", garden())
    assert os.listdir(tmp_path) == []


@pytest.mark.parametrize("which", ["file", "folder"])
def test_what_cannot_be_written_is_read(
    which: str, path: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = os.access
    shut = path if which == "file" else path.parent

    def access(place: Any, mode: int) -> bool:
        return asked(place, mode) and not (mode == os.W_OK and Path(place) == shut)

    monkeypatch.setattr(os, "access", access)
    with opened(path) as file:
        assert file.read_only
        assert which in file.read_only_because
        assert content(file.book) == content(garden())
        with pytest.raises(BookNotWritable) as found, file.edit("No"):
            pass
        assert "save_copy" in found.value.ways
        monkeypatch.undo()
        file.save_copy(tmp_path / "copy.pedbook")
    with opened(tmp_path / "copy.pedbook") as copy, copy.edit("Yes") as edit:
        edit.add(Plant("C"))


def test_opened_for_reading_it_follows_but_never_writes(path: Path) -> None:
    before = path.read_bytes()
    with opened(path, read_only=True) as file:
        assert file.read_only
        with pytest.raises(BookNotWritable):
            file.undo()
        with pytest.raises(sqlite3.OperationalError):
            file._connection.execute("DELETE FROM plants")
    assert path.read_bytes() == before
    with opened(path, read_only=True) as file, opened(path) as other:
        with other.edit("Plant") as edit:
            edit.add(Plant("C"))
        assert file.refresh() is not None
        assert "C" in file.book.plants


def test_a_file_that_vanishes(path: Path, tmp_path: Path) -> None:
    with opened(path) as file:
        os.rename(path, tmp_path / "away.pedbook")
        with pytest.raises(BookGone), file.edit("Lost") as edit:
            edit.add(Plant("C"))
        with pytest.raises(BookGone):
            file.refresh()
        # Another file in its place is not taken for it.
        BookFile.create(path, Book()).close()
        with pytest.raises(BookGone, match="Another file"), file.edit("Lost") as edit:
            edit.add(Plant("C"))
        os.replace(tmp_path / "away.pedbook", path)
        with file.edit("Kept") as edit:
            edit.add(Plant("C"))
    with opened(path) as file:
        assert "C" in file.book.plants


def test_a_file_that_vanishes_during_an_edit(path: Path, tmp_path: Path) -> None:
    with opened(path) as file:

        def lose() -> None:
            with file.edit("Lost") as edit:
                edit.add(Plant("C"))
                os.rename(path, tmp_path / "away.pedbook")

        with pytest.raises(BookGone):
            lose()
        assert "C" not in file.book.plants
        file.save_copy(tmp_path / "copy.pedbook")
    with opened(tmp_path / "copy.pedbook") as copy:
        assert content(copy.book) == content(garden())


def test_a_newer_version_is_read_only(path: Path) -> None:
    with raw(path) as other:
        other.execute("PRAGMA user_version = 3")
        other.execute("ALTER TABLE plants ADD COLUMN scent TEXT")
        other.execute("CREATE TABLE smells (scent TEXT)")
        other.execute("DROP TABLE steps")
        other.execute("DROP TABLE blooms")
    before = path.read_bytes()
    with BookFile.open(path) as file:
        assert file.read_only
        assert "newer version" in file.read_only_because
        assert content(file.book) == content(garden())
        with pytest.raises(BookTooNew) as found, file.edit("No"):
            pass
        assert (found.value.version, found.value.known) == (3, 2)
        assert file.refresh() is None
    assert path.read_bytes() == before


def test_a_book_that_is_upgraded_while_it_lies_open(path: Path) -> None:
    with opened(path) as file:
        with raw(path) as other:
            other.execute("PRAGMA user_version = 3")
            other.execute("CREATE TABLE smells (scent TEXT)")
        with pytest.raises(BookTooNew), file.edit("Late") as edit:
            edit.add(Plant("C"))
        with pytest.raises(BookTooNew):
            file.refresh()


@pytest.mark.parametrize("data", [b"", b"plant,seed_parent\n", b"SQLite format 2\x00" * 9])
def test_a_file_of_another_kind(data: bytes, tmp_path: Path) -> None:
    (tmp_path / "x.pedbook").write_bytes(data)
    with pytest.raises(NotABook):
        BookFile.open(tmp_path / "x.pedbook")
    with pytest.raises(NotABook, match="folder"):
        BookFile.open(tmp_path)
    with pytest.raises(BookGone):
        BookFile.open(tmp_path / "none.pedbook")


def test_a_closed_book_is_not_written_in(path: Path) -> None:
    file = opened(path)
    file.close()
    file.close()
    assert file.refresh() is None
    with pytest.raises(BookGone), file.edit("Late"):
        pass


def test_a_copy_holds_all(path: Path, tmp_path: Path) -> None:
    with opened(path) as file:
        with file.edit("Photo") as edit:
            edit.add_photo(Photo("n.jpg"), b"picture")
        with pytest.raises(BookExists):
            file.save_copy(path)
        file.save_copy(tmp_path / "copy.pedbook")
        with opened(tmp_path / "copy.pedbook") as copy:
            assert content(copy.book) == content(file.book)
            assert copy.file("photos/n.jpg") == b"picture"
            assert copy.undo_words == "Photo"
        # A book made from a book takes its files along as well.
        with BookFile.create(tmp_path / "made.pedbook", file.book) as made:
            assert content(made.book) == content(file.book)
            assert made.file("photos/n.jpg") == b"picture"
            assert made.undo_words == ""


def test_every_fault_of_a_file_has_a_sentence_and_a_way_on(tmp_path: Path) -> None:
    place = tmp_path / "x.pedbook"
    faults = [kind(place) for kind in (NotABook, BookBusy, BookGone, BookExists, DiskFull)]
    faults += [BookTooNew(place, 9, 2), BookNotWritable(place), UnfitBook(place, "It does not.")]
    faults += [CannotUndo(place, why, "x") for why in ("changed", "meanwhile", "unreadable")]
    for fault in faults:
        assert isinstance(fault, FileFault)
        assert fault.path == place
        assert fault.what[0].isupper() or fault.what[0] == "'"
        assert fault.what.endswith(".")
        assert fault.todo.endswith(".")


def test_a_quiet_edit_is_kept_but_is_no_step(tmp_path: Path) -> None:
    path = tmp_path / "quiet.pedbook"
    with BookFile.create(path) as file:
        with file.edit("plant A") as edit:
            edit.add(Plant("A"))
        with file.edit("plant B") as edit:
            edit.add(Plant("B"))
        file.undo()
        other = BookFile.open(path)
        with file.edit("Pins", quiet=True) as edit:
            edit.add(Bookmark("(pins)", pinned="A"))
        assert (file.undo_words, file.redo_words) == ("plant A", "plant B")
        other.refresh()
        assert other.book == file.book
        other.close()
        file.redo()
        assert set(file.book.plants) == {"A", "B"}
        assert file.book.bookmarks["(pins)"].pinned == "A"
    with BookFile.open(path) as file:
        assert file.book.bookmarks["(pins)"].pinned == "A"
