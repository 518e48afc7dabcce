"""Which plants are sterile, on which side, and which refuse each other or themselves."""

from __future__ import annotations

from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.fields import choice
from pedigreeview.book.recording.lookup import plant_called
from pedigreeview.book.records import FERTILITY, Compatibility

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["record_compatibility", "remarks_on_pair"]


def record_compatibility(
    edit: Edit,
    plant: str,
    partner: str = "",
    *,
    as_seed: str = "",
    as_pollen: str = "",
    note: str = "",
) -> Compatibility:
    """Record how a plant behaves as seed and as pollen parent, with one partner or with any.

    The partner may be the plant itself: sterile then means self-incompatible.  What was recorded of
    the same two before gives way, with its note kept in front.

    Raises
    ------
    Fault : a plant that is not in the book, a word that is not known, or neither side said
    """
    one = plant_called(edit.book, plant).plant
    other = plant_called(edit.book, partner, "partner").plant if partner.strip() else ""
    seed, pollen = choice(as_seed, FERTILITY, "as_seed"), choice(as_pollen, FERTILITY, "as_pollen")
    if not seed and not pollen:
        raise Fault(
            "Neither side is said.", Place(column="as_seed"), "Choose fertile, poor or sterile."
        )
    for row in edit.book.compatibility:
        if (row.plant, row.partner) == (one, other):
            updated = edit.update(
                row,
                as_seed=seed or row.as_seed,
                as_pollen=pollen or row.as_pollen,
                note=f"{row.note} {note.strip()}".strip(),
            )
            assert isinstance(updated, Compatibility)
            return updated
    row = Compatibility(one, other, seed, pollen, note.strip())
    edit.add(row)
    return row


def remarks_on_pair(book: Book, seed_parent: str, pollen_parent: str) -> tuple[str, ...]:
    """What the records say against a cross before it is made, one sentence each.

    Sterility and refusal, different crops, different ploidy where both plants state it, and a
    parent that is culled or lost.
    """
    said: list[str] = []
    for row in book.compatibility:
        if row.plant == seed_parent and row.partner in ("", pollen_parent):
            said += _says(row, seed_parent, "as_seed", "seed parent")
        if row.plant == pollen_parent and row.partner in ("", seed_parent):
            said += _says(row, pollen_parent, "as_pollen", "pollen parent")
    one, two = book.plants.get(seed_parent), book.plants.get(pollen_parent)
    for plant in dict.fromkeys((seed_parent, pollen_parent)):
        held = book.plants.get(plant)
        if held is not None and held.status in ("culled", "lost") and not book.is_pool(held):
            said.append(f"{plant} is {held.status}.")
    if one is None or two is None:
        return tuple(said)
    facts = [book.crop_facts(plant) for plant in (one, two)]
    crops = [
        (fact.name if fact is not None else book.crop(plant).strip()).casefold()
        for fact, plant in zip(facts, (one, two), strict=True)
    ]
    if all(crops) and crops[0] != crops[1]:
        said.append(
            f"{seed_parent} is {book.crop(one)} and {pollen_parent} is {book.crop(two)}, "
            "which are different crops."
        )
    if one.ploidy is not None and two.ploidy is not None and one.ploidy != two.ploidy:
        said.append(
            f"{seed_parent} is {one.ploidy}x and {pollen_parent} is {two.ploidy}x: expect few "
            "seeds or none."
        )
    return tuple(said)


def _says(row: Compatibility, plant: str, column: str, side: str) -> list[str]:
    word = getattr(row, column)
    if word not in ("poor", "sterile"):
        return []
    if row.partner == plant:
        how = "refuses its own pollen" if word == "sterile" else "takes its own pollen poorly"
        return [f"{plant} {how}."]
    partner = f" with {row.partner}" if row.partner else ""
    return [f"{plant} is {word} as a {side}{partner}."]
