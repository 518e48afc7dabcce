"""How many plants descend from each of many plants, all counted together.

Asked for one by one, the descendants of all founders of a book take a walk each; here some dozens
of founders are followed in one pass over the book, one binary digit for each.
"""

from __future__ import annotations

from itertools import pairwise

from pedigreeview.network.sweeps import COMPILED_FROM, IntArray

__all__ = ["descendant_counts"]

_AT_ONCE = 2_048
"""Plants followed in one pass where no compiled kernel is used."""


def descendant_counts(
    starts: IntArray, older: IntArray, asked: IntArray, ordered: int
) -> list[int]:
    """Number of descendants of each asked plant.

    Parameters
    ----------
    starts, older : the parents of every plant in compressed rows
    asked : distinct plants
    ordered : so many plants at the start have their parents before them; the rest stand in loops
        or descend from one
    """
    from pedigreeview.network import kernels

    if len(starts) > COMPILED_FROM and kernels.available():
        found: IntArray = kernels.compiled().descendant_counts(starts, older, asked, ordered)
        return found.tolist()
    behind = older.tolist()
    parents = [behind[first:last] for first, last in pairwise(starts.tolist())]
    counts: list[int] = []
    for begin in range(0, len(asked), _AT_ONCE):
        part = asked[begin : begin + _AT_ONCE].tolist()
        counts += _counted(parents, {plant: 1 << bit for bit, plant in enumerate(part)}, ordered)
    return counts


def _counted(parents: list[list[int]], own: dict[int, int], ordered: int) -> list[int]:
    reached = [0] * len(parents)

    def follow(plant: int) -> bool:
        found = reached[plant]
        for parent in parents[plant]:
            found |= reached[parent] | own.get(parent, 0)
        changed = found != reached[plant]
        reached[plant] = found
        return changed

    for plant in range(len(parents)):
        follow(plant)
    # A loop is gone round until nothing new comes by.
    while sum(follow(plant) for plant in range(ordered, len(parents))):
        pass
    counts = [0] * len(own)
    for found in reached:
        while found:
            lowest = found & -found
            counts[lowest.bit_length() - 1] += 1
            found ^= lowest
    return counts
