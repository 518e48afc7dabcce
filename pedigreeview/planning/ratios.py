"""Segregation ratios: those with a name, and those computed from the parents' genotypes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from math import gcd, lcm
from typing import Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning import passing_on
from pedigreeview.planning.targets import Share
from pedigreeview.planning.tetraploid import doses_crossed, doses_of, doses_selfed

__all__ = ["NAMED_RATIOS", "Ratio", "named_ratios", "ratio_of_doses", "ratio_of_parents"]


@dataclass(frozen=True, slots=True)
class Ratio:
    """Expected shares of classes, in the order in which they are counted.

    parts : whole numbers or fractions, each above 0
    meaning : what would give it, in words
    classes : names of the classes, or empty
    ploidy : of the plants among which it is looked for
    """

    parts: tuple[Share, ...]
    meaning: str = ""
    classes: tuple[str, ...] = ()
    ploidy: int = 2

    def __post_init__(self) -> None:
        if len(self.parts) < 2 or min(self.parts) <= 0:
            raise ValueError("a ratio has two parts or more, each above 0")

    @property
    def shares(self) -> tuple[float, ...]:
        """The parts as shares that sum to 1."""
        whole = sum(self.parts)
        return tuple(float(part / whole) for part in self.parts)

    @property
    def name(self) -> str:
        """'9:3:3:1'; shares in per cent where they are no small whole numbers."""
        whole = _whole(self.parts)
        if whole is not None:
            return ":".join(map(str, whole))
        return ":".join(f"{100 * share:.3g}" for share in self.shares) + " (per cent)"


def _whole(parts: Sequence[Share]) -> tuple[int, ...] | None:
    if not all(isinstance(part, int | Fraction) for part in parts):
        return None
    exact = [Fraction(part) for part in parts]
    scale = lcm(*(part.denominator for part in exact))
    counts = [int(part * scale) for part in exact]
    shared = gcd(*counts)
    counts = [count // shared for count in counts]
    return tuple(counts) if max(counts) <= 9999 else None


def _r(meaning: str, *parts: int) -> Ratio:
    return Ratio(parts, meaning)


def _r4(meaning: str, *parts: int) -> Ratio:
    return Ratio(parts, f"tetraploid, {meaning}", ploidy=4)


NAMED_RATIOS: tuple[Ratio, ...] = (
    _r("one gene, dominant, selfed", 3, 1),
    _r("one gene, test cross or backcross", 1, 1),
    _r("two genes that both are needed, selfed", 9, 7),
    _r("two genes of which one is enough, selfed", 15, 1),
    _r("a dominant gene and one that hides it, selfed", 13, 3),
    _r("three genes that all are needed, selfed", 27, 37),
    _r("three genes of which one is enough, selfed", 63, 1),
    _r("one gene, dominant, F3 grown from all F2 plants", 5, 3),
    _r4("duplex selfed", 35, 1),
    _r4("duplex in a test cross", 5, 1),
    _r4("duplex × simplex", 11, 1),
    _r4("simplex selfed", 3, 1),
    _r4("simplex in a test cross", 1, 1),
    _r4("duplex selfed, double reduction 1/7", 187, 9),
    _r("one gene, heterozygotes told apart, selfed", 1, 2, 1),
    _r("two genes, one hides the other's dominant, selfed", 12, 3, 1),
    _r("two genes, one hides the other's recessive, selfed", 9, 3, 4),
    _r("two genes of equal effect, both add, selfed", 9, 6, 1),
    _r4("simplex selfed, doses told apart", 1, 2, 1),
    _r("two genes, dominant, selfed", 9, 3, 3, 1),
    _r("two genes, test cross", 1, 1, 1, 1),
    _r("two genes, one selfed and one backcrossed", 3, 3, 1, 1),
    _r("two genes, heterozygotes of one told apart, selfed", 3, 6, 3, 1, 2, 1),
    _r4("duplex selfed, doses told apart", 1, 8, 18, 8, 1),
    _r("three genes, dominant, selfed", 27, 9, 9, 9, 3, 3, 3, 1),
)
"""Ratios with a name (standard genetics; from memory where no check value stands in the tests)."""


def named_ratios(classes: int, ploidy: int = 2) -> list[Ratio]:
    """The named ratios with so many classes, of plants of that ploidy."""
    return [r for r in NAMED_RATIOS if len(r.parts) == classes and r.ploidy == ploidy]


def ratio_of_parents(
    seed: NDArray[Any],
    pollen: NDArray[Any] | None,
    shows: Sequence[Sequence[str]],
    *,
    recombination: Sequence[Share] | None = None,
    classes: Iterable[tuple[str, ...]] | None = None,
) -> Ratio:
    """The ratio among the progeny of two parents (or of one selfed).

    Parameters
    ----------
    seed, pollen : (4,) * n, distributions of the parents (`targets.from_copies`); pollen None:
        the seed parent selfed
    shows : for each locus what 0, 1 and 2 copies of the followed allele look like, three words
    recombination : between neighbours; None: unlinked
    classes : order of the classes; None: the commonest first

    Raises
    ------
    ValueError : all progeny look alike, so that there is no ratio
    """
    n = seed.ndim
    r = [Fraction(1, 2)] * (n - 1) if recombination is None else list(recombination)
    if any(not isinstance(x, Fraction | int) for x in r):
        seed, pollen = seed.astype(float), None if pollen is None else pollen.astype(float)
    if pollen is None:
        plants = passing_on.selfed(seed, r)
    else:
        plants = passing_on.crossed(passing_on.gametes(seed, r), passing_on.gametes(pollen, r))
    found: dict[tuple[str, ...], Any] = {}
    for place in product(range(4), repeat=n):
        share = plants[place]
        if share:
            words = tuple(shows[at][(0, 1, 1, 2)[i]] for at, i in enumerate(place))
            found[words] = found.get(words, 0) + share
    if len(found) < 2:
        raise ValueError("all progeny of these parents look alike")
    # In a tie the class of the words that come first in the list of each locus stands first.
    rank = [{word: -at for at, word in enumerate(words)} for words in shows]
    order = sorted(found, key=lambda w: (-found[w], [rank[at][x] for at, x in enumerate(w)]))
    if classes is not None:
        order = list(classes)
    parts = tuple(_plain(found.get(words, 0)) for words in order)
    return Ratio(parts, "computed from the parents", tuple(" ".join(words) for words in order))


def _plain(value: Any) -> Share:
    return value if isinstance(value, Fraction) else float(value)


def ratio_of_doses(
    seed: int, pollen: int | None = None, *, double_reduction: Share = Fraction(0)
) -> Ratio:
    """Shown to not shown of a dominant among the progeny of two tetraploids (or of one selfed).

    seed, pollen : copies of the dominant allele, 0 to 4

    Raises
    ------
    ValueError : all progeny look alike
    """
    if pollen is None:
        doses = doses_selfed(doses_of(seed), double_reduction)
    else:
        doses = doses_crossed(doses_of(seed), doses_of(pollen), double_reduction)
    if not 0 < doses[0] < 1:
        raise ValueError("all progeny of these parents look alike")
    return Ratio((1 - doses[0], doses[0]), "computed from the parents' doses", ploidy=4)


def as_shares(parts: Sequence[Share]) -> NDArray[np.float64]:
    """Parts as an array of shares that sum to 1."""
    held = np.array([float(part) for part in parts])
    return held / held.sum()


__all__ += ["as_shares"]
