"""How often pollinations took, by parent, direction, person, month, cover: counts and nothing else.

Only pollinations that say both their flowers and the fruits set enter a rate; the rest are counted
beside it.  Whether a difference is shown is not said here.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Pollination

__all__ = ["GROUPINGS", "TakeRow", "takes_by"]


@dataclass(frozen=True, slots=True)
class TakeRow:
    """The takes of one group.

    group : what its pollinations share; '' where that was not written down
    flowers, fruits : over the pollinations that say both
    pollinations : how many these are
    left_out : pollinations of the group that lack one of the two counts
    crosses : codes of all its crosses
    """

    group: str
    flowers: int
    fruits: int
    pollinations: int
    left_out: int
    crosses: tuple[str, ...]

    @property
    def take(self) -> float | None:
        """Fruits set for each flower worked, 0 to 1; None without a flower."""
        return self.fruits / self.flowers if self.flowers else None


_Group = Callable[[Book, Cross, Pollination], str]


def _direction(book: Book, cross: Cross, row: Pollination) -> str:
    if not cross.direction_known or not cross.seed_parent or not cross.pollen_parent:
        return ""
    return f"{cross.seed_parent} × {cross.pollen_parent}"


def _pollen(book: Book, cross: Cross, row: Pollination) -> str:
    lot = book.pollen_lots.get(row.pollen_lot)
    return cross.pollen_parent or (lot.plant if lot is not None else "")


GROUPINGS: dict[str, _Group] = {
    "seed_parent": lambda book, cross, row: cross.seed_parent,
    "pollen_parent": _pollen,
    "direction": _direction,
    "cross": lambda book, cross, row: cross.cross,
    "by": lambda book, cross, row: row.by.strip(),
    "year": lambda book, cross, row: row.date[:4],
    "month": lambda book, cross, row: row.date[:7] if len(row.date) >= 7 else "",
    "date": lambda book, cross, row: row.date if len(row.date) == 10 else "",
    "cover": lambda book, cross, row: row.cover.strip().casefold(),
    "bud": lambda book, cross, row: row.bud,
}
"""The ways of grouping, by their words."""


def takes_by(book: Book, grouping: str, *, year: str = "") -> tuple[TakeRow, ...]:
    """The takes of all pollinations, or of a year's, grouped; dates in order, else most flowers
    first, and what was not written down last.

    Raises
    ------
    KeyError : the grouping is none of `GROUPINGS`
    """
    group_of = GROUPINGS[grouping]
    groups: dict[str, list[Pollination]] = {}
    for row in book.pollinations.values():
        cross = book.crosses.get(row.cross)
        if cross is None or (year and row.date[:4] != year):
            continue
        groups.setdefault(group_of(book, cross, row), []).append(row)
    rows = [_row(group, held) for group, held in groups.items()]
    if grouping in ("year", "month", "date"):
        return tuple(sorted(rows, key=lambda row: (row.group == "", row.group)))
    return tuple(sorted(rows, key=lambda row: (row.group == "", -row.flowers, row.group)))


def _row(group: str, held: list[Pollination]) -> TakeRow:
    told = [
        (row.flowers, row.set)
        for row in held
        if row.flowers is not None and row.set is not None and row.set <= row.flowers
    ]
    return TakeRow(
        group,
        sum(flowers for flowers, _ in told),
        sum(fruits for _, fruits in told),
        len(told),
        len(held) - len(told),
        tuple(dict.fromkeys(row.cross for row in held)),
    )
