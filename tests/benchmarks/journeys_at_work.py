"""Steps for the watchdog over all that is opened: pages worked with, forms, dialogs, the dress.

Each function gives names and acts; see `watchdog.drive`, which counts what each of them sets off.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QTableView, QWidget

__all__ = ["at_work_on_pages", "brought_in", "dressed", "forms_laid", "with_dialogs"]

Steps = Iterator[tuple[str, Callable[[], object]]]

_DIALOGS = (
    "save_picture",
    "print_picture",
    "print_papers",
    "report_plant",
    "report_line",
    "save_as",
    "bring_in",
    "merge",
    "save_copy",
    "backups",
    "settings",
    "done",
    "correct",
    "delete",
    "notation",
    "group",
    "new_book",
    "open_file",
    "help_signs",
    "help_words",
    "help_cautions",
)
"""Actions of the menus that open a dialog."""


def _click(widget: QWidget, spot: QPoint | None = None) -> None:
    none, left = Qt.KeyboardModifier.NoModifier, Qt.MouseButton.LeftButton
    QTest.mouseClick(widget, left, none, spot or widget.rect().center())


def _row(view: QTableView, row: int) -> None:
    """Click the first cell of a row."""
    index = view.model().index(row, 0)
    view.scrollTo(index)
    _click(view.viewport(), view.visualRect(index).center())


def _heading(view: QTableView, at: int) -> None:
    head = view.horizontalHeader()
    _click(head.viewport(), QPoint(head.sectionViewportPosition(at) + 12, head.height() // 2))


def at_work_on_pages(window: Any) -> Steps:
    """What is done on each page of the rail, once it is there."""
    yield "to relatedness", lambda: window.show_page("relatedness")
    heat = window.book_pages["relatedness"].page()
    view = heat.map.viewport()
    middle = view.rect().center()
    yield "hover over the heat map", lambda: QTest.mouseMove(view, middle)
    yield "a pair of the heat map", lambda: _click(view, middle)
    for at in range(4):
        yield f"larger squares {at}", lambda: heat.map.zoom(1.25)
    yield "all squares", heat.map.fit
    for name, key in (("right", Qt.Key.Key_Right), ("down", Qt.Key.Key_Down)):
        yield f"heat map {name}", lambda key=key: QTest.keyClick(heat.map, key)
    yield "heat map by generation", lambda: heat.order.setCurrentIndex(1)
    yield "heat map by likeness", lambda: heat.order.setCurrentIndex(0)
    yield "heat map of all plants", lambda: _choose(heat.plants, "all")
    yield "heat map of the kept", lambda: _choose(heat.plants, "kept")

    yield "to parents", lambda: window.show_page("parents")
    parents = window.book_pages["parents"].page()
    yield "a wish", parents.wishes.add
    for row in (3, 8):
        yield f"pair {row}", lambda row=row: _row(parents.table, row)
    yield "pairs by F", lambda: _heading(parents.table, 2)
    slider = parents.weights.sliders["unrelated"]
    yield "another weight", lambda: QTest.keyClick(slider, Qt.Key.Key_Right)
    yield "a limit", parents.limits.new.click
    yield "no limit", parents.limits.new.click
    yield "several crosses", lambda: _click(parents.tabs["several"])
    yield "how many to grow", lambda: _click(parents.tabs["growing"])
    yield "how many to grow of a pair", lambda: parents.grow(*_pair(window))
    yield "pairs again", lambda: _click(parents.tabs["pairs"])
    yield "the wish away", lambda: parents.wishes.remove(0)

    yield "to records", lambda: window.show_page("records")
    records = window.book_pages["records"].page()
    for at in range(records.tables.count()):
        yield f"table {at}", lambda at=at: records.tables.setCurrentRow(at)
    yield "the plants", lambda: records.go_to("plants")
    yield "a row", lambda: _row(records.view, 4)
    yield "rows by code", lambda: _heading(records.view, 0)
    for letter in "v01":
        yield f"rows with {letter}", lambda letter=letter: QTest.keyClicks(records.search, letter)
    yield "all rows", records.search.clear
    yield "the last row", lambda: _row(records.view, records.model.rowCount() - 1)

    yield "to the season", lambda: window.show_page("season")
    season = window.book_pages["season"].page()
    for part in range(season.parts.count()):
        yield f"season {part}", lambda part=part: season.parts.setCurrentRow(part)
    yield "to judging", lambda: window.show_page("judging")
    judging = window.book_pages["judging"].page()
    for part in range(judging.list.count()):
        yield f"judging {part}", lambda part=part: judging.list.setCurrentRow(part)
    yield "to reciprocals", lambda: window.show_page("reciprocals")
    yield "reciprocals down", lambda: QTest.keyClick(window.reciprocals.list, Qt.Key.Key_Down)
    yield "to checks", lambda: window.show_page("checks")
    yield "back to the picture", lambda: window.show_page("pedigree")


def _choose(plants: Any, name: str) -> None:
    plants.which.setCurrentIndex(plants.which.findData(name))


def _pair(window: Any) -> tuple[str, str]:
    codes = window.opened.net.codes
    return codes[-5], codes[-40]


def forms_laid(window: Any) -> Steps:
    """Every form on the bench, a code typed into its first field, and the form put away."""
    code = window.opened.net.codes[-7]
    yield "a plant to write about", lambda: window.show_plant(code)
    for group in window.writing.entries():
        for entry in group:
            yield f"form {entry.name}", partial(window.writing.open, entry.name)
            yield f"form {entry.name}, typed", lambda: _type(window, "V0")
            yield f"form {entry.name} away", window.bench.clear


def _type(window: Any, text: str) -> None:
    form = window.bench.form
    if form is not None:
        QTest.keyClicks(window.focusWidget() or form, text)


def with_dialogs(window: Any) -> Steps:
    """Every dialog that a menu opens, and its end."""
    for name in _DIALOGS:
        yield f"dialog {name}", window.menus.actions[name].trigger
        yield f"dialog {name} away", lambda: _close_dialog(window)
    yield "the base", window.asides.show_base
    yield "the base away", lambda: _close_dialog(window)
    yield "the menus", lambda: [menu.aboutToShow.emit() for menu in _menus(window)]


def _menus(window: Any) -> list[Any]:
    from PySide6.QtWidgets import QMenu

    return window.menuBar().findChildren(QMenu)


def _close_dialog(window: Any) -> None:
    if window.dialog is not None:
        window.dialog.reject()


def brought_in(window: Any, table: Path) -> Steps:
    """A table is brought in, step by step, up to its end."""
    from pedigreeview.window.importing.entrance import bring_in

    yield "bring in a table", lambda: bring_in(window, table)
    for at in range(5):
        yield f"bring in, next {at}", lambda: _next(window)
    yield "bring in, away", lambda: _close_dialog(window)


def _next(window: Any) -> None:
    wizard = window.dialog
    if wizard is not None and wizard.next_button.isEnabled():
        wizard.next_button.click()


def dressed(window: Any) -> Steps:
    """Dark and light, text at 200% on every page, and back."""
    yield "dark", lambda: window.set_look("dark")
    yield "light", lambda: window.set_look("light")
    yield "text at 200%", lambda: window.set_text_size(200)
    for name in window.book_pages:
        yield f"{name} at 200%", lambda name=name: window.show_page(name)
    yield "dark on a page at 200%", lambda: window.set_look("dark")
    yield "text at 100%", lambda: window.set_text_size(100)
    yield "light again", lambda: window.set_look("light")
    yield "the picture again", lambda: window.show_page("pedigree")
