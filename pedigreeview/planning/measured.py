"""Measured values of a trait, read from the scores of a book."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import isfinite

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault

__all__ = ["Observation", "measured_traits", "number", "observations", "values_by_plant"]


@dataclass(frozen=True, slots=True)
class Observation:
    """One value of one plant: a number in the unit of its trait, and the year ('' = not known)."""

    plant: str
    value: float
    year: str = ""


def number(text: str) -> float | None:
    """A written value as a number, with a point or a comma; None where it is none."""
    try:
        found = float(text.strip().replace(",", "."))
    except ValueError:
        return None
    return found if isfinite(found) else None


def measured_traits(book: Book) -> list[str]:
    """Traits with numbers: scores on a scale and measures, in the book's order."""
    return [trait.trait for trait in book.traits.values() if trait.type in ("score", "measure")]


def observations(
    book: Book, trait: str, *, plants: Iterable[str] | None = None
) -> list[Observation]:
    """All numbers scored of a trait on plants (not on the seed they bore), in the book's order.

    Parameters
    ----------
    plants : whom to look at; default all

    Raises
    ------
    Fault : the trait is not in the book, or is no number
    """
    record = book.traits.get(trait)
    if record is None:
        known = ", ".join(measured_traits(book)) or "none"
        raise Fault(f"There is no trait {trait!r} in this book.", None, f"Measured are: {known}.")
    if record.type not in ("score", "measure"):
        raise Fault(f"The trait {trait} is not measured.", None, "Choose a score or a measure.")
    chosen = None if plants is None else set(plants)
    found = []
    for score in book.scores:
        if score.trait != trait or score.of == "seed":
            continue
        if chosen is not None and score.plant not in chosen:
            continue
        value = number(score.value)
        if value is not None and score.plant in book.plants:
            found.append(Observation(score.plant, value, score.date[:4]))
    return found


def values_by_plant(found: Iterable[Observation]) -> dict[str, list[float]]:
    """The values of each plant."""
    held: dict[str, list[float]] = {}
    for item in found:
        held.setdefault(item.plant, []).append(item.value)
    return held
