"""Name, crop and file of a new book, in the dialog for it and where a table makes one."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from pedigreeview.window.book_place import BookPlace
from pedigreeview.window.importing.new_place import NewPlace


@pytest.fixture(params=[False, True])
def place(request: pytest.FixtureRequest, qtbot: QtBot, tmp_path: Path) -> BookPlace:
    made = NewPlace(tmp_path) if request.param else BookPlace(tmp_path, "&Name", "C&rop")
    qtbot.addWidget(made)
    made.show()
    return made


def test_the_file_follows_the_name_until_it_is_typed(
    place: BookPlace, qtbot: QtBot, tmp_path: Path
) -> None:
    place.propose("Peas")
    assert place.path() == tmp_path / "Peas.pedbook"
    place.propose("Beans")
    assert place.name.text() == "Peas"
    place.name.selectAll()
    qtbot.keyClicks(place.name, "Beans: 2/2026?")
    assert place.path().parent == tmp_path
    assert place.path().name == "Beans  2 2026.pedbook"
    place.file.selectAll()
    qtbot.keyClicks(place.file, str(tmp_path / "mine"))
    qtbot.keyClicks(place.name, " more")
    assert place.path() == tmp_path / "mine.pedbook"


def test_a_name_that_is_taken_gets_a_number(place: BookPlace, tmp_path: Path) -> None:
    (tmp_path / "Peas.pedbook").touch()
    place.propose("Peas")
    assert place.path() == tmp_path / "Peas 2.pedbook"


def test_the_founders_stand_before_the_file(qtbot: QtBot, tmp_path: Path) -> None:
    place = NewPlace(tmp_path)
    qtbot.addWidget(place)
    place.show()
    tops = [widget.y() for widget in (place.name, place.crop, place.founders, place.file)]
    assert tops == sorted(tops)
    place.founders.setCurrentIndex(place.founders.findData("open_pollinated"))
    assert place.settings().variety_fixation == 0.0
