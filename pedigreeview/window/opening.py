"""Opening a book: reading, the question about its founders, and the network, off the thread."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.problems import Problem
from pedigreeview.window.answers import ask_plant
from pedigreeview.window.find import PlantFinder
from pedigreeview.window.founders_question import Example, examples
from pedigreeview.window.preferences import FoundersAnswer
from pedigreeview.window.walking import first_focus

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Opened", "ReadBook", "build", "is_table", "read"]


@dataclass(frozen=True, slots=True)
class ReadBook:
    """A book that was read, with what the question about its founders needs."""

    path: Path
    book: Book
    silent: tuple[str, ...]
    """Founders that say neither kind nor fixation; none for a folder, which has settings."""
    worked: dict[str, Example]


@dataclass(frozen=True, slots=True)
class Opened:
    """A book ready for the window."""

    path: Path
    net: PedigreeNetwork
    problems: tuple[Problem, ...]
    finder: PlantFinder
    title: str
    silent: tuple[str, ...] = ()
    focus: str = ""


def is_table(path: Path) -> bool:
    """Whether the path is a plant table and no folder."""
    return path.is_file() and path.suffix.lower() in (".csv", ".tsv", ".txt")


def read(path: Path) -> ReadBook:
    """Read a file or folder.

    Raises
    ------
    Fault, FileFaults : it cannot be read; nothing was taken in
    """
    from pedigreeview.exchange import read_book

    book = read_book(path)
    silent = tuple(book.silent_founders()) if is_table(path) else ()
    return ReadBook(path, book, silent, examples() if silent else {})


def build(held: ReadBook, answer: FoundersAnswer | None, focus: str = "") -> Opened:
    """The network of a book with the answer about its founders, warmed up for the window."""
    from pedigreeview.drawing.view import Look, choose
    from pedigreeview.network import PedigreeNetwork

    book = held.book
    if answer is not None:
        settings = replace(
            book.settings,
            founders_as=answer.founders_as,
            variety_fixation=answer.variety_fixation,
        )
        book = replace(book, settings=settings)
    net = PedigreeNetwork.from_records(book)
    problems = tuple(net.problems())
    finder = PlantFinder(book, net.codes)
    focus = focus if focus in book.plants else first_focus(net)
    if focus:
        # The first picture and card ask the same again; the network then has its answers ready.
        choose(net, Look(focus=focus))
        ask_plant(net, focus)
        net.crosses_of(focus), net.cytoplasm(focus)
    net.reciprocal_pairs()
    net.base_sentence()
    title = book.settings.name or held.path.stem or held.path.name
    return Opened(held.path, net, problems, finder, title, held.silent, focus)
