"""Parents before progeny, and the impossible loops that stand in the way of such an order."""

from __future__ import annotations

from collections import deque
from typing import TYPE_CHECKING

import numpy as np

from pedigreeview.network.parentage import Parents
from pedigreeview.network.sweeps import COMPILED_FROM, IntArray

if TYPE_CHECKING:
    import networkx as nx

__all__ = ["downstream", "parents_first", "places_parents_first", "shortest_cycles"]


def parents_first(parents: dict[str, Parents]) -> tuple[list[str], list[str]]:
    """Order the plants so that parents come first.

    Returns
    -------
    ordered : as near to the book's own order as the parents allow
    tied : plants in a loop, or that descend from one, in the book's order
    """
    waiting: dict[str, int] = {}
    progeny: dict[str, list[str]] = {}
    for code, origin in parents.items():
        waiting[code] = len(origin.codes)
        for parent in origin.codes:
            progeny.setdefault(parent, []).append(code)
    ready = deque(code for code, count in waiting.items() if count == 0)
    ordered = []
    while ready:
        code = ready.popleft()
        ordered.append(code)
        for child in progeny.get(code, ()):
            waiting[child] -= 1
            if waiting[child] == 0:
                ready.append(child)
    placed = set(ordered)
    return ordered, [code for code in parents if code not in placed]


def places_parents_first(first: IntArray, second: IntArray) -> tuple[IntArray, IntArray]:
    """The order of `parents_first` for plants given by place.

    Parameters
    ----------
    first, second : (n,) places of the two distinct parents of each plant, −1 for none
    """
    from pedigreeview.network import kernels

    count = len(first)
    if count >= COMPILED_FROM and kernels.available():
        order = kernels.compiled().parents_first(first, second)
    else:
        children = np.concatenate((np.flatnonzero(first >= 0), np.flatnonzero(second >= 0)))
        of_parent = np.concatenate((first[first >= 0], second[second >= 0]))
        waiting = (first >= 0).astype(np.int64) + (second >= 0)
        progeny = children[np.lexsort((children, of_parent))].tolist()
        starts = np.zeros(count + 1, np.int64)
        np.cumsum(np.bincount(of_parent, minlength=count), out=starts[1:])
        begins, left = starts.tolist(), waiting.tolist()
        ready = np.flatnonzero(waiting == 0).tolist()
        for place in ready:
            for child in progeny[begins[place] : begins[place + 1]]:
                left[child] -= 1
                if left[child] == 0:
                    ready.append(child)
        order = np.array(ready, np.int64)
    tied = np.ones(count, bool)
    tied[order] = False
    return order, np.flatnonzero(tied)


def downstream(parents: dict[str, Parents], sources: set[str]) -> set[str]:
    """The plants in `sources` and all their descendants."""
    progeny: dict[str, list[str]] = {}
    for code, origin in parents.items():
        for parent in origin.codes:
            progeny.setdefault(parent, []).append(code)
    found = set(sources)
    ahead = list(sources)
    while ahead:
        for child in progeny.get(ahead.pop(), ()):
            if child not in found:
                found.add(child)
                ahead.append(child)
    return found


def shortest_cycles(parents: dict[str, Parents], tied: list[str]) -> list[tuple[str, ...]]:
    """One shortest cycle for each knot of plants that are ancestors of each other.

    Each cycle runs from parent to progeny, starts at its plant that stands first in the book and
    does not repeat it at the end.
    """
    if not tied:
        return []
    import networkx as nx

    among = set(tied)
    graph = nx.DiGraph()
    graph.add_nodes_from(tied)
    for code in tied:
        graph.add_edges_from((parent, code) for parent in parents[code].codes if parent in among)
    place = {code: index for index, code in enumerate(tied)}
    cycles = []
    for knot in nx.strongly_connected_components(graph):
        if len(knot) == 1 and not graph.has_edge(*(2 * tuple(knot))):
            continue
        inside = graph.subgraph(knot)
        cycles.append(_shortest(inside, sorted(knot, key=place.__getitem__), place))
    return sorted(cycles, key=lambda cycle: place[cycle[0]])


def _shortest(graph: nx.DiGraph, members: list[str], place: dict[str, int]) -> tuple[str, ...]:
    best: list[str] | None = None
    progeny = {code: sorted(graph.successors(code)) for code in members}
    # Looking from 200 starts is enough to name a short loop in a knot of any size.
    for start in members[:200]:
        found = _back_to(progeny, start, len(best) if best else len(members) + 1)
        if found is not None and (best is None or len(found) < len(best)):
            best = found
    assert best is not None
    first = min(range(len(best)), key=lambda index: place[best[index]])
    return tuple(best[first:] + best[:first])


def _back_to(progeny: dict[str, list[str]], start: str, below: int) -> list[str] | None:
    """Shortest way from `start` back to itself, or None if not shorter than `below`."""
    came: dict[str, str] = {}
    ring, length = [start], 1
    while ring and length < below:
        ahead = []
        for node in ring:
            for child in progeny[node]:
                if child == start:
                    way = [node]
                    while way[-1] != start:
                        way.append(came[way[-1]])
                    return way[::-1]
                if child not in came:
                    came[child] = node
                    ahead.append(child)
        ring, length = ahead, length + 1
    return None
