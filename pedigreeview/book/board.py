"""Crosses as a board: from planned to raised, each in the furthest stage that the records show."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.reciprocal_counts import RecordsByCross
from pedigreeview.book.records import Cross, Pollination

__all__ = ["STAGES", "Board", "BoardCard", "board", "seasons_of_crosses"]

STAGES = ("planned", "pollinated", "set", "harvested", "packed", "sown", "raised")
"""The stages of a cross, from the intention to its plants."""


@dataclass(frozen=True, slots=True)
class BoardCard:
    """One cross on the board; counts are None where nothing was written down.

    stage : a word of `STAGES`
    ended : '' or why nothing more can come of it: 'skipped', 'no take', 'dropped'
    year : of its making, '' where it is not known
    left : seeds left in its packets
    """

    cross: str
    seed_parent: str
    pollen_parent: str
    stage: str
    ended: str
    year: str
    flowers: int | None
    fruits_set: int | None
    seeds: int | None
    packets: int
    left: int | None
    sown: int | None
    up: int | None
    plants: int


@dataclass(frozen=True, slots=True)
class Board:
    """Cards by stage, in the book's order, and the crosses that came to nothing."""

    stages: tuple[tuple[str, tuple[BoardCard, ...]], ...]
    ended: tuple[BoardCard, ...]

    def count(self, stage: str) -> int:
        """How many crosses stand in a stage."""
        return len(dict(self.stages)[stage])


def _year(cross: Cross, rows: Iterable[Pollination]) -> str:
    dates = [cross.made_on, *(row.date for row in rows)]
    return min((date[:4] for date in dates if date), default="")


def seasons_of_crosses(book: Book) -> tuple[str, ...]:
    """The years in which crosses were made, the latest first."""
    worked = _pollinations(book)
    years = {_year(cross, worked.get(code, ())) for code, cross in book.crosses.items()}
    return tuple(sorted(years - {""}, reverse=True))


def _pollinations(book: Book) -> dict[str, list[Pollination]]:
    found: dict[str, list[Pollination]] = {}
    for row in book.pollinations.values():
        found.setdefault(row.cross, []).append(row)
    return found


def board(book: Book, *, year: str = "") -> Board:
    """The board of all crosses, or of those made in a year and those still planned."""
    worked = _pollinations(book)
    harvests: dict[str, set[str]] = {}
    for harvest in book.harvests.values():
        harvests.setdefault(harvest.cross, set()).add(harvest.harvest)
    cross_of = {code: cross for cross, codes in harvests.items() for code in codes}
    packets: dict[str, list[int | None]] = {}
    for packet in book.packets.values():
        if packet.harvest in cross_of:
            left = packet.left if packet.left is not None else packet.seeds
            packets.setdefault(cross_of[packet.harvest], []).append(left)
    sown: set[str] = set()
    for sowing in book.sowings.values():
        held = book.packets.get(sowing.packet)
        sown.add(cross_of.get(held.harvest, "") if held is not None else sowing.sown_from)
    counts = RecordsByCross(book)
    cards: dict[str, list[BoardCard]] = {stage: [] for stage in STAGES}
    ended: list[BoardCard] = []
    for code, cross in book.crosses.items():
        rows = worked.get(code, [])
        made_in = _year(cross, rows)
        if year and made_in != year and not (cross.state == "planned" and not made_in):
            continue
        total = counts.direction([code])
        known = [left for left in packets.get(code, []) if left is not None]
        stage = "planned"
        for name, reached in (
            ("pollinated", bool(rows) or cross.state == "made"),
            ("set", bool(total.fruits_set)),
            ("harvested", code in harvests),
            ("packed", code in packets),
            ("sown", code in sown),
            ("raised", bool(total.progeny)),
        ):
            if reached:
                stage = name
        card = BoardCard(
            code, cross.seed_parent, cross.pollen_parent, stage, _ended(cross, rows, stage),
            made_in, total.flowers, total.fruits_set, total.seeds, len(packets.get(code, [])),
            sum(known) if known else None, total.sown, total.up, len(total.progeny),
        )  # fmt: skip
        if card.ended:
            ended.append(card)
        else:
            cards[stage].append(card)
    return Board(tuple((stage, tuple(cards[stage])) for stage in STAGES), tuple(ended))


def _ended(cross: Cross, rows: list[Pollination], stage: str) -> str:
    if cross.state == "skipped":
        return "skipped"
    if stage not in ("pollinated", "set") or not rows or any(row.set is None for row in rows):
        return ""
    took = sum(row.set or 0 for row in rows)
    if took == 0:
        return "no take"
    lost = sum(row.dropped or 0 for row in rows)
    return "dropped" if lost >= took else ""
