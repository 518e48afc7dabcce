"""The sheets of a picture on a printer, or on anything else that takes pages."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPagedPaintDevice, QPageLayout, QPageSize, QPainter

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.chart import tint_of, words_below
from pedigreeview.reports.pages import MARGIN_MM, Pages, lay_out
from pedigreeview.reports.sheets import matter

if TYPE_CHECKING:
    from pedigreeview.drawing.placing import Placed
    from pedigreeview.drawing.view import Look
    from pedigreeview.network import PedigreeNetwork

__all__ = ["pages_of", "print_pages"]

_UNITS_AN_INCH = 96


def pages_of(
    net: PedigreeNetwork,
    placed: Placed,
    look: Look,
    *,
    title: str = "",
    paper: str = "A4",
    landscape: bool | None = None,
    tiled: bool = False,
    theme: str = "light",
    lit_paths: Iterable[Sequence[str]] = (),
) -> Pages:
    """The sheets that a placed picture takes, as `lay_out` parts it."""
    name = net.book.settings.name
    title = title or name or "Pedigree"
    held = matter(
        placed,
        theme_named(theme),
        title=title,
        below=words_below(net, look, title, name),
        pins=look.pins,
        lit_paths=lit_paths,
        faded=look.faded,
        tint=tint_of(net, look, theme),
    )
    return lay_out(held, paper=paper, landscape=landscape, tiled=tiled)


def print_pages(
    pages: Pages, device: QPagedPaintDevice, tick: Callable[[int, int], None] | None = None
) -> int:
    """Paint all sheets on a device and give their number.

    The paper and its way are set here.  A device that keeps wider margins than ours has our sheet
    made smaller by as much, so that nothing is cut off.

    Raises
    ------
    Fault : the device cannot be painted on
    Cancelled : by the tick, between two sheets; a printer drops what it had
    """
    way = QPageLayout.Orientation.Landscape if pages.landscape else QPageLayout.Orientation.Portrait
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    device.setPageSize(QPageSize(getattr(QPageSize.PageSizeId, pages.paper)))
    device.setPageOrientation(way)
    device.setPageMargins(margins, QPageLayout.Unit.Millimeter)
    painter = QPainter()
    try:
        if not painter.begin(device):
            raise Fault(
                "The printer did not take the picture.",
                None,
                "See whether it is switched on, or print to a PDF file.",
            )
        for at in range(pages.count):
            if tick is not None:
                tick(at, pages.count)
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
