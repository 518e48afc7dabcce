"""The figures of 'A leaf for Hollin Plate', as shipped and with its planted error mended.

They were set down when the scenario was made, before the script that fills it in.
"""

from __future__ import annotations

import pytest
import scenario_tomato

from pedigreeview.book.problems import counts_as_problem
from pedigreeview.network import PedigreeNetwork, WithheldFault

BC1 = [f"18-01-{number:02d}" for number in range(1, 25)]


@pytest.fixture
def shipped(tomato) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(tomato.book)


@pytest.fixture
def mended(tomato) -> PedigreeNetwork:
    scenario_tomato.mend(tomato.book)
    return PedigreeNetwork.from_records(tomato.book)


def test_the_three_varieties(tomato):
    def seen(code, *traits):
        return [tomato.values[code, trait] for trait in traits]

    traits = ("fruit weight", "colour", "leaf", "ripe day")
    assert seen("HP", *traits) == ["240", "red", "regular", "82"]
    assert seen("MB", *traits) == ["14", "orange", "potato", "58"]
    assert seen("SO", "fruit weight", "colour", "Brix") == ["90", "dark", "9.1"]
    names = [tomato.book.plants[code].name for code in ("HP", "MB", "SO")]
    assert names == ["Hollin Plate", "Merrowby Bead", "Scaur Oxblood"]


def test_the_first_cross_both_ways(tomato):
    assert tomato.worked("17-01") == (9, 5, 5, 210)
    assert tomato.worked("17-02") == (9, 6, 6, 88)
    assert tomato.sown("17-02") == [(20, 18, 17)]
    seedlings = tomato.progeny("17-02")
    assert tomato.looks(seedlings, "leaf") == {"regular": 17, "potato": 1}
    (row,) = [row for row in tomato.book.parent_findings if row.plant in seedlings]
    assert (tomato.values[row.plant, "leaf"], row.pollen_parent) == ("potato", "self")


def test_which_of_the_bc1_plants_carry_the_leaf(tomato):
    from scipy.stats import chisquare

    assert tomato.progeny("18-01") == BC1
    tested = {code: tomato.progeny(f"{code} ⊗")[:12] for code in BC1}
    assert {len(row) for row in tested.values()} == {12}
    carriers = [code for code, row in tested.items() if tomato.looks(row, "leaf")["potato"]]
    assert len(carriers) == 13
    assert "18-01-07" in carriers
    statistic = chisquare([13, 24 - 13]).statistic
    assert statistic == pytest.approx(0.17, abs=0.005)
    assert pytest.approx(0.032, abs=0.0005) == 0.75**12
    known = {
        row.plant for row in tomato.book.genotypes if row.locus == "C" and row.genotype == "C/c"
    }
    assert known & set(BC1) == set(carriers)


def test_the_selfings_that_gave_the_leaf(tomato):
    first, second = tomato.progeny("18-01-07 ⊗"), tomato.progeny("20-01-4 ⊗")
    assert tomato.looks(first, "leaf") == {"regular": 27, "potato": 9}
    assert tomato.looks(second, "leaf") == {"regular": 31, "potato": 9}
    kept = [code for code in (*first, *second) if tomato.book.plants[code].status == "kept"]
    assert kept == ["18-01-07-3", "18-01-07-8", "20-01-4-11"]
    assert tomato.looks(kept, "leaf") == {"potato": 3}


def test_the_fruit_without_a_tag(tomato):
    seedlings = tomato.progeny("21-09")
    assert tomato.looks(seedlings, "leaf") == {"potato": 14, "regular": 1}
    assert tomato.book.crosses["21-09"].pollen_parent == ""
    rows = [row for row in tomato.book.parent_findings if row.plant in seedlings]
    selfs = [row.plant for row in rows if row.pollen_parent == "self"]
    assert tomato.looks(selfs, "leaf") == {"potato": 14}
    others = {(row.plant, row.pollen_parent): row.odds for row in rows if row.odds is not None}
    assert others == {
        ("21-09-6", "HP"): 0.5,
        ("21-09-6", "SO"): 0.3,
        ("21-09-6", "17-02-5c20"): 0.1,
    }
    assert tomato.values["21-09-6", "leaf"] == "regular"


def test_about_420_plants_over_nine_years(tomato):
    years = {plant.sown[:4] for plant in tomato.book.plants.values() if plant.sown}
    years |= {row.date[:4] for row in tomato.book.pollinations.values()}
    assert (min(years), max(years)) == ("2017", "2025")
    assert len(tomato.book.plants) == 440


def test_as_shipped_the_loop_is_named_and_nothing_else_is_wrong(shipped):
    assert [set(loop) for loop in shipped.loops()] == [{"20-01-4", "20-01-4-11"}]
    wrong = [problem for problem in shipped.problems() if counts_as_problem(problem)]
    loop, order = sorted(wrong, key=lambda problem: problem.kind, reverse=True)
    assert (loop.kind, loop.severity) == ("own_ancestor", "error")
    assert set(loop.plants) == {"20-01-4", "20-01-4-11"}
    assert order.kind == "bad_date_order"
    assert "20-01-4-11" in order.plants


def test_the_planted_parent_was_sown_two_years_after_its_cross(tomato):
    cross = tomato.book.crosses["20-01"]
    assert cross.pollen_parent == "20-01-4-11"
    assert (cross.made_on[:4], tomato.book.plants["20-01-4-11"].sown[:4]) == ("2020", "2022")
    tags = {row.tag for row in tomato.book.pollinations.values() if row.cross == "20-01"}
    assert tags == {f"HP × {scenario_tomato.TRUE_POLLEN_PARENT}"}


def test_as_shipped_what_depends_on_the_loop_is_withheld(shipped):
    heads = ("20-01-", "23-01", "23-02")
    assert set(shipped.withheld) == {code for code in shipped.codes if code.startswith(heads)}
    with pytest.raises(WithheldFault):
        shipped.inbreeding("23-01-2")
    assert shipped.inbreeding("18-01-07-3") == 3 / 4
    assert shipped.inbreeding("22-01-1") == 3 / 4


def test_mended_nothing_is_wrong(mended):
    assert [problem for problem in mended.problems() if counts_as_problem(problem)] == []
    assert mended.loops() == []
    assert dict(mended.withheld) == {}


def test_mended_inbreeding(mended):
    wanted = {
        "18-01-07": 1 / 2,
        "18-02-1": 1 / 2,
        "18-01-07-3": 3 / 4,
        "22-01-1": 3 / 4,
        "20-01-4": 3 / 4,
        "20-01-4-11": 7 / 8,
        "23-01-2": 7 / 8,
        "23-02-1": 0,
    }
    assert {code: mended.inbreeding(code) for code in wanted} == wanted


def test_mended_shares_of_hollin_plate(mended):
    line = ("18-01-07", "20-01-4", "23-01-2")
    assert [mended.founder_shares(code)["HP"] for code in line] == [3 / 4, 7 / 8, 15 / 16]
    assert mended.founder_shares("23-02-1") == {"SO": 1 / 2, "HP": 7 / 16, "MB": 1 / 16}
    assert mended.unknown_share("21-09-6") == pytest.approx(0.05)


def test_the_two_backcrosses_differ_in_cytoplasm_alone(mended):
    others = ("HP", "MB", "17-02-5")
    assert [mended.coancestry("18-01-07", code) for code in others] == [
        mended.coancestry("18-02-1", code) for code in others
    ]
    assert mended.cytoplasm("18-01-07") == "HP"
    assert mended.cytoplasm("18-02-1") == "MB"


def test_mended_reciprocal_pairs(mended):
    # HP also stands on both sides of 20-01 and 23-01, but with two different partners.
    assert [pair.parents for pair in mended.reciprocal_pairs()] == [
        ("HP", "MB"),
        ("HP", "17-02-5"),
    ]


def test_built_book_is_the_shipped_book(tomato):
    built = scenario_tomato.build()
    assert list(built.records()) == list(tomato.book.records())
