"""The cheapest way over several generations under a bed, keeping plants on the way.

Every road has the same simple shape, that of the pedigree method: one row out of the F1, of which
so many plants are kept; then a row of each, of which one plant is kept; the last rows are judged
for the wanted plant.  Every generation fills the same number of plants.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import product

from pedigreeview.planning.targets import Target
from pedigreeview.planning.two_steps import Demand, Move, Road, Stage

__all__ = ["CheapestRoads", "RoadPlan", "cheapest_roads"]

_KEPT = (1, 2, 3, 4, 6, 8)
_MOST_LOCI = 6
_MOST_APART = 4
_LONGEST = 6


@dataclass(frozen=True, slots=True)
class RoadPlan:
    """One road with its smallest bed.

    name : 'F2', 'F4', 'BC1F2', 'doubled haploids' ...
    chance : of a wanted plant at the end
    plants : in each generation after the F1
    kept : rows from the second of these generations on; 1 where there is one generation
    asked : the demand on kept plants of each generation but the last
    """

    name: str
    chance: float
    plants: int
    kept: int
    asked: tuple[Demand, ...]
    stages: tuple[Stage, ...]

    @property
    def in_all(self) -> int:
        """Plants over all generations after the F1."""
        return self.plants * len(self.stages)

    @property
    def seasons(self) -> int:
        """Generations after the F1."""
        return len(self.stages)

    def sentence(self) -> str:
        """The road in words."""
        each = f"{self.name}: {self.plants:,} plants"
        if not self.asked:
            return f"{each} in one generation, {100 * self.chance:.3g}% assurance."
        kept = "1 plant" if self.kept == 1 else f"{self.kept} plants"
        asked = "; then ".join(demand.words() for demand in self.asked)
        return (
            f"{each} in each of {self.seasons} generations, {kept} kept ({asked}), {self.in_all:,} "
            f"in all, {100 * self.chance:.3g}% assurance."
        )


@dataclass(frozen=True, slots=True)
class CheapestRoads:
    """The best road of each scheme, cheapest first, and what was searched."""

    roads: tuple[RoadPlan, ...]
    out_of_reach: tuple[str, ...]
    """Names of schemes by which no road within the bed gives the assurance."""
    searched: str

    def sentences(self) -> list[str]:
        """All roads in words, then those out of reach and what was searched."""
        found = [road.sentence() for road in self.roads]
        if self.out_of_reach:
            found.append(f"Not within this bed: {', '.join(self.out_of_reach)}.")
        return [*found, self.searched]


def _moves(move: Move, times: int) -> tuple[Move, ...]:
    return tuple(move for _ in range(times))


def usual_roads(
    generations: int, *, backcrosses: int = 1, doubling: bool = False
) -> dict[str, tuple[Move, ...]]:
    """Selfing for so many generations, also after backcrosses; and doubled haploids."""
    found: dict[str, tuple[Move, ...]] = {}
    for times in range(backcrosses + 1):
        before = _moves("back", times)
        for selfings in range(0 if times else 1, generations - times + 1):
            name = f"BC{times}F{selfings + 1}" if times else f"F{selfings + 1}"
            found[name] = (*before, *_moves("self", selfings))
        if doubling and times < generations:
            name = f"doubled haploids of BC{times}F1" if times else "doubled haploids"
            found[name] = (*before, "double")
    return found


def cheapest_roads(
    road: Road,
    *,
    bed: int,
    generations: int = 3,
    backcrosses: int = 0,
    doubling: bool = False,
    markers: bool = False,
    assurance: float = 0.95,
    tick: Callable[[int, int], None] | None = None,
) -> CheapestRoads:
    """The fewest plants over all generations for each scheme, under a bed.

    Parameters
    ----------
    bed : plants that can stand in one generation
    generations : after the F1, at most 6
    tick : called with (schemes done, schemes); may raise `Cancelled`

    Raises
    ------
    ValueError : more than 6 loci or generations, or a bed without plants

    Notes
    -----
    Searched: 1, 2, 3, 4, 6 or 8 kept plants; for each trait the generation from which on a kept
    plant must show it, or never before the last (more than four traits: all dominant ones together,
    all recessive ones, all additive ones); with markers also that it carries all the rest; for each
    the smallest number of plants.
    """
    if len(road.target.loci) > _MOST_LOCI or not 1 <= generations <= _LONGEST or bed < 1:
        raise ValueError("roads are searched for up to 6 loci and 6 generations")
    chains = usual_roads(generations, backcrosses=backcrosses, doubling=doubling)
    found, lost = [], []
    for done, (name, moves) in enumerate(chains.items()):
        if tick is not None:
            tick(done, len(chains))
        best = _best_of(road, name, moves, markers, bed, assurance)
        if best is None:
            lost.append(name)
        else:
            found.append(best)
    found.sort(key=lambda plan: (plan.in_all, plan.seasons, plan.kept))
    searched = (
        f"Searched: {len(chains)} schemes of up to {generations} generations after the F1, "
        f"{', '.join(map(str, _KEPT[:-1]))} or {_KEPT[-1]} kept plants, the same number of plants "
        f"in every generation up to {bed:,}, and for each trait the generation from which on it is "
        "demanded of a kept plant."
    )
    return CheapestRoads(tuple(found), tuple(lost), searched)


_RULES = ("dominant", "recessive", "additive")


def _demand_chains(target: Target, stages: int, markers: bool) -> list[tuple[Demand, ...]]:
    """Demands of all stages but the last; a trait once demanded is demanded from there on."""
    names = [trait.name for trait in target.traits]
    units: list[tuple[str, ...]] = [(name,) for name in names]
    if len(names) > _MOST_APART:
        units = [tuple(t.name for t in target.traits if t.rule == rule) for rule in _RULES]
        units = [unit for unit in units if unit]
    found = []
    # Each unit begins to be demanded at one stage, or never.
    for starts in product(range(stages + 1), repeat=len(units)):
        chain = []
        for stage in range(stages):
            shown = {n for unit, at in zip(units, starts, strict=True) if at <= stage for n in unit}
            chain.append(tuple(name for name in names if name in shown))
        found.append(tuple(Demand(shown) for shown in chain))
        if markers and stages:
            rest = [tuple(n for n in names if n not in shown) for shown in chain]
            found.append(tuple(Demand(s, r) for s, r in zip(chain, rest, strict=True)))
    return list(dict.fromkeys(found))


def _best_of(
    road: Road,
    name: str,
    moves: Sequence[Move],
    markers: bool,
    bed: int,
    assurance: float,
) -> RoadPlan | None:
    best: RoadPlan | None = None
    for asked in _demand_chains(road.target, len(moves) - 1, markers):
        for kept in _KEPT if asked else (1,):
            most = bed if best is None else best.plants - 1
            if most < kept:
                continue
            stages = _stages(moves, asked, kept, most)
            if 1 - road.misses(stages) < assurance:
                continue
            low, high = kept - 1, most
            while high - low > 1:
                middle = (low + high) // 2
                tried = _stages(moves, asked, kept, middle)
                if 1 - road.misses(tried) >= assurance:
                    high = middle
                else:
                    low = middle
            stages = _stages(moves, asked, kept, high)
            best = RoadPlan(name, 1 - road.misses(stages), high, kept, asked, stages)
    return best


def _stages(
    moves: Sequence[Move], asked: Sequence[Demand], kept: int, plants: int
) -> tuple[Stage, ...]:
    found = []
    for at, move in enumerate(moves):
        row = plants if at == 0 else max(1, plants // kept)
        demand = asked[at] if at < len(asked) else Demand()
        found.append(Stage(move, row, demand, kept if at == 0 else 1))
    return tuple(found)


__all__ += ["usual_roads"]
