"""The picture on the screen, kept as it was last painted, so that little is painted afresh.

While a person pans, the kept picture moves along by whole pixels, and only the strips that come
into sight are painted; where a mark comes or goes, only the tags that carry it are.  What else may
differ from what was painted last is compared here, so that nobody has to say what changed.  Names
of generations, signs at the edges and what is picked lie over the picture and are not part of it.
Files are painted without this.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from typing import cast

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPixmap, QRegion, QTransform

from pedigreeview.drawing.far import CROWD, LINES_FAR, block_boxes, cull_of
from pedigreeview.drawing.lighting import NO_LIT, Lit, lit_way
from pedigreeview.drawing.painter import Scene, paint
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.strokes import strokes
from pedigreeview.drawing.tags import FAR
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme

__all__ = ["MOST_PIXELS", "KeptPicture", "Sight", "ready"]

MOST_PIXELS = 9_000_000
"""Pixels of the largest picture that is kept, 36 MB; a larger one is painted each time."""
_WHOLE = 0.02
"""Pixels by which a move may miss a whole number of them."""
_STEP = 1024
"""Parts of a pixel at which the corner of the picture lies, so that sums with it are exact."""
_ASIDE = 1 / 4096
"""Pixels that it lies beside such a place: at half a pixel a text might be set either way."""
_MARK = 36.0
"""Room of the marks about a tag, in picture units."""
_MUCH = 0.7
"""Part of the picture from which all of it is painted, rather than piece after piece."""


@dataclass(frozen=True, slots=True)
class Sight:
    """What is to be seen: a picture from a place on, at a scale, with all that shows on it."""

    placed: Placed
    theme: Theme
    scale: float
    """Pixels of the window that one picture unit takes."""
    origin: tuple[float, float]
    """The place in the picture that lies in the left upper corner."""
    size: tuple[int, int]
    """Width and height in pixels of the window."""
    lit: Lit = NO_LIT
    scene: Scene = field(default_factory=Scene)


def ready(placed: Placed) -> Placed:
    """Work out ahead what the first painting of a picture needs; any thread may do so."""
    block_boxes(placed)
    cull_of(placed)
    lit_way(placed)
    if len(placed.blocks) <= CROWD:
        for stroke in strokes(placed).strokes:
            # The grains of a line are worked out when they are first asked for.
            _ = stroke.spots
    return placed


class KeptPicture:
    """One picture of the screen that is moved along and mended instead of painted afresh."""

    def __init__(self) -> None:
        self._sheet = QPixmap()
        self._sight: Sight | None = None
        self._corner = (0.0, 0.0)
        """Where the picture's own zero lies, in pixels of the screen."""
        self._spoken = ""
        self.painted = 0
        """Pixels of the screen that were painted for the last showing."""

    def drop(self) -> None:
        """Let go of what is kept."""
        self._sheet, self._sight = QPixmap(), None

    def show(self, painter: QPainter, sight: Sight, *, exact: bool = True) -> None:
        """Paint what is to be seen on a widget; the painter is in the widget's pixels.

        exact : whether the picture lies where it should; while it moves it may be off by half a
            pixel of the screen, and then moves along by whole ones
        """
        ratio = painter.device().devicePixelRatio()
        wide, high = (math.ceil(side * ratio) for side in sight.size)
        if wide * high > MOST_PIXELS:
            self.drop()
            self.painted = wide * high
            _paint(painter, sight, QRectF(0, 0, *sight.size), _corner_of(sight, ratio), ratio)
            return
        if self._sheet.size() != QSize(wide, high) or self._sheet.devicePixelRatio() != ratio:
            self._sheet = QPixmap(wide, high)
            self._sheet.setDevicePixelRatio(ratio)
            self._sight = None
        self._bring(sight, ratio, exact)
        painter.drawPixmap(QPointF(0, 0), self._sheet)

    def _bring(self, sight: Sight, ratio: float, exact: bool) -> None:
        """Make what is kept what is to be seen."""
        # What is tinted is compared, not only whether it is the same table: tables may change.
        scene = sight.scene
        sight = replace(
            sight, scene=replace(scene, tints=None if scene.tints is None else dict(scene.tints))
        )
        whole = self._sheet.rect()
        stale = self._stale(sight, ratio, exact)
        if sum(part.width() * part.height() for part in stale) > _MUCH * (
            whole.width() * whole.height()
        ):
            stale = [whole]
        self.painted = 0
        if stale == [whole]:
            self._corner = _corner_of(sight, ratio)
        # Not before all is painted: what fails on the way must not count as done.
        self._sight = None
        for part in stale:
            self._paint(sight, part, ratio, all_of_it=part == whole)
            self.painted += part.width() * part.height()
        self._sight, self._spoken = sight, tell("founder")

    def _stale(self, sight: Sight, ratio: float, exact: bool) -> list[QRect]:
        """What of the sheet is to be painted, once it is moved along."""
        whole = self._sheet.rect()
        marks = self._changed(sight)
        if marks is None:
            return [whole]
        moved = self._moved_by(sight, ratio, exact)
        if moved is None:
            return [whole]
        across, down = moved
        stale = QRegion()
        if across or down:
            # A picture of pixels has dots whose places depend on where it begins.
            if _pixelled(sight) or abs(across) >= whole.width() or abs(down) >= whole.height():
                return [whole]
            self._sheet.scroll(across, down, whole)
            self._corner = (self._corner[0] + across, self._corner[1] + down)
            stale = QRegion(whole) - QRegion(whole.translated(across, down))
        if marks and _pixelled(sight):
            return [whole]
        unit = sight.scale * ratio
        for key in marks:
            item = sight.placed.block(key)
            if item is None:
                continue
            room = _MARK * unit + 2 * ratio
            left, top = self._corner[0] + item.x * unit, self._corner[1] + item.y * unit
            area = QRectF(left, top, item.width * unit, item.height * unit)
            stale += area.adjusted(-room, -room, room, room).toAlignedRect()
        # A region gives its rectangles one by one, which its types do not say.
        return list(cast(Iterable[QRect], stale & whole))

    def _changed(self, sight: Sight) -> set[str] | None:
        """Keys of the blocks whose marks changed; None where anything else did."""
        held = self._sight
        if held is None or held.placed is not sight.placed or self._spoken != tell("founder"):
            return None
        if replace(held, scene=_unmarked(held.scene), origin=sight.origin) != replace(
            sight, scene=_unmarked(sight.scene)
        ):
            return None
        if held.scene == sight.scene:
            return set()
        before, now = _marks(held), _marks(sight)
        return {key for key in before.keys() | now.keys() if before.get(key) != now.get(key)}

    def _moved_by(self, sight: Sight, ratio: float, exact: bool) -> tuple[int, int] | None:
        """By how many whole pixels the picture moved; None where it moved by parts of one."""
        wanted = _corner_of(sight, ratio)
        across, down = wanted[0] - self._corner[0], wanted[1] - self._corner[1]
        if abs(across) > 1e6 or abs(down) > 1e6:
            return None
        moved = round(across), round(down)
        # Where a pixel of the window is not a whole number of the screen's, no move is either.
        strict = exact and ratio == round(ratio)
        if strict and max(abs(across - moved[0]), abs(down - moved[1])) > _WHOLE:
            return None
        return moved

    def _paint(self, sight: Sight, part: QRect, ratio: float, *, all_of_it: bool) -> None:
        painter = QPainter(self._sheet)
        try:
            if not all_of_it:
                painter.setWorldTransform(QTransform.fromScale(1 / ratio, 1 / ratio))
                painter.setClipRect(part)
                painter.resetTransform()
            area = QRectF(part)
            area = QRectF(area.topLeft() / ratio, area.size() / ratio)
            _paint(painter, sight, area, self._corner, ratio)
        finally:
            painter.end()


def _corner_of(sight: Sight, ratio: float) -> tuple[float, float]:
    """Where the picture's own zero lies, in pixels of the screen."""
    unit = sight.scale * ratio
    x, y = (math.floor(-place * unit * _STEP + 0.5) / _STEP + _ASIDE for place in sight.origin)
    return x, y


def _paint(
    painter: QPainter, sight: Sight, area: QRectF, corner: tuple[float, float], ratio: float
) -> None:
    """Paint one part of what is to be seen, given in pixels of the window."""
    # A painter goes by the application's direction, not by that of its widget.
    painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
    painter.fillRect(area.adjusted(-1, -1, 1, 1), colour(sight.theme["ground"]))
    x, y = corner[0] / ratio, corner[1] / ratio
    painter.save()
    painter.setTransform(QTransform(sight.scale, 0, 0, sight.scale, x, y), True)
    scale = sight.scale
    clip = QRectF((area.left() - x) / scale, (area.top() - y) / scale, area.width() / scale, 0)
    clip.setHeight(area.height() / scale)
    paint(
        painter,
        sight.placed,
        sight.theme,
        detail=scale,
        lit=sight.lit,
        scene=sight.scene,
        clip=clip,
        names=False,
    )
    painter.restore()


def _pixelled(sight: Sight) -> bool:
    """Whether lines are set as pixels: see `painter.paint`."""
    return sight.scale < FAR or (sight.scale < LINES_FAR and len(sight.placed.blocks) > CROWD)


def _unmarked(scene: Scene) -> Scene:
    return replace(scene, selected="", hover="", pins=(), pair=())


def _marks(sight: Sight) -> dict[str, list[tuple[str, int]]]:
    """What marks the blocks, by key."""
    view, scene = sight.placed.view, sight.scene
    found: dict[str, list[tuple[str, int]]] = defaultdict(list)

    def mark(keys: Iterable[str], word: str, number: int = 0) -> None:
        for key in set(keys):
            found[key].append((word, number))

    mark((scene.selected, view.block_of(scene.selected)), "selected")
    mark((scene.hover, view.block_of(scene.hover)), "hover")
    for at, code in enumerate(scene.pins):
        mark((view.block_of(code),), "pin", at)
    for code in scene.pair:
        mark((view.block_of(code),), "pair")
    found.pop("", None)
    return found
