"""Sums of the two directions of a cross, on records small enough to add up by hand."""

from __future__ import annotations

from typing import Any

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.reciprocal_counts import RecordsByCross
from pedigreeview.book.records import (
    Cross,
    Harvest,
    Packet,
    Plant,
    Pollination,
    Score,
    Sowing,
    Trait,
)


@pytest.fixture
def book() -> Book:
    made = Book()
    records: list[Any] = [
        Plant("A"),
        Plant("B"),
        Cross("X1", seed_parent="A", pollen_parent="B"),
        Cross("X2", seed_parent="B", pollen_parent="A"),
        Cross("X3", seed_parent="A", pollen_parent="B"),
        Plant("P1", cross="X1"),
        Plant("P2", cross="X1"),
        Plant("P3", cross="X2"),
        Plant("P4", cross="X3"),
        Pollination("w1", "X1", flowers=8, set=5),
        Pollination("w2", "X1", flowers=4, set=2),
        Pollination("w3", "X1", flowers=3),
        Pollination("w4", "X2", flowers=10, set=0),
        Harvest("h1", "X1", fruits=5, seeds=20, packet="k1"),
        Harvest("h2", "X1", seeds=4),
        Packet("k1", harvest="h1"),
        Sowing("s1", packet="k1", seeds=8, up=7),
        Sowing("s2", sown_from="X1", seeds=2, up=1),
        Sowing("s3", sown_from="A", seeds=50, up=50),
        Trait("height", "measure", unit="cm"),
        Trait("pod", "category", values="green; yellow"),
        Score("P1", "height", "2022-06", value="100"),
        Score("P1", "height", "2022-07", value="120"),
        Score("P2", "height", "2022-07", value="130"),
        Score("P2", "height", "2022-08", of="seed", value="999"),
        Score("P1", "pod", "2022-06", value="green"),
        Score("P1", "pod", "2022-07", value="yellow"),
        Score("P2", "pod", "2022-07", value="yellow"),
    ]
    for record in records:
        made.add(record)
    return made


def test_sums_of_one_direction(book: Book) -> None:
    counts = RecordsByCross(book).direction(["X1"])
    assert (counts.flowers, counts.fruits_set) == (15, 7)
    assert (counts.fruits, counts.seeds) == (5, 24)
    assert (counts.sown, counts.up) == (10, 8)
    assert counts.progeny == ("P1", "P2")


def test_rates_use_only_records_that_say_both_numbers(book: Book) -> None:
    counts = RecordsByCross(book).direction(["X1"])
    assert counts.take_of == (7, 12)
    assert counts.take_rate == 7 / 12
    assert counts.seeds_per_fruit == 4.0


def test_no_take_is_not_the_same_as_not_written_down(book: Book) -> None:
    by_cross = RecordsByCross(book)
    failed, silent = by_cross.direction(["X2"]), by_cross.direction(["X3"])
    assert (failed.fruits_set, failed.take_rate, failed.seeds) == (0, 0.0, None)
    assert (silent.fruits_set, silent.take_rate, silent.flowers) == (None, None, None)


def test_repeated_crosses_add_up(book: Book) -> None:
    counts = RecordsByCross(book).direction(["X1", "X3"])
    assert counts.progeny == ("P1", "P2", "P4")
    assert counts.flowers == 15


def test_a_plant_scored_twice_counts_once_and_seed_scores_stay_out(book: Book) -> None:
    height, pod = RecordsByCross(book).direction(["X1"]).traits
    assert (height.trait, height.unit, height.n, height.mean) == ("height", "cm", 2, 120.0)
    assert (pod.n, pod.mean, pod.counts) == (2, None, (("yellow", 2),))


def test_nothing_recorded_gives_nothing() -> None:
    counts = RecordsByCross(Book()).direction([])
    assert counts.progeny == ()
    assert counts.traits == ()
    assert counts.take_rate is None
