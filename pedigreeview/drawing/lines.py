"""The lines of the picture: unbroken for the seed parent, grains for the pollen parent."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPainterPath, QPolygonF

from pedigreeview.drawing.blocks import Link
from pedigreeview.drawing.far import Cull, rastered
from pedigreeview.drawing.placing import Line, OpenEnd, Orientation
from pedigreeview.drawing.signs import colour, female, male, pen, sign
from pedigreeview.drawing.strokes import End, Stroke, strokes_of
from pedigreeview.drawing.tags import FAR, NEAR, font
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, sizes
from pedigreeview.drawing.wording import odds_text

__all__ = [
    "Points",
    "draw_end",
    "draw_loop_words",
    "draw_open_end",
    "draw_route",
    "draw_stroke",
    "grains",
    "rounded",
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
    """Where the grains of one pollen route lie, round its corners too."""
    link = Link("", "", "pollen", "")
    way = Line("", "pollen", 1.0, True, False, ((link, tuple(points)),))
    return strokes_of(way).spots


def draw_stroke(
    painter: QPainter, stroke: Stroke, theme: Theme, *, detail: float, clip: QRectF | None = None
) -> None:
    """All routes of one net; of long ones only what lies near the clip."""
    line = stroke.line
    thin = max(1.0, 0.7 / max(detail, 0.02))
    if line.role == "pollen":
        ink = theme["warning"] if line.back else theme["line" if line.sure else "line_soft"]
        if rastered(painter):
            _handfuls(painter, stroke, ink, clip)
        else:
            _dots(painter, _spots_path(stroke, clip), ink)
    else:
        ink, width = theme["line"], sizes().line
        if line.role in ("progeny", "source"):
            ink, width = theme["progeny"], 1.3
        if line.back:
            ink = theme["warning"]
        found = pen(ink, max(width, thin))
        # Stretches and bends meet end to end: round ends would lie on each other and look heavy.
        found.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(found)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(_way_path(stroke, clip))


_MANY = 400
"""Parts of a stroke from which only what lies near the clip is made into a path."""


def _way_path(stroke: Stroke, clip: QRectF | None) -> QPainterPath:
    if "path" in stroke.held:
        held: QPainterPath = stroke.held["path"]
        return held
    few = len(stroke.level) + len(stroke.upright) + len(stroke.bends) < _MANY
    area = None if few or clip is None else clip.adjusted(-20, -20, 20, 20)
    path = QPainterPath()
    for y, left, right in stroke.level:
        if area is None or (area.top() <= y <= area.bottom() and _meet(left, right, area)):
            path.moveTo(left, y)
            path.lineTo(right, y)
    for x, top, bottom in stroke.upright:
        if area is None or (area.left() <= x <= area.right()):
            path.moveTo(x, top)
            path.lineTo(x, bottom)
    for one, corner, other in stroke.bends:
        if area is None or area.contains(QPointF(*corner)):
            path.moveTo(*one)
            path.quadTo(*corner, *other)
    if area is None:
        stroke.held["path"] = path
    return path


def _meet(left: float, right: float, area: QRectF) -> bool:
    return left <= area.right() and right >= area.left()


def _spots_path(stroke: Stroke, clip: QRectF | None) -> QPainterPath:
    if "path" in stroke.held:
        held: QPainterPath = stroke.held["path"]
        return held
    if clip is None or len(stroke.spots) < _MANY:
        path = _round_spots(stroke.spots, sizes().grain)
        stroke.held["path"] = path
        return path
    places = stroke.held.get("places")
    if places is None:
        places = stroke.held["places"] = np.array(stroke.spots)
    near = clip.adjusted(-6, -6, 6, 6)
    xs, ys = places[:, 0], places[:, 1]
    inside = (xs > near.left()) & (xs < near.right()) & (ys > near.top()) & (ys < near.bottom())
    return _round_spots(places[inside].tolist(), sizes().grain)


_HANDFUL = 10
"""Grains of one path in pixels: per grain a path of a hundred takes Qt four times as long."""


@dataclass(slots=True)
class _Handfuls:
    """The grains of a stroke a few at a time, in their order along it."""

    spots: list[list[tuple[float, float]]]
    boxes: NDArray[np.float64]
    """Left, top, right, bottom in a row each."""
    paths: list[QPainterPath | None]
    """Made when they first come into sight."""


def _handfuls(painter: QPainter, stroke: Stroke, ink: str, clip: QRectF | None) -> None:
    """The grains as pixels: the same as of one path, sooner there."""
    held: _Handfuls | None = stroke.held.get("handfuls")
    if held is None:
        every = stroke.spots
        spots = [every[at : at + _HANDFUL] for at in range(0, len(every), _HANDFUL)]
        ends = []
        for one in spots:
            xs, ys = zip(*one, strict=True)
            ends.append((min(xs), min(ys), max(xs), max(ys)))
        boxes = np.array(ends, dtype=float).reshape(-1, 4).T.copy()
        held = stroke.held["handfuls"] = _Handfuls(spots, boxes, [None] * len(spots))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(ink))
    near = range(len(held.spots)) if clip is None else Cull.near(held.boxes, clip, 6.0)
    for at in near:
        path = held.paths[at]
        if path is None:
            path = held.paths[at] = _round_spots(held.spots[at], sizes().grain)
        painter.drawPath(path)


def _round_spots(spots: Iterable[Sequence[float]], size: float) -> QPainterPath:
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    for x, y in spots:
        path.addEllipse(QPointF(x, y), size / 2, size / 2)
    return path


def _dots(painter: QPainter, path: QPainterPath, ink: str) -> None:
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
        spots = grains(points, sizes().grid)
        _dots(painter, _round_spots(spots, sizes().grain + 1.2), theme["lit"])
    else:
        painter.setPen(pen(theme["lit"], max(3.0, 1.4 / max(detail, 0.02))))
        painter.drawPath(rounded(points))


def draw_end(
    painter: QPainter,
    end: End,
    theme: Theme,
    *,
    detail: float,
    orientation: Orientation,
    framed: bool = False,
) -> None:
    """What stands at the end of a route: ♀ or ♂, odds, unrecorded selfings.

    framed : the knot stands in a reciprocal frame, where the signs show at every scale
    """
    x, y, link = end.x, end.y, end.link
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
    least = FAR if framed else NEAR
    if detail < least or link.role == "source" or not link.sure:
        return
    draw = female if link.role == "seed" else male
    # Far out the sign grows, so that it can still be told which one it is.
    size = 11.0 if detail >= 0.75 else min(15.0, 8.25 / detail)
    if down:
        draw(painter, x + (1 if end.right else -1) * (3.5 + size / 2), y - 10, size, ink)
    else:
        draw(painter, x - 11, y + (1 if end.right else -1) * (4.5 + size / 2), size, ink)


def draw_loop_words(
    painter: QPainter, points: Points, theme: Theme, *, detail: float, orientation: Orientation
) -> None:
    """On a line that runs back to an ancestor: an arrowhead that way, and what it says."""
    ways = list(itertools.pairwise(points))
    (x0, y0), (x1, y1) = max(ways, key=lambda way: _length(*way))
    x, y = (x0 + x1) / 2, (y0 + y1) / 2
    way_x, way_y = (x1 > x0) - (x1 < x0), (y1 > y0) - (y1 < y0)
    tip = QPointF(x + 6 * way_x, y + 6 * way_y)
    wings = [
        QPointF(x - 6 * way_x + side * 6 * way_y, y - 6 * way_y + side * 6 * way_x)
        for side in (1, -1)
    ]
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(theme["warning"]))
    painter.drawPolygon(QPolygonF([tip, *wings]))
    if detail < 0.4:
        return
    words, type_ = tell("own ancestor"), font(theme, 11, strong=True)
    beside = QPointF(x + 10, y + 4) if way_y else QPointF(x + 12, y - 8)
    wide = QFontMetricsF(type_).horizontalAdvance(words)
    painter.fillRect(QRectF(beside.x() - 3, beside.y() - 11, wide + 6, 15), colour(theme["ground"]))
    painter.setPen(colour(theme["warning"]))
    painter.setFont(type_)
    painter.drawText(beside, words)


def draw_open_end(
    painter: QPainter, end: OpenEnd, theme: Theme, *, detail: float, orientation: Orientation
) -> None:
    """An unknown parent: a short line that ends in a ring with a question mark."""
    down = orientation == "down"
    tip = (end.x, end.y - end.length) if down else (end.x - end.length, end.y)
    ink = theme["line_soft"]
    points = [tip, (end.x, end.y)]
    if end.role == "pollen":
        _dots(painter, _round_spots(grains(points, sizes().grid), sizes().grain), ink)
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
            painter.drawText(QPointF(end.x + 5, end.y - 4), odds_text(end.odds))
