"""Chosen records lead to what each paper is made for."""

from __future__ import annotations

import pytest

from pedigreeview.reports.paper_choices import PAPERS, Chosen, codes_for
from tests.reports.garden import garden


@pytest.mark.parametrize(
    ("paper", "chosen", "codes"),
    [
        ("flowers", Chosen(plants=("TP",)), ("21-01", "22-03")),
        ("fruits", Chosen(crosses=("21-01",), pollinations=("P2",)), ("P2", "21-01")),
        ("fruit sheet", Chosen(crosses=("21-01",)), ("P1", "P2")),
        ("pots", Chosen(crosses=("21-01",)), ("21-01-1", "21-01-3")),
        ("packets", Chosen(plants=("TP",)), ("K1",)),
        ("packets", Chosen(crosses=("22-01",)), ("K2",)),
        ("rows", Chosen(crosses=("21-01",)), ("S1",)),
        ("crossing", Chosen(pollinations=("P3",)), ("21-02",)),
        ("beds", Chosen(plants=("WC",)), ("bed 1",)),
        ("scores", Chosen(plants=("WC", "gone", "WC")), ("WC",)),
    ],
)
def test_what_was_chosen_leads_to_the_codes_of_a_paper(paper, chosen, codes):
    assert codes_for(garden(), paper, chosen) == codes


@pytest.mark.parametrize("paper", PAPERS)
def test_nothing_chosen_leads_to_nothing(paper):
    assert not Chosen()
    assert codes_for(garden(), paper, Chosen()) == ()
