"""The words of the steps: what a column can mean, what a mark means, what a record is called."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.exchange.import_plan import meanings
from pedigreeview.window.record_words import column_words, table_words
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.exchange.merging import Difference, Side

__all__ = ["chosen_words", "field_words", "mark_words", "meaning_words", "record_words"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Importing", text)


def meaning_words(form: str) -> dict[str, str]:
    """What a column of a table of this form can mean, as the person reads it."""
    words = {
        "plant": _tr("code of the plant"),
        "name": _tr("name"),
        "seed_parent": _tr("seed parent"),
        "pollen_parent": _tr("pollen parent"),
        "parents": _tr("both parents in one cell"),
        "pollen_odds": _tr("odds of pollen parents"),
        "drawn": _tr("one pollen parent or one for each seed"),
        "cross": _tr("code of the cross"),
        "kind": _tr("variety, plant or family"),
        "raised": _tr("how the plant arose"),
        "selfings": _tr("selfings after the cross"),
        "fixation": _tr("fixation"),
        "crop": _tr("crop"),
        "ploidy": _tr("ploidy"),
        "sown": _tr("date of sowing"),
        "status": _tr("status"),
        "place": _tr("place"),
        "obtained_from": _tr("where it was obtained"),
        "protected": _tr("protection"),
        "note": _tr("note"),
        "trait": _tr("a trait, each cell a score"),
        "kept": _tr("kept as a note under its heading"),
        "left_out": _tr("left out"),
        "made_on": _tr("date of the cross"),
        "flowers": _tr("flowers worked"),
        "set": _tr("flowers that set"),
        "fruits": _tr("fruits harvested"),
        "seeds": _tr("seeds harvested"),
        "harvested": _tr("date of the harvest"),
        "by": _tr("who worked it"),
        "state": _tr("planned, made or skipped"),
    }
    return {name: words.get(name, text) for name, text in meanings(form).items()}


def mark_words() -> dict[str, str]:
    """What a text under a parent can mean."""
    return {
        "unknown": _tr("the parent is not known"),
        "open": _tr("open-pollinated"),
        "code": _tr("a plant of that code"),
    }


def record_words(table: str, key: str) -> str:
    """The record of a difference: 'Plants · 23-07'."""
    return _tr("{} · {}").format(table_words().get(table, table), key)


def field_words(field: str) -> str:
    """The column of a difference."""
    special = {"parents": _tr("where it came from"), "extra": _tr("further notes")}
    return special.get(field) or column_words().get(field, field.replace("_", " "))


def chosen_words(differences: Sequence[Difference], sides: Mapping[Difference, Side]) -> list[str]:
    """What became of the cells that differed, one sentence each."""
    filled = changed = kept = 0
    for one in differences:
        if sides.get(one, one.usual) == "mine":
            kept += 1
        elif one.mine:
            changed += 1
        else:
            filled += 1
    cell, cells = _tr("cell"), _tr("cells")
    said = []
    if filled:
        text = _tr("{} that the book had blank: filled in.")
        said.append(text.format(count(filled, cell, cells)))
    if changed:
        text = _tr("{} that differed: changed to what came in.")
        said.append(text.format(count(changed, cell, cells)))
    if kept:
        text = _tr("{} that differed: left as the book had it.")
        said.append(text.format(count(kept, cell, cells)))
    return said
