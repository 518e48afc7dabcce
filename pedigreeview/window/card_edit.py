"""Values that are changed where they stand: click one or press F2, type, Enter keeps, Esc leaves.

`Value` is one such value with its caption; it knows nothing of records.  `CardFacts` puts the
values of a plant together and records what was typed.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QObject, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.correcting import amend
from pedigreeview.book.recording.moving import move_plants
from pedigreeview.book.recording.naming import rename_plant
from pedigreeview.book.recording.notes import record_note
from pedigreeview.book.recording.plants import set_status
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.book.records import STATUSES, Plant
from pedigreeview.window.forms.fields import (
    ChoiceField,
    DateField,
    Field,
    LongTextField,
    TextField,
)
from pedigreeview.window.keeping import place_for_book
from pedigreeview.window.labels import Flow, column, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import status_word

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.preferences import Preferences

__all__ = ["CardFacts", "Typing", "Value", "adding_button", "reading_only"]

Typing = tuple[str, str, Plant]
"""The name of a value that is being typed into, what stands in it, and the plant as it was."""


class _Shown(QLabel):
    """The value as text; a click, F2, Enter or Space asks to change it."""

    wanted = Signal()

    def __init__(self, text: str, role: str) -> None:
        super().__init__(text)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("role", role)
        self.setWordWrap(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.IBeamCursor)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self.wanted.emit()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        # Left alone, the press would go on to the card below.
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_F2, Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.wanted.emit()
            return
        super().keyPressEvent(event)


class _StatusField(ChoiceField):
    """A status and, if one likes, why: a cull without its reason teaches nothing next year."""

    def __init__(self, name: str, choices: Sequence[tuple[str, str]]) -> None:
        super().__init__(name, choices)
        self.why = TextField("why", self.tr("why, if you like"))
        self.why.set_label(self.tr("Why it has this status"))
        layout = self.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.insertWidget(1, self.why)

    def editors(self) -> tuple[QWidget, ...]:
        return self.editor, self.why.editor

    def text(self) -> str:
        why = self.why.value
        return f"{self.value}\n{why}" if why else self.value

    def set_text(self, text: str) -> None:
        word, _, why = text.partition("\n")
        super().set_text(word)
        self.why.set_text(why)


class Value(QWidget):
    """One value with its caption.

    Parameters
    ----------
    name : the column that it stands in
    title : its caption; '' shows none
    text : what is shown
    make : makes the field to type into, filled with what is to be changed
    hint : a line below the field while one types
    """

    kept = Signal(str)
    """Enter was pressed: what stands in the field now."""
    left = Signal()
    """Esc was pressed: nothing is changed."""
    turned = Signal()
    """It has become a field, or text again, and wants another height."""

    def __init__(
        self,
        name: str,
        title: str,
        text: str,
        make: Callable[[], Field],
        *,
        hint: str = "",
        role: str = "text",
        refused: str = "",
    ) -> None:
        super().__init__()
        self.name, self._title, self._make, self._hint = name, title, make, hint
        self._refused = refused
        self.field: Field | None = None
        self.sent = False
        """Whether what stands in the field is being recorded."""
        s = step()
        self._part = column(max(1, s // 4))
        self.setLayout(self._part)
        row = QHBoxLayout()
        row.setSpacing(s)
        if title and role == "text":
            caption = sentence(title, "caption")
            caption.setWordWrap(False)
            caption.setMinimumWidth(10 * s)
            row.addWidget(caption, 0, Qt.AlignmentFlag.AlignTop)
        self.shown = _Shown(text, role)
        self.shown.setAccessibleName(self.tr("{}: {}").format(title, text or self.tr("blank")))
        self.shown.setAccessibleDescription(self.tr("Press Enter to change it"))
        self.shown.setToolTip(self.tr("Click to change it (F2)"))
        self.shown.wanted.connect(self.open)
        row.addWidget(self.shown, 1)
        self._part.addLayout(row)
        self._below = sentence("", "soft")
        self._below.hide()
        self._part.addWidget(self._below)

    def open(self, typed: str | None = None, *, focus: bool = True) -> None:
        """Become a field.

        typed : what was typed into it before it was laid anew
        focus : whether the keys go there
        """
        if self.field is not None:
            self.field.setFocus()
            return
        if self._refused:
            self.say(self._refused)
            self.turned.emit()
            return
        field = self.field = self._make()
        field.set_label(self._title)
        if typed is not None:
            field.set_text(typed)
        for editor in field.editors():
            editor.installEventFilter(self)
        self.shown.hide()
        self._part.insertWidget(1, field)
        self.say(self._hint)
        if focus:
            field.setFocus()
            held = field.focusProxy()
            if typed is None and isinstance(held, QLineEdit | QPlainTextEdit):
                held.selectAll()
        self.turned.emit()

    @property
    def typed(self) -> str | None:
        """What stands in the field; None where it is no field."""
        return None if self.field is None else self.field.text()

    def close_field(self, *, focus: bool = True) -> None:
        """Become text again."""
        field, self.field, self.sent = self.field, None, False
        if field is None:
            return
        field.hide()
        field.deleteLater()
        self.shown.show()
        self.say("")
        if focus:
            self.shown.setFocus()
        self.turned.emit()

    def refuse(self, fault: Fault) -> None:
        """Say beside the field why it was not kept; what was typed stays."""
        text = f"{fault.what} {fault.todo}".strip()
        self.sent = False
        if self.field is not None:
            self.field.say(text, wrong=True)
            self.field.setFocus()
        else:
            self.say(text)
        self.turned.emit()

    def say(self, text: str) -> None:
        """A line below; '' for none."""
        self._below.setText(text)
        self._below.setVisible(bool(text))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            key, shift = event.key(), event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not shift:
                if not self.sent:
                    self.kept.emit(self.typed or "")
                return True
            if key == Qt.Key.Key_Escape:
                self.close_field()
                self.left.emit()
                return True
        return super().eventFilter(watched, event)


class _Adder(QToolButton):
    """As wide as its text, so that it begins where its column begins."""

    def sizeHint(self) -> QSize:
        metrics = QFontMetrics(self.font())
        return QSize(metrics.horizontalAdvance(self.text()) + 2, metrics.height() + 4)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()


def adding_button(text: str, name: str, act: Callable[[], object]) -> QToolButton:
    """A word to click on that adds something to the card, set like a link."""
    button = _Adder()
    button.setText(text)
    button.setAccessibleName(name)
    button.setToolTip(name)
    button.clicked.connect(lambda: act())
    button.setProperty("role", "why")
    button.setCursor(Qt.CursorShape.PointingHandCursor)
    return button


def reading_only(desk: Desk) -> str:
    """Why nothing can be written in the book, one sentence; '' where it can, or can be kept."""
    file = desk.file
    return file.read_only_because if file is not None and file.read_only else ""


class CardFacts(QWidget):
    """The values of a plant that are changed on its card; blanks are added by a button each."""

    renamed = Signal(str)
    """The plant has another code now."""
    turned = Signal()

    def __init__(self, desk: Desk, preferences: Preferences, plant: Plant) -> None:
        super().__init__()
        self._desk, self._plant = desk, plant
        self._shown: dict[str, Plant] = {}
        """The plant as it was when one began to type into a value, where that is another by now."""
        self._order: Order = "month-day" if preferences.date_order == "month-day" else "day-month"
        self.values: dict[str, Value] = {}
        self.adders: dict[str, QWidget] = {}
        s = step()
        layout = column(max(2, s // 2))
        self.setLayout(layout)
        adders = Flow(s)
        for name, title in self._titles().items():
            value = self._value(name, title)
            layout.addWidget(value)
            if not getattr(plant, name):
                value.hide()
                self.adders[name] = self._adder(value, title)
                adders.addWidget(self.adders[name])
        for title, text in plant.extra.items():
            if text:
                row = QHBoxLayout()
                caption = sentence(title, "caption")
                caption.setMinimumWidth(10 * s)
                row.addWidget(caption, 0, Qt.AlignmentFlag.AlignTop)
                row.addWidget(sentence(text), 1)
                layout.addLayout(row)
        self._adders = QWidget()
        self._adders.setLayout(adders)
        layout.addWidget(self._adders)
        self._adders.setVisible(bool(self.adders))

    def _titles(self) -> dict[str, str]:
        return {
            "status": self.tr("Status"),
            "sown": self.tr("Sown"),
            "place": self.tr("Place"),
            "obtained_from": self.tr("Obtained from"),
            "protected": self.tr("Protected"),
            "note": self.tr("Remark"),
            "plant": self.tr("Code"),
        }

    def name_value(self) -> Value:
        """The name, as a heading of its own at the top of the card."""
        value = self._value("name", self.tr("Name"), role="heading3")
        if not self._plant.name:
            value.shown.setText(self.tr("Add a name"))
            value.shown.setProperty("role", "soft")
        return value

    def _value(self, name: str, title: str, role: str = "text") -> Value:
        held = str(getattr(self._plant, name))
        shown = status_word(held) if name == "status" else held
        value = Value(
            name,
            title,
            shown,
            lambda: self._field(name, held),
            hint=self._hint(name),
            role=role,
            refused=reading_only(self._desk),
        )
        value.kept.connect(lambda text: self._keep(value, text))
        value.turned.connect(self.turned)
        value.left.connect(lambda: self._left(value))
        self.values[name] = value
        return value

    def _adder(self, value: Value, title: str) -> QWidget:
        def add() -> None:
            value.show()
            self.adders[value.name].hide()
            value.open()

        text = self.tr("+ {}").format(title[:1].lower() + title[1:])
        return adding_button(text, self.tr("Add: {}").format(title), add)

    def _left(self, value: Value) -> None:
        adder = self.adders.get(value.name)
        if adder is not None:
            value.hide()
            adder.show()
            adder.setFocus()
            self.turned.emit()

    def _hint(self, name: str) -> str:
        opened = self._desk.opened
        lines = []
        if name == "plant":
            lines.append(
                self.tr(
                    "The code stands on tags and packets too. Every place in the book that names "
                    "it changes with it; what is printed does not."
                )
            )
        if opened is not None and opened.file is None:
            path = place_for_book(opened.path)
            lines.append(
                self.tr("Enter keeps this as a book that can be written in: {}").format(path)
            )
        return "\n".join(lines)

    def _field(self, name: str, held: str) -> Field:
        field: Field
        if name == "status":
            words = [("", self.tr("not said")), *((one, status_word(one)) for one in STATUSES)]
            field = _StatusField(name, words)
        elif name == "sown":
            field = DateField(name, order=self._order)
        elif name == "note":
            field = LongTextField(name)
        elif name == "place":
            book = self._desk.book
            places = {} if book is None else {one.place: None for one in book.plants.values()}
            field = TextField(name, self.tr("bed / row / position"), sorted(filter(None, places)))
        else:
            field = TextField(name)
        field.set_text(held)
        return field

    # Keeping ------------------------------------------------------------------------------------

    def open(
        self,
        name: str,
        typed: str | None = None,
        shown: Plant | None = None,
        *,
        focus: bool = True,
    ) -> None:
        """Open a value to type into.

        Parameters
        ----------
        typed : what was typed before the card was laid anew
        shown : the plant as it was then, so that a change made elsewhere is not written over
        focus : whether the keys go there
        """
        value = self.values.get(name)
        if value is None:
            return
        if shown is not None:
            self._shown[name] = shown
        value.show()
        if name in self.adders:
            self.adders[name].hide()
        value.open(typed, focus=focus)

    def typing(self, *, lasting: bool = False) -> tuple[Typing, ...]:
        """The values that are being typed into, what stands there, and the plant as it was then.

        lasting : as it still means the same on another day
        """
        return tuple(
            (
                name,
                value.field.lasting() if lasting else value.field.text(),
                self._shown.get(name, self._plant),
            )
            for name, value in self.values.items()
            if value.field is not None and not value.sent
        )

    def focused(self) -> str:
        """The value that the keys are at, or whose text was just sent; '' for none."""
        for name, value in self.values.items():
            if value.sent or value.shown.hasFocus():
                return name
        return ""

    def put_focus(self, name: str) -> None:
        """Put the keys on a value, or on the button that adds it."""
        value = self.values.get(name)
        if value is not None:
            self.adders.get(name, value.shown).setFocus()

    def _keep(self, value: Value, text: str) -> None:
        name, plant = value.name, self._shown.get(value.name, self._plant)
        field = value.field
        assert field is not None
        why = ""
        try:
            typed = field.value if isinstance(field, DateField) else text.strip()
        except Fault as fault:
            value.refuse(fault)
            return
        if isinstance(field, _StatusField):
            typed, why = field.value, field.why.value
        if typed == getattr(plant, name) and not why:
            value.close_field()
            self._left(value)
            return
        value.sent = True
        words, make = self._edit(plant, name, typed, why)

        def done(_: object) -> None:
            if name == "plant":
                self.renamed.emit(typed)

        def refused(fault: Fault) -> None:
            try:
                value.refuse(fault)
            except RuntimeError:
                # The card was laid anew meanwhile.
                self._desk.refused.emit(fault)

        self._desk.record(words, make, done, refused)

    def _edit(
        self, plant: Plant, name: str, typed: str, why: str = ""
    ) -> tuple[str, Callable[[Edit], Any]]:
        code = plant.plant
        today = datetime.date.today().isoformat()
        if name == "plant":
            return self.tr("code {} for {}").format(typed, code), lambda edit: rename_plant(
                edit, code, typed
            )
        title = {"name": self.tr("Name"), **self._titles()}[name]
        words = self.tr("{} of {}").format(title[:1].lower() + title[1:], code)

        def change(edit: Edit) -> None:
            current = edit.book.plants.get(code)
            same = current is not None and getattr(current, name) == getattr(plant, name)
            # What was changed elsewhere meanwhile is left to `amend`, which refuses.
            if same and name == "status" and typed and typed != plant.status:
                set_status(edit, [code], typed, date=today, why=why)
            elif same and name == "status" and typed:
                record_note(edit, "plants", code, why, date=today)
            elif same and name == "place" and typed and plant.place:
                move_plants(edit, {code: typed}, date=today)
            else:
                amend(edit, plant, **{name: typed})

        return words, change
