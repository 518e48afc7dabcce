"""What is half typed when a book is closed: kept with the person's preferences, laid out again.

Forms on the bench, a value or a note on a card, scores that were not taken, garden sheets typed in
halfway, reasons on the Checks page: none of it is in the book yet, and none of it is lost.  It is
put down every few seconds as well, so that a power cut costs no more than the last words.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QObject, QTimer, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QAbstractItemView, QApplication, QFrame, QHBoxLayout, QWidget

from pedigreeview.window.labels import Flow, action_button, column, plain_button, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["Unfinished", "UnfinishedStrip", "leave_cell"]

_EVERY = 4000
"""Milliseconds after which what is half typed is put down."""
_SHOWN = 4
"""Places that are offered as buttons."""


def leave_cell(window: QWidget) -> None:
    """Take the cell that is being typed into, as leaving it by any key would."""
    held = window.focusWidget()
    above = held.parentWidget() if held is not None else None
    while above is not None:
        if isinstance(above, QAbstractItemView):
            assert held is not None
            held.clearFocus()
            if above.state() == QAbstractItemView.State.EditingState:
                # A window that is not the active one has no focus to lose.
                QApplication.sendEvent(held, QFocusEvent(QEvent.Type.FocusOut))
            return
        above = above.parentWidget()


class UnfinishedStrip(QFrame):
    """Says what was being written when the book was closed, and leads there."""

    wanted = Signal(str, str)
    """A page, and the part of it where something waits."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("strip")
        s = step()
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * s, s // 2, s, s // 2)
        row.setSpacing(2 * s)
        held = column(max(2, s // 2))
        self.text = sentence("")
        held.addWidget(self.text)
        self._ways = QWidget()
        self._ways.setLayout(Flow(s))
        held.addWidget(self._ways)
        row.addLayout(held, 1)
        row.addWidget(plain_button("✕", self.tr("Put this line away"), self.hide))
        self.buttons: list[QWidget] = []
        self.hide()

    def show_places(self, forms: list[str], places: list[tuple[str, str, str]]) -> None:
        """Say what is laid out again.

        Parameters
        ----------
        forms : names of the forms that lie on the bench again
        places : page, part and name of what waits on a page
        """
        for button in self.buttons:
            button.hide()
            button.deleteLater()
        self.buttons = []
        names = [*forms, *(name for _, _, name in places)]
        # A form on the bench says it by itself; two of them hide one another.
        self.setVisible(bool(places) or len(forms) > 1)
        if not names:
            return
        self.text.setText(
            self.tr("You were writing this when the book was closed: {}.").format(", ".join(names))
        )
        layout = self._ways.layout()
        assert layout is not None
        for page, part, name in places[:_SHOWN]:
            act: Callable[[], None] = lambda page=page, part=part: self.wanted.emit(page, part)  # type: ignore[misc]  # noqa: E731
            button = action_button(self.tr("Show {}").format(name), act)
            layout.addWidget(button)
            self.buttons.append(button)
        self._ways.setVisible(bool(places))


class Unfinished(QObject):
    """Keeps what is half typed in the book that lies open."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._put_down: dict[str, Any] = {}
        self._timer = QTimer(self)
        self._timer.setInterval(_EVERY)
        self._timer.timeout.connect(self.keep)

    @property
    def _path(self) -> Path | None:
        """The book that can be written in; one that is only read keeps what it has."""
        opened = self._window.opened
        if opened is None or (opened.file is not None and opened.file.read_only):
            return None
        return opened.path

    def collect(self) -> dict[str, Any]:
        """All that is half typed, as it can be stored."""
        window = self._window
        forms = [[form.opened_as, form.unfinished()] for form in window.bench.forms()]
        found: dict[str, Any] = {}
        typed = [one for one in forms if one[0] and one[1]]
        if typed:
            found["forms"] = typed
        pages = {
            name: page.unfinished()
            for name, page in window.book_pages.items()
            # What is typed on such a page is of the book before.
            if not page.of_another
        }
        held = {name: one for name, one in pages.items() if one}
        if held:
            found["pages"] = held
        return found

    def keep(self) -> None:
        """Put down what is half typed in the book that lies open."""
        path = self._path
        if path is None:
            return
        found, preferences = self.collect(), self._window.preferences
        # Another window on the same book may have put down, or left, what is typed here too.
        if found != self._put_down or (found and found != preferences.unfinished(path)):
            self._put_down = found
            preferences.set_unfinished(path, found)

    def leave(self) -> None:
        """The book is put away: keep what is half typed, after the cell that is typed into."""
        leave_cell(self._window)
        self.keep()
        self._timer.stop()
        self._put_down = {}
        self._window.unfinished_strip.hide()

    def lay_out(self, *, forms: bool = True) -> None:
        """A book has come: lay out again what was half typed in it.

        forms : False where the bench was not emptied, since a table became a book
        """
        window, path = self._window, self._path
        if path is None:
            return
        self._timer.start()
        stored = window.preferences.unfinished(path)
        self._put_down = dict(stored)
        names = self._lay_forms(stored.get("forms")) if forms and window.desk.can_write else []
        places: list[tuple[str, str, str]] = []
        pages = stored.get("pages")
        for name, held in pages.items() if isinstance(pages, dict) else ():
            page = window.book_pages.get(name)
            if page is not None and isinstance(held, dict):
                page.catch_up()
                places += [(name, part, text) for text, part in page.take_up(held)]
        window.unfinished_strip.show_places(names, places)

    def _lay_forms(self, stored: object) -> list[str]:
        names = []
        for entry in stored if isinstance(stored, list) else ():
            match entry:
                case [str(name), dict(typed)]:
                    texts = {str(key): str(value) for key, value in typed.items()}
                    if self._window.writing.take_up(name, texts) is not None:
                        names.append(self._window.writing.words_of(name))
        return names
