"""Selfs or hybrids: which plants of a cross are accidental selfings of the seed parent."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QSpinBox

from pedigreeview.book.recording.findings import record_finding
from pedigreeview.window.answers import Reason
from pedigreeview.window.judging.choices import Group, crosses_to_judge
from pedigreeview.window.judging.panel import Choice, JudgingPanel, field_row, figure
from pedigreeview.window.judging.table import Cell, ResultTable
from pedigreeview.window.labels import Flow, action_button, clear, column, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.hybrid_or_self import HybridVerdict

__all__ = ["HybridPanel"]

_ORDER = ("self", "doubtful", "not shown", "true hybrid")


@dataclass(frozen=True, slots=True)
class _Found:
    """Verdicts of one cross.

    prior : chance of a selfing before anything was seen, as the buds say
    telling : (seed parent, trait, look of a self) of the directions in which selfs show
    findings : plants with a finding on record: whether it says that they are selfs
    """

    cross: str
    parents: tuple[str, str]
    verdicts: tuple[HybridVerdict, ...]
    prior: float
    telling: tuple[tuple[str, str, str], ...]
    findings: dict[str, bool]


def _ask(net: PedigreeNetwork, cross: str, prior: float | None, misread: float) -> _Found:
    from pedigreeview.planning.hybrid_or_self import (
        hybrids_of_cross,
        prior_of_selfing,
        telling_direction,
    )

    record = net.book.crosses[cross]
    verdicts = hybrids_of_cross(net, cross, prior=prior, misread=misread)
    found = {row.plant for row in net.book.parent_findings}
    return _Found(
        cross,
        (record.seed_parent, record.pollen_parent),
        tuple(verdicts),
        prior_of_selfing(net, cross),
        tuple(telling_direction(net, record.seed_parent, record.pollen_parent)),
        {v.plant: net.parents(v.plant).selfed for v in verdicts if v.plant in found},
    )


class HybridPanel(JudgingPanel):
    """Choose a cross; every plant with its odds, and the finding at one click."""

    NAME = "hybrids"

    def _build(self) -> None:
        self._head(
            self.tr("Selfs or hybrids"),
            self.tr("Which plants of a cross are accidental selfings of the seed parent?"),
        )
        part = column(step())
        self.choices.setLayout(part)
        self.crosses = Choice(self.tr("Cross"), 44)
        self.crosses.picked.connect(self._cross_chosen)
        self.prior = QSpinBox()
        self.prior.setRange(1, 99)
        self.prior.setSuffix(" %")
        self.prior.setToolTip(
            self.tr(
                "Chance of a selfing before anything was seen: closed buds 5%, unsure 15%, open "
                "30%, not written down 10% (a choice of ours, no source)"
            )
        )
        self.misread = QSpinBox()
        self.misread.setRange(0, 20)
        self.misread.setValue(1)
        self.misread.setSuffix(" %")
        self.misread.setToolTip(self.tr("How many plants are read as another phenotype"))
        for box in (self.prior, self.misread):
            box.setFixedWidth(11 * step())
            box.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.prior.valueChanged.connect(lambda _: self._prior_typed())
        self.misread.valueChanged.connect(lambda _: self._ask_again())
        part.addLayout(
            field_row(
                (
                    (self.tr("&Cross"), self.crosses),
                    (self.tr("Selfings &expected"), self.prior),
                    (self.tr("&Misread"), self.misread),
                )
            )
        )
        self._groups: dict[str, Group] = {}
        self._wanted = ""
        self._own_prior = True
        """Whether the chance is that of the buds, not one that was typed."""

    def redraw(self) -> None:
        for box in (self.prior, self.misread):
            box.setFixedWidth(11 * step())
        super().redraw()

    def _start(self) -> None:
        net, tick = self._net, self._errands.tick
        assert net is not None
        self._ask("crosses", lambda: crosses_to_judge(net, tick), self._take)

    def go_to(self, what: str) -> None:
        """The plants of a cross."""
        self._wanted = f"cross:{what}"
        at = self.crosses.findData(self._wanted)
        if at >= 0:
            self.crosses.setCurrentIndex(at)
            self._cross_chosen()

    def _take(self, found: list[Group]) -> None:
        self._groups = {group.key: group for group in found}
        if not found:
            self._nothing(
                self.tr("No cross to look at yet"),
                self.tr(
                    "When plants are raised from a cross of two parents and scored for a trait in "
                    "which the parents differ, each plant gets its odds here."
                ),
                (
                    (self.tr("Write down a cross"), "cross"),
                    (self.tr("Write down plants raised"), "raise"),
                ),
            )
            return
        self.choices.show()
        wanted = self._wanted if self._wanted in self._groups else self.crosses.currentData()
        self.crosses.offer([(group.words, group.key) for group in found], wanted)
        self._wanted = ""
        self._ask_again()

    def _cross_chosen(self) -> None:
        self._own_prior = True
        self._ask_again()

    def _prior_typed(self) -> None:
        self._own_prior = False
        self._ask_again()

    def _ask_again(self) -> None:
        net, key = self._net, self.crosses.currentData()
        if net is None or not key:
            return
        cross = key.partition(":")[2]
        prior = None if self._own_prior else self.prior.value() / 100
        # No misreading at all would make one odd plant impossible either way.
        misread = max(self.misread.value() / 100, 1e-6)
        self._ask("verdicts", lambda: _ask(net, cross, prior, misread), self._show)

    # Showing ------------------------------------------------------------------------------------

    def _show(self, found: _Found) -> None:
        clear(self.body)
        self._found = found
        if self._own_prior:
            self.prior.blockSignals(True)
            self.prior.setValue(round(100 * found.prior))
            self.prior.blockSignals(False)
        numbers = {word: sum(v.verdict == word for v in found.verdicts) for word in _ORDER}
        said = [self._counted(word, number) for word, number in numbers.items() if number]
        self.body.addWidget(
            figure(
                self.tr("{} of {} × {}").format(
                    count(len(found.verdicts), self.tr("plant"), self.tr("plants")), *found.parents
                ),
                "selfs",
                ", ".join(said),
                self._telling(found),
                self._why(found),
            )
        )
        self._buttons = Flow(step())
        self.body.addLayout(self._buttons)
        self.table = ResultTable(self.tr("Plants of the cross with their odds"), lines=18)
        self.table.fill(
            (
                self.tr("Plant"),
                self.tr("Chance of a selfing"),
                self.tr("Verdict"),
                self.tr("What was seen"),
                self.tr("Finding on record"),
            ),
            [self._row(v, found) for v in self._sorted(found.verdicts)],
        )
        self.table.opened.connect(self.plant_wanted)
        self.table.chosen.connect(self._chosen)
        self.body.addWidget(self.table)
        self.sentence = sentence("")
        self.body.addWidget(self.sentence)
        self._lay_buttons()
        self.table.selectRow(0)

    def _sorted(self, verdicts: Sequence[HybridVerdict]) -> list[HybridVerdict]:
        return sorted(verdicts, key=lambda v: _ORDER.index(v.verdict))

    def _word(self, verdict: str) -> str:
        return {
            "self": self.tr("self"),
            "doubtful": self.tr("doubtful"),
            "not shown": self.tr("not shown"),
            "true hybrid": self.tr("true hybrid"),
        }[verdict]

    def _counted(self, verdict: str, number: int) -> str:
        many = {
            "self": self.tr("selfs"),
            "doubtful": self.tr("doubtful"),
            "not shown": self.tr("not shown"),
            "true hybrid": self.tr("true hybrids"),
        }[verdict]
        return count(number, self._word(verdict), many)

    def _row(self, v: HybridVerdict, found: _Found) -> tuple[str, tuple[Cell, ...]]:
        seen = ", ".join(clue.says for clue in v.clues)
        record = found.findings.get(v.plant)
        said = "" if record is None else self.tr("self") if record else self.tr("another parent")
        return v.plant, (
            Cell(v.plant),
            Cell(_chance(v.chance), v.chance, (v.chance,)),
            Cell(self._word(v.verdict), float(_ORDER.index(v.verdict))),
            Cell(seen or self.tr("nothing that tells")),
            Cell(said),
        )

    def _telling(self, found: _Found) -> str:
        if not found.telling:
            return self.tr(
                "No gene tells selfs from hybrids in either direction: the parents' genotypes are "
                "not known, or they do not differ in a recessive."
            )
        here = [f"{look}" for seed, _, look in found.telling if seed == found.parents[0]]
        if here:
            return self.tr("In this direction a self shows itself: it is {}.").format(
                self.tr(" or ").join(here)
            )
        other = [look for _, _, look in found.telling]
        return self.tr(
            "In this direction no self shows itself; with {} as the seed parent it would be {}."
        ).format(found.parents[1], self.tr(" or ").join(other))

    def _why(self, found: _Found) -> Reason:
        return Reason(
            (
                self.tr("Before anything was seen: {}% by how the buds were when worked.").format(
                    f"{100 * found.prior:.3g}"
                ),
                self.tr(
                    "Each thing seen multiplies the odds by its chance in a selfed seedling over "
                    "that in a hybrid; a measure counts at most tenfold."
                ),
                self.tr("From 90% on it is a self, up to 10% a true hybrid."),
            ),
            self.tr("odds after = odds before × Π (chance in a self / chance in a hybrid)"),
            self.tr("Bayes' rule; the chances before are a choice of ours, no source"),
            self.tr("Genotypes of the parents as recorded; {}% of plants are misread.").format(
                self.misread.value()
            ),
        )

    # Findings -----------------------------------------------------------------------------------

    def _lay_buttons(self) -> None:
        found = self._found
        fresh = [
            v.plant for v in found.verdicts if v.verdict == "self" and v.plant not in found.findings
        ]
        self.write_all: QPushButton | None = None
        if len(fresh) > 1:
            text = self.tr("Write the finding for all {} selfs").format(len(fresh))
            self.write_all = action_button(text, lambda: self._record(fresh), main=True)
            self._buttons.addWidget(self.write_all)
        self.write_one = action_button("", self._record_current, main=not self.write_all)
        self._buttons.addWidget(self.write_one)
        if self._write is not None:
            write = self._write
            text = self.tr("Another finding …")
            form = action_button(text, lambda: write("finding", plants=(self.table.current_key(),)))
            self._buttons.addWidget(form)

    def _chosen(self, plant: str) -> None:
        verdict = next((v for v in self._found.verdicts if v.plant == plant), None)
        self.sentence.setText(verdict.sentence() if verdict is not None else "")
        known = self._found.findings.get(plant)
        seed = self._found.parents[0]
        self.write_one.setText(
            self.tr("Already written down for {}").format(plant)
            if known
            else self.tr("Write down: {} is a selfing of {}").format(plant, seed)
        )
        self.write_one.setEnabled(bool(plant) and not known)

    def _record_current(self) -> None:
        plant = self.table.current_key()
        if plant:
            self._record([plant])

    def _record(self, plants: Sequence[str]) -> None:
        """Write the finding that these plants are selfs, with what speaks for it."""
        held = {v.plant: v for v in self._found.verdicts}
        today = date.today().isoformat()
        texts = {plant: held[plant].sentence() for plant in plants}

        def work(edit: Edit) -> None:
            for plant, text in texts.items():
                record_finding(edit, plant, "self", date=today, grade="probable", text=text)

        who = plants[0] if len(plants) == 1 else self.tr("{} plants").format(len(plants))
        self._desk.record(self.tr("finding on {}").format(who), work)


def _chance(chance: float) -> str:
    if chance < 1e-3:
        return "<0.1%"
    return ">99.9%" if chance > 0.999 else f"{100 * chance:.3g}%"
