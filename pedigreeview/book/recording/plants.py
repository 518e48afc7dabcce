"""Recording plants: raised from a cross in one go, kept as a row, cut, divided, doubled, judged.

'Kept', 'culled' and 'lost' are states: nothing is deleted by them, and the day and the reason stand
in a dated note of the plant.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.parent_checks import STATUS_WORDS
from pedigreeview.book.recording.codes import UsedCodes, code_fault, propose_plants, year_parts
from pedigreeview.book.recording.fields import choice, iso_date, whole
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import cross_called, plant_called, sowing_called
from pedigreeview.book.recording.packets import cross_of_packet
from pedigreeview.book.recording.place_names import numbered_places
from pedigreeview.book.recording.typed_dates import day_of
from pedigreeview.book.records import STATUSES, Note, Plant, Sowing

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "WAYS_OF_CLONING",
    "clone",
    "double",
    "raise_plants",
    "raise_row",
    "set_status",
]

WAYS_OF_CLONING = ("cutting", "division", "graft", "tuber", "sport")
"""Ways in which one plant becomes another of the same genotype; a sport is a changed shoot."""


def _took_codes(
    edit: Edit, codes: Sequence[str], count: int, proposed: Iterable[str], used: UsedCodes
) -> list[str]:
    """The codes that were typed, or those that are proposed for the rest."""
    found: list[str] = []
    for code in codes:
        code_fault(used, code.strip())
        used.add(code.strip())
        found.append(code.strip())
    if len(found) > count:
        raise Fault(
            f"{len(found)} codes were given for {count} plants.",
            Place(column="code"),
            "Give as many codes as plants, or none.",
        )
    return [*found, *proposed][:count]


def _origin(edit: Edit, of: str, sowing: str) -> tuple[str, str, Sowing | None]:
    """The cross, or the pool, that plants come from, and their sowing."""
    row = sowing_called(edit.book, sowing) if sowing.strip() else None
    if row is not None and not of.strip():
        packet = edit.book.packets.get(row.packet)
        of = row.sown_from if packet is None else cross_of_packet(edit.book, packet)
        if packet is not None and not of:
            of = packet.borne_on
        if not of:
            raise Fault(
                f"The book does not say what the seed of the sowing {row.sowing} came from.",
                Place(column="sowing"),
                "Name the cross, or the variety, of the plants.",
            )
    wanted = of.strip()
    if not wanted:
        raise Fault(
            "No cross, variety or family is named.",
            Place(column="of"),
            "Name what the plants are raised from, or their sowing.",
        )
    if wanted in edit.book.plants and wanted not in edit.book.crosses:
        return "", wanted, row
    try:
        return cross_called(edit.book, wanted).cross, "", row
    except Fault:
        return "", plant_called(edit.book, wanted, "cross").plant, row


def _refuse_single(book: Book, code: str) -> None:
    if not book.is_pool(book.plants[code]):
        raise Fault(
            f"{code} is one plant, so its own seed is a selfing or open-pollinated.",
            Place(plant=code),
            "Record the selfing, or its open-pollinated seed, and raise the plants from that.",
        )


def _more_than_up(row: Sowing | None, count: int) -> None:
    most = row.up if row is not None else None
    if row is not None and most is not None and count > most:
        raise Fault(
            f"{count} plants are to be raised, but {most} came up of the sowing {row.sowing}.",
            Place(column="plants"),
            "Raise fewer, or correct how many came up.",
        )


def raise_plants(
    edit: Edit,
    of: str = "",
    count: int = 1,
    *,
    today: datetime.date,
    sowing: str = "",
    sown: str = "",
    place: str = "",
    first_position: int = 1,
    status: str = "growing",
    codes: Sequence[str] = (),
    selfings: int = 0,
    note: str = "",
) -> tuple[Plant, ...]:
    """Raise numbered plants of one cross, or of a variety or family, in one go.

    Parameters
    ----------
    of : code of the cross or of the pool; blank for what the sowing was of
    sowing : its date is that of the plants where `sown` is blank; plants kept are filled in
    place : a bed and row; the plants stand in it one after another from `first_position` on
    codes : codes of one's own for the first plants; the pattern proposes the rest
    selfings : unrecorded selfings between the cross and these plants

    Raises
    ------
    Fault : no such cross or sowing, seed of a single plant without a selfing, more plants than came
        up, a code that is taken, a date before the cross was made
    """
    if count < 1:
        raise Fault("The number of plants is below 1.", Place(column="plants"), "Write 1 or more.")
    cross, pool, row = _origin(edit, of, sowing)
    if pool:
        _refuse_single(edit.book, pool)
    _more_than_up(row, count)
    date = iso_date(sown, "sown") or (row.date if row is not None else "")
    state = choice(status, STATUSES, "status")
    used = UsedCodes(edit.book)
    typed = [code for code in codes if code.strip()]
    kept_back = _took_codes(edit, typed, count, (), used)
    more = count - len(kept_back)
    on = day_of(date, today)
    if more and cross:
        kept_back += propose_plants(edit.book, cross, more, on, used=used)
    elif more:
        kept_back += used.propose("selection", {**year_parts(on), "parent": pool}, more)
    places = numbered_places(place, first_position, count)
    further = whole(selfings, "selfings") or 0
    with guarded(edit, crosses=(cross,), plants=(pool,)) as scope:
        found = tuple(
            Plant(
                code,
                kind="plant",
                raised="cross" if cross else "seed_of",
                cross=cross,
                source=pool,
                selfings=further if cross else 0,
                sown=date,
                status=state,
                place=where,
                note=note.strip(),
            )
            for code, where in zip(kept_back, places, strict=True)
        )
        for plant in found:
            edit.add(plant)
            scope.plants.add(plant.plant)
        _made(edit, cross)
        if row is not None and row.kept is None:
            edit.update(row, kept=count)
    return found


def _made(edit: Edit, cross: str) -> None:
    held = edit.book.crosses.get(cross)
    if held is not None and held.state != "made":
        edit.update(held, state="made")


def raise_row(
    edit: Edit,
    of: str = "",
    *,
    today: datetime.date,
    sowing: str = "",
    sown: str = "",
    place: str = "",
    code: str = "",
    name: str = "",
    selfings: int = 0,
    sibbed: bool = False,
    note: str = "",
) -> Plant:
    """Keep the sown seed of a cross, or of a pool, together as a family: a row or a bulk.

    sibbed : the members of the pool that the seed came from mated with each other

    Raises
    ------
    Fault : as for `raise_plants`
    """
    cross, pool, row = _origin(edit, of, sowing)
    if pool:
        _refuse_single(edit.book, pool)
    if sibbed and not pool:
        raise Fault(
            "Sib mating is within a family or a variety.",
            Place(column="cross"),
            "Name the family whose members mated with each other.",
        )
    date = iso_date(sown, "sown") or (row.date if row is not None else "")
    used = UsedCodes(edit.book)
    if code.strip():
        code_fault(used, code.strip())
        taken = code.strip()
    else:
        held = edit.book.crosses.get(cross)
        selfed = held is not None and held.seed_parent and held.seed_parent == held.pollen_parent
        start = held.seed_parent if held is not None and selfed else cross or pool
        parts = {**year_parts(day_of(date, today)), "from": start}
        taken = used.propose("row", parts)[0]
    raised = "cross" if cross else "sibbed_in" if sibbed else "seed_of"
    family = Plant(
        taken,
        name.strip(),
        "family",
        raised,
        cross,
        pool,
        (whole(selfings, "selfings") or 0) if cross else 0,
        sown=date,
        status="growing",
        place=place.strip(),
        note=note.strip(),
    )
    with guarded(edit, crosses=(cross,), plants=(pool,)) as scope:
        edit.add(family)
        scope.plants.add(taken)
        _made(edit, cross)
    return family


def clone(
    edit: Edit,
    source: str,
    count: int = 1,
    *,
    today: datetime.date,
    way: str = "cutting",
    date: str = "",
    place: str = "",
    codes: Sequence[str] = (),
    name: str = "",
    note: str = "",
) -> tuple[Plant, ...]:
    """Record cuttings, divisions, grafts, tubers or a sport of one plant: its own genotype again.

    A sport is a clone for the arithmetic, and its way is written in its note.

    Raises
    ------
    Fault : the source is a pool of many plants, a way that is not known, a code that is taken
    """
    held = plant_called(edit.book, source, "source")
    made = _from_plant(
        edit, held, count, "cutting_of", "clone", today, date, place, codes,
        f"{choice(way, WAYS_OF_CLONING, 'way').capitalize()}. {note.strip()}".strip()
        if way not in ("", "cutting") else note.strip(),
    )  # fmt: skip
    if name.strip() and count == 1:
        named = edit.update(made[0], name=name.strip())
        assert isinstance(named, Plant)
        return (named,)
    return made


def double(
    edit: Edit,
    source: str,
    count: int = 1,
    *,
    today: datetime.date,
    haploid: bool = True,
    date: str = "",
    place: str = "",
    codes: Sequence[str] = (),
    note: str = "",
) -> tuple[Plant, ...]:
    """Record doubled haploids of a plant, or the plant itself with its chromosomes doubled.

    Raises
    ------
    Fault : the source is a pool of many plants, or a code that is taken
    """
    held = plant_called(edit.book, source, "source")
    raised = "doubled_haploid_of" if haploid else "doubled_of"
    kind = "doubled_haploid" if haploid else "doubled"
    return _from_plant(edit, held, count, raised, kind, today, date, place, codes, note.strip())


def _from_plant(
    edit: Edit,
    source: Plant,
    count: int,
    raised: str,
    kind: str,
    today: datetime.date,
    date: str,
    place: str,
    codes: Sequence[str],
    note: str,
) -> tuple[Plant, ...]:
    if count < 1:
        raise Fault("The number of plants is below 1.", Place(column="plants"), "Write 1 or more.")
    if edit.book.is_pool(source):
        raise Fault(
            f"{source.plant} is a {edit.book.kind(source)}: a pool of many plants.",
            Place(column="source", plant=source.plant),
            "Name the one plant that it came from, or record the variety as kept by cuttings, "
            "tubers or division if it is one genotype.",
        )
    started = iso_date(date)
    used = UsedCodes(edit.book)
    typed = [code for code in codes if code.strip()]
    taken = _took_codes(edit, typed, count, (), used)
    if len(taken) < count:
        parts = {**year_parts(day_of(started, today)), "parent": source.plant}
        taken += used.propose(kind, parts, count - len(taken))
    with guarded(edit, plants=(source.plant,)) as scope:
        found = tuple(
            Plant(
                code,
                kind="plant",
                raised=raised,
                source=source.plant,
                sown=started,
                status="growing",
                place=where,
                note=note,
            )
            for code, where in zip(taken, numbered_places(place, 1, count), strict=True)
        )
        for plant in found:
            edit.add(plant)
            scope.plants.add(plant.plant)
    return found


def set_status(
    edit: Edit, plants: Iterable[str], status: str, *, date: str = "", why: str = ""
) -> tuple[Plant, ...]:
    """Say of some plants that they are kept, culled, lost, growing or finished.

    With a date, or a reason, a note of each plant tells when and why; where its status stays as it
    was, the reason alone.

    Raises
    ------
    Fault : a plant that is not in the book, or a word that is no status
    """
    state = choice(status, STATUSES, "status")
    on = iso_date(date)
    found = []
    for code in [plant_called(edit.book, code).plant for code in plants]:
        plant = edit.book.plants[code]
        words = why.strip()
        if state != plant.status and (on or words):
            words = f"{STATUS_WORDS}{state or 'not said'}. {words}".strip()
        if words:
            edit.add(Note(f"plant {code}", on, words))
        updated = edit.update(plant, status=state)
        assert isinstance(updated, Plant)
        found.append(updated)
    return tuple(found)
