"""One code for two things: found when two books meet, and renamed by a rule everywhere."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import TABLES, Record
from pedigreeview.book.references import ONE, references, renamed, split_codes
from pedigreeview.exchange.cells import code_flaw
from pedigreeview.exchange.same_origin import Origins, same_cross, same_parents
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["RenameRule", "proposed_names", "with_names"]

_IDENTITY = {
    "pollinations": ("cross", "date"),
    "harvests": ("cross", "date"),
    "packets": ("harvest", "borne_on"),
    "sowings": ("packet", "sown_from", "date"),
    "pollen_lots": ("plant", "collected"),
    "bookmarks": ("focus",),
    "photos": ("plant",),
}
"""Columns that tell whether two records of one key are about the same thing."""


@dataclass(frozen=True, slots=True)
class RenameRule:
    """How the other book's clashing codes are changed: a text before, or a text behind."""

    before: str = ""
    behind: str = " (2)"

    def name(self, code: str, taken: Iterable[str]) -> str:
        """The new code, unlike any that is taken."""
        held = set(taken) if not isinstance(taken, set | dict | frozenset) else taken
        base = f"{self.before}{code}{self.behind}"
        found, count = base, 1
        while found in held:
            count += 1
            found = f"{base}-{count}"
        return found


def _same_thing(own: Record, other: Record, names: Mapping[tuple[str, str], str]) -> bool:
    """Whether two records of one key are about the same thing, other than plants and crosses."""
    for name in _IDENTITY.get(own.TABLE, ()):
        one, two = getattr(own, name), getattr(other, name)
        for reference in references(own.TABLE):
            if reference.column == name:
                two = _renamed_cell(reference, two, names)
        if one and two and one != two:
            return False
    return True


def proposed_names(
    mine: Book, theirs: Book, rule: RenameRule | None = None, tick: Tick = no_tick
) -> dict[tuple[str, str], str]:
    """The other book's keys that clash with mine, each with the name that the rule gives it.

    A cross or plant of a renamed parent is another one too, so that parents are looked at first.

    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    Fault : the rule makes a code that may not stand
    """
    rule = rule or RenameRule()
    found: dict[tuple[str, str], str] = {}
    own, other = Origins(mine), Origins(theirs, found)
    taken: dict[str, set[str]] = {}

    def rename(table: str, key: str) -> None:
        if table not in taken:
            taken[table] = {*getattr(mine, table), *getattr(theirs, table)}
        name = rule.name(key, taken[table])
        if table in ("plants", "crosses") and (flaw := code_flaw(name)):
            raise Fault(flaw.what, Place(column="rule"), "Choose another text for the rule.")
        taken[table].add(name)
        found[table, key] = name

    for plant in ticked(other.parents_first(tick), tick):
        held = mine.plants.get(plant.plant)
        if held is not None:
            one, two = own.plant(held), other.plant(plant)
            if one and two and one != two and not same_cross(own, held, other, plant):
                rename("plants", plant.plant)
    for code, cross in ticked(theirs.crosses.items(), tick):
        if code in mine.crosses and not same_parents(own, mine.crosses[code], other, cross):
            rename("crosses", code)
    for table, record in TABLES.items():
        if len(record.KEY) == 1 and table not in ("plants", "crosses"):
            for key, item in ticked(getattr(theirs, table).items(), tick):
                held_item = getattr(mine, table).get(key)
                if held_item is not None and not _same_thing(held_item, item, found):
                    rename(table, key)
    return found


def _renamed_cell(reference: Any, text: str, names: Mapping[tuple[str, str], str]) -> str:
    if not text:
        return text
    if reference.said:
        for table in TABLES:
            for spoken in (table, *_spoken(table)):
                old = text.removeprefix(f"{spoken} ")
                if old != text and (table, old) in names:
                    return renamed(reference, text, table, old, names[table, old])
        return text
    if reference.many:
        codes = split_codes(text)
        return ";".join(_one(reference, code, names) for code in codes)
    return _one(reference, text, names)


def _spoken(table: str) -> tuple[str, ...]:
    return ONE[table], ONE[table].replace(" ", "_")


def _one(reference: Any, code: str, names: Mapping[tuple[str, str], str]) -> str:
    for table in reference.tables:
        if (table, code) in names:
            return names[table, code]
    return code


def with_names(record: Record, names: Mapping[tuple[str, str], str]) -> Record:
    """A copy of a record of the other book under its new names."""
    values: dict[str, Any] = {}
    for reference in references(record.TABLE):
        text = getattr(record, reference.column)
        new = _renamed_cell(reference, text, names)
        if new != text:
            values[reference.column] = new
    if len(record.KEY) == 1:
        key = getattr(record, record.KEY[0])
        if (record.TABLE, key) in names:
            values[record.KEY[0]] = names[record.TABLE, key]
    if record.TABLE == "accepted_checks":
        values.pop("keys", None)
    return replace(record, **values)
