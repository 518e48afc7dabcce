"""Whether two directions of a cross took differently, with the honesty small counts need."""

from __future__ import annotations

from dataclasses import dataclass

__all__ = ["TakeDifference", "compare_takes"]

_FEW = 42
"""Flowers a side that tell a take of 60% from one of 30% at 80% power (normal formula)."""


@dataclass(frozen=True, slots=True)
class TakeDifference:
    """The takes of two directions and how far a difference between them is shown.

    takes : fruits per flower of each direction
    p : two-sided p of Fisher's exact test on the 2x2 table of flowers that took or did not
    verdict : 'differs', 'too few to tell' or 'no difference shown'
    """

    takes: tuple[float, float]
    p: float
    verdict: str


def compare_takes(fruits: tuple[int, int], flowers: tuple[int, int]) -> TakeDifference | None:
    """Compare the takes of two directions; None where a direction has no flower worked.

    Flowers of one plant on one day are not independent, so p is at best a guide.

    Raises
    ------
    ValueError : more fruits than flowers
    """
    from scipy.stats import fisher_exact

    if any(took > worked or took < 0 for took, worked in zip(fruits, flowers, strict=True)):
        raise ValueError("more fruits than flowers")
    if 0 in flowers:
        return None
    table = [[took, worked - took] for took, worked in zip(fruits, flowers, strict=True)]
    p = float(fisher_exact(table).pvalue)
    if p < 0.05:
        verdict = "differs"
    else:
        verdict = "too few to tell" if min(flowers) < _FEW else "no difference shown"
    return TakeDifference((fruits[0] / flowers[0], fruits[1] / flowers[1]), p, verdict)
