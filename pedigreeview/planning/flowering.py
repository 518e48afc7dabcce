"""Whether two plants flower at the same time, from recorded first and last flowers.

Seasons that both were recorded in are compared day by day; else the usual days of each over its own
seasons.  A clone flowers as its original: their records are one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.dates import earliest, is_date, latest
from pedigreeview.planning.merit import genotype_of

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["Flowering", "flowering_of"]

FloatArray = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Flowering:
    """Flowering of n candidates.

    years : the seasons on record
    first, last : (n, years) day of the year of the first and last flower, NaN = not recorded
    """

    years: tuple[int, ...]
    first: FloatArray
    last: FloatArray

    def overlap(self, one: NDArray[np.int64], other: NDArray[np.int64]) -> FloatArray:
        """Days on which both of each pair flower: (pairs,); below 0 the days between, NaN unknown.

        The mean over the seasons in which both were recorded, else that of their usual days.
        """
        sums, seasons = np.zeros(len(one)), np.zeros(len(one))
        for at in range(len(self.years)):
            days = _days(self.first[:, at], self.last[:, at], one, other)
            known = ~np.isnan(days)
            sums[known] += days[known]
            seasons += known
        usual = _days(_mean(self.first), _mean(self.last), one, other)
        return np.divide(sums, seasons, out=usual, where=seasons > 0)


def _days(
    first: FloatArray, last: FloatArray, one: NDArray[np.int64], other: NDArray[np.int64]
) -> FloatArray:
    start = np.maximum(first[one], first[other])
    end = np.minimum(last[one], last[other])
    return np.where(end >= start, end - start + 1, end - start)


def _mean(days: FloatArray) -> FloatArray:
    known = ~np.isnan(days)
    count = known.sum(axis=1)
    sums = np.where(known, days, 0.0).sum(axis=1)
    return np.divide(sums, count, out=np.full(len(days), np.nan), where=count > 0)


def flowering_of(net: PedigreeNetwork, codes: Sequence[str]) -> Flowering:
    """First and last flowers of candidates; dates that stop at the year say nothing here."""
    held: dict[str, list[tuple[int, float, float]]] = {}
    for bloom in net.book.blooms:
        written = (bloom.first_flower, bloom.last_flower)
        if bloom.plant not in net or not all(is_date(t) and len(t) > 4 for t in written):
            continue
        start, end = earliest(written[0]), latest(written[1])
        day = start.timetuple().tm_yday
        # A season may run over the new year.
        length = (end - start).days
        if length >= 0:
            season = (start.year, float(day), float(day + length))
            held.setdefault(genotype_of(net, bloom.plant), []).append(season)
    years = sorted({season[0] for seasons in held.values() for season in seasons})
    place = {year: at for at, year in enumerate(years)}
    first = np.full((len(codes), len(years)), np.nan)
    last = first.copy()
    for at, code in enumerate(codes):
        for year, start_day, end_day in held.get(genotype_of(net, code), ()):
            column = place[year]
            first[at, column] = np.fmin(first[at, column], start_day)
            last[at, column] = np.fmax(last[at, column], end_day)
    return Flowering(tuple(years), first, last)
