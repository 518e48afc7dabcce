"""The generation of seed, against the names that the network gives the plants grown from it."""

from __future__ import annotations

import importlib.util
from pathlib import Path

from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.book.recording.seed_generation import SeedGenerations, generation_of_seed
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork

_PATH = Path(__file__).resolve().parents[2] / "network" / "random_books.py"
_SPEC = importlib.util.spec_from_file_location("random_books_of_network", _PATH)
_MODULE = importlib.util.module_from_spec(_SPEC)
_SPEC.loader.exec_module(_MODULE)
books = _MODULE.books


@settings(max_examples=60)
@given(books(most=14))
def test_seed_is_one_ahead_of_the_plant_that_bears_it(book):
    for number, code in enumerate(list(book.crosses)):
        book.add(Plant(f"seed{number}", kind="plant", raised="cross", cross=code))
    network = PedigreeNetwork.from_records(book)
    names = SeedGenerations(book)
    for number, cross in enumerate(book.crosses.values()):
        assert names.of_seed(cross) == (network.generation_name(f"seed{number}") or "")
    for code in book.plants:
        assert names.of_plant(code) == (network.generation_name(code) or "")


def test_by_hand():
    book = Book()
    for record in (
        Plant("A"), Plant("B"), Cross("X", "A", "B"), Plant("f1", kind="plant", cross="X"),
        Cross("S", "f1", "f1"), Cross("K", "f1", "A"), Cross("O", "f1", intended="open"),
    ):  # fmt: skip
        book.add(record)
    found = {code: generation_of_seed(book, code) for code in book.crosses}
    assert found == {"X": "F1", "S": "F2", "K": "BC1F1", "O": ""}
    book.settings.outcrossing = 0.0
    assert generation_of_seed(book, "O") == "F2"
    assert generation_of_seed(book, "none") == ""


def test_a_loop_has_no_name_and_ends():
    book = Book()
    for record in (
        Cross("X", "a", "b"), Plant("a", cross="X"), Plant("b"), Cross("Y", "a", "a"),
    ):  # fmt: skip
        book.add(record)
    assert generation_of_seed(book, "X") == ""
    assert generation_of_seed(book, "Y") == ""
