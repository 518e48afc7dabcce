"""The pedigree of one locus as unknowns and tables, ready for inference.

Unknowns: the genotype of each plant, and for a variety or line whether and on which allele it is
fixed.  A pool is no unknown: it is a rule by which each plant of it is drawn from the unknowns
behind it.  A record of a pool is read as of one plant of it, the same for all of its records.

The rules are those of numbers.md, plant by plant; they agree with F and θ of the network:

- founder of fixation f: one allele throughout with chance f, else each allele drawn on its own,
  with the stated frequencies.  In a pool the one allele is the same for all its plants;
- unknown parent: a plant of no inbreeding drawn with those frequencies;
- uncertain pollen parent: by the odds, the rest unknown;
- line taken as fixed: with the chance that makes its fixation true, one allele by descent
  throughout; else each allele of each of its plants comes by descent on its own.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from numpy.typing import NDArray

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin, Row
from pedigreeview.planning.inheritance import Inheritance, inheritance, multiset_chances
from pedigreeview.planning.tables import Table, size

__all__ = ["GenotypeModel"]

FloatArray = NDArray[np.float64]

_LARGEST = 20_000
"""A table of inheritance above this size is parted by a plant or gamete of its own."""


class GenotypeModel:
    """Unknowns, with the table of each given those before it.

    Parameters
    ----------
    arrays : the pedigree
    frequencies : (alleles,) chances of the alleles in founders and unknown parents, summing to 1
    rows : rows of plants and pools that are asked about or have records; only what stands behind
        them is made
    instead : rows to take in place of the recorded ones, to try another parentage

    Attributes
    ----------
    lengths : number of values of each unknown, by its number
    tables : the table of each unknown: chances of its values, given older unknowns
    unknown_of : unknown of the plant of each row that was asked for, or that stands behind one
    """

    def __init__(
        self,
        arrays: PedigreeArrays,
        frequencies: FloatArray,
        rows: NDArray[np.int64] | list[int],
        instead: Mapping[int, Row] | None = None,
    ) -> None:
        self.arrays = arrays
        self.frequencies = np.asarray(frequencies, float)
        self.alleles = len(self.frequencies)
        self.lengths: list[int] = []
        self.tables: list[Table] = []
        self.unknown_of: dict[int, int] = {}
        self._instead = dict(instead or {})
        self._read: dict[int, Row] = {}
        self._state: dict[int, int | None] = {}
        self._laws: dict[int, Table] = {}
        for row in sorted(self._behind(rows)):
            if not self._row(row).pool:
                self._plant(row)
        for row in rows:
            # A pool that is spoken of: one plant of it.
            if int(row) not in self.unknown_of:
                self.unknown_of[int(row)] = self._unknown(self._draw(int(row)))

    def _behind(self, rows: NDArray[np.int64] | list[int]) -> set[int]:
        found: set[int] = set()
        ahead = [int(row) for row in rows]
        while ahead:
            row = ahead.pop()
            if row in found:
                continue
            found.add(row)
            ahead.extend(parent for parent, _ in self._row(row).weights())
        return found

    def _row(self, index: int) -> Row:
        found = self._read.get(index)
        if found is None:
            found = self._instead.get(index) or self.arrays.row(index)
            self._read[index] = found
        return found

    def rules(self, ploidy: int) -> Inheritance:
        """The tables of inheritance at one ploidy."""
        return inheritance(self.alleles, ploidy, self.arrays.double_reduction)

    # Unknowns -----------------------------------------------------------------------------------

    def _unknown(self, law: Table) -> int:
        """A new unknown; its law has the axes of older unknowns and, last, its own values."""
        number = len(self.lengths)
        self.lengths.append(law.values.shape[-1])
        self.tables.append(Table((*law.names, number), law.values))
        return number

    def _known_as(self, number: int) -> Table:
        """An unknown as a law: its own value."""
        return Table((number,), np.eye(self.lengths[number]))

    def _settled(self, law: Table) -> Table:
        """The law by way of one unknown more, so that tables stay small."""
        return law if len(law.names) <= 1 else self._known_as(self._unknown(law))

    def _plant(self, row: int) -> None:
        origin = self._row(row)
        if origin.origin is Origin.CLONE and not origin.selfings and origin.fixation is None:
            source = self.unknown_of.get(origin.seed)
            if source is not None:
                self.unknown_of[row] = source
                return
        self.unknown_of[row] = self._unknown(self._draw(row, itself=True))

    # Laws: chances of a genotype (last axis) given older unknowns -----------------------------

    def _draw(self, row: int, *, itself: bool = False) -> Table:
        """The law of a plant, or of one more plant of a pool."""
        if not itself and row in self.unknown_of and not self._row(row).pool:
            return self._known_as(self.unknown_of[row])
        held = self._laws.get(row)
        if held is not None:
            return held
        before = len(self.lengths)
        law = self._law(row)
        # A law with an unknown of its own is good for one plant; others may be used again.
        states = sum(
            1 for number in self._state.values() if number is not None and number >= before
        )
        if self._row(row).pool and len(self.lengths) == before + states:
            self._laws[row] = law
        return law

    def _law(self, row: int) -> Table:
        origin = self._row(row)
        rules = self.rules(origin.ploidy)
        if origin.origin is Origin.FOUNDER or origin.fixation is not None:
            return self._from_state(row, origin, rules)
        law = self._first(origin, rules)
        for _ in range(origin.selfings):
            after = law.values @ rules.selfed
            if np.array_equal(after, law.values):
                break
            law = Table(law.names, after)
        return law

    def _first(self, origin: Row, rules: Inheritance) -> Table:
        match origin.origin:
            case Origin.MEMBER | Origin.CLONE:
                return self._draw(origin.seed)
            case Origin.DOUBLED:
                source = self._draw(origin.seed)
                below = self.rules(origin.ploidy // 2)
                return Table(source.names, source.values @ below.doubled)
            case Origin.HAPLOID:
                source = self._draw(origin.seed)
                return Table(source.names, source.values @ rules.doubled_gamete)
            case Origin.SELF:
                source = self._draw(origin.seed)
                return Table(source.names, source.values @ rules.selfed)
            case Origin.SIB:
                return self._joined(
                    self._gamete(origin.seed, rules), self._gamete(origin.seed, rules), rules
                )
            case Origin.FATHER:
                found = Table((), multiset_chances(self.frequencies, origin.ploidy))
                return self._mixed(
                    [(self._draw(parent), odds) for parent, odds in origin.pollen], found
                )
        return self._crossed(origin, rules)

    def _crossed(self, origin: Row, rules: Inheritance) -> Table:
        unknown = Table((), multiset_chances(self.frequencies, origin.ploidy) @ rules.gamete)
        selfed = sum(odds for parent, odds in origin.pollen if parent == origin.seed)
        seed = None if origin.seed == UNKNOWN else self._draw(origin.seed)
        if seed is None:
            selfed, of_seed = 0.0, unknown
        else:
            of_seed = Table(seed.names, seed.values @ rules.gamete)
        others = [
            (self._gamete(parent, rules), odds / (1 - selfed))
            for parent, odds in origin.pollen
            if parent != origin.seed or seed is None
        ]
        if selfed >= 1 - 1e-12 and seed is not None:
            return Table(seed.names, seed.values @ rules.selfed)
        law = self._joined(of_seed, self._mixed(others, unknown), rules)
        if selfed and seed is not None:
            law = self._mixed([(Table(seed.names, seed.values @ rules.selfed), selfed)], law)
        return law

    def _gamete(self, row: int, rules: Inheritance) -> Table:
        plant = self._draw(row)
        return Table(plant.names, plant.values @ rules.gamete)

    def _size(self, names: set[int], last: int) -> int:
        return size(self.lengths[name] for name in names) * last

    def _joined(self, one: Table, other: Table, rules: Inheritance) -> Table:
        if self._size({*one.names, *other.names}, rules.joined.size) > _LARGEST * 50:
            one, other = self._settled(one), self._settled(other)
        names = tuple(sorted({*one.names, *other.names}))
        seed = Table((*one.names, -1), one.values).over((*names, -1))
        pollen = Table((*other.names, -1), other.values).over((*names, -1))
        halves = seed[..., :, None] * pollen[..., None, :]
        flat = halves.reshape(*halves.shape[:-2], -1)
        return Table(names, flat @ rules.joined.reshape(flat.shape[-1], -1))

    def _mixed(self, parts: list[tuple[Table, float]], otherwise: Table) -> Table:
        """One of the laws by its odds, `otherwise` by the rest."""
        rest = max(0.0, 1.0 - sum(odds for _, odds in parts))
        held, chance = otherwise, rest if rest > 1e-12 else 0.0
        for law, odds in parts:
            if odds <= 0:
                continue
            share = odds / (chance + odds)
            if share == 1:
                held, chance = law, odds
                continue
            if self._size({*held.names, *law.names}, held.values.shape[-1]) > _LARGEST:
                held, law = self._settled(held), self._settled(law)
            names = tuple(sorted({*held.names, *law.names}))
            values = (1 - share) * Table((*held.names, -1), held.values).over((*names, -1))
            values = values + share * Table((*law.names, -1), law.values).over((*names, -1))
            held, chance = Table(names, values), chance + odds
        return held

    # Founders and lines ---------------------------------------------------------------------------

    def _from_state(self, row: int, origin: Row, rules: Inheritance) -> Table:
        """A plant of a founder or line: fixed on one allele, or each allele on its own."""
        chance = self._fixed_chance(row, origin)
        if origin.origin is Origin.FOUNDER:
            apart = Table((), multiset_chances(self.frequencies, origin.ploidy))
            if not origin.pool:
                fixed = self.frequencies @ rules.fixed
                return Table((), chance * fixed + (1 - chance) * apart.values)
        elif chance < 1:
            apart = self._alleles_apart(origin, rules)
        else:
            apart = Table((), np.zeros(len(rules.genotypes)))
        if chance <= 0:
            return apart
        state = self._state_of(row, origin, chance)
        if chance >= 1:
            return Table((state,), rules.fixed)
        names = tuple(sorted({state, *apart.names}))
        loose = Table((*apart.names, -1), apart.values).over((*names, -1))
        fixed = np.concatenate((rules.fixed, np.zeros((1, len(rules.genotypes)))))
        tight = Table((state, -1), fixed).over((*names, -1))
        is_loose = np.zeros((self.alleles + 1, 1))
        is_loose[-1] = 1.0
        return Table(names, tight + Table((state, -1), is_loose).over((*names, -1)) * loose)

    def _fixed_chance(self, row: int, origin: Row) -> float:
        if origin.origin is Origin.FOUNDER:
            return float(origin.fixation or 0.0)
        more = float(self.arrays.innovation()[row])
        by_descent = float(self.arrays.self_coancestry()[row]) - more
        return 1.0 if by_descent >= 1 - 1e-12 else min(1.0, max(0.0, more / (1 - by_descent)))

    def _state_of(self, row: int, origin: Row, chance: float) -> int:
        found = self._state.get(row)
        if found is None:
            if origin.origin is Origin.FOUNDER:
                allele = Table((), self.frequencies)
            else:
                allele = self._one_allele(origin)
            values = chance * allele.values
            if chance < 1:
                loose = np.full((*values.shape[:-1], 1), 1 - chance)
                values = np.concatenate((values, loose), axis=-1)
            found = self._unknown(Table(allele.names, values))
            self._state[row] = found
        return found

    def _one_allele(self, origin: Row) -> Table:
        """One allele by descent: from a parent by its weight, or from an unknown one."""
        parts = []
        for parent, weight in origin.weights():
            plant = self._draw(parent)
            shares = self.rules(self._row(parent).ploidy).shares
            parts.append((Table(plant.names, plant.values @ shares), weight))
        return self._mixed(parts, Table((), self.frequencies))

    def _alleles_apart(self, origin: Row, rules: Inheritance) -> Table:
        """A plant each of whose alleles comes by descent on its own."""
        held = self._one_allele(origin)
        for size_ in range(1, origin.ploidy):
            one = self._one_allele(origin)
            names = tuple(sorted({*held.names, *one.names}))
            if self._size(set(names), held.values.shape[-1] * self.alleles) > _LARGEST * 50:
                held, one = self._settled(held), self._settled(one)
                names = tuple(sorted({*held.names, *one.names}))
            many = Table((*held.names, -1), held.values).over((*names, -1))
            single = Table((*one.names, -1), one.values).over((*names, -1))
            both = many[..., :, None] * single[..., None, :]
            to = rules.added(size_)
            grown = np.zeros((*both.shape[:-2], int(to.max()) + 1))
            for have in range(to.shape[0]):
                for allele in range(to.shape[1]):
                    grown[..., to[have, allele]] += both[..., have, allele]
            held = Table(names, grown)
        return held

    # Plants that stand in no record --------------------------------------------------------

    def seed_on(self, row: int, selfed: float) -> int:
        """Unknown of one seed borne on a plant: selfed with that chance, else of unknown pollen."""
        mother = self.unknown_of.get(row)
        if mother is None:
            raise ValueError(f"row {row} was not asked for")
        ploidy = self._row(row).ploidy
        rules = self.rules(ploidy)
        plant = self._known_as(mother)
        unknown = Table((), multiset_chances(self.frequencies, ploidy) @ rules.gamete)
        crossed = self._joined(Table(plant.names, plant.values @ rules.gamete), unknown, rules)
        by_self = Table(plant.names, plant.values @ rules.selfed)
        return self._unknown(self._mixed([(by_self, selfed)], crossed))
