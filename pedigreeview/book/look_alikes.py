"""Checks of codes: two that are probably one, and words for 'not known' that became a plant."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator

from pedigreeview.book.book import Book
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import Plant

__all__ = ["near_duplicate_code", "sight", "unknown_written_as_code"]

_DASHES = dict.fromkeys(map(ord, "\u2010\u2011\u2012\u2013\u2014\u2212_"), "-")
_LOOK = str.maketrans("oil|", "0111")
# Letters that look like a Latin one as a capital or as a small letter, after case is folded.
_OTHER_SCRIPTS = str.maketrans(
    # Cyrillic
    "\u0430\u0432\u0435\u043a\u043c\u043d\u043e\u0440\u0441\u0442"
    "\u0443\u0445\u0455\u0456\u0458\u04bb\u051b\u051d\u0501\u04cf\u04af"
    # Greek
    "\u03b1\u03b2\u03b5\u03b6\u03b7\u03b9\u03ba\u03bc\u03bd\u03bf"
    "\u03c1\u03c4\u03c5\u03c7"
    # Greek lunate signs, Armenian, dotless i
    "\u03f2\u03f3\u0585\u057d\u0570\u0578\u0581\u0131",
    "abekmhopctyxsijhqwdlyabezhikmnoptyxcjouhngi",
)
_QUOTES = dict.fromkeys(map(ord, "\u2018\u2019\u02bc\u2032\u00b4`"), "'")
# Shown as nothing though they are of no class that says so: joiners, fillers, selectors.
_UNSEEN = re.compile("[\u034f\u115f\u1160\u17b4\u17b5\u180b-\u180d\u3164\ufe00-\ufe0f\uffa0]")
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
    if code.isascii():
        return "".join(code.lower().replace("_", "-").split())
    plain = unicodedata.normalize("NFKC", code).casefold().translate(_DASHES)
    return re.sub(r"\s+", "", plain)


def _seen(plain: str) -> str:
    """What a person sees of a plain code: nothing unseen, one letter for those that look alike."""
    if plain.isascii():
        return plain.replace("`", "'")
    seen = "".join(sign for sign in plain if unicodedata.category(sign) not in ("Cf", "Cc"))
    return _UNSEEN.sub("", seen).translate(_OTHER_SCRIPTS).translate(_QUOTES)


def sight(code: str) -> str:
    """What a person sees of a code, so that two with one sight would be read as one."""
    return _seen(_plain(code))


def _is_bare(plant: Plant) -> bool:
    """Whether nothing is recorded of the plant but its code: a parent without a row of its own."""
    return plant == Plant(plant=plant.plant)


def near_duplicate_code(book: Book) -> Iterator[Problem]:
    """Codes that a person would read as one.

    They differ only by case, blanks, dashes, signs that are not seen (soft hyphens, zero-width
    blanks) or letters of another script (a Cyrillic and a Latin A).  A letter against a digit (O
    and 0, l and 1) counts only where nothing else is recorded of one of the two, since a numbering
    may well use both.
    """
    alike: dict[str, list[str]] = {}
    for code in book.plants:
        alike.setdefault(_plain(code), []).append(code)
    for codes in alike.values():
        if len(codes) > 1:
            yield _near(codes, "differ only by case, blanks or dashes")
    seen: dict[str, list[str]] = {}
    for plain in alike:
        seen.setdefault(_seen(plain), []).append(plain)
    for plains in seen.values():
        if len(plains) > 1:
            codes = [alike[plain][0] for plain in plains]
            yield _near(codes, _how_seen(codes))
    look: dict[str, list[str]] = {}
    for sight, plains in seen.items():
        look.setdefault(sight.translate(_LOOK), []).append(plains[0])
    for plains in look.values():
        if len(plains) < 2:
            continue
        codes = [alike[plain][0] for plain in plains]
        bare = [code for code in codes if _is_bare(book.plants[code])]
        if len(codes) > 1 and bare:
            yield _near(codes, "look alike")


def _how_seen(codes: list[str]) -> str:
    """How codes differ that look the same, naming the signs that a person cannot tell apart."""
    everywhere = set.intersection(*map(set, codes))
    odd = sorted({sign for code in codes for sign in code if not sign.isascii()} - everywhere)
    named = ", ".join(f"U+{ord(sign):04X} {unicodedata.name(sign, '')}".strip() for sign in odd)
    how = "differ only by signs that are not seen or that look alike"
    return f"{how} ({named})" if named else how


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
