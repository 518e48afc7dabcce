"""The pages of the rail, in their order: name, words, and how each is made."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.window.book_page import BookPage, LazyPage

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["PageWords", "make_page", "page_words"]


@dataclass(frozen=True, slots=True)
class PageWords:
    """A page's name in code, its words on the rail and what it is for."""

    name: str
    text: str
    tip: str


def _tr(text: str) -> str:
    return QCoreApplication.translate("Pages", text)


def page_words() -> tuple[PageWords, ...]:
    """The pages from the top of the rail to its foot; Ctrl and its place leads to each."""
    return (
        PageWords("pedigree", _tr("Pedigree"), _tr("The picture to click through")),
        PageWords("map", _tr("Map"), _tr("The whole book at once")),
        PageWords("reciprocals", _tr("Reciprocals"), _tr("Both directions of a cross compared")),
        PageWords(
            "relatedness", _tr("Relatedness"), _tr("How related any plants are, as a heat map")
        ),
        PageWords("records", _tr("Records"), _tr("Every table of the book, to type into")),
        PageWords("checks", _tr("Checks"), _tr("What in the records cannot be right")),
    )


def _records(window: MainWindow) -> BookPage:
    from pedigreeview.window.records_page import RecordsPage

    page = RecordsPage(window.desk, window.preferences)

    def new(table: str) -> None:
        name = window.writing.for_table(table)
        if name:
            window.writing.open(name)

    page.new_wanted.connect(new)
    page.scores.trait_wanted.connect(lambda: window.writing.open("trait"))
    return page


def _relatedness(window: MainWindow) -> BookPage:
    from pedigreeview.window.relatedness_page import RelatednessPage

    return RelatednessPage(window.errands, window.preferences, window.show_dialog)


_MAKERS: dict[str, Callable[[MainWindow], BookPage]] = {
    "records": _records,
    "relatedness": _relatedness,
}
"""How the pages are made that nothing else in the window needs to know; each on its first look."""


def make_page(name: str, window: MainWindow) -> BookPage:
    """The page of a name, to be made when it is first looked at."""
    return LazyPage(lambda: _MAKERS[name](window))
