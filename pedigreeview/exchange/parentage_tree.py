"""Parentage as a tree: what a notation says, before it becomes records.

A tree is a name, or a cross of two trees with the seed parent first.  Parts may be shared (a
recurrent parent's doses are), so every walk goes over distinct parts and never recurses: a notation
may be thousands of crosses deep.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

__all__ = [
    "OPEN",
    "UNKNOWN",
    "Crossed",
    "Named",
    "Tree",
    "alike",
    "leaf_count",
    "outline",
    "parts",
    "shares",
]

UNKNOWN = "?"
"""The name that stands for a parent nobody knows."""

OPEN = "OP"
"""The name that stands for the pollen of an open pollination."""


@dataclass(frozen=True, slots=True, eq=False)
class Named:
    """A plant or variety that is not taken further."""

    name: str


@dataclass(frozen=True, slots=True, eq=False, repr=False)
class Crossed:
    """A cross; `direction_known` says whether `seed` is known to be the seed parent."""

    seed: Named | Crossed
    pollen: Named | Crossed
    direction_known: bool = True


Tree = Named | Crossed


def parts(tree: Tree) -> list[Tree]:
    """Every distinct part of a tree once, parents before what came of them."""
    found: list[Tree] = []
    seen: set[int] = set()
    waiting: list[tuple[Tree, bool]] = [(tree, False)]
    while waiting:
        part, ready = waiting.pop()
        if ready:
            found.append(part)
            continue
        if id(part) in seen:
            continue
        seen.add(id(part))
        waiting.append((part, True))
        if isinstance(part, Crossed):
            waiting.append((part.pollen, False))
            waiting.append((part.seed, False))
    return found


def numbered(tree: Tree, numbers: dict[object, int] | None = None) -> dict[int, int]:
    """A number for every part by its `id`, the same for parts that say the same."""
    numbers = {} if numbers is None else numbers
    of: dict[int, int] = {}
    for part in parts(tree):
        key: object
        if isinstance(part, Named):
            key = part.name
        else:
            key = (of[id(part.seed)], of[id(part.pollen)], part.direction_known)
        of[id(part)] = numbers.setdefault(key, len(numbers))
    return of


def alike(one: Tree, other: Tree) -> bool:
    """Whether two trees say the same."""
    numbers: dict[object, int] = {}
    return numbered(one, numbers)[id(one)] == numbered(other, numbers)[id(other)]


def leaf_count(tree: Tree) -> int:
    """How many names the tree has when it is written out in full."""
    count: dict[int, int] = {}
    for part in parts(tree):
        count[id(part)] = (
            1 if isinstance(part, Named) else count[id(part.seed)] + count[id(part.pollen)]
        )
    return count[id(tree)]


def shares(tree: Tree) -> dict[str, Fraction]:
    """The mean share of the inheritance that each name brings: half by each parent of a cross."""
    weight = {id(tree): Fraction(1)}
    found: dict[str, Fraction] = {}
    for part in reversed(parts(tree)):
        held = weight[id(part)]
        if isinstance(part, Named):
            found[part.name] = found.get(part.name, Fraction(0)) + held
            continue
        for parent in (part.seed, part.pollen):
            weight[id(parent)] = weight.get(id(parent), Fraction(0)) + held / 2
    return found


def outline(tree: Tree) -> str:
    """The tree with a bracket round every cross, as in '((A x B) x C)'."""
    text: dict[int, str] = {}
    for part in parts(tree):
        text[id(part)] = (
            part.name
            if isinstance(part, Named)
            else f"({text[id(part.seed)]} x {text[id(part.pollen)]})"
        )
    return text[id(tree)]
