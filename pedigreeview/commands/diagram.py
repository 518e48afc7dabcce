"""`diagram`: the picture as SVG, PDF or PNG, or the network as DOT, GraphML, GEXF or JSON."""

from __future__ import annotations

import os
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pedigreeview.book.faults import Fault, Place
from pedigreeview.commands.answer import Answer
from pedigreeview.commands.desktop import library_missing_for
from pedigreeview.commands.plants_named import plants_named
from pedigreeview.commands.streams import say
from pedigreeview.commands.summary import title

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.reports.pages import Pages

__all__ = ["NETWORKS", "PICTURES", "QT_FOR_PICTURES", "diagram", "draw", "format_of"]

PICTURES = (".svg", ".pdf", ".png")
NETWORKS = {".dot": "dot", ".graphml": "graphml", ".gexf": "gexf", ".json": "node-link"}
"""Endings of files that hold the network, with the names of their formats."""
_OF_PAPER = {"paper", "landscape", "tiled"}
QT_FOR_PICTURES = ("PySide6.QtGui", "PySide6.QtSvg")


def format_of(out: str) -> str:
    """The ending that says what to write.

    Raises
    ------
    Fault : it is none that can be written
    """
    suffix = Path(out).suffix.lower()
    if suffix in (*PICTURES, *NETWORKS):
        return suffix
    what = f"A picture that ends in {suffix} cannot be written." if suffix else "It has no ending."
    endings = ", ".join((*PICTURES, *NETWORKS))
    raise Fault(what, Place(file=out), f"Use one of {endings}.")


def draw(
    net: PedigreeNetwork,
    path: Path,
    focus: str | None,
    up: int | None,
    down: int | None,
    finish: Mapping[str, Any] | None = None,
) -> None:
    """Write the picture of a book or of the surroundings of one plant; needs no screen.

    finish : caption, margin, paper and so on, as words of `save_picture`
    """
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from pedigreeview.drawing.view import Look
    from pedigreeview.reports.chart import save_picture

    usual = Look()
    look = Look(
        focus=focus,
        up=usual.up if up is None else up,
        down=usual.down if down is None else down,
    )
    save_picture(
        net, path, look=look, title=title(net), laid_out=_warn_of_small_codes, **(finish or {})
    )


def _warn_of_small_codes(pages: Pages) -> None:
    """Say on one line that the codes are hard to read, and what makes them larger."""
    if pages.readable:
        return
    paper = pages.larger_paper()
    ways = f"--paper {paper} or --tiled makes" if paper else "--tiled makes"
    say(
        f"Plant codes of {pages.code_points:.1f} pt on {pages.paper} are hard to read; "
        f"{ways} them larger."
    )


def diagram(
    net: PedigreeNetwork,
    out: str,
    *,
    focus: str | None = None,
    up: int | None = None,
    down: int | None = None,
    finish: Mapping[str, Any] | None = None,
) -> Answer:
    """Write the picture or the network to `out`; its ending says which.

    finish : what else was chosen for a picture, as words of `save_picture`

    Raises
    ------
    Fault : the ending is none of ours, the focus is not in the book, the file cannot be written,
        a margin or a caption is not possible, or a library that drawing needs is missing
    """
    suffix = format_of(out)
    path = Path(out)
    if focus is not None:
        focus = plants_named(net, [focus])[0]
    depths = up is not None or down is not None
    if suffix in NETWORKS:
        if focus is not None or depths:
            say(
                f"A {suffix} file always holds the whole book; --focus, --up and --down are unused."
            )
        if finish:
            say(f"A {suffix} file is no picture; what was chosen for a picture is unused.")
        from pedigreeview.exchange.formats import FORMATS, write_as

        write_as(net, path, FORMATS[NETWORKS[suffix]])
    else:
        if depths and focus is None:
            say("Without --focus the whole book is drawn; --up and --down are unused.")
        if suffix != ".pdf" and _OF_PAPER & set(finish or ()):
            say("--paper, --landscape and --tiled are for a .pdf file; they are unused.")
        missing = library_missing_for(*QT_FOR_PICTURES)
        if missing:
            raise Fault(
                f"The picture cannot be drawn: {missing}.",
                Place(file=out),
                "Install it, or write a .dot or .graphml file, which does without.",
            )
        draw(net, path, focus, up, down, finish)
    shown = "the whole book" if focus is None or suffix in NETWORKS else f"around {focus}"
    said = [f"Wrote {path}: {shown}."]
    return Answer(said, None, net.problems(), net.base_sentence())
