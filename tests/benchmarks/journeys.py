"""More steps for the watchdog: tints, filters, ways of looking, pages turned, an edit and its undo.

Each function gives names and acts; see `watchdog.drive`, which counts what each of them sets off.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from pedigreeview.book.edits import Edit
from pedigreeview.book.filtering import PlantFilter
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.tinting import Wanted

__all__ = ["edited", "looked_at_in_other_ways", "shaded", "turned"]

Steps = list[tuple[str, Callable[[], object]]]


def shaded(window: Any) -> Steps:
    """Every tint, and a filter that fades and then folds away."""
    shades, book = window.pedigree.shades, window.opened.net.book
    founder = next(iter(book.plants))
    kept = PlantFilter(statuses=frozenset({"kept"}))
    wanted = [Wanted(kind) for kind in ("generation", "inbreeding", "cytoplasm", "status")]
    wanted += [Wanted("coancestry", founder), Wanted("founder", founder)]
    wanted += [Wanted("trait", code) for code in list(book.traits)[:1]]
    return [
        ("open tint and filter", window.pedigree.tools.shades.click),
        *[(f"tint {one.kind}", lambda one=one: shades.want_tint(one)) for one in wanted],
        ("filter that fades", lambda: shades.want_filter(kept, "fade")),
        ("filter that folds away", lambda: shades.want_filter(kept, "hide")),
        ("no filter", shades.clear_filter),
        ("no tint", lambda: shades.want_tint(None)),
        ("close tint and filter", window.pedigree.tools.shades.click),
    ]


def looked_at_in_other_ways(window: Any) -> Steps:
    """Connection, descent and cytoplasm from an old and a young plant, and two focuses."""
    page, codes = window.pedigree, window.opened.net.codes
    old, middle, young = codes[3], codes[len(codes) // 2], codes[-5]
    return [
        ("focus on an old line", lambda: page.focus_on(old)),
        ("what came of it", lambda: page.ways.show_descent(old)),
        ("all that came of it", page.ways.show_all),
        ("its cytoplasm", lambda: page.ways.show_cytoplasm(old)),
        ("connection", lambda: page.ways.show_connection(young, middle)),
        ("connection with the old line", lambda: page.ways.show_connection(young, old)),
        ("back to near", page.ways.show_near),
        ("three generations up and down", lambda: (page.up.stepUp(), page.down.stepUp())),
        ("a young plant", lambda: page.focus_on(young)),
        ("fewer again", lambda: (page.up.stepDown(), page.down.stepDown())),
        ("a trial cross", lambda: page.try_cross(young, middle)),
        ("put it away", page.ways.put_ghost_away),
        ("two side by side", lambda: page.compare.show_beside(middle)),
        ("one again", page.compare.close),
    ]


def turned(window: Any) -> Steps:
    """Every page of the rail, by its key, twice: the first look makes the page."""
    steps: Steps = []
    for look in ("first", "second"):
        for name in window.book_pages:
            steps.append((f"turn to {name}, {look} look", lambda n=name: window.show_page(n)))
    return [*steps, ("turn to the picture", lambda: window.show_page("pedigree"))]


def edited(window: Any) -> Steps:
    """A cross with a plant recorded, a status set, both undone and the first made again."""
    codes = window.opened.net.codes
    one, other = codes[-5], codes[-40]

    def cross(edit: Edit) -> None:
        edit.add(Cross("99-01", seed_parent=one, pollen_parent=other, intended="cross"))
        edit.add(Plant("99-01-1", cross="99-01"))

    def status(edit: Edit) -> None:
        edit.update(edit.book.plants[one], status="kept")

    desk = window.desk
    return [
        ("focus on the parent", lambda: window.show_plant(one)),
        ("a cross recorded", lambda: desk.record("Cross 99-01", cross)),
        ("a status recorded", lambda: desk.record("Status", status)),
        ("undo the status", desk.undo),
        ("undo the cross", desk.undo),
        ("the cross made again", desk.redo),
        ("a key afterwards", lambda: QTest.keyClick(window.pedigree.canvas, Qt.Key.Key_Up)),
    ]
