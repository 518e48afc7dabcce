"""What the Reciprocals page asks of the book and of planning, off the window's thread.

Nothing is computed here beyond counting plants by status.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.reciprocal_counts import DirectionCounts, RecordsByCross

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.reciprocal_report import ReciprocalReport

__all__ = ["PairFacts", "PairLine", "ask_pair_facts", "ask_pair_lines", "ask_pair_report"]

Tick = Callable[[], None]
Crosses = tuple[tuple[str, ...], tuple[str, ...]]


@dataclass(frozen=True, slots=True)
class PairLine:
    """One line of the list of pairs.

    level : 'plant', 'variety', or 'one way' where the other direction was never made
    parents : the first is the seed parent of the first direction
    crosses : of each direction; empty where it was never made
    """

    level: str
    parents: tuple[str, str]
    crosses: Crosses


@dataclass(frozen=True, slots=True)
class PairFacts:
    """What is on record of one pair.

    counts : records of the two directions
    kept : plants with the status 'kept' of each
    selfs : plants found to be selfings of each
    cytoplasm : founder of each direction's seed-parent line, None if not known
    """

    line: PairLine
    counts: tuple[DirectionCounts, DirectionCounts]
    kept: tuple[int, int]
    selfs: tuple[tuple[str, ...], tuple[str, ...]]
    cytoplasm: tuple[str | None, str | None]


def ask_pair_lines(net: PedigreeNetwork, tick: Tick | None = None) -> list[PairLine]:
    """Pairs by plant, by variety, then crosses of which the other direction was never made."""
    from pedigreeview.planning.one_way import crosses_one_way

    found = [PairLine(p.level, p.parents, p.crosses) for p in net.reciprocal_pairs()]
    found += [
        PairLine("one way", (one.seed, one.pollen), (one.crosses, ()))
        for one in crosses_one_way(net, tick)
    ]
    return found


def ask_pair_facts(net: PedigreeNetwork, records: RecordsByCross, line: PairLine) -> PairFacts:
    """Counts and cytoplasm of one pair."""
    ahead, back = (records.direction(codes) for codes in line.crosses)
    return PairFacts(
        line,
        (ahead, back),
        (_kept(net, ahead.progeny), _kept(net, back.progeny)),
        (_selfs(net, ahead.progeny), _selfs(net, back.progeny)),
        (net.cytoplasm(line.parents[0]), net.cytoplasm(line.parents[1])),
    )


def ask_pair_report(net: PedigreeNetwork, line: PairLine) -> ReciprocalReport:
    """The tests of a pair of which both directions were made; they take longer than the counts."""
    from pedigreeview.network.reciprocals import ReciprocalPair
    from pedigreeview.planning.reciprocal_report import reciprocal_report

    return reciprocal_report(net, ReciprocalPair(line.level, line.parents, line.crosses))


def _kept(net: PedigreeNetwork, plants: Sequence[str]) -> int:
    return sum(net.book.plants[code].status == "kept" for code in plants)


def _selfs(net: PedigreeNetwork, plants: Sequence[str]) -> tuple[str, ...]:
    return tuple(code for code in plants if net.parents(code).selfed)


def ask_takes(ahead: DirectionCounts, back: DirectionCounts):  # type: ignore[no-untyped-def]
    """Kept until the page asks by `ask_pair_facts` alone."""
    from pedigreeview.planning.takes import compare_takes

    here, there = ahead.take_of, back.take_of
    if here is None or there is None or here[0] > here[1] or there[0] > there[1]:
        return None
    return compare_takes((here[0], there[0]), (here[1], there[1]))
