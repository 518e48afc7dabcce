"""A heat map on paper: title, caption, table, scale, base and more, as SVG, PDF or PNG."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.captions import caption_height, caption_of, paint_caption, wrapped
from pedigreeview.drawing.heat_picture import (
    HeatFrame,
    HeatPicture,
    paint_heat,
    paint_scale,
    scale_height,
)
from pedigreeview.drawing.margins import UNITS_PER_MM, paper_margin, picture_margin
from pedigreeview.drawing.picture_files import (
    SUFFIXES,
    begin,
    pdf_writer,
    set_paper,
    write_png,
    write_svg,
)
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import font
from pedigreeview.exchange.writing import replace_file

__all__ = ["HeatSheet", "heat_sheet", "save_heat"]

_LEAST_WIDTH = 560.0
_GAP = 15.0
_SCALE_WIDTH = 260.0
_WIDE = 1500.0
"""Pixels that the squares of a large table take together."""
_SQUARE = 48.0
_BETWEEN = 6.0
"""Between two notes."""


@dataclass(frozen=True, slots=True)
class HeatSheet:
    """Everything on one area, as large as the table needs, in picture units of 1/96 inch."""

    picture: HeatPicture
    title: str
    caption: tuple[str, ...]
    scale: str
    notes: tuple[str, ...]
    cell: float
    width: float
    height: float
    edge: float
    """Blank on all sides."""
    margin: float | None
    """What was asked for, in mm; None: the usual one."""
    ground: str
    """Colour below everything; blank: that of the paper."""

    def paint(self, painter: QPainter) -> None:
        """Paint the sheet from its upper left corner."""
        picture, theme, edge = self.picture, self.picture.theme, self.edge
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        if self.ground:
            painter.fillRect(QRectF(0, 0, self.width, self.height), colour(self.ground))
        painter.setPen(colour(theme["ink"]))
        painter.setFont(font(theme, theme.type["title"], strong=True))
        inner = self.width - 2 * edge
        head = QRectF(edge, edge, inner, _head(picture))
        painter.drawText(head, Qt.AlignmentFlag.AlignLeft, self.title)
        y = head.bottom()
        y += paint_caption(painter, theme, self.caption, edge, y, inner)
        wide, tall = picture.whole(self.cell)
        painter.save()
        painter.translate(edge, y)
        frame = HeatFrame(self.cell, 0.0, 0.0, wide, tall)
        paint_heat(painter, picture, frame, shapes=True)
        painter.restore()
        y += tall + _GAP
        scale = QRectF(edge, y, _SCALE_WIDTH, scale_height(picture))
        paint_scale(painter, picture, scale, self.scale)
        y = scale.bottom() + 12
        face = font(theme, theme.type["legend"])
        line = QFontMetricsF(face).height()
        painter.setFont(face)
        painter.setPen(colour(theme["ink_soft"]))
        for note in self.notes:
            for text in wrapped(face, note, inner):
                painter.drawText(QPointF(edge, y + line * 0.8), text)
                y += line
            y += _BETWEEN

    def for_paper(self) -> HeatSheet:
        """The same without its blank space and ground: paper has its own."""
        inner = (self.width - 2 * self.edge, self.height - 2 * self.edge)
        return replace(self, width=inner[0], height=inner[1], edge=0.0, ground="")


def _head(picture: HeatPicture) -> float:
    return picture.theme.type["title"] * 1.8


def _note_height(picture: HeatPicture, note: str, width: float) -> float:
    face = font(picture.theme, picture.theme.type["legend"])
    return QFontMetricsF(face).height() * len(wrapped(face, note, width)) + _BETWEEN


def heat_sheet(
    picture: HeatPicture,
    *,
    title: str,
    scale: str,
    notes: Sequence[str] = (),
    date: str = "",
    caption: str = "",
    margin: float | None = None,
) -> HeatSheet:
    """Lay out a heat map for paper.

    Parameters
    ----------
    title : over the table
    scale : what the tones stand for
    notes : sentences below, the base among them
    date : ISO date of the drawing; '' for today
    caption : below the title, in the words of the person
    margin : blank on all sides, in mm; None: the usual one

    Raises
    ------
    Fault : a margin that is too wide, a caption that is too long
    """
    edge = float(round(picture_margin(margin) * UNITS_PER_MM))
    words = caption_of(caption)
    largest = _SQUARE if picture.count <= 30 else 16.0
    cell = min(largest, max(1.0, _WIDE / max(1, picture.count)))
    wide, tall = picture.whole(cell)
    said = (*notes, f"Drawn on {date or datetime.date.today().isoformat()}.")
    metrics = QFontMetricsF(font(picture.theme, picture.theme.type["title"], strong=True))
    inner = max(_LEAST_WIDTH, wide, metrics.horizontalAdvance(title))
    below = sum(_note_height(picture, note, inner) for note in said)
    height = (
        _head(picture)
        + caption_height(picture.theme, words, inner)
        + tall
        + _GAP
        + scale_height(picture)
        + 12
        + below
    )
    return HeatSheet(
        picture,
        title,
        words,
        scale,
        said,
        cell,
        inner + 2 * edge,
        height + 2 * edge,
        edge,
        margin,
        picture.theme["paper"],
    )


def save_heat(sheet: HeatSheet, path: str | Path, *, dpi: int = 150) -> Path:
    """Write the sheet; the ending says how: '.svg', '.pdf' or '.png'.

    Raises
    ------
    Fault : another ending, a place that cannot be written to, too many pixels, or a margin that
        no printer keeps
    """
    target = Path(path)
    kind = target.suffix.lower()
    if kind not in SUFFIXES:
        raise Fault(
            f"A picture cannot be written to a file that ends in {kind or 'nothing'}.",
            Place(file=str(target)),
            "Use .svg, .pdf or .png.",
        )
    margin = paper_margin(sheet.margin) if kind == ".pdf" else 0.0
    with replace_file(target) as beside:
        if kind == ".pdf":
            _write_pdf(sheet.for_paper(), Path(beside), margin)
        elif kind == ".png":
            write_png(sheet, Path(beside), dpi)
        else:
            words, fonts = " ".join(sheet.notes), sheet.picture.theme.fonts
            write_svg(sheet, Path(beside), title=sheet.title, words=words, fonts=fonts)
    return target


def _write_pdf(sheet: HeatSheet, path: Path, margin: float) -> None:
    writer = pdf_writer(path, sheet.title)
    set_paper(writer, "A4", sheet.width > sheet.height, margin)
    painter = QPainter()
    try:
        begin(painter, writer, path)
        fit = min(writer.width() / sheet.width, writer.height() / sheet.height)
        scale = min(fit, writer.logicalDpiX() / 96)
        painter.scale(scale, scale)
        sheet.paint(painter)
    finally:
        painter.end()
