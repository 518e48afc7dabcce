"""Where plants and crosses of a book came from, in words by which two books are compared."""

from __future__ import annotations

from collections.abc import Mapping

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange.cells import to_cell
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["Origins", "same_cross", "same_parents"]


class Origins:
    """Where the plants and crosses of a book came from, in words that compare and show."""

    def __init__(self, book: Book, names: Mapping[tuple[str, str], str] | None = None) -> None:
        self.book = book
        self.candidates = book.candidates()
        self.names = {} if names is None else names

    def code(self, code: str) -> str:
        return self.names.get(("plants", code), code)

    def plant(self, plant: Plant) -> str:
        """'' for a founder, else such as 'A × B', 'A ⊗', 'cutting of C'."""
        raised = self.book.raised(plant)
        if raised == "founder":
            return ""
        selfings = f" ⊗{plant.selfings}" if plant.selfings else ""
        if raised != "cross":
            return f"{raised.replace('_', ' ')} {self.code(plant.source)}"
        cross = self.book.crosses.get(plant.cross)
        return plant.cross if cross is None else self.cross(cross) + selfings

    def cross(self, cross: Cross) -> str:
        """The parents of a cross: 'A × B', 'A ⊗', 'A × ○'."""
        odds = self.candidates.get(cross.cross)
        if odds:
            pollen = " or ".join(f"{self.code(c.candidate)} {to_cell(c.odds)}" for c in odds)
        elif cross.pollen_parent:
            pollen = self.code(cross.pollen_parent)
        else:
            pollen = "○" if cross.intended == "open" else "?"
        if cross.seed_parent and cross.seed_parent == cross.pollen_parent:
            return f"{self.code(cross.seed_parent)} ⊗"
        text = f"{self.code(cross.seed_parent) or '?'} × {pollen}"
        return text if cross.direction_known else f"{text} (direction not known)"

    def both(self, cross: Cross) -> set[str]:
        """The two parents, whichever was which."""
        return {self.code(cross.seed_parent), self.code(cross.pollen_parent)}

    def parents_first(self, tick: Tick = no_tick) -> list[Plant]:
        """The plants, each after its parents where the records have no loop.

        tick : called now and then; may raise `Cancelled`
        """
        found: list[Plant] = []
        seen: set[str] = set()
        for start in ticked(self.book.plants, tick):
            waiting = [(start, False)]
            while waiting:
                code, ready = waiting.pop()
                if ready:
                    found.append(self.book.plants[code])
                    continue
                if code in seen or code not in self.book.plants:
                    continue
                seen.add(code)
                waiting.append((code, True))
                plant = self.book.plants[code]
                cross = self.book.crosses.get(plant.cross)
                above = [plant.source]
                if cross is not None:
                    above += [cross.seed_parent, cross.pollen_parent]
                    above += [c.candidate for c in self.candidates.get(cross.cross, ())]
                waiting += [(other, False) for other in above if other]
        return found


def same_parents(mine: Origins, own: Cross, theirs: Origins, other: Cross) -> bool:
    if mine.cross(own) == theirs.cross(other):
        return True
    if own.direction_known and other.direction_known:
        return False
    return mine.both(own) == theirs.both(other)


def same_cross(own: Origins, held: Plant, other: Origins, plant: Plant) -> bool:
    """Whether two plants have the same parents, of which one book may not know which was which."""
    one, two = own.book.crosses.get(held.cross), other.book.crosses.get(plant.cross)
    return (
        one is not None
        and two is not None
        and held.selfings == plant.selfings
        and same_parents(own, one, other, two)
    )
