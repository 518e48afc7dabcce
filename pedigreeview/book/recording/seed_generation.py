"""The generation of seed: one ahead of the plant that bears it.

The trade's names hold for descendants of one first cross: F1 is the seed of the cross, F2 the seed
that an F1 plant bears by selfing, BC1F1 the seed of the hybrid with a parent of its own, S1 the
selfing of a plant with no cross behind it.  Elsewhere there is no name.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from pedigreeview.book.book import Book
from pedigreeview.book.records import SELF, Cross, Plant

__all__ = ["SeedGenerations", "generation_of_seed"]

_SAME = ("seed_of", "cutting_of", "doubled_of")


@dataclass(frozen=True, slots=True)
class _Step:
    """How far a plant is within one first cross ('F', 'BC'), or from one founder ('', 'S')."""

    letter: str
    root: str
    pair: tuple[str, ...] = ()
    filial: int = 0
    recurrent: str = ""
    backcrosses: int = 0

    @property
    def name(self) -> str:
        head = f"BC{self.backcrosses}F" if self.letter == "BC" else self.letter
        return f"{head}{self.filial}" if self.letter else ""


class SeedGenerations:
    """Names of generations, found as they are asked for and remembered."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._candidates = book.candidates()
        self._findings = book.findings()
        self._steps: dict[str, _Step | None] = {}

    def of_plant(self, code: str) -> str:
        """The generation of a plant, or ''."""
        plant = self._book.plants.get(code)
        step = self._step(plant) if plant is not None else None
        return step.name if step is not None else ""

    def of_seed(self, cross: Cross) -> str:
        """The generation of the seed of a cross, or ''."""
        step = self._of_seed(cross)
        return step.name if step is not None else ""

    def _step(self, wanted: Plant) -> _Step | None:
        """Where a plant stands; parents first, so that a long line of descent is no deep call."""
        book, ahead = self._book, [wanted]
        opened: set[str] = set()
        while ahead:
            plant = ahead[-1]
            if plant.plant in self._steps:
                ahead.pop()
                continue
            behind = [
                book.plants[code]
                for code in self._behind(plant)
                if code in book.plants and code not in self._steps
            ]
            if behind and plant.plant not in opened:
                opened.add(plant.plant)
                # A plant met again while it is open is its own ancestor and has no name.
                ahead += [one for one in behind if one.plant not in opened]
                continue
            ahead.pop()
            self._steps[plant.plant] = None if behind else self._worked_out(plant)
        return self._steps[wanted.plant]

    def _behind(self, plant: Plant) -> tuple[str, ...]:
        cross = self._book.crosses.get(plant.cross)
        if cross is None:
            return (plant.source,) if plant.source else ()
        return tuple(code for code in self._parents(cross, plant.plant) if code)

    def _parents(self, cross: Cross, plant: str = "") -> tuple[str, str]:
        """Seed and pollen parent where they are certain, else blank."""
        seed = cross.seed_parent
        rows = self._candidates.get(cross.cross, [])
        if plant in self._findings:
            found = self._findings[plant]
            pollen = _certain(
                seed, [(r.pollen_parent, 1.0 if r.odds is None else r.odds) for r in found]
            )
        elif rows:
            pollen = _certain(seed, [(row.candidate, row.odds) for row in rows])
        elif cross.intended == "selfing":
            pollen = seed or cross.pollen_parent
            seed = pollen
        elif cross.pollen_parent:
            pollen = cross.pollen_parent
        else:
            held = self._book.plants.get(seed)
            selfs = (
                cross.intended == "open" and held is not None and self._book.outcrossing(held) == 0
            )
            pollen = seed if selfs else ""
        return seed, pollen

    def _worked_out(self, plant: Plant) -> _Step | None:
        raised = self._book.raised(plant)
        if raised == "founder":
            return _Step("", plant.plant)
        if raised == "cross":
            cross = self._book.crosses.get(plant.cross)
            step = self._of_parents(cross, *self._parents(cross, plant.plant)) if cross else None
            return replace(step, filial=step.filial + plant.selfings) if step else None
        source = self._steps.get(plant.source)
        if source is None or raised in _SAME:
            return source
        if raised == "sibbed_in" and source.letter in ("F", "BC"):
            return replace(source, filial=source.filial + 1)
        return None

    def _of_seed(self, cross: Cross) -> _Step | None:
        seed, pollen = self._parents(cross)
        for code in (seed, pollen):
            held = self._book.plants.get(code)
            if held is not None:
                self._step(held)
        return self._of_parents(cross, seed, pollen)

    def _of_parents(self, cross: Cross, seed: str, pollen: str) -> _Step | None:
        one, two = self._steps.get(seed), self._steps.get(pollen)
        if one is None or two is None:
            return None
        if seed == pollen:
            if not one.letter:
                return _Step("S", one.root, filial=1)
            return replace(one, filial=one.filial + 1)
        old = [step for step in (one, two) if step.letter in ("", "S")]
        if len(old) == 2:
            if one.root == two.root:
                return None
            return _Step("F", cross.cross, (one.root, two.root), 1)
        if not one.letter or not two.letter:
            founder, hybrid = (one, two) if not one.letter else (two, one)
            return _back(founder.root, hybrid)
        same = one.letter == two.letter and one.root == two.root and one.letter != "S"
        if same and (one.recurrent, one.backcrosses) == (two.recurrent, two.backcrosses):
            return replace(one, filial=1 + max(one.filial, two.filial))
        return None


def _certain(seed_parent: str, odds: list[tuple[str, float]]) -> str:
    """The one pollen parent that all the odds are on, or ''."""
    summed: dict[str, float] = {}
    for code, value in odds:
        if code and value > 0:
            named = seed_parent if code == SELF else code
            summed[named] = summed.get(named, 0.0) + value
    return next(iter(summed)) if list(summed.values()) == [1.0] else ""


def _back(founder: str, hybrid: _Step) -> _Step | None:
    if hybrid.letter == "F" and founder in hybrid.pair:
        return replace(hybrid, letter="BC", recurrent=founder, backcrosses=1, filial=1)
    if hybrid.letter == "BC" and founder == hybrid.recurrent:
        return replace(hybrid, backcrosses=hybrid.backcrosses + 1, filial=1)
    return None


def generation_of_seed(book: Book, cross: str) -> str:
    """The generation of the seed of a cross ('F1', 'F2', 'BC1F1', 'S1'), '' where none fits."""
    held = book.crosses.get(cross)
    return SeedGenerations(book).of_seed(held) if held is not None else ""
