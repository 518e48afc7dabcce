"""Which words of a picture are told in another language: the program's, never the person's own."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtGui import QImage, QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.legend import legend_entries
from pedigreeview.drawing.painter import paint
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.telling import tell, tell_with
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import books


@pytest.fixture
def told() -> Iterator[list[str]]:
    """Every text that was to be told; each is told as itself between brackets."""
    heard: list[str] = []

    def say(text: str) -> str:
        heard.append(text)
        return f"[{text}]"

    tell_with(say)
    yield heard
    tell_with(None)


def painted(book: Book, detail: float, focus: str | None = None) -> QImage:
    placed = place(choose(PedigreeNetwork.from_records(book), Look(focus=focus)))
    image = QImage(400, 300, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    painter.scale(detail, detail)
    paint(painter, placed, theme("light"), detail=detail)
    painter.end()
    legend_entries(placed, everything=True)
    return image


def peas() -> Book:
    book = Book()
    book.add(Plant("sibs", kind="variety", name="cross"))
    book.add(Plant("founder", kind="variety"))
    book.add(Cross("selfing", seed_parent="sibs", pollen_parent="founder", intended="cross"))
    for number in range(6):
        book.add(Plant(f"kept-{number}", cross="selfing"))
    return book


def test_codes_and_names_are_never_told(told: list[str]) -> None:
    painted(peas(), 1.0)
    assert {"sibs", "cross", "selfing", "kept-0"}.isdisjoint(told)
    assert {
        "6 sibs",
        "founder",
        "Founders",
        "Tab: more parents or progeny; a click shows them",
    } <= {*told}


@settings(
    max_examples=15, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(books(most=8), st.sampled_from([0.3, 0.5, 1.0]))
def test_no_code_of_any_book_is_told(told: list[str], book: Book, detail: float) -> None:
    told.clear()
    painted(book, detail)
    own = {*book.plants, *book.crosses}
    assert own.isdisjoint(told)


def test_generations_are_named_in_full_where_there_is_room(told: list[str]) -> None:
    """Generation 1 holds F1 and S1 here, so it goes by its number."""
    book = peas()
    book.add(Cross("own", seed_parent="founder", pollen_parent="founder", intended="selfing"))
    book.add(Plant("own-1", cross="own"))
    painted(book, 1.0)
    assert "Generation 1" in told
    assert "Gen. 1" not in told
    told.clear()
    heard: list[str] = []
    tell_with(lambda text: heard.append(text) or text.replace("Generation", "Of the generation"))
    painted(book, 1.0)
    assert "Gen. 1" in heard


def test_without_a_language_all_is_as_it_was() -> None:
    assert tell("6 sibs") == "6 sibs"
