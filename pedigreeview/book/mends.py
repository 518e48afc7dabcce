"""One-click mends of what the checks name, and 'this is right' that is remembered.

A mend is offered, never made silently: it says in one sentence what it would change, and its
function changes it within an edit.  Where only the person can know, there is none.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.checks import acceptance_keys, without_accepted
from pedigreeview.book.dates import is_date, latest, surely_before
from pedigreeview.book.look_alikes import sight
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import AcceptedCheck, Plant, Record

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["Mend", "accept", "accepted", "mends", "take_back"]


@dataclass(frozen=True, slots=True)
class Mend:
    """One way to mend a problem.

    words : what it would do, as a command: 'Skip the cross 24-03.'
    make : does it within an edit; a Fault says why it cannot be done after all
    """

    words: str
    make: Callable[[Edit], object]


def accepted(book: Book, problem: Problem) -> bool:
    """Whether the person has called this problem right."""
    return not without_accepted(book, [problem])


def accept(edit: Edit, problem: Problem, why: str = "", *, date: str = "") -> AcceptedCheck:
    """Remember that what the problem names is right; the same is never remembered twice."""
    keys = acceptance_keys(problem)
    for row in edit.book.accepted_checks:
        if row.kind == problem.kind and row.keys == keys:
            updated = edit.update(row, date=date or row.date, why=why.strip() or row.why)
            assert isinstance(updated, AcceptedCheck)
            return updated
    row = AcceptedCheck(problem.kind, keys, date, why.strip())
    edit.add(row)
    return row


def take_back(edit: Edit, check: AcceptedCheck) -> None:
    """Forget that something was called right, so that the check names it again."""
    edit.remove(check)


def mends(book: Book, problem: Problem, *, today: datetime.date | None = None) -> tuple[Mend, ...]:
    """The mends that can be offered for a problem; often none.

    today : the day that dated notes get; None leaves them undated
    """
    offer = _OFFERS.get(problem.kind)
    date = today.isoformat() if today is not None else ""
    return tuple(offer(book, problem, date)) if offer is not None else ()


def _records(book: Book, problem: Problem, table: str) -> list[Record]:
    held = getattr(book, table)
    return [held[key] for name, key in problem.about if name == table and key in held]


def _plants(book: Book, problem: Problem) -> list[Plant]:
    return [book.plants[code] for code in problem.plants if code in book.plants]


def _set(record: Record, **values: object) -> Callable[[Edit], object]:
    from pedigreeview.book.recording.correcting import amend

    return lambda edit: amend(edit, record, **values)


# Codes ------------------------------------------------------------------------------------------


def _near_codes(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    from pedigreeview.book.recording.correcting import repoint

    held = _plants(book, problem)
    for gone in held:
        for kept in held:
            if gone is kept or not (_is_bare(gone) or _says_less(gone, kept)):
                continue
            yield Mend(
                f"Put '{kept.plant}' in the place of '{gone.plant}' everywhere.",
                lambda edit, a=gone.plant, b=kept.plant: repoint(edit, a, b, date=date),  # type: ignore[misc]
            )
    for plant in held:
        plain = _plain_code(plant.plant)
        if plain != plant.plant and plain not in book.plants and plain not in book.crosses:
            yield Mend(
                f"Write the code '{plant.plant}' as '{plain}'.",
                lambda edit, a=plant.plant, b=plain: edit.rename(edit.book.plants[a], b),  # type: ignore[misc]
            )


def _is_bare(plant: Plant) -> bool:
    return plant == Plant(plant.plant)


def _says_less(plant: Plant, other: Plant) -> bool:
    """Whether nothing is lost when the other takes its place: no parents and no other name."""
    if plant.cross or plant.source:
        return False
    return not plant.name or sight(plant.name) == sight(other.name)


def _plain_code(code: str) -> str:
    """The code without signs that are not seen, with plain dashes and single blanks."""
    import unicodedata

    seen = "".join(sign for sign in code if unicodedata.category(sign) not in ("Cf", "Cc"))
    for dash in "\u2010\u2011\u2012\u2013\u2014\u2212":
        seen = seen.replace(dash, "-")
    return " ".join(seen.split())


def _near_keys(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    keys = [key for table, key in problem.about if table == "traits" and key in book.traits]
    for gone in keys:
        for kept in keys:
            if gone != kept and book.traits[gone].type == book.traits[kept].type:
                yield Mend(
                    f"Put the scores of '{gone}' to '{kept}'.",
                    lambda edit, a=gone, b=kept: _merge_traits(edit, a, b),  # type: ignore[misc]
                )


def _merge_traits(edit: Edit, gone: str, kept: str) -> None:
    for score in [row for row in edit.book.scores if row.trait == gone]:
        edit.update(score, trait=kept)
    for note in [row for row in edit.book.notes if row.about == f"trait {gone}"]:
        edit.update(note, about=f"trait {kept}")
    edit.remove(edit.book.traits[gone])


def _unknown(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    from pedigreeview.book.recording.deleting import give_progeny_unknown_parent

    for plant in _plants(book, problem):
        yield Mend(
            f"Make the parent '{plant.plant}' not known wherever it stands.",
            lambda edit, a=plant.plant: give_progeny_unknown_parent(edit, a, date=date),  # type: ignore[misc]
        )


# Dates ------------------------------------------------------------------------------------------


def _dates(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    for pollination in _records(book, problem, "pollinations"):
        worked, cut = pollination.date, pollination.emasculated_on  # type: ignore[attr-defined]
        if surely_before(worked, cut):
            key = pollination.pollination  # type: ignore[attr-defined]
            yield Mend(
                f"Exchange the two dates of {key}: emasculated {worked}, pollinated {cut}.",
                _set(pollination, date=cut, emasculated_on=worked),
            )
    for table in ("harvests", "sowings"):
        for record in _records(book, problem, table):
            written = str(record.date)  # type: ignore[attr-defined]
            later = _a_year_on(written)
            if later:
                what = table.removesuffix("s")
                key = str(getattr(record, record.KEY[0]))
                yield Mend(f"Date the {what} {key} a year on, {later}.", _set(record, date=later))
    for code in problem.plants:
        for bloom in book.blooms:
            first, last = bloom.first_flower, bloom.last_flower
            if bloom.plant == code and surely_before(last, first):
                yield Mend(
                    f"Exchange the two days of the bloom of {code}: {last} to {first}.",
                    _set(bloom, first_flower=last, last_flower=first),
                )


def _a_year_on(date: str) -> str:
    if not is_date(date):
        return ""
    later = f"{int(date[:4]) + 1:04d}{date[4:]}"
    return later if is_date(later) else ""


def _flower(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    for code in problem.plants:
        for cross in _records(book, problem, "crosses"):
            key = str(getattr(cross, "cross", ""))
            days = [row.date for row in book.pollinations.values() if row.cross == key]
            days = [day for day in days or [str(getattr(cross, "made_on", ""))] if is_date(day)]
            for bloom in book.blooms:
                if bloom.plant != code:
                    continue
                for day in days:
                    if bloom.first_flower[:4] != day[:4]:
                        continue
                    if surely_before(day, bloom.first_flower):
                        yield Mend(
                            f"Set the first flower of {code} to {day}.",
                            _set(bloom, first_flower=day),
                        )
                    elif bloom.last_flower and surely_before(bloom.last_flower, day):
                        yield Mend(
                            f"Set the last flower of {code} to {day}.",
                            _set(bloom, last_flower=day),
                        )


def _after_life(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    """An annual sown a year later than was written, where that is enough to make it right."""
    for plant in _plants(book, problem):
        for cross in _records(book, problem, "crosses"):
            made = str(getattr(cross, "made_on", ""))
            if not is_date(made) or not is_date(plant.sown):
                continue
            sown = f"{latest(made).year:04d}{plant.sown[4:]}"
            if is_date(sown) and not surely_before(made, sown):
                yield Mend(f"Set the sowing of {plant.plant} to {sown}.", _set(plant, sown=sown))


# Parents ----------------------------------------------------------------------------------------


def _crops(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    held = _plants(book, problem)
    for plant in held:
        for other in held:
            crop = book.crop(other)
            if plant is not other and crop and not (plant.cross or plant.source):
                yield Mend(f"Set the crop of {plant.plant} to {crop}.", _set(plant, crop=crop))


def _culled(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    from pedigreeview.book.recording.crosses import set_cross_state
    from pedigreeview.book.recording.plants import set_status

    for cross in _records(book, problem, "crosses"):
        key = str(getattr(cross, "cross", ""))
        if problem.kind == "culled_before_use":
            yield Mend(
                f"Skip the cross {key}.",
                lambda edit, a=key: set_cross_state(edit, [a], "skipped"),  # type: ignore[misc]
            )
    for plant in _plants(book, problem):
        if problem.kind == "culled_before_use":
            yield Mend(
                f"Set {plant.plant} to growing.",
                lambda edit, a=plant.plant: set_status(edit, [a], "growing", date=date),  # type: ignore[misc]
            )
        else:
            yield Mend(
                f"Set {plant.plant} to finished: it lived until it was used.",
                lambda edit, a=plant.plant: set_status(edit, [a], "finished", date=date),  # type: ignore[misc]
            )


def _same_plant(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    for cross in _records(book, problem, "crosses"):
        key, seed = str(getattr(cross, "cross", "")), str(getattr(cross, "seed_parent", ""))
        yield Mend(
            f"Record {key} as a selfing of {seed}.",
            _set(cross, pollen_parent=seed, intended="selfing"),
        )


def _pollen(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    from pedigreeview.book.recording.correcting import correct_cross

    for pollination in _records(book, problem, "pollinations"):
        key = str(getattr(pollination, "pollination", ""))
        lot = str(getattr(pollination, "pollen_lot", ""))
        yield Mend(f"Take the pollen lot {lot} off {key}.", _set(pollination, pollen_lot=""))
        cross = book.crosses.get(str(getattr(pollination, "cross", "")))
        odds = cross is not None and any(r.cross == cross.cross for r in book.pollen_candidates)
        if cross is None or odds or len(problem.plants) != 1:
            continue
        (given,) = problem.plants
        yield Mend(
            f"Make {given} the pollen parent of {cross.cross}.",
            lambda edit, a=cross.cross, b=given: correct_cross(  # type: ignore[misc]
                edit, a, pollen_parent=b, date=date
            ),
        )


def _ploidy(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    for plant in _plants(book, problem)[:1]:
        if plant.ploidy is not None and (plant.cross or plant.source):
            yield Mend(
                f"Take the {plant.ploidy}x off {plant.plant}, so that it has that of its parents.",
                _set(plant, ploidy=None),
            )


def _fixation(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    for plant in _plants(book, problem)[:1]:
        if plant.fixation is not None:
            yield Mend(
                f"Take the fixation off {plant.plant}, so that it follows from its parents.",
                _set(plant, fixation=None),
            )


# Counts -----------------------------------------------------------------------------------------


def _counts(book: Book, problem: Problem, date: str) -> Iterator[Mend]:
    for key in [key for table, key in problem.about if table == "pollinations"]:
        row = book.pollinations.get(key)
        if row is None or row.flowers is None:
            continue
        most = max(row.set or 0, row.dropped or 0)
        if most > row.flowers:
            yield Mend(f"Set the flowers of {key} to {most}.", _set(row, flowers=most))
        if row.set is not None and row.set > row.flowers >= (row.dropped or 0):
            yield Mend(f"Set the fruits of {key} to {row.flowers}.", _set(row, set=row.flowers))
    for key in [key for table, key in problem.about if table == "sowings"]:
        sowing = book.sowings.get(key)
        if sowing is None:
            continue
        up, kept, seeds = sowing.up, sowing.kept, sowing.seeds
        if up is not None and seeds is not None and up > seeds:
            yield Mend(f"Set the seeds sown of {key} to {up}.", _sown(key, up))
            if kept is None or kept <= seeds:
                yield Mend(f"Set what came up of {key} to {seeds}.", _set(sowing, up=seeds))
        if up is not None and kept is not None and kept > up:
            if seeds is None or kept <= seeds:
                yield Mend(f"Set what came up of {key} to {kept}.", _set(sowing, up=kept))
            yield Mend(f"Set what was kept of {key} to {up}.", _set(sowing, kept=up))
    for key in [key for table, key in problem.about if table == "packets"]:
        packet = book.packets.get(key)
        if packet is None or packet.seeds is None:
            continue
        sown = sum(row.seeds or 0 for row in book.sowings.values() if row.packet == key)
        held = sown + (packet.left or 0)
        if held > packet.seeds:
            yield Mend(f"Set what {key} held to {held}.", _set(packet, seeds=held))
        if packet.left is not None and packet.left > packet.seeds >= sown:
            left = packet.seeds - sown
            yield Mend(f"Set what {key} has left to {left}.", _set(packet, left=left))


def _sown(key: str, seeds: int) -> Callable[[Edit], object]:
    from pedigreeview.book.recording.sowings import correct_sown

    return lambda edit: correct_sown(edit, key, seeds)


_OFFERS: dict[str, Callable[[Book, Problem, str], Iterator[Mend]]] = {
    "near_duplicate_code": _near_codes,
    "near_duplicate_key": _near_keys,
    "near_duplicate_name": _near_codes,
    "unknown_written_as_code": _unknown,
    "bad_date_order": _dates,
    "not_in_flower": _flower,
    "used_after_life": _after_life,
    "crop_differs": _crops,
    "culled_before_use": _culled,
    "used_after_culling": _culled,
    "same_plant_twice": _same_plant,
    "pollen_of_other_plant": _pollen,
    "ploidy_differs": _ploidy,
    "fixation_too_low": _fixation,
    "more_fruits_than_flowers": _counts,
    "more_up_than_sown": _counts,
    "more_left_than_seeds": _counts,
    "more_sown_than_held": _counts,
}
