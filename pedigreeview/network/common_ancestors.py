"""The coancestry of two plants split over the plants where their lines first meet (Wright 1922).

Start from the pair, always replace the younger of the two by its parents with their weights, stop
where both are the same plant a: a contributes the weight that arrives at (a, a) times θ(a, a).  The
contributions add up to θ exactly.  The weight that arrives is found without walking the paths: the
shares T of both plants in a give the weight of all pairs of paths to a, and those that met before
in some b are taken off,

    m(a) = T(i, a) T(j, a) − Σ_b m(b) T(b, a)²,

the same with counts of paths in place of weights for how many pairs of paths there are.  Paths are
walked only to list them, up to a limit.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from pedigreeview.network.exact import as_fraction

__all__ = ["AncestorPath", "MeetingRow", "first_meetings", "list_paths"]


Older = Callable[[int], tuple[tuple[int, float], ...]]
"""The (older row, weight) pairs of a row."""

_MOST_STEPS = 20_000
"""Walking stops here: pairs of lines that meet elsewhere can be far more than those listed."""


@dataclass(frozen=True, slots=True)
class AncestorPath:
    """One way from a over the meeting plant to b.

    through : codes from a to b; unrecorded plants are shown by their pool, or left out where they
        only pass on what one of their candidates gave
    links : steps between the codes shown
    weight, weight_exact : product of all weights along both lines; exact None with decimal odds
    """

    through: tuple[str, ...]
    links: int
    weight: float
    weight_exact: Fraction | None


@dataclass(frozen=True, slots=True)
class MeetingRow:
    """A row where the two lines first meet: the weight that arrives, and by how many paths."""

    row: int
    weight: Fraction
    paths: int


def _closure(older: Older, starts: tuple[int, ...]) -> list[int]:
    found: set[int] = set()
    ahead = list(starts)
    while ahead:
        index = ahead.pop()
        if index not in found:
            found.add(index)
            ahead.extend(parent for parent, _ in older(index))
    return sorted(found, reverse=True)


def _shares(
    start: int, youngest_first: list[int], parents: Mapping[int, list[tuple[int, Fraction]]]
) -> tuple[dict[int, Fraction], dict[int, int]]:
    """Weight and number of all paths from `start` up to each of its ancestors."""
    weight = {start: Fraction(1)}
    count = {start: 1}
    for index in youngest_first:
        arrived = weight.get(index)
        if arrived is None:
            continue
        for parent, share in parents[index]:
            weight[parent] = weight.get(parent, Fraction(0)) + arrived * share
            count[parent] = count.get(parent, 0) + count[index]
    return weight, count


def first_meetings(older: Older, a: int, b: int) -> list[MeetingRow]:
    """The rows where the lines of a and b first meet, youngest first.

    Weights are exact fractions of the weights as written; cost grows with the number of common
    ancestors times the number of ancestors.
    """
    closure = _closure(older, (a, b))
    parents = {
        index: [(parent, as_fraction(weight)) for parent, weight in older(index)]
        for index in closure
    }
    from_a, count_a = _shares(a, closure, parents)
    from_b, count_b = _shares(b, closure, parents)
    left: dict[int, Fraction] = {}
    left_paths: dict[int, int] = {}
    for index in closure:
        if index in from_a and index in from_b:
            left[index] = from_a[index] * from_b[index]
            left_paths[index] = count_a[index] * count_b[index]
    found = []
    common = [index for index in closure if index in left]
    for place, index in enumerate(common):
        arriving, paths = left[index], left_paths[index]
        if paths == 0:
            continue
        found.append(MeetingRow(index, arriving, paths))
        below, count_below = _shares(index, common[place:], parents)
        for behind, share in below.items():
            if behind != index:
                left[behind] -= arriving * share * share
                left_paths[behind] -= paths * count_below[behind] ** 2
    return found


def list_paths(
    older: Older, a: int, b: int, meeting: int, limit: int
) -> Iterator[tuple[list[int], Fraction]]:
    """Up to `limit` pairs of paths from a and b that first meet in `meeting`.

    Yields the rows from a over the meeting row to b, and the product of the weights.
    """
    reaches: dict[int, bool] = {}
    for index in sorted(_closure(older, (a, b))):
        reaches[index] = index == meeting or any(reaches[parent] for parent, _ in older(index))
    if not (reaches[a] and reaches[b]):
        return
    given, tried = 0, 0
    stack: list[tuple[list[int], list[int], Fraction]] = [([a], [b], Fraction(1))]
    while stack and given < limit and tried < _MOST_STEPS:
        tried += 1
        left, right, weight = stack.pop()
        here, there = left[-1], right[-1]
        if here == there:
            if here == meeting:
                given += 1
                yield [*left, *reversed(right[:-1])], weight
            continue
        on_left = here > there
        younger = here if on_left else there
        steps = []
        for parent, share in older(younger):
            other = there if on_left else here
            # A line that has passed the meeting row, or met the other before it, is no use.
            if not reaches[parent] or parent < meeting or (parent == other and parent != meeting):
                continue
            on = weight * as_fraction(share)
            steps.append(([*left, parent], right, on) if on_left else (left, [*right, parent], on))
        stack.extend(reversed(steps))
