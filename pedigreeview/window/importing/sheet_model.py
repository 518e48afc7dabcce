"""The rows of a sheet as a view wants them: headings told apart, cells with a problem marked."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QBrush, QFont

from pedigreeview.book.faults import Fault
from pedigreeview.exchange.spreadsheets import Table, cell_text
from pedigreeview.window.style import current, mixed

__all__ = ["SheetModel", "letters"]

_Index = QModelIndex | QPersistentModelIndex
_MOST_COLUMNS = 400
_LONGEST = 200
_TOLD = frozenset(
    (
        Qt.ItemDataRole.DisplayRole,
        Qt.ItemDataRole.FontRole,
        Qt.ItemDataRole.BackgroundRole,
        Qt.ItemDataRole.ForegroundRole,
        Qt.ItemDataRole.ToolTipRole,
        Qt.ItemDataRole.AccessibleDescriptionRole,
    )
)
"""What the model tells of a cell."""


def letters(index: int) -> str:
    """The column of a spreadsheet: 0 is A, 26 is AA."""
    found, index = "", index + 1
    while index:
        index, rest = divmod(index - 1, 26)
        found = chr(65 + rest) + found
    return found


class SheetModel(QAbstractTableModel):
    """A sheet; with `below` only the rows under its headings, which then stand on top."""

    def __init__(self) -> None:
        super().__init__()
        self._table: Table | None = None
        self._heading: int | None = None
        self._below = False
        self._first = 0
        self._meanings: list[str] = []
        self._marked: dict[tuple[int, int], list[str]] = {}

    def show_table(
        self, table: Table | None, heading: int | None, *, below: bool, meanings: Iterable[str] = ()
    ) -> None:
        """Show a sheet; `meanings` says of each column, in words, what it means."""
        self.beginResetModel()
        self._table, self._heading, self._below = table, heading, below
        self._first = heading + 1 if below and heading is not None else 0
        self._meanings = list(meanings)
        self._marked = {}
        self.endResetModel()

    def set_faults(self, faults: Iterable[Fault]) -> None:
        """Mark the cells that the problems lie in."""
        marked: dict[tuple[int, int], list[str]] = {}
        for fault in faults:
            for place in self.places(fault):
                marked.setdefault(place, []).append(f"{fault.what} {fault.todo}".strip())
        self._marked = marked
        if self.rowCount() and self.columnCount():
            last = self.index(self.rowCount() - 1, self.columnCount() - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def places(self, fault: Fault) -> list[tuple[int, int]]:
        """Row and column of the cells of a problem, as the view counts them."""
        table, line = self._table, fault.where.row
        if table is None or line is None:
            return []
        row = self._row_of(line)
        if row is None:
            return []
        headings = table.headings(self._heading)[: self.columnCount()]
        named = [at for at, text in enumerate(headings) if text == fault.where.column]
        return [(row, at) for at in named]

    def row_of(self, fault: Fault) -> int | None:
        """The row of a problem, as the view counts them."""
        return None if fault.where.row is None else self._row_of(fault.where.row)

    def _row_of(self, line: int) -> int | None:
        import bisect

        assert self._table is not None
        rows = self._table.rows
        at = bisect.bisect_left(rows, line, key=lambda row: row[0])
        if at < len(rows) and rows[at][0] == line and at >= self._first:
            return at - self._first
        return None

    # For the view -------------------------------------------------------------------------------

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        if parent.isValid() or self._table is None:
            return 0
        return len(self._table.rows) - self._first

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        if parent.isValid() or self._table is None:
            return 0
        return min(self._table.width, _MOST_COLUMNS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        table = self._table
        if table is None or role != Qt.ItemDataRole.DisplayRole:
            return None
        if orientation == Qt.Orientation.Vertical:
            return str(table.rows[section + self._first][0])
        if not self._below:
            return letters(section)
        heading = table.headings(self._heading)[section] or letters(section)
        meaning = self._meanings[section] if section < len(self._meanings) else ""
        return f"{heading[:40]}\n{meaning}" if meaning else heading[:40]

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in _TOLD or not index.isValid() or self._table is None:
            return None
        at, column = index.row() + self._first, index.column()
        if role == Qt.ItemDataRole.DisplayRole:
            cells = self._table.rows[at][1]
            text = cell_text(cells[column]) if column < len(cells) else ""
            return text[:_LONGEST].replace("\n", " ")
        said = self._marked.get((index.row(), column))
        if role == Qt.ItemDataRole.BackgroundRole and said:
            colours = current()
            return QBrush(mixed(colours.sheet, colours.error, 0.25))
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole):
            return "\n".join(said[:4]) if said else None
        if not self._below:
            return self._plain_look(at, role)
        return None

    def _plain_look(self, at: int, role: int) -> Any:
        """The heading row stands out; what lies above it is not read and steps back."""
        if role == Qt.ItemDataRole.FontRole and at == self._heading:
            font = QFont()
            font.setBold(True)
            return font
        if role == Qt.ItemDataRole.BackgroundRole and at == self._heading:
            return QBrush(current().accent_soft)
        if role == Qt.ItemDataRole.ForegroundRole and self._heading is not None:
            return QBrush(current().soft) if at < self._heading else None
        return None
