"""The lines of the picture: unbroken for the seed parent, grains for the pollen parent."""

from __future__ import annotations

import itertools
from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPolygonF

from pedigreeview.drawing.blocks import Link
from pedigreeview.drawing.placing import Line, OpenEnd, Orientation
from pedigreeview.drawing.signs import colour, female, male, pen, sign
from pedigreeview.drawing.tags import NEAR, font
from pedigreeview.drawing.theme import Theme, sizes
from pedigreeview.drawing.wording import odds_text

__all__ = [
    "Points",
    "draw_ends",
    "draw_line",
    "draw_open_end",
    "draw_route",
    "grains",
    "rounded",
    "within",
]

Points = Sequence[tuple[float, float]]


def rounded(points: Points, radius: float = 7.0) -> QPainterPath:
    """A path through the points with rounded corners."""
    path = QPainterPath(QPointF(*points[0]))
    for before, corner, after in zip(points, points[1:], points[2:], strict=False):
        own = min(radius, _length(before, corner) / 2, _length(corner, after) / 2)
        path.lineTo(_towards(corner, before, own))
        path.quadTo(QPointF(*corner), _towards(corner, after, own))
    path.lineTo(QPointF(*points[-1]))
    return path


def _length(one: tuple[float, float], other: tuple[float, float]) -> float:
    return abs(one[0] - other[0]) + abs(one[1] - other[1])


def _towards(start: tuple[float, float], end: tuple[float, float], far: float) -> QPointF:
    whole = _length(start, end) or 1.0
    part = far / whole
    return QPointF(start[0] + (end[0] - start[0]) * part, start[1] + (end[1] - start[1]) * part)


def grains(points: Points, step: float) -> list[tuple[float, float]]:
    """Where the grains of a pollen line lie: on the grid, so that they meet at corners."""
    found: list[tuple[float, float]] = []
    for (x0, y0), (x1, y1) in itertools.pairwise(points):
        long = abs(x1 - x0) + abs(y1 - y0)
        count = max(1, round(long / step))
        for at in range(count + 1):
            part = at / count
            spot = (round(x0 + (x1 - x0) * part, 1), round(y0 + (y1 - y0) * part, 1))
            if not found or found[-1] != spot:
                found.append(spot)
    return found


def within(points: Points, clip: QRectF, step: float) -> list[list[tuple[float, float]]]:
    """The parts of a way that lie near a rectangle, cut on the grid so that grains stay put."""
    near = clip.adjusted(-60, -60, 60, 60)
    left, right = near.left() // step * step, -(-near.right() // step) * step
    top, bottom = near.top() // step * step, -(-near.bottom() // step) * step
    found: list[list[tuple[float, float]]] = []
    for (x0, y0), (x1, y1) in itertools.pairwise(points):
        if max(x0, x1) < left or min(x0, x1) > right or max(y0, y1) < top or min(y0, y1) > bottom:
            continue
        start = (min(max(x0, left), right), min(max(y0, top), bottom))
        end = (min(max(x1, left), right), min(max(y1, top), bottom))
        if found and found[-1][-1] == start:
            found[-1].append(end)
        else:
            found.append([start, end])
    return found


def draw_line(
    painter: QPainter, line: Line, theme: Theme, *, detail: float, routes: Sequence[Points]
) -> None:
    """All routes of one net in one go, so that shared beginnings are drawn once."""
    measures = sizes()
    if not routes:
        return
    if line.back:
        painter.setPen(pen(theme["warning"], 2.0, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for points in routes:
            painter.drawPath(rounded(points))
        return
    thin = max(1.0, 0.7 / max(detail, 0.02))
    if line.role == "pollen":
        ink = theme["line"] if line.sure else theme["line_soft"]
        _pollen(painter, routes, ink, detail, measures.grid, measures.grain)
        return
    ink, width = theme["line"], measures.line
    if line.role in ("progeny", "source"):
        ink, width = theme["progeny"], 1.3
    path = QPainterPath()
    for points in routes:
        path.addPath(rounded(points))
    painter.setPen(pen(ink, max(width, thin)))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(path)


def _pollen(
    painter: QPainter,
    routes: Sequence[Points],
    ink: str,
    detail: float,
    step: float,
    size: float,
) -> None:
    if detail < 0.3:
        dotted = pen(ink, max(1.0, 0.7 / max(detail, 0.02)), Qt.PenStyle.DotLine)
        painter.setPen(dotted)
        for points in routes:
            painter.drawPolyline(QPolygonF([QPointF(x, y) for x, y in points]))
        return
    spots = dict.fromkeys(spot for points in routes for spot in grains(points, step))
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    for x, y in spots:
        path.addEllipse(QPointF(x, y), size / 2, size / 2)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(ink))
    painter.drawPath(path)


def draw_route(painter: QPainter, line: Line, points: Points, theme: Theme, detail: float) -> None:
    """One lit route, over everything else."""
    under = pen(theme["ground"], 6.0)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(under)
    painter.drawPath(rounded(points))
    if line.role == "pollen":
        _pollen(painter, [points], theme["lit"], detail, sizes().grid, sizes().grain + 1.2)
    else:
        painter.setPen(pen(theme["lit"], max(3.0, 1.4 / max(detail, 0.02))))
        painter.drawPath(rounded(points))


def draw_ends(
    painter: QPainter,
    line: Line,
    link: Link,
    points: Points,
    theme: Theme,
    *,
    detail: float,
    orientation: Orientation,
    right_of_knot: bool,
) -> None:
    """What stands at the end of a route: ♀ or ♂, odds, unrecorded selfings."""
    x, y = points[0] if line.back else points[-1]
    down = orientation == "down"
    ink = theme["ink_soft"]
    if link.role == "progeny":
        if link.selfings and detail >= 0.4:
            at = (x + 10, y - 11) if down else (x - 26, y - 9)
            sign(painter, "selfing", at[0], at[1], 5, ink)
            painter.setPen(colour(ink))
            painter.setFont(font(theme, 10.5, strong=True))
            painter.drawText(QPointF(at[0] + 8, at[1] + 4), str(link.selfings))
        return
    if not link.sure and detail >= 0.4:
        painter.setPen(colour(ink))
        painter.setFont(font(theme, 10.5, strong=True))
        spot = QPointF(x + 5, y - 7) if down else QPointF(x - 30, y - 5)
        painter.drawText(spot, odds_text(link.odds))
    if detail < NEAR or link.role == "source" or line.back or not link.sure:
        return
    draw = female if link.role == "seed" else male
    if down:
        side = 9 if right_of_knot and link.sure else -9
        draw(painter, x + side, y - 10, 11, ink)
    else:
        draw(painter, x - 11, y + (10 if right_of_knot else -10), 11, ink)


def draw_open_end(
    painter: QPainter, end: OpenEnd, theme: Theme, *, detail: float, orientation: Orientation
) -> None:
    """An unknown parent: a short line that ends in a ring with a question mark."""
    down = orientation == "down"
    tip = (end.x, end.y - end.length) if down else (end.x - end.length, end.y)
    ink = theme["line_soft"]
    points = [tip, (end.x, end.y)]
    if end.role == "pollen":
        _pollen(painter, [points], ink, max(detail, 0.3), sizes().grid, sizes().grain)
    else:
        painter.setPen(pen(ink, sizes().line))
        painter.drawLine(QPointF(*tip), QPointF(end.x, end.y))
    painter.setPen(pen(ink, 1.3))
    painter.setBrush(colour(theme["ground"]))
    painter.drawEllipse(QPointF(*tip), 7, 7)
    if detail >= 0.4:
        painter.setFont(font(theme, 10, strong=True))
        painter.setPen(colour(theme["ink_soft"]))
        painter.drawText(QRectF(tip[0] - 7, tip[1] - 7, 14, 14), Qt.AlignmentFlag.AlignCenter, "?")
        if end.odds < 1.0:
            painter.setFont(font(theme, 10.5, strong=True))
            painter.drawText(QPointF(end.x + 5, end.y - 3), odds_text(end.odds))
