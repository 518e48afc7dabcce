"""Linkage drag: how much of the donor stays around a gene that is kept through backcrosses.

Crossovers without interference.  On each side of the kept gene the donor piece reaches to the first
crossover in any of the t gametes that carried it on, so its length is exponential with rate t per
Morgan, cut at the end of the chromosome.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import exp, log, sqrt

from pedigreeview.planning.plants_needed import plants_needed
from pedigreeview.planning.targets import recombination_from_cM

__all__ = ["Drag", "drag_around", "flank_stays", "plants_for_recombinant"]


@dataclass(frozen=True, slots=True)
class Drag:
    """Donor pieces on the two sides of a kept gene after t backcrosses, in cM.

    left, right : expected lengths
    left_sd, right_sd : their standard deviations
    upper : the length of both together is below this in 19 of 20 plants, at most (each side's own
        97.5% point, added)
    whole_arm : chances that the left and the right arm are donor to the end
    """

    backcrosses: int
    left: float
    right: float
    left_sd: float
    right_sd: float
    upper: float
    whole_arm: tuple[float, float]

    @property
    def both(self) -> float:
        """Expected donor length around the gene, cM."""
        return self.left + self.right

    def sentence(self) -> str:
        """The drag in words."""
        noun = "backcross" if self.backcrosses == 1 else "backcrosses"
        return (
            f"After {self.backcrosses} {noun} about {self.both:.3g} cM of the donor are expected "
            f"to stay around the kept gene ({self.left:.3g} on one side, {self.right:.3g} on the "
            f"other), and seldom more than {self.upper:.3g}."
        )


def _side(t: int, arm: float) -> tuple[float, float]:
    """Mean and standard deviation, Morgans, of min(Exponential(t), arm)."""
    if arm == 0:
        return 0.0, 0.0
    stays = exp(-t * arm)
    mean = (1 - stays) / t
    square = 2 * (1 - stays * (1 + t * arm)) / t**2
    return mean, sqrt(max(0.0, square - mean**2))


def _point(t: int, arm: float, p: float) -> float:
    return min(arm, -log(1 - p) / t)


def drag_around(backcrosses: int, length: float, position: float) -> Drag:
    """Donor pieces around a gene at `position` cM of a chromosome of `length` cM.

    Raises
    ------
    ValueError : no backcross, or a gene outside its chromosome

    Notes
    -----
    Each side (1 − e^(−t·l)) / t Morgans for an arm of l (Hanson 1959, Stam and Zeven 1981, both
    from memory).
    """
    if backcrosses < 1 or not 0 <= position <= length:
        raise ValueError("backcrosses are 1 or more, and the gene lies on its chromosome")
    arms = position / 100, (length - position) / 100
    (left, left_sd), (right, right_sd) = (_side(backcrosses, arm) for arm in arms)
    upper = sum(_point(backcrosses, arm, 0.975) for arm in arms)
    whole = (exp(-backcrosses * arms[0]), exp(-backcrosses * arms[1]))
    return Drag(
        backcrosses,
        100 * left,
        100 * right,
        100 * left_sd,
        100 * right_sd,
        100 * upper,
        whole,
    )


def flank_stays(backcrosses: int, distance: float) -> float:
    """Chance that a donor allele `distance` cM from the kept gene is still there: (1 − r)^t."""
    if backcrosses < 0:
        raise ValueError("backcrosses are 0 or more")
    return (1 - recombination_from_cM(distance)) ** backcrosses


def plants_for_recombinant(distance: float, *, assurance: float = 0.95) -> int:
    """Plants of one backcross to grow for one that keeps the gene and lost an allele so far off.

    Half of the plants keep the gene; of those the share r is recombinant.
    """
    if distance <= 0:
        raise ValueError("a distance lies above 0 cM")
    return plants_needed(recombination_from_cM(distance) / 2, assurance=assurance)
