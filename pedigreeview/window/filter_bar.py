"""The control that filters plants: text, season, status, family, trait range, founder share."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, Qt, QTimer, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QComboBox,
    QCompleter,
    QDoubleSpinBox,
    QFrame,
    QLineEdit,
    QMenu,
    QSpinBox,
    QToolButton,
    QWidget,
)

from pedigreeview.book.filtering import PlantFilter, latest_values, seasons
from pedigreeview.book.records import STATUSES
from pedigreeview.window.labels import Flow, column, plain_button, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import number, status_word

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["FilterBar"]

_WAIT = 150
"""Milliseconds after the last letter typed until the filter is asked for."""
_MOST_LISTED = 400


class FilterBar(QFrame):
    """Asks for a filter; what does not fit is faded or hidden by whoever listens."""

    changed = Signal(object, str)
    """The `PlantFilter` and 'fade' or 'hide'."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("filters")
        s = step()
        outer = column(s)
        self.setLayout(outer)
        first = Flow(s)
        self.text = QLineEdit()
        self.text.setPlaceholderText(self.tr("Code, name, cross or note"))
        self.text.setAccessibleName(self.tr("Filter by text"))
        self.text.setClearButtonEnabled(True)
        self.text.setMinimumWidth(24 * s)
        self.season_from = self._box(self.tr("Sown in or after"))
        self.season_to = self._box(self.tr("Sown in or before"))
        self.status = QToolButton()
        self.status.setProperty("caret", True)
        self.status.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.status.setAccessibleName(self.tr("Filter by status"))
        self._status_menu = QMenu(self.status)
        self._statuses: dict[str, QAction] = {}
        for status in STATUSES:
            action = self._status_menu.addAction(status_word(status))
            action.setCheckable(True)
            action.toggled.connect(self._ask)
            self._statuses[status] = action
        self.status.setMenu(self._status_menu)
        self.more = plain_button(self.tr("More"), self.tr("Family, trait and founder"))
        self.more.setCheckable(True)
        self.how = QComboBox()
        self.how.setAccessibleName(self.tr("What becomes of plants that do not fit"))
        self.how.addItem(self.tr("fade the others"), "fade")
        self.how.addItem(self.tr("hide the others"), "hide")
        self.reset = plain_button(self.tr("Clear"), self.tr("Show every plant again"), self.clear)
        self.said = sentence("", "soft")
        self.said.setWordWrap(False)
        self.said.setAlignment(Qt.AlignmentFlag.AlignVCenter)
        self.said.hide()
        for widget in (
            self.text,
            self.season_from,
            self.season_to,
            self.status,
            self.more,
            self.how,
            self.reset,
            self.said,
        ):
            first.addWidget(widget)
        outer.addLayout(first)
        outer.addWidget(self._further(s))
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_WAIT)
        self._timer.timeout.connect(self._say)
        self.text.textEdited.connect(self._timer.start)
        self.text.returnPressed.connect(self._ask)
        self.how.activated.connect(self._ask)
        self.set_network(None)

    def _further(self, s: int) -> QWidget:
        held = QWidget()
        flow = Flow(s)
        held.setLayout(flow)
        self.family = QLineEdit()
        self.family.setPlaceholderText(self.tr("Raised from cross"))
        self.family.setAccessibleName(self.tr("Filter by family: code of the cross"))
        self.family.editingFinished.connect(self._ask)
        self.trait = self._box(self.tr("Filter by trait"), self._range_of_trait)
        self.low = self._number(self.tr("Least value"))
        self.high = self._number(self.tr("Largest value"))
        self.founder = self._box(self.tr("Filter by founder"))
        self.share = QSpinBox()
        self.share.setRange(1, 100)
        self.share.setValue(25)
        self.share.setPrefix(self.tr("at least "))
        self.share.setSuffix(" %")
        self.share.setKeyboardTracking(False)
        self.share.setAccessibleName(self.tr("Least share of the founder"))
        self.share.valueChanged.connect(self._ask)
        for widget in (self.family, self.trait, self.low, self.high, self.founder, self.share):
            flow.addWidget(widget)
        held.hide()
        self.more.toggled.connect(held.setVisible)
        return held

    def _box(self, name: str, act: Callable[[], object] | None = None) -> QComboBox:
        box = QComboBox()
        box.setAccessibleName(name)
        box.setToolTip(name)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        box.activated.connect(act or self._ask)
        return box

    def _number(self, name: str) -> QDoubleSpinBox:
        spin = QDoubleSpinBox()
        spin.setRange(-1e9, 1e9)
        spin.setDecimals(2)
        spin.setAccessibleName(name)
        spin.setToolTip(name)
        spin.setKeyboardTracking(False)
        spin.valueChanged.connect(self._ask)
        return spin

    # The book -----------------------------------------------------------------------------------

    def set_network(
        self,
        net: PedigreeNetwork | None,
        founders: Sequence[str] | None = None,
        years: Sequence[int] | None = None,
    ) -> None:
        """Offer the years, crosses, traits and founders of a book; every plant fits again.

        founders, years : those to offer; by default all, which takes a moment in a large book
        """
        self._net = net
        boxes = (self.season_from, self.season_to, self.trait, self.founder)
        blocked = [QSignalBlocker(box) for box in boxes]
        traits: Sequence[str] = ()
        if net is None:
            founders, years = (), ()
        else:
            traits = list(net.book.traits)
            founders = (net.founders if founders is None else founders)[:_MOST_LISTED]
            years = seasons(net.book) if years is None else years
        for box, first, values in (
            (self.season_from, self.tr("sown from"), years),
            (self.season_to, self.tr("sown to"), years),
            (self.trait, self.tr("any trait"), traits),
            (self.founder, self.tr("any founder"), founders),
        ):
            box.clear()
            box.addItem(first, None)
            for value in values:
                box.addItem(str(value), value)
            box.setEnabled(bool(values))
        del blocked
        crosses = list(net.book.crosses) if net is not None else []
        completer = QCompleter(crosses, self.family)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        self.family.setCompleter(completer)
        self._reset()

    def wanted(self) -> PlantFilter:
        """The filter as it is set."""
        trait = self.trait.currentData() or ""
        ranged = bool(trait) and self.low.isEnabled()
        founder = self.founder.currentData() or ""
        return PlantFilter(
            first_season=self.season_from.currentData(),
            last_season=self.season_to.currentData(),
            statuses=frozenset(s for s, action in self._statuses.items() if action.isChecked()),
            family=self.family.text().strip(),
            trait=trait,
            low=self.low.value() if ranged else None,
            high=self.high.value() if ranged else None,
            founder=founder,
            share=self.share.value() / 100 if founder else 0.0,
            text=self.text.text(),
        )

    def choose(self, wanted: PlantFilter, how: str) -> None:
        """Set what is asked for, without saying so by signal."""
        held = (self.text, self.family, self.low, self.high, self.share, *self._statuses.values())
        blocked = [QSignalBlocker(item) for item in held]
        if self.text.text() != wanted.text:
            self.text.setText(wanted.text)
        if self.family.text().strip() != wanted.family:
            self.family.setText(wanted.family)
        for box, value in (
            (self.season_from, wanted.first_season),
            (self.season_to, wanted.last_season),
            (self.trait, wanted.trait or None),
            (self.founder, wanted.founder or None),
            (self.how, how),
        ):
            box.setCurrentIndex(max(0, box.findData(value)))
        for status, action in self._statuses.items():
            action.setChecked(status in wanted.statuses)
        if wanted.low is not None:
            self.low.setValue(wanted.low)
        if wanted.high is not None:
            self.high.setValue(wanted.high)
        if wanted.share:
            self.share.setValue(round(wanted.share * 100))
        del blocked
        if {"family", "trait", "founder"} & set(wanted.conditions()):
            self.more.setChecked(True)
        self._fit()

    def show_count(self, fit: int, of: int) -> None:
        """Say how many plants fit."""
        set_ = not self.wanted().empty()
        self.said.setText(self.tr("{} of {} plants fit.").format(number(fit), number(of)))
        # In the middle of its row, as the words of the buttons beside it.
        self.said.setMinimumHeight(self.reset.sizeHint().height())
        self.said.setVisible(set_)

    def clear(self) -> None:
        """Let every plant fit again."""
        self._reset()
        self._say()

    def _reset(self) -> None:
        held = [self.text, self.family, self.season_from, self.season_to, self.trait, self.founder]
        held += [self.low, self.high, *self._statuses.values()]  # type: ignore[list-item]
        blocked = [QSignalBlocker(item) for item in held]
        for action in self._statuses.values():
            action.setChecked(False)
        self.text.clear()
        self.family.clear()
        for box in (self.season_from, self.season_to, self.trait, self.founder):
            box.setCurrentIndex(0)
        del blocked
        self.said.hide()
        self._fit()

    def _fit(self) -> None:
        """Words of the button of statuses, and which controls can be used."""
        chosen = [status_word(s) for s, action in self._statuses.items() if action.isChecked()]
        self.status.setText(", ".join(chosen) if chosen else self.tr("any status"))
        self.share.setVisible(self.founder.currentData() is not None)
        trait = self.trait.currentData()
        ranged = False
        if trait and self._net is not None:
            ranged = self._net.book.traits[trait].type not in ("category", "yes_no")
        for spin in (self.low, self.high):
            spin.setEnabled(ranged)
            spin.setVisible(ranged)

    def _range_of_trait(self) -> None:
        """Begin with the whole range of the trait that was chosen."""
        trait = self.trait.currentData()
        if not trait or self._net is None:
            return
        numbers = []
        for text in latest_values(self._net.book, trait).values():
            try:
                numbers.append(float(text.replace(",", ".")))
            except ValueError:
                continue
        with QSignalBlocker(self.low), QSignalBlocker(self.high):
            self.low.setValue(min(numbers, default=0.0))
            self.high.setValue(max(numbers, default=0.0))
        self._ask()

    def _ask(self) -> None:
        self._timer.stop()
        self._say()

    def _say(self) -> None:
        self._fit()
        self.changed.emit(self.wanted(), self.how.currentData())
