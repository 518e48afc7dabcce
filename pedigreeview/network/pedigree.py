"""The network of plants and crosses of one book, and every question it answers."""

from __future__ import annotations

import difflib
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from math import sqrt
from typing import Any

import networkx as nx
import numpy as np

from pedigreeview.book.book import Book
from pedigreeview.book.checks import check_records
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.problems import Problem
from pedigreeview.network.arrays import FixationTooLow, FloatArray, PedigreeArrays
from pedigreeview.network.base import Base, base_of
from pedigreeview.network.common_ancestors import AncestorPath, first_meetings, list_paths
from pedigreeview.network.exact import ExactCoefficients, short
from pedigreeview.network.generations import generation_names, generations
from pedigreeview.network.order import downstream, parents_first, shortest_cycles
from pedigreeview.network.parentage import Parents, is_selfing, parents_by_plant
from pedigreeview.network.reciprocals import ReciprocalPair, reciprocal_pairs
from pedigreeview.network.rows import CompiledRows, compile_rows, ploidies
from pedigreeview.network.words import inbreeding_sentence, relatedness_sentence

__all__ = [
    "CommonAncestor",
    "PedigreeNetwork",
    "UnknownPlantFault",
    "WithheldFault",
]

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


class UnknownPlantFault(Fault):
    """A code that is not a plant of the book."""

    def __init__(self, code: str, codes: Iterable[str]) -> None:
        near = difflib.get_close_matches(code, list(codes), 3)
        todo = f"Did you mean {' or '.join(near)}?" if near else "Look it up among the plants."
        super().__init__(f"There is no plant {code!r} in this book.", None, todo)


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


class PedigreeNetwork:
    """Plants and crosses as a graph, with structure and coefficients.

    Made by `from_records`.  Coefficients of plants that depend on records that cannot be right are
    withheld: asking for one raises `WithheldFault`, arrays hold NaN there.
    """

    def __init__(self, book: Book) -> None:
        self.book = book
        self._parents = parents_by_plant(book)
        self._ordered, self._tied = parents_first(self._parents)
        self._withheld_by_records: dict[str, str] = {}
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

    # Plants and their relatives -----------------------------------------------------------------

    @cached_property
    def codes(self) -> tuple[str, ...]:
        """Codes of all plants, parents before progeny; plants tied up in loops come last."""
        return (*self._ordered, *self._tied)

    def __contains__(self, code: str) -> bool:
        return code in self._parents

    def __len__(self) -> int:
        return len(self._parents)

    def _known(self, code: str) -> str:
        if code not in self._parents:
            raise UnknownPlantFault(code, self._parents)
        return code

    def parents(self, code: str) -> Parents:
        """How a plant arose and from whom, with odds."""
        return self._parents[self._known(code)]

    def parent_codes(self, code: str) -> tuple[str, ...]:
        """Distinct parents, candidates and source of a plant, the seed parent's side first."""
        return self.parents(code).codes

    @property
    def founders(self) -> tuple[str, ...]:
        """Plants that come from no other plant of the book, in the book's order."""
        return tuple(c for c, origin in self._parents.items() if origin.raised == "founder")

    @cached_property
    def _progeny(self) -> dict[str, tuple[str, ...]]:
        found: dict[str, list[str]] = {}
        for code, origin in self._parents.items():
            for parent in origin.codes:
                found.setdefault(parent, []).append(code)
        return {code: tuple(progeny) for code, progeny in found.items()}

    def progeny(self, code: str) -> tuple[str, ...]:
        """Direct progeny of a plant, whatever the origin, in the book's order."""
        return self._progeny.get(self._known(code), ())

    @cached_property
    def _of_cross(self) -> dict[str, tuple[str, ...]]:
        found: dict[str, list[str]] = {code: [] for code in self.book.crosses}
        for code in self.codes:
            if self._parents[code].cross:
                found[self._parents[code].cross].append(code)
        return {code: tuple(progeny) for code, progeny in found.items()}

    def progeny_of_cross(self, cross: str) -> tuple[str, ...]:
        """Plants raised from a cross."""
        return self._of_cross[cross]

    @cached_property
    def _crosses_by_parent(self) -> tuple[dict[str, list[str]], dict[str, list[str]]]:
        as_seed: dict[str, list[str]] = {}
        as_pollen: dict[str, list[str]] = {}
        candidates = self.book.candidates()
        for code, cross in self.book.crosses.items():
            if cross.seed_parent:
                as_seed.setdefault(cross.seed_parent, []).append(code)
            pollen = dict.fromkeys(
                cross.seed_parent if item.candidate == "self" else item.candidate
                for item in candidates.get(code, [])
            )
            if cross.pollen_parent or is_selfing(cross):
                pollen[cross.pollen_parent or cross.seed_parent] = None
            for parent in pollen:
                if parent:
                    as_pollen.setdefault(parent, []).append(code)
        return as_seed, as_pollen

    def crosses_of(self, code: str) -> tuple[list[str], list[str]]:
        """Crosses in which a plant is the seed parent, and those in which it gave the pollen.

        A candidate for the pollen parent counts as one that gave it; a selfing stands in both.
        """
        as_seed, as_pollen = self._crosses_by_parent
        self._known(code)
        return list(as_seed.get(code, ())), list(as_pollen.get(code, ()))

    def mates(self, code: str) -> tuple[str, ...]:
        """The other parents of a plant's crosses, distinct, in the book's order of crosses."""
        as_seed, as_pollen = self.crosses_of(code)
        candidates = self.book.candidates()
        found: dict[str, None] = {}
        for cross_code in as_seed:
            cross = self.book.crosses[cross_code]
            others = [cross.pollen_parent, *(i.candidate for i in candidates.get(cross_code, []))]
            found.update(dict.fromkeys(others))
        for cross_code in as_pollen:
            found[self.book.crosses[cross_code].seed_parent] = None
        return tuple(mate for mate in found if mate and mate not in (code, "self"))

    def sibs(self, code: str) -> tuple[str, ...]:
        """The other plants of the same cross."""
        cross = self.parents(code).cross
        return tuple(c for c in self._of_cross[cross] if c != code) if cross else ()

    def ancestors(self, code: str) -> set[str]:
        """All plants that a plant descends from, candidates for pollen parent included.

        A plant in a loop is among its own ancestors.
        """
        return self._reached(self.parents(code).codes, lambda c: self._parents[c].codes)

    def descendants(self, code: str) -> set[str]:
        """All plants that descend from a plant."""
        return self._reached(self.progeny(code), lambda c: self._progeny.get(c, ()))

    @staticmethod
    def _reached(start: Iterable[str], step: Callable[[str], Iterable[str]]) -> set[str]:
        found = set(start)
        ahead = list(found)
        while ahead:
            for code in step(ahead.pop()):
                if code not in found:
                    found.add(code)
                    ahead.append(code)
        return found

    @cached_property
    def graph(self) -> nx.MultiDiGraph:
        """Plants and crosses as a graph.

        Nodes are ('plant', code) and ('cross', code).  Edges run from parent to progeny: plant to
        cross with role 'seed' or 'pollen' (and the odds of an uncertain pollen parent), cross to
        plant with role 'progeny', and plant to plant with the word of how it was raised.  A selfing
        has two edges from its one parent.  A plant whose own finding overrides its cross has its
        pollen parents marked on the plant's own edges, role 'finding'.
        """
        graph = nx.MultiDiGraph()
        for code, plant in self.book.plants.items():
            kind = self.book.kind(plant)
            graph.add_node(("plant", code), what="plant", code=code, name=plant.name, kind=kind)
        as_seed, as_pollen = self._crosses_by_parent
        odds = {(item.cross, item.candidate): item.odds for item in self.book.pollen_candidates}
        for code, cross in self.book.crosses.items():
            graph.add_node(("cross", code), what="cross", code=code, intended=cross.intended)
        for parent, crosses in as_seed.items():
            for code in crosses:
                grade = self.book.crosses[code].seed_doubt
                graph.add_edge(("plant", parent), ("cross", code), role="seed", grade=grade)
        for parent, crosses in as_pollen.items():
            for code in crosses:
                cross = self.book.crosses[code]
                share = odds.get((code, parent))
                if share is None and parent == cross.seed_parent:
                    share = odds.get((code, "self"))
                graph.add_edge(
                    ("plant", parent),
                    ("cross", code),
                    role="pollen",
                    odds=1.0 if share is None else share,
                    grade=cross.pollen_doubt,
                )
        for code, origin in self._parents.items():
            if origin.cross:
                graph.add_edge(("cross", origin.cross), ("plant", code), role="progeny")
            if origin.source:
                graph.add_edge(("plant", origin.source), ("plant", code), role=origin.raised)
            if origin.finding:
                for parent, share in origin.pollen:
                    graph.add_edge(("plant", parent), ("plant", code), role="finding", odds=share)
        return graph

    # Generations, cytoplasm, pairs, loops -------------------------------------------------------

    @cached_property
    def _generations(self) -> dict[str, int]:
        return generations(self._parents, self._ordered)

    @cached_property
    def _generation_names(self) -> dict[str, str | None]:
        return generation_names(self._parents, self._ordered)

    def generation(self, code: str) -> int | None:
        """Generation of a plant, founders 0; None for a plant tied up in a loop."""
        return self._generations.get(self._known(code))

    def generation_name(self, code: str) -> str | None:
        """The trade's name of the generation (F2, BC1F1, S1), or None where none fits."""
        return self._generation_names.get(self._known(code))

    def cytoplasm(self, code: str) -> str | None:
        """Founder at the end of the seed-parent line, or None where the line ends in an unknown."""
        self._known(code)
        seen: set[str] = set()
        while code not in seen:
            seen.add(code)
            origin = self._parents[code]
            if origin.raised == "founder":
                return code
            if origin.cross and not self.book.crosses[origin.cross].direction_known:
                ends = {self.cytoplasm(parent) for parent in origin.codes if parent not in seen}
                return ends.pop() if len(ends) == 1 else None
            code = origin.source or origin.seed_parent
            if not code:
                return None
        return None

    def same_cytoplasm(self, a: str, b: str) -> bool | None:
        """Whether the seed-parent lines of two plants end in the same founder; None if unknown."""
        of_a, of_b = self.cytoplasm(a), self.cytoplasm(b)
        return None if of_a is None or of_b is None else of_a == of_b

    def selfings(self) -> list[str]:
        """Codes of the crosses that are selfings, in the book's order."""
        return [code for code, cross in self.book.crosses.items() if is_selfing(cross)]

    @cached_property
    def _pairs(self) -> list[ReciprocalPair]:
        return reciprocal_pairs(self.book, self._parents)

    def reciprocal_pairs(self) -> list[ReciprocalPair]:
        """All reciprocal pairs, by plant first."""
        return list(self._pairs)

    @cached_property
    def _reciprocals(self) -> dict[str, tuple[str, ...]]:
        found: dict[str, tuple[str, ...]] = {}
        for pair in self._pairs:
            for here, there in (pair.crosses, pair.crosses[::-1]):
                found.update(dict.fromkeys(here, there))
        return found

    def reciprocal_of(self, cross: str) -> tuple[str, ...]:
        """Crosses of the same pair in the other direction."""
        return self._reciprocals.get(cross, ())

    @cached_property
    def _loops(self) -> list[tuple[str, ...]]:
        return shortest_cycles(self._parents, self._tied) if self._tied else []

    def loops(self) -> list[tuple[str, ...]]:
        """Impossible loops: each a cycle of plants that are their own ancestors."""
        return list(self._loops)

    # What is withheld and why -------------------------------------------------------------------

    @cached_property
    def _compiled(self) -> tuple[CompiledRows, PedigreeArrays, dict[str, str], list[Problem]]:
        withheld = dict.fromkeys(self._tied, "own_ancestor")
        ploidy, problems = ploidies(self.book, self._parents, self._ordered)
        for problem in problems:
            for code in downstream(self._parents, {problem.plants[0]}):
                withheld.setdefault(code, problem.kind)
        while True:
            order = [code for code in self._ordered if code not in withheld]
            compiled = compile_rows(self.book, self._parents, ploidy, order)
            arrays = PedigreeArrays.from_rows(
                compiled.rows, self.book.settings.double_reduction, self._progress
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

    @property
    def withheld(self) -> dict[str, str]:
        """Plants whose coefficients are withheld, with the kind of problem behind it."""
        return self._compiled[2]

    @property
    def arrays(self) -> PedigreeArrays:
        """The arrays behind the coefficients; rows of unrecorded plants stand among them."""
        return self._compiled[1]

    def problems(self) -> list[Problem]:
        """All that looks wrong: loops first, then what the records alone show, then ploidy."""
        looped = [_own_ancestor(cycle) for cycle in self._loops]
        return [*looped, *check_records(self.book), *self._compiled[3], *self._cross_ploidy()]

    def _cross_ploidy(self) -> list[Problem]:
        """Crosses without progeny whose parents differ in ploidy."""
        ploidy, _ = ploidies(self.book, self._parents, self._ordered)
        found = []
        for code, cross in self.book.crosses.items():
            sides = (cross.seed_parent, cross.pollen_parent)
            if self._of_cross[code] or not all(side in ploidy for side in sides):
                continue
            if ploidy[sides[0]] != ploidy[sides[1]]:
                found.append(
                    Problem(
                        "ploidy_differs",
                        "warning",
                        sides,
                        f"Cross {code} joins {sides[0]} ({ploidy[sides[0]]}x) and {sides[1]} "
                        f"({ploidy[sides[1]]}x), which differ in ploidy.",
                        "Expect few seeds or none; correct the ploidy if it is wrong.",
                    )
                )
        return found

    def _row(self, code: str) -> int:
        self._known(code)
        compiled, _, withheld, _ = self._compiled
        if code in withheld:
            raise WithheldFault(code, withheld[code])
        return compiled.of_plant[code]

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
        of_plant = self._compiled[0].of_plant
        rows = np.array([of_plant.get(other, -1) for other in self.codes], dtype=np.int64)
        found = np.full(len(rows), np.nan)
        found[rows >= 0] = column[rows[rows >= 0]]
        return found

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

    def founder_shares(self, code: str) -> dict[str, float]:
        """Expected share of each founder in a plant, largest first; none that has no share.

        The shares sum to 1 less `unknown_share`.
        """
        row = self._row(code)
        shares = self.arrays.contributions([row])[:, 0]
        of_plant = self._compiled[0].of_plant
        found = {
            founder: float(shares[of_plant[founder]])
            for founder in self.founders
            if founder in of_plant and shares[of_plant[founder]] > 0
        }
        return dict(sorted(found.items(), key=lambda item: -item[1]))

    def unknown_share(self, code: str) -> float:
        """Share of a plant's alleles that come from unknown parents."""
        return max(0.0, 1.0 - sum(self.founder_shares(code).values()))

    def common_ancestors(self, a: str, b: str, *, most_paths: int = 100) -> list[CommonAncestor]:
        """The plants at which the coancestry of a and b arises, largest contribution first.

        A plant itself can be one (parent and child: the parent).  The contributions add up to θ;
        `most_paths` paths are listed for each and the rest is counted.
        """
        row_a, row_b = self._row(a), self._row(b)
        compiled, arrays, _, _ = self._compiled

        def older(row: int) -> tuple[tuple[int, float], ...]:
            return arrays.row(row).weights()

        decimal = self._exact.decimal_odds(row_a) or self._exact.decimal_odds(row_b)
        merged: dict[str, list[CommonAncestor]] = {}
        for meeting in first_meetings(older, row_a, row_b):
            own = float(arrays.self_coancestry()[meeting.row])
            exact = None if decimal else self._exact.self_coancestry(meeting.row)
            paths = tuple(
                self._shown_path(way, weight, decimal)
                for way, weight in list_paths(older, row_a, row_b, meeting.row, most_paths)
            )
            label = compiled.label[meeting.row]
            contribution = float(meeting.weight) * own
            if contribution > 0:
                merged.setdefault(label, []).append(
                    CommonAncestor(
                        label,
                        contribution,
                        short(None if exact is None else exact * meeting.weight),
                        paths,
                        meeting.paths - len(paths),
                    )
                )
        found = [_together(label, parts) for label, parts in merged.items()]
        return sorted(found, key=lambda ancestor: (-ancestor.contribution, ancestor.plant))

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
        return relatedness_sentence(self.coancestry(a, b))

    # The base -----------------------------------------------------------------------------------

    @cached_property
    def _base(self) -> Base:
        return base_of(self.book, self._parents)

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


def _own_ancestor(cycle: tuple[str, ...]) -> Problem:
    if len(cycle) == 1:
        said = f"{cycle[0]} is recorded as its own parent"
    else:
        said = f"{cycle[0]} is its own ancestor: " + " → ".join((*cycle, cycle[0]))
    return Problem(
        "own_ancestor",
        "error",
        cycle,
        f"{said}; the coefficients that depend on it are withheld.",
        "Correct a parent of one of these plants; the likeliest is the one that was sown last.",
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
