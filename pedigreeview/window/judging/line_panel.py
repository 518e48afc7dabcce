"""Stable line: all rows with a verdict, and of the chosen one everything that it rests on."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QSpinBox, QWidget

from pedigreeview.window.answers import Reason
from pedigreeview.window.judging.bars import EffectBar
from pedigreeview.window.judging.choices import lines_to_judge
from pedigreeview.window.judging.panel import Beside, JudgingPanel, field_row, figure
from pedigreeview.window.judging.table import Cell, ResultTable
from pedigreeview.window.labels import (
    Flow,
    LinkLabel,
    action_button,
    clear,
    column,
    heading,
    rule,
    sentence,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import count, link
from pedigreeview.window.words import number as written

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.stability import LineReport, TraitSpread

__all__ = ["LinePanel"]

_ORDER = ("looks stable", "none seen, too few to tell", "too few to tell", "not stable")
_MOST = 2000
"""Lines that are judged at once; the youngest first."""


def _ask(
    net: PedigreeNetwork, wanted: float, tick: Callable[..., None]
) -> tuple[list[LineReport], int]:
    from pedigreeview.planning.stability import line_report

    codes = lines_to_judge(net, tick)
    codes.sort(key=lambda code: -(net.generation(code) or 0))
    found = []
    for at, code in enumerate(codes[:_MOST]):
        tick(at, len(codes))
        found.append(line_report(net, code, wanted=wanted))
    return found, max(0, len(codes) - _MOST)


class LinePanel(JudgingPanel):
    """A table of lines, and the chosen line below."""

    NAME = "lines"

    def _build(self) -> None:
        self._head(
            self.tr("Stable line?"),
            self.tr("Which families and rows breed true, and how many plants it takes to trust it"),
        )
        part = column(step())
        self.choices.setLayout(part)
        self.wanted = QSpinBox()
        self.wanted.setRange(1, 30)
        self.wanted.setValue(5)
        self.wanted.setSuffix(" %")
        self.wanted.setFixedWidth(11 * step())
        self.wanted.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.wanted.setToolTip(self.tr("Share of off-types that would be put up with"))
        self.wanted.valueChanged.connect(lambda _: self._start())
        part.addLayout(field_row(((self.tr("&Off-types put up with"), self.wanted),)))
        self._wanted = ""
        self._reports: dict[str, LineReport] = {}
        self.table = ResultTable(self.tr("Lines with their verdicts"), lines=9)
        self.detail = QWidget()

    def redraw(self) -> None:
        self.wanted.setFixedWidth(11 * step())
        super().redraw()

    def _start(self) -> None:
        net, wanted, tick = self._net, self.wanted.value() / 100, self._errands.tick
        if net is None:
            return
        if not self._reports:
            self._waiting(self.tr("Judging every line …"))
        self._ask("lines", lambda: _ask(net, wanted, tick), self._take)

    def go_to(self, what: str) -> None:
        """The row of a plant, or a family or variety."""
        self._wanted = what
        if what in self._reports:
            self.table.choose(what)

    def _take(self, found: tuple[list[LineReport], int]) -> None:
        reports, left_out = found
        kept = self.table.current_key() if self._reports else ""
        self._reports = {report.code: report for report in reports}
        if not reports:
            self._nothing(
                self.tr("No row of plants yet"),
                self.tr(
                    "A line is judged by its plants: two or more raised from one selfed plant, "
                    "from a family or from the seed of a variety, and scored."
                ),
                ((self.tr("Write down plants raised"), "raise"),),
            )
            return
        self.choices.show()
        clear(self.body)
        order = sorted(reports, key=lambda r: (_ORDER.index(r.verdict), -(r.inbreeding or 0.0)))
        self.table = ResultTable(self.tr("Lines with their verdicts"), lines=9)
        self.table.fill(
            (
                self.tr("Line"),
                self.tr("Verdict"),
                self.tr("Generation"),
                self.tr("F expected"),
                self.tr("Plants"),
                self.tr("Off-types"),
                self.tr("Still segregates for"),
            ),
            [self._row(report) for report in order],
        )
        self.table.opened.connect(self.plant_wanted)
        self.table.chosen.connect(self._show_line)
        self.body.addWidget(self.table)
        if left_out:
            text = self.tr("{} older lines are not judged here.")
            self.body.addWidget(sentence(text.format(written(left_out)), "soft"))
        self.detail = QWidget()
        self._detail = column(step())
        self.detail.setLayout(self._detail)
        self.body.addWidget(self.detail)
        for code in (self._wanted, kept, self._marked, order[0].code):
            if code and self.table.choose(code):
                break
        self._wanted = ""

    def _verdict(self, verdict: str) -> str:
        return {
            "looks stable": self.tr("looks stable"),
            "none seen, too few to tell": self.tr("no own off-type seen, too few to tell"),
            "too few to tell": self.tr("too few to tell"),
            "not stable": self.tr("not stable"),
        }[verdict]

    def _row(self, report: LineReport) -> tuple[str, tuple[Cell, ...]]:
        f = report.inbreeding
        off = report.off_types
        return report.code, (
            Cell(report.code),
            Cell(self._verdict(report.verdict), float(_ORDER.index(report.verdict))),
            Cell(report.generation or "–"),
            Cell("–" if f is None else f"{f:.4g}", -1.0 if f is None else f, number=True),
            Cell(str(len(report.plants)), len(report.plants), number=True),
            Cell(
                self._seen(report) if off.plants else "–",
                off.seen / off.plants if off.plants else -1.0,
                number=True,
            ),
            Cell(", ".join(trait for trait, _ in report.segregating) or "–"),
        )

    def _seen(self, report: LineReport) -> str:
        off = report.off_types
        if off.strays == 1:
            return self.tr("{} of {} (1 outcross or stray)").format(off.seen, off.plants)
        if off.strays:
            return self.tr("{} of {} ({} outcrosses or strays)").format(
                off.seen, off.plants, off.strays
            )
        return self.tr("{} of {}").format(off.seen, off.plants)

    # One line -----------------------------------------------------------------------------------

    def _show_line(self, code: str) -> None:
        report = self._reports.get(code)
        if report is None or self._net is None:
            return
        clear(self._detail)
        self._detail.addWidget(rule())
        title = LinkLabel(
            self.tr("{}: {}").format(link(code), self._verdict(report.verdict)), "heading2"
        )
        title.setObjectName("line_verdict")
        title.followed.connect(self.plant_wanted)
        self._detail.addWidget(title)
        self._detail.addWidget(Beside(self._fixed(report), self._off_types(report)))
        for trait, counts in report.segregating:
            said = " : ".join(f"{number} {value}" for value, number in counts)
            text = self.tr("It still segregates for {}: {}.").format(trait, said)
            self._detail.addWidget(sentence(text))
        for odd in report.odd:
            text = self.tr("{}: {} {} in a row of {}").format(
                link(odd.plant), odd.trait, odd.value, odd.usual
            )
            if odd.foreign:
                text += self.tr("; that is foreign pollen or a volunteer, not segregation")
            label = LinkLabel(f"{text}.")
            label.followed.connect(self.plant_wanted)
            self._detail.addWidget(label)
        if report.spreads:
            self._spreads(report)
        if self._write is not None and report.verdict in _ORDER[:2]:
            write = self._write
            row = Flow(step())
            row.addWidget(
                action_button(
                    self.tr("Name this line as a variety …"),
                    lambda: write("name_line", plant=code, plants=(code,)),
                    main=True,
                )
            )
            self._detail.addLayout(row)

    def _fixed(self, report: LineReport) -> QWidget:
        net = self._net
        assert net is not None
        if report.inbreeding is None:
            text = self.tr("F of its plants cannot be given until its records are put right.")
            return sentence(text, "warn")
        left = self.tr(
            "{}% of what once segregated is expected to do so still in each plant."
        ).format(f"{100 * (1 - report.inbreeding):.3g}")
        if report.more_selfings:
            one = self.tr("more selfing brings F to 0.99.")
            many = self.tr("more selfings bring F to 0.99.")
            left += " " + count(report.more_selfings, one, many)
        name = self.tr("F expected of its plants")
        if report.generation:
            name = self.tr("F expected of its plants, {}").format(report.generation)
        reason = Reason(
            (
                self.tr("Each selfing halves what is still heterozygous: F′ = (1 + F) / 2."),
                self.tr(
                    "Expected over all genes; selection, and chance in so few plants, move the "
                    "real share about it."
                ),
            ),
            self.tr("F by the pedigree, as on the card of each plant"),
            self.tr("Wright 1922 (from memory)"),
            net.base_sentence(),
        )
        return figure(name, "line_f", f"F = {report.inbreeding:.4g}", left, reason)

    def _off_types(self, report: LineReport) -> QWidget:
        off = report.off_types
        if not off.plants:
            return sentence(self.tr("No plant of it is scored for a trait in words."), "soft")
        said = self.tr("Up to {}% may still be off-types (95% bound).").format(
            f"{100 * off.bound:.2g}"
        )
        if not off.uniform:
            said += " " + self.tr("That is more than the {} allowed where 1% is tolerated.").format(
                off.allowed
            )
        if off.bound > off.wanted:
            said += " " + self.tr(
                "To trust that fewer than {}% are, look at {} plants and see none."
            ).format(f"{100 * off.wanted:g}", off.enough)
        reason = Reason(
            (
                self.tr("An off-type is a plant unlike its row in a trait with words."),
                self.tr("Where 1% is tolerated with 95% acceptance, {} of {} are allowed.").format(
                    off.allowed, off.plants
                ),
            ),
            self.tr(
                "Bound: Clopper and Pearson, one-sided. Plants to look at: ln 0.05 / ln(1 − share)."
            ),
            self.tr("Rule of plant-variety tests for uniformity (read)"),
            self.tr("Every plant of the row has the same chance of being an off-type."),
        )
        text = self._seen(report)
        return figure(self.tr("Off-types seen"), "off_types", text, said, reason)

    def _spreads(self, report: LineReport) -> None:
        self._detail.addWidget(heading(self.tr("How even it is in what was measured"), 3))
        s = step()
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * s)
        grid.setVerticalSpacing(max(2, s // 2))
        for at, stretch in enumerate((3, 4, 4, 4)):
            grid.setColumnStretch(at, stretch)
        heads = (
            "",
            self.tr("one standard deviation"),
            self.tr("spread against plants that are alike"),
            "",
        )
        for at, head in enumerate(heads):
            grid.addWidget(sentence(head, "caption"), 0, at)
        for row, spread in enumerate(report.spreads, 1):
            unit = f" ({spread.unit})" if spread.unit else ""
            grid.addWidget(sentence(f"{spread.trait}{unit}"), row, 0)
            grid.addWidget(sentence(self._sd(spread)), row, 1)
            if spread.sd and spread.low is not None and spread.high is not None and spread.against:
                words = self.tr("{} times, likely {} to {}").format(
                    f"{spread.sd / spread.against:.2g}", f"{spread.low:.2g}", f"{spread.high:.2g}"
                )
                bar = EffectBar(
                    spread.sd / spread.against - 1,
                    spread.low - 1,
                    spread.high - 1,
                    max(1.0, spread.high - 1, 1 - spread.low) * 1.1,
                    words,
                )
                holder = column(1)
                holder.addWidget(bar)
                holder.addWidget(sentence(words, "soft"))
                grid.addLayout(holder, row, 2)
            grid.addWidget(
                sentence(self._spread_verdict(spread)), row, 3, Qt.AlignmentFlag.AlignVCenter
            )
        self._detail.addLayout(grid)
        text = self.tr(
            "The line in the middle is a spread as large as that of plants which are alike by "
            "descent: founder lines and their F1. Interval by the F distribution, 95%."
        )
        self._detail.addWidget(sentence(text, "soft"))

    def _sd(self, spread: TraitSpread) -> str:
        own = self.tr("{} over {} plants").format(f"{spread.sd:.3g}", spread.number)
        if spread.against is None:
            return own
        return self.tr("{}, against {}").format(own, f"{spread.against:.3g}")

    def _spread_verdict(self, spread: TraitSpread) -> str:
        if not spread.sd:
            # No spread among a few is no proof of evenness.
            if spread.verdict == "too few to tell":
                return self.tr("all {} alike as measured, too few to tell").format(spread.number)
            return self.tr("all {} alike as measured").format(spread.number)
        if spread.against is None:
            return self.tr("no plants that are all alike were measured")
        return {
            "still varies": self.tr("it still varies more"),
            "as even as its parents": self.tr("as even as its parents"),
            "too few to tell": self.tr("too few to tell"),
        }[spread.verdict]
