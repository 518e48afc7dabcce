"""Who is related to whom in a book: parents, progeny, mates, generations, loops and pairs."""

from __future__ import annotations

import copy
import difflib
from collections.abc import Callable, Iterable
from functools import cached_property
from typing import TYPE_CHECKING, Self

import numpy as np

from pedigreeview.book.book import Book
from pedigreeview.book.columns import columns_of
from pedigreeview.book.faults import Fault
from pedigreeview.book.memory import uncollected
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import PollenCandidate
from pedigreeview.network.descent import descendant_counts
from pedigreeview.network.generations import GenerationNames, generations
from pedigreeview.network.order import parents_first, shortest_cycles
from pedigreeview.network.parent_columns import ParentColumns
from pedigreeview.network.parentage import Parents, is_selfing, parents_by_plant
from pedigreeview.network.reciprocals import ReciprocalPair, reciprocal_pairs

if TYPE_CHECKING:
    import networkx as nx

__all__ = ["Relatives", "UnknownPlantFault", "own_ancestor"]

_SHOWN_OF_A_LOOP = 24
"""Plants of a loop that its sentence names; the problem itself has all of them."""


class UnknownPlantFault(Fault):
    """A code that is not a plant of the book."""

    def __init__(self, code: str, codes: Iterable[str]) -> None:
        near = difflib.get_close_matches(code, list(codes), 3)
        todo = f"Did you mean {' or '.join(near)}?" if near else "Look it up among the plants."
        super().__init__(f"There is no plant {code!r} in this book.", None, todo)


class Relatives:
    """The structure of one book, without any coefficient.

    Parameters
    ----------
    book : it is not changed, and must not change while its relatives are asked for
    """

    def __init__(self, book: Book) -> None:
        self.book = book
        self._parents: dict[str, Parents]
        self._columns: ParentColumns | None = None
        columns = columns_of(book)
        if columns is not None:
            self._columns = ParentColumns(book, columns)
            self._parents = self._columns.parents
            self._ordered, self._tied = self._columns.ordered, self._columns.tied
        else:
            with uncollected():
                self._parents = parents_by_plant(book)
                self._ordered, self._tied = parents_first(self._parents)

    def with_book(self, book: Book) -> Self:
        """The same network over a book that differs in nothing but what no coefficient rests on.

        Parameters
        ----------
        book : the book after an edit that left plants' origins, crosses, candidates, findings,
            ploidies and settings as they were (`Change.pedigree` is False)
        """
        other = copy.copy(self)
        other.book = book
        return other

    @cached_property
    def _candidates(self) -> dict[str, list[PollenCandidate]]:
        return self.book.candidates()

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

    @cached_property
    def founders(self) -> tuple[str, ...]:
        """Plants that come from no other plant of the book, in the book's order."""
        if self._columns is not None:
            return self._columns.founders
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
        return self._children(self._known(code))

    def _children(self, code: str) -> tuple[str, ...]:
        if self._columns is not None:
            return self._columns.progeny(code)
        return self._progeny.get(code, ())

    @cached_property
    def _of_cross(self) -> dict[str, tuple[str, ...]]:
        found: dict[str, list[str]] = {code: [] for code in self.book.crosses}
        for code in self.codes:
            if self._parents[code].cross:
                found[self._parents[code].cross].append(code)
        return {code: tuple(progeny) for code, progeny in found.items()}

    def progeny_of_cross(self, cross: str) -> tuple[str, ...]:
        """Plants raised from a cross."""
        if self._columns is not None:
            return self._columns.progeny_of_cross(cross)
        return self._of_cross[cross]

    @cached_property
    def _crosses_by_parent(self) -> tuple[dict[str, list[str]], dict[str, list[str]]]:
        as_seed: dict[str, list[str]] = {}
        as_pollen: dict[str, list[str]] = {}
        for code, cross in self.book.crosses.items():
            if cross.seed_parent:
                as_seed.setdefault(cross.seed_parent, []).append(code)
            pollen = dict.fromkeys(
                cross.seed_parent if item.candidate == "self" else item.candidate
                for item in self._candidates.get(code, [])
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
        found: dict[str, None] = {}
        for cross_code in as_seed:
            cross = self.book.crosses[cross_code]
            found[cross.pollen_parent] = None
            for item in self._candidates.get(cross_code, []):
                found[item.candidate] = None
        for cross_code in as_pollen:
            found[self.book.crosses[cross_code].seed_parent] = None
        return tuple(mate for mate in found if mate and mate not in (code, "self"))

    def sibs(self, code: str) -> tuple[str, ...]:
        """The other plants of the same cross."""
        cross = self.parents(code).cross
        return tuple(c for c in self.progeny_of_cross(cross) if c != code) if cross else ()

    def ancestors(self, code: str) -> set[str]:
        """All plants that a plant descends from, candidates for pollen parent included.

        A plant in a loop is among its own ancestors.
        """
        return self._reached(self.parents(code).codes, lambda c: self._parents[c].codes)

    def descendants(self, code: str) -> set[str]:
        """All plants that descend from a plant."""
        return self._reached(self.progeny(code), self._children)

    def descendant_counts(self, codes: Iterable[str]) -> dict[str, int]:
        """Number of descendants of each of some plants, counted together (see `descent`)."""
        asked = list(dict.fromkeys(map(self._known, codes)))
        place = {code: at for at, code in enumerate(self.codes)}
        if self._columns is not None:
            starts, older = self._columns.parent_rows()
        else:
            behind = [[place[parent] for parent in self._parents[c].codes] for c in self.codes]
            starts = np.cumsum([0, *map(len, behind)])
            older = np.array([parent for parents in behind for parent in parents], np.int64)
        rows = np.array([place[code] for code in asked], np.int64)
        counts = descendant_counts(starts, older, rows, len(self._ordered))
        return dict(zip(asked, counts, strict=True))

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
        """Plants and crosses of the whole book as a graph; see `graph_of`."""
        graph = self.graph_of(self.codes)
        for code in self.book.crosses:
            if ("cross", code) not in graph:
                self._add_cross(graph, code, {})
        return graph

    def graph_of(self, codes: Iterable[str]) -> nx.MultiDiGraph:
        """Some plants and the crosses among them as a graph, made without the rest of the book.

        Nodes are ('plant', code) and ('cross', code): the asked plants, the crosses that they were
        raised from and those made among them.  Edges run from parent to progeny: plant to cross
        with role 'seed' or 'pollen' (and the odds of an uncertain pollen parent), cross to plant
        with role 'progeny', and plant to plant with the word of how it was raised.  A selfing has
        two edges from its one parent.  A plant whose own finding overrides its cross has its pollen
        parents marked on the plant's own edges, role 'finding'.
        """
        import networkx as nx

        graph = nx.MultiDiGraph()
        asked = dict.fromkeys(map(self._known, codes))
        for code in asked:
            plant = self.book.plants[code]
            kind = self.book.kind(plant)
            graph.add_node(("plant", code), what="plant", code=code, name=plant.name, kind=kind)
        as_seed, as_pollen = self._crosses_by_parent
        crosses = {self._parents[code].cross: None for code in asked if self._parents[code].cross}
        for made in (as_seed, as_pollen):
            crosses.update((c, None) for code in asked for c in made.get(code, ()))
        for code in crosses:
            self._add_cross(graph, code, asked)
        for code in asked:
            origin = self._parents[code]
            if origin.cross:
                graph.add_edge(("cross", origin.cross), ("plant", code), role="progeny")
            if origin.source in asked:
                graph.add_edge(("plant", origin.source), ("plant", code), role=origin.raised)
            if origin.finding:
                for parent, share in origin.pollen:
                    if parent in asked:
                        ends = ("plant", parent), ("plant", code)
                        graph.add_edge(*ends, role="finding", odds=share)
        return graph

    def _add_cross(self, graph: nx.MultiDiGraph, code: str, asked: dict[str, None]) -> None:
        """Add a cross with the edges from those of its parents that are asked for."""
        cross = self.book.crosses[code]
        node = ("cross", code)
        graph.add_node(node, what="cross", code=code, intended=cross.intended)
        if cross.seed_parent in asked:
            graph.add_edge(("plant", cross.seed_parent), node, role="seed", grade=cross.seed_doubt)
        held = self._candidates.get(code, [])
        odds = {cross.seed_parent if c.candidate == "self" else c.candidate: c.odds for c in held}
        if not held and (cross.pollen_parent or is_selfing(cross)):
            odds = {cross.pollen_parent or cross.seed_parent: 1.0}
        for parent, share in odds.items():
            if parent in asked:
                grade = cross.pollen_doubt
                graph.add_edge(("plant", parent), node, role="pollen", odds=share, grade=grade)

    # Generations, cytoplasm, pairs, loops -------------------------------------------------------

    @cached_property
    def _generations(self) -> dict[str, int]:
        return generations(self._parents, self._ordered)

    @cached_property
    def _generation_names(self) -> GenerationNames:
        return GenerationNames(self._parents)

    @cached_property
    def _in_loops(self) -> frozenset[str]:
        return frozenset(self._tied)

    def generation(self, code: str) -> int | None:
        """Generation of a plant, founders 0; None for a plant tied up in a loop."""
        self._known(code)
        if self._columns is not None:
            return self._columns.generation(code)
        return self._generations.get(code)

    def generation_name(self, code: str) -> str | None:
        """The trade's name of the generation (F2, BC1F1, S1), or None where none fits."""
        return None if self._known(code) in self._in_loops else self._generation_names.name(code)

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
        held = self._candidates
        return [c for c, cross in self.book.crosses.items() if is_selfing(cross, held.get(c, ()))]

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

    def loop_problems(self) -> list[Problem]:
        """The problem of each impossible loop."""
        return [own_ancestor(cycle) for cycle in self._loops]


def own_ancestor(cycle: tuple[str, ...]) -> Problem:
    """The problem of one impossible loop."""
    if len(cycle) == 1:
        said = f"{cycle[0]} is recorded as its own parent"
    else:
        shown = (*cycle, cycle[0])
        if len(shown) > _SHOWN_OF_A_LOOP:
            half = _SHOWN_OF_A_LOOP // 2
            left_out = f"({len(shown) - 2 * half} more)"
            shown = (*shown[:half], left_out, *shown[-half:])
        said = f"{cycle[0]} is its own ancestor: " + " → ".join(shown)
    return Problem(
        "own_ancestor",
        "error",
        cycle,
        f"{said}; the coefficients that depend on it are withheld.",
        "Correct a parent of one of these plants; the likeliest is the one that was sown last.",
    )
