"""The rows of what stands on a card: where its text may be cut off without cutting through a line.

A label is as many rows as it has lines; a widget that says its `rows()` as many as those; anything
else, as a field or a photo, is one row.
"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QLabel, QWidget

__all__ = ["Row", "last_cut", "rows_and_wholes", "rows_of"]

Row = tuple[int, int]
"""Upper and lower edge, in pixels from the top of all that stands on the card."""

_SHORT = 2
"""Lines of a text that may be left to what is below, so that the text is not parted."""
_HAIR = 2
"""A part no higher than this is a line that parts what is above from what is below."""


def rows_of(inner: QWidget) -> list[Row]:
    """The rows of all that can be seen on a widget, as it is laid out now."""
    return rows_and_wholes(inner)[0]


def rows_and_wholes(inner: QWidget) -> tuple[list[Row], list[Row]]:
    """The rows, and what had better not be cut through although no row is.

    That is a heading with its first row, a hair line with what it stands above, and a text of which
    only a line or two would be left.
    """
    rows: list[Row] = []
    wholes: list[Row] = []
    leaders: list[QRect] = []
    parts = [part for part in inner.findChildren(QWidget) if part.isVisibleTo(inner)]
    holders = {id(part.parentWidget()) for part in parts}
    for part in parts:
        if id(part) not in holders and part.height():
            rect = QRect(part.mapTo(inner, QPoint(0, 0)), part.size())
            lines = _lines(rect, _count(part))
            rows += lines
            if _leads(part):
                leaders.append(rect)
            elif isinstance(part, QLabel) and len(lines) > 1:
                wholes.append((lines[0][0], lines[min(_SHORT, len(lines) - 1)][1]))
    for rect in leaders:
        end = rect.top() + rect.height()
        below = [row for row in rows if row[0] >= end]
        if below:
            wholes.append((rect.top(), min(below)[1]))
    return rows, wholes


def _leads(part: QWidget) -> bool:
    """Whether a part says nothing without what stands below it."""
    role = str(part.property("role") or "")
    return part.height() <= _HAIR or role == "caption" or role.startswith("heading")


def _count(part: QWidget) -> int:
    """How many rows a widget is."""
    if isinstance(part, QLabel):
        if not part.text():
            return 1
        return max(1, round(part.height() / max(1, QFontMetrics(part.font()).lineSpacing())))
    rows = getattr(part, "rows", None)
    return max(1, rows()) if callable(rows) else 1


def _lines(rect: QRect, count: int) -> list[Row]:
    """A rectangle in rows of one height."""
    edges = [rect.top() + round(at * rect.height() / count) for at in range(count + 1)]
    return list(pairwise(edges))


def last_cut(rows: Iterable[Row], most: int) -> int:
    """The lowest place, at most a given one, at which a cut goes through no row."""
    cut = most
    for top, bottom in sorted(rows, key=lambda row: -row[1]):
        if top < cut < bottom:
            cut = top
    return cut
