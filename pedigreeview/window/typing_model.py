"""The grid of a printed sheet as it is typed in: what stands beside each row, and what is wrong."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QGuiApplication

from pedigreeview.book.book import Book
from pedigreeview.book.recording.printed_sheets import PrintedSheet
from pedigreeview.book.recording.typing_in import sheet_columns
from pedigreeview.window.record_words import column_words
from pedigreeview.window.style import current, mixed

__all__ = ["SheetModel", "row_words"]

_Index = QModelIndex | QPersistentModelIndex
_Cell = tuple[int, int]


def row_words(book: Book, sheet: PrintedSheet, row: int) -> str:
    """What is printed before the blanks of a row, in short; '' for an empty row."""
    key = sheet.rows[row]
    if not key:
        return ""
    if sheet.kind == "crossing":
        # Its cross stands in the grid, as on the paper.
        return ""
    if sheet.kind == "scores":
        plant = book.plants.get(key)
        return f"{key}, {plant.name}" if plant is not None and plant.name else key
    if sheet.kind == "rows":
        sowing = book.sowings.get(key)
        if sowing is None:
            return key
        said = (sowing.packet or sowing.sown_from or key, sowing.date)
        return ", ".join(part for part in said if part)
    worked = book.pollinations.get(key)
    cross = book.crosses.get(worked.cross) if worked is not None else None
    if worked is None or cross is None:
        return key
    pair = f"{cross.seed_parent or '?'} × {cross.pollen_parent or '?'}"
    if cross.pollen_parent == cross.seed_parent:
        pair = f"{cross.seed_parent} ⊗"
    parts = (cross.cross, "" if pair == cross.cross else pair, worked.date, worked.tag)
    return ", ".join(part for part in parts if part)


def _printed(book: Book, sheet: PrintedSheet, columns: tuple[str, ...]) -> dict[_Cell, str]:
    """The cells of a crossing list that were printed: the parents and the cross of its rows."""
    found: dict[_Cell, str] = {}
    if sheet.kind != "crossing":
        return found
    for row, key in enumerate(sheet.rows):
        cross = book.crosses.get(key)
        if not key:
            continue
        said = {"cross": key}
        if cross is not None:
            pollen = "⊗" if cross.pollen_parent == cross.seed_parent else cross.pollen_parent
            said |= {"seed_parent": cross.seed_parent, "pollen_parent": pollen or "?"}
        for name in ("seed_parent", "pollen_parent", "cross"):
            found[row, columns.index(name)] = said.get(name, "")
    return found


class SheetModel(QAbstractTableModel):
    """What is typed, by row and column of the paper; nothing is written before it is recorded."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.sheet: PrintedSheet | None = None
        self.columns: tuple[str, ...] = ()
        self.words: list[str] = []
        self.printed: dict[_Cell, str] = {}
        self.cells: dict[_Cell, str] = {}
        self.faults: dict[_Cell, str] = {}

    def show_sheet(
        self, book: Book, sheet: PrintedSheet | None, cells: dict[_Cell, str] | None = None
    ) -> None:
        """Another sheet, with what was typed of it before."""
        self.beginResetModel()
        self.sheet = sheet
        self.columns = sheet_columns(sheet) if sheet is not None else ()
        rows = range(len(sheet.rows)) if sheet is not None else range(0)
        self.words = [row_words(book, sheet, row) for row in rows] if sheet is not None else []
        self.printed = _printed(book, sheet, self.columns) if sheet is not None else {}
        self.cells = {} if cells is None else cells
        self.faults = {}
        self.endResetModel()

    def renew(self, book: Book) -> None:
        """The book was changed; what is typed stays."""
        sheet = self.sheet
        if sheet is None:
            return
        self.words = [row_words(book, sheet, row) for row in range(len(sheet.rows))]
        if self.words:
            self.headerDataChanged.emit(Qt.Orientation.Vertical, 0, len(self.words) - 1)

    def show_faults(self, faults: dict[_Cell, str]) -> None:
        """Mark the cells that cannot be taken."""
        self.faults = faults
        self._all_changed()

    def _all_changed(self) -> None:
        if self.rowCount() and self.columnCount():
            last = self.index(self.rowCount() - 1, self.columnCount() - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() or self.sheet is None else len(self.sheet.rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.columns)

    def fixed(self, row: int, at: int) -> bool:
        """Whether the cell was printed: the cross of a row that has one."""
        return (row, at) in self.printed

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if role != Qt.ItemDataRole.DisplayRole or self.sheet is None:
            return None
        if orientation == Qt.Orientation.Vertical:
            words = self.words[section]
            return f"{section + 1}   {words}" if words else f"{section + 1}"
        return self.title(section)

    def title(self, at: int) -> str:
        """The name of a column as the paper says it."""
        name = self.columns[at]
        if self.sheet is not None and self.sheet.kind == "scores" and at < len(self.sheet.columns):
            return name
        return {
            "set": self.tr("fruits set"),
            "dropped": self.tr("lost since"),
            "off-types": self.tr("off-types"),
        }.get(name, column_words().get(name, name.replace("_", " ")))

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        cell = (index.row(), index.column())
        why = self.faults.get(cell, "")
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return self.printed.get(cell) or self.cells.get(cell, "")
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole):
            return why or None
        if role == Qt.ItemDataRole.BackgroundRole and self.fixed(*cell):
            return current().window
        if role == Qt.ItemDataRole.ForegroundRole and self.fixed(*cell):
            return current().soft
        if role == Qt.ItemDataRole.ForegroundRole and why:
            return current().error
        if role == Qt.ItemDataRole.BackgroundRole and why:
            return mixed(current().sheet, current().error, 0.16)
        if role == Qt.ItemDataRole.FontRole and why:
            font = QGuiApplication.font()
            font.setUnderline(True)
            return font
        return None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        held = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        if self.fixed(index.row(), index.column()):
            return held
        return held | Qt.ItemFlag.ItemIsEditable

    def setData(self, index: _Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        if role != Qt.ItemDataRole.EditRole or not index.isValid():
            return False
        self.put({(index.row(), index.column()): str(value)})
        return True

    def put(self, cells: dict[_Cell, str]) -> None:
        """Take typed or pasted cells; a blank empties its cell."""
        for cell, text in cells.items():
            if self.fixed(*cell):
                continue
            if text.strip():
                self.cells[cell] = text.strip()
            else:
                self.cells.pop(cell, None)
            self.faults.pop(cell, None)
        self._all_changed()
