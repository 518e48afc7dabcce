"""A small book with something of everything, for the tests of the file."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import fields
from pathlib import Path

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import (
    TABLES,
    Cross,
    Note,
    Photo,
    Plant,
    PollenCandidate,
    Pollination,
    Score,
    Trait,
)


def garden() -> Book:
    """Two varieties, a cross, its progeny, and what was noted of them."""
    book = Book(settings=BookSettings(name="Peas", ploidy=2, extra={"bed": "3"}))
    for record in (
        Plant("V", kind="variety", fixation=0.9, extra={"colour": "red"}),
        Plant("W", kind="variety"),
        Cross("X", "V", "W", direction_known=False),
        Cross("Y", "V"),
        PollenCandidate("Y", "W", 0.5),
        PollenCandidate("Y", "self", 0.25),
        Plant("A", cross="X", note="<b>bold</b> '; DROP TABLE plants; --"),
        Plant("B", cross="X", selfings=2, sown="2021-05"),
        Pollination("P1", "X", "2021-05-17", flowers=3),
        Trait("t", "score", low=1, high=9),
        Score("A", "t", value="3"),
        Score("A", "t", value="3"),
        Note("plant A", text="×⊗○"),
        Photo("a.jpg", "A"),
    ):
        book.add(record)
    book.unknown_tables = {"rain": "mm\n3\n"}
    book.descriptor = {"licenses": [{"name": "CC0-1.0"}]}
    return book


def content(book: Book) -> dict[str, object]:
    """All that a book says, to be compared; in the order of its tables."""
    found: dict[str, object] = {name: list(book.table(name)) for name in TABLES}
    found["keys"] = {
        name: list(getattr(book, name)) for name in TABLES if isinstance(getattr(book, name), dict)
    }
    found["book"] = {item.name: getattr(book.settings, item.name) for item in fields(BookSettings)}
    found["unknown"], found["descriptor"] = book.unknown_tables, book.descriptor
    return found


@contextmanager
def raw(path: Path) -> Iterator[sqlite3.Connection]:
    """The file as any other program opens it."""
    connection = sqlite3.connect(path, isolation_level=None)
    try:
        yield connection
    finally:
        connection.close()


def integrity(path: Path) -> str:
    """What a full check of the file says."""
    with raw(path) as connection:
        found = connection.execute("PRAGMA integrity_check").fetchone()[0]
        broken = connection.execute("PRAGMA foreign_key_check").fetchall()
    return str(broken or found)
