"""How many to grow in one step: seeds to sow so that the wanted plants are among them.

Schemes are set side by side by the plants that they ask for over all generations, under a bed of so
many plants at a time.  Nothing is selected on the way here; see `two_steps` for plans that do.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.planning.plants_needed import chance_of_at_least, plants_needed
from pedigreeview.planning.schemes import ChancePerPlant, Parent, Scheme, chance_per_plant
from pedigreeview.planning.targets import Share, Target

__all__ = [
    "GrowingPlan",
    "SchemePlan",
    "chance_curve",
    "compare_schemes",
    "how_many",
    "wanted_in_bed",
]


@dataclass(frozen=True, slots=True)
class GrowingPlan:
    """Seeds and plants for one step.

    chance : of each grown plant to be a wanted one
    wanted, assurance : at least so many, with that probability
    seeds : to sow
    plants : that shall stand to be judged, if all seeds came up
    germination, kept_alive : share of seeds that come up; of those, share that lives to be judged
    """

    chance: float
    wanted: int
    assurance: float
    seeds: int
    plants: int
    germination: float
    kept_alive: float

    def sentence(self) -> str:
        """How many to sow, in words."""
        noun = "plant" if self.wanted == 1 else "plants"
        said = (
            f"Grow {self.plants:,} plants to have {self.wanted} wanted {noun} or more with "
            f"{100 * self.assurance:g}% assurance"
        )
        if self.seeds == self.plants:
            return f"{said}."
        return (
            f"{said}; sow {self.seeds:,} seeds, as {100 * self.germination:g}% come up and "
            f"{100 * self.kept_alive:g}% of those live to be judged."
        )


def how_many(
    chance: Share,
    *,
    wanted: int = 1,
    assurance: float = 0.95,
    germination: float = 1.0,
    kept_alive: float = 1.0,
) -> GrowingPlan:
    """The exact number for one step (negative binomial, see `plants_needed`).

    A seed gives a wanted plant with chance × germination × kept_alive, each on its own.

    Raises
    ------
    ValueError : a chance of 0, or an argument outside its range
    """
    if not 0 < kept_alive <= 1:
        raise ValueError("a share lies above 0 and is at most 1")
    each = float(chance)
    plants = plants_needed(each, wanted=wanted, assurance=assurance)
    seeds = plants_needed(
        each, wanted=wanted, assurance=assurance, germination=germination * kept_alive
    )
    return GrowingPlan(each, wanted, assurance, seeds, plants, germination, kept_alive)


def chance_curve(
    chance: Share, most: int, *, wanted: int = 1, germination: float = 1.0, points: int = 200
) -> list[tuple[int, float]]:
    """(seeds or plants grown, chance of `wanted` or more among them) from 0 to `most`.

    At most about `points` of them, evenly spaced; for the figure.
    """
    if most < 1 or points < 2:
        raise ValueError("a curve needs one plant and two points or more")
    step = max(1, -(-most // (points - 1)))
    counts = [*range(0, most, step), most]
    each = float(chance) * germination
    return [(n, chance_of_at_least(wanted, n, each)) for n in counts]


def wanted_in_bed(chance: Share, bed: int, *, assurance: float = 0.95) -> int:
    """Most wanted plants that a bed of so many holds with that assurance (0: not even one)."""
    found = 0
    while found < bed and chance_of_at_least(found + 1, bed, float(chance)) >= assurance:
        found += 1
    return found


@dataclass(frozen=True, slots=True)
class SchemePlan:
    """One scheme with its numbers.

    each : chance of each plant
    goal : the chance counted, of a wanted plant or of a fixed one
    plan : for the last generation; None where no plant can be a wanted one
    in_all : plants over all generations: one seed of each plant is carried on, so every generation
        after the F1 has as many as the last; the F1 counts `first`
    fits : whether every generation fits the bed
    """

    scheme: Scheme
    each: ChancePerPlant
    goal: float
    plan: GrowingPlan | None
    in_all: int | None
    fits: bool

    def sentence(self) -> str:
        """The scheme in one line."""
        if self.plan is None or self.in_all is None:
            return self.each.sentence()
        bed = "" if self.fits else " That is more than the bed holds."
        return (
            f"{self.scheme.name}: {self.plan.seeds:,} seeds in the last generation, "
            f"{self.in_all:,} plants over {self.scheme.seasons} generations.{bed}"
        )


def compare_schemes(
    target: Target,
    seed: Parent,
    pollen: Parent,
    schemes: Iterable[Scheme],
    *,
    goal_fixed: bool = True,
    wanted: int = 1,
    assurance: float = 0.95,
    germination: float = 1.0,
    kept_alive: float = 1.0,
    bed: int | None = None,
    first: int = 4,
) -> list[SchemePlan]:
    """Schemes without selection on the way, cheapest first; those that fit the bed before others.

    Parameters
    ----------
    goal_fixed : whether the wanted plant shall breed true, else only show the traits
    bed : plants that can stand in one generation, None: any number
    first : F1 plants grown (common practice, no source)

    Notes
    -----
    Searched: exactly the schemes given.  Cost is plants over all generations, ties by seasons.
    """
    found = []
    for scheme in schemes:
        each = chance_per_plant(target, scheme, seed, pollen)
        goal = float(each.fixed if goal_fixed else each.chance)
        if goal <= 0:
            found.append(SchemePlan(scheme, each, 0.0, None, None, False))
            continue
        plan = how_many(
            goal,
            wanted=wanted,
            assurance=assurance,
            germination=germination,
            kept_alive=kept_alive,
        )
        in_all = first + plan.seeds * len(scheme.moves)
        found.append(SchemePlan(scheme, each, goal, plan, in_all, bed is None or plan.seeds <= bed))
    return sorted(found, key=_by_cost)


def _by_cost(plan: SchemePlan) -> tuple[bool, bool, int, int]:
    none = plan.in_all is None
    return (none, not plan.fits, plan.in_all or 0, plan.scheme.seasons)
