"""The few parts that all pages are set with: headings, sentences, links, rules and buttons."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, QEvent, QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import (
    QFontMetrics,
    QGuiApplication,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLayout,
    QLayoutItem,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.window.saying import say
from pedigreeview.window.style import step
from pedigreeview.window.words import code_of_link, page_of_link

__all__ = [
    "ElidedButton",
    "Flow",
    "LinkLabel",
    "Said",
    "SearchField",
    "action_button",
    "clear",
    "column",
    "dialog_foot",
    "heading",
    "keeps_ctrl_e",
    "plain_button",
    "rule",
    "say_in",
    "scrolled",
    "sentence",
    "set_apart",
    "set_measure",
    "why_button",
]


class Said(QLabel):
    """A label whose text may come from a layer that speaks English alone."""

    def __init__(self, text: str = "") -> None:
        super().__init__(say(text))

    def setText(self, text: str) -> None:
        super().setText(say(text))


def _label(text: str, role: str) -> QLabel:
    label = Said(text)
    label.setProperty("role", role)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    return label


def heading(text: str, level: int = 1) -> QLabel:
    """A heading; level 1 to 3."""
    return _label(text, f"heading{level}")


def sentence(text: str, role: str = "text") -> QLabel:
    """Running text that wraps and can be copied; role 'text', 'soft', 'number' or 'fault'."""
    label = _label(text, role)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label


def say_in(label: QLabel, text: str, role: str) -> None:
    """Let a label say something else, in the look of another role."""
    label.setText(text)
    label.setProperty("role", role)
    label.style().unpolish(label)
    label.style().polish(label)


class LinkLabel(QLabel):
    """Text with links to plants, reached by mouse and by keys."""

    followed = Signal(str)
    """The code that was asked for."""
    page_wanted = Signal(str)
    """The page of the window that was asked for."""
    pointed = Signal(str)
    """The code under the mouse, or ''."""

    def __init__(self, html: str = "", role: str = "text") -> None:
        super().__init__(html)
        self.setProperty("role", role)
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setWordWrap(True)
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.LinksAccessibleByMouse
            | Qt.TextInteractionFlag.LinksAccessibleByKeyboard
        )
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.linkActivated.connect(self._follow)
        self.linkHovered.connect(lambda address: self.pointed.emit(code_of_link(address)))
        self._hue = QGuiApplication.palette().link().color()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        hue = QGuiApplication.palette().link().color()
        if event.type() == QEvent.Type.StyleChange and hue != getattr(self, "_hue", hue):
            # The colour of links is laid down with the text.
            self._hue, text = hue, self.text()
            self.setText("")
            self.setText(text)

    def _follow(self, address: str) -> None:
        code, page = code_of_link(address), page_of_link(address)
        if code:
            self.followed.emit(code)
        elif page:
            self.page_wanted.emit(page)


def keeps_ctrl_e(event: QEvent) -> bool:
    """Whether it asks if a field takes Ctrl+E: it shall not, that key is the window's."""
    if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
        control = event.modifiers() == Qt.KeyboardModifier.ControlModifier
        if control and event.key() == Qt.Key.Key_E:
            event.ignore()
            return True
    return False


class SearchField(QLineEdit):
    """A field to search by; Esc empties it and leaves it."""

    left = Signal()
    """Esc was pressed."""

    def __init__(self, hint: str, name: str) -> None:
        super().__init__()
        self.setPlaceholderText(hint)
        self.setAccessibleName(name)
        self.setClearButtonEnabled(True)

    def event(self, event: QEvent) -> bool:
        return keeps_ctrl_e(event) or super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.clear()
            self.left.emit()
            return
        super().keyPressEvent(event)


class ElidedButton(QPushButton):
    """A flat button whose text ends in '…' where there is no room; its tip holds the whole."""

    def __init__(self, text: str = "") -> None:
        super().__init__()
        self._full = ""
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.set_full_text(text)

    def set_full_text(self, text: str) -> None:
        """The text to show as far as it fits."""
        text = say(text)
        self._full = text
        self.setToolTip(text.strip())
        self.setAccessibleName(text.strip())
        self._elide()

    def full_text(self) -> str:
        """The whole text."""
        return self._full

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._elide()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._elide()

    def _elide(self) -> None:
        metrics = QFontMetrics(self.font())
        room = max(0, self.width() - round(1.5 * metrics.height()))
        self.setText(metrics.elidedText(self._full, Qt.TextElideMode.ElideRight, room))


class _Rule(QWidget):
    def __init__(self) -> None:
        super().__init__()
        self.setFixedHeight(1)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.fillRect(self.rect(), self.palette().mid())
        finally:
            painter.end()


def rule() -> QWidget:
    """A hair line across."""
    return _Rule()


def action_button(text: str, on_click: Callable[[], object], *, main: bool = False) -> QPushButton:
    """A button in words; the main one of its dialog or page is filled."""
    button = QPushButton(text)
    button.setProperty("role", "main" if main else "quiet")
    button.setCursor(Qt.CursorShape.PointingHandCursor)
    button.clicked.connect(lambda: on_click())
    return button


def dialog_foot(dialog: QDialog, main: QPushButton) -> QHBoxLayout:
    """The row at the foot of a dialog: Cancel, and at the other end what it does, also on Enter."""
    row = QHBoxLayout()
    cancel = QCoreApplication.translate("Labels", "Cancel")
    row.addWidget(action_button(cancel, dialog.reject))
    row.addStretch(1)
    main.setDefault(True)
    row.addWidget(main)
    return row


def plain_button(text: str, name: str, on_click: Callable[[], object] | None = None) -> QToolButton:
    """A small button with a sign for text; `name` says what it does, also to a screen reader."""
    button = QToolButton()
    button.setText(text)
    button.setAccessibleName(name)
    button.setToolTip(name)
    if on_click is not None:
        button.clicked.connect(lambda: on_click())
    return button


class _WhyButton(QToolButton):
    """As wide as its text, so that it ends where its column ends."""

    def sizeHint(self) -> QSize:
        metrics = QFontMetrics(self.font())
        return QSize(metrics.horizontalAdvance(self.text()) + 2, metrics.height() + 4)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()


def set_apart(box: QAbstractSpinBox) -> None:
    """Keep a number off the edge of its field; a style sheet alone cannot."""
    box.lineEdit().setTextMargins(step(), 0, 0, 0)


def why_button(name: str) -> QToolButton:
    """'Why?' beside a number; it opens what the number rests on."""
    button = _WhyButton()
    button.setText(QCoreApplication.translate("Labels", "Why?"))
    button.setAccessibleName(name)
    button.setToolTip(name)
    button.setProperty("role", "why")
    button.setCheckable(True)
    button.setCursor(Qt.CursorShape.PointingHandCursor)
    return button


def column(spacing: int = 0, margin: int = 0) -> QVBoxLayout:
    """An upright layout with one spacing and one margin."""
    layout = QVBoxLayout()
    layout.setSpacing(spacing)
    layout.setContentsMargins(margin, margin, margin, margin)
    return layout


def scrolled(inner: QWidget) -> QScrollArea:
    """The widget in a frame that scrolls up and down only."""
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setWidget(inner)
    return area


def set_measure(layout: QLayout, width: int, edge: int) -> None:
    """Keep running text to a line that can be read: what is wider becomes margin."""
    side = max(edge, (width - 132 * step()) // 2)
    layout.setContentsMargins(side, edge, side, edge)


def clear(layout: QLayout) -> None:
    """Take everything out of a layout."""
    while (item := layout.takeAt(0)) is not None:
        widget, inner = item.widget(), item.layout()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
        elif inner is not None:
            clear(inner)


class Flow(QLayout):
    """Items side by side that run on to the next line where there is no room."""

    def __init__(self, spacing: int) -> None:
        super().__init__()
        self._held: list[QLayoutItem] = []
        self.setSpacing(spacing)
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        self._held.append(item)

    def count(self) -> int:
        return len(self._held)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._held[index] if 0 <= index < len(self._held) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._held.pop(index) if 0 <= index < len(self._held) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self._place(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._place(rect, move=True)

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        size = QSize()
        for item in self._held:
            size = size.expandedTo(item.minimumSize())
        return size

    def _place(self, rect: QRect, *, move: bool) -> int:
        x, y, line = rect.x(), rect.y(), 0
        for item in self._held:
            widget = item.widget()
            if widget is not None and widget.isHidden():
                continue
            hint = item.sizeHint()
            width = min(hint.width(), rect.width()) if rect.width() > 0 else hint.width()
            height = item.heightForWidth(width) if item.hasHeightForWidth() else hint.height()
            if x > rect.x() and x + width > rect.x() + rect.width():
                x, y, line = rect.x(), y + line + self.spacing(), 0
            if move:
                item.setGeometry(QRect(QPoint(x, y), QSize(width, height)))
            x += width + self.spacing()
            line = max(line, height)
        return y + line - rect.y()
