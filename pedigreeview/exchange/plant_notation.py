"""The parentage of a plant as one line of text, for a label or a letter.

A text doubles with every generation, so it goes down to the nearest named varieties, and no further
than a given number of names; what it leaves out is said beside it.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Literal

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import Plant
from pedigreeview.exchange import cross_notation, slash_notation
from pedigreeview.exchange.cells import did_you_mean
from pedigreeview.exchange.parentage_tree import OPEN, UNKNOWN, Crossed, Named, Tree

if TYPE_CHECKING:
    from pedigreeview.network import Parents

__all__ = ["STYLES", "Notation", "Style", "notation_of"]

Style = Literal["slash", "cross", "alphabetical"]

STYLES: dict[str, str] = {
    "slash": "slash notation of cereal breeders, the seed parent left",
    "cross": "multiplication signs, the seed parent first",
    "alphabetical": "multiplication signs, in alphabetical order",
}
"""Every way of writing, with its description."""

_SHOWN = 8


@dataclass(frozen=True, slots=True)
class Notation:
    """A line of text, and what it leaves out or takes for granted, one sentence each."""

    text: str
    said: tuple[str, ...] = ()


@dataclass(slots=True)
class _Origin:
    """What a plant is in the tree: a name, the same as another plant, or a cross."""

    seed: str = ""
    pollen: str = ""
    same_as: str = ""
    direction_known: bool = True


@dataclass(slots=True)
class _Writer:
    book: Book
    root: str
    names: bool
    parents: dict[str, Parents]
    origins: dict[str, _Origin] = field(default_factory=dict)
    stopped: dict[str, None] = field(default_factory=dict)
    selfed: bool = False
    opened: bool = False
    sourced: bool = False
    unsure: dict[str, None] = field(default_factory=dict)
    unknown: bool = False

    def label(self, code: str) -> str:
        plant = self.book.plants[code]
        return plant.name if self.names and plant.name else code

    def origin(self, code: str) -> _Origin:
        """The origin of a plant that is taken further; an empty one for a name."""
        if code not in self.origins:
            self.origins[code] = self._origin(self.book.plants[code])
        return self.origins[code]

    def _origin(self, plant: Plant) -> _Origin:
        held = self.parents[plant.plant]
        if held.raised == "founder":
            return _Origin()
        if self.book.kind(plant) == "variety" and plant.plant != self.root:
            self.stopped[plant.plant] = None
            return _Origin()
        if held.source:
            self.sourced = True
            return _Origin(same_as=held.source)
        if held.selfed:
            self.selfed = True
            return _Origin(same_as=held.seed_parent)
        if held.selfings:
            self.selfed = True
        if not held.seed_parent and not held.pollen:
            return _Origin()
        pollen = held.pollen_parent
        if not pollen:
            cross = self.book.crosses.get(held.cross)
            if held.pollen and not held.by_rate:
                self.unsure[plant.plant] = None
                pollen = UNKNOWN
            elif cross is not None and cross.intended == "open":
                self.opened = True
                pollen = OPEN
            else:
                self.unknown = True
                pollen = UNKNOWN
            pollen = f"\0{pollen}"
        if not held.seed_parent:
            self.unknown = True
        known = held.cross not in self.book.crosses or (
            self.book.crosses[held.cross].direction_known
        )
        return _Origin(held.seed_parent or f"\0{UNKNOWN}", pollen, "", known)

    def resolved(self, code: str) -> tuple[str, _Origin]:
        """The plant that a code stands for in the text, past selfings and sources."""
        seen = {code}
        while not code.startswith("\0") and self.origin(code).same_as:
            code = self.origin(code).same_as
            if code in seen:
                raise _loop(code)
            seen.add(code)
        return code, _Origin() if code.startswith("\0") else self.origin(code)

    def depth_within(self, most: int) -> tuple[int, bool]:
        """Generations that can be written with at most so many names, and whether that is all."""
        names, depth = 0, 0
        row: Counter[str] = Counter({self.resolved(self.root)[0]: 1})
        most_deep = len(self.book.plants) + 1
        while True:
            below: Counter[str] = Counter()
            for code, count in row.items():
                origin = self.resolved(code)[1]
                if origin.seed:
                    for parent in (origin.seed, origin.pollen):
                        below[self.resolved(parent)[0]] += count
                else:
                    names += count
            if not below:
                return depth, True
            if names + below.total() > most:
                return depth, False
            depth += 1
            if depth > most_deep:
                raise _loop(self.root)
            row = below

    def tree(self, depth: int) -> Tree:
        made: dict[tuple[str, int], Tree] = {}
        start = (self.resolved(self.root)[0], depth)
        waiting = [start]
        while waiting:
            key = waiting[-1]
            if key in made:
                waiting.pop()
                continue
            code, left = key
            if code.startswith("\0"):
                made[key] = Named(code[1:])
                continue
            origin = self.resolved(code)[1]
            if not origin.seed or left == 0:
                made[key] = Named(self.label(code))
                continue
            keys = [(self.resolved(parent)[0], left - 1) for parent in (origin.seed, origin.pollen)]
            missing = [other for other in keys if other not in made]
            if missing:
                waiting += missing
                continue
            made[key] = Crossed(made[keys[0]], made[keys[1]], origin.direction_known)
        return made[start]

    def ends(self, depth: int) -> list[str]:
        """Plants at which the text stops although their parents are recorded."""
        row = {self.resolved(self.root)[0]}
        for _ in range(depth):
            row = {
                self.resolved(parent)[0]
                for code in row
                if (origin := self.resolved(code)[1]).seed
                for parent in (origin.seed, origin.pollen)
            }
        return sorted(code for code in row if self.resolved(code)[1].seed)


def _loop(code: str) -> Fault:
    return Fault(
        f"{code!r} is among its own ancestors, so its parentage cannot be written.",
        Place(plant=code),
        "See the problems of the book for the place and the mend.",
    )


def _shown(codes: list[str]) -> str:
    more = f" and {len(codes) - _SHOWN} more" if len(codes) > _SHOWN else ""
    return ", ".join(codes[:_SHOWN]) + more


def notation_of(
    book: Book | Any,
    code: str,
    style: Style = "slash",
    *,
    names: bool = False,
    most: int = 64,
    parents: dict[str, Parents] | None = None,
) -> Notation:
    """The parentage of a plant as text.

    Parameters
    ----------
    book : a Book, or a network whose `book` is taken
    code : the plant
    style : one of `STYLES`
    names : whether a plant that has a name is written by it rather than by its code
    most : how many names the text may have; it goes down as many whole generations as fit
    parents : those of the whole book (`parents_by_plant`), where many plants are asked for in turn

    Returns
    -------
    the text with sentences on what it leaves out

    Raises
    ------
    Fault : there is no such plant, or it is among its own ancestors
    ValueError : the style is none of ours
    """
    if style not in STYLES:
        raise ValueError(f"style is one of {', '.join(STYLES)}, not {style!r}")
    held: Book = book if isinstance(book, Book) else book.book
    if code not in held.plants:
        raise Fault(
            f"There is no plant {code!r} in this book.",
            Place(plant=code),
            did_you_mean(code, held.plants) or "Check the code.",
        )
    if parents is None:
        from pedigreeview.network.parentage import parents_by_plant

        parents = parents_by_plant(held)
    writer = _Writer(held, code, names, parents)
    depth, whole = writer.depth_within(max(most, 2))
    ends = [] if whole else writer.ends(depth)
    tree = writer.tree(depth)
    said = _said(writer, whole, depth, ends)
    if style == "slash":
        odd = sorted({p for p in _labels(tree) if slash_notation.plain_name(p) != p})
        if odd:
            said.append(
                f"'/' and '*' inside a name are written as \u2215 and \u2217: {_shown(odd)}."
            )
        return Notation(slash_notation.write(tree), tuple(said))
    unknown = _unknown_direction(tree)
    if style == "alphabetical":
        said.append("The parents stand in alphabetical order, which tells no direction.")
    elif unknown and isinstance(tree, Crossed):
        said.append(
            "Where it is not known which was the seed parent, the two stand in alphabetical order."
        )
    order: cross_notation.Order = "alphabetical" if style == "alphabetical" else "seed parent first"
    return Notation(cross_notation.write(tree, order=order), tuple(said))


def _labels(tree: Tree) -> set[str]:
    from pedigreeview.exchange.parentage_tree import parts

    return {part.name for part in parts(tree) if isinstance(part, Named)}


def _unknown_direction(tree: Tree) -> bool:
    from pedigreeview.exchange.parentage_tree import parts

    return any(isinstance(part, Crossed) and not part.direction_known for part in parts(tree))


def _said(writer: _Writer, whole: bool, depth: int, ends: list[str]) -> list[str]:
    said = []
    if not whole:
        generations = "1 generation" if depth == 1 else f"{depth} generations"
        said.append(f"Written down to {generations}; not taken further: {_shown(ends)}.")
    if writer.stopped:
        said.append(f"Varieties are not taken further: {_shown(sorted(writer.stopped))}.")
    if writer.selfed:
        said.append("Selfings are not written.")
    if writer.sourced:
        said.append("A cutting, a doubled form and saved seed are written as what they came from.")
    if writer.opened:
        said.append(f"Open pollination is written as {OPEN}.")
    if writer.unsure:
        unsure = _shown(sorted(writer.unsure))
        said.append(f"A pollen parent that is not sure is written as {UNKNOWN}: that of {unsure}.")
    if writer.unknown:
        said.append(f"A parent that is not known is written as {UNKNOWN}.")
    return said
