"""What a screen reader finds on the map: plants while they are few, else bands with a number."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QAccessible
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.overview import overview_of
from pedigreeview.drawing.wording import plant_words
from pedigreeview.window.overview import BookMap
from tests.window.test_relatives import network

NAME, MORE = QAccessible.Text.Name, QAccessible.Text.Description


def shown(qtbot: QtBot, progeny: int) -> BookMap:
    made = BookMap()
    made.resize(900, 600)
    qtbot.addWidget(made)
    made.show()
    qtbot.waitExposed(made)
    made.show_overview(overview_of(network(progeny)))
    return made


def names(book_map: BookMap) -> list[str]:
    told = QAccessible.queryAccessibleInterface(book_map)
    assert told.role() == QAccessible.Role.List
    return [told.child(at).text(NAME) for at in range(told.childCount())]


def test_plants_in_the_window_by_their_words(qtbot: QtBot) -> None:
    book_map, net = shown(qtbot, 5), network(5)
    book_map.words_for = lambda code: plant_words(net, code)
    book_map.description_of = lambda code: f"more of {code}"
    assert "S1, F2, from P selfed, F one half" in names(book_map)
    assert len(names(book_map)) == len(net.codes)
    told = QAccessible.queryAccessibleInterface(book_map)
    assert told.child(0).text(MORE).startswith("more of ")


def test_bands_stand_for_many_plants_and_the_marked_one_comes_first(qtbot: QtBot) -> None:
    book_map = shown(qtbot, 400)
    assert names(book_map) == [
        "Founders: 2 plants",
        "Generation 1: 1 plant",
        "Generation 2: 400 plants",
        "Generation 3: 1 plant",
    ]
    book_map.set_selected("S7")
    assert names(book_map)[0].startswith("S7")
    told = QAccessible.queryAccessibleInterface(book_map)
    assert told.focusChild().text(NAME).startswith("S7")
    assert told.child(0).state().selected


@pytest.mark.parametrize("progeny", [5, 400])
def test_what_lies_at_a_place_is_a_child(qtbot: QtBot, progeny: int) -> None:
    book_map = shown(qtbot, progeny)
    told = QAccessible.queryAccessibleInterface(book_map)
    spot = book_map.viewport().mapToGlobal(book_map.where("S3"))
    child = told.childAt(spot.x(), spot.y())
    assert child.text(NAME).startswith("S3" if progeny == 5 else "Generation 2")
    assert child.rect().contains(spot)
    assert told.indexOfChild(child) >= 0


def test_a_map_of_no_book_has_no_children(qtbot: QtBot) -> None:
    book_map = shown(qtbot, 5)
    book_map.show_overview(None)
    assert names(book_map) == []
