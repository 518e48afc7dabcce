"""Words of the Season page: kinds of work, stages of a cross, ways of grouping takes, days."""

from __future__ import annotations

import datetime

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.due import Due
from pedigreeview.window.words import count

__all__ = ["days_words", "group_word", "grouping_words", "stage_words", "work_words"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Season", text)


def work_words() -> dict[str, str]:
    """Every kind of work, in the order of the year."""
    return {
        "pollinate": _tr("Pollinate"),
        "cover_off": _tr("Cover off"),
        "count_fruits": _tr("Count fruits"),
        "relabel": _tr("Label fruits"),
        "harvest": _tr("Harvest"),
        "sow": _tr("Sow"),
        "count_seedlings": _tr("Count seedlings"),
        "score": _tr("Score"),
    }


def stage_words() -> dict[str, str]:
    """The columns of the board."""
    return {
        "planned": _tr("Planned"),
        "pollinated": _tr("Pollinated"),
        "set": _tr("Fruit set"),
        "harvested": _tr("Harvested"),
        "packed": _tr("In packets"),
        "sown": _tr("Sown"),
        "raised": _tr("Raised"),
        "ended": _tr("Ended"),
    }


def grouping_words() -> dict[str, str]:
    """The ways of grouping takes."""
    return {
        "seed_parent": _tr("by seed parent"),
        "pollen_parent": _tr("by pollen parent"),
        "direction": _tr("by direction"),
        "by": _tr("by person"),
        "month": _tr("by month"),
        "date": _tr("by day"),
        "year": _tr("by year"),
        "cover": _tr("by cover"),
        "bud": _tr("by how sure the bud was closed"),
        "cross": _tr("by cross"),
    }


def group_word(group: str) -> str:
    """A group as the table names it."""
    return group or _tr("not written down")


def days_words(one: Due, on: datetime.date) -> str:
    """When it is due: its window, with how far away that is."""
    first, last = one.first, one.last
    if first is None:
        return ""
    if last is not None and first == last:
        window = f"{first}"
    elif last is not None:
        window = _tr("{} to {}").format(first, last)
    else:
        window = _tr("from {} on").format(first)
    if last is not None and on > last:
        away = _tr("{} late").format(_days((on - last).days))
    elif on < first:
        away = _tr("in {}").format(_days((first - on).days))
    elif last is not None and (last - on).days <= 14:
        away = _tr("{} left").format(_days((last - on).days)) if last > on else _tr("last day")
    else:
        return window
    return _tr("{} ({})").format(window, away)


def _days(number: int) -> str:
    return count(number, _tr("day"), _tr("days"))
