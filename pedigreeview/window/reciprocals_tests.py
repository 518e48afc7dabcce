"""How the two directions differ: effect first, then how sure it is, and what it would mean."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QToolButton, QWidget

from pedigreeview.planning.differences import MeansTest, SharesTest, p_words
from pedigreeview.planning.fruit_set import FruitSetTest
from pedigreeview.planning.reciprocal_report import ReciprocalReport, TraitPair
from pedigreeview.window.answers import Reason
from pedigreeview.window.figure import Figure
from pedigreeview.window.judging.bars import EffectBar
from pedigreeview.window.labels import column, heading, rule, sentence, why_button
from pedigreeview.window.style import step
from pedigreeview.window.why_panel import WhyPanel

__all__ = ["PairTests"]

Test = MeansTest | SharesTest
_SURE = 0.001


class PairTests(QWidget):
    """Fruit set, seeds and every trait of one pair."""

    def __init__(self, report: ReciprocalReport) -> None:
        super().__init__()
        self._report = report
        self.whys: list[QToolButton] = []
        """Every 'Why?' of the tests, from the top."""
        s = step()
        self._body = column(2 * s)
        self.setLayout(self._body)
        self._body.addWidget(heading(self.tr("Do the directions differ?"), 3))
        self._fruit_set()
        self._seeds()
        self._traits()
        self._meaning()

    # Words --------------------------------------------------------------------------------------

    def _verdict(self, verdict: str) -> str:
        return {
            "differs": self.tr("it differs"),
            "too few to tell": self.tr("too few to tell"),
            "no difference shown": self.tr("no difference shown"),
        }[verdict]

    def _p(self, p: float) -> str:
        return self.tr("p below 0.001") if p < _SURE else self.tr("p = {}").format(f"{p:.2g}")

    def _add_figure(self, figure: Figure, reason: Reason) -> None:
        figure.why_wanted.connect(lambda: figure.panel.show_reason(reason))
        self.whys.append(figure.button)
        self._body.addWidget(figure)

    # Fruit set and seeds ------------------------------------------------------------------------

    def _fruit_set(self) -> None:
        test = self._report.fruit_set
        if test is None:
            text = self.tr("Flowers and fruits are not written down for both directions.")
            self._body.addWidget(sentence(text, "soft"))
            return
        a, b = self._report.names
        points = f"{100 * test.difference:+.0f}".replace("-", "−")
        body = QWidget()
        part = column(max(2, step() // 2))
        body.setLayout(part)
        effect = self.tr(
            "Take: {} of {} flowers where {} bears the seed, {} of {} where {} does"
        ).format(test.fruits[0], test.flowers[0], a, test.fruits[1], test.flowers[1], b)
        said = self.tr("{}: {} ({}, {}).").format(
            effect, self._verdict(test.verdict), self._p(test.p), self.tr("exact test")
        )
        label = sentence(said)
        label.setObjectName("takes")
        part.addWidget(label)
        likely = self.tr("The difference lies likely between {} and {} points.").format(
            _signed(100 * test.low, 0), _signed(100 * test.high, 0)
        )
        part.addWidget(
            EffectBar(100 * test.difference, 100 * test.low, 100 * test.high, 100, likely)
        )
        part.addWidget(sentence(likely, "soft"))
        caution = self.tr(
            "Flowers of one plant on one day are not independent of each other, so p is at best a "
            "guide."
        )
        part.addWidget(sentence(f"{self._can_show(test)} {caution}".strip(), "soft"))
        name = self.tr("Difference of the takes")
        text = self.tr("{} points").format(points)
        self._add_figure(Figure(name, "fruit_set", text, "", body), self._why_take(test))

    def _can_show(self, test: FruitSetTest) -> str:
        if test.verdict == "differs":
            return ""
        m, n = test.flowers
        if test.detectable is None:
            return self.tr(
                "{} and {} flowers can show no difference at all in four trials of five."
            ).format(m, n)
        said = self.tr(
            "{} and {} flowers can only show a difference larger than {} points, in four trials of "
            "five."
        ).format(m, n, f"{100 * test.detectable:.0f}")
        measure = self.tr(
            "For a measure: to tell a take of 60% from one of 30% in four trials of five, about 48 "
            "flowers are worked in each direction."
        )
        return f"{said} {measure}"

    def _why_take(self, test: FruitSetTest) -> Reason:
        (a, b), (m, n) = test.fruits, test.flowers
        return Reason(
            (
                self.tr("{} of {} is {}%, {} of {} is {}%.").format(
                    a, m, f"{100 * a / m:.3g}", b, n, f"{100 * b / n:.3g}"
                ),
                self.tr(
                    "p is the chance of a table at least as rare as this one if both directions "
                    "took alike and the same number of fruits set in all."
                ),
            ),
            self.tr(
                "p: Fisher's exact test of the 2×2 table, two-sided. Interval: Newcombe's, from "
                "Wilson's interval of each take. What can be shown: power of the exact test, 80%."
            ),
            self.tr("Fisher 1934, Newcombe 1998 (from memory)"),
            self.tr(
                "Only pollinations that say both flowers and fruits set. Every flower is taken as "
                "a trial of its own, which flowers of one plant on one day are not."
            ),
        )

    def _seeds(self) -> None:
        seeds = self._report.seeds
        names = self._report.names
        if seeds.test is None:
            for text in seeds.sentences(names):
                self._body.addWidget(sentence(text, "soft"))
            return
        test = seeds.test
        text = _signed(test.difference, 3)
        body = QWidget()
        part = column(max(2, step() // 2))
        body.setLayout(part)
        part.addWidget(self._effect(test, _reach(test)))
        part.addWidget(sentence(" ".join(test.sentences())))
        self._add_figure(
            Figure(self.tr("Difference in seeds a fruit"), "seeds", text, "", body),
            self._why_means(test),
        )

    # Traits -------------------------------------------------------------------------------------

    def _traits(self) -> None:
        traits = self._report.traits
        if not traits:
            text = self.tr("No trait is scored in the progeny of both directions.")
            self._body.addWidget(sentence(text, "soft"))
            return
        self._body.addWidget(heading(self.tr("Traits of the progeny"), 3))
        a, b = self._report.names
        text = self.tr("Left the progeny of {}, right those of {}; accidental selfs left out.")
        self._body.addWidget(sentence(text.format(f"{a} × {b}", f"{b} × {a}"), "soft"))
        s = step()
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * s)
        grid.setVerticalSpacing(max(2, s // 2))
        for at, stretch in enumerate((2, 4, 4, 5, 4, 0)):
            grid.setColumnStretch(at, stretch)
        heads = ("", f"{a} × {b}", f"{b} × {a}", self.tr("difference"), self.tr("how sure"))
        for at, head in enumerate(heads):
            grid.addWidget(sentence(head, "caption"), 0, at)
        for trait in traits:
            self._trait(grid, trait)
        self._body.addLayout(grid)

    def _trait(self, grid: QGridLayout, trait: TraitPair) -> None:
        row = grid.rowCount()
        grid.addWidget(rule(), row, 0, 1, 6)
        unit = next((t.unit for t in (trait.first, trait.later) if isinstance(t, MeansTest)), "")
        title = self.tr("{} ({})").format(trait.trait, unit) if unit else trait.trait
        grid.addWidget(heading(title, 3), row + 1, 0, 1, 5)
        why = why_button(self.tr("Why these numbers: {}").format(trait.trait))
        grid.addWidget(why, row + 1, 5, Qt.AlignmentFlag.AlignRight)
        self.whys.append(why)
        means = [t for t in (trait.first, trait.later) if isinstance(t, MeansTest)]
        reach = max((_reach(test) for test in means), default=1.0)
        at = row + 2
        shown: list[Test] = []
        for test, generation in zip((trait.first, trait.later), trait.generations, strict=True):
            if test is None:
                continue
            shown.append(test)
            grid.addWidget(sentence(generation, "soft"), at, 0, Qt.AlignmentFlag.AlignTop)
            for side in (0, 1):
                grid.addWidget(
                    sentence(self._side(test, side)), at, 1 + side, Qt.AlignmentFlag.AlignTop
                )
            if isinstance(test, MeansTest):
                box = column(1)
                box.addWidget(self._effect(test, reach))
                box.addWidget(sentence(self._difference(test), "soft"))
                grid.addLayout(box, at, 3)
            else:
                said = self.tr("all look alike") if test.p is None else self.tr("in shares")
                grid.addWidget(sentence(said, "soft"), at, 3, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(sentence(self._sure(test)), at, 4, 1, 2, Qt.AlignmentFlag.AlignTop)
            at += 1
        meant = trait.sentences()[-1] if _tells(trait) else ""
        if meant:
            grid.addWidget(sentence(meant), at, 0, 1, 6)
            at += 1
        panel = WhyPanel(self.tr("Why: {}").format(trait.trait), why)
        panel.hide()
        grid.addWidget(panel, at, 0, 1, 6)
        reason = self._why_trait(shown)
        why.toggled.connect(lambda on: _unfold(panel, reason, on))

    def _side(self, test: Test, side: int) -> str:
        if isinstance(test, MeansTest):
            return self.tr("{} (n\u00a0{})").format(f"{test.means[side]:.4g}", test.numbers[side])
        return ", ".join(
            f"{counts[side]} {value}"
            for value, counts in zip(test.values, test.counts, strict=True)
        )

    def _difference(self, test: MeansTest) -> str:
        text = _signed(test.difference, 3)
        if test.low is None or test.high is None:
            return text
        return self.tr("{}, likely {} to {}").format(
            text, _signed(test.low, 3), _signed(test.high, 3)
        )

    def _sure(self, test: Test) -> str:
        if test.p is None:
            return (
                self.tr("nothing to compare")
                if isinstance(test, SharesTest)
                else self.tr("too few to tell")
            )
        said = self.tr("{}, {}").format(self._verdict(test.verdict), self._p(test.p))
        if test.p_adjusted is not None and test.p_adjusted != test.p:
            said = self.tr("{}; {} after Holm's correction").format(said, p_words(test.p_adjusted))
        if isinstance(test, MeansTest) and test.verdict != "differs" and test.detectable:
            said += "\n" + self.tr("only more than {} would show").format(f"{test.detectable:.2g}")
        return said

    def _effect(self, test: MeansTest, reach: float) -> EffectBar:
        unit = f" {test.unit}" if test.unit else ""
        words = self.tr("Difference {}").format(f"{self._difference(test)}{unit}")
        return EffectBar(test.difference, test.low, test.high, reach, words)

    def _why_trait(self, tests: list[Test]) -> Reason:
        if any(isinstance(test, MeansTest) for test in tests):
            return self._why_means(next(t for t in tests if isinstance(t, MeansTest)))
        drawn = any(isinstance(test, SharesTest) and test.method == "drawn" for test in tests)
        return Reason(
            (
                self.tr(
                    "p is the chance of a table at least as rare as this one if both directions "
                    "gave the same shares."
                ),
                self.tr("Drawn at random, 50,000 tables.") if drawn else self.tr("Exact."),
            ),
            self.tr(
                "Exact test of a table of two rows (Fisher; more than two values: Freeman and "
                "Halton); Holm's correction over the traits of one generation."
            ),
            self.tr("Fisher 1934, Freeman and Halton 1951, Holm 1979 (from memory)"),
            self.tr("Single plants of the crosses; accidental selfs and pools left out."),
        )

    def _why_means(self, test: MeansTest) -> Reason:
        sds = [f"{sd:.3g}" if sd is not None else "–" for sd in test.sds]
        return Reason(
            (
                self.tr("Spread (one standard deviation): {} and {}.").format(*sds),
                self.tr(
                    "With 8 values or more on each side a t test with unequal variances; with "
                    "fewer the values are shared out between the sides in every way."
                ),
            ),
            self.tr(
                "Interval: difference ± t · √(s₁²/n₁ + s₂²/n₂), degrees of freedom by Welch. What "
                "can be shown: two-sided t test at 5% with 80% power. Holm's correction over the "
                "traits of one generation."
            ),
            self.tr("Welch 1947, Holm 1979 (from memory)"),
            self.tr(
                "Each plant counts once, with its mean where it was scored more than once; beds "
                "and seasons are taken as alike for both directions."
            ),
        )

    # What it would mean -------------------------------------------------------------------------

    def _meaning(self) -> None:
        self._body.addWidget(heading(self.tr("What a difference would mean"), 3))
        grid = QGridLayout()
        grid.setHorizontalSpacing(2 * step())
        grid.setVerticalSpacing(step())
        grid.setColumnStretch(1, 1)
        rows = (
            (
                self.tr("Cytoplasm"),
                self.tr(
                    "comes with the seed parent and stays: the difference is there in the F2 and "
                    "after as well."
                ),
            ),
            (
                self.tr("Mother plant"),
                self.tr(
                    "her seed is larger or better fed: early vigour differs in the F1 and fades "
                    "in the F2."
                ),
            ),
            (
                self.tr("Chance"),
                self.tr("few plants differ anyway; more of both, grown side by side, tell."),
            ),
            (
                self.tr("Mixed-up labels"),
                self.tr("a difference that turns round from one generation to the next."),
            ),
        )
        for at, (name, text) in enumerate(rows):
            grid.addWidget(sentence(name, "caption"), at, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(sentence(text), at, 1)
        self._body.addLayout(grid)
        if self._report.same_cytoplasm:
            text = self.tr(
                "Here both directions go back to the same cytoplasm, so it cannot be what differs."
            )
            self._body.addWidget(sentence(text))
        if all(trait.later is None for trait in self._report.traits):
            text = self.tr(
                "No selfed progeny of both directions are scored yet: they would tell the mother "
                "plant from the cytoplasm."
            )
            self._body.addWidget(sentence(text, "soft"))


def _tells(trait: TraitPair) -> bool:
    return any(
        test is not None and test.verdict == "differs" for test in (trait.first, trait.later)
    )


def _reach(test: MeansTest) -> float:
    ends = [test.difference, test.low or 0.0, test.high or 0.0]
    return 1.15 * max(abs(end) for end in ends)


def _signed(value: float, figures: int) -> str:
    text = f"{value:+.0f}" if figures == 0 else f"{value:+.{figures}g}"
    return text.replace("-", "−")


def _unfold(panel: WhyPanel, reason: Reason, on: bool) -> None:
    if on and not panel.filled:
        panel.show_reason(reason)
    panel.setVisible(on)
