"""Plants of the overview as they are drawn near: tags with codes; and the flag of a small one."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.overview_raster import Frame, Showing, bar_of
from pedigreeview.drawing.patterns import share as founder_share
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import elided, font
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, contrast, mixed

__all__ = ["draw_flag", "draw_plant"]


def draw_plant(
    painter: QPainter,
    overview: Overview,
    row: int,
    rect: QRectF,
    theme: Theme,
    showing: Showing,
    text: float = 1.0,
) -> None:
    """One plant with its code, its stripe of founders and the value of the tint.

    text : how much larger than usual the type is
    """
    corner = min(8.0, rect.height() / 3)
    above = showing.ancestors is not None and bool(showing.ancestors[row])
    below = showing.descendants is not None and bool(showing.descendants[row])
    quiet = showing.lit and not (above or below or row == showing.selected)
    quiet = quiet or (showing.faded is not None and bool(showing.faded[row]))
    paper, edge, ink = theme["paper"], theme["paper_edge"], theme["ink"]
    if showing.tint is not None and not np.isnan(showing.tint[row, 0]):
        paper = "#{:02x}{:02x}{:02x}".format(*np.rint(showing.tint[row]).astype(int).tolist())
        ink = _ink_on(paper, theme)
    if quiet:
        paper = mixed(theme["band"], paper, 0.45)
        edge, ink = mixed(theme["band"], edge, 0.5), mixed(theme["band"], theme["ink"], 0.55)
    line = pen(edge, 1.0)
    if above:
        line = pen(theme["accent"], 2.2)
    elif below:
        line = QPen(QColor(theme["select"]), 2.0)
        line.setDashPattern([3.0, 2.0])
    painter.setPen(line)
    painter.setBrush(colour(paper))
    painter.drawPolygon(_outline(rect, corner))
    bar = bar_of(rect.height())
    if above:
        painter.fillRect(
            QRectF(rect.left(), rect.top(), rect.width() - corner, bar), colour(theme["accent"])
        )
    if below:
        painter.fillRect(
            QRectF(rect.left(), rect.bottom() - bar, rect.width(), bar), colour(theme["select"])
        )
    stripe = min(9.0, max(5.0, rect.width() * 0.1))
    edge_left = QRectF(rect.left() + 1, rect.top() + 1, stripe, rect.height() - 2)
    _stripe(painter, overview.shares[row], edge_left, theme, quiet)
    room = rect.width() - stripe - 8
    left = rect.left() + stripe + 5
    words = tell(showing.words(row)) if showing.words is not None else ""
    two = rect.height() >= 34 * text and bool(words)
    size = (13.0 if rect.height() >= 24 * text and room >= 60 * text else 11.0) * text
    middle = rect.center().y() + size * 0.36 - (7 * text if two else 0)
    painter.setPen(colour(ink))
    painter.setFont(font(theme, size, strong=True))
    said = overview.codes[row]
    if words and not two and room >= 90 * text:
        said = f"{said} · {words}"
    room = room // 4 * 4
    painter.drawText(QPointF(left, middle), elided(theme, size, said, room, strong=True))
    if two:
        small = 11.0 * text
        painter.setFont(font(theme, small))
        painter.drawText(QPointF(left, middle + 15 * text), elided(theme, small, words, room))


def _stripe(
    painter: QPainter, shares: NDArray[np.float32], rect: QRectF, theme: Theme, quiet: bool
) -> None:
    """Shares of the founders from top to bottom."""
    y = rect.top()
    for number in np.flatnonzero(shares > 0.004).tolist():
        high = float(shares[number]) * rect.height()
        part = QRectF(rect.left(), y, rect.width(), high)
        which = number if number < 12 else -1
        if theme.patterned:
            founder_share(painter, part, which, theme)
        else:
            shade = theme.founder(which)
            painter.fillRect(part, colour(mixed(theme["band"], shade, 0.4) if quiet else shade))
        y += high
    if y < rect.bottom() - 0.5:
        rest = QRectF(rect.left(), y, rect.width(), rect.bottom() - y)
        painter.fillRect(rest, QColor(mixed(theme["band"], theme["line_soft"], 0.3)))
    seam = QRectF(rect.right(), rect.top(), 1.0, rect.height())
    painter.fillRect(seam, colour(theme["paper"]))


def draw_flag(
    painter: QPainter, code: str, ring: QRectF, frame: Frame, theme: Theme, token: str
) -> None:
    """The code of one plant that is too small to carry it, on a small tag beside its ring."""
    size = 12.0 * frame.text
    text = elided(theme, size, code, 180 * frame.text, strong=True)
    painter.setFont(font(theme, size, strong=True))
    wide = painter.fontMetrics().horizontalAdvance(text) + 18.0
    left = min(max(ring.center().x() - wide / 2, frame.margin + 2.0), frame.width - wide - 2.0)
    high = 20.0 * frame.text
    over = ring.top() - 7 - high >= 0
    top = ring.top() - 7 - high if over else ring.bottom() + 7
    rect = QRectF(left, top, wide, high)
    x = min(max(ring.center().x(), rect.left() + 6), rect.right() - 6)
    tip = QPolygonF()
    base = rect.bottom() if over else rect.top()
    way = 5.0 if over else -5.0
    for spot in (QPointF(x - 5, base), QPointF(x, base + way), QPointF(x + 5, base)):
        tip.append(spot)
    shape = QPainterPath()
    shape.addRoundedRect(rect, 4, 4)
    point = QPainterPath()
    point.addPolygon(tip)
    point.closeSubpath()
    painter.setPen(pen(theme["ground"], 3.0))
    painter.setBrush(colour(theme["paper"]))
    painter.drawPath(shape.united(point))
    painter.setPen(pen(theme[token], 1.4))
    painter.drawPath(shape.united(point))
    painter.setPen(colour(theme["ink"]))
    painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, text)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _outline(rect: QRectF, corner: float) -> QPolygonF:
    """A tag: the upper right corner clipped."""
    found = QPolygonF()
    for x, y in (
        (rect.left(), rect.top()),
        (rect.right() - corner, rect.top()),
        (rect.right(), rect.top() + corner),
        (rect.right(), rect.bottom()),
        (rect.left(), rect.bottom()),
    ):
        found.append(QPointF(x, y))
    return found


def _ink_on(paper: str, theme: Theme) -> str:
    """The darker or the lighter ink of the theme, whichever can be read better on a colour."""
    inks = (theme["ink"], theme["ground"])
    return max(inks, key=lambda ink: contrast(ink, paper))
