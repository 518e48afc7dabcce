"""One painter for the screen, SVG, PDF and PNG: paints a placed picture on any QPainter.

The picture is painted in its own units; the caller sets the transformation and says with `detail`
how large one unit comes out, which decides what is worth drawing.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TypedDict, TypeVar

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.drawing.blocks import Block, Sign
from pedigreeview.drawing.far import (
    CROWD,
    LINES_FAR,
    Cull,
    block_boxes,
    cull_of,
    paint_far,
    rastered,
)
from pedigreeview.drawing.lighting import Lit
from pedigreeview.drawing.lines import (
    draw_end,
    draw_loop_words,
    draw_open_end,
    draw_route,
    draw_stroke,
)
from pedigreeview.drawing.moving import draw_moving, rested
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.signs import colour, pen, reciprocal, sign
from pedigreeview.drawing.strokes import strokes
from pedigreeview.drawing.tags import FAR, Dress, draw_tag, elided, font
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, sizes

__all__ = ["Scene", "paint", "paint_bands"]

_Thing = TypeVar("_Thing")
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
    pair: tuple[str, ...] = ()
    """The two plants that are compared."""
    text: float = 1.0
    """How much larger than usual the type of the window is."""
    faded: frozenset[str] = frozenset()
    """Plants put back by a filter: there, but faint."""
    tint_words: Mapping[str, str] = field(default_factory=dict)
    """By plant: the value that it is tinted by, printed on its tag."""
    tint_marks: Mapping[str, int] = field(default_factory=dict)
    """By plant: number of the pattern that stands for its tint where colours cannot."""


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
    # The seed parent stands left in every language; the picture is not mirrored.
    painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
    if bands:
        paint_bands(painter, placed, theme, clip=clip, names=False)
    seen = _seen(placed, clip, scene)
    crowded = detail < FAR or (detail < LINES_FAR and len(placed.blocks) > CROWD)
    pixels = crowded and clip is not None and scene.moved is None and rastered(painter)
    if not pixels or detail >= FAR:
        for item in seen:
            if item.block.sort == "pair":
                _frame(painter, item, theme, lit, scene)
    if pixels and clip is not None:
        paint_far(painter, placed, theme, lit=lit, clip=clip, tints=scene.tints)
    _lines(painter, placed, theme, detail, lit, scene, clip, pixels=pixels)
    numbers = dict(placed.view.founders)
    pins = {placed.view.block_of(code): at + 1 for at, code in enumerate(scene.pins)}
    focus_key = placed.view.block_of(focus) if focus else ""
    selected = placed.view.block_of(scene.selected) if scene.selected else ""
    pair = {placed.view.block_of(code) for code in scene.pair if code}
    hover = scene.hover
    back = scene.faded | placed.view.aside
    if scene.moved is None:
        rested(placed)
    painter.save()
    painter.setOpacity(painter.opacity() * scene.blocks)
    if pixels and detail < FAR:
        # Their rectangles are there already: only what is marked is drawn on them.
        marked = {focus_key, selected, scene.selected, hover, *pins, *lit.blocks, *pair}
        seen = [item for item in seen if item.block.key in marked]
    for item in seen:
        block = item.block
        dx, dy = scene.moved(item) if scene.moved is not None else (0.0, 0.0)
        if block.sort in ("tag", "pack", "chain"):
            dress = Dress(
                block.key == focus_key,
                block.key in (selected, scene.selected) and bool(scene.selected),
                bool(hover) and hover in (block.key, block.code),
                pins.get(block.key, 0),
                bool(lit.blocks) and block.key not in lit.blocks and not block.ghost,
                block.key in lit.blocks or block.key in pair,
                back=bool(back) and bool(block.codes) and back.issuperset(block.codes),
                **_tint_of(block, scene, patterned=theme.patterned),
            )
            rect = QRectF(item.x + dx, item.y + dy, item.width, item.height)
            if scene.moved is not None and detail >= FAR:
                draw_moving(painter, placed, block, rect, theme, numbers, detail, dress)
            else:
                draw_tag(painter, block, rect, theme, numbers, detail=detail, dress=dress)
        else:
            _knots(painter, item, theme, detail, lit, dx, dy, hover == block.key)
    painter.restore()
    if bands:
        # Last, for the names stay at the edge while tags and lines pass behind them.
        _band_names(painter, placed, theme, detail, clip, scene.text, seen)


class _Tinted(TypedDict):
    tint: str
    word: str
    mark: int


def _tint_of(block: Block, scene: Scene, *, patterned: bool) -> _Tinted:
    """Colour, printed value and pattern of a tag; of a pack what all of its plants share.

    Where founders are told apart by patterns, so are the classes of a tint, on plain paper.
    """
    codes = block.codes if block.sort == "pack" else (block.code,)
    tints = {(scene.tints or {}).get(code, "") for code in codes}
    words = {scene.tint_words.get(code, "") for code in codes}
    marks = {scene.tint_marks.get(code, -1) for code in codes}
    mark = marks.pop() if len(marks) == 1 else -1
    plain = len(tints) > 1 or (patterned and mark >= 0)
    return {
        "tint": "" if plain else tints.pop(),
        "word": words.pop() if len(words) == 1 else "…",
        "mark": mark,
    }


def _seen(placed: Placed, clip: QRectF | None, scene: Scene) -> list[PlacedBlock]:
    if clip is None or scene.moved is not None:
        return list(placed.blocks)
    return [placed.blocks[at] for at in Cull.near(block_boxes(placed), clip)]


def paint_bands(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    *,
    detail: float = 1.0,
    clip: QRectF | None = None,
    text: float = 1.0,
    names: bool = True,
) -> None:
    """The faint strips of the generations, each with its number and name at the near edge."""
    for band in placed.bands:
        strip = _strip(placed, band.start, band.end, clip)
        painter.fillRect(strip, colour(theme["band"]))
    if names:
        _band_names(painter, placed, theme, detail, clip, text)


def _strip(placed: Placed, start: float, end: float, clip: QRectF | None) -> QRectF:
    left, top, width, height = placed.bounds
    area = clip if clip is not None else QRectF(left, top, width, height)
    if placed.orientation == "down":
        return QRectF(area.left(), start, area.width(), end - start)
    return QRectF(start, area.top(), end - start, area.height())


def _band_names(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    detail: float,
    clip: QRectF | None,
    text: float,
    seen: Sequence[PlacedBlock] = (),
) -> None:
    """Each generation's number and name at the near edge, on what of its strip is in sight.

    seen : what is painted already: a name gives way to a tag, to the upper rim of its strip
    """
    tags = [QRectF(one.x, one.y, one.width, one.height) for one in seen if one.block.codes]
    scale = text / max(min(detail, text), 0.05)
    down = placed.orientation == "down"
    for band in placed.bands:
        strip = _strip(placed, band.start, band.end, clip)
        if clip is not None:
            shown = strip.intersected(clip)
            high = shown.height() if down else strip.height()
            # A strip that hardly shows keeps its name at its own middle, mostly out of sight.
            strip = shown if high >= min(24 * scale, strip.height()) else strip
        taken = [tag for tag in tags if tag.intersects(strip)]
        _band_label(painter, band.generation, band.label, strip, theme, down, scale, taken)


def _band_label(
    painter: QPainter,
    generation: int,
    label: str,
    strip: QRectF,
    theme: Theme,
    down: bool,
    scale: float,
    taken: Sequence[QRectF],
) -> None:
    size = 13.0 * scale
    founders = tell("Founders") if label == "Founders" else ""
    name = founders or label or tell(f"Gen. {generation}")
    # The second line only where the strip has room for it.
    second = down and bool(label) and label != "Founders" and strip.height() >= 40 * scale
    lines = [(name, font(theme, size, strong=True))]
    if second:
        lines.append((tell(f"generation {generation}"), font(theme, size * 0.78)))
    wide = max(QFontMetricsF(one).horizontalAdvance(words) for words, one in lines)
    high = (34 if second else 20) * scale
    if down:
        plate = QRectF(strip.left() + 10 * scale, strip.center().y() - high / 2, 0, high)
        plate.setWidth(wide + 8 * scale)
    else:
        plate = QRectF(strip.center().x() - wide / 2 - 4 * scale, strip.top() + 8 * scale, 0, high)
        plate.setWidth(wide + 8 * scale)
    under = [tag.top() for tag in taken if tag.intersects(plate)] if down else []
    if under:
        lines = lines[:1]
        plate = QRectF(plate.left(), min(under) - 19 * scale, plate.width(), 18 * scale)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(theme["band"]))
    painter.drawRoundedRect(plate, 3 * scale, 3 * scale)
    painter.setPen(colour(theme["band_text"]))
    for at, (words, one) in enumerate(lines):
        painter.setFont(one)
        painter.drawText(
            QPointF(plate.left() + 4 * scale, plate.top() + (15 + 15 * at) * scale), words
        )


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
    *,
    pixels: bool,
) -> None:
    if scene.lines <= 0.0:
        return
    if not (pixels and detail < FAR):
        _strokes(painter, placed, theme, detail, lit, scene, clip, pixels=pixels)
    if lit.links:
        painter.save()
        painter.setOpacity(painter.opacity() * scene.lines)
        for line in placed.lines:
            for link, points in line.routes:
                if (link.above, link.below, link.role, link.knot) in lit.links:
                    draw_route(painter, line, points, theme, detail)
        painter.restore()


def _strokes(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    detail: float,
    lit: Lit,
    scene: Scene,
    clip: QRectF | None,
    *,
    pixels: bool,
) -> None:
    found, cull = strokes(placed), cull_of(placed)
    painter.save()
    painter.setOpacity(painter.opacity() * scene.lines * (0.22 if lit.blocks else 1.0))
    way = placed.orientation
    for stroke in _picked(found.strokes, cull.strokes, clip):
        if not pixels:
            draw_stroke(painter, stroke, theme, detail=detail, clip=clip)
        if stroke.line.back and detail >= FAR:
            for _, points in stroke.line.routes:
                draw_loop_words(painter, points, theme, detail=detail, orientation=way)
    if detail >= FAR:
        for end in _picked(found.ends, cull.ends, clip):
            framed = end.link.knot in cull.framed
            draw_end(painter, end, theme, detail=detail, orientation=way, framed=framed)
        for open_end in placed.open_ends:
            if _near(((open_end.x, open_end.y),), clip):
                draw_open_end(painter, open_end, theme, detail=detail, orientation=way)
    painter.restore()


def _picked(
    things: Sequence[_Thing], boxes: NDArray[np.float64], clip: QRectF | None
) -> Iterable[_Thing]:
    """Those things whose boxes lie near the clip."""
    if clip is None:
        return things
    return (things[at] for at in Cull.near(boxes, clip))


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
