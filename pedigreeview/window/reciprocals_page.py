"""The Reciprocals page: the two directions of every pair in two mirrored columns."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QWidget,
)

from pedigreeview.book.reciprocal_counts import DirectionCounts, RecordsByCross, TraitSummary
from pedigreeview.window.labels import (
    LinkLabel,
    clear,
    column,
    heading,
    rule,
    scrolled,
    sentence,
    set_measure,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import link, links, named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["ReciprocalsPage"]

_Maker = Callable[[DirectionCounts], QWidget]

_FLOWERS_A_SIDE = 42
"""Telling a take of 60% from one of 30% with 80% power, normal formula."""


def _number(value: float | None) -> str:
    return "–" if value is None else f"{value:.4g}"


class ReciprocalsPage(QWidget):
    """A list of pairs at the side, the chosen pair's two directions beside it."""

    plant_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._net: PedigreeNetwork | None = None
        self._records: RecordsByCross | None = None
        s = step()
        outer = QHBoxLayout(self)
        outer.setSpacing(0)
        outer.setContentsMargins(0, 0, 0, 0)
        side = QFrame()
        side.setObjectName("drawer")
        left = column(s)
        left.setContentsMargins(2 * s, 3 * s, s, 2 * s)
        side.setLayout(left)
        left.addWidget(heading(self.tr("Reciprocals"), 2))
        left.addWidget(sentence(self.tr("The same two parents with the roles exchanged."), "soft"))
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Reciprocal pairs"))
        self.list.setWordWrap(True)
        self.list.currentRowChanged.connect(self._show_row)
        left.addWidget(self.list, 1)
        self._side = side
        outer.addWidget(side)
        inner = QWidget()
        self._body = column(2 * s)
        inner.setLayout(self._body)
        outer.addWidget(scrolled(inner), 1)
        self.fit_sides()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit_sides()

    def fit_sides(self) -> None:
        """Give the list the width that the size of the text asks for, as far as there is room."""
        side = min(32 * step(), self.width() * 3 // 10)
        self._side.setFixedWidth(side)
        set_measure(self._body, self.width() - side, 3 * step())

    def show_network(self, net: PedigreeNetwork) -> None:
        """List the pairs of another book, by plant first, then by variety."""
        self._net = net
        self._records = RecordsByCross(net.book)
        pairs = net.reciprocal_pairs()
        self.list.clear()
        for pair in pairs:
            a, b = pair.parents
            level = self.tr("by plant") if pair.level == "plant" else self.tr("by variety")
            item = QListWidgetItem(f"{a} ⇄ {b}\n{level}")
            item.setToolTip(f"{named(net.book, a)} ⇄ {named(net.book, b)}")
            self.list.addItem(item)
        if pairs:
            self.list.setCurrentRow(0)
        else:
            clear(self._body)
            self._body.addWidget(heading(self.tr("No reciprocal pair yet"), 2))
            self._body.addWidget(
                sentence(
                    self.tr(
                        "A pair appears here by itself when two parents have been crossed both "
                        "ways: once with one of them as the seed parent, once with the other."
                    )
                )
            )
            self._body.addStretch(1)

    def pair_count(self) -> int:
        """How many pairs are listed."""
        return self.list.count()

    def _show_row(self, row: int) -> None:
        if self._net is None or self._records is None or row < 0:
            return
        pairs = self._net.reciprocal_pairs()
        if row >= len(pairs):
            return
        pair, book = pairs[row], self._net.book
        clear(self._body)
        a, b = pair.parents
        s = step()
        head = column(s // 2)
        head.addWidget(heading(f"{named(book, a)} ⇄ {named(book, b)}", 2))
        how = (
            self.tr("A pair by plant: the same two plants, crossed both ways.")
            if pair.level == "plant"
            else self.tr(
                "A pair by variety: plants grown from these two varieties, crossed both ways."
            )
        )
        head.addWidget(sentence(how, "soft"))
        self._body.addLayout(head)
        ahead = self._records.direction(pair.crosses[0])
        back = self._records.direction(pair.crosses[1])
        self._body.addLayout(self._columns(a, b, ahead, back))
        self._body.addWidget(rule())
        for text in self._differences(a, b, ahead, back):
            self._body.addWidget(sentence(text))
        self._body.addStretch(1)

    # The two columns ----------------------------------------------------------------------------

    def _columns(
        self, a: str, b: str, ahead: DirectionCounts, back: DirectionCounts
    ) -> QGridLayout:
        s = step()
        grid = QGridLayout()
        grid.setHorizontalSpacing(3 * s)
        grid.setVerticalSpacing(s)
        for at, stretch in ((0, 5), (1, 3), (2, 5)):
            grid.setColumnStretch(at, stretch)
        for at, (seed, pollen) in ((0, (a, b)), (2, (b, a))):
            right = at == 0
            box = column(max(2, s // 4))
            title = LinkLabel(f"{link(seed)} × {link(pollen)}", "heading3")
            title.followed.connect(self.plant_wanted)
            lines: list[QWidget] = [
                title,
                sentence(self.tr("{} bears the seed").format(seed), "soft"),
            ]
            for label in lines:
                self._align(label, right)
                box.addWidget(label)
            grid.addLayout(box, 0, at)
        row = 1
        for title_text, make in self._rows():
            grid.addWidget(rule(), row, 0, 1, 3)
            row += 1
            for at, counts in ((0, ahead), (2, back)):
                label = make(counts)
                self._align(label, at == 0)
                grid.addWidget(label, row, at, Qt.AlignmentFlag.AlignVCenter)
            caption = sentence(title_text, "caption")
            caption.setAlignment(Qt.AlignmentFlag.AlignCenter)
            grid.addWidget(caption, row, 1, Qt.AlignmentFlag.AlignVCenter)
            row += 1
        row = self._trait_rows(grid, row, ahead, back)
        return grid

    def _align(self, label: QWidget, right: bool) -> None:
        side = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag.AlignLeft
        label.setAlignment(side | Qt.AlignmentFlag.AlignTop)  # type: ignore[attr-defined]

    def _rows(self) -> list[tuple[str, _Maker]]:
        def number(
            pick: Callable[[DirectionCounts], object],
        ) -> Callable[[DirectionCounts], QWidget]:
            def make(counts: DirectionCounts) -> QWidget:
                value = pick(counts)
                return sentence("–" if value is None else str(value), "number")

            return make

        return [
            (self.tr("Crosses"), self._crosses),
            (self.tr("Flowers worked"), number(lambda c: c.flowers)),
            (self.tr("Fruits set"), number(lambda c: c.fruits_set)),
            (self.tr("Take rate"), number(self._take)),
            (self.tr("Fruits harvested"), number(lambda c: c.fruits)),
            (self.tr("Seeds"), number(lambda c: c.seeds)),
            (self.tr("Seeds a fruit"), number(lambda c: _number(c.seeds_per_fruit))),
            (self.tr("Seedlings up"), number(self._up)),
            (self.tr("Progeny recorded"), self._progeny),
            (self.tr("Cytoplasm"), self._cytoplasm),
        ]

    def _take(self, counts: DirectionCounts) -> str | None:
        if counts.take_rate is None or counts.take_of is None:
            return None
        return self.tr("{:.0f}%  ({} of {})").format(100 * counts.take_rate, *counts.take_of)

    def _up(self, counts: DirectionCounts) -> str | None:
        if counts.up is None:
            return None
        if counts.sown is None:
            return str(counts.up)
        return self.tr("{} of {} sown").format(counts.up, counts.sown)

    def _link_label(self, html: str) -> LinkLabel:
        label = LinkLabel(html)
        label.followed.connect(self.plant_wanted)
        return label

    def _crosses(self, counts: DirectionCounts) -> QWidget:
        assert self._net is not None
        parts = []
        for code in counts.crosses:
            progeny = self._net.progeny_of_cross(code)
            target = progeny[0] if progeny else self._net.book.crosses[code].seed_parent
            parts.append(link(target, code))
        return self._link_label("<br>".join(parts))

    def _progeny(self, counts: DirectionCounts) -> QWidget:
        if not counts.progeny:
            return sentence(self.tr("none"))
        return self._link_label(f"{len(counts.progeny)}<br>{links(counts.progeny, 8)}")

    def _cytoplasm(self, counts: DirectionCounts) -> QWidget:
        assert self._net is not None
        seed = self._net.book.crosses[counts.crosses[0]].seed_parent
        founder = self._net.cytoplasm(seed) if seed else None
        if founder is None:
            return sentence(self.tr("not known"))
        return self._link_label(link(founder, named(self._net.book, founder)))

    def _trait_rows(
        self, grid: QGridLayout, row: int, ahead: DirectionCounts, back: DirectionCounts
    ) -> int:
        sides = ({one.trait: one for one in ahead.traits}, {one.trait: one for one in back.traits})
        for trait in dict.fromkeys([*sides[0], *sides[1]]):
            grid.addWidget(rule(), row, 0, 1, 3)
            row += 1
            for at, side in ((0, sides[0]), (2, sides[1])):
                label = sentence(self._trait_text(side.get(trait)))
                self._align(label, at == 0)
                grid.addWidget(label, row, at)
            caption = sentence(trait, "caption")
            caption.setAlignment(Qt.AlignmentFlag.AlignCenter)
            grid.addWidget(caption, row, 1, Qt.AlignmentFlag.AlignVCenter)
            row += 1
        return row

    def _trait_text(self, one: TraitSummary | None) -> str:
        if one is None:
            return "–"
        if one.mean is not None:
            unit = f" {one.unit}" if one.unit else ""
            return self.tr("{}{}  (mean of {})").format(_number(one.mean), unit, one.n)
        return ", ".join(f"{value} {count}" for value, count in one.counts)

    # In words -----------------------------------------------------------------------------------

    def _differences(
        self, a: str, b: str, ahead: DirectionCounts, back: DirectionCounts
    ) -> list[str]:
        assert self._net is not None
        found = []
        here, there = ahead.take_rate, back.take_rate
        if here is not None and there is not None and ahead.take_of and back.take_of:
            found.append(
                self.tr("Take: {:.0f}% where {} bears the seed, {:.0f}% where {} does.").format(
                    100 * here, a, 100 * there, b
                )
            )
            if min(ahead.take_of[1], back.take_of[1]) < _FLOWERS_A_SIDE:
                found.append(
                    self.tr(
                        "Few flowers: telling 60% from 30% wants about {} on each side, so no "
                        "verdict is given."
                    ).format(_FLOWERS_A_SIDE)
                )
        if ahead.seeds_per_fruit is not None and back.seeds_per_fruit is not None:
            found.append(
                self.tr("Seeds a fruit: {} on {}, {} on {}.").format(
                    _number(ahead.seeds_per_fruit), a, _number(back.seeds_per_fruit), b
                )
            )
        found.append(
            self.tr(
                "Both directions have the same coancestry; they differ in cytoplasm, seed coat and "
                "early vigour."
            )
        )
        return found
