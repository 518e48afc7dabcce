"""Pins never bar the way back, and never name a plant that is not there."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.book.pins import LAST_PINS
from pedigreeview.book.recording.deleting import delete_with_progeny
from pedigreeview.book.records import Bookmark, Plant
from pedigreeview.places import demo

Work = Callable[[Edit], object]
PEAS = read(demo("two_peas_both_ways")).book


@pytest.fixture
def file(tmp_path: Path) -> Iterator[BookFile]:
    with BookFile.create(tmp_path / "peas.pedbook", PEAS) as made:
        yield made


def do(file: BookFile, work: Work) -> None:
    with file.edit("work") as edit:
        work(edit)


def pin(file: BookFile, *codes: str) -> None:
    """As the Pedigree page keeps its pins."""
    with file.edit("Pins", quiet=True) as edit:
        mark, pinned = edit.book.bookmarks.get(LAST_PINS), ";".join(codes)
        if mark is None:
            edit.add(Bookmark(name=LAST_PINS, pinned=pinned))
        elif pinned:
            edit.update(mark, pinned=pinned)
        else:
            edit.remove(mark)


def pins(file: BookFile) -> str:
    mark = file.book.bookmarks.get(LAST_PINS)
    return mark.pinned if mark is not None else ""


def rename(edit: Edit) -> object:
    return edit.rename(edit.book.plants["TP"], "Tall")


def delete(edit: Edit) -> object:
    return delete_with_progeny(edit, "23-07")


@pytest.mark.parametrize("work", [rename, delete])
@pytest.mark.parametrize("later", [("BA",), ()])
def test_pins_that_were_set_later_do_not_bar_undo(
    file: BookFile, work: Work, later: tuple[str, ...]
) -> None:
    pin(file, "TP", "23-07")
    do(file, work)
    pin(file, *later)
    file.undo()
    assert file.book.plants == PEAS.plants
    assert pins(file) == ";".join(later)
    pin(file, "21-01-1")
    file.redo()
    assert file.book.plants != PEAS.plants
    assert pins(file) == "21-01-1"
    file.undo()
    assert file.book.plants == PEAS.plants


def test_pins_follow_a_rename_back_and_forth(file: BookFile) -> None:
    pin(file, "TP", "BA")
    do(file, rename)
    assert pins(file) == "Tall;BA"
    file.undo()
    assert pins(file) == "TP;BA"
    file.redo()
    assert pins(file) == "Tall;BA"


def test_the_pin_of_a_plant_that_undo_takes_away_goes_with_it(file: BookFile) -> None:
    do(file, lambda edit: edit.add(Plant("NEW", kind="variety")))
    pin(file, "NEW")
    file.undo()
    assert LAST_PINS not in file.book.bookmarks
    path = file.path
    file.close()
    with BookFile.open(path) as again:
        assert again.book.bookmarks == PEAS.bookmarks
        assert again.book.plants == PEAS.plants


def test_another_window_sees_the_same(file: BookFile) -> None:
    pin(file, "TP", "23-07")
    do(file, delete)
    with BookFile.open(file.path) as other:
        pin(file, "TP", "BA")
        other.refresh()
        file.undo()
        other.refresh()
        assert other.book == file.book
        do(file, rename)
        other.refresh()
        file.undo()
        other.refresh()
        assert other.book == file.book
        other.redo()
        file.refresh()
        assert other.book == file.book
        assert pins(file) == "Tall;BA"
