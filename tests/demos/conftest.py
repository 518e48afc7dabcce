"""The makers of the demos lie beside their tests, so that one script can write them."""

from __future__ import annotations

import sys
from collections import Counter
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).resolve().parent))

from pedigreeview.book.book import Book
from pedigreeview.exchange import data_package
from pedigreeview.places import demo


class Counted:
    """A book asked as a grower would ask it: how many, of which kind, from which cross."""

    def __init__(self, book: Book) -> None:
        self.book = book
        self.values: dict[tuple[str, str], str] = {
            (score.plant, score.trait): score.value for score in book.scores
        }

    def progeny(self, cross: str) -> list[str]:
        """Single plants of a cross."""
        return [
            plant.plant
            for plant in self.book.plants.values()
            if plant.cross == cross and plant.kind == "plant"
        ]

    def looks(self, plants: list[str], *traits: str) -> Counter[str]:
        """How many plants show each set of values."""
        return Counter(
            " ".join(self.values.get((plant, trait), "-") for trait in traits) for plant in plants
        )

    def worked(self, cross: str) -> tuple[int, int, int, int]:
        """Flowers, fruits set, fruits harvested and seeds of a cross."""
        pollinations = [row for row in self.book.pollinations.values() if row.cross == cross]
        harvests = [row for row in self.book.harvests.values() if row.cross == cross]
        return (
            sum(row.flowers or 0 for row in pollinations),
            sum(row.set or 0 for row in pollinations),
            sum(row.fruits or 0 for row in harvests),
            sum(row.seeds or 0 for row in harvests),
        )

    def sown(self, cross: str) -> list[tuple[int | None, int | None, int | None]]:
        """Seeds, up and kept of each sowing of a cross."""
        packets = {
            row.packet
            for row in self.book.packets.values()
            if self.book.harvests[row.harvest].cross == cross
        }
        return [
            (row.seeds, row.up, row.kept)
            for row in self.book.sowings.values()
            if row.packet in packets
        ]


@pytest.fixture
def pea() -> Counted:
    return Counted(data_package.read(demo("two_peas_both_ways")))


@pytest.fixture
def tomato() -> Counted:
    return Counted(data_package.read(demo("a_leaf_for_hollin_plate")))


@pytest.fixture
def daylily() -> Counted:
    return Counted(data_package.read(demo("tansy_and_the_moths")))
