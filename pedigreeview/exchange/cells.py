"""One cell: from text to the value of its column and back, and what is wrong with it.

Nothing here raises: a cell gives a value and, where it cannot be read, what is wrong and how to
mend it, so that a reader can collect everything that is wrong with a file.
"""

from __future__ import annotations

import difflib
import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from pedigreeview.book import dates
from pedigreeview.book.number_ranges import RANGES
from pedigreeview.book.records import SELF, TABLES, Column, columns

__all__ = [
    "Flaw",
    "code_flaw",
    "columns_of",
    "did_you_mean",
    "number",
    "to_cell",
    "value",
    "whole",
    "word",
]

_NUMBER = re.compile(r"[+-]?([0-9]+(\.[0-9]*)?|\.[0-9]+)([eE][+-]?[0-9]+)?\Z")
_WHOLE = re.compile(r"([+-]?[0-9]+)(\.0+)?\Z")
_PERCENT = re.compile(r"([0-9]+(?:[.,][0-9]+)?) ?%\Z")
_FRACTION = re.compile(r"([0-9]{1,9}) ?/ ?([0-9]{1,9})\Z")
_CONTROL = re.compile("[\x00-\x1f\x7f\x85\u2028\u2029\ud800-\udfff\ufffe\uffff]+")
_MOST_DIGITS = 15


@dataclass(frozen=True, slots=True)
class Flaw:
    """What is wrong with one cell, and the mend; both sentences."""

    what: str
    todo: str = ""


def columns_of(table: str) -> tuple[Column, ...]:
    """The columns of a table by its name."""
    record: Any = TABLES[table]
    return columns(record)


def did_you_mean(wrong: str, known: Iterable[str], *, often: int = 3, cutoff: float = 0.6) -> str:
    """'Did you mean 'K16' or 'K18'?', or '' where nothing known is near."""
    by_folded: dict[str, str] = {}
    for name in known:
        by_folded.setdefault(name.casefold(), name)
    near = difflib.get_close_matches(wrong.casefold(), by_folded, n=often, cutoff=cutoff)
    if not near:
        return ""
    return f"Did you mean {' or '.join(repr(by_folded[name]) for name in near)}?"


def code_flaw(code: str, what: str = "code") -> Flaw | None:
    """What is wrong with a plant's or cross's code, with a proposal; None if nothing."""
    if code.casefold() == SELF:
        return Flaw(
            f"The {what} {code!r} is the word for the seed parent itself.",
            f"Choose another code, such as '{code}-1'; for a selfing name the seed parent twice.",
        )
    if ":" in code or ";" in code:
        proposed = re.sub(r"-{2,}", "-", re.sub(r"\s*[:;]\s*", "-", code)).strip("-") or "1"
        return Flaw(
            f"The {what} {code!r} has ':' or ';' in it, which part candidates and lists.",
            f"Write it as {proposed!r}, also where it is a parent.",
        )
    if control := _CONTROL.search(code):
        proposed = _CONTROL.sub(" ", code).strip()
        sign = f"the character U+{ord(control[0][0]):04X}"
        if control[0][0] in "\n\r":
            sign = "a line break"
        return Flaw(
            f"The {what} {code!r} has {sign} in it.",
            f"Write it as {proposed!r}." if proposed else "Choose another code.",
        )
    return None


def number(
    text: str, name: str, low: float | None, high: float | None, *, comma: bool = False
) -> tuple[float | None, Flaw | None]:
    """A number between low and high; with `comma` a decimal comma is read as well."""
    written = text.replace(",", ".") if comma and text.count(",") == 1 and "." not in text else text
    if not _NUMBER.match(written):
        return None, Flaw(f"The {name} {text!r} is no number.", _number_mend(text, comma))
    found = float(written)
    return _in_range(found, text, name, low, high)


def _in_range(
    found: float, text: str, name: str, low: float | None, high: float | None
) -> tuple[float | None, Flaw | None]:
    if not math.isfinite(found):
        return None, Flaw(f"The {name} {text!r} is too large.", "Write a smaller number.")
    if low is not None and high is not None and not low <= found <= high:
        mend = f"Write a number from {low:g} to {high:g}"
        if high == 1 and 1 < found <= 100:
            mend += f", such as {found / 100:g} for {found:g}%"
        over = f"over {high:g}" if found > high else "negative" if low == 0 else f"below {low:g}"
        return None, Flaw(f"The {name} {text!r} is {over}.", mend + ".")
    if low is not None and found < low:
        below = "negative" if low == 0 else f"below {low:g}"
        return None, Flaw(f"The {name} {text!r} is {below}.", f"Write {low:g} or more.")
    return found, None


def _number_mend(text: str, comma: bool) -> str:
    percent = _PERCENT.match(text)
    if percent:
        return f"Write {float(percent[1].replace(',', '.')) / 100:g}."
    fraction = _FRACTION.match(text)
    if fraction and int(fraction[2]):
        return f"Write {int(fraction[1]) / int(fraction[2]):g}."
    if not comma and text.count(",") == 1 and _NUMBER.match(text.replace(",", ".")):
        return f"Write {text.replace(',', '.')}, with a decimal point."
    return "Write a number such as 0.5, or leave the cell blank."


def whole(
    text: str, name: str, low: float | None, high: float | None = None
) -> tuple[int | None, Flaw | None]:
    """A whole number; '2.0', as some programs write it, is 2."""
    found = _WHOLE.match(text)
    if found is None:
        return None, Flaw(
            f"The {name} {text!r} is no whole number.", "Write a whole number such as 2."
        )
    if len(found[1]) > _MOST_DIGITS:
        return None, Flaw(f"The {name} {text!r} is too large.", "Write a smaller number.")
    _, flaw = _in_range(int(found[1]), text, name, low, high)
    return (None, flaw) if flaw else (int(found[1]), None)


def word(
    text: str, name: str, choices: tuple[str, ...], *, lenient: bool = False
) -> tuple[str, Flaw | None]:
    """One of the words of a column; lenient: whatever the case, blanks for underscores."""
    if text in choices:
        return text, None
    if lenient:
        folded = re.sub(r"[\s-]+", "_", text.strip()).casefold()
        if folded in choices:
            return folded, None
    mend = did_you_mean(text, choices) or f"Use one of: {', '.join(choices)}."
    return "", Flaw(f"The {name} {text!r} is not one of its words.", mend)


def date(text: str, name: str) -> tuple[str, Flaw | None]:
    """An ISO date that may stop at the year or month."""
    if dates.is_date(text):
        return text, None
    proposed = dates.proposal(text)
    mend = f"Write {proposed}." if proposed else "Write it as 2021, 2021-05 or 2021-05-17."
    return "", Flaw(f"The {name} {text!r} is no date.", mend)


def value(
    table: str, column: Column, text: str, *, comma: bool = False, lenient: bool = False
) -> tuple[Any, Flaw | None]:
    """The value of a cell that is not blank, and its flaw; on a flaw the column's default."""
    # Whole numbers without a range of their own begin at 0.
    low, high = RANGES.get((table, column.name), (0 if column.kind == "whole" else None, None))
    found: Any
    flaw: Flaw | None
    if column.kind == "number":
        found, flaw = number(text, column.name, low, high, comma=comma)
    elif column.kind == "whole":
        found, flaw = whole(text, column.name, low, high)
    elif column.kind == "date":
        found, flaw = date(text, column.name)
    elif column.kind == "flag":
        folded = text.casefold() if lenient else text
        found, flaw = folded == "true", None
        if folded not in ("true", "false"):
            flaw = Flaw(
                f"The {column.name} {text!r} is neither true nor false.", "Write true or false."
            )
    elif column.choices:
        found, flaw = word(text, column.name, column.choices, lenient=lenient)
    else:
        found, flaw = text, None
    return (column.default, flaw) if flaw else (found, None)


def to_cell(held: Any, default: Any = None) -> str:
    """The text of a value; blank for None and for a whole number that is the column's default."""
    if held is None:
        return ""
    if isinstance(held, bool):
        return "true" if held else "false"
    if isinstance(held, int):
        return "" if held == default else str(held)
    if isinstance(held, float):
        written = repr(held)
        return written[:-2] if written.endswith(".0") else written
    return str(held)
