"""What plants raised like one plant are like: how far shares spread, how far it is to a fixed line.

Nothing is computed here: the network and the planning are asked.  Knows no widgets.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Chances", "ask_chances"]

_FIXED = 0.99
_MOST_ANCESTORS = 1_500
_MOST_FOUNDERS = 4


@dataclass(frozen=True, slots=True)
class Chances:
    """Sentences about plants raised like one plant; empty where nothing can or need be said."""

    code: str
    spread: tuple[str, ...]
    fixing: str


def ask_chances(
    net: PedigreeNetwork, code: str, tick: Callable[[int, int], None] | None = None
) -> Chances:
    """How far founder shares spread and how many selfings fix a line from this plant."""
    if code in net.withheld:
        return Chances(code, (), "")
    return Chances(code, _spread(net, code, tick), _fixing(net, code))


def _spread(
    net: PedigreeNetwork, code: str, tick: Callable[[int, int], None] | None
) -> tuple[str, ...]:
    if len(net.ancestors(code)) > _MOST_ANCESTORS or len(net.founder_shares(code)) < 2:
        return ()
    try:
        ranges = net.share_ranges(code, tick=tick)
    except Fault:
        # Without a map of the crop, or a rule for its gametes, the expected share stands alone.
        return ()
    return tuple(
        f"{named(net.book, one.founder) if one.founder else 'unknown parents'}: most plants raised "
        f"like this one lie between {100 * one.low:.0f}% and {100 * one.high:.0f}%."
        for one in ranges[:_MOST_FOUNDERS]
        if one.high - one.low > 0.005
    )


def _fixing(net: PedigreeNetwork, code: str) -> str:
    from pedigreeview.planning.fixing import segregating_share, selfings_until

    inbreeding, ploidy = net.inbreeding(code), net.ploidy(code)
    if inbreeding >= _FIXED or ploidy % 2:
        return ""
    alpha = net.book.double_reduction()
    still = segregating_share(0, inbreeding=inbreeding, ploidy=ploidy, double_reduction=alpha)
    times = selfings_until(_FIXED, inbreeding=inbreeding, ploidy=ploidy, double_reduction=alpha)
    noun = "selfing" if times == 1 else "selfings"
    return (
        f"{100 * still:.3g}% of its gene pairs can still segregate in its selfed seed; "
        f"{times} more {noun} bring F to {_FIXED:g}."
    )
