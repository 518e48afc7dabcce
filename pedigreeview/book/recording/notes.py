"""Notes about any record, and photos of plants (the record; the file is kept beside it)."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.fields import iso_date
from pedigreeview.book.recording.lookup import plant_called
from pedigreeview.book.records import TABLES, Note, Photo
from pedigreeview.book.references import about

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["notes_about", "photo_name", "record_note", "record_photo"]

_PLAIN = re.compile(r"[^\w.-]+")


def record_note(edit: Edit, table: str, key: str, text: str, *, date: str = "") -> Note:
    """Write a dated text about a record, such as ('plants', 'K17').

    Raises
    ------
    Fault : no such record, or no text
    """
    if table not in TABLES or key not in getattr(edit.book, table):
        raise Fault(
            f"There is no {key!r} among the {table.replace('_', ' ')} of this book.",
            Place(column="about"),
            "Choose a record that is there.",
        )
    words = text.strip()
    if not words:
        raise Fault("The note says nothing.", Place(column="text"), "Write it.")
    note = Note(about(table, key), iso_date(date), words)
    edit.add(note)
    return note


def notes_about(book: Book, table: str, key: str) -> tuple[Note, ...]:
    """The notes about a record, oldest first; those without a date stand first."""
    wanted = about(table, key)
    plain = wanted.replace(" ", "_", wanted.count(" ") - key.count(" ") - 1)
    found = [note for note in book.notes if note.about in (wanted, plain)]
    return tuple(sorted(found, key=lambda note: note.date))


def photo_name(book: Book, plant: str, wanted: str) -> str:
    """A file name for a photo that no other has: of letters, digits, dots and dashes alone."""
    stem, dot, ending = wanted.rpartition(".")
    if not dot:
        stem, ending = wanted, ""
    ending = _PLAIN.sub("", ending).casefold()
    head = _PLAIN.sub("-", f"{plant}-{stem}").strip("-.") or "photo"
    taken = {name.casefold() for name in book.photos}
    number, name = 1, f"{head}.{ending}" if ending else head
    while name.casefold() in taken:
        number += 1
        name = f"{head}-{number}.{ending}" if ending else f"{head}-{number}"
    return name


def record_photo(
    edit: Edit, file_name: str, plant: str, *, date: str = "", caption: str = ""
) -> Photo:
    """Record a photo of a plant under a name that no other has (`photo_name`).

    Raises
    ------
    Fault : no such plant, or a name that is no plain file name
    """
    code = plant_called(edit.book, plant).plant
    if not file_name or _PLAIN.search(file_name) or file_name.startswith("."):
        raise Fault(
            f"{file_name!r} is no plain file name.",
            Place(column="photo"),
            "Use letters, digits, dots and dashes.",
        )
    photo = Photo(file_name, code, iso_date(date), caption.strip())
    edit.add(photo)
    return photo
