"""Deleting a plant, a cross or another record: what hangs on it, and the ways out."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QButtonGroup, QRadioButton, QWidget

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording import deleting
from pedigreeview.book.recording.correcting import move_to_cross, repoint
from pedigreeview.book.recording.hanging import HangsOn, descendants, what_hangs_on
from pedigreeview.book.records import Cross, Plant, Record
from pedigreeview.window.edit_dialog import EditDialog, Make
from pedigreeview.window.forms.fields import Field, PlantField, TextField
from pedigreeview.window.forms.record_field import RecordField
from pedigreeview.window.labels import (
    action_button,
    column,
    dialog_foot,
    heading,
    scrolled,
    sentence,
)
from pedigreeview.window.record_words import about_words, record_name, table_words
from pedigreeview.window.saying import say
from pedigreeview.window.style import step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.main_window import MainWindow

__all__ = ["DeletingDialog", "ask_delete"]


def ask_delete(window: MainWindow, record: Record) -> None:
    """Ask what is to become of a record and of what hangs on it, and do it as one edit."""
    if window.desk.book is not None:
        window.show_dialog(DeletingDialog(window.desk, record, window))


class DeletingDialog(EditDialog):
    """The ways out as choices, the mildest first; each is one step that can be undone."""

    def __init__(self, desk: Desk, record: Record, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        name = record_name(record)
        self.setWindowTitle(self.tr("Delete {}").format(name))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._desk, self._record, self._name = desk, record, name
        book = desk.book
        assert book is not None
        hangs = what_hangs_on(book, record)
        s = step()
        layout = column(s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Delete {}?").format(about_words(record)), 2))
        inner = QWidget()
        self._body = body = column(s)
        body.setContentsMargins(0, 0, s, 0)
        inner.setLayout(body)
        self.hanging = sentence(self._hanging_text(hangs))
        body.addWidget(self.hanging)
        body.addSpacing(s)
        self.choices: dict[str, QRadioButton] = {}
        self.group = QButtonGroup(self)
        self.fields: dict[str, Field] = {}
        for way, text, more in self._ways(book, hangs):
            self._offer(body, way, text, more)
        self.why = TextField("why", self.tr("why, if you like"))
        self.why.set_label(self.tr("Why"))
        body.addWidget(self.why)
        body.addStretch(1)
        self.area = scrolled(inner)
        layout.addWidget(self.area, 1)
        self.message = sentence("", "fault")
        self.message.hide()
        layout.addWidget(self.message)
        self.go_button = action_button("", self.go, main=True)
        layout.addLayout(dialog_foot(self, self.go_button))
        self.group.buttonToggled.connect(lambda *_: self._tell())
        if self.choices:
            first = next(iter(self.choices.values()))
            first.setChecked(True)
            first.setFocus()
        else:
            self.go_button.hide()
            self.why.hide()
        self._tell()
        self._fit(78 * s)

    def _hanging_text(self, hangs: HangsOn) -> str:
        if not hangs.hanging:
            return self.tr("Nothing hangs on it.")
        lines, tables = [], table_words()
        for one in hangs.hanging:
            named = tables.get(one.table)
            many = QLocale().toString(one.count)
            line = f"{named}: {many}" if named else f"{many} {say(one.what)}"
            if one.examples:
                more = ", …" if one.count > len(one.examples) else ""
                codes = f"{', '.join(one.examples)}{more}"
                line += f" ({codes})" if named else f": {codes}"
            lines.append(f"•  {line}")
        free = self.tr("Only its own data hang on it:")
        other = self.tr("On it hang:")
        return "\n".join([free if hangs.free else other, *lines])

    def _ways(self, book: Book, hangs: HangsOn) -> list[tuple[str, str, str]]:
        """(word, what is chosen, what it means) of each way out, the mildest first."""
        record, name, ways = self._record, self._name, list(hangs.ways)
        found: list[tuple[str, str, str]] = []
        if isinstance(record, Plant):
            if record.status != "culled":
                found.append(
                    (
                        "cull",
                        self.tr("&Cull it instead"),
                        self.tr("It stays in the book as a culled plant; its progeny need it."),
                    )
                )
            if "repoint" in ways:
                found.append(
                    (
                        "repoint",
                        self.tr("Put &another plant in its place"),
                        self.tr("Its progeny, scores and notes go to that plant; {} is deleted."),
                    )
                )
                found.append(
                    (
                        "unknown_parent",
                        self.tr("Delete it and leave its progeny an &unknown parent"),
                        self.tr("A dated note keeps that it was {}."),
                    )
                )
            if "with_progeny" in ways:
                doomed = len(descendants(book, [record.plant])) - 1
                text = self.tr("Delete it and a&ll that came from it: {}")
                found.append(
                    (
                        "with_progeny",
                        text.format(count(doomed, self.tr("plant"), self.tr("plants"))),
                        self.tr("Their crosses, seed, scores and notes go as well."),
                    )
                )
        elif isinstance(record, Cross):
            if "move" in ways:
                found.append(
                    (
                        "move",
                        self.tr("&Move its progeny to another cross, then delete it"),
                        self.tr("A dated note of each plant keeps where it came from."),
                    )
                )
            if record.state != "skipped" and "skip" in ways:
                found.append(
                    (
                        "skip",
                        self.tr("&Skip it instead"),
                        self.tr("It stays in the book as a cross that was not made."),
                    )
                )
            if "with_progeny" in ways:
                progeny = [one.plant for one in book.plants.values() if one.cross == name]
                doomed = len(descendants(book, progeny))
                text = self.tr("Delete it and a&ll that came from it: {}")
                found.append(
                    (
                        "with_progeny",
                        text.format(count(doomed, self.tr("plant"), self.tr("plants"))),
                        self.tr("Their crosses, seed, scores and notes go as well."),
                    )
                )
        if "delete" in ways:
            found.append(
                (
                    "delete",
                    self.tr("&Delete it"),
                    self.tr("What hangs on it goes with it; undo brings all of it back.")
                    if hangs.hanging
                    else self.tr("Undo brings it back."),
                )
            )
        if not found:
            found_text = self.tr("Delete or change what hangs on it first.")
            self.hanging.setText(f"{self.hanging.text()}\n{found_text}")
        return [(way, text, more.format(name)) for way, text, more in found]

    def _offer(self, layout: Any, way: str, text: str, more: str) -> None:
        s = step()
        button = QRadioButton(text)
        button.setProperty("role", "choice")
        button.setAccessibleDescription(more)
        self.group.addButton(button)
        self.choices[way] = button
        part = column(max(1, s // 4))
        part.addWidget(button)
        below = column(max(1, s // 4))
        below.setContentsMargins(round(2.6 * s), 0, 0, s // 2)
        below.addWidget(sentence(more, "soft"))
        if way == "repoint":
            self.fields[way] = PlantField("other", self._desk, self.tr("the plant in its place"))
        elif way == "move":
            self.fields[way] = RecordField("cross", self._desk, "crosses")
        if way in self.fields:
            self.fields[way].set_label(text.replace("&", ""))
            self.fields[way].hide()
            below.addWidget(self.fields[way])
        part.addLayout(below)
        layout.addLayout(part)

    @property
    def way(self) -> str:
        """The way out that is chosen."""
        return next((way for way, button in self.choices.items() if button.isChecked()), "")

    def _tell(self) -> None:
        way = self.way
        for word, field in self.fields.items():
            field.setVisible(word == way)
        self.why.setVisible(way in ("cull", "skip", "move"))
        self.message.hide()
        self.go_button.setText(
            {
                "cull": self.tr("Cull it"),
                "skip": self.tr("Skip it"),
                "repoint": self.tr("Put it in its place"),
                "move": self.tr("Move and delete"),
                "unknown_parent": self.tr("Delete it"),
                "with_progeny": self.tr("Delete them all"),
                "delete": self.tr("Delete it"),
            }.get(way, "")
        )
        if self.isVisible():
            self._fit(self.width())

    def _fit(self, width: int) -> None:
        """As tall as what it says, as far as the screen goes."""
        s = step()
        body = self._body.heightForWidth(width - 7 * s - round(1.4 * s))
        room = self.screen().availableGeometry().height() * 95 // 100
        self.resize(width, min(max(self.height(), body + 24 * s), room))

    def entry(self) -> tuple[str, Make]:
        way, record, name = self.way, self._record, self._name
        today, why = datetime.date.today().isoformat(), self.why.value
        what = about_words(record)
        if way == "cull":
            return self.tr("culling {}").format(name), lambda edit: deleting.cull_instead(
                edit, name, date=today, why=why
            )
        if way == "skip":
            return self.tr("skipping {}").format(name), lambda edit: deleting.skip_instead(
                edit, name, why=why
            )
        if way == "repoint":
            other = self._filled(way, self.tr("Choose the plant that takes its place."))
            words = self.tr("{} in the place of {}").format(other, name)
            return words, lambda edit: repoint(edit, name, other, date=today)
        if way == "move":
            other = self._filled(way, self.tr("Choose the cross that its progeny go to."))

            def move(edit: Edit) -> None:
                codes = [one.plant for one in edit.book.plants.values() if one.cross == name]
                move_to_cross(edit, codes, other, date=today, why=why)
                deleting.delete(edit, edit.book.crosses[name])

            return self.tr("the progeny of {} to {}").format(name, other), move
        if way == "unknown_parent":
            words = self.tr("deleting {}, its progeny kept").format(what)
            return words, lambda edit: deleting.give_progeny_unknown_parent(edit, name, date=today)
        if way == "with_progeny":
            words = self.tr("deleting {} with its progeny").format(what)
            if isinstance(record, Plant):
                return words, lambda edit: deleting.delete_with_progeny(edit, name)
            return words, lambda edit: deleting.delete_cross_with_progeny(edit, name)
        return self.tr("deleting {}").format(what), lambda edit: deleting.delete(edit, record)

    def _filled(self, way: str, todo: str) -> str:
        text = self.fields[way].text()
        if not text:
            raise Fault(todo, Place(column=self.fields[way].column))
        return text

    def done_words(self, words: str) -> str:
        return self.tr("Done: {}. Undo takes it back.").format(words)

    def field_at(self, column: str) -> Field | None:
        field = self.fields.get(self.way)
        return field if field is not None and field.column == column else None
