"""How much diversity a group of plants holds, in one number each for several ways to look at it.

Conventions: a group is a set of rows, each counted once; a pool among them counts as many plants of
it.  An unknown parent is a founder of its own, as the coancestries take it (unrelated to all) and
as Boichard et al. 1997 do; the unknown parents of a pool whose seeds each have their own are
endlessly many, each with an endlessly small share.  Numbers of founders are counted in founders
that are diploid and not inbred wherever they rest on coancestry.  (Definitions from memory.)
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import inf, nan

import numpy as np
from numpy.typing import NDArray

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin
from pedigreeview.network.subset import ancestors_of, narrowed
from pedigreeview.network.sweeps import FloatArray, IntArray, Weights

__all__ = [
    "Diversity",
    "EffectiveAncestors",
    "diversity",
    "effective_ancestors",
    "genome_equivalents_by_retention",
]

_NOTHING_LEFT = 1e-12
_ALIKE = 1e-12
"""Contributions nearer than this are equal; of equals the oldest is taken."""


@dataclass(frozen=True, slots=True)
class Diversity:
    """What a group holds.

    plants : rows in the group
    mean_coancestry : mean θ over all pairs, each plant with itself among them
    mean_coancestry_of_others : mean θ over pairs of different plants; NaN for one plant
    mean_inbreeding : mean F
    status_number : 1/(2 · mean_coancestry); also the founder genome equivalents by mean kinship;
        infinite where no two alleles are alike by descent
    founder_equivalents : 1/Σp² (Lacy 1989), unknown parents as founders of their own
    founder_shares : (row, share) of each founder, largest first
    unknown_share : share of the alleles that comes from unknown parents
    """

    plants: int
    mean_coancestry: float
    mean_coancestry_of_others: float
    mean_inbreeding: float
    status_number: float
    founder_equivalents: float
    founder_shares: tuple[tuple[int, float], ...]
    unknown_share: float


@dataclass(frozen=True, slots=True)
class EffectiveAncestors:
    """Effective number of ancestors, with the ancestors in the order in which they were chosen.

    low, high : the number lies between them; equal where the choice was carried to the end
    ancestors : (row, marginal contribution) of each chosen ancestor, largest first
    left : share of the group that no chosen ancestor explains
    """

    low: float
    high: float
    ancestors: tuple[tuple[int, float], ...]
    left: float


class _Behind:
    """The part of a pedigree that stands behind a group, with rows that can be cut off."""

    def __init__(self, arrays: PedigreeArrays, group: IntArray) -> None:
        self.rows = ancestors_of(arrays.weights, group)
        self.group = np.searchsorted(self.rows, group)
        self.weights: Weights = narrowed(arrays.weights, self.rows)
        self._weight = self.weights.weight.copy()
        self._row = np.repeat(np.arange(len(self.rows)), np.diff(self.weights.starts))
        self._levels: list[IntArray] = []
        if not self.weights.compiled:
            level = self.weights.levels[self._row]
            order = np.argsort(level, kind="stable")
            cuts = np.searchsorted(level[order], np.arange(1, int(self.weights.levels.max()) + 2))
            self._levels = [order[a:b] for a, b in pairwise(cuts)]

    def cut(self, row: int) -> None:
        """Take the parents from a row."""
        self._weight[self.weights.starts[row] : self.weights.starts[row + 1]] = 0.0

    def shares(self) -> FloatArray:
        """Share of the group's alleles that passed through each row, 1 in all: (rows,)."""
        found = np.zeros(len(self.rows))
        found[self.group] = 1 / len(self.group)
        if self.weights.compiled:
            from pedigreeview.network import kernels

            starts, older = self.weights.starts, self.weights.older
            kernels.compiled().sweep_up(starts, older, self._weight, found[:, None])
            return found
        for part in reversed(self._levels):
            np.add.at(found, self.weights.older[part], self._weight[part] * found[self._row[part]])
        return found

    def gathered(self, values: FloatArray) -> FloatArray:
        """Each row's own value and the weighted values behind it: (rows,)."""
        if self.weights.compiled:
            from pedigreeview.network import kernels

            starts, older = self.weights.starts, self.weights.older
            kernels.compiled().sweep_down(starts, older, self._weight, values[:, None])
            return values
        for part in self._levels:
            np.add.at(
                values, self._row[part], self._weight[part] * values[self.weights.older[part]]
            )
        return values

    def unknown(self, arrays: PedigreeArrays) -> tuple[FloatArray, NDArray[np.bool_]]:
        """Of each row the share of its alleles from unknown parents, and whether those are few.

        They are not where the row is a pool of which every seed has its own.
        """
        known = np.bincount(self._row, self.weights.weight, minlength=len(self.rows))
        founder = arrays.origin[self.rows] == Origin.FOUNDER
        share = np.where(founder | (known > 1 - 1e-12), 0.0, 1.0 - known)
        many = arrays.pool[self.rows] & np.isnan(arrays.fixation[self.rows])
        return share, ~many


def diversity(arrays: PedigreeArrays, rows: Sequence[int] | IntArray) -> Diversity:
    """Coancestry and founders of a group of plants.

    Parameters
    ----------
    rows : one or more; each counts once

    Notes
    -----
    With x = Tᵀc, c = 1/n for each row of the group, mean θ = Σ_k D_k x_k².  Status number: Lindgren
    et al. 1996; founder equivalents: Lacy 1989 (from memory).  Cost: one sweep over the ancestors.
    """
    group = _group(rows)
    behind = _Behind(arrays, group)
    count = len(group)
    x = behind.shares()
    own = arrays.self_coancestry()[group]
    mean = float(np.sum(arrays.innovation()[behind.rows] * x * x))
    others = (
        nan if count == 1 else float((mean * count * count - own.sum()) / (count * (count - 1)))
    )
    founder = arrays.origin[behind.rows] == Origin.FOUNDER
    shares = sorted(
        zip(behind.rows[founder].tolist(), x[founder].tolist(), strict=True),
        key=lambda pair: (-pair[1], pair[0]),
    )
    share, few = behind.unknown(arrays)
    from_unknown = x * share
    squares = float(np.sum(x[founder] ** 2) + np.sum(from_unknown[few] ** 2))
    return Diversity(
        plants=count,
        mean_coancestry=mean,
        mean_coancestry_of_others=others,
        mean_inbreeding=float(arrays.inbreeding()[group].mean()),
        status_number=1 / (2 * mean) if mean > 0 else inf,
        founder_equivalents=1 / squares if squares > 0 else inf,
        founder_shares=tuple(pair for pair in shares if pair[1] > 0),
        unknown_share=float(from_unknown.sum()),
    )


def effective_ancestors(
    arrays: PedigreeArrays,
    rows: Sequence[int] | IntArray,
    *,
    most: int = 1000,
    tick: Callable[[int, int], None] | None = None,
) -> EffectiveAncestors:
    """Effective number of ancestors of a group: 1/Σp² over their marginal contributions.

    Parameters
    ----------
    rows : one or more; each counts once
    most : ancestors chosen at most; the number is then given as a range
    tick : called with (ancestors chosen, most); may raise `Cancelled`

    Notes
    -----
    Boichard et al. 1997 (from memory): of all ancestors choose the one with the largest share of
    the group that no chosen ancestor explains yet, cut off its parents, and begin again.  A plant
    of the group is an ancestor only if others of the group descend from it or it is a founder.
    Equal ancestors: the oldest first.  Cost: two sweeps over the ancestors for each one chosen.
    The range: what is left goes to many ancestors (low sum of squares) or to as few as the last
    contribution allows (high).
    """
    group = _group(rows)
    behind = _Behind(arrays, group)
    share, few = behind.unknown(arrays)
    eligible = np.zeros(len(behind.rows), bool)
    eligible[behind.weights.older] = True
    eligible |= arrays.origin[behind.rows] == Origin.FOUNDER
    # An unknown parent of an ancestor is cut off when that ancestor is chosen; of a plant of the
    # group that is no ancestor it stays, and it explains its share alone.
    lonely = np.where(~eligible & few, share, 0.0) / len(group)
    endless = float(np.where(~eligible & ~few, share, 0.0).sum()) / len(group)
    squares, left = float(np.sum(lonely**2)), 1.0 - float(lonely.sum())
    chosen: list[tuple[int, float]] = []
    taken = np.zeros(len(behind.rows))
    while left - endless > _NOTHING_LEFT and len(chosen) < most:
        if tick is not None:
            tick(len(chosen), most)
        explained = behind.gathered(taken.copy())
        marginal = np.where(eligible, behind.shares() * (1.0 - explained), 0.0)
        best = int(np.argmax(marginal >= marginal.max() - _ALIKE))
        contribution = float(marginal[best])
        if contribution <= _NOTHING_LEFT:
            break
        chosen.append((int(behind.rows[best]), contribution))
        squares += contribution**2
        left -= contribution
        eligible[best] = False
        taken[best] = 1.0
        behind.cut(best)
    more = max(0.0, left - endless)
    if more <= _ALIKE:
        more = 0.0
    last = chosen[-1][1] if chosen else 0.0
    return EffectiveAncestors(
        low=1 / (squares + more * last) if squares + more * last > 0 else inf,
        high=1 / squares if squares > 0 else inf,
        ancestors=tuple(chosen),
        left=max(0.0, left),
    )


def genome_equivalents_by_retention(
    arrays: PedigreeArrays,
    rows: Sequence[int] | IntArray,
    *,
    replicates: int = 2000,
    seed: int = 0,
    tick: Callable[[int, int], None] | None = None,
) -> float:
    """Founder genome equivalents of a group by the alleles of each founder that it still holds.

    The other definition, by mean kinship, is `Diversity.status_number`; the two differ.

    Parameters
    ----------
    rows, seed, replicates, tick : the group, and the gene drop that finds what is held

    Notes
    -----
    1/(2 Σ p²/h), h the expected number of different alleles of the founder at a locus that are
    held.  For a diploid founder that is not inbred h = 2r with r its retention, which gives Lacy
    1989's 1/Σ(p²/r); written with h it also holds for pure lines (h = 1), pools and other ploidies.
    A pool in the group holds every allele of its parents.  Error: that of the gene drop.
    """
    from pedigreeview.network.gene_drop import alleles_held

    group = _group(rows)
    behind = _Behind(arrays, group)
    x = behind.shares()
    share, _ = behind.unknown(arrays)
    of_founder, of_unknown = alleles_held(
        arrays, group, replicates=replicates, seed=seed, tick=tick
    )
    total = 0.0
    for place, row in enumerate(behind.rows.tolist()):
        if arrays.origin[row] == Origin.FOUNDER and x[place] > 0:
            total += x[place] ** 2 / of_founder[row] if of_founder[row] > 0 else 0.0
        elif share[place] > 0 and of_unknown.get(row, 0.0) > 0:
            # The unknown parent is there with the chance that its share says.
            there = 1.0
            if arrays.origin[row] == Origin.FATHER:
                there = share[place]
            elif arrays.seed[row] != UNKNOWN:
                there = min(1.0, 2 * share[place])
            total += x[place] ** 2 * share[place] ** 2 * there / of_unknown[row]
    return 1 / (2 * total) if total > 0 else inf


def _group(rows: Sequence[int] | IntArray) -> IntArray:
    found: IntArray = np.unique(np.asarray(rows, dtype=np.int64))
    if not len(found):
        raise ValueError("a group holds one plant or more")
    return found
