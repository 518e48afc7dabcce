"""Which plants fit a filter."""

from __future__ import annotations

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.filtering import (
    PlantFilter,
    latest_values,
    left_out,
    matching,
    seasons,
    words,
)
from pedigreeview.book.records import Cross, Plant, Score, Trait


@pytest.fixture
def book() -> Book:
    book = Book()
    book.add(Plant(plant="TP", name="Tarnwick Pale", kind="variety"))
    book.add(Plant(plant="BA", kind="variety", sown="2019"))
    book.add(Cross(cross="x1", seed_parent="TP", pollen_parent="BA", intended="cross"))
    book.add(Plant(plant="P1", cross="x1", sown="2021-04", status="kept"))
    book.add(Plant(plant="P2", cross="x1", sown="2021-04-03", status="culled", note="Frost in May"))
    book.add(Plant(plant="P3", cross="x1", sown="2023", status="growing"))
    book.add(Trait(trait="height", type="measure", unit="cm"))
    for plant, date, of, value in (
        ("P1", "2021", "plant", "90"),
        ("P1", "2022", "plant", "120,5"),
        ("P2", "2021", "", "60"),
        ("P3", "2023", "seed", "75"),
        ("BA", "2019", "plant", "tall"),
    ):
        book.add(Score(plant=plant, trait="height", date=date, of=of, value=value))
    return book


@pytest.mark.parametrize(
    ("wanted", "fit"),
    [
        (PlantFilter(), {"TP", "BA", "P1", "P2", "P3"}),
        (PlantFilter(first_season=2021), {"P1", "P2", "P3"}),
        (PlantFilter(last_season=2021), {"BA", "P1", "P2"}),
        (PlantFilter(first_season=2020, last_season=2022), {"P1", "P2"}),
        (PlantFilter(statuses=frozenset({"kept", "growing"})), {"P1", "P3"}),
        (PlantFilter(family="x1"), {"P1", "P2", "P3"}),
        (PlantFilter(trait="height"), {"P1", "P2", "BA"}),
        (PlantFilter(trait="height", low=60, high=100), {"P2"}),
        (PlantFilter(trait="height", low=120.5), {"P1"}),
        (PlantFilter(trait="height", high=60), {"P2"}),
        (PlantFilter(text=" frost "), {"P2"}),
        (PlantFilter(text="tarnwick"), {"TP"}),
        (PlantFilter(text="X1"), {"P1", "P2", "P3"}),
        (PlantFilter(text="p", statuses=frozenset({"kept"})), {"P1"}),
        (PlantFilter(founder="TP", share=0.5), {"TP", "P1", "P2"}),
        (PlantFilter(founder="TP", share=0.51), {"TP"}),
        (PlantFilter(founder="TP"), {"TP", "BA", "P1", "P2", "P3"}),
    ],
)
def test_what_fits(book: Book, wanted: PlantFilter, fit: set[str]) -> None:
    shares = {"TP": 1.0, "P1": 0.5, "P2": 0.5, "P3": 0.25}
    assert matching(book, wanted, shares=shares) == fit
    assert left_out(book, wanted, shares=shares) == set(book.plants) - fit


def test_a_later_score_counts_and_those_of_the_seed_do_not(book: Book) -> None:
    assert latest_values(book, "height") == {"P1": "120,5", "P2": "60", "BA": "tall"}


def test_values_can_be_given(book: Book) -> None:
    assert matching(book, PlantFilter(trait="height", low=1), values={"P3": "2"}) == {"P3"}


def test_seasons_are_the_years_of_sowing(book: Book) -> None:
    assert seasons(book) == [2019, 2021, 2023]


@pytest.mark.parametrize(
    ("wanted", "said"),
    [
        (PlantFilter(), ""),
        (PlantFilter(first_season=2020, last_season=2020), "sown in 2020"),
        (PlantFilter(first_season=2020), "sown in 2020 or later"),
        (PlantFilter(last_season=2020), "sown in 2020 or before"),
        (PlantFilter(first_season=2019, last_season=2020), "sown from 2019 to 2020"),
        (PlantFilter(statuses=frozenset({"kept", "culled"})), "culled or kept"),
        (PlantFilter(family="x1"), "raised from x1"),
        (PlantFilter(trait="height"), "height known"),
        (PlantFilter(trait="height", low=3), "height 3 or more"),
        (PlantFilter(trait="height", high=3.5), "height 3.5 or less"),
        (PlantFilter(trait="height", low=1, high=2), "height 1 to 2"),
        (PlantFilter(founder="TP", share=0.25), "at least 25% of TP"),
        (PlantFilter(text=" a "), "with 'a'"),
    ],
)
def test_a_filter_in_words(wanted: PlantFilter, said: str) -> None:
    assert words(wanted) == said
    assert wanted.empty() == (said == "")
