"""F, θ(i, i) and D of every row, level by level from the founders down.

What a level needs of the levels above it is the coancestry between the two sides of each cross.
Sibs of one cross share it, so it is found once for each cross, on one of two roads:

block      a dense block of the coancestries among rows that are still to be used as parents, moved
           forward level by level; best for deep pedigrees, in which many ancestors stand behind
           every plant;
traversal  one walk over the ancestors of the cross (Meuwissen & Luo 1992, from memory, for two
           sides); best for wide and shallow ones.

The road is chosen by an estimate of the work of both; both give the same numbers.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from pedigreeview.network.block import MovingBlock, block_size, block_work
from pedigreeview.network.origins import UNKNOWN, Origin, Rules
from pedigreeview.network.sweeps import FloatArray, IntArray
from pedigreeview.network.traversal import Traversal, traversal_work

if TYPE_CHECKING:
    from pedigreeview.network.arrays import PedigreeArrays

__all__ = ["Coefficients", "FixationTooLow", "Level", "compute", "level_of", "settle"]

_LARGEST_BLOCK = 8_000
"""Rows and columns of the block: 512 MB."""


@dataclass(frozen=True, slots=True)
class FixationTooLow(Exception):
    """A line's stated fixation lies below the coancestry of two of its members by descent."""

    row: int
    stated: float
    needed: float


@dataclass(slots=True)
class Coefficients:
    """F, θ(i, i) and D of every row."""

    inbreeding: FloatArray
    self_coancestry: FloatArray
    innovation: FloatArray


@dataclass(frozen=True, slots=True)
class Level:
    """The rows of one level, and its distinct crosses.

    rows : all rows of the level
    asked : one row for each distinct cross (or unseen father) of the level
    of_asked : for every row the place in `asked` of its cross, −1 for rows of other origins
    """

    rows: IntArray
    asked: IntArray
    of_asked: IntArray


def compute(arrays: PedigreeArrays, road: str = "") -> Coefficients:
    """F, θ(i, i) and D of every row.

    Parameters
    ----------
    road : 'block' or 'traversal' to insist on one; '' chooses by the estimated work

    Raises
    ------
    FixationTooLow : for the first line whose fixation is below what descent gives
    """
    count = len(arrays)
    found = Coefficients(np.zeros(count), np.zeros(count), np.zeros(count))
    if count == 0:
        return found
    levels = _levels(arrays)
    walker = _walker(arrays, levels, found, road)
    done = 0
    for level in levels:
        if arrays.tick is not None:
            arrays.tick(done, count)
        done += len(level.rows)
        sides = walker.sides(level)
        settle(arrays, level, sides, found)
        walker.advance(level)
    return found


def _levels(arrays: PedigreeArrays) -> list[Level]:
    depth = arrays.weights.levels
    order = np.argsort(depth, kind="stable")
    cuts = np.searchsorted(depth[order], np.arange(int(depth.max()) + 2))
    return [level_of(arrays, order[a:b]) for a, b in pairwise(cuts)]


def level_of(arrays: PedigreeArrays, rows: IntArray) -> Level:
    """The distinct crosses of a level; sibs usually stand together, so runs are folded first."""
    origin = arrays.origin[rows]
    crossed = np.flatnonzero((origin == Origin.CROSS) | (origin == Origin.FATHER))
    of_asked = np.full(len(rows), -1, np.int64)
    if not len(crossed):
        return Level(rows, rows[:0], of_asked)
    asked = rows[crossed]
    first = arrays.option_starts[asked]
    options = arrays.option_starts[asked + 1] - first
    single = (options == 1) & (origin[crossed] == Origin.CROSS)
    seed = arrays.seed[asked]
    at = first[single]
    pollen = np.full(len(asked), -1, np.int64)
    pollen[single] = arrays.options[at]
    certain = single.copy()
    certain[single] = arrays.odds[at] == 1
    # A cross with odds is asked about on its own, certain ones by their two parents.
    key = np.where(certain, (seed + 1) * (len(arrays) + 1) + pollen, -1 - asked)
    starts = np.flatnonzero(np.concatenate(([True], key[1:] != key[:-1])))
    _, pick, inverse = np.unique(key[starts], return_index=True, return_inverse=True)
    run = np.cumsum(np.concatenate(([False], key[1:] != key[:-1])))
    of_asked[crossed] = inverse[run]
    return Level(rows, asked[starts[pick]], of_asked)


def _walker(
    arrays: PedigreeArrays, levels: list[Level], found: Coefficients, road: str
) -> MovingBlock | Traversal:
    if not road:
        size = block_size(arrays, levels)
        arrays.weights.compile_if_wide(size)
        small = size <= 512 or not arrays.weights.compiled
        if size > _LARGEST_BLOCK:
            road = "traversal"
        elif small or block_work(arrays, levels, size) <= traversal_work(arrays, levels):
            road = "block"
        else:
            road = "traversal"
    return MovingBlock(arrays, levels, found) if road == "block" else Traversal(arrays, found)


def settle(arrays: PedigreeArrays, level: Level, sides: FloatArray, found: Coefficients) -> None:
    """Write the coefficients of a level's rows from the coancestries of their parents' sides."""
    rows = level.rows
    ploidies = arrays.ploidy[rows]
    single = ploidies[0] if (ploidies == ploidies[0]).all() else None
    if single is not None:
        rules = Rules(int(single), arrays.double_reduction)
        _settle_ploidy(arrays, rows, level.of_asked, level.asked, sides, rules, found)
        return
    for ploidy in np.unique(ploidies).tolist():
        picked = np.flatnonzero(ploidies == ploidy)
        rules = Rules(ploidy, arrays.double_reduction)
        of_asked = level.of_asked[picked]
        _settle_ploidy(arrays, rows[picked], of_asked, level.asked, sides, rules, found)


def _settle_ploidy(
    arrays: PedigreeArrays,
    rows: IntArray,
    of_asked: IntArray,
    asked: IntArray,
    sides: FloatArray,
    rules: Rules,
    found: Coefficients,
) -> None:
    origin, seed = arrays.origin[rows], arrays.seed[rows]
    known = seed != UNKNOWN
    of_seed = np.where(known, found.inbreeding[seed], 0.0)
    own_seed = np.where(known, found.self_coancestry[seed], 0.0)
    first = np.zeros(len(rows))
    by_descent = own_seed.copy()

    founder = origin == Origin.FOUNDER
    first[founder] = arrays.fixation[rows[founder]]
    by_descent[founder] = 0.0
    same = (origin == Origin.MEMBER) | (origin == Origin.CLONE)
    first[same] = of_seed[same]
    # A long row of single plants has as many levels; what none of a level's rows is costs nothing.
    kinds = set(origin.tolist())
    for kind, rule in ((Origin.DOUBLED, rules.doubled), (Origin.HAPLOID, rules.doubled_gamete)):
        if kind in kinds:
            picked = origin == kind
            first[picked] = rule(of_seed[picked])
    if Origin.SELF in kinds:
        selfed = origin == Origin.SELF
        first[selfed] = rules.selfed(of_seed[selfed])
    if Origin.SIB in kinds:
        sibbed = origin == Origin.SIB
        first[sibbed] = rules.cross(of_seed[sibbed], of_seed[sibbed], own_seed[sibbed])

    crossed = np.flatnonzero(of_asked >= 0)
    father = np.zeros(0, bool)
    if len(crossed):
        of_cross = of_asked[crossed]
        crosses = _crosses(arrays, asked, sides, rules, found)
        first[crossed] = crosses.inbreeding[of_cross]
        by_descent[crossed] = crosses.by_descent[of_cross]
        father = origin[crossed] == Origin.FATHER

    selfings = arrays.selfings[rows]
    if selfings.any():
        for times in np.unique(selfings[selfings > 0]).tolist():
            picked = selfings == times
            first[picked] = rules.selfed(first[picked], times)

    own = np.asarray(rules.itself(first))
    pool = arrays.pool[rows]
    own[founder & pool] = first[founder & pool]
    own[origin == Origin.CLONE] = own_seed[origin == Origin.CLONE]
    if pool.any():
        kept_apart = (Origin.FOUNDER, Origin.CLONE, Origin.DOUBLED)
        by_members = pool & ~np.isin(origin, kept_apart)
        own[by_members] = by_descent[by_members]
    if father.any():
        own[crossed[father]] = crosses.of_father[of_cross[father]]

    line = ~founder & ~np.isnan(arrays.fixation[rows])
    if line.any():
        stated = arrays.fixation[rows]
        low = np.flatnonzero(line & (stated < by_descent - 1e-12))
        if len(low):
            at = low[np.argmin(rows[low])]
            raise FixationTooLow(int(rows[at]), float(stated[at]), float(by_descent[at]))
        first[line] = own[line] = stated[line]
    found.inbreeding[rows] = first
    found.self_coancestry[rows] = own
    found.innovation[rows] = np.maximum(own - by_descent, 0.0)


class _Crosses(NamedTuple):
    """What a level's distinct crosses give their progeny; one entry for each."""

    inbreeding: FloatArray
    by_descent: FloatArray
    of_father: FloatArray
    """θ with itself, for an unseen father."""


def _crosses(
    arrays: PedigreeArrays, asked: IntArray, sides: FloatArray, rules: Rules, found: Coefficients
) -> _Crosses:
    seed = arrays.seed[asked]
    known = seed != UNKNOWN
    of_seed = np.where(known, found.inbreeding[seed], 0.0)
    own_seed = np.where(known, found.self_coancestry[seed], 0.0)
    mixed, mixed_own, itself, rest = _mix(arrays, asked, found)
    with_seed, with_itself = sides.T
    father = arrays.origin[asked] == Origin.FATHER
    # The rule of a cross is linear in its pollen parent, so the mix of candidates serves.
    crossed = (
        itself * rules.selfed(of_seed)
        + rules.cross(of_seed * (1 - itself), mixed, with_seed)
        - rules.cross(0.0, 0.0, 0.0) * itself
    )
    a = np.where(known, 0.5 * (1 + itself), 0.0)
    by_weights = a * a * own_seed + a * with_seed + 0.25 * with_itself
    return _Crosses(
        np.where(father, mixed, crossed),
        np.where(father, with_itself, by_weights),
        mixed_own + rest / rules.ploidy,
    )


def _mix(
    arrays: PedigreeArrays, rows: IntArray, found: Coefficients
) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
    """Of each row's candidates: mean F, mean θ(p, p), odds of the seed parent itself, unknown rest.

    The means leave the seed parent itself out; they are sums of odds times values.
    """
    starts, ends = arrays.option_starts[rows], arrays.option_starts[rows + 1]
    counts = ends - starts
    of_row = np.repeat(np.arange(len(rows)), counts)
    at = np.repeat(starts - np.concatenate(([0], np.cumsum(counts)[:-1])), counts)
    at += np.arange(len(at))
    parent, odds = arrays.options[at], arrays.odds[at]
    crossed = arrays.origin[rows][of_row] == Origin.CROSS
    is_seed = crossed & (parent == arrays.seed[rows][of_row])
    other = np.where(is_seed, 0.0, odds)

    def summed(values: FloatArray) -> FloatArray:
        return np.bincount(of_row, values, minlength=len(rows)).astype(float)

    return (
        summed(other * found.inbreeding[parent]),
        summed(other * found.self_coancestry[parent]),
        summed(odds - other),
        1.0 - summed(odds),
    )
