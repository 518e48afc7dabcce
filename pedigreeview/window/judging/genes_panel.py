"""Genes: the chance of every genotype of every plant from all that was seen, and contradictions."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QCheckBox, QSpinBox, QToolButton, QWidget

from pedigreeview.window.answers import Reason
from pedigreeview.window.judging.contradiction_cards import ContradictionCards
from pedigreeview.window.judging.panel import Choice, JudgingPanel, field_row, figure
from pedigreeview.window.judging.table import Cell, ResultTable
from pedigreeview.window.labels import Flow, LinkLabel, clear, column, heading, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import links, number

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.inference import Carriers, GenotypeChances

__all__ = ["GenesPanel"]

_VERDICTS = ("surely", "likely", "open", "unlikely", "cannot")
_SHOWN = 4


@dataclass(frozen=True, slots=True)
class _Found:
    """Chances at one locus and who carries the allele.

    seen : number of records that speak of the locus
    spoken_of : plants that they are about
    rows : by verdict the (plant, cells) of the table, the likeliest carriers first
    """

    locus: str
    allele: str
    answer: GenotypeChances
    carriers: Carriers
    seen: int
    spoken_of: int
    rows: dict[str, list[tuple[str, tuple[Cell, ...]]]]


class GenesPanel(JudgingPanel):
    """Choose a gene and an allele; every plant with its chances."""

    NAME = "genes"

    def _build(self) -> None:
        self._head(
            self.tr("Genes from what was seen"),
            self.tr("Which plants carry an allele, for sure, likely, or not at all?"),
        )
        part = column(step())
        self.choices.setLayout(part)
        self.locus = Choice(self.tr("Gene"), 32)
        self.locus.picked.connect(self._locus_chosen)
        self.allele = Choice(self.tr("Allele"), 14)
        self.allele.picked.connect(self._ask_chances)
        self.misread = QSpinBox()
        self.misread.setRange(0, 20)
        self.misread.setSuffix(" %")
        self.misread.setFixedWidth(11 * step())
        self.misread.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.misread.setToolTip(
            self.tr("How many plants are read as another phenotype; at 0 every score is believed")
        )
        self.misread.valueChanged.connect(lambda _: self._ask_chances())
        part.addLayout(
            field_row(
                (
                    (self.tr("&Gene"), self.locus),
                    (self.tr("&Carries"), self.allele),
                    (self.tr("&Misread"), self.misread),
                )
            )
        )
        self.known = QCheckBox(self.tr("Believe the genotypes that are written down"))
        self.known.setChecked(True)
        self.known.clicked.connect(self._ask_chances)
        part.addWidget(self.known)
        self.filters: dict[str, QToolButton] = {}
        self._shown = ""
        self._wanted = ""
        self._found: _Found | None = None
        self.cards: ContradictionCards | None = None

    def redraw(self) -> None:
        self.misread.setFixedWidth(11 * step())
        super().redraw()

    # What there is ------------------------------------------------------------------------------

    def _start(self) -> None:
        assert self._net is not None
        book = self._net.book
        if not book.loci:
            self._nothing(
                self.tr("No gene is written down yet"),
                self.tr(
                    "Write down a gene with its alleles, the dominant one first, and what they "
                    "look like, such as C and c, regular leaf and potato leaf. Scores of a trait "
                    "with those words then tell which plants carry what, through parents, progeny "
                    "and selfings."
                ),
                ((self.tr("Enter a gene"), "gene"), (self.tr("Enter a trait"), "trait")),
            )
            return
        self.choices.show()
        items = []
        for code, locus in book.loci.items():
            shows = ", ".join(part.strip() for part in locus.phenotypes.split(";") if part.strip())
            items.append((f"{code}: {shows}" if shows else code, code))
        self.locus.offer(items, self._wanted if self._wanted in book.loci else None)
        self._wanted = ""
        self._locus_chosen()

    def go_to(self, what: str) -> None:
        """A gene by its name."""
        self._wanted = what if self._stale else ""
        at = self.locus.findData(what)
        if at >= 0:
            self.locus.setCurrentIndex(at)
            self._locus_chosen()

    def _locus_chosen(self) -> None:
        assert self._net is not None
        locus = self._net.book.loci.get(self.locus.currentData() or "")
        if locus is None:
            return
        names = [part.strip() for part in locus.alleles.split(";") if part.strip()]
        # The recessive is what nobody sees, so that is what is asked for first.
        held = self.allele.currentData()
        wanted = held if held in names else (names[-1] if names else None)
        self.allele.offer([(name, name) for name in names], wanted)
        self._ask_chances()

    def _ask_chances(self) -> None:
        net, locus = self._net, self.locus.currentData()
        allele = self.allele.currentData()
        if net is None or not locus or not allele:
            return
        misread, genotypes = self.misread.value() / 100, self.known.isChecked()
        tick = self._errands.tick

        def work() -> _Found:
            from pedigreeview.planning.inference import genotype_chances, which_carry
            from pedigreeview.planning.seen import records_of_locus

            answer = genotype_chances(net, locus, misread=misread, genotypes=genotypes, tick=tick)
            seen = records_of_locus(net, answer.model, misread=misread, genotypes=genotypes)
            carriers = which_carry(net, locus, allele, answer=answer)
            rows = {
                word: [
                    self._row(net, answer, plant, word, chance)
                    for plant, chance in getattr(carriers, word)
                ]
                for word in _VERDICTS
            }
            return _Found(
                locus, allele, answer, carriers, len(seen), len({one.plant for one in seen}), rows
            )

        if self._found is None:
            self._waiting(self.tr("Working out the chances …"))
        self._ask("chances", work, lambda found: self._show(net, found))

    def _said(self, found: _Found) -> str:
        plants = found.spoken_of
        words = (
            self.tr("{} scores and genotypes speak of {}, of {} plant.")
            if plants == 1
            else self.tr("{} scores and genotypes speak of {}, of {} plants.")
        )
        return words.format(number(found.seen), found.locus, number(plants))

    # Showing ------------------------------------------------------------------------------------

    def _word(self, verdict: str) -> str:
        return {
            "surely": self.tr("surely"),
            "likely": self.tr("likely"),
            "open": self.tr("open"),
            "unlikely": self.tr("unlikely"),
            "cannot": self.tr("surely not"),
        }[verdict]

    def _show(self, net: PedigreeNetwork, found: _Found) -> None:
        clear(self.body)
        self._found = found
        carriers, answer = found.carriers, found.answer
        numbers = {word: len(getattr(carriers, word)) for word in _VERDICTS}
        text = self.tr("{} surely carry {}, {} likely").format(
            numbers["surely"], found.allele, numbers["likely"]
        )
        said = self._said(found)
        if not answer.chances:
            text = self.tr("No chances can be given")
            said = self.tr(
                "The records contradict each other. Mend what is named below first, or allow for "
                "plants that were misread."
            )
        self.body.addWidget(
            figure(self.tr("Who carries it"), "carriers", text, said, self._why(found))
        )
        self.body.addWidget(sentence(self._how(answer), "soft"))
        if answer.chances:
            self._plants(found, numbers)
        if answer.impossible and answer.chances:
            label = LinkLabel(
                self.tr("Without chances, as their records contradict each other: {}.").format(
                    links(answer.impossible)
                ),
                "warn",
            )
            label.followed.connect(self.plant_wanted)
            self.body.addWidget(label)
        self._ask_contradictions(net, found.locus)

    def _plants(self, found: _Found, numbers: dict[str, int]) -> None:
        """The table of all plants, with the buttons that choose among them."""
        answer = found.answer
        self.body.addWidget(self._filter_row(numbers, len(answer.chances)))
        self.table = ResultTable(self.tr("Plants with their chances"), lines=16)
        self.table.opened.connect(self.plant_wanted)
        self.body.addWidget(self.table)
        self.body.addWidget(
            sentence(
                self.tr(
                    "Likely: a chance of 95% or more; unlikely: 5% or less. Of a family or a "
                    "variety it is the chance of one of its plants. Enter goes to the plant."
                ),
                "soft",
            )
        )
        self._fill()

    def _how(self, answer: GenotypeChances) -> str:
        if answer.exact:
            return self.tr("Exact. {}").format(answer.base)
        return self.tr(
            "Sampled, as the pedigree is too tangled for an exact answer: {} effective samples, "
            "standard error of a chance up to {}. {}"
        ).format(f"{answer.samples:.0f}", f"{answer.error:.2g}", answer.base)

    def _why(self, found: _Found) -> Reason:
        exact = found.answer.exact
        return Reason(
            (
                self.tr(
                    "Every plant has the genotypes that its parents can give, each with its "
                    "chance; every score and every genotype on record rules some of them out, in "
                    "the plant itself and through it in all of its kin."
                ),
                self.tr(
                    "A score of seed speaks of a seed of the plant, one generation ahead; "
                    "uncertain pollen parents count with their odds."
                ),
            ),
            self.tr(
                "P(genotypes | seen) ∝ Π P(genotype | parents' genotypes) · Π P(seen | genotype), "
                "summed by variable elimination"
            )
            if exact
            else self.tr("The same product, drawn family by family (Gibbs sampling in blocks)"),
            self.tr("Standard probability; Mendel's rule of inheritance"),
            found.answer.base,
        )

    def _filter_row(self, numbers: dict[str, int], total: int) -> QWidget:
        holder = QWidget()
        row = Flow(max(2, step() // 2))
        holder.setLayout(row)
        holder.setAccessibleName(self.tr("Which plants are listed"))
        self._group = QButtonGroup(holder)
        self.filters = {}
        words = [("", self.tr("all {}").format(number(total)))]
        words += [(word, f"{self._word(word)} {numbers[word]:,}") for word in _VERDICTS]
        if self._shown and not numbers[self._shown]:
            self._shown = ""
        for word, text in words:
            button = QToolButton()
            button.setText(text)
            button.setCheckable(True)
            button.setChecked(word == self._shown)
            button.setEnabled(not word or numbers[word] > 0)
            button.clicked.connect(lambda _, own=word: self._filter(own))
            self._group.addButton(button)
            self.filters[word] = button
            row.addWidget(button)
        return holder

    def _filter(self, word: str) -> None:
        self._shown = word
        self._fill()

    def _fill(self) -> None:
        found = self._found
        assert found is not None
        words = [word for word in _VERDICTS if self._shown in ("", word)]
        rows = [row for word in words for row in found.rows[word]]
        self.table.fill(
            (
                self.tr("Plant"),
                self.tr("Generation"),
                self.tr("Carries {}").format(found.allele),
                self.tr("Verdict"),
                self.tr("Genotypes"),
            ),
            rows,
        )

    def _row(
        self,
        net: PedigreeNetwork,
        answer: GenotypeChances,
        plant: str,
        word: str,
        chance: float,
    ) -> tuple[str, tuple[Cell, ...]]:
        exact = answer.exact
        genotypes = answer.of(plant)
        said = ", ".join(
            f"{text} {_percent(share, exact)}" for text, share in list(genotypes.items())[:_SHOWN]
        )
        shares = tuple(answer.chances[plant].tolist())
        return plant, (
            Cell(plant),
            Cell(net.generation_name(plant) or "–"),
            Cell(_percent(chance, exact), chance, (chance,)),
            Cell(self._word(word), float(_VERDICTS.index(word))),
            Cell(said, None, shares),
        )

    # Contradictions -----------------------------------------------------------------------------

    def _ask_contradictions(self, net: PedigreeNetwork, locus: str) -> None:
        tick, genotypes = self._errands.tick, self.known.isChecked()
        misread = self.misread.value() / 100
        self.body.addWidget(heading(self.tr("Records that cannot be true together"), 3))
        self.cards = ContradictionCards(net, self._desk, self._write)
        self.cards.plant_wanted.connect(self.plant_wanted)
        self.body.addWidget(self.cards)
        if misread:
            self.cards.say(
                self.tr("Where plants may be misread, no records contradict each other outright.")
            )
            return
        cards = self.cards

        def work() -> object:
            from pedigreeview.planning.contradictions import contradictions

            return contradictions(net, locus, genotypes=genotypes, tick=tick)

        cards.say(self.tr("Looking for contradictions …"))
        self._ask("contradictions", work, lambda found: self._contradicted(cards, found))

    def _contradicted(self, cards: ContradictionCards, found: list[object]) -> None:
        if cards is self.cards:
            cards.show_found(found)  # type: ignore[arg-type]


def _percent(share: float, exact: bool) -> str:
    """Certain only where the answer is exact."""
    if exact and share in (0.0, 1.0):
        return f"{100 * share:.0f}%"
    if share >= 0.9995:
        return "100%" if exact and share > 1 - 1e-9 else ">99.9%"
    return "<0.1%" if share < 0.0005 else f"{100 * share:.3g}%"
