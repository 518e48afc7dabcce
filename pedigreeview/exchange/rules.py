"""What must hold between the records of a book, whatever file it was read from.

The rules are those of the plant table and of the folder alike: codes, references, how a plant
arose, odds.  Each breach is a `Fault` with its place; a pedigree loop is none (it is a problem that
the network names).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass, field

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import (
    SELF,
    TABLES,
    Cross,
    ParentFinding,
    Plant,
    PollenCandidate,
    Record,
)
from pedigreeview.exchange.cells import code_flaw, columns_of, did_you_mean
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["ODDS_SLACK", "Doubt", "Where", "faults", "split_codes"]

Where = Callable[[Record, str], Place]
"""The place of a column of a record in its file."""


@dataclass(slots=True)
class Doubt:
    """What a reader could not make out; what would follow from it is not reported again.

    Attributes
    ----------
    cells : `id` of a record and one of its columns, for every cell with a fault already
    tables : tables that could not be read in full, so that a reference into them proves nothing
    """

    cells: set[tuple[int, str]] = field(default_factory=set)
    tables: set[str] = field(default_factory=set)

    def add(self, record: Record, column: str) -> None:
        """Note that a cell has a fault."""
        self.cells.add((id(record), column))

    def of(self, record: Record, *names: str) -> bool:
        """Whether any of these columns of a record has a fault."""
        return bool(self.cells) and any((id(record), name) in self.cells for name in names)


ODDS_SLACK = 1e-9
"""Sums of odds may pass 1 by this much: 0.7 + 0.2 + 0.1 is not exactly 1 in binary."""

_MOST_PROPOSED = 20
"""Missing codes of one file for which those that are spelled nearly the same are looked for."""

FROM_POOL = ("seed_of", "sibbed_in")
FROM_PLANT = ("cutting_of", "doubled_haploid_of", "doubled_of")
FROM_SOURCE = FROM_POOL + FROM_PLANT

_OTHER_REFERENCES: dict[tuple[str, str], tuple[tuple[str, ...], bool, bool]] = {
    ("pollen_candidates", "candidate"): (("plants",), False, True),
    ("parent_findings", "pollen_parent"): (("plants",), False, True),
    ("pollen_lots", "plant"): (("plants",), True, False),
    ("bookmarks", "pinned"): (("plants",), True, False),
    ("sowings", "sown_from"): (("crosses", "plants"), False, False),
}
"""Columns whose cells name plants or crosses beyond a plain foreign key: the tables that they may
name, whether several codes parted by ';', whether 'self' may stand there."""

_ONE = {name: name.removesuffix("es") if name == "crosses" else name[:-1] for name in TABLES}
_ONE.update(loci="locus", harvests="harvest", pollen_lots="pollen lot")


def split_codes(text: str) -> list[str]:
    """The codes of a cell that lists several, parted by ';'."""
    return [code for part in text.split(";") if (code := part.strip())]


def faults(
    book: Book,
    where: Where,
    doubt: Doubt | None = None,
    *,
    names: bool = True,
    also: Iterable[Record] = (),
    tick: Tick = no_tick,
) -> list[Fault]:
    """Every breach of the rules.

    Parameters
    ----------
    book : as filled by a reader
    where : the place of a record's column
    doubt : the cells that have a fault already
    names : whether codes and references are checked; a plant table looks at them cell by cell
    also : records that the book could not take in, whose references are checked all the same
    tick : called now and then; may raise `Cancelled`
    """
    doubt = doubt or Doubt()
    found: list[Fault] = []
    if names:
        found += _codes(book, where)
        found += _references(book, where, doubt, list(also), tick)
    for plant in ticked(book.plants.values(), tick):
        found += _plant(book, plant, where, doubt)
    candidates = book.candidates()
    for cross in ticked(book.crosses.values(), tick):
        found += _cross(cross, candidates.get(cross.cross, []), where, doubt)
    found += _findings(book, where, doubt)
    return found


def _codes(book: Book, where: Where) -> Iterator[Fault]:
    for plant in book.plants.values():
        if flaw := code_flaw(plant.plant):
            yield Fault(flaw.what, where(plant, "plant"), flaw.todo)
    for cross in book.crosses.values():
        if flaw := code_flaw(cross.cross, "cross code"):
            yield Fault(flaw.what, where(cross, "cross"), flaw.todo)


def _references(
    book: Book, where: Where, doubt: Doubt, also: Collection[Record], tick: Tick
) -> Iterator[Fault]:
    proposed = 0
    for table in TABLES:
        checked: list[tuple[str, tuple[str, ...], bool, bool]] = []
        for column in columns_of(table):
            if column.names:
                checked.append((column.name, (column.names,), False, False))
            elif (table, column.name) in _OTHER_REFERENCES:
                checked.append((column.name, *_OTHER_REFERENCES[table, column.name]))
        if not checked:
            continue
        held = (*book.table(table), *(other for other in also if table == other.TABLE))
        for record in ticked(held, tick):
            for name, tables, many, may_be_self in checked:
                text = getattr(record, name)
                if not text or (may_be_self and text == SELF) or doubt.of(record, name):
                    continue
                if doubt.tables and not doubt.tables.isdisjoint(tables):
                    continue
                for code in split_codes(text) if many else (text,):
                    if not any(code in getattr(book, other) for other in tables):
                        proposed += 1
                        tick()
                        yield _missing(
                            book,
                            code,
                            name,
                            tables,
                            where(record, name),
                            near=proposed <= _MOST_PROPOSED,
                        )


def _missing(
    book: Book, code: str, name: str, tables: tuple[str, ...], place: Place, *, near: bool
) -> Fault:
    what = " or ".join(_ONE[table] for table in tables)
    mend = ""
    if code.casefold() == SELF:
        mend = "For a selfing name the seed parent here as well."
    elif near:
        known = [known for table in tables for known in getattr(book, table)]
        mend = did_you_mean(code, known)
    return Fault(
        f"The {name} {code!r} is no {what} of this book.",
        place,
        mend or f"Add it to {' or '.join(tables)}, or clear the cell.",
    )


def _plant(book: Book, plant: Plant, where: Where, doubt: Doubt) -> Iterator[Fault]:
    raised = book.raised(plant)
    origin_known = not doubt.of(plant, "raised", "cross", "source")
    if plant.cross and plant.source:
        if not doubt.of(plant, "cross", "source"):
            yield Fault(
                f"{plant.plant!r} has both a cross and a source.",
                where(plant, "source"),
                "Keep the one that it came from.",
            )
    elif origin_known:
        yield from _origin(book, plant, raised, where, doubt)
    if (
        plant.fixation is not None
        and raised != "founder"
        and book.kind(plant) != "variety"
        and origin_known
        and not doubt.of(plant, "kind", "fixation")
    ):
        yield Fault(
            f"{plant.plant!r} is a {book.kind(plant)} with parents, so its fixation follows from "
            "them.",
            where(plant, "fixation"),
            "Clear the cell, or give it the kind 'variety' if it is a line taken as fixed.",
        )
    if plant.selfings and raised != "cross" and origin_known and not doubt.of(plant, "selfings"):
        yield Fault(
            f"{plant.plant!r} has selfings but came from no cross.",
            where(plant, "selfings"),
            "Clear the cell; selfings count from a cross on.",
        )


def _origin(book: Book, plant: Plant, raised: str, where: Where, doubt: Doubt) -> Iterator[Fault]:
    if raised == "founder" and (plant.cross or plant.source):
        came = "cross" if plant.cross else "source"
        yield Fault(
            f"{plant.plant!r} has parents, so it is no founder.",
            where(plant, "raised"),
            "Clear the cell 'raised' or the parents."
            if came == "cross"
            else f"Say how it was raised: {', '.join(FROM_SOURCE)}.",
        )
    elif raised == "cross" and not plant.cross:
        yield _no_parents(plant, raised, where(plant, "raised"), bool(plant.source))
    elif raised in FROM_SOURCE and not plant.source:
        yield _no_parents(plant, raised, where(plant, "raised"), bool(plant.cross))
    elif raised in FROM_SOURCE and plant.source in book.plants:
        source = book.plants[plant.source]
        if not doubt.of(source, "kind", "raised", "cross", "source"):
            yield from _source(book, plant, source, raised, where(plant, "source"))


def _no_parents(plant: Plant, raised: str, place: Place, other: bool) -> Fault:
    if raised == "cross":
        mend = "Name the parents, or write 'founder' or nothing under 'raised'."
        what = f"{plant.plant!r} is raised 'cross' but names no "
        what += "cross." if other else "parent, so it is a founder."
    else:
        mend = f"Name what it is {raised.replace('_', ' ')}, or clear the cell 'raised'."
        what = f"{plant.plant!r} is raised {raised!r} but names no source."
    return Fault(what, place, mend)


def _source(book: Book, plant: Plant, source: Plant, raised: str, place: Place) -> Iterator[Fault]:
    kind = book.kind(source)
    if raised in FROM_POOL and not book.is_pool(source):
        proposal = (
            "it is a selfing (name it as both parents) or a cutting"
            if raised == "seed_of"
            else "sib mating is within a family or variety"
        )
        yield Fault(
            f"{plant.plant!r} is {raised} {source.plant!r}, which is a {kind}, not a pool.",
            place,
            f"Give {source.plant!r} the kind 'family' or 'variety' if it stands for many plants; "
            f"else {proposal}.",
        )
    elif raised in FROM_PLANT and book.is_pool(source):
        yield Fault(
            f"{plant.plant!r} is {raised} {source.plant!r}, which is a {kind}: a pool of many "
            "plants.",
            place,
            f"Give {source.plant!r} the kind 'plant' if it is one genotype kept by cuttings or "
            "division, or name the one plant of it.",
        )


def _cross(
    cross: Cross, candidates: list[PollenCandidate], where: Where, doubt: Doubt
) -> Iterator[Fault]:
    if candidates and cross.pollen_parent and not doubt.of(cross, "pollen_parent"):
        yield Fault(
            f"The cross {cross.cross!r} has a pollen parent and odds for others as well.",
            where(cross, "pollen_parent"),
            "Clear the pollen parent and give it its share of the odds, or clear the odds.",
        )
    odds_known = not any(doubt.of(item, "odds", "candidate", "cross") for item in candidates)
    total = math.fsum(item.odds for item in candidates)
    if total > 1 + ODDS_SLACK:
        yield Fault(
            f"The odds of the cross {cross.cross!r} add up to {total:g}, over 1.",
            where(candidates[0], "odds"),
            "Lower them; what is missing to 1 is left unknown.",
        )
    if (
        not cross.seed_parent
        and any(item.candidate == SELF for item in candidates)
        and not doubt.of(cross, "seed_parent")
    ):
        yield Fault(
            f"The cross {cross.cross!r} has 'self' among its odds but no seed parent.",
            where(candidates[0], "candidate"),
            "Name the seed parent, or take 'self' out.",
        )
    contradiction = _contradiction(cross, candidates)
    if (
        contradiction
        and odds_known
        and not doubt.of(cross, "seed_parent", "pollen_parent", "intended")
    ):
        yield Fault(
            f"The cross {cross.cross!r} {contradiction}.",
            where(cross, "intended"),
            "Change 'intended' or the parents.",
        )


def _contradiction(cross: Cross, candidates: list[PollenCandidate]) -> str:
    """How the parents of a cross contradict what was intended; '' where they do not."""
    one, two = cross.seed_parent, cross.pollen_parent
    if cross.intended == "selfing":
        if one and two and one != two:
            return "is called a selfing but has two parents"
        if not (one or two):
            return "is called a selfing but names no parent"
        if candidates and not two:
            only = candidates[0]
            itself = only.candidate in (SELF, one)
            if len(candidates) > 1 or not itself or only.odds != 1:
                return "is called a selfing but has odds other than a certain 'self'"
    elif cross.intended == "open" and two:
        return "is called open-pollinated but names its pollen parent"
    elif cross.intended == "cross" and one and one == two:
        return "is called a cross of two plants but names the same one twice"
    return ""


def _findings(book: Book, where: Where, doubt: Doubt) -> Iterator[Fault]:
    by_day: dict[tuple[str, str], list[ParentFinding]] = {}
    orphans: set[str] = set()
    for finding in book.parent_findings:
        if finding.plant not in book.plants or doubt.of(finding, "plant"):
            continue
        plant = book.plants[finding.plant]
        if not plant.cross:
            if plant.plant not in orphans and not doubt.of(plant, "cross"):
                yield Fault(
                    f"{plant.plant!r} has a finding of its pollen parent but came from no cross.",
                    where(finding, "plant"),
                    "Name its cross, or delete the finding.",
                )
            orphans.add(plant.plant)
        else:
            by_day.setdefault((finding.plant, finding.date), []).append(finding)
    for (code, date), rows in by_day.items():
        total = math.fsum(1 if row.odds is None else row.odds for row in rows)
        if total > 1 + ODDS_SLACK and not any(doubt.of(row, "date", "odds") for row in rows):
            when = f" of {date}" if date else ""
            yield Fault(
                f"The odds of the finding{when} for {code!r} add up to {total:g}, over 1.",
                where(rows[0], "odds"),
                "Lower them, or give a later finding its own date.",
            )
        cross = book.crosses.get(book.plants[code].cross)
        if (
            cross
            and not cross.seed_parent
            and not doubt.of(cross, "seed_parent")
            and any(row.pollen_parent == SELF for row in rows)
        ):
            yield Fault(
                f"{code!r} was found to be a self but its cross has no seed parent.",
                where(rows[0], "pollen_parent"),
                "Name the seed parent of the cross.",
            )
