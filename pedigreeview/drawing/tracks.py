"""The gap between two layers: every net gets a bar on a track of its own.

Two nets may share a track only when their bars are well apart, so that the bars of neighbouring
crosses can never run into each other and lie about parentage.  Where one net comes down at the
place from which another leaves, the first has the higher track, so that uprights do not lie on
each other either.  Knows no Qt.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass

__all__ = ["NEAR", "Bar", "assign_tracks"]

NEAR = 12.0 - 0.01
"""Uprights closer than this could be read as one."""


_FEW = 60
"""Bars of one gap up to which every single one is tried on other tracks."""


@dataclass(slots=True, eq=False)
class Bar:
    """One net in one gap: where it comes in from above and where it leaves below."""

    net: str
    tops: list[float]
    bottoms: list[float]
    track: int = -1
    left: float = 0.0
    right: float = 0.0
    """The bar's two ends, set by `measure`."""

    def measure(self) -> None:
        """Put the ends in order, when all are known."""
        self.tops.sort()
        self.bottoms.sort()
        self.left = min([*self.tops[:1], *self.bottoms[:1]])
        self.right = max([*self.tops[-1:], *self.bottoms[-1:]])

    @property
    def straight(self) -> bool:
        """Whether the net goes straight down and needs no bar."""
        return self.right - self.left < 0.01


def assign_tracks(bars: Sequence[Bar], clear: float) -> int:
    """Give every bar its track, 0 the highest, and return how many there are.

    clear : least distance between two bars on one track
    """
    for bar in bars:
        bar.measure()
    bent = [bar for bar in bars if not bar.straight]
    order = _order(bent)
    used: list[list[Bar]] = []
    above: dict[int, list[Bar]] = {id(bar): [] for bar in bent}
    for high in bent:
        for low in bent:
            if high is not low and _must_lie_above(high, low):
                above[id(low)].append(high)
    for bar in order:
        least = max((other.track + 1 for other in above[id(bar)] if other.track >= 0), default=0)
        track = least
        while track < len(used) and any(
            bar.left - clear < other.right and other.left - clear < bar.right
            for other in used[track]
        ):
            track += 1
        while len(used) <= track:
            used.append([])
        used[track].append(bar)
        bar.track = track
    _untangle(bent, used, above)
    if len(bent) <= _FEW:
        return _settle(bent, above, clear, len(used))
    return len(used)


@dataclass(slots=True, eq=False)
class _Around:
    """What matters to one bar when it is tried on other tracks."""

    bar: Bar
    crossed: list[tuple[Bar, int, int]]
    """Bars that it may cross: how often when they lie above it, and when they lie below."""
    beside: list[Bar]
    """Bars that it must not share a track with."""
    above: list[Bar]
    below: list[Bar]


def _settle(bars: list[Bar], above: dict[int, list[Bar]], clear: float, count: int) -> int:
    """Move single bars to other tracks, or to a new one between two, while that saves crossings."""
    all_around = _all_around(bars, above, clear)
    for _ in range(6):
        changed = False
        for around in all_around:
            bar = around.bar
            now = _cost(around, bar.track)
            if not now:
                continue
            best, found = now - 0.5, None
            for half in range(-1, 2 * count):
                track = half / 2
                if track == bar.track or not _free(around, track):
                    continue
                # A track more makes the gap higher, so it has to save more than one crossing.
                cost = _cost(around, track) + (1.0 if half % 2 else 0.0)
                if cost < best:
                    best, found = cost, track
            if found is not None:
                bar.track = found  # type: ignore[assignment]
                changed = True
                places = sorted({other.track for other in bars})
                for other in bars:
                    other.track = places.index(other.track)
                count = len(places)
        if not changed:
            break
    return count


def _all_around(bars: list[Bar], above: dict[int, list[Bar]], clear: float) -> list[_Around]:
    found = [_Around(bar, [], [], above[id(bar)], []) for bar in bars]
    by_bar = {id(around.bar): around for around in found}
    for around in found:
        for high in around.above:
            by_bar[id(high)].below.append(around.bar)
    for at, one in enumerate(found):
        for other in found[at + 1 :]:
            left, right = one.bar, other.bar
            if left.left - clear < right.right and right.left - clear < left.right:
                one.beside.append(right)
                other.beside.append(left)
                over, under = _crossings(right, left), _crossings(left, right)
                if over or under:
                    one.crossed.append((right, over, under))
                    other.crossed.append((left, under, over))
    return found


def _cost(around: _Around, track: float) -> int:
    """Crossings of one bar with all others when it lies on a track."""
    total = 0
    for other, over, under in around.crossed:
        if other.track < track:
            total += over
        elif other.track > track:
            total += under
    return total


def _free(around: _Around, track: float) -> bool:
    for high in around.above:
        if high.track >= track:
            return False
    for low in around.below:
        if low.track <= track:
            return False
    return all(other.track != track for other in around.beside)


def _must_lie_above(high: Bar, low: Bar) -> bool:
    """Whether an upright of `low` from above would lie on one of `high` to below."""
    if not high.tops or not low.bottoms:
        return False
    if high.tops[0] - NEAR > low.bottoms[-1] or low.bottoms[0] - NEAR > high.tops[-1]:
        return False
    return any(abs(a - b) < NEAR for a in high.tops for b in low.bottoms)


def _order(bars: list[Bar]) -> list[Bar]:
    """Bars so that those that must lie above come first; cycles are broken at the leftmost."""
    left = sorted(bars, key=lambda bar: (bar.left, bar.right, bar.net))
    done: list[Bar] = []
    while left:
        for at, bar in enumerate(left):
            if not any(_must_lie_above(other, bar) for other in left if other is not bar):
                done.append(left.pop(at))
                break
        else:
            done.append(left.pop(0))
    return done


def _crossings(one: Bar, other: Bar) -> int:
    """Crossings of two nets when `one` has the higher track."""
    if one.right <= other.left or other.right <= one.left:
        return 0
    count = bisect_left(other.tops, one.right) - bisect_right(other.tops, one.left)
    count += bisect_left(one.bottoms, other.right) - bisect_right(one.bottoms, other.left)
    return count


def _untangle(bars: list[Bar], used: list[list[Bar]], above: dict[int, list[Bar]]) -> None:
    """Swap whole neighbouring tracks while that saves crossings."""
    for _ in range(len(used)):
        better = False
        for at in range(len(used) - 1):
            upper, lower = used[at], used[at + 1]
            if any(high in above[id(low)] for high in upper for low in lower):
                continue
            now = sum(_crossings(high, low) for high in upper for low in lower)
            then = sum(_crossings(low, high) for high in upper for low in lower)
            if then < now:
                used[at], used[at + 1] = lower, upper
                better = True
        if not better:
            break
    for track, held in enumerate(used):
        for bar in held:
            bar.track = track
