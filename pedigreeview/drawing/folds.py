"""What folds together: packs of sibs, sister families that are each one pack, chains of selfings.

More than three sibs of one cross without progeny in the picture become a pack, kept selections
apart.  In a whole book sibs that each have one such pack become one pack with them.  A chain of
selfings with one plant each becomes one tag.  Knows no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.drawing.ranking import Mating, Spot

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["SINGLES", "Family", "Fold", "Folded", "fold_all"]

SINGLES = 3
"""So many sibs are drawn one by one before a pack is made."""


@dataclass(slots=True)
class Fold:
    """The block that a plant belongs to."""

    key: str
    codes: list[str]
    sort: str
    fold: str = ""
    each: tuple[int, ...] = ()
    """Sizes of the families that the sibs have, where those are folded into it too."""

    @property
    def place(self) -> str:
        """The plant in whose row the fold stands."""
        return self.codes[-1] if self.sort == "chain" else self.codes[0]


@dataclass(frozen=True, slots=True)
class Family:
    """The plants of a picture and how they hang together."""

    net: PedigreeNetwork
    plants: Sequence[str]
    matings: Mapping[str, Mating]
    born_of: Mapping[str, str]
    """Key of the mating that a plant comes from."""
    parent_in: Mapping[str, Sequence[str]]
    """Keys of the matings that a plant is a parent in."""
    spot: Mapping[str, Spot]


@dataclass(frozen=True, slots=True)
class Folded:
    """The fold of every plant; matings that lie within a fold; where the others come from."""

    folds: dict[str, Fold]
    inner: set[str]
    born_of: dict[str, str]


def fold_all(
    family: Family, *, special: set[str], unfolded: frozenset[str], families: bool
) -> Folded:
    """Fold a picture.

    special : plants that always have a tag of their own
    unfolded : keys of folds that were opened
    families : whether sister families that are each one pack fold together
    """
    folder = _Folder(family, special, unfolded)
    folder.run(families=families)
    return Folded(folder.folds, folder.inner, folder.born_of)


class _Folder:
    def __init__(self, family: Family, special: set[str], unfolded: frozenset[str]) -> None:
        self.net, self.plants, self.matings = family.net, family.plants, family.matings
        self.born_of, self.parent_in = dict(family.born_of), family.parent_in
        self.spot = family.spot
        self.special, self.unfolded = special, unfolded
        self.folds: dict[str, Fold] = {}
        self.inner: set[str] = set()

    def run(self, *, families: bool) -> None:
        for key, mating in self.matings.items():
            groups: dict[tuple[tuple[int, int], int], list[str]] = defaultdict(list)
            for code in mating.progeny:
                plain = (
                    code not in self.parent_in
                    and code not in self.special
                    and self.net.book.plants[code].status != "kept"
                )
                if plain:
                    groups[self.spot[code], self.net.parents(code).selfings].append(code)
            for number, sibs in enumerate(groups.values()):
                if len(sibs) <= SINGLES:
                    continue
                pack = f"pack:{key}" + (f"#{number}" if number else "")
                if pack in self.unfolded:
                    for code in sibs:
                        self.folds[code] = Fold(f"plant:{code}", [code], "tag", pack)
                else:
                    self.folds.update(dict.fromkeys(sibs, Fold(pack, sibs, "pack")))
        if families:
            self._fold_families()
        self._fold_chains()
        opened: dict[str, str] = {}
        for way in ("down:", "up:"):
            opened.update((key[len(way) :], key) for key in self.unfolded if key.startswith(way))
        for code in self.plants:
            if code not in self.folds:
                self.folds[code] = Fold(f"plant:{code}", [code], "tag", opened.get(code, ""))

    def _fold_families(self) -> None:
        """Sibs that each have one folded family of selfed progeny become one pack with those."""
        for key, mating in self.matings.items():
            groups: dict[tuple[int, int], list[str]] = defaultdict(list)
            for code in mating.progeny:
                if self._holds_one_pack(code):
                    groups[self.spot[code]].append(code)
            for number, sibs in enumerate(groups.values()):
                if len(sibs) <= SINGLES:
                    continue
                pack = f"pack:{key}/each" + (f"#{number}" if number else "")
                if pack in self.unfolded:
                    for code in sibs:
                        self.folds[code] = Fold(f"plant:{code}", [code], "tag", pack)
                    continue
                families = [self.matings[self.parent_in[code][0]].progeny for code in sibs]
                held = [*sibs, *(child for family in families for child in family)]
                each = tuple(len(family) for family in families)
                self.folds.update(dict.fromkeys(held, Fold(pack, held, "pack", each=each)))
                for code in sibs:
                    self.inner.add(self.parent_in[code][0])
                for family in families:
                    for child in family:
                        self.born_of.pop(child)

    def _holds_one_pack(self, code: str) -> bool:
        uses = self.parent_in.get(code, [])
        if len(uses) != 1 or code in self.special or code in self.folds:
            return False
        mating = self.matings[uses[0]]
        if mating.knot.sign != "selfing" or self.net.book.plants[code].status == "kept":
            return False
        folds = {id(self.folds.get(child)) for child in mating.progeny}
        first = self.folds.get(mating.progeny[0]) if mating.progeny else None
        return len(folds) == 1 and first is not None and first.sort == "pack"

    def _fold_chains(self) -> None:
        following: dict[str, str] = {}
        for key, mating in self.matings.items():
            lone = mating.knot.sign == "selfing" and len(mating.progeny) == 1
            parent = mating.knot.seed
            if lone and self.parent_in[parent] == [key] and len(self.net.progeny(parent)) == 1:
                following[parent] = mating.progeny[0]
        starts = set(following.values()) - {
            following[code] for code in following.values() if code in following
        }
        for start in self.plants:
            if start not in starts:
                continue
            run: list[str] = []
            code: str | None = start
            while code is not None:
                if code in self.special or code in self.folds:
                    self._chain(run)
                    run = []
                else:
                    run.append(code)
                code = following.get(code)
            self._chain(run)

    def _chain(self, run: list[str]) -> None:
        if len(run) < 2:
            return
        key = f"chain:{run[0]}"
        if key in self.unfolded:
            for code in run:
                self.folds[code] = Fold(f"plant:{code}", [code], "tag", key)
            return
        fold = Fold(key, run, "chain")
        self.folds.update(dict.fromkeys(run, fold))
        for code in run[1:]:
            self.inner.add(self.born_of.pop(code))
