"""A report as PDF, and on a printer.

The pages are the same each time but for the date that is given: the moment of writing, which a PDF
carries in several places, is set to that date.  Qt puts the fonts into the file in an order of its
own in each process, unless QT_HASH_SEED=0 stands in the environment, as the command line sets it.
"""

from __future__ import annotations

import hashlib
import itertools
import re
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtGui import QPagedPaintDevice

from pedigreeview.book.dates import is_date
from pedigreeview.book.faults import Fault, Place
from pedigreeview.reports.paper_pages import paint_pages, pdf_path, save_pages
from pedigreeview.reports.report_pages import ReportPages

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick

__all__ = ["print_report", "save_report_pdf"]


def save_report_pdf(path: str | Path, pages: ReportPages, *, tick: Tick | None = None) -> Path:
    """Write the pages as PDF; beside its place first, then moved there.

    Raises
    ------
    Fault : a name that does not end in .pdf, or a file that cannot be written
    """
    path = pdf_path(path, "This report is written as PDF.")

    def undate(file: Path) -> None:
        file.write_bytes(_undated(file.read_bytes(), pages.report.cover.date))

    save_pages(
        path,
        pages.report.title,
        pages.layout,
        pages.count,
        pages.paint,
        refused="The report could not be written.",
        tick=tick,
        finish=undate,
    )
    return path


def print_report(pages: ReportPages, device: QPagedPaintDevice, tick: Tick | None = None) -> int:
    """Paint every page on a printer at its true size and give their number.

    Raises
    ------
    Fault : the device cannot be painted on
    Cancelled : by the tick, between two pages
    """
    device.setPageLayout(pages.layout)
    refused = Fault(
        "The printer did not take it.",
        Place(),
        "See whether it is switched on, or save it as PDF.",
    )
    paint_pages(device, pages.count, pages.paint, refused, tick=tick)
    return pages.count


def _undated(held: bytes, date: str) -> bytes:
    """The file with its moment of writing set to a date and its number made from what it says.

    Every byte else stays in its place, so that the table of contents of the PDF still holds.
    """
    day = date if is_date(date) and len(date) == 10 else "2000-01-01"
    plain = f"{day.replace('-', '')}000000Z".encode()

    def dated(found: re.Match[bytes]) -> bytes:
        room = len(found[0]) - len(found[1]) - len(plain) - 1
        return found[1] + plain + b" " * room + b")"

    held = re.sub(rb"(/(?:Creation|Mod)Date ?\(D:)[^)]{15,}\)", dated, held)
    held = re.sub(
        rb"(xmp:(?:Create|Modify|Metadata)Date=\")[0-9T:+-]{25}(?=\")",
        lambda found: found[1] + f"{day}T00:00:00+00:00".encode(),
        held,
    )
    number = re.compile(rb"(DocumentID=\"uuid:)([0-9a-f-]{36})(?=\")|(/ID ?\[)([^\]]*)(?=\])")
    bare = number.sub(lambda found: re.sub(rb"[0-9A-Fa-f]", b"0", found[0]), held)
    digits = hashlib.sha256(bare).hexdigest().encode()

    def numbered(found: re.Match[bytes]) -> bytes:
        start, old = (found[1], found[2]) if found[1] else (found[3], found[4])
        fill = itertools.cycle(digits)
        hexadecimal = b"0123456789abcdefABCDEF"
        return bytes(start + bytes(next(fill) if byte in hexadecimal else byte for byte in old))

    return number.sub(numbered, held)
