"""Choose several crosses together: so many, with little kinship among their progeny."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QSpinBox, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.labels import (
    LinkLabel,
    action_button,
    clear,
    column,
    heading,
    sentence,
)
from pedigreeview.window.relatedness_choice import chooser
from pedigreeview.window.strips import WorkStrip
from pedigreeview.window.style import step
from pedigreeview.window.words import link

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.choosing import Choice
    from pedigreeview.planning.pairs import PairRow
    from pedigreeview.window.errands import Errands

__all__ = ["SeveralPanel"]

_KIND = "whole:several"
_SECONDS = 10.0


@dataclass(frozen=True, slots=True)
class _Asked:
    rows: tuple[PairRow, ...]
    by: str


class SeveralPanel(QWidget):
    """How many, which merit, how often a parent; the answer with its bound, to plan at once."""

    plant_wanted = Signal(str)
    plan_wanted = Signal(object)
    """Pairs (seed parent, pollen parent) that are all to be planned."""

    def __init__(self, errands: Errands) -> None:
        super().__init__()
        self._errands = errands
        self._net: PedigreeNetwork | None = None
        self._rows: tuple[PairRow, ...] = ()
        self._asked: _Asked | None = None
        self.chosen: list[PairRow] = []
        s = step()
        body = column(s)
        body.setContentsMargins(0, s, s, s)
        self.setLayout(body)
        body.addWidget(
            sentence(
                self.tr(
                    "Out of the listed pairs, so many crosses that the plants raised from them are "
                    "as little akin as can be, while the wanted merit is kept."
                ),
                "soft",
            )
        )
        form = QGridLayout()
        form.setHorizontalSpacing(2 * s)
        form.setVerticalSpacing(max(2, s // 2))
        self.many = QSpinBox()
        self.many.setRange(1, 30)
        self.many.setValue(4)
        self.uses = QSpinBox()
        self.uses.setRange(0, 30)
        self.uses.setValue(2)
        self.uses.setSpecialValueText(self.tr("no limit"))
        self.by = chooser(
            self.tr("Merit of a cross"),
            (
                ("score", self.tr("the score of the pair")),
                ("merit", self.tr("mid-parent over the wishes")),
                ("complement", self.tr("what the two have between them")),
            ),
        )
        self.by.setMinimumContentsLength(24)
        self.least = QSpinBox()
        self.least.setRange(0, 100)
        self.least.setSingleStep(5)
        self.least.setSuffix(self.tr(" % of the best thinkable"))
        self.least.setSpecialValueText(self.tr("any"))
        for row, (words, field) in enumerate(
            (
                (self.tr("Crosses to choose"), self.many),
                (self.tr("Crosses of one parent at most"), self.uses),
                (self.tr("Merit"), self.by),
                (self.tr("Mean merit at least"), self.least),
            )
        ):
            label = sentence(words)
            field.setAccessibleName(words)
            form.addWidget(label, row, 0)
            form.addWidget(field, row, 1)
        form.setColumnStretch(2, 1)
        body.addLayout(form)
        self.choose_button = action_button(self.tr("Choose them"), self.choose, main=True)
        body.addWidget(self.choose_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.work = WorkStrip()
        self.work.cancelled.connect(self.cancel)
        body.addWidget(self.work)
        self.answer = column(s)
        body.addLayout(self.answer)
        self.plan_button = action_button(self.tr("Plan all of these"), self._plan, main=True)
        self.plan_button.hide()
        body.addWidget(self.plan_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.said = sentence("", "soft")
        body.addWidget(self.said)
        body.addStretch(1)

    def show_rows(self, net: PedigreeNetwork | None, rows: Sequence[PairRow]) -> None:
        """Other pairs to choose from; what was chosen is put away."""
        self._net, self._rows = net, tuple(rows)
        self.cancel()
        self._put_away()
        self.choose_button.setEnabled(bool(rows))
        if rows:
            self.many.setMaximum(min(30, len(rows)))
        if net is not None and not rows:
            self._tell(self.tr("No pair is listed: loosen the limits or add candidates."))

    def _put_away(self) -> None:
        clear(self.answer)
        self.chosen = []
        self.plan_button.hide()
        self.said.setText("")

    def _tell(self, words: str, role: str = "soft") -> None:
        clear(self.answer)
        self.answer.addWidget(sentence(words, role))

    def say(self, words: str) -> None:
        """A line at the foot: what was planned."""
        self.said.setText(words)

    def cancel(self) -> None:
        """Give the search up."""
        self._errands.drop(_KIND)
        self.work.end()

    def choose(self) -> None:
        """Ask for the choice."""
        from pedigreeview.window.parents_asking import choose_several

        net, rows = self._net, self._rows
        if net is None or not rows:
            return
        self._put_away()
        k, by = self.many.value(), str(self.by.currentData())
        least = self.least.value() / 100 or None
        uses = self.uses.value() or None
        tick: Callable[[int, int], None] = self._errands.tick
        self._asked = _Asked(rows, by)
        self.work.begin(self.tr("Choosing crosses together …"))
        self._errands.ask(
            _KIND,
            lambda: choose_several(net, rows, k, by, least, uses, _SECONDS, tick),
            self._show,
            self._failed,
        )

    def _failed(self, fault: Fault) -> None:
        self.work.end()
        self._tell(fault.sentence(), "warn")

    def _show(self, choice: Choice) -> None:
        self.work.end()
        asked = self._asked
        if asked is None:
            return
        clear(self.answer)
        self.chosen = [asked.rows[at] for at in choice.crosses]
        self.answer.addWidget(
            heading(
                self.tr("Mean coancestry {:.4f}, mean merit {:.3f}").format(
                    choice.coancestry, choice.merit
                ),
                3,
            )
        )
        for row in self.chosen:
            merit = row.score if asked.by == "score" else float(row.parts.get(asked.by, 0.0))
            words = self.tr("{} × {}, F {}, merit {:.3f}")
            f_text = row.inbreeding_text.partition(" = ")[0] or "–"
            label = LinkLabel(words.format(link(row.seed), link(row.pollen), f_text, merit))
            label.setAccessibleName(words.format(row.seed, row.pollen, f_text, merit))
            label.followed.connect(self.plant_wanted)
            self.answer.addWidget(label)
        self.answer.addWidget(sentence(choice.sentence))
        if choice.proved:
            told = self.tr("This is proved: the bound is {:.4f} and the gap to it is 0.")
            words = told.format(choice.bound)
        else:
            told = self.tr("Bound {:.4f}, gap {:.4f}: the search ended before it was proved.")
            words = told.format(choice.bound, choice.gap)
        self.answer.addWidget(sentence(words, "soft"))
        self.plan_button.show()

    def _plan(self) -> None:
        self.plan_wanted.emit([(row.seed, row.pollen) for row in self.chosen])
