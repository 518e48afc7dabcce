"""The figures of 'Two peas, both ways', asked of the records and of the network.

They were set down when the scenario was made, before the script that fills it in.
"""

from __future__ import annotations

from collections import Counter

import pytest
import scenario_pea

from pedigreeview.book.problems import counts_as_problem
from pedigreeview.network import PedigreeNetwork

RATIO_9331 = {"tall green": 9, "tall yellow": 3, "dwarf green": 3, "dwarf yellow": 1}


@pytest.fixture
def net(pea) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(pea.book)


def test_the_two_varieties(pea):
    seen = {
        code: [pea.values[code, trait] for trait in pea.book.traits if trait != "seed weight"]
        for code in ("TP", "BA")
    }
    assert seen == {
        "TP": ["dwarf", "white", "green", "8", "24", "52"],
        "BA": ["tall", "purple", "yellow", "5", "41", "63"],
    }
    assert pea.book.plants["TP"].name == "Tarnwick Pale"
    assert pea.book.plants["BA"].name == "Brockle Amber"
    assert pea.book.plants["TP"].fixation == 1
    assert pea.book.plants["BA"].fixation is None


def test_fruit_set_of_the_two_directions(pea):
    from scipy.stats import fisher_exact

    one, other = pea.worked("21-01"), pea.worked("21-02")
    assert one == (12, 7, 7, 24)
    assert other == (10, 4, 4, 13)
    table = [[one[1], one[0] - one[1]], [other[1], other[0] - other[1]]]
    assert fisher_exact(table).pvalue == pytest.approx(0.67, abs=0.005)


def test_what_the_f1_showed(pea):
    assert pea.sown("21-01") == [(8, 7, 6)]
    assert pea.sown("21-02") == [(6, 6, 5)]
    traits = ("height", "flower", "pod")
    assert pea.looks(pea.progeny("21-01"), *traits) == {
        "tall purple green": 6,
        "dwarf white green": 1,
    }
    assert pea.looks(pea.progeny("21-02"), *traits) == {
        "tall purple green": 5,
        "tall purple yellow": 1,
    }
    selfs = [row.plant for row in pea.book.parent_findings if row.pollen_parent == "self"]
    assert pea.looks(selfs, *traits) == {"dwarf white green": 1, "tall purple yellow": 1}
    assert {pea.book.plants[code].status for code in selfs} == {"culled"}


def test_the_f2_counts_and_their_fit(pea):
    from scipy.stats import chisquare

    families = [pea.progeny(cross) for cross in ("21-01-3 ⊗", "21-02-2 ⊗")]
    seen = [pea.looks(family, "height", "pod") for family in families]
    assert seen[0] == {"tall green": 27, "tall yellow": 9, "dwarf green": 9, "dwarf yellow": 3}
    assert seen[1] == {"tall green": 25, "tall yellow": 10, "dwarf green": 11, "dwarf yellow": 2}
    pooled = seen[0] + seen[1]
    fit = chisquare(
        [pooled[look] for look in RATIO_9331], [6 * share for share in RATIO_9331.values()]
    )
    assert fit.statistic == pytest.approx(0.52, abs=0.005)
    assert fit.pvalue == pytest.approx(0.91, abs=0.005)


def test_the_five_dwarf_plants_with_yellow_pods(pea):
    wanted = {
        "23-07": "6 22 55",
        "23-19": "7 27 54",
        "23-33": "4 31 58",
        "23-61": "8 19 53",
        "23-88": "6 25 56",
    }
    f2 = pea.progeny("21-01-3 ⊗") + pea.progeny("21-02-2 ⊗")
    found = [code for code in f2 if pea.looks([code], "height", "pod") == {"dwarf yellow": 1}]
    assert found == list(wanted)
    for code, scores in wanted.items():
        assert pea.looks([code], "sweet", "pods", "first flower") == {scores: 1}


def test_rows_from_f3_to_f5(pea):
    f3 = {parent: pea.progeny(f"23-{parent} ⊗") for parent in ("07", "19", "61", "88")}
    assert [len(row) for row in f3.values()] == [12, 12, 12, 12]
    assert pea.progeny("23-33 ⊗") == []
    assert pea.looks(f3["61"], "flower") == {"purple": 9, "white": 3}
    assert pea.looks(f3["19"], "flower") == {"white": 12}
    f4 = [pea.progeny(f"{parent} ⊗") for parent in ("19-4", "61-2", "88-6")]
    assert [len(row) for row in f4] == [12, 12, 12]
    assert pea.looks(pea.progeny("19-4-2 ⊗"), "height") == {"dwarf": 20}
    assert pea.looks(pea.progeny("61-2-5 ⊗"), "height") == {"dwarf": 19, "tall": 1}
    assert all(pea.values[code, "pod"] == "yellow" for row in [*f3.values(), *f4] for code in row)


def test_the_tall_plant_is_nobodys_self(pea):
    tall = [code for code in pea.progeny("61-2-5 ⊗") if pea.values[code, "height"] == "tall"]
    findings = [row for row in pea.book.parent_findings if row.plant in tall]
    assert [(row.pollen_parent, row.grade) for row in findings] == [("", "unknown")]


def test_about_230_plants_over_six_years(pea):
    years = {plant.sown[:4] for plant in pea.book.plants.values() if plant.sown}
    years |= {row.date[:4] for row in pea.book.pollinations.values()}
    assert (min(years), max(years)) == ("2021", "2026")
    assert len(pea.book.plants) == 237
    kinds = Counter(plant.kind for plant in pea.book.plants.values())
    assert kinds == {"plant": 233, "family": 2, "variety": 2}


def test_fixation_rises_by_half_of_the_rest(net):
    line = ("21-01-3", "23-19", "19-4", "19-4-2", "19-4-2-1", "19-4-2 row")
    assert [net.inbreeding(code) for code in line] == [0, 1 / 2, 3 / 4, 7 / 8, 15 / 16, 15 / 16]
    assert [net.generation_name(code) for code in line] == ["F1", "F2", "F3", "F4", "F5", "F5"]
    assert net.inbreeding("21-01-4") == 1
    assert net.founder_shares("19-4-2-1") == {"TP": 0.5, "BA": 0.5}


def test_one_reciprocal_pair_with_two_cytoplasms(net):
    (pair,) = net.reciprocal_pairs()
    assert pair.parents == ("TP", "BA")
    assert [list(side) for side in pair.crosses] == [["21-01"], ["21-02"]]
    assert net.cytoplasm("19-4-2") == "TP"
    assert net.cytoplasm("61-2-5") == "BA"
    assert net.coancestry("19-4-2", "61-2-5") == 0.5


def test_nothing_is_wrong_with_the_book(net):
    assert [problem for problem in net.problems() if counts_as_problem(problem)] == []
    assert net.loops() == []
    assert dict(net.withheld) == {}


def test_built_book_is_the_shipped_book(pea):
    built = scenario_pea.build()
    assert list(built.records()) == list(pea.book.records())
