"""Selection: how much of a measured trait is passed on, which families and which plants to keep."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QCheckBox, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.answers import Reason
from pedigreeview.window.judging.bars import IntervalRow, IntervalRows
from pedigreeview.window.judging.panel import Choice, JudgingPanel, field_row, figure
from pedigreeview.window.judging.table import Cell, ResultTable
from pedigreeview.window.labels import Flow, action_button, clear, column, heading, sentence
from pedigreeview.window.reciprocals_counts import places, rounded
from pedigreeview.window.style import step
from pedigreeview.window.words import number as written
from pedigreeview.window.words import status_word

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.blup import BreedingValue, Prediction
    from pedigreeview.planning.families import FamilyRanking
    from pedigreeview.planning.heritability import Realised, Regression

__all__ = ["SelectionPanel"]

_FAMILIES = 24
_GONE = ("culled", "lost")


@dataclass(frozen=True, slots=True)
class _Found:
    """What one trait gave; a sentence where there is too little."""

    trait: str
    unit: str
    values: int
    prediction: Prediction | None
    too_few: str
    ranking: FamilyRanking | None
    ranking_too_few: str
    regression: Regression | None
    realised: Realised | None
    rows: tuple[tuple[str, tuple[str, tuple[Cell, ...]]], ...] = ()
    """Plant and line of the table, the highest breeding value first."""


def _ask(net: PedigreeNetwork, trait: str, by_year: bool, tick: object) -> _Found:
    from pedigreeview.planning.blup import predict
    from pedigreeview.planning.families import families_of, rank_families
    from pedigreeview.planning.heritability import parent_regression, realised_heritability
    from pedigreeview.planning.measured import observations

    found = observations(net.book, trait)
    prediction, too_few = None, ""
    ranking, ranking_too_few = None, ""
    try:
        prediction = predict(
            net,
            found,
            fixed="year" if by_year else "mean",
            tick=tick,  # type: ignore[arg-type]
        )
    except Fault as fault:
        too_few = fault.sentence()
    try:
        ranking = rank_families(families_of(net, found))
    except Fault as fault:
        ranking_too_few = fault.sentence()
    return _Found(
        trait,
        net.book.traits[trait].unit,
        len(found),
        prediction,
        too_few,
        ranking,
        ranking_too_few,
        parent_regression(net, found),
        realised_heritability(net, found),
    )


class SelectionPanel(JudgingPanel):
    """Choose a measured trait; heritability, families and breeding values follow."""

    NAME = "selection"

    def _build(self) -> None:
        self._head(
            self.tr("Selection"),
            self.tr("How much of a measured trait is passed on, and which plants to keep for it"),
        )
        part = column(step())
        self.choices.setLayout(part)
        self.trait = Choice(self.tr("Trait"), 32)
        self.trait.picked.connect(self._ask_values)
        part.addLayout(field_row(((self.tr("&Trait"), self.trait),)))
        self.by_year = QCheckBox(self.tr("Each year has a level of its own"))
        self.by_year.setToolTip(
            self.tr("Compares plants within years: good where several kinds grew in each year")
        )
        self.by_year.clicked.connect(self._ask_values)
        self.alive = QCheckBox(self.tr("Leave out plants that are culled or lost"))
        self.alive.setChecked(True)
        self.alive.clicked.connect(self._fill)
        part.addWidget(self.by_year)
        part.addWidget(self.alive)
        self._wanted = ""
        self._found: _Found | None = None

    def _start(self) -> None:
        net = self._net
        assert net is not None

        def work() -> list[tuple[str, int]]:
            from pedigreeview.planning.measured import measured_traits, observations

            held = ((t, len(observations(net.book, t))) for t in measured_traits(net.book))
            return [(trait, number) for trait, number in held if number]

        self._ask("traits", work, self._take)

    def go_to(self, what: str) -> None:
        """A trait by its name."""
        self._wanted = what
        at = self.trait.findData(what)
        if at >= 0:
            self._wanted = ""
            self.trait.setCurrentIndex(at)
            self._ask_values()

    def _take(self, traits: list[tuple[str, int]]) -> None:
        if not traits:
            self._nothing(
                self.tr("Nothing is measured yet"),
                self.tr(
                    "Enter a trait that is measured or scored on a scale, and write down its value "
                    "for the plants on the score sheet of the Records page; then families and "
                    "plants are ranked here."
                ),
                ((self.tr("Enter a trait"), "trait"),),
            )
            return
        self.choices.show()
        items = [
            (self.tr("{} · {} values").format(trait, written(number)), trait)
            for trait, number in traits
        ]
        known = {trait for trait, _ in traits}
        self.trait.offer(items, self._wanted if self._wanted in known else None)
        self._wanted = ""
        self._ask_values()

    def _ask_values(self) -> None:
        net, trait = self._net, self.trait.currentData()
        if net is None or not trait:
            return
        by_year, tick = self.by_year.isChecked(), self._errands.tick
        if self._found is None:
            self._waiting(self.tr("Working out the breeding values …"))

        def work() -> _Found:
            found = _ask(net, trait, by_year, tick)
            held = found.prediction.values if found.prediction is not None else ()
            rows = tuple((value.plant, self._row(net, value)) for value in held)
            return replace(found, rows=rows)

        self._ask("values", work, self._show)

    # Showing ------------------------------------------------------------------------------------

    def _show(self, found: _Found) -> None:
        clear(self.body)
        self._found = found
        self.body.addWidget(heading(self.tr("How much is passed on"), 3))
        self._heritability(found)
        self.body.addWidget(heading(self.tr("Families"), 3))
        self._families(found)
        self.body.addWidget(heading(self.tr("Plants by breeding value"), 3))
        self._plants(found)

    def _heritability(self, found: _Found) -> None:
        tiles = Flow(4 * step())
        room = min(self.width() - 6 * step(), 132 * step())
        wide = max(28 * step(), (room - 10 * step()) // 3)
        for made in (self._by_kin(found), self._by_parents(found), self._by_response(found)):
            made.setFixedWidth(wide)
            tiles.addWidget(made)
        holder = QWidget()
        holder.setLayout(tiles)
        self.body.addWidget(holder)

    def _by_kin(self, found: _Found) -> QWidget:
        name = self.tr("From all kin")
        held = found.prediction
        if held is None:
            return self._no_figure(name, found.too_few)
        words = self.tr("heritability among plants of the base")
        if held.interval is not None:
            low, high = held.interval
            words = self.tr("heritability, likely {} to {}; {} values of {} plants").format(
                f"{low:.2f}", f"{high:.2f}", held.records, held.plants
            )
        reason = Reason(
            (
                self.tr("σ² additive {}, σ² of chance {}.").format(
                    f"{held.additive:.3g}", f"{held.residual:.3g}"
                ),
                *held.warnings,
            ),
            self.tr(
                "h² = σ²a / (σ²a + σ²e), by REML along this one number; interval by likelihood"
            ),
            self.tr("Henderson 1975 (from memory)"),
            self._base(),
        )
        return figure(name, "h2_kin", f"{held.heritability:.2f}", words, reason)

    def _by_parents(self, found: _Found) -> QWidget:
        name = self.tr("Progeny on parents")
        held = found.regression
        if held is None:
            return self._no_figure(
                name, self.tr("Needs three families or more with measured parents that differ.")
            )
        parents = {
            "mid-parent": self.tr("the middle of both parents"),
            "selfed parent": self.tr("the selfed parent"),
            "one parent": self.tr("one parent, twice the slope"),
        }[held.parents]
        words = self.tr("slope on {}, {} families with {} progeny").format(
            parents, held.families, held.progeny
        )
        reason = Reason(
            held.warnings,
            self.tr("Slope of the means of families on their parents, weighted by their plants"),
            self.tr("Falconer and Mackay 1996 (from memory)"),
            self.tr("Parents and progeny are taken as grown alike."),
        )
        text = _with_error(held.heritability, held.error)
        return self._warned(figure(name, "h2_parents", text, words, reason), held.heritability)

    def _by_response(self, found: _Found) -> QWidget:
        name = self.tr("Response to selection")
        held = found.realised
        if held is None:
            return self._no_figure(
                name, self.tr("Needs a family with chosen plants and others, and measured progeny.")
            )
        words = self.tr("{} chosen of {} candidates, {} progeny").format(
            held.chosen, held.candidates, held.progeny
        )
        reason = Reason(
            (
                self.tr("Response {}, the chosen stood {} from their family.").format(
                    f"{held.response:+.3g}", f"{held.differential:+.3g}"
                ),
                *held.warnings,
            ),
            self.tr("Realised heritability = response / selection differential"),
            self.tr("Falconer and Mackay 1996 (from memory)"),
            self.tr("Years made alike by varieties grown in both.")
            if held.by_check
            else self.tr("Years are taken as alike, for no variety was grown in both."),
        )
        text = _with_error(held.heritability, held.error)
        return self._warned(figure(name, "h2_response", text, words, reason), held.heritability)

    def _warned(self, made: QWidget, value: float) -> QWidget:
        """Say below a share outside 0 to 1 that it tells nothing."""
        if not 0 <= value <= 1:
            layout = made.layout()
            assert layout is not None
            text = self.tr("A share lies from 0 to 1, so this one says nothing.")
            layout.addWidget(sentence(text, "warn"))
        return made

    def _no_figure(self, name: str, text: str) -> QWidget:
        holder = QWidget()
        part = column(max(2, step() // 3))
        holder.setLayout(part)
        part.addWidget(sentence(name, "caption"))
        part.addWidget(sentence("–", "number"))
        part.addWidget(sentence(text, "soft"))
        return holder

    def _base(self) -> str:
        return self._net.base_sentence() if self._net is not None else ""

    # Families -----------------------------------------------------------------------------------

    def _families(self, found: _Found) -> None:
        held = found.ranking
        if held is None:
            self.body.addWidget(sentence(found.ranking_too_few, "soft"))
            return
        decimals = places(rank.shrunk for rank in held.families)
        rows = [
            IntervalRow(
                rank.family,
                rank.shrunk,
                rank.low,
                rank.high,
                rank.mean,
                self.tr("{} (measured {}, n {})").format(
                    rounded(rank.shrunk, decimals), rounded(rank.mean, decimals), rank.plants
                ),
            )
            for rank in held.families[:_FAMILIES]
        ]
        self.family_rows = IntervalRows(rows, self.tr("Families by what to expect of them"))
        self.body.addWidget(self.family_rows)
        unit = f" ({found.unit})" if found.unit else ""
        text = self.tr(
            "{}{}: the dot is what to expect of more plants of a family, with its 95% interval; "
            "the ring is the mean as measured. Means of few plants are drawn more towards the mean "
            "of all."
        ).format(found.trait, unit)
        self.body.addWidget(sentence(text, "soft"))
        if len(held.families) > _FAMILIES:
            more = self.tr("{} further families rank below these.")
            self.body.addWidget(sentence(more.format(len(held.families) - _FAMILIES), "soft"))
        for warning in held.warnings:
            self.body.addWidget(sentence(warning, "warn"))

    # Plants -------------------------------------------------------------------------------------

    def _plants(self, found: _Found) -> None:
        held = found.prediction
        if held is None:
            self.body.addWidget(sentence(found.too_few, "soft"))
            return
        for warning in held.warnings:
            self.body.addWidget(sentence(warning, "warn"))
        self.table = ResultTable(self.tr("Plants by breeding value"), lines=16)
        self.table.opened.connect(self.plant_wanted)
        self.body.addWidget(self.table)
        self._fill()
        row = Flow(step())
        self.pick = action_button(self.tr("Pick the marked plants"), self._pick)
        row.addWidget(self.pick)
        if self._write is not None:
            write = self._write
            self.keep = action_button(
                self.tr("Mark them as kept …"),
                lambda: write("status", plants=self.table.picked_keys(), status="kept"),
                main=True,
            )
            row.addWidget(self.keep)
        self.body.addLayout(row)
        effects = ", ".join(f"{name} {value:.4g}" for name, value in held.effects)
        text = self.tr(
            "Breeding value: what a plant is expected to pass on, as a difference from {}; half of "
            "it shows in the mean of its progeny by a mate of value 0, all of it in its selfed "
            "progeny. Reliability 0: nothing is known beyond the mean."
        )
        self.body.addWidget(sentence(text.format(effects), "soft"))

    def _pick(self) -> None:
        self.picked.emit(self.table.picked_keys())

    def _fill(self) -> None:
        found, net = self._found, self._net
        if found is None or net is None or found.prediction is None:
            return
        book = net.book
        gone = _GONE if self.alive.isChecked() else ()
        shown = [row for plant, row in found.rows if book.plants[plant].status not in gone]
        unit = f", {found.unit}" if found.unit else ""
        self.table.fill(
            (
                self.tr("Plant"),
                self.tr("Generation"),
                self.tr("Breeding value{}").format(unit),
                self.tr("95% interval"),
                self.tr("Reliability"),
                self.tr("Own values"),
                self.tr("Status"),
            ),
            shown,
        )

    def _row(self, net: PedigreeNetwork, value: BreedingValue) -> tuple[str, tuple[Cell, ...]]:
        status = net.book.plants[value.plant].status
        return value.plant, (
            Cell(value.plant),
            Cell(net.generation_name(value.plant) or "–"),
            Cell(_signed(value.value), value.value, number=True),
            Cell(
                self.tr("{} to {}").format(_signed(value.low), _signed(value.high)),
                value.high - value.low,
            ),
            Cell(f"{value.reliability:.2f}", value.reliability, (value.reliability,)),
            Cell(str(value.records), value.records, number=True),
            Cell(status_word(status) if status else "–"),
        )


def _signed(value: float) -> str:
    return f"{value:+.3g}".replace("-", "−")


def _with_error(value: float, error: float) -> str:
    return f"{value:.2f} ± {error:.2f}".replace("-", "−")
