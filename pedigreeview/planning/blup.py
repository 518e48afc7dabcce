"""Breeding values of plants from all measured kin: best linear unbiased prediction.

Model: a value is a fixed effect (one mean, or one of each year) + the breeding value + chance.
Breeding values have covariance P θ_ij σ²a (2θ, the numerator relationship, for diploids), chance
has σ²e; the ratio α = σ²e/σ²a is given or estimated.  The matrix of relationships is singular among
pure lines and clones, so it is never inverted: with L = I − W and D of the network (L a = √D m)
the values b, a solve the sparse symmetric system

    ⎡ X'X  X'Z   0   ⎤ ⎡b⎤   ⎡X'y⎤
    ⎢ Z'X  Z'Z   L'  ⎥ ⎢a⎥ = ⎢Z'y⎥
    ⎣  0    L  −D/α  ⎦ ⎣λ⎦   ⎣ 0 ⎦

which is Henderson's (1975, from memory) where every D > 0, and stays right where some are 0.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from math import log
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault
from pedigreeview.planning.measured import Observation
from pedigreeview.planning.rows import row_of, rows_of

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["BreedingValue", "Prediction", "predict"]

FloatArray = NDArray[np.float64]
Tick = Callable[[int, int], None]

_LIMITS = (0.01, 0.99)
_NORMAL_95 = 1.959963984540054
_CHI_95 = 3.841458820694124
_FEW = 30
_STEPS = 25


@dataclass(frozen=True, slots=True)
class BreedingValue:
    """What one plant is expected to pass on, in the unit of the trait.

    value : breeding value, as a difference from the fixed effect
    low, high : 95% prediction interval of it, the variances taken as known
    reliability : 1 − prediction error variance / variance before any record, 0 to 1
    records : values of the plant itself
    """

    plant: str
    value: float
    low: float
    high: float
    reliability: float
    records: int


@dataclass(frozen=True, slots=True)
class Prediction:
    """Breeding values of plants for one trait.

    values : highest first
    effects : (name, value) of the fixed effects: 'mean', or the years
    heritability : σ²a/(σ²a + σ²e) among plants of the base
    interval : where it lies by likelihood (95%), None where it was given
    estimated : whether it was estimated by REML
    additive, residual : σ²a and σ²e
    records, plants : how many values stand behind it, of how many plants
    warnings : sentences, where data are thin
    """

    values: tuple[BreedingValue, ...]
    effects: tuple[tuple[str, float], ...]
    heritability: float
    interval: tuple[float, float] | None
    estimated: bool
    additive: float
    residual: float
    records: int
    plants: int
    warnings: tuple[str, ...]

    def of(self, plant: str) -> BreedingValue:
        """The value of one plant; KeyError if it was not asked for."""
        for item in self.values:
            if item.plant == plant:
                return item
        raise KeyError(plant)


def predict(
    net: PedigreeNetwork,
    found: Sequence[Observation],
    *,
    plants: Iterable[str] | None = None,
    fixed: Literal["mean", "year"] | Sequence[str] = "mean",
    ratio: float | None = None,
    tick: Tick | None = None,
) -> Prediction:
    """Breeding values from measured values.

    Parameters
    ----------
    found : values of plants; a plant may have several, each with the same weight; those of plants
        that depend on records that cannot be right are left out, with a warning
    plants : whose breeding values are wanted; default every plant with a value and its ancestors
    fixed : one mean, one effect of each year, or the name of the effect of each value
    ratio : σ²e/σ²a, above 0; default estimated by REML along this one number
    tick : called with (step, steps); may raise `Cancelled`

    Raises
    ------
    Fault : fewer values than fixed effects + 1, or an asked plant that is withheld
    ValueError : a ratio that is not above 0, or names of effects of another number than the values
    """
    if ratio is not None and not ratio > 0:
        raise ValueError("the ratio of the variances lies above 0")
    names = _effect_names(found, fixed)
    kept = [at for at, item in enumerate(found) if item.plant not in net.withheld]
    left_out = len(found) - len(kept)
    found, names = [found[at] for at in kept], [names[at] for at in kept]
    levels = list(dict.fromkeys(names))
    if len(found) < len(levels) + 1:
        raise Fault(
            "There are too few values for breeding values.",
            None,
            "Score more plants, or take one mean for all years.",
        )
    system = _System(net, found, plants, names, levels)
    interval = None
    estimated = ratio is None
    if ratio is None:
        share, interval = _reml(system, tick)
        ratio = (1 - share) / share
    solved = system.solve(ratio)
    residual = solved.squares / (len(found) - len(levels))
    additive = residual / ratio
    if tick is not None:
        tick(_STEPS, _STEPS + 1)
    values = tuple(sorted(system.values(solved, additive, residual), key=lambda item: -item.value))
    effects = tuple(zip(levels, solved.solution[: len(levels)].tolist(), strict=True))
    share = 1 / (1 + ratio)
    measured = len({item.plant for item in found})
    warnings = _warnings(len(found), measured, interval, len(levels), left_out)
    return Prediction(
        values,
        effects,
        share,
        interval,
        estimated,
        additive,
        residual,
        len(found),
        measured,
        warnings,
    )


def _effect_names(
    found: Sequence[Observation], fixed: Literal["mean", "year"] | Sequence[str]
) -> list[str]:
    if isinstance(fixed, str):
        if fixed == "mean":
            return ["mean"] * len(found)
        return [item.year or "year not known" for item in found]
    if len(fixed) != len(found):
        raise ValueError("one effect for each value")
    return list(fixed)


def _warnings(
    records: int, plants: int, interval: tuple[float, float] | None, effects: int, left_out: int
) -> tuple[str, ...]:
    said = []
    if left_out:
        said.append(
            f"{left_out} values are left out: their plants depend on records that cannot be right."
        )
    if plants < _FEW:
        said.append(f"Only {plants} plants were measured: take the order as a hint, not a ranking.")
    if interval is not None and interval[1] - interval[0] > 0.5:
        low, high = interval
        said.append(
            f"The heritability is hardly known: anything from {low:.2f} to {high:.2f} fits."
        )
    if records < 5 * effects:
        said.append("There are few values for each year, so the effects of the years are rough.")
    return tuple(said)


# The system of equations ----------------------------------------------------------------------


@dataclass(slots=True)
class _Solved:
    solution: FloatArray
    squares: float
    """y'Py · σ²e: what the fit leaves."""
    log_determinant: float
    factors: Any


class _System:
    """The equations of one set of values; solved for any ratio of the variances."""

    def __init__(
        self,
        net: PedigreeNetwork,
        found: Sequence[Observation],
        plants: Iterable[str] | None,
        names: list[str],
        levels: list[str],
    ) -> None:
        from scipy.sparse import coo_matrix, csr_matrix, identity

        arrays = net.arrays
        measured = rows_of(net, [item.plant for item in found])
        self.net = net
        self.asked = None if plants is None else list(dict.fromkeys(plants))
        asked_rows = [] if self.asked is None else rows_of(net, self.asked).tolist()
        held = sorted(_behind(arrays, {*measured.tolist(), *asked_rows}))
        self.place = {row: at for at, row in enumerate(held)}
        size = len(held)
        scale = np.sqrt(arrays.ploidy[held].astype(float))
        lines, columns, weights = [], [], []
        for at, row in enumerate(held):
            for parent, weight in arrays.row(row).weights():
                lines.append(at)
                columns.append(self.place[parent])
                weights.append(weight * scale[at] / scale[self.place[parent]])
        descent = csr_matrix((weights, (lines, columns)), (size, size))
        self.lower = identity(size, format="csr") - descent
        self.innovation = np.maximum(arrays.innovation()[held], 0.0) * scale**2
        self.base = np.asarray(arrays.self_coancestry())[held] * scale**2
        self.y = np.array([item.value for item in found])
        self.counts: dict[str, int] = {}
        for item in found:
            self.counts[item.plant] = self.counts.get(item.plant, 0) + 1
        number = np.arange(len(found))
        places = [self.place[int(row)] for row in measured]
        ones = np.ones(len(found))
        self.z = coo_matrix((ones, (number, places)), (len(found), size)).tocsr()
        which = [levels.index(name) for name in names]
        self.x = coo_matrix((ones, (number, which)), (len(found), len(levels))).tocsr()
        self.levels = len(levels)
        self.held = held

    def solve(self, ratio: float) -> _Solved:
        """The solution, what it leaves, and the logarithm of the determinant."""
        from scipy.sparse import bmat, diags
        from scipy.sparse.linalg import splu

        x, z = self.x, self.z
        whole = bmat(
            [
                [x.T @ x, x.T @ z, None],
                [z.T @ x, z.T @ z, self.lower.T],
                [None, self.lower, diags(-self.innovation / ratio)],
            ],
            format="csc",
        )
        factors = splu(whole)
        right = np.concatenate((x.T @ self.y, z.T @ self.y, np.zeros(len(self.held))))
        solution = factors.solve(right)
        fitted = x @ solution[: self.levels] + z @ solution[self.levels : self.levels + z.shape[1]]
        squares = float(self.y @ (self.y - fitted))
        determinant = float(np.log(np.abs(factors.U.diagonal())).sum())
        return _Solved(solution, max(squares, 0.0), determinant, factors)

    def values(self, solved: _Solved, additive: float, residual: float) -> Iterable[BreedingValue]:
        """Breeding values of the asked plants with their intervals."""
        if self.asked is None:
            recorded = {row: self.net.label(row) for row in self.held}
            asked = [code for row, code in recorded.items() if _is_plant(self.net, code, row)]
        else:
            asked = self.asked
        at = np.array([self.place[row_of(self.net, code)] for code in asked], np.int64)
        errors = np.empty(len(at))
        for start in range(0, len(at), 256):
            part = at[start : start + 256]
            right = np.zeros((len(solved.solution), len(part)))
            right[self.levels + part, np.arange(len(part))] = 1.0
            inverse = solved.factors.solve(right)
            errors[start : start + 256] = inverse[self.levels + part, np.arange(len(part))]
        for code, place, error in zip(asked, at.tolist(), errors.tolist(), strict=True):
            value = float(solved.solution[self.levels + place])
            spread = _NORMAL_95 * max(error * residual, 0.0) ** 0.5
            before = self.base[place] * additive
            reliability = 1 - error * residual / before if before > 0 else 0.0
            yield BreedingValue(
                code,
                value,
                value - spread,
                value + spread,
                min(1.0, max(0.0, reliability)),
                self.counts.get(code, 0),
            )


def _behind(arrays: Any, rows: set[int]) -> set[int]:
    found: set[int] = set()
    ahead = list(rows)
    while ahead:
        row = ahead.pop()
        if row not in found:
            found.add(row)
            ahead.extend(parent for parent, _ in arrays.row(row).weights())
    return found


def _is_plant(net: PedigreeNetwork, code: str, row: int) -> bool:
    return code in net and row_of(net, code) == row


def _reml(system: _System, tick: Tick | None) -> tuple[float, tuple[float, float]]:
    """Heritability of the highest restricted likelihood, and where it falls off by 3.84/2."""
    from scipy.optimize import brentq, minimize_scalar

    count = len(system.y) - system.levels
    done = 0

    def deviance(share: float) -> float:
        nonlocal done
        if tick is not None:
            done += 1
            tick(min(done, _STEPS), _STEPS + 1)
        solved = system.solve((1 - share) / share)
        return count * log(max(solved.squares, 1e-300)) + solved.log_determinant

    grid = np.linspace(*_LIMITS, 13)
    seen = [deviance(float(share)) for share in grid]
    best = int(np.argmin(seen))
    bounds = (float(grid[max(0, best - 1)]), float(grid[min(len(grid) - 1, best + 1)]))
    found = minimize_scalar(deviance, bounds=bounds, method="bounded", options={"xatol": 1e-4})
    share, lowest = (
        (float(found.x), float(found.fun))
        if found.fun < seen[best]
        else (float(grid[best]), seen[best])
    )

    def above(value: float) -> float:
        return deviance(value) - lowest - _CHI_95

    low, high = _LIMITS
    below = brentq(above, low, share, xtol=1e-3) if share > low and above(low) > 0 else low
    over = brentq(above, share, high, xtol=1e-3) if share < high and above(high) > 0 else high
    return share, (float(below), float(over))
