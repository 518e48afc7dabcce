"""The quick line: one line typed for one thing done, read aloud before it is recorded."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.quick import EXAMPLES, QuickEntry, read_line
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import TextField
from pedigreeview.window.forms.form import Form
from pedigreeview.window.labels import sentence
from pedigreeview.window.preferences import Preferences

__all__ = ["QuickForm"]


class QuickForm(Form):
    """Enter records and leaves the line ready for the next; Esc closes."""

    NAME = "quick"

    def __init__(self, desk: Desk, preferences: Preferences, text: str = "") -> None:
        super().__init__(
            desk,
            preferences,
            desk.tr("Quick line"),
            desk.tr("Type what was done in one line; below it stands what is understood."),
        )
        self.line = self.add(self.tr("&Line"), TextField("line", EXAMPLES[1]))
        self.line.set_text(text)
        examples = sentence("\n".join(EXAMPLES), "soft")
        self.add_part(sentence(self.tr("Lines such as:"), "caption"))
        self.add_part(examples)
        self.next_button.hide()

    def _read(self) -> QuickEntry:
        order: Order = "month-day" if self.preferences.date_order == "month-day" else "day-month"
        return read_line(self.line.value, self.book, self.today(), order=order)

    def preview(self) -> str:
        if not self.line.value:
            self.line.say("")
            return ""
        try:
            self.line.say(self._read().said)
        except Fault as fault:
            self.line.say(fault.what)
        return ""

    def words(self) -> str:
        return self._read().words

    def entry(self) -> Callable[[Edit], Any]:
        return self._read().record

    def record(self, again: bool = False) -> None:
        """Record the line; it is emptied for the next."""
        super().record(True)
