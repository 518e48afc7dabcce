"""What is half typed on a card and waits there while another plant is looked at.

It comes back to its field with the card of its plant, and goes with the window's other unfinished
writing (`unfinished`) when the book is closed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from pedigreeview.window.card_edit import CardFacts, Typing
from pedigreeview.window.card_notes import CardNotes

if TYPE_CHECKING:
    from pedigreeview.book.book import Book

__all__ = ["CardWaiting", "Unwritten"]


_VALUES = frozenset(
    ("name", "status", "sown", "place", "obtained_from", "protected", "note", "plant")
)
"""What is typed on a card."""


@dataclass(frozen=True, slots=True)
class Unwritten:
    """What is typed on the card of one plant: values, and a note with its day."""

    values: tuple[Typing, ...]
    note: tuple[str, str] | None


class CardWaiting:
    """What waits, by the code of its plant."""

    def __init__(self) -> None:
        self.held: dict[str, Unwritten] = {}
        self._absent: dict[str, Any] = {}
        """What was stored of plants that are not in the book; an undo may bring them back."""

    def clear(self) -> None:
        """Another book: nothing waits for its plants."""
        self.held.clear()
        self._absent.clear()

    def look(self, facts: CardFacts | None, notes: CardNotes | None) -> Unwritten | None:
        """What is typed on a card and would be lost with it; None where there is nothing."""
        values = tuple(
            one
            for one in (facts.typing(lasting=True) if facts is not None else ())
            if one[1].strip() != str(getattr(one[2], one[0])).strip()
        )
        note = notes.typing(lasting=True) if notes is not None else None
        if note is not None and not note[0].strip():
            note = None
        return Unwritten(values, note) if values or note is not None else None

    def put(self, code: str, facts: CardFacts | None, notes: CardNotes | None) -> bool:
        """Set aside what is typed on the card of a plant; whether there was something."""
        found = self.look(facts, notes)
        if found is not None:
            self.held[code] = found
        return found is not None

    def take(self, code: str) -> Unwritten | None:
        """What waits for the card of a plant, which is laid out now."""
        return self.held.pop(code, None)

    def as_texts(self, shown: str, facts: CardFacts | None, notes: CardNotes | None) -> Any:
        """All that waits, with what is typed on the card on show, as it is stored."""
        found = dict(self.held)
        now = self.look(facts, notes)
        if now is not None:
            found[shown] = now
        stored: dict[str, Any] = dict(self._absent)
        for code, one in found.items():
            entry: dict[str, list[Any]] = {}
            if one.values:
                entry["values"] = [
                    [name, typed, str(getattr(plant, name))] for name, typed, plant in one.values
                ]
            if one.note is not None:
                entry["note"] = list(one.note)
            stored[code] = entry
        return stored

    def take_up(self, book: Book, stored: object) -> list[str]:
        """Let what was stored wait again.

        Returns
        -------
        the plants that it waits for; what is of a plant that is not in the book waits on as well
        """
        found = []
        for code, entry in stored.items() if isinstance(stored, Mapping) else ():
            if not isinstance(entry, Mapping):
                continue
            plant = book.plants.get(code)
            if plant is None:
                self._absent[code] = entry
                continue
            values: list[Typing] = []
            typed_values = entry.get("values")
            for value in typed_values if isinstance(typed_values, list) else ():
                match value:
                    case [str(name), str(typed), str(was)] if name in _VALUES:
                        # As it was shown then: a change made elsewhere is not written over.
                        held: dict[str, Any] = {name: was}
                        values.append((name, typed, replace(plant, **held)))
            note: tuple[str, str] | None = None
            match entry.get("note"):
                case [str(text), str(date)]:
                    note = (text, date)
            if values or note is not None:
                self.held[code] = Unwritten(tuple(values), note)
                found.append(code)
        return found
