"""What the papers of the season are called, and what each is for."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from pedigreeview.reports.label_sheets import LabelSheet

__all__ = ["paper_tips", "paper_words", "stock_words"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Papers", text)


def paper_words() -> dict[str, str]:
    """Every paper by its word, in the order in which the year runs."""
    return {
        "flowers": _tr("Tags for flowers"),
        "fruits": _tr("Tags for fruits"),
        "packets": _tr("Seed packets"),
        "pots": _tr("Pot labels"),
        "stakes": _tr("Row stakes"),
        "crossing": _tr("Crossing list for a day"),
        "plan": _tr("Crossing plan"),
        "beds": _tr("Map of the beds"),
        "pollinations": _tr("Blank sheet: pollinations"),
        "fruit sheet": _tr("Blank sheet: fruits set"),
        "rows": _tr("Blank sheet: rows sown"),
        "scores": _tr("Blank sheet: scores"),
    }


def paper_tips() -> dict[str, str]:
    """What each paper is for, in one sentence."""
    return {
        "flowers": _tr("One tag for each pollination: cross, parents, date, flowers, initials."),
        "fruits": _tr("One tag for each fruit that hangs, to last until it is picked."),
        "packets": _tr("What seed it is, borne on which plant, how much of it, and when it grew."),
        "pots": _tr("One label for each plant that grows."),
        "stakes": _tr("One stake for each row: family, day of sowing, number of plants."),
        "crossing": _tr(
            "What to cross on a day, in the order in which one walks; typed in afterwards by its "
            "number."
        ),
        "plan": _tr("Seed parents in rows, pollen parents in columns, and how far each cross is."),
        "beds": _tr("Row by row, each position counted from the stake."),
        "pollinations": _tr("Empty rows for the garden, typed in afterwards by its number."),
        "fruit sheet": _tr("Pollinations with room for the fruits set and lost."),
        "rows": _tr("Families sown, with room for how many came up and were kept."),
        "scores": _tr("Plants by traits, with room to score."),
    }


def stock_words(sheet: LabelSheet) -> str:
    """A label stock as the list says it."""
    size = f"{sheet.width:g} × {sheet.height:g} mm"
    if sheet.fold:
        shape = _tr("loop tags {}").format(size)
    elif sheet.foot:
        shape = _tr("stakes {}").format(size)
    else:
        shape = size
    if sheet.roll:
        return _tr("Roll: {}").format(shape)
    return _tr("{} sheet, {} × {}: {}").format(sheet.paper, sheet.columns, sheet.rows, shape)
