"""The far picture of the overview as pixels: bands of founder shares, and lines cut to the window.

The work goes with the pixels, not with the plants: running sums along each band give the mix of any
stretch of it in two look-ups.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.theme import Theme, mixed

__all__ = [
    "LABELLED",
    "STRIPED",
    "WIDEST",
    "Band",
    "Frame",
    "Showing",
    "bar_of",
    "clipped",
    "pattern",
]

LABELLED = 46.0
"""Pixels from which a plant is a tag with its code."""
STRIPED = 13.0
"""Pixels from which a plant is paper with a founder stripe; below it is colour alone."""
WIDEST = 190.0
"""A tag is at most so many pixels wide, however near it is."""
_WIDE = 4.0
"""Pixels from which plants are told apart; below they are a density."""
_TALLEST = 50.0
_TAG_PART = 0.46
"""Part of a band's height that its plants take; the rest is room for lines."""
_STEPS = (0.45, 0.64, 0.82, 1.0)
"""How much of the colour shows where a band is thinly, and where it is fully, set with plants."""
_QUIET, _ASIDE = 0.24, 0.5
"""How much of it shows where a plant does not fit a filter, and beside relatives that are lit."""
_DEPTHS = (*_STEPS, _QUIET * 0.8, _QUIET, _ASIDE * 0.8, _ASIDE)
_OUT, _BESIDE = 4, 6
"""Where those begin: first for a density, then for plants that are told apart."""

Pixels = NDArray[np.uint32]


@dataclass(frozen=True, slots=True)
class Frame:
    """Which part of the map is shown where.

    x, y : place in the map at the upper left of the plot
    across, down : pixels that one unit takes, each way by itself
    width, height : pixels of the whole area; margin : of its left part that holds the names
    text : how much larger than usual the type is
    """

    x: float
    y: float
    across: float
    down: float
    width: int
    height: int
    margin: int = 0
    text: float = 1.0

    @property
    def tall(self) -> float:
        """Height of a plant in pixels."""
        return min(_TALLEST * self.text, max(2.0, self.down * _TAG_PART))

    def labelled(self, pitch: float) -> bool:
        """Whether plants of that width are tags with their codes."""
        return pitch * self.across >= LABELLED * self.text and self.tall >= 14.0 * self.text

    def tag_width(self, pitch: float) -> float:
        """Pixels that such a tag takes across."""
        return min(pitch * self.across - 3.0, WIDEST * self.text)

    def to_view(self, x: float, y: float) -> tuple[float, float]:
        """Pixels of a place in the map."""
        return (x - self.x) * self.across + self.margin, (y - self.y) * self.down

    def to_map(self, x: float, y: float) -> tuple[float, float]:
        """Place in the map of a pixel."""
        return (x - self.margin) / self.across + self.x, y / self.down + self.y

    def top(self, band: int) -> float:
        """Pixel at which a band's plants begin."""
        return (band - self.y) * self.down

    def bands(self, count: int) -> range:
        """Bands of which something can be seen."""
        first = int(np.floor(self.y - self.tall / self.down))
        last = int(np.ceil(self.y + self.height / self.down))
        return range(max(0, first), min(count, last + 1))


@dataclass(eq=False)
class Showing:
    """What is brought out of a map and what is put back.

    selected : row, or −1; ancestors, descendants : (n,) of it, or None
    hover : row, or −1
    faded, hidden : (n,) what a filter puts back or leaves out, or None
    tint : (n, 3) colours from 0 to 255, NaN where a plant has no value, or None
    classes : (n,) number of each plant's class, for its pattern, −1 for none, or None
    words : gives the short value of a row that its tag prints, for the tint
    """

    selected: int = -1
    ancestors: NDArray[np.bool_] | None = None
    descendants: NDArray[np.bool_] | None = None
    hover: int = -1
    faded: NDArray[np.bool_] | None = None
    hidden: NDArray[np.bool_] | None = None
    tint: NDArray[np.float64] | None = None
    classes: NDArray[np.int64] | None = None
    words: Callable[[int], str] | None = None
    sums: dict[str, NDArray[np.float64]] = field(default_factory=dict)
    """Running sums, made when first needed; a changed `Showing` is a new one."""

    @property
    def lit(self) -> bool:
        """Whether relatives are brought out."""
        return self.ancestors is not None or self.descendants is not None

    def running(self, overview: Overview, name: str) -> NDArray[np.float64] | None:
        """(n + 1, …) sums of one of the arrays along the bands; None where it is not set."""
        if name not in self.sums:
            held = getattr(self, name)
            if held is None:
                return None
            along = held[overview.order].astype(float)
            if name == "tint":
                valued = ~np.isnan(along[:, :1])
                along = np.hstack([np.nan_to_num(along), valued])
            self.sums[name] = np.concatenate([np.zeros((1, *along.shape[1:])), along.cumsum(0)])
        return self.sums[name]


def _rgb(colour: str) -> NDArray[np.float64]:
    return np.array([int(colour[at : at + 2], 16) for at in (1, 3, 5)], float)


def _packed(rgb: NDArray[np.float64]) -> Pixels:
    whole = np.rint(rgb).astype(np.uint32)
    packed: Pixels = (
        (np.uint32(255) << 24) | (whole[..., 0] << 16) | (whole[..., 1] << 8) | whole[..., 2]
    ).astype(np.uint32)
    return packed


def pattern(number: int, rows: int, columns: int, unit: int = 1) -> NDArray[np.bool_]:
    """(rows, columns) where the darker marks of a class's pattern lie; none for class 0.

    unit : pixels of the screen that one pixel of the pattern takes
    """
    row, column = np.arange(rows)[:, None] // unit, np.arange(columns)[None, :] // unit
    return np.broadcast_to(_marks(number, row, column), (rows, columns))


def _marks(number: int, row: NDArray[np.int64], column: NDArray[np.int64]) -> NDArray[np.bool_]:
    every, apart = (6, 4) if number <= 5 else (9, 7)
    which = (number - 1) % 5 + 1 if number > 0 else 0
    if which == 1:
        return (row + column) % every == 0
    if which == 2:
        return (row % every == 0) & (column >= 0)
    if which == 3:
        return (row - column) % every == 0
    if which == 4:
        return (row % apart == 0) & ((column + row // apart % 2 * 2) % apart == 0)
    if which == 5:
        return ((row + column) % every == 0) | ((row - column) % every == 0)
    return row + column < 0


def _darkened(image: Pixels, where: NDArray[np.bool_]) -> Pixels:
    """The pixels there at half their light."""
    half = ((image >> np.uint32(1)) & np.uint32(0x7F7F7F)) | np.uint32(0xFF000000)
    return np.where(where, half, image)


class Band:
    """Draws the plants of any band into pixels, in one theme."""

    FOUNDERS = 14
    """Entries of a palette: twelve founders, the others, the unknown part."""

    def __init__(self, overview: Overview, theme: Theme) -> None:
        self._overview = overview
        ground = _rgb(theme["band"])
        self._ground = ground
        colours = [_rgb(theme.founder(number)) for number in range(12)]
        colours += [_rgb(theme["others"]), _rgb(mixed(theme["band"], theme["line_soft"], 0.3))]
        # In a theme of patterns, density is told by the depth of one grey.
        if theme.patterned:
            colours = [_rgb(mixed("#ffffff", "#000000", 0.25 + 0.05 * at)) for at in range(14)]
        full = np.array(colours)
        steps = np.array(_DEPTHS)
        self._palette = _packed(ground + (full[None] - ground) * steps[:, None, None])
        """(8, 14): four steps of coverage, then those of what is put back."""
        self._empty = _packed(ground)
        self._paper = _packed(_rgb(theme["paper"]))
        self._edge = _packed(_rgb(mixed(theme["paper"], theme["paper_edge"], 0.9)))
        self._quiet_paper = _packed(_rgb(mixed(theme["band"], theme["paper"], 0.5)))
        self._quiet_edge = _packed(_rgb(mixed(theme["band"], theme["paper_edge"], 0.45)))
        self._blank = _packed(_rgb(mixed(theme["band"], theme["line_soft"], 0.28)))
        self._accent = _packed(_rgb(theme["accent"]))
        self._select = _packed(_rgb(theme["select"]))
        self._shares = overview.summed()

    def pixels(
        self, band: int, frame: Frame, columns: int, rows: int, showing: Showing, ratio: float = 1.0
    ) -> Pixels:
        """(rows, columns) pixels of a band from the left edge of the plot on."""
        overview = self._overview
        first, last = int(overview.starts[band]), int(overview.starts[band + 1])
        across = frame.across * ratio
        edges, pitch = overview.edges[first:last], float(overview.pitch[band])
        x = frame.x + np.arange(columns + 1) / across
        wide = pitch * across >= _WIDE * ratio
        if wide:
            middle = (x[:-1] + x[1:]) / 2
            low = np.searchsorted(edges, middle, "right") - 1
            off = (middle - edges[np.maximum(low, 0)]) * across
            gap = max(1.0, ratio)
            seen = (low >= 0) & (off < pitch * across - gap)
            low = np.maximum(low, 0)
            high = np.where(seen, low + 1, low)
            cover = np.where(seen, 1.0, 0.0)
        else:
            low = np.searchsorted(edges + pitch, x[:-1], "right")
            high = np.maximum(np.searchsorted(edges, x[1:], "left"), low)
            off = np.zeros(columns)
            place = np.searchsorted(edges, x, "right")
            inside = np.minimum(x - edges[np.maximum(place - 1, 0)], pitch)
            filled = np.where(place > 0, (place - 1) * pitch + inside, 0.0)
            cover = np.diff(filled) * across
            seen = high > low
        low, high = low + first, high + first
        many = high - low
        hidden = self._count("hidden", showing, low, high)
        if hidden is not None:
            seen = seen & (hidden < many)
        step = np.clip((cover * 4).astype(int), 0, 3)
        faded = self._count("faded", showing, low, high)
        marked = self._place(showing.selected, band)
        above = self._any("ancestors", showing, low, high)
        below = self._any("descendants", showing, low, high)
        put_back = np.zeros(columns, bool)
        if showing.lit:
            put_back = ~(above | below | ((low <= marked) & (marked < high)))
            step = np.where(put_back, _BESIDE + wide, step)
        if faded is not None:
            out = faded >= np.maximum(many, 1)
            step, put_back = np.where(out, _OUT + wide, step), put_back | out
        image = np.empty((rows, columns), np.uint32)
        if showing.tint is not None:
            self._tinted(image, showing, low, high, step)
        else:
            self._stacked(image, low, high, step)
        if wide and showing.classes is not None:
            kinds = np.where(seen, showing.classes[overview.order[low]], -1)
            self._patterned(image, kinds, max(1, round(ratio)))
        if wide and pitch * across >= STRIPED * ratio:
            self._papered(image, off, pitch * across, put_back, showing, ratio)
        image[:, ~seen] = self._empty
        _bars(image, above & seen, self._accent, below & seen, self._select, ratio)
        return image

    def _any(
        self, name: str, showing: Showing, low: NDArray[np.int64], high: NDArray[np.int64]
    ) -> NDArray[np.bool_]:
        counted = self._count(name, showing, low, high)
        return np.zeros(len(low), bool) if counted is None else counted > 0

    def _place(self, row: int, band: int) -> int:
        """Where a plant stands in the order of the bands; −1 for one of another band."""
        overview = self._overview
        if row < 0 or overview.band[row] != band:
            return -1
        edges = overview.edges_of(band)
        return int(overview.starts[band] + np.searchsorted(edges, overview.left[row]))

    def _count(
        self, name: str, showing: Showing, low: NDArray[np.int64], high: NDArray[np.int64]
    ) -> NDArray[np.float64] | None:
        running = showing.running(self._overview, name)
        return None if running is None else running[high] - running[low]

    def _stacked(
        self,
        image: Pixels,
        low: NDArray[np.int64],
        high: NDArray[np.int64],
        step: NDArray[np.int64],
    ) -> None:
        """Each column parted by founders, as the stripe of a tag is."""
        rows = len(image)
        part = self._shares[:, high] - self._shares[:, low]
        held = np.flatnonzero(part.max(axis=1, initial=0.0) > 0)
        part = part[held].cumsum(axis=0)
        part *= rows / np.maximum(high - low, 1)
        bounds = np.rint(part).astype(np.int16)
        row = np.arange(rows, dtype=np.int16)[:, None]
        # A row lies with the first founder whose bound is beyond it; what is left is unknown.
        which = np.broadcast_to(step.astype(np.uint8) * np.uint8(len(held) + 1), image.shape).copy()
        for bound in bounds:
            which += (row >= bound).view(np.uint8)
        table = self._palette[:, [*held.tolist(), self.FOUNDERS - 1]].ravel()
        np.take(table, which, out=image)

    def _tinted(
        self,
        image: Pixels,
        showing: Showing,
        low: NDArray[np.int64],
        high: NDArray[np.int64],
        step: NDArray[np.int64],
    ) -> None:
        running = showing.running(self._overview, "tint")
        assert running is not None
        total = running[high] - running[low]
        valued = total[:, 3]
        mean = total[:, :3] / np.maximum(valued, 1.0)[:, None]
        steps = np.array(_DEPTHS)[step][:, None]
        column = _packed(np.clip(self._ground + (mean - self._ground) * steps, 0, 255))
        image[:] = column
        none = valued < 0.5
        if none.any():
            rows, columns = image.shape
            dotted = (np.arange(rows)[:, None] % 4 == 0) & (np.arange(columns) % 4 == 0)
            blank = np.where(dotted, self._blank, self._empty)
            image[:, none] = blank[:, none]

    def _patterned(self, image: Pixels, kinds: NDArray[np.int64], unit: int) -> None:
        """Mark each column by the class of its plant."""
        row = np.arange(len(image))[:, None] // unit
        for number in np.unique(kinds[kinds > 0]).tolist():
            here = np.flatnonzero(kinds == number)
            marks = _marks(number, row, here[None, :] // unit)
            image[:, here] = _darkened(image[:, here], marks)

    def _papered(
        self,
        image: Pixels,
        off: NDArray[np.float64],
        width: float,
        put_back: NDArray[np.bool_],
        showing: Showing,
        ratio: float,
    ) -> None:
        """Paper beside the stripe, an edge around, the upper right corner clipped."""
        rows = len(image)
        stripe = min(8.0 * ratio, max(4.0 * ratio, width * 0.28))
        if showing.tint is None:
            body = off >= stripe
            image[:, body] = np.where(put_back, self._quiet_paper, self._paper)[body]
        edge = np.where(put_back, self._quiet_edge, self._edge)
        line = max(1, round(ratio))
        right = width - 1.0 * ratio
        image[:, off >= right - line] = edge[off >= right - line]
        image[:line], image[rows - line :] = edge, edge
        corner = min(5.0 * ratio, rows / 2)
        cut = (right - off)[None, :] + np.arange(rows)[:, None] < corner
        image[cut] = self._empty


def bar_of(height: float, ratio: float = 1.0) -> int:
    """Pixels of the bar at the edge of a relative, for a plant as high as that."""
    return max(1, round(min(7.0 * ratio, max(2.0 * ratio, height * 0.2))))


def _bars(
    image: Pixels,
    above: NDArray[np.bool_],
    upper: Pixels,
    below: NDArray[np.bool_],
    lower: Pixels,
    ratio: float,
) -> None:
    """A bar over each ancestor and one under each descendant; between them the plant's colours.

    Two places, and not two textures: hundreds of cells of a texture would shimmer.
    """
    thick = bar_of(len(image), ratio)
    image[:thick, above] = upper
    image[len(image) - thick :, below] = lower


def clipped(
    x0: NDArray[np.float64],
    y0: NDArray[np.float64],
    x1: NDArray[np.float64],
    y1: NDArray[np.float64],
    box: tuple[float, float, float, float],
) -> tuple[NDArray[np.float64], NDArray[np.int64]]:
    """Parts of segments inside a box (left, top, right, bottom), and which segments they are.

    The well-known way of Liang and Barsky (1984, from memory): each side of the box narrows the
    stretch of the segment that can be seen.
    """
    left, top, right, bottom = box
    dx, dy = x1 - x0, y1 - y0
    start, end = np.zeros(len(x0)), np.ones(len(x0))
    outside = np.zeros(len(x0), bool)
    for step, room in ((-dx, x0 - left), (dx, right - x0), (-dy, y0 - top), (dy, bottom - y0)):
        still = step == 0
        outside |= still & (room < 0)
        with np.errstate(divide="ignore", invalid="ignore"):
            at = room / step
        np.maximum(start, np.where(step < 0, at, start), out=start)
        np.minimum(end, np.where(step > 0, at, end), out=end)
    which = np.flatnonzero(~outside & (start <= end))
    s, e = start[which], end[which]
    fx, fy, gx, gy = x0[which], y0[which], dx[which], dy[which]
    return np.stack([fx + gx * s, fy + gy * s, fx + gx * e, fy + gy * e], axis=1), which
