"""The rows of a book's file, read into a `Book`."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Collection, Iterator
from dataclasses import fields
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.file_faults import BookDamaged
from pedigreeview.book.memory import uncollected
from pedigreeview.book.number_ranges import RANGES, SETTING_RANGES, fits_range
from pedigreeview.book.records import TABLES
from pedigreeview.book.row_ids import RowIds
from pedigreeview.book.row_images import FILES, ROW_TYPES, SETTINGS, table_columns
from pedigreeview.book.schema import quoted
from pedigreeview.book.ticks import Tick, no_tick

__all__ = ["Tick", "no_tick", "read_book", "read_extra", "records_of"]

_EACH = 20_000
"""Rows between two ticks."""


def read_extra(text: Any) -> dict[str, str]:
    """Further columns of a row; ValueError where they are none."""
    if text is None:
        return {}
    found = json.loads(text)
    if not isinstance(found, dict) or not all(isinstance(value, str) for value in found.values()):
        raise ValueError("further columns that are no texts")
    return found


def _present(connection: sqlite3.Connection, table: str) -> set[str]:
    return {row[1] for row in connection.execute(f"PRAGMA table_info({quoted(table)})")}


def records_of(
    connection: sqlite3.Connection, table: str, present: Collection[str] | None = None
) -> Iterator[tuple[int, Any]]:
    """Row id and record of every row of a table, in order.

    present : the columns that the file has, where they may not be all that we know
    """
    described = table_columns(table)
    here = [column for column in described if present is None or column.name in present]
    chosen = [
        f"ifnull({quoted(column.name)}, '')" if column.names else quoted(column.name)
        for column in here
    ]
    rows = connection.execute(
        f'SELECT "row_id", {", ".join(chosen)}, "extra" FROM {quoted(table)} ORDER BY "row_id"'
    )
    made: Any = ROW_TYPES[table]
    flags = [place for place, column in enumerate(here, start=1) if column.kind == "flag"]
    if flags or len(here) < len(described):
        names = [column.name for column in here]
        for row in rows:
            values = list(row)
            for place in flags:
                if values[place] is not None:
                    values[place] = bool(values[place])
            record = made(**dict(zip(names, values[1:-1], strict=True)))
            if values[-1] is not None:
                record.extra = read_extra(values[-1])
            yield row[0], record
        return
    for row in rows:
        if row[-1] is None:
            yield row[0], made(*row[1:-1])
        else:
            yield row[0], made(*row[1:-1], read_extra(row[-1]))


def read_book(
    connection: sqlite3.Connection,
    path: Path,
    *,
    newer: bool = False,
    tick: Tick = no_tick,
) -> Book:
    """Everything in the file; to be called inside a transaction.

    Parameters
    ----------
    newer : whether a newer version made the file, so that tables and columns may be missing

    Raises
    ------
    BookDamaged : something in it cannot be what it should
    """
    book = Book(path=path)
    ids = book.row_ids = RowIds()
    try:
        with uncollected():
            for table in (*TABLES, FILES):
                _read_table(connection, book, ids, table, newer=newer, tick=tick)
                tick()
            _check_numbers(connection)
        _read_beside(connection, book, newer=newer)
    except (ValueError, TypeError, KeyError, RecursionError) as error:
        raise BookDamaged(path, f"a row cannot be read: {error}") from error
    return book


def _read_table(
    connection: sqlite3.Connection,
    book: Book,
    ids: RowIds,
    table: str,
    *,
    newer: bool,
    tick: Tick,
) -> None:
    present = None
    if newer:
        present = _present(connection, table)
        if "row_id" not in present or "extra" not in present:
            return
    held = getattr(book, table)
    rows = records_of(connection, table, present)
    if isinstance(held, dict):
        key = ROW_TYPES[table].KEY[0]
        numbered: dict[str, int] = {}
        for count, (row_id, record) in enumerate(rows):
            code = getattr(record, key)
            held[code] = record
            numbered[code] = row_id
            if count % _EACH == 0:
                tick()
        ids.tables[table] = numbered
        last = next(reversed(numbered.values()), 0)
    else:
        numbers: list[int] = []
        for count, (row_id, record) in enumerate(rows):
            held.append(record)
            numbers.append(row_id)
            if count % _EACH == 0:
                tick()
        ids.tables[table] = numbers
        last = numbers[-1] if numbers else 0
    given = connection.execute("SELECT seq FROM sqlite_sequence WHERE name = ?", (table,))
    ids.following[table] = max(last, *(row[0] for row in given), 0) + 1


def _check_numbers(connection: sqlite3.Connection) -> None:
    """Look whether the numbers of the rows are ones that others can be worked out from."""
    for (table, name), (low, high) in RANGES.items():
        if name not in _present(connection, table):
            continue
        asked = f"SELECT {quoted(name)} FROM {quoted(table)} WHERE {quoted(name)} < ? "
        asked += "" if high is None else f"OR {quoted(name)} > ? "
        row = connection.execute(
            f"{asked} LIMIT 1", (low,) if high is None else (low, high)
        ).fetchone()
        if row is not None:
            raise ValueError(f"the {name} {row[0]!r} of a row of {table} cannot be")


def _read_beside(connection: sqlite3.Connection, book: Book, *, newer: bool) -> None:
    present = _present(connection, SETTINGS)
    names = [item.name for item in fields(BookSettings) if not newer or item.name in present]
    row = connection.execute(
        f"SELECT {', '.join(map(quoted, names))} FROM {quoted(SETTINGS)}"
    ).fetchone()
    if row is None:
        raise ValueError("the settings are missing")
    values = dict(zip(names, row, strict=True))
    values["extra"] = read_extra(values.get("extra"))
    for name, between in SETTING_RANGES.items():
        if not fits_range(values.get(name), between):
            raise ValueError(f"the setting {name} {values[name]!r} cannot be")
    book.settings = BookSettings(**values)
    if newer and not {"name", "text"} <= _present(connection, "unknown_tables"):
        return
    book.unknown_tables = dict(
        connection.execute('SELECT "name", "text" FROM "unknown_tables" ORDER BY "row_id"')
    )
    descriptor = json.loads(connection.execute('SELECT "descriptor" FROM "about"').fetchone()[0])
    if not isinstance(descriptor, dict):
        raise ValueError("the description is none")
    book.descriptor = descriptor
