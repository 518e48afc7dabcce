"""One column of the board: crosses of a stage as tags in a list, with keys, drag and drop.

A tag shows the cross in the trade's order and the last count that is known of it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QByteArray,
    QMimeData,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import (
    QContextMenuEvent,
    QDragEnterEvent,
    QDragMoveEvent,
    QDropEvent,
    QFocusEvent,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QPainter,
    QPainterPath,
    QPen,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QLabel,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
)

from pedigreeview.book.board import BoardCard
from pedigreeview.window.labels import column
from pedigreeview.window.style import current, step
from pedigreeview.window.words import count, number

__all__ = ["BoardColumn", "card_counts", "card_pair"]

_MIME = "application/x-pedigreeview-cross"
_EDGES = 3.2
"""Steps of the grid beside the words of a tag: its edges, its hole, its margins."""
_Index = QModelIndex | QPersistentModelIndex
_CARD = Qt.ItemDataRole.UserRole + 1


def card_pair(card: BoardCard) -> str:
    """'TP × BA', 'TP ⊗', 'TP ○': the cross of a card, seed parent first."""
    seed = card.seed_parent or "?"
    if card.pollen_parent and card.pollen_parent == card.seed_parent:
        return f"{seed} ⊗"
    return f"{seed} × {card.pollen_parent}" if card.pollen_parent else f"{seed} ○"


def _pair_lines(card: BoardCard, metrics: QFontMetricsF, room: float) -> list[str]:
    """The cross of a card, on two lines where one is too short."""
    pair = card_pair(card)
    if metrics.horizontalAdvance(pair) <= room or " × " not in pair:
        return [pair]
    seed, _, pollen = pair.partition(" × ")
    return [f"{seed} ×", pollen]


class _Model(QAbstractListModel):
    """The cards of one stage."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.cards: tuple[BoardCard, ...] = ()

    def show_cards(self, cards: Sequence[BoardCard]) -> None:
        self.beginResetModel()
        self.cards = tuple(cards)
        self.endResetModel()

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.cards)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        card = self.cards[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return card.cross
        if role == _CARD:
            return card
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            parts = (card.cross, card_pair(card), *card_counts(self, card))
            return ", ".join(dict.fromkeys(parts))
        return None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        held = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return held | Qt.ItemFlag.ItemIsDragEnabled if index.isValid() else held

    def mimeTypes(self) -> list[str]:
        return [_MIME]

    def mimeData(self, indexes: Sequence[QModelIndex]) -> QMimeData:
        made = QMimeData()
        codes = "\n".join(self.cards[index.row()].cross for index in indexes)
        made.setData(_MIME, QByteArray(codes.encode("utf-8")))
        return made


def card_counts(of: QObject, card: BoardCard) -> list[str]:
    """What is counted of a cross, the latest stage first."""
    tr = of.tr
    found = []
    if card.ended:
        found.append(
            {
                "skipped": tr("skipped"),
                "no take": tr("no flower took"),
                "dropped": tr("every fruit dropped"),
            }[card.ended]
        )
    if card.plants:
        found.append(count(card.plants, tr("plant"), tr("plants")))
    if card.up is not None or card.sown is not None:
        up = "?" if card.up is None else number(card.up)
        sown = "?" if card.sown is None else number(card.sown)
        found.append(tr("{} up of {} sown").format(up, sown))
    if card.left:
        found.append(tr("{} seeds left").format(number(card.left)))
    elif card.seeds is not None:
        found.append(count(card.seeds, tr("seed"), tr("seeds")))
    if card.fruits_set is not None or card.flowers is not None:
        flowers = "?" if card.flowers is None else number(card.flowers)
        if card.fruits_set is None:
            found.append(tr("{} flowers").format(flowers))
        else:
            found.append(tr("{} set of {} flowers").format(number(card.fruits_set), flowers))
    return found


class _Tag(QStyledItemDelegate):
    """Paints a card as a seed tag on paper: hole, code, parents, the last count."""

    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        held: Any = option
        s, line = step(), held.fontMetrics.height()
        view = self.parent()
        assert isinstance(view, _List)
        model = view.model()
        assert isinstance(model, _Model)
        metrics, room = QFontMetricsF(held.font), view.viewport().width() - _EDGES * s
        lines = max((len(_pair_lines(card, metrics, room)) for card in model.cards), default=1)
        return QSize(16 * s, (2 + lines) * line + round(1.8 * s))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        card: BoardCard = index.data(_CARD)
        held: Any = option
        colours, s = current(), step()
        view = self.parent()
        assert isinstance(view, QListView)
        marked = bool(held.state & QStyle.StateFlag.State_Selected) and view.hasFocus()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(held.rect).adjusted(s / 2, s / 2, -s / 2, 0)
        corner = s * 0.9
        path = QPainterPath()
        path.moveTo(box.left() + corner, box.top())
        path.lineTo(box.right(), box.top())
        path.lineTo(box.right(), box.bottom())
        path.lineTo(box.left() + corner, box.bottom())
        path.lineTo(box.left(), box.bottom() - corner)
        path.lineTo(box.left(), box.top() + corner)
        path.closeSubpath()
        painter.setBrush(colours.hover if marked else colours.paper)
        painter.setPen(QPen(colours.focus if marked else colours.rule, 2 if marked else 1))
        painter.drawPath(path)
        painter.setPen(QPen(colours.rule, 1))
        painter.setBrush(colours.window)
        hole = s * 0.28
        painter.drawEllipse(
            QRectF(box.left() + 0.8 * s - hole, box.center().y() - hole, 2 * hole, 2 * hole)
        )
        text = box.adjusted(1.6 * s, s * 0.5, -s * 0.6, -s * 0.4)
        metrics = held.fontMetrics
        pair = card_pair(card)
        parts = card_counts(view, card)
        strong = QFont(held.font)
        strong.setBold(True)
        lines = [(card.cross, strong, colours.ink)]
        if pair != card.cross:
            room = QFontMetricsF(held.font)
            pairs = _pair_lines(card, room, view.viewport().width() - _EDGES * s)
            lines += [(line, held.font, colours.ink) for line in pairs]
        lines.append((parts[0] if parts else "", held.font, colours.soft))
        y = text.top()
        for words, font, pen in lines:
            painter.setFont(font)
            painter.setPen(pen)
            shown = QFontMetricsF(font).elidedText(words, Qt.TextElideMode.ElideRight, text.width())
            painter.drawText(
                QRectF(text.left(), y, text.width(), metrics.height()),
                int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter),
                shown,
            )
            y += metrics.height()
        painter.restore()


class _List(QListView):
    """The tags of a column."""

    sideways = Signal(int)
    """To the column so many further."""
    moved = Signal(int)
    """The cross is to go so many stages on, by key."""
    dropped = Signal(object)
    """Crosses were dropped here, as a list of codes."""
    asked = Signal(object)
    """A menu is asked for at a place of the screen."""
    came_in = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, control = event.key(), event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            by = 1 if key == Qt.Key.Key_Right else -1
            (self.moved if control else self.sideways).emit(by)
            return
        if key == Qt.Key.Key_Delete and not control:
            self.moved.emit(0)
            return
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            index = self.currentIndex()
            if index.isValid():
                self.activated.emit(index)
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if not self.currentIndex().isValid() and self.model().rowCount():
            self.setCurrentIndex(self.model().index(0, 0))
        self.came_in.emit()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        index = self.currentIndex()
        if event.reason() == QContextMenuEvent.Reason.Mouse:
            index = self.indexAt(event.pos())
        if index.isValid():
            self.setCurrentIndex(index)
            self.setFocus()
            self.asked.emit(self.viewport().mapToGlobal(self.visualRect(index).bottomLeft()))

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        self._accept(event)

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        self._accept(event)

    def _accept(self, event: QDragMoveEvent) -> None:
        if event.mimeData().hasFormat(_MIME) and event.source() is not self:
            event.setDropAction(Qt.DropAction.MoveAction)
            event.accept()
        else:
            event.ignore()

    def dropEvent(self, event: QDropEvent) -> None:
        if event.mimeData().hasFormat(_MIME) and event.source() is not self:
            codes = bytes(event.mimeData().data(_MIME).data()).decode("utf-8").split("\n")
            # The cards come back by the edit; the view is not to move them by itself.
            event.setDropAction(Qt.DropAction.CopyAction)
            event.accept()
            self.dropped.emit([code for code in codes if code])


class BoardColumn(QFrame):
    """A stage with its name, its count and its tags."""

    def __init__(self, stage: str, title: str) -> None:
        super().__init__()
        self.stage, self.title = stage, title
        s = step()
        body = column(s // 2)
        self.setLayout(body)
        self.head = QLabel(title)
        self.head.setProperty("role", "heading3")
        self.head.setWordWrap(True)
        body.addWidget(self.head)
        self.number = QLabel("")
        self.number.setProperty("role", "soft")
        body.addWidget(self.number)
        self.list = _List()
        self.model = _Model(self.list)
        self.list.setModel(self.model)
        self.list.setItemDelegate(_Tag(self.list))
        self.list.setAccessibleName(title)
        self.list.setUniformItemSizes(True)
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setObjectName("boardColumn")
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setDragDropMode(QAbstractItemView.DragDropMode.DragDrop)
        self.list.setDefaultDropAction(Qt.DropAction.MoveAction)
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        body.addWidget(self.list, 1)

    def show_cards(self, cards: Sequence[BoardCard]) -> None:
        """The crosses of the stage."""
        self.model.show_cards(cards)
        held = len(cards)
        text = count(held, self.tr("cross"), self.tr("crosses")) if held else self.tr("none")
        self.number.setText(text)
        self.list.setAccessibleName(self.tr("{}: {}").format(self.title, text))

    def card(self) -> BoardCard | None:
        """The card under the keys."""
        index = self.list.currentIndex()
        return self.model.cards[index.row()] if index.isValid() else None

    def put(self, cross: str) -> bool:
        """Put the keys on a cross; False if it is not here."""
        for row, card in enumerate(self.model.cards):
            if card.cross == cross:
                self.list.setCurrentIndex(self.model.index(row, 0))
                self.list.scrollTo(self.model.index(row, 0))
                return True
        return False

    def fit(self, width: int) -> None:
        """So wide, whatever it holds."""
        self.setFixedWidth(width)
        self.list.scheduleDelayedItemsLayout()
