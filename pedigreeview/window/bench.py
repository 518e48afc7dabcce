"""The bench: the form that is being filled in, at the edge of the window, beside any page.

It stays while one moves about in the picture, so that a code can be looked up while writing.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QApplication, QFrame, QScrollArea, QWidget
from shiboken6 import isValid

from pedigreeview.window.forms.form import Form
from pedigreeview.window.labels import column
from pedigreeview.window.style import step

__all__ = ["Bench"]


class Bench(QFrame):
    """Holds one form at a time."""

    left = Signal()
    """The form was closed; the page takes the keys again."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("slip")
        self.form: Form | None = None
        self._below: list[Form] = []
        """Forms with something typed in them, the last one on top."""
        self._room, self._wide = 0, 46 * step()
        self._before: QWidget | None = None
        """Where the keys went before there was a form."""
        self._area = QScrollArea()
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        layout = column()
        self.setLayout(layout)
        layout.addWidget(self._area)
        self.hide()

    def lay(self, form: Form) -> None:
        """Lay a form on the bench.

        The one before is put away; one with something typed in it waits below, and comes back
        when the new one is closed.
        """
        held, self.form = self.form, None
        if held is None:
            self._before = QApplication.focusWidget()
        else:
            self._area.takeWidget()
            if held.touched():
                held.hide()
                held.setParent(self)
                self._below.append(held)
            else:
                held.put_away()
        form.closed.connect(partial(self._closed, form))
        self._show(form)
        form.book_changed()
        form.first_field().setFocus()

    def _show(self, form: Form) -> None:
        self.form = form
        self._area.setWidget(form)
        form.show()
        self.fit(self._room)
        self.show()

    def fit(self, room: int = 0) -> None:
        """As wide as the size of the text asks for, within the window.

        It gives way as far as its form can, and never makes the window wider than that: a wider
        window would ask for a wider bench again.
        """
        self._room = room
        wide = 46 * step()
        self._wide = min(wide, room * 4 // 10) if room else wide
        if self.form is not None:
            self.form.fit(self._wide - 2 * step())
        least = self.form.minimumSizeHint().width() + 3 * step() if self.form is not None else 0
        self.setMinimumWidth(min(self._wide, max(wide // 2, least)))
        self.setMaximumWidth(self._wide)
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        return QSize(self._wide, super().sizeHint().height())

    def close_form(self) -> None:
        """Put the form away; the one that waits below it comes back."""
        if self.form is not None:
            self._closed(self.form)

    def clear(self) -> None:
        """Put away every form."""
        while self._below:
            self._below.pop().put_away()
        self.close_form()

    def forms(self) -> list[Form]:
        """The forms that lie here, the one on show last."""
        return [*self._below, *([self.form] if self.form is not None else [])]

    def _closed(self, form: Form) -> None:
        if form in self._below:
            self._below.remove(form)
            form.put_away()
            return
        if form is not self.form:
            return
        self.form = None
        self._area.takeWidget()
        form.put_away()
        if self._below:
            waiting = self._below.pop()
            self._show(waiting)
            waiting.book_changed()
            waiting.first_field().setFocus()
            return
        self.hide()
        self.left.emit()
        before, self._before = self._before, None
        if before is not None and isValid(before) and before.isVisible():
            before.setFocus()

    def focusNextPrevChild(self, next: bool) -> bool:
        """Tab goes round within the form: who writes does not land in the picture by accident."""
        moved = super().focusNextPrevChild(next)
        held = QApplication.focusWidget()
        if self.form is None or (held is not None and self.isAncestorOf(held)):
            return moved
        chain = self.form.stops()
        if chain:
            chain[0 if next else -1].setFocus(
                Qt.FocusReason.TabFocusReason if next else Qt.FocusReason.BacktabFocusReason
            )
        return True

    def tell(self, act: Callable[[Form], None]) -> None:
        """Tell the form on the bench something, if there is one."""
        if self.form is not None:
            act(self.form)
