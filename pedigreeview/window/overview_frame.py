"""Which part of the map the window shows: zoom each way by itself, pan, fit, what lies where."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, Signal
from PySide6.QtWidgets import QWidget

from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.overview_raster import WIDEST, Frame
from pedigreeview.window.picture_area import PictureArea
from pedigreeview.window.style import step

__all__ = ["MapFrame"]

_TALLEST = 180.0
"""Pixels from band to band at the nearest."""
_FIT_TALLEST = 150.0
_EDGE = 0.02
"""Room at either side of a fitted map, as a part of its width."""
_HEAD, _FOOT = 12, 48
"""Pixels above and below a fitted map."""


class MapFrame(PictureArea):
    """A scroll area that shows an overview from a place on, with a zoom across and one down."""

    zoomed = Signal(float, float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._overview: Overview | None = None
        self._across = self._down = 1.0
        self._x = self._y = 0.0
        self._fitted = True
        self._text = 1.0

    @property
    def overview(self) -> Overview | None:
        """The map on show."""
        return self._overview

    def margin(self) -> int:
        """Pixels at the left that hold the names of the bands."""
        return max(round(126 * self._text), 16 * step())

    def set_text_scale(self, factor: float) -> None:
        """Make the map's type as much larger as that of the window; 1 is the usual size."""
        if factor > 0 and factor != self._text:
            self._text = factor
            if self._fitted:
                self.fit()
            self._changed()

    def text_scale(self) -> float:
        """How much larger than usual the type of the map is."""
        return self._text

    def frame(self) -> Frame:
        """What the window shows at the moment."""
        size = self.viewport().size()
        return Frame(
            self._x,
            self._y,
            self._across,
            self._down,
            size.width(),
            size.height(),
            min(self.margin(), size.width() // 3),
            self._text,
        )

    def _fitting(self) -> tuple[float, float]:
        """Zoom across and down at which the whole map fits."""
        assert self._overview is not None
        shown = self.frame()
        plot = max(1, shown.width - shown.margin)
        bands = max(1, len(self._overview.counts))
        across = plot / (self._overview.width * (1 + 2 * _EDGE))
        down = max(1.0, shown.height - (_FOOT + _HEAD) * self._text) / (bands - 0.5)
        return min(across, WIDEST * self._text), min(down, _FIT_TALLEST * self._text)

    def fit(self) -> None:
        """Show the whole map."""
        if self._overview is None:
            return
        self._across, self._down = self._fitting()
        shown = self.frame()
        wide = (shown.width - shown.margin) / self._across
        high = shown.height / self._down
        tall = len(self._overview.counts) - 1 + shown.tall / self._down
        self._x = (self._overview.width - wide) / 2
        # A map of few bands keeps near the top, where the eye begins.
        least = _HEAD * self._text / self._down
        self._y = -max(least, min(0.3, max(0.0, high - tall) / 2))
        self._fitted = True
        self._changed()

    def all_shown(self) -> bool:
        """Whether the window shows the whole map."""
        if self._overview is None:
            return True
        shown = self.frame()
        left, top = shown.to_view(0.0, 0.0)
        right, bottom = shown.to_view(self._overview.width, len(self._overview.counts) - 1)
        inside = left >= shown.margin - 2 and right <= shown.width + 2
        return inside and top >= -2 and bottom + shown.tall <= shown.height + 2

    def zoom_by(
        self,
        factor: float,
        about: QPointF | QPoint | None = None,
        *,
        across: bool = True,
        down: bool = True,
    ) -> None:
        """Zoom one way or both, keeping one viewport place (the middle by default) where it is."""
        if self._overview is None:
            return
        middle = QPointF(self.viewport().rect().center())
        spot = QPointF(about) if about is not None else middle
        x, y = self.frame().to_map(spot.x(), spot.y())
        least_across, least_down = self._fitting()
        if across:
            self._across = min(WIDEST * self._text, max(least_across * 0.9, self._across * factor))
        if down:
            self._down = min(_TALLEST * self._text, max(min(least_down, 8.0), self._down * factor))
        now = self.frame()
        nx, ny = now.to_map(spot.x(), spot.y())
        self._fitted = False
        self._go_to(self._x + x - nx, self._y + y - ny)
        self.zoomed.emit(self._across, self._down)

    def pan_by(self, pixels: QPointF) -> None:
        """Move the map by so many pixels."""
        self._fitted = False
        self._go_to(self._x - pixels.x() / self._across, self._y - pixels.y() / self._down)

    def _go_to(self, x: float, y: float) -> None:
        """Go to a place in the map, which keeps part of it in the window."""
        assert self._overview is not None
        shown = self.frame()
        wide, high = (shown.width - shown.margin) / self._across, shown.height / self._down
        self._x = min(max(x, -wide / 2), self._overview.width - wide / 2)
        self._y = min(max(y, -high / 2), len(self._overview.counts) - high / 2)
        self._changed()

    def show_code(self, code: str) -> None:
        """Pan by as little as brings a plant well into the window."""
        rect = self.rect_of(code)
        if not rect.isValid():
            return
        shown = self.frame()
        edge = min(60, shown.width // 8)
        left, right = shown.margin + edge, shown.width - edge
        top, bottom = min(40, shown.height // 8), shown.height - min(40, shown.height // 8)
        middle = rect.center()
        dx = min(0, right - middle.x()) + max(0, left - middle.x())
        dy = min(0, bottom - rect.bottom()) + max(0, top - rect.top())
        if dx or dy:
            self.pan_by(QPointF(dx, dy))

    def rect_of(self, code: str) -> QRect:
        """Viewport rectangle of a plant, which may be outside; null for a code not in the map."""
        overview = self._overview
        row = overview.row(code) if overview is not None else -1
        if overview is None or row < 0:
            return QRect()
        band, shown = int(overview.band[row]), self.frame()
        left, _ = shown.to_view(float(overview.left[row]), 0.0)
        wide = float(overview.pitch[band]) * shown.across
        rect = QRectF(left, shown.top(band), max(1.0, wide), shown.tall)
        return rect.toAlignedRect()

    def where(self, code: str) -> QPoint:
        """A place in the viewport where a plant can be clicked; (-1, -1) when not shown."""
        overview = self._overview
        row = overview.row(code) if overview is not None else -1
        if overview is None or row < 0:
            return QPoint(-1, -1)
        band, shown = int(overview.band[row]), self.frame()
        middle = float(overview.left[row]) + float(overview.pitch[band]) / 2
        x, _ = shown.to_view(middle, 0.0)
        spot = QPoint(int(x), int(shown.top(band) + shown.tall / 2))
        inside = self.viewport().rect().adjusted(shown.margin, 0, 0, 0)
        return spot if inside.contains(spot) else QPoint(-1, -1)

    def at(self, point: QPoint) -> str:
        """Code of the plant at a viewport place, or ''."""
        row = self.row_at(point)
        return self._overview.codes[row] if self._overview is not None and row >= 0 else ""

    def row_at(self, point: QPoint) -> int:
        """Row of the plant at a viewport place, or −1."""
        overview = self._overview
        if overview is None:
            return -1
        shown = self.frame()
        if point.x() < shown.margin:
            return -1
        # The middle of the pixel, as the picture is drawn.
        x, y = shown.to_map(point.x() + 0.5, point.y() + 0.5)
        band = int(y // 1)
        if (y - band) * shown.down > shown.tall:
            return -1
        return overview.at(x, band)

    def _changed(self) -> None:
        self.viewport().update()
