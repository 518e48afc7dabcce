"""Reciprocal pairs: the same two parents with their roles exchanged, found and not declared.

By plant: crosses A × B and B × A of the same two codes.  By variety: seed parents grown from (or
being) variety V and pollen parents from W, and the other way, where they are no pair by plant.
Clones of one genotype count as one parent.  Selfings, uncertain and open-pollinated crosses and
crosses of unknown direction make no pair.
"""

from __future__ import annotations

from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.network.parentage import Parents, certain_pollen

__all__ = ["ReciprocalPair", "reciprocal_pairs"]


@dataclass(frozen=True, slots=True)
class ReciprocalPair:
    """Two parents and the crosses of each direction.

    level : 'plant' or 'variety'
    parents : (a, b); a is the seed parent of the cross that stands first in the book
    crosses : codes with a as the seed parent, codes with b as the seed parent
    """

    level: str
    parents: tuple[str, str]
    crosses: tuple[tuple[str, ...], tuple[str, ...]]


def reciprocal_pairs(book: Book, parents: dict[str, Parents]) -> list[ReciprocalPair]:
    """All reciprocal pairs, by plant first, each in the order of the book."""
    candidates = book.candidates()
    sided: dict[str, tuple[str, str]] = {}
    for code, cross in book.crosses.items():
        pollen = certain_pollen(cross, candidates.get(code, ()))
        if pollen and cross.seed_parent and cross.direction_known:
            sided[code] = (_genotype(cross.seed_parent, parents), _genotype(pollen, parents))
    by_plant = _paired("plant", sided)
    taken = {code for pair in by_plant for side in pair.crosses for code in side}
    of_variety: dict[str, tuple[str, str]] = {}
    for code, (seed, pollen) in sided.items():
        if code not in taken:
            varieties = _variety(book, seed, parents), _variety(book, pollen, parents)
            if all(varieties):
                of_variety[code] = varieties
    return by_plant + _paired("variety", of_variety)


def _paired(level: str, sided: dict[str, tuple[str, str]]) -> list[ReciprocalPair]:
    directions: dict[tuple[str, str], list[str]] = {}
    for code, (seed, pollen) in sided.items():
        if seed != pollen:
            directions.setdefault((seed, pollen), []).append(code)
    pairs: dict[tuple[str, str], ReciprocalPair] = {}
    for (seed, pollen), codes in directions.items():
        other = directions.get((pollen, seed))
        if other is not None and (pollen, seed) not in pairs:
            sides = (tuple(codes), tuple(other))
            pairs[seed, pollen] = ReciprocalPair(level, (seed, pollen), sides)
    return list(pairs.values())


def _genotype(code: str, parents: dict[str, Parents]) -> str:
    """The plant that a clone goes back to."""
    seen = {code}
    while code in parents and parents[code].raised == "cutting_of":
        code = parents[code].source
        if code in seen:
            break
        seen.add(code)
    return code


def _variety(book: Book, code: str, parents: dict[str, Parents]) -> str:
    """The variety that a plant is, or was grown from; '' if neither."""
    seen: set[str] = set()
    while code in book.plants and code not in seen:
        seen.add(code)
        if book.kind(book.plants[code]) == "variety":
            return code
        if parents[code].raised not in ("seed_of", "cutting_of"):
            return ""
        code = parents[code].source
    return ""
