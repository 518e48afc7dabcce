"""Pages of paper, one after the other: on a printer, or in a PDF file.

A page is painted from the upper left of the paper, a unit being a tenth of a millimetre.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtGui import QPagedPaintDevice, QPageLayout, QPainter, QPdfWriter

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.writing import replace_file
from pedigreeview.reports.paper_type import UNITS_PER_INCH

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick

__all__ = ["paint_pages", "pdf_path", "save_pages"]

_DPI = 1200


def pdf_path(path: str | Path, otherwise: str) -> Path:
    """The path, if it ends in .pdf.

    otherwise : the sentence that says what is written as PDF alone

    Raises
    ------
    Fault : any other ending
    """
    path = Path(path)
    if path.suffix.lower() != ".pdf":
        raise Fault(otherwise, Place(file=str(path)), "Choose a name that ends in .pdf.")
    return path


def paint_pages(
    device: QPagedPaintDevice,
    count: int,
    paint: Callable[[QPainter, int], None],
    refused: Fault,
    *,
    doing: str = "Pages",
    tick: Tick | None = None,
) -> None:
    """Paint every page at its true size.

    paint : paints the page of a number, counted from 0
    refused : is raised where the device does not take it
    doing : what the ticks count

    Raises
    ------
    Fault : the device cannot be painted on
    Cancelled : by the tick, between two pages
    """
    painter = QPainter()
    try:
        if not painter.begin(device):
            raise refused
        scale = device.logicalDpiX() / UNITS_PER_INCH
        for at in range(count):
            if tick is not None:
                tick(at, count, doing)
            if at:
                device.newPage()
            painter.resetTransform()
            painter.scale(scale, scale)
            paint(painter, at)
    finally:
        painter.end()


def save_pages(
    path: Path,
    title: str,
    layout: QPageLayout,
    count: int,
    paint: Callable[[QPainter, int], None],
    *,
    refused: str,
    doing: str = "Pages",
    tick: Tick | None = None,
    finish: Callable[[Path], None] | None = None,
) -> None:
    """Write pages as PDF, beside the place of the file first, then moved there.

    refused : the sentence for a file that cannot be written
    finish : changes the file before it is moved

    Raises
    ------
    Fault : the file cannot be written
    Cancelled : by the tick, between two pages; nothing is left behind
    """
    with replace_file(path) as beside:
        writer = QPdfWriter(str(beside))
        writer.setResolution(_DPI)
        writer.setTitle(title)
        writer.setCreator("pedigreeview")
        writer.setPageLayout(layout)
        fault = Fault(
            refused,
            Place(file=str(path)),
            "See whether the folder can be written to and whether the disk is full.",
        )
        paint_pages(writer, count, paint, fault, doing=doing, tick=tick)
        if finish is not None:
            finish(beside)
