"""What every pair must keep to, and who may stand as a parent at all."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QWidget

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.planning.pairs import Limits
from pedigreeview.window.forms.fields import TextField
from pedigreeview.window.labels import column, sentence
from pedigreeview.window.relatedness_choice import SetChoice
from pedigreeview.window.style import step

__all__ = ["CandidatesPanel", "LimitsPanel", "ShareField"]

_SETS = ("kept", "picked", "living", "flowering", "founders", "cross", "typed", "all")


class ShareField(TextField):
    """A share typed as a fraction, a decimal or in percent; blank for no limit."""

    @property
    def share(self) -> float | None:
        """The share, 0 to 1; None for a blank.

        Raises
        ------
        Fault : it is no share
        """
        text = self.text().replace(",", ".").replace(" ", "")
        if not text:
            return None
        try:
            found = Fraction(text[:-1]) / 100 if text.endswith("%") else Fraction(text)
        except (ValueError, ZeroDivisionError):
            found = Fraction(-1)
        if not 0 <= found <= 1:
            raise Fault(
                self.tr("'{}' is no share from 0 to 1.").format(self.text()),
                Place(column=self.column),
                self.tr("Type 1/8, 0.125 or 12.5%, or leave it blank for no limit."),
            )
        return float(found)

    def check(self) -> None:
        try:
            found = self.share
        except Fault as fault:
            self.say(fault.what, wrong=True)
            return
        plain = found is None or "/" not in self.text()
        self.say("" if plain else f"= {found:.4g}")


class _Words(QLabel):
    """The words of a box, on as many lines as they need; a click on them is one on the box."""

    def __init__(self, words: str, box: QCheckBox) -> None:
        super().__init__(words)
        self._box = box
        self.setWordWrap(True)
        self.setBuddy(box)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._box.click()


def wrapped(box: QCheckBox) -> QWidget:
    """A box whose words run on to further lines where there is little room."""
    holder = QWidget()
    row = QHBoxLayout(holder)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(max(2, step() // 2))
    words = box.text()
    box.setText("")
    box.setAccessibleName(words)
    row.addWidget(box, 0, Qt.AlignmentFlag.AlignTop)
    row.addWidget(_Words(words, box), 1)
    return holder


class LimitsPanel(QWidget):
    """The hard limits."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        s = step()
        outer = column(max(2, s // 2))
        self.setLayout(outer)
        hint = self.tr("no limit; 1/8 or 0.125")
        self.inbreeding = ShareField("inbreeding", hint)
        self.coancestry = ShareField("coancestry", hint)
        self.founder = ShareField("founder_share", hint)
        for field, words in (
            (self.inbreeding, self.tr("F of the progeny at most")),
            (self.coancestry, self.tr("Coancestry of the two at most")),
            (self.founder, self.tr("Share of any one founder at most")),
        ):
            outer.addWidget(sentence(words, "caption"))
            field.set_label(words)
            field.changed.connect(self.changed)
            outer.addWidget(field)
        self.together = self._box(self.tr("They flower together, where it is recorded"))
        self.unprotected = self._box(self.tr("No protected variety as a parent"))
        self.fertile = self._box(self.tr("Not noted as sterile both ways"), on=True)
        self.new = self._box(self.tr("Never crossed before"))
        for box in (self.together, self.unprotected, self.fertile, self.new):
            outer.addWidget(wrapped(box))

    def _box(self, words: str, *, on: bool = False) -> QCheckBox:
        box = QCheckBox(words)
        box.setChecked(on)
        box.toggled.connect(lambda _: self.changed.emit())
        return box

    def _fields(self) -> dict[str, ShareField]:
        return {
            "inbreeding": self.inbreeding,
            "coancestry": self.coancestry,
            "founder": self.founder,
        }

    def _boxes(self) -> dict[str, QCheckBox]:
        return {
            "together": self.together,
            "unprotected": self.unprotected,
            "fertile": self.fertile,
            "new": self.new,
        }

    def state(self) -> dict[str, object]:
        """The limits as they are kept: what is typed, and which boxes are ticked."""
        return {
            **{name: field.text() for name, field in self._fields().items()},
            **{name: box.isChecked() for name, box in self._boxes().items()},
        }

    def restore(self, state: object) -> None:
        """Take up limits that were kept; the usual one for each that was not."""
        held = state if isinstance(state, dict) else {}
        before = self.blockSignals(True)
        for name, field in self._fields().items():
            typed = held.get(name)
            field.set_text(typed if isinstance(typed, str) else "")
        for name, box in self._boxes().items():
            ticked = held.get(name)
            box.setChecked(ticked if isinstance(ticked, bool) else name == "fertile")
        self.blockSignals(before)

    def limits(self) -> Limits:
        """The limits that are set.

        Raises
        ------
        Fault : a field that is no share
        """
        return Limits(
            inbreeding=self.inbreeding.share,
            coancestry=self.coancestry.share,
            founder_share=self.founder.share,
            overlap=1.0 if self.together.isChecked() else None,
            fertile=self.fertile.isChecked(),
            never_made=self.new.isChecked(),
        )


class CandidatesPanel(QWidget):
    """Who may be the seed parent, and who the pollen parent."""

    changed = Signal()

    def __init__(self, order: Order = "day-month") -> None:
        super().__init__()
        s = step()
        outer = column(max(2, s // 2))
        self.setLayout(outer)
        self.seeds = SetChoice(self.tr("Candidates"), order, _SETS)
        self.apart = QCheckBox(self.tr("Other plants give the pollen"))
        self.pollens = SetChoice(self.tr("Candidates that give the pollen"), order, _SETS)
        self._seed_words = sentence(self.tr("In either part"), "caption")
        self._pollen_words = sentence(self.tr("As pollen parents"), "caption")
        for widget in (
            self._seed_words,
            self.seeds,
            wrapped(self.apart),
            self._pollen_words,
            self.pollens,
        ):
            outer.addWidget(widget)
        self.apart.toggled.connect(self._turn)
        self.seeds.changed.connect(self.changed)
        self.pollens.changed.connect(self._pollens_changed)
        self._show()

    def each(self, do: Callable[[SetChoice], None]) -> None:
        """Do the same with both choices."""
        for choice in (self.seeds, self.pollens):
            do(choice)

    def _pollens_changed(self) -> None:
        if self.apart.isChecked():
            self.changed.emit()

    def _turn(self) -> None:
        self._show()
        self.changed.emit()

    def _show(self) -> None:
        apart = self.apart.isChecked()
        self._seed_words.setText(
            self.tr("As seed parents") if apart else self.tr("As seed or pollen parents")
        )
        self._pollen_words.setVisible(apart)
        self.pollens.setVisible(apart)
