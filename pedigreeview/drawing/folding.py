"""From picked plants to blocks: which knots show, what folds, in which row each block stands.

What folds together says `folds`; the two directions of a reciprocal pair become one block of knots.
Knows no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from pedigreeview.drawing.births import births_of, cross_knot, pollen_of
from pedigreeview.drawing.blocks import (
    FOUNDERS,
    IN_LOOPS,
    PINNED_APART,
    Block,
    Link,
    Role,
    Row,
    View,
)
from pedigreeview.drawing.folds import Family, Fold, fold_all
from pedigreeview.drawing.founders import palette_numbers
from pedigreeview.drawing.narrowing import narrow
from pedigreeview.drawing.places import places_of
from pedigreeview.drawing.ranking import UNKNOWN, Mating, rank

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Builder", "Picked", "build", "builder"]


@dataclass(slots=True)
class Picked:
    """Plants to show; those whose parents come along; crosses to show though nothing grew."""

    plants: list[str]
    expanded: set[str]
    crosses: list[str]
    wanted: tuple[str, ...]


class Builder:
    """Puts a view together; counting its blocks takes a fraction of the time."""

    def __init__(
        self,
        net: PedigreeNetwork,
        picked: Picked,
        focus: str | None,
        pins: tuple[str, ...],
        unfolded: frozenset[str],
        also: Iterable[str],
    ) -> None:
        self.net = net
        self.focus = focus
        self.pins = pins
        self.unfolded = unfolded
        self.special = {code for code in (focus, *pins, *also) if code}
        self.expanded = picked.expanded
        self.births = births_of(net)
        self.candidates = net.book.candidates() if picked.crosses else {}
        self.plants = self._with_mates(picked)
        self.matings: dict[str, Mating] = {}
        self._spots: list[tuple[int, int]] | None = None
        self._knots: tuple[list[Block], dict[str, str]] | None = None
        self.born_of: dict[str, str] = {}
        self._tie(picked)
        self.parent_in: dict[str, list[str]] = defaultdict(list)
        for key, mating in self.matings.items():
            for parent in mating.parents():
                self.parent_in[parent].append(key)
        self.spot = rank(net, self.plants, self.born_of, self.matings, self.parent_in)
        family = Family(net, self.plants, self.matings, self.born_of, self.parent_in, self.spot)
        folded = fold_all(family, special=self.special, unfolded=unfolded, families=focus is None)
        self.widest = 0
        """Blocks of the row that holds the most, opened packs as one; 0 without a focus."""
        if focus is not None:
            self.widest = narrow(family, folded.folds, special=self.special, unfolded=unfolded)
        self.folds, self.inner, self.born_of = folded.folds, folded.inner, folded.born_of

    # What is in the picture --------------------------------------------------------------------

    def _with_mates(self, picked: Picked) -> list[str]:
        held = set(picked.plants)
        for code in picked.expanded:
            held.update(self.births.birth(self.net, code).parents)
        for cross in picked.crosses:
            record = self.net.book.crosses[cross]
            sides = [record.seed_parent, record.pollen_parent]
            sides += [row.candidate for row in self.candidates.get(cross, ())]
            held.update(code for code in sides if code and code != "self")
        if len(held) == len(self.net.codes):
            return list(self.net.codes)
        return sorted(held, key=places_of(self.net).__getitem__)

    def _tie(self, picked: Picked) -> None:
        held = set(self.plants)
        births, net = self.births, self.net
        meant: dict[str, tuple[tuple[str, float], ...]] = {}
        if net.book.parent_findings:
            for code in self.plants:
                origin = births.birth(net, code).origin
                if origin.cross and not origin.finding:
                    meant.setdefault(origin.cross, pollen_of(origin))
        for code in self.plants:
            birth = births.birth(net, code)
            known = birth.parents
            if not known or not (code in self.expanded or held.issuperset(known)):
                continue
            key, knot = births.knot(net, code, meant.get(birth.origin.cross))
            mating = self.matings.get(key)
            if mating is None:
                mating = self.matings[key] = Mating(knot)
            mating.progeny.append(code)
            self.born_of[code] = key
        for cross in picked.crosses:
            key = f"cross:{cross}"
            if key in self.matings or net.progeny_of_cross(cross):
                continue
            record = net.book.crosses[cross]
            rows = self.candidates.get(cross, [])
            pollen = tuple(
                (record.seed_parent if row.candidate == "self" else row.candidate, row.odds)
                for row in rows
            ) or ((record.pollen_parent, 1.0),)
            rest = 1.0 - sum(odds for _, odds in pollen)
            if rows and rest > 1e-9:
                pollen += (("", rest),)
            knot = cross_knot(net, key, cross, record.seed_parent, pollen)
            if knot.seed or any(code for code, _ in pollen):
                self.matings[key] = Mating(knot)

    # Blocks ------------------------------------------------------------------------------------

    def _rows(self) -> list[tuple[int, int]]:
        """The rows from above; each fold is told its own."""
        if self._spots is not None:
            return self._spots
        spots = sorted({self.spot[fold.place] for fold in self.folds.values()})
        row_at = {spot: at for at, spot in enumerate(spots)}
        self.row_of = {fold.key: row_at[self.spot[fold.place]] for fold in self.folds.values()}
        self._spots = spots
        return spots

    def block_count(self) -> int:
        """How many blocks the view would hold."""
        self._rows()
        return len(self.row_of) + len(self._knot_blocks()[0])

    def view(self) -> View:
        spots = self._rows()
        blocks: list[Block] = []
        done: set[str] = set()
        for code in self.plants:
            fold = self.folds[code]
            if fold.key not in done:
                done.add(fold.key)
                blocks.append(self._plant_block(fold))
        links: list[Link] = []
        knots, held_by = self._knot_blocks()
        blocks += knots
        for key, mating in self.matings.items():
            if key not in self.inner:
                links += self._links(mating, held_by[key])
        shares: dict[str, float] = defaultdict(float)
        for block in blocks:
            for founder, share in block.shares:
                shares[founder] += share
        named = {code for code in shares if self.net.book.plants[code].name}
        return View(
            self.focus,
            self.pins,
            tuple(blocks),
            tuple(links),
            tuple(self._row_labels(spots)),
            palette_numbers(self.net, shares, focus=self.focus or "", own=self._of_focus()),
            (),
            self.net.base_sentence(),
            tuple((code, self.net.book.plants[code].name) for code in shares if code in named),
        )

    def _of_focus(self) -> dict[str, float]:
        """Founder shares of the focus, by which its founders have the first claim to a colour."""
        if self.focus is None:
            return {}
        return dict(self.births.facts(self.net, self.focus).shares)

    def _plant_block(self, fold: Fold) -> Block:
        code = fold.codes[-1] if fold.sort == "chain" else fold.codes[0]
        facts = self.births.facts(self.net, code)
        common = Block(
            key=fold.key,
            sort="tag",
            row=self.row_of[fold.key],
            codes=tuple(fold.codes),
            title=code,
            subtitle=self._second_line(code, fold),
            kind=facts.kind,
            pool=facts.pool,
            status=facts.status,
            generation_name=facts.generation_name,
            inbreeding=facts.inbreeding,
            withheld=facts.withheld,
            shares=facts.shares,
            unknown_share=facts.unknown_share,
            selfings=self.births.birth(self.net, code).selfings,
            fold=fold.fold,
            words=facts.words,
        )
        held = set(fold.codes)
        if fold.sort == "pack":
            if fold.each:
                return self._families_block(common, fold)
            first, last = fold.codes[0], fold.codes[-1]
            born = self.matings[self.born_of[code]].knot
            more = len(self.matings[self.born_of[code]].progeny) > len(fold.codes)
            return replace(
                common,
                sort="pack",
                title=f"{len(fold.codes)} {'more ' if more else ''}sibs",
                subtitle=f"{first} – {last}",
                pool=False,
                status="",
                words=f"{len(fold.codes)} {'more ' if more else ''}sibs, {born.words}, "
                f"{first} to {last}, folded",
                more_down=sum(len(set(self.net.progeny(sib)) - held) for sib in fold.codes),
            )
        first = fold.codes[0]
        up = () if first in self.born_of else self.net.parent_codes(first)
        down = [
            child
            for child in self.net.progeny(code)
            if self.born_of.get(child) is None or child not in self.folds
        ]
        common = replace(common, more_up=len(up), more_down=len(down))
        if fold.sort == "chain":
            extra = sum(max(self.net.parents(one).selfings, 0) for one in fold.codes)
            total = len(fold.codes) + extra
            return replace(
                common,
                sort="chain",
                selfings=total,
                words=f"{common.words}, {total} selfings folded, {fold.codes[0]} to {code}",
            )
        return common

    def _second_line(self, code: str, fold: Fold) -> str:
        """The name; of a founder without one, or outside the founders' band, that it is one."""
        name = self.net.book.plants[code].name
        if fold.sort == "pack" or self.net.parent_codes(code):
            return name
        if not name:
            return "founder"
        return name if self.spot[code] == (0, 0) else f"founder · {name}"

    def _families_block(self, common: Block, fold: Fold) -> Block:
        count = len(fold.each)
        least, most = min(fold.each), max(fold.each)
        each = f"{least}" if least == most else f"{least} to {most}"
        first, last = fold.codes[0], fold.codes[count - 1]
        born = self.matings[self.born_of[first]].knot
        held = set(fold.codes)
        return replace(
            common,
            sort="pack",
            title=f"{count} plants",
            subtitle=f"selfed, {each} sibs each",
            pool=False,
            status="",
            generation_name="",
            words=f"{count} plants, {born.words}, {first} to {last}, "
            f"each selfed, with {each} sibs, folded",
            more_down=sum(len(set(self.net.progeny(one)) - held) for one in fold.codes),
        )

    def _knot_row(self, mating: Mating) -> int:
        below = min((self.row_of[self.folds[c].key] for c in mating.progeny), default=10**9)
        rows = [self.row_of[self.folds[p].key] for p in mating.parents()]
        above = [row for row in rows if row < below]
        return max(above) if above else below - 1

    def _knot_blocks(self) -> tuple[list[Block], dict[str, str]]:
        """One block a knot, but one for the two directions of a pair in the same row."""
        if self._knots is not None:
            return self._knots
        rows = {
            key: self._knot_row(mating)
            for key, mating in self.matings.items()
            if key not in self.inner
        }
        blocks: list[Block] = []
        held_by: dict[str, str] = {}
        for key, row in rows.items():
            if key in held_by:
                continue
            ahead, back = self._pair(key, rows, held_by)
            knots = tuple(self.matings[one].knot for one in (*ahead, *back))
            if back:
                name = "pair:" + min(knot.key for knot in knots)
                words = "reciprocal pair: " + " and ".join(knot.words for knot in knots)
                block = Block(name, "pair", row, knots=knots, turn=len(ahead), words=words)
            else:
                block = Block(key, "knot", row, knots=knots[:1], words=knots[0].words)
            blocks.append(block)
            held_by.update(dict.fromkeys([*ahead, *back] if back else [key], block.key))
        self._knots = (blocks, held_by)
        return self._knots

    def _pair(
        self, key: str, rows: dict[str, int], held_by: dict[str, str]
    ) -> tuple[list[str], list[str]]:
        cross = self.matings[key].knot.cross
        if not cross or "|" in key:
            return [key], []

        def free(crosses: Iterable[str]) -> list[str]:
            keys = (f"cross:{one}" for one in crosses)
            return [k for k in keys if rows.get(k) == rows[key] and k not in held_by]

        back = free(self.net.reciprocal_of(cross))
        if not back:
            return [key], []
        ahead = free(self.net.reciprocal_of(self.matings[back[0]].knot.cross))
        return ([key, *(k for k in ahead if k != key)], back)

    def _links(self, mating: Mating, block: str) -> list[Link]:
        knot = mating.knot
        row = self._knot_row(mating)
        found = []

        def parent_link(code: str, role: Role, odds: float, sure: bool) -> None:
            above = self.folds[code].key
            found.append(
                Link(
                    above,
                    block,
                    role,
                    knot.key,
                    odds,
                    sure,
                    back=self.row_of[above] > row,
                )
            )

        if not knot.cross and knot.sign not in ("cross", "selfing", "open"):
            parent_link(knot.seed, "source", 1.0, True)
        else:
            if knot.seed:
                parent_link(knot.seed, "seed", 1.0, True)
            for code, odds in knot.pollen:
                if code:
                    sure = len(knot.pollen) == 1 and odds >= 1.0
                    parent_link(code, "pollen", odds, sure)
        units: dict[str, int] = {}
        for code in mating.progeny:
            units.setdefault(self.folds[code].key, max(self.net.parents(code).selfings, 0))
        found += [
            Link(block, below, "progeny", knot.key, selfings=selfings)
            for below, selfings in units.items()
        ]
        return found

    def _row_labels(self, spots: list[tuple[int, int]]) -> list[Row]:
        names: dict[int, set[str]] = defaultdict(set)
        held: dict[tuple[int, int], list[Fold]] = defaultdict(list)
        for fold in self.folds.values():
            spot = self.spot[fold.place]
            held[spot].append(fold)
            if spot[1] < UNKNOWN and self.net.parent_codes(fold.place):
                names[spot[0]].add(self.net.generation_name(fold.place) or "")
        found = []
        for generation, level in spots:
            if level >= UNKNOWN:
                loose = all(self._is_detached(fold) for fold in held[generation, level])
                found.append(Row(-1, PINNED_APART if loose else IN_LOOPS))
                continue
            here = names.get(generation, set())
            label = next(iter(here)) if len(here) == 1 else ""
            if not any(self.net.parent_codes(fold.place) for fold in held[generation, level]):
                # Beside a generation's own plants the tags of founders say what they are.
                label = FOUNDERS if generation == 0 or not here else label
            found.append(Row(generation, label))
        return found

    def _is_detached(self, fold: Fold) -> bool:
        """Whether a pinned plant has no relative in the picture."""
        code = fold.place
        free = code not in self.born_of and not self.parent_in.get(code)
        return fold.sort == "tag" and code in self.pins and free


def builder(
    net: PedigreeNetwork,
    picked: Picked,
    focus: str | None,
    pins: tuple[str, ...] = (),
    unfolded: frozenset[str] = frozenset(),
    also: Iterable[str] = (),
) -> Builder:
    """The picked plants, folded: how many blocks they make, and their view when it is wanted."""
    return Builder(net, picked, focus, pins, unfolded, also)


def build(
    net: PedigreeNetwork,
    picked: Picked,
    focus: str | None,
    pins: tuple[str, ...] = (),
    unfolded: frozenset[str] = frozenset(),
    also: Iterable[str] = (),
) -> View:
    """The view of the picked plants, folded."""
    return Builder(net, picked, focus, pins, unfolded, also).view()
