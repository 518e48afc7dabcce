"""A founder keeps its colour in every picture of a book."""

from __future__ import annotations

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.founders import OTHERS, PALETTE_SIZE, palette_numbers
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross


def test_numbers_do_not_depend_on_the_picture():
    book = Book()
    for code in ("A", "B", "C"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    book.add(Plant(plant="P", cross="x"))
    net = PedigreeNetwork.from_records(book)
    everything = dict(palette_numbers(net, {"A": 1, "B": 1, "C": 1}))
    assert palette_numbers(net, {"B": 1.0}) == (("B", everything["B"]),)


def test_founders_beyond_the_palette_are_others():
    book = Book()
    codes = [f"V{number}" for number in range(PALETTE_SIZE + 3)]
    for code in codes:
        book.add(Plant(plant=code))
    net = PedigreeNetwork.from_records(book)
    numbers = dict(palette_numbers(net, dict.fromkeys(codes, 1.0)))
    assert sorted(set(numbers.values())) == [OTHERS, *range(PALETTE_SIZE)]
    assert sum(number == OTHERS for number in numbers.values()) == 3
