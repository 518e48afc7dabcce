"""Cells that two sides say differently, side by side, with the side that is taken."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QBrush, QFont, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from pedigreeview.exchange.merging import Difference, Side
from pedigreeview.window.importing.words import field_words, record_words
from pedigreeview.window.labels import Flow, action_button, column, sentence
from pedigreeview.window.record_words import choice_words
from pedigreeview.window.style import current, step
from pedigreeview.window.words import count

__all__ = ["DifferencesTable"]

_Index = QModelIndex | QPersistentModelIndex
_RECORD, _FIELD, _MINE, _THEIRS = range(4)


class _Model(QAbstractTableModel):
    def __init__(self) -> None:
        super().__init__()
        self.differences: Sequence[Difference] = ()
        self.sides: dict[Difference, Side] = {}

    def side(self, row: int) -> Side:
        one = self.differences[row]
        return self.sides.get(one, one.usual)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.differences)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else 4

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return (self.tr("Record"), self.tr("What"), self.tr("Mine"), self.tr("Theirs"))[section]

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        one, at = self.differences[index.row()], index.column()
        taken = at == (_MINE if self.side(index.row()) == "mine" else _THEIRS)
        if role == Qt.ItemDataRole.DisplayRole:
            if at == _RECORD:
                return record_words(one.table, one.key)
            if at == _FIELD:
                return field_words(one.field)
            text = one.mine if at == _MINE else one.theirs
            text = choice_words().get(text, text) or self.tr("(blank)")
            return f"✓ {text}" if taken else text
        if role == Qt.ItemDataRole.ToolTipRole and at in (_MINE, _THEIRS):
            return one.mine if at == _MINE else one.theirs
        if role == Qt.ItemDataRole.AccessibleDescriptionRole and at in (_MINE, _THEIRS):
            return self.tr("taken") if taken else self.tr("not taken")
        if role == Qt.ItemDataRole.BackgroundRole and taken:
            return QBrush(current().accent_soft)
        if role == Qt.ItemDataRole.ForegroundRole and at in (_MINE, _THEIRS) and not taken:
            return QBrush(current().soft)
        if role == Qt.ItemDataRole.FontRole and taken:
            font = QFont()
            font.setBold(True)
            return font
        return None

    def take(self, rows: Sequence[int], side: Side | None) -> None:
        """Take a side for rows; None: the one that is proposed."""
        for row in rows:
            one = self.differences[row]
            if side is None:
                self.sides.pop(one, None)
            else:
                self.sides[one] = side
        if rows:
            self.dataChanged.emit(self.index(min(rows), 0), self.index(max(rows), 3))


class _View(QTableView):
    chosen = Signal(object)
    """'mine', 'theirs', or '' for the other one than now, for the rows that are marked."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.chosen.emit("")
        elif key == Qt.Key.Key_Left:
            self.chosen.emit("mine")
        elif key == Qt.Key.Key_Right:
            self.chosen.emit("theirs")
        else:
            super().keyPressEvent(event)


class DifferencesTable(QWidget):
    """The table with buttons for all rows at once."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        s = step()
        layout = column(s)
        self.setLayout(layout)
        self.said = sentence("")
        layout.addWidget(self.said)
        buttons = Flow(s)
        self.mine_button = action_button(self.tr("&Mine for all"), lambda: self.take_all("mine"))
        self.theirs_button = action_button(
            self.tr("&Theirs for all"), lambda: self.take_all("theirs")
        )
        self.usual_button = action_button(
            self.tr("Mine, and theirs where &blank"), lambda: self.take_all(None)
        )
        for button in (self.usual_button, self.mine_button, self.theirs_button):
            buttons.addWidget(button)
        hint = self.tr("Click a side to take it, or press ← or →.")
        layout.addLayout(buttons)
        layout.addWidget(sentence(hint, "soft"))
        self.model = _Model()
        self.view = _View()
        self.view.setModel(self.model)
        self.view.setAccessibleName(self.tr("Differences, mine and theirs side by side"))
        self.view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.view.setTabKeyNavigation(False)
        self.view.verticalHeader().hide()
        self.view.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + s)
        header = self.view.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for at, mode in enumerate(
            (
                QHeaderView.ResizeMode.Interactive,
                QHeaderView.ResizeMode.Interactive,
                QHeaderView.ResizeMode.Stretch,
                QHeaderView.ResizeMode.Stretch,
            )
        ):
            header.setSectionResizeMode(at, mode)
        self.view.setMinimumHeight(12 * s)
        self.view.clicked.connect(self._clicked)
        self.view.chosen.connect(self._chosen)
        layout.addWidget(self.view, 1)

    def show_differences(self, differences: Sequence[Difference]) -> None:
        """Show them; what was chosen for one that is still there stays chosen."""
        held = set(differences)
        self.model.beginResetModel()
        self.model.differences = differences
        self.model.sides = {one: side for one, side in self.model.sides.items() if one in held}
        self.model.endResetModel()
        self.setVisible(bool(differences))
        self.view.resizeColumnToContents(_RECORD)
        self.view.resizeColumnToContents(_FIELD)
        if differences:
            self.view.selectRow(0)
        self._tell()

    def sides(self) -> dict[Difference, Side]:
        """The side that is taken of each."""
        return {one: self.model.side(row) for row, one in enumerate(self.model.differences)}

    def take_all(self, side: Side | None) -> None:
        """Take one side everywhere; None: what is proposed."""
        self.model.take(range(len(self.model.differences)), side)
        self._tell()
        self.changed.emit()

    def _clicked(self, index: QModelIndex) -> None:
        if index.column() in (_MINE, _THEIRS):
            self._take([index.row()], "mine" if index.column() == _MINE else "theirs")

    def _chosen(self, side: str) -> None:
        rows = sorted({index.row() for index in self.view.selectedIndexes()})
        if side == "mine":
            self._take(rows, "mine")
        elif side == "theirs":
            self._take(rows, "theirs")
        elif rows:
            self._take(rows, "theirs" if self.model.side(rows[0]) == "mine" else "mine")

    def _take(self, rows: list[int], side: Side) -> None:
        self.model.take(rows, side)
        self._tell()
        self.changed.emit()

    def _tell(self) -> None:
        rows = len(self.model.differences)
        theirs = sum(self.model.side(row) == "theirs" for row in range(rows))
        text = self.tr("{} differ between your book and what comes in; theirs is taken for {}.")
        cells = count(rows, self.tr("cell"), self.tr("cells"))
        self.said.setText(text.format(cells, theirs))
