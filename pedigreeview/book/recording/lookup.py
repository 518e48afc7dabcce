"""Records by what a person typed: the code itself, or one that would be read as it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypeVar

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.look_alikes import sight
from pedigreeview.book.recording.codes import did_you_mean
from pedigreeview.book.records import (
    Cross,
    Harvest,
    Packet,
    Plant,
    PollenLot,
    Pollination,
    Sowing,
    Trait,
)

__all__ = [
    "cross_called",
    "cross_not_skipped",
    "harvest_called",
    "lot_called",
    "packet_called",
    "plant_called",
    "pollination_called",
    "sowing_called",
    "split_codes",
    "trait_called",
]

R = TypeVar("R")


def split_codes(text: str) -> list[str]:
    """The codes of a cell that lists several, parted by ';'."""
    return [code for part in text.split(";") if (code := part.strip())]


def _called(held: Mapping[str, R], text: str, what: str, column: str) -> R:
    wanted = text.strip()
    if wanted in held:
        return held[wanted]
    if text in held:
        return held[text]
    if not wanted:
        raise Fault(f"No {what} is named.", Place(column=column), f"Name the {what}.")
    wanted_sight = sight(wanted)
    near = [code for code in held if sight(code) == wanted_sight]
    if len(near) == 1:
        return held[near[0]]
    raise Fault(
        f"There is no {what} {wanted!r} in this book.",
        Place(column=column),
        did_you_mean(wanted, held) or f"Record the {what} first, or correct the code.",
    )


def plant_called(book: Book, text: str, column: str = "plant") -> Plant:
    """The plant, variety or family of that code; Fault with the nearest codes if there is none."""
    return _called(book.plants, text, "plant", column)


def cross_called(book: Book, text: str, column: str = "cross") -> Cross:
    """The cross of that code; Fault with the nearest codes if there is none."""
    return _called(book.crosses, text, "cross", column)


def cross_not_skipped(book: Book, text: str, otherwise: str) -> Cross:
    """The cross of that code, on which something is to be recorded.

    otherwise : what to do about a cross that was skipped

    Raises
    ------
    Fault : there is no such cross, or it was skipped
    """
    held = cross_called(book, text)
    if held.state == "skipped":
        raise Fault(f"The cross {held.cross} was skipped.", Place(column="cross"), otherwise)
    return held


def pollination_called(book: Book, text: str, column: str = "pollination") -> Pollination:
    """The pollination of that code; Fault if there is none."""
    return _called(book.pollinations, text, "pollination", column)


def harvest_called(book: Book, text: str, column: str = "harvest") -> Harvest:
    """The harvest of that code; Fault if there is none."""
    return _called(book.harvests, text, "harvest", column)


def packet_called(book: Book, text: str, column: str = "packet") -> Packet:
    """The seed packet of that code; Fault if there is none."""
    return _called(book.packets, text, "packet", column)


def sowing_called(book: Book, text: str, column: str = "sowing") -> Sowing:
    """The sowing of that code; Fault if there is none."""
    return _called(book.sowings, text, "sowing", column)


def lot_called(book: Book, text: str, column: str = "pollen_lot") -> PollenLot:
    """The pollen lot of that code; Fault if there is none."""
    return _called(book.pollen_lots, text, "pollen lot", column)


def trait_called(book: Book, text: str, column: str = "trait") -> Trait:
    """The trait of that name; Fault if there is none."""
    return _called(book.traits, text, "trait", column)
