"""What was seen of one locus: records of phenotypes and of known genotypes, one by one.

Scores are readings that may be wrong with a stated rate; a genotype record is taken as it stands.
A score 'of seed' speaks of a seed that the plant bore, one generation ahead: of one seed, by the
plant's own pollen with the chance that the crop's outcrossing rate leaves, else by unknown pollen.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Place
from pedigreeview.planning.loci import LocusModel
from pedigreeview.planning.rows import row_of

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["Seen", "records_of_locus"]

FloatArray = NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Seen:
    """One record that speaks of one plant at a locus.

    plant, row : the plant and its row in the arrays
    words : 'dwarf', 'genotype C/c'
    date : blank where the record has none
    of_seed : whether it speaks of a seed that the plant bore
    selfed : with `of_seed`, the chance that the seed is by the plant's own pollen
    chances : (genotypes,) chance of the record for each genotype
    """

    plant: str
    row: int
    words: str
    date: str
    of_seed: bool
    selfed: float
    chances: FloatArray

    def sentence(self) -> str:
        """'K17: dwarf (2023-05-02)'."""
        seed = ", its seed" if self.of_seed else ""
        return f"{self.plant}{seed}: {self.words}" + (f" ({self.date})" if self.date else "")


def records_of_locus(
    net: PedigreeNetwork, locus: LocusModel, *, misread: float = 0.0, genotypes: bool = True
) -> list[Seen]:
    """Every record of the book that speaks of a locus, of plants whose parentage can be.

    Parameters
    ----------
    misread : chance that a phenotype was read as another one, 0 to below 1
    genotypes : whether recorded genotypes count; without them the phenotypes speak alone

    Raises
    ------
    Fault : a recorded genotype that cannot be read
    ValueError : a misread rate outside its range
    """
    if not 0 <= misread < 1:
        raise ValueError("a misread rate lies from 0 to below 1")
    book, withheld = net.book, net.withheld
    found: list[Seen] = []

    def usable(code: str) -> bool:
        return code in book.plants and code not in withheld

    if genotypes:
        for known in book.genotypes:
            if known.locus != locus.locus or not known.genotype or not usable(known.plant):
                continue
            fits = locus.fitting(known.genotype, net.ploidy(known.plant), Place(plant=known.plant))
            found.append(
                Seen(
                    known.plant,
                    row_of(net, known.plant),
                    f"genotype {known.genotype}",
                    "",
                    False,
                    0.0,
                    fits.astype(float),
                )
            )
    for score in book.scores:
        phenotype = locus.readings.get((score.trait, " ".join(score.value.casefold().split())))
        if phenotype is None or not usable(score.plant):
            continue
        of_seed = score.of == "seed"
        rate = book.outcrossing(book.plants[score.plant]) if of_seed else None
        chances = locus.seen(phenotype, net.ploidy(score.plant), misread)
        selfed = 0.0 if rate is None else 1.0 - rate
        words = f"{score.trait} {score.value}"
        row = row_of(net, score.plant)
        found.append(Seen(score.plant, row, words, score.date, of_seed, selfed, chances))
    return found
