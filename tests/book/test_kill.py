"""A process that edits is killed at random moments: nothing that it told is lost.

The long run: `python tests/book/kill_run.py --kills 1000`.
"""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Plant, Trait
from tests.book.garden import garden
from tests.book.kill_run import check, run


@pytest.mark.skipif(sys.platform == "win32", reason="Windows has no such kill")
def test_what_was_told_is_there_after_a_kill() -> None:
    edits, _ = run(12, seed=3, most=0.05)
    assert edits >= 12


def test_the_check_itself_sees_a_loss(tmp_path: Path) -> None:
    path = tmp_path / "k.pedbook"
    with BookFile.create(path) as file:
        with file.edit("1") as edit:
            edit.set_settings(name="1")
            edit.add(Trait("t", "measure"))
            edit.add(Plant("P1"))
        with pytest.raises(AssertionError):
            check(path, 1)
    BookFile.create(tmp_path / "other.pedbook", garden()).close()
    with pytest.raises(AssertionError):
        check(path, 9)
