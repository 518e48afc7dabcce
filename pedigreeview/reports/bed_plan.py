"""The map of beds, row by row, each position counted from the stake."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.place_names import read_place
from pedigreeview.book.records import Plant
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.label_lines import Mark, text_mark
from pedigreeview.reports.paper_lists import MARGIN, Block, Part, page_size
from pedigreeview.reports.paper_type import shortened, width_of, wrapped
from pedigreeview.reports.report_words import counted, tr

__all__ = ["BedRow", "Spot", "bed_plan_parts", "bed_rows", "spot_of"]

_BOX_HEIGHT = 132.0
_LEAST_BOX = 170.0
_STAKE = 300.0
_MOST_GAP = 200
"""Empty positions that are drawn between two plants; a larger number is a mistyped one."""


@dataclass(frozen=True, slots=True)
class Spot:
    """Where a plant stands, read from the words of its place."""

    bed: str
    row: str
    position: int | None
    """Counted from the stake, 1 for the first; None where it is not said."""


@dataclass(frozen=True, slots=True)
class BedRow:
    """One row of a bed."""

    bed: str
    row: str
    plants: tuple[tuple[int, str], ...]
    """Position and code, in order."""
    counted: bool
    """Whether the positions were recorded; else they are the order of the book."""


_POSITION = re.compile(r"(?:position|pos\.?|plant|no\.?|number|#)\s*(\d{1,5})\Z", re.IGNORECASE)
_ROW = re.compile(r"((?:row|stake)\s+.+)\Z", re.IGNORECASE)


def spot_of(place: str) -> Spot:
    """Bed, row and position in words: 'bed 2 / row 3 / 12', or 'bed 2, row 3, plant 12'.

    With slashes it is read as the book writes places (`read_place`).  Else parts are divided by
    commas or semicolons; what is neither a row ('row 3', 'stake 61') nor a position ('plant 12',
    'position 12', 'no. 12') belongs to the name of the bed.
    """
    read = read_place(place)
    if "/" in place and read is not None:
        return Spot(read.bed, read.row, read.position)
    bed: list[str] = []
    row, position = "", None
    for part in re.split(r"[,;]", place):
        words = " ".join(part.split())
        found = _POSITION.match(words)
        if found is not None and position is None:
            position = int(found[1])
        elif _ROW.match(words) and not row:
            row = words
        elif words:
            bed.append(words)
    return Spot(", ".join(bed), row, position)


def bed_rows(book: Book, beds: Iterable[str] = (), *, all_plants: bool = False) -> list[BedRow]:
    """The rows of the beds with what stands in them.

    beds : names; none: all
    all_plants : also plants that are culled, lost or finished

    Raises
    ------
    Fault : no plant with a place, or a bed that is not in the book
    """
    held: dict[tuple[str, str], list[tuple[int | None, Plant]]] = {}
    for plant in book.plants.values():
        stands = plant.status in ("", "growing", "kept")
        if not plant.place or not (stands or all_plants):
            continue
        spot = spot_of(plant.place)
        held.setdefault((spot.bed, spot.row), []).append((spot.position, plant))
    wanted = list(dict.fromkeys(beds))
    known = {name for key in held for name in key if name}
    for name in wanted:
        if name not in known:
            raise Fault(
                f"There is no bed or row '{name}' with plants.",
                Place(),
                f"The book has {', '.join(sorted(known)) or 'none'}.",
            )
    if wanted:
        held = {key: value for key, value in held.items() if set(key) & set(wanted)}
    if not held:
        raise Fault(
            "No plant that grows has a place.", Place(), "Record the places of plants first."
        )
    found = []
    for (bed, row), plants in sorted(held.items(), key=lambda item: _natural(item[0])):
        single = [item for item in plants if item[0] is not None or not book.is_pool(item[1])]
        # A family stands for the row itself where its plants stand in it one by one.
        plants = single or plants
        counted = len(plants) == 1 or all(position is not None for position, _ in plants)
        if counted:
            placed = sorted((position or 1, plant.plant) for position, plant in plants)
        else:
            placed = [(at + 1, plant.plant) for at, (_, plant) in enumerate(plants)]
        found.append(BedRow(bed, row, tuple(placed), counted))
    return found


def bed_plan_parts(
    book: Book, rows: Iterable[BedRow], *, paper: str = "A4", landscape: bool = True
) -> list[Part]:
    """The map as one part of a document: a strip of boxes for each row, the stake at its left."""
    width = page_size(paper, landscape)[0] - 2 * MARGIN
    blocks: list[Block] = []
    bed: str | None = None
    guessed = False
    for row in rows:
        if row.bed != bed:
            bed = row.bed
            if bed:
                blocks.append(_heading(bed))
        blocks += _strip(book, row, width)
        guessed = guessed or not row.counted
    notes = [
        tr(
            "Thick box: kept on purpose. Struck through: culled, lost or finished. "
            "Empty box: nothing stands there."
        )
    ]
    if guessed:
        notes.append(
            tr(
                "~ beside a row: positions are not recorded, its plants stand in the order of the "
                "book."
            )
        )
    return [
        Part(
            tr("Map of the beds"),
            tr("Row by row; positions are counted from the stake, which stands at the left."),
            None,
            tuple(blocks),
            notes=tuple(notes),
        )
    ]


def _heading(bed: str) -> Block:
    theme = theme_named("grey")
    mark = text_mark(theme, bed, 34, strong=True).moved(0, 12)
    return Block((mark,), 60.0, with_next=True)


def _strip(book: Book, row: BedRow, width: float) -> list[Block]:
    theme = theme_named("grey")
    codes = [code for _, code in row.plants]
    box = max([_LEAST_BOX, *(width_of(theme, 28, code, strong=True) + 24 for code in codes)])
    box = min(box, width - _STAKE)
    across = max(1, int((width - _STAKE) // box))
    box = (width - _STAKE) / across if len(codes) >= across else box
    at = dict[int, list[str]]()
    for position, code in row.plants:
        at.setdefault(position, []).append(code)
    slots: list[tuple[int, str]] = []
    before = 0
    for position in sorted(at):
        if before < position - 1 <= before + _MOST_GAP:
            slots += [(empty, "") for empty in range(before + 1, position)]
        slots += [(position, code) for code in at[position]]
        before = position
    blocks = []
    for start in range(0, len(slots), across):
        marks: list[Mark] = []
        if start == 0:
            name = row.row or ("" if row.bed else tr("no bed named"))
            held = shortened(theme, 26, name, _STAKE - 60, strong=True)
            marks.append(text_mark(theme, held, 26, strong=True).moved(0, 26))
            count = counted(len(codes), tr("{} plant"), tr("{} plants"))
            count += "" if row.counted else " ~"
            marks.append(text_mark(theme, count, 22, soft=True).moved(0, 60))
            marks += _stake(_STAKE - 34)
        for step, (position, code) in enumerate(slots[start : start + across]):
            marks += _box(book, position, code, _STAKE + step * box, box)
        blocks.append(
            Block(tuple(marks), _BOX_HEIGHT + (10 if start + across < len(slots) else 24))
        )
    return blocks


def _stake(x: float) -> list[Mark]:
    """A stake in the ground."""
    return [
        Mark("frame", x, 14, 14, 60),
        Mark("rule", x + 7, 74, 0, _BOX_HEIGHT - 84),
    ]


def _box(book: Book, position: int, code: str, x: float, width: float) -> list[Mark]:
    theme = theme_named("grey")
    plant = book.plants.get(code)
    status = plant.status if plant is not None else ""
    kept = status == "kept"
    inset = 3.5 if kept else 0.0
    found = [
        Mark(
            "frame" if kept else "box", x + inset, inset, width - 2 * inset, _BOX_HEIGHT - 2 * inset
        )
    ]
    found.append(text_mark(theme, f"{position}", 20, soft=True).moved(x + 10, 8))
    if code:
        held = shortened(theme, 28, code, width - 20, strong=True)
        mark = text_mark(theme, held, 28, strong=True).moved(x + 10, 38)
        found.append(mark)
        name = plant.name if plant is not None else ""
        if name:
            lines = wrapped(theme, 20, name, width - 20)
            if len(lines) > 2:
                lines = [lines[0], shortened(theme, 20, " ".join(lines[1:]), width - 20)]
            for at, line in enumerate(lines):
                small = text_mark(theme, line, 20, soft=True)
                found.append(small.moved(x + 10, 76 + 23 * at))
        if status in ("culled", "lost", "finished"):
            found.append(Mark("rule", x + 8, 38 + mark.height / 2, mark.width + 6, 0.0))
    return found


def _natural(key: tuple[str, str]) -> list[list[tuple[int, int | str]]]:
    """'bed 2' before 'bed 10'."""
    return [
        [
            (0, int(part)) if part.isdigit() else (1, part.casefold())
            for part in re.split(r"(\d+)", name)
        ]
        for name in key
    ]
