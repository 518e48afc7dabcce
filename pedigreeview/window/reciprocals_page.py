"""The Reciprocals page: the two directions of every pair in two mirrored columns."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from decimal import ROUND_HALF_UP, Decimal
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
from pedigreeview.window.errands import Errands
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
from pedigreeview.window.takes import ask_takes
from pedigreeview.window.words import link, links, named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.takes import TakeDifference

__all__ = ["ReciprocalsPage"]

_Pick = Callable[[DirectionCounts], str | None]

_FEW = 20
"""Of fewer than these a share in percent says more than is known."""


def _places(values: Iterable[float | None]) -> int:
    """Decimals that two values share: three figures of the larger one, at most two."""
    largest = max((abs(value) for value in values if value is not None), default=0.0)
    return 0 if largest >= 100 else 1 if largest >= 1 else 2


def _rounded(value: float, places: int) -> str:
    """To so many decimals, halves up, as people round."""
    grain = Decimal(1).scaleb(-places)
    return str(Decimal(repr(value)).quantize(grain, ROUND_HALF_UP))


class ReciprocalsPage(QWidget):
    """A list of pairs at the side, the chosen pair's two directions beside it."""

    plant_wanted = Signal(str)

    def __init__(self, errands: Errands) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._errands = errands
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
        self._errands.drop("takes")
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
        self._takes = column(s // 2)
        self._body.addLayout(self._takes)
        grid, missing = self._columns(a, b, ahead, back)
        self._body.addLayout(grid)
        self._body.addWidget(rule())
        if missing:
            text = self.tr("Not written down in this book: {}.").format(", ".join(missing))
            self._body.addWidget(sentence(text, "soft"))
        self._body.addWidget(
            sentence(
                self.tr(
                    "Both directions have the same coancestry; they differ in cytoplasm, seed coat "
                    "and early vigour."
                ),
                "soft",
            )
        )
        self._body.addStretch(1)
        if ahead.take_of is not None and back.take_of is not None:
            self._errands.ask(
                "takes",
                lambda: ask_takes(ahead, back),
                lambda told: self._show_takes(a, b, ahead, back, told),
            )

    # The two columns ----------------------------------------------------------------------------

    def _columns(
        self, a: str, b: str, ahead: DirectionCounts, back: DirectionCounts
    ) -> tuple[QGridLayout, list[str]]:
        """The grid, and the names of the rows of which nothing is written down."""
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
        missing = []
        self._add_row(grid, self.tr("Crosses"), self._crosses(ahead), self._crosses(back))
        for title_text, pick in self._rows(ahead, back):
            texts = pick(ahead), pick(back)
            if texts == (None, None):
                missing.append(title_text[:1].lower() + title_text[1:])
                continue
            self._add_row(grid, title_text, *(sentence(text or "–") for text in texts))
        self._add_row(grid, self.tr("Progeny recorded"), self._progeny(ahead), self._progeny(back))
        self._add_row(grid, self.tr("Cytoplasm"), self._cytoplasm(ahead), self._cytoplasm(back))
        sides = ({one.trait: one for one in ahead.traits}, {one.trait: one for one in back.traits})
        for trait in dict.fromkeys([*sides[0], *sides[1]]):
            two = sides[0].get(trait), sides[1].get(trait)
            places = _places(one.mean for one in two if one is not None)
            self._add_row(grid, trait, *(sentence(self._trait_text(one, places)) for one in two))
        return grid, missing

    def _add_row(self, grid: QGridLayout, title: str, left: QWidget, right: QWidget) -> None:
        row = grid.rowCount()
        grid.addWidget(rule(), row, 0, 1, 3)
        for at, label in ((0, left), (2, right)):
            self._align(label, at == 0)
            grid.addWidget(label, row + 1, at, Qt.AlignmentFlag.AlignTop)
        caption = sentence(title, "caption")
        caption.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        grid.addWidget(caption, row + 1, 1, Qt.AlignmentFlag.AlignTop)

    def _align(self, label: QWidget, right: bool) -> None:
        side = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag.AlignLeft
        label.setAlignment(side | Qt.AlignmentFlag.AlignTop)  # type: ignore[attr-defined]

    def _rows(self, ahead: DirectionCounts, back: DirectionCounts) -> list[tuple[str, _Pick]]:
        places = _places((ahead.seeds_per_fruit, back.seeds_per_fruit))

        def number(value: int | None) -> str | None:
            return None if value is None else str(value)

        def seeds_per_fruit(counts: DirectionCounts) -> str | None:
            value = counts.seeds_per_fruit
            return None if value is None else _rounded(value, places)

        return [
            (self.tr("Flowers worked"), lambda c: number(c.flowers)),
            (self.tr("Fruits set"), lambda c: number(c.fruits_set)),
            (self.tr("Take"), self._take),
            (self.tr("Fruits harvested"), lambda c: number(c.fruits)),
            (self.tr("Seeds"), lambda c: number(c.seeds)),
            (self.tr("Seeds a fruit"), seeds_per_fruit),
            (self.tr("Seedlings up"), self._up),
        ]

    def _take(self, counts: DirectionCounts) -> str | None:
        if counts.take_rate is None or counts.take_of is None:
            return None
        shown = self.tr("{} of {}").format(*counts.take_of)
        if counts.take_of[1] >= _FEW:
            shown += self.tr(", {:.0f}%").format(100 * counts.take_rate)
        return shown

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
        return self._link_label(f"{len(counts.progeny)}: {links(counts.progeny, 8)}")

    def _cytoplasm(self, counts: DirectionCounts) -> QWidget:
        assert self._net is not None
        seed = self._net.book.crosses[counts.crosses[0]].seed_parent
        founder = self._net.cytoplasm(seed) if seed else None
        if founder is None:
            return sentence(self.tr("not known"))
        return self._link_label(link(founder, named(self._net.book, founder)))

    def _trait_text(self, one: TraitSummary | None, places: int) -> str:
        if one is None:
            return "–"
        if one.mean is not None:
            unit = f" {one.unit}" if one.unit else ""
            return self.tr("{}{}  (mean of {})").format(_rounded(one.mean, places), unit, one.n)
        return ", ".join(f"{count} {value}" for value, count in one.counts)

    # In words -----------------------------------------------------------------------------------

    def _show_takes(
        self,
        a: str,
        b: str,
        ahead: DirectionCounts,
        back: DirectionCounts,
        told: TakeDifference | None,
    ) -> None:
        """The difference of the takes first, then how sure it is."""
        if told is None or ahead.take_of is None or back.take_of is None:
            return
        effect = self.tr(
            "Take: {} of {} flowers where {} bears the seed, {} of {} where {} does"
        ).format(*ahead.take_of, a, *back.take_of, b)
        verdict = {
            "differs": self.tr("it differs"),
            "too few to tell": self.tr("too few to tell"),
            "no difference shown": self.tr("no difference shown"),
        }[told.verdict]
        shown = self.tr("p below 0.001") if told.p < 0.001 else self.tr("p = {:.2g}").format(told.p)
        verdict_text = sentence(f"{effect}: {verdict} ({shown}, {self.tr('exact test')}).")
        verdict_text.setObjectName("takes")
        self._takes.addWidget(verdict_text)
        caution = self.tr(
            "Flowers of one plant on one day are not independent of each other, so p is at best a "
            "guide."
        )
        if told.verdict == "too few to tell":
            caution += " " + self.tr(
                "For a measure: to tell a take of 60% from one of 30% in four trials of five, "
                "about 42 flowers are worked in each direction."
            )
        self._takes.addWidget(sentence(caution, "soft"))
