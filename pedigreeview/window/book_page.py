"""What every page of the window can be told: another book, an edit, the plant looked at, the look.

A page of the rail is a `BookPage`.  `LazyPage` stands in for one until it is first looked at, so
that a page which nobody opens costs nothing at the start.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QWidget

from pedigreeview.window.labels import column

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.window.opening import Opened

__all__ = ["BookPage", "LazyPage", "Shown"]

Shown = tuple[str, Sequence[str], Sequence[Sequence[Any]]]
"""A table as it is shown: its title, its headings, and its rows of texts, numbers and blanks."""


class BookPage(QWidget):
    """A page of the rail."""

    plant_wanted = Signal(str)
    """A plant is asked for in focus on the Pedigree page."""
    picked = Signal(object)
    """Plants were picked here, as a tuple of codes; the other pages hear of it."""

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The same book after an edit; a page that can keeps its place."""
        self.show_opened(opened)

    def mark(self, code: str) -> None:
        """The plant that the window is at."""

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants that were picked on another page."""

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""

    def go_to(self, part: str) -> None:
        """Turn to a part of the page, such as one plant's row or one pair."""

    def table_shown(self) -> Shown | None:
        """The table that the page shows, to copy or to save; None where it shows none."""
        return None


class LazyPage(BookPage):
    """Makes the page when it is first shown, and tells it what it has missed."""

    def __init__(self, make: Callable[[], BookPage]) -> None:
        super().__init__()
        self._make = make
        self._made: BookPage | None = None
        self._opened: Opened | None = None
        self._code = ""
        self._picked: tuple[str, ...] = ()
        self.setLayout(column())

    @property
    def made(self) -> BookPage | None:
        """The page itself, once it has been looked at."""
        return self._made

    def page(self) -> BookPage:
        """The page itself, made now if need be."""
        if self._made is None:
            page = self._made = self._make()
            layout = self.layout()
            assert layout is not None
            layout.addWidget(page)
            page.plant_wanted.connect(self.plant_wanted)
            page.picked.connect(self.picked)
            self.setFocusProxy(page)
            page.show_opened(self._opened)
            page.take_picked(self._picked)
            page.mark(self._code)
        return self._made

    def showEvent(self, event: QShowEvent) -> None:
        self.page()
        super().showEvent(event)

    def show_opened(self, opened: Opened | None) -> None:
        self._opened, self._code, self._picked = opened, "", ()
        if self._made is not None:
            self._made.show_opened(opened)

    def book_changed(self, opened: Opened, change: Change) -> None:
        self._opened = opened
        if self._made is not None:
            self._made.book_changed(opened, change)

    def mark(self, code: str) -> None:
        self._code = code
        if self._made is not None:
            self._made.mark(code)

    def take_picked(self, codes: tuple[str, ...]) -> None:
        self._picked = codes
        if self._made is not None:
            self._made.take_picked(codes)

    def redraw(self) -> None:
        if self._made is not None:
            self._made.redraw()

    def go_to(self, part: str) -> None:
        self.page().go_to(part)

    def table_shown(self) -> Shown | None:
        return self._made.table_shown() if self._made is not None else None
