"""The ranked pairs as a table: one row a pair, its columns to sort by, a row to open."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSortFilterProxyModel,
    Qt,
    Signal,
)
from PySide6.QtWidgets import QAbstractItemView, QTableView

from pedigreeview.window.saying import say
from pedigreeview.window.style import step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.planning.complement import WishOfPair
    from pedigreeview.planning.pairs import PairRow

__all__ = ["RankingModel", "RankingTable"]

_Index = QModelIndex | QPersistentModelIndex
_SORT = Qt.ItemDataRole.UserRole
_ANSWERED = (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole, _SORT)
_FIRST_ROWS = 40
"""Rows that say how wide the columns are: the best ones, which are those in sight."""
_WISHES = 4
"""Wishes that have a column of their own."""


class RankingModel(QAbstractTableModel):
    """The pairs, the best first."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.rows: tuple[PairRow, ...] = ()
        self._kinds: tuple[str, ...] = ()
        self._titles = self.titles()
        self._told: dict[int, list[tuple[str, Any]]] = {}
        """The cells of the rows that were asked for; Qt asks for each many times."""

    def show_rows(self, rows: Sequence[PairRow], kinds: Sequence[str] = ()) -> None:
        """Other pairs, with the kind of each wish: 'measured', 'category' or 'allele'."""
        self.beginResetModel()
        self.rows, self._kinds = tuple(rows), tuple(kinds)
        self._titles, self._told = self.titles(), {}
        self.endResetModel()

    def _wishes(self) -> tuple[WishOfPair, ...]:
        return self.rows[0].wishes[:_WISHES] if self.rows else ()

    def titles(self) -> list[tuple[str, str]]:
        """The columns with what they mean."""
        return [
            (self.tr("Cross"), self.tr("Seed parent first, in the direction that is proposed")),
            (self.tr("Score"), self.tr("Weighted mean of the parts, 0 to 1")),
            (self.tr("F of progeny"), self.tr("Inbreeding of a plant of this cross")),
            (self.tr("Coancestry"), self.tr("Coancestry of the two")),
            *(
                (wish.words, self.tr("Mid-parent, and how many observations stand behind it"))
                for wish in self._wishes()
            ),
            (
                self.tr("Together in flower"),
                self.tr("Days on which both flower; below 0 the days between"),
            ),
            (self.tr("Made before"), self.tr("Crosses of this pair; ⇄ in the other direction")),
        ]

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._titles)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self._titles[section][0]
        if role == Qt.ItemDataRole.ToolTipRole:
            return self._titles[section][1]
        return None

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in _ANSWERED or not index.isValid():
            return None
        at = index.row()
        if role == Qt.ItemDataRole.ToolTipRole:
            return "\n".join(say(reason) for reason in self.rows[at].reasons)
        cells = self._told.get(at)
        if cells is None:
            cells = self._told[at] = self._cells(self.rows[at])
        shown, key = cells[index.column()]
        return key if role == _SORT else shown

    def _cells(self, row: PairRow) -> list[tuple[str, Any]]:
        """The text of each cell and what it is sorted by."""
        from pedigreeview.network.text import decimal_text

        cells: list[tuple[str, Any]] = [
            (f"{row.seed} × {row.pollen}", f"{row.seed} {row.pollen}"),
            (f"{row.score:.3f}", row.score),
            (
                row.inbreeding_text.partition(" = ")[0] or "–",
                2.0 if row.inbreeding is None else row.inbreeding,
            ),
            (decimal_text(row.coancestry), row.coancestry),
        ]
        for at, wish in enumerate(row.wishes[:_WISHES]):
            measured = at >= len(self._kinds) or self._kinds[at] == "measured"
            cells.append(self._wish_cell(wish, measured=measured))
        overlap = row.overlap
        noted = self.tr("not recorded")
        cells.append(
            (
                noted if overlap is None else self._days(round(overlap)),
                -999.0 if overlap is None else overlap,
            )
        )
        made = [*row.made, *(f"⇄ {code}" for code in row.made_other_way)]
        cells.append((", ".join(made) or self.tr("no"), len(made)))
        return cells

    def _days(self, days: int) -> str:
        return count(days, self.tr("day"), self.tr("days"))

    def _wish_cell(self, wish: WishOfPair, *, measured: bool) -> tuple[str, float]:
        """The mid-parent with the observations behind it; a share where the wish is a word."""

        def text(value: float) -> str:
            return f"{value:.3g}" if measured else f"{value:.0%}"

        if wish.middle is None:
            known = wish.seed if wish.seed is not None else wish.pollen
            if known is None:
                return self.tr("not scored"), float("-inf")
            return self.tr("{} and not scored").format(text(known)), known / 2
        seen = wish.seed_count + wish.pollen_count
        if not seen:
            return text(wish.middle), wish.middle
        return self.tr("{} ({} seen)").format(text(wish.middle), seen), wish.middle


class RankingTable(QTableView):
    """The table; the pair of the current row is told."""

    pair_shown = Signal(object)
    """A `PairRow`."""

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(self.tr("Pairs, the best first"))
        self.held = RankingModel(self)
        self.chosen = False
        """Whether the person has chosen the row, so that another ranking keeps to its pair."""
        self._filling = False
        self.sorted = QSortFilterProxyModel(self)
        self.sorted.setSourceModel(self.held)
        self.sorted.setSortRole(_SORT)
        self.setModel(self.sorted)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSortingEnabled(True)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.verticalHeader().hide()
        head = self.horizontalHeader()
        head.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        head.setHighlightSections(False)
        head.setResizeContentsPrecision(_FIRST_ROWS)
        head.setStretchLastSection(True)
        head.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.selectionModel().currentRowChanged.connect(lambda at, _: self._tell(at))
        self.fit()

    def fit(self) -> None:
        """Rows as tall as the type asks for."""
        self.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + step())

    def show_rows(
        self,
        rows: Sequence[PairRow],
        keep: tuple[str, str] | None = None,
        kinds: Sequence[str] = (),
    ) -> None:
        """Other pairs, the current one that of `keep` where it is listed, else the first."""
        self._filling = True
        self._fill(rows, keep, kinds)
        self._filling = False

    def _fill(
        self, rows: Sequence[PairRow], keep: tuple[str, str] | None, kinds: Sequence[str]
    ) -> None:
        self.held.show_rows(rows, kinds)
        self.resizeColumnsToContents()
        for column in range(self.held.columnCount()):
            self.setColumnWidth(column, min(self.columnWidth(column), 28 * step()) + step())
        if not rows:
            return
        places = [
            at
            for at, row in enumerate(rows)
            if keep is not None and {row.seed, row.pollen} == set(keep)
        ]
        index = self.sorted.mapFromSource(self.held.index(places[0] if places else 0, 0))
        self.setCurrentIndex(index)
        self.scrollTo(index)

    def row(self) -> PairRow | None:
        """The pair of the current row."""
        index = self.currentIndex()
        return self.held.rows[self.sorted.mapToSource(index).row()] if index.isValid() else None

    def _tell(self, index: _Index) -> None:
        if index.isValid():
            self.chosen = self.chosen or not self._filling
            self.pair_shown.emit(self.held.rows[self.sorted.mapToSource(index).row()])
