"""Keeps a demo's book as its grower would: one call for each thing done in the garden.

Numbers run on within a year and a kind of record ('P21-3' is the third pollination noted in 2021).
Chance comes from one seeded generator, so the same calls always give the same book.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterable
from datetime import date, timedelta
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import (
    Bloom,
    Bookmark,
    Compatibility,
    Cross,
    Evidence,
    Genotype,
    Harvest,
    Locus,
    Note,
    Packet,
    ParentFinding,
    Plant,
    PollenLot,
    Pollination,
    Score,
    Sowing,
    Trait,
)

__all__ = ["GardenBook", "days_after"]


def days_after(day: str, days: int) -> str:
    """The ISO date so many days later."""
    return (date.fromisoformat(day) + timedelta(days=days)).isoformat()


class GardenBook:
    """A book in the making."""

    def __init__(self, settings: BookSettings, seed: int, by: str) -> None:
        self.book = Book(settings=settings)
        self.rng = random.Random(seed)
        self.by = by
        self._numbers: Counter[str] = Counter()

    def _code(self, letter: str, day: str) -> str:
        head = f"{letter}{day[2:4]}"
        self._numbers[head] += 1
        return f"{head}-{self._numbers[head]}"

    # Plants and crosses ---------------------------------------------------------------------------

    def plant(self, code: str, cross: str = "", **fields: Any) -> Plant:
        """One plant or family; with a cross its progeny."""
        fields.setdefault("raised", "cross" if cross else "founder")
        fields.setdefault("kind", "plant")
        found = Plant(code, cross=cross, **fields)
        self.book.add(found)
        return found

    def variety(self, code: str, name: str, **fields: Any) -> Plant:
        """A named variety got from elsewhere."""
        return self.plant(code, name=name, kind="variety", **fields)

    def cutting(self, code: str, source: str, day: str, **fields: Any) -> Plant:
        """A rooted cutting or division."""
        return self.plant(code, raised="cutting_of", source=source, sown=day, **fields)

    def cross(self, code: str, seed_parent: str, pollen_parent: str, **fields: Any) -> Cross:
        """A cross that was made, unless its state says otherwise."""
        fields.setdefault("state", "made")
        fields.setdefault("intended", "cross")
        found = Cross(code, seed_parent, pollen_parent, **fields)
        self.book.add(found)
        return found

    def selfing(self, plant: str, made_on: str, **fields: Any) -> str:
        """Seed left to set on a plant by itself; gives the code of the selfing."""
        code = fields.pop("code", f"{plant} ⊗")
        fields.setdefault("seed_doubt", "certain")
        fields.setdefault("pollen_doubt", "probable")
        self.cross(code, plant, plant, intended="selfing", made_on=made_on, **fields)
        return code

    def evidence(self, cross: str, side: str, for_or_against: str, day: str, text: str) -> None:
        self.book.add(Evidence(cross, side, for_or_against, day, text))

    def finding(
        self,
        plant: str,
        pollen_parent: str,
        grade: str,
        day: str,
        text: str,
        odds: float | None = None,
    ) -> None:
        self.book.add(ParentFinding(plant, pollen_parent, odds, grade, day, text))

    # From flower to row ---------------------------------------------------------------------------

    def pollination(self, cross: str, day: str, flowers: int, set_: int, **fields: Any) -> str:
        """One working of a cross; emasculated the day before unless said otherwise."""
        code = self._code("P", day)
        fields.setdefault("emasculated_on", days_after(day, -1))
        fields.setdefault("by", self.by)
        fields.setdefault("bud", "closed")
        fields.setdefault("dropped", 0)
        fields.setdefault("tag", f"{cross}/{day[5:]}")
        self.book.add(Pollination(code, cross, day, flowers, set=set_, **fields))
        return code

    def pollen(self, plant: str, day: str, stored: str = "used the same morning") -> str:
        """Pollen collected from one plant."""
        code = self._code("L", day)
        self.book.add(PollenLot(code, plant, day, stored))
        return code

    def packet(
        self,
        cross: str,
        day: str,
        fruits: int,
        seeds: int,
        generation: str,
        *,
        covered: bool | None = None,
        note: str = "",
        place: str = "seed tin",
    ) -> str:
        """A harvest with its seed packet; gives the packet's code."""
        harvest, packet = self._code("H", day), self._code("K", day)
        borne_on = self.book.crosses[cross].seed_parent
        self.book.add(Harvest(harvest, cross, day, fruits, seeds, packet, note))
        self.book.add(
            Packet(packet, harvest, generation, borne_on, covered, seeds, seeds, place=place)
        )
        return packet

    def sow(
        self, packet: str, day: str, seeds: int, up: int, kept: int, place: str = "", note: str = ""
    ) -> str:
        """Sow from a packet, which then holds so many fewer."""
        held = self.book.packets[packet]
        assert held.left is not None
        assert held.left >= seeds >= up >= kept
        held.left -= seeds
        held.germination = round(up / seeds, 2)
        code = self._code("B", day)
        self.book.add(Sowing(code, packet, "", day, seeds, up, kept, place, note))
        return code

    def sow_variety(self, plant: str, day: str, seeds: int, up: int, kept: int, place: str) -> str:
        """Sow a variety from bought or kept seed."""
        code = self._code("B", day)
        self.book.add(Sowing(code, "", plant, day, seeds, up, kept, place))
        return code

    # What was seen --------------------------------------------------------------------------------

    def trait(self, trait: str, type_: str, **fields: Any) -> None:
        self.book.add(Trait(trait, type_, **fields))

    def score(
        self, plant: str, trait: str, value: object, day: str, of: str = "plant", note: str = ""
    ) -> None:
        self.book.add(Score(plant, trait, day, of, str(value), self.by, note))

    def locus(self, locus: str, alleles: str, phenotypes: str, **fields: Any) -> None:
        self.book.add(Locus(locus, alleles, "complete", phenotypes, **fields))

    def genotype(self, plant: str, locus: str, genotype: str, known_by: str) -> None:
        self.book.add(Genotype(plant, locus, genotype, known_by))

    def bloom(self, plant: str, first: str, last: str) -> None:
        self.book.add(Bloom(plant, first, last))

    def compatibility(self, plant: str, partner: str, seed: str, pollen: str, note: str) -> None:
        self.book.add(Compatibility(plant, partner, seed, pollen, note))

    def note(self, about: str, day: str, text: str) -> None:
        self.book.add(Note(about, day, text))

    def bookmark(self, name: str, focus: str, pinned: Iterable[str] = ()) -> None:
        self.book.add(Bookmark(name, focus, ";".join(pinned)))

    # Chance ---------------------------------------------------------------------------------------

    def near(self, mean: float, spread: float, low: float, high: float) -> int:
        """A whole number scattered about a mean."""
        return round(min(high, max(low, self.rng.gauss(mean, spread))))

    def shuffled(self, counts: dict[str, int]) -> list[str]:
        """Each word as often as its count, in chance order."""
        found = [word for word, count in counts.items() for _ in range(count)]
        self.rng.shuffle(found)
        return found
