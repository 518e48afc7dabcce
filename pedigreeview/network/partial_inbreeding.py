"""How much of a plant's inbreeding each founder brought.

F is the chance that two different alleles of a plant are copies of one allele; that allele came in
with one founder, so F is a sum over founders.  Every rule of `origins.Rules` holds for the part of
one founder f by itself, where a chance that an allele meets its own copy becomes the chance that
the copy is of f, T_if, the share of f in the plant:

    θ_f(i, i) = T_if / P + (1 − 1/P) F_f(i),    γ_f(i) = α T_if + (1 − α) F_f(i),

and θ_f(i, j) of different plants = Σ_k T_ik T_jk D_f(k) as for θ itself.  Two parts have no founder
and are named apart: alleles of unknown parents, and what a line that was taken as fixed has above
the coancestry that descent gives it.  (After the partial inbreeding of Lacy et al. 1996, from
memory; the two printed parts of Wright's example are check PI1.)
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin, Row, Rules
from pedigreeview.network.subset import ancestors_of, narrowed
from pedigreeview.network.sweeps import FloatArray, IntArray

__all__ = ["PartialInbreeding", "partial_inbreeding"]

_LARGEST_TABLE = 4000
"""Ancestors up to which the shares of all of them in each other are kept as one table."""


@dataclass(frozen=True, slots=True)
class PartialInbreeding:
    """The inbreeding of one plant in its parts, which add up to it.

    total : F
    founders : row of each founder that brought some, with its part, largest first
    taken_as_fixed : row of each line among the ancestors (or the row itself) that was taken as
        fixed, with the part that rests on it, largest first
    unknown : the part of unknown parents
    """

    total: float
    founders: tuple[tuple[int, float], ...]
    taken_as_fixed: tuple[tuple[int, float], ...]
    unknown: float


def partial_inbreeding(
    arrays: PedigreeArrays, row: int, *, tick: Callable[[int, int], None] | None = None
) -> PartialInbreeding:
    """F of a row, split over the founders that brought it.

    Parameters
    ----------
    row : any row; of a pool the split is that of a member
    tick : called with (ancestors done, ancestors); may raise `Cancelled`

    Notes
    -----
    Cost: with a ancestors and f founders among them a² · f, and memory a² up to 4,000 ancestors;
    beyond that a sweep for each ancestor instead of the memory.
    """
    parts = _Parts(arrays, row)
    for at in range(len(parts.rows)):
        if tick is not None and at % 64 == 0:
            tick(at, len(parts.rows))
        parts.settle(at)
    last = parts.inbreeding[-1]
    founders = len(parts.founders)
    return PartialInbreeding(
        total=float(arrays.inbreeding()[row]),
        founders=_largest(parts.founders, last[:founders]),
        taken_as_fixed=_largest(parts.lines, last[founders:-1]),
        unknown=float(last[-1]),
    )


def _largest(rows: IntArray, values: FloatArray) -> tuple[tuple[int, float], ...]:
    pairs = zip(rows.tolist(), values.tolist(), strict=True)
    return tuple(sorted(((r, v) for r, v in pairs if v > 0), key=lambda pair: (-pair[1], pair[0])))


class _Parts:
    """F, θ(i, i) and D of the ancestors of a row by class: founders, lines, unknown parents."""

    def __init__(self, arrays: PedigreeArrays, row: int) -> None:
        self.arrays = arrays
        self.rows = ancestors_of(arrays.weights, np.array([row], np.int64))
        count = len(self.rows)
        founder = arrays.origin[self.rows] == Origin.FOUNDER
        line = ~founder & ~np.isnan(arrays.fixation[self.rows])
        self.founders: IntArray = self.rows[founder]
        self.lines: IntArray = self.rows[line]
        classes = len(self.founders) + len(self.lines) + 1
        self.of_class = {
            int(at): place
            for place, at in enumerate((*np.flatnonzero(founder), *np.flatnonzero(line)))
        }
        self.weights = narrowed(arrays.weights, self.rows)
        self.table = np.zeros((count, count)) if count <= _LARGEST_TABLE else None
        self.share = np.zeros((count, classes))
        self.inbreeding = np.zeros((count, classes))
        self.itself = np.zeros((count, classes))
        self.innovation = np.zeros((count, classes))

    def settle(self, at: int) -> None:
        """Write the parts of one row from those of the older ones."""
        index = int(self.rows[at])
        row = self.arrays.row(index)
        rules = self.arrays.rules(index)
        behind = slice(self.weights.starts[at], self.weights.starts[at + 1])
        older, weight = self.weights.older[behind], self.weights.weight[behind]
        self.share[at] = weight @ self.share[older]
        if row.origin is Origin.FOUNDER:
            self.share[at, self.of_class[at]] = 1.0
        else:
            self.share[at, -1] += 1.0 - weight.sum()
        line = self._line(at, older, weight)
        by_descent = (line * line) @ self.innovation
        if row.origin is Origin.FOUNDER:
            inbreeding = self.share[at] * self.arrays.inbreeding()[index]
        elif row.fixation is not None:
            inbreeding = by_descent.copy()
            inbreeding[self.of_class[at]] = row.fixation - by_descent.sum()
        else:
            inbreeding = self._first(at, row, rules)
            for _ in range(row.selfings):
                inbreeding = self._selfed(inbreeding, self.share[at], rules)
        self.inbreeding[at] = inbreeding
        self.itself[at] = self._itself(at, row, rules, by_descent)
        # Of a part the rest may be any rounding below 0; it is kept, so that the parts add up.
        self.innovation[at] = self.itself[at] - by_descent

    def _line(self, at: int, older: IntArray, weight: FloatArray) -> FloatArray:
        """Shares of all rows in this one by way of its sources (itself not among them)."""
        found = np.zeros(len(self.rows))
        if self.table is not None:
            for parent, share in zip(older.tolist(), weight.tolist(), strict=True):
                found[: parent + 1] += share * self.table[parent, : parent + 1]
            self.table[at] = found
            self.table[at, at] = 1.0
            return found
        found = self.weights.shares(np.array([at], np.int64))[:, 0]
        found[at] = 0.0
        return found

    def _between(self, a: int, b: int) -> FloatArray:
        """θ of two different rows by class; of two members where both are one pool."""
        if self.table is not None:
            return np.asarray((self.table[a] * self.table[b]) @ self.innovation)
        both = self.weights.shares(np.array([a, b], np.int64))
        return np.asarray((both[:, 0] * both[:, 1]) @ self.innovation)

    def _at(self, index: int) -> int:
        return int(np.searchsorted(self.rows, index))

    def _itself(self, at: int, row: Row, rules: Rules, by_descent: FloatArray) -> FloatArray:
        """θ(i, i) by class: of a plant with itself, of two members of a pool."""
        if row.origin is Origin.FOUNDER and row.pool:
            return self.inbreeding[at]
        if row.fixation is not None and row.origin is not Origin.FOUNDER:
            return self.inbreeding[at]
        if row.origin is Origin.CLONE:
            return self.itself[self._at(row.seed)]
        if row.origin is Origin.FATHER:
            found = np.zeros(self.share.shape[1])
            for parent, odds in row.pollen:
                found += odds * self.itself[self._at(parent)]
            found[-1] += (1.0 - sum(odds for _, odds in row.pollen)) / row.ploidy
            return found
        if row.pool and row.origin not in (Origin.FOUNDER, Origin.DOUBLED):
            return by_descent
        return _alone(self.inbreeding[at], self.share[at], rules)

    def _first(self, at: int, row: Row, rules: Rules) -> FloatArray:
        """F by class before unrecorded selfings."""
        nobody = np.zeros(self.share.shape[1])
        from_unknown = nobody.copy()
        from_unknown[-1] = 1.0
        if row.seed == UNKNOWN:
            seed, of_seed, share = -1, nobody, from_unknown
        else:
            seed = self._at(row.seed)
            of_seed, share = self.inbreeding[seed], self.share[seed]
        match row.origin:
            case Origin.MEMBER | Origin.CLONE:
                return of_seed
            case Origin.SELF:
                return self._selfed(of_seed, share, rules)
            case Origin.SIB:
                within = _gametic(of_seed, share, rules)
                return _crossed(within, within, self.itself[seed], rules)
            case Origin.DOUBLED:
                return _mixed(1 / (row.ploidy - 1), share, of_seed)
            case Origin.HAPLOID:
                return _mixed(1 / (row.ploidy - 1), share, _gametic(of_seed, share, rules))
            case Origin.FATHER:
                pairs = ((odds, self._at(parent)) for parent, odds in row.pollen)
                return nobody + sum(odds * self.inbreeding[parent] for odds, parent in pairs)
        within_seed = _gametic(of_seed, share, rules)
        unknown = _gametic(nobody, from_unknown, rules)
        found, rest = nobody.copy(), 1.0
        for parent, odds in row.pollen:
            rest -= odds
            if parent == row.seed:
                found += odds * self._selfed(of_seed, share, rules)
                continue
            pollen = self._at(parent)
            within = _gametic(self.inbreeding[pollen], self.share[pollen], rules)
            between = nobody if seed < 0 else self._between(seed, pollen)
            found += odds * _crossed(within_seed, within, between, rules)
        return found + rest * _crossed(within_seed, unknown, nobody, rules)

    @staticmethod
    def _selfed(inbreeding: FloatArray, share: FloatArray, rules: Rules) -> FloatArray:
        within = _gametic(inbreeding, share, rules)
        return _crossed(within, within, _alone(inbreeding, share, rules), rules)


def _mixed(chance: float, share: FloatArray, inbreeding: FloatArray) -> FloatArray:
    """An allele meets its own copy with that chance, else another of the plant."""
    return chance * share + (1 - chance) * inbreeding


def _gametic(inbreeding: FloatArray, share: FloatArray, rules: Rules) -> FloatArray:
    """γ by class; the rules' γ(0) is the double reduction that counts at that ploidy."""
    return _mixed(float(rules.gametic(0.0)), share, inbreeding)


def _alone(inbreeding: FloatArray, share: FloatArray, rules: Rules) -> FloatArray:
    """θ of a plant with itself by class."""
    return _mixed(1 / rules.ploidy, share, inbreeding)


def _crossed(seed: FloatArray, pollen: FloatArray, between: FloatArray, rules: Rules) -> FloatArray:
    """F of a cross by class, from what both gametes hold within and what is between them."""
    within = (rules.ploidy / 2 - 1) / (rules.ploidy - 1)
    return within * 0.5 * (seed + pollen) + (1 - within) * between
