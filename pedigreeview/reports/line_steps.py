"""The way of a line, step by step: what was worked, grown, kept and let go, and why.

A step is one cross (or one cutting, doubling, saving of seed) behind the line, oldest first.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.reciprocal_counts import DirectionCounts, RecordsByCross
from pedigreeview.book.records import Harvest, Pollination, Sowing
from pedigreeview.network.parentage import Parents
from pedigreeview.planning.observations import is_of_words, numbers_of, scored_traits, words_of
from pedigreeview.reports.report_model import Item, Section, Text
from pedigreeview.reports.report_parts import Notes, f_text, section, table
from pedigreeview.reports.report_words import (
    counted,
    cross_signs,
    crossed_words,
    listed,
    named,
    span,
    status_words,
    tr,
)

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Step", "fixing_section", "generations_section", "line_steps", "selection_section"]

_MOST = 300
"""Steps that are told one by one; of more the last."""
_WHYS = 6
"""Sibs that were let go whose reason is told, for each step."""


@dataclass(frozen=True, slots=True)
class Step:
    """One cross, or one plant that came from another without one.

    plants : those of it that the line goes through
    raised : all single plants that were raised from the cross, the line's own among them
    """

    plants: tuple[str, ...]
    held: Parents
    raised: tuple[str, ...]

    @property
    def cross(self) -> str:
        """Code of the cross; '' where there was none."""
        return self.held.cross


def line_steps(net: PedigreeNetwork, code: str) -> list[Step]:
    """The steps from the founders to a plant, parents before progeny."""
    behind = net.ancestors(code) | {code}
    groups: dict[str, list[str]] = {}
    for plant in net.codes if len(behind) * 4 > len(net) else _in_order(net, behind):
        if plant in behind and net.parents(plant).raised != "founder":
            # A blank can stand in no code, so a cross is never taken for a plant.
            key = net.parents(plant).cross
            groups.setdefault(f"cross {key}" if key else f"plant {plant}", []).append(plant)
    found = []
    for plants in groups.values():
        held = net.parents(plants[0])
        grown = net.progeny_of_cross(held.cross) if held.cross else tuple(plants)
        single = tuple(p for p in grown if not net.book.is_pool(net.book.plants[p]))
        found.append(Step(tuple(plants), held, single))
    return found


def _in_order(net: PedigreeNetwork, plants: set[str]) -> list[str]:
    place = {code: at for at, code in enumerate(net.codes)}
    return sorted(plants, key=place.__getitem__)


@dataclass(frozen=True, slots=True)
class _Work:
    """What was done for a cross."""

    pollinations: tuple[Pollination, ...]
    harvests: tuple[Harvest, ...]
    sowings: tuple[Sowing, ...]


def _work_of(book: Book, crosses: set[str]) -> dict[str, _Work]:
    from pedigreeview.book.recording.packets import cross_of_packet

    pollinations: dict[str, list[Pollination]] = {}
    harvests: dict[str, list[Harvest]] = {}
    sowings: dict[str, list[Sowing]] = {}
    for row in book.pollinations.values():
        pollinations.setdefault(row.cross, []).append(row)
    for harvest in book.harvests.values():
        harvests.setdefault(harvest.cross, []).append(harvest)
    for sowing in book.sowings.values():
        packet = book.packets.get(sowing.packet)
        of = cross_of_packet(book, packet) if packet is not None else sowing.sown_from
        sowings.setdefault(of, []).append(sowing)
    return {
        cross: _Work(
            tuple(pollinations.get(cross, ())),
            tuple(harvests.get(cross, ())),
            tuple(sowings.get(cross, ())),
        )
        for cross in crosses
    }


def generations_section(net: PedigreeNetwork, steps: Sequence[Step]) -> Section | None:
    """Every generation on the way: a table of counts, then each step in sentences."""
    if not steps:
        return None
    book = net.book
    shown = list(steps)[-_MOST:]
    work = _work_of(book, {step.cross for step in shown if step.cross})
    records = RecordsByCross(book)
    rows = []
    for step in shown:
        counts = records.direction((step.cross,)) if step.cross else None
        status = Counter(book.plants[plant].status for plant in step.raised)
        rows.append(
            (
                tr(net.generation_name(step.plants[0]) or "") or _ordinal(net, step.plants[0]),
                listed(step.plants, 4),
                cross_signs(book, step.held),
                _year(book, step, work),
                _number(counts.flowers if counts else None),
                _number(_fruits(counts)),
                _number(counts.seeds if counts else None),
                _number(len(step.raised) or None) if step.cross else "",
                _number(status["kept"] or None) if step.cross else "",
                _number(status["culled"] or None) if step.cross else "",
            )
        )
    headings = (
        tr("Generation"), tr("Plant"), tr("From"), tr("Year"), tr("Flowers"), tr("Fruits"),
        tr("Seeds"), tr("Plants"), tr("Kept"), tr("Culled"),
    )  # fmt: skip
    items: list[Item | None] = [table(headings, rows, (4, 5, 6, 7, 8, 9))]
    if len(shown) < len(steps):
        items.append(
            Text(
                counted(
                    len(steps) - len(shown),
                    tr("{} earlier step is in the book and is not told here."),
                    tr("{} earlier steps are in the book and are not told here."),
                ),
                soft=True,
            )
        )
    notes = Notes(book)
    for step in shown:
        items += _told(net, step, work.get(step.cross), notes)
    return section("generations", items)


def _ordinal(net: PedigreeNetwork, code: str) -> str:
    number = net.generation(code)
    return "" if number is None else tr("generation {}").format(number)


def _fruits(counts: DirectionCounts | None) -> int | None:
    """Fruits set, or those harvested where nobody counted before."""
    if counts is None:
        return None
    return counts.fruits if counts.fruits_set is None else counts.fruits_set


def _number(value: int | None) -> str:
    return "" if value is None else f"{value:,}"


def _year(book: Book, step: Step, work: dict[str, _Work]) -> str:
    dates: list[str] = []
    if step.cross:
        held = work[step.cross]
        dates = [row.date for row in held.pollinations if row.date]
        made = book.crosses[step.cross].made_on
        dates = dates or ([made] if made else []) or [r.date for r in held.harvests if r.date]
    if not dates:
        dates = [book.plants[plant].sown for plant in step.plants if book.plants[plant].sown]
    return span(date[:4] for date in dates)


def _told(net: PedigreeNetwork, step: Step, work: _Work | None, notes: Notes) -> list[Item]:
    """One step in sentences."""
    book = net.book
    plants = listed(step.plants, 8)
    generation = tr(net.generation_name(step.plants[0]) or "")
    if step.cross and generation:
        head = tr("{}, {}, from {}").format(plants, generation, step.cross)
    elif step.cross:
        head = tr("{}, from {}").format(plants, step.cross)
    else:
        head = plants
    said = [crossed_words(book, step.held)]
    if step.held.selfings:
        said.append(
            counted(
                step.held.selfings,
                tr("Then {} selfing with no plant recorded in between."),
                tr("Then {} selfings with no plants recorded in between."),
            )
        )
    if work is not None:
        said += _worked(book, step, work)
    said += _fates(book, step)
    items: list[Item] = [Text(head, strong=True), Text(" ".join(part for part in said if part))]
    remarks = _remarks(book, step, work, notes)
    if remarks:
        items.append(Text(tr("On record: {}").format(" ".join(map(_ended, remarks)))))
    return items


def _worked(book: Book, step: Step, work: _Work) -> list[str]:
    found = []
    if work.pollinations:
        flowers = [row.flowers for row in work.pollinations if row.flowers is not None]
        fruits = [row.set for row in work.pollinations if row.set is not None]
        dropped = [row.dropped for row in work.pollinations if row.dropped]
        covers = list(dict.fromkeys(row.cover for row in work.pollinations if row.cover))
        parts = []
        if flowers:
            parts.append(counted(sum(flowers), tr("{} flower"), tr("{} flowers")))
        if covers:
            parts.append(tr("cover: {}").format(", ".join(covers)))
        if fruits:
            parts.append(counted(sum(fruits), tr("{} fruit set"), tr("{} fruits set")))
        if dropped:
            parts.append(tr("{} dropped").format(sum(dropped)))
        when = span(row.date for row in work.pollinations)
        found.append(_sentence(tr("Pollinated"), when, parts))
    elif book.crosses[step.cross].made_on:
        found.append(tr("Made {}.").format(book.crosses[step.cross].made_on))
    if work.harvests:
        fruits = [row.fruits for row in work.harvests if row.fruits is not None]
        seeds = [row.seeds for row in work.harvests if row.seeds is not None]
        parts = []
        if fruits:
            parts.append(counted(sum(fruits), tr("{} fruit"), tr("{} fruits")))
        if seeds:
            parts.append(counted(sum(seeds), tr("1 seed"), tr("{} seeds")))
        found.append(_sentence(tr("Harvested"), span(r.date for r in work.harvests), parts))
    if work.sowings:
        sown = [row.seeds for row in work.sowings if row.seeds is not None]
        up = [row.up for row in work.sowings if row.up is not None]
        parts = []
        if sown:
            parts.append(counted(sum(sown), tr("1 seed"), tr("{} seeds")))
        if up:
            parts.append(tr("{} came up").format(sum(up)))
        found.append(_sentence(tr("Sown"), span(row.date for row in work.sowings), parts))
    return found


def _sentence(what: str, when: str, parts: Sequence[str]) -> str:
    start = tr("{} {}").format(what, when) if when else what
    if not parts:
        return tr("{}.").format(start)
    return tr("{}: {}.").format(start, ", ".join(parts))


def _fates(book: Book, step: Step) -> list[str]:
    if not step.cross or not step.raised:
        return []
    status = Counter(book.plants[plant].status for plant in step.raised)
    parts = [
        f"{status[word]:,} {status_words(word)}"
        for word in ("kept", "growing", "finished", "culled", "lost")
        if status[word]
    ]
    number = counted(len(step.raised), tr("{} plant is on record"), tr("{} plants are on record"))
    found = [tr("{}: {}.").format(number, ", ".join(parts)) if parts else tr("{}.").format(number)]
    others = [p for p in step.raised if book.plants[p].status == "kept" and p not in step.plants]
    if others:
        found.append(tr("Kept beside it: {}.").format(listed(others)))
    return found


def _remarks(book: Book, step: Step, work: _Work | None, notes: Notes) -> list[str]:
    """What is written about the step, the plants of the line and the sibs that were let go."""
    found: list[str] = []
    if step.cross:
        found += notes.of_cross(step.cross)
    if work is not None:
        rows: list[Pollination | Harvest | Sowing] = [
            *work.pollinations,
            *work.harvests,
            *work.sowings,
        ]
        found += [
            tr("{}: {}").format(row.date, row.note) if row.date else row.note
            for row in rows
            if row.note
        ]
    for plant in step.plants:
        found += [tr("{}: {}").format(plant, text) for text in notes.of_plant(plant)]
    whys = []
    for plant in step.raised:
        if plant not in step.plants and book.plants[plant].status in ("culled", "lost"):
            why = notes.of_plant(plant)
            if why:
                word = status_words(book.plants[plant].status)
                whys.append(tr("{} ({}): {}").format(plant, word, " ".join(map(_ended, why))))
    found += whys[:_WHYS]
    if len(whys) > _WHYS:
        found.append(
            tr("Reasons are on record for {} more that were let go.").format(len(whys) - _WHYS)
        )
    return found


def _ended(text: str) -> str:
    return text if text.rstrip().endswith((".", "!", "?")) else f"{text.rstrip()}."


# Selection ----------------------------------------------------------------------------------------


def selection_section(net: PedigreeNetwork, steps: Sequence[Step]) -> Section | None:
    """What each plant of the line was scored beside its sibs: what it was chosen on."""
    book = net.book
    rows = []
    for step in list(steps)[-_MOST:]:
        sibs = [plant for plant in step.raised if plant not in step.plants]
        for plant in step.plants:
            if sibs and plant in step.raised:
                rows += _against(book, plant, step.raised, len(step.raised))
    headings = (tr("Chosen"), tr("Out of"), tr("Trait"), tr("It had"), tr("All of its cross had"))
    made = table(headings, rows, (1,))
    if made is None:
        return None
    said = tr(
        "Each plant of the line beside all plants of its cross, itself among them, in every trait "
        "that was scored on it. A mean is over the plants scored."
    )
    return section("selection", [Text(said), made])


def _against(book: Book, plant: str, raised: Sequence[str], number: int) -> list[tuple[str, ...]]:
    found: list[tuple[str, ...]] = []
    for trait in scored_traits(book, [plant]):
        record = book.traits.get(trait)
        unit = f" {record.unit}" if record is not None and record.unit else ""
        if is_of_words(record):
            words = words_of(book, trait, raised)
            if len(words) < 2 or plant not in words:
                continue
            counts = Counter(words.values()).most_common()
            own, every = words[plant], ", ".join(f"{n} {word}" for word, n in counts)
        else:
            values = numbers_of(book, trait, raised)
            if len(values) < 2 or plant not in values:
                continue
            means = [sum(held) / len(held) for held in values.values()]
            mine = values[plant]
            own = f"{sum(mine) / len(mine):.4g}{unit}"
            every = tr("mean {} of {} plants, {} to {}").format(
                f"{sum(means) / len(means):.4g}", len(means), f"{min(means):.4g}",
                f"{max(means):.4g}",
            )  # fmt: skip
        first = not found
        found.append((plant if first else "", _number(number) if first else "", trait, own, every))
    return found


# Fixing -------------------------------------------------------------------------------------------


def fixing_section(net: PedigreeNetwork, code: str, steps: Sequence[Step]) -> Section | None:
    """F by generation, and how much selfing is left until the line is all but fixed."""
    book = net.book
    rows = []
    for step in list(steps)[-_MOST:]:
        for plant in step.plants:
            left = ""
            if plant not in net.withheld:
                left = f"{100 * (1 - net.inbreeding(plant)):.4g}%"
            rows.append(
                (
                    tr(net.generation_name(plant) or "") or _ordinal(net, plant),
                    plant,
                    f_text(net, plant),
                    left,
                )
            )
    headings = (
        tr("Generation"), tr("Plant"), tr("Inbreeding F"),
        tr("Still unlike by descent (1 − F)"),
    )  # fmt: skip
    items: list[Item | None] = [table(headings, rows, (2, 3))]
    if code not in net.withheld and not book.is_pool(book.plants[code]):
        items.append(Text(tr(net.inbreeding_words(code))))
    oldest = net.cytoplasm(code)
    if oldest:
        items.append(Text(tr("Its cytoplasm is that of {}.").format(named(book, oldest))))
    return section("fixing", items)
