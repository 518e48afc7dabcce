"""One painter for the screen, SVG, PDF and PNG: paints a placed picture on any QPainter.

The picture is painted in its own units; the caller sets the transformation and says with `detail`
how large one unit comes out, which decides what is worth drawing.
"""

from __future__ import annotations

import itertools
from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TypedDict, TypeVar

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.drawing.band_names import paint_names
from pedigreeview.drawing.blocks import Block, Knot
from pedigreeview.drawing.fading import Faded, faded
from pedigreeview.drawing.far import (
    CROWD,
    LINES_FAR,
    Cull,
    block_boxes,
    cull_of,
    paint_far,
    rastered,
)
from pedigreeview.drawing.lighting import NO_LIT, Lit, lit_way
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
from pedigreeview.drawing.strokes import Stroke, strokes
from pedigreeview.drawing.tags import BACK, FAR, Dress, draw_tabs, draw_tag, font, shortened
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, contrast, sizes, softened

__all__ = ["Scene", "paint", "paint_bands"]

_Thing = TypeVar("_Thing")


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
    lit: Lit = NO_LIT,
    focus: str | None = None,
    scene: Scene | None = None,
    clip: QRectF | None = None,
    bands: bool = True,
    names: bool = True,
) -> None:
    """Paint a placed picture.

    detail : pixels that one picture unit takes
    lit : paths to bring out, everything else is dimmed; without any what the way of looking lights
    focus : the plant with the focus ring; None: the view's own
    clip : only what lies near it is painted
    names : whether the generations are named; else `band_names.paint_names` does so
    """
    scene = scene or Scene()
    focus = placed.view.focus or "" if focus is None else focus
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    # The seed parent stands left in every language; the picture is not mirrored.
    painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
    if bands:
        paint_bands(painter, placed, theme, clip=clip, names=False)
    soft = not lit.blocks
    lit = lit if lit.blocks else lit_way(placed)
    focus_key = placed.view.block_of(focus) if focus else ""
    back = faded(placed, scene.faded | placed.view.aside, focus_key)
    mood = _Mood(lit, back, soft=soft)
    seen = _seen(placed, clip, scene)
    crowded = detail < FAR or (detail < LINES_FAR and len(placed.blocks) > CROWD)
    pixels = crowded and clip is not None and scene.moved is None and rastered(painter)
    if not pixels or detail >= FAR:
        for item in seen:
            if item.block.sort == "pair":
                _frame(painter, item, theme, mood, scene)
    if pixels and clip is not None:
        paint_far(painter, placed, theme, lit=lit, clip=clip, tints=scene.tints)
    _lines(painter, placed, theme, detail, mood, scene, clip, pixels=pixels)
    numbers = dict(placed.view.founders)
    pins = {placed.view.block_of(code): at + 1 for at, code in enumerate(scene.pins)}
    selected = placed.view.block_of(scene.selected) if scene.selected else ""
    pair = {placed.view.block_of(code) for code in scene.pair if code}
    hover = scene.hover
    if scene.moved is None:
        rested(placed)
    painter.save()
    painter.setOpacity(painter.opacity() * scene.blocks)
    if pixels and detail < FAR:
        # Their rectangles are there already: only what is marked is drawn on them.
        marked = {focus_key, selected, scene.selected, hover, *pins, *lit.blocks, *pair}
        seen = [item for item in seen if item.block.key in marked]
    tabbed: list[tuple[Block, QRectF, Dress]] = []
    if scene.moved is not None:
        # A tag that moves is one image with its tabs: those of others lie above the focus's ring.
        seen = sorted(seen, key=lambda item: item.block.key != focus_key)
    for item in seen:
        block = item.block
        dx, dy = scene.moved(item) if scene.moved is not None else (0.0, 0.0)
        if block.sort in ("tag", "pack", "chain"):
            dress = Dress(
                block.key == focus_key,
                block.key in (selected, scene.selected) and bool(scene.selected),
                bool(hover) and hover in (block.key, block.code),
                pins.get(block.key, 0),
                mood.dims(block.key) and not soft and not block.ghost and block.key != focus_key,
                block.key in lit.blocks or block.key in pair,
                back=block.key in back.blocks,
                **_tint_of(block, scene, theme),
            )
            rect = QRectF(item.x + dx, item.y + dy, item.width, item.height)
            if scene.moved is not None and detail >= FAR:
                draw_moving(painter, placed, block, rect, theme, numbers, detail, dress)
            else:
                draw_tag(
                    painter, block, rect, theme, numbers, detail=detail, dress=dress, tabs=False
                )
                if block.more_up or block.more_down:
                    tabbed.append((block, rect, dress))
        else:
            _knots(painter, item, theme, detail, mood, dx, dy, hover == block.key)
    for block, rect, dress in tabbed:
        # Above the rings about neighbours, which reach as far.
        draw_tabs(painter, block, rect, theme, detail=detail, dress=dress)
    painter.restore()
    if bands and names:
        paint_names(painter, placed, theme, detail=detail, clip=clip, text=scene.text)


@dataclass(frozen=True, slots=True)
class _Mood:
    """What is brought out and what is put back.

    soft : the picture's own way of looking lights, so the rest stays well readable
    """

    lit: Lit
    back: Faded
    soft: bool

    def dims(self, key: str) -> bool:
        """Whether a block is beside what is lit."""
        return bool(self.lit.blocks) and key not in self.lit.blocks

    def opacity(self, hard: float) -> float:
        """Of what lies beside what is lit, `hard` where a person lit it."""
        return (0.45 if self.soft else hard) if self.lit.blocks else 1.0


class _Tinted(TypedDict):
    tint: str
    mixed: tuple[tuple[str, float], ...]
    word: str
    mark: int


def _tint_of(block: Block, scene: Scene, theme: Theme) -> _Tinted:
    """Colour, printed value and pattern of a tag; of a pack whose plants differ all their colours.

    Where founders are told apart by patterns, so are the classes of a tint, on plain paper.
    """
    codes = block.codes if block.sort == "pack" else (block.code,)
    tints = {(scene.tints or {}).get(code, "") for code in codes}
    words = {scene.tint_words.get(code, "") for code in codes}
    marks = {scene.tint_marks.get(code, -1) for code in codes}
    marked = theme.patterned and any(mark >= 0 for mark in marks)
    mark = marks.pop() if len(marks) == 1 else -1
    return {
        "tint": "" if marked or len(tints) > 1 else tints.pop(),
        "mixed": () if marked or len(tints) < 2 else _parts(codes, scene.tints or {}, theme),
        "word": words.pop() if len(words) == 1 else "mixed",
        "mark": mark,
    }


def _parts(
    codes: Sequence[str], tints: Mapping[str, str], theme: Theme
) -> tuple[tuple[str, float], ...]:
    """The tints of the plants of a pack with their parts of it, the deepest first."""
    count = Counter(tints.get(code, theme["paper"]) for code in codes)
    deepest = sorted(count, key=lambda shade: -contrast(shade, theme["paper"]))
    return tuple((shade, count[shade] / len(codes)) for shade in deepest)


def _seen(placed: Placed, clip: QRectF | None, scene: Scene) -> list[PlacedBlock]:
    if clip is None:
        return list(placed.blocks)
    if scene.moved is not None:
        found = []
        for item in placed.blocks:
            dx, dy = scene.moved(item)
            if _meets((item.x + dx, item.y + dy, item.right + dx, item.bottom + dy), clip):
                found.append(item)
        return found
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
        paint_names(painter, placed, theme, detail=detail, clip=clip, text=text)


def _strip(placed: Placed, start: float, end: float, clip: QRectF | None) -> QRectF:
    left, top, width, height = placed.bounds
    area = clip if clip is not None else QRectF(left, top, width, height)
    if placed.orientation == "down":
        return QRectF(area.left(), start, area.width(), end - start)
    return QRectF(start, area.top(), end - start, area.height())


def _frame(painter: QPainter, item: PlacedBlock, theme: Theme, mood: _Mood, scene: Scene) -> None:
    dx, dy = scene.moved(item) if scene.moved is not None else (0.0, 0.0)
    rect = QRectF(item.x + dx, item.y + dy, item.width, item.height)
    painter.save()
    part = BACK if mood.back.knots.issuperset(spot.key for spot in item.knots) else 1.0
    painter.setOpacity(painter.opacity() * scene.lines * mood.opacity(0.4) * part)
    painter.setPen(pen(theme["frame_edge"], 1.2))
    painter.setBrush(colour(theme["frame"]))
    painter.drawRoundedRect(rect, 14, 14)
    painter.restore()


def _lines(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    detail: float,
    mood: _Mood,
    scene: Scene,
    clip: QRectF | None,
    *,
    pixels: bool,
) -> None:
    lit = mood.lit
    if scene.lines <= 0.0:
        return
    if not (pixels and detail < FAR):
        _strokes(painter, placed, theme, detail, mood, scene, clip, pixels=pixels)
    if lit.links:
        painter.save()
        painter.setOpacity(painter.opacity() * scene.lines)
        for line in placed.lines:
            for link, points in line.routes:
                if (link.above, link.below, link.role, link.knot) in lit.links:
                    draw_route(painter, line, points, theme, detail)
                    if line.back:
                        # What is wrong with the line is not hidden by the light on it.
                        way = placed.orientation
                        draw_loop_words(painter, points, theme, detail=detail, orientation=way)
        painter.restore()


def _strokes(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    detail: float,
    mood: _Mood,
    scene: Scene,
    clip: QRectF | None,
    *,
    pixels: bool,
) -> None:
    cull, faint = cull_of(placed), mood.back.links
    found = strokes(placed, faint)
    painter.save()
    painter.setOpacity(painter.opacity() * scene.lines * mood.opacity(0.22))
    soft = softened(theme, BACK)
    # Nets in two parts are other strokes than those of the arrays; and the words on a line that
    # runs back reach far beyond it.
    shown = (
        [stroke for stroke in found.strokes if stroke.line.back or _meets(stroke.bounds, clip)]
        if faint
        else _picked(found.strokes, cull.strokes, clip, _running_back(placed, found.strokes))
    )
    way = placed.orientation
    for stroke in shown:
        if not pixels:
            look = soft if stroke.faint else theme
            draw_stroke(painter, stroke, look, detail=detail, clip=clip)
        if stroke.line.back and detail >= FAR:
            for _, points in stroke.line.routes:
                draw_loop_words(painter, points, theme, detail=detail, orientation=way)
    if detail >= FAR:
        for end in _picked(found.ends, cull.ends, clip):
            link, framed = end.link, end.link.knot in cull.framed
            back = (link.above, link.below, link.role, link.knot) in faint
            look = soft if back else theme
            draw_end(painter, end, look, detail=detail, orientation=way, framed=framed)
        for open_end in placed.open_ends:
            x, y, long = open_end.x, open_end.y, open_end.length
            if _meets((x - long, y - long, x, y), clip):
                back = open_end.knot in mood.back.knots
                look = soft if back else theme
                draw_open_end(painter, open_end, look, detail=detail, orientation=way)
    painter.restore()


def _picked(
    things: Sequence[_Thing],
    boxes: NDArray[np.float64],
    clip: QRectF | None,
    always: frozenset[int] = frozenset(),
) -> Iterable[_Thing]:
    """Those things whose boxes lie near the clip, and those of some numbers wherever they lie."""
    if clip is None:
        return things
    near = Cull.near(boxes, clip)
    return (things[at] for at in (sorted(always.union(near)) if always else near))


def _running_back(placed: Placed, every: Sequence[Stroke]) -> frozenset[int]:
    """Numbers of the strokes of lines that run back to an ancestor; found once for a picture."""
    held: frozenset[int] | None = placed.held.get("running_back")
    if held is None:
        held = frozenset(at for at, stroke in enumerate(every) if stroke.line.back)
        placed.held["running_back"] = held
    return held


def _meets(bounds: tuple[float, float, float, float], clip: QRectF | None) -> bool:
    """Whether left, top, right and bottom lie near the clip."""
    if clip is None:
        return True
    left, top, right, bottom = bounds
    return (
        left <= clip.right() + 40
        and right >= clip.left() - 40
        and top <= clip.bottom() + 40
        and bottom >= clip.top() - 40
    )


def _knots(
    painter: QPainter,
    item: PlacedBlock,
    theme: Theme,
    detail: float,
    mood: _Mood,
    dx: float,
    dy: float,
    hover: bool,
) -> None:
    block = item.block
    before = painter.opacity()
    full = before * mood.opacity(0.35) if mood.dims(block.key) else before
    by_key = {knot.key: knot for knot in block.knots}
    for spot in item.knots:
        knot = by_key[spot.key]
        pill = QRectF(spot.x + dx, spot.y + dy, spot.width, spot.height)
        painter.setOpacity(full * BACK if knot.key in mood.back.knots else full)
        edge = theme["ink"] if hover else theme["knot_edge"]
        if detail < FAR:
            painter.fillRect(pill, colour(theme["knot_edge"]))
            continue
        planned = knot.state in ("planned", "skipped")
        painter.setPen(pen(edge, 1.3, Qt.PenStyle.DotLine if planned else Qt.PenStyle.SolidLine))
        painter.setBrush(colour(theme["knot"]))
        painter.drawRoundedRect(pill, 6, 6)
        _pill_text(painter, knot, pill, theme, coded=detail >= 0.45)
    painter.setOpacity(full)
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


def _pill_text(painter: QPainter, knot: Knot, pill: QRectF, theme: Theme, *, coded: bool) -> None:
    """Sign and code of a knot, in the middle of its pill."""
    y, x = pill.center().y(), pill.center().x()
    if not coded or not knot.label:
        sign(painter, knot.sign, x, y, 6.6, theme["ink"])
        return
    size = sizes().small_type
    type_ = font(theme, size, strong=True)
    label = knot.label if knot.label == knot.cross else tell(knot.label)
    text = shortened(theme, size, label, pill.width() - 30, strong=True)
    wide = QFontMetricsF(type_).horizontalAdvance(text)
    left = x - (wide + 20) / 2
    sign(painter, knot.sign, left + 6.6, y, 6.6, theme["ink"])
    painter.setPen(colour(theme["ink"]))
    painter.setFont(type_)
    painter.drawText(QPointF(left + 19, y + size * 0.36), text)
