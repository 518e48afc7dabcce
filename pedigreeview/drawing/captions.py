"""A caption: what a person wants to say about a picture, in lines below its title.

The text is theirs: it is never translated, shortened or read as markup.
"""

from __future__ import annotations

import re
import unicodedata

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QTextLayout, QTextOption

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import font
from pedigreeview.drawing.theme import Theme

__all__ = ["MOST_SIGNS", "caption_height", "caption_of", "paint_caption", "wrapped"]

MOST_SIGNS = 2000
"""Letters of the longest caption."""
_SIZE = 13.0
_LINE = 18.0
_BELOW = 4.0
_WIDEST = 900.0
"""A line longer than this is hard to follow to its end."""
# Line and page breaks of all kinds; 'splitlines' would also break at separators of data.
_BREAKS = re.compile("\r\n|[\n\r\v\f\u0085\u2028\u2029]")
_NO_TEXT = frozenset(("Cc", "Cs", "Cn"))


def caption_of(text: str) -> tuple[str, ...]:
    """The paragraphs of a caption; a blank line between two stays, at the ends it goes.

    What no file may hold (control characters, halves of characters) becomes a blank.

    Raises
    ------
    Fault : it is longer than a caption may be
    """
    if len(text) > MOST_SIGNS:
        raise Fault(
            f"The caption has {len(text)} characters; {MOST_SIGNS} are the most.",
            None,
            "Shorten it.",
        )
    found = [" ".join(_printable(line).split()) for line in _BREAKS.split(text)]
    while found and not found[0]:
        del found[0]
    while found and not found[-1]:
        del found[-1]
    return tuple(found)


def _printable(line: str) -> str:
    return "".join(" " if unicodedata.category(sign) in _NO_TEXT else sign for sign in line)


def wrapped(face: QFont, text: str, width: float) -> list[str]:
    """Lines of at most the width, broken where the script allows it, else within a word.

    Broken here and not by the file's reader, so that text stays text in SVG.
    """
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    # Widths fitted to the pixels of a screen would not hold on paper.
    option.setUseDesignMetrics(True)
    layout = QTextLayout(text, face)
    layout.setTextOption(option)
    # Qt counts in units of UTF-16.
    units = text.encode("utf-16-le", "replace")
    lines = []
    layout.beginLayout()
    try:
        while (line := layout.createLine()).isValid():
            line.setLineWidth(max(width, 1.0))
            start, length = line.textStart(), line.textLength()
            part = units[2 * start : 2 * (start + length)]
            lines.append(part.decode("utf-16-le", "replace").strip())
    finally:
        layout.endLayout()
    return lines


def _is_from_the_right(text: str) -> bool:
    """Whether a paragraph runs from right to left, by its first letter that has a direction."""
    for sign in text:
        way = unicodedata.bidirectional(sign)
        if way in ("L", "R", "AL"):
            return way != "L"
    return False


def caption_height(theme: Theme, caption: tuple[str, ...], width: float) -> float:
    """Height that a caption takes at a width, 0 without one."""
    if not caption:
        return 0.0
    face, across = font(theme, _SIZE), min(width, _WIDEST)
    return sum(_LINE * max(1, len(wrapped(face, text, across))) for text in caption) + _BELOW


def paint_caption(
    painter: QPainter, theme: Theme, caption: tuple[str, ...], x: float, y: float, width: float
) -> float:
    """Paint a caption from its upper left corner; the height that it takes."""
    if not caption:
        return 0.0
    face, across = font(theme, _SIZE), min(width, _WIDEST)
    metrics = QFontMetricsF(face)
    painter.save()
    painter.setPen(colour(theme["ink"]))
    painter.setFont(face)
    at = y
    for text in caption:
        mirrored = _is_from_the_right(text)
        way = Qt.LayoutDirection
        painter.setLayoutDirection(way.RightToLeft if mirrored else way.LeftToRight)
        for line in wrapped(face, text, across) or [""]:
            left = x + across - metrics.horizontalAdvance(line) if mirrored else x
            painter.drawText(QPointF(left, at + _SIZE), line)
            at += _LINE
    painter.restore()
    return at + _BELOW - y
