"""Puts another look or size of text on the window, a part at each turn of the window's loop.

One style sheet of the whole program makes Qt dress every widget in a single call, which holds the
window up once many pages are made.  So the program keeps the sheet it started with, and each part
of the window gets the new one as its own: the frame at once, then the page on show, then the rest.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from pedigreeview.window.book_page import BookPage
from pedigreeview.window.style import dress, put_on, sheet_of_now, system_name, worn

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["Dressing"]


class Dressing(QObject):
    """The look of one window, as its preferences say."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._sheet = ""
        self._turns: deque[Callable[[], object]] = deque()
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._turn)
        dress(self._app(), *self._wanted())
        self._first = worn()

    @property
    def busy(self) -> bool:
        """Whether a part of the window still wears the look before."""
        return bool(self._turns)

    def change(self, shell: Callable[[], object]) -> None:
        """Put on what the preferences say; nothing happens where that is worn already.

        shell : called once the frame of the window is dressed
        """
        if self._wanted() == worn():
            return
        put_on(self._app(), *self._wanted())
        self._sheet = "" if worn() == self._first else sheet_of_now()
        # The frame and the page on show change with one repaint.
        self._window.setUpdatesEnabled(False)
        for part in self._frame():
            part.setStyleSheet(self._sheet)
        shell()
        shown = self._window.pages.currentWidget()
        assert shown is not None
        hidden = [page for page in self._window.every_page() if page is not shown]
        for page in self._window.every_page():
            if isinstance(page, BookPage):
                page.hear_sheet(self._sheet)
        self._turns.clear()
        self._turns.extend(self._turns_of(shown))
        self._turns.append(partial(self._show_again, shown))
        for page in hidden:
            self._turns.extend(self._turns_of(page))
            self._turns.append(partial(self._window.redraw_page, page))
        self._timer.start(0)

    def dress_child(self, child: QObject) -> None:
        """Put the look on a window that opens above this one."""
        if not (self._sheet and isinstance(child, QWidget) and child.isWindow()):
            return
        if child.styleSheet() != self._sheet:
            child.setStyleSheet(self._sheet)

    def _turn(self) -> None:
        if self._turns:
            self._turns.popleft()()
        if self._turns:
            # Not 0: a key or a click that waits has its turn first.
            self._timer.start(1)

    def _turns_of(self, page: QWidget) -> list[Callable[[], object]]:
        parts = page.wardrobe() if isinstance(page, BookPage) else [page]
        return [partial(self._dress, part) for part in parts]

    def _dress(self, part: QWidget) -> None:
        # A line of a list may have gone before its turn came.
        if isValid(part):
            part.setStyleSheet(self._sheet)

    def _show_again(self, shown: QWidget) -> None:
        try:
            self._window.redraw_page(shown)
        finally:
            self._window.setUpdatesEnabled(True)

    def _frame(self) -> list[QWidget]:
        """Everything but the pages and what they lie in: a sheet on that would dress them all."""
        window, direct = self._window, Qt.FindChildOption.FindDirectChildrenOnly
        middle, area = window.centralWidget(), window.area
        parts: list[QWidget] = [area.verticalScrollBar(), area.horizontalScrollBar()]
        for holder in (middle, window):
            if holder is not None:
                parts += holder.findChildren(QWidget, options=direct)
        return [part for part in parts if part not in (area, middle)]

    def _wanted(self) -> tuple[str, int]:
        preferences = self._window.preferences
        look = preferences.look
        return (system_name() if look == "system" else look), preferences.text_size

    def _app(self) -> QApplication:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        return app
