"""Off-types: how many a row may show, how many plants to look at, what none in so many means."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, log

__all__ = [
    "OffTypeRow",
    "OffTypes",
    "judge_off_types",
    "off_type_table",
    "off_types_allowed",
    "plants_to_trust",
    "upper_bound",
]


def off_types_allowed(plants: int, *, standard: float = 0.01, acceptance: float = 0.95) -> int:
    """Most off-types that so many plants may show, if a variety with the standard's share of them
    shall be accepted with that probability: the acceptance point of the binomial distribution.

    Source: the rule of plant-variety tests for uniformity (Understanding plant breeder's rights:
    uniform, read): 1% and 95% allow 0 in 1–5, 1 in 6–35, 2 in 36–82, 3 in 83–137.
    """
    from scipy.stats import binom

    if plants < 0 or not 0 < standard < 1 or not 0 < acceptance < 1:
        raise ValueError("plants are 0 or more, shares lie between 0 and 1")
    return int(binom.ppf(acceptance, plants, standard)) if plants else 0


@dataclass(frozen=True, slots=True)
class OffTypeRow:
    """From `low` to `high` plants so many off-types are allowed."""

    allowed: int
    low: int
    high: int


def off_type_table(
    most: int = 137, *, standard: float = 0.01, acceptance: float = 0.95
) -> list[OffTypeRow]:
    """The table of allowed off-types up to so many plants; the last row may be cut there."""
    found: list[OffTypeRow] = []
    for plants in range(1, most + 1):
        allowed = off_types_allowed(plants, standard=standard, acceptance=acceptance)
        if found and found[-1].allowed == allowed:
            found[-1] = OffTypeRow(allowed, found[-1].low, plants)
        else:
            found.append(OffTypeRow(allowed, plants, plants))
    return found


def upper_bound(off_types: int, plants: int, *, confidence: float = 0.95) -> float:
    """Largest share of off-types that fits so few seen (Clopper and Pearson, one-sided)."""
    from scipy.stats import beta

    if not 0 <= off_types <= plants:
        raise ValueError("off-types are among the plants looked at")
    if off_types == plants:
        return 1.0
    return float(beta.ppf(confidence, off_types + 1, plants - off_types))


def plants_to_trust(share: float, *, confidence: float = 0.95) -> int:
    """Plants to look at without one off-type to trust that their share is below `share`."""
    if not 0 < share < 1 or not 0 < confidence < 1:
        raise ValueError("shares lie between 0 and 1")
    return ceil(log(1 - confidence) / log(1 - share) - 1e-12)


@dataclass(frozen=True, slots=True)
class OffTypes:
    """Off-types of a row and what they mean.

    allowed : by the standard; bound : upper bound of their share
    enough : plants without an off-type that would show a share below `wanted`
    strays : outcrosses and volunteers of the row, which count neither as off-types nor as plants
    """

    seen: int
    plants: int
    allowed: int
    bound: float
    wanted: float
    enough: int
    strays: int = 0

    @property
    def uniform(self) -> bool:
        """Whether no more were seen than the standard allows."""
        return self.seen <= self.allowed

    def sentences(self) -> list[str]:
        """What was seen, what it may still hide, how many to look at."""
        if self.plants == 0:
            return ["No plant of it has been looked at."]
        beside = {0: "", 1: " (1 outcross or stray)"}.get(
            self.strays, f" ({self.strays} outcrosses or strays)"
        )
        none = "No off-type" if self.seen == 0 else f"{self.seen} off-type{'s' * (self.seen > 1)}"
        noun = "plant" if self.plants == 1 else "plants"
        found = [
            f"{none} in {self.plants} {noun}{beside}: up to {100 * self.bound:.2g}% may still be "
            "off-types (95% bound)."
        ]
        if not self.uniform:
            found.append(f"That is more than the {self.allowed} allowed where 1% is tolerated.")
        if self.bound > self.wanted:
            found.append(
                f"To trust that fewer than {100 * self.wanted:g}% are, look at {self.enough} "
                "plants and see none."
            )
        return found


def judge_off_types(seen: int, plants: int, *, wanted: float = 0.05, strays: int = 0) -> OffTypes:
    """Off-types seen among so many plants of a row, its `strays` counted in neither."""
    return OffTypes(
        seen,
        plants,
        off_types_allowed(plants),
        upper_bound(seen, plants) if plants else 1.0,
        wanted,
        plants_to_trust(wanted),
        strays,
    )
