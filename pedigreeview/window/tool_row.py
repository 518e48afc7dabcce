"""The tools above the picture: one row; what does not fit goes into a menu at its end."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QMenu,
    QSizePolicy,
    QSpinBox,
    QToolButton,
    QWidget,
)

from pedigreeview.window.labels import LinkLabel, keeps_ctrl_e, plain_button, set_apart
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.style import step

__all__ = ["DepthSpin", "Tools"]


class DepthSpin(QSpinBox):
    """How many generations are shown one way."""

    def __init__(self, name: str, value: int) -> None:
        super().__init__()
        self.setRange(0, 30)
        self.setValue(value)
        self.setAccessibleName(name)
        self.setToolTip(name)
        self.setKeyboardTracking(False)
        set_apart(self)

    def event(self, event: QEvent) -> bool:
        return keeps_ctrl_e(event) or super().event(event)


class Tools(QWidget):
    """The row.  Tools are set out by rank: the last ones are the first to go into the menu."""

    def __init__(self, preferences: Preferences) -> None:
        super().__init__()
        s = step()
        self.index = self._button(self.tr("Index"), self.tr("Pull out the index"), checkable=True)
        self.up = DepthSpin(self.tr("Generations up"), preferences.generations_up)
        self.down = DepthSpin(self.tr("Generations down"), preferences.generations_down)
        self.further = self._button("−", self.tr("Further"))
        self.fit = self._button("", "")
        self.say_fit(all_next=False)
        self.nearer = self._button("+", self.tr("Nearer"))
        self.zoom = _joined(self.further, self.fit, self.nearer)
        self.whole = self._button(
            self.tr("Whole book"),
            self.tr("Show the whole book, or the focus again"),
            checkable=True,
        )
        self.sideways = self._button(
            self.tr("Sideways"),
            self.tr("Generations from left to right, or top to bottom again"),
            checkable=True,
        )
        self.key = self._button(
            self.tr("Key"), self.tr("What the signs of the picture mean"), checkable=True
        )
        self.ways, self.ways_menu = self._with_menu(
            self.tr("Look at …"), self.tr("Other ways of looking at the pedigree")
        )
        self.shades = self._button(
            self.tr("Tint and filter"),
            self.tr("Tint plants by a number or a trait; fade or fold away what does not fit"),
            checkable=True,
        )
        self.marks, self.marks_menu = self._with_menu(
            self.tr("Bookmarks"), self.tr("Named places in this book")
        )
        self.trail = LinkLabel("", "soft")
        self.trail.setAccessibleName(self.tr("Plants visited"))
        self.trail.setWordWrap(False)
        self.trail.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.more = plain_button("⋯", self.tr("More tools"))
        self.more.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self._menu = QMenu(self)
        self._menu.aboutToShow.connect(self._fill)
        self.more.setMenu(self._menu)
        self._depths = (
            (_captioned(self.tr("Generations up"), self.up), self.up),
            (_captioned(self.tr("down"), self.down), self.down),
        )
        deep, low = (holder for holder, _ in self._depths)
        self.items: tuple[QWidget, ...] = (
            self.index,
            deep,
            low,
            self.zoom,
            self.whole,
            self.ways,
            self.shades,
            self.marks,
            self.sideways,
            self.key,
            self.trail,
        )
        self._last_out: tuple[QWidget, ...] = (
            self.trail,
            self.sideways,
            self.marks,
            self.key,
            self.whole,
            self.zoom,
            self.shades,
            self.ways,
            low,
            deep,
        )
        """The tools in the order in which they leave the row."""
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(s)
        for item in self.items:
            row.addWidget(item)
        row.addWidget(self.more)
        row.addStretch(1)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def _button(self, text: str, name: str, *, checkable: bool = False) -> QToolButton:
        button = plain_button(text, name)
        button.setCheckable(checkable)
        return button

    def _with_menu(self, text: str, name: str) -> tuple[QToolButton, QMenu]:
        button = plain_button(text, name)
        button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        button.setProperty("caret", True)
        menu = QMenu(button)
        button.setMenu(menu)
        return button, menu

    def offer(self, plants: bool) -> None:
        """Let the tools be used that do something: none in a book without plants."""
        for item in self.items:
            item.setEnabled(plants)

    def say_fit(self, all_next: bool) -> None:
        """Say what the next press of Fit does.

        all_next : it shows all of the picture, whether its codes can be read or not
        """
        if all_next:
            text = self.tr("Fit all")
            name = self.tr("Show all of the picture, though its codes are too small to read")
        else:
            text = self.tr("Fit")
            name = self.tr("Show as much of the picture as its codes can be read in")
        self.fit.setText(text)
        self.fit.setAccessibleName(name)
        self.fit.setToolTip(name)
        self.arrange()

    def set_trail(self, html: str) -> None:
        """Show the plants visited, as far as there is room for all of them."""
        self.trail.setText(html)
        self.arrange()

    def minimumSizeHint(self) -> QSize:
        return QSize(8 * step(), self._height())

    def sizeHint(self) -> QSize:
        return QSize(60 * step(), self._height())

    def _height(self) -> int:
        return max(self.index.sizeHint().height(), self.up.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.arrange()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self.updateGeometry()
            self.arrange()

    def arrange(self) -> None:
        """Keep as many tools in the row as fit."""
        layout = self.layout()
        if layout is None:
            return
        gap = step()
        layout.setSpacing(gap)
        widths = {item: item.sizeHint().width() + gap for item in self.items}
        kept = set(self.items)
        if not self.trail.text():
            kept.discard(self.trail)
        for item in self._last_out:
            out = [held for held in self.items if held not in kept and held is not self.trail]
            more = self.more.sizeHint().width() + gap if out else 0
            if sum(widths[held] for held in kept) + more <= self.width():
                break
            kept.discard(item)
        for item in self.items:
            item.setVisible(item in kept)
        self.more.setVisible(any(i not in kept for i in self.items if i is not self.trail))

    def left_out(self) -> list[str]:
        """What the menu at the end offers now."""
        self._fill()
        return [action.text() for action in self._menu.actions()]

    def _fill(self) -> None:
        self._menu.clear()
        parts = (self.further, self.fit, self.nearer)
        held: list[QWidget] = []
        for item in self.items:
            if item.isHidden() and item is not self.trail:
                held += parts if item is self.zoom else (item,)
        for item in held:
            if isinstance(item, QToolButton) and item.menu() is not None:
                inner = self._menu.addMenu(item.text())
                inner.aboutToShow.connect(partial(self._fill_inner, inner, item.menu()))
            elif isinstance(item, QToolButton):
                text = item.accessibleName() if len(item.text()) < 3 else item.text()
                action = self._menu.addAction(text)
                action.setCheckable(item.isCheckable())
                action.setChecked(item.isChecked())
                action.triggered.connect(lambda _=False, item=item: item.click())
        for item, spin in self._depths:
            if item.isHidden():
                self._add(self.tr("{}: one more").format(spin.accessibleName()), spin.stepUp)
                self._add(self.tr("{}: one fewer").format(spin.accessibleName()), spin.stepDown)

    @staticmethod
    def _fill_inner(inner: QMenu, menu: QMenu) -> None:
        """What a button's own menu offers, in the menu at the end of the row."""
        menu.aboutToShow.emit()
        inner.clear()
        inner.addActions(menu.actions())

    def _add(self, text: str, act: Callable[[], object]) -> None:
        self._menu.addAction(text).triggered.connect(lambda: act())


def _joined(*buttons: QToolButton) -> QWidget:
    """Buttons side by side without a gap, as the segments of one."""
    holder = QWidget()
    layout = QHBoxLayout(holder)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(0)
    for at, button in enumerate(buttons):
        place = "first" if at == 0 else "last" if at == len(buttons) - 1 else "middle"
        button.setProperty("segment", place)
        layout.addWidget(button)
    return holder


def _captioned(text: str, widget: QWidget) -> QWidget:
    holder = QWidget()
    layout = QHBoxLayout(holder)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(max(2, step() // 2))
    label = QLabel(text)
    label.setBuddy(widget)
    layout.addWidget(label, 0, Qt.AlignmentFlag.AlignVCenter)
    layout.addWidget(widget)
    return holder
