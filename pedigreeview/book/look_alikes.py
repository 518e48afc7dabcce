"""Checks of codes: two that are probably one, and words for 'not known' that became a plant."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator

from pedigreeview.book.book import Book
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import Plant

__all__ = ["near_duplicate_code", "unknown_written_as_code"]

_DASHES = dict.fromkeys(map(ord, "\u2010\u2011\u2012\u2013\u2014\u2212_"), "-")
_LOOK = str.maketrans("oil|", "0111")
_UNKNOWN = {
    "?",
    "??",
    "???",
    "-",
    "--",
    "–",
    "—",
    ".",
    "unknown",
    "unkn",
    "unk",
    "n/a",
    "na",
    "none",
    "nil",
    "null",
    "op",
    "open",
    "bee",
    "bees",
    "open-pollinated",
    "unbekannt",
    "inconnu",
    "desconocido",
    "onbekend",
    "open pollinated",
    "not known",
}


def _plain(code: str) -> str:
    """The code without case and blanks, with one kind of dash."""
    plain = unicodedata.normalize("NFKC", code).casefold().translate(_DASHES)
    return re.sub(r"\s+", "", plain)


def _is_bare(plant: Plant) -> bool:
    """Whether nothing is recorded of the plant but its code: a parent without a row of its own."""
    return plant == Plant(plant=plant.plant)


def near_duplicate_code(book: Book) -> Iterator[Problem]:
    """Codes that differ only by case, blanks or dashes, and bare parents that look like another.

    A letter against a digit (O and 0, l and 1) counts only where nothing else is recorded of one
    of the two, since a numbering may well use both.
    """
    alike: dict[str, list[str]] = {}
    for code in book.plants:
        alike.setdefault(_plain(code), []).append(code)
    for codes in alike.values():
        if len(codes) > 1:
            yield _near(codes, "differ only by case, blanks or dashes")
    look: dict[str, list[str]] = {}
    for plain in alike:
        look.setdefault(plain.translate(_LOOK), []).append(plain)
    for plains in look.values():
        if len(plains) < 2:
            continue
        codes = [alike[plain][0] for plain in plains]
        bare = [code for code in codes if _is_bare(book.plants[code])]
        if len(codes) > 1 and bare:
            yield _near(codes, "look alike")


def _near(codes: list[str], how: str) -> Problem:
    shown = " and ".join(f"'{code}'" for code in codes)
    return Problem(
        "near_duplicate_code",
        "warning",
        tuple(codes),
        f"The codes {shown} {how}.",
        "Write one code everywhere if they are one plant.",
    )


def unknown_written_as_code(book: Book) -> Iterator[Problem]:
    """Parents such as '?' or 'unknown', which count as one and the same plant everywhere."""
    for plant in book.plants.values():
        if plant.plant.strip().casefold() in _UNKNOWN and _is_bare(plant):
            yield Problem(
                "unknown_written_as_code",
                "warning",
                (plant.plant,),
                f"The parent '{plant.plant}' reads like 'not known' but counts as one plant "
                "wherever it stands.",
                "Leave the cell blank where a parent is not known.",
            )
