"""Progeny tests: telling a carrier from a plant that breeds true by growing its seed.

A carrier of a recessive, selfed, gives a recessive seedling with chance 1/4 (crossed to a recessive
plant: 1/2); a plant that breeds true gives none.  So one recessive seedling proves the carrier, and
so many without one leave its chance small.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil, log

from pedigreeview.planning.plants_needed import plants_needed

__all__ = ["FamiliesNeeded", "ProgenyTest", "carrier_chance", "families_needed", "progeny_test"]

SELFED = Fraction(1, 4)
TEST_CROSSED = Fraction(1, 2)
_PRIOR = Fraction(2, 3)


@dataclass(frozen=True, slots=True)
class ProgenyTest:
    """Seedlings to grow of one plant.

    shows : chance of a seedling of a carrier to show the recessive
    plants : smallest number that leaves a carrier unseen with at most 1 − assurance
    unseen : chance that a carrier shows nothing in so many
    still_carrier : chance that a plant whose seedlings showed nothing is a carrier all the same
    """

    shows: Fraction
    assurance: float
    plants: int
    unseen: float
    still_carrier: float

    def sentence(self) -> str:
        """The test in words."""
        return (
            f"Grow {self.plants} seedlings of each plant: a carrier shows itself with "
            f"{100 * (1 - self.unseen):.3g}%, and a plant without one recessive seedling is still "
            f"a carrier with {100 * self.still_carrier:.3g}%."
        )


def carrier_chance(
    seedlings: int, *, prior: Fraction = _PRIOR, shows: Fraction = SELFED
) -> Fraction:
    """Chance that a plant is a carrier after seedlings without a recessive one (Bayes).

    prior : 2/3 for an F2 plant that shows the dominant
    """
    if seedlings < 0 or not 0 <= prior <= 1 or not 0 < shows < 1:
        raise ValueError("seedlings are 0 or more, chances lie between 0 and 1")
    hidden = prior * (1 - shows) ** seedlings
    return hidden / (hidden + 1 - prior) if hidden + 1 - prior else Fraction(1)


def progeny_test(
    *, shows: Fraction = SELFED, assurance: float = 0.95, prior: Fraction = _PRIOR
) -> ProgenyTest:
    """Seedlings needed so that a carrier shows itself with that assurance."""
    plants = plants_needed(float(shows), assurance=assurance)
    unseen = float((1 - shows) ** plants)
    still = float(carrier_chance(plants, prior=prior, shows=shows))
    return ProgenyTest(shows, assurance, plants, unseen, still)


@dataclass(frozen=True, slots=True)
class FamiliesNeeded:
    """Plants to test so that one that breeds true is among them, and found.

    fixed : chance of a kept plant to breed true already
    families : plants whose seed is grown
    test : the test of each
    seedlings : all families together
    """

    fixed: Fraction
    families: int
    test: ProgenyTest
    seedlings: int

    def sentence(self) -> str:
        """The plan in words."""
        return (
            f"Each kept plant breeds true with {100 * float(self.fixed):.3g}%: test "
            f"{self.families} of them with {self.test.plants} seedlings each, {self.seedlings} in "
            f"all, to hold one that breeds true with {100 * self.test.assurance:g}% assurance."
        )


def families_needed(
    fixed: Fraction = Fraction(1, 3),
    *,
    wanted: int = 1,
    shows: Fraction = SELFED,
    assurance: float = 0.95,
) -> FamiliesNeeded:
    """Families to grow so that `wanted` fixed ones are among them, each told by `progeny_test`.

    fixed : chance that a kept plant breeds true (`ChancePerPlant.already_fixed`; 1/3 in an F2)
    shows : chance of a seedling of the hardest carrier to show itself
    """
    families = (
        ceil(wanted)
        if fixed >= 1
        else plants_needed(float(fixed), wanted=wanted, assurance=assurance)
    )
    test = progeny_test(shows=shows, assurance=assurance, prior=1 - fixed)
    return FamiliesNeeded(fixed, families, test, families * test.plants)


def seedlings_for(
    still_carrier: float, *, prior: Fraction = _PRIOR, shows: Fraction = SELFED
) -> int:
    """Seedlings without a recessive one after which a carrier is no likelier than that."""
    if not 0 < still_carrier < 1:
        raise ValueError("a chance lies between 0 and 1")
    if prior <= still_carrier:
        return 0
    odds = float(prior / (1 - prior)) if prior < 1 else float("inf")
    if odds == float("inf"):
        raise ValueError("a plant that is a carrier for certain stays one")
    return ceil(log(still_carrier / (1 - still_carrier) / odds) / log(float(1 - shows)) - 1e-12)


__all__ += ["SELFED", "TEST_CROSSED", "seedlings_for"]
