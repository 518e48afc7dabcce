"""What a book's file may hold: our own tables alone, looked at before anything else is read."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Mapping
from pathlib import Path

from pedigreeview.book.file_faults import BookDamaged, NotABook, StrangeBook
from pedigreeview.book.schema import APPLICATION_ID, quoted

__all__ = ["refuse_strangers", "version_of"]

_OF_SQLITE = re.compile(r"sqlite_(sequence|autoindex_.*|stat[134])\Z")


def version_of(connection: sqlite3.Connection, path: Path) -> int:
    """The version of a book's file.

    Raises
    ------
    NotABook : it is a database of another program
    """
    if connection.execute("PRAGMA application_id").fetchone()[0] != APPLICATION_ID:
        raise NotABook(path, "This is a database of another program, no crossing book.")
    version = int(connection.execute("PRAGMA user_version").fetchone()[0])
    if version < 1:
        raise BookDamaged(path, "its version is not said")
    return version


def refuse_strangers(
    connection: sqlite3.Connection, path: Path, expected: Mapping[tuple[str, str], str] | None
) -> None:
    """Look through the list of what the file holds.

    Parameters
    ----------
    expected : the statement of every part by kind and name; None for a newer version, whose tables
        are not known: then only plain tables and indexes pass

    Raises
    ------
    StrangeBook : there is something that this program does not make
    BookDamaged : something is missing
    """
    found: dict[tuple[str, str], str] = {}
    for kind, name, root, sql in connection.execute(
        "SELECT type, name, rootpage, sql FROM sqlite_master"
    ):
        if kind in ("trigger", "view"):
            raise StrangeBook(path, f"the {kind} {name!r}")
        if kind not in ("table", "index") or not isinstance(name, str) or not root:
            raise StrangeBook(path, f"the special table {str(name)!r}")
        if not _OF_SQLITE.match(name):
            found[kind, name] = sql or ""
    if expected is None:
        _only_plain(connection, path, found)
        return
    for part in found:
        if part not in expected:
            raise StrangeBook(path, f"the {part[0]} {part[1]!r}")
    for part, sql in expected.items():
        if part not in found:
            raise BookDamaged(path, f"the {part[0]} {part[1]!r} is missing")
        if _squeezed(found[part]) != _squeezed(sql):
            raise StrangeBook(path, f"the {part[0]} {part[1]!r} in another form")


def _squeezed(sql: str) -> str:
    return " ".join(sql.split())


def _only_plain(
    connection: sqlite3.Connection, path: Path, found: Mapping[tuple[str, str], str]
) -> None:
    """Refuse columns and indexes that are computed when they are read."""
    for kind, name in found:
        if kind == "table":
            for column in connection.execute(f"PRAGMA table_xinfo({quoted(name)})"):
                if column[6]:
                    raise StrangeBook(path, f"the computed column {column[1]!r}")
        else:
            for column in connection.execute(f"PRAGMA index_xinfo({quoted(name)})"):
                if column[1] == -2:
                    raise StrangeBook(path, f"the computed index {name!r}")
