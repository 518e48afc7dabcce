"""Flowers to pollinate: the plain rule, shrinkage, and the chance by simulation."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

import pedigreeview
from pedigreeview.book.book import Book, BookSettings
from pedigreeview.planning.flowers_needed import (
    SeedRates,
    chance_of_plants,
    flowers_needed,
    flowers_plainly,
    rates_of_book,
    shrunk_mean,
    shrunk_rate,
)


def test_the_pollinations_of_the_daylily_demo() -> None:
    """Demo C: 107 seedlings want 116 pollinations, 17 seedlings 19, at 0.33 × 3.5 × 0.8."""
    assert flowers_plainly(107, 0.33, 3.5, 0.8) == 116
    assert flowers_plainly(17, 0.33, 3.5, 0.8) == 19
    with pytest.raises(ValueError, match="flower"):
        flowers_plainly(3, 0, 3.5)


def test_few_flowers_of_ones_own_are_drawn_to_the_crop_and_many_are_not() -> None:
    few, many = shrunk_rate(4, 4, 0.3, 0.6), shrunk_rate(400, 400, 0.3, 0.6)
    # The crop counts as a dozen flowers at 45%.
    assert few.mean == pytest.approx((0.45 * 12 + 4) / 16)
    assert many.mean > 0.98
    assert shrunk_rate(0, 0).mean == 0.5
    assert shrunk_rate(0, 0, 0.1, 0.9).a + shrunk_rate(0, 0, 0.1, 0.9).b == pytest.approx(5.25)
    assert "4 of 4 of your own, drawn towards the crop's 30 to 60%" in few.sentence("Take")
    assert shrunk_mean(30, 3, 10, 3) == 10
    for bad in ((5, 4, None, None), (1, 2, 0.5, 1.5)):
        with pytest.raises(ValueError, match=r"count|range"):
            shrunk_rate(*bad)


def _rates() -> SeedRates:
    sure = shrunk_rate(80, 100, 0.8, 0.8)
    return SeedRates(shrunk_rate(3, 9, 0.2, 0.5), 3.5, sure, shrunk_rate(19, 20, 0.9, 1.0))


def test_the_smallest_number_of_flowers_and_its_chance_by_simulation() -> None:
    rates = _rates()
    found = flowers_needed(17, rates, assurance=0.9)
    assert chance_of_plants(17, found.flowers, rates) >= 0.9
    assert chance_of_plants(17, found.flowers - 1, rates) < 0.9
    assert found.expected < found.flowers
    rng = np.random.default_rng(3)
    runs = 40_000
    take = rng.beta(rates.take.a, rates.take.b, runs)
    fruits = rng.binomial(found.flowers, take)
    plants = rng.poisson(fruits * rates.per_fruit)
    drawn = float((plants >= 17).mean())
    due = chance_of_plants(17, found.flowers, rates)
    assert abs(drawn - due) < 4 * (due * (1 - due) / runs) ** 0.5
    assert f"{found.flowers} flowers" in found.sentence()
    assert chance_of_plants(0, 0, rates) == 1
    with pytest.raises(ValueError, match="plant"):
        flowers_needed(0, rates)


def test_rates_of_the_pea_demo(root: Path) -> None:
    """Demo A: 11 of 22 buds took, 37 seeds in 11 pods, 13 of 14 seeds up, 11 of 13 plants true."""
    book = pedigreeview.read(root / "demo_pedigrees" / "two_peas_both_ways").book
    rates = rates_of_book(book)
    assert (rates.take.done, rates.take.of) == (11, 22)
    assert (rates.germination.done, rates.germination.of) == (13, 14)
    assert (rates.true.done, rates.true.of) == (11, 13)
    assert rates.seeds_per_fruit == pytest.approx((37 + 4.5 * 3) / (11 + 3))
    one = rates_of_book(book, ("21-02",))
    assert (one.take.done, one.take.of) == (4, 10)
    assert len(rates.sentences()) == 4


def test_a_book_without_a_crop_says_so() -> None:
    rates = rates_of_book(Book(settings=BookSettings()))
    assert rates.take.mean == 0.5
    assert any("Without a crop" in line for line in rates.sentences())
