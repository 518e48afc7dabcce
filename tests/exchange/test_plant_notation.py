"""The parentage of a plant as a line of text."""

from __future__ import annotations

import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange import plant_table
from pedigreeview.exchange.parentage_tree import shares
from pedigreeview.exchange.plant_notation import notation_of
from pedigreeview.exchange.slash_notation import parse
from tests.network.random_books import books

TABLE = """\
plant,seed_parent,pollen_parent,kind,raised,name
TP,,,variety,,Tarnwick Pale
BA,,,variety,,
F1,TP,BA,,,
F2,F1,F1,,,
BC,TP,F1,,,
BC2,TP,BC,,,
L,BC2,F1,variety,,
M,L,BA,,,
O,F1,,,,
C,F2,,,cutting_of,
"""


@pytest.fixture
def book() -> Book:
    return plant_table.parse(TABLE, "t.csv")


@pytest.mark.parametrize(
    ("code", "slash", "cross"),
    [
        ("TP", "TP", "TP"),
        ("F1", "TP/BA", "TP × BA"),
        ("F2", "TP/BA", "TP × BA"),
        ("BC2", "TP*3/BA", "TP × (TP × (TP × BA))"),
        ("M", "L/BA", "L × BA"),
        ("L", "TP*3/BA//TP/BA", "(TP × (TP × (TP × BA))) × (TP × BA)"),
        ("O", "TP/BA//OP", "(TP × BA) × OP"),
        ("C", "TP/BA", "TP × BA"),
    ],
)
def test_what_is_written(book: Book, code: str, slash: str, cross: str) -> None:
    assert notation_of(book, code).text == slash
    assert notation_of(book, code, "cross").text == cross


def test_what_is_left_out_is_said(book: Book) -> None:
    assert notation_of(book, "M").said == ("Varieties are not taken further: L.",)
    assert notation_of(book, "F2").said == ("Selfings are not written.",)
    assert notation_of(book, "O").said == ("Open pollination is written as OP.",)
    assert notation_of(book, "F1", names=True).text == "Tarnwick Pale/BA"
    cut = notation_of(book, "L", most=3)
    assert cut.text == "BC2/F1"
    assert cut.said[0] == "Written down to 1 generation; not taken further: BC2, F1."
    assert "alphabetical order" in notation_of(book, "F1", "alphabetical").said[-1]
    assert notation_of(book, "F1", "alphabetical").text == "BA × TP"


def test_unknown_plants_and_loops_are_named() -> None:
    book = Book()
    for plant, cross in (("A", "X"), ("B", "Y")):
        book.add(Plant(plant, cross=cross))
    book.add(Cross("X", "B", "B", intended="selfing"))
    book.add(Cross("Y", "A", ""))
    with pytest.raises(Fault, match="no plant"):
        notation_of(book, "Z")
    with pytest.raises(Fault, match="own ancestors"):
        notation_of(book, "A")


def test_a_line_of_five_thousand_generations_is_cut() -> None:
    book = Book()
    book.add(Plant("P0"))
    for at in range(1, 5001):
        book.add(Cross(f"X{at}", f"P{at - 1}", f"P{at - 1}" if at % 2 else "P0"))
        book.add(Plant(f"P{at}", cross=f"X{at}"))
    found = notation_of(book, "P5000", most=10)
    assert "Written down to" in found.said[0]
    assert len(found.text) < 400


@settings(max_examples=40)
@given(books(most=14))
def test_any_plant_of_any_book(book: Book) -> None:
    for code in book.plants:
        for style in ("slash", "cross", "alphabetical"):
            found = notation_of(book, code, style)
            assert found.text
        assert sum(shares(parse(notation_of(book, code).text)).values()) == 1
