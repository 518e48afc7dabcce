"""Arrays of a pedigree from the row numbers of the parents, checked."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from pedigreeview.network.origins import UNKNOWN, Origin

__all__ = ["arrays_from_parents"]

_WORDS = {
    "founder": Origin.FOUNDER,
    "cross": Origin.CROSS,
    "seed_of": Origin.MEMBER,
    "sibbed_in": Origin.SIB,
    "cutting_of": Origin.CLONE,
    "doubled_haploid_of": Origin.HAPLOID,
    "doubled_of": Origin.DOUBLED,
}


def arrays_from_parents(
    seed_parent: ArrayLike,
    pollen_parent: ArrayLike,
    selfings: ArrayLike | None,
    pool: ArrayLike | None,
    fixation: ArrayLike | None,
    ploidy: ArrayLike,
    raised: ArrayLike | None,
    candidates: Iterable[tuple[int, int, float]] | None,
) -> dict[str, Any]:
    """The fields of `PedigreeArrays`; parameters as in `PedigreeArrays.from_parents`."""
    seed = np.asarray(seed_parent, np.int64)
    pollen = np.asarray(pollen_parent, np.int64)
    count = len(seed)
    pools = _column("pool", pool, count, bool, False)
    times = _column("selfings", selfings, count, np.int64, 0)
    _refuse(len(pollen) != count, "seed_parent and pollen_parent differ in length")
    _refuse_rows(times < 0, "selfings is negative")
    places = np.arange(count)
    for name, parents in (("seed", seed), ("pollen", pollen)):
        _refuse_rows(
            (parents < UNKNOWN) | (parents >= places), f"its {name} parent is not before it"
        )

    origin = _origins(raised, seed, pollen, count)
    uncertain, starts, options, odds = _candidates(candidates, seed, pollen, count)
    origin[(origin == Origin.FOUNDER) & uncertain] = Origin.CROSS
    _refuse_rows(
        (origin == Origin.FOUNDER) & ((seed != UNKNOWN) | (pollen != UNKNOWN)),
        "a founder has a parent",
    )
    sourced = ~np.isin(origin, (Origin.FOUNDER, Origin.CROSS))
    _refuse_rows(sourced & (seed == UNKNOWN), "it names no source")
    _refuse_rows(sourced & (pollen != UNKNOWN), "it has a source and a pollen parent")
    selfed = (origin == Origin.CROSS) & (seed == pollen) & (seed != UNKNOWN)
    origin[selfed] = Origin.SELF

    certain = (origin == Origin.CROSS) & (pollen != UNKNOWN)
    if len(options):
        _refuse_rows(certain & uncertain, "it has a pollen parent and candidates")
        counts = np.diff(starts) + certain
        all_starts = np.zeros(count + 1, np.int64)
        np.cumsum(counts, out=all_starts[1:])
        all_options = np.empty(all_starts[-1], np.int64)
        all_odds = np.ones(all_starts[-1])
        all_options[all_starts[:-1][certain]] = pollen[certain]
        of_option = np.repeat(places, np.diff(starts))
        at = all_starts[of_option] + np.arange(len(options)) - starts[of_option]
        all_options[at], all_odds[at] = options, odds
    else:
        all_starts = np.zeros(count + 1, np.int64)
        np.cumsum(certain, out=all_starts[1:])
        all_options, all_odds = pollen[certain], np.ones(int(certain.sum()))

    founder = origin == Origin.FOUNDER
    given = (
        np.full(count, np.nan)
        if fixation is None
        else np.broadcast_to(np.asarray(fixation, float), (count,))
    )
    _refuse_rows((given < 0) | (given > 1), "its fixation is outside 0 to 1")
    usual = np.where(pools, 1.0, 0.0)
    fixed = np.where(founder, np.where(np.isnan(given), usual, given), given)
    if fixation is not None and np.ndim(fixation) == 0:
        fixed = np.where(founder, fixed, np.nan)
    _refuse_rows(~founder & ~pools & ~np.isnan(fixed), "only a pool with parents is taken as fixed")
    return {
        "origin": origin,
        "seed": seed,
        "option_starts": all_starts,
        "options": all_options,
        "odds": all_odds,
        "selfings": times,
        "pool": pools,
        "fixation": fixed,
        "ploidy": _ploidies(ploidy, origin, seed, all_starts, all_options, count),
    }


def _origins(
    raised: ArrayLike | None, seed: NDArray[np.int64], pollen: NDArray[np.int64], count: int
) -> NDArray[np.int8]:
    if raised is None:
        known = (seed != UNKNOWN) | (pollen != UNKNOWN)
        return np.where(known, Origin.CROSS, Origin.FOUNDER).astype(np.int8)
    given = np.asarray(raised)
    _refuse(len(given) != count, "raised differs in length from the parents")
    codes = list(_WORDS.values())
    if given.dtype.kind in "US" or given.dtype == object:
        wrong = [word for word in set(given.tolist()) if word not in _WORDS]
        _refuse(bool(wrong), f"raised does not know {wrong[:1]}")
        return np.array([_WORDS[word] for word in given.tolist()], np.int8)
    _refuse_rows((given < 0) | (given >= len(codes)), "its number for raised is not known")
    return np.array(codes, np.int8)[given]


def _candidates(
    candidates: Iterable[tuple[int, int, float]] | None,
    seed: NDArray[np.int64],
    pollen: NDArray[np.int64],
    count: int,
) -> tuple[NDArray[np.bool_], NDArray[np.int64], NDArray[np.int64], NDArray[np.float64]]:
    given = np.array([tuple(row) for row in candidates or ()], float).reshape(-1, 3)
    given = given[np.argsort(given[:, 0], kind="stable")]
    plant, parent, odds = given[:, 0].astype(np.int64), given[:, 1].astype(np.int64), given[:, 2]
    _refuse(bool(((plant < 0) | (plant >= count)).any()), "a candidate is of no row")
    _refuse(bool(((parent < 0) | (parent >= plant)).any()), "a candidate is not before its progeny")
    _refuse(bool(((odds < 0) | (odds > 1)).any()), "odds lie between 0 and 1")
    starts = np.zeros(count + 1, np.int64)
    np.cumsum(np.bincount(plant, minlength=count), out=starts[1:])
    total = np.bincount(plant, odds, minlength=count)
    _refuse_rows(total > 1 + 1e-9, "the odds of its candidates add up to more than 1")
    return np.diff(starts) > 0, starts, parent, odds


def _ploidies(
    ploidy: ArrayLike,
    origin: NDArray[np.int8],
    seed: NDArray[np.int64],
    starts: NDArray[np.int64],
    options: NDArray[np.int64],
    count: int,
) -> NDArray[np.int64]:
    given = np.asarray(ploidy, np.int64)
    found = np.broadcast_to(given, (count,)).copy()
    doubled = np.flatnonzero(origin == Origin.DOUBLED)
    if given.ndim == 0 and len(doubled):
        # What descends from a doubled form has its ploidy: follow the parents in order.
        for row in range(count):
            if origin[row] == Origin.FOUNDER:
                continue
            parent = seed[row] if seed[row] != UNKNOWN else options[starts[row]]
            found[row] = found[parent] * (2 if origin[row] == Origin.DOUBLED else 1)
    _refuse_rows((found < 2) | (found % 2 == 1), "its ploidy is not an even number")
    known = seed != UNKNOWN
    expected = np.where(origin == Origin.DOUBLED, 2, 1) * found[seed]
    _refuse_rows(known & (expected != found), "its ploidy does not follow from its parent")
    of_option = np.repeat(np.arange(count), np.diff(starts))
    wrong = np.zeros(count, bool)
    wrong[of_option[found[options] != found[of_option]]] = True
    _refuse_rows(wrong, "its parents differ in ploidy")
    return found


def _column(name: str, given: ArrayLike | None, count: int, kind: Any, usual: Any) -> NDArray[Any]:
    if given is None:
        return np.full(count, usual, kind)
    found = np.asarray(given, kind)
    _refuse(found.shape != (count,), f"{name} differs in length from the parents")
    return found


def _refuse(wrong: bool, what: str) -> None:
    if wrong:
        raise ValueError(what)


def _refuse_rows(wrong: NDArray[np.bool_], what: str) -> None:
    if wrong.any():
        raise ValueError(f"row {int(np.argmax(wrong))}: {what}")
