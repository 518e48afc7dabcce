"""The pedigree as arrays, parents before progeny, and every coefficient that follows from them.

The identity behind all numbers is Θ = T · diag(D) · Tᵀ with T = (I − W)⁻¹ (Henderson 1976, Quaas
1976, written for coancestry; bibliographic details from memory).  An origin is fully described by
its row w of weights over older rows, its inbreeding F and its coancestry with itself θ(i, i); the
table of origins stands at `origins.Origin`.

Conventions: one row for each plant and for each unrecorded plant that the records imply (a member
of a pool used as a parent, the one unseen father of a cross).  Coancestry of a pool with itself is
that of two of its members.  Nothing is rounded.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from pedigreeview.network.inbreeding import Coefficients, FixationTooLow, compute
from pedigreeview.network.origins import UNKNOWN, Origin, Row, Rules
from pedigreeview.network.sweeps import FloatArray, IntArray, Weights

__all__ = ["FixationTooLow", "FloatArray", "PedigreeArrays"]


@dataclass
class PedigreeArrays:
    """A pedigree ready for questions; made by `from_parents` or `from_rows`.

    Attributes
    ----------
    origin : (n,) codes of `Origin`
    seed : (n,) row of the seed parent or source, −1 where there is none or it is unknown
    option_starts, options, odds : the candidates for pollen parent of every row, in compressed
        rows; a certain pollen parent is one candidate with odds 1
    selfings : (n,) unrecorded selfings
    pool : (n,) whether the row stands for many like plants
    fixation : (n,) fixation of founders and of lines taken as fixed, NaN for the rest
    ploidy : (n,) sets of chromosomes
    double_reduction : α of tetraploids, 0 to 1/6; plants of ploidy 6 and more take 0
    """

    origin: NDArray[np.int8]
    seed: IntArray
    option_starts: IntArray
    options: IntArray
    odds: FloatArray
    selfings: IntArray
    pool: NDArray[np.bool_]
    fixation: FloatArray
    ploidy: IntArray
    double_reduction: float = 0.0
    tick: Callable[[int, int], None] | None = field(default=None, repr=False)

    # Making -------------------------------------------------------------------------------------

    @classmethod
    def from_rows(
        cls,
        rows: Sequence[Row],
        double_reduction: float = 0.0,
        tick: Callable[[int, int], None] | None = None,
    ) -> PedigreeArrays:
        """The arrays of a sequence of rows, parents before progeny."""
        starts = np.zeros(len(rows) + 1, np.int64)
        np.cumsum([len(row.pollen) for row in rows], out=starts[1:])
        pairs = [pair for row in rows for pair in row.pollen]
        return cls(
            origin=np.array([row.origin for row in rows], np.int8),
            seed=np.array([row.seed for row in rows], np.int64),
            option_starts=starts,
            options=np.array([parent for parent, _ in pairs], np.int64),
            odds=np.array([share for _, share in pairs], float),
            selfings=np.array([row.selfings for row in rows], np.int64),
            pool=np.array([row.pool for row in rows], bool),
            fixation=np.array(
                [np.nan if row.fixation is None else row.fixation for row in rows], float
            ),
            ploidy=np.array([row.ploidy for row in rows], np.int64),
            double_reduction=double_reduction,
            tick=tick,
        )

    @classmethod
    def from_parents(
        cls,
        seed_parent: ArrayLike,
        pollen_parent: ArrayLike,
        *,
        selfings: ArrayLike | None = None,
        pool: ArrayLike | None = None,
        fixation: ArrayLike | None = None,
        ploidy: ArrayLike = 2,
        raised: ArrayLike | None = None,
        candidates: Iterable[tuple[int, int, float]] | None = None,
        double_reduction: float = 0.0,
    ) -> PedigreeArrays:
        """The arrays of plants given by the row numbers of their parents.

        Parameters
        ----------
        seed_parent, pollen_parent : (n,) ints, parents before progeny, −1 = unknown; equal parents
            are a selfing; both −1 a founder.  For plants raised otherwise than by a cross the seed
            parent names the source
        selfings : (n,) unrecorded selfings after the cross; default 0
        pool : (n,) bools: a variety or a family kept as a pool; default False.  As a parent a pool
            serves by its own row: each seed has an unrecorded member of it to itself
        fixation : (n,) or one number, 0 to 1, for founders (default: 1 for pools, 0 for plants)
            and for pools with parents that are taken as fixed (NaN elsewhere)
        ploidy : one even number for all founders, or (n,) numbers
        raised : (n,) words of formats.md, or their numbers in the order founder, cross, seed_of,
            sibbed_in, cutting_of, doubled_haploid_of, doubled_of; default by the parents
        candidates : rows of plant, parent, odds, for plants whose pollen parent is uncertain (there
            −1); the seed parent itself may be a candidate, what is missing to 1 is unknown
        double_reduction : α of tetraploids, 0 to 1/6

        Raises
        ------
        ValueError : arrays of different length, a parent that does not come before its progeny, or
            a number outside its range; the first place is named
        """
        from pedigreeview.network.parent_arrays import arrays_from_parents

        return cls(
            **arrays_from_parents(
                seed_parent, pollen_parent, selfings, pool, fixation, ploidy, raised, candidates
            ),
            double_reduction=double_reduction,
        )

    def __len__(self) -> int:
        return len(self.origin)

    def row(self, index: int) -> Row:
        """One row by itself."""
        first, last = self.option_starts[index], self.option_starts[index + 1]
        fixation = float(self.fixation[index])
        return Row(
            Origin(int(self.origin[index])),
            int(self.seed[index]),
            tuple(
                zip(self.options[first:last].tolist(), self.odds[first:last].tolist(), strict=True)
            ),
            int(self.selfings[index]),
            bool(self.pool[index]),
            None if np.isnan(fixation) else fixation,
            int(self.ploidy[index]),
        )

    def rules(self, index: int) -> Rules:
        """The rules of inheritance at the ploidy of one row."""
        return Rules(int(self.ploidy[index]), self.double_reduction)

    # Weights, shares and coancestries -----------------------------------------------------------

    @cached_property
    def weights(self) -> Weights:
        """W: the expected share of each row's alleles that comes from each older row."""
        count = len(self)
        crossed = (self.origin == Origin.CROSS) | (self.origin == Origin.FATHER)
        by_seed = (self.origin != Origin.FOUNDER) & (self.seed != UNKNOWN)
        options = np.where(crossed, np.diff(self.option_starts), 0)
        starts = np.zeros(count + 1, np.int64)
        np.cumsum(by_seed + options, out=starts[1:])
        older = np.empty(starts[-1], np.int64)
        weight = np.empty(starts[-1], float)
        at_seed = starts[:-1][by_seed]
        older[at_seed] = self.seed[by_seed]
        weight[at_seed] = np.where(self.origin[by_seed] == Origin.CROSS, 0.5, 1.0)
        of_option = np.repeat(np.arange(count), np.diff(self.option_starts))
        within = np.arange(len(self.options)) - self.option_starts[:-1][of_option]
        at_option = starts[of_option] + by_seed[of_option] + within
        older[at_option] = self.options
        weight[at_option] = np.where(
            self.origin[of_option] == Origin.CROSS, 0.5 * self.odds, self.odds
        )
        return Weights(starts, older, weight)

    def contributions(self, rows: Sequence[int] | IntArray) -> FloatArray:
        """Expected share of the alleles of each asked row that come from every row of the pedigree.

        Returns
        -------
        (n, k) float64: column j holds T[rows[j], :], 1 at the row itself.  Cost: one sweep over
        the pedigree for each column.
        """
        return self.weights.shares(np.asarray(rows, dtype=np.int64))

    @property
    def founders(self) -> IntArray:
        """Rows of the founders, in order."""
        return np.flatnonzero(self.origin == Origin.FOUNDER)

    def founder_shares(self, rows: Sequence[int] | IntArray) -> FloatArray:
        """Expected share of each founder in each asked row: (len(rows), founders), each in [0, 1].

        A line sums to 1 less the part that comes from unknown parents.  Columns stand in the order
        of `founders`.
        """
        return self.contributions(rows)[self.founders].T

    def coancestry_with(self, row: int) -> FloatArray:
        """Coancestry of one row with every row: (n,) float64, each in [0, 1].

        Two sweeps (Colleau 2002, from memory): u = Tᵀ e, then T (D ∘ u).
        """
        return self.coancestry_columns([row])[:, 0]

    def coancestry_columns(self, rows: Sequence[int] | IntArray) -> FloatArray:
        """Coancestry of every row with each asked row: (n, k) float64.

        The entry of a pool with itself is that of two of its members.
        """
        values = self.contributions(rows)
        values *= self.innovation()[:, None]
        return self.weights.gather(values)

    def coancestry_between(
        self, rows: Sequence[int] | IntArray, columns: Sequence[int] | IntArray
    ) -> FloatArray:
        """Coancestry of each of `rows` with each of `columns`: (len(rows), len(columns)).

        Works on the ancestors of the asked rows alone, some columns at a time, so that memory
        stays near that of the result.
        """
        from pedigreeview.network.subset import coancestry_between

        return coancestry_between(
            self.weights,
            self.innovation(),
            np.asarray(rows, dtype=np.int64),
            np.asarray(columns, dtype=np.int64),
        )

    # F, θ(i, i) and D ---------------------------------------------------------------------------

    @cached_property
    def _coefficients(self) -> Coefficients:
        return compute(self)

    @property
    def known_coefficients(self) -> Coefficients | None:
        """The coefficients of all rows if they have been computed, else None."""
        return self.__dict__.get("_coefficients")

    def set_coefficients(self, found: Coefficients) -> None:
        """Take coefficients that were found on another road, such as by `extended`."""
        self.__dict__["_coefficients"] = found

    def extended(self, rows: Sequence[Row]) -> PedigreeArrays:
        """New arrays with rows added after these; what is known is kept, not computed again.

        Parameters
        ----------
        rows : parents first; they may have parents among those added before them

        Raises
        ------
        ValueError : a row that comes before its parent
        FixationTooLow : a line's stated fixation is below the coancestry of its members
        """
        from pedigreeview.network.growing import extended

        return extended(self, rows)

    def inbreeding(self) -> FloatArray:
        """F of every row: probability that two different alleles are identical by descent; (n,).

        Raises
        ------
        FixationTooLow : a line's stated fixation is below the coancestry of its members
        """
        return self._coefficients.inbreeding

    def self_coancestry(self) -> FloatArray:
        """θ(i, i) of every row: of the plant with itself, or of two members of a pool; (n,)."""
        return self._coefficients.self_coancestry

    def innovation(self) -> FloatArray:
        """D of every row: θ(i, i) less what descent explains; 0 for clones and pools; (n,)."""
        return self._coefficients.innovation

    def member_coancestry(self, row: int) -> float:
        """θ of a plant with itself, and of one member of a pool with itself (not two members)."""
        if self.pool[row]:
            return float(self.rules(row).itself(self.inbreeding()[row]))
        return float(self.self_coancestry()[row])

    def cross_inbreeding(self, seed: int, pollen: int, coancestry: float) -> float:
        """F of the progeny of two rows by the cross rule (one member of a pool each)."""
        inbreeding: Any = self.inbreeding()
        return float(self.rules(seed).cross(inbreeding[seed], inbreeding[pollen], coancestry))

    def self_inbreeding(self, row: int) -> float:
        """F of the selfed progeny of a row (of a pool: each member selfed)."""
        return float(self.rules(row).selfed(self.inbreeding()[row]))
