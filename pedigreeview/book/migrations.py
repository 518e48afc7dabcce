"""From an older version of a book's file to the present one, a step for each version.

A step is one function, and all steps of an upgrade and the note of the new version are one
transaction.  A table that changes is made new, filled from the old one, and takes its place;
columns that are new take what a blank means.  What later versions need of an older one is kept as
text (`version_1`); the present one is made from the records (`schema`).

When the present version changes: keep the text of `schema.statements()` as `version_N`, raise
`schema.VERSION`, and add the step here and a stored file to `tests/book/data`.
"""

from __future__ import annotations

import hashlib
import re
import sqlite3
from collections.abc import Callable, Mapping
from pathlib import Path

from pedigreeview.book.file_faults import BookDamaged
from pedigreeview.book.schema import VERSION, quoted, statements
from pedigreeview.book.version_1 import TABLES_1

__all__ = ["OLDEST", "expected", "migrate"]

OLDEST = 1
"""The oldest version that is opened."""

Statements = Mapping[tuple[str, str], str]

_MADE = re.compile(r'CREATE (TABLE|INDEX) "([^"]+)"')


def _parted(text: str) -> dict[tuple[str, str], str]:
    found = {}
    for sql in text.split(";\n"):
        made = _MADE.match(sql)
        assert made is not None
        found[made[1].lower(), made[2]] = sql.strip()
    return found


_TEXTS: dict[int, str] = {1: TABLES_1}


def expected(version: int) -> Statements:
    """The statements that made a file of a version, by kind and name."""
    return statements() if version == VERSION else _parted(_TEXTS[version])


def _columns(connection: sqlite3.Connection, table: str) -> list[str]:
    return [row[1] for row in connection.execute(f"PRAGMA table_info({quoted(table)})")]


def _reshape(connection: sqlite3.Connection, target: Statements) -> None:
    """Make new tables and indexes, and give those that differ their new form with their rows."""
    held = {
        (kind, name): sql
        for kind, name, sql in connection.execute(
            "SELECT type, name, sql FROM sqlite_master WHERE sql IS NOT NULL"
        )
    }
    for (kind, name), sql in target.items():
        old = held.get((kind, name))
        if kind != "table" or (old is not None and old.split() == sql.split()):
            continue
        if old is None:
            connection.execute(sql)
            continue
        _renew(connection, name, sql)
    here = {
        name
        for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'index'")
    }
    for (kind, name), sql in target.items():
        if kind == "index" and name not in here:
            connection.execute(sql)


def _renew(connection: sqlite3.Connection, table: str, sql: str) -> None:
    beside = f"new {table}"
    connection.execute(sql.replace(quoted(table), quoted(beside), 1))
    there = set(_columns(connection, beside))
    names = ", ".join(quoted(name) for name in _columns(connection, table) if name in there)
    given = connection.execute("SELECT seq FROM sqlite_sequence WHERE name = ?", (table,))
    last = given.fetchone()
    connection.execute(
        f"INSERT INTO {quoted(beside)} ({names}) SELECT {names} FROM {quoted(table)}"
    )
    connection.execute(f"DROP TABLE {quoted(table)}")
    connection.execute(f"ALTER TABLE {quoted(beside)} RENAME TO {quoted(table)}")
    if last is not None:
        # Ids of rows that are gone are not given again.
        connection.execute("UPDATE sqlite_sequence SET seq = ? WHERE name = ?", (*last, table))


def _from_1(connection: sqlite3.Connection) -> None:
    """Photos become files kept by their contents; many tables and the undo steps are new."""
    _reshape(connection, expected(2))
    for photo, data in connection.execute('SELECT "photo", "data" FROM "photo_files"'):
        content = hashlib.sha256(data).hexdigest()
        connection.execute('INSERT OR IGNORE INTO "contents" VALUES (?, ?)', (content, data))
        connection.execute(
            'INSERT INTO "files" ("path", "content") VALUES (?, ?)', (f"photos/{photo}", content)
        )
    connection.execute('DROP TABLE "photo_files"')


_STEPS: dict[int, Callable[[sqlite3.Connection], None]] = {1: _from_1}


def migrate(connection: sqlite3.Connection, path: Path) -> None:
    """Bring a file to the present version, all or nothing.

    Raises
    ------
    BookDamaged : its records do not fit together
    """
    # A table that is dropped would take along what names it.
    connection.execute("PRAGMA foreign_keys = OFF")
    try:
        connection.execute("BEGIN IMMEDIATE")
        try:
            # Another program may have done it since.
            version = int(connection.execute("PRAGMA user_version").fetchone()[0])
            for older in range(version, VERSION):
                _STEPS[older](connection)
            broken = connection.execute("PRAGMA foreign_key_check").fetchone()
            if broken is not None:
                raise BookDamaged(path, f"a row of {broken[0]} names what is not there")
            connection.execute(f"PRAGMA user_version = {VERSION}")
            connection.execute("COMMIT")
        except BaseException:
            if connection.in_transaction:
                connection.execute("ROLLBACK")
            raise
    finally:
        connection.execute("PRAGMA foreign_keys = ON")
