"""Records as plain rows and back: what an edit changed, as data that can be kept and undone.

A row is a dict from column to value, with `extra` for columns of a file that this version does not
know.  Rows are data only; nothing in them is ever run.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields, replace
from functools import cache
from typing import Any, ClassVar

from pedigreeview.book.book import BookSettings
from pedigreeview.book.records import TABLES, Column, Record, column, columns

__all__ = [
    "FILES",
    "ROW_TYPES",
    "SETTINGS",
    "SETTINGS_ROW",
    "RowChange",
    "StoredFile",
    "from_row",
    "key_of",
    "row_columns",
    "settings_from_row",
    "table_columns",
    "to_row",
]

SETTINGS = "book"
"""The table of the settings; it has one row."""
SETTINGS_ROW = 1
FILES = "files"
"""The table of the photos and other files that a book holds."""

Row = dict[str, Any]


@dataclass(slots=True)
class StoredFile(Record):
    """One file that a book holds: its path in the folder, and the SHA-256 of its bytes."""

    TABLE: ClassVar[str] = FILES
    KEY: ClassVar[tuple[str, ...]] = ("path",)

    path: str = column(required=True)
    content: str = column(required=True)
    extra: dict[str, str] = field(default_factory=dict)


ROW_TYPES: dict[str, type[Record]] = {**TABLES, FILES: StoredFile}
"""Every table whose rows an edit can change but the settings, in the order of writing."""


@dataclass(frozen=True, slots=True)
class RowChange:
    """One row before and after; None where it did not exist."""

    table: str
    row_id: int
    before: Row | None
    after: Row | None

    def back(self) -> RowChange:
        """The change that takes this one back."""
        return RowChange(self.table, self.row_id, self.after, self.before)

    def differing(self) -> set[str]:
        """The columns in which the row differs; all of them where it came or went."""
        before, after = self.before, self.after
        if before is None or after is None:
            return set(before or after or ())
        return {
            name for name in before.keys() | after.keys() if before.get(name) != after.get(name)
        }


@cache
def table_columns(table: str) -> tuple[Column, ...]:
    """The declared columns of a table, without `extra`."""
    made: Any = ROW_TYPES[table]
    return columns(made)


@cache
def row_columns(table: str) -> tuple[str, ...]:
    """The columns of a row, in the order of its dataclass."""
    record_type: Any = BookSettings if table == SETTINGS else ROW_TYPES[table]
    return tuple(item.name for item in fields(record_type))


def to_row(record: Record | BookSettings) -> Row:
    """A record as a row."""
    table = SETTINGS if isinstance(record, BookSettings) else record.TABLE
    row = {name: getattr(record, name) for name in row_columns(table)}
    row["extra"] = dict(row["extra"])
    return row


def from_row(table: str, row: Mapping[str, Any]) -> Record:
    """The record of a row."""
    return ROW_TYPES[table](**{**row, "extra": dict(row.get("extra") or {})})


def settings_from_row(settings: BookSettings, row: Mapping[str, Any]) -> BookSettings:
    """The settings with the columns of a row."""
    values = dict(row)
    if "extra" in values:
        values["extra"] = dict(values["extra"])
    return replace(settings, **values)


def key_of(record: Record) -> str:
    """The key of a record whose table has one of a single column, else ''."""
    return str(getattr(record, record.KEY[0])) if len(record.KEY) == 1 else ""
