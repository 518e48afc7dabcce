"""The rows as they stand in the file, with the cells marked that cannot be read."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QSplitter,
    QTableView,
    QWidget,
)

from pedigreeview.book.faults import Fault, Place
from pedigreeview.window.importing.sheet_model import SheetModel
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step

__all__ = ["PreviewPanel"]

_MOST_LISTED = 50
_WIDEST = 240
_FIRST_ROWS = 60
"""Rows that say how wide the columns are."""
_IN_SIGHT, _A_TURN = 12, 8
"""Columns that are measured at once, and those beyond them at each later turn."""
_BETWEEN = 1
"""Milliseconds between two turns, in which the window answers."""


class _Rows(QTableView):
    """The rows; Enter on one takes it, Tab goes on to the next field."""

    taken = Signal(int)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.taken.emit(self.currentIndex().row())
            return
        super().keyPressEvent(event)


class PreviewPanel(QWidget):
    """A table of the file's rows, and beside it the problems by row and column."""

    row_taken = Signal(int)
    """A row was chosen by a double click or Enter, counted in the rows shown."""
    read_again = Signal()
    """The person has mended the file."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        s = step()
        outer = column(s)
        self.setLayout(outer)
        head = QHBoxLayout()
        outer.addLayout(head)
        head.setSpacing(s)
        head.addWidget(heading(self.tr("The file"), 3))
        self.said = sentence("", "soft")
        head.addWidget(self.said, 1)
        self.again_button = action_button(self.tr("&Read the file again"), self.read_again.emit)
        self.again_button.setToolTip(self.tr("After you have mended it in the spreadsheet program"))
        head.addWidget(self.again_button)
        split = QSplitter(Qt.Orientation.Horizontal)
        outer.addWidget(split, 1)
        split.setChildrenCollapsible(False)
        split.setHandleWidth(max(3, s // 3))
        self.model = SheetModel()
        self.view = _Rows(split)
        self.view.setModel(self.model)
        self.view.setAccessibleName(self.tr("Rows of the file"))
        self.view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.view.setTabKeyNavigation(False)
        self.view.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.view.horizontalHeader().setHighlightSections(False)
        self.view.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        )
        self.view.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + s)
        self.view.doubleClicked.connect(lambda index: self.row_taken.emit(index.row()))
        self.view.taken.connect(self.row_taken)
        self.problems = QListWidget(split)
        self.problems.setAccessibleName(self.tr("Problems by row and column"))
        self.problems.setWordWrap(True)
        self.problems.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.problems.currentRowChanged.connect(self._show_problem)
        self.problems.itemClicked.connect(lambda _: self._show_problem(self.problems.currentRow()))
        split.setStretchFactor(0, 3)
        split.setStretchFactor(1, 2)
        self._faults: Sequence[Fault] = ()
        self._fitted = 0
        """Columns that have their width."""
        self._fitting = QTimer(self)
        self._fitting.setSingleShot(True)
        self._fitting.setInterval(_BETWEEN)
        self._fitting.timeout.connect(lambda: self._fit(_A_TURN))
        self.problems.hide()
        self.again_button.hide()

    def fit_columns(self) -> None:
        """Columns as wide as what the first rows hold, the long ones cut."""
        self.view.horizontalHeader().setResizeContentsPrecision(_FIRST_ROWS)
        self._fitted = 0
        self._fit(_IN_SIGHT)

    def _fit(self, most: int) -> None:
        """Fit the next columns, at most so many; those that still lack follow by themselves."""
        columns = self.model.columnCount()
        for place in range(self._fitted, min(self._fitted + most, columns)):
            self.view.resizeColumnToContents(place)
            self.view.setColumnWidth(place, min(self.view.columnWidth(place) + step(), _WIDEST))
        self._fitted += most
        if self._fitted < columns:
            self._fitting.start()

    def show_faults(self, faults: Sequence[Fault], more: int = 0) -> None:
        """List the problems and mark their cells; the first is brought into sight."""
        self._faults = faults
        self.model.set_faults(faults)
        self.problems.blockSignals(True)
        self.problems.clear()
        for fault in faults[:_MOST_LISTED]:
            QListWidgetItem(_line(fault), self.problems)
        self.problems.blockSignals(False)
        hidden = len(faults) + more - self.problems.count()
        if hidden > 0:
            item = QListWidgetItem(self.tr("… and {} more").format(hidden), self.problems)
            item.setFlags(Qt.ItemFlag.NoItemFlags)
        self.problems.setVisible(bool(faults))
        self.again_button.setVisible(bool(faults))
        if faults:
            self._show_problem(0)

    def _show_problem(self, at: int) -> None:
        if not 0 <= at < len(self._faults):
            return
        fault = self._faults[at]
        places = self.model.places(fault)
        row = self.model.row_of(fault)
        index = QModelIndex()
        if places:
            index = self.model.index(*places[0])
        elif row is not None:
            index = self.model.index(row, 0)
        if index.isValid():
            self.view.setCurrentIndex(index)
            self.view.scrollTo(index)


def _line(fault: Fault) -> str:
    """The problem without the name of the file, which stands on top of the window."""
    where = fault.where
    return Fault(fault.what, Place("", where.row, where.column, where.plant), fault.todo).sentence()
