"""Plans that keep plants on the way: carriers now, the full set later; beside the one-step plan.

A plan is a chain of stages.  In each, every kept plant gives a row of so many progeny (selfed,
backcrossed or doubled); of those that meet the stage's demand up to so many of each row are kept.
The chance that the last stage holds a wanted plant is exact: backwards from the last stage, for
every genotype g of a kept plant

    miss_last(g) = (1 − w(g))^m
    miss(g)      = E[φ(g)^min(K, k)],   K ~ Binomial(m, s(g))

with w, s the chances of its progeny to be wanted, or to meet the demand, and φ the mean of the next
stage's miss over the progeny that meet it (worked out here; simulated in the tests).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import combinations
from math import ceil, comb, log
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning import passing_on
from pedigreeview.planning.plants_needed import plants_needed
from pedigreeview.planning.schemes import Side
from pedigreeview.planning.targets import MOST_LOCI, Target

__all__ = ["Demand", "Road", "Stage", "StagedPlan", "TwoSteps", "best_two_steps", "demands"]

Move = Literal["self", "back", "double"]
Floats = NDArray[np.float64]

_MOST_KEPT = 8
_MOST_PLANTS = 1_000_000


@dataclass(frozen=True, slots=True)
class Demand:
    """What a kept plant must show.

    shown : names of the traits that it must show
    carried : names of the traits of which it must carry every gene, seen by a marker
    """

    shown: tuple[str, ...] = ()
    carried: tuple[str, ...] = ()

    def words(self) -> str:
        """'those that show dwarf and carry yellow pod'."""
        parts = [f"show {_and(self.shown)}"] if self.shown else []
        if self.carried:
            parts.append(f"carry {_and(self.carried)}")
        return f"those that {' and '.join(parts)}" if parts else "any"


def _and(names: Sequence[str]) -> str:
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"


def demands(target: Target, *, markers: bool = False) -> list[Demand]:
    """Every demand for a stage: each set of traits shown; with markers, the rest carried or not."""
    names = [trait.name for trait in target.traits]
    found = []
    for size in range(len(names) + 1):
        for shown in combinations(names, size):
            rest = tuple(name for name in names if name not in shown)
            found.append(Demand(shown))
            if markers and rest:
                found.append(Demand(shown, rest))
    return found


@dataclass(frozen=True, slots=True)
class Stage:
    """One generation of a plan: the move, the row of each kept plant, and what is kept of a row.

    keep, demand : of the last stage they are not used
    """

    move: Move
    row: int
    demand: Demand = Demand()
    keep: int = 1


class Road:
    """The transitions from an F1 towards a target, over all loci together.

    Parameters
    ----------
    seed, pollen : (4,) * n, the parents
    goal_fixed : whether the wanted plant shall breed true
    recurrent : parent of backcrosses
    """

    def __init__(
        self,
        target: Target,
        seed: NDArray[Any],
        pollen: NDArray[Any],
        *,
        goal_fixed: bool = True,
        recurrent: Side = "seed",
    ) -> None:
        if len(target.loci) > MOST_LOCI:
            raise ValueError(f"plans with kept plants follow at most {MOST_LOCI} loci")
        self.target = target
        self.goal_fixed = goal_fixed
        self._chances: dict[Move, Floats] = {}
        self._r = [float(r) for r in target.recombination]
        sides = {
            "seed": passing_on.gametes(seed.astype(float), self._r),
            "pollen": passing_on.gametes(pollen.astype(float), self._r),
        }
        self._recurrent = sides[recurrent]
        self.first: Floats = passing_on.crossed(sides["seed"], sides["pollen"])
        """(4,) * n: the F1."""

    @cached_property
    def _goal(self) -> Floats:
        goal = self.target.fixed() if self.goal_fixed else self.target.shown()
        return goal.astype(float)

    def _meets(self, demand: Demand) -> Floats:
        met = self.target.shown(demand.shown)
        if demand.carried:
            met = met & self.target.carriers(demand.carried)
        return met.astype(float)

    def back(self, move: Move, value: Floats) -> Floats:
        """For each genotype the mean of `value` over its progeny by a move."""
        if move == "self":
            return passing_on.selfed_back(value, self._r)
        if move == "double":
            return passing_on.doubled_back(value, self._r)
        return passing_on.crossed_back(value, self._recurrent, self._r)

    def chance_of(self, move: Move) -> Floats:
        """For each genotype the chance that a plant of its progeny is a wanted one."""
        if move not in self._chances:
            self._chances[move] = np.clip(self.back(move, self._goal), 0.0, 1.0)
        return self._chances[move]

    def misses(self, stages: Sequence[Stage]) -> float:
        """Chance that a plan ends without a wanted plant; the first stage's row comes from one F1.

        Raises
        ------
        ValueError : no stage
        """
        if not stages:
            raise ValueError("a plan has one stage or more")
        last = stages[-1]
        miss = (1 - self.chance_of(last.move)) ** last.row
        for stage in reversed(stages[:-1]):
            meets = self._meets(stage.demand)
            s = np.clip(self.back(stage.move, meets), 0.0, 1.0)
            both = self.back(stage.move, meets * miss)
            phi = np.clip(np.divide(both, s, out=np.ones_like(s), where=s > 0), 0.0, 1.0)
            miss = _missed(stage.row, s, phi, stage.keep)
        return float((self.first * miss).sum())

    def kept_kinds(self, move: Move, demand: Demand) -> tuple[float, NDArray[Any], Floats]:
        """Of progeny of the F1: share that meets a demand, the distinct chances of their own
        progeny to be wanted, and the weight of each among those that meet it."""
        steps: dict[str, Callable[[], Floats]] = {
            "self": lambda: passing_on.selfed(self.first, self._r),
            "double": lambda: passing_on.doubled(self.first, self._r),
            "back": lambda: passing_on.crossed(
                passing_on.gametes(self.first, self._r), self._recurrent
            ),
        }
        plants = steps[move]() * self._meets(demand)
        share = float(plants.sum())
        chances = np.round(self.chance_of("self"), 12)
        values, where = np.unique(chances[plants > 0], return_inverse=True)
        weights = np.bincount(where, plants[plants > 0], len(values)).astype(float)
        return share, values, weights / (share or 1.0)


def _missed(row: int, s: Floats, phi: Floats, keep: int) -> Floats:
    """E[φ^min(K, keep)], K ~ Binomial(row, s), elementwise."""
    found = phi**keep
    for k in range(min(keep, row + 1)):
        found = found + comb(row, k) * s**k * (1 - s) ** (row - k) * (phi**k - phi**keep)
    return np.clip(found, 0.0, 1.0)


@dataclass(frozen=True, slots=True)
class StagedPlan:
    """A plan in two steps: F2 plants, those kept, and rows out of them.

    chance : of a wanted plant at the end
    first_row : plants of the first step
    demand, keep : what is kept of them and how many at most
    second_row : plants from each kept one
    kept_share : share of the first step that meets the demand
    """

    chance: float
    first_row: int
    demand: Demand
    keep: int
    second_row: int
    kept_share: float

    @property
    def in_all(self) -> int:
        """Plants of both steps, if as many are kept as the plan allows."""
        return self.first_row + self.keep * self.second_row

    def sentence(self) -> str:
        """The plan in words."""
        noun = "plant" if self.keep == 1 else "plants"
        return (
            f"In two steps: grow {self.first_row:,} F2 plants, keep {self.keep} {noun} of "
            f"{self.demand.words()}, and grow {self.second_row:,} from each: {self.in_all:,} "
            f"plants in all, {100 * self.chance:.3g}% assurance."
        )


@dataclass(frozen=True, slots=True)
class TwoSteps:
    """The best two-step plan beside the one-step plan.

    one_step : F2 plants for the goal at once, None where no F2 plant can reach it
    best : None where no plan within the bed reaches the assurance
    hidden : whether a fixed plant looks like one that is not, so that its seed must tell
    searched : what was searched, in words
    """

    one_step: int | None
    best: StagedPlan | None
    bed: int
    assurance: float
    hidden: bool
    searched: str

    def sentences(self) -> list[str]:
        """Both plans in words, and which asks for fewer plants."""
        found = []
        if self.one_step is None:
            found.append("In one step no F2 plant can be what is wanted.")
        else:
            over = " That is more than the bed holds." if self.one_step > self.bed else ""
            found.append(
                f"In one step: {self.one_step:,} F2 plants for "
                f"{100 * self.assurance:g}% assurance.{over}"
            )
        if self.best is None:
            found.append(f"No plan in two steps within a bed of {self.bed:,} reaches that.")
        else:
            found.append(self.best.sentence())
            if self.one_step is not None:
                more = self.best.in_all - self.one_step
                if more < 0:
                    found.append(f"Two steps save {-more:,} plants and take one season more.")
                else:
                    found.append("One step asks for no more plants and saves a season.")
        if self.hidden:
            found.append("Which of the last plants breed true shows only in their seed.")
        return [*found, self.searched]


def best_two_steps(
    road: Road,
    *,
    bed: int,
    assurance: float = 0.95,
    markers: bool = False,
    most_kept: int = _MOST_KEPT,
    among: Iterable[Demand] | None = None,
    tick: Callable[[int, int], None] | None = None,
) -> TwoSteps:
    """The two-step plan F2 then F3 rows with the fewest plants in all, under a bed.

    Parameters
    ----------
    bed : plants that can stand in one generation
    markers : whether carriers that show nothing can be told
    among : demands to try in the F2; None: all of `demands`
    tick : called with (demands done, demands); may raise `Cancelled`

    Notes
    -----
    Searched: every demand, 1 to `most_kept` plants kept, rows of every length up to twenty and in
    steps of 5% from there to the bed; for each the smallest F2 that gives the assurance.  Kept
    plants are taken at random among those that meet the demand; a cost counts all rows.
    """
    if bed < 1 or not 0 < assurance < 1 or most_kept < 1:
        raise ValueError("a bed holds plants, an assurance lies between 0 and 1")
    tried = list(demands(road.target, markers=markers) if among is None else among)
    # In one step the F2 itself must be what is wanted.
    chance = float((road.first * road.chance_of("self")).sum())
    one = plants_needed(chance, assurance=assurance) if chance > 0 else None
    best: StagedPlan | None = None
    rows = _row_lengths(bed)
    for done, demand in enumerate(tried):
        if tick is not None:
            tick(done, len(tried))
        share, values, weights = road.kept_kinds("self", demand)
        if share <= 0 or not values.max() > 0:
            continue
        for row in rows:
            phi = float((weights * (1 - values) ** row).sum())
            for keep in range(1, min(most_kept, bed // row) + 1):
                most = min(bed, (best.in_all - 1 if best else 2 * bed) - keep * row)
                if most < 1 or phi**keep > 1 - assurance:
                    continue
                first = _smallest(share, phi, keep, 1 - assurance, most)
                if first is not None:
                    reached = 1 - _miss_of(first, share, phi, keep)
                    best = StagedPlan(reached, first, demand, keep, row, share)
    searched = (
        f"Searched: {len(tried)} demands for a kept F2 plant, 1 to {most_kept} plants kept, "
        f"rows of 1 to {bed} (all lengths to 20, then steps of 5%), within a bed of {bed}."
    )
    hidden = road.goal_fixed and any(t.rule != "recessive" for t in road.target.traits)
    return TwoSteps(one, best, bed, assurance, hidden, searched)


def _row_lengths(bed: int) -> list[int]:
    found, at = [], 1
    while at <= bed:
        found.append(at)
        at = at + 1 if at < 20 else max(at + 1, ceil(at * 1.05))
    return found


def _miss_of(row: int, share: float, phi: float, keep: int) -> float:
    end = phi**keep
    found = end
    for k in range(min(keep, row + 1)):
        found += comb(row, k) * share**k * (1 - share) ** (row - k) * (phi**k - end)
    return found


def _smallest(share: float, phi: float, keep: int, allowed: float, most: int) -> int | None:
    if _miss_of(most, share, phi, keep) > allowed:
        return None
    low, high = 0, most
    if share < 1:
        # Fewer cannot even hold one kept plant with that assurance.
        low = max(0, min(most, ceil(log(allowed) / log(1 - share))) - 1)
    while high - low > 1:
        middle = (low + high) // 2
        if _miss_of(middle, share, phi, keep) > allowed:
            low = middle
        else:
            high = middle
    return high
