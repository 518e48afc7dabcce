"""Find by code, name, cross, trait, status and note as one types, over 100,000 plants at once.

The index itself is `book.plant_index`; here its hits are put in words and into a list for views.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)

from pedigreeview.book.book import Book
from pedigreeview.book.plant_index import Hits, PlantIndex, Reason
from pedigreeview.window.words import cross_line

__all__ = ["CodeList", "PlantFinder"]

_Index = QModelIndex | QPersistentModelIndex

_SNIPPET = 48


def _tr(text: str) -> str:
    return QCoreApplication.translate("Find", text)


class PlantFinder(PlantIndex):
    """Search over the plants of one book, in the order of codes given."""

    def __init__(self, book: Book, codes: Sequence[str]) -> None:
        self._book = book
        super().__init__(book, codes, {code: _cross_text(book, code) for code in book.crosses})

    def origin(self, row: int) -> str:
        """'from 21-01: TP × BA', or '' for a plant of no cross."""
        plant = self._book.plants.get(self.codes[row])
        if plant is None or not plant.cross:
            return ""
        return _tr("from {}").format(_cross_text(self._book, plant.cross))

    def why(self, row: int, typed: str) -> str:
        """Why a search finds a plant: its cross, 'sweet: 8', 'status: kept', 'note: …'.

        Where its code or its name alone says it, the cross that it came from; '' without one.
        """
        reasons = self.reasons(row, typed)
        if len(reasons) > 1:
            reasons = [one for one in reasons if one.field not in ("code", "name")]
        return " · ".join(dict.fromkeys(self._said(row, one) for one in reasons))

    def _said(self, row: int, reason: Reason) -> str:
        if reason.field in ("code", "name", "cross"):
            return self.origin(row)
        if reason.field == "note":
            return _tr("note: {}").format(_snippet(reason.text, reason.words[0]))
        if reason.field == "place":
            return _tr("place: {}").format(reason.text)
        if reason.field == "status":
            return _tr("status: {}").format(reason.text)
        return reason.text


def _cross_text(book: Book, code: str) -> str:
    """'21-01: TP × BA'; the signs alone where the code is made of them."""
    cross = book.crosses.get(code)
    if cross is None:
        return code
    signs = cross_line(book, cross, False)
    return code if code.startswith(signs) else f"{code}: {signs}"


def _snippet(text: str, word: str) -> str:
    """The part of a note about a word."""
    plain = " ".join(text.split())
    if len(plain) <= _SNIPPET:
        return plain
    at = max(0, plain.casefold().find(word) - _SNIPPET // 3)
    at = plain.rfind(" ", 0, at) + 1 if at else 0
    part = plain[at : at + _SNIPPET].rstrip()
    return f"{'…' if at else ''}{part}{'…' if at + _SNIPPET < len(plain) else ''}"


class CodeList(QAbstractListModel):
    """The plants that fit what was typed, as a list for views."""

    CodeRole = Qt.ItemDataRole.UserRole + 1
    NameRole = Qt.ItemDataRole.UserRole + 2
    OriginRole = Qt.ItemDataRole.UserRole + 3
    """Why it was found, else the cross that it came from."""

    def __init__(self, parent: QObject | None = None, most: int | None = None) -> None:
        super().__init__(parent)
        self._finder: PlantFinder | None = None
        self._rows: Sequence[int] = ()
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
        finder = self._finder
        hits: Hits | None = finder.found(typed) if finder is not None else None
        self.found = len(hits) if hits is not None else 0
        if hits is not None and self._most is not None:
            hits = hits.first(self._most)
        self._rows = hits if hits is not None else ()
        self.endResetModel()

    def code(self, row: int) -> str:
        """The code in a row."""
        assert self._finder is not None
        return self._finder.codes[self._rows[row]]

    def row_of(self, code: str) -> int:
        """The row of a code, or -1."""
        at = self._finder.row(code) if self._finder is not None else -1
        return self._rows.place_of(at) if at >= 0 and isinstance(self._rows, Hits) else -1

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
            if not self._typed.strip():
                return self._finder.origin(at)
            return self._finder.why(at, self._typed)
        return None
