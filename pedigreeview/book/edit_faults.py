"""What an edit refuses, as faults with fields, so that a form shows them beside the right cell."""

from __future__ import annotations

from collections.abc import Sequence

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import Record
from pedigreeview.book.references import ONE

__all__ = ["BadCell", "ChangedElsewhere", "KeyTaken", "NoSuchKey", "StillNamed"]


def _place(record: Record, column: str = "") -> Place:
    return Place(column=column, plant=getattr(record, "plant", ""))


class BadCell(Fault):
    """A value that does not fit its column."""

    def __init__(self, record: Record, column: str, what: str, todo: str) -> None:
        self.table, self.column = record.TABLE, column
        super().__init__(what, _place(record, column), todo)


class KeyTaken(Fault):
    """A new record has the key of one that is there."""

    def __init__(self, record: Record, key: str) -> None:
        self.table, self.key = record.TABLE, key
        super().__init__(
            f"There is a {ONE[record.TABLE]} {key!r} already.",
            _place(record, record.KEY[0]),
            "Choose another code.",
        )


class NoSuchKey(Fault):
    """A record names another that is not in the book."""

    def __init__(self, record: Record, column: str, key: str, tables: Sequence[str]) -> None:
        self.table, self.column, self.key, self.tables = record.TABLE, column, key, tuple(tables)
        kinds = " or ".join(ONE[table] for table in tables)
        super().__init__(
            f"The {column} {key!r} is no {kinds} of this book.",
            _place(record, column),
            "Add it first, or choose another.",
        )


class StillNamed(Fault):
    """A record cannot be removed because others name it.

    Attributes
    ----------
    table, key : the record
    namers : the records that name it
    """

    def __init__(self, record: Record, key: str, namers: Sequence[Record]) -> None:
        self.table, self.key, self.namers = record.TABLE, key, list(namers)
        counts: dict[str, int] = {}
        for namer in namers:
            counts[namer.TABLE] = counts.get(namer.TABLE, 0) + 1
        said = ", ".join(
            f"{count} {(ONE[table] if count == 1 else table).replace('_', ' ')}"
            for table, count in counts.items()
        )
        super().__init__(
            f"{key!r} is still named by {said}.",
            _place(record),
            "Change or remove what names it first.",
        )


class ChangedElsewhere(Fault):
    """The record was changed or removed in another window or program after it was shown.

    Attributes
    ----------
    table, key : the record; the key is '' where its table has none
    columns : the columns that differ now; empty where the record is gone
    """

    def __init__(self, record: Record, key: str, columns: Sequence[str] = ()) -> None:
        self.table, self.key, self.columns = record.TABLE, key, tuple(columns)
        which = (
            f"The {ONE.get(record.TABLE, 'file')} {key!r}"
            if key
            else (f"This {ONE.get(record.TABLE, 'file')}")
        )
        if columns:
            what = f"{which} was changed meanwhile: {', '.join(columns)}."
        else:
            what = f"{which} is no longer in the book as it was shown."
        super().__init__(what, _place(record), "Look at it as it is now and do it again.")
