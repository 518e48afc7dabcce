"""Records of a book from loose values, as formats without a schema of ours give them.

Every value is looked at as a cell of the folder's tables would be, and the rules of the book are
applied in the end, so that no format lets in what the others refuse.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.book.number_ranges import SETTING_RANGES, fits_range
from pedigreeview.book.records import TABLES, Record
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import Flaw, columns_of, to_cell, value
from pedigreeview.exchange.characters import unfit
from pedigreeview.exchange.ticking import EACH, Tick, no_tick

__all__ = ["Gathering", "record_values", "settings_from"]

_MOST_FAULTS = 1_000


def record_values(record: Record) -> dict[str, str]:
    """The cells of a record that say something, by column."""
    found = {}
    for column in columns_of(record.TABLE):
        held = getattr(record, column.name)
        text = to_cell(held, column.default)
        if text and held != column.default:
            found[column.name] = text
    return found


@dataclass(slots=True)
class Gathering:
    """A book that is being filled from a file, with everything that is wrong."""

    file: str
    book: Book = field(default_factory=Book)
    faults: list[Fault] = field(default_factory=list)
    places: dict[int, str] = field(default_factory=dict)
    tick: Tick = no_tick
    """Called now and then; may raise `Cancelled`."""
    _taken: int = 0

    def fault(self, what: str, todo: str, plant: str = "", column: str = "") -> None:
        """Note what is wrong."""
        if len(self.faults) < _MOST_FAULTS:
            self.faults.append(Fault(what, Place(self.file, None, column, plant), todo))

    def add(
        self, table: str, cells: Mapping[str, Any], extra: Mapping[str, str] | None = None
    ) -> Record | None:
        """Put a record in from the texts of its cells; None where it cannot be one."""
        if not self._taken % EACH:
            self.tick()
        self._taken += 1
        kind: Any = TABLES[table]
        values: dict[str, Any] = {}
        key = str(cells.get(kind.KEY[0], "")) if kind.KEY else ""
        good = True
        for column in columns_of(table):
            text = cells.get(column.name, "")
            text = text if isinstance(text, str) else to_cell(text)
            if column.kind != "text" or column.choices or column.names or column.required:
                text = text.strip()
            flaw: Flaw | None = None
            if text:
                values[column.name], flaw = value(table, column, text, lenient=True)
                if name := unfit(text):
                    flaw = Flaw(f"It has the character {name} in it.", "Delete that character.")
            elif column.required:
                flaw = Flaw(f"A record of {table} has no {column.name}.", "Give it one.")
            if flaw:
                self.fault(flaw.what, flaw.todo, key, column.name)
                good = False
        if not good:
            return None
        values["extra"] = {
            name: text for name, text in (extra or {}).items() if text and not unfit(name + text)
        }
        record: Record = kind(**values)
        try:
            self.book.add(record)
        except ValueError:
            self.fault(f"{key!r} stands in {table} twice.", "Delete one of them.", key)
            return None
        self.places[id(record)] = key
        return record

    def finish(self) -> Book:
        """The book, once every rule holds.

        Raises
        ------
        FileFaults : with everything that is wrong
        """

        def where(record: Record, column: str) -> Place:
            return Place(self.file, None, column, self.places.get(id(record), ""))

        if not self.faults:
            self.faults = rules.faults(self.book, where, tick=self.tick)
        if self.faults:
            raise FileFaults(self.file, self.faults)
        return self.book


def settings_from(said: Mapping[str, Any]) -> BookSettings:
    """The settings among loose values; what cannot be one is left out."""
    found = BookSettings()
    for item in fields(BookSettings):
        value = said.get(item.name)
        if item.name == "extra":
            if isinstance(value, dict):
                found.extra = {str(key): str(text) for key, text in value.items()}
        elif isinstance(value, bool):
            continue
        elif item.name in SETTING_RANGES:
            whole = item.name == "ploidy"
            if isinstance(value, int if whole else int | float) and fits_range(
                value, SETTING_RANGES[item.name]
            ):
                setattr(found, item.name, value if whole else float(value))
        elif isinstance(value, str) and (
            item.name != "founders_as" or value in ("variety", "plant", "")
        ):
            setattr(found, item.name, value)
    return found
