"""Checks of dates: what must have come first, and annuals used after their season."""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Iterator

from pedigreeview.book.book import Book
from pedigreeview.book.dates import earliest, is_date, latest, surely_before
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import SELF, Cross, Plant, Pollination

__all__ = ["bad_date_order", "used_after_life"]

_AUTUMN = 7
"""First month from which seed may be sown for a flower in the next calendar year: autumn in the
north, spring in the south."""


def _problem(plants: Iterable[str], message: str, *about: tuple[str, str]) -> Problem:
    return Problem(
        "bad_date_order",
        "error",
        tuple(dict.fromkeys(code for code in plants if code)),
        message,
        "Correct the date that is wrong, or the record that it is tied to.",
        about,
    )


def bad_date_order(book: Book) -> Iterator[Problem]:
    """Everything dated surely before what must have come first."""
    worked: dict[str, list[Pollination]] = {}
    for pollination in book.pollinations.values():
        worked.setdefault(pollination.cross, []).append(pollination)
    candidates = book.candidates()
    named: set[tuple[str, str]] = set()
    for cross in book.crosses.values():
        parents = (
            cross.seed_parent,
            cross.pollen_parent,
            *(item.candidate for item in candidates.get(cross.cross, ()) if item.candidate != SELF),
        )
        for code in dict.fromkeys(parents):
            parent = book.plants.get(code)
            if parent is not None and not book.is_pool(parent):
                found = _cross_before_parent(cross, parent, worked.get(cross.cross, []))
                if found is not None:
                    named.add((cross.cross, code))
                    yield found
    begun = {code: _begun(cross, worked.get(code, [])) for code, cross in book.crosses.items()}
    yield from _plants(book, begun, named)
    yield from _pollinations(book)
    yield from _seed(book, begun)
    yield from _rest(book)


def _cross_before_parent(cross: Cross, parent: Plant, worked: list[Pollination]) -> Problem | None:
    for date, words in [
        (cross.made_on, f"The cross {cross.cross} was made on"),
        *((p.date, f"The pollination {p.pollination} of {cross.cross} was on") for p in worked),
    ]:
        if surely_before(date, parent.sown):
            return _problem(
                (parent.plant,),
                f"{words} {date}, before its parent {parent.plant} was sown on {parent.sown}.",
                ("crosses", cross.cross),
            )
    return None


def _begun(cross: Cross, worked: list[Pollination]) -> str:
    """The first date on which the cross was worked, or '' where that is not sure."""
    known = [pollination.date for pollination in worked]
    if cross.made_on:
        known.append(cross.made_on)
    # A pollination without a date may have been the first.
    if not known or not all(is_date(date) for date in known if date != ""):
        return ""
    if "" in known and not cross.made_on:
        return ""
    return min((date for date in known if date), key=earliest)


def _plants(book: Book, begun: dict[str, str], named: set[tuple[str, str]]) -> Iterator[Problem]:
    findings, candidates = book.findings(), book.candidates()
    for plant in book.plants.values():
        if plant.cross and surely_before(plant.sown, begun.get(plant.cross, "")):
            yield _problem(
                (plant.plant,),
                f"{plant.plant} was sown on {plant.sown}, before its cross {plant.cross} was made "
                f"on {begun[plant.cross]}.",
                ("crosses", plant.cross),
            )
            continue
        cross = book.crosses.get(plant.cross)
        parents = [plant.source]
        if cross is not None:
            parents = [cross.seed_parent]
            if plant.plant not in findings:
                parents.append(cross.pollen_parent)
                # One candidate that is too young is that candidate's fault, not the plant's.
                sole = candidates.get(cross.cross, [])
                parents += [sole[0].candidate] if len(sole) == 1 else []
        for code in dict.fromkeys(parents):
            parent = book.plants.get(code)
            if parent is None or book.is_pool(parent) or (plant.cross, code) in named:
                continue
            if surely_before(plant.sown, parent.sown):
                what = "source" if code == plant.source else "parent"
                yield _problem(
                    (plant.plant, code),
                    f"{plant.plant} was sown on {plant.sown}, before its {what} {code} was sown on "
                    f"{parent.sown}.",
                )


def _parents(book: Book, cross: str) -> tuple[str, ...]:
    held = book.crosses.get(cross)
    return (held.seed_parent, held.pollen_parent) if held is not None else ()


def _pollinations(book: Book) -> Iterator[Problem]:
    for pollination in book.pollinations.values():
        what = f"The pollination {pollination.pollination} of the cross {pollination.cross}"
        parents = _parents(book, pollination.cross)
        if surely_before(pollination.date, pollination.emasculated_on):
            yield _problem(
                parents,
                f"{what} was on {pollination.date}, before its flowers were emasculated on "
                f"{pollination.emasculated_on}.",
                ("pollinations", pollination.pollination),
            )
        lot = book.pollen_lots.get(pollination.pollen_lot)
        if lot is not None and surely_before(pollination.date, lot.collected):
            yield _problem(
                parents,
                f"{what} was on {pollination.date}, before its pollen lot {lot.pollen_lot} was "
                f"collected on {lot.collected}.",
                ("pollinations", pollination.pollination),
            )


def _seed(book: Book, begun: dict[str, str]) -> Iterator[Problem]:
    for harvest in book.harvests.values():
        first = begun.get(harvest.cross, "")
        if surely_before(harvest.date, first):
            yield _problem(
                _parents(book, harvest.cross),
                f"The harvest {harvest.harvest} of the cross {harvest.cross} was on "
                f"{harvest.date}, before the cross was made on {first}.",
                ("harvests", harvest.harvest),
            )
    for sowing in book.sowings.values():
        packet = book.packets.get(sowing.packet)
        harvest_of = book.harvests.get(packet.harvest) if packet is not None else None
        if harvest_of is not None and surely_before(sowing.date, harvest_of.date):
            yield _problem(
                _parents(book, harvest_of.cross),
                f"The sowing {sowing.sowing} was on {sowing.date}, before its seed was harvested "
                f"on {harvest_of.date} ({harvest_of.harvest}).",
                ("sowings", sowing.sowing),
            )
        elif surely_before(sowing.date, begun.get(sowing.sown_from, "")):
            yield _problem(
                _parents(book, sowing.sown_from),
                f"The sowing {sowing.sowing} was on {sowing.date}, before its cross "
                f"{sowing.sown_from} was made on {begun[sowing.sown_from]}.",
                ("sowings", sowing.sowing),
            )


def _rest(book: Book) -> Iterator[Problem]:
    for bloom in book.blooms:
        if surely_before(bloom.last_flower, bloom.first_flower):
            yield _problem(
                (bloom.plant,),
                f"The last flower of {bloom.plant} is dated {bloom.last_flower}, before its first "
                f"on {bloom.first_flower}.",
            )
    early: dict[str, str] = {}
    for score in book.scores:
        plant = book.plants.get(score.plant)
        if plant is None or book.is_pool(plant) or plant.raised == "cutting_of":
            continue
        if surely_before(score.date, plant.sown):
            early.setdefault(score.plant, score.date)
    for code, date in early.items():
        yield _problem(
            (code,),
            f"{code} has a score of {date}, before it was sown on {book.plants[code].sown}.",
        )


def used_after_life(book: Book) -> Iterator[Problem]:
    """Single plants of an annual crop that are parents in a season after their own.

    Pools are sown anew each year and are exempt; so is pollen that was stored.  Sown from July on,
    or with a date that may be so late, a plant may flower in the next calendar year.
    """
    candidates = book.candidates()
    worked: dict[str, list[Pollination]] = {}
    for pollination in book.pollinations.values():
        worked.setdefault(pollination.cross, []).append(pollination)
    for cross in book.crosses.values():
        days = [
            (pollination.date, bool(pollination.pollen_lot))
            for pollination in worked.get(cross.cross, ())
        ]
        days.append((cross.made_on, any(stored for _, stored in days)))
        fathers = (
            cross.pollen_parent,
            *(item.candidate for item in candidates.get(cross.cross, ())),
        )
        for code in dict.fromkeys((cross.seed_parent, *fathers)):
            plant = book.plants.get(code)
            if plant is None:
                continue
            end = _end_of_life(book, plant)
            if end is None:
                continue
            for date, stored in days:
                if (stored and code != cross.seed_parent) or not is_date(date):
                    continue
                if earliest(date) > end:
                    yield Problem(
                        "used_after_life",
                        "warning",
                        (code,),
                        f"{code}, an annual sown on {plant.sown}, is a parent of the cross "
                        f"{cross.cross} made on {date}.",
                        "Correct a date or the parent, or record the cutting or the seed that kept "
                        "it.",
                        (("crosses", cross.cross),),
                    )
                    break


def _end_of_life(book: Book, plant: Plant) -> datetime.date | None:
    """Last day on which an annual can have flowered; None where that is not known."""
    facts = book.crop_facts(plant)
    if facts is None or book.is_pool(plant) or not is_date(plant.sown):
        return None
    if facts.facts.get("life", {}).get("value") != "annual":
        return None
    sown = latest(plant.sown)
    return datetime.date(min(sown.year + (sown.month >= _AUTUMN), 9999), 12, 31)
