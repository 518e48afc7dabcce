"""Numbers as a person reads them."""

from __future__ import annotations

from fractions import Fraction

__all__ = ["count_text", "decimal_text", "fraction_text"]

_LONGEST = 4096
"""A fraction with a larger denominator says less than its decimal."""


def decimal_text(value: float) -> str:
    """A coefficient to four places, without zeros that say nothing."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    if float(text) == 0 and value:
        return f"{value:.2g}"
    return "0" if text in ("-0", "") else text


def fraction_text(exact: Fraction | None, value: float) -> str:
    """'9/128 = 0.0703'; whole numbers and long fractions by the decimal alone."""
    decimal = decimal_text(value)
    if exact is None or exact.denominator > _LONGEST or exact.denominator == 1:
        return decimal
    return f"{exact.numerator}/{exact.denominator} = {decimal}"


def count_text(count: int) -> str:
    """A count as a person reads it: '1,234', and 'about 2.2 × 10^32' where digits say nothing."""
    if count < 10**9:
        return f"{count:,}"
    power = len(str(count)) - 1
    return f"about {count / 10**power:.2g} × 10^{power}"
