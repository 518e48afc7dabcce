"""How often pollinations took: by parent, direction, person, day, cover; with what it rests on."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHeaderView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from pedigreeview.book.success import TakeRow, takes_by
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import Flow, column, sentence
from pedigreeview.window.season_words import group_word, grouping_words
from pedigreeview.window.style import current, mixed, step
from pedigreeview.window.words import number

if TYPE_CHECKING:
    from pedigreeview.planning.take_intervals import TakeInterval

__all__ = ["Takes"]

_TAKES = "season:takes"
_BAR = 4
"""The column with the bar."""
_RANGE = Qt.ItemDataRole.UserRole + 1

_Index = QModelIndex | QPersistentModelIndex


class _Bar(QStyledItemDelegate):
    """The interval as a bar on a scale from 0 to 100%, the take as a mark on it."""

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        super().paint(painter, option, index)
        held = index.data(_RANGE)
        if held is None:
            return
        low, take, high, few = held
        colours = current()
        s = step()
        option_rect: Any = option.rect
        room = QRectF(option_rect).adjusted(s, 0, -s, 0)
        middle = room.center().y()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colours.rule)
        painter.drawRect(QRectF(room.x(), middle - 0.5, room.width(), 1))
        painter.setBrush(colours.rule if few else mixed(colours.sheet, colours.accent, 0.45))
        painter.drawRoundedRect(
            QRectF(
                room.x() + low * room.width(),
                middle - s / 2,
                max(2.0, (high - low) * room.width()),
                s,
            ),
            2,
            2,
        )
        painter.setBrush(colours.soft if few else colours.accent)
        painter.drawRect(QRectF(room.x() + take * room.width() - 1.5, middle - s, 3, 2 * s))
        painter.restore()


class Takes(QWidget):
    """The table with its grouping and its year."""

    cross_wanted = Signal(str)

    def __init__(self, desk: Desk, errands: Errands) -> None:
        super().__init__()
        self._desk, self._errands = desk, errands
        s = step()
        body = column(s)
        self.setLayout(body)
        head = Flow(s)
        self.grouping = QComboBox()
        self.grouping.setAccessibleName(self.tr("How the takes are grouped"))
        for word, text in grouping_words().items():
            self.grouping.addItem(text, word)
        self.year = QComboBox()
        self.year.setAccessibleName(self.tr("Year"))
        self.year.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        for combo in (self.grouping, self.year):
            combo.currentIndexChanged.connect(self._ask)
            head.addWidget(combo)
        self.shown = sentence("", "soft")
        self.shown.setWordWrap(False)
        self.shown.setMinimumHeight(self.year.sizeHint().height())
        head.addWidget(self.shown)
        body.addLayout(head)
        self.table = QTableWidget(0, 7)
        self.table.setAccessibleName(self.tr("Takes by group"))
        self.table.setHorizontalHeaderLabels(
            [
                self.tr("Group"),
                self.tr("Took"),
                self.tr("Take"),
                self.tr("Likely"),
                self.tr("0 to 100%"),
                self.tr("Pollinations"),
                self.tr("Crosses"),
            ]
        )
        self.table.verticalHeader().hide()
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setItemDelegateForColumn(_BAR, _Bar(self.table))
        header = self.table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setHighlightSections(False)
        for at in (1, 2):
            held = self.table.horizontalHeaderItem(at)
            if held is not None:
                held.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        for at in range(7):
            header.setSectionResizeMode(at, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(_BAR, QHeaderView.ResizeMode.Stretch)
        self.table.itemActivated.connect(self._open)
        self.table.setMinimumHeight(20 * s)
        body.addWidget(self.table, 1)
        self.note = sentence("", "soft")
        body.addWidget(self.note)

    def show_book(self, *, same: bool = False) -> None:
        """Another book, or the same one after an edit."""
        book = self._desk.book
        years = {row.date[:4] for row in book.pollinations.values() if row.date} if book else set()
        held = self.year.currentData() if same else ""
        self.year.blockSignals(True)
        self.year.clear()
        self.year.addItem(self.tr("all years"), "")
        for year in sorted(years, reverse=True):
            self.year.addItem(year, year)
        self.year.setCurrentIndex(max(0, self.year.findData(held)))
        self.year.blockSignals(False)
        self._ask()

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self._heights()

    def _ask(self) -> None:
        book = self._desk.book
        if book is None:
            self._errands.drop(_TAKES)
            self.table.setRowCount(0)
            return
        grouping, year = str(self.grouping.currentData()), str(self.year.currentData() or "")

        def work() -> list[tuple[TakeRow, TakeInterval]]:
            from pedigreeview.planning.take_intervals import take_interval

            found = takes_by(book, grouping, year=year)
            return [(row, take_interval(row.fruits, row.flowers)) for row in found]

        self._errands.ask(_TAKES, work, self._came)

    def _came(self, found: list[tuple[TakeRow, TakeInterval]]) -> None:
        self.table.setRowCount(len(found))
        for at, (row, interval) in enumerate(found):
            self._row(at, row, interval)
        self._heights()
        if found:
            self.table.setCurrentCell(0, 0)
        flowers = sum(row.flowers for row, _ in found)
        fruits = sum(row.fruits for row, _ in found)
        left_out = sum(row.left_out for row, _ in found)
        self.shown.setText(
            self.tr("{} of {} flowers took").format(number(fruits), number(flowers))
            if flowers
            else ""
        )
        parts = []
        if not found:
            parts.append(
                self.tr(
                    "No pollination is recorded here. Write pollinations down with their flowers, "
                    "and later the fruits set: how often they take is then shown by parent, "
                    "direction, person and cover."
                )
            )
        else:
            parts.append(
                self.tr(
                    "Likely: the takes that may lie behind so few flowers (exact 95% interval); "
                    "the mark on the bar is the take itself, a grey bar too wide to tell. Flowers "
                    "of one plant on one day are not independent, so even that is a guide. Enter "
                    "shows the cross on the board."
                )
            )
        if left_out == 1:
            parts.append(self.tr("1 pollination lacks its flowers or its fruits and is left out."))
        elif left_out:
            parts.append(
                self.tr(
                    "{} pollinations lack their flowers or their fruits and are left out."
                ).format(left_out)
            )
        self.note.setText(" ".join(parts))

    def _row(self, at: int, row: TakeRow, interval: TakeInterval) -> None:
        take = row.take
        few = interval.too_few
        span = self.tr("{} to {}%").format(
            f"{100 * interval.low:.0f}", f"{100 * interval.high:.0f}"
        )
        said = self.tr("{}, too few to tell").format(span) if few else span
        cells = (
            group_word(row.group),
            self.tr("{} of {}").format(number(row.fruits), number(row.flowers))
            if row.flowers
            else self.tr("not counted"),
            "" if take is None else f"{100 * take:.0f}%",
            "" if take is None else said,
            "",
            self._pollinations(row),
            ", ".join(row.crosses[:3]) + (" …" if len(row.crosses) > 3 else ""),
        )
        for column_at, text in enumerate(cells):
            item = QTableWidgetItem(text)
            if column_at in (1, 2):
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            if column_at == _BAR:
                item.setToolTip(said if take is not None else self.tr("no flowers counted"))
                item.setData(Qt.ItemDataRole.AccessibleTextRole, item.toolTip())
                if take is not None:
                    item.setData(_RANGE, (interval.low, take, interval.high, few))
            if column_at == 6:
                item.setToolTip(", ".join(row.crosses[:60]))
            self.table.setItem(at, column_at, item)
        if few and take is not None:
            share = self.table.item(at, 2)
            if share is not None:
                share.setForeground(current().soft)
                share.setToolTip(self.tr("Too few flowers to tell."))

    def _pollinations(self, row: TakeRow) -> str:
        if not row.left_out:
            return number(row.pollinations)
        return self.tr("{}, {} left out").format(number(row.pollinations), number(row.left_out))

    def _heights(self) -> None:
        header = self.table.verticalHeader()
        header.setDefaultSectionSize(self.fontMetrics().height() + 2 * step())

    def _open(self, item: QTableWidgetItem) -> None:
        crosses = self.table.item(item.row(), 6)
        code = crosses.toolTip().partition(", ")[0] if crosses is not None else ""
        if code:
            self.cross_wanted.emit(code)
