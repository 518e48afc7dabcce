"""A small book of two peas, from which the tests of recording start."""

from __future__ import annotations

import datetime

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.records import Plant


@pytest.fixture
def today() -> datetime.date:
    return datetime.date(2024, 6, 10)


@pytest.fixture
def book() -> Book:
    """Two varieties and two single plants of peas."""
    found = Book()
    found.settings.crop = "pea"
    for plant in (
        Plant("TP", "Tarnwick Pale", "variety"),
        Plant("BA", "Brockle Amber", "variety"),
        Plant("p1", kind="plant", sown="2024-03-01"),
        Plant("p2", kind="plant", sown="2024-03-01"),
    ):
        found.add(plant)
    return found


@pytest.fixture
def edit(book: Book) -> Edit:
    return Edit(book, "test")
