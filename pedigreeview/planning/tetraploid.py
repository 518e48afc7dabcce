"""Tetraploids, one locus: doses of the wanted allele, with double reduction.

A plant is its dose 0 to 4 (nulliplex to quadruplex), a distribution an array of five Fractions.
With double reduction α a gamete carries twice the same copy with probability α, else two of the
four drawn at random (Haldane 1930, from memory; gametes 1:4:1 of a duplex: Helms, autotetraploids
part II, read).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import comb

from pedigreeview.planning.targets import Share

__all__ = ["DoseChances", "dose_gametes", "doses_crossed", "doses_of", "doses_selfed"]

_NAMES = ("nulliplex", "simplex", "duplex", "triplex", "quadruplex")


def dose_gametes(dose: int, double_reduction: Share = Fraction(0)) -> tuple[Share, Share, Share]:
    """Chances of gametes with 0, 1 and 2 wanted alleles, of a plant with 0 to 4.

    Raises
    ------
    ValueError : a dose outside 0 to 4, double reduction outside 0 to 1/6 (of chromatids: 1/7)
    """
    if not 0 <= dose <= 4:
        raise ValueError("a tetraploid carries 0 to 4 wanted alleles")
    if not 0 <= double_reduction <= Fraction(1, 6) + Fraction(1, 10**9):
        raise ValueError("double reduction lies from 0 to 1/6")
    drawn = [Fraction(comb(dose, k) * comb(4 - dose, 2 - k), 6) for k in range(3)]
    twice = [Fraction(4 - dose, 4), Fraction(0), Fraction(dose, 4)]
    a = double_reduction
    none, one, two = ((1 - a) * d + a * t for d, t in zip(drawn, twice, strict=True))
    return none, one, two


def _gametes(plants: Sequence[Share], double_reduction: Share) -> list[Share]:
    each = [dose_gametes(dose, double_reduction) for dose in range(5)]
    return [sum(p * g[k] for p, g in zip(plants, each, strict=True)) for k in range(3)]


def doses_of(dose: int) -> tuple[Share, ...]:
    """The distribution of one plant of known dose."""
    if not 0 <= dose <= 4:
        raise ValueError("a tetraploid carries 0 to 4 wanted alleles")
    return tuple(Fraction(int(dose == k)) for k in range(5))


def doses_crossed(
    seed: Sequence[Share], pollen: Sequence[Share], double_reduction: Share = Fraction(0)
) -> tuple[Share, ...]:
    """Doses 0 to 4 of the progeny of two distributions of plants."""
    of_seed, of_pollen = _gametes(seed, double_reduction), _gametes(pollen, double_reduction)
    found: list[Share] = [Fraction(0)] * 5
    for i, a in enumerate(of_seed):
        for j, b in enumerate(of_pollen):
            found[i + j] += a * b
    return tuple(found)


def doses_selfed(
    plants: Sequence[Share], double_reduction: Share = Fraction(0), times: int = 1
) -> tuple[Share, ...]:
    """Doses 0 to 4 after selfings, each plant selfed on its own."""
    held: tuple[Share, ...] = tuple(plants)
    for _ in range(times):
        found: list[Share] = [Fraction(0)] * 5
        for dose, share in enumerate(held):
            if share:
                own = doses_crossed(doses_of(dose), doses_of(dose), double_reduction)
                found = [x + share * y for x, y in zip(found, own, strict=True)]
        held = tuple(found)
    return held


@dataclass(frozen=True, slots=True)
class DoseChances:
    """Doses of the progeny, and what shows.

    doses : chances of 0 to 4 wanted alleles
    """

    doses: tuple[Share, ...]

    @property
    def shows_dominant(self) -> Share:
        """Chance of one wanted allele or more."""
        return 1 - self.doses[0]

    @property
    def shows_recessive(self) -> Share:
        """Chance of all four."""
        return self.doses[4]

    def sentence(self) -> str:
        """The doses in words, those that occur."""
        said = [f"{name} {float(x):.3g}" for name, x in zip(_NAMES, self.doses, strict=True) if x]
        return f"Doses among the progeny: {', '.join(said)}."


def dose_distribution(
    seed: int, pollen: int, ploidy: int, double_reduction: Share = Fraction(0)
) -> tuple[Share, ...]:
    """Chances of 0 to `ploidy` copies among the progeny of two plants of known copies.

    Parameters
    ----------
    ploidy : 2 or 4; double reduction counts at 4 alone

    Raises
    ------
    ValueError : another ploidy, or more copies than it has
    """
    if ploidy == 4:
        return doses_crossed(doses_of(seed), doses_of(pollen), double_reduction)
    if ploidy != 2 or not {seed, pollen} <= {0, 1, 2}:
        raise ValueError("copies of an allele are followed in plants of 2x and 4x")
    a, b = Fraction(seed, 2), Fraction(pollen, 2)
    return (1 - a) * (1 - b), a * (1 - b) + b * (1 - a), a * b


__all__ += ["dose_distribution"]


def doses_by_scheme(
    seed: int,
    pollen: int,
    moves: Sequence[str],
    *,
    recurrent: int | None = None,
    tester: int = 0,
    double_reduction: Share = Fraction(0),
) -> DoseChances:
    """Doses after a first cross and moves of a scheme (`schemes.Scheme.moves`).

    Parameters
    ----------
    seed, pollen : copies of the wanted allele that the parents carry
    moves : 'self', 'back', 'test', 'sib' (two F1 plants) or 'double' (a doubled gamete)
    recurrent : copies of the parent of backcrosses; None: the seed parent's
    tester : copies of the plant of a test cross, 0 for a wanted dominant, 4 for a recessive

    Raises
    ------
    ValueError : another move, or sibs mated more than once
    """
    plants = doses_crossed(doses_of(seed), doses_of(pollen), double_reduction)
    back = doses_of(seed if recurrent is None else recurrent)
    if list(moves).count("sib") > 1:
        raise ValueError("sibs of a tetraploid are followed through one mating")
    for move in moves:
        if move == "self":
            plants = doses_selfed(plants, double_reduction)
        elif move == "back":
            plants = doses_crossed(plants, back, double_reduction)
        elif move == "test":
            plants = doses_crossed(plants, doses_of(tester), double_reduction)
        elif move == "sib":
            # Parents are known exactly, so two F1 sibs are independent.
            plants = doses_crossed(plants, plants, double_reduction)
        elif move == "double":
            none, one, two = _gametes(plants, double_reduction)
            plants = (none, Fraction(0), one, Fraction(0), two)
        else:
            raise ValueError(f"there is no move {move!r}")
    return DoseChances(plants)


__all__ += ["doses_by_scheme"]
