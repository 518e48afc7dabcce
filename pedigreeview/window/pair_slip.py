"""The pair slip: two pinned plants, how they are related, and what their progeny would be.

Pins carry letters, A, B, C, the same as in the picture.  A plain sentence comes first; each number
opens its 'Why?'.  That of the coancestry lies open: the common ancestors with what each brings.
Pointing at an ancestor or a path lights it in the picture.
"""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QFrame, QHBoxLayout, QLabel, QWidget

from pedigreeview.window.answers import PairAnswer
from pedigreeview.window.figure import Figure, WithheldNotice
from pedigreeview.window.labels import (
    Flow,
    LinkLabel,
    action_button,
    clear,
    column,
    heading,
    plain_button,
    rule,
    scrolled,
    sentence,
)
from pedigreeview.window.style import step
from pedigreeview.window.why_panel import Path
from pedigreeview.window.words import link, named

if TYPE_CHECKING:
    from pedigreeview.network import Explanation, PedigreeNetwork

__all__ = ["PairSlip", "letter_of"]


def letter_of(place: int) -> str:
    """The letter of a pin: A for the first; after Z the number."""
    return chr(ord("A") + place) if place < 26 else str(place + 1)


class PairSlip(QFrame):
    """The tray at the side of the picture that holds the pins."""

    unpin_wanted = Signal(str)
    plant_wanted = Signal(str)
    pair_chosen = Signal(str, str)
    coancestry_why_wanted = Signal(str, str)
    progeny_why_wanted = Signal(str, str)
    lit = Signal(object)
    """Paths to light up in the picture; an empty list lights none."""
    checks_wanted = Signal()
    connection_wanted = Signal(str, str)
    """The two are to be shown with what connects them."""
    beside_wanted = Signal(str, str)
    """The two are to be shown side by side."""
    answered = Signal(object)
    """All paths of the pair whose numbers have come."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("slip")
        self.setAccessibleName(self.tr("Pair slip"))
        self._kept: list[Path] = []
        self._held = 0
        self.rows: dict[str, QFrame] = {}
        """The row of each pin."""
        self.figures: dict[str, Figure] = {}
        """The numbers that stand on it, by 'coancestry', 'relationship' and 'progeny'."""
        self._net: PedigreeNetwork | None = None
        self.pair: tuple[str, str] | None = None
        s = step()
        outer = column(s)
        outer.setContentsMargins(2 * s, 2 * s, s, s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Pair slip"), 2))
        self._pins = column(max(2, s // 3))
        outer.addLayout(self._pins)
        self._choose = QWidget()
        choose = QHBoxLayout(self._choose)
        choose.setContentsMargins(0, 0, s, 0)
        self.first, self.second = QComboBox(), QComboBox()
        self.first.setAccessibleName(self.tr("First of the pair"))
        self.second.setAccessibleName(self.tr("Second of the pair"))
        choose.addWidget(self.first, 1)
        choose.addWidget(sentence(self.tr("with"), "soft"))
        choose.addWidget(self.second, 1)
        outer.addWidget(self._choose)
        for box in (self.first, self.second):
            box.setMinimumContentsLength(5)
            box.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            box.activated.connect(self._chosen)
        outer.addWidget(rule())
        inner = QWidget()
        self._body = column(s)
        self._body.setContentsMargins(0, s, s, s)
        inner.setLayout(self._body)
        self._area = scrolled(inner)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer.addWidget(self._area, 1)
        self.hide()

    @property
    def kept(self) -> list[Path]:
        """The paths that stay lit while nothing is pointed at."""
        return self._kept

    def show_pins(self, net: PedigreeNetwork, pins: list[str]) -> None:
        """Show the pinned plants; a new pin makes a pair with the one before it."""
        self._net = net
        more, self._held = len(pins) > self._held, len(pins)
        clear(self._pins)
        self.rows = {}
        for place, code in enumerate(pins):
            self._add_pin(net, letter_of(place), code)
        self._choose.setVisible(len(pins) > 2)
        self.put_out()
        if len(pins) < 2:
            self.pair = None
            self._clear()
            self._body.addWidget(
                sentence(
                    self.tr("Pin a second plant to see how the two are related: P, or its card.")
                )
            )
            self._body.addStretch(1)
            return
        kept = self.pair is not None and set(self.pair) <= set(pins) and not more
        pair = self.pair if kept and self.pair is not None else (pins[-2], pins[-1])
        for box, code in ((self.first, pair[0]), (self.second, pair[1])):
            box.clear()
            for place, pinned in enumerate(pins):
                box.addItem(f"{letter_of(place)}  {pinned}", pinned)
            box.setCurrentIndex(pins.index(code))
        self._ask(pair)

    def _add_pin(self, net: PedigreeNetwork, letter: str, code: str) -> None:
        s = step()
        frame = QFrame()
        frame.setProperty("role", "pin")
        row = QHBoxLayout(frame)
        row.setContentsMargins(max(2, s // 2), 0, 0, 0)
        row.setSpacing(s)
        badge = QLabel(letter)
        badge.setProperty("role", "letter")
        badge.setAlignment(Qt.AlignmentFlag.AlignCenter)
        badge.setFixedSize(round(1.9 * s), round(1.9 * s))
        row.addWidget(badge)
        label = LinkLabel(link(code, named(net.book, code)))
        label.followed.connect(self.plant_wanted)
        row.addWidget(label, 1)
        name = self.tr("Take out pin {}, {}").format(letter, code)
        row.addWidget(plain_button("✕", name, lambda: self.unpin_wanted.emit(code)))
        self.rows[code] = frame
        self._pins.addWidget(frame)

    def _outline(self) -> None:
        """Outline the pins of the pair in force where there are more than two."""
        for code, frame in self.rows.items():
            force = self.pair is not None and code in self.pair and len(self.rows) > 2
            frame.setProperty("role", "pin in force" if force else "pin")
            frame.style().unpolish(frame)
            frame.style().polish(frame)

    def _chosen(self) -> None:
        self._ask((self.first.currentData(), self.second.currentData()))

    def _ask(self, pair: tuple[str, str]) -> None:
        self.pair = pair
        self._outline()
        self._clear()
        self._body.addWidget(sentence(self.tr("Working out the numbers …"), "soft"))
        self._body.addStretch(1)
        self.pair_chosen.emit(*pair)

    def _clear(self) -> None:
        self.figures = {}
        clear(self._body)

    def show_answer(self, answer: PairAnswer) -> None:
        """Put in the numbers when they have come."""
        if self.pair != (answer.a, answer.b) or self._net is None:
            return
        self._clear()
        if answer.withheld is not None:
            notice = WithheldNotice(self._net, answer.withheld)
            notice.followed.connect(self.plant_wanted)
            notice.checks_wanted.connect(self.checks_wanted)
            self._body.addWidget(notice)
        if answer.words:
            pair_words = self.tr("{} with {}: how they are related").format(answer.a, answer.b)
            self._body.addWidget(sentence(pair_words, "caption"))
            words = heading(answer.words, 3)
            words.setObjectName("relatedness")
            self._body.addWidget(words)
        for key, name, number in (
            ("progeny", self.tr("F of their progeny, crossed either way"), answer.progeny),
            ("relationship", self.tr("Relationship"), answer.relationship),
            ("coancestry", self.tr("Coancestry"), answer.coancestry),
        ):
            if number is None:
                continue
            figure = Figure(name, key, number.text, number.words)
            if number.reason is not None:
                figure.panel.show_reason(number.reason)
            figure.lit.connect(self._point)
            self.figures[key] = figure
        pair = (answer.a, answer.b)
        self._add_ways(pair)
        for key, wanted in (
            ("progeny", self.progeny_why_wanted),
            ("coancestry", self.coancestry_why_wanted),
        ):
            if key in self.figures:
                self.figures[key].why_wanted.connect(lambda wanted=wanted: wanted.emit(*pair))
        coancestry = self.figures.get("coancestry")
        for figure in self.figures.values():
            if figure is not coancestry:
                self._body.addWidget(figure)
        self._body.addWidget(rule())
        cytoplasm = sentence(answer.cytoplasm)
        cytoplasm.setObjectName("cytoplasm")
        self._body.addWidget(cytoplasm)
        if coancestry is not None:
            self._body.addWidget(rule())
            self._body.addWidget(coancestry)
        self._body.addStretch(1)
        self._area.verticalScrollBar().setValue(0)
        if coancestry is not None:
            coancestry.unfold()

    def _add_ways(self, pair: tuple[str, str]) -> None:
        """Two other ways of looking at the pair."""
        row = Flow(step())
        for text, wanted in (
            (self.tr("How they connect"), self.connection_wanted),
            (self.tr("Side by side"), self.beside_wanted),
        ):
            row.addWidget(action_button(text, partial(wanted.emit, *pair)))
        holder = QWidget()
        holder.setLayout(row)
        self._body.addWidget(holder)

    def show_coancestry_why(self, told: Explanation) -> None:
        """Put in the common ancestors when they have come, and light all paths."""
        if self._put_in("coancestry", told):
            paths = self.figures["coancestry"].panel.paths
            self.answered.emit(paths)
            self._kept = paths
            self.lit.emit(paths)

    def show_progeny_why(self, told: Explanation | None) -> None:
        """Put in why F of the progeny would be what it is when that has come."""
        self._put_in("progeny", told)

    def _put_in(self, key: str, told: Explanation | None) -> bool:
        figure = self.figures.get(key)
        if figure is None or self._net is None or told is None or told.plants != self.pair:
            return False
        figure.panel.show_explanation(self._net.book, told)
        return True

    def put_out(self) -> None:
        """Light nothing any more until a line is pointed at."""
        self._kept = []
        for figure in self.figures.values():
            figure.panel.put_out()
        self.lit.emit([])

    def _point(self, paths: list[Path]) -> None:
        self.lit.emit(paths or self._kept)
