"""Seed packets: how many are left, how well they germinate, how long they keep."""

from __future__ import annotations

import datetime
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.crops import Crop
from pedigreeview.book.dates import is_date, latest
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import next_key
from pedigreeview.book.recording.fields import share, whole
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import packet_called, plant_called
from pedigreeview.book.records import Note, Packet

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "Keeping",
    "TooFewSeeds",
    "correct_count",
    "crop_of_packet",
    "cross_of_packet",
    "keeping",
    "record_germination",
    "record_packet",
    "take_seeds",
]


class TooFewSeeds(Fault):
    """More seeds are wanted than the packet has left.

    Attributes
    ----------
    packet : code of the packet
    left, wanted : seeds
    """

    def __init__(self, packet: str, left: int, wanted: int) -> None:
        self.packet, self.left, self.wanted = packet, left, wanted
        super().__init__(
            f"The packet {packet} has {left} {'seed' if left == 1 else 'seeds'} left, and {wanted} "
            f"{'is' if wanted == 1 else 'are'} to be sown.",
            Place(column="seeds"),
            "Sow fewer, or correct the count of the packet if more were in it.",
        )


def record_packet(
    edit: Edit,
    *,
    today: datetime.date,
    borne_on: str = "",
    generation: str = "",
    seeds: int | None = None,
    place: str = "",
    note: str = "",
    code: str = "",
) -> Packet:
    """Record a packet that came from no harvest of this book, such as a bought one.

    Raises
    ------
    Fault : a plant that is not in the book, or a count below 0
    """
    count = whole(seeds, "seeds")
    packet = Packet(
        code.strip() or next_key(edit.book, "packet", today),
        generation=generation.strip(),
        borne_on=plant_called(edit.book, borne_on, "borne_on").plant if borne_on.strip() else "",
        seeds=count,
        left=count,
        place=place.strip(),
        note=note.strip(),
    )
    edit.add(packet)
    return packet


def take_seeds(edit: Edit, packet: str, seeds: int | None) -> Packet:
    """Let the count of a packet fall; a packet that was never counted stays so.

    Raises
    ------
    TooFewSeeds : more than are left
    """
    held = packet_called(edit.book, packet)
    wanted = whole(seeds, "seeds") or 0
    left = held.left if held.left is not None else held.seeds
    if left is None:
        return held
    if wanted > left:
        raise TooFewSeeds(held.packet, left, wanted)
    updated = edit.update(held, left=left - wanted)
    assert isinstance(updated, Packet)
    return updated


def correct_count(edit: Edit, packet: str, *, left: int | None, date: str, why: str = "") -> Packet:
    """Set how many seeds a packet has left, as counted; the old count is kept as a dated note.

    Where more are left, with what was sown of it, than it ever held by the book, that count is
    raised as well.

    Raises
    ------
    Fault : no such packet, or a count below 0
    """
    held = packet_called(edit.book, packet)
    packet = held.packet
    count = whole(left, "left")
    if count == held.left:
        if why.strip():
            edit.add(Note(f"packet {held.packet}", date, why.strip()))
        return held
    was = "not counted" if held.left is None else str(held.left)
    text = f"Count corrected from {was} to {'not counted' if count is None else count}."
    edit.add(Note(f"packet {held.packet}", date, f"{text} {why.strip()}".strip()))
    changed: dict[str, object] = {"left": count}
    if count is not None and held.seeds is not None:
        sown = sum(row.seeds or 0 for row in edit.book.sowings.values() if row.packet == packet)
        changed["seeds"] = max(held.seeds, count + sown)
    with guarded(edit, packets=(held.packet,)):
        updated = edit.update(held, **changed)
    assert isinstance(updated, Packet)
    return updated


def record_germination(edit: Edit, packet: str, germination: float, *, date: str) -> Packet:
    """Note the share of seeds that germinated in a test, 0 to 1, with its date.

    Raises
    ------
    Fault : no such packet, or a share outside 0 to 1
    """
    held = packet_called(edit.book, packet)
    found = share(germination, "germination")
    edit.add(Note(f"packet {held.packet}", date, f"Germination tested: {found:.0%}."))
    updated = edit.update(held, germination=found)
    assert isinstance(updated, Packet)
    return updated


def cross_of_packet(book: Book, packet: Packet) -> str:
    """The cross whose seed is in the packet, or ''."""
    harvest = book.harvests.get(packet.harvest)
    return harvest.cross if harvest is not None else ""


def crop_of_packet(book: Book, packet: Packet) -> Crop | None:
    """What is known of the crop of a packet, by the plant that bore it; else the book's crop."""
    cross = book.crosses.get(cross_of_packet(book, packet))
    code = packet.borne_on or (cross.seed_parent or cross.pollen_parent if cross else "")
    plant = book.plants.get(code)
    if plant is not None:
        return book.crop_facts(plant)
    from pedigreeview.book.crops import crop_named

    return crop_named(book.settings.crop)


@dataclass(frozen=True, slots=True)
class Keeping:
    """How long the seed of a packet keeps, cool and dry.

    until : the last year in which it is good by the crop's figure
    years : the figure; source : where it stands
    """

    until: int
    years: int
    source: str


def keeping(book: Book, packet: Packet) -> Keeping | None:
    """How long a packet keeps, None where its harvest has no date or the crop no figure.

    Seed harvested in autumn 2024 that keeps 3 years is good for the sowings of 2025 to 2027.
    """
    harvest = book.harvests.get(packet.harvest)
    crop = crop_of_packet(book, packet)
    fact = crop.facts.get("seed_keeps_years", {}) if crop is not None else {}
    years = fact.get("value")
    if harvest is None or not is_date(harvest.date) or years is None:
        return None
    return Keeping(latest(harvest.date).year + int(years), int(years), fact["source"])
