"""The names of the generations, in a gutter of their own: at the left, or above a sideways picture.

In the gutter no tag, knot or line can be seen.  A picture in a file leaves room for it; on a screen
it has a ground of its own with a soft edge, below which the picture passes while one pans.  A name
stands on the line of the codes of its generation's first tags.  All names of a picture are of one
size, the largest at which each has room.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QLinearGradient, QPainter

from pedigreeview.drawing.blocks import FOUNDERS
from pedigreeview.drawing.placing import Band, Placed
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import MIDDLE, font
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, sizes

__all__ = ["gutter", "paint_names"]

_TYPE, _SECOND = 13.0, 10.2
_LEFT, _RIGHT = 10.0, 18.0
"""Pixels beside a name."""
_LINE = 15.0
_CODE, _FAR_CODE = 23.0, 35.0
"""From the upper edge of a tag to the line of its code, near and from afar: as `tags` writes it."""
_ABOVE = 32.0
"""Height of the gutter above a sideways picture."""
_SOFT = 16.0
"""Pixels over which the picture appears from below the gutter."""


def gutter(placed: Placed, text: float = 1.0) -> tuple[float, float]:
    """Pixels of a screen that the names take at the left and above; one of them is 0.

    text : how much larger than usual the type of the window is
    """
    if placed.orientation == "down":
        return sizes().band_label * text, 0.0
    return 0.0, _ABOVE * text


@dataclass(frozen=True, slots=True)
class _Name:
    """One name with its lines, in picture units."""

    lines: tuple[tuple[str, QFont], ...]
    wide: float


def paint_names(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    *,
    detail: float = 1.0,
    clip: QRectF | None = None,
    text: float = 1.0,
    solid: bool = False,
) -> None:
    """Paint the names at the near edge of what is shown.

    clip : what is shown of the picture; None: all of it
    text : how much larger than usual the type of the window is
    solid : on a screen: the gutter hides what passes below it
    """
    area = clip if clip is not None else QRectF(*placed.bounds)
    down = placed.orientation == "down"
    # On a screen names keep their size; in a file they grow with the picture, but not smaller.
    unit = text / max(detail if solid else min(detail, text), 0.05)
    room = max(gutter(placed, text)) / detail if solid else sizes().band_label
    if solid:
        _ground(painter, placed, theme, area, room, _SOFT * unit)
    elif down:
        # A sheet may leave more room at the left than the picture asks for.
        room = max(room, placed.bounds[0] + sizes().band_label - area.left())
    free = float("-inf")
    # In a file nothing fades beside a name.
    room -= (_LEFT + (_RIGHT if solid else _LEFT / 2)) * unit
    painter.setPen(colour(theme["band_text"]))
    rooms = [room if down else band.end - band.start - 2 * _LEFT * unit for band in placed.bands]
    names = _names(placed.bands, rooms, theme, unit, down=down)
    for band, name in zip(placed.bands, names, strict=True):
        if down:
            high = 1.25 * QFontMetricsF(name.lines[0][1]).ascent()
            line = band.start + sizes().band_pad + (_CODE if detail >= MIDDLE else _FAR_CODE)
            # Of a generation that begins out of sight the name stays in sight.
            line = max(line, min(area.top() + high + 4 * unit, band.end - 4 * unit))
            if line - high < free:
                continue
            two = len(name.lines) > 1 and line + (_LINE + 3) * unit <= band.end
            free = line + ((_LINE if two else 0) + 2) * unit
            _write(painter, name.lines[: 2 if two else 1], area.left() + _LEFT * unit, line, unit)
        else:
            left = (band.start + band.end - name.wide) / 2
            if left < free:
                continue
            free = left + name.wide + 6 * unit
            _write(painter, name.lines, left, area.top() + 21 * unit, unit)


def _write(
    painter: QPainter, lines: Sequence[tuple[str, QFont]], left: float, line: float, unit: float
) -> None:
    for at, (words, face) in enumerate(lines):
        painter.setFont(face)
        painter.drawText(QPointF(left, line + at * _LINE * unit), words)


def _ground(
    painter: QPainter, placed: Placed, theme: Theme, area: QRectF, room: float, soft: float
) -> None:
    """The gutter's ground, with the strips of the generations running on through it."""
    down = placed.orientation == "down"
    near, far = (area.top(), area.bottom()) if down else (area.left(), area.right())
    ground, shade_of_band = colour(theme["ground"]), colour(theme["band"])
    shades = []
    for band in placed.bands:
        shades += [((near, band.start), ground), ((band.start, band.end), shade_of_band)]
        near = band.end
    shades.append(((near, far), ground))
    for (start, end), shade in shades:
        if down:
            strip = QRectF(area.left(), start, room, end - start)
            inner = strip.adjusted(0, 0, -soft, 0)
            edge = QRectF(inner.right(), start, soft, end - start)
            ramp = QLinearGradient(edge.left(), 0.0, edge.right(), 0.0)
        else:
            strip = QRectF(start, area.top(), end - start, room)
            inner = strip.adjusted(0, 0, 0, -soft)
            edge = QRectF(start, inner.bottom(), end - start, soft)
            ramp = QLinearGradient(0.0, edge.top(), 0.0, edge.bottom())
        if not strip.intersects(area):
            continue
        clear = QColor(shade)
        clear.setAlpha(0)
        ramp.setColorAt(0.0, shade)
        ramp.setColorAt(1.0, clear)
        painter.fillRect(inner.intersected(area), shade)
        painter.fillRect(edge.intersected(area), ramp)


def _words(band: Band, *, short: bool) -> tuple[str, ...]:
    """What stands on the lines of a name."""
    if band.generation < 0:
        # These are in two parts; the second says more.
        name, _, more = tell(band.label).partition(", ")
        return (name, more) if more else (name,)
    if band.label == FOUNDERS:
        return (tell(FOUNDERS),)
    if band.label:
        return band.label, tell(f"generation {band.generation}")
    number = band.generation
    return (tell(f"Gen. {number}") if short else tell(f"Generation {number}"),)


def _names(
    bands: Sequence[Band], rooms: Sequence[float], theme: Theme, unit: float, *, down: bool
) -> list[_Name]:
    """The names of all bands, each line in the one type that suits all.

    rooms : width that each name has
    """
    lines = slice(None) if down else slice(1)
    words = [_words(band, short=False)[lines] for band in bands]
    if _part(words, rooms, theme, unit, 0) < 1:
        words = [_words(band, short=True)[lines] for band in bands]
    faces = [
        font(theme, size * unit * _part(words, rooms, theme, unit, at), strong=not at)
        for at, size in enumerate((_TYPE, _SECOND))
    ]
    found = []
    for said in words:
        held = tuple(zip(said, faces, strict=False))
        widest = max(QFontMetricsF(face).horizontalAdvance(one) for one, face in held)
        found.append(_Name(held, widest))
    return found


def _part(
    words: Sequence[tuple[str, ...]],
    rooms: Sequence[float],
    theme: Theme,
    unit: float,
    line: int,
) -> float:
    """The part of its usual size at which a line of every name has room; at most 1."""
    metrics = QFontMetricsF(font(theme, (_SECOND if line else _TYPE) * unit, strong=not line))
    part = 1.0
    for said, room in zip(words, rooms, strict=True):
        wide = metrics.horizontalAdvance(said[line]) if line < len(said) else 0.0
        if wide > room > 0:
            part = min(part, room / wide)
    return part
