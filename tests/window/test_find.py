"""Find by code, name and cross; fast over 100,000 plants."""

from __future__ import annotations

from time import perf_counter

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.window.find import CodeList, PlantFinder


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
    return [made.codes[row] for row in made.rows(typed)]


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


def test_a_hundred_thousand_plants_in_a_blink() -> None:
    book = Book()
    for number in range(100_000):
        book.add(Plant(f"P{number:06d}", name=f"Name {number}"))
    made = PlantFinder(book, list(book.plants))
    start = perf_counter()
    assert made.rows("p04242")[0] == 42420
    # Measured 10 ms; the limit leaves room for a busy machine.
    assert perf_counter() - start < 0.3


def test_a_plant_found_by_its_cross_says_so() -> None:
    book = Book()
    for plant in (Plant("A"), Plant("B"), Plant("x", cross="A × B"), Plant("y", cross="21-1")):
        book.add(plant)
    for code in ("A × B", "21-1"):
        book.add(Cross(code, "A", "B", intended="cross"))
    made = PlantFinder(book, list(book.plants))
    assert [made.origin(row) for row in range(4)] == ["", "", "from A × B", "from 21-1: A × B"]
