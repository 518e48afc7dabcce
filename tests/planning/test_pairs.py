"""Pairs of candidates: numbers against the network one by one, limits, reasons, direction."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.book.records import (
    Bloom,
    Compatibility,
    Cross,
    Genotype,
    Harvest,
    Locus,
    Plant,
    Pollination,
    Score,
    Trait,
)
from pedigreeview.network import PedigreeNetwork
from pedigreeview.planning.direction import advise_direction, selfs_shown
from pedigreeview.planning.flowering import flowering_of
from pedigreeview.planning.inference import genotype_chances
from pedigreeview.planning.merit import standing_of
from pedigreeview.planning.pairs import Limits, Weights, rank_pairs, try_pair
from pedigreeview.planning.wanted import wanted_allele, wanted_trait
from tests.network.random_books import books


def _book() -> Book:
    """A dwarf sweet line, a tall one with many pods, their F1, and a third line."""
    book = Book(settings=BookSettings(ploidy=2))
    book.add(Trait("height", "category", values="tall;dwarf"))
    book.add(Trait("sweet", "score", low=1, high=9, better="high"))
    book.add(Trait("pods", "measure", better="high"))
    book.add(Locus("Le", "Le;le", "complete", "tall;dwarf"))
    for code in ("TP", "BA", "LC"):
        book.add(Plant(code, kind="variety", fixation=1.0))
    book.add(Cross("21-01", "TP", "BA", state="made"))
    book.add(Plant("F1", kind="plant", cross="21-01"))
    for plant, trait, value in (
        ("TP", "height", "dwarf"),
        ("BA", "height", "tall"),
        ("LC", "height", "tall"),
        ("TP", "sweet", "8"),
        ("TP", "sweet", "7"),
        ("BA", "sweet", "5"),
        ("LC", "sweet", "6"),
        ("TP", "pods", "24"),
        ("BA", "pods", "40"),
    ):
        book.add(Score(plant, trait, "2021-07", "plant", value))
    book.add(Pollination("P1", "21-01", "2021-06-10", 12, set=7))
    book.add(Harvest("H1", "21-01", "2021-08-01", 7, 24))
    book.add(Bloom("TP", "2021-06-09", "2021-06-27"))
    book.add(Bloom("BA", "2021-06-20", "2021-07-04"))
    book.add(Bloom("LC", "2022-07-10", "2022-07-20"))
    book.add(Compatibility("LC", "TP", as_seed="sterile", note="Never took."))
    return book


@pytest.fixture
def net() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(_book())


def test_where_candidates_stand(net) -> None:
    wishes = [
        wanted_trait(net.book, "sweet"),
        wanted_trait(net.book, "height", "dwarf"),
        wanted_allele(net.book, "Le", "le", 2.0),
    ]
    found = standing_of(net, wishes, ["TP", "BA", "LC", "F1"])
    np.testing.assert_allclose(found.value[:, 0], [7.5, 5, 6, np.nan])
    np.testing.assert_allclose(found.level[:, 0], [1, 0, 0.4, np.nan])
    np.testing.assert_allclose(found.value[:, 1], [1, 0, 0, np.nan])
    # BA and LC are lines seen tall: without le, as pure lines show what they have.
    np.testing.assert_allclose(found.value[:, 2], [1, 0, 0, 0.5])
    assert found.count[:, 0].tolist() == [2, 1, 1, 0]
    assert (found.low[0, 0], found.high[0, 0]) == (7, 8)
    # Weights 1, 1, 2: TP has all; F1 is known by its allele alone.
    np.testing.assert_allclose(found.merit, [1, 0, 0.1, 0.5])


@settings(max_examples=30)
@given(books(most=10, ploidies=(2, 4)))
def test_numbers_are_those_of_the_network(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    codes = [code for code in net.codes if code not in net.withheld]
    found = rank_pairs(net, codes, [], most=500)
    assert found.pairs == len(codes) * (len(codes) - 1) // 2
    assert found.kept + sum(found.left_out.values()) == found.pairs
    for row in found.rows:
        assert row.inbreeding == pytest.approx(net.progeny_inbreeding(row.seed, row.pollen))
        assert row.parts["unrelated"] == pytest.approx(1 - row.inbreeding)
        assert row.coancestry == pytest.approx(net.coancestry(row.seed, row.pollen))
        halves = [net.founder_shares(code) for code in (row.seed, row.pollen)]
        for founder, share in row.founder_shares.items():
            wanted = sum(half.get(founder, 0) for half in halves) / 2
            assert share == pytest.approx(wanted)
        assert 0 <= row.score <= 1
    scores = [row.score for row in found.rows]
    assert scores == sorted(scores, reverse=True)


def test_the_two_that_complement_each_other_come_first(net) -> None:
    wishes = [wanted_trait(net.book, "sweet"), wanted_trait(net.book, "pods")]
    found = rank_pairs(net, ["TP", "BA", "LC"], wishes)
    first = found.rows[0]
    assert {first.seed, first.pollen} == {"TP", "BA"}
    assert first.parts["complement"] == 1.0
    assert first.reasons[0] == "TP brings high sweet; BA brings high pods."
    sweet = first.wishes[0]
    assert (sweet.middle, sweet.low, sweet.high) == (6.25, 5, 8)
    assert "F of the progeny is 0." in first.reasons
    assert "They flower together on 8 days." in first.reasons
    made = "21-01 (TP × BA): 7 of 12 flowers took, 24 seeds, 1 plant in the book."
    assert made in first.reasons
    assert first.parts["new"] == 0.0


def test_weights_move_the_order(net) -> None:
    wishes = [wanted_trait(net.book, "sweet"), wanted_trait(net.book, "pods")]
    only_new = Weights(0, 0, 0, 0, 0, 1, 0)
    found = rank_pairs(net, ["TP", "BA", "LC"], wishes, weights=only_new)
    assert {found.rows[-1].seed, found.rows[-1].pollen} == {"TP", "BA"}
    assert [row.score for row in found.rows] == [1, 1, 0]
    with pytest.raises(ValueError, match="weights"):
        Weights(-1.0)


def test_limits_leave_pairs_out_and_say_how_many(net) -> None:
    codes = ["TP", "BA", "LC", "F1"]
    # F of TP × F1 is ½ (θ of a line with its own F1), as of BA × F1.
    found = rank_pairs(net, codes, [], limits=Limits(inbreeding=1 / 8))
    assert found.left_out == {"F above 0.125": 2}
    assert found.kept == 4
    share = rank_pairs(net, codes, [], limits=Limits(founder_share=0.5))
    assert share.left_out == {"a founder above 0.5": 2}
    apart = rank_pairs(net, codes, [], limits=Limits(overlap=1))
    assert apart.left_out == {"not in flower together": 2}
    never = rank_pairs(net, codes, [], limits=Limits(never_made=True))
    assert never.left_out == {"crossed before": 1}


def test_a_sterile_direction_turns_the_pair_round(net) -> None:
    found = rank_pairs(net, ["LC", "TP"], [])
    (row,) = found.rows
    assert (row.seed, row.pollen) == ("TP", "LC")
    assert row.parts["fertility"] == 1.0
    assert "LC with TP: sterile as seed parent; Never took." in row.reasons
    assert try_pair(net, "LC", "TP").parts["fertility"] == 0.0
    net.book.compatibility.append(Compatibility("TP", "LC", as_seed="sterile"))
    again = rank_pairs(PedigreeNetwork.from_records(net.book), ["LC", "TP"], [])
    assert again.rows == ()
    assert again.left_out == {"noted as sterile": 1}


def test_the_recessive_parent_as_the_seed_parent_shows_selfs(net) -> None:
    answers = {"Le": genotype_chances(net, "Le")}
    assert selfs_shown(answers["Le"], "TP", "BA") == pytest.approx(1.0)
    assert selfs_shown(answers["Le"], "BA", "TP") == 0.0
    advice = advise_direction(answers, "BA", "TP")
    assert (advice.seed, advice.shown) == ("TP", (0.0, pytest.approx(1.0)))
    assert advice.sentence == (
        "With TP as the seed parent and pollen of BA, every accidental self is seen: dwarf, "
        "where the cross gives tall."
    )
    found = rank_pairs(net, ["BA", "TP"], [], answers=answers)
    assert (found.rows[0].seed, found.rows[0].parts["shown"]) == ("TP", pytest.approx(1.0))
    assert advise_direction(answers, "BA", "LC").seed == ""


def test_a_carrier_as_seed_parent_shows_a_quarter_of_its_selfs(net) -> None:
    net.book.genotypes.append(Genotype("BA", "Le", "Le/Le"))
    answer = genotype_chances(net, "Le")
    assert selfs_shown(answer, "F1", "BA") == pytest.approx(1 / 4)


def test_flowering_by_hand(net) -> None:
    found = flowering_of(net, ["TP", "BA", "LC", "F1"])
    one, other = np.array([0, 0, 0]), np.array([1, 2, 3])
    # TP 9-27 June, BA 20 June to 4 July: 8 days.  LC from 10 July 2022: 27 June is 13 days before.
    np.testing.assert_allclose(found.overlap(one, other), [8, -13, np.nan])


def test_seasons_on_record_for_both_go_before_usual_days() -> None:
    book = _book()
    book.add(Bloom("LC", "2021-06-27", "2021-07-01"))
    found = flowering_of(PedigreeNetwork.from_records(book), ["TP", "LC"])
    np.testing.assert_allclose(found.overlap(np.array([0]), np.array([1])), [1])


def test_a_clone_counts_as_its_original() -> None:
    book = _book()
    book.add(Plant("F1c", kind="plant", raised="cutting_of", source="F1"))
    book.add(Score("F1", "sweet", "2022-07", "plant", "6"))
    book.add(Cross("22-01", "F1", "LC", state="made"))
    net = PedigreeNetwork.from_records(book)
    row = try_pair(net, "F1c", "LC", [wanted_trait(book, "sweet")])
    assert row.made == ("22-01",)
    assert row.wishes[0].seed == 6


def test_two_thousand_candidates_are_weighed_at_once() -> None:
    rng = np.random.default_rng(2)
    book = Book(settings=BookSettings(ploidy=2, founders_as="plant"))
    founders = [f"A{number}" for number in range(40)]
    for code in founders:
        book.add(Plant(code, kind="plant"))
    for number in range(200):
        seed, pollen = rng.choice(founders, 2, replace=False).tolist()
        book.add(Cross(f"x{number}", seed, pollen, state="made"))
        for sib in range(10):
            book.add(Plant(f"x{number}-{sib}", kind="plant", cross=f"x{number}"))
    net = PedigreeNetwork.from_records(book)
    codes = [code for code in net.codes if "-" in code]
    found = rank_pairs(net, codes, [], limits=Limits(inbreeding=1 / 8), most=20)
    assert (found.pairs, len(found.rows)) == (1999000, 20)
    # Full sibs of unrelated plants give F ¼: 200 families of 45 pairs, and those crossed alike.
    assert found.left_out["F above 0.125"] >= 200 * 45


def test_wishes_that_cannot_be_read() -> None:
    book = _book()
    with pytest.raises(Fault, match="no trait"):
        wanted_trait(book, "colour")
    with pytest.raises(Fault, match="which value"):
        wanted_trait(book, "height", "middling")
    book.add(Trait("ripe", "measure"))
    with pytest.raises(Fault, match="high or low"):
        wanted_trait(book, "ripe")
    with pytest.raises(Fault, match="no allele"):
        wanted_allele(book, "Le", "x")
    with pytest.raises(ValueError, match="weight"):
        wanted_trait(book, "ripe", "low", -1)


def test_too_few_candidates_and_cancel(net) -> None:
    with pytest.raises(Fault, match="fewer than two"):
        rank_pairs(net, ["TP"], [])
    with pytest.raises(Fault, match="selfing"):
        try_pair(net, "TP", "TP")

    def tick(done: int, of: int) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        rank_pairs(net, ["TP", "BA"], [], tick=tick)
