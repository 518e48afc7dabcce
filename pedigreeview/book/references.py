"""Where a record is named: every column whose cells name another record by its key.

Plain foreign keys are told by the records themselves (`records.Column.names`); the rest stand here:
cells with several codes, cells that may hold the word 'self', and the free words 'plant K17' with
which a note says what it is about.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from pedigreeview.book.book import Book
from pedigreeview.book.records import SELF, TABLES, Record
from pedigreeview.book.row_images import table_columns

__all__ = [
    "ONE",
    "Reference",
    "about",
    "mentioned",
    "mentions",
    "named_by",
    "names",
    "references",
    "renamed",
    "split_codes",
]

ONE = {name: name.removesuffix("es") if name == "crosses" else name[:-1] for name in TABLES}
ONE.update(
    loci="locus",
    harvests="harvest",
    pollen_lots="pollen lot",
    evidence="evidence",
    compatibility="compatibility",
    pollen_candidates="pollen candidate",
    parent_findings="parent finding",
    accepted_checks="accepted check",
)
"""The word for one record of each table."""


@dataclass(frozen=True, slots=True)
class Reference:
    """One column that names records.

    Attributes
    ----------
    table, column : where it stands
    tables : the tables that it may name; a code in several of them means the first
    many : whether it lists several codes, parted by ';'
    self_too : whether 'self' may stand there
    holds : whether a record that is named here must not be removed
    said : whether it names a record in words, as in 'plant K17'
    """

    table: str
    column: str
    tables: tuple[str, ...]
    many: bool = False
    self_too: bool = False
    holds: bool = True
    said: bool = False


_KEYED = tuple(name for name, record in TABLES.items() if len(record.KEY) == 1)

_OTHER = (
    Reference("pollen_candidates", "candidate", ("plants",), self_too=True),
    Reference("parent_findings", "pollen_parent", ("plants",), self_too=True),
    Reference("pollen_lots", "plant", ("plants",), many=True),
    Reference("bookmarks", "pinned", ("plants",), many=True),
    Reference("sowings", "sown_from", ("crosses", "plants")),
    Reference("notes", "about", _KEYED, said=True),
    Reference("accepted_checks", "keys", ("plants", "crosses"), many=True, holds=False),
)


@cache
def references(table: str) -> tuple[Reference, ...]:
    """Every column of a table that names records."""
    plain = (
        Reference(table, column.name, (column.names,))
        for column in table_columns(table)
        if column.names
    )
    return (*plain, *(other for other in _OTHER if other.table == table))


@cache
def _naming(table: str) -> tuple[Reference, ...]:
    """Every column that may name records of a table."""
    return tuple(
        reference
        for other in TABLES
        for reference in references(other)
        if table in reference.tables
    )


def split_codes(text: str) -> list[str]:
    """The codes of a cell that lists several, parted by ';'."""
    return [code for part in text.split(";") if (code := part.strip())]


def about(table: str, key: str) -> str:
    """What a note says that it is about, such as 'plant K17'."""
    return f"{ONE[table]} {key}"


def _said(table: str, key: str) -> tuple[str, ...]:
    one = ONE[table]
    return (f"{one} {key}", f"{one.replace(' ', '_')} {key}")


def names(reference: Reference, record: Record) -> list[str]:
    """The codes that a record names in one column; for `said` its whole words."""
    text = getattr(record, reference.column)
    if not text or (reference.self_too and text == SELF):
        return []
    return split_codes(text) if reference.many else [text]


def mentions(record: Record) -> list[str]:
    """Everything that a record names, column after column; empty for one of no table."""
    return [
        code
        for reference in (references(record.TABLE) if record.TABLE in TABLES else ())
        for code in names(reference, record)
    ]


def mentioned(table: str, key: str) -> tuple[str, ...]:
    """What stands among `mentions` where a record is named."""
    return (key, *_said(table, key)) if table in TABLES else ()


def _is_meant(book: Book, reference: Reference, table: str, key: str) -> bool:
    """Whether a code in a column that may name several tables means this one."""
    if reference.many:
        return True
    for other in reference.tables:
        if other == table:
            return True
        if key in getattr(book, other):
            return False
    return False


def named_by(book: Book, table: str, key: str) -> Iterator[tuple[Reference, Record]]:
    """Every place that names a record, with the record that stands there.

    Cost: one look at every record of the tables that can name it.
    """
    for reference in _naming(table):
        held = getattr(book, reference.table)
        if not held:
            continue
        column = reference.column
        records = held.values() if isinstance(held, dict) else held
        if reference.said:
            words = _said(table, key)
            found = [record for record in records if getattr(record, column) in words]
        elif not _is_meant(book, reference, table, key):
            continue
        elif reference.many:
            found = [
                record
                for record in records
                if key in getattr(record, column) and key in names(reference, record)
            ]
        else:
            found = [record for record in records if getattr(record, column) == key]
        for record in found:
            yield reference, record


def renamed(reference: Reference, text: str, table: str, old: str, new: str) -> str:
    """The text of a cell that named a record by its old key."""
    if reference.said:
        return about(table, new)
    if reference.many:
        parts = text.split(";")
        return ";".join(part.replace(old, new) if part.strip() == old else part for part in parts)
    return new
