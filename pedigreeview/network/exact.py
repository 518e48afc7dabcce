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

from collections.abc import Iterator
from fractions import Fraction
from itertools import islice
from math import ceil, inf
from typing import NamedTuple

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin, Row, Rules

__all__ = ["LARGEST_DENOMINATOR", "ExactCoefficients", "as_fraction", "short"]

LARGEST_DENOMINATOR = 2**60
_MOST_ANCESTORS = 400
_MOST_FOLLOWED = 5_000
_MOST_SELFINGS = 100
_DOUBLE_PLACES = 50


def as_fraction(value: float) -> Fraction:
    """The number that a person wrote: 0.9 is 9/10, not the nearest double."""
    return Fraction(repr(float(value)))


def short(value: Fraction | None) -> Fraction | None:
    """The fraction, or None where its denominator passes the largest that is given."""
    return value if value is not None and value.denominator <= LARGEST_DENOMINATOR else None


def _places(value: Fraction) -> float:
    """Binary places of a fraction; infinite if it has no finite binary form."""
    denominator = value.denominator
    return denominator.bit_length() - 1 if denominator & (denominator - 1) == 0 else inf


class _Places(NamedTuple):
    """What binary places a row's coefficients can need.

    half : θ of rows i and j needs at most half(i) + half(j) places
    inbreeding : places of F
    decimal : whether odds without an exact meaning stand behind the row
    """

    half: float
    inbreeding: float
    decimal: bool


_TOO_MUCH = _Places(inf, inf, True)


class ExactCoefficients:
    """Exact coefficients of one set of arrays, made as they are asked for."""

    def __init__(self, arrays: PedigreeArrays) -> None:
        self._arrays = arrays
        self._alpha = as_fraction(arrays.double_reduction)
        self._rows: dict[int, Row] = {}
        self._places: dict[int, _Places] = {}
        self._table: dict[int, dict[int, Fraction]] = {}
        self._inbreeding: dict[int, Fraction] = {}
        self._crowded: set[int] = set()

    def inbreeding(self, row: int) -> Fraction | None:
        """F of a row, or None where no fraction is given."""
        places = self._followed(row)
        if places.decimal:
            return None
        if 2 * places.half <= _DOUBLE_PLACES:
            return Fraction(float(self._arrays.inbreeding()[row]))
        return short(self._inbreeding[row]) if self._fill(row) else None

    def coancestry(self, a: int, b: int, double: float) -> Fraction | None:
        """θ of two rows (two members, for a pool with itself); `double` is the engine's value."""
        of_a, of_b = self._followed(a), self._followed(b)
        if of_a.decimal or of_b.decimal:
            return None
        if of_a.half + of_b.half <= _DOUBLE_PLACES:
            return Fraction(double)
        return short(self._at(a, b)) if self._fill(a, b) else None

    def self_coancestry(self, row: int) -> Fraction | None:
        """θ(i, i) of a row, or None where no fraction is given."""
        return self.coancestry(row, row, float(self._arrays.self_coancestry()[row]))

    def decimal_odds(self, row: int) -> bool:
        """Whether odds without an exact meaning stand behind the row."""
        return self._followed(row).decimal

    def exact_in_doubles(self, a: int, b: int) -> bool:
        """Whether weights of paths from both rows are exact as doubles."""
        return self._followed(a).half + self._followed(b).half <= _DOUBLE_PLACES

    def rules(self, row: int) -> Rules:
        """The rules of inheritance of a row, in fractions."""
        return Rules(int(self._arrays.ploidy[row]), self._alpha, Fraction)

    # Where doubles are exact --------------------------------------------------------------------

    def _row(self, index: int) -> Row:
        row = self._rows.get(index)
        if row is None:
            row = self._rows[index] = self._arrays.row(index)
        return row

    def _behind(self, *asked: int) -> Iterator[int]:
        """The asked rows and all behind them that have not been followed yet."""
        seen = set(asked)
        ahead = list(asked)
        while ahead:
            index = ahead.pop()
            yield index
            for parent, _ in self._row(index).weights():
                if parent not in seen and parent not in self._places:
                    seen.add(parent)
                    ahead.append(parent)

    def _followed(self, index: int) -> _Places:
        if index not in self._places:
            behind = list(islice(self._behind(index), _MOST_FOLLOWED + 1))
            if len(behind) > _MOST_FOLLOWED:
                # No fraction would be short with so much behind it; asking on would only be slow.
                self._places[index] = _TOO_MUCH
                return _TOO_MUCH
            for row in sorted(behind):
                if row not in self._places:
                    self._places[row] = self._follow(self._row(row))
        return self._places[index]

    def _follow(self, row: Row) -> _Places:
        older = [(self._places[at], as_fraction(weight)) for at, weight in row.weights()]
        odds = [(self._places[at], as_fraction(share), at) for at, share in row.pollen]
        decimal = any(_places(share) == inf for _, share, _ in odds) or any(
            places.decimal for places, _ in older
        )
        if row.ploidy != 2 or decimal:
            return _Places(inf, inf, decimal)
        inbreeding = self._inbreeding_places(row, odds) + row.selfings
        if row.fixation is not None:
            inbreeding = max(inbreeding, _places(as_fraction(row.fixation)))
        by_weights = max((places.half + _places(weight) for places, weight in older), default=0.0)
        half = max(by_weights, (1 + inbreeding) / 2)
        return _Places(half if half == inf else float(ceil(half)), inbreeding, decimal)

    def _inbreeding_places(self, row: Row, odds: list[tuple[_Places, Fraction, int]]) -> float:
        seed = self._places[row.seed] if row.seed != UNKNOWN else _Places(0.0, 0.0, False)
        match row.origin:
            case Origin.FOUNDER:
                return _places(as_fraction(row.fixation or 0.0))
            case Origin.MEMBER | Origin.CLONE:
                return seed.inbreeding
            case Origin.SELF:
                return 1 + seed.inbreeding
            case Origin.SIB:
                return 2 * seed.half
            case Origin.CROSS:
                return max(
                    (
                        max(seed.half + p.half, 1 + seed.inbreeding if at == row.seed else 0.0)
                        + _places(share)
                        for p, share, at in odds
                    ),
                    default=0.0,
                )
            case Origin.FATHER:
                return max((2 * p.half + _places(share) for p, share, _ in odds), default=0.0)
            case _:
                return 0.0

    # The table of fractions ---------------------------------------------------------------------

    def _fill(self, *asked: int) -> bool:
        """Extend the table over the ancestors of the asked rows; False if they are too many."""
        needed: set[int] = set()
        ahead = list(asked)
        while ahead:
            index = ahead.pop()
            if index not in needed:
                needed.add(index)
                if self._row(index).selfings > _MOST_SELFINGS:
                    return False
                # What stands on a row with too many ancestors has too many itself.
                if index in self._crowded or len(needed) > _MOST_ANCESTORS:
                    if len(asked) == 1:
                        self._crowded.add(asked[0])
                    return False
                ahead.extend(parent for parent, _ in self._row(index).weights())
        ordered = sorted(needed)
        for place, index in enumerate(ordered):
            line = self._table.setdefault(index, {})
            row = self._row(index)
            weights = [(parent, as_fraction(weight)) for parent, weight in row.weights()]
            for other in ordered[:place]:
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

    def _settled(self, index: int, row: Row, by_descent: Fraction) -> Fraction:
        """Write F of a row and return θ(i, i)."""
        rules = self.rules(index)
        inbreeding = rules.selfed(self._first(row, rules), row.selfings)
        if row.fixation is not None:
            inbreeding = as_fraction(row.fixation)
        self._inbreeding[index] = inbreeding
        if row.origin is Origin.FOUNDER:
            return inbreeding if row.pool else rules.itself(inbreeding)
        if row.fixation is not None:
            return inbreeding
        if row.origin is Origin.CLONE:
            return self._at(row.seed, row.seed)
        if row.origin is Origin.FATHER:
            odds = [(parent, as_fraction(share)) for parent, share in row.pollen]
            rest = 1 - sum((share for _, share in odds), Fraction(0))
            return sum((share * self._at(p, p) for p, share in odds), rest / row.ploidy)
        if row.pool and row.origin is not Origin.DOUBLED:
            return by_descent
        return rules.itself(inbreeding)

    def _first(self, row: Row, rules: Rules) -> Fraction:
        """F of a row before unrecorded selfings."""
        known = self._inbreeding
        odds = [(parent, as_fraction(share)) for parent, share in row.pollen]
        of_seed = known[row.seed] if row.seed != UNKNOWN else Fraction(0)
        match row.origin:
            case Origin.FOUNDER:
                return as_fraction(row.fixation or 0.0)
            case Origin.MEMBER | Origin.CLONE:
                return of_seed
            case Origin.SELF:
                return rules.selfed(of_seed)
            case Origin.SIB:
                return rules.cross(of_seed, of_seed, self._at(row.seed, row.seed))
            case Origin.DOUBLED:
                return rules.doubled(of_seed)
            case Origin.HAPLOID:
                return rules.doubled_gamete(of_seed)
            case Origin.FATHER:
                return sum((share * known[parent] for parent, share in odds), Fraction(0))
        total, rest = Fraction(0), Fraction(1)
        for parent, share in odds:
            rest -= share
            if parent == row.seed:
                total += share * rules.selfed(of_seed)
            else:
                between = self._at(row.seed, parent) if row.seed != UNKNOWN else Fraction(0)
                total += share * rules.cross(of_seed, known[parent], between)
        return total + rest * rules.cross(of_seed, Fraction(0), Fraction(0))
