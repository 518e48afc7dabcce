"""What formats leave out of a book, by its tables."""

from __future__ import annotations

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.records import Note, Plant
from pedigreeview.exchange.left_out import tables_left_out


def test_tables_with_rows_are_named_unless_they_are_carried() -> None:
    edit = Edit(Book(), "")
    for code in ("A", "B"):
        edit.add(Plant(code))
    edit.add(Note("plant A", text="tall"))
    book = edit.book
    assert tables_left_out(book, ("plants", "notes")) == []
    assert tables_left_out(book, ("plants",)) == ["The table 'notes' with its 1 row."]
    assert tables_left_out(book, ("notes",)) == ["The table 'plants' with its 2 rows."]
    book.unknown_tables["weather"] = "day\n"
    assert tables_left_out(book, ("plants", "notes")) == [
        "The table 'weather', which is not known."
    ]
