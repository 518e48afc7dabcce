"""Both parents in one cell: 'A x B', 'A / B', slash notation, 'A selfed', 'A OP'."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from pedigreeview.exchange import cross_notation, slash_notation
from pedigreeview.exchange.parentage_tree import Crossed, Named, Tree, parts

__all__ = ["CellParents", "code_of", "inner_crosses", "read_cell"]

# What stands at the end of a cell, behind a name.
_SELFED = re.compile(r"(?:⊗|\(x\)|\bselfed|\bselfing|\bself|\bgeselbstet|\bselbst)\Z", re.I)
_OPEN = re.compile(r"(?:○|\bo\.?p\.?|\bopen(?:[ -]pollinated)?|\bbees?)\Z", re.I)


@dataclass(frozen=True, slots=True)
class CellParents:
    """What a cell says of the parents.

    seed, pollen : trees, or None where there is none
    intended : 'cross', 'selfing' or 'open'
    direction_known : whether the first is known to be the seed parent
    """

    seed: Tree | None
    pollen: Tree | None
    intended: str = "cross"
    direction_known: bool = True


def read_cell(text: str, *, seed_parent_first: bool) -> CellParents:
    """The parents that a cell names.

    Parameters
    ----------
    text : not blank
    seed_parent_first : whether the source is known to put the seed parent first; without it and
        without the signs ♀ and ♂ the direction of a cross is not known

    Raises
    ------
    Fault : it cannot be read as parents
    """
    text = text.strip()
    found = _SELFED.search(text, 1)
    if found and not cross_notation.is_crossed(text):
        selfed = _named(text[: found.start()], seed_parent_first)
        return CellParents(selfed, selfed, "selfing")
    found = _OPEN.search(text, 1)
    if found and not cross_notation.is_crossed(text) and "/" not in text:
        return CellParents(_named(text[: found.start()], seed_parent_first), None, "open")
    tree = _tree(text, seed_parent_first)
    if isinstance(tree, Named):
        # One name alone: what it was crossed with is not said, nor on which side it stood.
        return CellParents(tree, None, "unknown", seed_parent_first)
    intended = "cross"
    if (
        isinstance(tree.seed, Named)
        and isinstance(tree.pollen, Named)
        and tree.seed.name == tree.pollen.name
    ):
        intended = "selfing"
    known = tree.direction_known or intended == "selfing"
    return CellParents(tree.seed, tree.pollen, intended, known)


def _tree(text: str, seed_parent_first: bool) -> Tree:
    if cross_notation.is_crossed(text):
        return cross_notation.parse(text, seed_parent_first=seed_parent_first)
    if slash_notation.is_slash(text):
        tree = slash_notation.parse(text)
        return tree if seed_parent_first else _without_direction(tree)
    return Named(text)


def _named(text: str, seed_parent_first: bool) -> Tree:
    text = text.strip()
    if text.startswith("(") and text.endswith(")"):
        text = text[1:-1]
    return _tree(text, seed_parent_first)


def _without_direction(tree: Tree) -> Tree:
    made: dict[int, Tree] = {}
    for part in parts(tree):
        made[id(part)] = (
            part
            if isinstance(part, Named)
            else Crossed(made[id(part.seed)], made[id(part.pollen)], False)
        )
    return made[id(tree)]


def code_of(tree: Tree, same: Mapping[str, str]) -> str:
    """The code of what a tree stands for: its name, or for a cross its text in slash notation."""
    if isinstance(tree, Named):
        return same.get(tree.name, tree.name)
    made: dict[int, Tree] = {}
    for part in parts(tree):
        if isinstance(part, Named):
            made[id(part)] = Named(same.get(part.name, part.name))
        else:
            made[id(part)] = Crossed(
                made[id(part.seed)], made[id(part.pollen)], part.direction_known
            )
    return slash_notation.write(made[id(tree)])


def inner_crosses(tree: Tree | None) -> list[Crossed]:
    """The crosses inside a parent, earliest first, each of which is a plant without a row."""
    return [] if tree is None else [part for part in parts(tree) if isinstance(part, Crossed)]
