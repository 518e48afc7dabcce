"""Beside the heat map: a pair with its explanation, near-duplicates, nearest and farthest kin."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QLabel, QWidget

from pedigreeview.window.labels import (
    LinkLabel,
    clear,
    column,
    heading,
    plain_button,
    rule,
    scrolled,
    sentence,
)
from pedigreeview.window.relatedness_pair import PairExplained
from pedigreeview.window.saying import say
from pedigreeview.window.style import step
from pedigreeview.window.words import count, link, named

if TYPE_CHECKING:
    from pedigreeview.book.problems import Problem
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.near_duplicates import NearDuplicates
    from pedigreeview.planning.relatedness import Relative
    from pedigreeview.window.errands import Errands

__all__ = ["RelatednessLists"]

_GROUPS = 12


def _tail(number: str) -> str:
    """'.25' of '0.25': the point with what follows it."""
    return "".join(number.partition(".")[1:])


class _Number(QLabel):
    """A number whose point stands below that of the longest in its column."""

    def __init__(self, text: str, longest: str) -> None:
        super().__init__(text)
        self._longest = longest
        self.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit()

    def _fit(self) -> None:
        metrics = self.fontMetrics()
        own = metrics.horizontalAdvance(_tail(self.text()))
        self.setContentsMargins(0, 0, metrics.horizontalAdvance(self._longest) - own, 0)


class RelatednessLists(QFrame):
    """The side of the Relatedness page."""

    plant_wanted = Signal(str)
    pair_wanted = Signal(str, str)
    """A relative of the focus is to be explained with it."""
    pair_closed = Signal()
    lit = Signal(object)
    """Codes that the explanation of the pair points at."""

    def __init__(self, errands: Errands) -> None:
        super().__init__()
        self.setObjectName("slip")
        self.setAccessibleName(self.tr("What the heat map shows, in lists"))
        s = step()
        outer = column()
        self.setLayout(outer)
        inner = QWidget()
        body = column(2 * s, 2 * s)
        inner.setLayout(body)
        self.area = scrolled(inner)
        outer.addWidget(self.area)
        self._pair = QWidget()
        pair = column(s)
        self._pair.setLayout(pair)
        head = QHBoxLayout()
        head.addWidget(heading(self.tr("This pair"), 2), 1)
        self.close_button = plain_button("✕", self.tr("Put the pair away"), self.close_pair)
        head.addWidget(self.close_button)
        pair.addLayout(head)
        self.explained = PairExplained(errands, "relatedness")
        self.explained.plant_wanted.connect(self.plant_wanted)
        self.explained.lit.connect(
            lambda paths: self.lit.emit({code for path in paths for code in path})
        )
        pair.addWidget(self.explained)
        pair.addWidget(rule())
        self._pair.hide()
        body.addWidget(self._pair)
        self.duplicates = column(s)
        self.kin = column(s)
        body.addLayout(self.duplicates)
        body.addLayout(self.kin)
        body.addStretch(1)

    # A pair -------------------------------------------------------------------------------------

    def show_pair(self, net: PedigreeNetwork, a: str, b: str, problems: Sequence[Problem]) -> None:
        """Explain a pair at the top."""
        self._pair.show()
        self.explained.show_pair(net, a, b, problems)
        self.area.verticalScrollBar().setValue(0)

    def close_pair(self) -> None:
        """Put the pair away."""
        self.explained.drop()
        self._pair.hide()
        self.lit.emit(set())
        self.pair_closed.emit()

    def has_pair(self) -> bool:
        """Whether a pair is explained."""
        return not self._pair.isHidden()

    # Lists --------------------------------------------------------------------------------------

    def show_duplicates(self, found: Sequence[NearDuplicates], plants: int) -> None:
        """Name the groups of near-duplicates of the plants on show."""
        clear(self.duplicates)
        if not plants:
            return
        self.duplicates.addWidget(heading(self.tr("Nearly the same"), 2))
        if not found:
            none = self.tr("No two of these plants have a relationship of 0.95 or more.")
            self.duplicates.addWidget(sentence(none, "soft"))
            return
        self.duplicates.addWidget(
            sentence(
                self.tr("Groups with a relationship of 0.95 or more; a bar beside the map marks."),
                "soft",
            )
        )
        for group in found[:_GROUPS]:
            label = LinkLabel(self._group_html(group))
            label.setAccessibleName(f"{', '.join(group.plants)}: {say(group.why)}")
            label.followed.connect(self.plant_wanted)
            self.duplicates.addWidget(label)
        if len(found) > _GROUPS:
            more = self.tr("And {} groups more.").format(len(found) - _GROUPS)
            self.duplicates.addWidget(sentence(more, "soft"))

    def _group_html(self, group: NearDuplicates) -> str:
        listed = ", ".join(link(code) for code in group.plants[:6])
        more = len(group.plants) - 6
        if more > 0:
            listed += escape(self.tr(" and {} more").format(more))
        number = count(len(group.plants), self.tr("plant"), self.tr("plants"))
        return f"{listed}<br>{escape(number)}: {escape(say(group.why))}"

    def show_kin(
        self,
        net: PedigreeNetwork | None,
        focus: str,
        nearest: Sequence[Relative] = (),
        farthest: Sequence[Relative] = (),
        words: str = "",
    ) -> None:
        """List the nearest and farthest relatives of the focus; `words` in place of them."""
        clear(self.kin)
        if net is None:
            return
        for title, found, none in (
            (
                self.tr("Nearest to {}"),
                nearest,
                self.tr("No plant of the book shares an ancestor with it."),
            ),
            (self.tr("Farthest from {}"), farthest, ""),
        ):
            if not focus:
                continue
            self.kin.addWidget(heading(title.format(focus), 2))
            if words:
                self.kin.addWidget(sentence(words, "warn"))
                return
            if not found:
                self.kin.addWidget(sentence(none, "soft"))
                continue
            self.kin.addLayout(self._lines(net, found, focus))
        if not focus:
            self.kin.addWidget(
                sentence(self.tr("Choose a plant in the picture to see its relatives."), "soft")
            )

    def _lines(self, net: PedigreeNetwork, found: Sequence[Relative], focus: str) -> QGridLayout:
        from pedigreeview.network.text import decimal_text

        grid = QGridLayout()
        grid.setHorizontalSpacing(step())
        grid.setVerticalSpacing(max(2, step() // 3))
        grid.setColumnStretch(0, 1)
        for at, text in enumerate((self.tr("Plant"), "R", "θ")):
            caption = sentence(text, "caption")
            if at:
                caption.setAlignment(Qt.AlignmentFlag.AlignRight)
            caption.setToolTip((text, self.tr("Relationship"), self.tr("Coancestry"))[at])
            grid.addWidget(caption, 0, at)
        texts = [(decimal_text(one.relationship), decimal_text(one.coancestry)) for one in found]
        tails = [max((_tail(pair[at]) for pair in texts), key=len, default="") for at in (0, 1)]
        for row, one in enumerate(found, 1):
            label = LinkLabel(link(one.code, named(net.book, one.code)))
            label.setToolTip(self.tr("Explain {} with {}").format(focus, one.code))
            label.followed.connect(lambda code: self.pair_wanted.emit(focus, code))
            grid.addWidget(label, row, 0)
            for at, text in enumerate(texts[row - 1]):
                grid.addWidget(_Number(text, tails[at]), row, at + 1)
        return grid
