"""What all parts of the Judging page share: a book, questions to it, an empty state, a reason."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QLabel,
    QLayout,
    QSizePolicy,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.window.answers import Reason
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.figure import Figure
from pedigreeview.window.labels import (
    Flow,
    action_button,
    clear,
    column,
    heading,
    scrolled,
    sentence,
    set_measure,
)
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Beside", "Choice", "JudgingPanel", "Write", "field_row", "figure"]

Write = Callable[..., None]


def figure(
    name: str, key: str, text: str, words: str, reason: Reason, body: QWidget | None = None
) -> Figure:
    """A number with its 'Why?', whose answer is at hand."""
    made = Figure(name, key, text, words, body)
    made.why_wanted.connect(lambda: made.panel.show_reason(reason))
    return made


def field_row(fields: Sequence[tuple[str, QWidget]]) -> QLayout:
    """Named fields side by side, running on to the next line where there is no room."""
    s = step()
    row = Flow(2 * s)
    for name, field in fields:
        holder = QWidget()
        part = column(max(2, s // 3))
        holder.setLayout(part)
        label = QLabel(name)
        label.setProperty("role", "caption")
        label.setBuddy(field)
        part.addWidget(label)
        part.addWidget(field)
        if not field.accessibleName():
            field.setAccessibleName(name.replace("&", ""))
        row.addWidget(holder)
    return row


class Choice(QComboBox):
    """A list to choose from, wide enough for what it holds but not for every page."""

    picked = Signal()
    """The person chose another; not sent while the list is filled."""

    def __init__(self, name: str, wide: int = 40) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._wide = wide
        self.setMaxVisibleItems(18)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.fit()
        self.activated.connect(lambda _: self.picked.emit())

    def fit(self, room: int = 10_000) -> None:
        """As wide as the size of the text asks for, within the room."""
        self.setFixedWidth(min(self._wide * step(), max(room, 12 * step())))
        self.view().setMinimumWidth(self.width())

    def offer(self, items: Sequence[tuple[str, Any]], wanted: Any = None) -> None:
        """Fill the list; `wanted` stays chosen where it is still there."""
        held = self.currentData() if wanted is None else wanted
        self.blockSignals(True)
        self.clear()
        for text, data in items:
            self.addItem(text, data)
        at = next((at for at, (_, data) in enumerate(items) if data == held), 0)
        self.setCurrentIndex(at if items else -1)
        self.blockSignals(False)


class JudgingPanel(QWidget):
    """One part of the page: choices above, what was found below."""

    plant_wanted = Signal(str)
    picked = Signal(object)
    NAME = ""

    def __init__(self, errands: Errands, desk: Desk, write: Write | None) -> None:
        super().__init__()
        self._errands, self._desk, self._write = errands, desk, write
        self._net: PedigreeNetwork | None = None
        self._stale = True
        self._picked: tuple[str, ...] = ()
        self._marked = ""
        self._kinds: set[str] = set()
        outer = column()
        self.setLayout(outer)
        inner = QWidget()
        self._page = column(2 * step())
        inner.setLayout(self._page)
        self.area = scrolled(inner)
        outer.addWidget(self.area)
        self.choices = QWidget()
        self.body = column(2 * step())
        self._build()
        self._page.addWidget(self.choices)
        self._page.addLayout(self.body)
        self._page.addStretch(1)

    # For each part to fill in -------------------------------------------------------------------

    def _build(self) -> None:
        """Lay the choices out in `self.choices`, after the heading."""

    def _start(self) -> None:
        """Another book, or the same after an edit: ask what there is to choose from."""

    # The book -----------------------------------------------------------------------------------

    def show_net(self, net: PedigreeNetwork | None) -> None:
        """Another book; it is asked when the part is looked at."""
        self._net, self._stale = net, True
        if net is None:
            clear(self.body)
        elif self.isVisible():
            self._load()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._load()

    def _load(self) -> None:
        if self._net is not None and self._stale:
            self._stale = False
            self._start()

    def mark(self, code: str) -> None:
        """The plant that the window is at."""
        self._marked = code

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants picked on another page."""
        self._picked = codes

    def go_to(self, what: str) -> None:
        """Show what is asked for, such as a cross or a line."""

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        set_measure(self._page, self.width(), 3 * step())
        for choice in self.findChildren(Choice):
            choice.fit(self.width() - 8 * step())

    # Asking and telling -------------------------------------------------------------------------

    def _ask(
        self, what: str, function: Callable[[], Any], on_answer: Callable[[Any], None]
    ) -> None:
        """A question off the window's thread; a newer one of the same name takes its place."""
        kind = f"judge_{self.NAME}_{what}"
        self._kinds.add(kind)
        self._errands.ask(kind, function, on_answer, self._failed)

    def forget(self) -> None:
        """Await nothing any more: the part is put away."""
        for kind in self._kinds:
            self._errands.drop(kind)

    def _waiting(self, text: str) -> None:
        clear(self.body)
        self.body.addWidget(sentence(text, "soft"))

    def _failed(self, fault: Fault) -> None:
        clear(self.body)
        self.body.addWidget(sentence(fault.sentence(), "warn"))

    def _head(self, title: str, text: str) -> None:
        """Title and purpose of the part, above its choices."""
        part = column(step() // 2)
        part.addWidget(heading(title, 2))
        part.addWidget(sentence(text, "soft"))
        self._page.addLayout(part)

    def _nothing(self, title: str, text: str, ways: Sequence[tuple[str, str]] = ()) -> None:
        """An empty state: what is missing, how to enter it, with buttons to the forms.

        ways : words of a button and the name of its form
        """
        self.choices.hide()
        clear(self.body)
        self.body.addWidget(heading(title, 3))
        self.body.addWidget(sentence(text))
        write = self._write
        if write is not None and ways:
            row = Flow(step())
            for at, (words, form) in enumerate(ways):
                row.addWidget(action_button(words, _opens(write, form), main=at == 0))
            self.body.addLayout(row)

    def _rule_line(self, text: str) -> QLabel:
        """The line below a table that says what it rests on."""
        return sentence(text, "soft")


def _opens(write: Write, form: str) -> Callable[[], None]:
    return lambda: write(form)


class Beside(QWidget):
    """Widgets side by side, each with the same share of the width; one below the other if narrow.

    Parameters
    ----------
    least : steps of the grid that each of them needs
    """

    def __init__(self, *widgets: QWidget, least: int = 36) -> None:
        super().__init__()
        self._least = least * len(widgets)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(3 * step())
        self.setLayout(self._row)
        for widget in widgets:
            self._row.addWidget(widget, 1, Qt.AlignmentFlag.AlignTop)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        way = QBoxLayout.Direction
        wide = self.width() >= self._least * step()
        self._row.setDirection(way.LeftToRight if wide else way.TopToBottom)
