"""Correcting the past: many plants get another parent, or go to another cross, in one step."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QButtonGroup, QLabel, QRadioButton, QWidget

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.problems import Problem
from pedigreeview.book.recording.correcting import correct_cross, give_parent, move_to_cross
from pedigreeview.book.recording.lookup import plant_called, split_codes
from pedigreeview.window.edit_dialog import EditDialog, Make
from pedigreeview.window.errands import Errands
from pedigreeview.window.forms.fields import Field, PlantField, TextField
from pedigreeview.window.forms.record_field import RecordField
from pedigreeview.window.labels import (
    action_button,
    column,
    dialog_foot,
    heading,
    say_in,
    scrolled,
    sentence,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import count, cross_line

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk

__all__ = ["CorrectingDialog", "Foreseen", "foresee"]

_PAUSE = 250
"""Milliseconds after the last key before what would change is worked out."""
_PROBLEMS = 6
_UNKNOWN = "?"


@dataclass(frozen=True, slots=True)
class Foreseen:
    """What an edit would change.

    plants : codes of the plants whose parents or cross would be others
    crosses : 'code: seed parent × pollen parent' of the crosses they would then be of
    new : codes of crosses that would be made
    made, gone : problems that it would make, and that it would take away
    """

    plants: tuple[str, ...]
    crosses: tuple[str, ...]
    new: tuple[str, ...]
    made: tuple[Problem, ...]
    gone: tuple[Problem, ...]


def foresee(book: Book, problems: Sequence[Problem], make: Make) -> Foreseen:
    """Try an edit on the side; the book stays as it is.  Raises Fault where it cannot be made."""
    from pedigreeview.network import PedigreeNetwork

    edit = Edit(book, "")
    make(edit)
    new = edit.book
    changed, crosses = [], {}
    for code, plant in new.plants.items():
        old = book.plants.get(code)
        if old is None:
            continue
        one, two = book.crosses.get(old.cross), new.crosses.get(plant.cross)
        if old.cross != plant.cross or one != two:
            changed.append(code)
            if two is not None:
                candidates = any(row.cross == two.cross for row in new.pollen_candidates)
                crosses[two.cross] = f"{two.cross}: {cross_line(new, two, candidates)}"
    before = {problem.message for problem in problems}
    found = PedigreeNetwork.from_records(new).problems()
    after = {problem.message for problem in found}
    return Foreseen(
        tuple(changed),
        tuple(crosses.values()),
        tuple(code for code in new.crosses if code not in book.crosses),
        tuple(problem for problem in found if problem.message not in before),
        tuple(problem for problem in problems if problem.message not in after),
    )


class CorrectingDialog(EditDialog):
    """Which plants, what is to be right from now on, and what would come of it."""

    def __init__(
        self,
        desk: Desk,
        errands: Errands,
        plants: Sequence[str] = (),
        cross: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Correct parents"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._desk, self._errands = desk, errands
        s = step()
        outer = column(s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Correct parents"), 2))
        text = self.tr(
            "What was written before is kept as a dated note of each plant, or as evidence of the "
            "cross. All of it is one step that can be undone."
        )
        outer.addWidget(sentence(text, "soft"))
        inner = QWidget()
        body = column(s)
        body.setContentsMargins(0, 0, 2 * s, 0)
        inner.setLayout(body)
        self.fields: dict[str, Field] = {}
        body.addWidget(heading(self.tr("Which plants"), 3))
        self.scope = QButtonGroup(self)
        self.of_plants = self._radio(body, self.scope, self.tr("T&hese plants"))
        self._field(body, TextField("plants", self.tr("codes, parted by commas")), "")
        self.of_cross = self._radio(body, self.scope, self.tr("&All plants of one cross"))
        self._field(body, RecordField("of", desk, "crosses"), "")
        body.addWidget(heading(self.tr("What is right"), 3))
        self.what = QButtonGroup(self)
        self.parents = self._radio(body, self.what, self.tr("They have another &parent"))
        self.hint = sentence("", "soft")
        body.addWidget(self.hint)
        hint = self.tr("as it was; ? for not known")
        self._field(body, PlantField("seed_parent", desk, hint), self.tr("&Seed parent ♀"))
        self._field(body, PlantField("pollen_parent", desk, hint), self.tr("P&ollen parent ♂"))
        self.moved = self._radio(body, self.what, self.tr("They came from another &cross"))
        self._field(body, RecordField("cross", desk, "crosses"), "")
        self._field(body, TextField("why", self.tr("how it came to light")), self.tr("&Why"))
        body.addStretch(1)
        self.area = scrolled(inner)
        outer.addWidget(self.area, 1)
        self.preview = sentence("")
        self.preview.setAccessibleName(self.tr("What would change"))
        outer.addWidget(self.preview)
        self.message = sentence("", "fault")
        self.message.hide()
        outer.addWidget(self.message)
        self.go_button = action_button(self.tr("Correct them"), self.go, main=True)
        outer.addLayout(dialog_foot(self, self.go_button))
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_PAUSE)
        self._timer.timeout.connect(self._foresee)
        (self.of_cross if cross and not plants else self.of_plants).setChecked(True)
        self.parents.setChecked(True)
        self.fields["plants"].set_text(", ".join(plants))
        self.fields["of"].set_text(cross)
        for group in (self.scope, self.what):
            group.buttonToggled.connect(lambda *_: self._tell())
        for field in self.fields.values():
            field.changed.connect(self._typed)
        self.finished.connect(lambda _: errands.drop("preview:correct"))
        self._tell()
        self.resize(80 * s, 84 * s)
        first = "seed_parent" if plants or cross else "plants"
        self.fields[first].setFocus()

    def _radio(self, body: object, group: QButtonGroup, text: str) -> QRadioButton:
        button = QRadioButton(text)
        button.setProperty("role", "choice")
        group.addButton(button)
        body.addWidget(button)  # type: ignore[attr-defined]
        return button

    def _field(self, body: object, field: Field, label: str) -> None:
        part = column(max(1, step() // 4))
        part.setContentsMargins(round(2.6 * step()) if field.column != "why" else 0, 0, 0, 0)
        named = {
            "plants": self.tr("Plants"),
            "of": self.tr("All plants of the cross"),
            "cross": self.tr("Cross that they came from"),
        }
        if label:
            shown = QLabel(label)
            shown.setBuddy(field)
            part.addWidget(shown)
        field.set_label(named.get(field.column, label.replace("&", "")))
        part.addWidget(field)
        body.addLayout(part)  # type: ignore[attr-defined]
        self.fields[field.column] = field

    # What is asked for --------------------------------------------------------------------------

    def _typed(self) -> None:
        self.message.hide()
        self._timer.start()

    def _tell(self) -> None:
        whole, moved = self.of_cross.isChecked(), self.moved.isChecked()
        self.fields["plants"].setEnabled(not whole)
        self.fields["of"].setEnabled(whole)
        for name in ("seed_parent", "pollen_parent"):
            self.fields[name].setEnabled(not moved)
        self.fields["cross"].setEnabled(moved)
        self.hint.setText(
            self.tr("The cross itself gets them and keeps its code.")
            if whole
            else self.tr(
                "Each goes to the cross of its new parents, which is made if the book has none."
            )
        )
        self._typed()

    def _codes(self, book: Book) -> list[str]:
        if self.of_cross.isChecked():
            cross = self.fields["of"].text()
            if cross not in book.crosses:
                raise Fault(self.tr("Choose the cross."), Place(column="of"))
            return [plant.plant for plant in book.plants.values() if plant.cross == cross]
        codes = split_codes(self.fields["plants"].text().replace(",", ";"))
        if not codes:
            raise Fault(self.tr("Name the plants."), Place(column="plants"))
        return [plant_called(book, code, "plants").plant for code in codes]

    def entry(self) -> tuple[str, Make]:
        book = self._desk.book
        assert book is not None
        codes, today = self._codes(book), datetime.date.today()
        date, why = today.isoformat(), self.fields["why"].text()
        said = count(len(codes), self.tr("plant"), self.tr("plants"))
        if self.moved.isChecked():
            cross = self.fields["cross"].text()
            if not cross:
                text = self.tr("Choose the cross that they came from.")
                raise Fault(text, Place(column="cross"))
            words = self.tr("{} moved to the cross {}").format(said, cross)
            return words, lambda edit: move_to_cross(edit, codes, cross, date=date, why=why)
        seed, pollen = (self._parent(name) for name in ("seed_parent", "pollen_parent"))
        if seed is None and pollen is None:
            raise Fault(self.tr("Name the parent that is right."), Place(column="seed_parent"))
        if self.of_cross.isChecked():
            held = self.fields["of"].text()
            words = self.tr("other parents of the cross {}").format(held)
            return words, lambda edit: correct_cross(
                edit, held, seed_parent=seed, pollen_parent=pollen, date=date, why=why
            )
        words = self.tr("another parent for {}").format(said)
        return words, lambda edit: give_parent(
            edit, codes, seed_parent=seed, pollen_parent=pollen, today=today, date=date, why=why
        )

    def _parent(self, name: str) -> str | None:
        """The code typed; '' for a parent that is not known, None for one left as it was."""
        text = self.fields[name].text()
        return "" if text == _UNKNOWN else text or None

    # What would come of it ----------------------------------------------------------------------

    def _foresee(self) -> None:
        opened = self._desk.opened
        if opened is None:
            return
        try:
            _, make = self.entry()
        except Fault as fault:
            self._errands.drop("preview:correct")
            self._show(fault.what, "soft")
            return
        book, problems = opened.net.book, opened.problems
        self._errands.ask(
            "preview:correct",
            lambda: foresee(book, problems, make),
            self._foreseen,
            lambda fault: self._show(f"{fault.what} {fault.todo}".strip(), "fault"),
        )

    def _foreseen(self, found: Foreseen) -> None:
        if not found.plants and not found.new:
            self._show(self.tr("Nothing would change."), "soft")
            return
        plants = count(len(found.plants), self.tr("plant"), self.tr("plants"))
        lines = [self.tr("{} would change.").format(plants)]
        if found.crosses:
            shown, more = found.crosses[:3], len(found.crosses) - 3
            text = "; ".join(shown) + (self.tr("; and {} more").format(more) if more > 0 else "")
            lines.append(self.tr("They would be of {}.").format(text))
        if found.new:
            lines.append(self.tr("New in the book: {}.").format(", ".join(found.new)))
        if found.gone:
            mended = count(len(found.gone), self.tr("problem"), self.tr("problems"))
            lines.append(self.tr("{} of the checks would be mended.").format(mended))
        if found.made:
            made = count(len(found.made), self.tr("problem"), self.tr("problems"))
            lines.append(self.tr("It would make {}:").format(made))
            lines += [f"•  {problem.message}" for problem in found.made[:_PROBLEMS]]
            if len(found.made) > _PROBLEMS:
                lines.append(self.tr("and {} more").format(len(found.made) - _PROBLEMS))
        else:
            lines.append(self.tr("It would make no problem."))
        self._show("\n".join(lines), "warn" if found.made else "text")

    def _show(self, text: str, role: str) -> None:
        say_in(self.preview, text, role)

    # Doing it -----------------------------------------------------------------------------------

    def done_words(self, words: str) -> str:
        return self.tr("Corrected: {}. Undo takes it back.").format(words)

    def field_at(self, column: str) -> Field | None:
        field = self.fields.get(column)
        return field if field is not None and field.isEnabled() else None
