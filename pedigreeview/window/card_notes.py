"""What is written of a plant beside its values: scores, notes, moves, findings and evidence."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.moving import places_before
from pedigreeview.book.recording.notes import notes_about, record_note
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.book.records import SELF, Score
from pedigreeview.window.card_edit import adding_button, reading_only
from pedigreeview.window.forms.fields import DateField, LongTextField
from pedigreeview.window.labels import action_button, column, sentence
from pedigreeview.window.record_words import choice_words
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.preferences import Preferences

__all__ = ["CardNotes", "NoteWriter", "evidence_lines", "finding_lines", "score_lines"]

_FEW = 3
"""Notes that are shown before one asks for the others."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("CardNotes", text)


def _dated(date: str, text: str) -> str:
    return f"{date}  {text}" if date else text


def finding_lines(book: Book, code: str) -> list[str]:
    """What the plant itself shows of its pollen parent, the latest first."""
    words, lines = choice_words(), []
    rows = [row for row in book.parent_findings if row.plant == code]
    for row in sorted(rows, key=lambda row: row.date, reverse=True):
        giver = {SELF: _tr("a selfing"), "": _tr("pollen parent not known")}.get(
            row.pollen_parent, _tr("pollen of {}").format(row.pollen_parent)
        )
        parts = [giver]
        if row.odds is not None:
            parts.append(_tr("odds {}").format(f"{row.odds:g}"))
        if row.grade:
            parts.append(words.get(row.grade, row.grade))
        line = ", ".join(parts)
        lines.append(_dated(row.date, f"{line}: {row.text}" if row.text else line))
    return lines


def evidence_lines(book: Book, code: str) -> list[str]:
    """What speaks for and against the parents of the plant's cross, the latest first."""
    cross = book.plants[code].cross
    said = {
        ("seed", "for"): _tr("for the seed parent: {}"),
        ("seed", "against"): _tr("against the seed parent: {}"),
        ("pollen", "for"): _tr("for the pollen parent: {}"),
        ("pollen", "against"): _tr("against the pollen parent: {}"),
    }
    rows = [row for row in book.evidence if cross and row.cross == cross]
    return [
        _dated(row.date, said.get((row.side, row.for_or_against), "{}").format(row.text))
        for row in sorted(rows, key=lambda row: row.date, reverse=True)
    ]


def score_lines(book: Book, code: str) -> list[str]:
    """The latest score of each trait, and how often it was scored: 'height: 120 cm, 2024-07-01'."""
    held: dict[tuple[str, str], list[Score]] = {}
    for row in book.scores:
        if row.plant == code and row.value:
            held.setdefault((row.trait, row.of), []).append(row)
    lines = []
    for (name, of), rows in held.items():
        last = max(rows, key=lambda row: row.date)
        trait = book.traits.get(name)
        value = f"{last.value} {trait.unit}" if trait is not None and trait.unit else last.value
        title = _tr("{} of its seed").format(name) if of == "seed" else name
        parts = [f"{title}: {value}", last.date]
        if len(rows) > 1:
            parts.append(_tr("the latest of {}").format(len(rows)))
        lines.append(", ".join(part for part in parts if part))
    return lines


class NoteWriter(QWidget):
    """Where a note is typed, with its day; Enter keeps it, Shift+Enter begins a line."""

    kept = Signal(str, str)
    """Its text, and its date in ISO form."""
    left = Signal()

    def __init__(self, order: Order) -> None:
        super().__init__()
        self.sent = False
        """Whether it is being recorded."""
        s = step()
        layout = column(max(2, s // 2))
        self.setLayout(layout)
        self.text = LongTextField("text", 2)
        self.text.set_label(self.tr("Text of the note"))
        self.date = DateField("date", order=order)
        self.date.set_label(self.tr("Day of the note"))
        self.date.set_text(self.tr("today"))
        layout.addWidget(self.text)
        row = QHBoxLayout()
        row.setSpacing(s)
        row.addWidget(self.date, 1)
        self.keep_button = action_button(self.tr("Keep"), self.keep)
        row.addWidget(self.keep_button, 0, Qt.AlignmentFlag.AlignTop)
        layout.addLayout(row)
        for field in (self.text, self.date):
            editor = field.focusProxy()
            assert isinstance(editor, QWidget)
            editor.installEventFilter(self)
        self.setFocusProxy(self.text)

    def keep(self) -> None:
        """Ask for the note to be kept."""
        if self.sent:
            return
        try:
            date = self.date.value
        except Fault as fault:
            self.refuse(fault)
            return
        self.sent = True
        self.kept.emit(self.text.value, date)

    def refuse(self, fault: Fault) -> None:
        """Say beside its field why it was not kept."""
        self.sent = False
        field = self.date if fault.where.column == "date" else self.text
        field.say(f"{fault.what} {fault.todo}".strip(), wrong=True)
        field.setFocus()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            shift = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not shift:
                self.keep()
                return True
            if event.key() == Qt.Key.Key_Escape:
                self.left.emit()
                return True
        return super().eventFilter(watched, event)


class CardNotes(QWidget):
    """The notes, the latest first, and a way to write one."""

    turned = Signal()

    def __init__(self, desk: Desk | None, preferences: Preferences | None, code: str) -> None:
        super().__init__()
        self._desk, self._code = desk, code
        self._order: Order = "day-month"
        if preferences is not None and preferences.date_order == "month-day":
            self._order = "month-day"
        self.writer: NoteWriter | None = None
        self._layout = column(max(2, step() // 2))
        self.setLayout(self._layout)

    def show_book(self, book: Book) -> None:
        """Lay out what the book says of the plant."""
        moves = places_before(book, self._code)
        notes = [
            (note.date, note.text)
            for note in notes_about(book, "plants", self._code)
            if (note.date, note.text) not in moves
        ]
        self._list(self.tr("Scores"), score_lines(book, self._code), 8)
        self._list(self.tr("Found of its pollen parent"), finding_lines(book, self._code))
        self._list(self.tr("Evidence on its cross"), evidence_lines(book, self._code))
        self._list(self.tr("Notes"), [_dated(*note) for note in reversed(notes)])
        self._list(self.tr("Moves"), [_dated(*move) for move in reversed(moves)])
        if self._desk is not None and not reading_only(self._desk):
            name = self.tr("Write a dated note of {}").format(self._code)
            self.add_button = adding_button(self.tr("+ note"), name, self.write)
            self._layout.addWidget(self.add_button, 0, Qt.AlignmentFlag.AlignLeft)

    def _list(self, title: str, lines: list[str], few: int = _FEW) -> None:
        if not lines:
            return
        part = column(max(1, step() // 4))
        part.addWidget(sentence(title, "caption"))
        text = sentence("\n".join(lines[:few]))
        text.setAccessibleName(title)
        part.addWidget(text)
        if len(lines) > few:
            more = adding_button(
                self.tr("{} more").format(len(lines) - few),
                self.tr("Show all: {}").format(title),
                lambda: unfold(),
            )
            part.addWidget(more, 0, Qt.AlignmentFlag.AlignLeft)

            def unfold() -> None:
                text.setText("\n".join(lines))
                more.hide()
                self.turned.emit()

        self._layout.addLayout(part)

    def write(self, typed: tuple[str, str] | None = None, *, focus: bool = True) -> None:
        """Open a field for a note.

        typed : text and day that stood in it before
        focus : whether the keys go there
        """
        if self.writer is not None:
            self.writer.setFocus()
            return
        writer = self.writer = NoteWriter(self._order)
        if typed is not None:
            writer.text.set_text(typed[0])
            writer.date.set_text(typed[1])
        writer.left.connect(self._leave)
        writer.kept.connect(self._keep)
        self.add_button.hide()
        self._layout.addWidget(writer)
        if focus:
            writer.setFocus()
        self.turned.emit()

    def typing(self, *, lasting: bool = False) -> tuple[str, str] | None:
        """Text and day of the note that is being written.

        lasting : the day as it still means the same on another day
        """
        if self.writer is None or self.writer.sent:
            return None
        date = self.writer.date
        return self.writer.text.text(), date.lasting() if lasting else date.text()

    def _leave(self) -> None:
        writer, self.writer = self.writer, None
        if writer is not None:
            writer.hide()
            writer.deleteLater()
        self.add_button.show()
        self.add_button.setFocus()
        self.turned.emit()

    def _keep(self, text: str, date: str) -> None:
        desk, writer, code = self._desk, self.writer, self._code
        assert desk is not None
        assert writer is not None

        def refused(fault: Fault) -> None:
            try:
                writer.refuse(fault)
            except RuntimeError:
                # The card was laid anew meanwhile.
                desk.refused.emit(fault)

        words = self.tr("note of {}").format(code)
        desk.record(
            words,
            lambda edit: record_note(edit, "plants", code, text, date=date),
            None,
            refused,
        )
