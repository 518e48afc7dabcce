"""The grid that is typed into: how many rows it measures for the width of a column."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import QAbstractTableModel, QModelIndex, Qt
from PySide6.QtWidgets import QHeaderView
from pytestqt.qtbot import QtBot

from pedigreeview.window.typing_grid import TypingGrid


class _Rows(QAbstractTableModel):
    """Two thousand rows that remember which of them were looked at."""

    def __init__(self) -> None:
        super().__init__()
        self.asked: set[int] = set()

    def rowCount(self, parent: Any = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else 2000

    def columnCount(self, parent: Any = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else 1

    def data(self, index: Any, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        self.asked.add(index.row())
        wide = "as wide as this" if index.row() == 7 else "x"
        return wide if role == Qt.ItemDataRole.DisplayRole else None


@pytest.fixture
def grid(qtbot: QtBot) -> TypingGrid:
    made = TypingGrid(_Rows(), "Rows")
    qtbot.addWidget(made)
    made.horizontalHeader().setResizeContentsPrecision(0)
    made.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    return made


def test_out_of_sight_the_first_rows_say_how_wide_a_column_is(grid: TypingGrid) -> None:
    model: Any = grid.model()
    model.asked.clear()
    wide = grid.sizeHintForColumn(0)
    assert set(range(8)) <= model.asked
    assert len(model.asked) <= 120
    assert wide >= grid.fontMetrics().horizontalAdvance("as wide as this")
    assert grid.horizontalHeader().resizeContentsPrecision() == 0


def test_in_sight_the_rows_shown_say_it(grid: TypingGrid, qtbot: QtBot) -> None:
    grid.show()
    qtbot.waitExposed(grid)
    model: Any = grid.model()
    model.asked.clear()
    grid.sizeHintForColumn(0)
    last = grid.rowAt(grid.viewport().height() - 1)
    assert model.asked >= set(range(last + 1))
    assert len(model.asked) <= last + 3
