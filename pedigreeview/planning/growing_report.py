"""How many to grow, from the book: one wish out of two parents, with every plan beside it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import TYPE_CHECKING

import numpy as np

from pedigreeview.book.faults import Fault, Place
from pedigreeview.planning.cheapest_road import CheapestRoads, cheapest_roads
from pedigreeview.planning.flowers_needed import FlowersNeeded, flowers_needed, rates_of_book
from pedigreeview.planning.growing_plan import (
    GrowingPlan,
    SchemePlan,
    chance_curve,
    compare_schemes,
    how_many,
)
from pedigreeview.planning.observations import copies_of, gene_of_trait
from pedigreeview.planning.progeny_test import FamiliesNeeded, families_needed
from pedigreeview.planning.schemes import (
    ChancePerPlant,
    Parent,
    Scheme,
    Side,
    back_crossing,
    chance_per_plant,
    crossing_to_tester,
    doubled_haploids,
    selfing,
    sib_mating,
)
from pedigreeview.planning.targets import Target, from_copies
from pedigreeview.planning.tetraploid import doses_by_scheme
from pedigreeview.planning.two_steps import Road, TwoSteps, best_two_steps
from pedigreeview.planning.wishes import Copies, wish_of_book

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = [
    "GrowingReport",
    "families_that_show",
    "growing_report",
    "plans_that_keep",
    "usual_schemes",
]

_MOST_TOGETHER = 6
_FIRST = 4


@dataclass(frozen=True, slots=True)
class GrowingReport:
    """Every plan for one wish.

    wish : in words
    plans : schemes without selection on the way, cheapest first
    two_steps, roads : plans that keep plants; None where no plan is followed (4x, many loci)
    families : progeny test of F2 plants that show the wish; None where they all breed true
    flowers : for the F1 plants of the first cross; None where no take is thinkable
    curves : (scheme, [(plants, chance of a wanted one)]) for the figure
    notes : what was assumed
    """

    wish: str
    plans: tuple[SchemePlan, ...]
    two_steps: TwoSteps | None
    roads: CheapestRoads | None
    families: FamiliesNeeded | None
    flowers: FlowersNeeded | None
    curves: tuple[tuple[str, tuple[tuple[int, float], ...]], ...]
    notes: tuple[str, ...]

    def sentences(self) -> list[str]:
        """The wish, chances and plans in words."""
        found = [self.wish]
        for plan in self.plans:
            found.append(plan.each.sentence())
            if plan.plan is not None:
                found.append(plan.sentence())
        if self.two_steps is not None:
            found += self.two_steps.sentences()
        if self.roads is not None:
            found += self.roads.sentences()
        if self.families is not None:
            found.append(self.families.sentence())
        if self.flowers is not None:
            found.append(f"For the first cross: {self.flowers.sentence()}")
        return [*found, *self.notes]


def usual_schemes(generations: int = 5, *, backcrosses: int = 2, to: Side = "seed") -> list[Scheme]:
    """F2 to F`generations`, backcrosses selfed once, test cross, doubled haploids, sib mating."""
    found = [selfing(g) for g in range(2, generations + 1)]
    found += [back_crossing(n, to=to, selfings=1) for n in range(1, backcrosses + 1)]
    return [*found, crossing_to_tester(), doubled_haploids(), sib_mating(1)]


def growing_report(
    net: PedigreeNetwork,
    seed: str,
    pollen: str,
    wanted: Sequence[tuple[str, str]],
    *,
    bed: int = 100,
    assurance: float = 0.95,
    goal_fixed: bool = True,
    germination: float = 1.0,
    kept_alive: float = 1.0,
    markers: bool = False,
    recurrent: Side = "seed",
    schemes: Iterable[Scheme] | None = None,
    copies: Copies | None = None,
    tick: Callable[[int, int], None] | None = None,
) -> GrowingReport:
    """All plans for some values of traits in one plant, out of two parents.

    Parameters
    ----------
    wanted : (trait, value), such as ('height', 'dwarf'); one alone for tetraploids
    bed : plants that can stand in one generation
    goal_fixed : whether the wanted plant shall breed true
    markers : whether carriers that show nothing can be told
    copies : (plant, locus, allele) to the copies it carries; None: as recorded

    Raises
    ------
    Fault : see `wishes.wish_of_book`
    """
    tried = list(usual_schemes(to=recurrent) if schemes is None else schemes)
    first = _flowers(net, seed)
    plan_of = partial(how_many, assurance=assurance, germination=germination, kept_alive=kept_alive)
    if net.ploidy(seed) == net.ploidy(pollen) == 4:
        plans = _tetraploid(net, seed, pollen, wanted, tried, goal_fixed, bed, copies, plan_of)
        said = f"Wanted: {wanted[0][1]} {wanted[0][0]}, one gene in a tetraploid."
        return GrowingReport(
            said, tuple(plans), None, None, None, first, _curves(plans), _tetraploid_notes(net)
        )
    wish = wish_of_book(net, seed, pollen, wanted, copies=copies)
    plans = compare_schemes(
        wish.target,
        wish.seed,
        wish.pollen,
        tried,
        goal_fixed=goal_fixed,
        bed=bed,
        assurance=assurance,
        germination=germination,
        kept_alive=kept_alive,
    )
    steps, roads = plans_that_keep(
        wish.target,
        wish.seed,
        wish.pollen,
        goal_fixed=goal_fixed,
        recurrent=recurrent,
        bed=bed,
        assurance=assurance,
        markers=markers,
        tick=tick,
    )
    second = chance_per_plant(wish.target, selfing(2), wish.seed, wish.pollen)
    families = families_that_show(second, assurance)
    return GrowingReport(
        wish.target.sentence(),
        tuple(plans),
        steps,
        roads,
        families,
        first,
        _curves(plans),
        wish.notes,
    )


def plans_that_keep(
    target: Target,
    seed: Parent,
    pollen: Parent,
    *,
    goal_fixed: bool,
    recurrent: Side,
    bed: int,
    assurance: float,
    markers: bool,
    tick: Callable[[int, int], None] | None = None,
) -> tuple[TwoSteps | None, CheapestRoads | None]:
    """The best plan of two steps and the cheapest roads; None for both where loci are too many."""
    if len(target.loci) > _MOST_TOGETHER:
        return None, None
    one, two = (
        side if isinstance(side, np.ndarray) else from_copies(side) for side in (seed, pollen)
    )
    road = Road(target, one, two, goal_fixed=goal_fixed, recurrent=recurrent)
    steps = best_two_steps(road, bed=bed, assurance=assurance, markers=markers, tick=tick)
    roads = cheapest_roads(
        road,
        bed=bed,
        generations=4,
        backcrosses=1,
        markers=markers,
        assurance=assurance,
        tick=tick,
    )
    return steps, roads


def families_that_show(second: ChancePerPlant, assurance: float) -> FamiliesNeeded | None:
    """The progeny test of F2 plants that show the wish; None where all or none breed true.

    second : the chance of an F2 plant
    """
    pure = Fraction(second.already_fixed or 0).limit_denominator(10**6)
    return families_needed(pure, assurance=assurance) if 0 < pure < 1 else None


def _flowers(net: PedigreeNetwork, seed: str) -> FlowersNeeded | None:
    rates = rates_of_book(net.book, crop=net.book.crop(net.book.plants[seed]))
    try:
        return flowers_needed(_FIRST, rates)
    except ValueError:
        return None


def _curves(plans: Sequence[SchemePlan]) -> tuple[tuple[str, tuple[tuple[int, float], ...]], ...]:
    return tuple(
        (plan.scheme.name, tuple(chance_curve(plan.goal, max(2, 2 * plan.plan.seeds))))
        for plan in plans
        if plan.plan is not None
    )


def _tetraploid(
    net: PedigreeNetwork,
    seed: str,
    pollen: str,
    wanted: Sequence[tuple[str, str]],
    schemes: Iterable[Scheme],
    goal_fixed: bool,
    bed: int,
    copies: Copies | None,
    plan_of: Callable[[float], GrowingPlan],
) -> list[SchemePlan]:
    if len(wanted) != 1:
        raise Fault(
            f"{seed} and {pollen} are 4x; only one gene at a time is followed there.",
            Place(plant=seed),
            "Ask about one trait.",
        )
    ((trait, value),) = wanted
    gene = gene_of_trait(net.book, trait)
    if gene is None or value not in (gene.shows[0], gene.shows[2]):
        raise Fault(
            f"No gene of this book says how {value} {trait} is inherited.",
            Place(column="loci"),
            "Add a locus with two alleles whose phenotypes are the trait's values.",
        )
    recessive = value == gene.shows[0]
    allele = gene.recessive if recessive else gene.dominant
    known = copies or (lambda plant, locus, name: copies_of(net.book, plant, locus, name))
    doses = [known(parent, gene.locus, allele) for parent in (seed, pollen)]
    for parent, dose in zip((seed, pollen), doses, strict=True):
        if dose is None:
            raise Fault(
                f"What {parent} carries at {gene.locus} is not known.",
                Place(plant=parent),
                "Write down its genotype with all four alleles.",
            )
    a, b = (dose or 0 for dose in doses)
    whole = recessive or gene.shows[1] != gene.shows[2]
    found = []
    for scheme in schemes:
        if scheme.moves.count("sib") > 1:
            continue
        chances = doses_by_scheme(
            a,
            b,
            scheme.moves,
            recurrent=a if scheme.recurrent == "seed" else b,
            tester=4 if recessive else 0,
            double_reduction=Fraction(net.book.double_reduction()).limit_denominator(10**6),
        )
        shown = chances.shows_recessive if whole else chances.shows_dominant
        each = ChancePerPlant(scheme, shown, chances.shows_recessive)
        goal = float(each.fixed if goal_fixed else each.chance)
        plan = plan_of(goal) if goal > 0 else None
        in_all = _FIRST + plan.seeds * len(scheme.moves) if plan is not None else None
        found.append(SchemePlan(scheme, each, goal, plan, in_all, bool(plan and plan.seeds <= bed)))
    return sorted(found, key=lambda p: (p.in_all is None, not p.fits, p.in_all or 0))


def _tetraploid_notes(net: PedigreeNetwork) -> tuple[str, ...]:
    return (f"Double reduction is taken as {net.book.double_reduction():.3g}.",)
