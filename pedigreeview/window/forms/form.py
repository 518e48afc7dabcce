"""What all forms have in common: fields under labels, one button, a fault beside its field.

A form gathers its fields into a function of an `Edit` (`entry`), which the desk runs; what was
typed stays until the edit is on disk.  Enter records and closes, Ctrl+Enter records and keeps the
form for the next one.  The values that a form calls `kept` are proposed again the next time.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QWidget

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.typed_dates import Order, When
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import DateField, Field, FlagField, PlantField
from pedigreeview.window.labels import action_button, column, heading, plain_button, sentence
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.style import step

__all__ = ["Form"]


class Form(QFrame):
    """A form on the bench.

    Subclasses add their fields in `__init__` and give `words`, `entry` and, if they like,
    `preview` and `done`.
    """

    NAME = ""
    """Under which the last used values are remembered."""

    closed = Signal()
    recorded = Signal(object)
    """What the edit gave back, such as the new records."""

    def __init__(self, desk: Desk, preferences: Preferences, title: str, hint: str = "") -> None:
        super().__init__()
        self.setObjectName("form")
        self.desk, self.preferences = desk, preferences
        self._fields: dict[str, Field] = {}
        self._labels: dict[str, QLabel] = {}
        self._kept: set[str] = set()
        self._laid = False
        """Whether all fields are there, so that what they say can be put together."""
        self._proposed: dict[str, str] = {}
        """What stood in the fields before anything was typed."""
        self._away = False
        self.opened_as = ""
        """The name by which it was opened, and can be opened again (`Writing.open`)."""
        s = step()
        self.body = column(s)
        self.body.setContentsMargins(2 * s, 2 * s, 2 * s, 2 * s)
        self.setLayout(self.body)
        head = QHBoxLayout()
        head.addWidget(heading(title, 2), 1)
        head.addWidget(
            plain_button("✕", self.tr("Close without recording (Esc)"), self.closed.emit),
            0,
            Qt.AlignmentFlag.AlignTop,
        )
        self.body.addLayout(head)
        if hint:
            self.body.addWidget(sentence(hint, "soft"))
        self.again = sentence("", "soft")
        self.again.hide()
        self.body.addWidget(self.again)
        self._rows = column(s)
        self.body.addLayout(self._rows)
        self.previewed = sentence("", "soft")
        self.body.addWidget(self.previewed)
        self.message = sentence("", "fault")
        self.message.hide()
        self.body.addWidget(self.message)
        buttons = self._buttons = QHBoxLayout()
        buttons.setSpacing(s)
        self.next_button = action_button(self.tr("Record, and next"), lambda: self.record(True))
        self.next_button.setToolTip(self.tr("Ctrl+Enter"))
        self.record_button = action_button(self.tr("Record"), self.record, main=True)
        self.record_button.setToolTip(self.tr("Enter"))
        buttons.addWidget(self.next_button)
        buttons.addStretch(1)
        buttons.addWidget(self.record_button)
        self.body.addLayout(buttons)
        self.body.addStretch(1)

    # For the forms ------------------------------------------------------------------------------

    def add(self, label: str, field: Field, *, kept: bool = False) -> Any:
        """Put a field under its label; `kept`: what was typed is proposed the next time."""
        part = column(max(1, step() // 4))
        if label:
            shown = QLabel(label)
            shown.setBuddy(field)
            shown.setWordWrap(True)
            part.addWidget(shown)
            self._labels[field.column] = shown
            field.set_label(label.replace("&", ""))
        part.addWidget(field)
        self._rows.addLayout(part)
        self._fields[field.column] = field
        field.changed.connect(self._changed)
        if kept:
            self._kept.add(field.column)
            held = self.preferences.last_used(self.NAME).get(field.column, "")
            if held:
                field.set_text(held)
        return field

    def add_part(self, widget: QWidget) -> None:
        """Put something else between the fields."""
        self._rows.addWidget(widget)

    def show_field(self, field: Field, shown: bool) -> None:
        """Show or hide a field with its label."""
        field.setVisible(shown)
        if field.column in self._labels:
            self._labels[field.column].setVisible(shown)

    def plant_field(self, name: str, hint: str = "") -> PlantField:
        """A field for a plant of the open book."""
        return PlantField(name, self.desk, hint)

    def date_field(self, name: str = "date", when: When = "past") -> DateField:
        """A field for a date, read in the person's order of day and month."""
        order: Order = "month-day" if self.preferences.date_order == "month-day" else "day-month"
        return DateField(name, self.today, order, when)

    @property
    def book(self) -> Book:
        """The book as it is now."""
        book = self.desk.book
        assert book is not None
        return book

    def today(self) -> datetime.date:
        """The day of writing."""
        return datetime.date.today()

    def words(self) -> str:
        """What is done, as the menu says it after 'Undo: '."""
        raise NotImplementedError

    def entry(self) -> Callable[[Edit], Any]:
        """A function that makes the edit, from what stands in the fields now.

        Raises
        ------
        Fault : a field cannot be read
        """
        raise NotImplementedError

    def preview(self) -> str:
        """A sentence that says what will be recorded; '' for none."""
        return ""

    def done(self, given: Any) -> str:
        """A sentence for the foot of the window when it is recorded."""
        return self.tr("Recorded: {}").format(self.words())

    def clear_for_next(self) -> None:
        """Empty what differs from one record to the next; kept fields stay."""
        for name, field in self._fields.items():
            if name not in self._kept:
                field.set_text("")

    def book_changed(self) -> None:
        """The form was laid on the bench, or the book was changed while it lies there."""
        if not self._laid:
            self._laid = True
            self._proposed = self._typed()
        self._changed()

    def mark(self, code: str) -> None:
        """Another plant is looked at while the form lies open."""

    def touched(self) -> bool:
        """Whether something stands in the fields that was neither proposed nor recorded yet."""
        return self._laid and (
            not self.record_button.isEnabled() or self._typed() != self._proposed
        )

    def unfinished(self) -> dict[str, str]:
        """What is typed and not recorded, as it still means the same on another day; {} for none.

        What is being recorded at this moment is not for a second time.
        """
        if not self.touched() or not self.record_button.isEnabled():
            return {}
        return {name: field.lasting() for name, field in self._fields.items()}

    def take_up(self, typed: Mapping[str, str]) -> None:
        """Put in again what was typed when the book was closed, and say so."""
        for name, text in typed.items():
            if name in self._fields:
                self._fields[name].set_text(text)
        self.again.setText(
            self.tr(
                "You were writing this when the book was closed. Record it, or close it with ✕ to "
                "leave it."
            )
        )
        self.again.show()

    def look_at(self, code: str) -> None:
        """Another plant is looked at: what the form then proposes was not typed."""
        touched = self.touched()
        self.mark(code)
        if not touched:
            self._proposed = self._typed()

    def put_away(self) -> None:
        """The form leaves the bench; what it still waits for no longer concerns its fields."""
        self._away = True
        self.deleteLater()

    def _typed(self) -> dict[str, str]:
        return {name: field.text() for name, field in self._fields.items()}

    # What happens -------------------------------------------------------------------------------

    def fit(self, width: int) -> None:
        """Set the buttons one below the other, and break long lines, as a width asks for."""
        s = step()
        for field in self._fields.values():
            if isinstance(field, FlagField):
                field.editor.fit(width - 4 * s)
        wanted = self.record_button.sizeHint().width()
        if not self.next_button.isHidden():
            wanted += self.next_button.sizeHint().width() + s
        narrow = wanted + 4 * s > width
        way = QHBoxLayout.Direction
        self._buttons.setDirection(way.TopToBottom if narrow else way.LeftToRight)

    def first_field(self) -> QWidget:
        """Where the cursor goes when the form is opened: the first field that is empty."""
        shown = [field for field in self._fields.values() if not field.isHidden()]
        for field in shown:
            if not field.text():
                return field
        return shown[0] if shown else self.record_button

    def stops(self) -> list[QWidget]:
        """Where Tab stops, from the first field to the button that records."""
        shown = [field for field in self._fields.values() if not field.isHidden()]
        return [*shown, self.record_button]

    def _changed(self) -> None:
        if not self._laid:
            return
        self.message.hide()
        try:
            text = self.preview()
        except Fault:
            text = ""
        self.previewed.setText(text)
        self.previewed.setVisible(bool(text))

    def record(self, again: bool = False) -> None:
        """Record what stands in the fields; `again`: keep the form for the next one."""
        for field in self._fields.values():
            field.check()
        self.message.hide()
        try:
            words, entry = self.words(), self.entry()
        except Fault as fault:
            self._refused(fault)
            return
        self.record_button.setEnabled(False)
        self.next_button.setEnabled(False)
        kept = {name: self._fields[name].text() for name in self._kept}
        said = self.tr("Recorded: {}").format(words)

        def done(given: Any) -> None:
            self.preferences.set_last_used(self.NAME, kept)
            if self._away:
                self.desk.said.emit(said)
                return
            self._ready()
            self.again.hide()
            self.desk.said.emit(self.done(given))
            self.recorded.emit(given)
            if again:
                self.clear_for_next()
                self._proposed = self._typed()
                self._changed()
                self.first_field().setFocus()
            else:
                self.closed.emit()

        self.desk.record(words, entry, done, self._refused)

    def _ready(self) -> None:
        self.record_button.setEnabled(True)
        self.next_button.setEnabled(True)

    def _refused(self, fault: Fault) -> None:
        if self._away:
            if not getattr(fault, "ways", ()):
                self.desk.refused.emit(fault)
            return
        self._ready()
        text = f"{fault.what} {fault.todo}".strip()
        field = self._fields.get(fault.where.column)
        if field is not None and not field.isHidden():
            field.say(text, wrong=True)
            field.setFocus()
        else:
            self.message.setText(text)
            self.message.show()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            again = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
            if self.record_button.isEnabled():
                self.record(again)
            return
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
            return
        super().keyPressEvent(event)
