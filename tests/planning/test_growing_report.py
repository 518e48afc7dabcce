"""How many to grow from the records of the demos."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

import pedigreeview
from pedigreeview.book.faults import Fault
from pedigreeview.planning.growing_report import growing_report, usual_schemes
from pedigreeview.planning.schemes import crossing_to_tester, selfing
from pedigreeview.planning.tetraploid import doses_by_scheme


def test_dwarf_yellow_peas(root: Path) -> None:
    """Demo A's goal: 1 in 16 of the F2, 47 plants; two steps ask for fewer."""
    net = pedigreeview.read(root / "demo_pedigrees" / "two_peas_both_ways")
    found = growing_report(net, "TP", "BA", [("height", "dwarf"), ("pod", "yellow")])
    by_name = {plan.scheme.name: plan for plan in found.plans}
    assert by_name["F2"].each.chance == Fraction(1, 16)
    assert by_name["F2"].plan is not None
    assert by_name["F2"].plan.seeds == 47
    assert found.two_steps is not None
    assert found.two_steps.best is not None
    assert found.two_steps.best.in_all < 47
    assert found.roads is not None
    assert found.families is None  # recessives breed true
    assert found.flowers is not None
    assert {name for name, _ in found.curves} <= set(by_name)
    assert any("47 F2 plants" in line for line in found.sentences())


def test_a_dominant_wants_a_progeny_test(root: Path) -> None:
    net = pedigreeview.read(root / "demo_pedigrees" / "two_peas_both_ways")
    found = growing_report(net, "TP", "BA", [("height", "tall")], schemes=[selfing(2)])
    assert found.families is not None
    assert (found.families.fixed, found.families.families) == (Fraction(1, 3), 8)


def test_an_eyeless_daylily(root: Path) -> None:
    """Demo C: a duplex selfed gives 1 in 36 without an eye (107 seedlings); a cross to an eyeless
    plant 1 in 6 (17)."""
    net = pedigreeview.read(root / "demo_pedigrees" / "tansy_and_the_moths")
    found = growing_report(
        net, "SL", "GM", [("eye", "no eye")], schemes=[selfing(2), crossing_to_tester()], bed=200
    )
    by_name = {plan.scheme.name: plan for plan in found.plans}
    assert by_name["F2"].each.chance == Fraction(1, 36)
    assert by_name["F2"].plan is not None
    assert by_name["F2"].plan.plants == 107
    assert by_name["test cross"].plan is not None
    assert by_name["test cross"].plan.plants == 17
    assert found.two_steps is None
    assert any("Double reduction" in line for line in found.sentences())
    with pytest.raises(Fault, match="one gene at a time"):
        growing_report(net, "SL", "GM", [("eye", "eye"), ("eye", "no eye")])
    with pytest.raises(Fault, match="No gene"):
        growing_report(net, "SL", "GM", [("colour", "gold")])


def test_moves_of_a_tetraploid() -> None:
    assert doses_by_scheme(4, 0, []).doses == (0, 0, 1, 0, 0)
    assert doses_by_scheme(4, 0, ["self"]).shows_dominant == Fraction(35, 36)
    assert doses_by_scheme(4, 0, ["sib"]).doses == doses_by_scheme(4, 0, ["self"]).doses
    assert doses_by_scheme(4, 0, ["double"]).doses == (
        Fraction(1, 6), 0, Fraction(2, 3), 0, Fraction(1, 6),
    )  # fmt: skip
    assert doses_by_scheme(0, 4, ["back"]).shows_dominant == Fraction(5, 6)
    assert doses_by_scheme(0, 4, ["back"], recurrent=4).shows_dominant == 1
    with pytest.raises(ValueError, match="one mating"):
        doses_by_scheme(4, 0, ["sib", "sib"])
    with pytest.raises(ValueError, match="no move"):
        doses_by_scheme(4, 0, ["graft"])


def test_usual_schemes_have_names_of_their_own() -> None:
    names = [scheme.name for scheme in usual_schemes()]
    assert len(names) == len(set(names)) == 9
