"""Layouts of tables that were read before, remembered by their headings.

What is kept is plain data, fit for a JSON file among the person's preferences; it holds meanings of
columns and no record.  Of another table with the same headings only what still fits is taken.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from pedigreeview.exchange.import_plan import (
    FORMS,
    ColumnPlan,
    ImportPlan,
    meanings,
    plan_as_json,
    unknown_marks,
)
from pedigreeview.exchange.spreadsheets import Sheets, Table
from pedigreeview.exchange.text_files import plain

__all__ = ["fingerprint", "recall", "remember"]

_MOST_LAYOUTS = 100


def fingerprint(table: Table, heading: int | None) -> str:
    """What tells one layout from another: its headings, without case and blanks."""
    words = "\x1f".join(plain(text) for text in table.headings(heading))
    return hashlib.sha256(words.encode("utf-8", "replace")).hexdigest()[:24]


def remember(memory: Mapping[str, Any], sheets: Sheets, plan: ImportPlan) -> dict[str, Any]:
    """The memory with the layout of a plan put in; the oldest of over 100 is forgotten."""
    table = sheets.named(plan.sheet)
    # Spellings belong to one table, not to its layout.
    said = {**plan_as_json(plan), "same": {}, "sheet": ""}
    key = fingerprint(table, plan.heading)
    held = {name: layout for name, layout in memory.items() if name != key}
    held[key] = said
    return dict(list(held.items())[-_MOST_LAYOUTS:])


def recall(memory: Mapping[str, Any], sheets: Sheets, guessed: ImportPlan) -> ImportPlan:
    """The guessed plan, with what is remembered of its layout in its place."""
    table = sheets.named(guessed.sheet)
    said = memory.get(fingerprint(table, guessed.heading))
    if not isinstance(said, Mapping):
        return guessed
    form = said.get("form")
    columns = said.get("columns")
    if form not in FORMS or not isinstance(columns, list) or len(columns) != len(guessed.columns):
        return guessed
    taken: list[ColumnPlan] = []
    for column, held in zip(guessed.columns, columns, strict=True):
        meaning = held.get("meaning") if isinstance(held, Mapping) else None
        if meaning not in meanings(form):
            return guessed
        trait = str(held.get("trait") or column.trait_name()) if meaning == "trait" else ""
        why = "You read such a table this way before."
        taken.append(replace(column, meaning=str(meaning), trait=trait, why=why, confidence=1.0))
    first = said.get("seed_parent_first")
    order = said.get("date_order")
    plan = replace(
        guessed,
        form=form,
        columns=tuple(taken),
        seed_parent_first=first if isinstance(first, bool) else None,
        date_order=order if order in ("day-month", "month-day") else guessed.date_order,
        marks={},
        why=("The table is laid out as one that you read before.",),
    )
    marks = unknown_marks(table, plan)
    known = said.get("marks")
    if isinstance(known, Mapping):
        marks.update(
            (text, known[text]) for text in marks if known.get(text) in ("unknown", "open", "code")
        )
    return replace(plan, marks=marks)
