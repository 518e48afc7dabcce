"""Which pairs are worth crossing: every pair of candidates weighed, the best with reasons in words.

All that can be computed for many pairs at once is (2,000 candidates make 2 million pairs); words
are made for the pairs that are shown.  A pair stands in the better of its two directions.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, fields
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault
from pedigreeview.network.origins import Rules
from pedigreeview.network.text import decimal_text, fraction_text
from pedigreeview.planning.complement import (
    WishOfPair,
    complement_words,
    together,
    wishes_of_pair,
)
from pedigreeview.planning.crossed_before import CrossedBefore
from pedigreeview.planning.direction import DirectionAdvice, advise_direction
from pedigreeview.planning.flowering import Flowering, flowering_of
from pedigreeview.planning.merit import Standing, standing_of
from pedigreeview.planning.rows import rows_of
from pedigreeview.planning.wanted import Wanted

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork
    from pedigreeview.planning.inference import GenotypeChances

__all__ = ["Limits", "PairRanking", "PairRow", "Weights", "rank_pairs", "try_pair"]

FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]
Tick = Callable[[int, int], None]

_ENOUGH_DAYS = 7.0
_BLOCK = 200_000


@dataclass(frozen=True, slots=True)
class Weights:
    """How much each part of a pair's score counts; every part lies from 0 (bad) to 1 (good).

    complement : what the two have between them of all that is wanted
    merit : mid-parent over the wishes
    unrelated : 1 − F of the progeny
    flowering : days on which both flower, full from a week on; ½ where nothing is recorded
    fertility : 1 fertile, ½ poor, 0 sterile, by the notes
    new : 1 where the pair was never crossed in either direction
    shown : chance that an accidental self shows itself (worked out for the pairs that are shown)
    """

    complement: float = 3.0
    merit: float = 1.0
    unrelated: float = 1.0
    flowering: float = 0.5
    fertility: float = 1.0
    new: float = 0.25
    shown: float = 0.25

    def __post_init__(self) -> None:
        given = [getattr(self, item.name) for item in fields(self)]
        if min(given) < 0 or sum(given) <= 0:
            raise ValueError("weights are 0 or more, and one of them is above 0")


@dataclass(frozen=True, slots=True)
class Limits:
    """What a pair must keep to; None: no limit.

    inbreeding : F of the progeny at most
    coancestry : θ of the two at most
    founder_share : share of any one founder in the progeny at most
    overlap : days on which both flower at least, where both are recorded
    fertile : whether pairs noted as sterile in both directions are left out
    never_made : whether pairs that were crossed before are left out
    """

    inbreeding: float | None = None
    coancestry: float | None = None
    founder_share: float | None = None
    overlap: float | None = None
    fertile: bool = True
    never_made: bool = False


@dataclass(frozen=True, slots=True)
class PairRow:
    """One pair, in the direction that is proposed.

    score : weighted mean of `parts`, 0 to 1
    parts : the parts of `Weights`, each 0 to 1
    inbreeding : F of the progeny, None where ploidies differ
    founder_shares : of the progeny, largest first
    overlap : days on which both flower, below 0 the days between, None = not recorded
    made, made_other_way : crosses of this pair in this direction and in the other
    direction : which direction lets accidental selfs be seen
    reasons : sentences, the most telling first
    """

    seed: str
    pollen: str
    score: float
    parts: Mapping[str, float]
    inbreeding: float | None
    inbreeding_text: str
    coancestry: float
    founder_shares: Mapping[str, float]
    wishes: tuple[WishOfPair, ...]
    overlap: float | None
    made: tuple[str, ...]
    made_other_way: tuple[str, ...]
    direction: DirectionAdvice
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class PairRanking:
    """Pairs, the best first.

    pairs : how many were weighed
    kept : how many keep to the limits
    left_out : reason → how many pairs it leaves out
    base : the base of the coefficients in one sentence
    """

    rows: tuple[PairRow, ...]
    pairs: int
    kept: int
    left_out: Mapping[str, int]
    weights: Weights
    limits: Limits
    base: str


@dataclass
class _Weighing:
    """What is known of the candidates, asked for many pairs at once."""

    net: PedigreeNetwork
    codes: tuple[str, ...]
    standing: Standing
    answers: Mapping[str, GenotypeChances]

    def __post_init__(self) -> None:
        arrays, rows = self.net.arrays, rows_of(self.net, self.codes)
        self.theta = arrays.coancestry_between(rows, rows)
        self.inbreeding = arrays.inbreeding()[rows]
        self.ploidy = arrays.ploidy[rows]
        self.flowering: Flowering = flowering_of(self.net, self.codes)
        self.before = CrossedBefore(self.net)
        self.fertility = self.before.fertility(self.codes)
        made = [
            [bool(self.before.crosses(a, b)) for b in self.codes] if self._crossed(a) else None
            for a in self.codes
        ]
        nothing = np.zeros(len(self.codes), bool)
        self.made = np.array([nothing if line is None else line for line in made]).reshape(
            len(self.codes), len(self.codes)
        )
        self._rows = rows

    def _crossed(self, code: str) -> bool:
        return bool(self.net.crosses_of(code)[0]) or self.net.parents(code).raised == "cutting_of"

    def shares(self) -> FloatArray:
        """(n, founders) shares of the founders."""
        return self.net.arrays.founder_shares(self._rows)

    def progeny_inbreeding(self, one: IntArray, other: IntArray) -> FloatArray:
        """F of the progeny of each pair, NaN where no rule holds."""
        found = np.full(len(one), np.nan)
        for ploidy in np.unique(self.ploidy).tolist():
            if ploidy % 2:
                continue
            here = (self.ploidy[one] == ploidy) & (self.ploidy[other] == ploidy)
            rules = Rules(ploidy, self.net.arrays.double_reduction)
            f_one, f_other = self.inbreeding[one[here]], self.inbreeding[other[here]]
            found[here] = rules.cross(f_one, f_other, self.theta[one[here], other[here]])
        return found

    def parts(self, one: IntArray, other: IntArray) -> dict[str, FloatArray]:
        """The parts of the score of each pair but `shown`, each 0 to 1."""
        overlap = self.flowering.overlap(one, other)
        merit = self.standing.merit
        fertile = np.maximum(self.fertility[one, other], self.fertility[other, one])
        crossed = self.made[one, other] | self.made[other, one]
        return {
            "complement": together(self.standing, one, other),
            "merit": (merit[one] + merit[other]) / 2,
            "unrelated": 1.0 - np.nan_to_num(self.progeny_inbreeding(one, other), nan=1.0),
            "flowering": np.where(
                np.isnan(overlap), 0.5, np.clip(overlap / _ENOUGH_DAYS, 0.0, 1.0)
            ),
            "fertility": fertile,
            "new": 1.0 - crossed,
        }


def rank_pairs(
    net: PedigreeNetwork,
    candidates: Sequence[str],
    wanted: Sequence[Wanted],
    *,
    weights: Weights | None = None,
    limits: Limits | None = None,
    answers: Mapping[str, GenotypeChances] | None = None,
    most: int = 50,
    tick: Tick | None = None,
) -> PairRanking:
    """Rank all pairs of candidates.

    Parameters
    ----------
    candidates : two or more plants; those that are withheld are left out
    wanted : the wishes, none or more
    answers : chances of genotypes by locus: what the wishes for alleles and the advice on the
        direction rest on
    most : how many rows to make
    tick : called with (pairs weighed, pairs); may raise `Cancelled`

    Raises
    ------
    Fault : fewer than two candidates
    """
    weighing = _weighing(net, candidates, wanted, answers)
    chosen, kept_to = weights or Weights(), limits or Limits()
    count = len(weighing.codes)
    if count < 2:
        raise Fault("There are fewer than two candidates.", None, "Choose two plants or more.")
    one, other = (side.astype(np.int64) for side in np.triu_indices(count, 1))
    left_out: dict[str, int] = {}
    kept = np.flatnonzero(_keeping(weighing, one, other, kept_to, left_out))
    scores = np.empty(len(kept))
    total = sum(getattr(chosen, item.name) for item in fields(chosen))
    for start in range(0, len(kept), _BLOCK):
        if tick is not None:
            tick(start, len(kept))
        block = kept[start : start + _BLOCK]
        parts = weighing.parts(one[block], other[block])
        sums = sum(getattr(chosen, name) * values for name, values in parts.items())
        scores[start : start + _BLOCK] = sums / total
    # How selfs show can lift a pair by its own weight at most, so a few more are looked at.
    ahead = min(len(kept), 4 * most + 50)
    first = np.argpartition(-scores, ahead - 1)[:ahead] if ahead else np.array([], np.int64)
    rows = [
        _row(weighing, int(one[at]), int(other[at]), chosen) for at in kept[np.sort(first)].tolist()
    ]
    rows.sort(key=lambda row: (-row.score, row.seed, row.pollen))
    return PairRanking(
        tuple(rows[:most]), len(one), len(kept), left_out, chosen, kept_to, net.base_sentence()
    )


def try_pair(
    net: PedigreeNetwork,
    seed: str,
    pollen: str,
    wanted: Sequence[Wanted] = (),
    *,
    weights: Weights | None = None,
    answers: Mapping[str, GenotypeChances] | None = None,
) -> PairRow:
    """The numbers and reasons of one pair in the direction that is given, whatever the limits.

    Raises
    ------
    Fault : the same plant twice
    WithheldFault : a plant that depends on records that cannot be right
    """
    if seed == pollen:
        raise Fault(
            f"{seed} with itself is a selfing.", None, "Choose two plants, or record a selfing."
        )
    rows_of(net, (seed, pollen))
    weighing = _weighing(net, (seed, pollen), wanted, answers)
    return _row(weighing, 0, 1, weights or Weights(), as_given=True)


def _weighing(
    net: PedigreeNetwork,
    candidates: Sequence[str],
    wanted: Sequence[Wanted],
    answers: Mapping[str, GenotypeChances] | None,
) -> _Weighing:
    codes = tuple(code for code in dict.fromkeys(candidates) if code not in net.withheld)
    known = dict(answers or {})
    for wish in wanted:
        if wish.kind == "allele" and wish.of not in known:
            from pedigreeview.planning.inference import genotype_chances

            known[wish.of] = genotype_chances(net, wish.of)
    return _Weighing(net, codes, standing_of(net, wanted, codes, answers=known), known)


def _keeping(
    weighing: _Weighing, one: IntArray, other: IntArray, limits: Limits, left_out: dict[str, int]
) -> NDArray[np.bool_]:
    """Which pairs keep to the limits; how many each limit leaves out is noted."""
    kept = np.ones(len(one), bool)

    def leave(wrong: NDArray[np.bool_], why: str) -> None:
        if wrong.any():
            left_out[why] = int(wrong.sum())
        kept[wrong] = False

    inbreeding = weighing.progeny_inbreeding(one, other)
    leave(np.isnan(inbreeding), "ploidies that do not go together")
    if limits.inbreeding is not None:
        leave(inbreeding > limits.inbreeding + 1e-12, f"F above {decimal_text(limits.inbreeding)}")
    if limits.coancestry is not None:
        said = f"coancestry above {decimal_text(limits.coancestry)}"
        leave(weighing.theta[one, other] > limits.coancestry + 1e-12, said)
    if limits.founder_share is not None:
        shares = weighing.shares()
        most = np.empty(len(one))
        step = max(1, 4_000_000 // max(1, shares.shape[1]))
        for start in range(0, len(one), step):
            part = slice(start, start + step)
            most[part] = ((shares[one[part]] + shares[other[part]]) / 2).max(axis=1, initial=0.0)
        said = f"a founder above {decimal_text(limits.founder_share)}"
        leave(most > limits.founder_share + 1e-12, said)
    if limits.overlap is not None:
        with np.errstate(invalid="ignore"):
            short = weighing.flowering.overlap(one, other) < limits.overlap
        leave(short, "not in flower together")
    if limits.fertile:
        fertile = np.maximum(weighing.fertility[one, other], weighing.fertility[other, one])
        leave(fertile <= 0, "noted as sterile")
    if limits.never_made:
        leave(weighing.made[one, other] | weighing.made[other, one], "crossed before")
    return kept


def _row(
    weighing: _Weighing, one: int, other: int, weights: Weights, *, as_given: bool = False
) -> PairRow:
    net, codes = weighing.net, weighing.codes
    advice = advise_direction(weighing.answers, codes[one], codes[other])
    seed, pollen = one, other
    if not as_given:
        # Fertility decides first, then how selfs show.
        here, there = weighing.fertility[one, other], weighing.fertility[other, one]
        if there > here or (there == here and advice.seed == codes[other]):
            seed, pollen = other, one
    pair = np.array([seed]), np.array([pollen])
    parts = {name: float(values[0]) for name, values in weighing.parts(*pair).items()}
    fertile = float(weighing.fertility[seed, pollen])
    parts["fertility"] = fertile
    parts["shown"] = advice.shown[0 if seed == one else 1]
    total = sum(getattr(weights, item.name) for item in fields(weights))
    score = sum(getattr(weights, name) * value for name, value in parts.items()) / total
    a, b = codes[seed], codes[pollen]
    inbreeding = net.progeny_inbreeding(a, b)
    text = ""
    if inbreeding is not None:
        text = fraction_text(net.progeny_inbreeding_exact(a, b), inbreeding)
    shares: dict[str, float] = {}
    for code in (a, b):
        for founder, share in net.founder_shares(code).items():
            shares[founder] = shares.get(founder, 0.0) + share / 2
    overlap = float(weighing.flowering.overlap(*pair)[0])
    before = weighing.before
    row = PairRow(
        a,
        b,
        score,
        parts,
        inbreeding,
        text,
        float(weighing.theta[seed, pollen]),
        dict(sorted(shares.items(), key=lambda item: -item[1])),
        wishes_of_pair(weighing.standing, seed, pollen),
        None if np.isnan(overlap) else overlap,
        before.crosses(a, b),
        before.crosses(b, a),
        advice,
        (),
    )
    return _with_reasons(row, weighing, seed, pollen)


def _with_reasons(row: PairRow, weighing: _Weighing, seed: int, pollen: int) -> PairRow:
    from dataclasses import replace

    said = [complement_words(weighing.standing, seed, pollen)]
    if row.inbreeding is None:
        said.append("Their ploidies do not go together: expect few seeds or none.")
    else:
        said.append(f"F of the progeny is {row.inbreeding_text}.")
    if row.overlap is not None:
        days = abs(round(row.overlap))
        noun = "day" if days == 1 else "days"
        if row.overlap > 0:
            said.append(f"They flower together on {days} {noun}.")
        else:
            said.append(f"They do not flower together: {days} {noun} lie between; store pollen.")
    said.append(row.direction.sentence)
    before = weighing.before
    said.append(before.sentence(row.seed, row.pollen))
    said.append(before.sentence(row.pollen, row.seed))
    said.extend(before.notes(row.seed, row.pollen))
    return replace(row, reasons=tuple(text for text in said if text))
