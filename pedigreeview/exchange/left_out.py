"""What the formats that carry only some tables of a book leave out, in sentences."""

from __future__ import annotations

from collections.abc import Collection

from pedigreeview.book.book import Book
from pedigreeview.book.records import TABLES

__all__ = ["tables_left_out"]


def tables_left_out(book: Book, carried: Collection[str]) -> list[str]:
    """The tables of a book that are not carried and hold rows, one sentence each."""
    said = []
    for table in TABLES:
        count = len(book.table(table))
        if table not in carried and count:
            rows = "row" if count == 1 else "rows"
            said.append(f"The table {table!r} with its {count} {rows}.")
    return said + [f"The table {name!r}, which is not known." for name in book.unknown_tables]
