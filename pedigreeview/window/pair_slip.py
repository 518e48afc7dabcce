"""The pair slip: two pinned plants, how they are related, and what their progeny would be.

Every number comes with a plain sentence first; 'Why?' opens formula, base and source.  Pointing at
an ancestor or a path lights it up in the picture.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QEnterEvent
from PySide6.QtWidgets import QComboBox, QFrame, QHBoxLayout, QVBoxLayout, QWidget

from pedigreeview.window.answers import AncestorLine, Figure, PairAnswer, PathsAnswer, percent
from pedigreeview.window.labels import (
    ElidedButton,
    LinkLabel,
    clear,
    column,
    heading,
    plain_button,
    rule,
    scrolled,
    sentence,
    why_button,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import count, link, named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["PairSlip"]

_PATHS = 6
_ANCESTORS = 20

Path = tuple[str, ...]


class _Lit(ElidedButton):
    """A line to point at: it lights paths while the mouse or the keys are on it."""

    pointed = Signal(object)

    def __init__(self, text: str, paths: list[Path]) -> None:
        super().__init__(text)
        self.paths = paths
        self.setProperty("role", "line")
        self.setCheckable(True)

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self.pointed.emit(self.paths)

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self.pointed.emit([])


class PairSlip(QFrame):
    """The tray at the side of the picture that holds the pins."""

    unpin_wanted = Signal(str)
    plant_wanted = Signal(str)
    pair_chosen = Signal(str, str)
    lit = Signal(object)
    """Paths to light up in the picture; an empty list lights none."""
    answered = Signal(object)
    """All paths of the pair whose numbers have come."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("slip")
        self.setAccessibleName(self.tr("Pair slip"))
        self._kept: list[Path] = []
        self._held = 0
        self._ancestors = column()
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
        choose.addWidget(sentence("×", "soft"))
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

    def texts(self) -> list[str]:
        """Everything that stands on the slip, for screen readers and tests."""
        return [
            widget.text()
            for widget in self._area.findChildren(QWidget)
            if isinstance(widget, LinkLabel) or hasattr(widget, "text")
            if not widget.isHidden()
        ]

    def show_pins(self, net: PedigreeNetwork, pins: list[str]) -> None:
        """Show the pinned plants; a new pin makes a pair with the one before it."""
        self._net = net
        more, self._held = len(pins) > self._held, len(pins)
        clear(self._pins)
        for code in pins:
            row = QHBoxLayout()
            label = LinkLabel(link(code, named(net.book, code)))
            label.followed.connect(self.plant_wanted)
            row.addWidget(label, 1)
            row.addWidget(
                plain_button(
                    "✕",
                    self.tr("Take out the pin of {}").format(code),
                    lambda code=code: self.unpin_wanted.emit(code),  # type: ignore[misc]
                )
            )
            self._pins.addLayout(row)
        self.setVisible(bool(pins))
        self._choose.setVisible(len(pins) > 2)
        self._light_for_good([])
        if len(pins) < 2:
            self.pair = None
            clear(self._body)
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
            box.addItems(pins)
            box.setCurrentText(code)
        self._ask(pair)

    def _chosen(self) -> None:
        self._ask((self.first.currentText(), self.second.currentText()))

    def _ask(self, pair: tuple[str, str]) -> None:
        self.pair = pair
        clear(self._body)
        self._body.addWidget(sentence(self.tr("Working out the numbers …"), "soft"))
        self._body.addStretch(1)
        self.pair_chosen.emit(*pair)

    def show_answer(self, answer: PairAnswer) -> None:
        """Put in the numbers when they have come."""
        if self.pair != (answer.a, answer.b):
            return
        clear(self._body)
        if answer.withheld:
            self._body.addWidget(sentence(answer.withheld, "warn"))
        for figure in answer.figures:
            self._add_figure(figure)
        self._body.addWidget(rule())
        cytoplasm = sentence(answer.cytoplasm)
        cytoplasm.setObjectName("cytoplasm")
        self._body.addWidget(cytoplasm)
        self._ancestors = column(step() // 2)
        if not answer.withheld:
            self._body.addWidget(rule())
            self._ancestors.addWidget(
                sentence(self.tr("Looking for the common ancestors …"), "soft")
            )
        self._body.addLayout(self._ancestors)
        self._body.addStretch(1)
        self._area.verticalScrollBar().setValue(0)

    def show_paths(self, answer: PathsAnswer) -> None:
        """Put in the common ancestors when they have come."""
        if self.pair != (answer.a, answer.b):
            return
        clear(self._ancestors)
        self._add_ancestors(answer)
        paths = [path for one in answer.ancestors for path in one.paths]
        self.answered.emit(paths)
        self._light_for_good(paths)

    def put_out(self) -> None:
        """Light nothing any more until a line is pointed at."""
        self._light_for_good([])

    def _add_figure(self, figure: Figure) -> None:
        s = step()
        part = column(max(1, s // 4))
        part.addWidget(sentence(figure.name, "caption"))
        row = QHBoxLayout()
        number = sentence(figure.text, "number")
        number.setObjectName(figure.name)
        number.setAccessibleName(f"{figure.name}: {figure.text}")
        row.addWidget(number, 1)
        why = sentence(figure.why, "soft")
        why.hide()
        button = why_button(self.tr("Why this number: {}").format(figure.name))
        button.toggled.connect(why.setVisible)
        row.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
        part.addLayout(row)
        part.addWidget(sentence(figure.words))
        part.addWidget(why)
        self._body.addLayout(part)

    def _add_ancestors(self, answer: PathsAnswer) -> None:
        if not answer.ancestors:
            self._ancestors.addWidget(sentence(self.tr("No common ancestor is recorded.")))
            return
        self._ancestors.addWidget(
            sentence(self.tr("Common ancestors and what each brings"), "caption")
        )
        for one in answer.ancestors[:_ANCESTORS]:
            self._add_ancestor(one)
        if len(answer.ancestors) > _ANCESTORS:
            more = len(answer.ancestors) - _ANCESTORS
            self._ancestors.addWidget(sentence(self.tr("and {} more").format(more), "soft"))
        self._ancestors.addWidget(
            sentence(
                self.tr("Together they add up to the coancestry. Point at a line to see it."),
                "soft",
            )
        )

    def _add_ancestor(self, one: AncestorLine) -> None:
        part = column()
        who = named(self._net.book, one.plant) if self._net is not None else one.plant
        share = self.tr("{}   {}   {} of it").format(who, one.text, percent(one.percent))
        self._add_lit(part, share, list(one.paths))
        for path in one.paths[:_PATHS]:
            self._add_lit(part, "      " + " – ".join(path), [path])
        more = len(one.paths) - _PATHS + one.left_out
        if more > 0:
            text = count(more, self.tr("path more"), self.tr("paths more"))
            part.addWidget(sentence("      " + text, "soft"))
        self._ancestors.addLayout(part)

    def _add_lit(self, layout: QVBoxLayout, text: str, paths: list[Path]) -> None:
        line = _Lit(text, paths)
        line.pointed.connect(lambda shown: self.lit.emit(shown or self._kept))
        line.clicked.connect(lambda checked: self._light_for_good(paths if checked else [], line))
        line.installEventFilter(self)
        layout.addWidget(line)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(watched, _Lit):
            if event.type() == QEvent.Type.FocusIn:
                self.lit.emit(watched.paths)
            elif event.type() == QEvent.Type.FocusOut:
                self.lit.emit(self._kept)
        return super().eventFilter(watched, event)

    def _light_for_good(self, paths: list[Path], line: _Lit | None = None) -> None:
        self._kept = paths
        for other in self._area.findChildren(_Lit):
            if other is not line:
                other.setChecked(False)
        self.lit.emit(paths)
