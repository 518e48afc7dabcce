"""Checks of counts: fruits against flowers, seedlings against seeds."""

from __future__ import annotations

from collections.abc import Iterator

from pedigreeview.book.book import Book
from pedigreeview.book.problems import Problem, Severity
from pedigreeview.book.records import Pollination

__all__ = ["count_problems"]


def count_problems(book: Book) -> Iterator[Problem]:
    """Counts that cannot both be right."""
    yield from _fruits(book)
    yield from _harvested(book)
    for sowing in book.sowings.values():
        plants = _of_cross(book, sowing.sown_from)
        for less, words_less, more, words_more in (
            (sowing.seeds, "seeds sown", sowing.up, "up"),
            (sowing.up, "up", sowing.kept, "kept"),
        ):
            if less is not None and more is not None and more > less:
                yield _problem(
                    "more_up_than_sown",
                    "error",
                    plants,
                    f"The sowing {sowing.sowing} has {less} {words_less} but {more} {words_more}.",
                    ("sowings", sowing.sowing),
                )
    sown: dict[str, int] = {}
    for sowing in book.sowings.values():
        sown[sowing.packet] = sown.get(sowing.packet, 0) + (sowing.seeds or 0)
    for packet in book.packets.values():
        if packet.seeds is not None and sown.get(packet.packet, 0) > packet.seeds:
            yield _problem(
                "more_sown_than_held",
                "warning",
                (packet.borne_on,) if packet.borne_on else (),
                f"The packet {packet.packet} held {packet.seeds} seeds but "
                f"{sown[packet.packet]} were sown from it.",
                ("packets", packet.packet),
            )
        if packet.seeds is not None and packet.left is not None and packet.left > packet.seeds:
            yield _problem(
                "more_left_than_seeds",
                "error",
                (packet.borne_on,) if packet.borne_on else (),
                f"The packet {packet.packet} held {packet.seeds} seeds but has {packet.left} left.",
                ("packets", packet.packet),
            )


def _problem(
    kind: str,
    severity: Severity,
    plants: tuple[str, ...],
    message: str,
    about: tuple[str, str] | None = None,
) -> Problem:
    tied = (about,) if about is not None else ()
    return Problem(kind, severity, plants, message, "Correct the count that is wrong.", tied)


def _of_cross(book: Book, code: str) -> tuple[str, ...]:
    cross = book.crosses.get(code)
    if cross is None:
        return (code,) if code in book.plants else ()
    return tuple(dict.fromkeys(c for c in (cross.seed_parent, cross.pollen_parent) if c))


def _fruits(book: Book) -> Iterator[Problem]:
    for pollination in book.pollinations.values():
        for count, words in ((pollination.set, "set"), (pollination.dropped, "dropped")):
            if (
                count is not None
                and pollination.flowers is not None
                and count > pollination.flowers
            ):
                yield _problem(
                    "more_fruits_than_flowers",
                    "error",
                    _of_cross(book, pollination.cross),
                    f"The pollination {pollination.pollination} of the cross {pollination.cross} "
                    f"has {count} fruits {words} of {pollination.flowers} flowers.",
                    ("pollinations", pollination.pollination),
                )


def _harvested(book: Book) -> Iterator[Problem]:
    fruits: dict[str, int] = {}
    for harvest in book.harvests.values():
        fruits[harvest.cross] = fruits.get(harvest.cross, 0) + (harvest.fruits or 0)
    worked: dict[str, list[Pollination]] = {}
    for pollination in book.pollinations.values():
        worked.setdefault(pollination.cross, []).append(pollination)
    for cross, rows in worked.items():
        counts = [row.flowers for row in rows if row.flowers is not None]
        # A pollination without a count may account for any number of fruits.
        if len(counts) == len(rows) and fruits.get(cross, 0) > sum(counts):
            yield _problem(
                "more_fruits_than_flowers",
                "warning",
                _of_cross(book, cross),
                f"The cross {cross} has {fruits[cross]} fruits harvested of {sum(counts)} flowers "
                "pollinated.",
                ("crosses", cross),
            )
