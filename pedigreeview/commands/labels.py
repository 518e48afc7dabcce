"""`labels` and `sheets`: tags for plants, flowers, fruits and packets; lists and blank sheets."""

from __future__ import annotations

import datetime
import os
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.commands.answer import Answer
from pedigreeview.commands.desktop import library_missing_for
from pedigreeview.commands.streams import say

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.reports.paper_lists import Part

__all__ = ["LABEL_KINDS", "LISTS", "PAPERS", "labels", "sheets"]

LABEL_KINDS = ("flowers", "fruits", "pots", "stakes", "packets")
LISTS = ("crossing", "plan", "garden", "pollinations", "scores", "rows", "beds")
PAPERS = ("A4", "Letter")
_UPRIGHT = ("scores",)


def labels(
    net: PedigreeNetwork,
    out: str,
    kind: str,
    codes: Sequence[str] = (),
    *,
    sheet: str | None = None,
    paper: str | None = None,
    start: int = 1,
    copies: int = 1,
    each: int = 1,
    every: bool | None = None,
    qr: bool = False,
    marks: bool = True,
) -> Answer:
    """Write labels of one kind as PDF.

    Raises
    ------
    Fault : an unknown code or sheet, nothing to label, a file that cannot be written
    """
    _can_draw(out)
    from pedigreeview.reports.label_content import labels_for
    from pedigreeview.reports.label_sheets import sheet_named, usual_sheet
    from pedigreeview.reports.labels import save_labels

    stock = usual_sheet(kind, paper or "A4") if sheet is None else sheet_named(sheet)
    texts = labels_for(net.book, kind, codes, every=every, each=each)
    pages = save_labels(
        out,
        texts,
        stock,
        start=start,
        copies=copies,
        marks=marks,
        qr=qr,
        title=f"{net.book.settings.name or 'Labels'}: {kind}",
    )
    for text in pages.crowded():
        missing = ", ".join(pages.layout(text).left_out)
        say(f"The label {text.code} has no room for: {missing}.")
    return Answer([f"Wrote {out}: {pages.words()}"], None, net.problems())


def sheets(
    net: PedigreeNetwork,
    out: str,
    what: str,
    codes: Sequence[str] = (),
    *,
    date: str | None = None,
    paper: str = "A4",
    landscape: bool | None = None,
    rows: int | None = None,
) -> Answer:
    """Write a list, a plan or blank sheets for the garden as PDF.

    codes : crosses, plants, sowings or beds, as the list is about them; none: those that are due
    date : the day of a crossing list, or the year of a plan

    Raises
    ------
    Fault : an unknown code, nothing to list, a file that cannot be written
    """
    _can_draw(out)
    from pedigreeview.reports.paper_lists import lay_out_lists, save_lists

    wide = what not in _UPRIGHT if landscape is None else landscape
    parts, numbers = _parts(net.book, what, list(codes), date or "", paper, wide, rows)
    made = lay_out_lists(parts, book=net.book.settings.name, paper=paper, landscape=wide)
    save_lists(out, made)
    said = [f"Wrote {out}: {made.words()}"]
    if numbers:
        one = len(numbers) == 1
        says = "The number of the sheet is" if one else "The numbers of the sheets are"
        said.append(f"{says} {', '.join(numbers)}.")
    return Answer(said, None, net.problems())


def _parts(
    book: Book, what: str, codes: list[str], date: str, paper: str, wide: bool, rows: int | None
) -> tuple[list[Part], list[str]]:
    if what == "crossing":
        from pedigreeview.reports.crossing_list import crossing_list_parts

        day = date or datetime.date.today().isoformat()
        return crossing_list_parts(book, day, codes, paper=paper, landscape=wide), []
    if what == "plan":
        from pedigreeview.reports.crossing_plan import crossing_plan, crossing_plan_parts

        plan = crossing_plan(book, date[:4], codes)
        return crossing_plan_parts(book, plan, paper=paper, landscape=wide), []
    if what == "beds":
        from pedigreeview.reports.bed_plan import bed_plan_parts, bed_rows

        return bed_plan_parts(book, bed_rows(book, codes), paper=paper, landscape=wide), []
    from pedigreeview.reports.garden_lists import garden_parts
    from pedigreeview.reports.garden_sheets import pollination_sheet, row_sheet, score_sheet

    made = []
    if what in ("garden", "pollinations"):
        made.append(pollination_sheet(24 if rows is None else rows))
    if what == "scores" or (what == "garden" and book.traits):
        made.append(score_sheet(book, codes if what == "scores" else ()))
    if what == "rows" or (what == "garden" and book.sowings):
        made.append(row_sheet(book, codes if what == "rows" else ()))
    parts = [part for one in made for part in garden_parts(book, one, paper=paper, landscape=wide)]
    return parts, [one.number for one in made]


def _can_draw(out: str) -> None:
    if Path(out).suffix.lower() != ".pdf":
        raise Fault("Labels and lists are written as PDF.", Place(file=out), "Use the ending .pdf.")
    missing = library_missing_for("PySide6.QtGui")
    if missing:
        raise Fault(
            f"The paper cannot be drawn: {missing}.", Place(file=out), "Install it and try again."
        )
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
