"""Margins: the usual ones, and those that no sheet or picture can have."""

from __future__ import annotations

import math

import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.margins import UNITS_PER_MM, paper_margin, picture_margin


def test_the_usual_ones() -> None:
    assert paper_margin(None) == 10
    assert picture_margin(None) == 8
    assert round(UNITS_PER_MM * 25.4, 9) == 96


@pytest.mark.parametrize("margin", [5, 12.5, 50])
def test_what_paper_may_have(margin: float) -> None:
    assert paper_margin(margin) == picture_margin(margin) == margin


@pytest.mark.parametrize("margin", [-1, 50.1, 1e9, math.inf, math.nan])
def test_what_nothing_may_have(margin: float) -> None:
    with pytest.raises(Fault, match="from 5 to 50 mm"):
        paper_margin(margin)
    with pytest.raises(Fault, match="from 0 to 50 mm"):
        picture_margin(margin)


def test_only_a_picture_may_go_to_its_edge() -> None:
    assert picture_margin(0) == 0
    with pytest.raises(Fault, match=r"margin of 4\.9 mm is not possible"):
        paper_margin(4.9)
