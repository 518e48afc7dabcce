"""Every paper of a book with the words on it, and what of them is still the English of the code."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import fields
from functools import cache

from pedigreeview.book.book import Book
from pedigreeview.book.crops import crops
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import TABLES
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import resource
from pedigreeview.reports.paper_choices import PAPERS
from pedigreeview.reports.papers import Paper, Wish, make_paper
from pedigreeview.window.translating import ENGINE, WINDOW, read_texts
from tests.translations.make_translations import engine_texts, texts

__all__ = ["english_in", "paper_texts", "papers_of"]

_WORD = re.compile(r"[^\W\d_]{2,}")


def papers_of(book: Book) -> Iterator[tuple[str, Paper]]:
    """Every paper of the season that the book has something for."""
    for kind in PAPERS:
        try:
            yield kind, make_paper(book, Wish(kind))
        except Fault:
            continue


def paper_texts(paper: Paper) -> Iterator[str]:
    """Every piece of text that is painted on a paper, and its own words about itself."""
    yield paper.words()
    yield from paper.warnings
    # In one piece, so that what wraps is whole again.
    if paper.labels is not None:
        for text in dict.fromkeys(paper.labels.labels):
            yield " ".join(mark.text for mark in paper.labels.layout(text).marks if mark.text)
            yield from text.lines()
    if paper.lists is not None:
        for at in range(paper.count):
            yield " ".join(mark.text for mark in paper.lists.marks(at) if mark.text)


@cache
def _english(code: str) -> frozenset[str]:
    """Words of the code's own texts that no text of the language has."""
    path = resource("translations") / f"{code}.ts"
    own = " ".join(
        told for context in (WINDOW, ENGINE) for told in read_texts(path, context).values()
    )
    foreign = {word.casefold() for word in _WORD.findall(own)}
    source = " ".join([*texts(), *engine_texts()])
    return frozenset({word.casefold() for word in _WORD.findall(source)} - foreign)


def english_in(net: PedigreeNetwork, code: str, told: Iterable[str]) -> dict[str, str]:
    """English words of the code that stand on paper, each with a text that holds it.

    What the book itself holds is in whatever language it was written in, and is left out.
    """
    held = _of_the_book(net.book)
    wrong: dict[str, str] = {}
    for text in told:
        left = held.sub(" ", text)
        for word in _WORD.findall(left):
            if word.casefold() in _english(code):
                wrong.setdefault(word.casefold(), text)
    return wrong


def _of_the_book(book: Book) -> re.Pattern[str]:
    """Everything that somebody typed into the book, as one pattern, the longest first."""
    found = {book.settings.name, book.settings.crop}
    for name in TABLES:
        for record in book.table(name):
            values = [getattr(record, one.name) for one in fields(record)]
            found |= {value for value in values if isinstance(value, str)}
    # Works that are cited keep their titles.
    found |= {
        str(caution["source"]) for crop in crops() for caution in crop.facts.get("cautions", ())
    }
    parts = {part.strip() for text in found for part in re.split(r"[;,.]", text)} | found
    words = sorted((re.escape(part) for part in parts if len(part) > 1), key=len, reverse=True)
    return re.compile(rf"(?<!\w)(?:{'|'.join(words)})(?!\w)", re.IGNORECASE)
