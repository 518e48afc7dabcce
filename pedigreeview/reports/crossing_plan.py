"""The crossing plan: seed parents in rows, pollen parents in columns, and how far each cross is."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.reports.matings import Mating, mating_of
from pedigreeview.reports.paper_lists import Part
from pedigreeview.reports.paper_tables import Cell, TableColumn, table_parts
from pedigreeview.reports.report_words import tr

__all__ = ["CrossingPlan", "PlanCell", "crossing_plan", "crossing_plan_parts"]

_EMPTY_ROWS = 1


@dataclass(slots=True)
class PlanCell:
    """All crosses of one pair in one direction."""

    crosses: list[str] = field(default_factory=list)
    wanted: int | None = None
    done: int = 0
    set: int = 0
    worked: bool = False


@dataclass(frozen=True, slots=True)
class CrossingPlan:
    """The plan of one season."""

    season: str
    seed_parents: tuple[str, ...]
    pollen_parents: tuple[str, ...]
    cells: dict[tuple[str, str], PlanCell]
    """By seed parent and pollen parent; a selfing has the same code twice, open pollination ''."""
    blooms: dict[str, str]
    """'9 June to 27 June' as '06-09 to 06-27', by parent."""


def crossing_plan(
    book: Book,
    season: str = "",
    crosses: Iterable[str] = (),
    *,
    wanted: Mapping[str, int] | None = None,
) -> CrossingPlan:
    """Which crosses a season holds, and how far they are.

    season : a year; blank: that of the planned crosses' next season, else the latest year worked
    crosses : codes; none: those planned (made in no year yet) and those made in the season
    wanted : flowers wanted by cross

    Raises
    ------
    Fault : a code that is not in the book, or no cross in that season
    """
    named = list(dict.fromkeys(crosses))
    for code in named:
        if code not in book.crosses:
            raise Fault(
                f"There is no cross '{code}' in the book.", Place(), "See how it is written there."
            )
    years = _years(book)
    planned = [cross for cross in book.crosses.values() if cross.state == "planned"]
    if not season and not planned:
        season = max((max(held) for held in years.values()), default="")
    chosen = [book.crosses[code] for code in named] or [
        cross
        for cross in book.crosses.values()
        if (season and season in years.get(cross.cross, ()))
        or (cross.state == "planned" and (not season or not years.get(cross.cross)))
    ]
    chosen = [cross for cross in chosen if cross.state != "skipped" or cross.cross in named]
    if not chosen:
        when = f"in {season}" if season else "yet"
        raise Fault(
            f"The book has no crosses {when}.",
            Place(),
            "Plan crosses first, or name another season.",
        )
    candidates = book.candidates()
    cells: dict[tuple[str, str], PlanCell] = {}
    for cross in chosen:
        mating = mating_of(book, cross, candidates)
        cell = cells.setdefault((mating.seed, _pollen(mating)), PlanCell())
        cell.crosses.append("" if cross.cross == mating.text else cross.cross)
        flowers = (wanted or {}).get(cross.cross)
        if flowers is not None:
            cell.wanted = (cell.wanted or 0) + flowers
        for one in book.pollinations.values():
            if one.cross == cross.cross and (not season or one.date[:4] in ("", season)):
                cell.worked = True
                cell.done += one.flowers or 0
                cell.set += one.set or 0
    seeds = dict.fromkeys(seed for seed, _ in cells)
    pollens = dict.fromkeys(pollen for _, pollen in cells)
    # A parent on both sides keeps one order, so that reciprocals lie across the diagonal.
    order = {code: at for at, code in enumerate(dict.fromkeys([*seeds, *pollens]))}
    return CrossingPlan(
        season,
        tuple(sorted(seeds, key=order.__getitem__)),
        tuple(sorted(pollens, key=lambda code: (code == "", order[code]))),
        cells,
        {code: _bloom(book, code, season) for code in order},
    )


def crossing_plan_parts(
    book: Book, plan: CrossingPlan, *, paper: str = "A4", landscape: bool = True
) -> list[Part]:
    """The plan as parts of a document."""
    columns = [TableColumn(tr("♀ seed parent"), 30, grow=0.4)]
    for code in plan.pollen_parents:
        under = "; ".join(part for part in (_name(book, code), plan.blooms.get(code, "")) if part)
        heading = f"♂ {code}" if code else tr("open-pollinated")
        columns.append(TableColumn(heading, 30, under, grow=0.5))
    columns.append(TableColumn(tr("further pollen parent"), 26, grow=0.4))
    rows = []
    for seed in plan.seed_parents:
        small = "; ".join(part for part in (_name(book, seed), plan.blooms.get(seed, "")) if part)
        rows.append(
            [
                Cell(seed, small, strong=True),
                *(_cell(plan.cells.get((seed, pollen))) for pollen in plan.pollen_parents),
                Cell(),
            ]
        )
    rows += [[Cell() for _ in columns] for _ in range(_EMPTY_ROWS)]
    below = tr("Seed parents in rows, pollen parents in columns; with the dates of bloom.")
    if plan.season:
        below = f"{tr('Season {}.').format(plan.season)} {below}"
    return table_parts(
        tr("Crossing plan"),
        below,
        columns,
        rows,
        keys=1,
        paper=paper,
        landscape=landscape,
        row_height=18.0,
        numbered=False,
        notes=[
            tr(
                "In each field: the cross, then flowers wanted, done and set; below is room to "
                "write."
            )
        ],
    )


def _cell(cell: PlanCell | None) -> Cell:
    if cell is None:
        return Cell()
    codes = ", ".join(code for code in cell.crosses if code)
    wanted = "____" if cell.wanted is None else str(cell.wanted)
    done = (str(cell.done), str(cell.set)) if cell.worked else ("____", "____")
    return Cell(codes, tr("{} wanted, {} done, {} set").format(wanted, *done), strong=True)


def _pollen(mating: Mating) -> str:
    if mating.sign == "selfing":
        return mating.seed
    return mating.pollen if mating.sign == "cross" else ""


def _years(book: Book) -> dict[str, set[str]]:
    """The years in which each cross was worked."""
    found: dict[str, set[str]] = {}
    for cross in book.crosses.values():
        if cross.made_on:
            found.setdefault(cross.cross, set()).add(cross.made_on[:4])
    for one in book.pollinations.values():
        if one.date:
            found.setdefault(one.cross, set()).add(one.date[:4])
    return found


def _bloom(book: Book, code: str, season: str) -> str:
    held = [one for one in book.blooms if one.plant == code and one.first_flower]
    own = [one for one in held if one.first_flower[:4] == season]
    if not own and held:
        # What it did in another year is the best that is known, and says which year.
        last = max(held, key=lambda one: one.first_flower)
        return tr("bloom {} to {}").format(last.first_flower, last.last_flower[5:] or "?")
    return ", ".join(
        tr("bloom {} to {}").format(one.first_flower[5:], one.last_flower[5:] or "?") for one in own
    )


def _name(book: Book, code: str) -> str:
    plant = book.plants.get(code)
    return plant.name if plant is not None else ""
