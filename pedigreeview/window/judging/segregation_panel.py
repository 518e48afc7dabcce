"""Segregation: do the counts of a family fit a ratio, which ratio, and are they enough to tell?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QComboBox, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.answers import Reason
from pedigreeview.window.judging.bars import RatioBars
from pedigreeview.window.judging.choices import Group, groups_to_count, read_ratio, word_traits
from pedigreeview.window.judging.panel import Beside, Choice, JudgingPanel, field_row, figure
from pedigreeview.window.judging.table import Cell, ResultTable
from pedigreeview.window.labels import Flow, LinkLabel, clear, column, heading, sentence
from pedigreeview.window.saying import say
from pedigreeview.window.style import step
from pedigreeview.window.words import count, links
from pedigreeview.window.words import number as written

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.segregation import RatioFit, SegregationTest
    from pedigreeview.planning.segregation_report import FamilyCount, SegregationReport

__all__ = ["SegregationPanel"]

_FROM_PARENTS = ""
_MOST_TRAITS = 3
_LISTED = 30
_SIDE_BY_SIDE = 4
"""Classes whose bars have room beside their table."""


@dataclass(frozen=True, slots=True)
class _Found:
    """What one question gave.

    wanted : plants at which the tested ratio could be told, None without a test
    fit : every named ratio on the count, None where nothing segregates
    named : ratios to choose from, name and meaning
    """

    report: SegregationReport
    wanted: int | None
    fit: RatioFit | None
    named: tuple[tuple[str, str], ...]


def _ask(net: PedigreeNetwork, plants: Sequence[str], traits: Sequence[str], typed: str) -> _Found:
    from pedigreeview.planning.known_copies import known_copies
    from pedigreeview.planning.plants_wanted import plants_to_judge
    from pedigreeview.planning.ratios import named_ratios
    from pedigreeview.planning.segregation import which_fit
    from pedigreeview.planning.segregation_report import segregation_of

    copies = known_copies(net)
    report = segregation_of(net, plants, tuple(traits), copies=copies)
    if typed:
        ratio = read_ratio(typed, len(report.classes))
        report = segregation_of(net, plants, tuple(traits), ratio=ratio, copies=copies)
    classes = len(report.classes)
    ploidy = max((net.ploidy(p) for p in plants if p not in net.withheld), default=2)
    fit = report.fit
    if fit is None and classes > 1 and any(report.counts):
        fit = which_fit(sorted(report.counts, reverse=True), ploidy=ploidy)
    if fit is not None and not fit.tests:
        fit = None
    wanted = plants_to_judge(report.test.ratio) if report.test is not None else None
    named = tuple((ratio.name, ratio.meaning) for ratio in named_ratios(classes, ploidy))
    return _Found(report, wanted, fit, tuple(dict(named).items()))


class SegregationPanel(JudgingPanel):
    """Choose plants and traits; the counts, the tests and the ratios that fit follow."""

    NAME = "segregation"

    def _build(self) -> None:
        self._head(
            self.tr("Segregation"),
            self.tr("Do the plants of a family fall into classes as a ratio says?"),
        )
        s = step()
        part = column(s)
        self.choices.setLayout(part)
        self.plants = Choice(self.tr("Plants"), 52)
        self.plants.picked.connect(self._plants_chosen)
        self.ratio = Choice(self.tr("Ratio"), 42)
        self.ratio.setEditable(True)
        self.ratio.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.ratio.picked.connect(self._ask_counts)
        line = self.ratio.lineEdit()
        assert line is not None
        line.setPlaceholderText(self.tr("as the parents say, or type 9:3:4"))
        line.returnPressed.connect(self._ask_counts)
        part.addLayout(
            field_row(((self.tr("&Plants"), self.plants), (self.tr("&Ratio"), self.ratio)))
        )
        self._traits_row = QWidget()
        self._traits = Flow(s)
        self._traits_row.setLayout(self._traits)
        self._traits_row.setAccessibleName(self.tr("Traits"))
        part.addWidget(self._traits_row)
        self.boxes: dict[str, QCheckBox] = {}
        self._groups: dict[str, Group] = {}
        self._wanted = ""

    # What there is ------------------------------------------------------------------------------

    def _start(self) -> None:
        net, picked, tick = self._net, self._picked, self._errands.tick
        assert net is not None
        self._waiting(self.tr("Looking through the families …"))
        self._ask("groups", lambda: groups_to_count(net, picked, tick), self._take_groups)

    def take_picked(self, codes: tuple[str, ...]) -> None:
        super().take_picked(codes)
        if self._net is not None and not self._stale:
            self._wanted = "picked" if codes else self._wanted
            self._stale = True
            if self.isVisible():
                self._load()

    def go_to(self, what: str) -> None:
        """The family of a cross, the selfed row of a plant, or the picked plants."""
        self._wanted = what
        if self._groups:
            self._choose()

    def _take_groups(self, found: list[Group]) -> None:
        self._groups = {group.key: group for group in found}
        if not found:
            self._nothing(
                self.tr("No family can be counted yet"),
                self.tr(
                    "Two plants or more of one cross are scored for a trait in words, such as "
                    "tall or dwarf; then they are counted here. Measured traits are judged under "
                    "Selection."
                ),
                (
                    (self.tr("Enter a trait"), "trait"),
                    (self.tr("Write down plants raised"), "raise"),
                ),
            )
            return
        self.choices.show()
        items = [(group.words, group.key) for group in found]
        held = self.plants.currentData()
        kept = held if held in self._groups else self._first(found)
        self.plants.offer(items, self._asked() or kept)
        self._wanted = ""
        self._plants_chosen()

    def _asked(self) -> str:
        """Key of what was asked for from elsewhere, if there is such a group."""
        what = self._wanted
        keys = (what, f"cross:{what}", f"cross:{what} ⊗", f"generation:{what}")
        return next((key for key in keys if what and key in self._groups), "")

    def _first(self, found: list[Group]) -> str:
        """Where nobody asked: the largest family, in which a ratio shows best."""
        families = [group for group in found if group.key.startswith("cross:")] or found
        return max(families, key=lambda group: len(group.plants)).key

    def _choose(self) -> None:
        at = self.plants.findData(self._asked())
        if at >= 0:
            self.plants.setCurrentIndex(at)
            self._plants_chosen()
        self._wanted = ""

    def _plants_chosen(self) -> None:
        net, group = self._net, self._groups.get(self.plants.currentData() or "")
        if net is None or group is None:
            return
        self._ask("traits", lambda: word_traits(net, group.plants), self._take_traits)

    def _take_traits(self, names: list[str]) -> None:
        before = {name for name, box in self.boxes.items() if box.isChecked()}
        clear(self._traits)
        self.boxes = {}
        for name in names:
            box = QCheckBox(name)
            box.setChecked(name in before)
            box.clicked.connect(lambda _, own=name: self._trait_clicked(own))
            self.boxes[name] = box
            self._traits.addWidget(box)
        if names and not any(box.isChecked() for box in self.boxes.values()):
            self.boxes[names[0]].setChecked(True)
        self.ratio.setEditText("")
        self._ask_counts()

    def _trait_clicked(self, name: str) -> None:
        """One trait at least stays; more than three together nobody can count."""
        chosen = [own for own, box in self.boxes.items() if box.isChecked()]
        if not chosen:
            self.boxes[name].setChecked(True)
        elif len(chosen) > _MOST_TRAITS:
            other = next(own for own in chosen if own != name)
            self.boxes[other].setChecked(False)
        self.ratio.setEditText("")
        self._ask_counts()

    # Asking -------------------------------------------------------------------------------------

    def _ask_counts(self) -> None:
        net, group = self._net, self._groups.get(self.plants.currentData() or "")
        if net is None or group is None:
            return
        chosen = [name for name, box in self.boxes.items() if box.isChecked()]
        typed = self.ratio.currentText().partition(" ")[0].strip()
        self._ask("counts", lambda: _ask(net, group.plants, chosen, typed), self._show)

    def _failed(self, fault: Fault) -> None:
        super()._failed(fault)
        self.ratio.setFocus()

    # Showing ------------------------------------------------------------------------------------

    def _show(self, found: _Found) -> None:
        clear(self.body)
        report = found.report
        typed = self.ratio.currentText()
        self.ratio.blockSignals(True)
        self.ratio.clear()
        self.ratio.addItem("")
        for name, meaning in found.named:
            self.ratio.addItem(f"{name} – {say(meaning)}")
        self.ratio.setEditText(typed)
        self.ratio.blockSignals(False)
        self._counts(found)
        if len(report.families) > 1:
            self._families(report)
        if found.fit is not None:
            self._fits(found.fit)
        self._left_out(report)

    def _counts(self, found: _Found) -> None:
        report, test = found.report, found.report.test
        pairs = zip(report.classes, report.counts, strict=True)
        said = ", ".join(f"{number} {name}" for name, number in pairs)
        self.body.addWidget(heading(self.tr("{}: {}").format(" + ".join(report.traits), said), 3))
        expected = test.expected if test is not None else ()
        bars = RatioBars(report.classes, report.counts, expected)
        side = QWidget()
        part = column(step())
        side.setLayout(part)
        if test is not None:
            part.addWidget(
                figure(
                    self.tr("Against {}").format(test.ratio.name),
                    "ratio",
                    self._verdict(test),
                    self._how_sure(test),
                    self._why(test),
                )
            )
            if test.verdict == "too few to tell" and found.wanted is not None:
                text = self.tr("About {} plants would tell, in four trials of five.")
                part.addWidget(sentence(text.format(written(found.wanted))))
        elif len(report.classes) < 2:
            part.addWidget(sentence(self.tr("All look alike, so nothing segregates here.")))
        else:
            part.addWidget(
                sentence(
                    self.tr(
                        "The genotypes of the parents are not known, or give no single ratio for "
                        "all of these plants; so the named ratios are tried below."
                    )
                )
            )
        part.addWidget(self._table(found))
        if len(report.classes) > _SIDE_BY_SIDE:
            self.body.addWidget(bars)
            self.body.addWidget(side)
        else:
            self.body.addWidget(Beside(bars, side))

    def _verdict(self, test: SegregationTest) -> str:
        return {
            "fits": self.tr("It fits {}"),
            "does not fit": self.tr("It does not fit {}"),
            "too few to tell": self.tr("Too few to tell from {}"),
        }[test.verdict].format(test.ratio.name)

    def _method(self, test: SegregationTest) -> str:
        return {
            "chi-square": self.tr("chi-square {}").format(f"{test.statistic:.3g}"),
            "exact": self.tr("exact"),
            "drawn": self.tr("drawn, ± {}").format(f"{test.p_error:.2g}"),
        }[test.method]

    def _how_sure(self, test: SegregationTest) -> str:
        how = {
            "chi-square": self.tr("by chi-square, as each class is expected in 5 plants or more"),
            "exact": self.tr("by the exact test, as a class is expected in fewer than 5 plants"),
            "drawn": self.tr("by counts drawn at random, as there are too many to list"),
        }[test.method]
        meaning = say(test.ratio.meaning)
        return self.tr("p = {}, {}. The ratio: {}.").format(_p(test.p), how, meaning)

    def _why(self, test: SegregationTest) -> Reason:
        seen = " : ".join(map(str, test.observed))
        due = " : ".join(f"{value:.4g}" for value in test.expected)
        return Reason(
            (
                self.tr("Seen {}; expected {}.").format(seen, due),
                self.tr(
                    "p is the chance of a count at least as far off if the ratio is true; below "
                    "0.05 it is said not to fit."
                ),
                self.tr(
                    "Chance that so many plants would show it if the classes were really alike (or "
                    "3:1 where 1:1 is tested): {}%. Below 50% it is said to be too few to tell."
                ).format(f"{100 * test.power:.0f}"),
            ),
            self.tr(
                "Chi-square Σ (seen − expected)² / expected without Yates's correction, where each "
                "expected count is 5 or more; else the exact multinomial test."
            ),
            self.tr("Pearson 1900, Holm 1979 (from memory)"),
            self.tr("The ratio: {}. Genes unlinked; every class lives equally well.").format(
                test.ratio.meaning
            ),
        )

    def _table(self, found: _Found) -> ResultTable:
        report, test = found.report, found.report.test
        total = max(1, sum(report.counts))
        heads = [self.tr("Class"), self.tr("Seen"), self.tr("Share")]
        if test is not None:
            heads.insert(2, self.tr("Expected"))
        rows = []
        for at, (name, number) in enumerate(zip(report.classes, report.counts, strict=True)):
            cells = [
                Cell(name),
                Cell(str(number), number, number=True),
                Cell(f"{100 * number / total:.3g}%", number / total, (number / total,)),
            ]
            if test is not None:
                due = test.expected[at]
                cells.insert(2, Cell(f"{due:.4g}", due, number=True))
            rows.append((name, tuple(cells)))
        self.classes = ResultTable(self.tr("Seen and expected counts"), lines=12)
        self.classes.fill(heads, rows)
        return self.classes

    def _families(self, report: SegregationReport) -> None:
        self.body.addWidget(heading(self.tr("By family"), 3))
        self.families = ResultTable(self.tr("Families with their tests"), lines=12)
        rows = [self._family(at, family) for at, family in enumerate(report.families)]
        self.families.fill(
            (
                self.tr("Parents"),
                " : ".join(report.classes),
                self.tr("Ratio of the parents"),
                self.tr("p"),
                self.tr("p after Holm"),
                self.tr("Verdict"),
            ),
            rows,
        )
        self.families.opened.connect(self._open_family)
        self.body.addWidget(self.families)
        tested = sum(family.test is not None for family in report.families)
        if tested > 1:
            text = self.tr(
                "{} families are tested together; Holm's correction keeps one of them from being "
                "called by luck. The verdict goes by the corrected p."
            )
            self.body.addWidget(sentence(text.format(tested), "soft"))
        self._report = report

    def _open_family(self, key: str) -> None:
        seed = self._report.families[int(key)].parents[0]
        if seed:
            self.plant_wanted.emit(seed)

    def _family(self, at: int, family: FamilyCount) -> tuple[str, tuple[Cell, ...]]:
        seed, pollen = family.parents
        made = f"{seed} ⊗" if seed == pollen else f"{seed or '?'} × {pollen or '?'}"
        test = family.test
        numbers = " : ".join(map(str, family.counts))
        if test is None:
            ratio = self.tr("not known") if family.ratio is None else family.ratio.name
            blank = Cell("–", 2.0)
            return str(at), (Cell(made), Cell(numbers), Cell(ratio), blank, blank, Cell("–"))
        return str(at), (
            Cell(made),
            Cell(numbers),
            Cell(test.ratio.name),
            Cell(f"{_p(test.p)} ({self._method(test)})", test.p),
            Cell(_p(test.p_adjusted), test.p_adjusted),
            Cell(self._short_verdict(test.verdict)),
        )

    def _short_verdict(self, verdict: str) -> str:
        return {
            "fits": self.tr("fits"),
            "does not fit": self.tr("does not fit"),
            "too few to tell": self.tr("too few to tell"),
        }[verdict]

    def _fits(self, fit: RatioFit) -> None:
        self.body.addWidget(heading(self.tr("Which named ratios fit"), 3))
        self.body.addWidget(sentence(self._fit_words(fit)))
        self.tried = ResultTable(self.tr("Ratios tried"), lines=9)
        rows = [
            (
                test.ratio.name,
                (
                    Cell(test.ratio.name),
                    Cell(self.tr("not rejected") if test.p >= 0.05 else self.tr("rejected")),
                    Cell(f"{_p(test.p)} ({self._method(test)})", test.p),
                    Cell(" : ".join(f"{due:.4g}" for due in test.expected)),
                    Cell(test.ratio.meaning),
                ),
            )
            for test in fit.tests[:_LISTED]
        ]
        self.tried.fill(
            (
                self.tr("Ratio"),
                self.tr("Verdict"),
                self.tr("p"),
                self.tr("Expected"),
                self.tr("What would give it"),
            ),
            rows,
        )
        self.tried.opened.connect(self._try_ratio)
        self.body.addWidget(self.tried)
        text = self.tr(
            "Classes in order of their counts, the most frequent first. Enter tests a ratio above."
        )
        self.body.addWidget(sentence(text, "soft"))

    def _fit_words(self, fit: RatioFit) -> str:
        names = [ratio.name for ratio in fit.fitting]
        if not names:
            return self.tr("None of the ratios tried fits this count.")
        if len(names) == 1:
            return self.tr("Of the ratios tried only {} fits.").format(names[0])
        said = self.tr("{} fit, the best first.").format(", ".join(dict.fromkeys(names)))
        if fit.apart is None or names[0] == names[1]:
            return said
        number = sum(fit.observed)
        if number < fit.apart:
            return (
                said
                + " "
                + self.tr("{} plants are too few to tell {} from {}; about {} would.").format(
                    number, names[0], names[1], written(fit.apart)
                )
            )
        return (
            said
            + " "
            + self.tr(
                "Neither of the two best is rejected, though {} plants should tell them apart."
            ).format(written(fit.apart))
        )

    def _try_ratio(self, name: str) -> None:
        self.ratio.setEditText(name)
        self._ask_counts()
        self.area.verticalScrollBar().setValue(0)

    def _left_out(self, report: SegregationReport) -> None:
        lines: list[tuple[str, tuple[str, ...]]] = []
        if report.unscored:
            one = self.tr("plant is not scored for it.")
            many = self.tr("plants are not scored for it.")
            lines.append((count(report.unscored, one, many), ()))
        if report.strangers:
            text = self.tr("Left out, as their own finding names another pollen parent: {}.")
            lines.append((text, report.strangers))
        if report.impossible:
            text = self.tr(
                "Their parents cannot give {}: foreign pollen, a volunteer, a misread plant or a "
                "mixed-up label. They are not counted."
            )
            lines.append((text, report.impossible))
        for text, codes in lines:
            label = LinkLabel(text.format(links(codes)) if codes else text)
            label.setTextFormat(Qt.TextFormat.RichText)
            label.followed.connect(self.plant_wanted)
            self.body.addWidget(label)


def _p(p: float) -> str:
    return "<0.0001" if p < 1e-4 else f"{p:.2g}"
