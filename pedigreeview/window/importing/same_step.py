"""Fourth step: spellings that may be one plant; nothing is put together unless the person says."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QGridLayout, QHBoxLayout, QLabel, QSizePolicy, QWidget

from pedigreeview.exchange.same_plants import Spellings
from pedigreeview.window.importing.source import Draft
from pedigreeview.window.importing.steps import Step
from pedigreeview.window.labels import action_button, clear, column, scrolled, sentence
from pedigreeview.window.style import step

__all__ = ["SameStep"]

_MOST = 150


class SameStep(Step):
    """A line for each group of spellings, with the choice of one for all."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._draft: Draft | None = None

    def _make(self) -> None:
        s = step()
        layout = column(s)
        self.setLayout(layout)
        layout.addWidget(
            sentence(
                self.tr(
                    "These codes look alike. Each stays a plant of its own unless you say that "
                    "they are one."
                )
            )
        )
        buttons = QHBoxLayout()
        buttons.setSpacing(s)
        self.all_button = action_button(self.tr("Take &all as proposed"), self._take_all)
        self.none_button = action_button(self.tr("&Keep all apart"), self._keep_all)
        buttons.addWidget(self.all_button)
        buttons.addWidget(self.none_button)
        buttons.addStretch(1)
        layout.addLayout(buttons)
        inner = QWidget()
        layout.addWidget(scrolled(inner), 1)
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(2 * s)
        self._grid.setVerticalSpacing(s)
        self._grid.setContentsMargins(0, 0, s, 0)
        held = column()
        held.addLayout(self._grid)
        held.addStretch(1)
        inner.setLayout(held)
        self.choices: list[QComboBox] = []

    def name(self) -> str:
        return self.tr("Same plants")

    def wanted(self, draft: Draft) -> bool:
        return bool(draft.spellings)

    def first_field(self) -> QWidget:
        return self.choices[0] if self.choices else self

    def show_draft(self, draft: Draft) -> None:
        super().show_draft(draft)
        self._draft = draft
        clear(self._grid)
        self.choices = []
        for at, text in enumerate((self.tr("Spellings"), self.tr("They are"), self.tr("Why"))):
            self._grid.addWidget(sentence(text, "caption"), 0, at)
        for row, found in enumerate(draft.spellings[:_MOST], 1):
            codes = QLabel(self._codes(found))
            codes.setTextFormat(Qt.TextFormat.PlainText)
            codes.setWordWrap(True)
            why = sentence(found.why, "soft")
            why.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            box = QComboBox()
            box.addItem(self.tr("different plants"), "")
            for code in self._offered(found):
                box.addItem(self.tr("one plant: {}").format(code), code)
            said = next((draft.same[c] for c in found.codes if c in draft.same), "")
            box.setCurrentIndex(max(0, box.findData(said)))
            box.setAccessibleName(self.tr("{}: they are").format(", ".join(found.codes)))
            box.activated.connect(lambda _: self._said())
            self._grid.addWidget(codes, row, 0)
            self._grid.addWidget(box, row, 1)
            self._grid.addWidget(why, row, 2)
            self.choices.append(box)
        self._grid.setColumnStretch(0, 2)
        self._grid.setColumnStretch(2, 3)
        if len(draft.spellings) > _MOST:
            text = self.tr("{} further groups stay apart; put them together in the book later on.")
            more = sentence(text.format(len(draft.spellings) - _MOST), "soft")
            self._grid.addWidget(more, _MOST + 1, 0, 1, 3)

    def _codes(self, found: Spellings) -> str:
        said = []
        for code, times in zip(found.codes, found.counts, strict=True):
            if code in found.known and not times:
                said.append(self.tr("{} (in the book)").format(code))
            elif code in found.known:
                said.append(self.tr("{} (in the book, and {}×)").format(code, times))
            else:
                said.append(self.tr("{} ({}×)").format(code, times))
        return "\n".join(said)

    def _offered(self, found: Spellings) -> tuple[str, ...]:
        """A whole book is laid beside mine by my codes; a table can take any of its spellings."""
        draft = self._draft
        assert draft is not None
        return found.codes if draft.plan is not None else found.known

    def _take_all(self) -> None:
        for box in self.choices:
            box.setCurrentIndex(1)
        self._said()

    def _keep_all(self) -> None:
        for box in self.choices:
            box.setCurrentIndex(0)
        self._said()

    def _said(self) -> None:
        draft = self._draft
        assert draft is not None
        same: dict[str, str] = {}
        for box, found in zip(self.choices, draft.spellings, strict=False):
            code = str(box.currentData())
            if code:
                # What is in the book already keeps its code.
                same.update((one, code) for one in found.codes if one != code)
        draft.same = same
        if draft.plan is not None:
            draft.plan = replace(draft.plan, same=same)
        self.changed.emit()
