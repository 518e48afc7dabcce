"""Brute force: every way in which a small pedigree can carry its alleles, one by one.

Written apart from the inference: dictionaries of chances over genotypes as sorted strings, all
plants held at once, nothing eliminated.  It reads rows (`Row`) by the table of numbers.md.
"""

from __future__ import annotations

from collections import defaultdict
from itertools import combinations, product

import numpy as np

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin, Row

Chances = dict[str, float]
"""Sorted alleles, one letter each, → chance."""


def mixed(parts: list[tuple[float, Chances]]) -> Chances:
    found: Chances = defaultdict(float)
    for share, chances in parts:
        for key, chance in chances.items():
            if share * chance > 0:
                found[key] += share * chance
    return dict(found)


def sorted_text(letters) -> str:
    return "".join(sorted(letters))


class GenotypeOracle:
    """Joint chances of all rows of a pedigree at one locus."""

    def __init__(self, arrays: PedigreeArrays, frequencies: dict[str, float]) -> None:
        self.arrays = arrays
        self.frequencies = frequencies
        self.alpha = arrays.double_reduction
        self.rows = [arrays.row(at) for at in range(len(arrays))]
        self.matters = [self.looked_at(at) for at in range(len(arrays))]
        self.memory: dict[tuple, Chances] = {}

    def looked_at(self, at: int) -> list[int]:
        """Rows whose state decides what a row can be; through pools to what stands behind them."""
        found: set[int] = set()
        for parent, _ in self.rows[at].weights():
            found.add(parent)
            if self.rows[parent].pool:
                found.update(self.looked_at(parent))
        return sorted(found)

    # Chances of one plant, given what the rows before it are ------------------------------------

    def apart(self, size: int) -> Chances:
        return mixed(
            [
                (float(np.prod([self.frequencies[a] for a in drawn])), {sorted_text(drawn): 1.0})
                for drawn in product(self.frequencies, repeat=size)
            ]
        )

    def gametes(self, plants: Chances, ploidy: int) -> Chances:
        parts = []
        for genotype, chance in plants.items():
            taken = list(combinations(genotype, ploidy // 2))
            alpha = self.alpha if ploidy == 4 else 0.0
            parts += [(chance * (1 - alpha) / len(taken), {sorted_text(t): 1.0}) for t in taken]
            if alpha:
                parts += [(chance * alpha / 4, {a + a: 1.0}) for a in genotype]
        return mixed(parts)

    def together(self, one: Chances, other: Chances) -> Chances:
        return mixed(
            [(p * q, {sorted_text(a + b): 1.0}) for a, p in one.items() for b, q in other.items()]
        )

    def selfed(self, plants: Chances, ploidy: int) -> Chances:
        parts = []
        for genotype, chance in plants.items():
            gametes = self.gametes({genotype: 1.0}, ploidy)
            parts.append((chance, self.together(gametes, gametes)))
        return mixed(parts)

    def member(self, at: int, held: tuple) -> Chances:
        """The plant of a row as it is, or one more plant of a pool."""
        if not self.rows[at].pool:
            return {held[at]: 1.0}
        return self.raised(at, held)

    def one_allele(self, row: Row, held: tuple) -> Chances:
        known = 0.0
        parts = []
        for parent, weight in row.weights():
            known += weight
            for genotype, chance in self.member(parent, held).items():
                parts += [(weight * chance / len(genotype), {a: 1.0}) for a in genotype]
        return mixed([*parts, (max(0.0, 1 - known), dict(self.frequencies))])

    def raised(self, at: int, held: tuple) -> Chances:
        row = self.rows[at]
        if row.origin is Origin.FOUNDER or row.fixation is not None:
            if row.pool and held[at] != "loose":
                return {held[at] * row.ploidy: 1.0}
            if row.origin is not Origin.FOUNDER:
                allele = self.one_allele(row, held)
                drawn: Chances = {"": 1.0}
                for _ in range(row.ploidy):
                    drawn = self.together(drawn, allele)
                return drawn
            if row.pool:
                return self.apart(row.ploidy)
            fixed = {a * row.ploidy: p for a, p in self.frequencies.items()}
            return mixed(
                [(row.fixation or 0.0, fixed), (1 - (row.fixation or 0.0), self.apart(row.ploidy))]
            )
        found = self.first(row, held)
        for _ in range(row.selfings):
            found = self.selfed(found, row.ploidy)
        return found

    def first(self, row: Row, held: tuple) -> Chances:
        if row.origin is Origin.FATHER:
            rest = 1 - sum(odds for _, odds in row.pollen)
            return mixed(
                [(odds, self.member(p, held)) for p, odds in row.pollen]
                + [(max(0.0, rest), self.apart(row.ploidy))]
            )
        unknown = self.gametes(self.apart(row.ploidy), row.ploidy)
        source = None if row.seed == UNKNOWN else self.member(row.seed, held)
        if row.origin is Origin.CROSS:
            seed = unknown if source is None else self.gametes(source, row.ploidy)
            parts, known = [], 0.0
            for parent, odds in row.pollen:
                known += odds
                if parent == row.seed:
                    parts.append((odds, self.selfed(source, row.ploidy)))
                else:
                    pollen = self.gametes(self.member(parent, held), row.ploidy)
                    parts.append((odds, self.together(seed, pollen)))
            return mixed([*parts, (max(0.0, 1 - known), self.together(seed, unknown))])
        assert source is not None
        if row.origin is Origin.SELF:
            return self.selfed(source, row.ploidy)
        if row.origin is Origin.SIB:
            gametes = self.gametes(source, row.ploidy)
            return self.together(gametes, gametes)
        if row.origin is Origin.DOUBLED:
            return {sorted_text(g + g): p for g, p in source.items()}
        if row.origin is Origin.HAPLOID:
            return mixed(
                [
                    (p, {sorted_text(g + g): 1.0})
                    for g, p in self.gametes(source, row.ploidy).items()
                ]
            )
        return source

    # All rows at once -----------------------------------------------------------------------------

    def states(self, at: int, held: tuple) -> Chances:
        """What a row can be: a genotype; of a variety or line the allele it is fixed on."""
        key = (at, *(held[parent] for parent in self.matters[at]))
        if key not in self.memory:
            self.memory[key] = self.worked_out(at, held)
        return self.memory[key]

    def worked_out(self, at: int, held: tuple) -> Chances:
        row = self.rows[at]
        if not row.pool:
            return self.raised(at, held)
        if row.fixation is None:
            return {"pool": 1.0}
        if row.origin is Origin.FOUNDER:
            fixed, allele = row.fixation, dict(self.frequencies)
        else:
            theta = float(self.arrays.self_coancestry()[at])
            before = theta - float(self.arrays.innovation()[at])
            fixed = 1.0 if before > 1 - 1e-12 else (theta - before) / (1 - before)
            allele = self.one_allele(row, held)
        return mixed([(fixed, allele), (1 - fixed, {"loose": 1.0})])

    def joint(self, seen: dict[int, list[set[str]]]) -> dict[tuple, float]:
        """Chance of every way to be, with records: row → sets of genotypes that each allows."""
        ways: dict[tuple, float] = {(): 1.0}
        for at in range(len(self.rows)):
            grown: dict[tuple, float] = defaultdict(float)
            for held, chance in ways.items():
                for state, share in self.states(at, held).items():
                    if not self.rows[at].pool and any(state not in s for s in seen.get(at, ())):
                        continue
                    grown[(*held, state)] += chance * share
            ways = grown
        # Of a pool one plant is spoken of, once all else is settled.
        spoken = [at for at in seen if self.rows[at].pool]
        for at in spoken:
            ways = {
                held: chance
                * sum(p for g, p in self.member(at, held).items() if all(g in s for s in seen[at]))
                for held, chance in ways.items()
            }
        return {held: chance for held, chance in ways.items() if chance > 0}

    def chances(self, seen: dict[int, list[set[str]]]) -> list[Chances] | None:
        """Chances of the genotypes of every row given the records, None where they cannot be."""
        ways = self.joint(seen)
        total = sum(ways.values())
        if total <= 0:
            return None
        found = []
        for at, row in enumerate(self.rows):
            sums: Chances = defaultdict(float)
            for held, chance in ways.items():
                if not row.pool:
                    sums[held[at]] += chance / total
                    continue
                fits = {
                    g: p
                    for g, p in self.member(at, held).items()
                    if all(g in s for s in seen.get(at, ()))
                }
                for genotype, share in fits.items():
                    sums[genotype] += chance / total * share / sum(fits.values())
            found.append(dict(sums))
        return found
