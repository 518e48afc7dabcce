"""What 'How many to grow' asks of planning, for parents of the book or for a target typed in.

Knows no widgets; everything here runs in a thread.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.cheapest_road import CheapestRoads
    from pedigreeview.planning.flowers_needed import FlowersNeeded
    from pedigreeview.planning.growing_plan import SchemePlan
    from pedigreeview.planning.linkage_drag import Drag
    from pedigreeview.planning.progeny_test import FamiliesNeeded
    from pedigreeview.planning.schedules import BackcrossLine, SelfingLine
    from pedigreeview.planning.targets import Target
    from pedigreeview.planning.two_steps import TwoSteps

__all__ = ["GrowingAnswer", "GrowingQuestion", "TypedGenes", "grow"]

Tick = Callable[[int, int], None]
Side = Literal["seed", "pollen"]
Rule = Literal["dominant", "recessive"]

_FIRST = 4


def _tr(text: str) -> str:
    return QCoreApplication.translate("GrowingQuestion", text)


@dataclass(frozen=True, slots=True)
class TypedGenes:
    """A target without the book: genes counted by rule and by the parent that brings them.

    recessive, dominant : (brought by the seed parent, brought by the pollen parent); the other
        parent breeds true for the other allele
    additive : loci of one measured trait, half of them brought by each parent; `at_least` of their
        wanted alleles are asked for
    linked : recombination of neighbours, in their order; 1/2: unlinked
    """

    recessive: tuple[int, int] = (0, 0)
    dominant: tuple[int, int] = (0, 0)
    additive: int = 0
    at_least: int = 0
    linked: Fraction = Fraction(1, 2)

    @property
    def genes(self) -> int:
        """Genes in all."""
        return sum(self.recessive) + sum(self.dominant) + self.additive

    def target(self) -> tuple[Target, list[int], list[int]]:
        """The target, and the wanted alleles that each parent carries at its loci.

        Raises
        ------
        Fault : no gene at all
        """
        from pedigreeview.planning.targets import Target, WantedTrait

        traits: list[WantedTrait] = []
        seed: list[int] = []
        pollen: list[int] = []
        for rule, counts in (("recessive", self.recessive), ("dominant", self.dominant)):
            for side, many in enumerate(counts):
                for _ in range(many):
                    name = _gene_name(rule, len(traits) + 1)
                    traits.append(WantedTrait(name, (name,), rule))  # type: ignore[arg-type]
                    seed.append(2 if side == 0 else 0)
                    pollen.append(0 if side == 0 else 2)
        if self.additive:
            loci = tuple(_tr("additive gene {}").format(at + 1) for at in range(self.additive))
            whole = self.at_least or 2 * self.additive
            traits.append(
                WantedTrait(_tr("the measured trait"), loci, "additive", min(whole, 2 * len(loci)))
            )
            for at in range(self.additive):
                seed.append(2 if at % 2 == 0 else 0)
                pollen.append(0 if at % 2 == 0 else 2)
        if not traits:
            raise Fault(_tr("No gene is asked about."), None, _tr("Say how many genes are wanted."))
        loci_count = sum(len(trait.loci) for trait in traits)
        gaps = [self.linked] * (loci_count - 1)
        return Target.of(*traits, linked=gaps), seed, pollen


def _gene_name(rule: str, number: int) -> str:
    words = {"recessive": _tr("recessive gene {}"), "dominant": _tr("dominant gene {}")}
    return words[rule].format(number)


@dataclass(frozen=True, slots=True)
class GrowingQuestion:
    """All that the plans go by.

    seed, pollen : the parents; '' for a typed target
    wanted : (trait, value) pairs of the book; used unless `typed` is given
    at_least, assurance : so many wanted plants or more, with that probability
    germination, alive : share of seeds that come up; of those, that live to be judged
    bed : plants that can stand in one generation
    fixed : whether the wanted plant shall breed true
    markers : whether carriers that show nothing can be told
    recurrent : the parent of backcrosses
    chromosome, position : cM of the chromosome of a kept gene and its place on it, for the drag
    """

    seed: str = ""
    pollen: str = ""
    wanted: tuple[tuple[str, str], ...] = ()
    typed: TypedGenes | None = None
    at_least: int = 1
    assurance: float = 0.95
    germination: float = 0.9
    alive: float = 0.95
    bed: int = 100
    fixed: bool = True
    markers: bool = False
    recurrent: Side = "seed"
    chromosome: float = 100.0
    position: float = 50.0


@dataclass(frozen=True, slots=True)
class GrowingAnswer:
    """Every plan; what cannot be followed (4x, many loci) is None."""

    wish: str
    plans: tuple[SchemePlan, ...]
    two_steps: TwoSteps | None
    roads: CheapestRoads | None
    families: FamiliesNeeded | None
    flowers: FlowersNeeded | None
    curves: tuple[tuple[str, tuple[tuple[int, float], ...]], ...]
    selfing: tuple[SelfingLine, ...]
    sibs: tuple[Fraction, ...]
    backcross: tuple[BackcrossLine, ...]
    drag: tuple[Drag, ...]
    recombinants: int
    notes: tuple[str, ...]


def grow(net: PedigreeNetwork | None, question: GrowingQuestion, tick: Tick) -> GrowingAnswer:
    """All plans for a question.

    Raises
    ------
    Fault : nothing wanted, parents whose genes are not known, a target too large to be followed
    """
    if question.typed is not None:
        return _typed(net, question, question.typed, tick)
    if net is None or not question.seed or not question.pollen:
        raise Fault(_tr("Two parents are needed."), None, _tr("Type their codes above."))
    if not question.wanted:
        raise Fault(
            _tr("No wish with a gene behind it."),
            None,
            _tr(
                "Add a wish for a trait whose gene is in the book, or say the genes in numbers "
                "instead."
            ),
        )
    return _of_book(net, question, tick)


def _of_book(net: PedigreeNetwork, question: GrowingQuestion, tick: Tick) -> GrowingAnswer:
    from pedigreeview.planning.growing_report import growing_report
    from pedigreeview.planning.known_copies import known_copies

    report = growing_report(
        net,
        question.seed,
        question.pollen,
        question.wanted,
        bed=question.bed,
        assurance=question.assurance,
        goal_fixed=question.fixed,
        germination=question.germination,
        kept_alive=question.alive,
        markers=question.markers,
        recurrent=question.recurrent,
        copies=known_copies(net),
        tick=tick,
    )
    return _with_schedules(
        question,
        len(question.wanted),
        report.wish,
        _for_so_many(report.plans, question),
        report.two_steps,
        report.roads,
        report.families,
        report.flowers,
        report.notes,
    )


def _typed(
    net: PedigreeNetwork | None, question: GrowingQuestion, typed: TypedGenes, tick: Tick
) -> GrowingAnswer:
    from pedigreeview.planning.growing_plan import compare_schemes
    from pedigreeview.planning.growing_report import (
        families_that_show,
        plans_that_keep,
        usual_schemes,
    )
    from pedigreeview.planning.schemes import chance_per_plant, selfing

    target, seed, pollen = typed.target()
    try:
        plans = compare_schemes(
            target,
            seed,
            pollen,
            usual_schemes(to=question.recurrent),
            goal_fixed=question.fixed,
            wanted=question.at_least,
            assurance=question.assurance,
            germination=question.germination,
            kept_alive=question.alive,
            bed=question.bed,
        )
    except ValueError as error:
        raise Fault(
            _tr("So many genes that hang together cannot be followed."),
            None,
            _tr("Ask about fewer genes, or take them as unlinked."),
        ) from error
    steps, roads = plans_that_keep(
        target,
        seed,
        pollen,
        goal_fixed=question.fixed,
        recurrent=question.recurrent,
        bed=question.bed,
        assurance=question.assurance,
        markers=question.markers,
        tick=tick,
    )
    second = chance_per_plant(target, selfing(2), seed, pollen)
    families = families_that_show(second, question.assurance)
    return _with_schedules(
        question,
        typed.genes,
        target.sentence(),
        tuple(plans),
        steps,
        roads,
        families,
        _flowers(net, question),
        (_tr("The parents are taken to breed true at every gene asked about."),),
    )


def _flowers(net: PedigreeNetwork | None, question: GrowingQuestion) -> FlowersNeeded | None:
    """Flowers for the F1, from the takes of the book; None where none is thinkable."""
    from pedigreeview.planning.flowers_needed import flowers_needed, rates_of_book

    if net is None:
        return None
    book = net.book
    crop = book.crop(book.plants[question.seed]) if question.seed in book.plants else ""
    try:
        return flowers_needed(_FIRST, rates_of_book(book, crop=crop))
    except ValueError:
        return None


def _for_so_many(plans: Sequence[SchemePlan], question: GrowingQuestion) -> tuple[SchemePlan, ...]:
    """The plans for `at_least` wanted plants, in the order of what they then ask for."""
    from dataclasses import replace

    from pedigreeview.planning.growing_plan import how_many

    if question.at_least == 1:
        return tuple(plans)
    found = []
    for held in plans:
        if held.plan is None:
            found.append(held)
            continue
        plan = how_many(
            held.goal,
            wanted=question.at_least,
            assurance=question.assurance,
            germination=question.germination,
            kept_alive=question.alive,
        )
        in_all = _FIRST + plan.seeds * len(held.scheme.moves)
        fits = plan.seeds <= question.bed
        found.append(replace(held, plan=plan, in_all=in_all, fits=fits))
    found.sort(key=lambda p: (p.in_all is None, not p.fits, p.in_all or 0, p.scheme.seasons))
    return tuple(found)


def _with_schedules(
    question: GrowingQuestion,
    genes: int,
    wish: str,
    plans: tuple[SchemePlan, ...],
    two_steps: TwoSteps | None,
    roads: CheapestRoads | None,
    families: FamiliesNeeded | None,
    flowers: FlowersNeeded | None,
    notes: tuple[str, ...],
) -> GrowingAnswer:
    from pedigreeview.planning.growing_plan import chance_curve
    from pedigreeview.planning.linkage_drag import drag_around, plants_for_recombinant
    from pedigreeview.planning.schedules import (
        backcross_schedule,
        selfing_schedule,
        sib_schedule,
    )

    # One chromosome shows the spread at its widest; of a whole set it is less.
    lengths = (question.chromosome,)
    each = question.germination * question.alive
    shown = [plan for plan in plans if plan.plan is not None]
    most = max((plan.plan.seeds for plan in shown[:5] if plan.plan is not None), default=1)
    curves = tuple(
        (
            plan.scheme.name,
            tuple(
                chance_curve(
                    plan.goal,
                    max(4, round(1.25 * most)),
                    wanted=question.at_least,
                    germination=each,
                )
            ),
        )
        for plan in shown[:5]
    )
    position = min(question.position, question.chromosome)
    drag = tuple(drag_around(t, question.chromosome, position) for t in range(1, 7))
    return GrowingAnswer(
        wish,
        plans,
        two_steps,
        roads,
        families,
        flowers,
        curves,
        tuple(selfing_schedule(genes, last=8, lengths=lengths)),
        tuple(sib_schedule(8)),
        tuple(backcross_schedule(6, loci=genes, lengths=lengths)),
        drag,
        plants_for_recombinant(5.0, assurance=question.assurance),
        notes,
    )
