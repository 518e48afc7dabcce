"""Recording a variety got from elsewhere, with how it is kept true.

How it is kept decides what it is for the arithmetic.  Kept by seed and alike, it is a variety, a
pool whose fixation is the book's setting; kept by cuttings, tubers or division, or a bought F1
hybrid, it is one genotype and so a plant; a mixed population is a variety of fixation 0.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import UsedCodes, code_fault
from pedigreeview.book.recording.fields import choice, iso_date, share, whole
from pedigreeview.book.records import STATUSES, Plant

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["KEPT", "code_from_name", "how_kept", "record_variety"]

KEPT = {
    "seed": "by its own seed, true to type",
    "mixed": "by its own seed, a mixed population",
    "clone": "by cuttings, tubers, grafts or division",
    "f1": "not at all: a bought F1 hybrid",
}
"""How a variety is kept true: the word, and what the window says of it."""

_KEPT = "kept"
"""Column in which it is kept."""


def code_from_name(used: UsedCodes, name: str) -> str:
    """A short code from a name: 'Tarnwick Pale' gives TP, or TP2 where TP is taken."""
    words = ["".join(sign for sign in word if sign.isalnum()) for word in name.split()]
    words = [word for word in words if word]
    if not words:
        return ""
    head = "".join(word[0] for word in words) if len(words) > 1 else words[0][:3]
    head = head.upper()
    code, number = head, 1
    while code in used:
        number += 1
        code = f"{head}{number}"
    return code


def record_variety(
    edit: Edit,
    *,
    code: str = "",
    name: str = "",
    kept: str = "seed",
    fixation: float | None = None,
    obtained_from: str = "",
    protected: str = "",
    crop: str = "",
    ploidy: int | None = None,
    sown: str = "",
    status: str = "growing",
    place: str = "",
    note: str = "",
) -> Plant:
    """Record a variety, or a plant, that came from elsewhere.

    Parameters
    ----------
    code : blank for one made of the name
    kept : a word of `KEPT`
    fixation : 0 to 1 where it is known; None takes the book's setting for its kind
    protected : licence or protection, as the packet or the seller states it

    Raises
    ------
    Fault : neither code nor name, a code that is taken, a word that is not known
    """
    used = UsedCodes(edit.book)
    taken = code.strip() or code_from_name(used, name)
    if not taken:
        raise Fault(
            "The variety has neither a code nor a name.",
            Place(column="plant"),
            "Write one of them.",
        )
    code_fault(used, taken, column="plant")
    how = choice(kept, tuple(KEPT), "kept") or "seed"
    fixed = share(fixation, "fixation")
    if how == "mixed" and fixed is None:
        fixed = 0.0
    plant = Plant(
        taken,
        name.strip(),
        "plant" if how in ("clone", "f1") else "variety",
        "founder",
        fixation=fixed,
        crop=crop.strip(),
        ploidy=whole(ploidy, "ploidy", low=1),
        sown=iso_date(sown, "sown"),
        status=choice(status, STATUSES, "status"),
        place=place.strip(),
        obtained_from=obtained_from.strip(),
        protected=protected.strip(),
        note=note.strip(),
        extra={_KEPT: how} if how != "seed" else {},
    )
    edit.add(plant)
    return plant


def how_kept(book: Book, plant: Plant) -> str:
    """The word of `KEPT` for a variety got from elsewhere; '' for any other plant."""
    if book.raised(plant) != "founder":
        return ""
    said = plant.extra.get(_KEPT, "")
    if said in KEPT:
        return said
    return "seed" if book.kind(plant) == "variety" else ""
