"""Coefficients as exact fractions.

Two ways lead there.  Where every weight and fixation is a short binary fraction and the pedigree is
not too deep, the doubles of the engine are exact, because no step of theirs had to round; how many
binary places a row's coancestries can need is followed from row to row.  Elsewhere (polysomic
inheritance, decimal fixations, deeper pedigrees) the coefficients of the ancestors concerned are
computed again in `fractions.Fraction` by the tabular method (Emik & Terrill 1949, from memory).

No fraction is given where odds are decimal (0.3 has no exact meaning as odds), or where the
denominator passes 2**60, or where the ancestors are too many for the second way.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, inf

from pedigreeview.network.arrays import UNKNOWN, Origin, PedigreeArrays, Row, gamete_share

__all__ = ["LARGEST_DENOMINATOR", "ExactCoefficients", "as_fraction"]

LARGEST_DENOMINATOR = 2**60
_MOST_ANCESTORS = 400
_DOUBLE_PLACES = 50


def as_fraction(value: float) -> Fraction:
    """The number that a person wrote: 0.9 is 9/10, not the nearest double."""
    return Fraction(repr(float(value)))


def _places(value: Fraction) -> float:
    """Binary places of a fraction; infinite if it has no finite binary form."""
    denominator = value.denominator
    return denominator.bit_length() - 1 if denominator & (denominator - 1) == 0 else inf


class ExactCoefficients:
    """Exact coefficients of one set of arrays, made as they are asked for."""

    def __init__(self, arrays: PedigreeArrays) -> None:
        self._arrays = arrays
        self._alpha = as_fraction(arrays.double_reduction)
        self._half_places: list[float] = []
        self._decimal: list[bool] = []
        of_inbreeding: list[float] = []
        for row in arrays.rows:
            half, inbreeding, decimal = self._follow(row, of_inbreeding)
            self._half_places.append(half)
            of_inbreeding.append(inbreeding)
            self._decimal.append(decimal)
        self._table: dict[int, dict[int, Fraction]] = {}
        self._exact_inbreeding: dict[int, Fraction] = {}

    def _follow(self, row: Row, of_inbreeding: list[float]) -> tuple[float, float, bool]:
        """Half the binary places of θ(i, i), places of F, and whether decimal odds are behind it.

        θ of rows i and j needs at most half_i + half_j places.
        """
        older = [(index, as_fraction(weight)) for index, weight in row.weights()]
        odds = [as_fraction(share) for _, share in row.pollen]
        decimal = any(_places(share) == inf for share in odds) or any(
            self._decimal[index] for index, _ in older
        )
        if row.origin is Origin.FOUNDER:
            inbreeding = _places(as_fraction(row.fixation or 0.0))
        elif row.ploidy != 2 or decimal:
            return inf, inf, decimal
        elif row.origin in (Origin.MEMBER, Origin.CLONE):
            inbreeding = of_inbreeding[row.seed]
        elif row.origin is Origin.SELF:
            inbreeding = 1 + of_inbreeding[row.seed]
        elif row.origin is Origin.SIB:
            inbreeding = 2 * self._half_places[row.seed]
        elif row.origin is Origin.CROSS:
            seed = self._half_places[row.seed] if row.seed != UNKNOWN else 0.0
            own = 1 + of_inbreeding[row.seed] if row.seed != UNKNOWN else 0.0
            inbreeding = max(
                (
                    max(seed + self._half_places[parent], own if parent == row.seed else 0.0)
                    + _places(share)
                    for (parent, _), share in zip(row.pollen, odds, strict=True)
                ),
                default=0.0,
            )
        elif row.origin is Origin.FATHER:
            inbreeding = max(
                2 * self._half_places[parent] + _places(share)
                for (parent, _), share in zip(row.pollen, odds, strict=True)
            )
        else:
            inbreeding = 0.0
        inbreeding += row.selfings
        if row.fixation is not None:
            inbreeding = max(inbreeding, _places(as_fraction(row.fixation)))
        if row.ploidy != 2:
            return inf, inf, decimal
        by_weights = max(
            (self._half_places[index] + _places(weight) for index, weight in older), default=0.0
        )
        itself = (1 + inbreeding) / 2
        half = max(by_weights, itself)
        return (half if half == inf else float(ceil(half))), inbreeding, decimal

    def _in_doubles(self, a: int, b: int) -> bool:
        return self._half_places[a] + self._half_places[b] <= _DOUBLE_PLACES

    def inbreeding(self, row: int) -> Fraction | None:
        """F of a row, or None where no fraction is given."""
        if self._decimal[row]:
            return None
        if self._in_doubles(row, row):
            return Fraction(float(self._arrays.inbreeding[row]))
        return self._short(self._exact_inbreeding[row]) if self._fill(row) else None

    def coancestry(self, a: int, b: int, double: float) -> Fraction | None:
        """θ of two rows (two members, for a pool with itself); `double` is the engine's value."""
        if self._decimal[a] or self._decimal[b]:
            return None
        if self._in_doubles(a, b):
            return Fraction(double)
        if not self._fill(a, b):
            return None
        return self._short(self._table[max(a, b)][min(a, b)])

    def contribution(self, row: int) -> Fraction | None:
        """θ(i, i) of a row, or None where no fraction is given."""
        return self.coancestry(row, row, float(self._arrays.self_coancestry[row]))

    def decimal_odds(self, row: int) -> bool:
        """Whether odds without an exact meaning stand behind the row."""
        return self._decimal[row]

    def _short(self, value: Fraction) -> Fraction | None:
        return value if value.denominator <= LARGEST_DENOMINATOR else None

    def _fill(self, *asked: int) -> bool:
        """Extend the table of fractions over the ancestors of the asked rows; False if too many."""
        needed: set[int] = set()
        ahead = list(asked)
        while ahead:
            index = ahead.pop()
            if index not in needed:
                needed.add(index)
                if len(needed) > _MOST_ANCESTORS:
                    return False
                ahead.extend(parent for parent, _ in self._arrays.rows[index].weights())
        for index in sorted(needed):
            line = self._table.setdefault(index, {})
            row = self._arrays.rows[index]
            weights = [(parent, as_fraction(weight)) for parent, weight in row.weights()]
            for other in sorted(needed):
                if other >= index:
                    break
                if other not in line:
                    line[other] = sum(
                        (weight * self._at(parent, other) for parent, weight in weights),
                        Fraction(0),
                    )
            if index not in line:
                by_descent = sum((weight * line[parent] for parent, weight in weights), Fraction(0))
                line[index] = self._settled(index, row, by_descent)
        return True

    def _at(self, a: int, b: int) -> Fraction:
        return self._table[max(a, b)][min(a, b)]

    def _gametic(self, inbreeding: Fraction, ploidy: int) -> Fraction:
        alpha = self._alpha if ploidy == 4 else Fraction(0)
        return alpha + (1 - alpha) * inbreeding

    def _own(self, inbreeding: Fraction, ploidy: int) -> Fraction:
        return Fraction(1, ploidy) + (1 - Fraction(1, ploidy)) * inbreeding

    def _self_rule(self, inbreeding: Fraction, ploidy: int) -> Fraction:
        share = Fraction(gamete_share(ploidy)).limit_denominator(ploidy)
        return share * self._gametic(inbreeding, ploidy) + (1 - share) * self._own(
            inbreeding, ploidy
        )

    def _cross_rule(
        self, of_seed: Fraction, of_pollen: Fraction, between: Fraction, ploidy: int
    ) -> Fraction:
        share = Fraction(gamete_share(ploidy)).limit_denominator(ploidy)
        within = (self._gametic(of_seed, ploidy) + self._gametic(of_pollen, ploidy)) / 2
        return share * within + (1 - share) * between

    def _settled(self, index: int, row: Row, by_descent: Fraction) -> Fraction:
        """Write F of a row and return θ(i, i); the rules are those of `PedigreeArrays`."""
        ploidy = row.ploidy
        first = self._first(row)
        for _ in range(row.selfings):
            first = self._self_rule(first, ploidy)
        if row.fixation is not None:
            first = as_fraction(row.fixation)
        self._exact_inbreeding[index] = first
        if row.origin is Origin.FOUNDER:
            return first if row.pool else self._own(first, ploidy)
        if row.fixation is not None:
            return first
        if row.origin is Origin.CLONE:
            return self._at(row.seed, row.seed)
        if row.origin is Origin.FATHER:
            odds = [(parent, as_fraction(share)) for parent, share in row.pollen]
            rest = 1 - sum((share for _, share in odds), Fraction(0))
            return sum((share * self._at(parent, parent) for parent, share in odds), rest / ploidy)
        if row.pool and row.origin is not Origin.DOUBLED:
            return by_descent
        return self._own(first, ploidy)

    def _first(self, row: Row) -> Fraction:
        ploidy, seed = row.ploidy, row.seed
        known = self._exact_inbreeding
        if row.origin is Origin.FOUNDER:
            return as_fraction(row.fixation or 0.0)
        if row.origin in (Origin.MEMBER, Origin.CLONE):
            return known[seed]
        if row.origin is Origin.SELF:
            return self._self_rule(known[seed], ploidy)
        if row.origin is Origin.SIB:
            return self._cross_rule(known[seed], known[seed], self._at(seed, seed), ploidy)
        if row.origin is Origin.DOUBLED:
            return Fraction(1, ploidy - 1) + (1 - Fraction(1, ploidy - 1)) * known[seed]
        if row.origin is Origin.HAPLOID:
            share = Fraction(1, ploidy - 1)
            return share + (1 - share) * self._gametic(known[seed], ploidy)
        odds = [(parent, as_fraction(share)) for parent, share in row.pollen]
        if row.origin is Origin.FATHER:
            return sum((share * known[parent] for parent, share in odds), Fraction(0))
        of_seed = known[seed] if seed != UNKNOWN else Fraction(0)
        total, left = Fraction(0), Fraction(1)
        for parent, share in odds:
            left -= share
            if parent == seed:
                total += share * self._self_rule(of_seed, ploidy)
                continue
            between = self._at(seed, parent) if seed != UNKNOWN else Fraction(0)
            total += share * self._cross_rule(of_seed, known[parent], between, ploidy)
        return total + left * self._cross_rule(of_seed, Fraction(0), Fraction(0), ploidy)
