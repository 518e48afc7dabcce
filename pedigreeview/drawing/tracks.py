"""The gap between two layers: every net gets a bar on a track of its own.

Two nets may share a track only when their bars are well apart, so that the bars of neighbouring
crosses can never run into each other and lie about parentage.  Where one net comes down at the
place from which another leaves, the first has the higher track, so that uprights do not lie on
each other either.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

__all__ = ["NEAR", "Bar", "assign_tracks"]

NEAR = 5.0
"""Uprights closer than this could be read as one."""


@dataclass(slots=True)
class Bar:
    """One net in one gap: where it comes in from above and where it leaves below."""

    net: str
    tops: list[float]
    bottoms: list[float]
    track: int = -1

    @property
    def left(self) -> float:
        """The bar's left end."""
        return min(*self.tops, *self.bottoms)

    @property
    def right(self) -> float:
        """The bar's right end."""
        return max(*self.tops, *self.bottoms)

    @property
    def straight(self) -> bool:
        """Whether the net goes straight down and needs no bar."""
        return self.right - self.left < 0.01


def assign_tracks(bars: Sequence[Bar], clear: float) -> int:
    """Give every bar its track, 0 the highest, and return how many there are.

    clear : least distance between two bars on one track
    """
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
    return len(used)


def _must_lie_above(high: Bar, low: Bar) -> bool:
    """Whether an upright of `low` from above would lie on one of `high` to below."""
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
    count = sum(one.left < x < one.right for x in other.tops)
    return count + sum(other.left < x < other.right for x in one.bottoms)


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
