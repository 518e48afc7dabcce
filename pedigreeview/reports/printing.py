"""The sheets of a picture on a printer, or on anything else that takes pages."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QPagedPaintDevice, QPainter, QPdfWriter

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.picture_files import set_paper
from pedigreeview.reports.pages import Pages

__all__ = ["print_pages"]

_UNITS_AN_INCH = 96


def print_pages(
    pages: Pages, device: QPagedPaintDevice, tick: Callable[[int, int, str], None] | None = None
) -> int:
    """Paint all sheets on a device and give their number.

    The paper and its way are set here.  A device that keeps wider margins than ours has our sheet
    made smaller by as much, so that nothing is cut off.

    Raises
    ------
    Fault : the device cannot be painted on
    Cancelled : by the tick, between two sheets; a printer drops what it had
    """
    set_paper(device, pages.paper, pages.landscape, pages.margin)
    painter = QPainter()
    try:
        if not painter.begin(device):
            raise _not_taken(device)
        for at in range(pages.count):
            if tick is not None:
                tick(at, pages.count, pages.pages[at].name)
            if at:
                device.newPage()
            painter.resetTransform()
            room = painter.viewport()
            scale = min(room.width() / pages.width, room.height() / pages.height)
            full = device.logicalDpiX() / _UNITS_AN_INCH
            painter.scale(min(scale, full), min(scale, full))
            pages.paint(painter, at)
    finally:
        painter.end()
    return pages.count


def _not_taken(device: QPagedPaintDevice) -> Fault:
    if isinstance(device, QPdfWriter):
        return Fault(
            "The picture could not be written.",
            None,
            "See whether the folder exists and can be written to, and whether the disk is full.",
        )
    return Fault(
        "The printer did not take the picture.",
        None,
        "See whether it is switched on, or print to a PDF file.",
    )
