"""Who the parents of a plant are, as the cells of its row say it.

A plant has the cells of its cross, unless its own finding says otherwise: then it has a cross of
its own, which it shares with the sibs of which the same was found.
"""

from __future__ import annotations

from collections.abc import Container, Iterable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.records import SELF, Cross, Plant, PollenCandidate
from pedigreeview.exchange.cells import to_cell

if TYPE_CHECKING:
    from pedigreeview.network import Parents

__all__ = ["DRAWN", "Mating", "TableParents", "cross_name"]

DRAWN = ("one", "each")

_Odds = tuple[tuple[str, float], ...]


def cross_name(
    seed: str,
    pollen: str,
    odds: _Odds,
    *,
    taken: Container[str],
    numbers: dict[str, int] | None = None,
) -> str:
    """The program's name of a cross without a code, such as 'TP × BA', unlike any that is taken.

    numbers : how far each name has been numbered, so that the next is found at once
    """
    mother = seed or "?"
    if seed and seed == pollen:
        name = f"{mother} ⊗"
    elif pollen:
        name = f"{mother} × {pollen}"
    elif odds:
        name = f"{mother} × {' or '.join(code for code, _ in sorted(odds))}"
    else:
        name = f"{mother} ○"
    count = 1 if numbers is None else numbers.get(name, 1)
    free = name if count == 1 else f"{name} ({count})"
    while free in taken:
        count += 1
        free = f"{name} ({count})"
    if numbers is not None:
        numbers[name] = count
    return free


@dataclass(frozen=True, slots=True)
class Mating:
    """The cells of one row that tell its parents."""

    cross: str
    seed_parent: str = ""
    pollen_parent: str = ""
    odds: _Odds = ()
    drawn: str = ""

    def cells(self) -> dict[str, str]:
        """The cells by the name of their columns."""
        return {
            "cross": self.cross,
            "seed_parent": self.seed_parent,
            "pollen_parent": self.pollen_parent,
            "pollen_odds": "; ".join(f"{code}:{to_cell(share)}" for code, share in self.odds),
            "drawn": self.drawn,
        }


@dataclass(slots=True)
class TableParents:
    """The matings of all plants of a book that came from a cross."""

    book: Book
    candidates: dict[str, list[PollenCandidate]] = field(init=False)
    _parents: dict[str, Parents] = field(init=False)
    _of_cross: dict[str, Mating | None] = field(default_factory=dict)
    _own: dict[tuple[str, str, _Odds, str, str], Mating] = field(default_factory=dict)
    _taken: set[str] = field(init=False)
    _confirmed: dict[str, _Odds] = field(default_factory=dict)
    _numbers: dict[str, int] = field(default_factory=dict)

    def __post_init__(self) -> None:
        # The network takes a while to import, and a table may be read without it.
        from pedigreeview.network.parentage import parents_by_plant

        self.candidates = self.book.candidates()
        self._parents = parents_by_plant(self.book)
        self._taken = set(self.book.crosses)
        # In the order of the book, so that the same book gets the same names.
        for plant in self.book.plants.values():
            if self.book.raised(plant) == "cross":
                self.of(plant)

    def of(self, plant: Plant) -> Mating | None:
        """The mating of a plant that came from a cross; None where neither parent is known."""
        if self.is_own(plant.plant):
            return self._of_finding(plant.plant, self._parents[plant.plant])
        return self.cells_of(self.book.crosses[plant.cross])

    def is_own(self, code: str) -> bool:
        """Whether a plant's finding says something else than its cross does."""
        parents = self._parents[code]
        if not parents.finding:
            return False
        if parents.pollen != self._pollen_of(parents.cross):
            return True
        # What one plant shows is of that plant alone: no sib shares its unseen pollen parent.
        return not (parents.each or parents.pollen_parent)

    def _pollen_of(self, code: str) -> _Odds:
        if code not in self._confirmed:
            from pedigreeview.network.parentage import cross_parents

            candidates = self.candidates.get(code, [])
            pollen, _, _ = cross_parents(self.book, self.book.crosses[code], candidates)
            self._confirmed[code] = pollen
        return self._confirmed[code]

    # A cross as it stands ------------------------------------------------------------------------

    def cells_of(self, cross: Cross) -> Mating | None:
        """The mating of the plants of a cross without a finding of their own."""
        if cross.cross not in self._of_cross:
            self._of_cross[cross.cross] = self._mating(cross)
        return self._of_cross[cross.cross]

    def _mating(self, cross: Cross) -> Mating | None:
        code, seed, pollen, drawn = (
            cross.cross, cross.seed_parent, cross.pollen_parent, cross.drawn,
        )  # fmt: skip
        candidates = self.candidates.get(code, [])
        if candidates:
            usual = any(item.candidate in (SELF, seed) for item in candidates)
            if cross.intended == "open" and not usual:
                drawn = drawn or "each"
            odds = _merged((item.candidate, float(item.odds)) for item in candidates)
            return Mating(code, seed, pollen, odds, drawn)
        if cross.intended == "selfing":
            one = seed or pollen
            return Mating(code, one, pollen or one, (), drawn) if one else None
        if pollen:
            return Mating(code, seed, pollen, (), drawn)
        if not seed:
            return None
        if cross.intended != "open":
            # Unknown is not open-pollinated: odds of 0 leave all of the pollen parent unknown.
            return Mating(code, seed, "", ((SELF, 0.0),), drawn or "one")
        if self.by_rate(cross):
            rate = self.book.outcrossing(self.book.plants[seed])
            assert rate is not None
            return Mating(code, seed, "", ((SELF, 1.0 - rate),), drawn or "each")
        return Mating(code, seed, "", (), drawn)

    def by_rate(self, cross: Cross) -> bool:
        """Whether the book's own outcrossing rate is written as odds of a cross."""
        rate = self.book.settings.outcrossing
        if rate is None or cross.intended != "open" or cross.pollen_parent:
            return False
        seed = self.book.plants.get(cross.seed_parent)
        if seed is None or cross.cross in self.candidates:
            return False
        facts = self.book.crop_facts(seed)
        return facts is None or facts.outcrossing != rate

    # What one plant shows ------------------------------------------------------------------------

    def _of_finding(self, code: str, parents: Parents) -> Mating | None:
        seed, sure = parents.seed_parent, parents.pollen_parent
        odds: _Odds = ()
        alone = ""
        if sure:
            # For single plants it makes no difference.
            pools = self._is_pool(seed) or self._is_pool(sure)
            drawn = ("each" if parents.each else "one") if pools else ""
        else:
            odds = tuple((SELF if of == seed else of, share) for of, share in parents.pollen)
            if not odds and not seed:
                return None
            drawn = "each" if parents.each or not odds else "one"
            # No sib shares its unseen pollen parent.
            alone = code if drawn == "one" else ""
            odds = odds or ((SELF, 0.0),)
        key = (parents.cross, sure, odds, drawn, alone)
        if key not in self._own:
            name = cross_name(seed, sure, odds, taken=self._taken, numbers=self._numbers)
            self._taken.add(name)
            self._own[key] = Mating(name, seed, sure, odds, drawn)
        return self._own[key]

    def _is_pool(self, code: str) -> bool:
        return bool(code) and self.book.is_pool(self.book.plants[code])

    def apart(self) -> list[str]:
        """Plants that no longer come from the member of a pool that their sibs come from."""
        users: dict[tuple[str, str, str], list[str]] = {}
        for code, parents in self._parents.items():
            for side, pool in self._members(parents):
                users.setdefault((parents.cross, side, pool), []).append(code)
        found: dict[str, None] = {}
        for sharing in users.values():
            matings = {code: self.of(self.book.plants[code]) for code in sharing}
            for code in sharing:
                mating = matings[code]
                alone = mating is None or bool(mating.odds)
                others = [held for other, held in matings.items() if other != code]
                if self.is_own(code) and (
                    any(alone or held != mating for held in others) or self._has_no_member(code)
                ):
                    found[code] = None
        return list(found)

    def _has_no_member(self, code: str) -> bool:
        """Whether a pool of unknown pollen loses the one seed parent of all its plants."""
        return not self._parents[code].pollen and self._is_pool(code)

    def _members(self, parents: Parents) -> list[tuple[str, str]]:
        """Side and pool of each unrecorded member that a plant's cross used once for all seed."""
        if parents.raised != "cross" or parents.each:
            return []
        sides = [("seed", parents.seed_parent)]
        sides += [("pollen", code) for code, _ in parents.pollen if code != parents.seed_parent]
        return [(side, code) for side, code in sides if self._is_mixed(code)]

    def _is_mixed(self, code: str) -> bool:
        """Whether a code stands for plants that are not all alike."""
        if not self._is_pool(code):
            return False
        plant = self.book.plants[code]
        raised = self.book.raised(plant)
        if raised == "founder":
            return self.book.founder_fixation(plant) != 1
        if self.book.kind(plant) == "variety" and raised not in ("cutting_of", "doubled_of"):
            return plant.fixation not in (None, 1)
        return plant.fixation != 1


def _merged(pairs: Iterable[tuple[str, float]]) -> _Odds:
    found: dict[str, float] = {}
    for code, share in pairs:
        found[code] = found.get(code, 0) + share
    return tuple(found.items())
