"""The list of what was done in a book."""

from __future__ import annotations

import datetime
from pathlib import Path

from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Plant


def test_steps_are_told_newest_first_with_their_time_and_whether_they_are_undone(
    tmp_path: Path,
) -> None:
    before = datetime.datetime.now().astimezone().replace(microsecond=0)
    with BookFile.create(tmp_path / "a.pedbook") as file:
        assert file.steps() == []
        for code in ("A", "B"):
            with file.edit(f"plant {code}") as edit:
                edit.add(Plant(code))
        file.undo()
        steps = file.steps()
        assert [(one.words, one.undone) for one in steps] == [
            ("plant B", True),
            ("plant A", False),
        ]
        assert steps[0].step > steps[1].step
        assert all(datetime.datetime.fromisoformat(one.made_at) >= before for one in steps)
    assert file.steps() == []
