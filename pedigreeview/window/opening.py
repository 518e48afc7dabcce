"""Opening a book: reading, the question about its founders, and the network, off the thread."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import FileFaults
from pedigreeview.book.memory import uncollected
from pedigreeview.book.problems import Problem
from pedigreeview.window.answers import ask_plant
from pedigreeview.window.find import PlantFinder
from pedigreeview.window.founders_question import Example, examples
from pedigreeview.window.preferences import FoundersAnswer
from pedigreeview.window.walking import first_focus

if TYPE_CHECKING:
    from pedigreeview.book.book_file import BookFile
    from pedigreeview.book.edits import Change
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Opened", "ReadBook", "Stated", "after_edit", "build", "is_table", "read"]


@dataclass(frozen=True, slots=True)
class ReadBook:
    """A book that was read, with what the question about its founders needs."""

    path: Path
    book: Book
    silent: tuple[str, ...]
    """Founders that say neither kind nor fixation; none for a folder, which has settings."""
    worked: dict[str, Example]
    file: BookFile | None = None
    """The book's own file; None for a table or a folder."""


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
    file: BookFile | None = None
    """The book's own file; None for a table or a folder, which are only read."""


def is_table(path: Path) -> bool:
    """Whether the path is a plant table and no folder."""
    return path.is_file() and path.suffix.lower() in (".csv", ".tsv", ".txt")


@dataclass(frozen=True, slots=True)
class Stated:
    """What the command line says of founders that say nothing; '' and None: nothing."""

    founders_as: str = ""
    fixation: float | None = None


def read(path: Path, stated: Stated | None = None) -> ReadBook:
    """Read a file or folder; with founder settings stated, nothing is left to ask.

    Raises
    ------
    Fault, FileFaults : it cannot be read; nothing was taken in
    """
    with uncollected(lasting=True):
        return _read(path, stated)


def _read(path: Path, stated: Stated | None) -> ReadBook:
    from pedigreeview.exchange import read_book

    if path.suffix.lower() == ".pedbook":
        from pedigreeview.book.book_file import BookFile

        file = BookFile.open(path)
        return ReadBook(path, file.book, (), {}, file)
    if stated is not None:
        book = read_book(path, founders_as=stated.founders_as or None, fixation=stated.fixation)
        return ReadBook(path, book, (), {})
    try:
        book = read_book(path)
    except FileFaults as faults:
        # A cutting of a founder that says nothing is a fault only if founders are varieties, and
        # that has not been asked yet.
        if not is_table(path):
            raise
        try:
            book = read_book(path, founders_as="plant")
        except FileFaults:
            raise faults from None
    silent = tuple(book.silent_founders()) if is_table(path) else ()
    return ReadBook(path, book, silent, examples() if silent else {})


def build(held: ReadBook, answer: FoundersAnswer | None, focus: str = "") -> Opened:
    """The network of a book with the answer about its founders, warmed up for the window."""
    with uncollected(lasting=True):
        return _build(held, answer, focus)


def _build(held: ReadBook, answer: FoundersAnswer | None, focus: str) -> Opened:
    from pedigreeview.exchange import read_book
    from pedigreeview.network import PedigreeNetwork

    book = held.book
    if answer is not None:
        if book.settings.founders_as not in ("", answer.founders_as):
            book = read_book(held.path, founders_as=answer.founders_as)
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
        _warm(net, focus)
        ask_plant(net, focus, problems)
        net.crosses_of(focus), net.cytoplasm(focus)
    net.reciprocal_pairs()
    net.base_sentence()
    title = book.settings.name or held.path.stem or held.path.name
    return Opened(held.path, net, problems, finder, title, held.silent, focus, held.file)


def _warm(net: PedigreeNetwork, focus: str) -> None:
    """Ask once, off the window's thread, what every picture of a network asks."""
    import pygraphviz  # noqa: F401 - loaded here, so that the first picture need not wait for it

    from pedigreeview.drawing.view import Look, choose

    choose(net, Look(focus=focus))


def after_edit(opened: Opened, file: BookFile, change: Change) -> Opened:
    """The same book after an edit; the network is built anew only where the pedigree changed."""
    with uncollected(lasting=True):
        return _after_edit(opened, file, change)


def _after_edit(opened: Opened, file: BookFile, change: Change) -> Opened:
    from pedigreeview.network import PedigreeNetwork

    book = file.book
    if change.pedigree:
        net = PedigreeNetwork.from_records(book)
    else:
        net = opened.net.with_book(book)
    focus = opened.focus if opened.focus in book.plants else first_focus(net)
    if focus:
        _warm(net, focus)
    return replace(
        opened,
        net=net,
        problems=tuple(net.problems()),
        finder=PlantFinder(book, net.codes),
        title=book.settings.name or opened.path.stem,
        silent=(),
    )
