"""The crossing list for a day: what is planned or under way, with room to write what was done."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from pedigreeview.book.book import Book
from pedigreeview.book.crossing_list import CrossToMake, crossing_list
from pedigreeview.book.dates import earliest, is_date
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.compatibility import remarks_on_pair
from pedigreeview.book.records import Cross
from pedigreeview.reports.matings import Mating, mating_of
from pedigreeview.reports.paper_lists import Part
from pedigreeview.reports.paper_tables import Cell, TableColumn, table_parts
from pedigreeview.reports.report_words import isolated, tr

__all__ = ["CrossingRow", "crossing_list_parts", "crossing_rows"]

_EMPTY_ROWS = 4
"""For crosses that are made on the spot."""


@dataclass(frozen=True, slots=True)
class CrossingRow:
    """One cross to work."""

    cross: str
    mating: Mating
    seed_place: str
    pollen_place: str
    wanted: int | None
    """Flowers wanted, where somebody said so."""
    done: int
    """Flowers worked so far."""
    set: int
    cautions: tuple[str, ...]
    """What is recorded of how the two parents take each other."""
    seed_flower: str = ""
    """'in flower', 'expected', 'over', 'not yet', or '' where it is not known."""
    pollen_flower: str = ""
    pollen: tuple[str, ...] = ()
    """Stored pollen with its age."""


def crossing_rows(
    book: Book,
    day: str,
    crosses: Iterable[str] = (),
    *,
    wanted: Mapping[str, int] | None = None,
) -> list[CrossingRow]:
    """What to cross on a day, in the order in which one walks: by the seed parent's place.

    day : ISO date
    crosses : codes; none: those that are planned, and those that were worked on that day
    wanted : flowers wanted by cross

    Raises
    ------
    Fault : a code that is not in the book, or nothing planned
    """
    named = list(dict.fromkeys(crosses))
    for code in named:
        if code not in book.crosses:
            raise Fault(
                f"There is no cross '{code}' in the book.", Place(), "See how it is written there."
            )
    worked: dict[str, tuple[int, int]] = {}
    today: set[str] = set()
    for one in book.pollinations.values():
        done, taken = worked.get(one.cross, (0, 0))
        worked[one.cross] = (done + (one.flowers or 0), taken + (one.set or 0))
        if one.date == day:
            today.add(one.cross)
    chosen = [book.crosses[code] for code in named] or [
        cross for cross in book.crosses.values() if cross.state == "planned" or cross.cross in today
    ]
    if not chosen:
        raise Fault(
            f"No cross is planned, and none was worked on {day}.",
            Place(),
            "Plan crosses first, or name those that are to be on the list.",
        )
    candidates = book.candidates()
    planned: dict[str, CrossToMake] = {}
    if is_date(day):
        planned = {line.cross: line for line in crossing_list(book, earliest(day))}
    found = [
        CrossingRow(
            cross.cross,
            mating_of(book, cross, candidates),
            _place(book, cross.seed_parent),
            _place(book, cross.pollen_parent),
            (wanted or {}).get(cross.cross),
            *worked.get(cross.cross, (0, 0)),
            _cautions(book, cross),
        )
        for cross in chosen
    ]
    for at, row in enumerate(found):
        line = planned.get(row.cross)
        if line is not None:
            found[at] = replace(
                row,
                seed_flower=line.seed_parent.flower,
                pollen_flower=line.pollen_parent.flower,
                pollen=line.pollen,
            )
    return sorted(found, key=lambda row: (row.seed_place, row.mating.seed, row.cross))


def crossing_list_parts(
    book: Book,
    day: str,
    crosses: Iterable[str] = (),
    *,
    wanted: Mapping[str, int] | None = None,
    paper: str = "A4",
    landscape: bool = True,
) -> list[Part]:
    """The crossing list as parts of a document."""
    rows = crossing_rows(book, day, crosses, wanted=wanted)
    columns = [
        TableColumn(tr("♀ seed parent"), 25, grow=0.8),
        TableColumn(tr("× ♂ pollen parent"), 25, grow=0.8),
        TableColumn(tr("cross"), 13, grow=0.2),
        TableColumn(tr("wanted"), 12, tr("flowers"), grow=0.1),
        TableColumn(tr("so far"), 13, tr("done, set"), grow=0.1),
        TableColumn(tr("flowers"), 12, tr("today"), grow=0.1),
        TableColumn(tr("bud"), 12, tr("closed unsure open"), grow=0.1),
        TableColumn(tr("cover"), 12, grow=0.3),
        TableColumn(tr("tag"), 14, grow=0.3),
        TableColumn(tr("by"), 9, grow=0.1),
        TableColumn(tr("note"), 16, grow=1.4),
    ]
    cells = [_cells(row) for row in rows]
    cells += [[Cell() for _ in columns] for _ in range(_EMPTY_ROWS)]
    notes = []
    for row in rows:
        notes += [f"{isolated(row.cross)}: {tr(caution)}" for caution in row.cautions]
    notes.append(
        tr(
            "In the book within the minute: the tag can be lost. "
            "Clean fingers and brush between plants."
        )
    )
    below = tr("{}. The seed parent bears the fruit and the tag; in the order of its place.")
    return table_parts(
        tr("Crossing list"),
        below.format(day),
        columns,
        cells,
        keys=2,
        paper=paper,
        landscape=landscape,
        row_height=11.0,
        notes=notes,
    )


def _cells(row: CrossingRow) -> list[Cell]:
    mating = row.mating
    flower = tr(row.seed_flower)
    seed = Cell(mating.seed, _small(mating.seed_name, row.seed_place, flower), strong=True)
    if mating.sign == "selfing":
        pollen = Cell("⊗", tr("selfed"))
    elif mating.sign == "open":
        pollen = Cell("○", tr("open-pollinated"))
    else:
        stored = [tr(lot) for lot in row.pollen]
        small = _small(mating.pollen_name, row.pollen_place, tr(row.pollen_flower), *stored)
        pollen = Cell(mating.pollen, small, strong=True)
    wanted = "" if row.wanted is None else str(row.wanted)
    state = tr("{} done, {} set").format(row.done, row.set) if row.done else tr("none yet")
    code = row.cross if row.cross != mating.text else ""
    blank = [Cell() for _ in range(6)]
    return [seed, pollen, Cell(code), Cell(wanted), Cell(small=state), *blank]


def _small(*parts: str) -> str:
    return ", ".join(part for part in parts if part)


def _place(book: Book, code: str) -> str:
    plant = book.plants.get(code)
    return plant.place if plant is not None else ""


def _cautions(book: Book, cross: Cross) -> tuple[str, ...]:
    """What the records say against the pair, and the notes on how its parents take."""
    seed, pollen = cross.seed_parent, cross.pollen_parent
    found = list(remarks_on_pair(book, seed, pollen))
    for one in book.compatibility:
        ours = (one.plant == seed and one.partner in ("", pollen)) or (
            one.plant == pollen and one.partner in ("", seed)
        )
        if ours and one.note:
            found.append(f"{one.plant}: {one.note}")
    return tuple(dict.fromkeys(found))
