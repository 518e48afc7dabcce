"""The network of plants and crosses of one book, and every question it answers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property, partial
from math import sqrt
from typing import Any

import numpy as np

from pedigreeview.book.book import Book
from pedigreeview.book.checks import check_records, without_accepted
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.problems import Problem
from pedigreeview.network.arrays import FixationTooLow, FloatArray, PedigreeArrays
from pedigreeview.network.base import Base, base_of
from pedigreeview.network.common_ancestors import AncestorPath, Lines
from pedigreeview.network.exact import ExactCoefficients, short
from pedigreeview.network.explanation import (
    Explanation,
    explain_coancestry,
    explain_inbreeding,
    explain_progeny,
)
from pedigreeview.network.order import downstream
from pedigreeview.network.relatives import Relatives, UnknownPlantFault
from pedigreeview.network.rows import CompiledRows, RowOfPlant, compile_rows, cross_ploidy, ploidies
from pedigreeview.network.statistics import Statistics
from pedigreeview.network.sweeps import IntArray
from pedigreeview.network.words import inbreeding_sentence, relatedness_sentence

__all__ = [
    "CommonAncestor",
    "PedigreeNetwork",
    "UnknownPlantFault",
    "WithheldFault",
]

_LARGEST_SHARE_TABLE = 8_000_000
_WHOLE = Fraction(1)
_MOST_LISTED = 40
"""Ancestors to which paths are listed, those that bring most first."""

_REASONS = {
    "own_ancestor": "a plant among its own ancestors",
    "ploidy_differs": "parents of different ploidy",
    "ploidy_odd": "a parent of odd ploidy",
    "fixation_too_low": "a line whose stated fixation is too low",
}


class WithheldFault(Fault):
    """A coefficient that cannot be given because the records behind it cannot be right.

    `kind` is the kind of the problem, such as 'own_ancestor'.
    """

    def __init__(self, code: str, kind: str) -> None:
        self.kind = kind
        super().__init__(
            f"The coefficients of {code} are withheld: they depend on {_REASONS[kind]}.",
            Place(plant=code),
            "See the problems of the book for the place and the mend.",
        )


@dataclass(frozen=True, slots=True)
class CommonAncestor:
    """A plant at which coancestry arises, with what it brings.

    plant : its code, or the words for an unseen pollen parent
    contribution, contribution_exact : its part of θ; all parts add up to θ
    paths : pairs of lines that first meet here, as many as were asked for
    paths_left_out : how many more there are
    """

    plant: str
    contribution: float
    contribution_exact: Fraction | None
    paths: tuple[AncestorPath, ...]
    paths_left_out: int

    def as_json(self) -> dict[str, Any]:
        """The keys of `relate --json`."""
        exact = self.contribution_exact
        return {
            "plant": self.plant,
            "contribution": self.contribution,
            "contribution_exact": None if exact is None else str(exact),
            "paths": [path.as_json() for path in self.paths],
            "paths_left_out": self.paths_left_out,
        }


class PedigreeNetwork(Statistics, Relatives):
    """Plants and crosses as a graph, with structure and coefficients.

    Made by `from_records`.  Coefficients of plants that depend on records that cannot be right are
    withheld: asking for one raises `WithheldFault`, arrays hold NaN there.
    """

    def __init__(self, book: Book) -> None:
        super().__init__(book)
        self._progress: Callable[[int, int], None] | None = None

    @classmethod
    def from_records(
        cls, records: Book, *, progress: Callable[[int, int], None] | None = None
    ) -> PedigreeNetwork:
        """The network of a book; the founder settings are read from the book.

        Parameters
        ----------
        records : the book; it is not changed and must not change while the network is in use
        progress : called now and then with (rows done, rows in all) while coefficients are
            computed; may raise `Cancelled`
        """
        network = cls(records)
        network._progress = progress
        return network

    # What is withheld and why -------------------------------------------------------------------

    @cached_property
    def _compiled(self) -> tuple[CompiledRows, PedigreeArrays, dict[str, str], list[Problem]]:
        from_columns = self._compiled_columns()
        if from_columns is not None:
            return from_columns
        withheld = dict.fromkeys(self._tied, "own_ancestor")
        ploidy, problems = ploidies(self.book, self._parents, self._ordered)
        for problem in problems:
            for code in downstream(self._parents, {problem.plants[0]}):
                withheld.setdefault(code, problem.kind)
        while True:
            order = [code for code in self._ordered if code not in withheld]
            compiled = compile_rows(self.book, self._parents, ploidy, order)
            arrays = PedigreeArrays.from_rows(
                compiled.rows, self.book.double_reduction(), self._progress
            )
            try:
                arrays.inbreeding()
            except FixationTooLow as fault:
                code = compiled.label[fault.row]
                problems.append(_too_low(code, fault))
                for below in downstream(self._parents, {code}):
                    withheld.setdefault(below, "fixation_too_low")
            else:
                return compiled, arrays, withheld, problems

    def _compiled_columns(
        self,
    ) -> tuple[CompiledRows, PedigreeArrays, dict[str, str], list[Problem]] | None:
        """The same for a large book without a problem that is kept as columns, else None."""
        made = self._columns.compiled() if self._columns is not None else None
        if made is None:
            return None
        compiled, fields = made
        arrays = PedigreeArrays(
            **fields, double_reduction=self.book.double_reduction(), tick=self._progress
        )
        try:
            arrays.inbreeding()
        except FixationTooLow:
            return None
        return compiled, arrays, {}, []

    @property
    def withheld(self) -> dict[str, str]:
        """Plants whose coefficients are withheld, with the kind of problem behind it."""
        return self._compiled[2]

    @property
    def arrays(self) -> PedigreeArrays:
        """The arrays behind the coefficients; rows of unrecorded plants stand among them."""
        return self._compiled[1]

    def problems(self) -> list[Problem]:
        """All that looks wrong: loops first, then what the records alone show, then ploidy.

        What the person has called right is left out; a loop cannot be called right.
        """
        return [
            *self.loop_problems(),
            *check_records(self.book),
            *without_accepted(self.book, [*self._compiled[3], *self._cross_ploidy()]),
        ]

    def _cross_ploidy(self) -> list[Problem]:
        """Crosses without progeny whose parents differ in ploidy, or have an odd one."""
        if isinstance(self._compiled[0].of_plant, RowOfPlant):
            # Made from columns: all plants are of one even ploidy.
            return []
        ploidy, _ = ploidies(self.book, self._parents, self._ordered)
        return [
            problem
            for code, cross in self.book.crosses.items()
            if not self._of_cross[code]
            for problem in cross_ploidy(self.book, cross, self._candidates.get(code, ()), ploidy)
        ]

    def _row(self, code: str) -> int:
        self._known(code)
        compiled, _, withheld, _ = self._compiled
        if code in withheld:
            raise WithheldFault(code, withheld[code])
        return compiled.of_plant[code]

    def _label(self, row: int) -> str:
        return self._compiled[0].label[row]

    # Coefficients -------------------------------------------------------------------------------

    @cached_property
    def _exact(self) -> ExactCoefficients:
        return ExactCoefficients(self.arrays)

    def inbreeding(self, code: str) -> float:
        """F: probability that two different alleles of the plant are identical by descent.

        Of a pool it is that of a member.  Base: the founders with the fixation given (`base`).
        """
        return float(self.arrays.inbreeding()[self._row(code)])

    def inbreeding_exact(self, code: str) -> Fraction | None:
        """F as a fraction; None with decimal odds behind it or a denominator past 2**60."""
        return self._exact.inbreeding(self._row(code))

    def coancestry(self, a: str, b: str) -> float:
        """θ: probability that an allele drawn from a and one drawn from b are identical by descent.

        With replacement where a and b are the same plant; two members where both are one pool.
        """
        row_a, row_b = self._row(a), self._row(b)
        if row_a == row_b:
            return float(self.arrays.self_coancestry()[row_a])
        return float(self._column(row_b)[row_a])

    def _column(self, row: int) -> FloatArray:
        last = self.__dict__.get("_last_column")
        if last is None or last[0] != row:
            last = (row, self.arrays.coancestry_with(row))
            self.__dict__["_last_column"] = last
        column: FloatArray = last[1]
        return column

    def coancestry_exact(self, a: str, b: str) -> Fraction | None:
        """θ as a fraction; None with decimal odds behind it or a denominator past 2**60."""
        return self._exact.coancestry(self._row(a), self._row(b), self.coancestry(a, b))

    def self_coancestry(self, code: str) -> float:
        """θ of a plant with itself; of a pool, that of two of its members."""
        return float(self.arrays.self_coancestry()[self._row(code)])

    def coancestry_with(self, code: str) -> FloatArray:
        """Coancestry of one plant with every plant of `codes`: (n,) float64, NaN where withheld."""
        column = self._column(self._row(code))
        rows = self._row_of_codes
        found = np.full(len(rows), np.nan)
        found[rows >= 0] = column[rows[rows >= 0]]
        return found

    @cached_property
    def _row_of_codes(self) -> IntArray:
        """(n,) row of every plant of `codes`, −1 where withheld."""
        of_plant = self._compiled[0].of_plant
        if isinstance(of_plant, RowOfPlant):
            return of_plant.rows
        return np.array([of_plant.get(code, -1) for code in self.codes], dtype=np.int64)

    def numerator_relationship(self, a: str, b: str) -> float | None:
        """2θ at ploidy 2, else None."""
        theta = self.coancestry(a, b)
        return 2 * theta if {self.ploidy(a), self.ploidy(b)} == {2} else None

    def relationship(self, a: str, b: str) -> float | None:
        """θ_ab / √(θ_aa θ_bb) (Wright 1922, from memory), None where it cannot be."""
        theta = self.coancestry(a, b)
        scale = self.self_coancestry(a) * self.self_coancestry(b)
        return theta / sqrt(scale) if scale > 0 else None

    def ploidy(self, code: str) -> int:
        """Sets of chromosomes of a plant."""
        return int(self.arrays.ploidy[self._row(code)])

    def progeny_inbreeding(self, a: str, b: str) -> float | None:
        """F of the progeny of a and b (one member of a pool each); of the selfed ones if a = b.

        None where the two differ in ploidy or the ploidy is odd.
        """
        row_a, row_b = self._row(a), self._row(b)
        ploidy = self.ploidy(a)
        if ploidy != self.ploidy(b) or ploidy % 2:
            return None
        if row_a == row_b:
            return self.arrays.self_inbreeding(row_a)
        return self.arrays.cross_inbreeding(row_a, row_b, self.coancestry(a, b))

    def progeny_inbreeding_exact(self, a: str, b: str) -> Fraction | None:
        """F of the progeny of a and b as a fraction.

        None where `progeny_inbreeding` is None, with decimal odds behind it, or with a denominator
        past 2**60.
        """
        if self.progeny_inbreeding(a, b) is None:
            return None
        row_a, row_b = self._row(a), self._row(b)
        rules = self._exact.rules(row_a)
        of_a, of_b = self._exact.inbreeding(row_a), self._exact.inbreeding(row_b)
        if row_a == row_b:
            return None if of_a is None else short(rules.selfed(of_a))
        between = self.coancestry_exact(a, b)
        if of_a is None or of_b is None or between is None:
            return None
        return short(rules.cross(of_a, of_b, between))

    def founder_shares(self, code: str) -> dict[str, float]:
        """Expected share of each founder in a plant, largest first; none that has no share.

        The shares sum to 1 less `unknown_share`.
        """
        row = self._row(code)
        founders = self._shares_of
        if founders is None:
            founder_rows = self.arrays.founders
            shares = self.arrays.contributions([row])[founder_rows, 0]
        else:
            shares = founders[row]
        label = self._compiled[0].label
        found = {
            label[at]: float(share)
            for at, share in zip(self.arrays.founders.tolist(), shares.tolist(), strict=True)
            if share > 0
        }
        return dict(sorted(found.items(), key=lambda item: -item[1]))

    @cached_property
    def _shares_of(self) -> FloatArray | None:
        """Shares of all founders in all rows, where the table is small enough to keep."""
        founders = self.arrays.founders
        if len(self.arrays) * len(founders) > _LARGEST_SHARE_TABLE:
            return None
        shares = np.zeros((len(self.arrays), len(founders)))
        shares[founders, np.arange(len(founders))] = 1.0
        return self.arrays.weights.gather(shares)

    def unknown_share(self, code: str) -> float:
        """Share of a plant's alleles that come from unknown parents."""
        return max(0.0, 1.0 - sum(self.founder_shares(code).values()))

    def common_ancestors(
        self,
        a: str,
        b: str,
        *,
        most_paths: int = 100,
        watch: Callable[[], None] | None = None,
    ) -> list[CommonAncestor]:
        """The plants at which the coancestry of a and b arises, largest contribution first.

        A plant itself can be one (parent and child: the parent).  The contributions add up to θ;
        `most_paths` paths are listed for each of those that bring most, and the rest is counted.
        `watch` is called now and then in deep books and may raise `Cancelled`.
        """
        return self._split(self._row(a), self._row(b), most_paths=most_paths, watch=watch)

    def explain(
        self,
        a: str,
        b: str | None = None,
        *,
        most_paths: int = 100,
        watch: Callable[[], None] | None = None,
    ) -> Explanation:
        """Why the coancestry of two plants, or the inbreeding of one, is what it is.

        Terms that add up to the coefficient, each split over common ancestors and paths, with the
        formula, its source and the base; `most_paths` paths are listed for each ancestor.
        `watch` is called now and then and may raise `Cancelled`.
        """
        if b is not None:
            return explain_coancestry(self, a, b, most_paths, watch)
        split = partial(self._split, most_paths=most_paths, watch=watch)
        return explain_inbreeding(self, a, self._row(a), self._exact, split)

    def explain_progeny(
        self,
        a: str,
        b: str,
        *,
        most_paths: int = 100,
        watch: Callable[[], None] | None = None,
    ) -> Explanation | None:
        """Why F of the progeny of a and b would be what `progeny_inbreeding` gives, else None.

        In the manner of `explain`; paths run from a to b.
        """
        split = partial(self._split, most_paths=most_paths, watch=watch)
        rows = (self._row(a), self._row(b))
        return explain_progeny(self, (a, b), rows, self._exact, split)

    def _split(
        self,
        row_a: int,
        row_b: int,
        share: Fraction = _WHOLE,
        *,
        itself: bool = False,
        most_paths: int = 100,
        watch: Callable[[], None] | None = None,
    ) -> list[CommonAncestor]:
        """The coancestry of two rows, times `share`, over the rows where their lines meet.

        With `itself` the one row meets itself: one member of a pool, not two of them.
        """
        compiled, arrays, _, _ = self._compiled

        lines = Lines(lambda row: arrays.row(row).weights(), row_a, row_b, watch)
        decimal = self._exact.decimal_odds(row_a) or self._exact.decimal_odds(row_b)
        whole = [
            (meeting, self._own(meeting.row, row_a if itself else None, decimal))
            for meeting in lines.meetings()
        ]
        whole.sort(key=lambda item: -float(item[0].weight) * item[1][0])
        in_doubles = self._exact.exact_in_doubles(row_a, row_b)
        merged: dict[str, list[CommonAncestor]] = {}
        for place, (meeting, (own, own_exact)) in enumerate(whole):
            if watch is not None:
                watch()
            # Paths are listed to the ancestors that matter; the others are counted.
            most = most_paths if place < _MOST_LISTED else 0
            paths = tuple(
                self._shown_path(way, weight, decimal)
                for way, weight in lines.paths_to(meeting.row, most)
            )
            label = compiled.label[meeting.row]
            contribution = float(share) * float(meeting.weight) * own
            exact = None
            if own_exact is not None and (in_doubles or isinstance(meeting.weight, Fraction)):
                exact = short(own_exact * Fraction(meeting.weight) * share)
            if contribution > 0:
                left_out = meeting.paths - len(paths)
                merged.setdefault(label, []).append(
                    CommonAncestor(label, contribution, exact, paths, left_out)
                )
        found = [_together(label, parts) for label, parts in merged.items()]
        return sorted(found, key=lambda ancestor: (-ancestor.contribution, ancestor.plant))

    def _own(self, row: int, member: int | None, decimal: bool) -> tuple[float, Fraction | None]:
        """θ of a meeting row with itself, or of one member of the pool `member` with itself."""
        if member is None:
            exact = None if decimal else self._exact.self_coancestry(row)
            return float(self.arrays.self_coancestry()[row]), exact
        inbreeding = None if decimal else self._exact.inbreeding(member)
        exact = None if inbreeding is None else self._exact.rules(member).itself(inbreeding)
        return self.arrays.member_coancestry(member), exact

    def _shown_path(self, way: list[int], weight: Fraction, decimal: bool) -> AncestorPath:
        compiled = self._compiled[0]
        through: list[str] = []
        turn = min(way)
        for index in way:
            # An unseen father that only passes on a candidate's allele adds nothing to read.
            if compiled.hidden[index] == "father" and index != turn:
                continue
            if not through or through[-1] != compiled.label[index]:
                through.append(compiled.label[index])
        exact = None if decimal else short(weight)
        return AncestorPath(tuple(through), len(through) - 1, float(weight), exact)

    def inbreeding_words(self, code: str) -> str:
        """One plain sentence about the inbreeding of a plant."""
        return inbreeding_sentence(self.inbreeding(code))

    def relationship_words(self, a: str, b: str) -> str:
        """One plain sentence about how related two plants are."""
        ploidy = min(self.ploidy(a), self.ploidy(b))
        return relatedness_sentence(self.coancestry(a, b), ploidy)

    # The base -----------------------------------------------------------------------------------

    @cached_property
    def _base(self) -> Base:
        columns = self._columns
        return base_of(self.book, self._parents if columns is None else columns.with_base)

    def base(self) -> dict[str, Any]:
        """What the coefficients rest on: founder settings, every founder and what was assumed."""
        return self._base.as_json()

    def base_sentence(self) -> str:
        """The base in one line, for the window and every output."""
        return self._base.sentence()


def _together(label: str, parts: list[CommonAncestor]) -> CommonAncestor:
    """A pool and the unrecorded members of it are shown under the pool's one code."""
    exact: Fraction | None = Fraction(0)
    for part in parts:
        known = exact is not None and part.contribution_exact is not None
        exact = exact + part.contribution_exact if known else None  # type: ignore[operator]
    return CommonAncestor(
        label,
        sum(part.contribution for part in parts),
        exact,
        tuple(path for part in parts for path in part.paths),
        sum(part.paths_left_out for part in parts),
    )


def _too_low(code: str, fault: FixationTooLow) -> Problem:
    return Problem(
        "fixation_too_low",
        "error",
        (code,),
        f"{code} is a line with fixation {fault.stated:g}, but by descent two of its plants "
        f"already have coancestry {fault.needed:.4g}; its coefficients are withheld.",
        "State a higher fixation, or leave it blank for a line that is fixed.",
    )
