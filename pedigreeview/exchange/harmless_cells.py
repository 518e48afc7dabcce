"""Texts that a spreadsheet program would take for formulas, made harmless in text files and back.

A cell of a CSV file that begins with = + - @, a tab or a carriage return is run as a formula by
some programs; it gets an apostrophe before it, which such programs read as 'this is text'.  Plain
numbers do not.  The way back is exact: a text that already looks so treated gets one more.
"""

from __future__ import annotations

import re

__all__ = ["has_neutral", "neutral", "restored"]

_FORMULA = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")
_NUMBER = re.compile(r"[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?\Z")
_TREATED = re.compile("'[=+\\-@\t\r＝＋－＠]")


def _runs(text: str) -> bool:
    return text.startswith(_FORMULA) and not _NUMBER.match(text)


def neutral(text: str) -> str:
    """A text that no spreadsheet program takes for a formula."""
    return "'" + text if text and _runs(text.lstrip("'")) else text


def restored(text: str) -> str:
    """The text that `neutral` was given."""
    return text[1:] if text[:1] == "'" and _runs(text.lstrip("'")) else text


def has_neutral(text: str) -> bool:
    """Whether a whole file may hold a cell that `neutral` has treated."""
    return _TREATED.search(text) is not None
