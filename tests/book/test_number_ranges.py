"""Numbers out of their range: refused by an edit, found in a damaged file, cleared by a rescue.

The long run found them: a file whose settings said a fixation of 2 gave plants an F of 2.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import BadCell, Edit
from pedigreeview.book.file_faults import BookDamaged
from pedigreeview.book.number_ranges import RANGES, SETTING_RANGES, fits_range
from pedigreeview.book.records import Cross, Packet, ParentFinding, Plant, PollenCandidate
from pedigreeview.book.rescue import rescue
from pedigreeview.network import PedigreeNetwork
from tests.book.garden import raw


def small() -> Book:
    book = Book(settings=BookSettings(variety_fixation=1.0, ploidy=2, outcrossing=0.25))
    for record in (
        Plant("V", kind="variety", fixation=0.5, ploidy=2),
        Plant("W"),
        Cross("X", "V"),
        PollenCandidate("X", "W", 0.5),
        Plant("A", cross="X", selfings=2),
        ParentFinding("A", "W", 0.5),
        Packet("p", germination=0.5),
    ):
        book.add(record)
    return book


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, small()).close()
    return path


def outside(between: tuple[float | None, float | None]) -> list[float]:
    low, high = between
    return [low - 1 if low is not None else 0, *([] if high is None else [high + 1])]


CASES = [(key, value) for key, between in RANGES.items() for value in outside(between)]


@pytest.mark.parametrize(("key", "value"), CASES)
def test_a_cell_out_of_its_range(key: tuple[str, str], value: float, path: Path) -> None:
    table, name = key
    with raw(path) as other:
        assert other.execute(f'UPDATE "{table}" SET "{name}" = ?', (value,)).rowcount
    before = path.read_bytes()
    with pytest.raises(BookDamaged) as caught:
        BookFile.open(path, backups=False)
    assert "rescue" in caught.value.ways
    assert name in caught.value.what
    assert path.read_bytes() == before
    found = rescue(path, path.with_name("new.pedbook"))
    assert found.lost
    with BookFile.open(path.with_name("new.pedbook"), backups=False) as file:
        assert set(file.book.plants) == {"V", "W", "A"}
        for record in file.book.table(table):
            assert fits_range(getattr(record, name), RANGES[key])
        # Odds that were lost make nothing certain.
        assert not (file.book.table(table) and name == "odds")
        net = PedigreeNetwork.from_records(file.book)
        assert all(0 <= net.inbreeding(code) <= 1 for code in net.codes)


@pytest.mark.parametrize(
    ("name", "value"),
    [(name, value) for name, between in SETTING_RANGES.items() for value in outside(between)],
)
def test_a_setting_out_of_its_range(name: str, value: float, path: Path) -> None:
    with raw(path) as other:
        other.execute(f'UPDATE "book" SET "{name}" = ?', (value,))
    with pytest.raises(BookDamaged, match=name):
        BookFile.open(path, backups=False)
    found = rescue(path, path.with_name("new.pedbook"))
    assert any(name.replace("_", " ") in said for said in found.lost)
    with BookFile.open(path.with_name("new.pedbook"), backups=False) as file:
        settings = file.book.settings
        assert getattr(settings, name) == getattr(BookSettings(), name)
        # The others came over.
        assert name == "outcrossing" or settings.outcrossing == 0.25


@pytest.mark.parametrize(("key", "value"), CASES)
def test_an_edit_out_of_range_is_refused(key: tuple[str, str], value: Any, path: Path) -> None:
    table, name = key
    with BookFile.open(path, backups=False) as file:
        book = file.book
        record = next(iter(book.table(table)))
        edit = Edit(book, "trial")
        with pytest.raises(BadCell):
            edit.update(record, **{name: value})
        low, _ = RANGES[key]
        edit.update(record, **{name: type(value)(low)})


def test_the_ends_of_a_range_belong_to_it(path: Path) -> None:
    for name, (low, high) in SETTING_RANGES.items():
        for value in (low, high):
            with raw(path) as other:
                other.execute(f'UPDATE "book" SET "{name}" = ?', (value,))
            with BookFile.open(path, backups=False) as file:
                assert getattr(file.book.settings, name) == value
    assert fits_range(None, (0, 1))
    assert fits_range(10**6, (0, None))
    assert not fits_range(float("nan"), (0, 1))
