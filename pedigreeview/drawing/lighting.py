"""Which blocks and lines lie on given lines of descent.  Knows no Qt."""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pedigreeview.drawing.placing import Placed

__all__ = ["Lit", "light"]


@dataclass(frozen=True, slots=True)
class Lit:
    """Keys of blocks, and links as (above, below, role, knot)."""

    blocks: frozenset[str]
    links: frozenset[tuple[str, str, str, str]]


def light(placed: Placed, paths: Iterable[Sequence[str]]) -> Lit:
    """The lit part of a picture.

    paths : codes of plants, each a parent or progeny of the one before it
    """
    up: dict[str, list[tuple[str, str, str, str]]] = defaultdict(list)
    from_knot: dict[str, list[tuple[str, str, str, str]]] = defaultdict(list)
    for line in placed.lines:
        for link, _ in line.routes:
            key = (link.above, link.below, link.role, link.knot)
            if link.role == "progeny":
                from_knot[link.below].append(key)
            else:
                up[link.knot].append(key)
    blocks: set[str] = set()
    links: set[tuple[str, str, str, str]] = set()
    for path in paths:
        keys = [placed.view.block_of(code) for code in path]
        blocks.update(key for key in keys if key)
        for one, other in itertools.pairwise(keys):
            for parent, child in ((one, other), (other, one)):
                for down in from_knot.get(child, ()):
                    ways = [way for way in up[down[3]] if way[0] == parent]
                    if ways:
                        links.update((down, *ways))
                        blocks.add(down[0])
    return Lit(frozenset(blocks), frozenset(links))
