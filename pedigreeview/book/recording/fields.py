"""What one value of a record may be; anything else is refused with its field named."""

from __future__ import annotations

import math

from pedigreeview.book.dates import is_date, proposal
from pedigreeview.book.faults import Fault, Place

__all__ = ["choice", "iso_date", "number", "share", "whole"]


def iso_date(text: str, column: str = "date") -> str:
    """The date, blank or in ISO form; Fault if it is neither."""
    text = text.strip()
    if text and not is_date(text):
        better = proposal(text)
        raise Fault(
            f"The {column.replace('_', ' ')} {text!r} is no date.",
            Place(column=column),
            f"Write it as {better}." if better else "Write it as 2024-05-03.",
        )
    return text


def whole(value: int | None, column: str, *, low: int = 0) -> int | None:
    """The count, None where it is not known; Fault if it is below `low`."""
    if value is None:
        return None
    if isinstance(value, bool) or value != int(value) or value < low:
        raise Fault(
            f"The {column.replace('_', ' ')} {value} is no whole number from {low} on.",
            Place(column=column),
            "Write a whole number, or leave it blank if it is not known.",
        )
    return int(value)


def number(
    value: float | None, column: str, low: float | None = None, high: float | None = None
) -> float | None:
    """The number, None where it is not known; Fault if it lies outside the bounds given."""
    if value is None:
        return None
    outside = (low is not None and value < low) or (high is not None and value > high)
    if not math.isfinite(value) or outside:
        bounds = f" from {low:g}" if low is not None else ""
        bounds += f" to {high:g}" if high is not None else ""
        raise Fault(
            f"The {column.replace('_', ' ')} {value:g} cannot be.",
            Place(column=column),
            f"Write a number{bounds}.",
        )
    return value


def share(value: float | None, column: str) -> float | None:
    """The share, 0 to 1, None where it is not known; Fault if it lies outside."""
    return number(value, column, 0, 1)


def choice(value: str, choices: tuple[str, ...], column: str) -> str:
    """One of the choices, or blank; Fault if it is another word."""
    value = value.strip()
    if value and value not in choices:
        raise Fault(
            f"The {column.replace('_', ' ')} {value!r} is not one of the words for it.",
            Place(column=column),
            f"Choose from: {', '.join(choices)}.",
        )
    return value
