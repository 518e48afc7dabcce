"""How many to grow: parents of the book, genes in numbers, the figure, what cannot be followed."""

from __future__ import annotations

import itertools
from fractions import Fraction
from math import comb

import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.faults import Fault
from pedigreeview.exchange import read_book
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.planning.known_copies import known_copies
from pedigreeview.window.curve import CurveFigure
from pedigreeview.window.growing_question import (
    GrowingQuestion,
    TypedGenes,
    grow,
)
from tests.window.conftest import PEAS

WANTED = (("height", "dwarf"), ("pod", "yellow"))


def tick(*_: object) -> None:
    return None


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(read_book(PEAS))


def test_two_recessives_ask_for_47_f2_plants(net: PedigreeNetwork) -> None:
    # Table of plants needed: 1 in 16 with 95% assurance, 47 plants (ln 0.05 / ln 15/16 = 46.4).
    question = GrowingQuestion("TP", "BA", WANTED, germination=1.0, alive=1.0)
    answer = grow(net, question, tick)
    second = next(plan for plan in answer.plans if plan.scheme.name == "F2")
    assert second.plan is not None
    assert (second.goal, second.plan.plants) == (1 / 16, 47)
    assert answer.two_steps is not None
    assert answer.two_steps.one_step == 47
    assert answer.selfing[1].heterozygous == Fraction(1, 2)
    assert answer.backcross[2].share == Fraction(7, 8)
    assert answer.flowers is not None


def test_typed_genes_say_the_same_as_the_book(net: PedigreeNetwork) -> None:
    of_book = grow(net, GrowingQuestion("TP", "BA", WANTED), tick)
    typed = grow(net, GrowingQuestion("TP", "BA", typed=TypedGenes((1, 1))), tick)
    assert {p.scheme.name: p.goal for p in typed.plans} == {
        p.scheme.name: p.goal for p in of_book.plans
    }


def test_losses_ask_for_more_seeds_and_more_wanted_for_more_plants(net: PedigreeNetwork) -> None:
    def f2(**more: object) -> int:
        question = GrowingQuestion(typed=TypedGenes((1, 1)), **more)  # type: ignore[arg-type]
        plans = grow(None, question, tick).plans
        plan = next(p for p in plans if p.scheme.name == "F2").plan
        assert plan is not None
        return plan.seeds

    whole = f2(germination=1.0, alive=1.0)
    assert whole == 47
    assert f2(germination=0.5, alive=1.0) > 90
    # At least 3 at 1 in 16 with 95%: the smallest n with a binomial tail of 95% is 99
    # (worked out here with exact fractions).
    exact = next(
        n
        for n in range(3, 200)
        if 1
        - sum(
            Fraction(comb(n, k)) * Fraction(1, 16) ** k * Fraction(15, 16) ** (n - k)
            for k in range(3)
        )
        >= Fraction(95, 100)
    )
    assert f2(germination=1.0, alive=1.0, at_least=3) == exact


def test_linkage_in_repulsion_makes_the_double_recessive_rare() -> None:
    linked = TypedGenes((1, 1), linked=Fraction(1, 10))
    answer = grow(None, GrowingQuestion(typed=linked), tick)
    second = next(plan for plan in answer.plans if plan.scheme.name == "F2")
    # Each gamete carries both with r/2, so a plant shows both with (r/2)² = 1/400.
    assert second.goal == pytest.approx(1 / 400)
    both = TypedGenes((0, 2), linked=Fraction(1, 10))
    coupled = grow(None, GrowingQuestion(typed=both), tick)
    second = next(plan for plan in coupled.plans if plan.scheme.name == "F2")
    assert second.goal == pytest.approx((0.9 / 2) ** 2)


def test_additive_genes_count_alleles() -> None:
    typed = TypedGenes(additive=2, at_least=3)
    answer = grow(None, GrowingQuestion(typed=typed, fixed=False), tick)
    second = next(plan for plan in answer.plans if plan.scheme.name == "F2")
    # Of four alleles three or four: (4 + 1) / 16.
    assert second.goal == pytest.approx(5 / 16)


def test_what_cannot_be_asked_is_said(net: PedigreeNetwork) -> None:
    for question, words in (
        (GrowingQuestion("TP", "BA"), "No wish"),
        (GrowingQuestion("TP", "", WANTED), "Two parents"),
        (GrowingQuestion(typed=TypedGenes()), "No gene"),
        (GrowingQuestion(typed=TypedGenes((6, 6), linked=Fraction(1, 10))), "cannot be followed"),
    ):
        with pytest.raises(Fault, match=words):
            grow(net, question, tick)


def test_a_tetraploid_is_followed_one_gene_at_a_time() -> None:
    moths = PedigreeNetwork.from_records(read_book(demo("tansy_and_the_moths")))
    answer = grow(moths, GrowingQuestion("16-01-2", "16-01-2", (("eye", "no eye"),)), tick)
    assert answer.two_steps is None
    assert any("Double reduction" in note for note in answer.notes)


def test_copies_come_from_inference_where_nothing_is_written(net: PedigreeNetwork) -> None:
    copies = known_copies(net)
    assert copies("TP", "Le", "le") == 2
    # 23-07 is dwarf, so it has two copies whether or not that was written down.
    assert copies("23-07", "Le", "le") == 2
    # A hybrid of dwarf and tall carries one.
    assert copies("21-01-3", "Le", "le") == 1


# The figure -------------------------------------------------------------------------------------


@pytest.fixture
def figure(qtbot: QtBot) -> CurveFigure:
    made = CurveFigure("plants", "chance")
    qtbot.addWidget(made)
    made.resize(500, 300)
    made.show_curves(
        [("F2", [(0, 0.0), (50, 0.5), (100, 0.9)]), ("F3", [(0, 0.0), (100, 1.0)])], 0.9
    )
    made.show()
    qtbot.waitExposed(made)
    return made


def test_the_figure_is_read_off_by_keys(figure: CurveFigure, qtbot: QtBot) -> None:
    figure.setFocus()
    assert figure.words() == ""
    qtbot.keyClick(figure, Qt.Key.Key_End)
    assert figure.words() == "At 100: F2 90.0%, F3 100.0%."
    qtbot.keyClick(figure, Qt.Key.Key_Home)
    qtbot.keyClick(figure, Qt.Key.Key_PageDown)
    assert figure.at == 5
    assert figure.words() == "At 5: F2 5.0%, F3 5.0%."


def test_the_figure_is_read_off_by_the_mouse(figure: CurveFigure, qtbot: QtBot) -> None:
    plot = figure._plot()
    place = QPoint(round(plot.left() + plot.width() / 2), round(plot.center().y()))
    qtbot.mouseMove(figure, place)
    qtbot.waitUntil(lambda: figure.at is not None)
    assert figure.at is not None
    assert abs(figure.at - 50) <= 1


def test_names_at_the_ends_do_not_cover_each_other(figure: CurveFigure) -> None:
    figure.show_curves([(str(n), [(0, 0.0), (9, 1.0 - n / 1000)]) for n in range(5)], 0.95)
    places = sorted(figure._ends(figure._plot()))
    gaps = [b - a for a, b in itertools.pairwise(places)]
    assert min(gaps) >= figure.fontMetrics().height() - 1e-6
    assert "0: 100% at 9" in figure.accessibleDescription()
