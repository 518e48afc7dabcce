"""A QR code as vector: the squares of a code, and a path that is dark where they are.

`segno` makes the code (ISO/IEC 18004); what is asked for here is the ordinary kind, never the
micro one, which many readers do not know.
"""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath

from pedigreeview.drawing.signs import colour

__all__ = ["LEAST_MODULE", "QUIET", "paint_qr", "qr_squares"]

QUIET = 4
"""Squares that stay white around the code."""
LEAST_MODULE = 0.28
"""Millimetres of a square below which printer or telephone lose it: common practice, no source."""

Squares = tuple[tuple[bool, ...], ...]


@lru_cache(maxsize=4096)
def qr_squares(text: str) -> Squares:
    """The squares of the code, row by row, True where dark; without the white rim.

    Error correction M (about 15% of it may be lost), more where the code grows no larger for it.

    Raises
    ------
    ValueError : the text is blank, or too long for any code
    """
    import segno

    if not text:
        raise ValueError("there is nothing to encode")
    made = segno.make(text, error="m", micro=False, encoding="utf-8")
    return tuple(tuple(bool(value) for value in row) for row in made.matrix)


def paint_qr(painter: QPainter, squares: Squares, area: QRectF, ink: str) -> None:
    """Fill the area with the code; the white rim is the caller's."""
    step = area.width() / len(squares)
    path = QPainterPath()
    for row, line in enumerate(squares):
        at = 0
        while at < len(line):
            end = at
            while end < len(line) and line[end]:
                end += 1
            if end > at:
                # One bar for a run of squares, so that no hairline parts them.
                left, top = area.left() + at * step, area.top() + row * step
                path.addRect(QRectF(left, top, (end - at) * step, step))
            at = end + 1
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(ink))
    painter.drawPath(path.simplified())
    painter.restore()
