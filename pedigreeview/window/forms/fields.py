"""Fields of a form: a plant, a date as people type it, a count, a choice, text.

Every field has `value`, `set_value`, a `changed` signal, and a column: the name under which a
fault of the record speaks of it.  A field that cannot be read raises a `Fault` with that column.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterable, Sequence

from PySide6.QtCore import QAbstractItemModel, QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent, QTextCursor
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QLineEdit,
    QListView,
    QPlainTextEdit,
    QWidget,
)

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.typed_dates import Order, When, shown, typed_date
from pedigreeview.window.desk import Desk
from pedigreeview.window.find import CodeList
from pedigreeview.window.labels import Said, column, say_in
from pedigreeview.window.style import step
from pedigreeview.window.translating import date_words

__all__ = [
    "ChoiceField",
    "CountField",
    "DateField",
    "Field",
    "FlagField",
    "LongTextField",
    "NumberField",
    "OfferingField",
    "PlantField",
    "TextField",
]


class Field(QWidget):
    """A field with a line below it for what was understood, or what is wrong."""

    changed = Signal()

    def __init__(self, name: str) -> None:
        super().__init__()
        self.column = name
        layout = column(max(1, step() // 4))
        self.setLayout(layout)
        self._said = Said()
        self._said.setWordWrap(True)
        self._said.setProperty("role", "soft")
        self._said.hide()

    def _hold(self, editor: QWidget) -> None:
        layout = self.layout()
        assert layout is not None
        layout.addWidget(editor)
        layout.addWidget(self._said)
        self.setFocusProxy(editor)

    def editors(self) -> tuple[QWidget, ...]:
        """What is typed into."""
        editor = self.focusProxy()
        return (editor,) if isinstance(editor, QWidget) else ()

    def set_label(self, text: str) -> None:
        """What a screen reader calls the field."""
        editor = self.focusProxy()
        if isinstance(editor, QWidget):
            editor.setAccessibleName(text)

    def say(self, text: str, *, wrong: bool = False) -> None:
        """A line below the field; '' for none."""
        say_in(self._said, text, "fault" if wrong else "soft")
        self._said.setVisible(bool(text))

    def said(self) -> str:
        """The line below the field."""
        return self._said.text() if not self._said.isHidden() else ""

    def text(self) -> str:
        """What stands in the field, to be proposed again."""
        raise NotImplementedError

    def set_text(self, text: str) -> None:
        """Put a text in the field."""
        raise NotImplementedError

    def lasting(self) -> str:
        """What stands in the field, as it still means the same on another day."""
        return self.text()

    def check(self) -> None:
        """Say what was understood; nothing is refused while one types."""


class TextField(Field):
    """One line of text."""

    def __init__(self, name: str, hint: str = "", proposals: Iterable[str] = ()) -> None:
        super().__init__(name)
        self.editor = QLineEdit()
        self.editor.setPlaceholderText(hint)
        proposed = list(proposals)
        if proposed:
            from PySide6.QtWidgets import QCompleter

            completer = QCompleter(proposed, self.editor)
            completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            self.editor.setCompleter(completer)
        self._hold(self.editor)
        self.editor.textChanged.connect(self._typed)

    def _typed(self) -> None:
        self.check()
        self.changed.emit()

    def text(self) -> str:
        return self.editor.text().strip()

    def set_text(self, text: str) -> None:
        self.editor.setText(text)

    @property
    def value(self) -> str:
        """The text without blanks at its ends."""
        return self.text()


class LongTextField(Field):
    """Several lines of text; Tab leaves it."""

    def __init__(self, name: str, lines: int = 3) -> None:
        super().__init__(name)
        self.editor = QPlainTextEdit()
        self.editor.setTabChangesFocus(True)
        self.editor.setFixedHeight(self.editor.fontMetrics().lineSpacing() * lines + 2 * step())
        self._hold(self.editor)
        self.editor.textChanged.connect(self.changed)

    def text(self) -> str:
        return self.editor.toPlainText().strip()

    def set_text(self, text: str) -> None:
        self.editor.setPlainText(text)
        self.editor.moveCursor(QTextCursor.MoveOperation.End)

    @property
    def value(self) -> str:
        """The text without blanks at its ends."""
        return self.text()


class CountField(TextField):
    """A whole number, or nothing where it is not known."""

    def __init__(self, name: str, hint: str = "") -> None:
        super().__init__(name, hint)
        self.editor.setInputMethodHints(Qt.InputMethodHint.ImhDigitsOnly)

    @property
    def count(self) -> int | None:
        """The number, None for a blank.

        Raises
        ------
        Fault : it is no whole number
        """
        text = self.text()
        if not text:
            return None
        try:
            return int(text)
        except ValueError:
            raise Fault(
                self.tr("'{}' is no whole number.").format(text),
                Place(column=self.column),
                self.tr("Type digits alone, or leave it blank if it is not known."),
            ) from None

    def check(self) -> None:
        try:
            _ = self.count
        except Fault as fault:
            self.say(fault.what, wrong=True)
        else:
            self.say("")


class NumberField(TextField):
    """A number with decimals, with comma or point, or nothing."""

    @property
    def number(self) -> float | None:
        """The number, None for a blank.

        Raises
        ------
        Fault : it is no number
        """
        text = self.text().replace(",", ".")
        if not text:
            return None
        try:
            found = float(text)
        except ValueError:
            found = float("nan")
        if found != found or found in (float("inf"), float("-inf")):
            raise Fault(
                self.tr("'{}' is no number.").format(self.text()),
                Place(column=self.column),
                self.tr("Type a number such as 12 or 0.5."),
            )
        return found

    def check(self) -> None:
        try:
            _ = self.number
        except Fault as fault:
            self.say(fault.what, wrong=True)
        else:
            self.say("")


class DateField(TextField):
    """A date as people type it; the day that was understood stands below."""

    def __init__(
        self,
        name: str,
        today: Callable[[], datetime.date] = datetime.date.today,
        order: Order = "day-month",
        when: When = "past",
    ) -> None:
        self._today, self._order, self._when = today, order, when
        super().__init__(name)
        self.editor.setPlaceholderText(self.tr("today, 3.5., 3 May, -2"))

    @property
    def value(self) -> str:
        """The date in ISO form, '' for a blank.

        Raises
        ------
        Fault : it is no date
        """
        return typed_date(
            self.text(),
            self._today(),
            order=self._order,
            when=self._when,
            words=date_words(),
            column=self.column,
        )

    def lasting(self) -> str:
        # 'today' of another day would be another day.
        try:
            return self.value
        except Fault:
            return self.text()

    def check(self) -> None:
        try:
            found = self.value
        except Fault as fault:
            self.say(fault.what, wrong=True)
            return
        plain = self.text() == found or not found
        self.say("" if plain and len(found) < 10 else shown(found, date_words()))


class ChoiceField(Field):
    """One of a few words: what stands in the record, and how it is called."""

    def __init__(self, name: str, choices: Sequence[tuple[str, str]]) -> None:
        super().__init__(name)
        self.editor = QComboBox()
        for word, text in choices:
            self.editor.addItem(text, word)
        # Its longest word may be wider than the bench; the list that opens shows all of it.
        policy = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        self.editor.setSizeAdjustPolicy(policy)
        self.editor.setMinimumContentsLength(10)
        self._hold(self.editor)
        self.editor.currentIndexChanged.connect(self.changed)

    @property
    def value(self) -> str:
        """The word that is chosen."""
        return str(self.editor.currentData() or "")

    def text(self) -> str:
        return self.value

    def set_text(self, text: str) -> None:
        at = self.editor.findData(text)
        if at >= 0:
            self.editor.setCurrentIndex(at)

    def set_choices(self, choices: Sequence[tuple[str, str]]) -> None:
        """Offer other words; the one that is chosen stays if it is among them."""
        held = self.value
        self.editor.blockSignals(True)
        self.editor.clear()
        for word, text in choices:
            self.editor.addItem(text, word)
        self.editor.blockSignals(False)
        self.set_text(held)
        self.changed.emit()


class _Check(QCheckBox):
    """A box to tick whose text runs on in further lines where there is no room for one."""

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self._full, self._room = text, 0

    def setText(self, text: str) -> None:
        self._full = text
        self.fit(self._room)

    def fit(self, room: int) -> None:
        """Lay the text out for a width; 0: as wide as it is."""
        self._room = room
        metrics, box = self.fontMetrics(), 4 * step()
        lines: list[str] = []
        for word in self._full.split(" "):
            longer = f"{lines[-1]} {word}" if lines else word
            if lines and (not room or metrics.horizontalAdvance(longer) + box <= room):
                lines[-1] = longer
            else:
                lines.append(word)
        super().setText("\n".join(lines))


class FlagField(Field):
    """Yes or no."""

    def __init__(self, name: str, text: str, *, on: bool = False) -> None:
        super().__init__(name)
        self.editor = _Check(text)
        self.editor.setChecked(on)
        self._hold(self.editor)
        self.editor.toggled.connect(self.changed)

    @property
    def value(self) -> bool:
        """Whether it is ticked."""
        return self.editor.isChecked()

    def text(self) -> str:
        return "1" if self.value else ""

    def set_text(self, text: str) -> None:
        self.editor.setChecked(bool(text))


class OfferingField(TextField):
    """A field with a list below it of what fits; Down, Up and Enter take a row of it."""

    found: QListView

    def _offer_from(self, model: QAbstractItemModel, hint: str, words: str) -> None:
        """Lay the list below the field.

        hint : stands in the empty field
        words : what the list is called
        """
        self.editor.setPlaceholderText(hint)
        self.found = QListView()
        self.found.setObjectName("found")
        self.found.setModel(model)
        self.found.setUniformItemSizes(True)
        self.found.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.found.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.found.setAccessibleName(words)
        self.found.hide()
        layout = self.layout()
        assert layout is not None
        layout.addWidget(self.found)
        self.found.clicked.connect(lambda index: self._choose(index.row()))
        self.editor.installEventFilter(self)
        self.editor.textEdited.connect(self.search)

    def search(self, typed: str) -> None:
        """Show what fits."""
        raise NotImplementedError

    def code_in(self, row: int) -> str:
        """What a row of the list puts into the field."""
        raise NotImplementedError

    def _meant(self) -> bool:
        """Whether Tab takes the row that is marked."""
        raise NotImplementedError

    def _open(self) -> None:
        """Open the list at its first row."""
        rows = self.found.model().rowCount()
        self.found.setCurrentIndex(self.found.model().index(0, 0))
        self.found.setFixedHeight(
            self.found.sizeHintForRow(0) * min(rows, 6) + 2 * self.found.frameWidth() + 2
        )
        self.found.show()

    def _choose(self, row: int) -> None:
        self.editor.setText(self.code_in(row))
        self.found.hide()

    def _step(self, by: int) -> None:
        model = self.found.model()
        row = max(0, min(self.found.currentIndex().row() + by, model.rowCount() - 1))
        self.found.setCurrentIndex(model.index(row, 0))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.FocusOut:
            self.found.hide()
        is_open = not self.found.isHidden()
        if is_open and isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            key, row = event.key(), self.found.currentIndex().row()
            if key in (Qt.Key.Key_Down, Qt.Key.Key_Up):
                self._step(1 if key == Qt.Key.Key_Down else -1)
                return True
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self._choose(row)
                return True
            if key == Qt.Key.Key_Tab and self._meant():
                self._choose(row)
            if key == Qt.Key.Key_Escape:
                self.found.hide()
                return True
        return super().eventFilter(watched, event)


class PlantField(OfferingField):
    """A plant by code or name, found as one types; Down and Enter take one from the list."""

    def __init__(self, name: str, desk: Desk, hint: str = "") -> None:
        self._desk = desk
        super().__init__(name)
        self.model = CodeList(self, 40)
        self._offer_from(self.model, hint or self.tr("code or name"), self.tr("Plants found"))

    def search(self, typed: str) -> None:
        """Show the plants that fit; none for a blank."""
        opened = self._desk.opened
        if opened is None or not typed.strip():
            self.found.hide()
            return
        self.model.set_finder(opened.finder)
        self.model.search(typed)
        rows = self.model.rowCount()
        exact = rows == 1 and self.model.code(0) == typed.strip()
        if not rows or exact:
            self.found.hide()
            return
        self._open()

    def code_in(self, row: int) -> str:
        """The code in a row of the list."""
        return self.model.code(row)

    def _meant(self) -> bool:
        return self.model.rowCount() == 1

    def check(self) -> None:
        book = self._desk.book
        plant = book.plants.get(self.text()) if book is not None else None
        self.say(plant.name if plant is not None else "")
