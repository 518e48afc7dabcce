"""The map of beds and rows, read from where plants stand, and a plant moved on it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.fields import iso_date
from pedigreeview.book.recording.lookup import plant_called
from pedigreeview.book.recording.place_names import read_place
from pedigreeview.book.records import Note, Plant

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["Bed", "BedMap", "BedRow", "bed_map", "move_plants", "places_before"]

_MOVED = "Moved from "


@dataclass(frozen=True, slots=True)
class BedRow:
    """One row: its plants by position, and those without one.

    standing : (position, codes), positions from 1 in order; more than one code where two are
        recorded in one place
    elsewhere : codes in the row whose position is not known
    """

    row: str
    standing: tuple[tuple[int, tuple[str, ...]], ...]
    elsewhere: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Bed:
    """One bed with its rows in natural order; the row '' holds plants of the bed alone."""

    bed: str
    rows: tuple[BedRow, ...]


@dataclass(frozen=True, slots=True)
class BedMap:
    """All beds, and the plants whose place is not known."""

    beds: tuple[Bed, ...]
    without_place: tuple[str, ...]

    @property
    def twice_used(self) -> tuple[tuple[str, tuple[str, ...]], ...]:
        """Places in which more than one plant is recorded, with their codes."""
        return tuple(
            (" / ".join(part for part in (bed.bed, row.row, str(position)) if part), codes)
            for bed in self.beds
            for row in bed.rows
            for position, codes in row.standing
            if len(codes) > 1
        )


def _natural(text: str) -> tuple[tuple[int, int | str], ...]:
    """Order in which 'row 2' stands before 'row 10'."""
    parts: list[tuple[int, int | str]] = []
    digits = word = ""
    for sign in text.casefold() + " ":
        if sign.isascii() and sign.isdigit():
            parts += [(1, word)] if word else []
            word = ""
            digits += sign
        else:
            parts += [(0, int(digits))] if digits else []
            digits = ""
            word += sign
    return (*parts, (1, word.strip()))


def bed_map(book: Book, *, with_gone: bool = False) -> BedMap:
    """The map of every plant that has a place.

    with_gone : show plants that are culled, lost or finished as well
    """
    beds: dict[str, dict[str, list[tuple[int | None, str]]]] = {}
    written: dict[str, str] = {}
    without: list[str] = []
    for plant in book.plants.values():
        if not with_gone and plant.status in ("culled", "lost", "finished"):
            continue
        place = read_place(plant.place)
        if place is None:
            without.append(plant.plant)
            continue
        # 'Bed 2' and 'bed 2' are one bed; it is shown as it was written first.
        bed = written.setdefault(place.bed.casefold(), place.bed)
        rows = beds.setdefault(bed, {})
        row = written.setdefault(f"{bed.casefold()} / {place.row.casefold()}", place.row)
        rows.setdefault(row, []).append((place.position, plant.plant))
    return BedMap(
        tuple(
            Bed(bed, tuple(_row(row, beds[bed][row]) for row in sorted(beds[bed], key=_natural)))
            for bed in sorted(beds, key=_natural)
        ),
        tuple(without),
    )


def _row(row: str, plants: list[tuple[int | None, str]]) -> BedRow:
    standing: dict[int, list[str]] = {}
    elsewhere = []
    for position, code in plants:
        if position is None:
            elsewhere.append(code)
        else:
            standing.setdefault(position, []).append(code)
    ordered = tuple((position, tuple(standing[position])) for position in sorted(standing))
    return BedRow(row, ordered, tuple(elsewhere))


def move_plants(
    edit: Edit, places: Mapping[str, str], *, date: str, why: str = ""
) -> tuple[Plant, ...]:
    """Move plants, each to its new place; a dated note of each tells where it stood.

    Raises
    ------
    Fault : a plant that is not in the book, or a position in which another living plant stands
    """
    on = iso_date(date)
    wanted = {plant_called(edit.book, code).plant: text.strip() for code, text in places.items()}
    found = []
    moved_now: set[str] = set()
    for code, text in wanted.items():
        plant = edit.book.plants[code]
        if text == plant.place:
            found.append(plant)
            continue
        was = plant.place or "no place"
        words = f"{_MOVED}{was} to {text or 'no place'}. {why.strip()}".strip()
        edit.add(Note(f"plant {code}", on, words))
        moved = edit.update(plant, place=text)
        assert isinstance(moved, Plant)
        found.append(moved)
        moved_now.add(code)
    for place, codes in bed_map(edit.book).twice_used:
        new = [code for code in codes if code in moved_now]
        if new:
            others = [code for code in codes if code != new[0]]
            raise Fault(
                f"In {place} stands {', '.join(others)} already.",
                Place(column="place", plant=new[0]),
                "Choose another position, or move that plant in the same step.",
            )
    return tuple(found)


def places_before(book: Book, plant: str) -> tuple[tuple[str, str], ...]:
    """The moves of a plant, oldest first: the date and the sentence of each."""
    found = [
        (note.date, note.text)
        for note in book.notes
        if note.about == f"plant {plant}" and note.text.startswith(_MOVED)
    ]
    return tuple(sorted(found, key=lambda move: move[0]))
