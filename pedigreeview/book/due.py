"""What is due on a day: covers, labels, harvests, seed to sow, planned crosses, missing scores.

Everything follows from the records and the windows of `season`; nothing is stored.  What is late
stays on the list until it is recorded or the season is over.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.recording.packets import cross_of_packet, keeping
from pedigreeview.book.recording.pollinations import COVER_OFF, RELABELLED
from pedigreeview.book.records import Plant, Pollination
from pedigreeview.book.season import (
    Basis,
    OwnDays,
    Window,
    cover_off_window,
    exact_day,
    flowering_window,
    harvest_window,
    relabel_window,
)

__all__ = ["KINDS_OF_WORK", "Due", "due", "fruits_hanging"]

KINDS_OF_WORK = (
    "pollinate", "cover_off", "count_fruits", "relabel", "harvest", "sow", "count_seedlings",
    "score",
)  # fmt: skip
"""What can be due."""

_OVER = 90
"""Days after the end of a window from which on the season counts as over."""
_UNCOVERED = ("", "none", "no", "open")
_ALIVE = ("", "growing", "kept")


@dataclass(frozen=True, slots=True)
class Due:
    """One thing to do.

    work : a word of `KINDS_OF_WORK`
    table, key : the record it is about ('score': the cross whose progeny lack it)
    words : one sentence
    first, last : days between which it is to be done; `first` is None where no day is known,
        `last` where the window stays open
    basis : what the days rest on; None where they need none
    plants : plants it is about, the seed parent first
    """

    work: str
    table: str
    key: str
    words: str
    first: datetime.date | None
    last: datetime.date | None
    basis: Basis | None
    plants: tuple[str, ...]

    def state(self, on: datetime.date) -> str:
        """'late', 'now', 'soon' or 'any time' on a day."""
        if self.first is None:
            return "any time"
        if on < self.first:
            return "soon"
        return "late" if self.last is not None and on > self.last else "now"


def due(book: Book, on: datetime.date, *, ahead: int = 14) -> tuple[Due, ...]:
    """Everything due on a day or within so many days after it; what ends first stands first.

    What has no day stands last.
    """
    until = on + datetime.timedelta(days=ahead)
    found = [
        *_pollinate(book, on),
        *_of_pollinations(book, on),
        *_sow(book, on),
        *_seedlings(book, on),
        *_scores(book, on),
    ]
    wanted = [one for one in found if one.first is None or one.first <= until]
    far = datetime.date.max
    order = {work: place for place, work in enumerate(KINDS_OF_WORK)}
    return tuple(
        sorted(
            wanted,
            key=lambda one: (
                one.first is None,
                one.last or one.first or far,
                one.first or far,
                order[one.work],
                one.key,
            ),
        )
    )


def _pair(book: Book, code: str) -> tuple[tuple[str, ...], str]:
    cross = book.crosses[code]
    seed, pollen = cross.seed_parent, cross.pollen_parent
    plants = tuple(dict.fromkeys(plant for plant in (seed, pollen) if plant))
    if seed and seed == pollen:
        return plants, f"{seed} ⊗"
    if cross.intended == "open" and not pollen:
        return plants, f"{seed} ○"
    return plants, f"{seed or 'unknown'} × {pollen or 'unknown'}"


def _of(code: str, pair: str) -> str:
    """The cross in words: its code with its parents, unless the code says them."""
    return code if pair in code else f"{code} ({pair})"


# Pollinations planned ---------------------------------------------------------------------------


def _pollinate(book: Book, on: datetime.date) -> Iterator[Due]:
    worked = {row.cross for row in book.pollinations.values()}
    for cross in book.crosses.values():
        if cross.state != "planned" or cross.cross in worked:
            continue
        plants, pair = _pair(book, cross.cross)
        held = [book.plants[code] for code in plants if code in book.plants]
        if any(plant.status not in _ALIVE and not book.is_pool(plant) for plant in held):
            # A check says that a parent is gone; nothing can be due of it.
            continue
        windows = [flowering_window(book, plant, on) for plant in held]
        seen = [window for window in windows if window is not None]
        if not seen or len(seen) < len(held):
            yield Due(
                "pollinate", "crosses", cross.cross,
                f"Pollinate {_of(cross.cross, pair)} when both are in flower.",
                None, None, seen[0].basis if seen else None, plants,
            )  # fmt: skip
            continue
        together = _together(seen)
        if together.last is not None and on > together.last:
            continue
        yield Due(
            "pollinate", "crosses", cross.cross, f"Pollinate {_of(cross.cross, pair)}.",
            together.first, together.last, together.basis, plants,
        )  # fmt: skip


def _together(windows: list[Window]) -> Window:
    """The days on which all flower."""
    later = max(windows, key=lambda window: window.first)
    ends = [window.last for window in windows if window.last is not None]
    return Window(later.first, min(ends) if ends else None, later.basis)


# From flower to fruit ---------------------------------------------------------------------------


def fruits_hanging(book: Book) -> dict[str, int | None]:
    """Fruits of each pollination that hang still; None where it is not known how many.

    Harvests are of a cross; their fruits are taken off its pollinations in the order of their
    dates.  A harvest without a count takes all of the pollinations before it.
    """
    found: dict[str, int | None] = {}
    by_cross: dict[str, list[Pollination]] = {}
    for row in book.pollinations.values():
        by_cross.setdefault(row.cross, []).append(row)
        took = row.set if row.set is not None else None
        found[row.pollination] = None if took is None else max(took - (row.dropped or 0), 0)
    for harvest in sorted(book.harvests.values(), key=lambda row: row.date):
        rows = sorted(by_cross.get(harvest.cross, ()), key=lambda row: row.date)
        left = harvest.fruits
        for row in rows:
            if harvest.date and row.date and row.date > harvest.date:
                continue
            hanging = found[row.pollination]
            if left is None:
                found[row.pollination] = 0
            elif hanging is None:
                # Not counted when they set: what is harvested from it is all that is known.
                found[row.pollination] = 0 if left > 0 else None
                left = 0
            else:
                taken = min(left, hanging)
                found[row.pollination] = hanging - taken
                left -= taken
    return found


def _of_pollinations(book: Book, on: datetime.date) -> Iterator[Due]:
    own = OwnDays(book)
    hanging = fruits_hanging(book)
    for row in book.pollinations.values():
        day = exact_day(row.date)
        if day is None or row.cross not in book.crosses or day > on:
            continue
        left = hanging[row.pollination]
        ripe = harvest_window(book, row, own)
        end = (ripe.last or ripe.first + datetime.timedelta(days=30)) if ripe is not None else None
        end = end or day + datetime.timedelta(days=150)
        if left == 0 or (on - end).days > _OVER:
            continue
        yield from _on_the_plant(book, row, left, end)
        if ripe is not None:
            plants, pair = _pair(book, row.cross)
            count = "the fruits" if left is None else f"{left} {'fruit' if left == 1 else 'fruits'}"
            words = f"Harvest {count} of {_of(row.cross, pair)}, pollinated on {row.date}."
            yield Due(
                "harvest", "pollinations", row.pollination, words, ripe.first, ripe.last,
                ripe.basis, plants,
            )  # fmt: skip


def _on_the_plant(
    book: Book, row: Pollination, left: int | None, end: datetime.date
) -> Iterator[Due]:
    plants, pair = _pair(book, row.cross)
    tag = f", tag {row.tag}" if row.tag else ""
    of = f"{_of(row.cross, pair)}{tag}, pollinated on {row.date}"
    off = cover_off_window(book, row)
    assert off is not None
    if row.cover.strip().casefold() not in _UNCOVERED and not row.extra.get(COVER_OFF):
        yield Due(
            "cover_off", "pollinations", row.pollination, f"Take the {row.cover} off {of}.",
            off.first, off.last, off.basis, plants,
        )  # fmt: skip
    if row.set is None:
        first = off.last or off.first
        yield Due(
            "count_fruits", "pollinations", row.pollination, f"Count the fruits set of {of}.",
            first, end, off.basis, plants,
        )  # fmt: skip
    label = relabel_window(book, row)
    if label is not None and left and not row.extra.get(RELABELLED):
        count = f"{left} {'fruit' if left == 1 else 'fruits'}"
        yield Due(
            "relabel", "pollinations", row.pollination, f"Label {count} of {of} for harvest.",
            label.first, end, label.basis, plants,
        )  # fmt: skip


# Seed -------------------------------------------------------------------------------------------


def _sow(book: Book, on: datetime.date) -> Iterator[Due]:
    for row in book.sowings.values():
        day = exact_day(row.date)
        if day is not None and day > on:
            what = f"the packet {row.packet}" if row.packet else row.sown_from
            words = f"Sow {what}, as planned for {row.date}."
            yield Due("sow", "sowings", row.sowing, words, day, day, None, ())
    sown = {row.packet for row in book.sowings.values()}
    for packet in book.packets.values():
        left = packet.left if packet.left is not None else packet.seeds
        if left == 0:
            continue
        keeps = keeping(book, packet)
        ends = keeps is not None and keeps.until <= on.year
        if packet.packet in sown and (keeps is None or keeps.until != on.year):
            # The rest of a packet is due in its last good year alone.
            continue
        cross = cross_of_packet(book, packet)
        plants = (packet.borne_on,) if packet.borne_on else ()
        count = "the seed" if left is None else f"{left} {'seed' if left == 1 else 'seeds'}"
        of = f" of {_of(cross, _pair(book, cross)[1])}" if cross in book.crosses else ""
        generation = f" ({packet.generation})" if packet.generation else ""
        basis, last = None, None
        state = "not sown yet" if packet.packet not in sown else "the rest"
        if keeps is not None:
            years = "1 year" if keeps.years == 1 else f"{keeps.years} years"
            basis = Basis(f"The seed keeps {years}, cool and dry.", keeps.source)
            until = f"good until {keeps.until}"
            if keeps.until < on.year:
                until = f"was good until {keeps.until}; test its germination"
            state = f"{state}, {until}"
            last = datetime.date(keeps.until, 12, 31) if ends else None
        first = datetime.date(on.year, 1, 1) if ends else None
        if last is not None and first is not None and last < first:
            first = datetime.date(last.year, 1, 1)
        yield Due(
            "sow", "packets", packet.packet,
            f"Sow {count}{of}{generation} in the packet {packet.packet}: {state}.",
            first, last, basis, plants,
        )  # fmt: skip


def _seedlings(book: Book, on: datetime.date) -> Iterator[Due]:
    """Sowings of the last months of which nobody wrote down how many came up."""
    for row in book.sowings.values():
        day = exact_day(row.date)
        if day is None or row.up is not None or not 0 <= (on - day).days <= _OVER:
            continue
        first = day + datetime.timedelta(days=14)
        words = f"Count the seedlings of the sowing {row.sowing} of {row.date}."
        basis = Basis(
            "Most seed is up two to four weeks after sowing.", "common practice, no source"
        )
        last = day + datetime.timedelta(days=28)
        yield Due("count_seedlings", "sowings", row.sowing, words, first, last, basis, ())


# Scores -----------------------------------------------------------------------------------------


def _scores(book: Book, on: datetime.date) -> Iterator[Due]:
    """Traits that half of a family's living plants have been scored for, and the rest not."""
    families: dict[str, list[Plant]] = {}
    for plant in book.plants.values():
        if plant.cross and plant.status in ("growing", "kept"):
            families.setdefault(plant.cross, []).append(plant)
    living = {plant.plant for plants in families.values() for plant in plants}
    scored: dict[str, set[str]] = {}
    for score in book.scores:
        if score.plant in living and score.value and score.of != "seed":
            scored.setdefault(score.plant, set()).add(score.trait)
    for cross, plants in families.items():
        if len(plants) < 2 or cross not in book.crosses:
            continue
        for trait in book.traits:
            lack = [p.plant for p in plants if trait not in scored.get(p.plant, ())]
            if not lack or 2 * len(lack) > len(plants):
                continue
            named = ", ".join(lack[:5]) + (", ..." if len(lack) > 5 else "")
            words = f"Score '{trait}' of {len(lack)} of {len(plants)} plants of {cross}: {named}."
            yield Due("score", "crosses", cross, words, None, None, None, tuple(lack))
