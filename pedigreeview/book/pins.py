"""The pins of the picture, which no step undoes: they follow the plants that are there.

The pins are the bookmark named `LAST_PINS`, written quietly (`BookFile.edit`).  An edit that gives
a pinned plant another code, or deletes it, changes that bookmark too.  Were its row undone as the
others are, a pin that was set later would bar the whole way back.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from pedigreeview.book.drafts import Draft
from pedigreeview.book.references import split_codes
from pedigreeview.book.row_images import RowChange, to_row

__all__ = ["LAST_PINS", "carry_pins", "without_pins"]

LAST_PINS = "(pins)"
"""Name of the bookmark that holds the pins as they were last."""


def without_pins(changes: Sequence[RowChange]) -> list[RowChange]:
    """The changes of a step but for those of the pins."""
    return [change for change in changes if not _of_pins(change)]


def carry_pins(draft: Draft, made: Sequence[RowChange]) -> list[RowChange]:
    """Let the pins follow what was undone or made again in the draft; gives their own change."""
    mark = draft.book.bookmarks.get(LAST_PINS)
    if mark is None:
        return []
    renamed = {
        change.before["plant"]: change.after["plant"]
        for change in made
        if change.table == "plants" and change.before is not None and change.after is not None
    }
    plants = draft.book.plants
    codes = [renamed.get(code, code) for code in split_codes(mark.pinned)]
    pinned = ";".join(code for code in codes if code in plants)
    focus = renamed.get(mark.focus, mark.focus)
    now = replace(mark, pinned=pinned, focus=focus if focus in plants else "")
    row = draft.row_of(mark)
    if now == mark or row is None:
        return []
    after = to_row(now) if pinned else None
    return draft.apply([RowChange("bookmarks", row, to_row(mark), after)])


def _of_pins(change: RowChange) -> bool:
    row = change.before or change.after or {}
    return change.table == "bookmarks" and row.get("name") == LAST_PINS
