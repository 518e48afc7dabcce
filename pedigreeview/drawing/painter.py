"""One painter for the screen, SVG, PDF and PNG: paints a placed picture on any QPainter.

The picture is painted in its own units; the caller sets the transformation and says with `detail`
how large one unit comes out, which decides what is worth drawing.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.drawing.blocks import Sign
from pedigreeview.drawing.lighting import Lit
from pedigreeview.drawing.lines import (
    Points,
    draw_ends,
    draw_line,
    draw_open_end,
    draw_route,
    within,
)
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.signs import colour, pen, reciprocal, sign
from pedigreeview.drawing.tags import FAR, Dress, draw_tag, elided, font
from pedigreeview.drawing.theme import Theme, sizes

__all__ = ["Scene", "paint", "paint_bands"]

_NO_LIT = Lit(frozenset(), frozenset())


@dataclass(frozen=True, slots=True)
class Scene:
    """What is shown of a picture besides the picture: all by code of plant or key of block."""

    selected: str = ""
    hover: str = ""
    pins: tuple[str, ...] = ()
    tints: Mapping[str, str] | None = None
    moved: Callable[[PlacedBlock], tuple[float, float]] | None = None
    """While a picture changes: how far a block is from its place."""
    lines: float = 1.0
    """Opacity of the lines."""
    blocks: float = 1.0


def paint(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    *,
    detail: float = 1.0,
    lit: Lit = _NO_LIT,
    focus: str | None = None,
    scene: Scene | None = None,
    clip: QRectF | None = None,
    bands: bool = True,
) -> None:
    """Paint a placed picture.

    detail : pixels that one picture unit takes
    lit : paths to bring out; everything else is dimmed
    focus : the plant with the focus ring; None: the view's own
    clip : only what lies near it is painted
    """
    scene = scene or Scene()
    focus = placed.view.focus or "" if focus is None else focus
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    if bands:
        paint_bands(painter, placed, theme, detail=detail, clip=clip)
    seen = _seen(placed, clip, scene)
    for item in seen:
        if item.block.sort == "pair":
            _frame(painter, item, theme, lit, scene)
    _lines(painter, placed, theme, detail, lit, scene, clip)
    numbers = dict(placed.view.founders)
    pins = {placed.view.block_of(code): at + 1 for at, code in enumerate(scene.pins)}
    focus_key = placed.view.block_of(focus) if focus else ""
    selected = placed.view.block_of(scene.selected) if scene.selected else ""
    hover = scene.hover
    painter.save()
    painter.setOpacity(painter.opacity() * scene.blocks)
    for item in seen:
        block = item.block
        dx, dy = scene.moved(item) if scene.moved is not None else (0.0, 0.0)
        if block.sort in ("tag", "pack", "chain"):
            dress = Dress(
                block.key == focus_key,
                block.key in (selected, scene.selected) and bool(scene.selected),
                bool(hover) and hover in (block.key, block.code),
                pins.get(block.key, 0),
                bool(lit.blocks) and block.key not in lit.blocks,
                block.key in lit.blocks,
                (scene.tints or {}).get(block.code or block.codes[0], ""),
            )
            rect = QRectF(item.x + dx, item.y + dy, item.width, item.height)
            draw_tag(painter, block, rect, theme, numbers, detail=detail, dress=dress)
        else:
            _knots(painter, item, theme, detail, lit, dx, dy, hover == block.key)
    painter.restore()


def _seen(placed: Placed, clip: QRectF | None, scene: Scene) -> list[PlacedBlock]:
    if clip is None or scene.moved is not None:
        return list(placed.blocks)
    near = clip.adjusted(-40, -40, 40, 40)
    return [
        item
        for item in placed.blocks
        if item.x <= near.right()
        and item.right >= near.left()
        and item.y <= near.bottom()
        and item.bottom >= near.top()
    ]


def paint_bands(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    *,
    detail: float = 1.0,
    clip: QRectF | None = None,
) -> None:
    """The faint strips of the generations, each with its number and name at the near edge."""
    left, top, width, height = placed.bounds
    area = clip if clip is not None else QRectF(left, top, width, height)
    down = placed.orientation == "down"
    scale = 1.0 / max(min(detail, 1.0), 0.05)
    for band in placed.bands:
        if down:
            strip = QRectF(area.left(), band.start, area.width(), band.end - band.start)
        else:
            strip = QRectF(band.start, area.top(), band.end - band.start, area.height())
        painter.fillRect(strip, colour(theme["band"]))
        _band_label(painter, band.generation, band.label, strip, theme, down, scale)


def _band_label(
    painter: QPainter,
    generation: int,
    label: str,
    strip: QRectF,
    theme: Theme,
    down: bool,
    scale: float,
) -> None:
    size = 13.0 * scale
    text = label or f"Gen. {generation}"
    painter.setPen(colour(theme["band_text"]))
    painter.setFont(font(theme, size, strong=True))
    if down:
        x = strip.left() + 14 * scale
        y = strip.center().y()
        shift = 0 if label and label != "Founders" else 5 * scale
        painter.drawText(QPointF(x, y + shift), text)
        if label and label != "Founders":
            painter.setFont(font(theme, size * 0.78))
            painter.drawText(QPointF(x, y + 15 * scale), f"generation {generation}")
    else:
        around = QRectF(strip.left(), strip.top() + 8 * scale, strip.width(), 20 * scale)
        painter.drawText(around, Qt.AlignmentFlag.AlignCenter, text)


def _frame(painter: QPainter, item: PlacedBlock, theme: Theme, lit: Lit, scene: Scene) -> None:
    dx, dy = scene.moved(item) if scene.moved is not None else (0.0, 0.0)
    rect = QRectF(item.x + dx, item.y + dy, item.width, item.height)
    painter.save()
    painter.setOpacity(painter.opacity() * scene.lines * (0.4 if lit.blocks else 1.0))
    painter.setPen(pen(theme["frame_edge"], 1.2))
    painter.setBrush(colour(theme["frame"]))
    painter.drawRoundedRect(rect, 14, 14)
    painter.restore()


def _lines(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    detail: float,
    lit: Lit,
    scene: Scene,
    clip: QRectF | None,
) -> None:
    if scene.lines <= 0.0:
        return
    middles = {spot.key: spot for item in placed.blocks for spot in item.knots}
    down = placed.orientation == "down"
    painter.save()
    painter.setOpacity(painter.opacity() * scene.lines * (0.22 if lit.blocks else 1.0))
    order = {"progeny": 0, "source": 0, "pollen": 1, "seed": 2}
    for line in sorted(placed.lines, key=lambda line: order[line.role]):
        ways = [points for _, points in line.routes if _near(points, clip)]
        routes: list[Points] = list(ways)
        if clip is not None:
            routes = [part for points in ways for part in within(points, clip, sizes().grid)]
        draw_line(painter, line, theme, detail=detail, routes=routes)
        for link, points in line.routes:
            end = points[-1]
            spot = middles.get(link.knot)
            right = False
            if spot is not None and link.role in ("seed", "pollen"):
                right = (
                    end[0] > spot.x + spot.width / 2 if down else end[1] > spot.y + spot.height / 2
                )
            if _near((end,), clip):
                draw_ends(
                    painter,
                    line,
                    link,
                    points,
                    theme,
                    detail=detail,
                    orientation=placed.orientation,
                    right_of_knot=right,
                )
    for open_end in placed.open_ends:
        if not _near(((open_end.x, open_end.y),), clip):
            continue
        draw_open_end(painter, open_end, theme, detail=detail, orientation=placed.orientation)
    painter.restore()
    if lit.links:
        painter.save()
        painter.setOpacity(painter.opacity() * scene.lines)
        for line in placed.lines:
            for link, points in line.routes:
                if (link.above, link.below, link.role, link.knot) in lit.links:
                    draw_route(painter, line, points, theme, detail)
        painter.restore()


def _near(points: tuple[tuple[float, float], ...], clip: QRectF | None) -> bool:
    if clip is None:
        return True
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return (
        min(xs) <= clip.right() + 40
        and max(xs) >= clip.left() - 40
        and min(ys) <= clip.bottom() + 40
        and max(ys) >= clip.top() - 40
    )


def _knots(
    painter: QPainter,
    item: PlacedBlock,
    theme: Theme,
    detail: float,
    lit: Lit,
    dx: float,
    dy: float,
    hover: bool,
) -> None:
    block = item.block
    before = painter.opacity()
    if lit.blocks and block.key not in lit.blocks:
        painter.setOpacity(before * 0.35)
    by_key = {knot.key: knot for knot in block.knots}
    for spot in item.knots:
        knot = by_key[spot.key]
        pill = QRectF(spot.x + dx, spot.y + dy, spot.width, spot.height)
        edge = theme["ink"] if hover else theme["knot_edge"]
        if detail < FAR:
            painter.fillRect(pill, colour(theme["knot_edge"]))
            continue
        planned = knot.state in ("planned", "skipped")
        painter.setPen(pen(edge, 1.3, Qt.PenStyle.DotLine if planned else Qt.PenStyle.SolidLine))
        painter.setBrush(colour(theme["knot"]))
        painter.drawRoundedRect(pill, 6, 6)
        _pill_text(painter, knot.sign, knot.label if detail >= 0.45 else "", pill, theme)
    if block.sort == "pair":
        ordered = sorted(item.knots, key=lambda spot: (spot.x, spot.y))
        ahead = {knot.key for knot in block.knots[: block.turn]}
        for one, other in itertools.pairwise(ordered):
            if (one.key in ahead) != (other.key in ahead):
                x = (one.x + one.width / 2 + other.x + other.width / 2) / 2 + dx
                if one.y == other.y:
                    x = (one.x + one.width + other.x) / 2 + dx
                    y = one.y + one.height / 2 + dy
                else:
                    y = (one.y + one.height + other.y) / 2 + dy
                reciprocal(painter, x, y, 9, theme["ink_soft"])
    painter.setOpacity(before)


def _pill_text(painter: QPainter, kind: Sign, label: str, pill: QRectF, theme: Theme) -> None:
    """Sign and code of a knot, in the middle of its pill."""
    y, x = pill.center().y(), pill.center().x()
    if not label:
        sign(painter, kind, x, y, 6.6, theme["ink"])
        return
    size = sizes().small_type
    type_ = font(theme, size, strong=True)
    text = elided(theme, size, label, pill.width() - 30, strong=True)
    wide = QFontMetricsF(type_).horizontalAdvance(text)
    left = x - (wide + 20) / 2
    sign(painter, kind, left + 6.6, y, 6.6, theme["ink"])
    painter.setPen(colour(theme["ink"]))
    painter.setFont(type_)
    painter.drawText(QPointF(left + 19, y + size * 0.36), text)
