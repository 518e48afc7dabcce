"""What every page of the window can be told: another book, an edit, the plant looked at, the look.

A page of the rail is a `BookPage`.  `LazyPage` stands in for one until it is first looked at, so
that a page which nobody opens costs nothing at the start.  What happens while a page is not on show
it only remembers (`hear`, `hear_mark`, `hear_picked`), and makes up for it when the window turns to
it (`catch_up`), so that no edit waits for pages that nobody sees.

A large page is made in slices (`rest`): its frame is there at once, and between two slices the
window answers to keys and mouse.  Whoever asks for the page itself gets it whole.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QShowEvent
from PySide6.QtWidgets import QStackedWidget, QTableView, QWidget

from pedigreeview.window.labels import column
from pedigreeview.window.style import current

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.window.opening import Opened

__all__ = ["BookPage", "LazyPage", "Shown", "Waiting"]

Shown = tuple[str, Sequence[str], Sequence[Sequence[Any]]]
"""A table as it is shown: its title, its headings, and its rows of texts, numbers and blanks."""


Waiting = tuple[str, str]
"""Something half typed: what it is called, and the part of its page where it waits."""


_DIRECT = Qt.FindChildOption.FindDirectChildrenOnly

_BETWEEN = 1
"""Milliseconds between two slices of a page."""


@dataclass(slots=True)
class _Missed:
    """What a page has not been told yet."""

    opened: Opened
    change: Change | None
    """The last edit; None where the book itself is another."""
    anew: bool = False
    code: str | None = None
    picked: tuple[str, ...] | None = None


class _Latecomers(QObject):
    """Puts the sheet of the look on what comes into a page after it was dressed."""

    def __init__(self, page: QWidget) -> None:
        super().__init__(page)
        self.sheet = ""
        self._watched: set[int] = set()

    def watch(self, holder: QWidget) -> None:
        """Look out for what is laid into a holder; it may be told again and again."""
        if id(holder) not in self._watched:
            self._watched.add(id(holder))
            holder.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if self.sheet and event.type() == QEvent.Type.ChildPolished:
            child = event.child()  # type: ignore[attr-defined]
            if isinstance(child, QWidget) and not child.styleSheet():
                child.setStyleSheet(self.sheet)
        return False


class BookPage(QWidget):
    """A page of the rail."""

    plant_wanted = Signal(str)
    """A plant is asked for in focus on the Pedigree page."""
    picked = Signal(object)
    """Plants were picked here, as a tuple of codes; the other pages hear of it."""

    waits = True
    """Whether the page is told of the book only when it is looked at; else it waits by itself."""

    def __init__(self) -> None:
        super().__init__()
        self._missed: _Missed | None = None
        self._latecomers = _Latecomers(self)

    # What the window calls ----------------------------------------------------------------------

    def hear(self, opened: Opened | None, change: Change | None = None, *, now: bool) -> None:
        """Tell the page of another book, or of the same one after a change.

        now : whether the page is on show, or is to be ready at once
        """
        missed = self._missed
        if now or not self.waits or opened is None:
            self._missed = None
            self._tell(opened, change if missed is None or not missed.anew else None)
            if missed is not None and change is not None:
                self._make_up(missed)
        elif change is None:
            self._missed = _Missed(opened, None, anew=True)
        elif missed is None:
            self._missed = _Missed(opened, change)
        else:
            missed.opened = opened
            missed.change = None if missed.anew else change

    @property
    def of_another(self) -> bool:
        """Whether the page still holds the book before, which it was not on show to put away."""
        return self._missed is not None and self._missed.anew

    def hear_mark(self, code: str) -> None:
        """Tell the page which plant the window is at."""
        if self._missed is not None:
            self._missed.code = code
        else:
            self.mark(code)

    def hear_picked(self, codes: tuple[str, ...]) -> None:
        """Tell the page which plants were picked elsewhere."""
        if self._missed is not None:
            self._missed.picked = codes
        else:
            self.take_picked(codes)

    def catch_up(self) -> None:
        """Make up for what happened while the page was not on show."""
        missed, self._missed = self._missed, None
        if missed is not None:
            self._tell(missed.opened, missed.change)
            self._make_up(missed)

    def _tell(self, opened: Opened | None, change: Change | None) -> None:
        if change is None or opened is None:
            self.show_opened(opened)
        else:
            self.book_changed(opened, change)

    def _make_up(self, missed: _Missed) -> None:
        if missed.picked is not None:
            self.take_picked(missed.picked)
        if missed.code is not None:
            self.mark(missed.code)

    # What a page answers ------------------------------------------------------------------------

    def rest(self) -> Iterator[None]:
        """Make what the page lacks besides its frame, one slice at each step; here nothing."""
        return iter(())

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

    @property
    def sheet(self) -> str:
        """The style sheet of the look, which what is made from now on puts on; '' for the usual."""
        return self._latecomers.sheet

    def hear_sheet(self, sheet: str) -> None:
        """Tell the page of the style sheet of another look, before its wardrobe puts it on."""
        self._latecomers.sheet = sheet
        if sheet:
            for holder in _opened_up(self):
                self._latecomers.watch(holder)

    def wardrobe(self) -> list[QWidget]:
        """What takes the style sheet of another look, one at a time, and none within another.

        It is all that the page holds, and not the page: together that would take too long.  So no
        part of the list may have a holder that has a look of its own.
        """
        holders = _opened_up(self)
        return [
            part
            for holder in holders
            for part in holder.findChildren(QWidget, options=_DIRECT)
            if part not in holders
        ]

    def paintEvent(self, event: QPaintEvent) -> None:
        """The ground, which changes with the look although the page has no sheet of its own."""
        if self.testAttribute(Qt.WidgetAttribute.WA_StyledBackground):
            QPainter(self).fillRect(event.rect(), current().sheet)

    def go_to(self, part: str) -> None:
        """Turn to a part of the page, such as one plant's row or one pair."""

    def unfinished(self) -> dict[str, Any]:
        """What is typed on the page and not in the book, as it can be stored; {} for nothing."""
        return {}

    def take_up(self, held: dict[str, Any]) -> list[Waiting]:
        """Put in again what was typed when this book was closed, as `unfinished` gave it.

        Returns
        -------
        what it was, for a person, each with the part of the page where it is (`go_to`)
        """
        return []

    def table_shown(self) -> Shown | None:
        """The table that the page shows, to copy or to save; None where it shows none.

        A page with a table in view needs no code of its own: the largest one is told as it stands.
        """
        views = [view for view in self.findChildren(QTableView) if view.isVisible()]
        if not views:
            return None
        view = max(views, key=lambda one: one.width() * one.height())
        model = view.model()
        across = [at for at in range(model.columnCount()) if not view.isColumnHidden(at)]
        sideways = Qt.Orientation.Horizontal
        headings = [str(model.headerData(at, sideways) or "").replace("\n", " ") for at in across]
        rows = [
            ["" if (cell := model.index(row, at).data()) is None else cell for at in across]
            for row in range(model.rowCount())
        ]
        return view.accessibleName() or self.accessibleName() or self.tr("Table"), headings, rows


def _opened_up(page: QWidget) -> list[QWidget]:
    """The page and the stacks that lie right in it: holders that show nothing of themselves."""
    return [page, *page.findChildren(QStackedWidget, options=_DIRECT)]


class LazyPage(BookPage):
    """Makes the page when it is first shown, and tells it what it has missed."""

    def __init__(self, make: Callable[[], BookPage]) -> None:
        super().__init__()
        self._make = make
        self._made: BookPage | None = None
        self._begun: BookPage | None = None
        self._slices: Iterator[None] | None = None
        self._opened: Opened | None = None
        self._code = ""
        self._picked: tuple[str, ...] = ()
        self.setLayout(column())

    @property
    def made(self) -> BookPage | None:
        """The page itself, once it has been looked at."""
        return self._made

    @property
    def making(self) -> bool:
        """Whether slices of the page are still to come."""
        return self._made is None and self._slices is not None

    def page(self) -> BookPage:
        """The page itself, made now if need be, and up to date."""
        self.catch_up()
        while self._made is None:
            self._slice()
        return self._made

    def _making(self) -> Iterator[None]:
        page = self._begun = self._make()
        page.hear_sheet(self.sheet)
        self._dress(page)
        layout = self.layout()
        assert layout is not None
        layout.addWidget(page)
        page.show()  # else it would come with the next events, after an empty sheet
        yield
        for _ in page.rest():
            self._dress(page)
            yield
        self._dress(page)
        yield
        self._made = page
        page.plant_wanted.connect(self.plant_wanted)
        page.picked.connect(self.picked)
        # The book first: a list that gets the focus with nothing marked marks its first line.
        had = self.hasFocus()
        page.show_opened(self._opened)
        page.take_picked(self._picked)
        page.mark(self._code)
        self.setFocusProxy(page)
        if had:
            page.setFocus()

    def _dress(self, page: BookPage) -> None:
        """Put the look on what a slice brought, before it is shown: that is done in no time."""
        for part in page.wardrobe() if self.sheet else ():
            if part.styleSheet() != self.sheet:
                part.setStyleSheet(self.sheet)

    def _slice(self) -> None:
        if self._slices is None:
            self._slices = self._making()
        try:
            next(self._slices, None)
        except Exception:
            self._slices = None
            raise

    def _go_on(self) -> None:
        """The next slice; then the window has its turn."""
        if self._made is None:
            self._slice()
            # Not 0: what came of a slice is to be painted before the next one.
            QTimer.singleShot(_BETWEEN, self, self._go_on)

    def hear(self, opened: Opened | None, change: Change | None = None, *, now: bool) -> None:
        # A page that is not made yet remembers what it is told by itself.
        super().hear(opened, change, now=now or self._made is None)

    def showEvent(self, event: QShowEvent) -> None:
        self.catch_up()
        if self._made is None and self._slices is None:
            self._go_on()
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

    def hear_sheet(self, sheet: str) -> None:
        self._latecomers.sheet = sheet
        if self._begun is not None:
            self._begun.hear_sheet(sheet)

    def wardrobe(self) -> list[QWidget]:
        # What is not made yet puts the sheet on when it is.
        return self._begun.wardrobe() if self._begun is not None else []

    def go_to(self, part: str) -> None:
        self.page().go_to(part)

    def unfinished(self) -> dict[str, Any]:
        return self._made.unfinished() if self._made is not None else {}

    def take_up(self, held: dict[str, Any]) -> list[Waiting]:
        return self.page().take_up(held)

    def table_shown(self) -> Shown | None:
        return self._made.table_shown() if self._made is not None else None
