"""`report`: a plant's page, or the history of a line, as PDF or as one HTML file."""

from __future__ import annotations

import os
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.commands.answer import Answer
from pedigreeview.commands.desktop import library_missing_for

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["COLOURS", "PARTS", "report"]

COLOURS = ("grey", "colour")
PARTS = (
    "what", "parentage", "founders", "picture", "generations", "selection", "reciprocals",
    "segregation", "numbers", "fixing", "stability", "traits", "crosses", "progeny", "scores",
    "doubt", "notes", "photos", "cautions", "base",
)  # fmt: skip
"""Every part that a report can have; a test holds it against `reports.report_words`."""
_THEMES = {"grey": "grey", "colour": "light"}


def report(
    net: PedigreeNetwork,
    out: str,
    code: str,
    *,
    line: bool = False,
    without: Sequence[str] = (),
    paper: str = "A4",
    colours: str | None = None,
    by: Sequence[str] = (),
    date: str | None = None,
    caption: Sequence[str] = (),
) -> Answer:
    """Write the report on a plant, or with `line` the history of the line that ends in it.

    colours : of the pedigree: None takes grey on paper and colour in HTML

    Raises
    ------
    Fault : an unknown code or ending, a founder asked for its history, a file that cannot be
        written
    """
    kind = Path(out).suffix.lower()
    if kind not in (".pdf", ".html", ".htm"):
        raise Fault(
            "A report is written as PDF or HTML.", Place(file=out), "Use the ending .pdf or .html."
        )
    missing = library_missing_for("PySide6.QtSvg")
    if missing:
        raise Fault(
            f"The report cannot be drawn: {missing}.", Place(file=out), "Install it and try again."
        )
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    # With a seed of its own each time, Qt would put the fonts of a PDF in another order.
    os.environ.setdefault("QT_HASH_SEED", "0")
    from pedigreeview.reports.line_history import line_history
    from pedigreeview.reports.plant_report import plant_report
    from pedigreeview.reports.report_model import Cover

    made = line_history(net, code) if line else plant_report(net, code)
    made = made.only(part for part in made.parts if part not in without)
    made = made.with_cover(Cover(tuple(by), date or "", tuple(caption)))
    theme = _THEMES[colours or ("grey" if kind == ".pdf" else "colour")]
    if kind == ".pdf":
        from pedigreeview.reports.report_pages import lay_out_report
        from pedigreeview.reports.report_pdf import save_report_pdf

        pages = lay_out_report(net, made, paper=paper, theme=theme)
        save_report_pdf(out, pages)
        said = f"Wrote {out}: {pages.words()}"
    else:
        from pedigreeview.reports.report_html import save_report_html

        save_report_html(out, net, made, theme=theme)
        said = f"Wrote {out}: one file with everything inside."
    return Answer([said], None, net.problems())
