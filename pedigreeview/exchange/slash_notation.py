"""Slash notation of cereal breeders, read and written.

`/` stands between the parents of the earliest cross, `//` or `/2/` between those of the next, `/3/`
of the third, and so on: the highest mark is the latest cross.  The seed parent stands left.  A star
with a number counts the doses of a recurrent parent and stands next to its name, on either side of
the mark: `A*3/B` and `B/3*A` are the cross and two backcrosses, in the first A is always the seed
parent, in the second always the pollen parent.

Set out by Purdy L. H. and co-workers 1968, Crop Science 8:405-406 (from memory; the rules here are
those of a guide that follows it: Kephart K. D. 1993, Commercial Wheat Cultivars of the United
States, section on cultivar pedigrees, read).
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.parentage_tree import Crossed, Named, Tree, leaf_count, parts

__all__ = ["MOST_DOSES", "MOST_NAMES", "is_slash", "parse", "plain_name", "write"]

MOST_DOSES = 100
"""Doses of a recurrent parent that are read; more are taken for a slip of the pen."""

MOST_NAMES = 4_000
"""Names that are written into one text."""

_MARK = re.compile(r"/([0-9]{1,4})/|/+")
_BEFORE = re.compile(r"([0-9]{1,4})\s*\*\s*(.+)\Z", re.S)
_DOSES = re.compile(r"[0-9]{1,4}\Z")
_LONGEST = 200_000
# Marks are never written into a name; these look the same to a reader and part nothing.
_STAND_INS = {"/": "\u2215", "*": "\u2217"}


def is_slash(text: str) -> bool:
    """Whether a text has a mark of slash notation in it."""
    return "/" in text


def _fault(what: str, todo: str) -> Fault:
    return Fault(what, Place(), todo)


@dataclass(slots=True)
class _Operand:
    tree: Tree
    doses: int = 0
    """0 without a star."""


def _operand(text: str) -> _Operand:
    text = text.strip()
    if not text:
        raise _fault(
            "A mark of the notation has no name beside it.",
            "Write a name on both sides of every mark; '?' for a parent that is not known.",
        )
    before = _BEFORE.match(text)
    # Cut at the star, for a pattern would try every one of many blanks before it.
    head, _, tail = text.rpartition("*")
    head, tail = head.rstrip(), tail.lstrip()
    after = bool(head) and _DOSES.match(tail) is not None
    if before and after and before[2] == tail:
        raise _fault(
            f"{text!r} may mean doses of either number.", "Write the name with a letter in it."
        )
    if before:
        doses, name = int(before[1]), before[2].strip()
    elif after:
        doses, name = int(tail), head
    else:
        doses, name = 0, text
    if "*" in name:
        raise _fault(f"{text!r} has a star that counts no doses.", "Write it as NAME*3 or 3*NAME.")
    if (before or after) and not 1 <= doses <= MOST_DOSES:
        raise _fault(
            f"{text!r} has {doses} doses.", f"Write a number of doses from 1 to {MOST_DOSES}."
        )
    return _Operand(Named(name), doses)


def _crossed(left: _Operand, right: _Operand) -> _Operand:
    if left.doses > 1 and right.doses > 1:
        raise _fault(
            "Both sides of one mark have a star, so it is not clear which parent recurs.",
            "Leave the star beside the recurrent parent alone.",
        )
    tree: Tree
    if left.doses > 1:
        tree = right.tree
        for _ in range(left.doses):
            tree = Crossed(left.tree, tree)
    else:
        tree = left.tree
        for _ in range(max(right.doses, 1)):
            tree = Crossed(tree, right.tree)
    return _Operand(tree)


def _brackets(text: str) -> None:
    depth = 0
    for sign in text:
        depth += (sign == "(") - (sign == ")")
        if sign == "/" and depth > 0:
            raise _fault(
                "A mark stands inside brackets, which slash notation does not have.",
                "Take the brackets out and give the later cross the higher mark, as in A//B/C.",
            )


def parse(text: str) -> Tree:
    """The parentage that a text in slash notation says.

    Raises
    ------
    Fault : a name is missing, two marks of one height leave the order of the crosses open, or a
        star cannot be placed
    """
    if len(text) > _LONGEST:
        raise _fault("The notation is too long to be one.", "Check the cell.")
    _brackets(text)
    operands: list[_Operand] = []
    heights: list[int] = []
    at = 0

    def close(height: int) -> None:
        # Marks that are lower than the coming one belong to earlier crosses.
        while heights and heights[-1] < height:
            heights.pop()
            right = operands.pop()
            operands.append(_crossed(operands.pop(), right))

    for mark in _MARK.finditer(text):
        operands.append(_operand(text[at : mark.start()]))
        at = mark.end()
        height = int(mark[1]) if mark[1] else len(mark[0])
        if height < 1:
            raise _fault(f"The mark {mark[0]!r} has no height.", "Write / for the first cross.")
        close(height)
        if heights and heights[-1] == height:
            raise _fault(
                f"Two marks {mark[0]!r} of one height leave open which cross came first.",
                "Give the later cross the higher mark, as in A/B//C.",
            )
        heights.append(height)
    operands.append(_operand(text[at:]))
    if len(operands) == 1 and operands[0].doses:
        raise _fault(
            f"{text.strip()!r} has a star but no cross.", "Write both parents, as in A*3/B."
        )
    close(max(heights, default=0) + 1)
    return operands[0].tree


def plain_name(name: str) -> str:
    """A name as it can stand in the notation: with signs that look like '/' and '*' for these."""
    return "".join(_STAND_INS.get(sign, sign) for sign in name).strip() or "?"


def _mark(height: int, blank: str) -> str:
    mark = "/" * height if height < 3 else f"/{height}/"
    return f"{blank}{mark}{blank}"


@dataclass(slots=True)
class _Chain:
    """Doses of one name on one side, over what it was crossed with first."""

    name: str = ""
    doses: int = 1
    left: bool = True
    base: Tree | None = None


def _chain(node: Crossed, written: dict[str, str]) -> _Chain:
    for left in (True, False):
        found = _Chain(left=left)
        part: Tree = node
        while isinstance(part, Crossed):
            name, rest = (part.seed, part.pollen) if left else (part.pollen, part.seed)
            if not isinstance(name, Named) or (found.name and name.name != found.name):
                break
            found.doses = found.doses + 1 if found.name else 1
            found.name, found.base, part = name.name, rest, rest
            if found.doses == MOST_DOSES:
                break
        if found.name and found.doses > 1 and not written[found.name].isdecimal():
            return found
    return _Chain()


def write(tree: Tree) -> str:
    """A tree in slash notation, with stars for recurrent parents.

    Raises
    ------
    Fault : more than `MOST_NAMES` names would have to be written
    """
    if leaf_count(tree) > MOST_NAMES:
        raise _fault(
            f"The notation would name more than {MOST_NAMES} plants.",
            "Write it down to fewer generations.",
        )
    held = parts(tree)
    written = {part.name: plain_name(part.name) for part in held if isinstance(part, Named)}
    # '/5/' is a mark; with blanks round the marks a name of digits stays a name.
    blank = " " if any(name.isdecimal() for name in written.values()) else ""
    text: dict[int, str] = {}
    height: dict[int, int] = {}
    for part in held:
        if isinstance(part, Named):
            text[id(part)], height[id(part)] = written[part.name], 0
            continue
        chain = _chain(part, written)
        if chain.base is not None:
            name, base = written[chain.name], text[id(chain.base)]
            height[id(part)] = height[id(chain.base)] + 1
            mark = _mark(height[id(part)], blank)
            text[id(part)] = (
                f"{name}*{chain.doses}{mark}{base}"
                if chain.left
                else f"{base}{mark}{chain.doses}*{name}"
            )
            continue
        height[id(part)] = max(height[id(part.seed)], height[id(part.pollen)]) + 1
        mark = _mark(height[id(part)], blank)
        text[id(part)] = f"{text[id(part.seed)]}{mark}{text[id(part.pollen)]}"
    return text[id(tree)]
