"""One edit of the book: everything that one act of the person changes, collected over a snapshot.

An edit never changes the snapshot that it starts from, nor any record of it: it makes a new one
that shares every table that it does not touch.  It keeps the book whole: no key twice, no name of a
record that is not there.  It knows nothing of files; `book_file` writes its changes as one
transaction, and keeps them as row images so that they can be undone.
"""

from __future__ import annotations

import hashlib
from collections import Counter
from collections.abc import Iterable
from dataclasses import fields, replace
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.cell_checks import check_cell
from pedigreeview.book.changes import Change, change_of
from pedigreeview.book.drafts import Draft
from pedigreeview.book.edit_faults import (
    BadCell,
    ChangedElsewhere,
    KeyTaken,
    NoSuchKey,
    StillNamed,
)
from pedigreeview.book.records import TABLES, Photo, Record
from pedigreeview.book.references import (
    Reference,
    mentioned,
    mentions,
    named_by,
    names,
    references,
    renamed,
)
from pedigreeview.book.row_images import (
    SETTINGS,
    SETTINGS_ROW,
    RowChange,
    StoredFile,
    key_of,
    table_columns,
    to_row,
)

__all__ = [
    "BadCell",
    "Change",
    "ChangedElsewhere",
    "Edit",
    "KeyTaken",
    "NoSuchKey",
    "RowChange",
    "StillNamed",
]

_FEW_LOOKS = 8
"""Looks through the whole book for who names a record, before all names are counted instead."""


class Edit:
    """One edit, over a snapshot of the book.

    Parameters
    ----------
    book : the snapshot to start from; nothing of it is changed
    words : what the menu says after 'Undo', such as 'Cross 24-03'; may be set until the end
    """

    def __init__(self, book: Book, words: str) -> None:
        self.words = words
        self.meanwhile: Change | None = None
        """What others had written since the person's snapshot; set by the store."""
        self.contents: dict[str, bytes] = {}
        """Bytes of the files that this edit puts in, by their SHA-256."""
        self._draft = Draft(book)
        self._before: dict[tuple[str, int], dict[str, Any] | None] = {}
        self._after: dict[tuple[str, int], Record | BookSettings | None] = {}
        self._looks = 0
        self._counts: Counter[str] | None = None

    @property
    def book(self) -> Book:
        """The new snapshot as changed so far."""
        return self._draft.book

    # Records ------------------------------------------------------------------------------------

    def add(self, record: Record) -> None:
        """Put a new record at the end of its table.

        Raises
        ------
        KeyTaken : its table has a record of that key
        NoSuchKey : it names a record that is not in the book
        BadCell : a value does not fit its column
        """
        self._fits(record, None)
        row_id = self._draft.insert(record)
        self._keep(record.TABLE, row_id, None, record)

    def add_all(self, records: Iterable[Record]) -> None:
        """Put several new records in, each after those that it names."""
        for record in records:
            self.add(record)

    def update(self, record: Record, **values: Any) -> Record:
        """Change columns of a record.

        Parameters
        ----------
        record : as it was shown to the person, so that a change made elsewhere since is seen
        values : by column; what is equal to what was shown is no change.  A new key renames

        Returns
        -------
        the new record

        Raises
        ------
        ChangedElsewhere : the record is gone, or a column that is changed here was changed since
        KeyTaken, NoSuchKey, BadCell : as for `add`
        """
        current, row_id = self._current(record)
        wanted = {name: value for name, value in values.items() if getattr(record, name) != value}
        differ = [
            name
            for name, value in wanted.items()
            if getattr(current, name) not in (getattr(record, name), value)
        ]
        if differ:
            raise ChangedElsewhere(record, key_of(record), differ)
        key = wanted.pop(record.KEY[0], None) if key_of(record) else None
        if key is not None and key != key_of(current):
            current = self.rename(current, key)
        wanted = {name: value for name, value in wanted.items() if getattr(current, name) != value}
        if not wanted:
            return current
        return self._replaced(row_id, current, replace(current, **wanted))

    def remove(self, record: Record) -> None:
        """Take a record out, with the marks 'this is right' that were set on it.

        record : as it was shown to the person

        Raises
        ------
        StillNamed : other records name it
        ChangedElsewhere : it is gone, or not as it was shown
        """
        current, row_id = self._current(record)
        if current != record:
            row, shown = to_row(current), to_row(record)
            differ = [name for name in row if row[name] != shown[name]]
            raise ChangedElsewhere(record, key_of(record), differ)
        marks: list[Record] = []
        if key := key_of(current):
            namers: list[Record] = []
            for reference, namer in self._named_by(record.TABLE, key):
                if namer is not current:
                    (namers if reference.holds else marks).append(namer)
            if namers:
                raise StillNamed(current, key, _each_once(namers))
        self._draft.delete(row_id, current)
        self._keep(record.TABLE, row_id, current, None)
        for mark in _each_once(marks):
            self.remove(mark)
        if isinstance(current, Photo):
            stored = self.book.files.get(_photo_path(current.photo))
            if stored is not None:
                self.remove(stored)

    def rename(self, record: Record, key: str) -> Record:
        """Change the key of a record, and every place that names it.

        Raises
        ------
        KeyTaken : another record has that key
        ChangedElsewhere : the record is gone
        BadCell : the key does not fit
        """
        old = key_of(record)
        if not old:
            raise ValueError(f"{record.TABLE} has no key of a single column")
        current, row_id = self._current(record)
        if key == old:
            return current
        namers = list(self._named_by(record.TABLE, old))
        new = replace(current, **{record.KEY[0]: key})
        self._fits(new, current, names_too=False)
        self._draft.replace(row_id, current, new)
        self._keep(record.TABLE, row_id, current, new)
        for reference, namer in namers:
            # A record may name the old key in several columns, and may be the renamed one itself.
            held = new if namer is current else self._current(namer)[0]
            text = renamed(reference, getattr(held, reference.column), record.TABLE, old, key)
            changed = replace(held, **{reference.column: text})
            row = row_id if namer is current else self._current(namer)[1]
            self._draft.replace(row, held, changed)
            self._keep(held.TABLE, row, held, changed)
            if namer is current:
                new = changed
        if isinstance(new, Photo) and (stored := self.book.files.get(_photo_path(old))):
            self.rename(stored, _photo_path(key))
        return new

    def named_by(self, record: Record) -> list[Record]:
        """The records that name this one, each once."""
        key = key_of(record)
        found = self._named_by(record.TABLE, key) if key else []
        itself = getattr(self.book, record.TABLE).get(key) if key else None
        return _each_once(
            namer for reference, namer in found if reference.holds and namer is not itself
        )

    # Settings and files -------------------------------------------------------------------------

    def set_settings(self, **values: Any) -> None:
        """Change fields of the book's settings."""
        old = self.book.settings
        known = {item.name for item in fields(BookSettings)}
        if unknown := values.keys() - known:
            raise ValueError(f"no settings {sorted(unknown)}")
        new = replace(old, **values)
        if new == old:
            return
        self._draft.settings(new)
        self._keep(SETTINGS, SETTINGS_ROW, old, new)

    def add_photo(self, photo: Photo, data: bytes) -> None:
        """Put a photo in, with the bytes of its file.

        Raises
        ------
        KeyTaken : there is a photo of that file name
        """
        self.add(photo)
        self.put_file(_photo_path(photo.photo), data)

    def put_file(self, path: str, data: bytes) -> None:
        """Keep a file in the book, in the place of one of the same path."""
        content = hashlib.sha256(data).hexdigest()
        self.contents[content] = data
        held = self.book.files.get(path)
        if held is None:
            self.add(StoredFile(path, content))
        elif held.content != content:
            self.update(held, content=content)

    # What was changed ---------------------------------------------------------------------------

    @property
    def changes(self) -> list[RowChange]:
        """Every row that differs from the snapshot, in the order of their first changes."""
        found = []
        for (table, row_id), before in self._before.items():
            record = self._after[table, row_id]
            after = None if record is None else to_row(record)
            if before != after:
                found.append(RowChange(table, row_id, before, after))
        return found

    def change(self) -> Change:
        """What the edit did, with what others had written before it."""
        own = change_of(self.words, self.changes)
        return own if self.meanwhile is None else self.meanwhile.then(own)

    def _keep(
        self,
        table: str,
        row_id: int,
        before: Record | BookSettings | None,
        after: Record | BookSettings | None,
    ) -> None:
        self._before.setdefault((table, row_id), None if before is None else to_row(before))
        self._after[table, row_id] = after
        if self._counts is not None:
            if isinstance(before, Record):
                self._counts.subtract(mentions(before))
            if isinstance(after, Record):
                self._counts.update(mentions(after))

    # Looking ------------------------------------------------------------------------------------

    def _current(self, record: Record) -> tuple[Record, int]:
        """The record as it is now, with its row id."""
        row_id = self._draft.row_of(record)
        held = None if row_id is None else self._draft.at(record.TABLE, row_id, key_of(record))
        if row_id is None or held is None:
            raise ChangedElsewhere(record, key_of(record))
        return held, row_id

    def _named_by(self, table: str, key: str) -> list[tuple[Reference, Record]]:
        self._looks += 1
        if self._looks > _FEW_LOOKS and self._counts is None:
            self._counts = Counter()
            for record in self.book.records():
                self._counts.update(mentions(record))
        if self._counts is not None and not any(
            self._counts[words] > 0 for words in mentioned(table, key)
        ):
            return []
        return list(named_by(self.book, table, key))

    def _replaced(self, row_id: int, old: Record, new: Record) -> Record:
        self._fits(new, old)
        self._draft.replace(row_id, old, new)
        self._keep(old.TABLE, row_id, old, new)
        return new

    def _fits(self, record: Record, old: Record | None, *, names_too: bool = True) -> None:
        """Look that a record can stand in its table; of an update only what differs."""
        for column in table_columns(record.TABLE):
            value = getattr(record, column.name)
            if old is None or getattr(old, column.name) != value:
                check_cell(record, column, value)
        if old is None or key_of(old) != key_of(record) or len(record.KEY) > 1:
            self._check_key(record, old)
        if not names_too:
            return
        table = record.TABLE
        for reference in references(table) if table in TABLES else ():
            text = getattr(record, reference.column)
            if reference.said or not reference.holds:
                continue
            if old is not None and text == getattr(old, reference.column):
                continue
            for code in names(reference, record):
                itself = table in reference.tables and code == key_of(record)
                if not itself and not any(code in getattr(self.book, t) for t in reference.tables):
                    raise NoSuchKey(record, reference.column, code, reference.tables)

    def _check_key(self, record: Record, old: Record | None) -> None:
        key = key_of(record)
        if key:
            if key in getattr(self.book, record.TABLE):
                raise KeyTaken(record, key)
        elif record.KEY:
            wanted = [getattr(record, name) for name in record.KEY]
            if old is not None and [getattr(old, name) for name in record.KEY] == wanted:
                return
            for other in getattr(self.book, record.TABLE):
                if [getattr(other, name) for name in record.KEY] == wanted:
                    raise KeyTaken(record, " and ".join(wanted))


def _photo_path(name: str) -> str:
    return f"photos/{name}"


def _each_once(records: Iterable[Record]) -> list[Record]:
    return list({id(record): record for record in records}.values())
