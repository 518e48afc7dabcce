"""Parentage with multiplication signs and brackets, as in '(A × B) × C', read and written.

In formulae of hybrids the names may stand in alphabetical order; a direction is told by the signs ♀
and ♂ or by putting the seed parent first and saying so (International Code of Botanical
Nomenclature, St Louis, Art. H.2 and Rec. H.2A.1, read; the cultivated-plant code itself was not at
hand).  So 'A × B' alone tells no direction, and what is written here says its order.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Literal

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.parentage_tree import Crossed, Named, Tree, leaf_count, parts
from pedigreeview.exchange.slash_notation import MOST_NAMES

__all__ = ["Order", "is_crossed", "parse", "write"]

Order = Literal["seed parent first", "alphabetical"]

# Blanks are looked at from their first on, so that a long run of them is not tried at each.
_TIMES = re.compile(r"(?<!\s)\s+×\s*|×\s*|(?<!\s)\s+[xX✕✖]\s+|(?<!\s)\s+\*\s+")
_SIGNED = re.compile(r"(?<!\s)\s+[♀♂]\s*|[♀♂]\s*")
_LONGEST = 200_000


def is_crossed(text: str) -> bool:
    """Whether a text has a multiplication sign (×, or x between blanks) in it."""
    return _TIMES.search(text) is not None


def _fault(what: str, todo: str) -> Fault:
    return Fault(what, Place(), todo)


@dataclass(slots=True)
class _Side:
    tree: Tree
    sign: str = ""


@dataclass(slots=True)
class _Frame:
    """What stands between one pair of brackets, as far as it was read."""

    sides: list[_Side] = field(default_factory=list)
    text: str = ""
    tree: Tree | None = None


def _side(frame: _Frame) -> _Side:
    signs = [sign for sign in frame.text if sign in "♀♂"]
    name = _SIGNED.sub(" ", frame.text).strip()
    if len(set(signs)) > 1:
        raise _fault(f"{name!r} has both signs ♀ and ♂.", "Leave the one that is right.")
    sign = signs[0] if signs else ""
    if frame.tree is not None:
        if name:
            raise _fault(
                f"{name!r} stands beside brackets without a sign between them.",
                "Put a × between the two parents.",
            )
        return _Side(frame.tree, sign)
    if not name:
        raise _fault(
            "A × has no name beside it.", "Write a name on both sides; '?' where it is not known."
        )
    return _Side(Named(name), sign)


def _closed(frame: _Frame, *, seed_parent_first: bool) -> Tree:
    frame.sides.append(_side(frame))
    if len(frame.sides) > 2:
        raise _fault(
            "Three names stand side by side, so it is not clear which cross came first.",
            "Put brackets round the earlier cross, as in (A × B) × C.",
        )
    if len(frame.sides) == 1:
        return frame.sides[0].tree
    one, two = frame.sides
    if one.sign and one.sign == two.sign:
        raise _fault(f"Both parents have the sign {one.sign}.", "Mark the seed parent with ♀.")
    if one.sign == "♂" or two.sign == "♀":
        return Crossed(two.tree, one.tree)
    known = seed_parent_first or bool(one.sign or two.sign)
    return Crossed(one.tree, two.tree, known)


def _groups(text: str) -> dict[int, int]:
    """Where each bracket that holds a cross opens and closes; others belong to a name."""
    crosses = [found.start() for found in _TIMES.finditer(text)]
    opened: list[int] = []
    groups: dict[int, int] = {}
    for at, sign in enumerate(text):
        if sign in "([":
            opened.append(at)
        elif sign in ")]":
            if not opened:
                raise _fault("A bracket is closed that was not opened.", "Correct the brackets.")
            groups[opened.pop()] = at
    if opened:
        raise _fault("A bracket is opened and not closed.", "Close it after the cross.")
    # Sorted, so that one look to the left tells whether a sign lies inside.
    from bisect import bisect_left

    return {
        start: end
        for start, end in groups.items()
        if bisect_left(crosses, start) < bisect_left(crosses, end)
    }


def parse(text: str, *, seed_parent_first: bool = False) -> Tree:
    """The parentage that a text with multiplication signs says.

    Parameters
    ----------
    text : such as 'A × B', 'A x (B x C)', 'A ♂ × B ♀'
    seed_parent_first : whether the source is known to name the seed parent first; without that and
        without signs the direction of a cross is not known

    Raises
    ------
    Fault : a name is missing, brackets do not match, or three names stand side by side
    """
    if len(text) > _LONGEST:
        raise _fault("The parentage is too long to be one.", "Check the cell.")
    groups = _groups(text)
    ends = set(groups.values())
    frames = [_Frame()]
    at = 0
    while at < len(text):
        frame = frames[-1]
        times = _TIMES.match(text, at)
        if at in groups:
            frames.append(_Frame())
        elif at in ends:
            tree = _closed(frames.pop(), seed_parent_first=seed_parent_first)
            if frames[-1].tree is not None:
                raise _fault("Two brackets stand side by side.", "Put a × between them.")
            frames[-1].tree = tree
        elif times is not None:
            frame.sides.append(_side(frame))
            frame.text, frame.tree = "", None
            at = times.end()
            continue
        else:
            frame.text += text[at]
        at += 1
    return _closed(frames[0], seed_parent_first=seed_parent_first)


def write(tree: Tree, *, order: Order = "seed parent first", signs: bool = False) -> str:
    """A tree with multiplication signs, a bracket round every earlier cross.

    Parameters
    ----------
    tree : the parentage
    order : 'seed parent first', or 'alphabetical' as for a formula that tells no direction; a cross
        whose direction is not known stands in alphabetical order either way
    signs : mark the parents of the latest cross with ♀ and ♂, where its direction is known

    Raises
    ------
    Fault : more than 4,000 names would have to be written
    """
    if leaf_count(tree) > MOST_NAMES:
        raise _fault(
            f"The parentage would name more than {MOST_NAMES} plants.",
            "Write it down to fewer generations.",
        )
    text: dict[int, str] = {}
    for part in parts(tree):
        if isinstance(part, Named):
            text[id(part)] = part.name
            continue
        sides = [
            text[id(side)] if isinstance(side, Named) else f"({text[id(side)]})"
            for side in (part.seed, part.pollen)
        ]
        known = part.direction_known
        if signs and part is tree and known:
            sides = [f"{sides[0]} ♀", f"{sides[1]} ♂"]
        if order == "alphabetical" or not known:
            sides.sort(key=lambda side: side.strip("([").casefold())
        text[id(part)] = " × ".join(sides)
    return text[id(tree)]
