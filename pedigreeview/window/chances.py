"""More about one plant: how far shares spread, who brought its F, how far it is to a fixed line.

Nothing is computed here: the network and the planning are asked.  Knows no widgets.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault
from pedigreeview.network.text import decimal_text
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Chances", "ask_chances"]

_FIXED = 0.99
_MOST_ANCESTORS = 1_500
_MOST_FOUNDERS = 4
_DEEPEST = 5
_MOST_GENES = 6
_LARGE_BOOK = 20_000
"""Plants above which genes are asked about on the Judging page alone."""


@dataclass(frozen=True, slots=True)
class Chances:
    """Sentences about one plant and those raised like it; empty where nothing need be said.

    spread : between what founder shares most plants raised like it lie
    brought : what each founder brought of its F
    depth : how much of its ancestry is known
    fixing : how far it is to a fixed line
    genes : of each gene of the book, the genotypes that it may have, by all that was seen
    """

    code: str
    spread: tuple[str, ...] = ()
    brought: str = ""
    depth: str = ""
    fixing: str = ""
    genes: tuple[str, ...] = ()


def ask_chances(
    net: PedigreeNetwork, code: str, tick: Callable[[int, int], None] | None = None
) -> Chances:
    """How far founder shares spread and how many selfings fix a line from this plant."""
    if code in net.withheld:
        return Chances(code)
    few = len(net.ancestors(code)) <= _MOST_ANCESTORS
    return Chances(
        code,
        _spread(net, code, tick) if few else (),
        _brought(net, code) if few else "",
        _depth(net, code),
        _fixing(net, code),
        _genes(net, code, tick),
    )


def _spread(
    net: PedigreeNetwork, code: str, tick: Callable[[int, int], None] | None
) -> tuple[str, ...]:
    if len(net.founder_shares(code)) < 2:
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


def _brought(net: PedigreeNetwork, code: str) -> str:
    if net.inbreeding(code) == 0 or net.parents(code).raised == "founder":
        return ""
    found = net.partial_inbreeding(code)
    parts = [f"{named(net.book, who)} {decimal_text(part)}" for who, part in found.founders]
    parts += [f"{who}, taken as fixed, {decimal_text(part)}" for who, part in found.taken_as_fixed]
    if found.unknown > 1e-12:
        parts.append(f"unknown parents {decimal_text(found.unknown)}")
    more = len(parts) - _MOST_FOUNDERS
    shown = [*parts[:_MOST_FOUNDERS], *([f"{more} more"] if more > 0 else [])]
    return f"What each brought of its F: {', '.join(shown)}."


def _depth(net: PedigreeNetwork, code: str) -> str:
    if net.parents(code).raised == "founder":
        return ""
    generations = net.generation(code) or 1
    known = decimal_text(net.generation_equivalents(code))
    index = decimal_text(net.completeness(code, max(1, min(generations, _DEEPEST))))
    return f"Complete generations known: {known}; completeness {index}, where 1 is complete."


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


def _genes(
    net: PedigreeNetwork, code: str, tick: Callable[[int, int], None] | None
) -> tuple[str, ...]:
    """'Le: Le/le 67%, Le/Le 33%': from its own scores and those of all its kin."""
    if not net.book.loci or len(net) > _LARGE_BOOK:
        return ()
    from pedigreeview.planning.inference import genotype_chances

    told = []
    for locus in list(net.book.loci)[:_MOST_GENES]:
        try:
            answer = genotype_chances(net, locus, plants=[code], tick=tick)
        except Fault:
            # A gene that cannot be read is named by the Judging page, which shows the mend.
            continue
        if code in answer.impossible or code not in answer.chances:
            continue
        about = "" if answer.exact else "about "
        parts = [
            f"{text} {about}{100 * chance:.3g}%" if chance < 1 else text
            for text, chance in list(answer.of(code).items())[:3]
        ]
        told.append(f"{locus}: {', '.join(parts)}")
    return tuple(told)
