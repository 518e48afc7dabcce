"""What lies beyond the edges of the picture on the screen: a soft fade and how many tags more.

Where tags lie out of sight the picture fades towards that edge, and a small sign says how many they
are; a click on it goes there.  It is painted over the picture, in pixels.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Literal

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QLinearGradient, QPainter

from pedigreeview.drawing.far import Cull, block_boxes, tags_beyond
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import font
from pedigreeview.drawing.theme import Theme, theme
from pedigreeview.window.canvas_places import CanvasPlaces
from pedigreeview.window.words import number

__all__ = ["Way", "beyond", "goal", "paint_fades", "paint_signs", "sign_at", "sign_rects"]

Way = Literal["left", "right", "above", "below"]
_WAYS: tuple[Way, ...] = ("left", "right", "above", "below")

_FADE = 28.0
"""Pixels over which the picture fades."""
_HIGH, _TYPE, _GAP = 24.0, 12.0, 8.0
_SHIFT = 12.0
"""Pixels by which a sign is moved aside."""
_FEW = 200
"""Blocks of a picture up to which signs keep clear of them."""
_STRIDE = 0.7
"""Part of what is in sight by which a click on a sign moves on."""


def beyond(canvas: CanvasPlaces) -> dict[Way, int]:
    """How many tags, packs and chains are out of sight, or cut off, by the edge that does so."""
    placed = canvas.placed
    if placed is None:
        return {}
    clear = canvas.clear_area()
    area = QRectF(canvas.to_picture(clear.topLeft()), canvas.to_picture(clear.bottomRight()))
    # A tag of which more than a quarter is cut off is not seen either.
    across, down = _quarter(placed)
    area.adjust(across, down, -across, -down)
    counts = zip(_WAYS, tags_beyond(placed, area), strict=True)
    return {way: count for way, count in counts if count}


def _quarter(placed: Placed) -> tuple[float, float]:
    """How much of half a tag may be cut off while it still counts as seen, across and down."""
    first = next((item for item in placed.blocks if item.block.codes), None)
    return (0.0, 0.0) if first is None else (first.width / 4, first.height / 4)


def sign_rects(canvas: CanvasPlaces) -> dict[Way, tuple[QRectF, str]]:
    """Where the sign of each edge lies in the viewport, and what it says."""
    placed = canvas.placed
    if placed is None:
        return {}
    # The pointer asks with each of its moves; the answer changes with the view alone.
    origin, size = canvas.to_picture(QPointF(0, 0)), canvas.viewport().size()
    view = origin.toTuple(), canvas.zoom(), size.toTuple(), canvas.text_scale()
    held = placed.held.get("edges")
    if held is None or held[0] != view:
        held = placed.held["edges"] = (view, _signs(canvas))
    found: dict[Way, tuple[QRectF, str]] = held[1]
    return found


def _signs(canvas: CanvasPlaces) -> dict[Way, tuple[QRectF, str]]:
    found: dict[Way, tuple[QRectF, str]] = {}
    area, text = QRectF(canvas.viewport().rect()), canvas.text_scale()
    clear = canvas.clear_area()
    type_ = font(theme("light"), _TYPE * text, strong=True)
    for way, count in beyond(canvas).items():
        signs = [held for held, _ in found.values()]
        words = QCoreApplication.translate("Canvas", "{} more").format(number(count))
        wide = QFontMetricsF(type_).horizontalAdvance(words) + 30 * text
        rect = QRectF(0, 0, wide, _HIGH * text)
        rect.moveCenter(clear.center())
        if way == "left":
            rect.moveLeft(area.left() + _GAP)
        elif way == "right":
            rect.moveRight(area.right() - _GAP)
        elif way == "above":
            rect.moveTop(clear.top() + _GAP / 2)
        else:
            rect.moveBottom(area.bottom() - _GAP / 2)
        if way in ("left", "right"):
            top = _between_bands(canvas, rect)
            if top is None:
                # In the gutter there are names at all heights.
                rect.moveLeft(max(rect.left(), clear.left() + _GAP))
            else:
                rect.moveTop(top)
            if clear.intersects(rect):
                rect.moveTop(_beside_lines(canvas, rect, clear, signs))
        else:
            rect.moveLeft(_clear(canvas, rect, clear, signs))
        found[way] = (rect, words)
    return found


def _clear(canvas: CanvasPlaces, rect: QRectF, area: QRectF, signs: list[QRectF]) -> float:
    """The left edge nearest to its own at which a sign lies on no other and on no tag.

    Where there is no such place, on no other sign at least; else its own.
    """
    strip = QRectF(area.left(), rect.top(), area.width(), rect.height())
    beside = [(sign.left(), sign.right()) for sign in signs if sign.intersects(strip)]
    for taken in ([*beside, *_tags_in(canvas, strip)], beside):
        found = _free(rect, area, taken)
        if found is not None:
            return found
    return rect.left()


def _tags_in(canvas: CanvasPlaces, strip: QRectF) -> list[tuple[float, float]]:
    """Left and right edge of each tag in a strip of the viewport; of a large picture none."""
    placed = canvas.placed
    if placed is None or len(placed.blocks) > _FEW:
        return []
    start, end = canvas.to_picture(strip.topLeft()), canvas.to_picture(strip.bottomRight())
    held = [placed.blocks[at] for at in Cull.near(block_boxes(placed), QRectF(start, end), 0.0)]
    return [
        (canvas.to_view(item.x, item.y).x(), canvas.to_view(item.right, item.y).x())
        for item in held
    ]


def _free(rect: QRectF, area: QRectF, taken: list[tuple[float, float]]) -> float | None:
    """The left edge nearest to its own at which a sign lies on nothing that is taken."""
    for step in range(int(area.width() / 2 / _SHIFT)):
        for way in (1, -1):
            left = rect.left() + way * step * _SHIFT
            right = left + rect.width()
            inside = area.left() <= left and right <= area.right()
            if inside and not any(left < far and right > near for near, far in taken):
                return left
    return None


def _beside_lines(canvas: CanvasPlaces, rect: QRectF, area: QRectF, signs: list[QRectF]) -> float:
    """The upper edge nearest to its own at which a sign lies on no other, no tag, knot or line."""
    placed = canvas.placed
    if placed is None:
        return rect.top()
    start = canvas.to_picture(QPointF(rect.left() - _GAP, area.top()))
    end = canvas.to_picture(QPointF(rect.right() + _GAP, area.bottom()))
    focus = canvas.placed_focus()
    few = placed.blocks if len(placed.blocks) <= _FEW else () if focus is None else (focus,)
    tags: list[tuple[float, float]] = []
    lines: list[tuple[float, float]] = []
    own: list[tuple[float, float]] = []
    for item in few:
        if item.right > start.x() and item.x < end.x():
            (own if item is focus else tags).append((item.y, item.bottom))
    for line in placed.lines if len(placed.blocks) <= _FEW else ():
        for _, points in line.routes:
            for (x, y), (far_x, far_y) in pairwise(points):
                if max(x, far_x) > start.x() and min(x, far_x) < end.x():
                    lines.append((min(y, far_y), max(y, far_y)))
    beside = [
        (sign.top() - _GAP / 2, sign.bottom() + _GAP / 2)
        for sign in signs
        if sign.left() < rect.right() and sign.right() > rect.left()
    ]
    high = rect.height()
    # Where it cannot keep clear of all it does so of tags, at least of the focus.
    for spans in ([*own, *tags, *lines], [*own, *tags], own, []):
        taken = beside + [
            (canvas.to_view(0, near).y() - _GAP / 2, canvas.to_view(0, far).y() + _GAP / 2)
            for near, far in spans
            if far > start.y() and near < end.y()
        ]
        for step in range(int(area.height() / _SHIFT) * 2):
            for way in (1, -1):
                top = rect.top() + way * step * _SHIFT / 2
                bottom = top + high
                # The signs above and below have the ends to themselves.
                inside = area.top() + high + _GAP <= top and bottom <= area.bottom() - high - _GAP
                if inside and not any(top < far and bottom > near for near, far in taken):
                    return top
    return rect.top()


def _between_bands(canvas: CanvasPlaces, rect: QRectF) -> float | None:
    """The upper edge nearest to its own at which a sign lies on no generation's strip.

    The names stand on the strips.  None where the strips leave no room for it.
    """
    placed = canvas.placed
    if placed is None or placed.orientation != "down":
        return rect.top()
    high = canvas.viewport().height()
    spans = [
        (canvas.to_view(0, band.start).y(), canvas.to_view(0, band.end).y())
        for band in placed.bands
    ]
    # The signs above and below have the ends to themselves.
    ends = (rect.height() + _GAP, high - rect.height() - _GAP)
    starts, stops = [-high, *(far for _, far in spans)], [*(near for near, _ in spans), 2.0 * high]
    found = []
    for start, stop in zip(starts, stops, strict=True):
        near, far = max(start, ends[0]), min(stop, ends[1])
        if far - near >= rect.height():
            found.append((near + far - rect.height()) / 2)
    return min(found, key=lambda top: abs(top - rect.top()), default=None)


def sign_at(canvas: CanvasPlaces, spot: QPointF) -> Way | None:
    """The edge whose sign lies there."""
    held = sign_rects(canvas).items()
    return next((way for way, (rect, _) in held if rect.contains(spot)), None)


def goal(canvas: CanvasPlaces, way: Way) -> QPointF:
    """How far the picture goes for a click on a sign, in picture units."""
    scale = canvas.zoom()
    across = canvas.viewport().width() * _STRIDE / scale
    down = canvas.viewport().height() * _STRIDE / scale
    return {
        "left": QPointF(-across, 0),
        "right": QPointF(across, 0),
        "above": QPointF(0, -down),
        "below": QPointF(0, down),
    }[way]


def paint_fades(painter: QPainter, canvas: CanvasPlaces, look: Theme) -> None:
    """Fade the picture towards the edges beyond which it goes on."""
    area, text = QRectF(canvas.viewport().rect()), canvas.text_scale()
    # Where the names of the generations stand they have a soft edge of their own.
    names = "left" if canvas.clear_area().left() > 0 else "above"
    for way in sign_rects(canvas):
        if way != names:
            _fade(painter, area, way, look, text)


def paint_signs(painter: QPainter, canvas: CanvasPlaces, look: Theme, hover: str) -> None:
    """Say at the edges how much more there is.

    hover : the edge whose sign the pointer is on
    """
    text = canvas.text_scale()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for way, (rect, words) in sign_rects(canvas).items():
        painter.setPen(pen(look["ink_soft" if way == hover else "paper_edge"], 1.0))
        painter.setBrush(colour(look["paper"]))
        painter.drawRoundedRect(rect, rect.height() / 2, rect.height() / 2)
        painter.setFont(font(look, _TYPE * text))
        painter.setPen(colour(look["ink" if way == hover else "ink_soft"]))
        side = 18 * text
        inner = rect.adjusted(side, 0, -side / 2, 0)
        if way == "right":
            inner = rect.adjusted(side / 2, 0, -side, 0)
        painter.drawText(inner, Qt.AlignmentFlag.AlignCenter, words)
        head = rect.right() - side / 2 if way == "right" else rect.left() + side / 2 + 2
        _arrow(painter, QPointF(head, rect.center().y()), way, look, text)


def _fade(painter: QPainter, area: QRectF, way: Way, look: Theme, text: float) -> None:
    """Fade towards one edge; above and below there is clear ground for the sign."""
    strip, clear_ground = QRectF(area), QRectF(area)
    high = _HIGH * text + _GAP
    if way == "left":
        strip.setRight(area.left() + _FADE)
        ramp = QLinearGradient(strip.topLeft(), strip.topRight())
    elif way == "right":
        strip.setLeft(area.right() - _FADE)
        ramp = QLinearGradient(strip.topRight(), strip.topLeft())
    elif way == "above":
        clear_ground.setBottom(area.top() + high)
        strip.setTop(clear_ground.bottom())
        strip.setBottom(strip.top() + _FADE)
        ramp = QLinearGradient(strip.topLeft(), strip.bottomLeft())
    else:
        clear_ground.setTop(area.bottom() - high)
        strip.setBottom(clear_ground.top())
        strip.setTop(strip.bottom() - _FADE)
        ramp = QLinearGradient(strip.bottomLeft(), strip.topLeft())
    solid, clear = QColor(look["ground"]), QColor(look["ground"])
    clear.setAlpha(0)
    if way in ("above", "below"):
        painter.fillRect(clear_ground, solid)
    ramp.setColorAt(0.0, solid)
    ramp.setColorAt(1.0, clear)
    painter.fillRect(strip, ramp)


def _arrow(painter: QPainter, tip: QPointF, way: Way, look: Theme, text: float) -> None:
    turn = {"left": 180.0, "right": 0.0, "above": -90.0, "below": 90.0}[way]
    painter.save()
    painter.translate(tip)
    painter.rotate(turn)
    painter.setPen(pen(look["ink_soft"], 1.5 * text))
    size = 3.5 * text
    painter.drawPolyline(
        [QPointF(-size / 2, -size), QPointF(size / 2, 0), QPointF(-size / 2, size)]
    )
    painter.restore()
