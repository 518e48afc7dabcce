"""What can be read of a damaged book comes over, and what was lost is said."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.book.file_faults import BookDamaged, BookExists, FileFault, NotABook
from pedigreeview.book.records import Cross, Note, Photo, Plant, Score, Trait
from pedigreeview.book.rescue import rescue
from tests.book.garden import content, garden, integrity, raw

PAGE = 4096
DATA = Path(__file__).parent / "data"


def large() -> Book:
    """A book whose tables run over many pages."""
    book = Book(settings=BookSettings(name="Peas"))
    book.add(Plant("V", kind="variety"))
    for number in range(40):
        book.add(Cross(f"X{number}", "V", "V", intended="selfing"))
    for number in range(600):
        book.add(Plant(f"P{number}", cross=f"X{number % 40}", note=f"note {number} " * 8))
    book.add(Trait("t", "measure"))
    for number in range(600):
        book.add(Score(f"P{number}", "t", value=str(number)))
    return book


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    with BookFile.create(path, large()) as file, file.edit("Photo") as edit:
        edit.add_photo(Photo("a.jpg", "P1"), b"\xff\xd8picture")
    return path


def spoil(path: Path, at: int, count: int = PAGE) -> None:
    with open(path, "r+b") as stream:
        stream.seek(at)
        stream.write(b"\x55" * count)


def page_of(path: Path, said: bytes) -> int:
    return path.read_bytes().index(said) // PAGE * PAGE


def opened(path: Path) -> BookFile:
    return BookFile.open(path, backups=False)


def test_a_sound_book_comes_over_whole(path: Path, tmp_path: Path) -> None:
    before = path.read_bytes()
    found = rescue(path, tmp_path / "new.pedbook")
    assert found.lost == []
    assert found.came["plants"] == 601
    assert found.lines()[0].startswith("Came over: 601 plants, 40 crosses, 1 trait")
    with opened(path) as old, opened(tmp_path / "new.pedbook") as new:
        assert content(new.book) == content(old.book)
        assert new.file("photos/a.jpg") == b"\xff\xd8picture"
    assert path.read_bytes() == before


def test_a_bad_page_costs_only_its_rows(path: Path, tmp_path: Path) -> None:
    at = page_of(path, b"note 300 note 300")
    spoil(path, at)
    with pytest.raises(BookDamaged) as fault:
        opened(path)
    assert "rescue" in fault.value.ways
    found = rescue(path, tmp_path / "new.pedbook")
    assert any("plants" in said and "could not be read" in said for said in found.lost)
    with opened(tmp_path / "new.pedbook") as file:
        whole = [plant for plant in file.book.plants.values() if plant.note.startswith("note")]
        # Thirty-odd rows lie on a page.
        assert 540 < len(whole) < 600
        for number in (0, 100, 250, 350, 599):
            plant = file.book.plants[f"P{number}"]
            assert plant == Plant(f"P{number}", cross=f"X{number % 40}", note=f"note {number} " * 8)
        # Scores name the lost plants, so their codes stay.
        assert len(file.book.plants) == 601
        assert len(file.book.scores) == 600
        assert any("only the code was kept" in said for said in found.lost)
    assert integrity(tmp_path / "new.pedbook") == "ok"


@pytest.mark.parametrize("count", [16, 100])
def test_a_head_that_is_gone_is_made_anew(count: int, path: Path, tmp_path: Path) -> None:
    spoil(path, 0, count)
    with pytest.raises(NotABook):
        opened(path)
    found = rescue(path, tmp_path / "new.pedbook")
    assert found.came["plants"] == 601
    assert "The head of the file" in found.lost[0]


def test_a_file_cut_short(path: Path, tmp_path: Path) -> None:
    path.write_bytes(path.read_bytes()[: page_of(path, b"note 300 note 300")])
    with pytest.raises(FileFault):
        opened(path)
    found = rescue(path, tmp_path / "new.pedbook")
    assert found.lost
    assert found.came["plants"] > 100


def test_a_book_of_the_first_version(tmp_path: Path) -> None:
    path = Path(shutil.copyfile(DATA / "version_1.pedbook", tmp_path / "peas.pedbook"))
    spoil(path, page_of(path, "×⊗○".encode()))
    found = rescue(path, tmp_path / "new.pedbook")
    with opened(tmp_path / "new.pedbook") as file:
        assert file.book.plants["A"].selfings == 2
        assert file.book.crosses["X"].direction_known is True
        assert file.file("photos/a.jpg") == b"\xff\xd8a"
    assert any("notes" in said for said in found.lost)


def test_what_does_not_fit_is_left_out_and_said(tmp_path: Path) -> None:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, garden()).close()
    with raw(path) as other:
        other.execute("PRAGMA foreign_keys = OFF")
        other.execute("PRAGMA ignore_check_constraints = ON")
        other.execute("UPDATE plants SET kind = 'tree', sown = 'May' WHERE plant = 'V'")
        other.execute("UPDATE plants SET plant = 'self' WHERE plant = 'B'")
        other.execute("UPDATE pollinations SET pollen_lot = 'none'")
        other.execute("UPDATE scores SET trait = 'none' WHERE row_id = 1")
        other.execute("DELETE FROM crosses WHERE \"cross\" = 'X'")
        other.execute("DELETE FROM book")
    found = rescue(path, tmp_path / "new.pedbook")
    with opened(tmp_path / "new.pedbook") as file:
        book = file.book
        assert list(book.plants) == ["V", "W", "A"]
        assert (book.plants["V"].kind, book.plants["V"].sown) == ("", "")
        assert book.plants["A"].cross == "X"
        assert book.crosses["X"] == Cross("X", note="Lost from a damaged book.")
        assert book.pollinations["P1"].pollen_lot == ""
        assert len(book.scores) == 1
        assert book.settings == BookSettings()
        assert book.notes == [Note("plant A", text="×⊗○")]
    said = " ".join(found.lost)
    for words in ("kind", "sown", "1 did not fit", "pollen lot", "trait was lost", "settings",
                  "1 cross named by others", "'a.jpg'"):  # fmt: skip
        assert words in said


def test_what_cannot_be_rescued(path: Path, tmp_path: Path) -> None:
    (tmp_path / "x.pedbook").write_bytes(b"plant,seed_parent\n")
    (tmp_path / "empty.pedbook").write_bytes(b"")
    for name in ("x.pedbook", "empty.pedbook", "none.pedbook", "."):
        with pytest.raises(NotABook):
            rescue(tmp_path / name, tmp_path / "new.pedbook")
    with pytest.raises(BookExists):
        rescue(path, path)

    def tick() -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        rescue(path, tmp_path / "new.pedbook", tick=tick)
    assert not (tmp_path / "new.pedbook").exists()


@settings(max_examples=15)
@given(
    where=st.lists(st.floats(0, 0.999), min_size=1, max_size=4),
    count=st.sampled_from([1, 64, PAGE, 3 * PAGE]),
)
def test_any_damage_gives_a_sound_book_or_a_sentence(
    where: list[float], count: int, tmp_path_factory: pytest.TempPathFactory
) -> None:
    room = tmp_path_factory.mktemp("rescue")
    path = room / "peas.pedbook"
    BookFile.create(path, garden()).close()
    for part in where:
        spoil(path, int(part * os.path.getsize(path)), count)
    try:
        with opened(path):
            pass
    except Fault as fault:
        said = fault
    else:
        said = None
    assert said is None or (said.what.endswith(".") and said.todo.endswith("."))
    try:
        rescue(path, room / "new.pedbook")
    except Fault:
        assert not (room / "new.pedbook").exists()
    else:
        opened(room / "new.pedbook").close()
        assert integrity(room / "new.pedbook") == "ok"
