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

__all__ = ["Row", "last_cut", "rows_of"]

Row = tuple[int, int]
"""Upper and lower edge, in pixels from the top of all that stands on the card."""


def rows_of(inner: QWidget) -> list[Row]:
    """The rows of all that can be seen on a widget, as it is laid out now."""
    found: list[Row] = []
    parts = [part for part in inner.findChildren(QWidget) if part.isVisibleTo(inner)]
    holders = {id(part.parentWidget()) for part in parts}
    for part in parts:
        if id(part) not in holders and part.height():
            corner = part.mapTo(inner, QPoint(0, 0))
            found += _lines(QRect(corner, part.size()), _count(part))
    return found


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
