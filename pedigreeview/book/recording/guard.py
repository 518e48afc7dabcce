"""What a recording must not do: leave an error in the book that was not there before.

Only the records that hang together with what is changed are looked at, so that recording stays
quick in a large book.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.counts import count_problems
from pedigreeview.book.date_order import bad_date_order
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import SELF

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["Scope", "guarded", "part_of"]


@dataclass(slots=True)
class Scope:
    """The crosses, plants and packets that an edit touches."""

    crosses: set[str] = field(default_factory=set)
    plants: set[str] = field(default_factory=set)
    packets: set[str] = field(default_factory=set)

    def empty(self) -> bool:
        """Whether nothing is touched."""
        return not (self.crosses or self.plants or self.packets)


_OPEN: dict[int, Scope] = {}
"""The scope of each edit that is being guarded, by its identity."""


def part_of(book: Book, scope: Scope) -> Book:
    """The records of a book that hang together with some crosses, plants and packets."""
    part = Book(settings=book.settings)
    plants, crosses = set(scope.plants), set(scope.crosses)
    if plants:
        crosses |= {
            cross.cross
            for cross in book.crosses.values()
            if cross.seed_parent in plants or cross.pollen_parent in plants
        }
        crosses |= {row.cross for row in book.pollen_candidates if row.candidate in plants}
        crosses |= {book.plants[code].cross for code in scope.plants if code in book.plants}
    crosses &= set(book.crosses)
    harvests = {code for code, row in book.harvests.items() if row.cross in crosses}
    packets = {code for code, row in book.packets.items() if row.harvest in harvests}
    packets |= scope.packets & set(book.packets)
    for row in book.sowings.values():
        if row.packet in packets or row.sown_from in crosses or row.sown_from in plants:
            part.sowings[row.sowing] = row
    for code in packets:
        part.packets[code] = book.packets[code]
        harvests.add(book.packets[code].harvest)
    harvests &= set(book.harvests)
    # A packet that is touched brings the cross that it came from.
    crosses |= {cross for code in harvests if (cross := book.harvests[code].cross) in book.crosses}
    part.harvests = {code: book.harvests[code] for code in harvests}
    part.crosses = {code: book.crosses[code] for code in crosses}
    part.pollen_candidates = [row for row in book.pollen_candidates if row.cross in crosses]
    for worked in book.pollinations.values():
        if worked.cross in crosses:
            part.pollinations[worked.pollination] = worked
            if worked.pollen_lot in book.pollen_lots:
                part.pollen_lots[worked.pollen_lot] = book.pollen_lots[worked.pollen_lot]
    _plants(book, part, plants, crosses)
    return part


def _plants(book: Book, part: Book, plants: set[str], crosses: set[str]) -> None:
    part.plants = {
        plant.plant: plant
        for plant in book.plants.values()
        if plant.plant in plants or plant.cross in crosses or plant.source in plants
    }
    wanted = {plant.source for plant in part.plants.values()}
    for cross in part.crosses.values():
        wanted |= {cross.seed_parent, cross.pollen_parent}
    wanted |= {row.candidate for row in part.pollen_candidates}
    for code in wanted - {"", SELF}:
        if code in book.plants:
            part.plants.setdefault(code, book.plants[code])
    part.parent_findings = [row for row in book.parent_findings if row.plant in part.plants]
    if plants:
        part.scores = [row for row in book.scores if row.plant in plants]
        part.blooms = [row for row in book.blooms if row.plant in plants]


def _errors(book: Book, scope: Scope) -> list[Problem]:
    if scope.empty():
        return []
    part = part_of(book, scope)
    return [
        problem
        for found in (bad_date_order(part), count_problems(part))
        for problem in found
        if problem.severity == "error"
    ]


@contextmanager
def guarded(
    edit: Edit,
    *,
    crosses: Iterable[str] = (),
    plants: Iterable[str] = (),
    packets: Iterable[str] = (),
) -> Iterator[Scope]:
    """Refuse what makes an error among the records touched; errors that were there may stay.

    Inside another guard of the same edit the outer one does the looking, once.

    Raises
    ------
    Fault : the sentence of the error and what to do about it
    """
    here = Scope(
        {code for code in crosses if code},
        {code for code in plants if code},
        {code for code in packets if code},
    )
    outer = _OPEN.get(id(edit))
    if outer is not None:
        yield here
        outer.crosses |= here.crosses
        outer.plants |= here.plants
        outer.packets |= here.packets
        return
    before = {problem.message for problem in _errors(edit.book, here)}
    _OPEN[id(edit)] = here
    try:
        yield here
    finally:
        del _OPEN[id(edit)]
    for problem in _errors(edit.book, here):
        if problem.message not in before:
            place = Place(plant=problem.plants[0]) if problem.plants else None
            raise Fault(problem.message, place, problem.mend)
