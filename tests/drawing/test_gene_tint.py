"""The tint 'carries an allele': sure, chances and the words on the tags."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import numpy as np
import pytest

import pedigreeview
from pedigreeview.book.faults import Fault
from pedigreeview.drawing.gene_tint import _word, gene_choices, gene_tint, locus_and_allele
from pedigreeview.drawing.theme import theme
from pedigreeview.places import demo


def test_carriers_of_the_potato_leaf_are_said(tmp_path: Path) -> None:
    """Peas: TP dwarf, BA tall, both pure; every F1 carries le, of a tall F2 plant ⅔ do.

    ⅔ by counting: of the three tall classes of 1 : 2 : 1 two carry it.
    """
    net = pedigreeview.read(demo("two_peas_both_ways"))
    found = gene_tint(net, "Le: le", theme("light"))
    said = found.words_by_code(["TP", "BA", "21-01-1"])
    assert said == {"TP": "100%", "BA": "0%", "21-01-1": "100%"}
    tall = [
        code
        for code in net.progeny("21-01-3")
        if not net.progeny(code)
        and [s.value for s in net.book.scores if s.plant == code and s.trait == "height"]
        == ["tall"]
        and not [g for g in net.book.genotypes if g.plant == code and g.locus == "Le"]
    ]
    assert tall
    share = float(Fraction(2, 3))
    assert {found.word(found.codes.index(code)) for code in tall} == {f"{100 * share:.3g}%"}
    assert np.isnan(found.rgb).sum() == 0


def test_choices_name_every_allele_the_recessive_first() -> None:
    net = pedigreeview.read(demo("two_peas_both_ways"))
    assert gene_choices(net)[:2] == ["Le: le", "Le: Le"]


@pytest.mark.parametrize("text", ["Le", ":le", "Le:", ""])
def test_what_names_no_allele_is_a_fault(text: str) -> None:
    with pytest.raises(Fault, match="names no allele"):
        locus_and_allele(text)


def test_only_an_exact_answer_is_ever_sure() -> None:
    assert [_word(chance, True) for chance in (0.0, 1e-12, 1e-6, 0.5, 0.99999, 1.0)] == [
        "0%", "0%", "0.1%", "50%", "99.9%", "100%",
    ]  # fmt: skip
    assert [_word(chance, False) for chance in (0.0, 1.0)] == ["0.1%", "99.9%"]
