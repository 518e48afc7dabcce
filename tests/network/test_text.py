"""Numbers as a person reads them."""

from __future__ import annotations

from fractions import Fraction

import pytest

from pedigreeview.network.text import count_text, decimal_text, fraction_text


@pytest.mark.parametrize(
    ("value", "text"),
    [(0.0703125, "0.0703"), (0.5, "0.5"), (0, "0"), (1, "1"), (1e-7, "1e-07"), (0.99999, "1")],
)
def test_decimals(value: float, text: str) -> None:
    assert decimal_text(value) == text


def test_fractions_where_they_can_be_read() -> None:
    assert fraction_text(Fraction(9, 128), 9 / 128) == "9/128 = 0.0703"
    assert fraction_text(Fraction(1), 1.0) == "1"
    assert fraction_text(None, 0.3) == "0.3"
    assert fraction_text(Fraction(1, 2**40), 2.0**-40) == "9.1e-13"


@pytest.mark.parametrize(
    ("count", "text"),
    [(3, "3"), (12345, "12,345"), (10**9, "about 1 × 10^9"), (216 * 10**30, "about 2.2 × 10^32")],
)
def test_counts(count: int, text: str) -> None:
    assert count_text(count) == text
