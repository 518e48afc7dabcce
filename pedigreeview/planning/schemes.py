"""The ways from two parents to the wanted plant: F2, F3 ..., backcross, test cross, doubled
haploids, sib mating; the chance of each plant to be a wanted one, by exact computation.

Nothing is selected on the way: a plant of the last generation stands for a random one.  Plans that
keep plants on the way are in `two_steps`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import prod
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning import passing_on
from pedigreeview.planning.targets import MOST_LOCI, Share, Target, from_copies

__all__ = [
    "ChancePerPlant",
    "Parent",
    "Scheme",
    "back_crossing",
    "chance_per_plant",
    "crossing_to_tester",
    "doubled_haploids",
    "population",
    "selfing",
    "sib_mating",
    "wanted_gamete_of_tester",
]

Table = NDArray[Any]
Parent = NDArray[Any] | Sequence[int]
"""Wanted alleles counted at each locus, or a distribution of genotypes."""
Side = Literal["seed", "pollen"]
Move = Literal["self", "back", "test", "double", "sib"]

_EXACT_LOCI = 4
_EXACT_SIB_LOCI = 2
_SIB_LOCI = 4


@dataclass(frozen=True, slots=True)
class Scheme:
    """A name and the moves after the first cross.

    moves : 'self', 'back' (to the recurrent parent), 'test' (to a plant recessive in all genes
        asked about), 'double' (doubled haploids), 'sib' (full sibs; only straight from the F1)
    recurrent : which of the two parents is the recurrent one
    """

    name: str
    moves: tuple[Move, ...]
    recurrent: Side = "seed"

    def __post_init__(self) -> None:
        sibs = [move == "sib" for move in self.moves]
        if any(sibs) and not all(sibs):
            raise ValueError("sib mating starts from the F1 and is not mixed with other moves")

    @property
    def seasons(self) -> int:
        """Generations to grow from the first cross on, the F1 among them."""
        return 1 + len(self.moves)


def _times(move: Move, times: int) -> tuple[Move, ...]:
    return tuple(move for _ in range(times))


def selfing(generation: int) -> Scheme:
    """F2, F3 ... by selfing each plant."""
    if generation < 2:
        raise ValueError("selfing leads to the F2 and on")
    return Scheme(f"F{generation}", _times("self", generation - 1))


def back_crossing(times: int, *, to: Side = "seed", selfings: int = 0) -> Scheme:
    """BC1F1 ..., with selfings after the last backcross."""
    if times < 1 or selfings < 0:
        raise ValueError("backcrosses are 1 or more, selfings 0 or more")
    moves = (*_times("back", times), *_times("self", selfings))
    return Scheme(f"BC{times}F{selfings + 1}", moves, to)


def crossing_to_tester() -> Scheme:
    """F1 × a plant that is recessive in all genes asked about."""
    return Scheme("test cross", ("test",))


def doubled_haploids(backcrosses: int = 0, *, to: Side = "seed") -> Scheme:
    """Doubled haploids of the F1, or of plants after backcrosses."""
    name = "doubled haploids" + (f" of BC{backcrosses}F1" if backcrosses else "")
    return Scheme(name, (*_times("back", backcrosses), "double"), to)


def sib_mating(times: int) -> Scheme:
    """Full sibs mated, starting with two F1 plants."""
    if times < 1:
        raise ValueError("sibs are mated once or more")
    noun = "sib mating" if times == 1 else "sib matings"
    return Scheme(f"{times} {noun}", _times("sib", times))


@dataclass(frozen=True, slots=True)
class ChancePerPlant:
    """The chance of each plant of a scheme.

    chance : of showing every wanted trait; a Fraction where it was kept exact
    fixed : of showing them and breeding true for them
    """

    scheme: Scheme
    chance: Share
    fixed: Share

    @property
    def already_fixed(self) -> float | None:
        """Chance that a plant that shows the traits breeds true for them; None if none shows."""
        return float(self.fixed / self.chance) if self.chance else None

    def sentence(self) -> str:
        """The chance in words, with what a kept plant is worth."""
        if not self.chance:
            return f"No plant by {self.scheme.name} from these parents shows all that is wanted."
        pure = self.already_fixed
        said = (
            f"By {self.scheme.name} a plant shows all that is wanted with a chance of "
            f"{share_words(self.chance)}"
        )
        if pure is None or pure >= 1:
            return f"{said}, and each that does breeds true for it."
        return f"{said}; of those that do, {100 * pure:.3g}% breed true for it already."


def share_words(share: Share) -> str:
    """'1 in 16', '1 in 7.1', '9 in 16' of a chance above 0."""
    if isinstance(share, Fraction) and share.denominator <= 256:
        return f"{share.numerator} in {share.denominator}"
    return f"1 in {float(1 / share):.3g}"


def wanted_gamete_of_tester(target: Target) -> Table:
    """(2,) * n: the gamete of a plant that is recessive in all genes asked about."""
    found = np.zeros((2,) * len(target.loci), object)
    recessive = {x for t in target.traits if t.rule == "recessive" for x in t.loci}
    found[...] = Fraction(0)
    found[tuple(int(locus in recessive) for locus in target.loci)] = Fraction(1)
    return found


def population(target: Target, scheme: Scheme, seed: Table, pollen: Table) -> Table:
    """(4,) * n: genotypes of the plants of a scheme, from parents of those distributions.

    Exact in Fractions where both parents and recombinations are and the loci are few, else doubles.

    Raises
    ------
    ValueError : more loci together than can be followed
    """
    n = len(target.loci)
    sibs = "sib" in scheme.moves
    if n > (_SIB_LOCI if sibs else MOST_LOCI):
        raise ValueError(f"{n} loci together are more than can be followed")
    r: Sequence[Share] = target.recombination
    few = _EXACT_SIB_LOCI if sibs else _EXACT_LOCI
    tester = wanted_gamete_of_tester(target)
    if n > few or not all(isinstance(x, Fraction | int) for x in r):
        r = [float(x) for x in r]
        seed, pollen, tester = (x.astype(float) for x in (seed, pollen, tester))
    sides = {"seed": passing_on.gametes(seed, r), "pollen": passing_on.gametes(pollen, r)}
    plants = passing_on.crossed(sides["seed"], sides["pollen"])
    if sibs:
        # F1 sibs of parents that are not known exactly share what those are; parents that are
        # told by copies alone are therefore taken one by one.
        return _sib_population(seed, pollen, r, len(scheme.moves))
    for move in scheme.moves:
        if move == "self":
            plants = passing_on.selfed(plants, r)
        elif move == "double":
            plants = passing_on.doubled(plants, r)
        else:
            other = tester if move == "test" else sides[scheme.recurrent]
            plants = passing_on.crossed(passing_on.gametes(plants, r), other)
    return plants


def _sib_population(seed: Table, pollen: Table, r: Sequence[Share], times: int) -> Table:
    found: Table | None = None
    for at in zip(*np.nonzero(seed), strict=True):
        for there in zip(*np.nonzero(pollen), strict=True):
            one, two = np.zeros_like(seed), np.zeros_like(pollen)
            one[at], two[there] = seed[at] ** 0, pollen[there] ** 0
            plants = passing_on.crossed(passing_on.gametes(one, r), passing_on.gametes(two, r))
            pairs = passing_on.pair_of(plants)
            for _ in range(times - 1):
                pairs = passing_on.sib_mated(pairs, r)
            last = passing_on.sib_of(passing_on.sib_mated(pairs, r)) * (seed[at] * pollen[there])
            found = last if found is None else found + last
    assert found is not None
    return found


def chance_per_plant(
    target: Target, scheme: Scheme, seed: Parent, pollen: Parent
) -> ChancePerPlant:
    """Chance of each plant of a scheme to show the target, and to be fixed for it.

    Parameters
    ----------
    seed, pollen : the parents over the target's loci: wanted alleles counted at each, or (4,) * n
        (`from_copies`, `from_haplotypes`; counts alone where loci are many)

    Notes
    -----
    Linkage groups that are independent and share no trait are followed apart and multiplied, so
    that many loci are exact too.
    """
    shown, fixed = [], []
    at = 0
    if any(len(part.loci) > MOST_LOCI for part in target.parts()):
        raise ValueError(f"at most {MOST_LOCI} loci that hang together can be followed")
    for part in target.parts():
        axes = range(at, at + len(part.loci))
        plants = population(part, scheme, _margin(seed, axes), _margin(pollen, axes))
        shown.append(_total(plants, part.shown()))
        fixed.append(_total(plants, part.fixed()))
        at += len(part.loci)
    return ChancePerPlant(scheme, prod(shown), prod(fixed))


def _margin(plant: Parent, axes: range) -> Table:
    if not isinstance(plant, np.ndarray):
        return from_copies([plant[at] for at in axes])
    others = tuple(axis for axis in range(plant.ndim) if axis not in axes)
    return np.asarray(plant.sum(axis=others)) if others else plant


def _total(plants: Table, where: NDArray[np.bool_]) -> Share:
    found = plants[where]
    if found.dtype == object:
        return sum(found.tolist(), Fraction(0))
    return min(1.0, float(found.sum()))
