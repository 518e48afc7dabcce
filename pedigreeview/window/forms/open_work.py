"""What is open to do in the book, for the forms to propose: never what is done already."""

from __future__ import annotations

from pedigreeview.book.book import Book
from pedigreeview.book.recording.packets import cross_of_packet
from pedigreeview.book.records import Sowing

_ALL = 1_000_000
"""What a row or bulk counts for."""

__all__ = ["cross_of_sowing", "open_sowings", "still_to_raise", "unsown_packets"]


def cross_of_sowing(book: Book, row: Sowing) -> str:
    """The cross whose seed was sown; '' where it was the seed of a plant, or is not said."""
    packet = book.packets.get(row.packet)
    code = row.sown_from if packet is None else cross_of_packet(book, packet)
    return code if code in book.crosses else ""


def _raised(book: Book) -> dict[str, int]:
    """How many plants were raised of each sowing, as far as their cross and date tell.

    Plants whose date is that of no sowing of their cross count for its latest one before it; a row
    or bulk stands for all that came up.
    """
    sowings: dict[str, list[Sowing]] = {}
    for row in book.sowings.values():
        of = cross_of_sowing(book, row)
        if of:
            sowings.setdefault(of, []).append(row)
    found = dict.fromkeys(book.sowings, 0)
    for plant in book.plants.values():
        rows = sowings.get(plant.cross, ()) if plant.cross else ()
        if not rows:
            continue
        fit = [row for row in rows if row.date == plant.sown]
        fit = fit or [row for row in rows if not plant.sown or row.date <= plant.sown][-1:]
        if fit:
            found[fit[-1].sowing] += _ALL if book.is_pool(plant) else 1
    return found


def _wanted(row: Sowing) -> int | None:
    return row.up if row.kept is None else row.kept


def open_sowings(book: Book, cross: str = "") -> list[str]:
    """Sowings of which plants can still be raised, the latest first.

    A sowing is done when as many plants were raised of it as were kept, or came up; where neither
    was counted, when any was.

    cross : those of one cross alone; '' for all
    """
    raised = _raised(book)
    found = []
    for row in reversed(book.sowings.values()):
        most = _wanted(row)
        if cross in ("", cross_of_sowing(book, row)) and raised[row.sowing] < (
            1 if most is None else most
        ):
            found.append(row.sowing)
    return found


def still_to_raise(book: Book, sowing: str) -> int | None:
    """How many plants of a sowing are not raised yet; None where nothing was counted of it."""
    most = _wanted(book.sowings[sowing])
    return None if most is None else max(0, most - _raised(book)[sowing])


def unsown_packets(book: Book) -> list[str]:
    """Packets that hold seed and of which nothing was sown yet, the latest first."""
    sown = {row.packet for row in book.sowings.values()}
    return [
        row.packet
        for row in reversed(book.packets.values())
        if row.packet not in sown and (row.left is None or row.left > 0)
    ]
