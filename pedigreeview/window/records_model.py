"""One table of the book as Qt's views want it: filtered, sorted, edited in place, pasted into.

The model holds the records of one snapshot; a cell that is typed into goes through the desk, and
what the book then holds comes back with the next snapshot.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.book.records import Column, Record
from pedigreeview.book.row_images import table_columns
from pedigreeview.window.desk import Desk
from pedigreeview.window.record_cells import cell_text, cell_value
from pedigreeview.window.record_words import about_words, column_words

__all__ = ["RecordsModel"]

_Index = QModelIndex | QPersistentModelIndex
_DIGITS = re.compile("([0-9]+)")
_TEXTS = frozenset((Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole))
_TOLD = _TEXTS | {Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.TextAlignmentRole}
"""What the model tells of a cell."""
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class RecordsModel(QAbstractTableModel):
    """The records of one table."""

    def __init__(self, desk: Desk, order: Callable[[], Order], parent: QObject) -> None:
        super().__init__(parent)
        self._desk, self._order = desk, order
        self.table = "plants"
        self.columns: tuple[Column, ...] = table_columns("plants")
        self._headings = _headings_of(self.columns)
        self._all: list[Record] = []
        self._rows: list[Record] = []
        self._typed = ""
        self._by: tuple[int, Qt.SortOrder] | None = None

    # What is shown ------------------------------------------------------------------------------

    def show_table(self, book: Book | None, table: str) -> None:
        """Show a table of the book."""
        self.beginResetModel()
        if table != self.table:
            self._typed, self._by = "", None
        self.table, self.columns = table, table_columns(table)
        self._headings = _headings_of(self.columns)
        self._all = book.table(table) if book is not None else []
        self._choose()
        self.endResetModel()

    def search(self, typed: str) -> None:
        """Show the records that hold what is typed, in any column."""
        self.beginResetModel()
        self._typed = typed.strip().casefold()
        self._choose()
        self.endResetModel()

    def _choose(self) -> None:
        rows = self._all
        if self._typed:
            names = [column.name for column in self.columns]
            rows = [
                record
                for record in rows
                if any(self._typed in str(getattr(record, name)).casefold() for name in names)
            ]
        if self._by is not None:
            place, way = self._by
            name = self.columns[place].name
            rows = sorted(
                rows,
                key=lambda record: _sortable(getattr(record, name)),
                reverse=way == Qt.SortOrder.DescendingOrder,
            )
        self._rows = list(rows)

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        self.layoutAboutToBeChanged.emit()
        self._by = (column, order) if column >= 0 else None
        self._choose()
        self.layoutChanged.emit()

    def record(self, row: int) -> Record:
        """The record of a row."""
        return self._rows[row]

    def row_of(self, key: str) -> int:
        """The row whose first column is the key, or -1."""
        first = self.columns[0].name
        return next((at for at, one in enumerate(self._rows) if getattr(one, first) == key), -1)

    @property
    def held(self) -> int:
        """How many records the table has, shown or not."""
        return len(self._all)

    # For the views ------------------------------------------------------------------------------

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.columns)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation == Qt.Orientation.Horizontal and section < len(self.columns):
            if role == Qt.ItemDataRole.DisplayRole:
                return self._headings[section]
            number = self.columns[section].kind in ("whole", "number")
            if role == Qt.ItemDataRole.TextAlignmentRole and number:
                return _RIGHT
        return None

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        # A view asks for eight roles of every cell that it measures or paints.
        if role not in _TOLD or not index.isValid():
            return None
        column = self.columns[index.column()]
        if role in _TEXTS:
            return cell_text(column, getattr(self._rows[index.row()], column.name))
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if column.kind in ("whole", "number") else None
        if role == Qt.ItemDataRole.ToolTipRole:
            text = cell_text(column, getattr(self._rows[index.row()], column.name))
            return text if len(text) > 24 else None
        return None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        held = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return held | Qt.ItemFlag.ItemIsEditable if index.isValid() else held

    # Writing ------------------------------------------------------------------------------------

    def setData(self, index: _Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        if role != Qt.ItemDataRole.EditRole or not index.isValid():
            return False
        return self.write([(index.row(), index.column(), str(value))])

    def write(self, cells: Sequence[tuple[int, int, str]]) -> bool:
        """Type texts into cells, as one edit; a cell that does not fit refuses them all.

        Parameters
        ----------
        cells : row, column and what was typed
        """
        changes: dict[int, dict[str, Any]] = {}
        today = datetime.date.today()
        try:
            for row, place, text in cells:
                column = self.columns[place]
                old = getattr(self._rows[row], column.name)
                if text == cell_text(column, old):
                    continue
                new = cell_value(column, text, today, self._order())
                if new != old:
                    changes.setdefault(row, {})[column.name] = new
        except Fault as fault:
            self._desk.refused.emit(fault)
            return False
        if not changes:
            return False
        wanted = [(self._rows[row], values) for row, values in changes.items()]

        def edit(edit: Edit) -> None:
            for record, values in wanted:
                edit.update(record, **values)

        if len(wanted) == 1:
            record, values = wanted[0]
            said = ", ".join(column_words().get(name, name) for name in values)
            words = self.tr("{} of {}").format(said, about_words(record))
        else:
            words = self.tr("{} cells").format(sum(len(values) for _, values in wanted))
        self._desk.record(words, edit)
        return True


def _headings_of(columns: Sequence[Column]) -> list[str]:
    """The columns as their headings call them."""
    said = column_words()
    words = [said.get(column.name, column.name) for column in columns]
    return [f"{one[:1].upper()}{one[1:]}" for one in words]


def _sortable(value: Any) -> tuple[int, Any]:
    """Numbers by size, texts as people read them, what is blank last."""
    if value is None or value == "":
        return (2, "")
    if isinstance(value, bool | int | float):
        return (0, value)
    return (1, _natural(str(value)))


def _natural(text: str) -> tuple[tuple[int, int | str], ...]:
    """'23-2' before '23-10'."""
    parts = _DIGITS.split(text.casefold())
    return tuple((0, int(part)) if at % 2 else (1, part) for at, part in enumerate(parts) if part)
