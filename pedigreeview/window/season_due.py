"""What is due on a day: overdue, today, in the next two weeks; one click does it or opens its form.

Every item says on what its days rest.  What is done here can be undone at once.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator, Sequence
from functools import partial
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.book.due import KINDS_OF_WORK, Due, due
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.pollinations import note_relabelled, take_cover_off
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.reports.paper_choices import Chosen
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.forms.fields import DateField
from pedigreeview.window.labels import (
    Flow,
    LinkLabel,
    action_button,
    clear,
    column,
    heading,
    scrolled,
    sentence,
)
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.saying import say
from pedigreeview.window.season_undo import UndoLine
from pedigreeview.window.season_words import days_words, work_words
from pedigreeview.window.style import step
from pedigreeview.window.words import count, links

if TYPE_CHECKING:
    from pedigreeview.book.book import Book

__all__ = ["DueList"]

_DUE = "season:due"
_SHOWN = 40
"""Items of a group that are shown before one asks for the rest."""
_AT_FIRST, _AT_A_TIME = 10, 4
"""Lines that are made at once, and then at each turn; the first ones fill a window."""
_IN_A_HOLDER = 5
"""Lines that are dressed at once in another look."""
_GROUPS = ("late", "now", "soon", "any time")


class _Item(QFrame):
    """One thing to do: what, when, why then, and its button."""

    moved = Signal(int)

    def __init__(self, one: Due, on: datetime.date) -> None:
        super().__init__()
        self.one = one
        self.setProperty("role", "sheet")
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        s = step()
        grid = QGridLayout(self)
        grid.setContentsMargins(s, round(0.8 * s), s, round(0.8 * s))
        grid.setHorizontalSpacing(2 * s)
        grid.setVerticalSpacing(max(2, s // 4))
        what = sentence(one.words)
        grid.addWidget(what, 0, 0)
        days = days_words(one, on)
        parts = [part for part in (days, _why(one)) if part]
        rest = sentence(" · ".join(parts), "soft")
        rest.setVisible(bool(parts))
        grid.addWidget(rest, 1, 0)
        self.plants = LinkLabel(links(one.plants, 8), "soft")
        self.plants.setAccessibleName(self.tr("Plants: {}").format(", ".join(one.plants)))
        self.plants.setVisible(bool(one.plants))
        grid.addWidget(self.plants, 2, 0)
        self.buttons = QHBoxLayout()
        self.buttons.setSpacing(s)
        grid.addLayout(self.buttons, 0, 1, 3, 1, Qt.AlignmentFlag.AlignVCenter)
        grid.setColumnStretch(0, 1)
        self.setAccessibleName(say(one.words))

    def add(self, text: str, act: Callable[[], None]) -> QPushButton:
        """A button of this item; a screen reader hears what it is for."""
        button = action_button(text, act)
        button.setAccessibleName(self.tr("{}: {}").format(text, say(self.one.words)))
        button.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.buttons.addWidget(button)
        return button

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Up):
            self.moved.emit(1 if event.key() == Qt.Key.Key_Down else -1)
            return
        super().keyPressEvent(event)


def _why(one: Due) -> str:
    if one.basis is None:
        return ""
    source, words = say(one.basis.source), say(one.basis.words)
    return f"{words.rstrip('.')} ({source})." if source else words


class DueList(QWidget):
    """The list with its day and its filter."""

    plant_wanted = Signal(str)
    score_wanted = Signal(object)
    """Plants to be scored, as a tuple of codes."""
    papers_wanted = Signal(str, object)
    """A paper and what it is to be made for, as ('fruits', Chosen)."""
    counted = Signal(int)
    """How many things are overdue or due on the day."""

    def __init__(
        self, desk: Desk, errands: Errands, preferences: Preferences, write: Callable[..., None]
    ) -> None:
        super().__init__()
        self._desk, self._errands, self._write = desk, errands, write
        self._due: tuple[Due, ...] = ()
        self._full: set[str] = set()
        """Groups that are shown whole."""
        self._eager = False
        """The keys are to go to the first thing to do, once it has come."""
        self.items: list[_Item] = []
        self._sheet = ""
        self._holders: list[QWidget] = []
        """What the lines lie in, a few in each, so that another look is put on bit by bit."""
        self._built: object = None
        """What the list was last made of."""
        self._lines: Iterator[Callable[[], object]] = iter(())
        self._held = (-1, 0)
        self._more = QTimer(self)
        self._more.setSingleShot(True)
        self._more.setInterval(0)
        self._more.timeout.connect(self._add_lines)
        order: Order = "month-day" if preferences.date_order == "month-day" else "day-month"
        s = step()
        body = column(s)
        self.setLayout(body)
        body.addLayout(self._head(order))
        self.undo = UndoLine(desk)
        body.addWidget(self.undo)
        self._inner = QWidget()
        self._list = column(s)
        self._list.setContentsMargins(0, 0, s, 0)
        self._inner.setLayout(self._list)
        self._area = scrolled(self._inner)
        self._area.setMinimumHeight(24 * s)
        body.addWidget(self._area, 1)

    def _head(self, order: Order) -> Flow:
        s = step()
        head = Flow(s)
        self.day = DateField("date", datetime.date.today, order, "future")
        self.day.set_label(self.tr("Day for which work is listed"))
        self.day.setFixedWidth(24 * s)
        self.day.set_text(self.tr("today"))
        self.day.changed.connect(self._ask)
        self.kind = QComboBox()
        self.kind.setAccessibleName(self.tr("Kind of work shown"))
        self.kind.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.kind.addItem(self.tr("all work"), "")
        for word in KINDS_OF_WORK:
            self.kind.addItem(work_words()[word], word)
        self.kind.currentIndexChanged.connect(self._show)
        self.shown = sentence("", "soft")
        self.shown.setWordWrap(False)
        self.shown.setMinimumHeight(self.kind.sizeHint().height())
        self.shown.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.print_button = action_button(self.tr("Print for these …"), self._print)
        for widget in (self.day, self.kind, self.print_button, self.shown):
            head.addWidget(widget)
        return head

    # The look -----------------------------------------------------------------------------------

    def hear_sheet(self, sheet: str) -> None:
        """The style sheet of the look that lines made from now on wear; '' for the usual one."""
        self._sheet = sheet

    def wardrobe(self) -> list[QWidget]:
        """What takes the style sheet of another look, one at a time."""
        head = [self.day, self.kind, self.print_button, self.shown]
        return [*head, self.undo, self._area.verticalScrollBar(), *self._holders]

    def _add(self, line: QWidget, *more: Any) -> None:
        """Add a line to the list, in a holder with a few others."""
        layout = self._holders[-1].layout() if self._holders else None
        if not isinstance(layout, QVBoxLayout) or layout.count() >= _IN_A_HOLDER:
            layout = column(step())
            holder = QWidget()
            holder.setLayout(layout)
            if self._sheet:
                holder.setStyleSheet(self._sheet)
            self._holders.append(holder)
            self._list.addWidget(holder)
        layout.addWidget(line, *more)

    # The book -----------------------------------------------------------------------------------

    def show_book(self, *, same: bool = False) -> None:
        """Another book, or the same one after an edit."""
        if not same:
            self._full.clear()
            self.undo.hide()
        self._ask()

    def on(self) -> datetime.date | None:
        """The day on show; None while no whole day is typed."""
        try:
            value = self.day.value
            return datetime.date.fromisoformat(value) if len(value) == 10 else None
        except (Fault, ValueError):
            return None

    def _ask(self) -> None:
        book, on = self._desk.book, self.on()
        if book is None or on is None:
            self._errands.drop(_DUE)
            return
        self._errands.ask(_DUE, lambda: due(book, on), self._came)

    def _came(self, found: tuple[Due, ...]) -> None:
        self._due = found
        on = self.on() or datetime.date.today()
        for at in range(1, self.kind.count()):
            word = str(self.kind.itemData(at))
            number = sum(one.work == word for one in found)
            text = work_words()[word]
            self.kind.setItemText(at, f"{text} ({number})" if number else text)
        self.counted.emit(sum(one.state(on) in ("late", "now") for one in found))
        self._show()
        if self._eager:
            self._eager = False
            self.focus_first()

    def wanted(self) -> list[Due]:
        """What is shown, after the filter."""
        word = str(self.kind.currentData() or "")
        return [one for one in self._due if not word or one.work == word]

    # Showing ------------------------------------------------------------------------------------

    def _show(self) -> None:
        book, on = self._desk.book, self.on()
        if book is None or on is None:
            return
        wanted = self.wanted()
        if not self.isVisible():
            self._built = None
            return
        showing = (tuple(wanted), on, frozenset(self._full), bool(self._due), bool(book.crosses))
        if showing == self._built:
            return
        self._built = showing
        held = self._place()
        clear(self._list)
        self.items, self._holders = [], []
        self.print_button.setEnabled(bool(wanted))
        self._tell(wanted)
        groups: dict[str, list[Due]] = {word: [] for word in _GROUPS}
        for one in wanted:
            groups[one.state(on)].append(one)
        titles = {
            "late": self.tr("Overdue"),
            "now": self.tr("Today") if on == datetime.date.today() else self.tr("On this day"),
            "soon": self.tr("The next two weeks"),
            "any time": self.tr("No day is known"),
        }
        lines = [
            line
            for word, found in groups.items()
            if found
            for line in self._group(
                word, self.tr("{}  {}").format(titles[word], len(found)), found, on
            )
        ]
        if not wanted:
            lines.append(lambda: self._add(self._nothing(book, on)))
        lines.append(lambda: self._list.addStretch(1))
        self._lines, self._held = iter(lines), held
        self._add_lines(max(_AT_FIRST, held[0] + 2))

    def _add_lines(self, most: int = _AT_A_TIME) -> None:
        """Add some lines now and the others with the next events, so that no key waits."""
        added = 0
        for line in self._lines:
            line()
            added += 1
            if added >= most:
                break
        if added:
            if max(self._held) > 0 or self._held[0] == 0:
                self._go_back(self._held)
            self._held = (-1, self._held[1])
            self._more.start()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._show()

    def _tell(self, wanted: Sequence[Due]) -> None:
        text = count(len(wanted), self.tr("thing to do"), self.tr("things to do"))
        self.shown.setText(text if wanted else "")
        self.shown.setVisible(bool(wanted))

    def _group(
        self, word: str, title: str, found: list[Due], on: datetime.date
    ) -> list[Callable[[], object]]:
        """What adds the lines of a group: its heading, its items, the way to the rest."""
        most = len(found) if word in self._full else _SHOWN

        def item(one: Due) -> None:
            made = self._item(one, on)
            self.items.append(made)
            self._add(made)

        lines: list[Callable[[], object]] = [lambda: self._add(heading(title, 3))]
        lines += [partial(item, one) for one in found[:most]]
        if len(found) > most:
            text = self.tr("Show {} more").format(len(found) - most)
            lines.append(
                lambda: self._add(
                    action_button(text, lambda: self._open(word)), 0, Qt.AlignmentFlag.AlignLeft
                )
            )
        return lines

    def _open(self, word: str) -> None:
        self._full.add(word)
        self._show()

    def _nothing(self, book: Book, on: datetime.date) -> QWidget:
        """Why there is nothing, and what brings something."""
        part = QWidget()
        held = column(step())
        part.setLayout(held)
        if self._due:
            text = self.tr("Nothing of this kind is due. Choose all work to see the rest.")
        elif not book.crosses:
            text = self.tr(
                "No cross is recorded yet. Plan a cross, and this list says when its flowers, "
                "covers, fruits and seed fall due."
            )
        else:
            text = self.tr(
                "Nothing is due within two weeks of {}. Plan a cross or record a pollination, and "
                "what comes of it is listed here; or choose another day."
            ).format(on)
        held.addWidget(sentence(text, "soft"))
        row = Flow(step())
        if self._due:
            row.addWidget(action_button(self.tr("All work"), lambda: self.kind.setCurrentIndex(0)))
        else:
            row.addWidget(action_button(self.tr("Plan a cross …"), lambda: self._write("cross")))
        held.addLayout(row)
        return part

    def _item(self, one: Due, on: datetime.date) -> _Item:
        item = _Item(one, on)
        item.plants.followed.connect(self.plant_wanted)
        item.moved.connect(lambda by: self._move(item, by))
        for text, act in self._ways(one):
            item.add(text, act)
        return item

    def _ways(self, one: Due) -> list[tuple[str, Callable[[], None]]]:
        """What one click does: the form of the work, or that it is done."""
        key, write = one.key, self._write
        book = self._desk.book
        assert book is not None
        if one.work == "pollinate":
            return [(self.tr("Write down …"), lambda: write("pollination", cross=key))]
        if one.work == "cover_off":
            return [(self.tr("Done"), lambda: self._done(one))]
        if one.work == "count_fruits":
            return [(self.tr("Count …"), lambda: write("fruits", pollination=key))]
        if one.work == "relabel":
            chosen = Chosen(pollinations=(key,))
            return [
                (self.tr("Print …"), lambda: self.papers_wanted.emit("fruits", chosen)),
                (self.tr("Done"), lambda: self._done(one)),
            ]
        if one.work == "harvest":
            cross = book.pollinations[key].cross
            return [(self.tr("Harvest …"), lambda: write("harvest", cross=cross))]
        if one.work == "sow" and one.table == "packets":
            return [(self.tr("Sow …"), lambda: write("sowing", packet=key))]
        if one.work == "sow":
            chosen = Chosen(sowings=(key,))
            return [(self.tr("Stake …"), lambda: self.papers_wanted.emit("stakes", chosen))]
        if one.work == "count_seedlings":
            return [(self.tr("Count …"), lambda: write("seedlings", sowing=key))]
        plants = one.plants
        return [(self.tr("Score"), lambda: self.score_wanted.emit(plants))]

    # Keys ---------------------------------------------------------------------------------------

    def _buttons(self) -> list[QPushButton]:
        found = []
        for item in self.items:
            last = item.buttons.itemAt(item.buttons.count() - 1)
            widget = last.widget() if last is not None else None
            if isinstance(widget, QPushButton):
                found.append(widget)
        return found

    def _move(self, item: _Item, by: int) -> None:
        """Up and down go from one thing to the next."""
        to = self.items.index(item) + by
        buttons = self._buttons()
        if 0 <= to < len(buttons):
            buttons[to].setFocus()
            self._area.ensureWidgetVisible(buttons[to])

    def focus_first(self) -> None:
        """Put the keys on the first thing to do."""
        buttons = self._buttons()
        self._eager = not buttons and self._errands.awaits(_DUE)
        (buttons[0] if buttons else self.day).setFocus()

    def _place(self) -> tuple[int, int]:
        """Where the keys are and how far the list is scrolled."""
        for at, item in enumerate(self.items):
            if item.isAncestorOf(self.focusWidget() or self):
                return at, self._area.verticalScrollBar().value()
        return -1, self._area.verticalScrollBar().value()

    def _go_back(self, held: tuple[int, int]) -> None:
        at, scrolled_to = held
        buttons = self._buttons()
        if at >= 0 and buttons:
            buttons[min(at, len(buttons) - 1)].setFocus()
        self._area.verticalScrollBar().setValue(scrolled_to)

    # Doing --------------------------------------------------------------------------------------

    def _done(self, one: Due) -> None:
        """Write down on the day on show that it is done."""
        on = self.on() or datetime.date.today()
        key, date = one.key, on.isoformat()
        if one.work == "cover_off":
            words = self.tr("cover off {}").format(key)

            def act(edit: Edit) -> object:
                return take_cover_off(edit, key, date=date)
        else:
            words = self.tr("fruits labelled of {}").format(key)

            def act(edit: Edit) -> object:
                return note_relabelled(edit, key, date=date)

        text = self.tr("Written down for {}: {}.").format(date, words)
        self._desk.record(
            words,
            act,
            lambda _: self.undo.show_done(text, words),
            lambda fault: self.undo.show_fault(fault.sentence()),
        )

    def chosen(self) -> Chosen:
        """The records of what is shown, for printing."""
        book = self._desk.book
        assert book is not None
        pollinations: list[str] = []
        rest: dict[str, list[str]] = {"crosses": [], "packets": [], "sowings": []}
        for one in self.wanted():
            if one.table == "pollinations":
                pollinations.append(one.key)
                continue
            rest[one.table].append(one.key)
        return Chosen(
            (),
            tuple(dict.fromkeys(rest["crosses"])),
            tuple(dict.fromkeys(pollinations)),
            tuple(rest["packets"]),
            tuple(rest["sowings"]),
        )

    def _print(self) -> None:
        word = str(self.kind.currentData() or "")
        paper = {
            "pollinate": "crossing",
            "cover_off": "flowers",
            "count_fruits": "fruit sheet",
            "relabel": "fruits",
            "harvest": "fruits",
            "sow": "stakes",
            "count_seedlings": "rows",
            "score": "scores",
        }.get(word, "crossing")
        self.papers_wanted.emit(paper, self.chosen())
