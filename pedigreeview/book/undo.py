"""Undo and redo, kept in the book's file: the rows that each step changed, before and after.

A step is data (JSON) and nothing in it is ever run.  All windows share one row of steps: the newest
that is not undone is undone next.  A new step forgets those that are undone.  `LIMIT` steps are
kept.  Each revision of the book notes which step was made, or taken back, so that another window
can follow without reading the book anew.
"""

from __future__ import annotations

import datetime
import json
import sqlite3
from collections.abc import Iterable
from dataclasses import MISSING, dataclass, fields
from functools import cache
from typing import Any

from pedigreeview.book.book import BookSettings
from pedigreeview.book.row_images import (
    ROW_TYPES,
    SETTINGS,
    SETTINGS_ROW,
    RowChange,
    row_columns,
    table_columns,
)

__all__ = [
    "LIMIT",
    "Done",
    "Step",
    "add_step",
    "clear_away",
    "following",
    "forget_event",
    "from_json",
    "mark",
    "next_step",
    "steps",
    "to_json",
]

LIMIT = 1_000
"""Steps that can be undone."""

Step = tuple[int, str, str]
"""Number, words and changes (JSON) of a step."""


@dataclass(frozen=True, slots=True)
class Done:
    """One step as a person reads it.

    step : its number; later steps have higher ones
    words : what was done
    made_at : when, an ISO time with its zone
    undone : whether it was taken back, and can be made again
    """

    step: int
    words: str
    made_at: str
    undone: bool


# Rows as JSON ------------------------------------------------------------------------------------


@cache
def _usual(table: str) -> dict[str, Any]:
    """The value that each column of a row has where it is left out of a step."""
    made: Any = BookSettings if table == SETTINGS else ROW_TYPES[table]
    return {
        item.name: {} if item.name == "extra" else item.default
        for item in fields(made)
        if item.name == "extra" or item.default is not MISSING
    }


def _image(change: RowChange, row: dict[str, Any] | None) -> dict[str, Any] | None:
    if row is None:
        return None
    usual = _usual(change.table)
    if change.before is None or change.after is None:
        return {n: value for n, value in row.items() if n not in usual or value != usual[n]}
    wanted = change.differing()
    if change.table != SETTINGS and len(ROW_TYPES[change.table].KEY) == 1:
        wanted |= set(ROW_TYPES[change.table].KEY)
    return {name: value for name, value in row.items() if name in wanted}


def to_json(changes: Iterable[RowChange]) -> str:
    """Changes with whole rows as text: of an update only the columns that differ, and the key."""
    return json.dumps(
        [[c.table, c.row_id, _image(c, c.before), _image(c, c.after)] for c in changes],
        separators=(",", ":"),
    )


def from_json(text: str) -> list[RowChange]:
    """The changes of a step.

    Raises
    ------
    ValueError : the text is none that this program writes
    """
    try:
        held = json.loads(text)
        if not isinstance(held, list):
            raise ValueError("a step is no list")
        return [_change(*item) for item in held]
    except (TypeError, KeyError, RecursionError) as error:
        raise ValueError(f"a step cannot be read: {error}") from error


def _change(table: str, row_id: int, before: Any, after: Any) -> RowChange:
    known = table in ROW_TYPES or (
        table == SETTINGS and row_id == SETTINGS_ROW and before and after
    )
    if not known or type(row_id) is not int or (before is None and after is None):
        raise ValueError(f"a step names {table!r}")
    come_or_gone = before is None or after is None
    for row in (before, after):
        if row is not None:
            _check_row(table, row)
    return RowChange(
        table,
        row_id,
        None if before is None else ({**_usual(table), **before} if come_or_gone else before),
        None if after is None else ({**_usual(table), **after} if come_or_gone else after),
    )


def _check_row(table: str, row: dict[str, Any]) -> None:
    strange = row.keys() - set(row_columns(table))
    if strange:
        raise ValueError(f"a step names {min(strange)!r}")
    kinds: dict[str, str] = (
        {item.name: "text" for item in fields(BookSettings) if item.type == "str"}
        if table == SETTINGS
        else {column.name: column.kind for column in table_columns(table)}
    )
    for name, value in row.items():
        fits: bool
        if name == "extra":
            fits = isinstance(value, dict) and all(isinstance(v, str) for v in value.values())
        elif kinds.get(name) in ("text", "date"):
            fits = isinstance(value, str)
        elif kinds.get(name) == "flag":
            fits = value is None or isinstance(value, bool)
        else:
            fits = value is None or type(value) in (int, float)
        if not fits:
            raise ValueError(f"a step has {value!r} under {name!r}")


# Steps in the file -------------------------------------------------------------------------------


def next_step(connection: sqlite3.Connection, *, redo: bool = False) -> Step | None:
    """The step that would be undone, or made again, next."""
    way = "ASC" if redo else "DESC"
    found: Step | None = connection.execute(
        'SELECT "step", "words", "changes" FROM "steps" WHERE "undone" = ? '
        f'ORDER BY "step" {way} LIMIT 1',
        (int(redo),),
    ).fetchone()
    return found


def steps(connection: sqlite3.Connection) -> list[Done]:
    """All steps that can be undone or made again, the newest first."""
    rows = connection.execute(
        'SELECT "step", "words", "made_at", "undone" FROM "steps" ORDER BY "step" DESC'
    )
    return [Done(int(step), str(words), str(at), bool(undone)) for step, words, at, undone in rows]


def add_step(
    connection: sqlite3.Connection, words: str, changes: Iterable[RowChange], revision: int
) -> None:
    """Keep a new step, which forgets those that are undone and the oldest beyond the limit."""
    now = datetime.datetime.now().astimezone().isoformat(timespec="seconds")
    connection.execute('DELETE FROM "steps" WHERE "undone" = 1')
    added = connection.execute(
        'INSERT INTO "steps" ("words", "made_at", "undone", "changes") VALUES (?, ?, 0, ?)',
        (words, now, to_json(changes)),
    )
    connection.execute(
        'INSERT INTO "events" ("revision", "step", "back") VALUES (?, ?, 0)',
        (revision, added.lastrowid),
    )
    connection.execute(
        'DELETE FROM "steps" WHERE "step" <= '
        '(SELECT "step" FROM "steps" ORDER BY "step" DESC LIMIT 1 OFFSET ?)',
        (LIMIT,),
    )


def mark(connection: sqlite3.Connection, step: int, revision: int, *, undone: bool) -> None:
    """Note that a step was undone or made again."""
    connection.execute('UPDATE "steps" SET "undone" = ? WHERE "step" = ?', (int(undone), step))
    connection.execute(
        'INSERT INTO "events" ("revision", "step", "back") VALUES (?, ?, ?)',
        (revision, step, int(undone)),
    )
    # Followers that are further behind than this read the book anew.
    connection.execute('DELETE FROM "events" WHERE "revision" <= ?', (revision - LIMIT,))


def forget_event(connection: sqlite3.Connection, revision: int) -> None:
    """Let followers read the book anew: what was done then is not what its step says."""
    connection.execute('DELETE FROM "events" WHERE "revision" = ?', (revision,))


def following(
    connection: sqlite3.Connection, since: int, now: int
) -> list[tuple[str, list[RowChange]]] | None:
    """Words and changes from one revision to another; None where some are no longer known."""
    rows = connection.execute(
        'SELECT "words", "changes", "back" FROM "events" JOIN "steps" USING ("step") '
        'WHERE "revision" > ? ORDER BY "revision"',
        (since,),
    ).fetchall()
    if len(rows) != now - since:
        return None
    found = []
    for words, text, back in rows:
        changes = from_json(text)
        found.append((words, [change.back() for change in changes] if back else changes))
    return found


def clear_away(connection: sqlite3.Connection) -> None:
    """Forget the bytes of files that neither the book nor a step names any more."""
    unused = connection.execute(
        'SELECT "content" FROM "contents" WHERE "content" NOT IN (SELECT "content" FROM "files")'
    ).fetchall()
    for (content,) in unused:
        named = connection.execute(
            'SELECT 1 FROM "steps" WHERE instr("changes", ?) LIMIT 1', (content,)
        ).fetchone()
        if named is None:
            connection.execute('DELETE FROM "contents" WHERE "content" = ?', (content,))
