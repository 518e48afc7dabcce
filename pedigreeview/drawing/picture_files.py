"""A drawing written as SVG, PNG or PDF: what is the same whatever the drawing shows."""

from __future__ import annotations

import re
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from pedigreeview.book.faults import Fault, Place

if TYPE_CHECKING:
    from PySide6.QtGui import QPagedPaintDevice, QPaintDevice, QPainter, QPdfWriter

__all__ = [
    "PAPERS",
    "SUFFIXES",
    "Drawing",
    "begin",
    "pdf_writer",
    "set_paper",
    "write_png",
    "write_svg",
]

SUFFIXES = (".svg", ".pdf", ".png")
"""Endings of the pictures that can be written."""
PAPERS = ("A4", "A3", "A2", "A1", "A0", "A5", "Letter", "Legal", "Tabloid")
"""Papers of a picture, the usual one first."""
_UNITS_AN_INCH = 96
_MOST_PIXELS = 240_000_000
_MOST_ACROSS = 32_000
_PDF_DPI = 600


class Drawing(Protocol):
    """Something that paints itself from its upper left corner, in units of 1/96 inch."""

    @property
    def width(self) -> float:
        """Width in units."""

    @property
    def height(self) -> float:
        """Height in units."""

    def paint(self, painter: QPainter) -> None:
        """Paint all of it."""


def _not_written(path: Path) -> Fault:
    return Fault(
        "The picture could not be written.",
        Place(file=str(path)),
        "See whether the folder exists and can be written to, and whether the disk is full.",
    )


def begin(painter: QPainter, device: QPaintDevice, path: Path) -> None:
    """Begin to paint what becomes a file.

    Raises
    ------
    Fault : the device does not take it
    """
    if not painter.begin(device):
        raise _not_written(path)


def write_svg(
    drawing: Drawing, path: Path, *, title: str, words: str, fonts: Sequence[str]
) -> None:
    """Write a drawing as SVG in which text stays text.

    title, words : for a person who does not see it
    fonts : families of its type; any without serifs stands in for them
    """
    from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize
    from PySide6.QtGui import QPainter
    from PySide6.QtSvg import QSvgGenerator

    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    made = QSvgGenerator()
    made.setOutputDevice(buffer)
    made.setResolution(_UNITS_AN_INCH)
    made.setSize(QSize(round(drawing.width), round(drawing.height)))
    made.setViewBox(QRectF(0, 0, drawing.width, drawing.height))
    made.setTitle(title)
    made.setDescription(words)
    painter = QPainter()
    try:
        begin(painter, made, path)
        drawing.paint(painter)
    finally:
        painter.end()
        buffer.close()
    text = bytes(held.data()).decode("utf-8")
    families = ", ".join(f"'{name}'" if " " in name else name for name in fonts)
    text = re.sub(r'font-family="[^"]*"', f'font-family="{families}, sans-serif"', text)
    path.write_text(text, encoding="utf-8")


def write_png(drawing: Drawing, path: Path, dpi: int) -> None:
    """Write a drawing as PNG.

    Raises
    ------
    Fault : it would have too many pixels, or it cannot be written
    """
    from PySide6.QtGui import QImage, QPainter

    scale = dpi / _UNITS_AN_INCH
    width, height = round(drawing.width * scale), round(drawing.height * scale)
    if dpi < 1 or width * height > _MOST_PIXELS or max(width, height) > _MOST_ACROSS:
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
        begin(painter, image, path)
        painter.scale(scale, scale)
        drawing.paint(painter)
    finally:
        painter.end()
    if not image.save(str(path), "PNG"):  # type: ignore[call-overload]
        raise _not_written(path)


def pdf_writer(path: Path, title: str) -> QPdfWriter:
    """A writer of a PDF file, fine enough for hair lines."""
    from PySide6.QtGui import QPdfWriter

    writer = QPdfWriter(str(path))
    writer.setResolution(_PDF_DPI)
    writer.setTitle(title)
    writer.setCreator("pedigreeview")
    return writer


def set_paper(device: QPagedPaintDevice, paper: str, landscape: bool, margin: float) -> None:
    """Set the paper of a device, its way, and one margin on all sides in mm."""
    from PySide6.QtCore import QMarginsF
    from PySide6.QtGui import QPageLayout, QPageSize

    way = QPageLayout.Orientation.Landscape if landscape else QPageLayout.Orientation.Portrait
    device.setPageSize(QPageSize(getattr(QPageSize.PageSizeId, paper)))
    device.setPageOrientation(way)
    margins = QMarginsF(margin, margin, margin, margin)
    device.setPageMargins(margins, QPageLayout.Unit.Millimeter)
