"""A picture over one or several sheets of paper: what lies on which, and how large its text is.

On one sheet the title and the legend keep a size that can be read and the picture takes the rest.
Over several sheets the picture keeps nearly its full size; the first sheet carries title, legend
and a small map, the others are named A1, B1, A2 and so on as on a map, and empty ones are left out.
Lengths are in picture units, 96 to the inch.
"""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.legend import legend_height, paint_legend
from pedigreeview.drawing.margins import ON_PAPER_MM, UNITS_PER_MM, paper_margin
from pedigreeview.drawing.painter import paint_bands
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import FAR, FAR_CODE, MIDDLE, font, pin_letter
from pedigreeview.reports.marks import join_marks
from pedigreeview.reports.report_words import tr
from pedigreeview.reports.sheets import (
    Matter,
    head_height,
    notes_height,
    paint_head,
    paint_notes,
)

__all__ = ["OVERLAP", "PAPERS_MM", "Page", "Pages", "cuts", "lay_out"]

OVERLAP = 10 * UNITS_PER_MM
"""By how much neighbouring sheets show the same."""
_FOOT = 6 * UNITS_PER_MM
"""Room below a part of the picture for the name of its sheet."""
_LEAST_ROOM = (60 * UNITS_PER_MM, 30 * UNITS_PER_MM)
"""Width and height of the smallest picture that chosen words and margins may leave."""
_LEGENDS = (0.75, 0.65, 0.6, 0.55, 0.5, 0.45)
"""Scales of the legend on paper; the smaller where it would take too much of the sheet."""
_LEGEND_MOST = 0.2
"""Part of a sheet's height that the legend and the notes may take."""
_LEAST_POINTS = 6.0
"""Size of a plant's code below which it is hard to read; common practice, no source."""
_SCALES = (1.0, 0.9, 0.8, 0.72)
"""Sizes tried for several sheets: a little smaller may save many of them."""

PAPERS_MM = {
    "A5": (148, 210),
    "A4": (210, 297),
    "A3": (297, 420),
    "A2": (420, 594),
    "A1": (594, 841),
    "A0": (841, 1189),
    "Letter": (215.9, 279.4),
    "Legal": (215.9, 355.6),
    "Tabloid": (279.4, 431.8),
}


@dataclass(frozen=True, slots=True)
class Page:
    """One sheet of paper; the part of the picture on it, in picture units."""

    name: str
    """A1 and so on; blank for a sheet with title and legend."""
    part: tuple[float, float, float, float] | None
    """Left, top, width, height; None: none of the picture."""
    first_column: bool = True


@dataclass(frozen=True, slots=True)
class Pages:
    """All sheets of a picture."""

    matter: Matter
    paper: str
    landscape: bool
    width: float
    height: float
    """Room within the margins."""
    scale: float
    """Size of the picture on paper; 1 is full size."""
    pages: tuple[Page, ...]
    margin: float
    """Blank on all four sides, in mm."""
    legend: float
    """Scale of the legend."""

    @property
    def count(self) -> int:
        """How many sheets there are."""
        return len(self.pages)

    @property
    def smallest_points(self) -> float:
        """Size of the smallest text of the picture, in points."""
        size = 22.0 if self.scale < MIDDLE else self.matter.theme.type["tiny"]
        return size * max(self.scale, 0.0) * 0.75

    @property
    def code_points(self) -> float:
        """Size of a plant's code, in points."""
        size = FAR_CODE if self.scale < MIDDLE else self.matter.theme.type["code"]
        return size * max(self.scale, 0.0) * 0.75

    @property
    def readable(self) -> bool:
        """Whether the codes of the plants are large enough to be read."""
        return self.code_points >= _LEAST_POINTS

    def larger_paper(self) -> str:
        """The smallest larger paper on which one sheet can be read; '' for none."""
        short = PAPERS_MM[self.paper][0]
        held = sorted(PAPERS_MM.items(), key=lambda item: item[1])
        return next(
            (
                name
                for name, sides in held
                if sides[0] > short
                and name.startswith("A")
                and lay_out(self.matter, paper=name, margin=self.margin).readable
            ),
            "",
        )

    def words(self) -> str:
        """How many sheets, and how small the text is: what to know before printing."""
        sheets = "1 sheet" if self.count == 1 else f"{self.count} sheets"
        said = f"{sheets} of {self.paper}, smallest text {self.smallest_points:.1f} pt."
        if self.readable:
            return said
        paper = self.larger_paper()
        ways = f"take {paper} paper, or several sheets" if paper else "take several sheets"
        return f"{said} Plant codes of {self.code_points:.1f} pt are hard to read: {ways}."

    def paint(self, painter: QPainter, at: int) -> None:
        """Paint one sheet from the corner within its margins."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        painter.fillRect(QRectF(0, 0, self.width, self.height), colour(self.matter.theme["ground"]))
        page = self.pages[at]
        if page.name:
            self._paint_tile(painter, page)
            return
        head = paint_head(painter, self.matter, 0, 0, self.width)
        foot = _foot_height(self.matter, self.width, self.legend)
        if page.part is not None:
            area = QRectF(0, head, self.width, self.height - head - foot)
            self._paint_whole(painter, area)
        else:
            room = QRectF(0, head, self.width, self.height - head - foot)
            self._paint_map(painter, room)
        self._paint_foot(painter, self.height - foot)

    def _paint_foot(self, painter: QPainter, y: float) -> None:
        held = self.matter
        painter.setPen(pen(held.theme["paper_edge"], 0.8))
        painter.drawLine(QPointF(0, y + 6), QPointF(self.width, y + 6))
        painter.save()
        painter.translate(0, y + 14)
        painter.scale(self.legend, self.legend)
        across = self.width / self.legend
        paint_legend(painter, held.entries, held.theme, 0, 0, across)
        paint_notes(painter, held, 0, legend_height(held.entries, across) + 4, across)
        painter.restore()

    def _paint_whole(self, painter: QPainter, area: QRectF) -> None:
        left, top, width, height = self.matter.placed.bounds
        painter.save()
        painter.setClipRect(area)
        painter.translate(area.left() + (area.width() - width * self.scale) / 2, area.top())
        painter.scale(self.scale, self.scale)
        painter.translate(-left, -top)
        aside = (area.width() / self.scale - width) / 2
        clip = QRectF(left - aside, top, width + 2 * aside, height)
        self.matter.paint_picture(painter, detail=max(self.scale, FAR), clip=clip)
        painter.restore()

    def _paint_tile(self, painter: QPainter, page: Page) -> None:
        assert page.part is not None
        left, top, width, height = page.part
        held = self.matter
        painter.save()
        painter.scale(self.scale, self.scale)
        painter.setClipRect(QRectF(0, 0, width, height))
        painter.translate(-left, -top)
        clip = QRectF(left, top, width, height)
        paint_bands(
            painter,
            held.placed,
            held.theme,
            detail=self.scale,
            clip=clip,
            names=page.first_column,
        )
        held.paint_picture(painter, detail=self.scale, clip=clip, bands=False)
        painter.restore()
        area = QRectF(0, 0, width * self.scale, height * self.scale)
        words = tr("{}: sheet {}").format(held.title, page.name)
        join_marks(painter, held.theme, area, OVERLAP * self.scale, words)

    def _paint_map(self, painter: QPainter, room: QRectF) -> None:
        """The picture in small, with the sheets and their names."""
        held = self.matter
        left, top, width, height = held.placed.bounds
        tiles = [page for page in self.pages if page.part is not None]
        right = max(page.part[0] + page.part[2] for page in tiles if page.part)
        bottom = max(page.part[1] + page.part[3] for page in tiles if page.part)
        width, height = max(width, right - left), max(height, bottom - top)
        scale = min(room.width() / width, (room.height() - 12) / height, 0.5)
        painter.save()
        painter.translate(room.left() + (room.width() - width * scale) / 2, room.top() + 4)
        painter.scale(scale, scale)
        painter.translate(-left, -top)
        painter.save()
        clip = QRectF(left, top, width, height)
        held.paint_picture(painter, detail=max(scale, FAR), clip=clip, bands=False)
        painter.restore()
        for page in tiles:
            assert page.part is not None
            x, y, wide, high = page.part
            painter.setPen(pen(held.theme["ink_soft"], 0.9 / scale, Qt.PenStyle.DashLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(x, y, wide, high))
            size = 12 / scale
            spot = QRectF(x + 2 / scale, y + 2 / scale, size * 1.7, size * 1.2)
            painter.fillRect(spot, colour(held.theme["ground"]))
            painter.setPen(colour(held.theme["ink"]))
            painter.setFont(font(held.theme, size, strong=True))
            painter.drawText(spot, Qt.AlignmentFlag.AlignCenter, page.name)
        painter.restore()


def _foot_height(held: Matter, width: float, legend: float) -> float:
    across = width / legend
    high = legend_height(held.entries, across) + 4 + notes_height(held, across)
    return 14 + high * legend + 4


def lay_out(
    held: Matter,
    *,
    paper: str,
    landscape: bool | None = None,
    tiled: bool = False,
    margin: float | None = None,
) -> Pages:
    """Which part of the picture lies on which sheet.

    landscape : None takes the way in which the picture comes out larger
    tiled : keep nearly the full size, over as many sheets as it takes
    margin : blank on all four sides, in mm; None: the usual one

    Raises
    ------
    Fault : a margin out of bounds, or margins or a caption that leave the picture no room
    """
    margin = paper_margin(margin)
    ways = (True, False) if landscape is None else (landscape,)
    open_ways = [way for way in ways if _room(held, paper, way, margin).is_enough]
    if not open_ways:
        _refuse_what_is_too_wide(held, paper, ways, margin)
    laid = [_laid(held, paper, way, tiled, margin) for way in open_ways or ways]
    return min(laid, key=lambda pages: (pages.count, -pages.scale))


@dataclass(frozen=True, slots=True)
class _Room:
    """The room within the margins, and how much of its height is left for the picture."""

    width: float
    height: float
    left: float
    legend: float

    @property
    def is_enough(self) -> bool:
        return self.width >= _LEAST_ROOM[0] and self.left >= _LEAST_ROOM[1]


def _room(held: Matter, paper: str, landscape: bool, margin: float) -> _Room:
    short, long = PAPERS_MM[paper]
    sides = (long, short) if landscape else (short, long)
    width, height = ((side - 2 * margin) * UNITS_PER_MM for side in sides)
    below = height - head_height(held, width)
    rooms = [
        _Room(width, height, below - _foot_height(held, width, legend), legend)
        for legend in _LEGENDS
    ]
    fits = (room for room in rooms if below - room.left <= _LEGEND_MOST * height)
    return next((room for room in fits if room.is_enough), rooms[-1])


def _refuse_what_is_too_wide(held: Matter, paper: str, ways: Sequence[bool], margin: float) -> None:
    """Say which of the person's wishes takes the room; a long legend alone is laid out anyhow."""
    usual, bare = min(margin, ON_PAPER_MM), replace(held, caption=())

    def would_fit(shown: Matter) -> bool:
        return any(_room(shown, paper, way, usual).is_enough for way in ways)

    if margin > usual and (would_fit(held) or not would_fit(bare)):
        raise Fault(
            f"Margins of {margin:g} mm leave no room for the picture on {paper}.",
            None,
            "Choose narrower margins or larger paper.",
        )
    if held.caption:
        raise Fault(
            f"The caption leaves no room for the picture on {paper}.",
            None,
            "Shorten it, or choose larger paper.",
        )


def _laid(held: Matter, paper: str, landscape: bool, tiled: bool, margin: float) -> Pages:
    room = _room(held, paper, landscape, margin)
    _, _, width, height = held.placed.bounds
    scale = min(room.width / max(width, 1.0), max(room.left, 40.0) / max(height, 1.0), 1.0)
    pages: tuple[Page, ...] = (Page("", held.placed.bounds),)
    if tiled and scale < 1.0:
        part = (room.width, room.height - _FOOT)
        choice = [(scale, _tiles(held.placed, part, scale)) for scale in _SCALES]
        scale, tiles = min(choice, key=lambda made: (len(made[1]), -made[0]))
        pages = (Page("", None), *tiles)
    return Pages(held, paper, landscape, room.width, room.height, scale, pages, margin, room.legend)


def _tiles(placed: Placed, room: tuple[float, float], scale: float) -> list[Page]:
    page = (room[0] / scale, room[1] / scale)
    left, top, width, height = placed.bounds
    columns = cuts(left, width, page[0], [(item.x, item.right) for item in placed.blocks])
    rows = cuts(top, height, page[1], [(item.y, item.bottom) for item in placed.blocks])
    boxes = [(item.x, item.y, item.right, item.bottom) for item in placed.blocks]
    found = []
    for r, y in enumerate(rows):
        for c, x in enumerate(columns):
            part = (x, y, page[0], page[1])
            if _holds_something(placed, boxes, part):
                found.append(Page(f"{pin_letter(c)}{r + 1}", part, c == 0))
    return found


def cuts(
    start: float, whole: float, room: float, things: Sequence[tuple[float, float]]
) -> list[float]:
    """Where sheets begin along one side, so that few things are cut and neighbours overlap.

    things : from and to of what should not be cut
    """
    found = [start]
    while found[-1] + room < start + whole:
        last = found[-1]
        best, fewest = last + room - OVERLAP, len(things) + 1
        at = last + room - OVERLAP
        while at > last + room * 0.6:
            # A thing is whole somewhere if it ends before this sheet does or begins on the next.
            cut = sum(low < at and high > last + room and low > last for low, high in things)
            if cut < fewest:
                best, fewest = at, cut
            if not cut:
                break
            at -= 6.0
        found.append(best)
    return found


def _holds_something(
    placed: Placed,
    boxes: Sequence[tuple[float, float, float, float]],
    part: tuple[float, float, float, float],
) -> bool:
    left, top = part[0] + OVERLAP / 2, part[1] + OVERLAP / 2
    right, bottom = part[0] + part[2] - OVERLAP / 2, part[1] + part[3] - OVERLAP / 2
    if any(x0 < right and x1 > left and y0 < bottom and y1 > top for x0, y0, x1, y1 in boxes):
        return True
    return any(
        min(a[0], b[0]) < right
        and max(a[0], b[0]) > left
        and min(a[1], b[1]) < bottom
        and max(a[1], b[1]) > top
        for line in placed.lines
        for _, points in line.routes
        for a, b in itertools.pairwise(points)
    )
