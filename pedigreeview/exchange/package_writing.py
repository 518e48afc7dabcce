"""The Data Package folder, written: every table with its schema, fit for git and a spreadsheet.

All files are first written beside the old ones and then moved in place one by one, the descriptor
last, so that a full disk or a lost current harms nothing.  The same book gives the same bytes.
"""

from __future__ import annotations

import json
import os
import shutil
from contextlib import suppress
from dataclasses import fields
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import TABLES, Record
from pedigreeview.exchange.cells import columns_of, to_cell
from pedigreeview.exchange.harmless_cells import neutral
from pedigreeview.exchange.package_description import PROFILES, description, extra_names
from pedigreeview.exchange.package_resources import DESCRIPTOR, left_behind, passengers
from pedigreeview.exchange.text_files import to_text
from pedigreeview.exchange.writing import beside, write_fault

__all__ = ["DESCRIPTOR", "lost", "write"]


def lost(book: Book) -> list[str]:
    """What does not go along to another folder as it is, one sentence each."""
    return left_behind(book) + [
        f"The name of the further column {name!r} of the table {table!r}: written as {heading!r}."
        for table in TABLES
        for name, heading in extra_names(table, book.table(table)).items()
        if name != heading
    ]


def write(book: Book, folder: str | Path) -> None:
    """Write a book as a Data Package folder.

    Photos and what else the folder lists that was read are copied.  When the writing fails,
    everything is as it was before.

    Raises
    ------
    Fault : something else stands in the folder, or the system does not let us write
    """
    folder = Path(folder)
    old = _old_descriptor(book, folder)
    texts = _texts(book)
    along = [
        held
        for held in passengers(book, folder)
        if not any(file.name in texts for file in held.files)
    ]
    described = description(book, texts, along)
    staging = _Staging()
    try:
        staging.folder(folder)
        for name, text in texts.items():
            staging.text(folder / name, text)
        for source in (file for held in along for file in held.files):
            staging.copy(source, folder / source.name)
        _copy_photos(book, folder, staging)
        # Last, so that the descriptor never lists a file that is not there yet.
        staging.text(folder / DESCRIPTOR, described)
        staging.move_in_place()
        _clear_away(folder, old, texts)
        staging.done = True
    except OSError as error:
        raise write_fault(Path(error.filename or folder), error) from error
    except UnicodeEncodeError as error:
        raise Fault(
            f"The text {error.object[error.start : error.end]!r} cannot be written as UTF-8.",
            Place(file=str(folder)),
            "Correct the record that has it.",
        ) from error
    finally:
        staging.clear()


class _Staging:
    """Files written beside their places, then moved in one by one; new folders go if it fails."""

    def __init__(self) -> None:
        self.done = False
        self._made: list[Path] = []
        self._written: list[tuple[Path, Path]] = []
        self._moved: list[Path] = []

    def folder(self, folder: Path) -> None:
        if not folder.is_dir():
            folder.mkdir()
            self._made.append(folder)

    def text(self, target: Path, text: str) -> None:
        held = self._beside(target)
        with open(held, "x", encoding="utf-8", newline="") as stream:
            stream.write(text)
            stream.flush()
            os.fsync(stream.fileno())

    def copy(self, source: Path, target: Path) -> None:
        shutil.copyfile(source, self._beside(target))

    def _beside(self, target: Path) -> Path:
        held = beside(target)
        self._written.append((held, target))
        return held

    def move_in_place(self) -> None:
        for held, target in self._written:
            os.replace(held, target)
            self._moved.append(target)

    def clear(self) -> None:
        """Leave nothing behind that is not wanted, whether the writing went well or not."""
        gone = [held for held, _ in self._written]
        if not self.done:
            gone += [path for path in self._moved if path.parent in self._made]
        for path in gone:
            with suppress(OSError):
                path.unlink(missing_ok=True)
        if not self.done:
            for made in reversed(self._made):
                with suppress(OSError):
                    made.rmdir()


def _old_descriptor(book: Book, folder: Path) -> dict[str, Any]:
    """The descriptor that stands in the folder; empty for a new or empty folder."""
    if not folder.exists():
        return {}
    if not folder.is_dir():
        raise Fault("This is a file.", Place(file=str(folder)), "Choose a folder.")
    if not any(folder.iterdir()):
        return {}
    with suppress(OSError, ValueError, RecursionError):
        old = json.loads((folder / DESCRIPTOR).read_text(encoding="utf-8-sig"))
        read_here = book.path is not None and book.path.resolve() == folder.resolve()
        if _is_ours(old) or (read_here and isinstance(old, dict)):
            return dict(old)
    raise Fault(
        "The folder is not empty and holds no book of this program.",
        Place(file=str(folder)),
        "Choose an empty folder or a new name.",
    )


def _is_ours(old: Any) -> bool:
    if not isinstance(old, dict) or old.get("profile") not in PROFILES:
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
        texts["book.csv"] = to_text(["key", "value"], _neutral(settings))
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


def _table(record_type: type[Record], records: list[Record]) -> str:
    described = columns_of(record_type.TABLE)
    extras = extra_names(record_type.TABLE, records)
    rows = [
        [to_cell(getattr(record, column.name), column.default) for column in described]
        + [getattr(record, "extra", {}).get(name, "") for name in extras]
        for record in records
    ]
    headings = [column.name for column in described] + list(extras.values())
    return to_text(headings, _neutral(rows))


def _neutral(rows: list[list[str]]) -> list[list[str]]:
    return [[neutral(cell) for cell in row] for row in rows]


def _clear_away(folder: Path, old: dict[str, Any], texts: dict[str, str]) -> None:
    """Delete files of our own tables that the book no longer fills."""
    listed = [item.get("path") for item in old.get("resources", []) if isinstance(item, dict)]
    for name in ("book", *TABLES):
        file = f"{name}.csv"
        if file in listed and file not in texts:
            (folder / file).unlink(missing_ok=True)


def _copy_photos(book: Book, folder: Path, staging: _Staging) -> None:
    if book.path is None or not book.path.is_dir() or book.path.resolve() == folder.resolve():
        return
    for name in book.photos:
        source, target = book.path / "photos" / name, folder / "photos" / name
        if Path(name).name != name or source.is_symlink() or not source.is_file():
            continue
        if not target.exists():
            staging.folder(target.parent)
            staging.copy(source, target)
