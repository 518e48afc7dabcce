"""Paints the overview of a whole book at one zoom across and another down.

Far away a band is a density of founder colours; nearer, plants are told apart; near, they are tags
with their codes.  Lines are cut to the window before Qt sees them, and where there are too many to
follow a fixed part of them is drawn (`drawn`).
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QLocale, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QImage, QPainter, QPen

from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.overview_raster import (
    Band,
    Frame,
    Showing,
    clipped,
)
from pedigreeview.drawing.overview_tags import draw_flag, draw_plant
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import elided, font
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, mixed

__all__ = ["Drawn", "OverviewPainter", "band_name"]

MOST_LINES = 400
"""Lines that are drawn at most, but for those of the relatives that are brought out."""
_BEHIND = 60
"""Up to so many lines in the window, those of other plants are drawn behind relatives' lines."""
_FAR_LINES = 90
"""Up to so many lines to its relatives, a marked plant has them all; else the near ones have."""
_NEAR_LINES = 160
"""Lines that the near ones have at most, each way."""
_NEAR = 2
"""Generations that are near, each way."""
_PATTERNED = 260
"""Up to so many lines in the window, pollen lines are drawn as grains."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """What lines were drawn last.

    lines, there : drawn, and in the window
    grains : whether those of pollen parents are dotted
    kin, kin_there : lines to relatives of the marked plant that were drawn, and all of them
    near : whether only those of the near generations were
    """

    lines: int = 0
    there: int = 0
    grains: bool = False
    kin: int = 0
    kin_there: int = 0
    near: bool = False


@dataclass(frozen=True, eq=False)
class _Kin:
    """Lines to relatives: those of ancestors, those of descendants, and how many there are."""

    upper: NDArray[np.int64]
    lower: NDArray[np.int64]
    there: int
    near: bool


def band_name(generation: int, *, short: bool = False) -> str:
    """What a band is called; short: with the word for a generation cut short."""
    if generation < 0:
        return "In loops"
    if generation == 0:
        return "Founders"
    return f"Gen. {generation}" if short else f"Generation {generation}"


class OverviewPainter:
    """Everything that is made once for a map and a theme, and the painting."""

    def __init__(self, overview: Overview, theme: Theme) -> None:
        self.overview = overview
        self.theme = theme
        self._bands = Band(overview, theme)
        # In an order drawn by lot: the same lines are left out wherever the window is.
        lot = np.random.default_rng(7).permutation(len(overview.above))
        above, below = overview.above[lot], overview.below[lot]
        self._above, self._below, self._pollen = above, below, overview.pollen[lot]
        self._x0 = overview.left[above] + overview.pitch[overview.band[above]] / 2
        self._x1 = overview.family_middle[below]
        self._band0 = overview.band[above]
        self._band1 = overview.family_band[below]
        self.drawn = Drawn()
        """What lines there were when it was painted last."""
        self._kin_of: tuple[object, ...] | None = None
        self._kin = _Kin(np.empty(0, np.int64), np.empty(0, np.int64), 0, near=False)
        self._quiet_line = mixed(theme["ground"], theme["line_soft"], 0.42)
        self._near_line = mixed(theme["ground"], theme["line"], 0.62)
        self._faint_line = mixed(theme["ground"], theme["line_soft"], 0.2)

    def paint(
        self, painter: QPainter, frame: Frame, showing: Showing | None = None, ratio: float = 1.0
    ) -> None:
        """Paint what the frame shows; `ratio` is the screen's pixels for one of the painter."""
        showing = showing or Showing()
        theme, overview = self.theme, self.overview
        painter.fillRect(QRectF(0, 0, frame.width, frame.height), colour(theme["ground"]))
        seen = frame.bands(len(overview.counts))
        tall = frame.tall
        for band in seen:
            top = frame.top(band)
            painter.fillRect(
                QRectF(frame.margin, top, frame.width - frame.margin, tall), colour(theme["band"])
            )
        painter.save()
        painter.setClipRect(
            QRectF(frame.margin, 0, frame.width - frame.margin, frame.height),
            Qt.ClipOperation.IntersectClip,
        )
        self._lines(painter, frame, showing)
        columns = max(0, frame.width - frame.margin)
        rows = max(1, round(tall * ratio))
        across = max(1, round(columns * ratio))
        tagged = [b for b in seen if frame.labelled(float(overview.pitch[b]))]
        for band in seen:
            if band in tagged:
                continue
            pixels = self._bands.pixels(band, frame, across, rows, showing, ratio)
            image = QImage(pixels.data, across, rows, across * 4, QImage.Format.Format_RGB32)
            image.setDevicePixelRatio(ratio)
            painter.drawImage(QPointF(frame.margin, round(frame.top(band))), image)
        if showing.lit:
            self._lit(painter, frame, showing)
        for band in tagged:
            self._tags(painter, band, frame, showing)
        self._rings(painter, frame, showing)
        painter.restore()
        self._names(painter, frame, seen)

    # Lines --------------------------------------------------------------------------------------

    def _lines(self, painter: QPainter, frame: Frame, showing: Showing) -> None:
        parts, which, ends, (lines, there) = self._chosen(frame, showing)
        grains = len(which) <= _PATTERNED and not showing.lit
        if showing.lit and there > _BEHIND:
            lines = there = 0
        self.drawn = Drawn(lines, there, grains and bool(self._pollen[which].any()))
        if not lines or not len(which):
            return
        near = max(0.0, 1.0 - len(which) / MOST_LINES)
        shade = mixed(self._quiet_line, self._near_line, near)
        passing = mixed(self._faint_line, self._quiet_line, near)
        if showing.lit:
            shade = passing = self._faint_line
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pollen = self._pollen[which] if grains else np.zeros(len(which), bool)
        for whole, ink in ((False, passing), (True, shade)):
            here = ends == (2 if whole else 1)
            painter.setPen(QPen(QColor(ink), 1.0))
            painter.drawLines(_lines_of(parts[here & ~pollen]))
            if (here & pollen).any():
                _grains(painter, parts[here & pollen], ink)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    def _chosen(
        self, frame: Frame, showing: Showing
    ) -> tuple[NDArray[np.float64], NDArray[np.int64], NDArray[np.int64], tuple[int, int]]:
        """Parts of lines to draw, whose they are, how many ends show, and (drawn, in all).

        A line that only passes through the window tells nothing there and is left out.
        """
        left, right = frame.x, frame.x + (frame.width - frame.margin) / frame.across
        top, bottom = frame.y - 0.6, frame.y + frame.height / frame.down
        most = _BEHIND + 1 if showing.lit else MOST_LINES
        count, first, step = len(self._above), 0, 4 * MOST_LINES
        found: list[tuple[NDArray[np.int64], NDArray[np.int64]]] = []
        total = 0
        while first < count and total < most:
            some = slice(first, first + step)
            x0, x1, b0, b1 = self._x0[some], self._x1[some], self._band0[some], self._band1[some]
            ends = ((x0 >= left) & (x0 <= right) & (b0 >= top) & (b0 <= bottom)).astype(np.int64)
            ends += (x1 >= left) & (x1 <= right) & (b1 >= top) & (b1 <= bottom)
            which = np.flatnonzero(ends)
            keep = self._kept(showing, which + first)
            if keep is not None:
                which = which[keep]
            found.append((which + first, ends[which]))
            total += len(which)
            first, step = first + step, 4 * step
        if not total:
            return np.empty((0, 4)), np.empty(0, np.int64), np.empty(0, np.int64), (0, 0)
        lines = np.concatenate([pair[0] for pair in found])
        shown = np.concatenate([pair[1] for pair in found])
        in_all = round(total * count / min(first, count))
        parts, which = self._cut(frame, lines[:most])
        return parts, lines[which], shown[which], (min(total, most), in_all)

    def _cut(
        self, frame: Frame, lines: NDArray[np.int64]
    ) -> tuple[NDArray[np.float64], NDArray[np.int64]]:
        """The parts of the lines in the window, and which of the lines they are of."""
        x0 = (self._x0[lines] - frame.x) * frame.across + frame.margin
        x1 = (self._x1[lines] - frame.x) * frame.across + frame.margin
        y0 = (self._band0[lines].astype(float) - frame.y) * frame.down + frame.tall
        y1 = (self._band1[lines].astype(float) - frame.y) * frame.down
        box = (frame.margin - 2.0, -2.0, frame.width + 2.0, frame.height + 2.0)
        return clipped(x0, y0, x1, y1, box)

    def _kept(self, showing: Showing, which: NDArray[np.int64]) -> NDArray[np.bool_] | None:
        """Which lines have neither end left out by a filter; None: all."""
        out = None
        for held in (showing.hidden, showing.faded):
            if held is not None:
                out = held if out is None else out | held
        if out is None:
            return None
        families = len(self.overview.family_band)
        left = np.bincount(self.overview.family, ~out, minlength=families)
        kept: NDArray[np.bool_] = ~out[self._above[which]] & (left[self._below[which]] > 0)
        return kept

    def _lit(self, painter: QPainter, frame: Frame, showing: Showing) -> None:
        kin = self.kin(showing)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        parts, _ = self._cut(frame, kin.lower)
        painter.setPen(QPen(QColor(self.theme["select"]), 1.4))
        painter.drawLines(_lines_of(_dashes(parts)))
        parts, _ = self._cut(frame, kin.upper)
        painter.setPen(QPen(QColor(self.theme["accent"]), 1.6))
        painter.drawLines(_lines_of(parts))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        drawn = len(kin.upper) + len(kin.lower)
        self.drawn = replace(self.drawn, kin=drawn, kin_there=kin.there, near=kin.near)

    def kin(self, showing: Showing) -> _Kin:
        """Which lines the relatives of the marked plant have: all, or with many the near ones'."""
        key = (id(showing.ancestors), id(showing.descendants), showing.selected)
        if key != self._kin_of:
            self._kin_of = key
            row = showing.selected
            upper = self._between(showing.ancestors, row, upwards=True)
            lower = self._between(showing.descendants, row, upwards=False)
            there = len(upper) + len(lower)
            near = there > _FAR_LINES
            if near:
                upper = self._between(self._nearest(row, upwards=True), row, upwards=True)
                lower = self._between(self._nearest(row, upwards=False), row, upwards=False)
                upper, lower = upper[:_NEAR_LINES], lower[:_NEAR_LINES]
            self._kin = _Kin(upper, lower, there, near)
        return self._kin

    def _nearest(self, row: int, *, upwards: bool) -> NDArray[np.bool_]:
        """Relatives of a plant at most two steps away, one way."""
        links = self.overview.links
        here, there = (links.child, links.parent) if upwards else (links.parent, links.child)
        found = np.zeros(len(self.overview), bool)
        last = np.zeros(len(self.overview), bool)
        last[row] = True
        for _ in range(_NEAR):
            rows = there[last[here]]
            last = np.zeros(len(self.overview), bool)
            last[rows] = True
            found |= last
        found[row] = False
        return found

    def _between(
        self, among: NDArray[np.bool_] | None, selected: int, *, upwards: bool
    ) -> NDArray[np.int64]:
        """Lines of descent between the selected plant and those relatives."""
        overview = self.overview
        if among is None or selected < 0:
            return np.empty(0, np.int64)
        lower = among.copy()
        upper = among.copy()
        (lower if upwards else upper)[selected] = True
        families = np.zeros(len(overview.family_band), bool)
        families[overview.family[lower]] = True
        return np.flatnonzero(upper[self._above] & families[self._below])

    # Tags ---------------------------------------------------------------------------------------

    def _tags(self, painter: QPainter, band: int, frame: Frame, showing: Showing) -> None:
        """The plants of a band as tags with codes."""
        overview = self.overview
        edges, pitch = overview.edges_of(band), float(overview.pitch[band])
        low, _ = frame.to_map(frame.margin, 0)
        high, _ = frame.to_map(frame.width, 0)
        first = max(0, int(np.searchsorted(edges, low - pitch)))
        last = int(np.searchsorted(edges, high))
        begin = int(overview.starts[band])
        tall, top = frame.tall, round(frame.top(band)) + 0.5
        wide = frame.tag_width(pitch)
        shift = (pitch * frame.across - 3.0 - wide) / 2
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rows = overview.order[begin + first : begin + last]
        lefts = (edges[first:last] - frame.x) * frame.across + frame.margin + shift
        for row, left in zip(rows.tolist(), lefts.tolist(), strict=True):
            if showing.hidden is not None and showing.hidden[row]:
                continue
            rect = QRectF(round(left) + 0.5, top, round(wide), tall - 1)
            draw_plant(painter, overview, row, rect, self.theme, showing, frame.text)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    # Marks --------------------------------------------------------------------------------------

    def rect_of(self, row: int, frame: Frame) -> QRectF:
        """Where a plant lies in the frame; it may be outside."""
        overview = self.overview
        band = int(overview.band[row])
        left, _ = frame.to_view(float(overview.left[row]), 0)
        wide = float(overview.pitch[band]) * frame.across
        return QRectF(left, frame.top(band), wide, frame.tall)

    def _rings(self, painter: QPainter, frame: Frame, showing: Showing) -> None:
        theme = self.theme
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for row, token, thick in (
            (showing.hover, "ink", 1.5),
            (showing.selected, "accent", 2.6),
        ):
            if row < 0:
                continue
            rect = self.rect_of(row, frame)
            pitch = float(self.overview.pitch[self.overview.band[row]])
            labelled = frame.labelled(pitch)
            wide = frame.tag_width(pitch) if labelled else max(rect.width() - 1, 5.0)
            ring = QRectF(0, 0, wide, rect.height())
            ring.moveCenter(rect.center() - QPointF(0.5, 0))
            grown = ring.adjusted(-3, -3, 3, 3)
            painter.setPen(QPen(colour(theme["ground"]), thick + 2.4))
            painter.drawRoundedRect(grown, 3, 3)
            painter.setPen(QPen(colour(theme[token]), thick))
            painter.drawRoundedRect(grown, 3, 3)
            if not labelled:
                draw_flag(painter, self.overview.codes[row], grown, frame, theme, token)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    def _names(self, painter: QPainter, frame: Frame, seen: range) -> None:
        """Names and counts of the bands at the left, as many as there is room for."""
        if not frame.margin:
            return
        theme, overview, text = self.theme, self.overview, frame.text
        every = max(1, int(np.ceil(16.0 * text / frame.down)))
        short = self._cut_short(frame)
        for band in seen:
            if band % every:
                continue
            middle = frame.top(band) + frame.tall / 2
            two = frame.down >= 34 * text
            left, room = 12.0, frame.margin - 20.0
            painter.setPen(colour(theme["band_text"]))
            painter.setFont(font(theme, 13.0 * text, strong=True))
            count = QLocale().toString(int(overview.counts[band]))
            small = font(theme, 11.0 * text)
            beside = 0.0 if two else QFontMetricsF(small).horizontalAdvance(count) + 8
            name = band_name(int(overview.generations[band]), short=short)
            painter.drawText(
                QPointF(left, middle + (-1 if two else 4.5) * text),
                elided(theme, 13.0 * text, name, room - beside, strong=True),
            )
            painter.setFont(small)
            if two:
                words = f"{count} plant" + ("s" if count != "1" else "")
                spot = QPointF(left, middle + 13 * text)
                painter.drawText(spot, elided(theme, 11.0 * text, words, room))
            else:
                right = QRectF(left, middle - 9 * text, room, 18 * text)
                side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
                painter.drawText(right, side, count)

    def _cut_short(self, frame: Frame) -> bool:
        """Whether the word of all names is cut short, as one of them has no room for the whole.

        All of the map are asked, so that a name stays as it is while one pans.
        """
        text, overview = frame.text, self.overview
        type_ = QFontMetricsF(font(self.theme, 13.0 * text, strong=True))
        small = QFontMetricsF(font(self.theme, 11.0 * text))
        room, two = frame.margin - 20.0, frame.down >= 34 * text
        for generation, count in zip(overview.generations, overview.counts, strict=True):
            if generation <= 0:
                continue
            written = QLocale().toString(int(count))
            beside = 0.0 if two else small.horizontalAdvance(written) + 8
            if type_.horizontalAdvance(tell(band_name(int(generation)))) > room - beside:
                return True
        return False

    def locator(self, width: int, height: int, ratio: float = 1.0) -> QImage:
        """The whole map, small, without lines."""
        overview = self.overview
        bands = max(1, len(overview.counts))
        frame = Frame(0.0, 0.0, width / overview.width, height / bands, width, height)
        image = QImage(round(width * ratio), round(height * ratio), QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(ratio)
        image.fill(QColor(self.theme["ground"]))
        painter = QPainter(image)
        try:
            across = round(width * ratio)
            rows = max(1, round(height / bands * 0.72 * ratio))
            for band in range(bands if len(overview) else 0):
                pixels = self._bands.pixels(band, frame, across, rows, Showing(), ratio)
                part = QImage(pixels.data, across, rows, across * 4, QImage.Format.Format_RGB32)
                part.setDevicePixelRatio(ratio)
                painter.drawImage(QPointF(0, band * height / bands), part)
        finally:
            painter.end()
        return image


def _lines_of(parts: NDArray[np.float64]) -> list[QLineF]:
    return [QLineF(*part) for part in parts.tolist()]


def _dashes(parts: NDArray[np.float64]) -> NDArray[np.float64]:
    """Lines as dashes, cut here, for Qt is slow at dashes of many lines."""
    dash, step = 7.0, 11.0
    long = np.hypot(parts[:, 2] - parts[:, 0], parts[:, 3] - parts[:, 1])
    many = np.maximum(1, np.ceil(long / step)).astype(np.int64)
    line = np.repeat(np.arange(len(parts)), many)
    begin = (np.arange(len(line)) - np.repeat(np.cumsum(many) - many, many)) * step
    whole = np.maximum(long[line], 1e-9)
    shares = np.stack([begin / whole, np.minimum(begin + dash, whole) / whole], axis=1)
    start, way = parts[line, :2], parts[line, 2:] - parts[line, :2]
    found: NDArray[np.float64] = np.hstack(
        [start + way * shares[:, :1], start + way * shares[:, 1:]]
    )
    return found


def _grains(painter: QPainter, parts: NDArray[np.float64], shade: str) -> None:
    """Lines as rows of dots; set as pixels, for Qt is slow at dashes of many lines."""
    step = 5.0
    dx, dy = parts[:, 2] - parts[:, 0], parts[:, 3] - parts[:, 1]
    many = (np.hypot(dx, dy) // step).astype(np.int64) + 1
    line = np.repeat(np.arange(len(parts)), many)
    along = np.arange(len(line)) - np.repeat(np.cumsum(many) - many, many)
    part = along * step / np.maximum(np.hypot(dx, dy), 1e-9)[line]
    x = np.rint(parts[line, 0] + dx[line] * part).astype(np.int64)
    y = np.rint(parts[line, 1] + dy[line] * part).astype(np.int64)
    left, top = int(x.min()), int(y.min())
    wide, high = int(x.max()) - left + 2, int(y.max()) - top + 2
    pixels = np.zeros((high, wide), np.uint32)
    value = np.uint32(QColor(shade).rgba())
    for across, down in ((0, 0), (1, 0), (0, 1), (1, 1)):
        pixels[y - top + down, x - left + across] = value
    held = QImage.Format.Format_ARGB32_Premultiplied
    image = QImage(pixels.data, wide, high, wide * 4, held)
    painter.drawImage(QPointF(left - 1, top - 1), image)
