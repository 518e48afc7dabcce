"""The picture as a file: SVG, PDF (on one sheet or tiled over several) or PNG.

Text stays text in SVG and PDF.  The file is written beside its place and then moved there, so that
a failed export leaves an older file as it was.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.picture_files import PAPERS, SUFFIXES
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.drawing.view import Look, choose
from pedigreeview.exchange.writing import replace_file
from pedigreeview.reports.report_words import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QImage

    from pedigreeview.drawing.placing import Orientation, Placed
    from pedigreeview.drawing.tinting import Tint
    from pedigreeview.drawing.worker import Tick
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.reports.pages import Pages
    from pedigreeview.reports.sheets import Matter

__all__ = [
    "PAPERS",
    "SUFFIXES",
    "Finish",
    "file_stem",
    "pages_of",
    "picture_of",
    "preview_of",
    "save_picture",
    "write_picture",
]

_APART_FROM = 400
"""Blocks from which the picture is laid out in another process."""


@dataclass(frozen=True, slots=True)
class Finish:
    """How a picture goes out: the words on it, its paper, its margin, its colours."""

    title: str = ""
    """Blank: the name of the book."""
    caption: str = ""
    """In the words of the person, below the title."""
    paper: str = "A4"
    landscape: bool | None = None
    """Of paper; None takes the way in which the picture comes out larger."""
    tiled: bool = False
    """Over several sheets of paper, with marks to join them, at nearly full size."""
    margin: float | None = None
    """Blank on all sides in mm; None: the usual one of paper or of a picture."""
    theme: str = "light"
    date: str = ""
    """ISO date of the drawing; blank: today."""
    pins: Sequence[str] = ()
    """Plants marked A, B, C and so on; without any, those of the look."""
    lit_paths: Iterable[Sequence[str]] = ()
    """Lines of descent to bring out, each as codes from plant to plant."""


def save_picture(
    net: PedigreeNetwork,
    path: str | Path,
    *,
    look: Look | None = None,
    title: str = "",
    caption: str = "",
    paper: str = "A4",
    landscape: bool | None = None,
    tiled: bool = False,
    margin: float | None = None,
    dpi: int = 150,
    theme: str = "light",
    orientation: Orientation = "down",
    date: str = "",
    pins: Sequence[str] = (),
    lit_paths: Iterable[Sequence[str]] = (),
    tick: Tick | None = None,
    laid_out: Callable[[Pages], object] | None = None,
) -> Path:
    """Write the picture of a network; the kind of file goes by its suffix.

    look : what to show; the whole book without one
    title, caption, paper, landscape, tiled, margin, theme, date, pins, lit_paths : as of `Finish`
    dpi : for PNG, 96 being one pixel for each picture unit
    laid_out : is given the sheets of a PDF before they are written

    Raises
    ------
    Fault : an unknown suffix or paper, a focus that is no plant, a picture too large for the dpi,
        a margin out of bounds, a caption that is too long
    """
    path = Path(path)
    finish = Finish(
        title, caption, paper, landscape, tiled, margin, theme, date, tuple(pins), lit_paths
    )
    _check(path, paper)
    look = look or Look()
    placed = picture_of(net, look, orientation=orientation, tick=tick)
    return write_picture(net, placed, look, path, finish, dpi=dpi, tick=tick, laid_out=laid_out)


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


def pages_of(net: PedigreeNetwork, placed: Placed, look: Look, finish: Finish) -> Pages:
    """The sheets of paper that a placed picture takes.

    Raises
    ------
    Fault : as of `lay_out`
    """
    from pedigreeview.reports.pages import lay_out

    return lay_out(
        _matter_of(net, placed, look, finish),
        paper=finish.paper,
        landscape=finish.landscape,
        tiled=finish.tiled,
        margin=finish.margin,
    )


def preview_of(
    net: PedigreeNetwork, placed: Placed, look: Look, finish: Finish, *, kind: str
) -> tuple[QImage, str]:
    """A picture of the sheets as they will be written, and what to know of them beforehand."""
    ensure_gui()
    from pedigreeview.reports.preview import preview
    from pedigreeview.reports.sheets import compose

    if kind == "pdf":
        pages = pages_of(net, placed, look, finish)
        return preview(pages), pages.words()
    sheet = compose(_matter_of(net, placed, look, finish), finish.margin)
    return preview(sheet), f"{sheet.width:.0f} by {sheet.height:.0f} pixels at 96 dots an inch."


def _matter_of(net: PedigreeNetwork, placed: Placed, look: Look, finish: Finish) -> Matter:
    from pedigreeview.reports.sheets import matter

    name = net.book.settings.name
    title = finish.title or name or tr("Pedigree")
    return matter(
        placed,
        theme_named(finish.theme),
        title=title,
        below=words_below(net, look, title, name),
        caption=finish.caption,
        date=finish.date,
        pins=finish.pins or look.pins,
        lit_paths=finish.lit_paths,
        faded=look.faded,
        tint=tint_of(net, look, finish.theme),
    )


def words_below(net: PedigreeNetwork, look: Look, title: str, name: str) -> str:
    parts = [name] if name and name != title else []
    if look.focus is None:
        parts.append(tr("the whole book, {} plants").format(len(net.codes)))
    else:
        plant = net.book.plants[look.focus].name
        parts.append(tr("focus {}").format(look.focus) + (f" ({plant})" if plant else ""))
        if look.way.mode == "near":
            parts.append(tr("{} generations up, {} down").format(look.up, look.down))
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


def write_picture(
    net: PedigreeNetwork,
    placed: Placed,
    look: Look,
    path: Path,
    finish: Finish,
    *,
    dpi: int = 150,
    tick: Tick | None = None,
    laid_out: Callable[[Pages], object] | None = None,
) -> Path:
    """Write a placed picture with title, caption, legend, base and date; see `save_picture`."""
    _check(path, finish.paper)
    ensure_gui()
    from pedigreeview.drawing.picture_files import pdf_writer, write_png, write_svg
    from pedigreeview.reports.printing import print_pages
    from pedigreeview.reports.sheets import compose

    kind = path.suffix.lower()
    if kind == ".pdf":
        pages = pages_of(net, placed, look, finish)
        if laid_out is not None:
            laid_out(pages)
        with replace_file(path) as beside:
            print_pages(pages, pdf_writer(Path(beside), pages.matter.title), tick)
        return path
    sheet = compose(_matter_of(net, placed, look, finish), finish.margin)
    held = sheet.matter
    with replace_file(path) as beside:
        if kind == ".svg":
            write_svg(
                sheet,
                Path(beside),
                title=held.title,
                words=held.notes[0],
                fonts=held.theme.fonts,
            )
        else:
            write_png(sheet, Path(beside), dpi)
    return path
