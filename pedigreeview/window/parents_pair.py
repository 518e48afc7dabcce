"""One pair of the Parents page: why it ranks where it does, and what can be done with it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QWidget

from pedigreeview.window.labels import (
    Flow,
    action_button,
    clear,
    column,
    heading,
    sentence,
    why_button,
)
from pedigreeview.window.parents_sliders import weight_words
from pedigreeview.window.relatedness_pair import PairExplained
from pedigreeview.window.share_bars import ShareBars
from pedigreeview.window.style import current, founder_colour, step
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.book.problems import Problem
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.pairs import PairRow, Weights
    from pedigreeview.window.errands import Errands

__all__ = ["PairDetail"]

_FOUNDERS = 6


class _Parts(QWidget):
    """The parts of the score as bars: how good each is, and how much it counts."""

    def __init__(self, shown: Sequence[tuple[str, float, float]]) -> None:
        super().__init__()
        self._shown = list(shown)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        said = "; ".join(self.tr("{}: {:.2f}, weight {:g}").format(*part) for part in self._shown)
        self.setAccessibleName(said)

    def _line(self) -> int:
        return self.fontMetrics().height() + step()

    def sizeHint(self) -> QSize:
        return QSize(28 * step(), self._line() * len(self._shown))

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            metrics = self.fontMetrics()
            number = metrics.horizontalAdvance("0.00  × 0.25")
            words = min(
                self.width() // 2,
                max((metrics.horizontalAdvance(name) for name, _, _ in self._shown), default=0),
            )
            room = max(2 * s, self.width() - words - number - 3 * s)
            for at, (name, value, weight) in enumerate(self._shown):
                top = at * self._line()
                box = QRectF(0, top, words, metrics.height())
                painter.setPen(colours.ink if weight else colours.soft)
                shown = metrics.elidedText(name, Qt.TextElideMode.ElideRight, words)
                painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft), shown)
                bar = QRectF(words + s + 0.5, top + metrics.height() / 2 - 0.35 * s, room, 0.7 * s)
                painter.setPen(QPen(colours.rule, 1))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(bar)
                full = QRectF(bar.left(), bar.top(), bar.width() * value, bar.height())
                painter.fillRect(full, colours.focus if weight else colours.rule)
                painter.setPen(colours.soft)
                box = QRectF(words + 2 * s + room, top, number + s, metrics.height())
                painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft), f"{value:.2f}  × {weight:g}")
        finally:
            painter.end()


class PairDetail(QWidget):
    """The pair of the current row."""

    plant_wanted = Signal(str)
    try_wanted = Signal(str, str)
    plan_wanted = Signal(str, str, bool)
    """Seed parent, pollen parent, both directions."""
    grow_wanted = Signal(str, str)
    turn_wanted = Signal(str, str)
    """The same pair in the other direction."""

    def __init__(self, errands: Errands) -> None:
        super().__init__()
        self._errands = errands
        self.row: PairRow | None = None
        s = step()
        self._body = column(s)
        self._body.setContentsMargins(0, s, s, s)
        self.setLayout(self._body)
        self.title = heading("", 2)
        self.buttons = QWidget()
        line = Flow(s)
        self.buttons.setLayout(line)
        self.plan_button = action_button(
            self.tr("Plan this cross"), lambda: self._plan(both=False), main=True
        )
        self.both_button = action_button(
            self.tr("Plan both directions ⇄"), lambda: self._plan(both=True)
        )
        self.try_button = action_button(self.tr("Try it in the picture"), self._try)
        self.grow_button = action_button(self.tr("How many to grow"), self._grow)
        self.turn_button = action_button(self.tr("Turn the direction"), self._turn)
        for button in (
            self.plan_button,
            self.both_button,
            self.try_button,
            self.grow_button,
            self.turn_button,
        ):
            line.addWidget(button)
        self.said = sentence("", "soft")
        self.said.hide()
        self._told = QWidget()
        self._columns = QGridLayout()
        self._columns.setContentsMargins(0, 0, 0, 0)
        self._columns.setHorizontalSpacing(3 * s)
        self._columns.setVerticalSpacing(s)
        self._told.setLayout(self._columns)
        self._why = why_button(self.tr("Why these coefficients"))
        self.explained = PairExplained(errands, "parents", unfold="", pictured=False)
        self.explained.plant_wanted.connect(self.plant_wanted)
        self.explained.hide()
        for widget in (self.title, self.buttons, self.said, self._told):
            self._body.addWidget(widget)
        self._body.addWidget(self._why, 0, Qt.AlignmentFlag.AlignLeft)
        self._body.addWidget(self.explained)
        self._body.addStretch(1)
        self._why.toggled.connect(self._explain)
        self._net: PedigreeNetwork | None = None
        self._problems: tuple[Problem, ...] = ()
        self.show_row(None)

    # Showing ------------------------------------------------------------------------------------

    def show_row(
        self,
        row: PairRow | None,
        net: PedigreeNetwork | None = None,
        problems: Sequence[Problem] = (),
        weights: Weights | None = None,
    ) -> None:
        """Show a pair, or none."""
        again = (
            row is not None
            and self.row is not None
            and (row.seed, row.pollen) == (self.row.seed, self.row.pollen)
        )
        self.row, self._net, self._problems = row, net, tuple(problems)
        clear(self._columns)
        for widget in (self.title, self.buttons, self._told, self._why):
            widget.setVisible(row is not None)
        if not again:
            self.say("")
            self._why.setChecked(False)
        if row is None or net is None or weights is None:
            return
        book = net.book
        self.title.setText(
            self.tr("{} × {}").format(named(book, row.seed), named(book, row.pollen))
        )
        s = step()
        left, right = column(max(2, s // 2)), column(max(2, s // 2))
        left.addWidget(sentence(self.tr("{} bears the seed.").format(row.seed), "soft"))
        for reason in row.reasons:
            left.addWidget(sentence(reason))
        for wish in row.wishes:
            text = wish.sentence
            if wish.low is not None and wish.high is not None and wish.low != wish.high:
                text = self.tr("{}; single scores from {:.3g} to {:.3g}").format(
                    text, wish.low, wish.high
                )
            left.addWidget(sentence(f"{text[:1].upper()}{text[1:]}."))
        left.addWidget(
            sentence(self.tr("Coancestry of the two {:.4g}.").format(row.coancestry), "soft")
        )
        left.addStretch(1)
        right.addWidget(
            sentence(self.tr("Score {:.3f}, from these parts").format(row.score), "caption")
        )
        words = weight_words(self)
        right.addWidget(
            _Parts(
                [
                    (words[item.name][0], float(row.parts[item.name]), getattr(weights, item.name))
                    for item in fields(weights)
                    if item.name in row.parts
                ]
            )
        )
        right.addWidget(sentence(self.tr("Founders of the progeny"), "caption"))
        right.addWidget(self._shares(row, net))
        right.addStretch(1)
        self._columns.addLayout(left, 0, 0)
        self._columns.addLayout(right, 0, 1)
        self._columns.setColumnStretch(0, 5)
        self._columns.setColumnStretch(1, 4)
        if again and self._why.isChecked():
            self._explain(True)

    def _shares(self, row: PairRow, net: PedigreeNetwork) -> ShareBars:
        from pedigreeview.drawing.founders import shown_numbers

        numbers = dict(shown_numbers(net, dict(row.founder_shares)))
        shown = [
            (
                named(net.book, founder) if founder else self.tr("unknown"),
                share,
                f"{100 * share:.4g}%",
                founder_colour(numbers.get(founder)),
            )
            for founder, share in list(row.founder_shares.items())[:_FOUNDERS]
        ]
        rest = sum(list(row.founder_shares.values())[_FOUNDERS:])
        if rest > 0:
            shown.append((self.tr("others"), rest, f"{100 * rest:.4g}%", founder_colour(-1)))
        unknown = 1.0 - sum(row.founder_shares.values())
        if unknown > 1e-9:
            text = f"{100 * unknown:.4g}%"
            shown.append((self.tr("unknown parents"), unknown, text, founder_colour(None)))
        return ShareBars(shown)

    def say(self, words: str) -> None:
        """A line below the buttons: what was planned."""
        self.said.setText(words)
        self.said.setVisible(bool(words))

    def _explain(self, on: bool) -> None:
        self.explained.setVisible(on)
        if on and self.row is not None and self._net is not None:
            self.explained.show_pair(self._net, self.row.seed, self.row.pollen, self._problems)
        else:
            self.explained.drop()

    # What is done with it -----------------------------------------------------------------------

    def _plan(self, *, both: bool) -> None:
        if self.row is not None:
            self.plan_wanted.emit(self.row.seed, self.row.pollen, both)

    def _try(self) -> None:
        if self.row is not None:
            self.try_wanted.emit(self.row.seed, self.row.pollen)

    def _grow(self) -> None:
        if self.row is not None:
            self.grow_wanted.emit(self.row.seed, self.row.pollen)

    def _turn(self) -> None:
        if self.row is not None:
            self.turn_wanted.emit(self.row.pollen, self.row.seed)
