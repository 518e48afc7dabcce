"""Which plants fit what is asked for: season, status, family, trait range, founder share, text.

Every condition that is set must hold.  Shares are asked from the network by the caller and passed
in; nothing here computes a coefficient.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant

__all__ = ["PlantFilter", "latest_values", "left_out", "matching", "seasons", "words"]


@dataclass(frozen=True, slots=True)
class PlantFilter:
    """What a plant must be; a field left as it is asks for nothing.

    first_season, last_season : years of sowing, both included
    statuses : any of these
    family : code of the cross that it was raised from
    trait : name of a trait that it was scored for; low, high : its least and largest value
    founder : code of a founder; share : the least share of it, 0 to 1
    text : stands in its code, name, cross or note, in any case of letters
    """

    first_season: int | None = None
    last_season: int | None = None
    statuses: frozenset[str] = frozenset()
    family: str = ""
    trait: str = ""
    low: float | None = None
    high: float | None = None
    founder: str = ""
    share: float = 0.0
    text: str = ""

    def empty(self) -> bool:
        """Whether it asks for nothing, so that every plant fits."""
        return not self.conditions()

    def conditions(self) -> tuple[str, ...]:
        """Names of the conditions that are set: season, status, family, trait, founder, text."""
        held = {
            "season": self.first_season is not None or self.last_season is not None,
            "status": bool(self.statuses),
            "family": bool(self.family),
            "trait": bool(self.trait),
            "founder": bool(self.founder) and self.share > 0,
            "text": bool(self.text.strip()),
        }
        return tuple(name for name, is_set in held.items() if is_set)


def matching(
    book: Book,
    wanted: PlantFilter,
    *,
    shares: Mapping[str, float] | None = None,
    values: Mapping[str, str] | None = None,
) -> set[str]:
    """Codes of the plants that fit.

    shares : share of the asked founder by code; a plant without one has none
    values : value of the asked trait by code; by default the latest in the book's scores
    """
    found = set(book.plants)
    conditions = wanted.conditions()
    if "founder" in conditions:
        held = shares or {}
        found = {code for code in found if held.get(code, 0.0) >= wanted.share - 1e-12}
    if "trait" in conditions:
        known = latest_values(book, wanted.trait) if values is None else values
        found = {code for code in found if code in known and _within(known[code], wanted)}
    if set(conditions) & {"season", "status", "family", "text"}:
        typed = wanted.text.strip().casefold()
        found = {code for code in found if _fits(book.plants[code], wanted, typed)}
    return found


def left_out(
    book: Book,
    wanted: PlantFilter,
    *,
    shares: Mapping[str, float] | None = None,
    values: Mapping[str, str] | None = None,
) -> set[str]:
    """Codes of the plants that do not fit, to be put back or hidden."""
    if wanted.empty():
        return set()
    return set(book.plants) - matching(book, wanted, shares=shares, values=values)


def seasons(book: Book) -> list[int]:
    """Years in which something of the book was sown, in order."""
    found = {_year(plant.sown) for plant in book.plants.values()}
    return sorted(year for year in found if year is not None)


def words(wanted: PlantFilter) -> str:
    """What is asked for, as the rest of a sentence; '' for nothing."""
    said = []
    first, last = wanted.first_season, wanted.last_season
    if first is not None or last is not None:
        if first == last:
            said.append(f"sown in {first}")
        elif last is None:
            said.append(f"sown in {first} or later")
        elif first is None:
            said.append(f"sown in {last} or before")
        else:
            said.append(f"sown from {first} to {last}")
    if wanted.statuses:
        said.append(" or ".join(sorted(wanted.statuses)))
    if wanted.family:
        said.append(f"raised from {wanted.family}")
    if wanted.trait:
        said.append(_trait_words(wanted))
    if "founder" in wanted.conditions():
        said.append(f"at least {wanted.share * 100:g}% of {wanted.founder}")
    if wanted.text.strip():
        said.append(f"with '{wanted.text.strip()}'")
    return ", ".join(said)


def _trait_words(wanted: PlantFilter) -> str:
    if wanted.low is None and wanted.high is None:
        return f"{wanted.trait} known"
    if wanted.high is None:
        return f"{wanted.trait} {wanted.low:g} or more"
    if wanted.low is None:
        return f"{wanted.trait} {wanted.high:g} or less"
    return f"{wanted.trait} {wanted.low:g} to {wanted.high:g}"


def _fits(plant: Plant, wanted: PlantFilter, typed: str) -> bool:
    if wanted.statuses and plant.status not in wanted.statuses:
        return False
    if wanted.family and plant.cross != wanted.family:
        return False
    if wanted.first_season is not None or wanted.last_season is not None:
        year = _year(plant.sown)
        if year is None:
            return False
        if wanted.first_season is not None and year < wanted.first_season:
            return False
        if wanted.last_season is not None and year > wanted.last_season:
            return False
    if not typed:
        return True
    held = (plant.plant, plant.name, plant.cross, plant.note)
    return any(typed in text.casefold() for text in held if text)


def latest_values(book: Book, trait: str) -> dict[str, str]:
    """The latest value of a trait of each plant that has one; of the plant, not of its seed."""
    found: dict[str, tuple[str, str]] = {}
    for score in book.scores:
        if score.trait == trait and score.of != "seed" and score.value.strip():
            held = found.get(score.plant)
            if held is None or score.date >= held[0]:
                found[score.plant] = (score.date, score.value.strip())
    return {plant: value for plant, (_, value) in found.items()}


def _within(text: str, wanted: PlantFilter) -> bool:
    if wanted.low is None and wanted.high is None:
        return True
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        return False
    low = wanted.low if wanted.low is not None else value
    high = wanted.high if wanted.high is not None else value
    return low <= value <= high


def _year(date: str) -> int | None:
    return int(date[:4]) if date[:4].isdigit() and len(date) >= 4 else None
