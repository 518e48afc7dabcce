"""Undo and redo: kept across restarts, exact, and refused where the rows are other now."""

from __future__ import annotations

import json
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book import undo
from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import CannotUndo
from pedigreeview.book.records import Cross, Note, Plant, PollenCandidate, Score, Trait
from pedigreeview.book.row_images import RowChange
from tests.book.garden import content, garden, integrity, raw


def opened(path: Path) -> BookFile:
    return BookFile.open(path, backups=False)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, garden()).close()
    return path


def test_a_deletion_comes_back_at_its_place_after_a_restart(path: Path) -> None:
    with opened(path) as file, file.edit("Remove") as edit:
        edit.remove(edit.book.scores[0])
        edit.remove(edit.book.pollen_candidates[0])
        edit.remove(edit.book.photos["a.jpg"])
        edit.rename(edit.book.plants["V"], "VV")
        edit.remove(edit.book.pollinations["P1"])
    with opened(path) as file:
        assert file.undo_words == "Remove"
        change = file.undo()
        assert change is not None
        assert change.words == "Remove"
        assert change.keys["plants"] == {"V", "VV", "A", "B"} - {"A", "B"}
        assert content(file.book) == content(garden())
        assert (file.undo_words, file.redo_words) == ("", "Remove")
    with opened(path) as file:
        assert content(file.book) == content(garden())
        file.redo()
        assert list(file.book.plants) == ["VV", "W", "A", "B"]
        assert file.undo() is not None
        assert file.undo() is None
        assert file.last_change is not None
    assert integrity(path) == "ok"


def test_a_new_edit_forgets_what_was_undone(path: Path) -> None:
    with opened(path) as file:
        for code in "CD":
            with file.edit(f"Plant {code}") as edit:
                edit.add(Plant(code))
        file.undo()
        assert file.redo_words == "Plant D"
        with file.edit("Plant E") as edit:
            edit.add(Plant("E"))
        assert (file.undo_words, file.redo_words) == ("Plant E", "")
        assert file.redo() is None
        assert list(file.book.plants)[-2:] == ["C", "E"]


def test_words_may_be_set_until_the_end(path: Path) -> None:
    with opened(path) as file:
        with file.edit("Plant") as edit:
            edit.add(Plant("C"))
            edit.words = "Plant C"
        assert file.undo_words == "Plant C"


def test_steps_beyond_the_limit_are_forgotten(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(undo, "LIMIT", 3)
    with opened(path) as file:
        for number in range(6):
            with file.edit(f"{number}") as edit:
                edit.set_settings(name=f"{number}")
        undone = []
        while file.undo_words:
            undone.append(file.undo_words)
            file.undo()
        assert undone == ["5", "4", "3"]
        assert file.book.settings.name == "2"
    with raw(path) as other:
        assert other.execute("SELECT count(*) FROM steps").fetchone()[0] == 3


def test_the_limit_is_a_thousand_steps() -> None:
    assert undo.LIMIT == 1000


@pytest.mark.parametrize(
    "harm",
    [
        "UPDATE plants SET name = 'theirs' WHERE plant = 'A'",
        "UPDATE plants SET plant = 'Q' WHERE plant = 'A'",
    ],
)
def test_rows_that_another_program_changed_are_not_undone(path: Path, harm: str) -> None:
    with opened(path) as file:
        with file.edit("Name A") as edit:
            edit.update(edit.book.plants["A"], name="mine")
        with raw(path) as other:
            other.execute("PRAGMA foreign_keys = OFF")
            other.execute(harm)
        before = path.read_bytes()
        file.refresh()
        with pytest.raises(CannotUndo) as found:
            file.undo()
        assert (found.value.why, found.value.words) == ("changed", "Name A")
        assert file.undo_words == "Name A"
    assert path.read_bytes() == before


def test_what_hangs_on_an_added_row_since_is_not_torn(path: Path) -> None:
    with opened(path) as file:
        with file.edit("Plant C") as edit:
            edit.add(Plant("C"))
        with raw(path) as other:
            other.execute("UPDATE plants SET source = 'C' WHERE plant = 'B'")
        file.refresh()
        with pytest.raises(CannotUndo):
            file.undo()
        assert "C" in file.book.plants


@pytest.mark.parametrize(
    "said",
    [
        "DELETE FROM plants",
        "{}",
        "[1]",
        '[["plants", 3, null, null]]',
        '[["sqlite_master", 1, {"name": "x"}, null]]',
        '[["plants", 3, {"plant": "A", "name = 1; --": ""}, {"plant": "A"}]]',
        '[["plants", "3", {"plant": "A"}, {"plant": "A", "name": "x"}]]',
        '[["plants", 3, {"plant": "A"}, {"plant": "A", "name": 7}]]',
        '[["plants", 3, {"plant": "A"}, {"plant": "A", "extra": {"x": 1}}]]',
        '[["book", 1, null, {"name": "x"}]]',
        '[["book", 1, {"name": "Peas"}, {"name": 5}]]',
        "[" * 100_000,
    ],
)
def test_a_step_that_is_none_is_refused(path: Path, said: str) -> None:
    with opened(path) as file, file.edit("Name A") as edit:
        edit.update(edit.book.plants["A"], name="mine")
    with raw(path) as other:
        other.execute("UPDATE steps SET changes = ?", (said,))
    with opened(path) as file:
        with pytest.raises(CannotUndo) as found:
            file.undo()
        assert found.value.why == "unreadable"
        assert file.book.plants["A"].name == "mine"


def test_a_step_with_words_that_no_column_takes_is_refused(path: Path) -> None:
    with opened(path) as file, file.edit("Name A") as edit:
        edit.update(edit.book.plants["A"], name="mine")
    with raw(path) as other:
        said = '[["plants",3,{"plant":"A","kind":"tree"},{"plant":"A","kind":""}]]'
        other.execute("UPDATE steps SET changes = ?", (said,))
    with opened(path) as file:
        with pytest.raises(CannotUndo) as found:
            file.undo()
        assert found.value.why == "changed"
        assert file.book.plants["A"].kind == ""


def test_a_step_holds_only_what_differs() -> None:
    edit = Edit(garden(), "")
    edit.update(edit.book.plants["A"], name="n")
    edit.add(Plant("C"))
    edit.set_settings(name="new")
    held = json.loads(undo.to_json(edit.changes))
    assert held == [
        ["plants", 3, {"plant": "A", "name": ""}, {"plant": "A", "name": "n"}],
        ["plants", 5, None, {"plant": "C"}],
        ["book", 1, {"name": "Peas"}, {"name": "new"}],
    ]
    back = undo.from_json(undo.to_json(edit.changes))
    assert back[1] == RowChange("plants", 5, None, edit.changes[1].after)


# Any run of edits --------------------------------------------------------------------------------

CODES = ("a", "b", "c", "d")

Act = Callable[[Edit, Any], None]


def _add(edit: Edit, pick: int) -> None:
    crosses = ["", *edit.book.crosses]
    edit.add(Plant(CODES[pick % 4], cross=crosses[pick % len(crosses)], name=f"n{pick}"))


def _cross(edit: Edit, pick: int) -> None:
    plants = ["", *edit.book.plants]
    edit.add(Cross(f"x{pick % 3}", plants[pick % len(plants)], plants[-1]))


def _candidate(edit: Edit, pick: int) -> None:
    edit.add(PollenCandidate(f"x{pick % 3}", CODES[pick % 4], 0.25))


def _score(edit: Edit, pick: int) -> None:
    if "t" not in edit.book.traits:
        edit.add(Trait("t", "score"))
    edit.add(Score(CODES[pick % 4], "t", value=str(pick % 2)))


def _note(edit: Edit, pick: int) -> None:
    edit.add(Note(f"plant {CODES[pick % 4]}", text="×"))


def _update(edit: Edit, pick: int) -> None:
    for record in (*edit.book.scores[:1], *list(edit.book.plants.values())[pick % 3 :][:1]):
        edit.update(record, note=f"m{pick}")


def _rename(edit: Edit, pick: int) -> None:
    plants = list(edit.book.plants.values())
    if plants:
        edit.rename(plants[pick % len(plants)], CODES[(pick // 3) % 4])


def _remove(edit: Edit, pick: int) -> None:
    records = list(edit.book.records())
    if records:
        edit.remove(records[pick % len(records)])


def _settings(edit: Edit, pick: int) -> None:
    edit.set_settings(name=f"s{pick % 3}", ploidy=pick % 2 or None)


ACTS = (
    _add,
    _add,
    _cross,
    _candidate,
    _score,
    _note,
    _update,
    _rename,
    _remove,
    _remove,
    _settings,
)
STEPS = st.lists(
    st.one_of(
        st.lists(st.tuples(st.sampled_from(ACTS), st.integers(0, 50)), min_size=1, max_size=4),
        st.sampled_from(["undo", "undo", "redo", "reopen", "other"]),
    ),
    max_size=30,
)


@settings(max_examples=25)
@given(steps=STEPS)
def test_any_run_of_edits_equals_a_plain_model(steps: list[Any]) -> None:
    """The model is a list of whole books and a place in it."""
    with tempfile.TemporaryDirectory() as room:
        path = Path(room) / "b.pedbook"
        file, other = BookFile.create(path), opened(path)
        model, place = [content(Book())], 0
        for step in steps:
            if step == "undo":
                assert (file.undo() is None) == (place == 0)
                place = max(place - 1, 0)
            elif step == "redo":
                assert (file.redo() is None) == (place == len(model) - 1)
                place = min(place + 1, len(model) - 1)
            elif step == "reopen":
                file.close()
                file = opened(path)
            elif step == "other":
                file, other = other, file
                file.refresh()
            else:
                before = file.book
                try:
                    with file.edit("step") as edit:
                        for act, pick in step:
                            act(edit, pick)
                except Fault:
                    # Refused as a whole: what the edit had done so far is not there.
                    assert file.book is before
                else:
                    if edit.changes:
                        model[place + 1 :] = [content(edit.book)]
                        place += 1
            assert content(file.book) == model[place]
        other.refresh()
        assert content(other.book) == model[place]
        file.close()
        other.close()
        with opened(path) as last:
            assert content(last.book) == model[place]
            while last.undo() is not None:
                place -= 1
                assert content(last.book) == model[place]
        assert integrity(path) == "ok"
