"""The pages of the rail, in their order: name, words, and how each is made."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from importlib import import_module
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.window.book_page import BookPage, LazyPage

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["PageWords", "load_pages", "make_page", "page_words"]


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
            "judging",
            _tr("Judging"),
            _tr("What the progeny show: ratios, selfs, genes, stable lines"),
        ),
        PageWords(
            "relatedness", _tr("Relatedness"), _tr("How related any plants are, as a heat map")
        ),
        PageWords("parents", _tr("Parents"), _tr("Pairs worth crossing, and how many to grow")),
        PageWords("season", _tr("Season"), _tr("What is due, and the crosses on their way")),
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
    page.remove_wanted.connect(window.menus.book_acts.delete)
    page.trait_wanted.connect(lambda: window.writing.open("trait"))
    return page


def _judging(window: MainWindow) -> BookPage:
    from pedigreeview.window.judging_page import JudgingPage

    return JudgingPage(
        window.errands, window.desk, lambda name, **what: window.writing.open(name, **what)
    )


def _relatedness(window: MainWindow) -> BookPage:
    from pedigreeview.window.relatedness_page import RelatednessPage

    return RelatednessPage(window.errands, window.preferences, window.show_dialog)


def _season(window: MainWindow) -> BookPage:
    from pedigreeview.window.papers.opening import open_papers
    from pedigreeview.window.season_page import SeasonPage

    def turn(page: str, part: str) -> None:
        window.show_page(page)
        window.book_pages[page].go_to(part)

    return SeasonPage(
        window.desk,
        window.errands,
        window.preferences,
        lambda name, **what: window.writing.open(name, **what),
        lambda paper, offers: open_papers(window, paper, offers),
        turn,
    )


def _parents(window: MainWindow) -> BookPage:
    from pedigreeview.window.parents_page import ParentsPage

    def try_cross(seed: str, pollen: str) -> None:
        window.show_plant(seed)
        window.pedigree.try_cross(seed, pollen)

    return ParentsPage(window.errands, window.desk, window.preferences, try_cross, sliced=True)


_MAKERS: dict[str, Callable[[MainWindow], BookPage]] = {
    "judging": _judging,
    "records": _records,
    "season": _season,
    "relatedness": _relatedness,
    "parents": _parents,
}
"""How the pages are made that nothing else in the window needs to know; each on its first look."""


_MODULES = (
    "season_page",
    "papers.opening",
    "records_page",
    "parents_page",
    "relatedness_page",
    "judging_page",
    "importing.wizard",
    "book_settings",
    "export_dialog",
    "notation_dialog",
    "print_view",
    "report_dialog",
    "save_picture",
    "forms.crossing",
    "forms.doubt",
    "forms.growing",
    "forms.other",
    "forms.pollinating",
    "forms.quick",
    "forms.seed",
    "help_pages",
)


def load_pages() -> None:
    """Load the modules of all pages, the forms and the larger dialogs, off the window's thread.

    The first look at one of them then waits for no module.
    """
    for name in _MODULES:
        import_module(f"pedigreeview.window.{name}")


def make_page(name: str, window: MainWindow) -> BookPage:
    """The page of a name, to be made when it is first looked at."""
    return LazyPage(lambda: _MAKERS[name](window))
