"""Which crosses to make together: k of the candidates, with the lowest mean coancestry.

Every chosen cross gives as many progeny, so the mean coancestry among all their alleles, drawn with
replacement from the parents, is Σ Σ θ̄_pq / k² over the chosen crosses, θ̄_pq the mean coancestry of
a parent of p with a parent of q.  Products of two choices are made linear: exactly, by one more
variable for each pair of crosses, while there are few; else by planes that touch the mean
coancestry from below (it is convex), one more for each answer.  Both give a bound that no choice
can go below.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault
from pedigreeview.planning.rows import coancestry_table

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["CandidateCross", "Choice", "choose_crosses", "choose_from_table"]

FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]
Tick = Callable[[int, int], None]

EXACT_UP_TO = 60
"""Candidate crosses up to which every product has a variable of its own."""
_MOST_PLANES = 60
_MOST_NODES = 20_000
_CLOSE = 1e-9


@dataclass(frozen=True, slots=True)
class CandidateCross:
    """A cross that may be made, with its merit in any unit (higher is better)."""

    seed: str
    pollen: str
    merit: float = 0.0


@dataclass(frozen=True, slots=True)
class Choice:
    """The crosses to make.

    crosses : numbers of the chosen candidates, in their order
    coancestry : mean coancestry among the progeny
    bound : no choice that keeps to the conditions lies below
    gap : coancestry − bound; 0 where the choice is proved the best
    merit : mean merit of the chosen crosses
    proved : whether the gap is 0
    sentence : in words
    """

    crosses: tuple[int, ...]
    coancestry: float
    bound: float
    gap: float
    merit: float
    proved: bool
    sentence: str


def choose_crosses(
    net: PedigreeNetwork,
    candidates: Sequence[CandidateCross],
    k: int,
    *,
    merit: float | None = None,
    most_uses: int | None = None,
    seconds: float = 10.0,
    tick: Tick | None = None,
) -> Choice:
    """Choose k of the candidate crosses with the lowest mean coancestry.

    Parameters
    ----------
    merit : mean merit that the chosen crosses must reach, None = any
    most_uses : crosses in which one parent may stand, None = any number
    seconds : time after which the best so far is given, with the gap to the bound
    tick : called with (step, steps); may raise `Cancelled`

    Raises
    ------
    Fault : no k of them keep to the conditions
    WithheldFault : a parent that depends on records that cannot be right
    """
    codes = list(dict.fromkeys(code for c in candidates for code in (c.seed, c.pollen)))
    place = {code: at for at, code in enumerate(codes)}
    parents = np.array([[place[c.seed], place[c.pollen]] for c in candidates], np.int64)
    return choose_from_table(
        coancestry_table(net, codes),
        parents.reshape(-1, 2),
        np.array([c.merit for c in candidates], float),
        k,
        merit=merit,
        most_uses=most_uses,
        seconds=seconds,
        tick=tick,
    )


def choose_from_table(
    theta: FloatArray,
    parents: IntArray,
    merits: FloatArray,
    k: int,
    *,
    merit: float | None = None,
    most_uses: int | None = None,
    seconds: float = 10.0,
    exact_up_to: int = EXACT_UP_TO,
    tick: Tick | None = None,
) -> Choice:
    """As `choose_crosses`, from numbers.

    Parameters
    ----------
    theta : (n, n) coancestry of the parents
    parents : (c, 2) numbers of the parents of each candidate cross
    merits : (c,) merit of each
    """
    count = len(parents)
    if not 1 <= k <= count:
        raise Fault(
            f"{k} crosses cannot be chosen out of {count}.",
            None,
            "Choose fewer, or add candidates.",
        )
    question = _Question(theta, parents, merits, k, merit, most_uses, seconds)
    start = question.any_choice()
    start = question.improved(start)
    if tick is not None:
        tick(0, _MOST_PLANES)
    if count <= exact_up_to:
        chosen, bound = question.by_products(start)
    else:
        chosen, bound = question.by_planes(start, tick)
    value = question.value(chosen)
    bound = min(bound, value)
    gap = value - bound
    proved = gap <= _CLOSE + 1e-6 * value
    crosses = tuple(np.flatnonzero(chosen).tolist())
    mean = float(merits[chosen].mean())
    if proved:
        sentence = f"No other {k} of these crosses have a lower mean coancestry than {value:.4f}."
        bound, gap = value, 0.0
    else:
        sentence = (
            f"Mean coancestry {value:.4f}; no choice can go below {bound:.4f}, so at most "
            f"{gap:.4f} is lost."
        )
    return Choice(crosses, value, bound, gap, mean, proved, sentence)


class _Question:
    def __init__(
        self,
        theta: FloatArray,
        parents: IntArray,
        merits: FloatArray,
        k: int,
        merit: float | None,
        most_uses: int | None,
        seconds: float,
    ) -> None:
        self.theta, self.parents, self.merits, self.k = theta, parents, merits, k
        self.merit, self.most_uses, self.seconds = merit, most_uses, seconds
        count = len(parents)
        #: (n, c) share of each parent in the progeny of each cross
        self.share = np.zeros((len(theta), count))
        np.add.at(self.share, (parents[:, 0], np.arange(count)), 0.5)
        np.add.at(self.share, (parents[:, 1], np.arange(count)), 0.5)

    def value(self, chosen: NDArray[np.bool_]) -> float:
        """Mean coancestry of a choice."""
        contribution = self.share[:, chosen].sum(axis=1) / self.k
        return float(contribution @ self.theta @ contribution)

    def conditions(self, more: int = 0) -> list[Any]:
        """The conditions on the choices, with room for more variables behind them."""
        from scipy.optimize import LinearConstraint

        count = len(self.parents)

        def wide(rows: FloatArray) -> FloatArray:
            return np.hstack((rows, np.zeros((len(rows), more))))

        found = [LinearConstraint(wide(np.ones((1, count))), self.k, self.k)]
        if self.merit is not None:
            least = self.k * self.merit
            slack = 1e-9 * max(1.0, abs(least))
            found.append(LinearConstraint(wide(self.merits[None, :]), least - slack, np.inf))
        if self.most_uses is not None:
            uses = (self.share > 0).astype(float)
            found.append(LinearConstraint(wide(uses), -np.inf, self.most_uses))
        return found

    def fits(self, chosen: NDArray[np.bool_]) -> bool:
        """Whether a choice keeps to the conditions."""
        if int(chosen.sum()) != self.k:
            return False
        if self.merit is not None:
            least = self.k * self.merit
            if self.merits[chosen].sum() < least - 1e-9 * max(1.0, abs(least)):
                return False
        if self.most_uses is None:
            return True
        return bool(((self.share[:, chosen] > 0).sum(axis=1) <= self.most_uses).all())

    def any_choice(self) -> NDArray[np.bool_]:
        """A choice that keeps to the conditions, of low coancestry with all candidates."""
        from scipy.optimize import Bounds, milp

        count = len(self.parents)
        cost = self.share.T @ self.theta @ self.share.mean(axis=1)
        found = milp(
            cost,
            integrality=np.ones(count),
            bounds=Bounds(0, 1),
            constraints=self.conditions(),
            options={"time_limit": self.seconds},
        )
        if found.x is None:
            raise Fault(
                f"No {self.k} of these crosses keep to the conditions.",
                None,
                "Ask for less merit, or let a parent be used more often.",
            )
        return np.asarray(found.x > 0.5)

    def improved(self, chosen: NDArray[np.bool_]) -> NDArray[np.bool_]:
        """The choice after exchanges of two crosses, each the best one, while any helps."""
        pairs = self.share.T @ self.theta @ self.share
        for _ in range(10 * len(chosen)):
            line = pairs[:, chosen].sum(axis=1)
            inside, outside = np.flatnonzero(chosen), np.flatnonzero(~chosen)
            # Sum of all pairs of the choice after taking `in` out and `out` in, less that before.
            change = (
                2
                * (line[outside][None, :] - line[inside][:, None] - pairs[np.ix_(inside, outside)])
                + np.diag(pairs)[inside][:, None]
                + np.diag(pairs)[outside][None, :]
            )
            exchanged = None
            for at in np.argsort(change, axis=None)[: 4 * len(chosen)].tolist():
                old, new = np.unravel_index(at, change.shape)
                if change[old, new] >= -1e-12:
                    break
                tried = chosen.copy()
                tried[inside[old]], tried[outside[new]] = False, True
                if self.fits(tried):
                    exchanged = tried
                    break
            if exchanged is None:
                break
            chosen = exchanged
        return chosen

    def by_products(self, start: NDArray[np.bool_]) -> tuple[NDArray[np.bool_], float]:
        """One variable for each product z_p z_q, tied by Σ_q z_p z_q = (k − 1) z_p."""
        from scipy.optimize import Bounds, LinearConstraint, milp
        from scipy.sparse import coo_matrix

        count, k = len(self.parents), self.k
        pairs = self.share.T @ self.theta @ self.share
        first, second = np.triu_indices(count, 1)
        more = len(first)
        cost = np.concatenate((np.diag(pairs), 2 * pairs[first, second])) / k**2
        at = np.arange(more)
        lines = np.concatenate(
            (at, at, more + at, more + at, 2 * more + at, 2 * more + at, 2 * more + at)
        )
        columns = np.concatenate((count + at, first, count + at, second, first, second, count + at))
        ones = np.ones(more)
        values = np.concatenate((ones, -ones, ones, -ones, ones, ones, -ones))
        tied = coo_matrix((values, (lines, columns)), (3 * more, count + more)).tocsr()
        upper = np.concatenate((np.zeros(2 * more), np.ones(more)))
        sums = coo_matrix(
            (
                np.concatenate((ones, ones, np.full(count, 1.0 - k))),
                (
                    np.concatenate((first, second, np.arange(count))),
                    np.concatenate((count + at, count + at, np.arange(count))),
                ),
            ),
            (count, count + more),
        ).tocsr()
        found = milp(
            cost,
            integrality=np.concatenate((np.ones(count), np.zeros(more))),
            bounds=Bounds(0, 1),
            constraints=[
                *self.conditions(more),
                LinearConstraint(tied, -np.inf, upper),
                LinearConstraint(sums, 0, 0),
            ],
            options={"time_limit": self.seconds, "mip_rel_gap": 0.0},
        )
        return self._best(start, found), self._bound(found)

    def by_planes(
        self, start: NDArray[np.bool_], tick: Tick | None
    ) -> tuple[NDArray[np.bool_], float]:
        """A plane through each answer: x'Θx ≥ 2 y'Θx − y'Θy for all contributions x and y."""
        from time import monotonic

        from scipy.optimize import Bounds, LinearConstraint, milp

        count, until = len(self.parents), monotonic() + self.seconds
        best, bound = start, 0.0
        touched = [self.share[:, start].sum(axis=1) / self.k]
        integral = np.append(np.ones(count), 0.0)
        relaxed = True
        for step in range(_MOST_PLANES):
            if tick is not None:
                tick(step, _MOST_PLANES)
            left = until - monotonic()
            if left <= 0:
                break
            planes = np.array([2 * (y @ self.theta) @ self.share / self.k for y in touched])
            heights = np.array([-float(y @ self.theta @ y) for y in touched])
            rows = np.hstack((planes, -np.ones((len(planes), 1))))
            found = milp(
                np.append(np.zeros(count), 1.0),
                integrality=None if relaxed else integral,
                bounds=Bounds(np.zeros(count + 1), np.append(np.ones(count), np.inf)),
                constraints=[*self.conditions(1), LinearConstraint(rows, -np.inf, -heights)],
                options={"time_limit": left, "node_limit": _MOST_NODES},
            )
            bound = max(bound, self._bound(found))
            if found.x is None:
                break
            touched.append(self.share @ found.x[:count] / self.k)
            if relaxed:
                # First the planes where fractions of crosses are allowed: cheap, and soon close.
                value = float(touched[-1] @ self.theta @ touched[-1])
                relaxed = value - bound > 1e-6 * max(value, 1e-9) and step < _MOST_PLANES // 2
                continue
            best = self._best(best, found)
            if self.value(best) - bound <= _CLOSE + 1e-6 * bound:
                break
        return best, bound

    def _best(self, held: NDArray[np.bool_], found: Any) -> NDArray[np.bool_]:
        if found.x is None:
            return held
        chosen = np.asarray(found.x[: len(self.parents)] > 0.5)
        if not self.fits(chosen):
            return held
        chosen = self.improved(chosen)
        return chosen if self.value(chosen) < self.value(held) else held

    @staticmethod
    def _bound(found: Any) -> float:
        if found.status == 0 and getattr(found, "mip_dual_bound", None) is None:
            return float(found.fun)
        bound = getattr(found, "mip_dual_bound", None)
        return 0.0 if bound is None or not np.isfinite(bound) else max(0.0, float(bound))
