"""The tables of a book's file, made from the dataclasses of the records.

Each kind of record is one table: its columns, `row_id` before them and `extra` (JSON) after them.
What the declarations say is held by constraints: words, keys, names of other records.  A blank
foreign key is NULL, for a blank names nothing.  Beside them stand:

- `book`, one row: the settings;
- `about`, one row: the revision (one higher with each edit) and what else belongs to the book;
- `unknown_tables`, `files` and `contents`: what a folder holds beside the known tables;
- `steps` and `events`: what can be undone, and which revision did which step.
"""

from __future__ import annotations

from dataclasses import fields
from functools import cache
from typing import Any

from pedigreeview.book.book import BookSettings
from pedigreeview.book.records import Column
from pedigreeview.book.row_images import ROW_TYPES, SETTINGS, table_columns

__all__ = ["APPLICATION_ID", "VERSION", "quoted", "statements"]

APPLICATION_ID = 0x43726F73
"""'Cros' in the header of the file says that it is a crossing book."""
VERSION = 2
"""`user_version` of the files that this version of the program writes."""

_TYPES = {"text": "TEXT", "date": "TEXT", "whole": "INTEGER", "number": "REAL", "flag": "INTEGER"}
_YEAR = "[0-9][0-9][0-9][0-9]"
_DATES = (_YEAR, f"{_YEAR}-[0-9][0-9]", f"{_YEAR}-[0-9][0-9]-[0-9][0-9]")

_BESIDE = {
    "about": (
        '"one" INTEGER PRIMARY KEY CHECK ("one" = 1)',
        '"revision" INTEGER NOT NULL',
        '"book_id" TEXT NOT NULL',
        '"descriptor" TEXT NOT NULL',
    ),
    "unknown_tables": (
        '"row_id" INTEGER PRIMARY KEY',
        '"name" TEXT NOT NULL UNIQUE',
        '"text" TEXT NOT NULL',
    ),
    "contents": ('"content" TEXT PRIMARY KEY', '"data" BLOB NOT NULL'),
    "steps": (
        '"step" INTEGER PRIMARY KEY AUTOINCREMENT',
        '"words" TEXT NOT NULL',
        '"made_at" TEXT NOT NULL',
        '"undone" INTEGER NOT NULL CHECK ("undone" IN (0, 1))',
        '"changes" TEXT NOT NULL',
    ),
    "events": (
        '"revision" INTEGER PRIMARY KEY',
        '"step" INTEGER NOT NULL REFERENCES "steps" ("step") ON DELETE CASCADE',
        '"back" INTEGER NOT NULL CHECK ("back" IN (0, 1))',
    ),
}


def quoted(name: str) -> str:
    """A name as SQL writes it; several are words of SQL ('values', 'left', 'set')."""
    return '"' + name.replace('"', '""') + '"'


def _words(words: tuple[str, ...]) -> str:
    return ", ".join("'" + word.replace("'", "''") + "'" for word in words)


def _usual(value: str | float) -> str:
    """What a blank means, for rows of a version that did not have the column."""
    if isinstance(value, str):
        return f"'{value}'"
    return repr(int(value) if isinstance(value, bool) else value)


def _column(column: Column, *, alone_key: bool) -> str:
    name = quoted(column.name)
    said = f"{name} {_TYPES[column.kind]}"
    if column.names:
        said += " NOT NULL" if column.required else ""
        key = table_columns(column.names)[0].name
        there = f"{quoted(column.names)} ({quoted(key)})"
        return f"{said} REFERENCES {there} DEFERRABLE INITIALLY DEFERRED"
    if column.required:
        said += " NOT NULL"
    elif column.default is not None:
        said += f" NOT NULL DEFAULT {_usual(column.default)}"
    if alone_key:
        said += " UNIQUE"
    if column.choices:
        words = column.choices if column.required else ("", *column.choices)
        said += f" CHECK ({name} IN ({_words(words)}))"
    elif column.kind == "date":
        forms = " OR ".join(f"{name} GLOB '{form}'" for form in _DATES)
        said += f" CHECK ({name} = '' OR {forms})"
    elif column.kind == "flag":
        said += f" CHECK ({name} IN (0, 1))"
    elif column.kind == "text" and column.required:
        said += f" CHECK ({name} <> '')"
    return said


def _record_table(table: str) -> tuple[str, ...]:
    key = ROW_TYPES[table].KEY
    found = ['"row_id" INTEGER PRIMARY KEY AUTOINCREMENT']
    found += [_column(column, alone_key=key == (column.name,)) for column in table_columns(table)]
    found.append('"extra" TEXT')
    if len(key) > 1:
        found.append(f"UNIQUE ({', '.join(map(quoted, key))})")
    return tuple(found)


def _settings_table() -> tuple[str, ...]:
    found = ['"row_id" INTEGER PRIMARY KEY CHECK ("row_id" = 1)']
    for item in fields(BookSettings):
        said = str(item.type)
        if item.name == "extra":
            found.append('"extra" TEXT')
            continue
        kind = "INTEGER" if "int" in said else "REAL" if "float" in said else "TEXT"
        usual: Any = item.default
        held = "" if "None" in said else f" NOT NULL DEFAULT {_usual(usual)}"
        found.append(f"{quoted(item.name)} {kind}{held}")
    return tuple(found)


def _made(table: str, lines: tuple[str, ...]) -> str:
    return f"CREATE TABLE {quoted(table)} (\n  " + ",\n  ".join(lines) + "\n) STRICT"


@cache
def statements() -> dict[tuple[str, str], str]:
    """The statement that makes each part of the file, by its kind and name; tables first."""
    found = {("table", SETTINGS): _made(SETTINGS, _settings_table())}
    for table in ROW_TYPES:
        found["table", table] = _made(table, _record_table(table))
    for table, lines in _BESIDE.items():
        found["table", table] = _made(table, lines)
    for table in ROW_TYPES:
        for column in table_columns(table):
            if column.names:
                # A key that changes or goes looks for who names it.
                name = f"{table}.{column.name}"
                found["index", name] = (
                    f"CREATE INDEX {quoted(name)} ON {quoted(table)} ({quoted(column.name)})"
                )
    found["index", "events.step"] = 'CREATE INDEX "events.step" ON "events" ("step")'
    return found
