"""Rows written into a book's file, one change at a time or a whole book at once.

Every value goes in as a parameter; names of tables and columns come from our own declarations.
"""

from __future__ import annotations

import json
import sqlite3
import uuid
from collections.abc import Iterable, Iterator, Mapping
from operator import attrgetter
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.drafts import OutOfStep
from pedigreeview.book.reading_rows import Tick, no_tick
from pedigreeview.book.records import TABLES, Record
from pedigreeview.book.row_images import (
    FILES,
    ROW_TYPES,
    SETTINGS,
    SETTINGS_ROW,
    RowChange,
    row_columns,
    table_columns,
    to_row,
)
from pedigreeview.book.schema import APPLICATION_ID, VERSION, quoted, statements

__all__ = ["fill", "make_tables", "write_changes", "write_contents"]

_BATCH = 5_000


def _cell(blank_is_null: bool, name: str, value: Any) -> Any:
    if name == "extra":
        return json.dumps(value) if value else None
    return None if blank_is_null and value == "" else value


def _named(table: str) -> frozenset[str]:
    if table == SETTINGS:
        return frozenset()
    return frozenset(column.name for column in table_columns(table) if column.names)


def _insert(table: str) -> str:
    names = ("row_id", *row_columns(table))
    marks = ", ".join("?" * len(names))
    return f"INSERT INTO {quoted(table)} ({', '.join(map(quoted, names))}) VALUES ({marks})"


def _values(table: str, row_id: int, row: Mapping[str, Any]) -> tuple[Any, ...]:
    named = _named(table)
    return (row_id, *(_cell(name in named, name, row[name]) for name in row_columns(table)))


# Changes -----------------------------------------------------------------------------------------


def write_changes(connection: sqlite3.Connection, changes: Iterable[RowChange]) -> None:
    """Make changes in the file, inside a transaction; their rows are whole.

    Raises
    ------
    OutOfStep : a row that is to be changed or removed is not there
    """
    held = list(changes)
    gone = [change for change in held if change.after is None]
    new = [change for change in held if change.before is None]
    other = [change for change in held if change.before is not None and change.after is not None]
    for change in gone:
        done = connection.execute(
            f'DELETE FROM {quoted(change.table)} WHERE "row_id" = ?', (change.row_id,)
        )
        if done.rowcount != 1:
            raise OutOfStep(change)
    _free_keys(connection, other)
    for change in other:
        _update(connection, change, sorted(change.differing()))
    for change in new:
        connection.execute(
            _insert(change.table), _values(change.table, change.row_id, change.after or {})
        )


def _free_keys(connection: sqlite3.Connection, changes: list[RowChange]) -> None:
    """Let keys that change hands go before they are taken: uniqueness is held at every moment."""
    moving: dict[str, list[RowChange]] = {}
    for change in changes:
        if change.table != SETTINGS and change.differing() & set(ROW_TYPES[change.table].KEY):
            moving.setdefault(change.table, []).append(change)
    for table, several in moving.items():
        if len(several) > 1:
            key = quoted(ROW_TYPES[table].KEY[-1])
            connection.executemany(
                f'UPDATE {quoted(table)} SET {key} = ? WHERE "row_id" = ?',
                [(f"\x01{uuid.uuid4().hex}", change.row_id) for change in several],
            )


def _update(connection: sqlite3.Connection, change: RowChange, names: list[str]) -> None:
    after, named = change.after or {}, _named(change.table)
    sets = ", ".join(f"{quoted(name)} = ?" for name in names)
    done = connection.execute(
        f'UPDATE {quoted(change.table)} SET {sets} WHERE "row_id" = ?',
        (*(_cell(name in named, name, after[name]) for name in names), change.row_id),
    )
    if done.rowcount != 1:
        raise OutOfStep(change)


def write_contents(connection: sqlite3.Connection, contents: Mapping[str, bytes]) -> None:
    """Keep the bytes of files, each once."""
    connection.executemany(
        'INSERT OR IGNORE INTO "contents" ("content", "data") VALUES (?, ?)', contents.items()
    )


# A whole book ------------------------------------------------------------------------------------


def make_tables(connection: sqlite3.Connection, *kinds: str) -> None:
    """Make the tables, or the indexes, of an empty file."""
    for (kind, _), sql in statements().items():
        if kind in kinds:
            connection.execute(sql)


def _rows_of(table: str, records: Iterable[Record], first: int) -> Iterator[tuple[Any, ...]]:
    """The values of many records, whose row ids run on from `first`."""
    names = row_columns(table)
    value_of = attrgetter(*names)
    blank_is_null = [place for place, name in enumerate(names) if name in _named(table)]
    for row_id, record in enumerate(records, first):
        values = list(value_of(record))
        for place in blank_is_null:
            if values[place] == "":
                values[place] = None
        # `extra` stands last.
        values[-1] = json.dumps(values[-1]) if values[-1] else None
        yield row_id, *values


def fill(connection: sqlite3.Connection, book: Book, tick: Tick = no_tick) -> None:
    """Put a book into tables that are empty, inside a transaction."""
    connection.execute(_insert(SETTINGS), _values(SETTINGS, SETTINGS_ROW, to_row(book.settings)))
    connection.execute(
        'INSERT INTO "about" VALUES (1, 1, ?, ?)', (uuid.uuid4().hex, json.dumps(book.descriptor))
    )
    connection.executemany(
        'INSERT INTO "unknown_tables" ("name", "text") VALUES (?, ?)', book.unknown_tables.items()
    )
    for table in (*TABLES, FILES):
        sql, records = _insert(table), book.table(table)
        for start in range(0, len(records), _BATCH):
            tick()
            connection.executemany(
                sql, _rows_of(table, records[start : start + _BATCH], first=start + 1)
            )
    connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
    connection.execute(f"PRAGMA user_version = {VERSION}")
