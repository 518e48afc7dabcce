"""Codes: which are taken, which to propose next, and what is wrong with one that is typed.

Two codes that a person would read as one count as the same: case, blanks, kinds of dash and letters
that look alike make no difference.  Plants and crosses share one stock of codes, so that 'sown from
24-01' has one meaning.  The code of a record that was deleted or renamed is never proposed again,
since its tag may still hang in the garden.
"""

from __future__ import annotations

import datetime
import difflib
import re
from collections.abc import Iterable

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.look_alikes import sight
from pedigreeview.book.recording.code_patterns import Context, code_patterns
from pedigreeview.book.records import SELF

__all__ = [
    "GIVEN_UP",
    "UsedCodes",
    "code_fault",
    "did_you_mean",
    "given_up",
    "next_key",
    "propose_cross",
    "propose_plants",
    "year_parts",
]

GIVEN_UP = "codes_given_up"
"""Key of the book's settings that keeps codes of records that are gone, parted by ';'."""

_CONTROL = re.compile("[\x00-\x1f\x7f\x85\u2028\u2029\ud800-\udfff\ufffe\uffff]")
_KEYED = {
    "pollination": "pollinations",
    "harvest": "harvests",
    "packet": "packets",
    "sowing": "sowings",
    "pollen_lot": "pollen_lots",
}


def given_up(book: Book) -> list[str]:
    """Codes of plants and crosses that are no longer in the book."""
    return [c for part in book.settings.extra.get(GIVEN_UP, "").split(";") if (c := part.strip())]


def did_you_mean(wrong: str, known: Iterable[str]) -> str:
    """'Did you mean 'K16' or 'K18'?', or '' where nothing known is near."""
    by_folded: dict[str, str] = {}
    for name in known:
        by_folded.setdefault(name.casefold(), name)
    near = difflib.get_close_matches(wrong.casefold(), by_folded, n=3, cutoff=0.6)
    if not near:
        return ""
    return f"Did you mean {' or '.join(repr(by_folded[name]) for name in near)}?"


class UsedCodes:
    """All codes that a new plant or cross must keep clear of, looked up by what a person sees."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._seen: dict[str, str] = {}
        for code in (*book.plants, *book.crosses, *given_up(book), SELF):
            self._seen.setdefault(sight(code), code)

    def __contains__(self, code: str) -> bool:
        return sight(code) in self._seen

    def like(self, code: str) -> str:
        """The code in use that a person would read as this one, or ''."""
        return self._seen.get(sight(code), "")

    def add(self, code: str) -> None:
        """Count a code as taken."""
        self._seen.setdefault(sight(code), code)

    def largest(self, before: str, after: str) -> int:
        """The largest running number between two texts; 0 where there is none."""
        return _largest(self._seen, before, after)

    def propose(self, kind: str, context: Context, count: int = 1) -> list[str]:
        """The next codes of a kind by the book's pattern; they count as taken from then on."""
        pattern = code_patterns(self._book.settings)[kind]
        before, after, _ = pattern.around(context)
        number = self.largest(before, after)
        found: list[str] = []
        if not pattern.numbered and number == 0:
            plain = pattern.code(context, 1)
            number = 1
            if plain and plain not in self and not _flaw(plain):
                found.append(plain)
                self.add(plain)
        while len(found) < count:
            number += 1
            code = pattern.code(context, number)
            if code not in self and not _flaw(code):
                found.append(code)
                self.add(code)
            elif _flaw(code) and number > 1_000_000:
                raise Fault(f"The code pattern '{pattern.text}' gives no code that may stand.")
        return found


def _largest(seen: Iterable[str], before: str, after: str) -> int:
    head, tail = sight(before), sight(after)
    largest = 0
    for code in seen:
        if code.startswith(head) and code.endswith(tail) and len(code) > len(head) + len(tail):
            middle = code[len(head) : len(code) - len(tail)]
            if middle.isascii() and middle.isdigit() and len(middle) <= 9:
                largest = max(largest, int(middle))
    return largest


def year_parts(on: datetime.date) -> dict[str, str]:
    """The parts of a pattern that the day gives."""
    return {"yy": f"{on.year % 100:02d}", "yyyy": f"{on.year:04d}"}


def propose_cross(
    book: Book,
    on: datetime.date,
    seed_parent: str = "",
    pollen_parent: str = "",
    *,
    intended: str = "cross",
    used: UsedCodes | None = None,
) -> str:
    """The next code for a cross, a selfing or open-pollinated seed."""
    used = used or UsedCodes(book)
    kind = intended if intended in ("selfing", "open") else "cross"
    context = {
        **year_parts(on),
        "seed": seed_parent,
        "pollen": pollen_parent,
        "parent": seed_parent,
    }
    return used.propose(kind, context)[0]


def propose_plants(
    book: Book, cross: str, count: int, on: datetime.date, *, used: UsedCodes | None = None
) -> list[str]:
    """The next codes for plants raised from a cross.

    Plants of a selfing take the code of the plant that was selfed with a dash and a number, as in
    the pedigree method; plants of any other cross that of the cross.

    Raises
    ------
    Fault : the cross is not in the book, or a count below 1
    """
    if count < 1:
        raise Fault("The number of plants is below 1.", Place(column="plants"), "Write 1 or more.")
    held = book.crosses.get(cross)
    if held is None:
        raise Fault(
            f"There is no cross {cross!r} in this book.",
            Place(column="cross"),
            did_you_mean(cross, book.crosses),
        )
    used = used or UsedCodes(book)
    context = {
        **year_parts(on),
        "cross": held.cross,
        "seed": held.seed_parent,
        "pollen": held.pollen_parent,
        "parent": held.seed_parent or held.pollen_parent,
    }
    selfed = held.seed_parent and held.seed_parent == held.pollen_parent
    kind = "selection" if selfed else "plant"
    return used.propose(kind, context, count)


def next_key(book: Book, kind: str, on: datetime.date, cross: str = "", parent: str = "") -> str:
    """The next code of a pollination, harvest, packet, sowing or pollen lot."""
    pattern = code_patterns(book.settings)[kind]
    seen = {sight(code) for code in getattr(book, _KEYED[kind])}
    context = {**year_parts(on), "cross": cross, "parent": parent}
    before, after, _ = pattern.around(context)
    number = _largest(seen, before, after)
    if not pattern.numbered and number == 0 and sight(pattern.code(context, 1)) not in seen:
        return pattern.code(context, 1)
    number = max(number, 0 if pattern.numbered else 1)
    while True:
        number += 1
        code = pattern.code(context, number)
        if sight(code) not in seen:
            return code


def _flaw(code: str) -> tuple[str, str] | None:
    if not code.strip():
        return "The code is blank.", "Write one, or take the one that is proposed."
    if code.strip().casefold() == SELF:
        return (
            f"The code {code!r} is the word for the seed parent itself.",
            f"Choose another, such as '{code.strip()}-1'.",
        )
    if ":" in code or ";" in code:
        written = re.sub(r"-{2,}", "-", re.sub(r"\s*[:;]\s*", "-", code)).strip("-") or "1"
        return (
            f"The code {code!r} has ':' or ';' in it, which part lists.",
            f"Write it as {written!r}.",
        )
    if _CONTROL.search(code):
        return f"The code {code!r} has a sign in it that cannot be seen.", "Type it anew."
    if code != code.strip():
        return f"The code {code!r} has a blank before or after it.", "Take the blank away."
    return None


def code_fault(used: UsedCodes, code: str, *, column: str = "code", own: str = "") -> None:
    """Refuse a code that may not stand for a new plant or cross.

    `own` is the code that the record has now, when it is being renamed.

    Raises
    ------
    Fault : the code is blank, 'self', has ':' or ';' or an unseen sign in it, or is in use, also
        when it differs only by case, blanks, dashes or letters that look alike
    """
    flaw = _flaw(code)
    if flaw is not None:
        raise Fault(flaw[0], Place(column=column), flaw[1])
    like = used.like(code)
    if like and like != own:
        how = "is taken" if like == code else f"looks like {like!r}, which is taken"
        raise Fault(
            f"The code {code!r} {how}.",
            Place(column=column),
            "Choose another; a code is never used twice, also not that of a plant that is gone.",
        )
