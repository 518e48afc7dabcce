"""Genotypes at one locus and how they are passed on, for any even ploidy.

A genotype is a multiset of alleles: a sorted tuple of allele numbers, (0, 1) for A/a, (0, 0, 1, 1)
for the duplex of a tetraploid.  A gamete is a multiset of half as many.  Chromosome segregation is
polysomic; double reduction α counts at ploidy 4 alone, as everywhere in the program.
"""

from __future__ import annotations

from functools import cache, cached_property
from itertools import combinations_with_replacement
from math import factorial, prod

import numpy as np
from numpy.typing import NDArray

__all__ = ["Inheritance", "Multiset", "inheritance", "multiset_chances", "multisets"]

FloatArray = NDArray[np.float64]
Multiset = tuple[int, ...]


@cache
def multisets(alleles: int, size: int) -> tuple[Multiset, ...]:
    """All multisets of that size, in the order of their sorted tuples."""
    return tuple(combinations_with_replacement(range(alleles), size))


@cache
def _places(alleles: int, size: int) -> dict[Multiset, int]:
    return {held: place for place, held in enumerate(multisets(alleles, size))}


def multiset_chances(frequencies: FloatArray, size: int) -> FloatArray:
    """Chance of each multiset when `size` alleles are drawn on their own; (k,), sums to 1.

    Parameters
    ----------
    frequencies : (alleles,) chances that sum to 1
    """
    found = np.empty(len(multisets(len(frequencies), size)))
    for place, held in enumerate(multisets(len(frequencies), size)):
        counts = [held.count(allele) for allele in range(len(frequencies))]
        ways = factorial(size) / prod(factorial(count) for count in counts)
        found[place] = ways * prod(float(frequencies[allele]) for allele in held)
    return found


class Inheritance:
    """The tables of one number of alleles, ploidy and double reduction; made by `inheritance`.

    Attributes
    ----------
    genotypes, gametes : multisets of `ploidy` and of half as many alleles
    gamete : (genotypes, gametes) chance of each gamete of each genotype
    join : (gametes, gametes) number of the genotype that two gametes make
    """

    def __init__(self, alleles: int, ploidy: int, double_reduction: float) -> None:
        if ploidy < 2 or ploidy % 2:
            raise ValueError("a rule of inheritance is known for even ploidies alone")
        self.alleles, self.ploidy = alleles, ploidy
        self.double_reduction = double_reduction if ploidy == 4 else 0.0
        half = ploidy // 2
        self.genotypes = multisets(alleles, ploidy)
        self.gametes = multisets(alleles, half)
        self.gamete = self._gamete(half)
        places = _places(alleles, ploidy)
        self.join = np.array(
            [[places[tuple(sorted(a + b))] for b in self.gametes] for a in self.gametes]
        )

    def _gamete(self, half: int) -> FloatArray:
        alpha = self.double_reduction
        ways = factorial(self.ploidy) / (factorial(half) * factorial(self.ploidy - half))
        found = np.zeros((len(self.genotypes), len(self.gametes)))
        for row, held in enumerate(self.genotypes):
            doses = [held.count(allele) for allele in range(self.alleles)]
            for column, taken in enumerate(self.gametes):
                counts = [taken.count(allele) for allele in range(self.alleles)]
                picked = prod(
                    _choose(dose, count) for dose, count in zip(doses, counts, strict=True)
                )
                found[row, column] = (1 - alpha) * picked / ways
                if alpha and taken[0] == taken[-1]:
                    found[row, column] += alpha * doses[taken[0]] / self.ploidy
        return found

    @cached_property
    def joined(self) -> FloatArray:
        """(gametes, gametes, genotypes) 1 where two gametes make the genotype."""
        found = np.zeros((*self.join.shape, len(self.genotypes)))
        np.put_along_axis(found, self.join[:, :, None], 1.0, axis=2)
        return found

    @cached_property
    def crossed(self) -> FloatArray:
        """(genotypes, genotypes, genotypes) chance of each progeny of two plants."""
        found: FloatArray = np.einsum("sh,pk,hkg->spg", self.gamete, self.gamete, self.joined)
        return found

    @cached_property
    def selfed(self) -> FloatArray:
        """(genotypes, genotypes) chance of each progeny of a selfed plant."""
        found: FloatArray = np.einsum("ssg->sg", self.crossed).copy()
        return found

    @cached_property
    def doubled_gamete(self) -> FloatArray:
        """(genotypes, genotypes) chance of each doubled haploid of a plant."""
        places = _places(self.alleles, self.ploidy)
        found = np.zeros((len(self.genotypes), len(self.genotypes)))
        for column, taken in enumerate(self.gametes):
            found[:, places[tuple(sorted(taken + taken))]] += self.gamete[:, column]
        return found

    @cached_property
    def doubled(self) -> FloatArray:
        """(genotypes, genotypes at twice the ploidy) 1 at the chromosome-doubled form."""
        places = _places(self.alleles, 2 * self.ploidy)
        found = np.zeros((len(self.genotypes), len(places)))
        for row, held in enumerate(self.genotypes):
            found[row, places[tuple(sorted(held + held))]] = 1.0
        return found

    @cached_property
    def shares(self) -> FloatArray:
        """(genotypes, alleles) share of each allele in each genotype."""
        counted = [
            [held.count(allele) for allele in range(self.alleles)] for held in self.genotypes
        ]
        found: FloatArray = np.array(counted, float) / self.ploidy
        return found

    @cached_property
    def fixed(self) -> FloatArray:
        """(alleles, genotypes) 1 at the genotype that holds the one allele alone."""
        places = _places(self.alleles, self.ploidy)
        found = np.zeros((self.alleles, len(self.genotypes)))
        for allele in range(self.alleles):
            found[allele, places[(allele,) * self.ploidy]] = 1.0
        return found

    def added(self, size: int) -> NDArray[np.int64]:
        """(multisets of `size`, alleles) number of the multiset with one allele more."""
        places = _places(self.alleles, size + 1)
        return np.array(
            [
                [places[tuple(sorted((*held, allele)))] for allele in range(self.alleles)]
                for held in multisets(self.alleles, size)
            ]
        )


@cache
def inheritance(alleles: int, ploidy: int, double_reduction: float = 0.0) -> Inheritance:
    """The tables of inheritance, each made once.

    Raises
    ------
    ValueError : an odd ploidy
    """
    return Inheritance(alleles, ploidy, double_reduction)


def _choose(held: int, taken: int) -> int:
    if taken > held:
        return 0
    return factorial(held) // (factorial(taken) * factorial(held - taken))
