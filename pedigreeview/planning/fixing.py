"""How far selfing fixes a family, and how far backcrossing brings a parent back.

Every figure is an expectation over loci, or a chance at one; loci are taken as unlinked where more
than one is asked about.
"""

from __future__ import annotations

from math import ceil, log2

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import Rules

__all__ = [
    "backcrosses_until",
    "chance_all_fixed",
    "inbreeding_after",
    "recurrent_share",
    "recurrent_share_of",
    "segregating_share",
    "segregating_share_of",
    "selfings_until",
    "selfings_until_of",
    "variation_within",
]

_MOST_SELFINGS = 10_000
_ROUNDING = 1e-12


def inbreeding_after(
    selfings: int, *, inbreeding: float = 0.0, ploidy: int = 2, double_reduction: float = 0.0
) -> float:
    """F of a plant after selfings in a line of single plants, from a plant of inbreeding F₀.

    Parameters
    ----------
    selfings : 0 or more
    inbreeding : F₀, 0 to 1
    ploidy : even
    double_reduction : α, counts at ploidy 4 alone

    Notes
    -----
    Diploid: 1 − (½)^k (1 − F₀); else the self rule of `origins.Rules`, k times.
    """
    _check(selfings, inbreeding, ploidy)
    if ploidy == 2:
        return 1.0 - 0.5**selfings * (1.0 - inbreeding)
    return float(Rules(ploidy, double_reduction).selfed(inbreeding, selfings))


def segregating_share(
    selfings: int, *, inbreeding: float = 0.0, ploidy: int = 2, double_reduction: float = 0.0
) -> float:
    """Expected share of the loci of a plant that are still segregating after selfings: 1 − F.

    Parameters as in `inbreeding_after`.  Counted among the loci at which alleles that are not alike
    by descent differ (in an F1 of two lines: those at which the lines differ).  Above ploidy 2 it
    is the chance that two alleles of the plant at a locus differ.
    """
    return 1.0 - inbreeding_after(
        selfings, inbreeding=inbreeding, ploidy=ploidy, double_reduction=double_reduction
    )


def segregating_share_of(arrays: PedigreeArrays, row: int, selfings: int = 0) -> float:
    """Expected share of loci still segregating in a plant of the family after further selfings.

    The family is the selfed progeny of the row, or the row itself with 0 selfings; of a pool each
    member is selfed.
    """
    return segregating_share(
        selfings,
        inbreeding=float(arrays.inbreeding()[row]),
        ploidy=int(arrays.ploidy[row]),
        double_reduction=arrays.double_reduction,
    )


def variation_within(arrays: PedigreeArrays, row: int) -> float:
    """Chance that alleles of two different members of a pool are not alike by descent: 1 − θ.

    It counts what segregates between the members beside what segregates in each; of a single plant
    it is that of its selfed progeny, 1 − θ(i, i).
    """
    return 1.0 - float(arrays.self_coancestry()[row])


def selfings_until(
    fixation: float, *, inbreeding: float = 0.0, ploidy: int = 2, double_reduction: float = 0.0
) -> int:
    """Fewest selfings after which F is the chosen fixation or more.

    Parameters
    ----------
    fixation : 0 up to but without 1 (1 only for a plant that has it: selfing never gets there)

    Raises
    ------
    ValueError : a fixation that selfing does not reach, or an argument outside its range
    """
    _check(0, inbreeding, ploidy)
    if not 0 <= fixation <= 1 or (fixation == 1 and inbreeding < 1):
        raise ValueError("a fixation to reach by selfing lies from 0 to below 1")
    rules = Rules(ploidy, double_reduction)
    reached = inbreeding
    for selfings in range(_MOST_SELFINGS):
        if reached >= fixation - _ROUNDING * (1 - fixation):
            return selfings
        reached = float(rules.selfed(reached))
    raise ValueError("so high a fixation is not reached by selfing")


def selfings_until_of(arrays: PedigreeArrays, row: int, fixation: float) -> int:
    """Fewest selfings of a row after which its progeny have the chosen fixation or more."""
    return selfings_until(
        fixation,
        inbreeding=float(arrays.inbreeding()[row]),
        ploidy=int(arrays.ploidy[row]),
        double_reduction=arrays.double_reduction,
    )


def chance_all_fixed(loci: int, selfings: int) -> float:
    """Chance that a diploid plant is fixed at all of n loci after t selfings of a plant that
    segregates at each.

    Notes
    -----
    [(2^t − 1)/2^t]^n, unlinked loci (course on the backcross method, University of Nebraska; check
    S03).
    """
    _check(selfings, 0.0, 2)
    if loci < 0:
        raise ValueError("loci are 0 or more")
    return float((1.0 - 0.5**selfings) ** loci)


def recurrent_share(backcrosses: int) -> float:
    """Expected share of the recurrent parent after backcrosses of an F1: 1 − (½)^(n + 1).

    Source: as for `chance_all_fixed` (check B01).  Without selection, and unrelated parents.
    """
    if backcrosses < 0:
        raise ValueError("backcrosses are 0 or more")
    return 1.0 - 0.5 ** (backcrosses + 1)


def backcrosses_until(share: float) -> int:
    """Fewest backcrosses after which the recurrent parent has the chosen expected share."""
    if not 0 <= share < 1:
        raise ValueError("a share to reach by backcrossing lies from 0 to below 1")
    return max(0, ceil(-log2(1.0 - share) - _ROUNDING) - 1)


def recurrent_share_of(arrays: PedigreeArrays, row: int, recurrent: int) -> float:
    """Expected share of the alleles of a row that come from one of its ancestors (or itself: 1)."""
    return float(arrays.contributions([row])[recurrent, 0])


def _check(selfings: int, inbreeding: float, ploidy: int) -> None:
    if selfings < 0:
        raise ValueError("selfings are 0 or more")
    if not 0 <= inbreeding <= 1:
        raise ValueError("inbreeding lies from 0 to 1")
    if ploidy < 2 or ploidy % 2:
        raise ValueError("selfing has a rule for even ploidies alone")
