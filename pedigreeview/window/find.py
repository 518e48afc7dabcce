"""Find by code, name or cross as one types, over 100,000 plants at once.

The texts are lowered once; a search is one pass of substring tests, ranked so that a code that is
or begins with what was typed stands before one that only holds it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from pedigreeview.book.book import Book
from pedigreeview.window.words import cross_line

__all__ = ["CodeList", "PlantFinder"]

_Index = QModelIndex | QPersistentModelIndex


class PlantFinder:
    """Search over the plants of one book, in the order of codes given."""

    def __init__(self, book: Book, codes: Sequence[str]) -> None:
        self.codes = list(codes)
        self._book = book
        plants = book.plants
        self.names = [plants[code].name if code in plants else "" for code in self.codes]
        self._codes = [code.casefold() for code in self.codes]
        self._texts = [
            f"{code}\n{name.casefold()}\n{plants[own].cross.casefold() if own in plants else ''}"
            for code, name, own in zip(self._codes, self.names, self.codes, strict=True)
        ]

    def origin(self, row: int) -> str:
        """'from 21-01: TP × BA', or '' for a plant of no cross: why a search by cross finds it."""
        plant = self._book.plants.get(self.codes[row])
        if plant is None or not plant.cross:
            return ""
        cross = self._book.crosses.get(plant.cross)
        if cross is None:
            return f"from {plant.cross}"
        signs = cross_line(self._book, cross, False)
        return f"from {cross.cross}" + ("" if cross.cross.startswith(signs) else f": {signs}")

    def rows(self, typed: str) -> list[int]:
        """Places of the plants that fit: the code itself, codes beginning so, names, the rest."""
        wanted = typed.strip().casefold()
        if not wanted:
            return list(range(len(self.codes)))
        hits = [row for row, text in enumerate(self._texts) if wanted in text]
        codes, texts = self._codes, self._texts
        in_name = "\n" + wanted

        def rank(row: int) -> int:
            code = codes[row]
            if code == wanted:
                return 0
            if code.startswith(wanted):
                return 1
            if in_name in texts[row]:
                return 2
            return 3

        hits.sort(key=rank)
        return hits


class CodeList(QAbstractListModel):
    """The plants that fit what was typed, as a list for views."""

    CodeRole = Qt.ItemDataRole.UserRole + 1
    NameRole = Qt.ItemDataRole.UserRole + 2
    OriginRole = Qt.ItemDataRole.UserRole + 3

    def __init__(self, parent: QObject | None = None, most: int | None = None) -> None:
        super().__init__(parent)
        self._finder: PlantFinder | None = None
        self._rows: list[int] = []
        self._typed = ""
        self._most = most
        self.found = 0

    def set_finder(self, finder: PlantFinder | None) -> None:
        """Show the plants of another book."""
        self._finder = finder
        self.search(self._typed)

    def search(self, typed: str) -> None:
        """Show what fits."""
        self.beginResetModel()
        self._typed = typed
        rows = self._finder.rows(typed) if self._finder is not None else []
        self.found = len(rows)
        self._rows = rows[: self._most] if self._most is not None else rows
        self.endResetModel()

    def code(self, row: int) -> str:
        """The code in a row."""
        assert self._finder is not None
        return self._finder.codes[self._rows[row]]

    def row_of(self, code: str) -> int:
        """The row of a code, or -1."""
        if self._finder is None:
            return -1
        codes = self._finder.codes
        return next((row for row, at in enumerate(self._rows) if codes[at] == code), -1)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid() or self._finder is None:
            return None
        at = self._rows[index.row()]
        code, name = self._finder.codes[at], self._finder.names[at]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return f"{code}  {name}" if name else code
        if role == self.CodeRole:
            return code
        if role == self.NameRole:
            return name
        if role in (self.OriginRole, Qt.ItemDataRole.AccessibleDescriptionRole):
            return self._finder.origin(at)
        return None
