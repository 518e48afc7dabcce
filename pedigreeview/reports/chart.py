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
    from collections.abc import Iterable, Sequence

    from PySide6.QtGui import QImage, QPaintDevice, QPainter

    from pedigreeview.drawing.placing import Orientation, Placed
    from pedigreeview.drawing.tinting import Tint
    from pedigreeview.drawing.worker import Tick
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.reports.pages import Pages
    from pedigreeview.reports.sheets import Sheet

__all__ = [
    "PAPERS",
    "SUFFIXES",
    "file_stem",
    "picture_of",
    "preview_of",
    "save_picture",
    "save_placed",
]

SUFFIXES = (".svg", ".pdf", ".png")
PAPERS = ("A5", "A4", "A3", "A2", "A1", "A0", "Letter", "Legal", "Tabloid")
_MOST_PIXELS = 240_000_000
_APART_FROM = 400
"""Blocks from which the picture is laid out in another process."""
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
    pins: Sequence[str] = (),
    lit_paths: Iterable[Sequence[str]] = (),
    tick: Tick | None = None,
) -> Path:
    """Write the picture of a network; the kind of file goes by its suffix.

    look : what to show; the whole book without one
    paper, landscape, tiled : for PDF; landscape None takes what fits better; tiled keeps full size
        over as many sheets as it takes, with marks to join them
    dpi : for PNG, 96 being one pixel for each picture unit
    pins : plants marked A, B, C and so on; without any, those of the look
    lit_paths : lines of descent to bring out, each as codes from plant to plant

    Raises
    ------
    Fault : an unknown suffix or paper, a focus that is no plant, a picture too large for the dpi
    """
    path = Path(path)
    _check(path, paper)
    look = look or Look()
    placed = picture_of(net, look, orientation=orientation, tick=tick)
    name = net.book.settings.name
    title = title or name or "Pedigree"
    return save_placed(
        placed,
        path,
        title=title,
        below=words_below(net, look, title, name),
        paper=paper,
        landscape=landscape,
        tiled=tiled,
        dpi=dpi,
        theme=theme,
        date=date,
        pins=pins or look.pins,
        lit_paths=lit_paths,
        faded=look.faded,
        tint=tint_of(net, look, theme),
    )


def tint_of(net: PedigreeNetwork, look: Look, theme: str) -> Tint | None:
    """The tint that a look asks for, in the colours of the theme it is saved in."""
    if look.tint is None:
        return None
    from pedigreeview.drawing.tinting import tint

    return tint(net, look.tint, theme_named(theme))


def picture_of(
    net: PedigreeNetwork,
    look: Look,
    *,
    orientation: Orientation = "down",
    tick: Tick | None = None,
) -> Placed:
    """The placed picture that answers a look; a large one is laid out in another process."""
    from pedigreeview.drawing.placing import place, place_in_worker

    view = choose(net, look)
    if len(view.blocks) > _APART_FROM:
        return place_in_worker(view, orientation=orientation, tick=tick)
    return place(view, orientation=orientation)


def file_stem(net: PedigreeNetwork) -> str:
    """A name for the file, from that of the book."""
    words = re.findall(r"\w+", net.book.settings.name.lower())
    return "-".join([*words, "pedigree"])


def preview_of(
    net: PedigreeNetwork,
    placed: Placed,
    look: Look,
    *,
    kind: str,
    title: str = "",
    paper: str = "A4",
    landscape: bool | None = None,
    tiled: bool = False,
    theme: str = "light",
    pins: Sequence[str] = (),
    lit_paths: Iterable[Sequence[str]] = (),
) -> tuple[QImage, str]:
    """A picture of the sheets as they will be written, and what to know of them beforehand."""
    ensure_gui()
    from pedigreeview.reports.pages import lay_out
    from pedigreeview.reports.preview import preview
    from pedigreeview.reports.sheets import compose, matter

    name = net.book.settings.name
    title = title or name or "Pedigree"
    held = matter(
        placed,
        theme_named(theme),
        title=title,
        below=words_below(net, look, title, name),
        pins=pins or look.pins,
        lit_paths=lit_paths,
        faded=look.faded,
        tint=tint_of(net, look, theme),
    )
    if kind == "pdf":
        pages = lay_out(held, paper=paper, landscape=landscape, tiled=tiled)
        return preview(pages), pages.words()
    sheet = compose(held)
    return preview(sheet), f"{sheet.width:.0f} by {sheet.height:.0f} pixels at 96 dots an inch."


def words_below(net: PedigreeNetwork, look: Look, title: str, name: str) -> str:
    parts = [name] if name and name != title else []
    if look.focus is None:
        parts.append(f"the whole book, {len(net.codes)} plants")
    else:
        plant = net.book.plants[look.focus].name
        parts.append(f"focus {look.focus}" + (f" ({plant})" if plant else ""))
        if look.way.mode == "near":
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
    pins: Sequence[str] = (),
    lit_paths: Iterable[Sequence[str]] = (),
    faded: Iterable[str] = (),
    tint: Tint | None = None,
) -> Path:
    """Write a placed picture with title, legend, base and date."""
    _check(path, paper)
    colours = theme_named(theme)
    ensure_gui()
    from pedigreeview.reports.pages import lay_out
    from pedigreeview.reports.sheets import compose, matter

    held = matter(
        placed,
        colours,
        title=title,
        below=below,
        date=date,
        pins=pins,
        lit_paths=lit_paths,
        faded=faded,
        tint=tint,
    )
    kind = path.suffix.lower()
    with replace_file(path) as beside:
        if kind == ".svg":
            _write_svg(compose(held), Path(beside))
        elif kind == ".pdf":
            pages = lay_out(held, paper=paper, landscape=landscape, tiled=tiled)
            _write_pdf(pages, Path(beside))
        else:
            _write_png(compose(held), Path(beside), dpi)
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
    made.setTitle(sheet.matter.title)
    made.setDescription(sheet.matter.notes[0])
    painter = QPainter()
    try:
        _begin(painter, made, path)
        sheet.paint(painter)
    finally:
        painter.end()
        buffer.close()
    text = bytes(held.data()).decode("utf-8")
    families = ", ".join(f"'{name}'" if " " in name else name for name in sheet.matter.theme.fonts)
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


def _write_pdf(pages: Pages, path: Path) -> None:
    from PySide6.QtCore import QMarginsF
    from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

    from pedigreeview.reports.pages import MARGIN_MM

    way = QPageLayout.Orientation.Landscape if pages.landscape else QPageLayout.Orientation.Portrait
    writer = QPdfWriter(str(path))
    writer.setResolution(_PDF_DPI)
    writer.setTitle(pages.matter.title)
    writer.setCreator("pedigreeview")
    writer.setPageSize(QPageSize(getattr(QPageSize.PageSizeId, pages.paper)))
    writer.setPageOrientation(way)
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    writer.setPageMargins(margins, QPageLayout.Unit.Millimeter)
    painter = QPainter()
    try:
        _begin(painter, writer, path)
        for at in range(pages.count):
            if at:
                writer.newPage()
            painter.resetTransform()
            painter.scale(_PDF_DPI / 96, _PDF_DPI / 96)
            pages.paint(painter, at)
    finally:
        painter.end()
