"""Recording a cross: in one direction or both, a selfing, open-pollinated seed, a backcross.

A cross that is there already is found first and given back, so that asking twice for 'both ways'
changes nothing.  A cross repeated in another year keeps its own code when that is asked for.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import UsedCodes, code_fault, propose_cross
from pedigreeview.book.recording.fields import choice, iso_date
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import cross_called, plant_called
from pedigreeview.book.recording.typed_dates import day_of
from pedigreeview.book.records import Cross

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "STATES",
    "CrossesBetween",
    "crosses_between",
    "record_backcross",
    "record_cross",
    "record_open",
    "record_selfing",
    "recurrent_parents",
    "set_cross_state",
]

STATES = ("planned", "made", "skipped")


@dataclass(frozen=True, slots=True)
class CrossesBetween:
    """The crosses of two plants that the book has, by direction; skipped ones are among them."""

    this_way: tuple[Cross, ...]
    other_way: tuple[Cross, ...]


def crosses_between(book: Book, seed_parent: str, pollen_parent: str) -> CrossesBetween:
    """Crosses of these two codes in this direction and in the other.

    Those of unknown direction and of uncertain pollen parent are not among them.
    """
    this: list[Cross] = []
    other: list[Cross] = []
    for cross in book.crosses.values():
        if not cross.direction_known:
            continue
        if (cross.seed_parent, cross.pollen_parent) == (seed_parent, pollen_parent):
            this.append(cross)
        elif (cross.pollen_parent, cross.seed_parent) == (seed_parent, pollen_parent):
            other.append(cross)
    return CrossesBetween(tuple(this), tuple(other))


def record_cross(
    edit: Edit,
    seed_parent: str,
    pollen_parent: str,
    *,
    today: datetime.date,
    both_ways: bool = False,
    state: str = "planned",
    made_on: str = "",
    code: str = "",
    code_other_way: str = "",
    repeat: bool = False,
    note: str = "",
    seed_doubt: str = "",
    pollen_doubt: str = "",
    direction_known: bool = True,
) -> tuple[Cross, ...]:
    """Record a cross, or both directions of one; gives this direction first.

    Parameters
    ----------
    seed_parent, pollen_parent : as typed; equal ones make a selfing
    both_ways : record the reciprocal cross as well
    state : 'planned', 'made' or 'skipped'; a planned cross found becomes made when so asked
    made_on : ISO date or blank
    code, code_other_way : blank for the code that the pattern proposes
    repeat : make a new cross though the same one is in the book
    direction_known : False where it is not known which of the two bore the seed

    Raises
    ------
    Fault : a parent that is not in the book, a code that may not stand, a date before a parent was
        sown, two directions of a selfing
    """
    seed = plant_called(edit.book, seed_parent, "seed_parent").plant
    pollen = plant_called(edit.book, pollen_parent, "pollen_parent").plant
    if seed == pollen and both_ways:
        raise Fault(
            f"{seed} with itself is a selfing, which has one direction.",
            Place(column="pollen_parent"),
            "Choose another pollen parent, or record the selfing.",
        )
    values = {
        "state": choice(state, STATES, "state"),
        "made_on": iso_date(made_on, "made_on"),
        "note": note.strip(),
        "seed_doubt": seed_doubt,
        "pollen_doubt": pollen_doubt,
        "direction_known": direction_known,
    }
    with guarded(edit, plants=(seed, pollen)) as scope:
        ways = [(seed, pollen, code)]
        if both_ways:
            ways.append((pollen, seed, code_other_way))
        found = []
        for one, two, wanted in ways:
            held = [
                cross
                for cross in crosses_between(edit.book, one, two).this_way
                if cross.state != "skipped"
            ]
            if held and direction_known and not repeat:
                found.append(_as_asked(edit, held[-1], wanted, values))
            else:
                intended = "selfing" if one == two else "cross"
                found.append(_new(edit, one, two, intended, wanted, today, values))
            scope.crosses.add(found[-1].cross)
    return tuple(found)


def _as_asked(edit: Edit, cross: Cross, code: str, values: dict[str, object]) -> Cross:
    """A cross that is there, made if it was only planned; what is recorded of it stays."""
    if code.strip() and code.strip() != cross.cross:
        raise Fault(
            f"The cross {cross.seed_parent} × {cross.pollen_parent} is in the book as "
            f"{cross.cross}.",
            Place(column="cross"),
            f"Take {cross.cross}, or record it as a repeated cross.",
        )
    changed: dict[str, object] = {}
    if values["state"] == "made" and cross.state in ("", "planned"):
        changed["state"] = "made"
    for name in ("made_on", "note", "seed_doubt", "pollen_doubt"):
        if values[name] and not getattr(cross, name):
            changed[name] = values[name]
    if not changed:
        return cross
    updated = edit.update(cross, **changed)
    assert isinstance(updated, Cross)
    return updated


def _new(
    edit: Edit,
    seed: str,
    pollen: str,
    intended: str,
    code: str,
    today: datetime.date,
    values: dict[str, object],
) -> Cross:
    used = UsedCodes(edit.book)
    code = code.strip()
    if code:
        code_fault(used, code, column="cross")
    else:
        on = day_of(str(values["made_on"]), today)
        code = propose_cross(edit.book, on, seed, pollen, intended=intended, used=used)
    cross = Cross(code, seed, pollen, intended=intended, **values)  # type: ignore[arg-type]
    edit.add(cross)
    return cross


def record_selfing(
    edit: Edit,
    plant: str,
    *,
    today: datetime.date,
    state: str = "made",
    made_on: str = "",
    code: str = "",
    repeat: bool = False,
    note: str = "",
) -> Cross:
    """Record that a plant was selfed, or is to be; gives the selfing that is there already.

    Of a pool each member is selfed.
    """
    return record_cross(
        edit, plant, plant, today=today, state=state, made_on=made_on, code=code, repeat=repeat,
        note=note,
    )[0]  # fmt: skip


def record_open(
    edit: Edit,
    plant: str,
    *,
    today: datetime.date,
    state: str = "made",
    made_on: str = "",
    code: str = "",
    repeat: bool = False,
    note: str = "",
) -> Cross:
    """Record open-pollinated seed of a plant: nobody chose the pollen.

    Without `repeat` open-pollinated seed of the same plant that is there already is given back.
    """
    seed = plant_called(edit.book, plant, "seed_parent").plant
    values: dict[str, object] = {
        "state": choice(state, STATES, "state"),
        "made_on": iso_date(made_on, "made_on"),
        "note": note.strip(),
        "seed_doubt": "",
        "pollen_doubt": "",
    }
    with guarded(edit, plants=(seed,)) as scope:
        held = [
            cross
            for cross in edit.book.crosses.values()
            if cross.seed_parent == seed
            and cross.intended == "open"
            and not cross.pollen_parent
            and cross.state != "skipped"
        ]
        if held and not repeat:
            found = _as_asked(edit, held[-1], code, values)
        else:
            found = _new(edit, seed, "", "open", code, today, values)
        scope.crosses.add(found.cross)
    return found


def recurrent_parents(book: Book, plant: str) -> tuple[str, ...]:
    """The plants with which a cross of this one is a backcross: the parents of its own cross.

    Where it is itself the outcome of a backcross, the parent used before stands first.
    """
    held = book.plants.get(plant)
    cross = book.crosses.get(held.cross) if held is not None else None
    if cross is None or not cross.seed_parent or not cross.pollen_parent:
        return ()
    parents = [cross.seed_parent, cross.pollen_parent]
    if parents[0] == parents[1]:
        # Selfed: the hybrid before it tells.
        return () if parents[0] == plant else recurrent_parents(book, parents[0])
    for place, hybrid in enumerate(parents):
        other = parents[1 - place]
        if other in _founding(book, hybrid):
            donors = [code for code in _founding(book, hybrid) if code != other]
            return tuple(dict.fromkeys((other, hybrid, *donors)))
    return tuple(parents)


def _founding(book: Book, plant: str) -> tuple[str, ...]:
    held = book.plants.get(plant)
    cross = book.crosses.get(held.cross) if held is not None else None
    if cross is None:
        return ()
    return tuple(dict.fromkeys(c for c in (cross.seed_parent, cross.pollen_parent) if c))


def record_backcross(
    edit: Edit,
    hybrid: str,
    recurrent: str,
    *,
    today: datetime.date,
    hybrid_as_seed_parent: bool = True,
    both_ways: bool = False,
    state: str = "planned",
    made_on: str = "",
    code: str = "",
    note: str = "",
) -> tuple[Cross, ...]:
    """Record a cross of a hybrid back to a parent of its own.

    Raises
    ------
    Fault : the recurrent parent is no parent of the hybrid, nor one further back
    """
    one = plant_called(edit.book, hybrid, "hybrid").plant
    two = plant_called(edit.book, recurrent, "recurrent").plant
    fitting = recurrent_parents(edit.book, one)
    if two not in fitting:
        said = f"It descends from {' and '.join(fitting)}." if fitting else "It has no two parents."
        raise Fault(
            f"{two} is not a parent of {one}, so this is a cross and no backcross.",
            Place(column="recurrent"),
            f"{said} Choose one of its parents, or record it as a cross.",
        )
    pair = (one, two) if hybrid_as_seed_parent else (two, one)
    return record_cross(
        edit, *pair, today=today, both_ways=both_ways, state=state, made_on=made_on, code=code,
        note=note,
    )  # fmt: skip


def set_cross_state(
    edit: Edit, crosses: Iterable[str], state: str, *, made_on: str = "", why: str = ""
) -> tuple[Cross, ...]:
    """Say of some crosses that they are planned, made or skipped; gives them as changed.

    A reason is written behind the note that is there.

    Raises
    ------
    Fault : a cross that is not in the book, or one with pollinations, seed or progeny that is to
        be planned or skipped
    """
    wanted = choice(state, STATES, "state")
    date = iso_date(made_on, "made_on")
    codes = [cross_called(edit.book, code).cross for code in crosses]
    found = []
    with guarded(edit, crosses=codes):
        for code in codes:
            cross = edit.book.crosses[code]
            if wanted != "made" and (sign := _sign_of_work(edit.book, code)):
                raise Fault(
                    f"The cross {code} has {sign}, so it was made.",
                    Place(column="state"),
                    "A cross that failed stays 'made' with no fruit set; take away what was "
                    "recorded by mistake first.",
                )
            changed: dict[str, object] = {"state": wanted}
            if date:
                changed["made_on"] = date
            if why.strip():
                changed["note"] = f"{cross.note} {why.strip()}".strip()
            updated = edit.update(cross, **changed)
            assert isinstance(updated, Cross)
            found.append(updated)
    return tuple(found)


def _sign_of_work(book: Book, cross: str) -> str:
    if any(row.cross == cross for row in book.pollinations.values()):
        return "a pollination"
    if any(row.cross == cross for row in book.harvests.values()):
        return "a harvest"
    if any(plant.cross == cross for plant in book.plants.values()):
        return "progeny"
    return ""
