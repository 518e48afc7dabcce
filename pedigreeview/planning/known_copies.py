"""What genotype a parent has, as far as it is known: as recorded, else where inference is sure."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["known_copies"]

_SURE = 0.995


def known_copies(net: PedigreeNetwork) -> Callable[[str, str, str], int | None]:
    """Copies of an allele that a plant carries: as recorded, else where inference is as good as
    sure."""
    from pedigreeview.planning.inference import GenotypeChances, genotype_chances
    from pedigreeview.planning.observations import copies_of

    held: dict[str, GenotypeChances | None] = {}

    def copies(plant: str, locus: str, allele: str) -> int | None:
        recorded = copies_of(net.book, plant, locus, allele)
        if recorded is not None:
            return recorded
        if locus not in held:
            try:
                held[locus] = genotype_chances(net, locus)
            except Fault:
                held[locus] = None
        answer = held[locus]
        if answer is None or plant not in answer.chances:
            return None
        genotype, chance = max(answer.of(plant).items(), key=lambda item: item[1])
        return genotype.split("/").count(allele) if chance >= _SURE else None

    return copies
