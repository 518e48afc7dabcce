"""How much of the differences in a measured trait is passed on, where the records allow to tell.

Two roads, each with its standard error: the regression of progeny on their parents, and the
response to selection over the selection differential (realised heritability).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from pedigreeview.planning.measured import Observation

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["Realised", "Regression", "parent_regression", "realised_heritability"]

_FEW_FAMILIES, _FEW_SELECTED, _FEW_PROGENY = 10, 3, 20


@dataclass(frozen=True, slots=True)
class Regression:
    """Heritability by regression of the means of families on their parents.

    heritability : the slope (on one parent where the other was not measured: twice the slope)
    error : its standard error
    families, progeny : how many points and how many measured progeny
    parents : 'mid-parent', 'selfed parent' or 'one parent'
    warnings : sentences
    """

    heritability: float
    error: float
    families: int
    progeny: int
    parents: str
    warnings: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Realised:
    """Realised heritability: response over selection differential.

    heritability, error : R/S and its standard error, S taken as known
    response : mean of the progeny less the mean of the plants among which parents were chosen
    differential : mean of the chosen plants less that mean
    chosen, candidates, progeny : how many plants
    by_check : whether years were made comparable by varieties grown in both
    warnings : sentences
    """

    heritability: float
    error: float
    response: float
    differential: float
    chosen: int
    candidates: int
    progeny: int
    by_check: bool
    warnings: tuple[str, ...]


def parent_regression(net: PedigreeNetwork, found: Sequence[Observation]) -> Regression | None:
    """Regression of the mean of each family on its parents, weighted by its number of plants.

    The kind of parents with most families is used: mid-parent of crosses, the one parent of
    selfings, or one parent of crosses of which the other was not measured.  None below three
    families or where the parents do not differ.

    Notes
    -----
    With mid-parent or a selfed parent the slope is the share of the parents' variance that is
    additive genetic; with one parent half of it (Falconer & Mackay 1996, from memory).
    """
    means = _means(found)
    points: dict[str, list[tuple[float, float, int]]] = {}
    for cross in net.book.crosses:
        progeny = [means[code] for code in net.progeny_of_cross(cross) if code in means]
        placed = _parent_value(net, cross, means)
        if progeny and placed is not None:
            kind, value = placed
            points.setdefault(kind, []).append((value, float(np.mean(progeny)), len(progeny)))
    usable = {kind: held for kind, held in points.items() if len(held) >= 3}
    usable = {k: held for k, held in usable.items() if len({x for x, _, _ in held}) > 1}
    if not usable:
        return None
    kind = max(usable, key=lambda k: len(usable[k]))
    x, y, weight = (np.array(column, float) for column in zip(*usable[kind], strict=True))
    centre_x, centre_y = (float(weight @ v / weight.sum()) for v in (x, y))
    squares = float(weight @ (x - centre_x) ** 2)
    slope = float(weight @ ((x - centre_x) * (y - centre_y))) / squares
    left = y - centre_y - slope * (x - centre_x)
    error = float(np.sqrt((weight @ left**2) / (len(x) - 2) / squares))
    times = 2.0 if kind == "one parent" else 1.0
    progeny_count = int(weight.sum())
    warnings = []
    if len(x) < _FEW_FAMILIES:
        warnings.append(f"Only {len(x)} families stand behind this slope.")
    if error * times > 0.25:
        warnings.append("The standard error is so large that the figure says little.")
    if not 0 <= slope * times <= 1:
        warnings.append("The figure lies outside 0 to 1: chance, or years that differ.")
    return Regression(slope * times, error * times, len(x), progeny_count, kind, tuple(warnings))


def _means(found: Sequence[Observation]) -> dict[str, float]:
    held: dict[str, list[float]] = {}
    for item in found:
        held.setdefault(item.plant, []).append(item.value)
    return {plant: float(np.mean(values)) for plant, values in held.items()}


def _parent_value(
    net: PedigreeNetwork, cross: str, means: dict[str, float]
) -> tuple[str, float] | None:
    record = net.book.crosses[cross]
    progeny = net.progeny_of_cross(cross)
    if not progeny:
        return None
    origin = net.parents(progeny[0])
    seed, pollen = origin.seed_parent or record.seed_parent, origin.pollen_parent
    if origin.selfed:
        return ("selfed parent", means[seed]) if seed in means else None
    if seed in means and pollen in means:
        return "mid-parent", (means[seed] + means[pollen]) / 2
    known = means.get(seed, means.get(pollen))
    return None if known is None else ("one parent", known)


def realised_heritability(net: PedigreeNetwork, found: Sequence[Observation]) -> Realised | None:
    """Response over selection differential, over all families in which parents were chosen.

    A chosen plant is one with measured progeny by selfing, or by a cross with another measured
    plant; its candidates are the measured plants of its own family.  None where no family had both
    chosen plants and others, or where the chosen do not differ from the rest.

    Notes
    -----
    Every family counts by its measured progeny.  Where varieties were measured in the years of
    both parents and progeny, the change in their mean is taken off the response.
    """
    means, years = _means(found), _years(found)
    shifts = _checks(net, found)
    parts: list[tuple[float, float, int, float]] = []
    chosen: set[str] = set()
    candidates: set[str] = set()
    compared, uncompared = 0, 0
    for cross in net.book.crosses:
        codes = net.progeny_of_cross(cross)
        if not codes:
            continue
        progeny = [code for code in codes if code in means]
        origin = net.parents(codes[0])
        parents = dict.fromkeys((origin.seed_parent, origin.pollen_parent))
        known = [code for code in parents if code in means]
        if not progeny or not known or len(known) < len(parents):
            continue
        group: list[float] = []
        differences = []
        for parent in known:
            own = net.parents(parent).cross
            sibs = [code for code in net.progeny_of_cross(own) if code in means] if own else []
            if len(sibs) < 2:
                break
            group_mean = float(np.mean([means[code] for code in sibs]))
            group.append(group_mean)
            differences.append(means[parent] - group_mean)
            candidates.update(sibs)
        if len(group) < len(known):
            continue
        chosen.update(known)
        values = [means[code] for code in progeny]
        shift = _shift(shifts, {years[c] for c in known}, {years[c] for c in progeny})
        same = {years[c] for c in known} == {years[c] for c in progeny}
        compared, uncompared = (
            (compared + 1, uncompared) if shift is not None or same else (compared, uncompared + 1)
        )
        response = float(np.mean(values)) - float(np.mean(group)) - (shift or 0.0)
        variance = float(np.var(values, ddof=1)) if len(values) > 1 else float("nan")
        parts.append((response, float(np.mean(differences)), len(values), variance))
    if not parts:
        return None
    weight = np.array([part[2] for part in parts], float)
    response = float(weight @ [part[0] for part in parts] / weight.sum())
    differential = float(weight @ [part[1] for part in parts] / weight.sum())
    if abs(differential) < 1e-12:
        return None
    spread = np.nanmean([part[3] for part in parts]) if any(p[2] > 1 for p in parts) else np.nan
    groups_noise = spread / max(1, len(candidates))
    error = float(np.sqrt(spread / weight.sum() + groups_noise) / abs(differential))
    warnings = []
    if uncompared:
        warnings.append(
            "Parents and progeny were measured in different years without a variety grown in both: "
            "the difference between the years is part of the response."
        )
    if len(chosen) < _FEW_SELECTED or weight.sum() < _FEW_PROGENY:
        warnings.append(
            f"Only {len(chosen)} chosen plants and {int(weight.sum())} progeny stand behind this."
        )
    if np.isnan(error) or error > 0.25:
        warnings.append("The standard error is so large that the figure says little.")
    return Realised(
        response / differential,
        error,
        response,
        differential,
        len(chosen),
        len(candidates),
        int(weight.sum()),
        compared > 0 and not uncompared,
        tuple(warnings),
    )


def _years(found: Sequence[Observation]) -> dict[str, str]:
    years: dict[str, str] = {}
    for item in found:
        years.setdefault(item.plant, item.year)
    return years


def _checks(net: PedigreeNetwork, found: Sequence[Observation]) -> dict[str, dict[str, float]]:
    """Mean value of each variety in each year."""
    held: dict[str, dict[str, list[float]]] = {}
    for item in found:
        if net.book.kind(net.book.plants[item.plant]) == "variety" and item.year:
            held.setdefault(item.plant, {}).setdefault(item.year, []).append(item.value)
    return {
        plant: {year: float(np.mean(values)) for year, values in by_year.items()}
        for plant, by_year in held.items()
    }


def _shift(checks: dict[str, dict[str, float]], before: set[str], after: set[str]) -> float | None:
    """Change in the mean of varieties from the years of the parents to those of the progeny."""
    changes = []
    for by_year in checks.values():
        old = [by_year[year] for year in before if year in by_year]
        new = [by_year[year] for year in after if year in by_year]
        if old and new:
            changes.append(float(np.mean(new)) - float(np.mean(old)))
    return float(np.mean(changes)) if changes else None
