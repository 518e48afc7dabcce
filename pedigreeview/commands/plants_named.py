"""Plants named on the command line: all that are not in the book are told at once."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["UnknownPlants", "plants_named"]


class UnknownPlants(Fault):
    """One or more words that are no plant of the book; one line each."""

    def __init__(self, sentences: Sequence[str]) -> None:
        self._sentences = list(sentences)
        super().__init__(" ".join(sentences))

    def lines(self) -> list[str]:
        """A sentence for each word."""
        return self._sentences


def _not_there(word: str, net: PedigreeNetwork, names: dict[str, str]) -> str:
    if word in net.book.crosses:
        raised = net.progeny_of_cross(word)
        hint = f"its first plants are {', '.join(raised[:3])}" if raised else "it has no plants"
        return f"{word!r} is a cross, not a plant of this book; {hint}."
    codes = net.codes
    by_name = names.get(word.casefold())
    near = [by_name] if by_name else []
    if not near:
        folded: dict[str, list[str]] = {}
        for code in codes:
            folded.setdefault(code.casefold(), []).append(code)
        for match in difflib.get_close_matches(word.casefold(), list(folded), 3):
            near += folded[match]
    if near:
        hint = f"Did you mean {' or '.join(near[:3])}?"
    elif codes:
        hint = f"Its first plants are {', '.join(codes[:3])}."
    else:
        hint = "It holds no plants."
    return f"There is no plant {word!r} in this book. {hint}"


def plants_named(net: PedigreeNetwork, words: Iterable[str]) -> list[str]:
    """The codes named, without repeats, in the order in which they were named.

    Raises
    ------
    UnknownPlants : some are no plants of the book
    """
    found: dict[str, None] = {}
    unknown: dict[str, None] = {}
    for word in words:
        code = word if word in net else word.strip()
        (found if code in net else unknown)[code] = None
    if unknown:
        names = {plant.name.casefold(): plant.plant for plant in net.book.plants.values()}
        names.pop("", None)
        raise UnknownPlants([_not_there(word, net, names) for word in unknown])
    return list(found)
