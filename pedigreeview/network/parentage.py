"""Who a plant's parents are, once findings, candidates and open pollination have had their say.

A `Parents` is the record of one plant read as numbers.md reads it: the seed parent, the candidates
for pollen parent with odds (what is missing to 1 is unknown), one father or many, and the source
for plants that came from one other plant or pool.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.records import SELF, Cross, ParentFinding, Plant, PollenCandidate

__all__ = ["Parents", "certain_pollen", "cross_parents", "is_selfing", "parents_by_plant"]


@dataclass(frozen=True, slots=True)
class Parents:
    """The parents of one plant.

    raised : the word of formats.md ('founder', 'cross', 'seed_of', ...)
    cross : code of the cross, or ''
    seed_parent : code, '' = unknown or none
    pollen : (code, odds) of every candidate, odds summing to 1 or less; 'self' is already resolved
        to the code of the seed parent
    each : True where each seed has a pollen parent (and pool member) of its own
    source : code of the plant or pool that it came from otherwise, or ''
    selfings : unrecorded selfings after the cross
    finding : True where the plant's own finding overrides its cross
    by_rate : True where the odds come from the outcrossing rate of the crop
    """

    raised: str
    cross: str = ""
    seed_parent: str = ""
    pollen: tuple[tuple[str, float], ...] = ()
    each: bool = False
    source: str = ""
    selfings: int = 0
    finding: bool = False
    by_rate: bool = False

    @property
    def codes(self) -> tuple[str, ...]:
        """Distinct codes of all parents and the source, the seed parent's side first."""
        found = dict.fromkeys((self.seed_parent, *(code for code, _ in self.pollen), self.source))
        found.pop("", None)
        return tuple(found)

    @property
    def pollen_parent(self) -> str:
        """Code of the pollen parent where it is certain, else ''."""
        return self.pollen[0][0] if len(self.pollen) == 1 and self.pollen[0][1] == 1 else ""

    @property
    def selfed(self) -> bool:
        """Whether the plant certainly arose by selfing its seed parent."""
        return self.seed_parent != "" and self.pollen_parent == self.seed_parent


def certain_pollen(cross: Cross, candidates: Sequence[PollenCandidate]) -> str:
    """Code of the pollen parent where it is one certain plant, else ''."""
    if candidates:
        only = candidates[0]
        certain = len(candidates) == 1 and only.odds == 1
        return _resolved(only.candidate, cross.seed_parent) if certain else ""
    if cross.intended == "selfing":
        return cross.seed_parent or cross.pollen_parent
    return cross.pollen_parent


def is_selfing(cross: Cross, candidates: Sequence[PollenCandidate] = ()) -> bool:
    """Whether the same plant certainly stands on both sides of the cross."""
    pollen = certain_pollen(cross, candidates)
    return (
        pollen != ""
        and pollen == (cross.seed_parent or pollen)
        and (cross.intended == "selfing" or cross.seed_parent != "")
    )


def cross_parents(
    book: Book, cross: Cross, candidates: Sequence[PollenCandidate]
) -> tuple[tuple[tuple[str, float], ...], bool, bool]:
    """Candidates, one or each, and whether an outcrossing rate was used, for one cross.

    Returns
    -------
    pollen : (code, odds) pairs
    each : see `Parents`
    by_rate : see `Parents`
    """
    seed = cross.seed_parent
    if candidates:
        pollen = _merged((_resolved(item.candidate, seed), item.odds) for item in candidates)
        usual = cross.intended == "open" or any(
            item.candidate in (SELF, seed) for item in candidates
        )
        return pollen, _each(cross, usual), False
    if is_selfing(cross):
        parent = seed or cross.pollen_parent
        pool = parent in book.plants and book.is_pool(book.plants[parent])
        return ((parent, 1.0),), cross.drawn == "each" or (pool and cross.drawn != "one"), False
    if cross.pollen_parent:
        return ((cross.pollen_parent, 1.0),), cross.drawn == "each", False
    if cross.intended == "open" and seed in book.plants:
        rate = book.outcrossing(book.plants[seed])
        if rate is not None:
            pollen = ((seed, 1.0 - rate),) if rate < 1 else ()
            return pollen, _each(cross, True), True
    return (), _each(cross, cross.intended == "open"), False


def parents_by_plant(book: Book) -> dict[str, Parents]:
    """The parents of every plant of the book, in the book's order."""
    candidates = book.candidates()
    findings = book.findings()
    of_cross = {
        code: cross_parents(book, cross, candidates.get(code, []))
        for code, cross in book.crosses.items()
    }
    return {
        code: _parents(book, plant, of_cross, findings.get(code))
        for code, plant in book.plants.items()
    }


def _parents(
    book: Book,
    plant: Plant,
    of_cross: dict[str, tuple[tuple[tuple[str, float], ...], bool, bool]],
    finding: list[ParentFinding] | None,
) -> Parents:
    raised = book.raised(plant)
    # What should have come of another and names none is taken as what its ancestry is: unknown.
    if raised == "founder" or not (plant.cross if raised == "cross" else plant.source):
        return Parents("founder")
    if raised != "cross":
        return Parents(raised, source=plant.source, selfings=plant.selfings)
    cross = book.crosses[plant.cross]
    seed = cross.seed_parent or (cross.pollen_parent if is_selfing(cross) else "")
    pollen, each, by_rate = of_cross[plant.cross]
    if finding is not None:
        shown = _merged(
            (_resolved(row.pollen_parent, seed), 1.0 if row.odds is None else row.odds)
            for row in finding
            if row.pollen_parent
        )
        # A finding that only confirms the cross's parent leaves its unrecorded plant as it is.
        if shown != pollen:
            return Parents("cross", cross.cross, seed, shown, each, "", plant.selfings, True)
        return Parents("cross", cross.cross, seed, pollen, each, "", plant.selfings, True, by_rate)
    return Parents("cross", cross.cross, seed, pollen, each, "", plant.selfings, False, by_rate)


def _resolved(candidate: str, seed_parent: str) -> str:
    return seed_parent if candidate == SELF else candidate


def _each(cross: Cross, usual: bool) -> bool:
    return usual if not cross.drawn else cross.drawn == "each"


def _merged(pairs: Iterable[tuple[str, float]]) -> tuple[tuple[str, float], ...]:
    odds: dict[str, float] = {}
    for code, share in pairs:
        if code and share > 0:
            odds[code] = odds.get(code, 0.0) + share
    return tuple(odds.items())
