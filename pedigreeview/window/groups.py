"""Groups of plants and what each holds, gathered from the network.  Knows no widgets."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import isinf
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["GroupNumber", "ask_group", "groups"]

_FOUNDERS = 6


def _tr(text: str) -> str:
    return QCoreApplication.translate("Groups", text)


@dataclass(frozen=True, slots=True)
class GroupNumber:
    """One number of a group: its name, its text and a sentence that says what it means."""

    name: str
    text: str
    words: str


def groups(
    net: PedigreeNetwork, pins: tuple[str, ...], picked: tuple[str, ...] = ()
) -> list[tuple[str, tuple[str, ...]]]:
    """The groups that can be looked at, those that hold a plant: name and codes.

    picked : plants picked on a page; where there are any, their group stands first
    """
    known = [code for code in net.codes if code not in net.withheld]
    status = {code: net.book.plants[code].status for code in known}
    last = max((net.generation(code) or 0 for code in known), default=0)
    found = [
        (_tr("The picked plants"), tuple(c for c in picked if c in status)),
        (_tr("Plants kept"), tuple(c for c in known if status[c] == "kept")),
        (
            _tr("Plants growing or kept"),
            tuple(c for c in known if status[c] in ("growing", "kept")),
        ),
        (_tr("Pinned plants"), tuple(c for c in pins if c in status)),
        (_tr("Youngest generation"), tuple(c for c in known if net.generation(c) == last)),
        (_tr("Founders"), tuple(c for c in net.founders if c in status)),
        (_tr("All plants"), tuple(known)),
    ]
    return [(name, codes) for name, codes in found if codes]


def ask_group(
    net: PedigreeNetwork, codes: tuple[str, ...], tick: Callable[[int, int], None] | None = None
) -> list[GroupNumber]:
    """Every statistic of a group, each with a sentence."""
    held = net.diversity(codes)
    ancestors = net.effective_ancestors(codes, tick=tick)
    shares = ", ".join(
        f"{named(net.book, net.label(row)) or net.label(row)} {100 * share:.3g}%"
        for row, share in held.founder_shares[:_FOUNDERS]
    )
    low, high = _number(ancestors.low), _number(ancestors.high)
    depth = sum(map(net.generation_equivalents, codes)) / len(codes)
    return [
        GroupNumber(
            _tr("Mean coancestry"),
            _number(held.mean_coancestry),
            _tr("Over all pairs, each plant with itself among them. F is {} on average.").format(
                _number(held.mean_inbreeding)
            ),
        ),
        GroupNumber(
            _tr("Status number"),
            _number(held.status_number),
            _tr(
                "So many unrelated plants that are not inbred would hold as much; also the founder "
                "genome equivalents by mean coancestry, 1/(2 · mean coancestry)."
            ),
        ),
        GroupNumber(
            _tr("Founder equivalents"),
            _number(held.founder_equivalents),
            _tr("So many founders with equal shares would be as evenly used (1/Σp²): {}.").format(
                shares
            ),
        ),
        GroupNumber(
            _tr("Effective ancestors"),
            low if low == high else _tr("{} to {}").format(low, high),
            _tr("As founder equivalents, but bottlenecks on the way count too."),
        ),
        GroupNumber(
            _tr("Founder genome equivalents"),
            _number(net.genome_equivalents(codes, tick=tick)),
            _tr("By retention: founder alleles that a seeded gene drop still finds in the group."),
        ),
        GroupNumber(
            _tr("Generations known"),
            _number(depth),
            _tr("Complete generation equivalents, on average."),
        ),
    ]


def _number(value: float) -> str:
    return _tr("without limit") if isinf(value) else f"{value:.3g}"
