"""A table of results: sorted by its headings, walked by keys, with bars in its cells.

The rows stay plain tuples, so that a book of 100,000 plants costs only what is on the screen.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QKeyEvent, QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
)

from pedigreeview.window.saying import say
from pedigreeview.window.style import current, mixed, step

__all__ = ["Cell", "ResultTable"]

_Index = QModelIndex | QPersistentModelIndex
_BAR = int(Qt.ItemDataRole.UserRole)
_WIDEST = 60
"""Widest column in steps of the grid."""


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell.

    text : as it is read
    key : what it is sorted by; None: the text
    shares : parts of a whole drawn as a bar beneath the text, at most 1 in sum
    number : whether it stands at the right
    """

    text: str
    key: float | None = None
    shares: tuple[float, ...] = ()
    number: bool = False


class _Rows(QAbstractTableModel):
    def __init__(self) -> None:
        super().__init__()
        self.heads: tuple[str, ...] = ()
        self.tips: tuple[str, ...] = ()
        self.rows: list[tuple[str, tuple[Cell, ...]]] = []

    def fill(
        self,
        heads: Sequence[str],
        rows: Sequence[tuple[str, tuple[Cell, ...]]],
        tips: Sequence[str] = (),
    ) -> None:
        self.beginResetModel()
        self.heads, self.rows, self.tips = tuple(heads), list(rows), tuple(tips)
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.heads)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation == Qt.Orientation.Vertical or not 0 <= section < len(self.heads):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.heads[section]
        if role == Qt.ItemDataRole.ToolTipRole and section < len(self.tips):
            return self.tips[section]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            number = bool(self.rows) and self.rows[0][1][section].number
            side = Qt.AlignmentFlag.AlignRight if number else Qt.AlignmentFlag.AlignLeft
            return side | Qt.AlignmentFlag.AlignVCenter
        return None

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        cell = self.rows[index.row()][1][index.column()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return say(cell.text)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{self.heads[index.column()]}: {say(cell.text)}"
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if cell.number else Qt.AlignmentFlag.AlignLeft
            return side | Qt.AlignmentFlag.AlignVCenter
        return cell.shares if role == _BAR else None

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        if not 0 <= column < len(self.heads):
            return
        self.layoutAboutToBeChanged.emit()

        def key(row: tuple[str, tuple[Cell, ...]]) -> tuple[int, float, str]:
            cell = row[1][column]
            if cell.key is None:
                return (1, 0.0, cell.text.casefold())
            return (0, cell.key, "")

        self.rows.sort(key=key, reverse=order == Qt.SortOrder.DescendingOrder)
        self.layoutChanged.emit()


class _Bars(QStyledItemDelegate):
    """Text, and under it the parts of a whole as a bar."""

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | Any
    ) -> None:
        shares = index.data(_BAR)
        if not shares:
            super().paint(painter, option, index)
            return
        s, colours = step(), current()
        held = QStyleOptionViewItem(option)
        self.initStyleOption(held, index)
        text, held.text = held.text, ""
        widget = held.widget
        style = widget.style() if widget is not None else QApplication.style()
        style.drawControl(QStyle.ControlElement.CE_ItemViewItem, held, painter, widget)
        area = QRectF(held.rect).adjusted(s, 2, -s, -2)
        bar = QRectF(area.left(), area.bottom() - 0.8 * s, area.width(), 0.6 * s)
        painter.save()
        painter.setPen(colours.ink)
        above = QRectF(area.left(), area.top(), area.width(), area.height() - s)
        side = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(above, int(side), text)
        x = bar.left()
        for at, share in enumerate(shares):
            fill = mixed(colours.accent, colours.sheet, min(0.85, 0.42 * at))
            part = QRectF(x, bar.top(), bar.width() * share, bar.height())
            painter.fillRect(part, fill)
            x += bar.width() * share
            if at and share > 0.01:
                painter.fillRect(QRectF(part.left() - 0.5, bar.top(), 1, bar.height()), colours.ink)
        painter.setPen(QPen(colours.rule, 1))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(bar)
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | Any) -> QSize:
        hint = super().sizeHint(option, index)
        return QSize(hint.width() + step(), hint.height())


class ResultTable(QTableView):
    """Rows that stand for plants or other things, each with a key of its own.

    opened : a row was asked for by double click or Enter
    chosen : another row is the current one
    """

    opened = Signal(str)
    chosen = Signal(str)

    def __init__(self, name: str, *, lines: int = 0) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._lines = lines
        self._rows = _Rows()
        self.setModel(self._rows)
        self.setItemDelegate(_Bars(self))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        head = self.horizontalHeader()
        head.setStretchLastSection(True)
        head.setHighlightSections(False)
        head.setSectionsClickable(True)
        self.doubleClicked.connect(lambda index: self._open(index.row()))
        # A scroll bar across is not to cover the last row.
        self.horizontalScrollBar().rangeChanged.connect(lambda *_: self._fit_height())
        self.selectionModel().currentRowChanged.connect(
            lambda index, _: self.chosen.emit(self.key(index.row()))
        )

    def fill(
        self,
        heads: Sequence[str],
        rows: Sequence[tuple[str, tuple[Cell, ...]]],
        tips: Sequence[str] = (),
    ) -> None:
        """Show other rows, in the order given.

        rows : key (such as a plant's code) and one cell for each heading
        tips : what each heading means
        """
        self.setSortingEnabled(False)
        self._rows.fill(heads, rows, tips)
        self.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self.setSortingEnabled(True)
        self.fit()

    def fit(self) -> None:
        """Widths and heights for the size of the text."""
        s, tall = step(), self.fontMetrics().height()
        barred = any(cell.shares for _, cells in self._rows.rows[:1] for cell in cells)
        line = tall + (2 * s if barred else s)
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setDefaultSectionSize(line)
        metrics = self.fontMetrics()
        for column, head in enumerate(self._rows.heads[:-1]):
            texts = [cells[column].text for _, cells in self._rows.rows[:300]]
            wide = max([metrics.horizontalAdvance(text) for text in [head, *texts]]) + 4 * s
            if any(cells[column].shares for _, cells in self._rows.rows[:20]):
                wide = max(wide, 22 * s)
            self.setColumnWidth(column, min(wide, _WIDEST * s))
        self._fit_height()

    def _fit_height(self) -> None:
        if self._lines:
            line = self.verticalHeader().defaultSectionSize()
            shown = min(self._lines, max(1, len(self._rows.rows)))
            head_line = self.horizontalHeader().sizeHint().height()
            across = self.horizontalScrollBar()
            bar = across.sizeHint().height() if across.maximum() > 0 else 0
            self.setFixedHeight(head_line + shown * line + step() + bar)

    def key(self, row: int) -> str:
        """Key of a row; '' for none."""
        return self._rows.rows[row][0] if 0 <= row < len(self._rows.rows) else ""

    def keys(self) -> list[str]:
        """Keys from the top."""
        return [key for key, _ in self._rows.rows]

    def text(self, key: str, column: int) -> str:
        """What a cell says."""
        return next(cells[column].text for own, cells in self._rows.rows if own == key)

    def current_key(self) -> str:
        """Key of the current row."""
        return self.key(self.currentIndex().row())

    def picked_keys(self) -> tuple[str, ...]:
        """Keys of the marked rows, from the top."""
        rows = sorted(index.row() for index in self.selectionModel().selectedRows())
        return tuple(self.key(row) for row in rows)

    def choose(self, key: str) -> bool:
        """Go to the row of a key; False where there is none."""
        for row, (own, _) in enumerate(self._rows.rows):
            if own == key:
                self.selectRow(row)
                self.scrollTo(self._rows.index(row, 0))
                return True
        return False

    def _open(self, row: int) -> None:
        if self.key(row):
            self.opened.emit(self.key(row))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._open(self.currentIndex().row())
            return
        super().keyPressEvent(event)
