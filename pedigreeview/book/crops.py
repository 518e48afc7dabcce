"""What is known of a crop before anything is recorded: ploidy, outcrossing, with the source.

The facts stand in `resources/crops.json`, each with its source or marked as common practice; they
are starting values that a book's own settings override.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from typing import Any

from pedigreeview.places import resource

__all__ = ["Crop", "CropFact", "crop_fact", "crop_named", "crops"]


@dataclass(frozen=True, slots=True)
class Crop:
    """One crop; `facts` holds everything of its entry in the file, with sources."""

    name: str
    also: tuple[str, ...]
    ploidy: int
    """Sets of chromosomes of a plant with that number of chromosomes."""
    several_ploidies: bool
    """Whether the crop is grown in several ploidies, so that none can be taken for granted."""
    chromosomes: int | None
    """2n, the number of chromosomes of an ordinary plant."""
    outcrossing: float | None
    """Share of open-pollinated seed that has another plant as its pollen parent; None: not said."""
    double_reduction: float
    """Double reduction α of tetraploids, 0 where no figure is held to be known."""
    facts: dict[str, Any]


@cache
def crops() -> tuple[Crop, ...]:
    """All crops of `resources/crops.json`, in the file's order."""
    entries = json.loads(resource("crops.json").read_text(encoding="utf-8"))["crops"]
    return tuple(
        Crop(
            name=entry["name"],
            also=tuple(entry.get("also", ())),
            ploidy=int(entry.get("ploidy", {}).get("value", 2)),
            several_ploidies=bool(entry.get("ploidy", {}).get("several")),
            chromosomes=entry.get("chromosomes", {}).get("value"),
            outcrossing=entry.get("outcrossing", {}).get("value"),
            double_reduction=entry.get("double_reduction", {}).get("value") or 0.0,
            facts=entry,
        )
        for entry in entries
    )


def crop_named(name: str) -> Crop | None:
    """The crop of that name or by-name, whatever the case; None if it is not known."""
    wanted = name.strip().casefold()
    if not wanted:
        return None
    for crop in crops():
        if wanted == crop.name.casefold() or wanted in (other.casefold() for other in crop.also):
            return crop
    return None


@dataclass(frozen=True, slots=True)
class CropFact:
    """One figure of a crop: a range, a value, or both, with its source.

    low, high : ends of the range; both are the value where only that is given, and `high` is None
        where the range is open
    """

    low: float
    high: float | None
    source: str
    note: str

    def words(self) -> str:
        """The figure as a person says it: '35 to 50', '42', '60 or more'."""
        if self.high is None:
            return f"{self.low:g} or more"
        return f"{self.low:g}" if self.low == self.high else f"{self.low:g} to {self.high:g}"


def crop_fact(crop: Crop | None, name: str) -> CropFact | None:
    """A figure of a crop by its name in the file ('days_to_ripe', 'cover_off_days'), or None."""
    entry = crop.facts.get(name) if crop is not None else None
    if not isinstance(entry, dict):
        return None
    value = entry.get("value")
    low, high = entry.get("low", value), entry.get("high", value)
    if low is None:
        return None
    return CropFact(
        float(low), None if high is None else float(high), entry["source"], entry.get("note", "")
    )
