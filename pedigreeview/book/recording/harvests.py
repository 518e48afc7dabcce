"""Recording a harvest and the packet that its seed goes into."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import next_key
from pedigreeview.book.recording.fields import iso_date, whole
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import cross_not_skipped, packet_called
from pedigreeview.book.recording.seed_generation import generation_of_seed
from pedigreeview.book.recording.typed_dates import day_of
from pedigreeview.book.records import Harvest, Packet

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["record_harvest", "was_covered"]


def was_covered(book: Book, cross: str) -> bool | None:
    """Whether every flower of a cross was covered; None where no pollination says it."""
    said = [
        row.cover.strip().casefold()
        for row in book.pollinations.values()
        if row.cross == cross and row.cover.strip()
    ]
    return all(cover not in ("none", "no", "open") for cover in said) if said else None


def record_harvest(
    edit: Edit,
    cross: str,
    *,
    today: datetime.date,
    date: str = "",
    fruits: int | None = None,
    seeds: int | None = None,
    into: str = "new",
    place: str = "",
    generation: str | None = None,
    note: str = "",
    code: str = "",
    packet_code: str = "",
) -> tuple[Harvest, Packet | None]:
    """Record fruits and seeds taken from a cross, with their packet.

    Parameters
    ----------
    into : 'new' for a packet of its own, '' for none, or the code of a packet that is there and
        gets the seeds as well
    generation : of the seed; None for the one that follows from the parents
    place : where the packet lies

    Raises
    ------
    Fault : no such cross or packet, a count below 0, a date before the cross was made, seed of
        another cross in the packet
    """
    held = cross_not_skipped(edit.book, cross, "Set it to made first if it bore seed after all.")
    taken_on = iso_date(date)
    on = day_of(taken_on, today)
    harvest = Harvest(
        code.strip() or next_key(edit.book, "harvest", on, held.cross),
        held.cross,
        taken_on,
        whole(fruits, "fruits"),
        whole(seeds, "seeds"),
        note=note.strip(),
    )
    with guarded(edit, crosses=(held.cross,)):
        if held.state != "made":
            edit.update(held, state="made")
        if into not in ("", "new"):
            return harvest, _into_packet(edit, harvest, into)
        edit.add(harvest)
        if not into:
            return harvest, None
        if generation is None:
            generation = generation_of_seed(edit.book, held.cross)
        packet = Packet(
            packet_code.strip() or next_key(edit.book, "packet", on, held.cross),
            harvest.harvest,
            generation,
            held.seed_parent,
            was_covered(edit.book, held.cross),
            harvest.seeds,
            harvest.seeds,
            place=place.strip(),
        )
        edit.add(packet)
        updated = edit.update(harvest, packet=packet.packet)
    assert isinstance(updated, Harvest)
    return updated, packet


def _into_packet(edit: Edit, harvest: Harvest, into: str) -> Packet:
    """Put the seeds of a harvest to those of an earlier one of the same cross."""
    packet = packet_called(edit.book, into)
    first = edit.book.harvests.get(packet.harvest)
    if first is None or first.cross != harvest.cross:
        other = f"of the cross {first.cross}" if first is not None else "from elsewhere"
        raise Fault(
            f"The packet {packet.packet} holds seed {other}.",
            Place(column="packet"),
            "Put the seed into a packet of its own.",
        )
    harvest.packet = packet.packet
    edit.add(harvest)
    both = harvest.seeds is not None
    updated = edit.update(
        packet,
        seeds=packet.seeds + harvest.seeds if both and packet.seeds is not None else None,  # type: ignore[operator]
        left=packet.left + harvest.seeds if both and packet.left is not None else None,  # type: ignore[operator]
    )
    assert isinstance(updated, Packet)
    return updated
