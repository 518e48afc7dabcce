"""A heat map on paper: title, table, scale, near-duplicates and base, as SVG, PDF or PNG."""

from __future__ import annotations

import datetime
import re
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.heat_picture import (
    HeatFrame,
    HeatPicture,
    paint_heat,
    paint_scale,
    scale_height,
)
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import font
from pedigreeview.exchange.writing import replace_file

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintDevice

__all__ = ["HeatSheet", "heat_sheet", "save_heat"]

_MARGIN = 30.0
_LEAST_WIDTH = 620.0
_SCALE_WIDTH = 260.0
_WIDE = 1500.0
"""Pixels that the squares of a large table take together."""
_SQUARE = 48.0
_MOST_PIXELS = 120_000_000
_PDF_DPI = 600
_PAPER_MM = 12.0


@dataclass(frozen=True, slots=True)
class HeatSheet:
    """Everything on one area, as large as the table needs, in picture units of 1/96 inch."""

    picture: HeatPicture
    title: str
    scale: str
    notes: tuple[str, ...]
    cell: float
    width: float
    height: float

    def paint(self, painter: QPainter) -> None:
        """Paint the sheet from its upper left corner."""
        picture, theme = self.picture, self.picture.theme
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        painter.fillRect(QRectF(0, 0, self.width, self.height), colour(theme["paper"]))
        painter.setPen(colour(theme["ink"]))
        painter.setFont(font(theme, theme.type["title"], strong=True))
        inner = self.width - 2 * _MARGIN
        head = QRectF(_MARGIN, _MARGIN, inner, _head(picture))
        painter.drawText(head, Qt.AlignmentFlag.AlignLeft, self.title)
        y = head.bottom()
        wide, tall = picture.whole(self.cell)
        painter.save()
        painter.translate(_MARGIN, y)
        frame = HeatFrame(self.cell, 0.0, 0.0, wide, tall)
        paint_heat(painter, picture, frame, shapes=True)
        painter.restore()
        y += tall + _MARGIN / 2
        scale = QRectF(_MARGIN, y, _SCALE_WIDTH, scale_height(picture))
        paint_scale(painter, picture, scale, self.scale)
        y = scale.bottom() + 12
        painter.setFont(font(theme, theme.type["legend"]))
        painter.setPen(colour(theme["ink_soft"]))
        for note in self.notes:
            tall = _note_height(picture, note, inner)
            painter.drawText(QRectF(_MARGIN, y, inner, tall), _WRAP, note)
            y += tall + 4


_WRAP = int(Qt.AlignmentFlag.AlignLeft) | int(Qt.TextFlag.TextWordWrap)


def _head(picture: HeatPicture) -> float:
    return picture.theme.type["title"] * 1.8


def _note_height(picture: HeatPicture, note: str, width: float) -> float:
    metrics = QFontMetricsF(font(picture.theme, picture.theme.type["legend"]))
    return metrics.boundingRect(QRectF(0, 0, width, 10_000), _WRAP, note).height() + 2


def heat_sheet(
    picture: HeatPicture, *, title: str, scale: str, notes: Sequence[str] = (), date: str = ""
) -> HeatSheet:
    """Lay out a heat map for paper.

    Parameters
    ----------
    title : over the table
    scale : what the tones stand for
    notes : sentences below, the base among them
    date : ISO date of the drawing; '' for today
    """
    largest = _SQUARE if picture.count <= 30 else 16.0
    cell = min(largest, max(1.0, _WIDE / max(1, picture.count)))
    wide, tall = picture.whole(cell)
    said = (*notes, f"Drawn on {date or datetime.date.today().isoformat()}.")
    metrics = QFontMetricsF(font(picture.theme, picture.theme.type["title"], strong=True))
    width = max(_LEAST_WIDTH, wide + 2 * _MARGIN, metrics.horizontalAdvance(title) + 2 * _MARGIN)
    inner = width - 2 * _MARGIN
    below = sum(_note_height(picture, note, inner) + 4 for note in said)
    height = 2 * _MARGIN + _head(picture) + tall + _MARGIN / 2 + scale_height(picture) + 12 + below
    return HeatSheet(picture, title, scale, tuple(said), cell, width, height)


def save_heat(sheet: HeatSheet, path: str | Path, *, dpi: int = 150) -> Path:
    """Write the sheet; the ending says how: '.svg', '.pdf' or '.png'.

    Raises
    ------
    Fault : another ending, a place that cannot be written to, or too many pixels
    """
    target = Path(path)
    kind = target.suffix.lower()
    writers = {".svg": _svg, ".pdf": _pdf, ".png": lambda s, p: _png(s, p, dpi)}
    if kind not in writers:
        raise Fault(
            f"A picture cannot be written to a file that ends in {kind or 'nothing'}.",
            Place(file=str(target)),
            "Use .svg, .pdf or .png.",
        )
    with replace_file(target) as beside:
        writers[kind](sheet, beside)
    return target


def _begin(painter: QPainter, device: QPaintDevice, path: Path) -> None:
    if not painter.begin(device):
        raise Fault(
            "The picture could not be written.",
            Place(file=str(path)),
            "See whether the folder exists and can be written to, and whether the disk is full.",
        )


def _svg(sheet: HeatSheet, path: Path) -> None:
    from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize
    from PySide6.QtSvg import QSvgGenerator

    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    made = QSvgGenerator()
    made.setOutputDevice(buffer)
    made.setResolution(96)
    made.setSize(QSize(round(sheet.width), round(sheet.height)))
    made.setViewBox(QRectF(0, 0, sheet.width, sheet.height))
    made.setTitle(sheet.title)
    made.setDescription(" ".join(sheet.notes))
    painter = QPainter()
    try:
        _begin(painter, made, path)
        sheet.paint(painter)
    finally:
        painter.end()
        buffer.close()
    text = bytes(held.data()).decode("utf-8")
    fonts = sheet.picture.theme.fonts
    families = ", ".join(f"'{name}'" if " " in name else name for name in fonts)
    text = re.sub(r'font-family="[^"]*"', f'font-family="{families}, sans-serif"', text)
    path.write_text(text, encoding="utf-8")


def _pdf(sheet: HeatSheet, path: Path) -> None:
    from PySide6.QtCore import QMarginsF
    from PySide6.QtGui import QPageLayout, QPageSize, QPdfWriter

    writer = QPdfWriter(str(path))
    writer.setResolution(_PDF_DPI)
    writer.setTitle(sheet.title)
    writer.setCreator("pedigreeview")
    writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
    wide = sheet.width > sheet.height
    way = QPageLayout.Orientation.Landscape if wide else QPageLayout.Orientation.Portrait
    writer.setPageOrientation(way)
    margins = QMarginsF(_PAPER_MM, _PAPER_MM, _PAPER_MM, _PAPER_MM)
    writer.setPageMargins(margins, QPageLayout.Unit.Millimeter)
    painter = QPainter()
    try:
        _begin(painter, writer, path)
        fit = min(writer.width() / sheet.width, writer.height() / sheet.height)
        scale = min(fit, _PDF_DPI / 96)
        painter.scale(scale, scale)
        sheet.paint(painter)
    finally:
        painter.end()


def _png(sheet: HeatSheet, path: Path, dpi: int) -> None:
    from PySide6.QtGui import QImage

    scale = dpi / 96
    width, height = round(sheet.width * scale), round(sheet.height * scale)
    if dpi < 1 or width * height > _MOST_PIXELS or max(width, height) > 32000:
        raise Fault(
            f"At {dpi} dpi the picture would be {width} by {height} pixels, too many for a PNG.",
            Place(file=str(path)),
            "Choose fewer dpi, or SVG or PDF.",
        )
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.setDotsPerMeterX(round(dpi / 0.0254))
    image.setDotsPerMeterY(round(dpi / 0.0254))
    painter = QPainter()
    try:
        _begin(painter, image, path)
        painter.scale(scale, scale)
        sheet.paint(painter)
    finally:
        painter.end()
    if not image.save(str(path), "PNG"):  # type: ignore[call-overload]
        raise Fault(
            "The picture could not be written.",
            Place(file=str(path)),
            "See whether the folder can be written to and whether the disk is full.",
        )
