"""Which plants of the map a band touches, and the marks of those that are picked."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QRect, QRectF
from PySide6.QtGui import QPainter

from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.overview_raster import Frame, Showing
from pedigreeview.drawing.picked import draw_picked, draw_tick
from pedigreeview.drawing.signs import pen
from pedigreeview.drawing.theme import Theme

__all__ = ["PickedRows", "codes_inside", "codes_kept"]

_GAP = 3.0
"""Pixels between plants that break a bracket."""
_BADGES = 300
"""So many brackets have a tick and a number; with more of them there is no room."""


def codes_inside(overview: Overview, frame: Frame, band: QRect) -> list[str]:
    """Plants that a rectangle of the viewport touches, band by band."""
    return [overview.codes[row] for row in _rows_inside(overview, frame, band).tolist()]


def codes_kept(
    overview: Overview, frame: Frame, showing: Showing, band: QRect | None = None
) -> list[str]:
    """Plants that no filter leaves out or puts back; those that a rectangle touches, or all."""
    if band is None and showing.hidden is None and showing.faded is None:
        return list(overview.codes)
    rows = overview.order if band is None else _rows_inside(overview, frame, band)
    for out in (showing.hidden, showing.faded):
        if out is not None:
            rows = rows[~out[rows]]
    return [overview.codes[row] for row in rows.tolist()]


class PickedRows:
    """The picked plants of a map, found once and marked with each painting."""

    def __init__(self, overview: Overview | None, codes: tuple[str, ...]) -> None:
        self._overview = overview
        self._rows = np.empty(0, np.int64)
        if overview is not None and codes:
            self._rows = np.flatnonzero(overview.rows_of(codes))

    def __len__(self) -> int:
        return len(self._rows)

    def paint(self, painter: QPainter, frame: Frame, theme: Theme) -> None:
        """Mark those that the window shows."""
        if self._overview is not None:
            _paint(painter, self._overview, frame, self._rows, theme)


def _rows_inside(overview: Overview, frame: Frame, band: QRect) -> NDArray[np.int64]:
    left, top = frame.to_map(band.left(), band.top())
    right, bottom = frame.to_map(band.right() + 1, band.bottom() + 1)
    found = []
    for at in range(max(0, int(top // 1)), min(len(overview.counts), int(bottom // 1) + 1)):
        upper = frame.top(at)
        if upper > band.bottom() or upper + frame.tall < band.top():
            continue
        edges, begin = overview.edges_of(at), int(overview.starts[at])
        first = int(np.searchsorted(edges + overview.pitch[at], left, "right"))
        last = int(np.searchsorted(edges[: int(overview.counts[at])], right))
        found.append(overview.order[begin + first : begin + last])
    return np.concatenate(found) if found else np.empty(0, np.int64)


def _paint(
    painter: QPainter, overview: Overview, frame: Frame, rows: NDArray[np.int64], theme: Theme
) -> None:
    """Mark picked plants: a tag by an outline and a tick, a run of narrower ones by a bracket."""
    if not len(rows):
        return
    bands = overview.band[rows]
    pitch: NDArray[np.float64] = np.asarray(overview.pitch[bands] * frame.across, float)
    left = (overview.left[rows] - frame.x) * frame.across + frame.margin
    top = (bands - frame.y) * frame.down
    seen = (left + pitch > frame.margin) & (left < frame.width)
    seen &= (top + frame.tall > 0) & (top < frame.height + 12)
    painter.save()
    painter.setClipRect(QRectF(frame.margin, 0, frame.width - frame.margin, frame.height))
    # Tags with codes have room for a mark each; what is narrower shares a bracket.
    tagged = np.array([frame.labelled(float(wide)) for wide in overview.pitch], bool)[bands]
    for at in np.flatnonzero(seen & tagged).tolist():
        wide, x = float(pitch[at]), float(left[at])
        tag = frame.tag_width(float(overview.pitch[bands[at]]))
        rect = QRectF(x + (wide - 3.0 - tag) / 2, float(top[at]), tag, frame.tall)
        draw_picked(painter, rect, theme, text=frame.text)
    far = np.flatnonzero(seen & ~tagged)
    if len(far):
        tops = np.asarray(top[far], float)
        _brackets(painter, _runs(bands[far], left[far], pitch[far], tops), theme, frame.text)
    painter.restore()


def _runs(
    bands: NDArray[np.int64],
    left: NDArray[np.float64],
    pitch: NDArray[np.float64],
    top: NDArray[np.float64],
) -> list[tuple[float, float, float, int]]:
    """Neighbours that are picked: first and last pixel, pixel of the top, how many plants."""
    order = np.lexsort((left, bands))
    bands, left, pitch, top = bands[order], left[order], pitch[order], top[order]
    right = left + pitch
    breaks = (np.diff(bands) != 0) | (left[1:] - right[:-1] > _GAP)
    first = np.concatenate([[0], np.flatnonzero(breaks) + 1])
    last = np.append(first[1:], len(left)) - 1
    return list(
        zip(
            left[first].tolist(),
            right[last].tolist(),
            top[first].tolist(),
            (last - first + 1).tolist(),
            strict=True,
        )
    )


def _brackets(
    painter: QPainter, runs: list[tuple[float, float, float, int]], theme: Theme, text: float
) -> None:
    lines = []
    for x, end, top, _ in runs:
        y = round(top) - 4.5
        x, end = round(x) + 0.5, max(round(x) + 1.5, round(end) - 1.5)
        lines += [QLineF(x, y, end, y), QLineF(x, y, x, y + 4), QLineF(end, y, end, y + 4)]
    painter.setPen(pen(theme["ground"], 4.0))
    painter.drawLines(lines)
    painter.setPen(pen(theme["ink"], 2.0))
    painter.drawLines(lines)
    if len(runs) > _BADGES:
        return
    for x, end, top, many in runs:
        if end - x >= 34 * text:
            draw_tick(painter, x + 12 * text, top - 5, 7.0 * text, theme, str(many))
