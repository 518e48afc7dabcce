"""A book changed row by row, while the snapshot that it starts from stays as it is.

A table is copied when it is first touched, and shared until then; records are replaced, never
changed in place.  So threads may go on reading the old snapshot.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable
from dataclasses import replace
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.memory import uncollected
from pedigreeview.book.records import Record
from pedigreeview.book.row_ids import RowIds
from pedigreeview.book.row_images import (
    ROW_TYPES,
    SETTINGS,
    RowChange,
    from_row,
    key_of,
    settings_from_row,
    to_row,
)

__all__ = ["Draft", "OutOfStep"]


class OutOfStep(Exception):
    """A row is not as a change expects it."""

    def __init__(self, change: RowChange) -> None:
        super().__init__(f"{change.table} row {change.row_id}")
        self.change = change


class Draft:
    """A new snapshot in the making.

    Parameters
    ----------
    book : the snapshot to start from; nothing of it is changed
    """

    def __init__(self, book: Book) -> None:
        self.ids = book.row_ids.copy() if book.row_ids is not None else RowIds()
        self._book = replace(book, row_ids=self.ids)
        self._taken: set[str] = set()
        self._out_of_order: set[str] = set()
        self._index: dict[str, dict[int, tuple[Record, int]]] = {}
        self._equal: dict[str, dict[tuple[Any, ...], list[int]]] = {}

    @property
    def book(self) -> Book:
        """The snapshot as changed so far, every table in the order of its rows."""
        for table in self._out_of_order:
            held, ids = getattr(self._book, table), self.ids.tables[table]
            assert isinstance(ids, dict)
            ordered = sorted(ids.items(), key=lambda item: item[1])
            records = {key: held[key] for key, _ in ordered}
            # In place, so that who holds the dict goes on seeing what is changed.
            held.clear()
            held.update(records)
            ids.clear()
            ids.update(ordered)
        self._out_of_order.clear()
        return self._book

    def _take(self, table: str) -> Any:
        """The table as this draft's own."""
        if table not in self._taken:
            self._taken.add(table)
            held = getattr(self._book, table)
            with uncollected():
                mine: Any = dict(held) if isinstance(held, dict) else list(held)
            self.ids.take(table, held)
            setattr(self._book, table, mine)
            if table in ("plants", "crosses"):
                self._book.columns = None
        return getattr(self._book, table)

    # Finding rows -------------------------------------------------------------------------------

    def row_of(self, record: Record) -> int | None:
        """The row id of a record, which may come from an older snapshot; None where it is gone."""
        table = record.TABLE
        held = self._take(table)
        ids = self.ids.tables[table]
        if isinstance(ids, dict):
            return ids.get(key_of(record))
        index = self._index.get(table)
        if index is None:
            index = {id(one): (one, row) for one, row in zip(held, ids, strict=True)}
            self._index[table] = index
        found = index.get(id(record))
        if found is not None and found[0] is record:
            return found[1] if self.at(table, found[1]) is not None else None
        return self._row_of_equal(record, held, ids)

    def _row_of_equal(self, record: Record, held: list[Record], ids: list[int]) -> int | None:
        equal = self._equal.get(record.TABLE)
        if equal is None:
            equal = self._equal[record.TABLE] = {}
            for one, row in zip(held, ids, strict=True):
                equal.setdefault(_values(one), []).append(row)
        for row in equal.get(_values(record), ()):
            if self.at(record.TABLE, row) == record:
                return row
        if record.KEY:
            names = record.KEY
            wanted = [getattr(record, name) for name in names]
            for one, row in zip(held, ids, strict=True):
                if [getattr(one, name) for name in names] == wanted:
                    return row
        return None

    def at(self, table: str, row_id: int, key: str = "") -> Record | None:
        """The record of a row; a table with a key wants the key that the row has."""
        held = self._take(table)
        ids = self.ids.tables[table]
        if isinstance(ids, dict):
            return held[key] if ids.get(key) == row_id else None
        place = bisect_left(ids, row_id)
        found: Record | None = held[place] if place < len(ids) and ids[place] == row_id else None
        return found

    # Changing rows ------------------------------------------------------------------------------

    def insert(self, record: Record, row_id: int | None = None) -> int:
        """Put a record in; with a row id at the place that it had."""
        table = record.TABLE
        held = self._take(table)
        ids = self.ids.tables[table]
        if row_id is None:
            row_id = self.ids.new(table)
        last = self.ids.following[table] - 1 <= row_id
        self.ids.seen(table, row_id)
        if isinstance(ids, dict):
            key = key_of(record)
            held[key] = record
            ids[key] = row_id
            if not last:
                self._out_of_order.add(table)
        else:
            place = bisect_left(ids, row_id)
            held.insert(place, record)
            ids.insert(place, row_id)
            self._note(record, row_id)
        return row_id

    def replace(self, row_id: int, old: Record, new: Record) -> None:
        """Put another record in the place of one that is there; its key may differ."""
        table = old.TABLE
        held = self._take(table)
        ids = self.ids.tables[table]
        if isinstance(ids, dict):
            before, after = key_of(old), key_of(new)
            if before != after:
                del held[before], ids[before]
                ids[after] = row_id
                self._out_of_order.add(table)
            held[after] = new
        else:
            held[bisect_left(ids, row_id)] = new
            self._note(new, row_id)

    def delete(self, row_id: int, record: Record) -> None:
        """Take a record out."""
        table = record.TABLE
        held = self._take(table)
        ids = self.ids.tables[table]
        if isinstance(ids, dict):
            del held[key_of(record)], ids[key_of(record)]
        else:
            place = bisect_left(ids, row_id)
            del held[place], ids[place]

    def _note(self, record: Record, row_id: int) -> None:
        """Let a list's record be found by what it is and by its values."""
        if (index := self._index.get(record.TABLE)) is not None:
            index[id(record)] = (record, row_id)
        if (equal := self._equal.get(record.TABLE)) is not None:
            equal.setdefault(_values(record), []).append(row_id)

    def settings(self, settings: BookSettings) -> None:
        """Put other settings in."""
        self._book.settings = settings

    # Changes kept as data -----------------------------------------------------------------------

    def apply(self, changes: Iterable[RowChange]) -> list[RowChange]:
        """Make changes that were kept; rows of an update may hold only the columns that differ.

        Returns
        -------
        the same changes with whole rows

        Raises
        ------
        OutOfStep : a row is not as the change found it; the draft is of no more use
        """
        found = [self._found(change) for change in changes]
        made = [_whole(change, held) for change, held in found]
        # Away first, so that keys which change hands are free.
        for change, held in found:
            if isinstance(held, Record) and _gives_up_key(change, held):
                self.delete(change.row_id, held)
        for whole, (change, held) in zip(made, found, strict=True):
            if isinstance(held, BookSettings):
                self.settings(settings_from_row(held, change.after or {}))
            elif whole.after is not None:
                self._put(whole, held)
        return made

    def _put(self, change: RowChange, held: Record | None) -> None:
        record = from_row(change.table, change.after or {})
        if held is not None and not _gives_up_key(change, held):
            self.replace(change.row_id, held, record)
            return
        table = self._take(change.table)
        taken = (
            key_of(record) in table
            if isinstance(table, dict)
            else self.at(change.table, change.row_id) is not None
        )
        if taken:
            raise OutOfStep(change)
        self.insert(record, change.row_id)

    def _found(self, change: RowChange) -> tuple[RowChange, Record | BookSettings | None]:
        """The record that a change starts from, which must be as the change says."""
        held: Record | BookSettings | None
        if change.table == SETTINGS:
            held = self._book.settings
        elif change.before is None:
            return change, None
        else:
            record_type = ROW_TYPES[change.table]
            key = change.before.get(record_type.KEY[0], "") if len(record_type.KEY) == 1 else ""
            held = self.at(change.table, change.row_id, key)
        if held is None or any(
            getattr(held, name) != value for name, value in (change.before or {}).items()
        ):
            raise OutOfStep(change)
        return change, held


def _whole(change: RowChange, held: Record | BookSettings | None) -> RowChange:
    """A change with whole rows."""
    before = None if held is None else to_row(held)
    after = None if change.after is None else {**(before or {}), **change.after}
    return RowChange(change.table, change.row_id, before, after)


def _gives_up_key(change: RowChange, held: Record) -> bool:
    """Whether a row goes, or its key does."""
    if change.after is None:
        return True
    key = key_of(held)
    return bool(key) and change.after.get(held.KEY[0], key) != key


def _values(record: Record) -> tuple[Any, ...]:
    """All values of a record as something that a dict can hold."""
    row = to_row(record)
    extra = row.pop("extra", None) or {}
    return (*row.values(), *sorted(extra.items()))
