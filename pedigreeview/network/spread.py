"""The spread around an expected share: gene drop along chromosomes.

A founder's expected share in a plant is an average; plants of one family differ around it, the more
the fewer and the shorter the chromosomes and the fewer the crossings behind them.  Conventions:

* Crossovers fall without interference (Haldane's map): in d Morgans a Poisson number of mean d.
* Chromosomes are followed at points in the middle of equal steps of about 1 cM.
* Above ploidy 2 chromosomes pair two and two at random, without double reduction along them.
* What is followed is the founder of each point, so fixation plays no part.  A pool is no plant:
  each use draws a member of it anew.  A line taken as fixed is selfed for eight generations and
  then fixed, whatever its fixation, because the way it was fixed is not on record.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import ceil
from typing import Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.crops import Crop
from pedigreeview.book.faults import Fault
from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.gene_drop import members_drawn
from pedigreeview.network.origins import UNKNOWN, Origin, Row
from pedigreeview.network.subset import ancestors_of
from pedigreeview.network.sweeps import FloatArray, IntArray

__all__ = ["USUAL_LENGTH", "ShareSpread", "Spread", "map_lengths", "share_spread"]

USUAL_LENGTH = 100.0
"""cM of a chromosome of which nothing is known (common practice, no source)."""

_STEP = 1.0
_BLOCK = 512
_MEMORY = 128 * 2**20
_MOST_MEMBERS = 500
_SELFINGS_OF_A_LINE = 8
_BY_GAMETES = (Origin.CROSS, Origin.SELF, Origin.SIB, Origin.HAPLOID)

Labels = NDArray[Any]
"""(points, replicates) of uint8 or uint16: the founder of each point."""
Haplotype = Labels | int
"""Labels along one set of chromosomes, or the one founder that it is of all through."""


@dataclass(frozen=True, slots=True)
class ShareSpread:
    """The realised share of one founder over many plants raised alike.

    founder : its row, −1 for all unknown parents together
    expected : exactly, from the pedigree
    mean, sd : over the replicates
    low, high : 5% and 95% points: 'most plants lie between'
    """

    founder: int
    expected: float
    mean: float
    sd: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Spread:
    """Shares of all founders of a plant, largest first, and what they rest on."""

    row: int
    replicates: int
    lengths: tuple[float, ...]
    """cM of each chromosome of one set."""
    founders: tuple[ShareSpread, ...]


def map_lengths(crop: Crop) -> tuple[float, ...] | None:
    """Map length in cM of each chromosome of one set, from the crop's facts.

    None where the crop has neither a map nor a number of chromosomes; chromosomes of which no
    length is known are taken as 100 cM.
    """
    facts = crop.facts.get("map") or {}
    number = facts.get("n")
    if number is None and crop.chromosomes is not None:
        number = crop.chromosomes // crop.ploidy
    if not number:
        return None
    whole = facts.get("length_cM", {}).get("value")
    each = whole / number if whole else facts.get("cM_per_chromosome", {}).get("value")
    return (float(each or USUAL_LENGTH),) * int(number)


def share_spread(
    arrays: PedigreeArrays,
    row: int,
    lengths: Sequence[float],
    *,
    replicates: int = 20_000,
    seed: int = 0,
    tick: Callable[[int, int], None] | None = None,
) -> Spread:
    """Realised shares of the founders in one plant, over many plants raised as it was.

    Parameters
    ----------
    row : the plant; of a pool one member
    lengths : cM of each chromosome of one set, each 0 or more; 0 is a single locus
    replicates : 2 or more
    seed : the same seed gives the same numbers
    tick : called with (replicates done, replicates); may raise `Cancelled`

    Raises
    ------
    Fault : a ploidy without pairs of chromosomes, or pools behind pools over so many generations
        that a plant would need more than 500 members drawn
    ValueError : no chromosome, a length below 0, fewer than two replicates
    """
    if not lengths or min(lengths) < 0 or replicates < 2:
        raise ValueError("a spread needs chromosomes of 0 cM or more and two replicates or more")
    rows = ancestors_of(arrays.weights, np.array([row], np.int64))
    _refuse(arrays, rows, row)
    genome = _Genome(lengths)
    founders = rows[arrays.origin[rows] == Origin.FOUNDER]
    shares = np.zeros((replicates, len(founders) + 1))
    width = genome.points * int(arrays.ploidy[rows].max()) * len(rows)
    block = int(np.clip(_MEMORY // width // 64 * 64, 64, _BLOCK))
    starts = range(0, replicates, block)
    for start, sequence in zip(
        starts, np.random.SeedSequence(seed).spawn(len(starts)), strict=True
    ):
        if tick is not None:
            tick(start, replicates)
        size = min(block, replicates - start)
        # Padded to whole eights; what is more than asked for is left out.
        fall = _Fall(
            arrays, rows, founders, genome, -(-size // 8) * 8, np.random.default_rng(sequence)
        )
        plant = fall.asked(row)
        for haplotype in plant:
            if isinstance(haplotype, int):
                shares[start : start + size, haplotype] += 1 / len(plant)
                continue
            for founder in range(len(founders) + 1):
                there = genome.share(haplotype == founder)
                shares[start : start + size, founder] += there[:size] / len(plant)
    np.clip(shares, 0.0, 1.0, out=shares)
    expected = arrays.founder_shares([row])[0]
    of_row = dict(zip(arrays.founders.tolist(), expected.tolist(), strict=True))
    low, high = np.quantile(shares, (0.05, 0.95), axis=0)
    found = []
    for at, founder in enumerate((*founders.tolist(), -1)):
        exactly = of_row[founder] if founder >= 0 else max(0.0, 1.0 - float(expected.sum()))
        if exactly > 1e-12:
            values = shares[:, at]
            mean, sd = float(values.mean()), float(values.std(ddof=1))
            found.append(ShareSpread(founder, exactly, mean, sd, float(low[at]), float(high[at])))
    found.sort(key=lambda share: (-share.expected, share.founder))
    return Spread(row, replicates, tuple(float(length) for length in lengths), tuple(found))


def _refuse(arrays: PedigreeArrays, rows: IntArray, row: int) -> None:
    by_gametes = np.isin(arrays.origin[rows], _BY_GAMETES) | (arrays.selfings[rows] > 0)
    if (arrays.ploidy[rows[by_gametes]] % 2).any():
        raise Fault(
            "The spread of shares is known for even ploidies alone.",
            todo="Correct the ploidy of the founders, if it is wrong.",
        )
    if members_drawn(arrays, [row]) > _MOST_MEMBERS:
        raise Fault(
            "Pools stand behind pools over too many generations for the spread of shares.",
            todo="Ask about a plant nearer to the founders.",
        )


class _Genome:
    """The points at which the chromosomes of one set are followed."""

    def __init__(self, lengths: Sequence[float]) -> None:
        points = [max(1, ceil(length / _STEP)) for length in lengths]
        self.points = sum(points)
        self.first = np.concatenate(([0], np.cumsum(points)[:-1])).astype(np.int64)
        # A chromosome counts by its length; where none has any, they count alike.
        whole = sum(lengths)
        each = [length / whole if whole else 1 / len(lengths) for length in lengths]
        # Bytes are summed, which is many times faster, so no piece is longer than a byte counts.
        self._pieces = [
            (start, min(start + 255, int(first) + count), share / count)
            for first, count, share in zip(self.first, points, each, strict=True)
            for start in range(int(first), int(first) + count, 255)
        ]
        self._inner = np.array(points, np.int64) - 1
        # From the middle of the first step to that of the last.
        self._morgans = np.array(lengths, float) / 100 * self._inner / np.array(points)

    def share(self, there: NDArray[np.bool_]) -> FloatArray:
        """Share of the whole length that is marked, of each replicate."""
        found = np.zeros(there.shape[1])
        marked = there.view(np.uint8)
        for start, stop, weight in self._pieces:
            found += weight * marked[start:stop].sum(axis=0, dtype=np.uint8)
        return found

    def sides(self, size: int, kind: type, rng: np.random.Generator) -> Labels:
        """Which of two chromosomes is followed at each point: 0 or all bits set.

        `size` is a multiple of 8, so that eight replicates turn together.
        """
        turns: Labels = np.zeros((self.points, size), kind)
        full = np.iinfo(kind).max
        turns[self.first] = full * rng.integers(0, 2, (len(self.first), size), dtype=kind)
        crossovers = rng.poisson(self._morgans * size)
        count = int(crossovers.sum())
        chromosome = np.repeat(np.arange(len(crossovers)), crossovers)
        at = (rng.random(count) * self._inner[chromosome]).astype(np.int64)
        at += 1 + self.first[chromosome]
        np.bitwise_xor.at(turns, (at, rng.integers(0, size, count)), kind(full))
        together = turns.view(np.uint64)
        np.bitwise_xor.accumulate(together, axis=0, out=together)
        return turns


class _Fall:
    """Some replicates of the drop along chromosomes."""

    def __init__(
        self,
        arrays: PedigreeArrays,
        rows: IntArray,
        founders: IntArray,
        genome: _Genome,
        size: int,
        rng: np.random.Generator,
    ) -> None:
        self.arrays = arrays
        self.genome = genome
        self.size = size
        self.rng = rng
        self.name = {int(row): at for at, row in enumerate(founders)}
        self.unknown = len(founders)
        self.kind = np.uint8 if len(founders) < 255 else np.uint16
        self.plants: dict[int, list[Haplotype]] = {}
        self.rows = rows
        self._ending = self._endings()

    def _endings(self) -> dict[int, list[int]]:
        """The rows that are not needed any more once a row is done, by that row."""
        weights = self.arrays.weights
        last_use: dict[int, int] = {}
        for row in reversed(self.rows.tolist()):
            # A member of a pool is drawn whenever one is used, so its parents wait for the last.
            use = last_use.get(row, len(self.arrays)) if self._is_redrawn(row) else row
            for at in range(weights.starts[row], weights.starts[row + 1]):
                older = int(weights.older[at])
                last_use[older] = max(use, last_use.get(older, use))
        ending: dict[int, list[int]] = {}
        for older, last in last_use.items():
            ending.setdefault(last, []).append(older)
        return ending

    def asked(self, row: int) -> list[Haplotype]:
        """The haplotypes of the asked row."""
        for at in self.rows.tolist():
            if not self._is_redrawn(at):
                self.plants[at] = self._raise(at)
            for older in self._ending.get(at, ()):
                self.plants.pop(older, None)
        return self.plant(row)

    def _is_redrawn(self, row: int) -> bool:
        return bool(self.arrays.pool[row]) and not self._is_line(row)

    def _is_line(self, row: int) -> bool:
        founder = self.arrays.origin[row] == Origin.FOUNDER
        return not founder and not np.isnan(self.arrays.fixation[row])

    def plant(self, row: int) -> list[Haplotype]:
        """The haplotypes of a plant, or of a member of a pool that is drawn now."""
        found = self.plants.get(row)
        return self._raise(row) if found is None else found

    def _raise(self, index: int) -> list[Haplotype]:
        row = self.arrays.row(index)
        if row.origin is Origin.FOUNDER:
            return [self.name[index]] * row.ploidy
        found = self._first(row)
        for _ in range(row.selfings):
            found = self.gamete(found) + self.gamete(found)
        if self._is_line(index):
            for _ in range(_SELFINGS_OF_A_LINE):
                found = self.gamete(found) + self.gamete(found)
            found = found[:1] * row.ploidy
        return found

    def _first(self, row: Row) -> list[Haplotype]:
        unknown: list[Haplotype] = [self.unknown] * row.ploidy
        match row.origin:
            case Origin.MEMBER | Origin.CLONE:
                return self.plant(row.seed)
            case Origin.DOUBLED:
                return self.plant(row.seed) * 2
            case Origin.HAPLOID:
                return self.gamete(self.plant(row.seed)) * 2
            case Origin.SELF:
                parent = self.plant(row.seed)
                return self.gamete(parent) + self.gamete(parent)
            case Origin.SIB:
                return self.gamete(self.plant(row.seed)) + self.gamete(self.plant(row.seed))
            case Origin.FATHER:
                return self._chosen(row, unknown, self.plant)
        half = unknown[: row.ploidy // 2]
        seed = None if row.seed == UNKNOWN else self.plant(row.seed)

        def pollen(parent: int) -> list[Haplotype]:
            itself = seed is not None and parent == row.seed
            return self.gamete(seed if itself and seed is not None else self.plant(parent))

        of_seed = half if seed is None else self.gamete(seed)
        return of_seed + self._chosen(row, half, pollen)

    def _chosen(
        self, row: Row, otherwise: list[Haplotype], of: Callable[[int], list[Haplotype]]
    ) -> list[Haplotype]:
        """From one candidate in each replicate, by the odds; all chromosomes from the same one."""
        if len(row.pollen) == 1 and row.pollen[0][1] >= 1:
            return of(row.pollen[0][0])
        draw = self.rng.random(self.size)
        found, passed = otherwise, 0.0
        for place, (parent, odds) in enumerate(row.pollen):
            certain = place == len(row.pollen) - 1 and passed + odds > 1 - 1e-9
            picked = (draw >= passed) & ((draw < passed + odds) | certain)
            pairs = zip(of(parent), found, strict=True)
            found = [np.where(picked, self._full(new), self._full(old)) for new, old in pairs]
            passed += odds
        return found

    def _full(self, haplotype: Haplotype) -> Labels:
        if isinstance(haplotype, int):
            return np.full((self.genome.points, self.size), haplotype, self.kind)
        return haplotype

    def gamete(self, plant: list[Haplotype]) -> list[Haplotype]:
        """One set of chromosomes from every two of the plant, paired at random."""
        if all(isinstance(h, int) and h == plant[0] for h in plant):
            return plant[: len(plant) // 2]
        if len(plant) > 2:
            plant = self._paired(plant)
        return [self._crossed(plant[at], plant[at + 1]) for at in range(0, len(plant), 2)]

    def _crossed(self, first: Haplotype, second: Haplotype) -> Haplotype:
        if first is second or (
            isinstance(first, int) and isinstance(second, int) and first == second
        ):
            return first
        a, b = (self.kind(h) if isinstance(h, int) else h for h in (first, second))
        sides = self.genome.sides(self.size, self.kind, self.rng)
        sides &= a ^ b
        sides ^= a
        return sides

    def _paired(self, plant: list[Haplotype]) -> list[Haplotype]:
        """The chromosomes of a polyploid in a new order, each kind by itself."""
        every = np.stack([self._full(h) for h in plant])
        bounds = [*self.genome.first.tolist(), self.genome.points]
        for first, last in pairwise(bounds):
            order = np.argsort(self.rng.random((len(plant), self.size)), axis=0)
            part = every[:, first:last]
            every[:, first:last] = np.take_along_axis(part, order[:, None, :], axis=0)
        return list(every)
