"""The picture from afar as pixels: lines one pixel thin, tags plain rectangles.

A path of thousands of lines takes Qt far longer than the window has for a frame.  From afar nothing
is lost by setting the pixels here: what lies outside is sorted out with NumPy first, and what falls
on the same pixels is set once.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QImage, QPaintEngine, QPainter

from pedigreeview.drawing.lighting import Lit
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.strokes import straight_stretches, strokes
from pedigreeview.drawing.tags import FAR
from pedigreeview.drawing.theme import Theme

__all__ = [
    "CROWD",
    "LINES_FAR",
    "Cull",
    "block_boxes",
    "cull_of",
    "paint_far",
    "rastered",
    "tags_beyond",
]

LINES_FAR = 0.45
"""Scale below which the lines of a crowded picture are set as pixels."""
CROWD = 300
"""Blocks from which a picture is crowded."""

FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]
Pixels = NDArray[np.uint32]


@dataclass(frozen=True, slots=True)
class Cull:
    """Where things lie, as arrays: left, top, right, bottom in a row each."""

    strokes: FloatArray
    ends: FloatArray
    framed: frozenset[str]
    """Knots in reciprocal frames."""

    @staticmethod
    def near(boxes: FloatArray, clip: QRectF, pad: float = 40.0) -> list[int]:
        """Numbers of the boxes that lie in a clip or near it."""
        inside = (
            (boxes[0] <= clip.right() + pad)
            & (boxes[2] >= clip.left() - pad)
            & (boxes[1] <= clip.bottom() + pad)
            & (boxes[3] >= clip.top() - pad)
        )
        found: list[int] = np.flatnonzero(inside).tolist()
        return found


def cull_of(placed: Placed) -> Cull:
    """The arrays of a picture; made once."""
    held: Cull | None = placed.held.get("cull")
    if held is None:
        made = strokes(placed)
        held = placed.held["cull"] = Cull(
            _boxes([stroke.bounds for stroke in made.strokes]),
            _boxes([(end.x, end.y, end.x, end.y) for end in made.ends]),
            frozenset(
                spot.key
                for item in placed.blocks
                if item.block.sort == "pair"
                for spot in item.knots
            ),
        )
    return held


def block_boxes(placed: Placed) -> FloatArray:
    """Where the blocks of a picture lie; made once."""
    held: FloatArray | None = placed.held.get("blocks")
    if held is None:
        held = placed.held["blocks"] = _boxes(
            [(item.x, item.y, item.right, item.bottom) for item in placed.blocks]
        )
    return held


def tags_beyond(placed: Placed, area: QRectF) -> tuple[int, int, int, int]:
    """How many tags, packs and chains lie left, right, above and below an area; each once.

    A tag counts where its middle lies; one beyond a corner counts to the left or the right.
    """
    if not placed.blocks:
        return 0, 0, 0, 0
    tags: NDArray[np.bool_] | None = placed.held.get("tags")
    if tags is None:
        held = [bool(item.block.codes) for item in placed.blocks]
        tags = placed.held["tags"] = np.array(held, dtype=np.bool_)
    boxes = block_boxes(placed)
    x, y = (boxes[0] + boxes[2]) / 2, (boxes[1] + boxes[3]) / 2
    left, right = tags & (x < area.left()), tags & (x > area.right())
    level = tags & ~left & ~right
    above, below = level & (y < area.top()), level & (y > area.bottom())
    return int(left.sum()), int(right.sum()), int(above.sum()), int(below.sum())


def _boxes(rows: list[tuple[float, float, float, float]]) -> FloatArray:
    return np.array(rows, dtype=float).reshape(-1, 4).T.copy()


@dataclass(frozen=True, slots=True)
class _Far:
    """Straight stretches by kind of line, and rectangles with their colours, of one theme."""

    level: tuple[FloatArray, ...]
    upright: tuple[FloatArray, ...]
    rects: FloatArray
    fill: Pixels
    stripe: Pixels
    keys: tuple[str, ...]
    knots: FloatArray


def rastered(painter: QPainter) -> bool:
    """Whether what is painted on has pixels that can be set."""
    engine = painter.paintEngine()
    return engine is not None and engine.type() == QPaintEngine.Type.Raster


def paint_far(
    painter: QPainter,
    placed: Placed,
    theme: Theme,
    *,
    lit: Lit,
    clip: QRectF,
    tints: Any = None,
) -> None:
    """Lines and, from very far, tags and knots within the clip."""
    detail = painter.transform().m11()
    device = painter.device()
    ratio = float(device.devicePixelRatioF()) if device is not None else 1.0
    scale = detail * ratio
    wide, high = round(clip.width() * scale), round(clip.height() * scale)
    if wide < 1 or high < 1:
        return
    held = _far_of(placed, theme)
    image = np.zeros((high, wide), dtype=np.uint32)
    dim = 0.22 if lit.blocks else 1.0
    inks = ("progeny", "line_soft", "line", "warning")
    for kind, ink in enumerate(inks):
        pixel = _pixel(theme[ink], theme["band"], dim)
        _set_level(image, held.level[kind], clip, scale, pixel, 3 if kind == 1 else 1)
        _set_upright(image, held.upright[kind], clip, scale, pixel, 3 if kind == 1 else 1)
    if detail < FAR:
        _set_blocks(image, held, placed, theme, lit, clip, scale, tints)
    picture = QImage(image.data, wide, high, 4 * wide, QImage.Format.Format_ARGB32_Premultiplied)
    picture.setDevicePixelRatio(ratio)
    corner = painter.transform().map(clip.topLeft())
    painter.save()
    painter.resetTransform()
    painter.drawImage(QPointF(round(corner.x()), round(corner.y())), picture)
    painter.restore()


def _far_of(placed: Placed, theme: Theme) -> _Far:
    name = f"far {theme.name}"
    held: _Far | None = placed.held.get(name)
    if held is not None:
        return held
    level: list[list[tuple[float, float, float]]] = [[], [], [], []]
    upright: list[list[tuple[float, float, float]]] = [[], [], [], []]
    kinds = {"progeny": 0, "source": 0, "pollen": 1, "seed": 2}
    for line in placed.lines:
        kind = 3 if line.back else kinds[line.role]
        level[kind] += straight_stretches(line, level=True)
        upright[kind] += straight_stretches(line, level=False)
    numbers = dict(placed.view.founders)
    paper = _pixel(theme["paper"])
    rects, fill, stripe, keys = [], [], [], []
    for item in placed.blocks:
        block = item.block
        if block.sort not in ("tag", "pack", "chain"):
            continue
        rects.append((item.x, item.y, item.right, item.bottom))
        fill.append(paper)
        edge = theme["paper_edge"]
        if block.shares and not theme.patterned:
            top = max(block.shares, key=lambda share: share[1])[0]
            edge = theme.founder(numbers.get(top, -1))
        stripe.append(_pixel(edge))
        keys.append(block.key)
    spots = [
        (spot.x, spot.y, spot.x + spot.width, spot.y + spot.height)
        for item in placed.blocks
        for spot in item.knots
    ]
    held = placed.held[name] = _Far(
        tuple(np.array(rows, dtype=float).reshape(-1, 3) for rows in level),
        tuple(np.array(rows, dtype=float).reshape(-1, 3) for rows in upright),
        _boxes(rects),
        np.array(fill, dtype=np.uint32),
        np.array(stripe, dtype=np.uint32),
        tuple(keys),
        _boxes(spots),
    )
    return held


def _pixel(value: str, ground: str = "", part: float = 1.0) -> int:
    """An opaque pixel of a colour, or of a part of it on a ground."""
    found = int(value[1:], 16)
    if part < 1.0:
        below = int(ground[1:], 16)
        mixed = 0
        for shift in (16, 8, 0):
            one, other = found >> shift & 255, below >> shift & 255
            mixed |= round(one * part + other * (1 - part)) << shift
        found = mixed
    return 0xFF000000 | found


def _set_level(
    image: Pixels, rows: FloatArray, clip: QRectF, scale: float, pixel: int, step: int
) -> None:
    for y, start, end in _on_pixels(
        rows, clip.top(), clip.left(), scale, image.shape[0], image.shape[1]
    ):
        image[y, start : end + 1 : step] = pixel


def _set_upright(
    image: Pixels, rows: FloatArray, clip: QRectF, scale: float, pixel: int, step: int
) -> None:
    for x, start, end in _on_pixels(
        rows, clip.left(), clip.top(), scale, image.shape[1], image.shape[0]
    ):
        image[start : end + 1 : step, x] = pixel


def _on_pixels(
    rows: FloatArray, across: float, along: float, scale: float, most: int, long: int
) -> list[list[int]]:
    """Stretches in pixels within the image, those that overlap on one row of pixels joined."""
    if not len(rows):
        return []
    at = ((rows[:, 0] - across) * scale).astype(np.int64)
    start = ((rows[:, 1] - along) * scale).astype(np.int64)
    end = ((rows[:, 2] - along) * scale).astype(np.int64)
    inside = (rows[:, 0] >= across) & (at < most) & (end >= 0) & (start < long)
    at, start, end = at[inside], np.maximum(start[inside], 0), np.minimum(end[inside], long - 1)
    if not len(at):
        return []
    order = np.lexsort((start, at))
    at, start, end = at[order], start[order], end[order]
    # Running maximum of the ends within a row: rows are kept apart by an offset.
    offset = at * (long + 2)
    reach = np.maximum.accumulate(end + offset)
    fresh = np.ones(len(at), dtype=bool)
    fresh[1:] = start[1:] + offset[1:] > reach[:-1] + 1
    first = np.flatnonzero(fresh)
    last = np.append(first[1:], len(at)) - 1
    found: list[list[int]] = np.column_stack(
        (at[first], start[first], reach[last] - offset[last])
    ).tolist()
    return found


def _set_blocks(
    image: Pixels,
    held: _Far,
    placed: Placed,
    theme: Theme,
    lit: Lit,
    clip: QRectF,
    scale: float,
    tints: Any,
) -> None:
    fill, stripe = held.fill, held.stripe
    if tints:
        fill = fill.copy()
        for at, key in enumerate(held.keys):
            code = key.partition(":")[2]
            if code in tints:
                fill[at] = _pixel(tints[code])
    if lit.blocks:
        faint = np.array([key not in lit.blocks for key in held.keys], dtype=bool)
        fill = np.where(faint, np.uint32(_pixel(theme["paper"], theme["band"], 0.28)), fill)
        stripe = np.where(faint, np.uint32(_pixel(theme["paper_edge"], theme["band"], 0.4)), stripe)
    knot = _pixel(theme["knot_edge"], theme["band"], 0.35 if lit.blocks else 1.0)
    _fill(image, held.knots, np.full(held.knots.shape[1], knot, dtype=np.uint32), clip, scale)
    _fill(image, held.rects, fill, clip, scale)
    edge = held.rects.copy()
    edge[2] = edge[0] + (edge[2] - edge[0]) * 0.3
    _fill(image, edge, stripe, clip, scale)


def _fill(image: Pixels, boxes: FloatArray, inks: Pixels, clip: QRectF, scale: float) -> None:
    """Fill rectangles: pixel after pixel of the largest, for all rectangles at once."""
    near = Cull.near(boxes, clip, 0.0)
    if not near:
        return
    boxes, inks = boxes[:, near], inks[near]
    high, wide = image.shape
    x0 = ((boxes[0] - clip.left()) * scale).astype(np.int64)
    y0 = ((boxes[1] - clip.top()) * scale).astype(np.int64)
    across = np.maximum(np.rint((boxes[2] - boxes[0]) * scale).astype(np.int64), 1)
    down = np.maximum(np.rint((boxes[3] - boxes[1]) * scale).astype(np.int64), 1)
    for dy in range(int(down.max())):
        for dx in range(int(across.max())):
            x, y = x0 + dx, y0 + dy
            held = (dx < across) & (dy < down) & (x >= 0) & (x < wide) & (y >= 0) & (y < high)
            image[y[held], x[held]] = inks[held]
