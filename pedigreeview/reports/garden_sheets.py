"""Blank sheets for the garden, written on by hand and typed in afterwards in the sheet's own order.

Each sheet has a number made of what it asks, with a check letter: whoever types it gets the same
rows and columns again, and a number that was misread is noticed.  Knows no Qt.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.printed_sheets import PrintedSheet
from pedigreeview.book.recording.typing_in import CONTENTS
from pedigreeview.book.records import Plant, Trait
from pedigreeview.reports.matings import mating_of
from pedigreeview.reports.report_words import tr

__all__ = [
    "SHEETS",
    "GardenSheet",
    "crossing_sheet",
    "fruit_sheet",
    "is_sheet_number",
    "pollination_sheet",
    "row_sheet",
    "scale_of",
    "score_sheet",
]

SHEETS = ("pollinations", "crossing", "scores", "rows", "fruits")
# Without I, L, O and U, which a hand writes like others.
_LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_PRIME = 31
_MOST_ROWS = 2_000


@dataclass(frozen=True, slots=True)
class GardenSheet:
    """What one sheet asks: its rows by key and its columns by name, in the sheet's order."""

    kind: str
    """One of `SHEETS`."""
    rows: tuple[str, ...]
    """Code of a plant (scores), a sowing (rows), a cross (crossing) or a pollination (fruits);
    blank where the row is empty."""
    columns: tuple[str, ...]
    """Traits, or columns of the records that the rows become."""
    known: tuple[tuple[str, ...], ...] = ()
    """For each row what is printed beside it."""

    @property
    def number(self) -> str:
        """'7F3K-Q': four signs made of rows and columns, and one that checks them."""
        asked = "\x1f".join([self.kind, *self.columns, "", *self.rows])
        value = int.from_bytes(hashlib.sha256(asked.encode("utf-8")).digest()[:3], "big") >> 4
        signs = "".join(_LETTERS[value >> shift & 31] for shift in (15, 10, 5, 0))
        return f"{signs}-{_check_sign(signs)}"

    def as_record(self) -> dict[str, Any]:
        """The sheet as plain values, to be kept until it is typed in."""
        return {
            "kind": self.kind,
            "rows": list(self.rows),
            "columns": list(self.columns),
            "number": self.number,
        }

    @staticmethod
    def from_record(held: Mapping[str, Any]) -> GardenSheet:
        """The sheet that `as_record` gave, without what was printed beside its rows."""
        return GardenSheet(str(held["kind"]), tuple(held["rows"]), tuple(held["columns"]))

    def as_printed(self, day: str) -> PrintedSheet:
        """The sheet as the book keeps it until it is typed in; `day` is ISO."""
        return PrintedSheet(self.number, self.kind, self.rows, self.columns, day)


def is_sheet_number(text: str) -> bool:
    """Whether a number that somebody typed is one that a sheet can have, whatever its case."""
    signs = text.strip().upper().replace("-", "").replace(" ", "")
    if len(signs) != 5 or any(sign not in _LETTERS for sign in signs):
        return False
    return _check_sign(signs[:4]) == signs[4]


def _check_sign(signs: str) -> str:
    # Weights that differ by place, modulo a prime: one wrong sign, or two exchanged, are noticed.
    # Only 0 and Z are alike to it.
    total = sum((at + 2) * _LETTERS.index(sign) for at, sign in enumerate(signs))
    return _LETTERS[total % _PRIME]


def pollination_sheet(rows: int = 24) -> GardenSheet:
    """Empty rows, one for each pollination that will be made.

    Raises
    ------
    Fault : a number of rows out of range
    """
    if not 1 <= rows <= _MOST_ROWS:
        raise Fault(
            f"A sheet cannot have {rows} rows.",
            Place(),
            f"Write a number from 1 to {_MOST_ROWS:,}.",
        )
    return GardenSheet("pollinations", ("",) * rows, CONTENTS["pollinations"])


def crossing_sheet(crosses: Iterable[str], empty: int = 0) -> GardenSheet:
    """The blanks of a crossing list: a row for each cross in its order, then empty ones."""
    return GardenSheet("crossing", (*crosses, *[""] * empty), CONTENTS["crossing"])


def fruit_sheet(book: Book, pollinations: Iterable[str] = ()) -> GardenSheet:
    """Pollinations, with room for the fruits set and lost.

    pollinations : codes; none: those whose fruits were not counted yet

    Raises
    ------
    Fault : a code that is not in the book, or nothing to count
    """
    codes = list(dict.fromkeys(pollinations))
    for code in codes:
        if code not in book.pollinations:
            raise Fault(
                f"There is no pollination '{code}' in the book.",
                Place(),
                "See how it is written there.",
            )
    codes = codes or [p.pollination for p in book.pollinations.values() if p.set is None]
    if not codes:
        raise Fault(
            "The fruits of every pollination are counted.",
            Place(),
            "Name the pollinations to be counted again.",
        )
    _few(codes)
    candidates = book.candidates()
    known = []
    for code in codes:
        worked = book.pollinations[code]
        cross = book.crosses.get(worked.cross)
        came = mating_of(book, cross, candidates).shown if cross else ""
        seed = book.plants.get(cross.seed_parent) if cross else None
        flowers = "" if worked.flowers is None else str(worked.flowers)
        place = seed.place if seed is not None else ""
        known.append((worked.cross, came, worked.date, flowers, worked.tag, place))
    return GardenSheet("fruits", tuple(codes), CONTENTS["fruits"], tuple(known))


def score_sheet(book: Book, plants: Iterable[str] = (), traits: Iterable[str] = ()) -> GardenSheet:
    """Plants by traits.

    plants : codes, in the order of the garden; none: all that grow, pools left out
    traits : none: all of the book

    Raises
    ------
    Fault : a code that is not in the book, or nothing to score
    """
    codes = list(dict.fromkeys(plants)) or [
        plant.plant
        for plant in book.plants.values()
        if plant.status in ("", "growing", "kept") and not book.is_pool(plant)
    ]
    asked = list(dict.fromkeys(traits)) or list(book.traits)
    for code in codes:
        if code not in book.plants:
            raise Fault(
                f"There is no plant '{code}' in the book.", Place(), "See how it is written there."
            )
    for trait in asked:
        if trait not in book.traits:
            names = ", ".join(book.traits) or "none"
            raise Fault(f"There is no trait '{trait}'.", Place(), f"The book's traits: {names}.")
    if not codes:
        raise Fault("No plant of the book grows.", Place(), "Name the plants to be scored.")
    if not asked:
        raise Fault("The book has no traits.", Place(), "Record what you score first.")
    _few(codes)
    candidates = book.candidates()
    known = []
    for code in codes:
        plant = book.plants[code]
        cross = book.crosses.get(plant.cross)
        came = mating_of(book, cross, candidates).shown if cross else ""
        known.append((plant.name, came, _standing(plant)))
    return GardenSheet("scores", tuple(codes), tuple(asked), tuple(known))


def row_sheet(book: Book, sowings: Iterable[str] = ()) -> GardenSheet:
    """Families sown, with room for how many came up and were kept.

    sowings : codes; none: those of the latest year

    Raises
    ------
    Fault : a code that is not in the book, or nothing sown
    """
    codes = list(dict.fromkeys(sowings))
    for code in codes:
        if code not in book.sowings:
            raise Fault(
                f"There is no sowing '{code}' in the book.", Place(), "See how it is written there."
            )
    if not codes:
        latest = max((sowing.date[:4] for sowing in book.sowings.values()), default="")
        codes = [s.sowing for s in book.sowings.values() if s.date[:4] == latest]
    if not codes:
        raise Fault("The book has no sowings.", Place(), "Record what was sown first.")
    _few(codes)
    candidates = book.candidates()
    known = []
    for code in codes:
        sowing = book.sowings[code]
        packet = book.packets.get(sowing.packet)
        harvest = book.harvests.get(packet.harvest) if packet is not None else None
        source = harvest.cross if harvest is not None else sowing.sown_from
        cross = book.crosses.get(source)
        came = mating_of(book, cross, candidates).shown if cross else ""
        if cross is None and source in book.plants:
            came = book.plants[source].name
        generation = packet.generation if packet is not None else ""
        seeds = "" if sowing.seeds is None else str(sowing.seeds)
        known.append((source, came, generation, sowing.date, seeds, sowing.place))
    return GardenSheet("rows", tuple(codes), CONTENTS["rows"], tuple(known))


def _few(codes: Sequence[str]) -> None:
    if len(codes) > _MOST_ROWS:
        raise Fault(
            f"These would be {len(codes):,} rows.",
            Place(),
            f"Choose at most {_MOST_ROWS:,} and print the rest afterwards.",
        )


def _standing(plant: Plant) -> str:
    return "" if plant.status in ("", "growing") else plant.status


def scale_of(trait: Trait) -> str:
    """What may be written for a trait, in a few words."""
    if trait.type == "yes_no":
        return tr("yes / no")
    if trait.type == "category":
        return trait.values.replace(";", " / ")
    ends = [f"{end:g}" for end in (trait.low, trait.high) if end is not None]
    if trait.type == "score":
        better = {"high": tr(", high is better"), "low": tr(", low is better")}
        said = tr("{} to {}").format(*ends) if len(ends) == 2 else tr("score")
        return said + better.get(trait.better, "")
    return trait.unit
