"""The Data Package folder, read: `datapackage.json` and one CSV file for each table.

Lossless both ways: unknown columns stay with their records, unknown tables with the book, and
`package_writing` writes both back.  Which columns a table has is told by the records alone.  Only
plain file names inside the folder are followed.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import MISSING, dataclass, field, fields
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.book.number_ranges import SETTING_RANGES
from pedigreeview.book.records import TABLES, Column, Record
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import Flaw, columns_of, did_you_mean, number, value, whole, word
from pedigreeview.exchange.characters import character_fault, heading_faults, unfit
from pedigreeview.exchange.harmless_cells import has_neutral, restored
from pedigreeview.exchange.package_resources import (
    DESCRIPTOR,
    listing,
    read_descriptor,
    without_our_names,
)
from pedigreeview.exchange.package_writing import lost, write
from pedigreeview.exchange.text_files import Sheet, decode, read_bytes, sheet
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["DESCRIPTOR", "lost", "read", "write"]

_FIXED = {"book": ("key", "value")}


@dataclass(slots=True)
class _Reading:
    folder: Path
    tick: Tick
    book: Book = field(default_factory=Book)
    faults: list[Fault] = field(default_factory=list)
    places: dict[int, tuple[str, int]] = field(default_factory=dict)
    doubt: rules.Doubt = field(default_factory=rules.Doubt)
    keys: dict[tuple[str, ...], Record] = field(default_factory=dict)
    left_out: list[Record] = field(default_factory=list)
    """Records without a key of their own: looked at, but not taken into the book."""

    def fault(
        self, flaw: Flaw, file: str, row: int | None = None, column: str = "", plant: str = ""
    ) -> None:
        self.faults.append(Fault(flaw.what, Place(file, row, column, plant), flaw.todo))

    def where(self, record: Record, column: str) -> Place:
        file, row = self.places.get(id(record), (str(self.folder), 0))
        return Place(file, row or None, column, getattr(record, "plant", ""))


def read(
    folder: str | Path,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
    tick: Tick = no_tick,
) -> Book:
    """Read a Data Package folder.

    Parameters
    ----------
    folder : the folder, or its `datapackage.json`
    founders_as, fixation : settings in force for this reading, over the book's own
    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    FileFaults : with everything that is wrong in any of its tables
    Fault : there is no readable `datapackage.json`
    """
    folder = Path(folder)
    if folder.name == DESCRIPTOR and not folder.is_dir():
        folder = folder.parent
    reading = _Reading(folder, tick)
    descriptor = read_descriptor(folder)
    listed = listing(folder, descriptor)
    reading.faults += listed.faults
    reading.book.remarks += listed.remarks
    paths = listed.tables
    if "plants" not in paths:
        reading.doubt.tables.add("plants")
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
    reading.doubt.tables.update(_named_in(descriptor) - paths.keys())
    reading.faults += rules.faults(
        reading.book, reading.where, reading.doubt, also=reading.left_out, tick=tick
    )
    if reading.faults:
        raise FileFaults(str(folder), reading.faults)
    reading.book.path = folder
    reading.book.descriptor = without_our_names(descriptor, reading.book.settings)
    return reading.book


def _named_in(descriptor: dict[str, Any]) -> set[str]:
    """The tables that a descriptor names, whether or not their files can be read."""
    names = (item.get("name") for item in descriptor["resources"] if isinstance(item, dict))
    return {name for name in names if isinstance(name, str)} & TABLES.keys()


def _unlisted(reading: _Reading, listed: set[Path]) -> None:
    for name in ("book", *TABLES):
        path = reading.folder / f"{name}.csv"
        if path not in listed and path.exists():
            reading.book.remarks.append(
                f"The file {path.name!r} is not listed in {DESCRIPTOR} and was not read."
            )


def _read_unknown(reading: _Reading, name: str, path: Path) -> None:
    try:
        text, remarks = decode(read_bytes(path), str(path))
    except Fault:
        reading.book.remarks.append(
            f"The file {path.name!r} is no text that can be read; it is kept as it is."
        )
        return
    reading.book.remarks += [f"{path.name}: {remark}" for remark in remarks]
    reading.book.unknown_tables[name] = text
    reading.book.remarks.append(
        f"The table {name!r} is not known to this version and is kept as it is."
    )


def _read_table(reading: _Reading, name: str, path: Path) -> None:
    try:
        text, remarks = decode(read_bytes(path), str(path))
    except Fault as fault:
        reading.faults.append(fault)
        reading.doubt.tables.add(name)
        return
    reading.book.remarks += [f"{path.name}: {remark}" for remark in remarks]
    known = _FIXED.get(name) or tuple(column.name for column in columns_of(name))
    needed = _FIXED.get(name) or tuple(
        column.name for column in columns_of(name) if column.required
    )
    found = sheet(text, str(path), known, reading.tick)
    if has_neutral(text):
        for _, cells in found.rows:
            cells[:] = [restored(cell) for cell in cells]
    if found.faults:
        # A row that was not read may be the one that a reference names.
        reading.doubt.tables.add(name)
    reading.faults += found.faults
    places = _headings(reading, found, str(path), known, needed)
    suspect = bool(unfit(text))
    if suspect:
        reading.faults += heading_faults(found, str(path))
    if name == "book":
        if all(column in places for column in needed):
            _read_settings(reading, found, places, str(path))
        return
    if TABLES[name].KEY and TABLES[name].KEY[0] not in places:
        reading.doubt.tables.add(name)
    for record in _records(reading, name, found, places, str(path), suspect=suspect):
        _add(reading, record)


def _headings(
    reading: _Reading, found: Sheet, file: str, known: tuple[str, ...], needed: tuple[str, ...]
) -> dict[str, int]:
    """Index of each heading; a needed one that is missing is a fault."""
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
    return places


def _records(
    reading: _Reading,
    table: str,
    found: Sheet,
    places: dict[str, int],
    file: str,
    *,
    suspect: bool,
) -> Iterator[Record]:
    """The records of a table; a cell with a fault takes the default of its column.

    suspect : whether some cell has a character that cannot be drawn
    """
    record_type = TABLES[table]
    described = [(column, places.get(column.name)) for column in columns_of(table)]
    known = {column.name for column, _ in described}
    extra = [(name, index) for name, index in places.items() if name not in known]
    comma = found.decimal_comma
    for row, cells in ticked(found.rows, reading.tick):
        plant = cells[places["plant"]].strip() if "plant" in places else ""
        values: dict[str, Any] = {}
        wrong: list[str] = []
        faults: list[Fault] = []
        for column, index in described:
            text = cells[index] if index is not None else ""
            # Codes and typed cells are trimmed; free text is kept as it stands.
            if column.kind != "text" or column.choices or column.names or column.required:
                text = text.strip()
            place = Place(file, row, column.name, plant)
            flaw: Flaw | None = None
            if text.strip():
                values[column.name], flaw = value(table, column, text, comma=comma)
                if suspect and not flaw and not _is_code(table, column):
                    found_here = _character_faults(text, place)
                    faults += found_here
                    wrong += [column.name] * len(found_here)
            else:
                values[column.name] = text if text else column.default
                if column.required:
                    wrong.append(column.name)
                    if index is not None:
                        flaw = Flaw(f"The row has no {column.name}.", "Fill in the cell.")
            if flaw:
                wrong.append(column.name)
                faults.append(Fault(flaw.what, place, flaw.todo))
            if values[column.name] is None and column.required:
                values[column.name] = 0.0 if column.kind == "number" else ""
        values["extra"] = {name: cells[index] for name, index in extra if cells[index]}
        if suspect:
            for name, text in values["extra"].items():
                faults += _character_faults(text, Place(file, row, name, plant))
        reading.faults += faults
        record = record_type(**values)
        reading.places[id(record)] = (file, row)
        for name in wrong:
            reading.doubt.add(record, name)
        yield record


def _is_code(table: str, column: Column) -> bool:
    """Whether the rules look at every character of a column themselves."""
    return column.name == {"plants": "plant", "crosses": "cross"}.get(table)


def _character_faults(text: str, place: Place) -> list[Fault]:
    fault = character_fault(text, place)
    return [] if fault is None else [fault]


def _add(reading: _Reading, record: Record) -> None:
    keyed = record.KEY[0] if len(record.KEY) == 1 else ""
    key = getattr(record, keyed) if keyed else ""
    if keyed and not key:
        reading.left_out.append(record)
        return
    try:
        reading.book.add(record)
    except ValueError:
        reading.left_out.append(record)
        before = reading.places[id(getattr(reading.book, record.TABLE)[key])][1]
        reading.faults.append(
            Fault(
                f"{key!r} stands in row {before} already.",
                reading.where(record, keyed),
                "Delete one of the rows or give it another code.",
            )
        )
        return
    if len(record.KEY) > 1:
        _whole_key(reading, record)


def _whole_key(reading: _Reading, record: Record) -> None:
    """A key of several columns, which `Book.add` does not look at."""
    key = (record.TABLE, *(getattr(record, name) for name in record.KEY))
    if not all(key):
        return
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
        if name := unfit(text):
            what = f"The {key} has the character {name} in it, which no picture can show."
            reading.fault(Flaw(what, "Delete that character."), file, row, "value")
            continue
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
