"""The base that every coefficient rests on: what the founders were assumed to be."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.network.parentage import Parents
from pedigreeview.network.text import decimal_text

__all__ = ["AssumedFounder", "Base", "base_of"]


@dataclass(frozen=True, slots=True)
class AssumedFounder:
    """One founder and what was assumed of it; `stated` where its record gives the fixation."""

    plant: str
    kind: str
    fixation: float
    stated: bool
    ploidy: int


@dataclass(frozen=True, slots=True)
class Base:
    """The founder settings in force, every founder, and the outcrossing rates that were used."""

    founders_as: str
    variety_fixation: float
    plant_fixation: float
    ploidy: int
    double_reduction: float
    outcrossing: dict[str, float]
    """Rate by crop, where open-pollinated seed was read by a rate."""
    founders: tuple[AssumedFounder, ...]

    def as_json(self) -> dict[str, Any]:
        """The `base` of JSON outputs."""
        return {
            "founders_as": self.founders_as,
            "variety_fixation": self.variety_fixation,
            "plant_fixation": self.plant_fixation,
            "ploidy": self.ploidy,
            "double_reduction": self.double_reduction,
            "open_pollinated": [
                {"crop": crop, "outcrossing": rate} for crop, rate in self.outcrossing.items()
            ],
            "founders": [
                {
                    "plant": founder.plant,
                    "kind": founder.kind,
                    "fixation": founder.fixation,
                    "stated": founder.stated,
                    "ploidy": founder.ploidy,
                }
                for founder in self.founders
            ],
            "sentence": self.sentence(),
        }

    def sentence(self) -> str:
        """One line: founders unrelated, and how fixed each kind of founder was taken to be."""
        if not self.founders:
            return "Base: no founders."
        said = []
        groups: dict[tuple[str, float], list[AssumedFounder]] = {}
        for founder in self.founders:
            groups.setdefault((founder.kind, founder.fixation), []).append(founder)
        for (kind, fixation), members in groups.items():
            count = len(members)
            plural = {"variety": "varieties", "plant": "plants", "family": "families"}[kind]
            noun = kind if count == 1 else plural
            stated = sum(founder.stated for founder in members)
            how = "stated" if stated == count else "taken"
            said.append(f"{count} {noun} {how} as {_fixed(kind, fixation, count)}")
        line = f"Base: founders unrelated; {', '.join(said)}."
        if self.outcrossing:
            rates = ", ".join(
                f"{crop or 'this book'} {decimal_text(rate)}"
                for crop, rate in self.outcrossing.items()
            )
            line += f" Open-pollinated seed by outcrossing rate: {rates}."
        if self.double_reduction:
            line += f" Double reduction {decimal_text(self.double_reduction)} at 4x"
            higher = any(founder.ploidy > 4 for founder in self.founders)
            line += ", 0 taken at 6x and above." if higher else "."
        return line


def _fixed(kind: str, fixation: float, count: int) -> str:
    if fixation == 1 and kind != "plant":
        return "a pure line (fixation 1)" if count == 1 else "pure lines (fixation 1)"
    if fixation == 1:
        return "fully fixed (fixation 1)"
    if fixation == 0:
        return "not inbred (fixation 0)"
    return f"fixation {decimal_text(fixation)}"


def base_of(book: Book, parents: dict[str, Parents]) -> Base:
    """The base of a book's coefficients."""
    founders = []
    rates: dict[str, float] = {}
    for code, origin in parents.items():
        plant = book.plants[code]
        if origin.raised == "founder":
            founders.append(
                AssumedFounder(
                    code,
                    book.kind(plant),
                    book.founder_fixation(plant),
                    plant.fixation is not None,
                    book.founder_ploidy(plant),
                )
            )
        elif origin.by_rate and origin.seed_parent:
            seed = book.plants[origin.seed_parent]
            rate = book.outcrossing(seed)
            if rate is not None:
                rates[book.crop(seed)] = rate
    settings = book.settings
    return Base(
        founders_as=settings.founders_as or "variety",
        variety_fixation=settings.variety_fixation,
        plant_fixation=settings.plant_fixation,
        ploidy=book.founder_ploidy(Plant("")),
        double_reduction=book.double_reduction(),
        outcrossing=rates,
        founders=tuple(founders),
    )
