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

__all__ = ["PairFacts", "PairLine", "ask_pair_facts", "ask_pair_lines"]

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
    """All that the page shows of one pair in numbers.

    counts : records of the two directions
    kept : plants with the status 'kept' of each
    selfs : plants found to be selfings of each
    report : None where a direction was never made
    cytoplasm : founder of each direction's seed-parent line, None if not known
    """

    line: PairLine
    counts: tuple[DirectionCounts, DirectionCounts]
    kept: tuple[int, int]
    selfs: tuple[tuple[str, ...], tuple[str, ...]]
    report: ReciprocalReport | None
    cytoplasm: tuple[str | None, str | None]


def ask_pair_lines(net: PedigreeNetwork, tick: Tick | None = None) -> list[PairLine]:
    """Pairs by plant, by variety, then crosses of which the other direction was never made.

    Only crosses with two certain parents, made by hand: open pollination has no other direction.
    """
    from pedigreeview.network.parentage import certain_pollen

    found = [PairLine(p.level, p.parents, p.crosses) for p in net.reciprocal_pairs()]
    paired = {code for line in found for side in line.crosses for code in side}
    candidates = net.book.candidates()
    alone: dict[tuple[str, str], list[str]] = {}
    for at, (code, cross) in enumerate(net.book.crosses.items()):
        if tick is not None and at % 1000 == 0:
            tick()
        pollen = certain_pollen(cross, candidates.get(code, []))
        if code in paired or not cross.direction_known:
            continue
        if pollen and cross.seed_parent and pollen != cross.seed_parent:
            alone.setdefault((cross.seed_parent, pollen), []).append(code)
    both = {frozenset(line.parents) for line in found if line.level == "plant"}
    for (seed, pollen), codes in alone.items():
        if frozenset((seed, pollen)) not in both:
            found.append(PairLine("one way", (seed, pollen), (tuple(codes), ())))
    return found


def ask_pair_facts(net: PedigreeNetwork, records: RecordsByCross, line: PairLine) -> PairFacts:
    """Counts, tests and cytoplasm of one pair."""
    from pedigreeview.network.reciprocals import ReciprocalPair
    from pedigreeview.planning.reciprocal_report import reciprocal_report

    ahead, back = (records.direction(codes) for codes in line.crosses)
    report = None
    if all(line.crosses):
        report = reciprocal_report(net, ReciprocalPair(line.level, line.parents, line.crosses))
    return PairFacts(
        line,
        (ahead, back),
        (_kept(net, ahead.progeny), _kept(net, back.progeny)),
        (_selfs(net, ahead.progeny), _selfs(net, back.progeny)),
        report,
        (net.cytoplasm(line.parents[0]), net.cytoplasm(line.parents[1])),
    )


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
