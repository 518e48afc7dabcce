"""How many to grow: every plan for one wish out of two parents, with the figure and schedules."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.curve import CurveFigure
from pedigreeview.window.growing_question import GrowingAnswer, GrowingQuestion, grow
from pedigreeview.window.growing_target import GrowingTarget
from pedigreeview.window.labels import clear, column, heading, rule, sentence
from pedigreeview.window.slices import Slices
from pedigreeview.window.strips import WorkStrip
from pedigreeview.window.style import step
from pedigreeview.window.words import number

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.errands import Errands

__all__ = ["GrowingPanel"]

_KIND = "whole:growing"
_PAUSE = 250
"""Milliseconds after the last change before planning is asked."""
_NARROW = 150
"""Steps of the grid below which the two halves stand below each other."""


class GrowingPanel(QWidget):
    """The question above, the answer below."""

    def __init__(self, errands: Errands, desk: Desk) -> None:
        super().__init__()
        self._errands = errands
        self._net: PedigreeNetwork | None = None
        self._asked: GrowingQuestion | None = None
        self.answer: GrowingAnswer | None = None
        s = step()
        body = column(2 * s)
        body.setContentsMargins(0, s, s, s)
        self.setLayout(body)
        self._halves = QGridLayout()
        self._halves.setHorizontalSpacing(4 * s)
        self._halves.setVerticalSpacing(2 * s)
        self.target = GrowingTarget(desk)
        self._figured = QWidget()
        figured = column(max(2, s // 2))
        self._figured.setLayout(figured)
        self.figure = CurveFigure(self.tr("seeds sown"), self.tr("chance to have what is wanted"))
        self.figure.read.connect(lambda _: self._read())
        self.reading = sentence("", "soft")
        figured.addWidget(self.figure)
        figured.addWidget(self.reading)
        figured.addStretch(1)
        body.addLayout(self._halves)
        self.work = WorkStrip()
        self.work.cancelled.connect(self.cancel)
        body.addWidget(self.work)
        self.told = sentence("")
        body.addWidget(self.told)
        self._answers = column(2 * s)
        body.addLayout(self._answers)
        body.addStretch(1)
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(_PAUSE)
        self._delay.timeout.connect(self.ask)
        self.target.changed.connect(self._delay.start)
        self.target.made.connect(self.ask)
        self._slices: Slices | None = None
        self._narrow: bool | None = None
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        narrow = self.width() < _NARROW * step()
        if narrow == self._narrow:
            return
        self._narrow = narrow
        for widget in (self.target, self._figured):
            self._halves.removeWidget(widget)
        self._halves.addWidget(self.target, 0, 0)
        self._halves.addWidget(self._figured, *((1, 0) if narrow else (0, 1)))
        self._halves.setColumnStretch(0, 1)
        self._halves.setColumnStretch(1, 0 if narrow else 1)

    def finish(self) -> None:
        """Make at once what comes in slices: the fields, and the answer below them."""
        self.target.finish()
        if self._slices is not None:
            self._slices.finish()

    # Asking -------------------------------------------------------------------------------------

    def show_book(self, net: PedigreeNetwork | None, wanted: list[tuple[str, str]]) -> None:
        """Another book, or other wishes."""
        self._net = net
        known = set(net.book.plants) if net is not None else set()
        self.target.show_wishes(wanted, known)
        self._later()

    def show_parents(self, seed: str, pollen: str) -> None:
        """Ask about two parents."""
        self.target.show_parents(seed, pollen)

    def _later(self) -> None:
        if self.isVisible():
            self._delay.start()

    def ask(self) -> None:
        """Ask planning; as soon as the fields are there."""
        self._delay.stop()
        if self.target.making:
            return
        net, question = self._net, self.target.question()
        if net is None or not self.isVisible():
            return
        missing = [
            code
            for code in (question.seed, question.pollen)
            if code and code not in net.book.plants
        ]
        if question.typed is None and (missing or not question.seed or not question.pollen):
            words = (
                self.tr("Not in this book: {}.").format(", ".join(missing))
                if missing
                else self.tr(
                    "Choose a pair in the ranking, or type two parents; or count the genes."
                )
            )
            self.cancel()
            self._failed(Fault(words))
            return
        tick = self._errands.tick
        self._asked = question
        self.work.begin(self.tr("Working out the plans …"))
        self._errands.ask(_KIND, lambda: grow(net, question, tick), self._show, self._failed)

    def cancel(self) -> None:
        """Give the plans under way up."""
        self._delay.stop()
        self._errands.drop(_KIND)
        self.work.end()

    def _failed(self, fault: Fault) -> None:
        self.work.end()
        self.answer = None
        self._clear()
        self.told.setText(fault.sentence())
        self.told.show()
        self.figure.show_curves([], 0.95)
        self._figured.hide()

    def _read(self) -> None:
        hint = self.tr("Point at the figure, or move along it by the arrow keys, to read it off.")
        self.reading.setText(self.figure.words() or hint)

    # Showing ------------------------------------------------------------------------------------

    def _show(self, answer: GrowingAnswer) -> None:
        self.work.end()
        asked = self._asked
        if asked is None:
            return
        self.answer = answer
        self._clear()
        self.told.setText(answer.wish)
        self._figured.setVisible(bool(answer.curves))
        self.figure.show_curves(answer.curves, asked.assurance)
        self._read()
        self._slices = Slices(self._below(answer, asked), self)

    def _clear(self) -> None:
        if self._slices is not None:
            self._slices.stop()
            self._slices.deleteLater()
            self._slices = None
        clear(self._answers)

    def _below(self, answer: GrowingAnswer, asked: GrowingQuestion) -> Iterator[None]:
        """The parts below the figure, one at a time."""
        self._plans(answer, asked)
        yield
        self._road(answer)
        if answer.flowers is not None:
            words = [answer.flowers.sentence(), *answer.flowers.rates.sentences()]
            self._part(self.tr("Flowers for the first cross"), words)
        if answer.families is not None:
            self._part(
                self.tr("Which of those that show it breed true"), [answer.families.sentence()]
            )
        yield
        yield from self._schedules(answer)
        yield
        self._drag(answer, asked)
        if answer.notes:
            self._part(self.tr("What is taken for granted"), answer.notes)

    def _part(self, title: str, words: Sequence[str]) -> QVBoxLayout:
        part = column(max(2, step() // 2))
        self._answers.addLayout(part)
        part.addWidget(rule())
        part.addWidget(heading(title, 3))
        for text in words:
            part.addWidget(sentence(text))
        return part

    def _table(
        self, part: QVBoxLayout, name: str, heads: Sequence[str], rows: Sequence[Sequence[str]]
    ) -> None:
        """A small table; the first column is words, the others numbers."""
        s = step()
        holder = QWidget()
        holder.setObjectName(name)
        part.addWidget(holder)
        grid = QGridLayout(holder)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(3 * s)
        grid.setVerticalSpacing(max(1, s // 4))
        for at, head in enumerate(heads):
            grid.addWidget(self._cell(head, "caption", at), 0, at)
        for row, cells in enumerate(rows, 1):
            for at, text in enumerate(cells):
                grid.addWidget(self._cell(text, "text", at), row, at)
        grid.setColumnStretch(len(heads), 1)

    def _cell(self, text: str, role: str, at: int) -> QLabel:
        label = sentence(text, role)
        label.setWordWrap(False)
        side = Qt.AlignmentFlag.AlignRight if at else Qt.AlignmentFlag.AlignLeft
        label.setAlignment(side | Qt.AlignmentFlag.AlignVCenter)
        return label

    def _plans(self, answer: GrowingAnswer, asked: GrowingQuestion) -> None:
        from pedigreeview.planning.schemes import share_words

        best = next((plan for plan in answer.plans if plan.plan is not None), None)
        words = []
        if best is not None and best.plan is not None:
            words.append(f"{best.scheme.name}: {best.plan.sentence()}")
        part = self._part(self.tr("Schemes without selection on the way, cheapest first"), words)
        rows = []
        for plan in answer.plans:
            chance = plan.each.fixed if asked.fixed else plan.each.chance
            pure = plan.each.already_fixed
            if plan.plan is None or plan.in_all is None:
                rows.append((plan.scheme.name, self.tr("never"), "–", "–", "–", "–", "–"))
                continue
            rows.append(
                (
                    plan.scheme.name,
                    share_words(chance),
                    number(plan.plan.plants),
                    number(plan.plan.seeds),
                    number(plan.in_all),
                    str(plan.scheme.seasons),
                    "–" if pure is None else f"{100 * pure:.3g}%",
                )
            )
        self._table(
            part,
            "schemes",
            (
                self.tr("Scheme"),
                self.tr("Chance of a plant"),
                self.tr("Plants"),
                self.tr("Seeds to sow"),
                self.tr("Plants in all"),
                self.tr("Generations"),
                self.tr("Breeds true if it shows"),
            ),
            rows,
        )
        over = [
            plan.scheme.name for plan in answer.plans if plan.plan is not None and not plan.fits
        ]
        if over:
            text = self.tr("More than the bed of {:,} holds: {}.")
            part.addWidget(sentence(text.format(asked.bed, ", ".join(over)), "warn"))

    def _road(self, answer: GrowingAnswer) -> None:
        if answer.two_steps is not None:
            self._part(
                self.tr("In two steps: keep carriers now, fix later"), answer.two_steps.sentences()
            )
        if answer.roads is not None:
            self._part(
                self.tr("The cheapest road, keeping plants in every generation"),
                answer.roads.sentences(),
            )
        if answer.two_steps is None:
            self._part(
                self.tr("Plans that keep plants on the way"),
                [self.tr("Not followed for tetraploids, nor for more than six genes together.")],
            )

    def _schedules(self, answer: GrowingAnswer) -> Iterator[None]:
        def share(value: float) -> str:
            return f"{100 * value:.4g}%"

        part = self._part(
            self.tr("What is left by generation"),
            [self.tr("Of the loci at which the parents differ, in a plant that nobody chose.")],
        )
        self._table(
            part,
            "selfing",
            (
                self.tr("Selfed"),
                self.tr("Still segregating"),
                self.tr("Fixed at all genes asked"),
                self.tr("Fixed as wanted"),
                self.tr("Segregating by sib mating"),
            ),
            [
                (
                    line.generation,
                    share(float(line.heterozygous)),
                    share(float(line.all_fixed)),
                    share(float(line.like_wanted)),
                    share(float(sib)),
                )
                for line, sib in zip(answer.selfing, answer.sibs, strict=False)
            ],
        )
        yield
        part.addSpacing(step())
        self._table(
            part,
            "backcross",
            (
                self.tr("Backcrossed"),
                self.tr("Recurrent parent"),
                self.tr("give or take (one sd)"),
                self.tr("Back at all genes asked"),
            ),
            [
                (
                    line.generation,
                    share(float(line.share)),
                    "–" if line.spread is None else share(line.spread),
                    share(float(line.all_back)),
                )
                for line in answer.backcross
            ],
        )
        if answer.backcross and answer.backcross[0].spread is not None:
            text = self.tr("The spread is that of one chromosome of {:,.0f} cM, as set above.")
            assert self._asked is not None
            part.addWidget(sentence(text.format(self._asked.chromosome), "soft"))

    def _drag(self, answer: GrowingAnswer, asked: GrowingQuestion) -> None:
        part = self._part(
            self.tr("Linkage drag around a kept gene"),
            [
                self.tr(
                    "The donor piece that stays around a gene at {:g} cM of a chromosome of {:g} "
                    "cM, when each backcross keeps only the gene."
                ).format(min(asked.position, asked.chromosome), asked.chromosome)
            ],
        )
        self._table(
            part,
            "drag",
            (
                self.tr("Backcrosses"),
                self.tr("Expected"),
                self.tr("on one side"),
                self.tr("on the other"),
                self.tr("seldom more than"),
            ),
            [
                (
                    str(one.backcrosses),
                    *(
                        self.tr("{:.3g} cM").format(value)
                        for value in (one.both, one.left, one.right, one.upper)
                    ),
                )
                for one in answer.drag
            ],
        )
        text = self.tr(
            "Grow {:,} plants of one backcross for one that keeps the gene and has lost an allele "
            "of the donor 5 cM away."
        )
        part.addWidget(sentence(text.format(answer.recombinants)))
