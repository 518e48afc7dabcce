"""Rows that would run far beyond a window: small families fold there as well.

A focus with many descendants makes a picture that is wide and thin.  Where a row holds more than
`MOST` blocks, sibs without progeny in the picture fold into one pack for each cross, though they
are few: first those that matter least, culled and lost ones, then the others.  Kept selections and
pinned plants stay apart.  As any other pack these are opened by a click; an opened one still counts
as the one block that it was, so that nothing else folds because of it.  Knows no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field

from pedigreeview.drawing.folds import Family, Fold
from pedigreeview.drawing.ranking import Spot

__all__ = ["MOST", "narrow"]

MOST = 20
"""Blocks of a row beyond which it folds tighter; with fewer, more lines cross (measured)."""

_GONE = ("culled", "lost")


@dataclass(slots=True)
class _Sibs:
    """Few sibs of one cross in one row that lead to nothing in the picture.

    pack : key of the pack that they would be
    codes : in the order of the cross; packed : those that fold
    """

    pack: str
    codes: list[str] = field(default_factory=list)
    packed: set[str] = field(default_factory=set)

    def fold(self, codes: set[str]) -> int:
        """Fold some of them, at least two in all; how many blocks fewer there are."""
        together = self.packed | codes
        if len(together) < 2:
            return 0
        saved = len(together) - 1 - max(0, len(self.packed) - 1)
        self.packed = together
        return saved


def narrow(
    family: Family,
    folds: dict[str, Fold],
    *,
    special: set[str],
    unfolded: frozenset[str],
    most: int = MOST,
) -> int:
    """Fold the rows that hold more than `most` blocks tighter, in place.

    Returns the blocks of the widest row after that, opened packs as one.

    Parameters
    ----------
    folds : the fold of every plant, as `fold_all` gives them
    special : plants that always have a tag of their own
    unfolded : keys of folds that were opened
    """
    blocks: dict[Spot, set[str]] = defaultdict(set)
    for code, fold in folds.items():
        if code == fold.place:
            opened = fold.fold.startswith("pack:")
            blocks[family.spot[code]].add(fold.fold if opened else fold.key)
    wide = {spot: len(held) for spot, held in blocks.items() if len(held) > most}
    widest = max((len(held) for held in blocks.values()), default=0)
    if not wide:
        return widest
    left = dict(wide)
    plants = family.net.book.plants
    for spot, families in _few(family, folds, special, wide).items():
        count = wide[spot]
        gone = {code for sibs in families for code in sibs.codes if plants[code].status in _GONE}
        for among in (gone, None):
            # The largest first, so that few families fold.
            for sibs in sorted(families, key=lambda one: -len(one.codes)):
                if count <= most:
                    break
                held = set(sibs.codes)
                count -= sibs.fold(held if among is None else held & among)
        left[spot] = count
        for sibs in families:
            codes = [code for code in sibs.codes if code in sibs.packed]
            if sibs.pack in unfolded:
                folds.update({c: Fold(f"plant:{c}", [c], "tag", sibs.pack) for c in codes})
            else:
                folds.update(dict.fromkeys(codes, Fold(sibs.pack, codes, "pack")))
    return max(left.values())


def _few(
    family: Family, folds: Mapping[str, Fold], special: set[str], wide: Mapping[Spot, int]
) -> dict[Spot, list[_Sibs]]:
    """The sibs in the wide rows that are too few for a pack elsewhere."""
    plants = family.net.book.plants
    found: dict[Spot, list[_Sibs]] = defaultdict(list)
    for key, mating in family.matings.items():
        if wide.keys().isdisjoint(map(family.spot.__getitem__, mating.progeny)):
            continue
        groups: dict[tuple[Spot, int], _Sibs] = {}
        for code in mating.progeny:
            if code in family.parent_in or code in special or plants[code].status == "kept":
                continue
            # Numbered as by `fold_all`, so that no two packs have one key.
            number = len(groups)
            pack = f"pack:{key}" + (f"#{number}" if number else "")
            of = family.spot[code], family.net.parents(code).selfings
            groups.setdefault(of, _Sibs(pack)).codes.append(code)
        for (spot, _), sibs in groups.items():
            lone = all(folds[code].sort == "tag" and not folds[code].fold for code in sibs.codes)
            if spot in wide and lone:
                found[spot].append(sibs)
    return found
