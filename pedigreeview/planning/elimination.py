"""Exact inference: unknowns eliminated along a tree of groups, with no number left out.

The tables of a pedigree make a graph of unknowns that stand in one table together.  NetworkX finds
an order of elimination (fewest added lines, or fewest neighbours: whichever makes the smaller
tables) and the tree of groups that goes with it.  Messages run to the root and back; then every
group holds the joint chances of its unknowns given all records (Lauritzen & Spiegelhalter 1988, in
the form with division, from memory).  Plants without progeny are taken off first: each hangs on
the group of its parents.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from math import log
from typing import Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.tables import Table, size

__all__ = ["Group", "Impossible", "Tree", "leaves_of", "reduced", "tree_of"]

FloatArray = NDArray[np.float64]

_MOST_FOR_FILL = 400
"""Unknowns up to which the slower order by fewest added lines is tried as well."""


class Impossible(Exception):
    """The records cannot be true together: the chance of them is 0."""


@dataclass(slots=True)
class Group:
    """Unknowns whose joint chances are held in one table.

    parent : number of the group above, −1 at a root
    shared : the unknowns that it shares with the group above
    tables : numbers of the tables that are multiplied into it
    """

    names: tuple[int, ...]
    parent: int
    shared: tuple[int, ...]
    tables: list[int] = field(default_factory=list)


@dataclass(slots=True)
class Tree:
    """Groups of unknowns, the parents of the tree first.

    Made by `tree_of`; `run` sends the messages.
    """

    lengths: Sequence[int]
    groups: list[Group]
    home: dict[int, int]
    """A group that holds each unknown."""
    places: dict[tuple[int, ...], int] = field(default_factory=dict)
    beliefs: list[Table] = field(default_factory=list)
    messages: list[Table] = field(default_factory=list)

    @property
    def largest(self) -> int:
        """Numbers in the largest table."""
        return max((size(self.lengths[n] for n in g.names) for g in self.groups), default=1)

    def wide(self, largest: int) -> list[Group]:
        """The groups whose tables would hold more numbers than that."""
        return [g for g in self.groups if size(self.lengths[n] for n in g.names) > largest]

    def run(
        self,
        tables: Sequence[Table],
        *,
        back: bool = True,
        possible: bool = False,
        watch: Callable[[], None] | None = None,
    ) -> float:
        """Send the messages for tables laid out as those the tree was made for.

        Parameters
        ----------
        back : whether the groups shall hold chances given all records, for `chances` and `draw`
        possible : ask only whether it is possible: tables count as 0 or more
        watch : called now and then; may raise `Cancelled`

        Returns
        -------
        the logarithm of the chance of all records (0 with `possible`)

        Raises
        ------
        Impossible : the chance is 0
        """
        count = len(self.groups)
        inbox: list[list[Table]] = [[] for _ in range(count)]
        self.beliefs = [Table((), np.ones(()))] * count
        self.messages = list(self.beliefs)
        total = 0.0
        for at in range(count - 1, -1, -1):
            group = self.groups[at]
            if watch is not None and at % 64 == 0:
                watch()
            held = [tables[number] for number in group.tables]
            values, scale = self._product((*held, *inbox[at]), group.names, possible)
            total += scale
            inbox[at] = []
            self.beliefs[at] = Table(group.names, values)
            message = self.beliefs[at].sum_to(group.shared)
            if group.parent >= 0:
                self.messages[at] = message
                inbox[group.parent].append(message)
            elif not possible:
                total += log(float(values.sum()))
        if back:
            self._back()
        return 0.0 if possible else total

    def _product(
        self, tables: Sequence[Table], names: tuple[int, ...], possible: bool
    ) -> tuple[FloatArray, float]:
        """All tables multiplied, the highest number 1, and the logarithm of what it was."""
        values, scale = np.ones([self.lengths[name] for name in names]), 0.0
        for table in tables:
            laid = table.over(names)
            values *= (laid > 0) if possible else laid
            highest = float(values.max())
            if highest <= 0:
                raise Impossible
            # A large family has many small factors: taken out one by one, none is lost.
            values /= highest
            scale += log(highest)
        return values, scale

    def _back(self) -> None:
        for at, group in enumerate(self.groups):
            belief = self.beliefs[at]
            if group.parent >= 0:
                above = self.beliefs[group.parent].sum_to(group.shared)
                names = tuple(name for name in group.names if name in group.shared)
                sent = self.messages[at].over(names)
                came = above.over(names)
                ratio = np.divide(came, sent, out=np.zeros_like(came), where=sent > 0)
                belief = Table(group.names, belief.values * Table(names, ratio).over(group.names))
            whole = float(belief.values.sum())
            self.beliefs[at] = Table(group.names, belief.values / whole)

    def chances(self, unknown: int) -> FloatArray:
        """Chances of the values of one unknown given all records; after `run`."""
        found = self.beliefs[self.home[unknown]].sum_to((unknown,)).values
        return found / found.sum()

    def joint(self, names: tuple[int, ...], held: Mapping[int, int]) -> FloatArray:
        """Chances of some unknowns together, which stand in one table; after `run`.

        Parameters
        ----------
        held : the values of unknowns that the tables were reduced by (`reduced`)
        """
        free = tuple(name for name in names if name not in held)
        found = np.zeros([self.lengths[name] for name in names])
        where = tuple(held[name] if name in held else slice(None) for name in names)
        if not free:
            found[where] = 1.0
            return found
        at = self.places.get(free)
        if at is None:
            wanted = set(free)
            at = next(g for g, group in enumerate(self.groups) if wanted <= set(group.names))
            self.places[free] = at
        values = self.beliefs[at].sum_to(free).over(free)
        found[where] = values / values.sum()
        return found

    def draw(self, rng: np.random.Generator) -> dict[int, int]:
        """Values of all unknowns together, drawn by their chances given all records."""
        drawn: dict[int, int] = {}
        for belief in self.beliefs:
            values = belief
            for name in belief.names:
                if name in drawn:
                    values = values.at(name, drawn[name])
            if not values.names:
                continue
            flat = np.cumsum(values.values.ravel())
            place = int(np.searchsorted(flat, rng.random() * flat[-1], side="right"))
            place = min(place, flat.size - 1)
            for name, value in zip(
                values.names, np.unravel_index(place, values.values.shape), strict=True
            ):
                drawn[name] = int(value)
        return drawn


def tree_of(scopes: Sequence[tuple[int, ...]], lengths: Sequence[int]) -> Tree:
    """A tree of groups such that the names of every table stand in one group.

    Parameters
    ----------
    scopes : the names of every table, in the order in which `Tree.run` gets them
    lengths : number of values of each unknown, by its number
    """
    leaves = leaves_of(scopes)
    taken = set(leaves.values())
    core = [tuple(name for name in scope if name not in taken) for scope in scopes]
    groups, home = _core(core, lengths)
    held_by: dict[int, list[int]] = {}
    for at, group in enumerate(groups):
        for name in group.names:
            held_by.setdefault(name, []).append(at)

    def place_of(scope: tuple[int, ...]) -> int:
        if not scope:
            return -1
        rarest = min((held_by[name] for name in scope), key=len)
        wanted = set(scope)
        return next(at for at in rarest if wanted <= set(groups[at].names))

    on_leaf: dict[int, int] = {}
    for number, name in leaves.items():
        above = core[number]
        home[name] = on_leaf[name] = len(groups)
        groups.append(Group((*above, name), place_of(above), above, [number]))
    for number, scope in enumerate(scopes):
        if number in leaves:
            continue
        if len(scope) == 1 and scope[0] in on_leaf:
            groups[on_leaf[scope[0]]].tables.append(number)
        elif scope:
            groups[place_of(scope)].tables.append(number)
        elif not groups:
            groups.append(Group((), -1, (), [number]))
        else:
            groups[0].tables.append(number)
    return Tree(lengths, groups, home)


def leaves_of(scopes: Sequence[tuple[int, ...]]) -> dict[int, int]:
    """Table number to its last name, where that name stands in no other table of several names."""
    seen: dict[int, int] = {}
    for scope in scopes:
        if len(scope) > 1:
            for name in scope:
                seen[name] = seen.get(name, 0) + 1
    return {
        number: scope[-1]
        for number, scope in enumerate(scopes)
        if len(scope) > 1 and seen[scope[-1]] == 1
    }


def _core(
    scopes: Iterable[tuple[int, ...]], lengths: Sequence[int]
) -> tuple[list[Group], dict[int, int]]:
    """Groups of the unknowns that are left, and a group that holds each of them."""
    import networkx as nx

    graph = nx.Graph()
    for scope in scopes:
        graph.add_nodes_from(scope)
        graph.add_edges_from((a, b) for at, a in enumerate(scope) for b in scope[:at])
    groups: list[Group] = []
    home: dict[int, int] = {}
    for part in nx.connected_components(graph):
        bags = _bag_tree(graph.subgraph(part), lengths)
        root = next(iter(bags))
        place: dict[frozenset[int], int] = {}
        for bag, above in [(root, None), *((b, a) for a, b in nx.bfs_edges(bags, root))]:
            parent = -1 if above is None else place[above]
            shared = () if above is None else tuple(sorted(bag & above))
            place[bag] = at = len(groups)
            groups.append(Group(tuple(sorted(bag)), parent, shared))
            for name in bag:
                home.setdefault(name, at)
    return groups, home


def _bag_tree(graph: Any, lengths: Sequence[int]) -> Any:
    """NetworkX's tree of groups with the smaller tables."""
    from networkx.algorithms.approximation import treewidth_min_degree, treewidth_min_fill_in

    ways = [treewidth_min_degree]
    if len(graph) <= _MOST_FOR_FILL:
        ways.append(treewidth_min_fill_in)
    trees = [way(graph)[1] for way in ways]
    return min(trees, key=lambda tree: sum(size(lengths[n] for n in bag) for bag in tree))


def reduced(tables: Sequence[Table], fixed: Mapping[int, int]) -> list[Table]:
    """The tables with some unknowns held at a value."""
    found = []
    for table in tables:
        for name in table.names:
            if name in fixed:
                table = table.at(name, fixed[name])
        found.append(table)
    return found
