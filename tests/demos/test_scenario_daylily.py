"""The figures of 'Tansy and the moths', asked of the records and of the network.

They were set down when the scenario was made, before the script that fills it in.
"""

from __future__ import annotations

import math

import pytest
import scenario_daylily

from pedigreeview.book.problems import counts_as_problem
from pedigreeview.network import PedigreeNetwork


@pytest.fixture
def net(daylily) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(daylily.book)


def test_crosses_of_2016(daylily):
    from scipy.stats import fisher_exact

    assert daylily.worked("16-01") == (9, 3, 3, 11)
    assert daylily.worked("16-02") == (8, 1, 1, 3)
    assert daylily.worked("16-03") == (12, 4, 4, 14)
    assert daylily.worked("16-04") == (6, 0, 0, 0)
    plants = [len(daylily.progeny(f"16-0{number}")) for number in range(1, 5)]
    assert plants == [8, 2, 9, 0]
    assert fisher_exact([[3, 6], [1, 7]]).pvalue == pytest.approx(0.58, abs=0.005)
    buds = [row for row in daylily.book.scores if (row.plant, row.trait) == ("SL", "buds")]
    assert buds[0].value == "22"


def test_the_eye_in_a_selfed_tetraploid(daylily, net):
    assert daylily.looks(daylily.progeny("19-02"), "eye") == {"eye": 35, "no eye": 1}
    known = {row.plant: row.genotype for row in daylily.book.genotypes}
    assert known["16-01-2"] == "E/E/e/e"
    roads = [net.inbreeding(f"19-0{number}-1") for number in range(1, 4)]
    assert roads == pytest.approx([1 / 12, 1 / 6, 1 / 12])


def test_the_road_out_brings_two_unrelated_parents_together(net):
    # Nothing between the gametes; doubling made WC4 a third fixed, and a little of that is still
    # found within the gametes of 16-03-4: 1/3 · 1/2 · (1/3 · 1/2 · 1/3) = 1/108.
    assert net.coancestry("16-01-2", "16-03-4") == 0
    assert net.inbreeding("WC4") == pytest.approx(1 / 3)
    assert net.inbreeding("19-04-1") == pytest.approx(1 / 108)


def test_pollinations_wanted_for_one_eyeless_plant():
    seedlings = [math.ceil(math.log(0.05) / math.log(1 - share)) for share in (1 / 36, 1 / 6)]
    assert seedlings == [107, 17]
    assert [math.ceil(count / (0.33 * 3.5 * 0.8)) for count in seedlings] == [116, 19]


def test_clones_and_the_bee(daylily, net):
    clumps = [plant for plant in daylily.book.plants.values() if plant.source == "16-01-2"]
    assert [plant.plant for plant in clumps] == ["16-01-2a", "16-01-2b", "16-01-2c"]
    assert net.coancestry("16-01-2a", "16-01-2b") == net.self_coancestry("16-01-2")
    assert daylily.worked("18-01")[2:] == (1, 6)
    assert net.cytoplasm("18-01-1") == "NT"
    assert net.coancestry("GM", "GM striped") == 1 / 4


def test_about_90_clones_over_ten_years(daylily):
    years = {row.date[:4] for row in daylily.book.scores}
    assert (min(years), max(years)) == ("2016", "2025")
    assert len(daylily.book.plants) == 89


def test_only_the_ploidy_of_16_04_is_wrong(net):
    wrong = [problem for problem in net.problems() if counts_as_problem(problem)]
    assert [(problem.kind, set(problem.plants)) for problem in wrong] == [
        ("ploidy_differs", {"SL", "WC"})
    ]


def test_built_book_is_the_shipped_book(daylily):
    built = scenario_daylily.build()
    assert list(built.records()) == list(daylily.book.records())
