"""What is asked of 'How many to grow': parents, the wish, the numbers it goes by."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QRadioButton,
    QSpinBox,
    QWidget,
)

from pedigreeview.window.forms.fields import PlantField
from pedigreeview.window.growing_question import GrowingQuestion, TypedGenes
from pedigreeview.window.labels import Flow, column, sentence, set_apart
from pedigreeview.window.relatedness_choice import chooser
from pedigreeview.window.slices import Slices
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk

__all__ = ["GrowingTarget"]

_AT_ONCE = 3
"""Fields that are made in one slice."""


class GrowingTarget(QWidget):
    """The fields; every change is told.  The numbers come in slices after the parents."""

    changed = Signal()
    made = Signal()
    """All fields are there."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._wanted: tuple[tuple[str, str], ...] = ()
        s = step()
        body = column(s)
        self.setLayout(body)
        parents = QHBoxLayout()
        parents.setSpacing(s)
        self.seed = PlantField("seed_parent", desk, self.tr("seed parent"))
        self.pollen = PlantField("pollen_parent", desk, self.tr("pollen parent"))
        self.seed.set_label(self.tr("Seed parent"))
        self.pollen.set_label(self.tr("Pollen parent"))
        parents.addWidget(self.seed, 1)
        parents.addWidget(QLabel("×"), 0, Qt.AlignmentFlag.AlignTop)
        parents.addWidget(self.pollen, 1)
        body.addLayout(parents)
        self.by_wishes = QRadioButton(self.tr("The wishes at the side, by their genes"))
        self.by_numbers = QRadioButton(self.tr("Genes in numbers, parents that breed true"))
        self.by_wishes.setChecked(True)
        kind = Flow(2 * s)
        for button in (self.by_wishes, self.by_numbers):
            kind.addWidget(button)
            button.toggled.connect(lambda _: self._turn())
        body.addLayout(kind)
        self.wish_words = sentence("", "soft")
        body.addWidget(self.wish_words)
        self.numbers = QWidget()
        self.counts: dict[str, tuple[QSpinBox, QSpinBox]] = {}
        body.addWidget(self.numbers)
        self._cells: list[tuple[QWidget, QWidget]] = []
        self._terms = column(s)
        body.addLayout(self._terms)
        self._turn()
        for field in (self.seed, self.pollen):
            field.changed.connect(self.changed)
        self._slices = Slices(self._rest(), self)
        self._slices.done.connect(self.made)

    @property
    def making(self) -> bool:
        """Whether fields are still to come."""
        return self._slices.making

    def finish(self) -> None:
        """Make the fields that are still to come."""
        self._slices.finish()

    def _count_genes(self) -> None:
        """Genes counted by rule and by the parent that brings them, made when first wanted."""
        s = step()
        grid = QGridLayout(self.numbers)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(2 * s)
        grid.setVerticalSpacing(max(2, s // 3))
        heads = (
            self.tr("Wanted"),
            self.tr("from the seed parent"),
            self.tr("from the pollen parent"),
        )
        for at, words in enumerate(heads):
            grid.addWidget(sentence(words, "caption"), 0, at)
        for row, (rule, words) in enumerate(
            (
                ("recessive", self.tr("recessive genes")),
                ("dominant", self.tr("dominant genes")),
            ),
            1,
        ):
            grid.addWidget(sentence(words), row, 0)
            pair = (self._count(0, 8, 1), self._count(0, 8, 1))
            if rule == "dominant":
                for box in pair:
                    box.setValue(0)
            for at, (box, side) in enumerate(
                zip(pair, (self.tr("seed parent"), self.tr("pollen parent")), strict=True), 1
            ):
                box.setAccessibleName(self.tr("{} brought by the {}").format(words, side))
                grid.addWidget(box, row, at)
            self.counts[rule] = pair
        grid.addWidget(sentence(self.tr("additive genes of one trait")), 3, 0)
        self.additive = self._count(0, 6, 0)
        self.additive.setAccessibleName(self.tr("Additive genes of one measured trait"))
        grid.addWidget(self.additive, 3, 1)
        self.alleles = self._count(0, 12, 0)
        self.alleles.setSpecialValueText(self.tr("all alleles"))
        self.alleles.setSuffix(self.tr(" alleles or more"))
        self.alleles.setAccessibleName(self.tr("Wanted alleles of them at least"))
        grid.addWidget(self.alleles, 3, 2)
        self.linkage = chooser(
            self.tr("Linkage of neighbouring genes"),
            (
                ("1/2", self.tr("unlinked")),
                ("3/10", self.tr("loosely linked, r = 0.3")),
                ("1/5", self.tr("linked, r = 0.2")),
                ("1/10", self.tr("linked, r = 0.1")),
                ("1/20", self.tr("closely linked, r = 0.05")),
                ("1/100", self.tr("closely linked, r = 0.01")),
            ),
        )
        self.linkage.currentIndexChanged.connect(lambda _: self.changed.emit())
        grid.addWidget(sentence(self.tr("Neighbours are")), 4, 0)
        grid.addWidget(self.linkage, 4, 1, 1, 2)
        grid.setColumnStretch(3, 1)

    def _rest(self) -> Iterator[None]:
        """Assurance, losses, bed and what the plant shall be, some fields at a time."""
        s = step()
        terms = Flow(s)
        self._terms.addLayout(terms)
        self.at_least = self._count(1, 50, 1)
        self.assurance = self._count(50, 99, 95)
        self.germination = self._count(1, 100, 90)
        self.alive = self._count(1, 100, 95)
        for box in (self.assurance, self.germination, self.alive):
            box.setSuffix(" %")
        self.bed = self._count(1, 5000, 100)
        self.bed.setSingleStep(10)
        self.chromosome = self._count(10, 500, 100)
        self.position = self._count(0, 500, 50)
        for box in (self.chromosome, self.position):
            box.setSuffix(" cM")
        self.recurrent = chooser(
            self.tr("Recurrent parent"),
            (("seed", self.tr("the seed parent")), ("pollen", self.tr("the pollen parent"))),
        )
        self.recurrent.currentIndexChanged.connect(lambda _: self.changed.emit())
        cells: tuple[tuple[str, QWidget], ...] = (
            (self.tr("Wanted plants at least"), self.at_least),
            (self.tr("with an assurance of"), self.assurance),
            (self.tr("Seeds that come up"), self.germination),
            (self.tr("of those live to be judged"), self.alive),
            (self.tr("The bed holds"), self.bed),
            (self.tr("Backcross to"), self.recurrent),
            (self.tr("Chromosome of a kept gene"), self.chromosome),
            (self.tr("and its place there"), self.position),
        )
        for at, (words, field) in enumerate(cells, 1):
            field.setAccessibleName(words)
            cell = QWidget()
            terms.addWidget(cell)
            held = QHBoxLayout(cell)
            held.setContentsMargins(0, 0, 0, 0)
            held.setSpacing(max(2, s // 2))
            held.addWidget(sentence(words), 1)
            held.addWidget(field)
            self._cells.append((cell, field))
            if at % _AT_ONCE == 0:
                self.fit()
                yield
        self.fixed = QCheckBox(self.tr("The wanted plant shall breed true"))
        self.fixed.setChecked(True)
        self.markers = QCheckBox(self.tr("Carriers can be told by a marker"))
        ticks = Flow(2 * s)
        self._terms.addLayout(ticks)
        for tick in (self.fixed, self.markers):
            tick.toggled.connect(lambda _: self.changed.emit())
            ticks.addWidget(tick)

    def fit(self) -> None:
        """Cells of one width, so that those below each other stand in line."""
        s = step()
        for cell, field in self._cells:
            cell.setFixedWidth(35 * s)
            field.setFixedWidth(16 * s)

    def _count(self, low: int, high: int, value: int) -> QSpinBox:
        box = QSpinBox()
        set_apart(box)
        box.setRange(low, high)
        box.setValue(value)
        box.valueChanged.connect(lambda _: self.changed.emit())
        return box

    # What is asked ------------------------------------------------------------------------------

    def show_wishes(self, wanted: list[tuple[str, str]], known: set[str]) -> None:
        """The wishes that have a gene, and the plants of the book."""
        self._wanted = tuple(wanted)
        said = ", ".join(f"{value} {trait}" for trait, value in wanted)
        self.wish_words.setText(
            self.tr("Wanted in one plant: {}.").format(said)
            if said
            else self.tr(
                "No wish at the side has a gene in the book. Add one (a trait such as height, with "
                "the value that is wanted), or count the genes."
            )
        )
        for field in (self.seed, self.pollen):
            if field.text() and field.text() not in known:
                field.set_text("")

    def show_parents(self, seed: str, pollen: str) -> None:
        """Ask about these two."""
        for field, code in ((self.seed, seed), (self.pollen, pollen)):
            field.editor.blockSignals(True)
            field.set_text(code)
            field.editor.blockSignals(False)
            field.check()
        self.changed.emit()

    def question(self) -> GrowingQuestion:
        """What planning is to be asked."""
        self.finish()
        typed = None
        if self.by_numbers.isChecked():
            recessive, dominant = (
                tuple(box.value() for box in self.counts[rule])
                for rule in ("recessive", "dominant")
            )
            typed = TypedGenes(
                (recessive[0], recessive[1]),
                (dominant[0], dominant[1]),
                self.additive.value(),
                self.alleles.value(),
                Fraction(str(self.linkage.currentData())),
            )
        return GrowingQuestion(
            self.seed.text(),
            self.pollen.text(),
            self._wanted,
            typed,
            self.at_least.value(),
            self.assurance.value() / 100,
            self.germination.value() / 100,
            self.alive.value() / 100,
            self.bed.value(),
            self.fixed.isChecked(),
            self.markers.isChecked(),
            "pollen" if self.recurrent.currentData() == "pollen" else "seed",
            float(self.chromosome.value()),
            float(self.position.value()),
        )

    def _turn(self) -> None:
        numbers = self.by_numbers.isChecked()
        if numbers and not self.counts:
            self._count_genes()
        self.numbers.setVisible(numbers)
        self.wish_words.setVisible(not numbers)
        self.changed.emit()
