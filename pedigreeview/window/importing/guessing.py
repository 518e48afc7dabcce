"""How a sheet is proposed to be read: as its layout was read before, else as it looks."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from pedigreeview.exchange.import_plan import ImportPlan, guess_plan
from pedigreeview.exchange.ticking import Tick
from pedigreeview.window.importing.sheet_step import form_of
from pedigreeview.window.importing.source import Source, date_example

__all__ = ["guessed"]


def guessed(
    source: Source,
    memory: dict[str, Any],
    order: str,
    sheet: str,
    at: object,
    form: str,
    tick: Tick,
) -> ImportPlan:
    """The plan that headings and cells suggest, or the one of a layout read before.

    Parameters
    ----------
    memory : the layouts that were read before
    order : 'day-month' or 'month-day', as the person writes dates
    sheet : its name, '' for the first with rows
    at : index of the heading row, 'guess', or None for no heading row
    form : of the table as the person said it, '' where it is to be guessed
    tick : called now and then; may raise `Cancelled`
    """
    from pedigreeview.exchange.import_layouts import recall

    assert source.sheets is not None
    line = at if isinstance(at, int) else "guess" if at == "guess" else None
    plan = guess_plan(
        source.sheets,
        sheet,
        heading=line,  # type: ignore[arg-type]
        form=form_of(form),
        tick=tick,
    )
    if not form:
        found = recall(memory, source.sheets, plan)
        if found is not plan:
            return found
    example, proved = date_example(source.sheets.named(plan.sheet), plan, tick)
    if example and proved is None and order in ("day-month", "month-day"):
        plan = replace(plan, date_order=order)  # type: ignore[arg-type]
    return plan
