"""The fields of the report dialog: which report, its parts, paper, and what the person adds."""

from __future__ import annotations

import datetime
from collections.abc import Iterable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.reports.label_sheets import PAPER_MM
from pedigreeview.reports.report_model import Cover
from pedigreeview.reports.report_words import part_words
from pedigreeview.window.labels import column, heading, sentence
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.style import step

__all__ = ["ReportForm"]

_KEPT = "report"


class ReportForm(QWidget):
    """What is wanted; `kind_changed` where another report is to be made, `changed` for the rest."""

    changed = Signal()
    kind_changed = Signal()

    def __init__(self, code: str, preferences: Preferences, *, line: bool, founder: bool) -> None:
        super().__init__()
        self._preferences = preferences
        held = preferences.last_used(_KEPT)
        s = step()
        body = self._body = column(s)
        body.setContentsMargins(0, 0, s, 0)
        self.setLayout(body)
        self.kind = self._combo(self.tr("Which report"))
        self.kind.addItem(self.tr("all about {}").format(code), False)
        if not founder:
            self.kind.addItem(self.tr("the history of the line that ends in {}").format(code), True)
        self.kind.setCurrentIndex(int(line and not founder))
        self._labelled(self.tr("Which report"), self.kind)
        if founder:
            body.addWidget(
                sentence(
                    self.tr("A founder has no history: nothing is recorded before it."), "soft"
                )
            )
        self.paper = self._combo(self.tr("Paper"))
        for name in PAPER_MM:
            self.paper.addItem(name, name)
        self.paper.setCurrentIndex(max(0, self.paper.findData(held.get("paper", ""))))
        self._labelled(self.tr("Paper"), self.paper)
        self.grey = QCheckBox(self.tr("Pedigree in grey, founders told apart by pattern"))
        self.grey.setChecked(held.get("grey", "yes") == "yes")
        body.addWidget(self.grey)
        self.person = self._lines(
            self.tr("Your name and address, as they are to stand on it"), held.get("person", "")
        )
        self.date = QLineEdit(datetime.date.today().isoformat())
        self._labelled(self.tr("Date"), self.date)
        self.caption = self._lines(self.tr("In your own words, below the title"), "")
        body.addWidget(heading(self.tr("Parts"), 3))
        self._parts = QVBoxLayout()
        self._parts.setSpacing(s // 2)
        body.addLayout(self._parts)
        self.boxes: dict[str, QCheckBox] = {}
        self._left_out: set[str] = set()
        body.addStretch(1)
        self.kind.currentIndexChanged.connect(lambda _: self.kind_changed.emit())
        self.grey.toggled.connect(lambda _: self.changed.emit())
        self.paper.currentIndexChanged.connect(lambda _: self.changed.emit())
        self.date.textEdited.connect(lambda _: self.changed.emit())
        for text in (self.person, self.caption):
            text.textChanged.connect(self.changed.emit)

    def _labelled(self, name: str, field: QWidget) -> None:
        label = QLabel(name)
        label.setWordWrap(True)
        label.setBuddy(field)
        field.setAccessibleName(name)
        self._body.addWidget(label)
        self._body.addWidget(field)

    def _combo(self, name: str) -> QComboBox:
        combo = QComboBox()
        combo.setAccessibleName(name)
        combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        combo.setMinimumContentsLength(8)
        return combo

    def _lines(self, name: str, text: str) -> QPlainTextEdit:
        made = QPlainTextEdit(text)
        made.setTabChangesFocus(True)
        made.setFixedHeight(made.fontMetrics().lineSpacing() * 4)
        made.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._labelled(name, made)
        return made

    # What was chosen ----------------------------------------------------------------------------

    def is_line(self) -> bool:
        """Whether the history of the line is wanted."""
        return bool(self.kind.currentData())

    def theme(self) -> str:
        """The theme of the pedigree."""
        return "grey" if self.grey.isChecked() else "light"

    def cover(self) -> Cover:
        """What the person adds."""
        return Cover(
            tuple(_filled(self.person)), self.date.text().strip(), tuple(_filled(self.caption))
        )

    def show_parts(self, parts: Iterable[str]) -> None:
        """A box for each part that the report has; what was left out before stays so."""
        for box in self.boxes.values():
            self._parts.removeWidget(box)
            box.hide()
            box.deleteLater()
        words = part_words()
        self.boxes = {}
        for part in parts:
            box = QCheckBox(words[part].replace("&", "&&"))
            box.setChecked(part not in self._left_out)
            box.toggled.connect(lambda on, part=part: self._toggled(part, on))
            self._parts.addWidget(box)
            self.boxes[part] = box

    def _toggled(self, part: str, on: bool) -> None:
        (self._left_out.discard if on else self._left_out.add)(part)
        self.changed.emit()

    def parts(self) -> list[str]:
        """The parts that are wanted."""
        return [part for part, box in self.boxes.items() if box.isChecked()]

    def remember(self) -> None:
        """Keep what is proposed again the next time."""
        self._preferences.set_last_used(
            _KEPT,
            {
                "person": self.person.toPlainText().strip(),
                "paper": str(self.paper.currentData()),
                "grey": "yes" if self.grey.isChecked() else "no",
            },
        )


def _filled(field: QPlainTextEdit) -> list[str]:
    return [line.strip() for line in field.toPlainText().splitlines() if line.strip()]
