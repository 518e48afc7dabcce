"""Gene drop at one locus: alleles of the founders fall through the pedigree, many times over.

A second way to the coefficients, which knows no coancestry: founders get alleles, every plant gets
gametes, and what is alike is counted (MacCluer et al. 1986, from memory).  Conventions:

* Alleles are numbers that mean something within one replicate only; equal = identical by descent.
* A founder plant of fixation f is fixed in a share f of the replicates and has all its alleles
  different in the rest; likewise a pool: in a share f all its plants are alike, in the rest no two
  alleles of it are.  Any other base with the same fixation gives the same coefficients.
* A pool is no plant: each use draws a member of it anew.  A line taken as fixed is fixed, for one
  allele that descent gives it, as often as makes up for its stated fixation.
* Polysomic inheritance; double reduction at ploidy 4 alone, as everywhere.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault
from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin, Row
from pedigreeview.network.subset import ancestors_of
from pedigreeview.network.sweeps import FloatArray, IntArray

__all__ = ["Estimates", "alleles_held", "drop_alleles", "estimate", "members_drawn"]

Alleles = NDArray[np.int32]
"""(replicates, ploidy), or with leading axes; one allele number each."""

_TABLE_MEMORY = 96 * 2**20
_MOST_MEMBERS = 20_000


@dataclass(frozen=True, slots=True)
class Estimates:
    """Coefficients as gene drop finds them, with the standard error of each.

    inbreeding, inbreeding_error : (k,)
    coancestry, coancestry_error : (k, k); a pool with itself: two members of it
    """

    inbreeding: FloatArray
    inbreeding_error: FloatArray
    coancestry: FloatArray
    coancestry_error: FloatArray


def estimate(
    arrays: PedigreeArrays,
    rows: Sequence[int],
    replicates: int = 20_000,
    *,
    seed: int = 0,
    tick: Callable[[int, int], None] | None = None,
) -> Estimates:
    """F and θ of the asked rows by gene drop.

    Parameters
    ----------
    rows : k rows
    replicates : 2 or more; the error falls with its square root
    seed : the same seed gives the same numbers
    tick : called with (replicates done, replicates); may raise `Cancelled`
    """
    count = len(rows)
    totals = np.zeros((4, count, count))
    for block in drop_alleles(arrays, [*rows, *rows], replicates, seed=seed, tick=tick):
        first, second = block[:count], block[count:]
        for i in range(count):
            ploidy = first[i].shape[1]
            pairs = np.zeros(len(first[i]))
            for a in range(ploidy):
                for b in range(a + 1, ploidy):
                    pairs += first[i][:, a] == first[i][:, b]
            pairs /= max(1, ploidy * (ploidy - 1) // 2)
            totals[0, i, i] += pairs.sum()
            totals[1, i, i] += (pairs * pairs).sum()
            for j in range(i, count):
                alike = (first[i][:, :, None] == second[j][:, None, :]).mean(axis=(1, 2))
                totals[2, i, j] += alike.sum()
                totals[3, i, j] += (alike * alike).sum()
    for total in totals[2:]:
        total += np.triu(total, 1).T
    means = totals / replicates
    errors = [
        np.sqrt(np.maximum(means[at + 1] - means[at] ** 2, 0.0) / max(1, replicates - 1))
        for at in (0, 2)
    ]
    return Estimates(np.diag(means[0]).copy(), np.diag(errors[0]).copy(), means[2], errors[1])


def drop_alleles(
    arrays: PedigreeArrays,
    rows: Sequence[int] | IntArray,
    replicates: int,
    *,
    seed: int = 0,
    tick: Callable[[int, int], None] | None = None,
) -> Iterator[list[Alleles]]:
    """The alleles of the asked rows, some replicates at a time: lists of (replicates, ploidy).

    A plant asked for twice is the same plant; a pool asked for twice gives two members of it.

    Raises
    ------
    Fault : pools stand behind pools over so many generations that each plant would need more than
        20,000 members drawn
    """
    _refuse_too_many(arrays, rows)
    return (
        [drop.plant(int(row)) for row in rows]
        for drop in _drops(arrays, rows, replicates, seed, tick)
    )


def alleles_held(
    arrays: PedigreeArrays,
    rows: Sequence[int] | IntArray,
    *,
    replicates: int,
    seed: int = 0,
    tick: Callable[[int, int], None] | None = None,
) -> tuple[dict[int, float], dict[int, float]]:
    """Expected number of different alleles at a locus that a group holds, of every founder.

    Returns
    -------
    by row of the founder, and by row of the plant whose parent is unknown for unknown parents;
    infinite where a pool of the group holds no countable number.  A pool holds every allele of its
    parents.
    """
    _refuse_too_many(arrays, rows)
    counts: dict[int, float] = {}
    endless: set[int] = set()
    for drop in _drops(arrays, rows, replicates, seed, tick):
        held: list[Alleles] = []
        for row in rows:
            held.extend(drop.held(int(row), endless))
        present = np.zeros((drop.next_allele, drop.size), bool)
        place = np.arange(drop.size)[:, None]
        for alleles in held:
            present[alleles, place] = True
        of_allele = present.sum(axis=1)
        for owner, start, stop in drop.owners:
            counts[owner] = counts.get(owner, 0.0) + float(of_allele[start:stop].sum())
    found = {owner: total / replicates for owner, total in counts.items()}
    found.update(dict.fromkeys(endless, np.inf))
    of_founder = {owner: value for owner, value in found.items() if owner >= 0}
    return of_founder, {-1 - owner: value for owner, value in found.items() if owner < 0}


def members_drawn(arrays: PedigreeArrays, rows: Sequence[int] | IntArray) -> int:
    """Most members of pools that any one plant behind the asked rows needs drawn."""
    drawn: dict[int, int] = {}
    most = 1
    for row in ancestors_of(arrays.weights, np.asarray(rows, np.int64)).tolist():
        origin = arrays.origin[row]
        first, last = arrays.option_starts[row], arrays.option_starts[row + 1]
        sources = [int(arrays.seed[row])] * (2 if origin == Origin.SIB else 1)
        sources += [int(parent) for parent in arrays.options[first:last] if parent != sources[0]]
        if origin == Origin.FOUNDER:
            sources = []
        needed = 1 + sum(drawn[source] for source in sources if source != UNKNOWN)
        if not np.isnan(arrays.fixation[row]) and origin != Origin.FOUNDER:
            needed = 1 + (needed - 1) * (1 + int(arrays.ploidy[row]))
        most = max(most, needed)
        drawn[row] = needed if arrays.pool[row] else 0
    return most


def _refuse_too_many(arrays: PedigreeArrays, rows: Sequence[int] | IntArray) -> None:
    if members_drawn(arrays, rows) > _MOST_MEMBERS:
        raise Fault(
            "Pools stand behind pools over too many generations for a gene drop.",
            todo="Ask about plants nearer to the founders.",
        )


def _drops(
    arrays: PedigreeArrays,
    rows: Sequence[int] | IntArray,
    replicates: int,
    seed: int,
    tick: Callable[[int, int], None] | None,
) -> Iterator[_Drop]:
    ancestors = ancestors_of(arrays.weights, np.asarray(rows, np.int64))
    ploidy = int(arrays.ploidy[ancestors].max(initial=2))
    size = int(np.clip(_TABLE_MEMORY // (4 * ploidy * max(1, len(ancestors))), 64, 4096))
    generators = np.random.SeedSequence(seed).spawn(-(-replicates // size))
    for block, sequence in enumerate(generators):
        if tick is not None:
            tick(block * size, replicates)
        count = min(size, replicates - block * size)
        drop = _Drop(arrays, ancestors, ploidy, count, np.random.default_rng(sequence))
        drop.fall()
        yield drop


class _Drop:
    """Some replicates of one gene drop over the rows behind the asked ones."""

    def __init__(
        self,
        arrays: PedigreeArrays,
        rows: IntArray,
        ploidy: int,
        size: int,
        rng: np.random.Generator,
    ) -> None:
        self.arrays = arrays
        self.rows = rows
        self.size = size
        self.rng = rng
        self.table = np.zeros((len(rows), size, ploidy), np.int32)
        self.place = np.full(len(arrays), -1, np.int64)
        self.place[rows] = np.arange(len(rows))
        self.next_allele = 0
        self.owners: list[tuple[int, int, int]] = []
        self._fixed: dict[int, tuple[NDArray[np.bool_], NDArray[np.int32]]] = {}
        self._read: dict[int, Row] = {}

    def fall(self) -> None:
        """Give every plant its alleles, level by level."""
        level = self.arrays.weights.levels[self.rows]
        plain = self._plain(self.rows)
        for step in range(int(level.max(initial=-1)) + 1):
            here = level == step
            for row in self.rows[here & ~plain].tolist():
                self._enter(row)
            together = self.rows[here & plain]
            for ploidy in np.unique(self.arrays.ploidy[together]).tolist():
                self._cross_together(together[self.arrays.ploidy[together] == ploidy], ploidy)

    def plant(self, row: int) -> Alleles:
        """The alleles of a plant, or of one member of a pool that is drawn now."""
        if self.arrays.pool[row]:
            return self._raise(row)
        return self.table[self.place[row], :, : self.arrays.ploidy[row]]

    def held(self, row: int, endless: set[int]) -> list[Alleles]:
        """Alleles that a plant holds, or every allele of the parents of a pool."""
        if not self.arrays.pool[row]:
            return [self.plant(row)]
        origin = self._row(row)
        if origin.origin is Origin.FOUNDER:
            if self.arrays.inbreeding()[row] < 1:
                endless.add(row)
            return [self.plant(row)]
        parents = [parent for parent, _ in origin.weights()]
        found = [alleles for parent in parents for alleles in self.held(parent, endless)]
        if origin.fixation is None:
            if origin.origin is Origin.CROSS and sum(w for _, w in origin.weights()) < 1 - 1e-12:
                endless.add(-1 - row)
            return found
        fixed, allele = self._fixed[row]
        return [np.where(fixed[:, None], allele[:, None], alleles) for alleles in found]

    # Rows that are raised alike, all of a level at once -----------------------------------------

    def _plain(self, rows: IntArray) -> NDArray[np.bool_]:
        """Which rows are plants from a certain cross or selfing of plants."""
        arrays = self.arrays
        pool = arrays.pool
        seed, origin = arrays.seed[rows], arrays.origin[rows]
        fit = ~pool[rows] & (arrays.selfings[rows] == 0) & (seed != UNKNOWN) & ~pool[seed]
        single = np.diff(arrays.option_starts)[rows] == 1
        pollen, odds = self._pollen(rows, single)
        crossed = (origin == Origin.CROSS) & single & (odds == 1) & ~pool[pollen] & (pollen != seed)
        return fit & ((origin == Origin.SELF) | crossed) & np.isnan(arrays.fixation[rows])

    def _pollen(self, rows: IntArray, single: NDArray[np.bool_]) -> tuple[IntArray, FloatArray]:
        pollen, odds = self.arrays.seed[rows].copy(), np.zeros(len(rows))
        at = self.arrays.option_starts[rows[single]]
        pollen[single], odds[single] = self.arrays.options[at], self.arrays.odds[at]
        return pollen, odds

    def _cross_together(self, rows: IntArray, ploidy: int) -> None:
        half = ploidy // 2
        # Some plants at a time keep the copies of their parents small.
        step = max(1, 2**22 // (self.size * ploidy))
        for start in range(0, len(rows), step):
            part = rows[start : start + step]
            crossed = self.arrays.origin[part] == Origin.CROSS
            pollen, _ = self._pollen(part, crossed)
            to = self.place[part]
            seed = self.table[self.place[self.arrays.seed[part]], :, :ploidy]
            self.table[to, :, :half] = self.gamete(seed)
            other = self.table[self.place[pollen], :, :ploidy]
            self.table[to, :, half:ploidy] = self.gamete(other)

    # Rows one by one ----------------------------------------------------------------------------

    def _enter(self, row: int) -> None:
        arrays = self.arrays
        line = arrays.origin[row] != Origin.FOUNDER and not np.isnan(arrays.fixation[row])
        if line:
            own, more = arrays.self_coancestry()[row], arrays.innovation()[row]
            by_descent = own - more
            chance = more / (1 - by_descent) if by_descent < 1 else 0.0
            self._fixed[row] = (self.rng.random(self.size) < chance, self._one_allele(row))
        elif arrays.origin[row] == Origin.FOUNDER:
            fixed = self.rng.random(self.size) < arrays.inbreeding()[row]
            self._fixed[row] = (fixed, self._new(row, 1)[:, 0])
        if not arrays.pool[row]:
            self.table[self.place[row], :, : arrays.ploidy[row]] = self._raise(row)

    def _row(self, row: int) -> Row:
        found = self._read.get(row)
        if found is None:
            found = self._read[row] = self.arrays.row(row)
        return found

    def _new(self, owner: int, count: int) -> Alleles:
        """New alleles; `owner` a founder, or −1 − the row of the plant with an unknown parent."""
        start = self.next_allele
        self.next_allele += count
        self.owners.append((owner, start, self.next_allele))
        numbers = np.arange(start, self.next_allele, dtype=np.int32)
        return np.broadcast_to(numbers, (self.size, count))

    def _raise(self, row: int) -> Alleles:
        """A plant of that origin, or one more member of the pool."""
        origin = self._row(row)
        fixed = self._fixed.get(row)
        if origin.origin is Origin.FOUNDER:
            assert fixed is not None
            new = self._new(row, origin.ploidy)
            return np.where(fixed[0][:, None], fixed[1][:, None], new)
        if fixed is not None:
            # A line away from fixation: its members are as two members of a pool.
            single = [self._one_allele(row) for _ in range(origin.ploidy)]
            return np.where(fixed[0][:, None], fixed[1][:, None], np.stack(single, axis=1))
        found = self._first(row, origin)
        for _ in range(origin.selfings):
            found = self._join(found, found)
        return found

    def _first(self, row: int, origin: Row) -> Alleles:
        match origin.origin:
            case Origin.MEMBER | Origin.CLONE:
                return self.plant(origin.seed)
            case Origin.DOUBLED:
                return np.concatenate([self.plant(origin.seed)] * 2, axis=1)
            case Origin.HAPLOID:
                return np.concatenate([self.gamete(self.plant(origin.seed))] * 2, axis=1)
            case Origin.SELF:
                parent = self.plant(origin.seed)
                return self._join(parent, parent)
            case Origin.SIB:
                return self._join(self.plant(origin.seed), self.plant(origin.seed))
            case Origin.FATHER:
                found = self._new(-1 - row, origin.ploidy)
                return self._chosen(origin, found, self.plant)
        unknown = self.gamete(self._new(-1 - row, origin.ploidy))
        seed = None if origin.seed == UNKNOWN else self.plant(origin.seed)
        of_seed = unknown if seed is None else self.gamete(seed)

        def pollen(parent: int) -> Alleles:
            # The seed parent as its own pollen parent is the same plant, also where it is a member.
            itself = parent == origin.seed and seed is not None
            return self.gamete(seed if itself and seed is not None else self.plant(parent))

        rest = unknown
        if seed is None:
            rest = self.gamete(self._new(-1 - row, origin.ploidy))
        return np.concatenate([of_seed, self._chosen(origin, rest, pollen)], axis=1)

    def _chosen(self, origin: Row, otherwise: Alleles, of: Callable[[int], Alleles]) -> Alleles:
        """From one candidate in each replicate, by the odds."""
        draw = self.rng.random(self.size)
        found, passed = otherwise, 0.0
        for place, (parent, odds) in enumerate(origin.pollen):
            above = passed + odds
            certain = place == len(origin.pollen) - 1 and above > 1 - 1e-9
            picked = (draw >= passed) & ((draw < above) | certain)
            found = np.where(picked[:, None], of(parent), found)
            passed = above
        return found

    def _one_allele(self, row: int) -> NDArray[np.int32]:
        """One allele of the row by descent: from a source by its weight, or from an unknown."""
        draw = self.rng.random(self.size)
        weights = self._row(row).weights()
        found, passed = self._new(-1 - row, 1)[:, 0], 0.0
        for place, (parent, weight) in enumerate(weights):
            alleles = self.plant(parent)
            which = self.rng.integers(0, alleles.shape[1], self.size)
            one = alleles[np.arange(self.size), which]
            certain = place == len(weights) - 1 and passed + weight > 1 - 1e-9
            picked = (draw >= passed) & ((draw < passed + weight) | certain)
            found, passed = np.where(picked, one, found), passed + weight
        return found

    def _join(self, seed: Alleles, pollen: Alleles) -> Alleles:
        return np.concatenate([self.gamete(seed), self.gamete(pollen)], axis=1)

    def gamete(self, alleles: Alleles) -> Alleles:
        """A gamete of each genotype: (…, ploidy / 2)."""
        *lead, ploidy = alleles.shape
        if ploidy == 2:
            side = self.rng.integers(0, 2, (*lead, 1), dtype=np.int8)
            return np.where(side == 0, alleles[..., :1], alleles[..., 1:])
        if ploidy == 4:
            first = self.rng.integers(0, 4, lead, dtype=np.int64)
            second = (first + self.rng.integers(1, 4, lead)) % 4
            alpha = self.arrays.double_reduction
            if alpha > 0:
                second = np.where(self.rng.random(lead) < alpha, first, second)
            which = np.stack([first, second], axis=-1)
        else:
            which = np.argsort(self.rng.random(alleles.shape), axis=-1)[..., : ploidy // 2]
        return np.take_along_axis(alleles, which, axis=-1)
