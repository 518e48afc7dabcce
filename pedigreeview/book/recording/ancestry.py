"""Who descends from whom, as far as a new parent link must ask: would it close a loop?"""

from __future__ import annotations

from collections.abc import Iterable

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import SELF, ParentFinding, Plant, PollenCandidate

__all__ = ["Links", "refuse_loop"]


class Links:
    """The parent links of a book as they stand, candidates and findings included."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._candidates: dict[str, list[PollenCandidate]] = book.candidates()
        self._findings: dict[str, list[ParentFinding]] = book.findings()

    def parents(self, plant: Plant) -> tuple[str, ...]:
        """Codes of every plant that may be a parent of this one, and of its source."""
        found = [plant.source]
        cross = self._book.crosses.get(plant.cross)
        if cross is not None:
            found.append(cross.seed_parent)
            if plant.plant in self._findings:
                found += [row.pollen_parent for row in self._findings[plant.plant]]
            else:
                found.append(cross.pollen_parent)
                found += [row.candidate for row in self._candidates.get(cross.cross, ())]
        return tuple(code for code in dict.fromkeys(found) if code and code != SELF)

    def ancestors(self, codes: Iterable[str]) -> set[str]:
        """The plants themselves and all from which they may descend."""
        seen: set[str] = set()
        waiting = [code for code in codes if code]
        while waiting:
            code = waiting.pop()
            plant = self._book.plants.get(code)
            if code in seen or plant is None:
                continue
            seen.add(code)
            waiting += self.parents(plant)
        return seen


def refuse_loop(book: Book, children: Iterable[str], parents: Iterable[str]) -> None:
    """Refuse parents that are among the children or descend from one of them.

    Raises
    ------
    Fault : the link would make a plant its own ancestor
    """
    wanted = set(children)
    links = Links(book)
    for parent in dict.fromkeys(code for code in parents if code and code != SELF):
        caught = sorted(wanted & links.ancestors([parent]))
        if caught:
            what = "is itself" if parent in caught else f"descends from {caught[0]}, which is"
            raise Fault(
                f"{parent} cannot be a parent here: it {what} one of the progeny.",
                Place(plant=parent),
                "Choose another parent, or correct the older link first.",
            )
