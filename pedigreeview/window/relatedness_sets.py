"""Sets of plants that a page can look at or choose among, by name.  Knows no widgets."""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterable
from typing import TYPE_CHECKING

from pedigreeview.book.season import exact_day, flowering_window

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "SETS",
    "crosses_with_progeny",
    "first_set",
    "flowering_on",
    "last_flowering_day",
    "plants_of_set",
    "typed_codes",
]

SETS = ("picked", "kept", "flowering", "founders", "living", "cross", "typed", "all")
"""In the order in which they are offered."""

_DEAD = ("culled", "lost")
_LIVING = ("growing", "kept")


def plants_of_set(
    net: PedigreeNetwork,
    name: str,
    *,
    picked: Iterable[str] = (),
    day: datetime.date | None = None,
    cross: str = "",
    typed: str = "",
) -> list[str]:
    """Codes of a set, in the book's order; those that are withheld are among them.

    Parameters
    ----------
    name : one of `SETS`
    picked, day, cross, typed : what the set of that name goes by
    """
    plants = net.book.plants
    if name == "picked":
        return [code for code in picked if code in plants]
    if name == "kept":
        return [code for code, plant in plants.items() if plant.status == "kept"]
    if name == "living":
        return [code for code, plant in plants.items() if plant.status in _LIVING]
    if name == "founders":
        return [code for code in net.founders if code in plants]
    if name == "flowering":
        return flowering_on(net, day or last_flowering_day(net))
    if name == "cross":
        return list(net.progeny_of_cross(cross)) if cross in net.book.crosses else []
    if name == "typed":
        return typed_codes(net, typed)[0]
    return list(plants)


def first_set(net: PedigreeNetwork, picked: Iterable[str], most: int = 2000) -> str:
    """The set to begin with: the first that has two plants or more and is not too large."""
    for name in ("picked", "kept", "living", "founders"):
        if 2 <= len(plants_of_set(net, name, picked=picked)) <= most:
            return name
    return "all" if len(net.book.plants) <= most else "founders"


def flowering_on(net: PedigreeNetwork, day: datetime.date) -> list[str]:
    """Plants in flower on a day: as noted, else, of living ones, as sowing and crop let expect."""
    found = []
    for code, plant in net.book.plants.items():
        window = flowering_window(net.book, plant, day)
        if window is None or not window.holds(day):
            continue
        noted = window.basis.source == "your own records"
        if noted or plant.status not in (*_DEAD, "finished"):
            found.append(code)
    return found


def last_flowering_day(net: PedigreeNetwork) -> datetime.date:
    """The latest day on which a first flower was noted; today where none was."""
    days = [day for row in net.book.blooms if (day := exact_day(row.first_flower)) is not None]
    return max(days, default=datetime.date.today())


def crosses_with_progeny(net: PedigreeNetwork) -> list[str]:
    """Crosses of which two plants or more are in the book."""
    return [code for code in net.book.crosses if len(net.progeny_of_cross(code)) >= 2]


def typed_codes(net: PedigreeNetwork, typed: str) -> tuple[list[str], list[str]]:
    """Codes typed with commas, semicolons or lines between them; those known, and the others.

    A star stands for any ending: '23-*'.
    """
    plants = net.book.plants
    known: dict[str, None] = {}
    others = []
    for part in re.split(r"[,;\n]", typed):
        word = part.strip()
        if not word:
            continue
        if word in plants:
            known[word] = None
        elif word.endswith("*"):
            known.update(dict.fromkeys(code for code in plants if code.startswith(word[:-1])))
        else:
            others.append(word)
    return list(known), others
