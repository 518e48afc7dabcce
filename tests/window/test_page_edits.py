"""The picture after an edit, an undo and a redo: the focus stays, a new plant is at its parents."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.tinting import Wanted
from pedigreeview.drawing.ways import NEAR, Way
from pedigreeview.places import demo
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


@pytest.fixture
def kept(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    window.open_path(path)
    settle()
    return window


def cross_them(edit: Edit) -> None:
    edit.add(Cross("28-90", seed_parent="23-07", pollen_parent="23-19", intended="cross"))
    edit.add(Plant("28-90-1", cross="28-90"))


def test_a_new_plant_stands_below_its_parents_and_the_focus_stays(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    page = kept.pedigree
    page.canvas.reduced_motion = True
    kept.show_plant("23-07")
    page.shades.want_tint(Wanted("inbreeding"))
    settle()
    before = page.canvas.placed
    assert before is not None
    kept.desk.record("Cross 28-90", cross_them)
    settle()
    placed = page.canvas.placed
    assert placed is not None
    assert (page.focus, page.selected) == ("23-07", "23-07")
    old, stays = before.block_of("23-07"), placed.block_of("23-07")
    assert old is not None
    assert stays is not None
    assert (stays.x, stays.y) == (old.x, old.y)
    assert page.canvas.rect().contains(page.canvas.where("23-07"))
    new, parents = placed.block_of("28-90-1"), [placed.block_of(c) for c in ("23-07", "23-19")]
    assert new is not None
    assert all(parent is not None and parent.bottom < new.y for parent in parents)
    # By the cross rule F of the progeny is the coancestry of its parents: full sibs of one selfed
    # F1 of two pure lines, 1/2.
    assert page.canvas._tint_words["28-90-1"] == "0.5"
    kept.desk.undo()
    settle()
    assert page.canvas.placed.block_of("28-90-1") is None  # type: ignore[union-attr]
    assert page.focus == "23-07"
    kept.desk.redo()
    settle()
    assert page.canvas.placed.block_of("28-90-1") is not None  # type: ignore[union-attr]


def test_what_is_undone_is_looked_at_no_longer(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    page = kept.pedigree
    kept.desk.record("Cross 28-90", cross_them)
    settle()
    page.try_cross("28-90-1", "TP")
    settle()
    page.ways.show_connection("TP", "28-90-1")
    page.pin("28-90-1")
    settle()
    page.bookmarks._timer.stop()
    assert page.way == Way("connection", other="28-90-1")
    kept.desk.undo()
    settle()
    assert page.way == NEAR
    assert page.focus == "TP"
    assert page.pins == ()
    assert page.look().ghost is None
    # Back leads to a place that is no more: it is shown without what is gone.
    kept.back()
    kept.forward()
    assert page.way == NEAR


def test_two_pictures_follow_an_edit(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    page = kept.pedigree
    kept.show_plant("23-07")
    page.compare.show_beside("23-19")
    kept.desk.record("Cross 28-90", cross_them)
    settle()
    for canvas in (page.canvas, page.compare.canvas):
        assert canvas.placed is not None
        assert "28-90-1" in canvas.placed.view.shown()
    page.compare.focus_on("28-90-1")
    kept.desk.undo()
    settle()
    assert not page.compare.open
