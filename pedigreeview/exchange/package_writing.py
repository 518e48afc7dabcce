"""The Data Package folder, written: every table with its schema, fit for git and a spreadsheet.

All files are first written beside the old ones and then moved in place one by one, the descriptor
last, so that a full disk or a lost current harms nothing.  The same book gives the same bytes.
"""

from __future__ import annotations

import json
import os
import re
import shutil
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import fields
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.dates import PATTERN
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import TABLES, Column, Record
from pedigreeview.exchange.cells import RANGES, columns_of, to_cell
from pedigreeview.exchange.text_files import sheet, to_text
from pedigreeview.exchange.writing import beside, write_fault

__all__ = ["DESCRIPTOR", "SETTING_RANGES", "lost", "write"]

DESCRIPTOR = "datapackage.json"
_PROFILE = "tabular-data-package"
_OURS = ("profile", "name", "title", "resources")

SETTING_RANGES: dict[str, tuple[float | None, float | None]] = {
    "ploidy": (1, None),
    "variety_fixation": (0, 1),
    "plant_fixation": (0, 1),
    "double_reduction": (0, 1 / 6),
    "outcrossing": (0, 1),
}
"""Lowest and highest value of the settings that are numbers."""

_TYPES = {"text": "string", "whole": "integer", "number": "number", "flag": "boolean"}


def lost(book: Book) -> list[str]:
    """What the folder cannot carry: nothing."""
    return []


def write(book: Book, folder: str | Path) -> None:
    """Write a book as a Data Package folder; photos are copied from the folder it was read from.

    Raises
    ------
    Fault : something else stands in the folder, or the system does not let us write
    """
    folder = Path(folder)
    old = _old_descriptor(folder)
    texts = _texts(book)
    texts[DESCRIPTOR] = _description(book, texts, old)
    written: list[tuple[Path, Path]] = []
    try:
        folder.mkdir(exist_ok=True)
        for name, text in texts.items():
            target = folder / name
            held = beside(target)
            written.append((held, target))
            with open(held, "x", encoding="utf-8", newline="") as stream:
                stream.write(text)
                stream.flush()
                os.fsync(stream.fileno())
        for held, target in written:
            os.replace(held, target)
        _clear_away(folder, old, texts)
        _copy_photos(book, folder)
    except OSError as error:
        raise write_fault(Path(error.filename or folder), error) from error
    except UnicodeEncodeError as error:
        raise Fault(
            f"The text {error.object[error.start : error.end]!r} cannot be written as UTF-8.",
            Place(file=str(folder)),
            "Correct the record that has it.",
        ) from error
    finally:
        for held, _ in written:
            with suppress(OSError):
                held.unlink(missing_ok=True)


def _old_descriptor(folder: Path) -> dict[str, Any]:
    """The descriptor that stands in the folder; empty for a new or empty folder."""
    if not folder.exists():
        return {}
    if not folder.is_dir():
        raise Fault("This is a file.", Place(file=str(folder)), "Choose a folder.")
    if not any(folder.iterdir()):
        return {}
    with suppress(OSError, ValueError, RecursionError):
        old = json.loads((folder / DESCRIPTOR).read_text(encoding="utf-8-sig"))
        if _is_ours(old):
            return dict(old)
    raise Fault(
        "The folder is not empty and holds no book of this program.",
        Place(file=str(folder)),
        "Choose an empty folder or a new name.",
    )


def _is_ours(old: Any) -> bool:
    if not isinstance(old, dict) or old.get("profile") != _PROFILE:
        return False
    resources = old.get("resources")
    return isinstance(resources, list) and any(
        isinstance(item, dict) and item.get("name") == "plants" for item in resources
    )


def _texts(book: Book) -> dict[str, str]:
    """Text of every file but the descriptor, by file name."""
    texts: dict[str, str] = {}
    settings = [
        [item.name, to_cell(getattr(book.settings, item.name))]
        for item in fields(BookSettings)
        if item.name != "extra" and getattr(book.settings, item.name) != item.default
    ]
    settings += [[key, text] for key, text in book.settings.extra.items()]
    if settings:
        texts["book.csv"] = to_text(["key", "value"], settings)
    for name, record_type in TABLES.items():
        records = book.table(name)
        if records or name == "plants":
            texts[f"{name}.csv"] = _table(record_type, records)
    for name, text in book.unknown_tables.items():
        file = name if "." in name else f"{name}.csv"
        if file != Path(file).name or "\\" in file or file in (*texts, "..", DESCRIPTOR):
            raise Fault(
                f"The further table {name!r} cannot be a file of the folder.",
                Place(file=file),
                "Give it another name.",
            )
        texts[file] = text
    return texts


def _extra_names(records: Iterable[Record]) -> list[str]:
    return list(dict.fromkeys(name for record in records for name in _extra(record)))


def _extra(record: Record) -> dict[str, str]:
    held: dict[str, str] = getattr(record, "extra", {})
    return held


def _table(record_type: type[Record], records: list[Record]) -> str:
    described = columns_of(record_type.TABLE)
    extras = _extra_names(records)
    rows = [
        [to_cell(getattr(record, column.name), column.default) for column in described]
        + [_extra(record).get(name, "") for name in extras]
        for record in records
    ]
    return to_text([column.name for column in described] + extras, rows)


def _description(book: Book, texts: dict[str, str], old: dict[str, Any]) -> str:
    name = re.sub(r"[^a-z0-9]+", "-", book.settings.name.casefold()).strip("-") or "crossing-book"
    found: dict[str, Any] = {"profile": _PROFILE, "name": name}
    if book.settings.name:
        found["title"] = book.settings.name
    found.update((key, held) for key, held in old.items() if key not in _OURS)
    before = {
        item["path"]: item
        for item in old.get("resources", [])
        if isinstance(item, dict) and isinstance(item.get("path"), str)
    }
    found["resources"] = [
        _resource(book, file, text, texts, before.get(file)) for file, text in texts.items()
    ]
    return json.dumps(found, ensure_ascii=False, indent=2) + "\n"


def _resource(
    book: Book, file: str, text: str, texts: dict[str, str], before: dict[str, Any] | None
) -> dict[str, Any]:
    name = file.removesuffix(".csv")
    if name in TABLES:
        schema = _schema(TABLES[name], _extra_names(book.table(name)), texts)
    elif name == "book":
        required = {"required": True, "unique": True}
        schema = {
            "fields": [
                {"name": "key", "type": "string", "constraints": required},
                {"name": "value", "type": "string"},
            ],
            "primaryKey": "key",
        }
    elif before is not None:
        return before
    else:
        headings = sheet(text, file, ()).headings
        schema = {"fields": [{"name": heading, "type": "string"} for heading in headings]}
        name = re.sub(r"[^a-z0-9._-]+", "-", name.casefold())
    return {
        "name": name,
        "path": file,
        "profile": "tabular-data-resource",
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "schema": schema,
    }


def _schema(record_type: type[Record], extras: list[str], texts: dict[str, str]) -> dict[str, Any]:
    described = columns_of(record_type.TABLE)
    schema: dict[str, Any] = {
        "fields": [_field(record_type, column) for column in described]
        + [{"name": name, "type": "string"} for name in extras],
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


def _field(record_type: type[Record], column: Column) -> dict[str, Any]:
    found: dict[str, Any] = {"name": column.name, "type": _TYPES.get(column.kind, "string")}
    constraints: dict[str, Any] = {}
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


def _clear_away(folder: Path, old: dict[str, Any], texts: dict[str, str]) -> None:
    """Delete files of our own tables that the book no longer fills."""
    listed = [item.get("path") for item in old.get("resources", []) if isinstance(item, dict)]
    for name in ("book", *TABLES):
        file = f"{name}.csv"
        if file in listed and file not in texts:
            (folder / file).unlink(missing_ok=True)


def _copy_photos(book: Book, folder: Path) -> None:
    if book.path is None or not book.path.is_dir() or book.path.resolve() == folder.resolve():
        return
    for name in book.photos:
        source = book.path / "photos" / name
        if Path(name).name != name or source.is_symlink() or not source.is_file():
            continue
        target = folder / "photos" / name
        if not target.exists():
            target.parent.mkdir(exist_ok=True)
            held = beside(target)
            shutil.copyfile(source, held)
            os.replace(held, target)
