"""An invented book of any size, such as a person keeps who crosses by hand, for the benchmarks.

Of its crosses three in ten are selfings, one in seven goes back to a parent, one in eight is made
in both directions, one in ten is between sibs, and old lines are used again.  A family has mostly a
few plants, now and then dozens; one plant in six is kept.
"""

from __future__ import annotations

import numpy as np

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, Plant, Score, Trait

__all__ = ["focuses", "garden"]

_STATUS = ("kept", "culled", "culled", "growing", "finished", "")


def garden(plants: int, seed: int = 7, *, scores: bool = False) -> Book:
    """A book of about so many plants; the same for the same seed.

    scores : whether every second plant has a score of one trait
    """
    rng = np.random.default_rng(seed)
    book = Book(settings=BookSettings(name="A garden of peas", founders_as="variety"))
    if scores:
        book.add(Trait("vigour", "score", low=1, high=9))
    founders = [f"V{number:03d}" for number in range(max(4, plants // 47))]
    for code in founders:
        book.add(Plant(code, kind="variety", name=f"Pea {code}"))
    parents_of: dict[str, tuple[str, str]] = {}
    crosses_of: list[list[str]] = []
    last, count, crosses = founders, len(founders), 0
    while count < plants:
        season = f"{2000 + len(crosses_of)}"
        grown: list[str] = []
        families: list[list[str]] = []
        while count < plants and len(grown) < max(30, plants // 14):
            way = float(rng.random())
            mother = last[int(rng.integers(len(last)))]
            if way < 0.30:
                father = mother
            elif way < 0.45 and mother in parents_of:
                father = parents_of[mother][int(rng.integers(2))]
            elif way < 0.55 and mother in parents_of:
                near = [code for code in last if parents_of.get(code) == parents_of[mother]]
                father = near[int(rng.integers(len(near)))]
            elif way < 0.65:
                father = founders[int(rng.integers(len(founders)))]
            else:
                father = last[int(rng.integers(len(last)))]
            both = mother != father and float(rng.random()) < 0.17
            ways = [(mother, father), (father, mother)] if both else [(mother, father)]
            for one, other in ways:
                cross = f"{season[2:]}-{crosses:04d}"
                crosses += 1
                kind = "selfing" if one == other else "cross"
                book.add(Cross(cross, seed_parent=one, pollen_parent=other, intended=kind))
                size = int(rng.integers(1, 5)) if rng.random() < 0.9 else int(rng.integers(8, 30))
                family = [f"{cross}-{number}" for number in range(min(size, plants - count))]
                for code in family:
                    status = _STATUS[int(rng.integers(len(_STATUS)))]
                    book.add(Plant(code, cross=cross, status=status))
                    parents_of[code] = (one, other)
                    if scores and rng.random() < 0.5:
                        book.add(Score(code, "vigour", value=str(int(rng.integers(1, 10)))))
                count += len(family)
                grown += family
                families.append(family)
        crosses_of.append(grown)
        # A few plants of every family are grown on, and some lines of an earlier season.
        last = [code for family in families for code in family[:2]]
        if len(crosses_of) > 2:
            old = crosses_of[int(rng.integers(len(crosses_of) - 1))]
            last += [old[int(at)] for at in rng.integers(0, len(old), max(1, len(last) // 10))]
        last = last or founders
    return book


def focuses(book: Book, count: int, seed: int = 3) -> list[str]:
    """Plants that are parents, spread over the book."""
    used = {code for c in book.crosses.values() for code in (c.seed_parent, c.pollen_parent)}
    codes = [code for code in book.plants if code in used]
    rng = np.random.default_rng(seed)
    picked = rng.choice(len(codes), min(count, len(codes)), replace=False)
    return [codes[int(at)] for at in sorted(picked)]
