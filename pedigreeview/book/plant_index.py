"""An index over everything that is written of the plants of a book, searched as one types.

What was typed may stand in a code, a name, a cross, a status, a score or genotype, a place or a
note.  A plant whose code is or begins with it stands before one whose texts only hold it, and each
hit can say where it was found.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.book import Book
from pedigreeview.book.text_field import TextField, folded

__all__ = ["Hits", "PlantIndex", "Reason"]

_FIELDS = ("code", "name", "cross", "status", "trait", "place", "note")
_NOT = 99
_SCATTERED = 40
"""Rank of a plant whose words stand in several texts; one text that holds all ranks before."""
_APART = 20
_SHORT = 2
"""A word of so few letters stands somewhere in almost every plant."""


@dataclass(frozen=True, slots=True)
class Reason:
    """Where a plant was found: the kind of text, the text, and the words found in it."""

    field: str
    """code, name, cross, status, trait, place or note."""
    text: str
    words: tuple[str, ...]


class Hits(Sequence[int]):
    """Places of the plants that were found, best first."""

    def __init__(self, rows: NDArray[np.int64]) -> None:
        self._rows = rows

    def __len__(self) -> int:
        return len(self._rows)

    def __getitem__(self, at: int) -> int:  # type: ignore[override]
        return int(self._rows[at])

    def __iter__(self) -> Iterator[int]:
        return iter(self._rows.tolist())

    def first(self, most: int) -> Hits:
        """No more than so many of them."""
        return Hits(self._rows[:most])

    def place_of(self, row: int) -> int:
        """How many stand before a plant; -1 for one that was not found."""
        found = np.flatnonzero(self._rows == row)
        return int(found[0]) if len(found) else -1


class PlantIndex:
    """Making one reads every record of plants, scores and notes: not in the window's thread.

    Parameters
    ----------
    codes : the plants, in the order in which equal hits are listed
    crosses : each cross as it is written, '21-01: TP × BA'
    """

    def __init__(self, book: Book, codes: Sequence[str], crosses: Mapping[str, str]) -> None:
        self.codes = list(codes)
        self._rows = {code: row for row, code in enumerate(self.codes)}
        plants = [book.plants.get(code) for code in self.codes]
        self.names = [plant.name if plant is not None else "" for plant in plants]
        of_cross = [plant.cross if plant is not None else "" for plant in plants]
        notes = [
            (row, plant.note)
            for row, plant in enumerate(plants)
            if plant is not None and plant.note
        ]
        places = [
            (row, text)
            for row, plant in enumerate(plants)
            if plant is not None
            for text in (plant.place, plant.obtained_from)
            if text
        ]
        self._fields = {
            "code": TextField(self.codes),
            "name": TextField(self.names),
            "cross": TextField([crosses.get(cross, cross) for cross in of_cross]),
            "status": TextField([plant.status if plant is not None else "" for plant in plants]),
            "trait": _of_many(self._scores(book)),
            "place": _of_many(places),
            "note": _of_many([*notes, *self._notes(book)]),
        }

    def _scores(self, book: Book) -> Iterator[tuple[int, str]]:
        units = {name: trait.unit for name, trait in book.traits.items()}
        for score in book.scores:
            row = self._rows.get(score.plant, -1)
            if row >= 0:
                unit = units.get(score.trait, "")
                # A unit of several words, 'days from sowing', would drown the value.
                short = f" {unit}" if 0 < len(unit) <= 4 else ""
                yield row, f"{score.trait}: {score.value}{short}"
        for one in book.genotypes:
            row = self._rows.get(one.plant, -1)
            if row >= 0:
                yield row, f"{one.locus}: {one.genotype}"

    def _notes(self, book: Book) -> Iterator[tuple[int, str]]:
        for note in book.notes:
            kind, _, key = note.about.partition(" ")
            row = self._rows.get(key, -1) if kind == "plant" else -1
            if row >= 0 and note.text:
                yield row, note.text
        for score in book.scores:
            row = self._rows.get(score.plant, -1)
            if row >= 0 and score.note:
                yield row, f"{score.trait}: {score.note}"

    def row(self, code: str) -> int:
        """Place of a code, or -1."""
        return self._rows.get(code, -1)

    def texts(self, row: int) -> list[str]:
        """Everything that is written of a plant."""
        return [text for field in self._fields.values() for text in field.of_row(row) if text]

    # Searching ----------------------------------------------------------------------------------

    def found(self, typed: str) -> Hits:
        """Plants that fit, best first: the code itself, codes and names that begin so, the rest.

        Several words may stand apart, in one text or in several: 'dwarf kept', 'sweet 8'.
        """
        wanted, many = folded(typed), len(self.codes)
        if not wanted:
            return Hits(np.arange(many))
        rank = np.full(many, _NOT, np.int8)
        words = list(dict.fromkeys(wanted.split()))
        scattered = [np.zeros(many, bool) for _ in words]
        for at, field in enumerate(self._fields.values()):
            whole = field.holding(wanted) if len(words) == 1 else None
            if whole is None:
                each = [field.holding(word) for word in words]
                for seen, held in zip(scattered, each, strict=True):
                    seen[field.rows[held]] = True
                together = np.logical_and.reduce(each)
                _better(rank, field.rows[together], _APART + at)
                # Only a text that holds every word can hold the words in a row.
                whole = field.holding(wanted) if together.any() else together
            _better(rank, field.rows[whole], 3 + at)
        apart = all(len(word) > _SHORT for word in words) or not (rank < _NOT).any()
        if len(words) > 1 and apart:
            _better(rank, np.flatnonzero(np.logical_and.reduce(scattered)), _SCATTERED)
        _better(rank, np.flatnonzero(self._fields["name"].beginning(wanted)), 2)
        _better(rank, np.flatnonzero(self._fields["code"].beginning(wanted)), 1)
        _better(rank, np.flatnonzero(self._fields["code"].being(wanted)), 0)
        hits = np.flatnonzero(rank < _NOT)
        return Hits(hits[np.argsort(rank[hits], kind="stable")])

    def reasons(self, row: int, typed: str) -> list[Reason]:
        """Where what was typed stands: one text that holds it, else one for each word."""
        wanted = folded(typed)
        words = tuple(dict.fromkeys(wanted.split()))
        texts = [
            (name, text, folded(text))
            for name in _FIELDS
            for text in self._fields[name].of_row(row)
            if text
        ]
        for name, text, held in texts:
            if wanted in held:
                return [Reason(name, text, words)]
        for name, text, held in texts:
            if all(word in held for word in words):
                return [Reason(name, text, words)]
        found: list[Reason] = []
        for word in words:
            hit = next(((name, text) for name, text, held in texts if word in held), None)
            if hit is not None:
                found.append(Reason(*hit, (word,)))
        return found


def _of_many(found: Iterable[tuple[int, str]]) -> TextField:
    """A field of which a plant can have several texts, each once."""
    pairs = sorted(dict.fromkeys(found), key=lambda pair: pair[0])
    return TextField([text for _, text in pairs], [row for row, _ in pairs])


def _better(rank: NDArray[np.int8], rows: NDArray[np.int64], value: int) -> None:
    rank[rows] = np.minimum(rank[rows], value)
