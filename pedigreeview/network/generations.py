"""Generations: the count that orders the picture, and the trade's names (F1, BC1F2, S1).

The count is formats.md's: founders 0; 1 + the largest among the parents + unrecorded selfings; a
clone, a doubled form and a plant grown from seed of a pool that of the source; doubled haploid
source + 1.  The names hold for descendants of exactly one first cross and are never computed with.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from pedigreeview.network.parentage import Parents

__all__ = ["generation_names", "generations"]


def generations(parents: dict[str, Parents], order: Iterable[str]) -> dict[str, int]:
    """Generation of every plant in `order`, parents first."""
    found: dict[str, int] = {}
    for code in order:
        origin = parents[code]
        if origin.raised == "founder":
            found[code] = 0
        elif origin.raised in ("seed_of", "cutting_of", "doubled_of"):
            found[code] = found[origin.source]
        else:
            eldest = max((found[parent] for parent in origin.codes), default=0)
            found[code] = 1 + eldest + origin.selfings
    return found


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


def generation_names(parents: dict[str, Parents], order: Iterable[str]) -> dict[str, str | None]:
    """The trade's name of each plant's generation; None where no name fits."""
    lines: dict[str, _Line | None] = {}
    for code in order:
        lines[code] = _line(code, parents[code], lines)
    return {code: line.name if line else None for code, line in lines.items()}


def _line(code: str, origin: Parents, lines: dict[str, _Line | None]) -> _Line | None:
    if origin.raised == "founder":
        return _Line("founder", code)
    if origin.raised in ("seed_of", "cutting_of", "doubled_of"):
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
