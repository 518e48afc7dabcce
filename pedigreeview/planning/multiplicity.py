"""Several tests at once: Holm's correction, so that one of many is not called by luck."""

from __future__ import annotations

from collections.abc import Sequence

__all__ = ["holm"]


def holm(p_values: Sequence[float | None]) -> list[float | None]:
    """Adjusted p values in the same order; None stays None and does not count.

    Notes
    -----
    The i-th smallest of m is multiplied by m − i + 1, never below an earlier one, at most 1
    (Holm 1979, from memory).

    Raises
    ------
    ValueError : a p outside 0 to 1
    """
    known = [(p, at) for at, p in enumerate(p_values) if p is not None]
    if any(not 0 <= p <= 1 for p, _ in known):
        raise ValueError("a p lies from 0 to 1")
    found: list[float | None] = [None] * len(p_values)
    reached = 0.0
    for rank, (p, at) in enumerate(sorted(known)):
        reached = max(reached, min(1.0, p * (len(known) - rank)))
        found[at] = reached
    return found
