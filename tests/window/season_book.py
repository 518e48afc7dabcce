"""A pea book in the middle of its season, counted from today, kept as a file."""

from __future__ import annotations

import datetime
from pathlib import Path

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Cross, Harvest, Packet, Plant, Pollination, Trait

__all__ = ["ago", "season_book"]


def ago(days: int) -> str:
    """The ISO day so many days before today."""
    return (datetime.date.today() - datetime.timedelta(days=days)).isoformat()


def season_book(folder: Path) -> Path:
    """One cross late, one just pollinated, two planned, one skipped, seed in a packet."""
    book = Book()
    book.settings.name = "Two rows"
    book.settings.crop = "sweet pea"
    for code, name in (("TP", "Tarnwick Pale"), ("BA", "Brockle Amber"), ("WC", "Wren Cobalt")):
        book.add(Plant(code, name=name, kind="variety", place=f"bed 1 / row {len(book.plants)}"))
    year = ago(60)[:4]
    book.add(Cross("A-1", "TP", "BA", made_on=ago(60), state="made"))
    book.add(Cross("A-2", "BA", "TP", made_on=ago(8), state="made"))
    book.add(Cross("A-3", "TP", "WC", state="planned"))
    book.add(Cross("A-4", "WC", "TP", state="planned"))
    book.add(Cross("A-5", "WC", "BA", state="skipped", made_on=f"{year}"))
    book.add(Cross("A-6", "WC", "WC", made_on=ago(400), state="made", intended="selfing"))
    book.add(Pollination("P1", "A-1", ago(60), 5, cover="bag", tag="7", by="RW", set=3))
    book.add(Pollination("P2", "A-2", ago(8), 4, cover="tape", by="AN"))
    book.add(Harvest("H1", "A-6", ago(350), 4, 20, "K1"))
    book.add(Packet("K1", "H1", "F2", "WC", None, 20, 20))
    for number in (1, 2):
        book.add(Plant(f"A-6-{number}", cross="A-6", status="growing", sown=ago(90)))
    book.add(Trait("height", "measure", "cm"))
    book.add(Trait("sweet", "score", low=1, high=9))
    path = folder / "rows.pedbook"
    BookFile.create(path, book).close()
    return path
