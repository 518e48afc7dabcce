"""The picture as a file: SVG, PDF (on one sheet or tiled over several) or PNG.

Text stays text in SVG and PDF.  The file is written beside its place and then moved there, so that
a failed export leaves an older file as it was.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.drawing.view import Look, choose
from pedigreeview.exchange.writing import replace_file

if TYPE_CHECKING:
    from PySide6.QtCore import QRectF
    from PySide6.QtGui import QPaintDevice, QPainter, QPdfWriter

    from pedigreeview.drawing.placing import Orientation, Placed
    from pedigreeview.drawing.worker import Tick
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.reports.sheets import Sheet

__all__ = ["PAPERS", "SUFFIXES", "save_picture", "save_placed", "tiles"]

SUFFIXES = (".svg", ".pdf", ".png")
PAPERS = ("A5", "A4", "A3", "A2", "A1", "A0", "Letter", "Legal", "Tabloid")
_MOST_PIXELS = 240_000_000
_APART_FROM = 400
"""Blocks from which the picture is laid out in another process."""
_MARGIN_MM = 10.0
_OVERLAP_MM = 8.0
_PDF_DPI = 600


def save_picture(
    net: PedigreeNetwork,
    path: str | Path,
    *,
    look: Look | None = None,
    title: str = "",
    paper: str = "A4",
    landscape: bool | None = None,
    tiled: bool = False,
    dpi: int = 150,
    theme: str = "light",
    orientation: Orientation = "down",
    date: str = "",
    tick: Tick | None = None,
) -> Path:
    """Write the picture of a network; the kind of file goes by its suffix.

    look : what to show; the whole book without one
    paper, landscape, tiled : for PDF; landscape None takes what fits better; tiled keeps full size
        over as many sheets as it takes, with marks to join them
    dpi : for PNG, 96 being one pixel for each picture unit

    Raises
    ------
    Fault : an unknown suffix or paper, a focus that is no plant, a picture too large for the dpi
    """
    from pedigreeview.drawing.placing import place, place_in_worker

    path = Path(path)
    _check(path, paper)
    look = look or Look()
    view = choose(net, look)
    if len(view.blocks) > _APART_FROM:
        placed = place_in_worker(view, orientation=orientation, tick=tick)
    else:
        placed = place(view, orientation=orientation)
    name = net.book.settings.name
    if not title:
        title = name or "Pedigree"
    below = _below(net, look, title, name)
    return save_placed(
        placed,
        path,
        title=title,
        below=below,
        paper=paper,
        landscape=landscape,
        tiled=tiled,
        dpi=dpi,
        theme=theme,
        date=date,
    )


def _below(net: PedigreeNetwork, look: Look, title: str, name: str) -> str:
    parts = [name] if name and name != title else []
    if look.focus is None:
        parts.append(f"the whole book, {len(net.codes)} plants")
    else:
        plant = net.book.plants[look.focus].name
        parts.append(f"focus {look.focus}" + (f" ({plant})" if plant else ""))
        parts.append(f"{look.up} generations up, {look.down} down")
    line = ", ".join(parts)
    return line[:1].upper() + line[1:]


def _check(path: Path, paper: str) -> None:
    if path.suffix.lower() not in SUFFIXES:
        raise Fault(
            f"A picture cannot be written as '{path.suffix or path.name}'.",
            Place(file=str(path)),
            f"Choose a name that ends in {', '.join(SUFFIXES)}.",
        )
    if paper not in PAPERS:
        raise Fault(
            f"There is no paper '{paper}'.", Place(), f"Choose one of: {', '.join(PAPERS)}."
        )


def save_placed(
    placed: Placed,
    path: Path,
    *,
    title: str,
    below: str = "",
    paper: str = "A4",
    landscape: bool | None = None,
    tiled: bool = False,
    dpi: int = 150,
    theme: str = "light",
    date: str = "",
) -> Path:
    """Write a placed picture with title, legend, base and date."""
    _check(path, paper)
    colours = theme_named(theme)
    ensure_gui()
    from pedigreeview.reports.sheets import compose

    sheet = compose(placed, colours, title=title, below=below, date=date)
    kind = path.suffix.lower()
    with replace_file(path) as beside:
        if kind == ".svg":
            _write_svg(sheet, Path(beside))
        elif kind == ".pdf":
            _write_pdf(sheet, Path(beside), paper, landscape, tiled)
        else:
            _write_png(sheet, Path(beside), dpi)
    return path


def _write_svg(sheet: Sheet, path: Path) -> None:
    from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize
    from PySide6.QtGui import QPainter
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
    made.setDescription(sheet.notes[0])
    painter = QPainter()
    try:
        _begin(painter, made, path)
        sheet.paint(painter)
    finally:
        painter.end()
        buffer.close()
    text = bytes(held.data()).decode("utf-8")
    families = ", ".join(f"'{name}'" if " " in name else name for name in sheet.theme.fonts)
    text = re.sub(r'font-family="[^"]*"', f'font-family="{families}, sans-serif"', text)
    path.write_text(text, encoding="utf-8")


def _begin(painter: QPainter, device: QPaintDevice, path: Path) -> None:
    if not painter.begin(device):
        raise Fault(
            "The picture could not be written.",
            Place(file=str(path)),
            "See whether the folder exists and can be written to, and whether the disk is full.",
        )


def _write_png(sheet: Sheet, path: Path, dpi: int) -> None:
    from PySide6.QtGui import QImage, QPainter

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


def tiles(
    width: float, height: float, page: tuple[float, float], overlap: float
) -> list[list[tuple[float, float]]]:
    """Upper left corners of the sheets that cover an area, row after row."""

    def starts(whole: float, room: float) -> list[float]:
        step = room - overlap
        count = max(1, -(-int(whole - overlap) // max(1, int(step))))
        while count * step + overlap < whole:
            count += 1
        return [at * step for at in range(count)]

    return [[(x, y) for x in starts(width, page[0])] for y in starts(height, page[1])]


def _write_pdf(sheet: Sheet, path: Path, paper: str, landscape: bool | None, tiled: bool) -> None:
    from PySide6.QtCore import QMarginsF, QRectF
    from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

    size = QPageSize(getattr(QPageSize.PageSizeId, paper))
    if landscape is None:
        landscape = sheet.width > sheet.height
    way = QPageLayout.Orientation.Landscape if landscape else QPageLayout.Orientation.Portrait
    writer = QPdfWriter(str(path))
    writer.setResolution(_PDF_DPI)
    writer.setTitle(sheet.title)
    writer.setCreator("pedigreeview")
    writer.setPageSize(size)
    writer.setPageOrientation(way)
    writer.setPageMargins(
        QMarginsF(_MARGIN_MM, _MARGIN_MM, _MARGIN_MM, _MARGIN_MM), QPageLayout.Unit.Millimeter
    )
    room = QRectF(writer.pageLayout().paintRectPixels(_PDF_DPI))
    room.moveTo(0, 0)
    painter = QPainter()
    try:
        _begin(painter, writer, path)
        if tiled:
            _tile(sheet, writer, painter, room)
        else:
            scale = min(room.width() / sheet.width, room.height() / sheet.height)
            painter.translate((room.width() - sheet.width * scale) / 2, 0)
            painter.scale(scale, scale)
            sheet.paint(painter)
    finally:
        painter.end()


def _tile(sheet: Sheet, writer: QPdfWriter, painter: QPainter, room: QRectF) -> None:
    from PySide6.QtCore import QRectF

    from pedigreeview.reports.marks import join_marks

    scale = _PDF_DPI / 96
    mm = 96 / 25.4
    foot = 6 * mm
    page = (room.width() / scale, room.height() / scale - foot)
    grid = tiles(sheet.width, sheet.height, page, _OVERLAP_MM * mm)
    count = len(grid) * len(grid[0])
    for r, row in enumerate(grid):
        for c, (x, y) in enumerate(row):
            if r or c:
                writer.newPage()
            painter.save()
            painter.scale(scale, scale)
            painter.setClipRect(QRectF(0, 0, *page))
            painter.translate(-x, -y)
            sheet.paint(painter)
            painter.restore()
            painter.save()
            painter.scale(scale, scale)
            words = f"{sheet.title}: sheet {r + 1}/{c + 1} of {count}"
            join_marks(painter, sheet.theme, QRectF(0, 0, *page), _OVERLAP_MM * mm, words)
            painter.restore()
