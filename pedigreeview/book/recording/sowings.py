"""Recording a sowing: from a packet, whose count falls, or straight from a cross or plant."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import next_key
from pedigreeview.book.recording.fields import iso_date, whole
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import (
    cross_called,
    packet_called,
    plant_called,
    sowing_called,
)
from pedigreeview.book.recording.packets import correct_count, cross_of_packet, take_seeds
from pedigreeview.book.recording.typed_dates import day_of
from pedigreeview.book.records import Packet, Sowing

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["correct_sown", "record_seedlings", "record_sowing", "undo_sowing"]


def record_sowing(
    edit: Edit,
    *,
    today: datetime.date,
    packet: str = "",
    sown_from: str = "",
    date: str = "",
    seeds: int | None = None,
    place: str = "",
    note: str = "",
    code: str = "",
    left_in_packet: int | None = None,
) -> Sowing:
    """Record seed sown; what is left in its packet falls by as many.

    Parameters
    ----------
    packet, sown_from : one of the two: a packet, or a cross or plant whose seed was in none
    left_in_packet : seeds in the packet before sowing, as counted now; corrects its count first,
        which is the way out when more was sown than the book says was left

    Raises
    ------
    TooFewSeeds : more sown than the packet has left
    Fault : neither or both of packet and source, a code that is not in the book, a count below 0,
        a date before the seed was harvested
    """
    if bool(packet.strip()) == bool(sown_from.strip()):
        raise Fault(
            "A sowing names either its packet or what the seed came from.",
            Place(column="packet"),
            "Fill in one of the two.",
        )
    sown_on = iso_date(date)
    row = Sowing(
        code.strip() or next_key(edit.book, "sowing", day_of(sown_on, today)),
        date=sown_on,
        seeds=whole(seeds, "seeds"),
        place=place.strip(),
        note=note.strip(),
    )
    if packet.strip():
        held = packet_called(edit.book, packet)
        row.packet = held.packet
        with guarded(edit, crosses=(cross_of_packet(edit.book, held),), packets=(held.packet,)):
            if left_in_packet is not None:
                on = sown_on or today.isoformat()
                correct_count(edit, held.packet, left=left_in_packet, date=on)
            take_seeds(edit, held.packet, row.seeds)
            edit.add(row)
        return row
    wanted = sown_from.strip()
    if wanted in edit.book.crosses or wanted not in edit.book.plants:
        try:
            row.sown_from = cross_called(edit.book, wanted, "sown_from").cross
        except Fault:
            row.sown_from = plant_called(edit.book, wanted, "sown_from").plant
    else:
        row.sown_from = wanted
    with guarded(edit, crosses=(row.sown_from,), plants=(row.sown_from,)):
        edit.add(row)
    return row


def record_seedlings(
    edit: Edit, sowing: str, *, up: int | None = None, kept: int | None = None, note: str = ""
) -> Sowing:
    """Say how many seedlings of a sowing came up, and how many were kept.

    A packet whose germination is not known takes it from the first sowing that tells it.

    Raises
    ------
    Fault : no such sowing, nothing said, more up than sown, more kept than up
    """
    row = sowing_called(edit.book, sowing)
    changed: dict[str, object] = {}
    for name, value in (("up", up), ("kept", kept)):
        if value is not None:
            changed[name] = whole(value, name)
    if note.strip():
        changed["note"] = f"{row.note} {note.strip()}".strip()
    if not changed:
        raise Fault(
            f"Nothing is said of the seedlings of the sowing {row.sowing}.",
            Place(column="up"),
            "Write how many came up, how many were kept, or a note.",
        )
    with guarded(edit, crosses=(row.sown_from,), plants=(row.sown_from,), packets=(row.packet,)):
        updated = edit.update(row, **changed)
        assert isinstance(updated, Sowing)
        packet = edit.book.packets.get(row.packet)
        sown, rose = updated.seeds, updated.up
        if packet is not None and packet.germination is None and sown and rose is not None:
            # More up than sown is refused when the guard closes.
            edit.update(packet, germination=round(rose / sown, 2))
    return updated


def correct_sown(edit: Edit, sowing: str, seeds: int | None) -> Sowing:
    """Correct how many seeds were sown; the packet gets back or gives the difference.

    Raises
    ------
    TooFewSeeds : the packet has not so many more
    Fault : no such sowing, a count below 0 or below what came up
    """
    row = sowing_called(edit.book, sowing)
    count = whole(seeds, "seeds")
    with guarded(edit, crosses=(row.sown_from,), plants=(row.sown_from,), packets=(row.packet,)):
        more = (count or 0) - (row.seeds or 0)
        if row.packet and more > 0:
            take_seeds(edit, row.packet, more)
        elif row.packet and more < 0:
            _give_back(edit, row.packet, -more)
        updated = edit.update(row, seeds=count)
    assert isinstance(updated, Sowing)
    return updated


def undo_sowing(edit: Edit, sowing: str) -> None:
    """Take a sowing out that did not happen; its seeds go back into the packet."""
    row = sowing_called(edit.book, sowing)
    if row.packet and row.seeds:
        _give_back(edit, row.packet, row.seeds)
    for note in [note for note in edit.book.notes if note.about == f"sowing {row.sowing}"]:
        edit.remove(note)
    edit.remove(row)


def _give_back(edit: Edit, code: str, seeds: int) -> None:
    packet = edit.book.packets[code]
    assert isinstance(packet, Packet)
    if packet.left is None:
        return
    left = packet.left + seeds
    if packet.seeds is not None:
        left = min(left, packet.seeds)
    edit.update(packet, left=left)
