"""The Data Package folder, read: `datapackage.json` and one CSV file for each table.

Lossless both ways: unknown columns stay with their records, unknown tables with the book, and
`package_writing` writes both back.  Which columns a table has is told by the records alone.  Only
plain file names inside the folder are followed.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import MISSING, dataclass, field, fields
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.book.records import TABLES, Record
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import Flaw, columns_of, did_you_mean, number, value, whole, word
from pedigreeview.exchange.package_writing import DESCRIPTOR, SETTING_RANGES, lost, write
from pedigreeview.exchange.text_files import Sheet, decode, read_bytes, sheet

__all__ = ["DESCRIPTOR", "lost", "read", "write"]

_PLAIN_NAME = re.compile(r"[^/\\:\x00-\x1f\ud800-\udfff]+\Z")
_FIXED = {"book": ("key", "value")}


@dataclass(slots=True)
class _Reading:
    folder: Path
    book: Book = field(default_factory=Book)
    faults: list[Fault] = field(default_factory=list)
    places: dict[int, tuple[str, int]] = field(default_factory=dict)
    doubtful: set[int] = field(default_factory=set)
    keys: dict[tuple[str, ...], Record] = field(default_factory=dict)
    left_out: list[Record] = field(default_factory=list)
    """Kept alive, so that no other record takes over the `id` of one."""

    def fault(
        self, flaw: Flaw, file: str, row: int | None = None, column: str = "", plant: str = ""
    ) -> None:
        self.faults.append(Fault(flaw.what, Place(file, row, column, plant), flaw.todo))

    def where(self, record: Record, column: str) -> Place:
        file, row = self.places.get(id(record), (str(self.folder), 0))
        return Place(file, row or None, column, getattr(record, "plant", ""))


def read(
    folder: str | Path, *, founders_as: str | None = None, fixation: float | None = None
) -> Book:
    """Read a Data Package folder.

    Parameters
    ----------
    folder : the folder, or its `datapackage.json`
    founders_as, fixation : settings in force for this reading, over the book's own

    Raises
    ------
    FileFaults : with everything that is wrong in any of its tables
    Fault : there is no readable `datapackage.json`
    """
    folder = Path(folder)
    if folder.name == DESCRIPTOR and not folder.is_dir():
        folder = folder.parent
    reading = _Reading(folder)
    paths = _tables(reading, _descriptor(folder))
    if "plants" not in paths:
        reading.fault(
            Flaw("The folder lists no table 'plants'.", "Add it to the resources."),
            str(folder / DESCRIPTOR),
        )
    for name in ("book", *TABLES):
        if name in paths:
            _read_table(reading, name, paths[name])
    for name, path in paths.items():
        if name not in TABLES and name != "book":
            _read_unknown(reading, name, path)
    _unlisted(reading, set(paths.values()))
    if founders_as:
        reading.book.settings.founders_as = founders_as
    if fixation is not None:
        reading.book.settings.variety_fixation = fixation
    reading.faults += rules.faults(reading.book, reading.where, reading.doubtful)
    if reading.faults:
        raise FileFaults(str(folder), reading.faults)
    reading.book.path = folder
    return reading.book


def _descriptor(folder: Path) -> dict[str, Any]:
    path = folder / DESCRIPTOR
    if folder.is_dir() and not path.exists():
        raise Fault(
            f"The folder has no {DESCRIPTOR}, so it is no Data Package.",
            Place(file=str(folder)),
            "Choose the folder of a book, or a plant table inside it.",
        )
    text, _ = decode(read_bytes(path), str(path))
    try:
        found = json.loads(text)
    except ValueError as error:
        row = error.lineno if isinstance(error, json.JSONDecodeError) else None
        raise Fault(
            "The file is no JSON.", Place(file=str(path), row=row), "Mend it or fetch it anew."
        ) from None
    except RecursionError:
        raise Fault(
            "The file is nested too deeply.", Place(file=str(path)), "Fetch it anew."
        ) from None
    if not isinstance(found, dict) or not isinstance(found.get("resources"), list):
        raise Fault(
            "The file has no list 'resources', so it describes no Data Package.",
            Place(file=str(path)),
            "Mend it or fetch it anew.",
        )
    return found


def _tables(reading: _Reading, descriptor: dict[str, Any]) -> dict[str, Path]:
    """Path of each listed table by its name, as far as it is a plain name inside the folder."""
    file = str(reading.folder / DESCRIPTOR)
    root = reading.folder.resolve()
    found: dict[str, Path] = {}
    for index, resource in enumerate(descriptor["resources"], start=1):
        entry = resource if isinstance(resource, dict) else {}
        name, path = str(entry.get("name", "")), entry.get("path")
        if isinstance(path, list) and len(path) == 1:
            path = path[0]
        if not isinstance(path, str) or not path:
            reading.fault(
                Flaw(f"Resource {index} names no file.", "Give it a 'path' such as plants.csv."),
                file,
            )
            continue
        if not _PLAIN_NAME.match(path) or path in (".", ".."):
            reading.fault(
                Flaw(
                    f"The path {path!r} is no plain file name, and nothing outside the folder is "
                    "read.",
                    "Put the file into the folder and write its name alone.",
                ),
                file,
            )
            continue
        held = reading.folder / path
        if not _lies_in(held, root):
            reading.fault(
                Flaw(
                    f"The file {path!r} is a link that leads out of the folder.",
                    "Put the file itself into the folder.",
                ),
                file,
            )
            continue
        # A table that is not ours goes by its file's name, which is what is written back.
        if name not in TABLES and name != "book":
            name = path[:-4] if path.endswith(".csv") and "." not in path[:-4] else path
            if name in TABLES or name == "book":
                reading.fault(
                    Flaw(f"The file {path!r} is listed under another name.", f"Name it {name!r}."),
                    file,
                )
                continue
        if name in found:
            reading.fault(Flaw(f"The table {name!r} is listed twice.", "Delete one."), file)
            continue
        found[name] = held
    return found


def _lies_in(path: Path, root: Path) -> bool:
    try:
        return path.resolve().parent == root
    except (OSError, RuntimeError):
        # A link that leads round in a circle.
        return False


def _unlisted(reading: _Reading, listed: set[Path]) -> None:
    for name in ("book", *TABLES):
        path = reading.folder / f"{name}.csv"
        if path not in listed and path.exists():
            reading.book.remarks.append(
                f"The file {path.name!r} is not listed in {DESCRIPTOR} and was not read."
            )


def _text(reading: _Reading, path: Path) -> str | None:
    try:
        text, remarks = decode(read_bytes(path), str(path))
    except Fault as fault:
        reading.faults.append(fault)
        return None
    reading.book.remarks += [f"{path.name}: {remark}" for remark in remarks]
    return text


def _read_unknown(reading: _Reading, name: str, path: Path) -> None:
    text = _text(reading, path)
    if text is not None:
        reading.book.unknown_tables[name] = text
        reading.book.remarks.append(
            f"The table {name!r} is not known to this version and is kept as it is."
        )


def _read_table(reading: _Reading, name: str, path: Path) -> None:
    text = _text(reading, path)
    if text is None:
        return
    known = _FIXED.get(name) or tuple(column.name for column in columns_of(name))
    needed = _FIXED.get(name) or tuple(
        column.name for column in columns_of(name) if column.required
    )
    found = sheet(text, str(path), known)
    reading.faults += found.faults
    places = _headings(reading, found, str(path), known, needed)
    if places is None:
        return
    if name == "book":
        _read_settings(reading, found, places, str(path))
    else:
        for record in _records(reading, name, found, places, str(path)):
            _add(reading, record)


def _headings(
    reading: _Reading, found: Sheet, file: str, known: tuple[str, ...], needed: tuple[str, ...]
) -> dict[str, int] | None:
    """Index of each heading; None where a needed one is missing."""
    places: dict[str, int] = {}
    for index, heading in enumerate(found.headings):
        if not heading:
            if any(cells[index].strip() for _, cells in found.rows):
                reading.fault(
                    Flaw(f"Column {index + 1} has cells but no heading.", "Give it a heading."),
                    file,
                    found.heading_line,
                )
        elif heading in places:
            reading.fault(
                Flaw(f"The column {heading!r} stands twice.", "Delete or rename one of them."),
                file,
                found.heading_line,
                heading,
            )
        else:
            places[heading] = index
    unknown = [heading for heading in places if heading not in known]
    missing = [name for name in needed if name not in places]
    for name in missing:
        guess = did_you_mean(name, unknown, often=1, cutoff=0.75)
        mend = f"{guess} Name it {name!r}." if guess else f"Add the column {name!r}."
        reading.fault(
            Flaw(f"The needed column {name!r} is missing.", mend), file, found.heading_line, name
        )
    if unknown and not missing:
        absent = [name for name in known if name not in places]
        words = []
        for heading in unknown:
            guess = did_you_mean(heading, absent, often=1, cutoff=0.75)
            words.append(f"{heading!r} (d{guess[1:]})" if guess else repr(heading))
        reading.book.remarks.append(
            f"{Path(file).name}: columns not known to this version are kept: {', '.join(words)}."
        )
    return None if missing else places


def _records(
    reading: _Reading, table: str, found: Sheet, places: dict[str, int], file: str
) -> Iterator[Record]:
    record_type = TABLES[table]
    described = [(column, places.get(column.name)) for column in columns_of(table)]
    known = {column.name for column, _ in described}
    extra = [(name, index) for name, index in places.items() if name not in known]
    comma = found.decimal_comma
    for row, cells in found.rows:
        plant = cells[places["plant"]].strip() if "plant" in places else ""
        values: dict[str, Any] = {}
        flawed = blank_key = False
        for column, index in described:
            text = cells[index] if index is not None else ""
            # Codes and typed cells are trimmed; free text is kept as it stands.
            if column.kind != "text" or column.choices or column.names or column.required:
                text = text.strip()
            if not text.strip():
                values[column.name] = text if text else column.default
                if column.required:
                    reading.fault(
                        Flaw(f"The row has no {column.name}.", "Fill in the cell."),
                        file,
                        row,
                        column.name,
                        plant,
                    )
                    blank_key = True
                continue
            values[column.name], flaw = value(table, column, text, comma=comma)
            if flaw:
                flawed = True
                # A needed cell has no default to go on with.
                blank_key = blank_key or column.required
                reading.fault(flaw, file, row, column.name, plant)
        if blank_key:
            continue
        values["extra"] = {name: cells[index] for name, index in extra if cells[index]}
        record = record_type(**values)
        reading.places[id(record)] = (file, row)
        if flawed:
            reading.doubtful.add(id(record))
        yield record


def _add(reading: _Reading, record: Record) -> None:
    try:
        reading.book.add(record)
    except ValueError:
        reading.left_out.append(record)
        key = getattr(record, record.KEY[0])
        before = reading.places[id(getattr(reading.book, record.TABLE)[key])][1]
        reading.faults.append(
            Fault(
                f"{key!r} stands in row {before} already.",
                reading.where(record, record.KEY[0]),
                "Delete one of the rows or give it another code.",
            )
        )
        return
    if len(record.KEY) > 1:
        _whole_key(reading, record)


def _whole_key(reading: _Reading, record: Record) -> None:
    """A key of several columns, which `Book.add` does not look at."""
    key = (record.TABLE, *(getattr(record, name) for name in record.KEY))
    other = reading.keys.setdefault(key, record)
    if other is not record:
        reading.faults.append(
            Fault(
                f"{' and '.join(map(repr, key[1:]))} stand together in row "
                f"{reading.places[id(other)][1]} already.",
                reading.where(record, record.KEY[-1]),
                "Delete one of the rows.",
            )
        )


def _read_settings(reading: _Reading, found: Sheet, places: dict[str, int], file: str) -> None:
    settings = reading.book.settings
    known = {item.name: item for item in fields(BookSettings) if item.name != "extra"}
    seen: dict[str, int] = {}
    for row, cells in found.rows:
        key, text = cells[places["key"]].strip(), cells[places["value"]]
        if not key:
            reading.fault(Flaw("The row has no key.", "Fill in the cell."), file, row, "key")
            continue
        if key in seen:
            reading.fault(
                Flaw(f"The key {key!r} stands in row {seen[key]} already.", "Delete one of them."),
                file,
                row,
                "key",
            )
            continue
        seen[key] = row
        if key not in known:
            if text:
                settings.extra[key] = text
            continue
        if not text.strip():
            continue
        kind = str(known[key].type)
        low, high = SETTING_RANGES.get(key, (None, None))
        got: Any
        flaw: Flaw | None = None
        if "int" in kind:
            got, flaw = whole(text.strip(), key, low, high)
        elif "float" in kind:
            got, flaw = number(text.strip(), key, low, high, comma=found.decimal_comma)
        elif key == "founders_as":
            got, flaw = word(text.strip(), key, ("variety", "plant"))
        else:
            got = text
        if flaw:
            reading.fault(flaw, file, row, "value")
        elif known[key].default is not MISSING:
            setattr(settings, key, got)
