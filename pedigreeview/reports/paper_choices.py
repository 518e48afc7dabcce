"""What a paper is printed for: from plants, crosses and pollinations that somebody chose.

Each paper names other records: a stake a sowing, a packet label a packet.  Chosen records lead to
those that hang on them.  Knows no Qt.
"""

from __future__ import annotations

from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.recording.packets import cross_of_packet
from pedigreeview.reports.bed_plan import spot_of
from pedigreeview.reports.label_content import KINDS

__all__ = ["LISTS", "PAPERS", "SHEETS", "Chosen", "codes_for"]

LISTS = ("crossing", "plan", "beds")
SHEETS = ("pollinations", "fruit sheet", "rows", "scores")
"""Blank sheets, to be typed in afterwards."""
PAPERS = (*KINDS, *LISTS, *SHEETS)
"""Every paper of the season; the labels first."""

_GROWS = ("", "growing", "kept")


@dataclass(frozen=True, slots=True)
class Chosen:
    """Records that somebody chose; what is named more closely counts first."""

    plants: tuple[str, ...] = ()
    crosses: tuple[str, ...] = ()
    pollinations: tuple[str, ...] = ()
    packets: tuple[str, ...] = ()
    sowings: tuple[str, ...] = ()

    def __bool__(self) -> bool:
        return any((self.plants, self.crosses, self.pollinations, self.packets, self.sowings))


def codes_for(book: Book, paper: str, chosen: Chosen) -> tuple[str, ...]:
    """The codes that a paper is made for; none where nothing of what was chosen leads to any."""
    make = {
        "flowers": _worked,
        "fruits": _worked,
        "fruit sheet": _pollinations,
        "pots": _plants,
        "scores": _plants,
        "stakes": _stakes,
        "rows": _sowings,
        "packets": _packets,
        "crossing": _crosses,
        "plan": _crosses,
        "beds": _beds,
        "pollinations": lambda book, chosen: [],
    }[paper]
    return tuple(dict.fromkeys(make(book, chosen)))


def _crosses(book: Book, chosen: Chosen) -> list[str]:
    """The crosses themselves, those worked, and those in which a chosen plant is a parent."""
    found = [code for code in chosen.crosses if code in book.crosses]
    for code in chosen.pollinations:
        if code in book.pollinations:
            found.append(book.pollinations[code].cross)
    plants = set(chosen.plants)
    if plants:
        found += [
            cross.cross
            for cross in book.crosses.values()
            if cross.state != "skipped" and plants & {cross.seed_parent, cross.pollen_parent}
        ]
    return found


def _worked(book: Book, chosen: Chosen) -> list[str]:
    """Pollinations, else crosses; of a plant the crosses that it bears."""
    found = [code for code in chosen.pollinations if code in book.pollinations]
    found += [code for code in chosen.crosses if code in book.crosses]
    plants = set(chosen.plants)
    found += [
        cross.cross
        for cross in book.crosses.values()
        if cross.state != "skipped" and cross.seed_parent in plants
    ]
    return found


def _pollinations(book: Book, chosen: Chosen) -> list[str]:
    wanted = _worked(book, chosen)
    crosses = {code for code in wanted if code in book.crosses}
    named = [code for code in wanted if code in book.pollinations]
    of_crosses = [p.pollination for p in book.pollinations.values() if p.cross in crosses]
    return [*named, *of_crosses]


def _plants(book: Book, chosen: Chosen) -> list[str]:
    found = [code for code in chosen.plants if code in book.plants]
    crosses = set(chosen.crosses)
    found += [
        plant.plant
        for plant in book.plants.values()
        if plant.cross in crosses and plant.status in _GROWS and not book.is_pool(plant)
    ]
    return found


def _sowings(book: Book, chosen: Chosen) -> list[str]:
    found = [code for code in chosen.sowings if code in book.sowings]
    packets = set(_packets(book, chosen))
    crosses, plants = set(chosen.crosses), set(chosen.plants)
    found += [
        row.sowing
        for row in book.sowings.values()
        if row.packet in packets or row.sown_from in crosses or row.sown_from in plants
    ]
    return found


def _stakes(book: Book, chosen: Chosen) -> list[str]:
    """Sowings where there are some; else the crosses and plants as they are."""
    sown = [code for code in chosen.sowings if code in book.sowings]
    found = [code for code in chosen.crosses if code in book.crosses]
    found += [code for code in chosen.plants if code in book.plants]
    return [*sown, *found]


def _packets(book: Book, chosen: Chosen) -> list[str]:
    found = [code for code in chosen.packets if code in book.packets]
    crosses, plants = set(chosen.crosses), set(chosen.plants)
    if crosses or plants:
        found += [
            packet.packet
            for packet in book.packets.values()
            if packet.borne_on in plants or cross_of_packet(book, packet) in crosses
        ]
    return found


def _beds(book: Book, chosen: Chosen) -> list[str]:
    """The beds in which the plants stand; a row where no bed is named."""
    found = []
    for code in _plants(book, chosen):
        place = book.plants[code].place
        if place:
            spot = spot_of(place)
            found.append(spot.bed or spot.row)
    return [name for name in found if name]
