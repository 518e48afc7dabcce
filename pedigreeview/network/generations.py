"""Generations: the count that orders the picture, and the trade's names (F1, BC1F2, S1).

The count is formats.md's: founders 0; 1 + the largest among the parents + unrecorded selfings; a
clone, a doubled form and a plant grown from seed of a pool that of the source; doubled haploid
source + 1.  The names hold for descendants of exactly one first cross and are never computed with.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

import numpy as np

from pedigreeview.network.parentage import Parents
from pedigreeview.network.sweeps import COMPILED_FROM, IntArray

__all__ = ["GenerationNames", "generation_counts", "generations"]

# Raised in these ways a plant is of the generation of its source.
SAME_GENERATION = ("seed_of", "cutting_of", "doubled_of")


def generations(parents: dict[str, Parents], order: Iterable[str]) -> dict[str, int]:
    """Generation of every plant in `order`, parents first."""
    found: dict[str, int] = {}
    for code in order:
        origin = parents[code]
        if origin.raised == "founder":
            found[code] = 0
        elif origin.raised in SAME_GENERATION:
            found[code] = found[origin.source]
        else:
            eldest = max((found[parent] for parent in origin.codes), default=0)
            found[code] = 1 + eldest + origin.selfings
    return found


def generation_counts(
    order: IntArray, first: IntArray, second: IntArray, step: IntArray
) -> IntArray:
    """Generation of every plant given by place, −1 for those not in `order`.

    Parameters
    ----------
    order : places, parents first
    first, second : (n,) places of the two parents of each plant, −1 for none
    step : (n,) what each adds to the largest generation of its parents
    """
    from pedigreeview.network import kernels

    if len(first) >= COMPILED_FROM and kernels.available():
        found: IntArray = kernels.compiled().generation_counts(order, first, second, step)
        return found
    counts = [-1] * len(first)
    parents, adds = list(zip(first.tolist(), second.tolist(), strict=True)), step.tolist()
    for place in order.tolist():
        known = [counts[parent] for parent in parents[place] if parent >= 0]
        counts[place] = adds[place] + max(known, default=0)
    return np.array(counts, np.int64)


@dataclass(frozen=True, slots=True)
class _Line:
    """Where a plant stands within one first cross, or within the selfings of one founder."""

    kind: str
    """'founder', 'S', 'F' or 'BC'."""
    root: str
    """The founder, or the code of the first cross."""
    pair: tuple[str, ...] = ()
    """The two founders of the first cross."""
    filial: int = 0
    recurrent: str = ""
    backcrosses: int = 0

    @property
    def name(self) -> str | None:
        if self.kind == "S":
            return f"S{self.filial}"
        if self.kind == "F":
            return f"F{self.filial}"
        if self.kind == "BC":
            return f"BC{self.backcrosses}F{self.filial}"
        return None

    def on(self, generations_on: int) -> _Line:
        return replace(self, filial=self.filial + generations_on)


class GenerationNames:
    """The trade's name of each plant's generation, found as it is asked for."""

    def __init__(self, parents: Mapping[str, Parents]) -> None:
        self._parents = parents
        self._lines: dict[str, _Line | None] = {}

    def name(self, code: str) -> str | None:
        """The name, or None where none fits; the plant is not tied up in a loop."""
        lines, ahead = self._lines, [code]
        while ahead:
            at = ahead[-1]
            behind = () if at in lines else self._parents[at].codes
            before = [parent for parent in behind if parent not in lines]
            ahead += before
            if not before:
                ahead.pop()
                if at not in lines:
                    lines[at] = _line(at, self._parents[at], lines)
        line = lines[code]
        return line.name if line else None


def _line(code: str, origin: Parents, lines: dict[str, _Line | None]) -> _Line | None:
    if origin.raised == "founder":
        return _Line("founder", code)
    if origin.raised in SAME_GENERATION:
        return lines[origin.source]
    if origin.raised == "sibbed_in":
        source = lines[origin.source]
        return source.on(1) if source and source.kind in ("F", "BC") else None
    if origin.raised != "cross" or not origin.pollen_parent or not origin.seed_parent:
        return None
    seed, pollen = lines[origin.seed_parent], lines[origin.pollen_parent]
    if seed is None or pollen is None:
        return None
    more = origin.selfings
    if origin.selfed:
        if seed.kind == "founder":
            return _Line("S", seed.root, filial=1 + more)
        return seed.on(1 + more)
    if seed.kind in ("founder", "S") and pollen.kind in ("founder", "S"):
        if seed.root == pollen.root:
            return None
        return _Line("F", origin.cross, (seed.root, pollen.root), filial=1 + more)
    if "founder" in (seed.kind, pollen.kind):
        founder, hybrid = (seed, pollen) if seed.kind == "founder" else (pollen, seed)
        return _backcross(founder.root, hybrid, more)
    if seed.kind == pollen.kind and seed.kind != "S" and seed.root == pollen.root:
        same_step = (seed.recurrent, seed.backcrosses) == (pollen.recurrent, pollen.backcrosses)
        return (
            replace(seed, filial=1 + max(seed.filial, pollen.filial) + more) if same_step else None
        )
    return None


def _backcross(founder: str, hybrid: _Line, selfings: int) -> _Line | None:
    if hybrid.kind == "F" and founder in hybrid.pair:
        return replace(hybrid, kind="BC", recurrent=founder, backcrosses=1, filial=1 + selfings)
    if hybrid.kind == "BC" and founder == hybrid.recurrent:
        return replace(hybrid, backcrosses=hybrid.backcrosses + 1, filial=1 + selfings)
    return None
