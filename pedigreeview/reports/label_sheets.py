"""Label stock: how many labels lie where on a sheet, or how large one is on a roll.

Lengths are in millimetres.  The stock stands in `resources/label_sheets.json`; one that is not
listed is described by its measures, such as 'A4 3x8 70x36'.  Knows no Qt.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Any

from pedigreeview.book.faults import Fault, Place
from pedigreeview.places import resource
from pedigreeview.reports.report_words import tr

__all__ = ["PAPER_MM", "Box", "LabelSheet", "label_sheets", "sheet_named", "usual_sheet"]

PAPER_MM = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
_PADDING = 2.0
"""Room within a label that stays free, so that a sheet that slips a little cuts no text."""
_NARROW = 18.0
"""Labels lower than this have less of it."""
_LEAST = 8.0
_TOLERANCE = 0.01

Box = tuple[float, float, float, float]
"""Left, top, width and height in millimetres."""


@dataclass(frozen=True, slots=True)
class LabelSheet:
    """One kind of sheet or roll; on a roll each label is a page of its own.

    Raises
    ------
    Fault : the labels do not fit on the paper, or one is too small to print on
    """

    name: str
    columns: int
    rows: int
    width: float
    height: float
    paper: str = ""
    """A4 or Letter; blank: a roll."""
    gap: tuple[float, float] = (0.0, 0.0)
    margin: tuple[float, float] = (0.0, 0.0)
    """Left and top of the first label."""
    turned: bool = False
    """Text runs along the height, for labels that come off a roll end first."""
    fold: float = 0.0
    """A loop tag: length kept free in the middle, where it goes around the stem and is folded."""
    foot: float = 0.0
    """A stake: length kept free at the end that goes into the ground."""
    unprintable: float = 0.0
    """Edge of the paper that printers leave white."""

    def __post_init__(self) -> None:
        if self.columns < 1 or self.rows < 1:
            raise self._fault("has no labels")
        if min(self.width, self.height) < _LEAST:
            raise self._fault(f"has labels too small to print on (under {_LEAST:g} mm)")
        if min(*self.gap, *self.margin) < -_TOLERANCE:
            raise self._fault("does not hold so many labels of this size")
        wide, high = self.page
        left, top, width, height = self.place(self.count - 1)
        if left + width > wide + _TOLERANCE or top + height > high + _TOLERANCE:
            raise self._fault("does not hold so many labels of this size")
        if min(min(box[2:]) for box in self.panels(0)) < 5.0:
            raise self._fault("leaves no room to print")

    def _fault(self, what: str) -> Fault:
        return Fault(
            f"The label sheet '{self.name}' {what}.",
            Place(),
            "Measure the sheet again; it is written as 'A4 3x8 70x36': columns, rows, "
            "then the width and height of one label in millimetres.",
        )

    @property
    def roll(self) -> bool:
        """Whether labels come one after the other."""
        return not self.paper

    @property
    def count(self) -> int:
        """How many labels a page holds."""
        return self.columns * self.rows

    @property
    def page(self) -> tuple[float, float]:
        """Width and height of a page."""
        return PAPER_MM[self.paper] if self.paper else (self.width, self.height)

    def place(self, at: int) -> Box:
        """Where label `at` lies, 0 for the first; row by row from the upper left."""
        row, column = divmod(at, self.columns)
        return (
            self.margin[0] + column * (self.width + self.gap[0]),
            self.margin[1] + row * (self.height + self.gap[1]),
            self.width,
            self.height,
        )

    def places(self) -> Iterator[Box]:
        """Where all labels lie."""
        return (self.place(at) for at in range(self.count))

    def panels(self, at: int) -> tuple[Box, ...]:
        """The parts of label `at` that carry text: one, or the two halves of a loop tag.

        Each lies within the label, clear of its edge, and of the edge that printers leave white.
        """
        left, top, width, height = self.place(at)
        wide, high = self.page
        pad = _PADDING if min(self.width, self.height) >= _NARROW else 1.2
        x0, y0 = max(left + pad, self.unprintable), max(top + pad, self.unprintable)
        x1 = min(left + width - pad, wide - self.unprintable)
        y1 = min(top + height - pad, high - self.unprintable)
        # The foot and the fold lie along the longer way in which the text runs.
        if self.foot and self.turned:
            y1 = min(y1, top + height - self.foot)
        elif self.foot:
            x1 = min(x1, left + width - self.foot)
        if not self.fold:
            return ((x0, y0, x1 - x0, y1 - y0),)
        half = self.fold / 2
        if self.turned:
            middle = top + height / 2
            return (
                (x0, y0, x1 - x0, middle - half - y0),
                (x0, middle + half, x1 - x0, y1 - middle - half),
            )
        middle = left + width / 2
        return (
            (x0, y0, middle - half - x0, y1 - y0),
            (middle + half, y0, x1 - middle - half, y1 - y0),
        )

    def words(self) -> str:
        """'A4, 3 × 8 labels of 70 × 36 mm'."""
        size = f"{self.width:g} × {self.height:g} mm"
        shape = ""
        if self.fold:
            shape = tr(", a loop tag with a fold")
        elif self.foot:
            shape = tr(", a stake with a foot of {} mm").format(f"{self.foot:g}")
        if self.roll:
            return tr("roll, labels of {}{}").format(size, shape)
        grid = f"{self.columns} × {self.rows}"
        return tr("{}, {} labels of {}{}").format(self.paper, grid, size, shape)


@cache
def _stock() -> dict[str, Any]:
    found: dict[str, Any] = json.loads(resource("label_sheets.json").read_text(encoding="utf-8"))
    return found


def _made(entry: dict[str, Any]) -> LabelSheet:
    paper = entry.get("paper", "")
    columns, rows = entry.get("grid", (1, 1))
    width, height = entry["label"]
    gap = tuple(entry.get("gap", (0.0, 0.0)))
    margin = entry.get("margin")
    if margin is None:
        margin = (0.0, 0.0)
        if paper:
            wide, high = PAPER_MM[paper]
            margin = (
                round((wide - columns * width - (columns - 1) * gap[0]) / 2, 3),
                round((high - rows * height - (rows - 1) * gap[1]) / 2, 3),
            )
    return LabelSheet(
        entry["name"],
        int(columns),
        int(rows),
        float(width),
        float(height),
        paper,
        (float(gap[0]), float(gap[1])),
        (float(margin[0]), float(margin[1])),
        bool(entry.get("turned")),
        float(entry.get("fold", 0.0)),
        float(entry.get("foot", 0.0)),
        float(_stock()["unprintable"]) if paper else 0.0,
    )


@cache
def label_sheets() -> tuple[LabelSheet, ...]:
    """All sheets and rolls that are listed."""
    return tuple(_made(entry) for entry in _stock()["sheets"])


def usual_sheet(kind: str, paper: str = "A4") -> LabelSheet:
    """The sheet that a kind of label is printed on when none is named.

    kind : flowers, fruits, pots, packets or stakes
    """
    return sheet_named(_stock()["usual"][paper][kind])


_NUMBER = r"(\d+(?:[.,]\d+)?)"
_MEASURES = re.compile(
    rf"(?P<paper>a4|letter)\s+(\d+)\s*[x×*]\s*(\d+)\s+{_NUMBER}\s*[x×*]\s*{_NUMBER}(?:\s*mm)?"
    rf"(?:\s+gap\s+{_NUMBER}\s*[x×*]\s*{_NUMBER})?(?:\s+margin\s+{_NUMBER}\s*[x×*]\s*{_NUMBER})?\Z",
    re.IGNORECASE,
)
_ROLL = re.compile(rf"roll\s+{_NUMBER}\s*[x×*]\s*{_NUMBER}(?:\s*mm)?\Z", re.IGNORECASE)


def sheet_named(words: str) -> LabelSheet:
    """The listed sheet of that name, or the one that the measures describe.

    words : 'a4-3x8'; or 'A4 3x8 70x36', with 'gap 2.5x0' and 'margin 4.7x15' where they matter; or
        'roll 60x25'.  Without a margin the labels stand in the middle of the paper.

    Raises
    ------
    Fault : no such name, measures that cannot be read, or labels that do not fit
    """
    wanted = words.strip()
    for sheet in label_sheets():
        if sheet.name == wanted.casefold():
            return sheet
    found = _MEASURES.match(wanted)
    if found is not None:
        paper = "A4" if found["paper"].casefold() == "a4" else "Letter"
        _, columns, rows, *rest = found.groups()
        numbers = [None if part is None else float(part.replace(",", ".")) for part in rest]
        width, height, gap_x, gap_y, left, top = numbers
        entry: dict[str, Any] = {
            "name": wanted,
            "paper": paper,
            "grid": [int(columns), int(rows)],
            "label": [width, height],
            "gap": [gap_x or 0.0, gap_y or 0.0],
        }
        if left is not None:
            entry["margin"] = [left, top]
        return _made(entry)
    found = _ROLL.match(wanted)
    if found is not None:
        width, height = (float(part.replace(",", ".")) for part in found.groups())
        return _made({"name": wanted, "label": [width, height], "turned": height > width})
    names = ", ".join(sheet.name for sheet in label_sheets())
    raise Fault(
        f"There is no label sheet '{words}'.",
        Place(),
        f"Choose one of {names}, or write its measures, such as 'A4 3x8 70x36' or 'roll 60x25'.",
    )
