"""Spellings that may be one plant, offered for merging; never merged unless the person says so."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.look_alikes import sight
from pedigreeview.exchange.import_plan import ImportPlan
from pedigreeview.exchange.parentage_tree import Named, parts
from pedigreeview.exchange.parents_in_one_cell import read_cell
from pedigreeview.exchange.spreadsheets import Sheets, cell_text
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["Spellings", "look_alikes", "look_alikes_of"]

_DIGITS = str.maketrans("oil|", "0111")
_MARKS = re.compile(r"[\W_]+")
_MOST_CELLS = 400_000


@dataclass(frozen=True, slots=True)
class Spellings:
    """Codes that a person may have meant as one.

    codes : as they stand, the one that is proposed first
    why : what makes them alike
    counts : how often each stands in the table
    known : those that are plants of the book already
    """

    codes: tuple[str, ...]
    why: str
    counts: tuple[int, ...]
    known: tuple[str, ...] = ()

    @property
    def proposed(self) -> str:
        """The spelling to take: that of the book, else the most frequent."""
        return self.codes[0]


def look_alikes(
    sheets: Sheets, plan: ImportPlan, into: Book | None = None, tick: Tick = no_tick
) -> list[Spellings]:
    """Spellings among the codes of a table, and against those of a book, that may be one plant.

    tick : called now and then; may raise `Cancelled`
    """
    counts: dict[str, int] = {}
    table = sheets.named(plan.sheet)
    both = plan.of("parents")
    columns = [
        column
        for meaning in ("plant", "seed_parent", "pollen_parent")
        if (column := plan.of(meaning)) is not None
    ]
    for at, (_, cells) in enumerate(ticked(table.below(plan.heading), tick)):
        if at * max(len(columns), 1) > _MOST_CELLS:
            break
        for column in columns:
            text = cell_text(cells[column.index]).strip() if column.index < len(cells) else ""
            if text and plan.marks.get(text, "code") == "code":
                counts[text] = counts.get(text, 0) + 1
        if both is not None and both.index < len(cells):
            for name in _names(cell_text(cells[both.index]).strip()):
                if plan.marks.get(name, "code") == "code":
                    counts[name] = counts.get(name, 0) + 1
    return look_alikes_of(counts, into.plants if into is not None else (), tick)


def _names(text: str) -> list[str]:
    from pedigreeview.book.faults import Fault

    if not text:
        return []
    try:
        found = read_cell(text, seed_parent_first=True)
    except Fault:
        return []
    return [
        part.name
        for tree in (found.seed, found.pollen)
        if tree is not None
        for part in parts(tree)
        if isinstance(part, Named)
    ]


def look_alikes_of(
    counts: dict[str, int], known: Iterable[str] = (), tick: Tick = no_tick
) -> list[Spellings]:
    """Groups of codes that look alike, those that differ least first.

    Parameters
    ----------
    counts : how often each code stands in the table
    known : codes of the book
    tick : called now and then; may raise `Cancelled`
    """
    book = set(known)
    every = [*counts, *(code for code in book if code not in counts)]
    found: list[Spellings] = []
    grouped: dict[str, list[frozenset[str]]] = {}
    for why, key in (
        ("They differ only by case, blanks, dashes or signs that look alike.", sight),
        ("They differ only by marks such as dots, quotes and brackets.", _without_marks),
        ("They differ only by letters that look like digits, such as O and 0.", _as_digits),
    ):
        groups: dict[str, list[str]] = {}
        for code in ticked(every, tick):
            if held := key(code):
                groups.setdefault(held, []).append(code)
        for codes in ticked(groups.values(), tick):
            here = [code for code in codes if code in counts]
            if len(codes) < 2 or not here:
                continue
            if any(set(codes) <= held for held in grouped.get(codes[0], ())):
                continue
            if len(here) == 1 and here[0] in book:
                # The table has it just as the book does; that the book has another is known there.
                continue
            for code in codes:
                grouped.setdefault(code, []).append(frozenset(codes))
            codes = sorted(codes, key=lambda c: (c not in book, -counts.get(c, 0), c))
            found.append(
                Spellings(
                    tuple(codes),
                    why,
                    tuple(counts.get(code, 0) for code in codes),
                    tuple(code for code in codes if code in book),
                )
            )
    return found


def _without_marks(code: str) -> str:
    return _MARKS.sub("", sight(code))


def _as_digits(code: str) -> str:
    return sight(code).translate(_DIGITS)
