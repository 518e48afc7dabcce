"""What was worked, taken, harvested and grown in both directions, side by side with bars."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from pedigreeview.book.reciprocal_counts import DirectionCounts, TraitSummary
from pedigreeview.window.judging.bars import PlainBar
from pedigreeview.window.labels import LinkLabel, column, rule, sentence
from pedigreeview.window.style import step
from pedigreeview.window.takes import PairFacts
from pedigreeview.window.words import link, links, named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["PairCounts", "places", "rounded"]

_FEW = 20
"""Of fewer than these a share in percent says more than is known."""
_BAR_COLUMNS = (1, 3)


def places(values: Iterable[float | None]) -> int:
    """Decimals that two values share: three figures of the larger one, at most two."""
    largest = max((abs(value) for value in values if value is not None), default=0.0)
    return 0 if largest >= 100 else 1 if largest >= 1 else 2


def rounded(value: float, decimals: int) -> str:
    """To so many decimals, halves up, as people round."""
    grain = Decimal(1).scaleb(-decimals)
    return str(Decimal(repr(value)).quantize(grain, ROUND_HALF_UP))


@dataclass(frozen=True, slots=True)
class _Row:
    """One kind of count: its name, text and number of a direction; whether the number is a share"""

    title: str
    text: Callable[[DirectionCounts], str | None]
    number: Callable[[DirectionCounts], float | None]
    share: bool = False


class PairCounts(QWidget):
    """The table of both directions: value, bar, what it is, bar, value.

    missing : names of the counts of which neither direction has anything
    """

    plant_wanted = Signal(str)

    def __init__(self, net: PedigreeNetwork, facts: PairFacts) -> None:
        super().__init__()
        self._net, self._facts = net, facts
        self.missing: list[str] = []
        s = step()
        outer = column()
        self.setLayout(outer)
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(2 * s)
        self._grid.setVerticalSpacing(max(2, s // 2))
        for at, stretch in ((0, 4), (1, 3), (2, 3), (3, 3), (4, 4)):
            self._grid.setColumnStretch(at, stretch)
        outer.addLayout(self._grid)
        self._heads()
        ahead, back = facts.counts
        self._add(self.tr("Crosses"), self._crosses(ahead), self._crosses(back))
        for row in self._rows(ahead, back):
            texts = row.text(ahead), row.text(back)
            if texts == (None, None):
                self.missing.append(row.title[:1].lower() + row.title[1:])
                continue
            self._add_counted(row, ahead, back)
        self._add(self.tr("Progeny recorded"), self._progeny(ahead), self._progeny(back))
        if any(facts.selfs):
            own, other = (self._plants(codes) for codes in facts.selfs)
            self._add(self.tr("Found to be selfs"), own, other)
        self._add(self.tr("Kept"), *self._kept())
        self._add(self.tr("Cytoplasm"), *(self._cytoplasm(code) for code in facts.cytoplasm))
        self._traits(ahead, back)

    def _heads(self) -> None:
        a, b = self._facts.line.parents
        for at, (seed, pollen) in ((0, (a, b)), (3, (b, a))):
            box = column(max(2, step() // 4))
            title = LinkLabel(f"{link(seed)} × {link(pollen)}", "heading3")
            title.followed.connect(self.plant_wanted)
            for label in (title, sentence(self.tr("{} bears the seed").format(seed), "soft")):
                _align(label, at == 0)
                box.addWidget(label)
            self._grid.addLayout(box, 0, at, 1, 2)

    def _add(self, title: str, left: QWidget, right: QWidget) -> None:
        """One row without bars: each side has both of its columns."""
        row = self._begin(title)
        for at, widget in ((0, left), (3, right)):
            _align(widget, at == 0)
            self._grid.addWidget(widget, row, at, 1, 2, Qt.AlignmentFlag.AlignTop)

    def _begin(self, title: str) -> int:
        row = self._grid.rowCount()
        self._grid.addWidget(rule(), row, 0, 1, 5)
        caption = sentence(title, "caption")
        caption.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(caption, row + 1, 2, Qt.AlignmentFlag.AlignVCenter)
        return row + 1

    def _add_counted(self, kind: _Row, ahead: DirectionCounts, back: DirectionCounts) -> None:
        row = self._begin(kind.title)
        numbers = [kind.number(ahead), kind.number(back)]
        known = [number for number in numbers if number is not None]
        most = 1.0 if kind.share else max([*known, 0.0])
        for at, (counts, number) in enumerate(zip((ahead, back), numbers, strict=True)):
            text = kind.text(counts)
            label = sentence(text if text is not None else "–")
            _align(label, at == 0)
            self._grid.addWidget(label, row, 4 * at, Qt.AlignmentFlag.AlignVCenter)
            if number is None or most <= 0:
                continue
            words = self.tr("{}: {}").format(kind.title, text)
            bar = PlainBar(number / most, words, outwards_left=at == 0, of_whole=kind.share)
            self._grid.addWidget(bar, row, _BAR_COLUMNS[at], Qt.AlignmentFlag.AlignVCenter)

    def _rows(self, ahead: DirectionCounts, back: DirectionCounts) -> list[_Row]:
        decimals = places((ahead.seeds_per_fruit, back.seeds_per_fruit))

        def plain(pick: Callable[[DirectionCounts], int | None]) -> Callable[..., str | None]:
            return lambda c: None if pick(c) is None else str(pick(c))

        def seeds_per_fruit(counts: DirectionCounts) -> str | None:
            value = counts.seeds_per_fruit
            return None if value is None else rounded(value, decimals)

        return [
            _Row(self.tr("Flowers worked"), plain(lambda c: c.flowers), lambda c: c.flowers),
            _Row(self.tr("Fruits set"), plain(lambda c: c.fruits_set), lambda c: c.fruits_set),
            _Row(self.tr("Take"), self._take, lambda c: c.take_rate, share=True),
            _Row(self.tr("Fruits harvested"), plain(lambda c: c.fruits), lambda c: c.fruits),
            _Row(self.tr("Seeds"), plain(lambda c: c.seeds), lambda c: c.seeds),
            _Row(self.tr("Seeds a fruit"), seeds_per_fruit, lambda c: c.seeds_per_fruit),
            _Row(self.tr("Seedlings up"), self._up, self._up_share, share=True),
        ]

    def _take(self, counts: DirectionCounts) -> str | None:
        if counts.take_rate is None or counts.take_of is None:
            return None
        if counts.take_of[1] >= _FEW:
            percent = f"{100 * counts.take_rate:.0f}"
            return self.tr("{} of {}, {}%").format(*counts.take_of, percent)
        return self.tr("{} of {}").format(*counts.take_of)

    def _up(self, counts: DirectionCounts) -> str | None:
        if counts.up is None:
            return None
        if counts.sown is None:
            return str(counts.up)
        return self.tr("{} of {} sown").format(counts.up, counts.sown)

    def _up_share(self, counts: DirectionCounts) -> float | None:
        if counts.up is None or not counts.sown:
            return None
        return counts.up / counts.sown

    # Cells with links ---------------------------------------------------------------------------

    def _link_label(self, html: str) -> LinkLabel:
        label = LinkLabel(html)
        label.followed.connect(self.plant_wanted)
        return label

    def _crosses(self, counts: DirectionCounts) -> QWidget:
        if not counts.crosses:
            return sentence(self.tr("not made yet"))
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

    def _plants(self, codes: tuple[str, ...]) -> QWidget:
        return self._link_label(links(codes, 8)) if codes else sentence(self.tr("none"))

    def _kept(self) -> tuple[QWidget, QWidget]:
        texts = [
            self.tr("{} of {} raised").format(kept, len(counts.progeny)) if counts.progeny else "–"
            for kept, counts in zip(self._facts.kept, self._facts.counts, strict=True)
        ]
        return sentence(texts[0]), sentence(texts[1])

    def _cytoplasm(self, founder: str | None) -> QWidget:
        if founder is None:
            return sentence(self.tr("not known"))
        return self._link_label(link(founder, named(self._net.book, founder)))

    # Traits of all recorded progeny -------------------------------------------------------------

    def _traits(self, ahead: DirectionCounts, back: DirectionCounts) -> None:
        sides = ({one.trait: one for one in ahead.traits}, {one.trait: one for one in back.traits})
        for trait in dict.fromkeys([*sides[0], *sides[1]]):
            two = sides[0].get(trait), sides[1].get(trait)
            decimals = places(one.mean for one in two if one is not None)
            self._add(trait, *(sentence(self._trait_text(one, decimals)) for one in two))

    def _trait_text(self, one: TraitSummary | None, decimals: int) -> str:
        if one is None:
            return "–"
        if one.mean is not None:
            unit = f" {one.unit}" if one.unit else ""
            return self.tr("{}{}  (mean of {})").format(rounded(one.mean, decimals), unit, one.n)
        return ", ".join(f"{count} {value}" for value, count in one.counts)


def _align(label: QWidget, right: bool) -> None:
    side = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag.AlignLeft
    label.setAlignment(side | Qt.AlignmentFlag.AlignTop)  # type: ignore[attr-defined]
