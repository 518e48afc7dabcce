"""Find by code, name, cross, trait, status and note, with the reason; over 100,000 plants."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Note, Plant, Score, Trait
from pedigreeview.window.find import CodeList, PlantFinder
from pedigreeview.window.main_window import MainWindow


def finder() -> PlantFinder:
    book = Book()
    for plant in (
        Plant("X-12", name="Amber"),
        Plant("12"),
        Plant("12-3"),
        Plant("K1", name="Twelve 12"),
        Plant("K2", cross="C12"),
    ):
        book.add(plant)
    return PlantFinder(book, list(book.plants))


def found(typed: str) -> list[str]:
    made = finder()
    return [made.codes[row] for row in made.found(typed)]


def test_the_code_itself_stands_first_then_beginnings() -> None:
    assert found("12") == ["12", "12-3", "X-12", "K1", "K2"]


def test_case_and_blanks_do_not_matter() -> None:
    assert found("  aMBer ") == ["X-12"]
    assert found("c12") == ["K2"]
    assert found("nothing") == []


def test_an_empty_field_lists_all_in_order() -> None:
    assert found("") == ["X-12", "12", "12-3", "K1", "K2"]


def test_the_list_holds_no_more_than_asked_but_counts_all() -> None:
    model = CodeList(None, 2)
    model.set_finder(finder())
    model.search("1")
    assert model.rowCount() == 2
    assert model.found == 5
    assert model.row_of("K2") == -1


def test_a_plant_found_by_its_cross_says_so() -> None:
    book = Book()
    for plant in (Plant("A"), Plant("B"), Plant("x", cross="A × B"), Plant("y", cross="21-1")):
        book.add(plant)
    for code in ("A × B", "21-1"):
        book.add(Cross(code, "A", "B", intended="cross"))
    made = PlantFinder(book, list(book.plants))
    assert [made.origin(row) for row in range(4)] == ["", "", "from A × B", "from 21-1: A × B"]


# Words of any kind --------------------------------------------------------------------------------


def scored() -> PlantFinder:
    book = Book()
    book.add(Trait("height", "category", values="tall;dwarf"))
    book.add(Trait("sweet", "score", low=1, high=9))
    for plant in (
        Plant("K1", status="kept", place="north bed"),
        Plant("K2", status="culled"),
        Plant("K8", name="Dwarf Amber"),
        Plant("K3", status="kept", note="Pods split early, seed dwarf and pale"),
    ):
        book.add(plant)
    for code, trait, value in (
        ("K1", "height", "dwarf"),
        ("K1", "sweet", "8"),
        ("K2", "height", "dwarf"),
        ("K2", "sweet", "3"),
        ("K3", "sweet", "8"),
    ):
        book.add(Score(code, trait, value=value))
    book.add(Note("plant K2", text="Rotted in a wet winter."))
    return PlantFinder(book, list(book.plants))


@pytest.mark.parametrize(
    ("typed", "codes"),
    [
        ("dwarf", ["K8", "K1", "K2", "K3"]),
        ("kept", ["K1", "K3"]),
        ("sweet 8", ["K1", "K3"]),
        ("8 SWEET", ["K1", "K3"]),
        ("dwarf kept", ["K1", "K3"]),
        ("dwarf culled", ["K2"]),
        ("wet winter", ["K2"]),
        ("north", ["K1"]),
        ("k1 dwarf", ["K1"]),
        ("dwarf tall", []),
    ],
)
def test_traits_statuses_places_and_notes_are_found(typed: str, codes: list[str]) -> None:
    made = scored()
    assert [made.codes[row] for row in made.found(typed)] == codes


@pytest.mark.parametrize(
    ("code", "typed", "why"),
    [
        ("K1", "dwarf", "height: dwarf"),
        ("K1", "dwarf kept", "height: dwarf · status: kept"),
        ("K1", "sweet 8", "sweet: 8"),
        ("K2", "wet", "note: Rotted in a wet winter."),
        ("K3", "dwarf", "note: Pods split early, seed dwarf and pale"),
        ("K1", "north", "place: north bed"),
        ("K8", "dwarf", ""),
        ("K1", "k1 dwarf", "height: dwarf"),
    ],
)
def test_every_hit_says_why(code: str, typed: str, why: str) -> None:
    made = scored()
    assert made.why(made.row(code), typed) == why


def test_a_long_note_is_shown_about_the_word() -> None:
    book = Book()
    book.add(Plant("A", note="word " * 30 + "Zinnia beside it " + "more " * 30))
    why = PlantFinder(book, ["A"]).why(0, "zinnia")
    assert "Zinnia" in why
    assert why.count("…") == 2
    assert len(why) < 70


def test_typing_in_the_field_says_why_and_enter_takes_it(
    peas: MainWindow, settle: Callable[[], None], qtbot: QtBot
) -> None:
    field = peas.find_field
    field.setFocus()
    qtbot.keyClicks(field, "dwarf kept")
    assert field.found.isVisible()
    index = field.model.index(0, 0)
    assert index.data(CodeList.OriginRole) == "height: dwarf · status: kept"
    assert index.data(Qt.ItemDataRole.AccessibleDescriptionRole) == "height: dwarf · status: kept"
    code = field.model.code(1)
    qtbot.keyClick(field, Qt.Key.Key_Down)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    settle()
    assert peas.pedigree.focus == code
