"""What the Parents page asks of planning: the ranking of pairs, one pair, a choice of several.

Knows no widgets; everything here runs in a thread.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault
from pedigreeview.window.relatedness_sets import plants_of_set

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.choosing import Choice
    from pedigreeview.planning.inference import GenotypeChances
    from pedigreeview.planning.pairs import Limits, PairRow, Weights
    from pedigreeview.planning.wanted import Wanted

__all__ = ["RankQuestion", "Ranked", "answers_of", "choose_several", "rank", "weigh_pair"]

Tick = Callable[[int, int], None]
SetQuestion = tuple[str, dict[str, Any]]

ROWS = 300
"""Pairs that are listed."""
_WITH_PARTS = 2000
"""Pairs that are looked at where the candidates for the two parts differ."""
_WIDEST = 2500
"""Candidates that are weighed with each other."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("ParentsAsking", text)


@dataclass(frozen=True, slots=True)
class RankQuestion:
    """All that a ranking goes by.

    seeds, pollens : the sets of candidates; None as pollens: the same plants in either part
    """

    seeds: SetQuestion
    pollens: SetQuestion | None
    wanted: tuple[Wanted, ...]
    weights: Weights
    limits: Limits
    unprotected: bool = False


@dataclass(frozen=True, slots=True)
class Ranked:
    """The ranking with what was left out.

    pairs : how many were weighed; kept : how many keep to the limits
    notes : sentences on candidates and pairs that were left out
    answers : chances of genotypes by locus, for the next question about the same book
    """

    rows: tuple[PairRow, ...]
    candidates: int
    pairs: int
    kept: int
    notes: tuple[str, ...]
    answers: Mapping[str, GenotypeChances]


def answers_of(net: PedigreeNetwork, tick: Tick) -> dict[str, GenotypeChances]:
    """Chances of genotypes at every locus of the book that can be read."""
    from pedigreeview.planning.inference import genotype_chances

    found = {}
    loci = list(net.book.loci)
    for done, locus in enumerate(loci):
        tick(done, len(loci))
        try:
            found[locus] = genotype_chances(net, locus, tick=tick)
        except Fault:
            # What is wrong with the gene stands on the Checks page.
            continue
    return found


def rank(
    net: PedigreeNetwork,
    question: RankQuestion,
    tick: Tick,
    answers: Mapping[str, GenotypeChances] | None = None,
) -> Ranked:
    """The best pairs, in a direction that both parts allow.

    Raises
    ------
    Fault : fewer than two candidates, or too many of them
    """
    from pedigreeview.planning.pairs import rank_pairs

    seeds = plants_of_set(net, question.seeds[0], **question.seeds[1])
    apart = question.pollens is not None
    pollens = (
        plants_of_set(net, question.pollens[0], **question.pollens[1])
        if question.pollens is not None
        else seeds
    )
    notes: list[str] = []
    held = list(dict.fromkeys([*seeds, *pollens]))
    withheld = [code for code in held if code in net.withheld]
    if withheld:
        notes.append(
            _tr("{} left out, since they depend on records that cannot be right.").format(
                _plants(len(withheld))
            )
        )
    if question.unprotected:
        shut = {code for code in held if net.book.plants[code].protected}
        if shut:
            notes.append(_tr("{} left out as protected.").format(_plants(len(shut))))
            held = [code for code in held if code not in shut]
    held = [code for code in held if code not in net.withheld]
    if len(held) > _WIDEST:
        raise Fault(
            _tr("{:,} candidates are more than are weighed; {:,} are the most.").format(
                len(held), _WIDEST
            ),
            None,
            _tr("Choose a smaller set of plants."),
        )
    known = dict(answers) if answers is not None else answers_of(net, tick)
    most = _WITH_PARTS if apart else ROWS
    found = rank_pairs(
        net,
        held,
        question.wanted,
        weights=question.weights,
        limits=question.limits,
        answers=known,
        most=most,
        tick=tick,
    )
    for why, number in found.left_out.items():
        text = _tr("{} left out: {}.")
        noun = _tr("1 pair") if number == 1 else _tr("{:,} pairs").format(number)
        notes.append(text.format(noun, why))
    rows = list(found.rows)
    kept = found.kept
    if apart:
        rows = _in_parts(net, rows, set(seeds), set(pollens), question, known, tick)
        if found.kept > len(found.rows):
            text = _tr("Who may be which parent was looked at for the best {:,} pairs.")
            notes.append(text.format(len(found.rows)))
        kept = len(rows)
    return Ranked(tuple(rows[:ROWS]), len(held), found.pairs, kept, tuple(notes), known)


def _plants(number: int) -> str:
    return _tr("1 plant is") if number == 1 else _tr("{:,} plants are").format(number)


def _in_parts(
    net: PedigreeNetwork,
    rows: Sequence[PairRow],
    seeds: set[str],
    pollens: set[str],
    question: RankQuestion,
    answers: Mapping[str, GenotypeChances],
    tick: Tick,
) -> list[PairRow]:
    """The pairs that the two sets allow, turned where only the other direction is allowed."""
    found = []
    for done, row in enumerate(rows):
        tick(done, len(rows))
        if row.seed in seeds and row.pollen in pollens:
            found.append(row)
        elif row.pollen in seeds and row.seed in pollens:
            found.append(weigh_pair(net, row.pollen, row.seed, question, answers))
    return found


def weigh_pair(
    net: PedigreeNetwork,
    seed: str,
    pollen: str,
    question: RankQuestion,
    answers: Mapping[str, GenotypeChances],
) -> PairRow:
    """One pair in the direction that is given.

    Raises
    ------
    Fault : the same plant twice, or numbers that are withheld
    """
    from pedigreeview.planning.pairs import try_pair

    return try_pair(net, seed, pollen, question.wanted, weights=question.weights, answers=answers)


def choose_several(
    net: PedigreeNetwork,
    rows: Sequence[PairRow],
    k: int,
    by: str,
    least: float | None,
    most_uses: int | None,
    seconds: float,
    tick: Tick,
) -> Choice:
    """Choose k of the listed pairs together.

    Parameters
    ----------
    by : 'score', or a part of it: 'merit', 'complement'
    least : mean merit that the chosen crosses must reach
    """
    from pedigreeview.planning.choosing import CandidateCross, choose_crosses

    candidates = [
        CandidateCross(
            row.seed, row.pollen, row.score if by == "score" else float(row.parts.get(by, 0.0))
        )
        for row in rows
    ]
    return choose_crosses(
        net, candidates, k, merit=least, most_uses=most_uses, seconds=seconds, tick=tick
    )
