"""From the records of a book to the rows of the arrays.

Beside the plants this makes the unrecorded plants that the records imply: the member of a pool
that served as a parent of a whole cross, and the one unseen pollen parent of a cross whose pollen
parent is uncertain.  Such a row shows itself to a person under `label`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from pedigreeview.book.book import Book
from pedigreeview.book.memory import uncollected
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import Cross, PollenCandidate
from pedigreeview.network.origins import UNKNOWN, Origin, Row
from pedigreeview.network.parentage import Parents, cross_parents
from pedigreeview.network.sweeps import IntArray

__all__ = ["BY_SOURCE", "CompiledRows", "RowOfPlant", "compile_rows", "ploidies"]

BY_SOURCE = {
    "seed_of": Origin.MEMBER,
    "sibbed_in": Origin.SIB,
    "cutting_of": Origin.CLONE,
    "doubled_haploid_of": Origin.HAPLOID,
    "doubled_of": Origin.DOUBLED,
}
"""Origin of a row by the word for how its plant was raised from a source."""


class RowOfPlant(Mapping[str, int]):
    """The row of each plant of a large book, by its place in the book.

    Parameters
    ----------
    places : place of each plant in the book
    row_of : (n,) row of each, in the book's order
    rows : (n,) the same in the order of the rows
    order : codes in the order of the rows
    """

    def __init__(
        self, places: dict[str, int], row_of: IntArray, rows: IntArray, order: list[str]
    ) -> None:
        self.rows = rows
        self._places = places
        self._row_of = row_of
        self._order = order
        self._added: dict[str, int] = {}

    def __getitem__(self, code: str) -> int:
        place = self._places.get(code)
        return self._added[code] if place is None else int(self._row_of[place])

    def __setitem__(self, code: str, row: int) -> None:
        self._added[code] = row

    def __iter__(self) -> Iterator[str]:
        yield from self._order
        yield from self._added

    def __len__(self) -> int:
        return len(self._order) + len(self._added)


@dataclass(slots=True)
class CompiledRows:
    """The rows of a book.

    rows : parents before progeny; none where the arrays were made from columns
    of_plant : row of each plant that has one
    label : what a person sees for each row: the code of its plant or pool, or the words for an
        unseen father
    hidden : '' for a recorded plant, 'member' or 'father' for an unrecorded one
    """

    rows: list[Row] = field(default_factory=list)
    of_plant: dict[str, int] | RowOfPlant = field(default_factory=dict)
    label: list[str] = field(default_factory=list)
    hidden: list[str] = field(default_factory=list)

    def add(self, row: Row, label: str, hidden: str = "") -> int:
        """Append a row and return its index."""
        self.rows.append(row)
        self.label.append(label)
        self.hidden.append(hidden)
        return len(self.label) - 1


def ploidies(
    book: Book, parents: dict[str, Parents], order: Iterable[str]
) -> tuple[dict[str, int], list[Problem]]:
    """Ploidy of every plant in `order`, and a problem for each whose ploidy cannot be.

    A plant takes the ploidy of its parents; one whose parents differ, whose parent is odd, or whose
    own record says otherwise is named and gets no ploidy; what depends on it has none either.
    """
    found: dict[str, int] = {}
    problems: list[Problem] = []
    for code in order:
        plant, origin = book.plants[code], parents[code]
        if origin.raised == "founder":
            found[code] = book.founder_ploidy(plant)
            continue
        from_parents = {parent: found.get(parent) for parent in origin.codes}
        if None in from_parents.values():
            continue
        sets = set(from_parents.values())
        ploidy = sets.pop() if sets else book.founder_ploidy(plant)
        assert ploidy is not None
        if sets:
            said = ", ".join(f"{parent} is {ploidy_}x" for parent, ploidy_ in from_parents.items())
            problems.append(
                Problem(
                    "ploidy_differs",
                    "warning",
                    (code, *origin.codes),
                    f"The parents of {code} differ in ploidy ({said}), so its coefficients and "
                    "those of its progeny are withheld.",
                    "Correct the ploidy of a parent, or the parentage.",
                )
            )
            continue
        if origin.raised in ("cross", "sibbed_in", "doubled_haploid_of") and ploidy % 2:
            problems.append(
                Problem(
                    "ploidy_odd",
                    "warning",
                    (code, *origin.codes),
                    f"{code} comes from a parent of odd ploidy ({ploidy}x), for which no rule of "
                    "inheritance holds; its coefficients are withheld.",
                    "Correct the ploidy of the parent, or record the plant as a founder.",
                )
            )
            continue
        if origin.raised == "doubled_of":
            ploidy *= 2
        if plant.ploidy is not None and plant.ploidy != ploidy:
            problems.append(
                Problem(
                    "ploidy_differs",
                    "warning",
                    (code, *origin.codes),
                    f"{code} is recorded as {plant.ploidy}x but its parents make it {ploidy}x, so "
                    "its coefficients and those of its progeny are withheld.",
                    "Correct its ploidy, or record how it was doubled.",
                )
            )
            continue
        found[code] = ploidy
    return found, problems


def cross_ploidy(
    book: Book, cross: Cross, candidates: Sequence[PollenCandidate], ploidy: dict[str, int]
) -> list[Problem]:
    """What the ploidy of its parents speaks against a cross that has no progeny yet."""
    pollen, _, _ = cross_parents(book, cross, candidates)
    sides = tuple(dict.fromkeys(c for c in (cross.seed_parent, *(c for c, _ in pollen)) if c))
    if not sides or not all(side in ploidy for side in sides):
        return []
    sets = {ploidy[side] for side in sides}
    if len(sets) > 1:
        said = " and ".join(f"{side} ({ploidy[side]}x)" for side in sides)
        return [
            Problem(
                "ploidy_differs",
                "warning",
                sides,
                f"Cross {cross.cross} joins {said}, which differ in ploidy.",
                "Expect few seeds or none; correct the ploidy if it is wrong.",
            )
        ]
    if sets.pop() % 2 == 0:
        return []
    return [
        Problem(
            "ploidy_odd",
            "warning",
            sides,
            f"Cross {cross.cross} is made with {', '.join(sides)} of odd ploidy "
            f"({ploidy[sides[0]]}x).",
            "Expect few seeds or none; correct the ploidy if it is wrong.",
        )
    ]


class _Compiler:
    def __init__(
        self,
        book: Book,
        parents: dict[str, Parents],
        ploidy: dict[str, int],
        compiled: CompiledRows,
    ) -> None:
        self.book = book
        self.parents = parents
        self.ploidy = ploidy
        self.out = compiled
        self.unrecorded: dict[tuple[str, ...], int] = {}

    def plant(self, code: str) -> None:
        plant, origin = self.book.plants[code], self.parents[code]
        pool = self.book.is_pool(plant)
        row = self._founder(code) if origin.raised == "founder" else self._raised(code, origin)
        row.pool, row.ploidy = pool, self.ploidy[code]
        row.selfings = origin.selfings
        if origin.raised != "founder" and self.book.kind(plant) == "variety":
            as_clone = row.origin in (Origin.CLONE, Origin.DOUBLED)
            if plant.fixation is not None or not as_clone:
                row.fixation = 1.0 if plant.fixation is None else plant.fixation
        self.out.of_plant[code] = self.out.add(row, code)

    def _founder(self, code: str) -> Row:
        return Row(Origin.FOUNDER, fixation=self.book.founder_fixation(self.book.plants[code]))

    def _raised(self, code: str, origin: Parents) -> Row:
        if origin.raised != "cross":
            return Row(BY_SOURCE[origin.raised], self.out.of_plant[origin.source])
        each, cross = origin.each, origin.cross
        seed = self._parent(cross, "seed", origin.seed_parent, each)
        if origin.selfed:
            return Row(Origin.SELF, seed)
        certain = origin.pollen_parent
        if certain and not each:
            side = (self._parent(cross, "pollen", certain, each), 1.0)
            return Row(Origin.CROSS, seed, (side,))
        options = []
        for candidate, odds in origin.pollen:
            itself = candidate == origin.seed_parent
            parent = seed if itself else self._parent(cross, "pollen", candidate, each)
            options.append((parent, odds))
        if each or (origin.finding and not options):
            return Row(Origin.CROSS, seed, tuple(options))
        father = self._father(code if origin.finding else "", cross, tuple(options), code)
        return Row(Origin.CROSS, seed, ((father, 1.0),))

    def _parent(self, cross: str, side: str, code: str, each: bool) -> int:
        """Row that gives the gametes: the plant, or the unrecorded member of a pool."""
        if not code:
            return UNKNOWN
        index = self.out.of_plant[code]
        row = self.out.rows[index]
        # All members of a fully fixed pool are alike: the pool's own row says the same.
        if each or not row.pool or row.fixation == 1.0:
            return index
        key = ("member", cross, side, code)
        if key not in self.unrecorded:
            member = Row(Origin.MEMBER, index, ploidy=row.ploidy)
            self.unrecorded[key] = self.out.add(member, code, "member")
        return self.unrecorded[key]

    def _father(
        self, plant: str, cross: str, options: tuple[tuple[int, float], ...], of: str
    ) -> int:
        """The one unseen pollen parent of a cross; without candidates nobody knows who."""
        key = ("father", cross, plant)
        if key not in self.unrecorded:
            ploidy = self.ploidy[of]
            row = Row(Origin.FATHER, pollen=options, ploidy=ploidy)
            label = f"(pollen parent of {plant or cross})"
            self.unrecorded[key] = self.out.add(row, label, "father")
        return self.unrecorded[key]


def compile_rows(
    book: Book, parents: dict[str, Parents], ploidy: dict[str, int], order: Iterable[str]
) -> CompiledRows:
    """The rows of the plants in `order` (parents first; every one with a ploidy)."""
    compiled = CompiledRows()
    compiler = _Compiler(book, parents, ploidy, compiled)
    with uncollected():
        for code in order:
            compiler.plant(code)
    return compiled
