"""The pedigree as arrays, parents before progeny, and every coefficient that follows from them.

The identity behind all numbers is Θ = T · diag(D) · Tᵀ with T = (I − W)⁻¹ (Henderson 1976, Quaas
1976, written for coancestry; bibliographic details from memory).  An origin is fully described by
its row w of weights over older rows, its inbreeding F and its coancestry with itself θ(i, i); the
table of origins is given at `Origin`.

Conventions: one row for each plant and for each unrecorded plant that the records imply (a member
of a pool used as a parent, the one unseen father of a cross).  Coancestry of a pool with itself is
that of two of its members.  Nothing is rounded.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from enum import IntEnum
from functools import cached_property
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

__all__ = ["FixationTooLow", "FloatArray", "Origin", "PedigreeArrays", "Row", "gamete_share"]

FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]

UNKNOWN = -1


class Origin(IntEnum):
    """How a row arose; decides its F and its θ with itself.

    FOUNDER  no weights; F = fixation f; θ = f for a pool, else 1/P + (1 − 1/P) f
    MEMBER   grown from seed of a pool g; F = F(g)
    CROSS    seed parent s, candidates p with odds; F by the cross rule (self rule where p is s)
    SELF     each plant of the one parent selfed; F by the self rule
    SIB      two members of a pool g mated; F by the cross rule with θ(g, g)
    CLONE    F and θ of the source
    DOUBLED  chromosome-doubled form, ploidy P to 2P; F = e + (1 − e) F(o), e = 1/(2P − 1)
    HAPLOID  doubled gamete; diploid F = 1; else e + (1 − e) γ(F_s), e = 1/(P − 1)
    FATHER   the one unseen pollen parent: F = Σ odds F(p), θ = Σ odds θ(p, p) + rest/P
    """

    FOUNDER = 0
    MEMBER = 1
    CROSS = 2
    SELF = 3
    SIB = 4
    CLONE = 5
    DOUBLED = 6
    HAPLOID = 7
    FATHER = 8


@dataclass(slots=True)
class Row:
    """One row before it is packed into arrays; indices are of older rows."""

    origin: Origin
    seed: int = UNKNOWN
    """Seed parent, or the source, or UNKNOWN."""
    pollen: tuple[tuple[int, float], ...] = ()
    """(index, odds) of the candidates; the rest to 1 is unknown."""
    selfings: int = 0
    pool: bool = False
    fixation: float | None = None
    """A founder's fixation, or that of a line taken as fixed; else None."""
    ploidy: int = 2
    cross: int = UNKNOWN
    """Rows of one cross share this number; their first steps are the same."""

    def weights(self) -> tuple[tuple[int, float], ...]:
        """(older row, weight) pairs: the expected share of the alleles that come from each."""
        if self.origin is Origin.FOUNDER:
            return ()
        if self.origin is Origin.FATHER:
            return self.pollen
        if self.origin is not Origin.CROSS:
            return ((self.seed, 1.0),)
        found: dict[int, float] = {}
        if self.seed != UNKNOWN:
            found[self.seed] = 0.5
        for parent, odds in self.pollen:
            found[parent] = found.get(parent, 0.0) + 0.5 * odds
        return tuple(found.items())


@dataclass(frozen=True, slots=True)
class FixationTooLow(Exception):
    """A line's stated fixation lies below the coancestry of two of its members by descent."""

    row: int
    stated: float
    needed: float


def gamete_share(ploidy: int) -> float:
    """Chance c that two different alleles of a plant came in one gamete: (P/2 − 1)/(P − 1)."""
    return (ploidy // 2 - 1) / (ploidy - 1)


@dataclass(slots=True)
class _Computed:
    inbreeding: FloatArray
    self_coancestry: FloatArray
    innovation: FloatArray


@dataclass
class PedigreeArrays:
    """A pedigree ready for questions.

    Parameters
    ----------
    rows : parents before progeny
    double_reduction : α of tetraploids, 0 to 1/6; plants of ploidy 6 and more take 0
    """

    rows: Sequence[Row]
    double_reduction: float = 0.0
    tick: Callable[[int, int], None] | None = field(default=None, repr=False)

    def __len__(self) -> int:
        return len(self.rows)

    # The weights W and the order in which sweeps go ---------------------------------------------

    @cached_property
    def _weights(self) -> tuple[IntArray, IntArray, FloatArray]:
        """W in compressed rows: where each row starts, older rows, weights."""
        starts = np.zeros(len(self.rows) + 1, dtype=np.int64)
        older: list[int] = []
        weights: list[float] = []
        for index, row in enumerate(self.rows):
            for parent, weight in row.weights():
                if parent >= index:
                    raise ValueError(f"row {index} comes before its parent {parent}")
                older.append(parent)
                weights.append(weight)
            starts[index + 1] = len(older)
        return starts, np.array(older, dtype=np.int64), np.array(weights)

    @cached_property
    def _levels(self) -> list[tuple[IntArray, IntArray, FloatArray]]:
        """W by depth: for each level the (row, older row, weight) triples of its rows."""
        starts, older, weights = self._weights
        depth = [0] * len(self.rows)
        for index in range(len(self.rows)):
            first, last = starts[index], starts[index + 1]
            if first < last:
                depth[index] = 1 + max(depth[parent] for parent in older[first:last].tolist())
        of_edge = np.repeat(np.arange(len(self.rows)), np.diff(starts))
        edge_depth = np.array(depth, dtype=np.int64)[of_edge]
        order = np.argsort(edge_depth, kind="stable")
        cuts = np.searchsorted(edge_depth[order], np.arange(1, max(depth, default=0) + 2))
        return [
            (of_edge[part], older[part], weights[part])
            for part in (order[a:b] for a, b in pairwise(cuts))
        ]

    def contributions(self, rows: Sequence[int] | IntArray) -> FloatArray:
        """Expected share of the alleles of each asked row that come from every row of the pedigree.

        Returns
        -------
        (n, k) float64: column j holds T[rows[j], :], 1 at the row itself; shares of founders are
        the founder shares.  Cost: one sweep over the pedigree for each column.
        """
        asked = np.asarray(rows, dtype=np.int64)
        shares = np.zeros((len(self.rows), len(asked)))
        shares[asked, np.arange(len(asked))] = 1.0
        for row, older, weight in reversed(self._levels):
            np.add.at(shares, older, weight[:, None] * shares[row])
        return shares

    def coancestry_with(self, row: int) -> FloatArray:
        """Coancestry of one row with every row: (n,) float64, each in [0, 1].

        Two sweeps (Colleau 2002, from memory): u = Tᵀ e, then T (D ∘ u).
        """
        return self.coancestry_columns([row])[:, 0]

    def coancestry_columns(self, rows: Sequence[int] | IntArray) -> FloatArray:
        """Coancestry of every row with each asked row: (n, k) float64.

        The entry of a pool with itself is that of two of its members.
        """
        values = self.contributions(rows) * self.innovation[:, None]
        for row, older, weight in self._levels:
            np.add.at(values, row, weight[:, None] * values[older])
        return values

    def coancestry_between(
        self, rows: Sequence[int] | IntArray, columns: Sequence[int] | IntArray
    ) -> FloatArray:
        """Coancestry of each of `rows` with each of `columns`: (len(rows), len(columns))."""
        return self.coancestry_columns(columns)[np.asarray(rows, dtype=np.int64)]

    # F, θ(i, i) and D ---------------------------------------------------------------------------

    @property
    def inbreeding(self) -> FloatArray:
        """F of every row: chance that two different alleles of it are identical by descent."""
        return self._computed.inbreeding

    @property
    def self_coancestry(self) -> FloatArray:
        """θ(i, i) of every row: of the plant with itself, or of two members of a pool."""
        return self._computed.self_coancestry

    @property
    def innovation(self) -> FloatArray:
        """D of every row: θ(i, i) less what descent explains; 0 for clones, pools, pure F1."""
        return self._computed.innovation

    def gametic(self, inbreeding: float, ploidy: int) -> float:
        """γ(F): chance that two alleles of one gamete are identical; α for double reduction."""
        alpha = self.double_reduction if ploidy == 4 else 0.0
        return alpha + (1.0 - alpha) * inbreeding

    def member_coancestry(self, row: int) -> float:
        """θ of a plant with itself, and of one member of a pool with itself (not two members)."""
        ploidy = self.rows[row].ploidy
        if self.rows[row].pool:
            return self._from_inbreeding(float(self.inbreeding[row]), ploidy)
        return float(self.self_coancestry[row])

    def cross_inbreeding(self, seed: int, pollen: int, coancestry: float) -> float:
        """F of the progeny of two rows by the cross rule (one member of a pool each)."""
        ploidy = self.rows[seed].ploidy
        return self._cross_rule(
            float(self.inbreeding[seed]), float(self.inbreeding[pollen]), coancestry, ploidy
        )

    def self_inbreeding(self, row: int) -> float:
        """F of the selfed progeny of a row (of a pool: each member selfed)."""
        return self._self_rule(float(self.inbreeding[row]), self.rows[row].ploidy)

    @staticmethod
    def _from_inbreeding(inbreeding: float, ploidy: int) -> float:
        return 1.0 / ploidy + (1.0 - 1.0 / ploidy) * inbreeding

    def _cross_rule(self, of_seed: float, of_pollen: float, between: float, ploidy: int) -> float:
        share = gamete_share(ploidy)
        if share == 0.0:
            return between
        within = 0.5 * (self.gametic(of_seed, ploidy) + self.gametic(of_pollen, ploidy))
        return share * within + (1.0 - share) * between

    def _self_rule(self, inbreeding: float, ploidy: int) -> float:
        share = gamete_share(ploidy)
        own = self._from_inbreeding(inbreeding, ploidy)
        return share * self.gametic(inbreeding, ploidy) + (1.0 - share) * own

    @cached_property
    def _computed(self) -> _Computed:
        """One pass from the oldest row to the youngest over a moving dense block.

        The block holds the coancestries among rows that are still to be used as parents; a row
        leaves it after its last progeny.  Sibs of one cross share their first step.
        """
        count = len(self.rows)
        inbreeding = np.zeros(count)
        own = np.zeros(count)
        innovation = np.zeros(count)
        starts, older, weights = self._weights
        last_use = np.full(count, -1, dtype=np.int64)
        np.maximum.at(last_use, older, np.repeat(np.arange(count), np.diff(starts)))
        leaving: dict[int, list[int]] = {}
        for parent, last in enumerate(last_use.tolist()):
            if last >= 0:
                leaving.setdefault(last, []).append(parent)
        block = np.zeros((64, 64))
        slot = np.full(count, -1, dtype=np.int64)
        free = list(range(63, -1, -1))
        sibs: dict[int, tuple[float, float]] = {}

        for index, row in enumerate(self.rows):
            if self.tick is not None and index % 4096 == 0:
                self.tick(index, count)
            slots = slot[older[starts[index] : starts[index + 1]]]
            own_weights = weights[starts[index] : starts[index + 1]]
            kept = last_use[index] >= 0
            shared = sibs.get(row.cross) if row.cross != UNKNOWN and not kept else None
            if shared is not None:
                between, by_descent = shared
                line = None
            else:
                line = own_weights @ block[slots] if len(slots) else np.zeros(len(block))
                by_descent = float(line[slots] @ own_weights)
                between = self._first_inbreeding(row, block, slot, inbreeding, own)
                if row.cross != UNKNOWN:
                    sibs[row.cross] = (between, by_descent)
            self._settle(index, row, between, by_descent, inbreeding, own)
            innovation[index] = own[index] - by_descent
            if kept and line is not None:
                if not free:
                    size = len(block)
                    block = np.pad(block, (0, size))
                    line = np.pad(line, (0, size))
                    free = list(range(2 * size - 1, size - 1, -1))
                at = free.pop()
                slot[index] = at
                block[at, :] = line
                block[:, at] = line
                block[at, at] = own[index]
            for parent in leaving.get(index, ()):
                at = int(slot[parent])
                block[at, :] = 0.0
                block[:, at] = 0.0
                slot[parent] = -1
                free.append(at)
        return _Computed(inbreeding, own, np.maximum(innovation, 0.0))

    def _first_inbreeding(
        self, row: Row, block: FloatArray, slot: IntArray, inbreeding: FloatArray, own: FloatArray
    ) -> float:
        """F of a row before unrecorded selfings and before a line is taken as fixed."""
        seed, ploidy = row.seed, row.ploidy
        match row.origin:
            case Origin.FOUNDER:
                return row.fixation or 0.0
            case Origin.MEMBER | Origin.CLONE:
                return float(inbreeding[seed])
            case Origin.SELF:
                return self._self_rule(float(inbreeding[seed]), ploidy)
            case Origin.SIB:
                of_pool = float(inbreeding[seed])
                return self._cross_rule(of_pool, of_pool, float(own[seed]), ploidy)
            case Origin.DOUBLED:
                share = 1.0 / (ploidy - 1)
                return share + (1.0 - share) * float(inbreeding[seed])
            case Origin.HAPLOID:
                share = 1.0 / (ploidy - 1)
                return share + (1.0 - share) * self.gametic(float(inbreeding[seed]), ploidy)
            case Origin.FATHER:
                return float(sum(odds * inbreeding[parent] for parent, odds in row.pollen))
        of_seed = float(inbreeding[seed]) if seed != UNKNOWN else 0.0
        total, known = 0.0, 0.0
        for parent, odds in row.pollen:
            known += odds
            if parent == seed:
                total += odds * self._self_rule(of_seed, ploidy)
                continue
            between = block[slot[seed], slot[parent]] if seed != UNKNOWN else 0.0
            total += odds * self._cross_rule(
                of_seed, float(inbreeding[parent]), float(between), ploidy
            )
        if known < 1.0:
            total += (1.0 - known) * self._cross_rule(of_seed, 0.0, 0.0, ploidy)
        return total

    def _settle(
        self,
        index: int,
        row: Row,
        first: float,
        by_descent: float,
        inbreeding: FloatArray,
        own: FloatArray,
    ) -> None:
        """Write F and θ(i, i) of a row once its first step is known."""
        for _ in range(row.selfings):
            first = self._self_rule(first, row.ploidy)
        inbreeding[index] = first
        if row.origin is Origin.FOUNDER:
            own[index] = first if row.pool else self._from_inbreeding(first, row.ploidy)
        elif row.fixation is not None:
            if row.fixation < by_descent - 1e-12:
                raise FixationTooLow(index, row.fixation, by_descent)
            inbreeding[index] = own[index] = row.fixation
        elif row.origin is Origin.CLONE:
            own[index] = own[row.seed]
        elif row.origin is Origin.FATHER:
            rest = 1.0 - sum(odds for _, odds in row.pollen)
            own[index] = sum(odds * own[p] for p, odds in row.pollen) + rest / row.ploidy
        elif row.pool and row.origin is not Origin.DOUBLED:
            own[index] = by_descent
        else:
            own[index] = self._from_inbreeding(first, row.ploidy)
