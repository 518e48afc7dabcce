"""Columns of text that line up, for outputs that a person reads."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence

__all__ = ["indented", "set_in_columns"]


def _width(text: str) -> int:
    if text.isascii():
        return len(text)
    width = 0
    for sign in text:
        if not unicodedata.combining(sign):
            width += 2 if unicodedata.east_asian_width(sign) in "WF" else 1
    return width


def set_in_columns(
    rows: Sequence[Sequence[str]],
    heading: Sequence[str] = (),
    *,
    right: Sequence[int] = (),
    gap: int = 2,
) -> list[str]:
    """Rows as lines, each column as wide as its widest cell.

    Parameters
    ----------
    rows : cells of each row, all of one length
    heading : the names of the columns; a rule is drawn below them
    right : columns (from 0) that are set flush right
    gap : blanks between columns
    """
    lines = [list(heading), *map(list, rows)] if heading else list(map(list, rows))
    if not lines:
        return []
    widths = [max(_width(line[column]) for line in lines) for column in range(len(lines[0]))]
    if heading:
        lines.insert(1, ["-" * width for width in widths])
    said = []
    for cells in lines:
        padded = []
        for column, cell in enumerate(cells):
            blanks = " " * (widths[column] - _width(cell))
            padded.append(blanks + cell if column in right else cell + blanks)
        said.append((" " * gap).join(padded).rstrip())
    return said


def indented(lines: Sequence[str], by: int = 2) -> list[str]:
    """Lines moved to the right; empty ones stay empty."""
    return [" " * by + line if line else line for line in lines]
