"""The `datapackage.json` of a book: every table with its schema, and what the folder that was read
said beside them.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.dates import PATTERN
from pedigreeview.book.number_ranges import RANGES
from pedigreeview.book.records import TABLES, Column, Record
from pedigreeview.exchange.cells import columns_of
from pedigreeview.exchange.package_resources import Passenger, package_name
from pedigreeview.exchange.text_files import sheet

__all__ = ["PROFILE", "PROFILES", "description", "extra_names"]

PROFILE = "tabular-data-package"
PROFILES = (PROFILE, "data-package")
"""The profile of a folder with tables alone, and of one where other files go along."""

_TYPES = {"text": "string", "whole": "integer", "number": "number", "flag": "boolean"}
_STALE = ("bytes", "hash", "dialect", "data")
"""What an entry says of the file that was read, which is not true of the file that is written."""

_SURROGATE = re.compile("[\ud800-\udfff]")

_Entry = dict[str, Any]


def extra_names(table: str, records: Iterable[Record]) -> dict[str, str]:
    """The heading of each further column by its name, in the order of their first cells.

    A plant table may keep as a note what the folder knows as a column of its own; such a name gets
    another heading.
    """
    names = dict.fromkeys(name for record in records for name in getattr(record, "extra", {}))
    known = {column.name for column in columns_of(table)}
    taken = known | names.keys()
    found: dict[str, str] = {}
    for name in names:
        heading, count = name, 1
        if name in known:
            heading = f"{name}_note"
            while heading in taken:
                count += 1
                heading = f"{name}_note_{count}"
            taken.add(heading)
        found[name] = heading
    return found


def description(book: Book, texts: dict[str, str], along: list[Passenger]) -> str:
    """The text of the descriptor.

    Parameters
    ----------
    book : its own descriptor says what is kept of the one that was read
    texts : the text of every table by its file's name
    along : resources that are no table of the book
    """
    held = book.descriptor
    found: _Entry = {
        "profile": PROFILES[1] if along else PROFILE,
        "name": held.get("name", package_name(book.settings)),
    }
    if book.settings.name:
        found["title"] = book.settings.name
    found.update((key, said) for key, said in held.items() if key not in ("profile", "resources"))
    before: dict[str, _Entry] = {}
    for item in held.get("resources", []):
        if isinstance(item, dict):
            name, path = item.get("name"), item.get("path")
            path = path[0] if isinstance(path, list) and path else path
            ours = isinstance(name, str) and (name in TABLES or name == "book")
            key = f"{name}.csv" if ours else path
            if isinstance(key, str):
                before.setdefault(key, item)
    found["resources"] = [
        _resource(book, file, text, texts, before.get(file, {})) for file, text in texts.items()
    ] + [passenger.entry for passenger in along]
    said = json.dumps(found, ensure_ascii=False, indent=2) + "\n"
    # Half a surrogate pair can stand in JSON, but only escaped.
    return _SURROGATE.sub(lambda half: f"\\u{ord(half[0]):04x}", said)


def _resource(book: Book, file: str, text: str, texts: dict[str, str], before: _Entry) -> _Entry:
    name = file.removesuffix(".csv")
    if name in TABLES:
        schema: _Entry = _schema(TABLES[name], extra_names(name, book.table(name)), texts)
    elif name == "book":
        required = {"required": True, "unique": True}
        schema = {
            "fields": [
                {"name": "key", "type": "string", "constraints": required},
                {"name": "value", "type": "string"},
            ],
            "primaryKey": "key",
        }
    elif before:
        return before | ({"encoding": "utf-8"} if "encoding" in before else {})
    else:
        headings = sheet(text, file, ()).headings
        schema = {"fields": [{"name": heading, "type": "string"} for heading in headings]}
        name = re.sub(r"[^a-z0-9._-]+", "-", name.casefold())
    known = len(columns_of(name)) if name in TABLES else len(schema["fields"])
    _keep_of_schema(schema, before.get("schema"), known)
    found: _Entry = {
        "name": name,
        "path": file,
        "profile": "tabular-data-resource",
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "schema": schema,
    }
    kept = {key: said for key, said in before.items() if key not in (*found, *_STALE)}
    return found | kept


def _keep_of_schema(schema: _Entry, before: Any, known: int) -> None:
    """Put in what the schema that was read says beyond ours: titles, units, types of columns.

    The first `known` columns are ours.
    """
    if not isinstance(before, dict):
        return
    fields = before.get("fields")
    read = {
        field["name"]: field
        for field in (fields if isinstance(fields, list) else [])
        if isinstance(field, dict) and isinstance(field.get("name"), str)
    }
    for index, field in enumerate(schema["fields"]):
        said = read.get(field["name"], {})
        if index < known:
            ours = (*field, "constraints", "format", "trueValues", "falseValues")
            field.update((key, held) for key, held in said.items() if key not in ours)
        elif said:
            schema["fields"][index] = said
    ours = (*schema, "primaryKey", "foreignKeys")
    schema.update((key, held) for key, held in before.items() if key not in ours)


def _schema(record_type: type[Record], extras: dict[str, str], texts: dict[str, str]) -> _Entry:
    described = columns_of(record_type.TABLE)
    schema: _Entry = {
        "fields": [_field(record_type, column) for column in described]
        + [{"name": heading, "type": "string"} for heading in extras.values()],
        "missingValues": [""],
    }
    if record_type.KEY:
        key = list(record_type.KEY)
        schema["primaryKey"] = key[0] if len(key) == 1 else key
    # A key into a table that is empty, and so not in the folder, could not be resolved.
    foreign = [
        {
            "fields": column.name,
            "reference": {
                "resource": "" if column.names == record_type.TABLE else column.names,
                "fields": TABLES[column.names].KEY[0],
            },
        }
        for column in described
        if column.names and f"{column.names}.csv" in texts
    ]
    if foreign:
        schema["foreignKeys"] = foreign
    return schema


def _field(record_type: type[Record], column: Column) -> _Entry:
    found: _Entry = {"name": column.name, "type": _TYPES.get(column.kind, "string")}
    constraints: _Entry = {}
    if column.required:
        constraints["required"] = True
    if (column.name,) == record_type.KEY:
        constraints["unique"] = True
    if column.choices:
        constraints["enum"] = list(column.choices)
    if column.kind == "date":
        # Not the type 'date', which must name a day; ours may stop at the year or month.
        constraints["pattern"] = PATTERN
    usual = (0 if column.kind == "whole" else None, None)
    low, high = RANGES.get((record_type.TABLE, column.name), usual)
    if low is not None:
        constraints["minimum"] = low
    if high is not None:
        constraints["maximum"] = high
    if column.kind == "flag":
        found["trueValues"] = ["true"]
        found["falseValues"] = ["false"]
    if constraints:
        found["constraints"] = constraints
    return found
