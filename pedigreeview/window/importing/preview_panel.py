"""The rows as they stand in the file, with the cells marked that cannot be read."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, Signal
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

    def __init__(self) -> None:
        super().__init__()
        s = step()
        outer = column(s)
        self.setLayout(outer)
        head = QHBoxLayout()
        head.setSpacing(s)
        head.addWidget(heading(self.tr("The file"), 3))
        self.said = sentence("", "soft")
        head.addWidget(self.said, 1)
        self.again_button = action_button(self.tr("&Read the file again"), self.read_again.emit)
        self.again_button.setToolTip(self.tr("After you have mended it in the spreadsheet program"))
        head.addWidget(self.again_button)
        outer.addLayout(head)
        self.model = SheetModel()
        self.view = _Rows()
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
        self.problems = QListWidget()
        self.problems.setAccessibleName(self.tr("Problems by row and column"))
        self.problems.setWordWrap(True)
        self.problems.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.problems.currentRowChanged.connect(self._show_problem)
        self.problems.itemClicked.connect(lambda _: self._show_problem(self.problems.currentRow()))
        split = QSplitter(Qt.Orientation.Horizontal)
        split.setChildrenCollapsible(False)
        split.addWidget(self.view)
        split.addWidget(self.problems)
        split.setStretchFactor(0, 3)
        split.setStretchFactor(1, 2)
        split.setHandleWidth(max(3, s // 3))
        outer.addWidget(split, 1)
        self._faults: Sequence[Fault] = ()
        self.problems.hide()
        self.again_button.hide()

    def fit_columns(self) -> None:
        """Columns as wide as what the first rows hold, the long ones cut."""
        self.view.horizontalHeader().setResizeContentsPrecision(60)
        self.view.resizeColumnsToContents()
        for place in range(self.model.columnCount()):
            self.view.setColumnWidth(place, min(self.view.columnWidth(place) + step(), _WIDEST))

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
