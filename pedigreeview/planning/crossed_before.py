"""Whether a pair has been crossed before, how it went, and what is noted of its fertility."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.reciprocal_counts import RecordsByCross
from pedigreeview.network.parentage import certain_pollen
from pedigreeview.planning.merit import genotype_of

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["CrossedBefore"]

FloatArray = NDArray[np.float64]
_FERTILITY = {"fertile": 1.0, "poor": 0.5, "sterile": 0.0}


class CrossedBefore:
    """The crosses of a book by their two genotypes, and its compatibility notes.

    Planned and skipped crosses do not count as made.
    """

    def __init__(self, net: PedigreeNetwork) -> None:
        self._net = net
        self._records = RecordsByCross(net.book)
        self._crosses: dict[tuple[str, str], list[str]] = {}
        candidates = net.book.candidates()
        for code, cross in net.book.crosses.items():
            pollen = certain_pollen(cross, candidates.get(code, ()))
            if cross.state in ("planned", "skipped") or not cross.seed_parent or not pollen:
                continue
            if cross.seed_parent in net and pollen in net:
                key = genotype_of(net, cross.seed_parent), genotype_of(net, pollen)
                self._crosses.setdefault(key, []).append(code)
        self._notes = [
            (genotype_of(net, row.plant), genotype_of(net, row.partner) if row.partner else "", row)
            for row in net.book.compatibility
            if row.plant in net and (not row.partner or row.partner in net)
        ]

    def crosses(self, seed: str, pollen: str) -> tuple[str, ...]:
        """Crosses made in that direction, clones counting as their original."""
        key = genotype_of(self._net, seed), genotype_of(self._net, pollen)
        return tuple(self._crosses.get(key, ()))

    def sentence(self, seed: str, pollen: str) -> str:
        """How it went: '17-02 (MB × HP): 6 of 9 flowers took, 88 seeds.'; '' if never made."""
        codes = self.crosses(seed, pollen)
        if not codes:
            return ""
        counts = self._records.direction(codes)
        said = []
        if counts.take_of is not None:
            said.append(f"{counts.take_of[0]} of {counts.take_of[1]} flowers took")
        if counts.seeds is not None:
            said.append(f"{counts.seeds} seeds")
        if counts.progeny:
            plants = len(counts.progeny)
            said.append(f"{plants} plant{'' if plants == 1 else 's'} in the book")
        went = ", ".join(said) if said else "nothing is noted of how it went"
        return f"{', '.join(codes)} ({seed} × {pollen}): {went}."

    def fertility(self, codes: Sequence[str]) -> FloatArray:
        """(n, n) fertility with each row as the seed parent and each column as the pollen parent.

        1 fertile, ½ poor, 0 sterile, the lower of both sides' notes; a note on one partner goes
        before one on any; 1 where nothing is noted.
        """
        origins = [genotype_of(self._net, code) for code in codes]
        places: dict[str, list[int]] = {}
        for at, origin in enumerate(origins):
            places.setdefault(origin, []).append(at)
        as_seed, as_pollen = (np.ones((len(codes), len(codes))) for _ in range(2))
        # Notes on any partner first, so that those on one partner stand.
        for plant, partner, row in sorted(self._notes, key=lambda note: note[1] != ""):
            partners = places.get(partner, []) if partner else list(range(len(codes)))
            for at in places.get(plant, ()):
                if row.as_seed in _FERTILITY:
                    as_seed[at, partners] = _FERTILITY[row.as_seed]
                if row.as_pollen in _FERTILITY:
                    as_pollen[partners, at] = _FERTILITY[row.as_pollen]
        return np.minimum(as_seed, as_pollen)

    def notes(self, seed: str, pollen: str) -> tuple[str, ...]:
        """What is noted of either as a partner of the other, or of any."""
        sides = genotype_of(self._net, seed), genotype_of(self._net, pollen)
        found = []
        for plant, partner, row in self._notes:
            if plant not in sides or (partner and partner not in sides) or partner == plant:
                continue
            said = [
                f"{word} as {role}"
                for word, role in ((row.as_seed, "seed parent"), (row.as_pollen, "pollen parent"))
                if word and (word != "fertile" or not row.note)
            ]
            text = "; ".join([*said, *([row.note] if row.note else [])])
            found.append(f"{row.plant}{f' with {row.partner}' if row.partner else ''}: {text}")
        return tuple(found)
