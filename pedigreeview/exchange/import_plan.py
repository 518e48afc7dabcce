"""How a foreign table is to be read: sheet, heading row, columns, and what the person was asked.

A plan is guessed from headings and cells, each guess with its reason and how sure it is; the person
changes it, and the layout is remembered by its headings (`import_layouts`).  Nothing here reads the
records themselves.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from typing import Any, Literal

from pedigreeview.exchange.cross_notation import is_crossed
from pedigreeview.exchange.import_headings import (
    CROSS_MEANINGS,
    MEANINGS,
    known_meaning,
    said_order,
)
from pedigreeview.exchange.spreadsheets import Cell, Sheets, Table, cell_text
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = [
    "FORMS",
    "MARKS",
    "ColumnPlan",
    "DateOrder",
    "Form",
    "ImportPlan",
    "guess_plan",
    "meanings",
    "planned",
    "unknown_marks",
]

Form = Literal["plants", "crosses"]
DateOrder = Literal["day-month", "month-day"]
Mark = Literal["unknown", "open", "code"]

FORMS: dict[str, str] = {"plants": "one row for each plant", "crosses": "one row for each cross"}

MARKS: dict[str, Mark] = {
    "": "unknown", "?": "unknown", "??": "unknown", "???": "unknown", "0": "unknown",
    "-": "unknown", "--": "unknown", "–": "unknown", "—": "unknown", ".": "unknown",
    "unknown": "unknown", "unk": "unknown", "unkn": "unknown", "n/a": "unknown", "na": "unknown",
    "none": "unknown", "nil": "unknown", "null": "unknown", "not known": "unknown",
    "unbekannt": "unknown", "inconnu": "unknown", "desconocido": "unknown", "onbekend": "unknown",
    "op": "open", "o.p.": "open", "open": "open", "open pollinated": "open",
    "open-pollinated": "open", "bee": "open", "bees": "open", "bee pod": "open", "○": "open",
    "natural": "open",
}  # fmt: skip
"""Texts under a parent that are no code, with what they usually mean; asked once for each table."""

_SAMPLE = 2_000
_DATE = re.compile(r"\s*[0-9]{1,4}[-./ ][0-9]{1,2}[-./ ][0-9]{1,4}\s*\Z")
_DAY_MONTH = re.compile(r"\s*([0-9]{1,2})[-./ ]([0-9]{1,2})[-./ ][0-9]{2,4}\s*\Z")
_YES_NO = {"yes", "no", "y", "n", "true", "false", "ja", "nein", "oui", "non", "si", "sí"}
_OFFICIAL = {"plant", "seed_parent", "pollen_parent"}


@dataclass(frozen=True, slots=True)
class ColumnPlan:
    """One column: what it means, why that was guessed, and how sure the guess is (0 to 1)."""

    index: int
    heading: str
    meaning: str
    trait: str = ""
    """The name of the trait, where the meaning is 'trait'."""
    why: str = ""
    confidence: float = 0.0

    def trait_name(self) -> str:
        """The name of a trait that the column would be; one without a heading has one too."""
        return self.heading or f"Column {self.index + 1}"


@dataclass(frozen=True, slots=True)
class ImportPlan:
    """Everything that has to be known to read a table.

    Attributes
    ----------
    sheet : name of the sheet, '' for the first with rows
    heading : index of the heading row among the rows with cells, None where there is none
    form : 'plants' (one row a plant) or 'crosses' (one row a cross)
    columns : the meaning of each column
    seed_parent_first : whether the source is known to put the seed parent first where both parents
        stand in one cell; None: not said, so the direction of such crosses is not known
    date_order : how 3/5/2024 is read
    marks : what texts under a parent that are no code mean: 'unknown', 'open', or 'code' after all
    same : a spelling and the code that is to be taken for it; only what the person said
    """

    sheet: str = ""
    heading: int | None = 0
    form: Form = "plants"
    columns: tuple[ColumnPlan, ...] = ()
    seed_parent_first: bool | None = None
    date_order: DateOrder = "day-month"
    marks: dict[str, Mark] = field(default_factory=dict)
    same: dict[str, str] = field(default_factory=dict)
    why: tuple[str, ...] = ()
    """What was guessed of the whole table, one sentence each."""

    def meaning(self, index: int, meaning: str, trait: str = "") -> ImportPlan:
        """The plan with another meaning for one column; a single one moves from where it was."""
        columns = []
        for column in self.columns:
            if column.index == index:
                name = trait.strip() or column.trait_name() if meaning == "trait" else ""
                column = replace(
                    column, meaning=meaning, trait=name, why="You said so.", confidence=1.0
                )
            elif column.meaning == meaning and meaning not in _MANY:
                column = replace(
                    column, meaning="kept", why="Another column has its meaning.", confidence=1.0
                )
            columns.append(column)
        return replace(self, columns=tuple(columns))

    def of(self, meaning: str) -> ColumnPlan | None:
        """The column with a meaning that only one has."""
        return next((column for column in self.columns if column.meaning == meaning), None)


_MANY = ("trait", "kept", "left_out")


def meanings(form: str) -> dict[str, str]:
    """What a column of a table of this form can mean."""
    return MEANINGS if form == "plants" else CROSS_MEANINGS


def planned(plan: ImportPlan) -> list[str]:
    """What is missing before the plan can be carried out, one sentence each."""
    missing = []
    if plan.form == "plants" and plan.of("plant") is None:
        missing.append("No column holds the codes of the plants.")
    if plan.form == "crosses" and not any(
        plan.of(meaning) for meaning in ("seed_parent", "pollen_parent", "parents")
    ):
        missing.append("No column holds the parents of the crosses.")
    if plan.of("parents") and (plan.of("seed_parent") or plan.of("pollen_parent")):
        missing.append("Parents stand in a column of their own and in one cell as well.")
    return missing


def guess_plan(
    sheets: Sheets,
    sheet: str = "",
    *,
    heading: int | Literal["guess"] | None = "guess",
    form: Form | None = None,
    tick: Tick = no_tick,
) -> ImportPlan:
    """The plan that headings and cells suggest.

    Parameters
    ----------
    sheets : the file
    sheet : name of the sheet, '' for the first with rows
    heading : index of the heading row among the rows with cells, None for no heading row
    form : of the table, where the person has said it
    tick : called now and then; may raise `Cancelled`
    """
    table = sheets.named(sheet)
    at = table.heading if heading == "guess" else heading
    if at is not None and not 0 <= at < len(table.rows):
        at = None
    headings = table.headings(at)
    sample = [cells for _, cells in table.below(at)[:_SAMPLE]]
    cells = [_column(sample, index) for index in ticked(range(table.width), tick, 1)]
    chosen = form or _form(headings)
    columns = _columns(headings, cells, chosen, tick)
    why = []
    if form is None:
        why.append(f"The table was taken as {FORMS[chosen]}.")
    plan = ImportPlan(table.name, at, chosen, tuple(columns))
    both = plan.of("parents")
    if both is not None and said_order(both.heading):
        plan = replace(plan, seed_parent_first=True)
        why.append(f"The heading {both.heading!r} says that the seed parent stands first.")
    order, reason = _date_order(cell for column in ticked(cells, tick, 1) for cell in column)
    if reason:
        why.append(reason)
    marks = unknown_marks(table, plan, tick)
    if {column.heading for column in columns} >= _OFFICIAL and "" in marks:
        # The plant table of this program: a blank pollen parent is open pollination.
        marks[""] = "open"
    return replace(plan, date_order=order, marks=marks, why=tuple(why))


def _column(sample: Sequence[list[Cell]], index: int) -> list[Cell]:
    return [cells[index] if index < len(cells) else "" for cells in sample]


def _form(headings: Sequence[str]) -> Form:
    as_crosses = [known_meaning(heading, "crosses") for heading in headings]
    as_plants = [known_meaning(heading, "plants") for heading in headings]
    only_crosses = {"made_on", "flowers", "set", "fruits", "seeds", "harvested", "state"}
    parents = {"seed_parent", "pollen_parent", "parents"}
    worked = len(only_crosses & set(as_crosses))
    if worked and parents & set(as_crosses) and ("plant" not in as_plants or worked > 1):
        return "crosses"
    return "plants"


def _columns(
    headings: Sequence[str], cells: Sequence[list[Cell]], form: Form, tick: Tick
) -> list[ColumnPlan]:
    found: list[ColumnPlan] = []
    taken: set[str] = set()
    apart = {known_meaning(heading, form) for heading in headings} & {
        "seed_parent",
        "pollen_parent",
        "parents",
    }
    for index, heading in enumerate(ticked(headings, tick, 1)):
        meaning = known_meaning(heading, form)
        example = _both_parents(cells[index])
        if meaning == "cross" and example and not apart and "parents" not in taken:
            taken.add("parents")
            why = f"Most cells name two parents, such as {example[:30]!r}."
            found.append(ColumnPlan(index, heading, "parents", "", why, 0.8))
        elif meaning is not None and meaning not in taken:
            taken.add(meaning)
            why = f"The heading {heading!r} says so."
            found.append(ColumnPlan(index, heading, meaning, "", why, 0.9))
        else:
            found.append(_by_cells(index, heading, cells[index]))
    if form == "plants" and "plant" not in taken:
        _guess_plant(found, cells, tick)
    if not taken & {"seed_parent", "pollen_parent", "parents"}:
        _guess_parents(found, cells, tick)
    return found


def _texts(cells: Iterable[Cell]) -> list[str]:
    return [text for cell in cells if (text := cell_text(cell).strip())]


def _by_cells(index: int, heading: str, cells: Sequence[Cell]) -> ColumnPlan:
    texts = _texts(cells)
    if not texts:
        return ColumnPlan(index, heading, "left_out", "", "The column is empty.", 0.9)
    if not heading:
        return ColumnPlan(index, heading, "left_out", "", "The column has no heading.", 0.5)
    if all(isinstance(cell, int | float) or not cell_text(cell).strip() for cell in cells) or all(
        re.fullmatch(r"[+-]?[0-9]+([.,][0-9]+)?", text) for text in texts
    ):
        return ColumnPlan(index, heading, "trait", heading, "Every cell is a number.", 0.5)
    if {text.casefold() for text in texts} <= _YES_NO:
        return ColumnPlan(index, heading, "trait", heading, "Every cell says yes or no.", 0.5)
    return ColumnPlan(index, heading, "kept", "", "Its heading and cells say nothing known.", 0.3)


def _both_parents(cells: Sequence[Cell]) -> str:
    """A cell that names two parents, where most of a column do; '' elsewhere."""
    texts = [text for text in _texts(cells) if not _DATE.match(text)]
    both = [text for text in texts if is_crossed(text) or "/" in text]
    return both[0] if both and len(both) * 2 > len(texts) else ""


def _guess_plant(found: list[ColumnPlan], cells: Sequence[list[Cell]], tick: Tick) -> None:
    for at, column in enumerate(ticked(found, tick, 1)):
        texts = _texts(cells[at])
        if (
            column.meaning in ("kept", "trait", "name")
            and texts
            and len(texts) == len(cells[at])
            and len({*texts}) == len(texts)
        ):
            why = "Every row has a value of its own in it."
            found[at] = replace(column, meaning="plant", trait="", why=why, confidence=0.6)
            return


def _guess_parents(found: list[ColumnPlan], cells: Sequence[list[Cell]], tick: Tick) -> None:
    for at, column in enumerate(ticked(found, tick, 1)):
        example = _both_parents(cells[at])
        if column.meaning == "kept" and example:
            why = f"Most cells name two parents, such as {example[:30]!r}."
            found[at] = replace(column, meaning="parents", why=why, confidence=0.7)
            return
    plant = next((column for column in found if column.meaning == "plant"), None)
    if plant is None:
        return
    codes = set(_texts(cells[plant.index]))
    wanted = ["seed_parent", "pollen_parent"]
    for at, column in enumerate(ticked(found, tick, 1)):
        texts = [text for text in _texts(cells[at]) if text.casefold() not in MARKS]
        known = sum(text in codes for text in texts)
        if wanted and column.meaning in ("kept", "trait") and known and known * 2 > len(texts):
            why = "Most of its cells are codes of plants of this table."
            found[at] = replace(column, meaning=wanted.pop(0), trait="", why=why, confidence=0.4)


def _date_order(cells: Iterable[Cell]) -> tuple[DateOrder, str]:
    day_first: list[str] = []
    month_first: list[str] = []
    unsure: list[str] = []
    for cell in cells:
        if isinstance(cell, datetime.date) or not isinstance(cell, str):
            continue
        found = _DAY_MONTH.match(cell)
        if found is None:
            continue
        one, two = int(found[1]), int(found[2])
        held = day_first if one > 12 else month_first if two > 12 else unsure
        held.append(cell.strip())
    if month_first and not day_first:
        return "month-day", f"Dates such as {month_first[0]!r} put the month first."
    if day_first:
        return "day-month", f"Dates such as {day_first[0]!r} put the day first."
    if unsure:
        return "day-month", f"Dates such as {unsure[0]!r} were read with the day first."
    return "day-month", ""


def unknown_marks(table: Table, plan: ImportPlan, tick: Tick = no_tick) -> dict[str, Mark]:
    """The texts under a parent that may be no code, as written, with what they usually mean.

    tick : called now and then; may raise `Cancelled`
    """
    found: dict[str, Mark] = dict(plan.marks)
    for column in plan.columns:
        if column.meaning not in ("seed_parent", "pollen_parent", "parents"):
            continue
        for _, cells in ticked(table.below(plan.heading), tick):
            text = cell_text(cells[column.index]).strip() if column.index < len(cells) else ""
            if text.casefold() in MARKS and text not in found:
                found[text] = MARKS[text.casefold()]
    return found


def plan_as_json(plan: ImportPlan) -> dict[str, Any]:
    """The plan as plain data."""
    return {
        "sheet": plan.sheet,
        "heading": plan.heading,
        "form": plan.form,
        "columns": [
            {"heading": column.heading, "meaning": column.meaning, "trait": column.trait}
            for column in plan.columns
        ],
        "seed_parent_first": plan.seed_parent_first,
        "date_order": plan.date_order,
        "marks": dict(plan.marks),
        "same": dict(plan.same),
    }
