"""How two plants are related, with 'Why?' beside each number, for pages that show a pair."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.book.problems import Problem
from pedigreeview.window.answers import (
    PairAnswer,
    ask_coancestry_why,
    ask_pair,
    ask_progeny_why,
)
from pedigreeview.window.errands import Errands
from pedigreeview.window.figure import Figure, WithheldNotice
from pedigreeview.window.labels import LinkLabel, clear, column, heading, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import link, named

if TYPE_CHECKING:
    from pedigreeview.network import Explanation, PedigreeNetwork
    from pedigreeview.window.answers import Watch

    _Why = Callable[[PedigreeNetwork, str, str, Watch | None], Explanation | None]

__all__ = ["PairExplained"]


class PairExplained(QWidget):
    """Coancestry, relationship and F of the progeny of a pair, each with what it rests on."""

    plant_wanted = Signal(str)
    lit = Signal(object)
    """Paths that an explanation points at; an empty list: none."""

    def __init__(
        self, errands: Errands, key: str, *, unfold: str = "coancestry", pictured: bool = True
    ) -> None:
        """
        Parameters
        ----------
        key : tells its questions from those of other pages
        unfold : the number whose explanation lies open from the start; '' for none
        pictured : whether a picture stands beside it in which paths light up
        """
        super().__init__()
        self._errands, self._key, self._unfold = errands, key, unfold
        self._pictured = pictured
        self._net: PedigreeNetwork | None = None
        self._problems: tuple[Problem, ...] = ()
        self.pair: tuple[str, str] | None = None
        self.figures: dict[str, Figure] = {}
        self._body = column(step())
        self.setLayout(self._body)

    def show_pair(
        self, net: PedigreeNetwork, a: str, b: str, problems: Sequence[Problem] = ()
    ) -> None:
        """Ask for the numbers of a pair."""
        self.drop()
        self._net, self._problems, self.pair = net, tuple(problems), (a, b)
        held = self._problems
        self._errands.ask(
            f"pair:{self._key}",
            lambda: ask_pair(net, a, b, held),
            self._show,
            lambda fault: self._failed(fault),
        )

    def drop(self) -> None:
        """Show nothing and await nothing."""
        for kind in ("pair", "paths", "progeny_why"):
            self._errands.drop(f"{kind}:{self._key}")
        self.pair, self.figures = None, {}
        clear(self._body)

    def _failed(self, fault: Fault) -> None:
        clear(self._body)
        self._body.addWidget(sentence(fault.sentence(), "warn"))

    def _show(self, answer: PairAnswer) -> None:
        net = self._net
        if net is None or self.pair != (answer.a, answer.b):
            return
        clear(self._body)
        self.figures = {}
        both = LinkLabel(
            self.tr("{} with {}").format(
                *(link(code, named(net.book, code)) for code in (answer.a, answer.b))
            )
        )
        both.setAccessibleName(self.tr("{} with {}").format(answer.a, answer.b))
        both.followed.connect(self.plant_wanted)
        self._body.addWidget(both)
        if answer.withheld is not None:
            notice = WithheldNotice(net, answer.withheld)
            notice.followed.connect(self.plant_wanted)
            self._body.addWidget(notice)
        if answer.words:
            self._body.addWidget(heading(answer.words, 3))
        for key, name, number in (
            ("coancestry", self.tr("Coancestry"), answer.coancestry),
            ("relationship", self.tr("Relationship"), answer.relationship),
            ("progeny", self.tr("F of their progeny, crossed either way"), answer.progeny),
        ):
            if number is None:
                continue
            figure = Figure(name, key, number.text, number.words)
            if number.reason is not None:
                figure.panel.show_reason(number.reason)
            figure.lit.connect(self.lit)
            self.figures[key] = figure
            self._body.addWidget(figure)
        questions: tuple[tuple[str, str, _Why], ...] = (
            ("coancestry", "paths", ask_coancestry_why),
            ("progeny", "progeny_why", ask_progeny_why),
        )
        for key, kind, ask in questions:
            if key in self.figures:
                self.figures[key].why_wanted.connect(partial(self._ask_why, key, kind, ask))
        words = sentence(answer.cytoplasm)
        words.setObjectName("cytoplasm")
        self._body.addWidget(words)
        if self._unfold in self.figures:
            self.figures[self._unfold].unfold()

    def _ask_why(self, key: str, kind: str, ask: _Why) -> None:
        net, tick = self._net, self._errands.tick
        assert net is not None
        assert self.pair is not None
        a, b = self.pair
        self._errands.ask(
            f"{kind}:{self._key}",
            lambda: ask(net, a, b, tick),
            lambda told: self._explain(key, told),
        )

    def _explain(self, key: str, told: Explanation | None) -> None:
        figure = self.figures.get(key)
        if figure is not None and told is not None and self._net is not None:
            figure.panel.show_explanation(self._net.book, told)
            if not self._pictured:
                hint = figure.panel.tr(
                    "Point at a line to see it in the picture; a click keeps it lit."
                )
                for label in figure.panel.findChildren(QLabel):
                    if label.text() == hint:
                        label.hide()
