"""Correcting the past: another parent for many plants, another cross, one record for two.

What stood there before is kept: as a dated note of each plant, or as dated evidence of the cross.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Any, TypeVar, cast

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.ancestry import refuse_loop
from pedigreeview.book.recording.codes import propose_cross
from pedigreeview.book.recording.crosses import crosses_between
from pedigreeview.book.recording.doubt import record_evidence
from pedigreeview.book.recording.fields import iso_date
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import cross_called, plant_called, split_codes
from pedigreeview.book.records import SELF, Cross, Note, Plant, PollenCandidate, Record
from pedigreeview.book.references import Reference, named_by, renamed

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["amend", "correct_cross", "give_parent", "move_to_cross", "repoint"]

R = TypeVar("R", bound=Record)

_OWN = ("scores", "genotypes", "blooms", "notes", "photos", "compatibility")
"""Tables whose records are data of one plant."""


def amend(edit: Edit, record: R, **values: Any) -> R:
    """Change columns of a record as it was shown to the person, looking for errors first.

    Raises
    ------
    Fault : it was changed elsewhere meanwhile, a value does not fit, or an error would come of it
    """
    crosses = {getattr(record, "cross", ""), str(values.get("cross", ""))}
    plants = {getattr(record, "plant", "")} if record.TABLE != "pollen_lots" else set()
    packets = {getattr(record, "packet", ""), str(values.get("packet", ""))}
    for name in ("seed_parent", "pollen_parent", "source"):
        plants.add(str(values.get(name, "")))
    sown_from = {getattr(record, "sown_from", "")}
    if record.TABLE == "pollen_lots":
        lot = getattr(record, "pollen_lot", "")
        crosses |= {row.cross for row in edit.book.pollinations.values() if row.pollen_lot == lot}
    with guarded(edit, crosses=crosses | sown_from, plants=plants, packets=packets):
        _refuse_loop_of(edit, record, values)
        return cast("R", edit.update(record, **values))


def _refuse_loop_of(edit: Edit, record: Record, values: dict[str, Any]) -> None:
    if isinstance(record, Cross):
        parents = [str(values[n]) for n in ("seed_parent", "pollen_parent") if values.get(n)]
        progeny = [held.plant for held in edit.book.plants.values() if held.cross == record.cross]
        if parents and progeny:
            refuse_loop(edit.book, progeny, parents)
    elif isinstance(record, Plant):
        parents = [str(values["source"])] if values.get("source") else []
        cross = edit.book.crosses.get(str(values.get("cross", "")))
        if cross is not None:
            parents += [cross.seed_parent, cross.pollen_parent]
        if parents:
            refuse_loop(edit.book, [record.plant], parents)


def correct_cross(
    edit: Edit,
    cross: str,
    *,
    seed_parent: str | None = None,
    pollen_parent: str | None = None,
    date: str,
    why: str = "",
) -> Cross:
    """Give a cross other parents, for all its progeny at once; None leaves a side as it is.

    A blank makes a side unknown.  The parent that stood there is kept as dated evidence against it.

    Raises
    ------
    Fault : a parent that is not in the book or descends from the cross, odds set for the pollen
    """
    held = cross_called(edit.book, cross)
    on = iso_date(date)
    changed: dict[str, Any] = {}
    for side, text in (("seed", seed_parent), ("pollen", pollen_parent)):
        if text is None:
            continue
        column = f"{side}_parent"
        code = plant_called(edit.book, text, column).plant if text.strip() else ""
        if code != getattr(held, column):
            changed[column] = code
    if not changed:
        return held
    rows = [row for row in edit.book.pollen_candidates if row.cross == held.cross]
    if rows and changed.get("pollen_parent"):
        raise Fault(
            f"The pollen parent of {held.cross} is given as candidates with odds.",
            Place(column="pollen_parent"),
            "Change the candidates.",
        )
    seed = changed.get("seed_parent", held.seed_parent)
    pollen = changed.get("pollen_parent", held.pollen_parent)
    _look_for_self(edit, held, seed)
    if seed and seed == pollen:
        changed["intended"] = "selfing"
    elif held.intended == "selfing" or (held.intended == "open" and pollen):
        changed["intended"] = "cross" if pollen and seed else ""
    progeny = [plant.plant for plant in edit.book.plants.values() if plant.cross == held.cross]
    if progeny:
        refuse_loop(edit.book, progeny, [seed, pollen])
    with guarded(edit, crosses=(held.cross,), plants=[code for code in (seed, pollen) if code]):
        for column in ("seed_parent", "pollen_parent"):
            if column in changed:
                was = getattr(held, column) or "unknown"
                said = f"Was {was} until this correction. {why.strip()}".strip()
                record_evidence(
                    edit, held.cross, column.removesuffix("_parent"), "against", said, date=on
                )
        updated = edit.update(held, **changed)
    assert isinstance(updated, Cross)
    return updated


def _look_for_self(edit: Edit, cross: Cross, seed_parent: str) -> None:
    """Refuse a cross without a seed parent where something is called a self of it."""
    if seed_parent:
        return
    selfs = [
        row
        for row in edit.book.pollen_candidates
        if row.cross == cross.cross and row.candidate == SELF
    ]
    progeny = {plant.plant for plant in edit.book.plants.values() if plant.cross == cross.cross}
    found = [
        row
        for row in edit.book.parent_findings
        if row.plant in progeny and row.pollen_parent == SELF
    ]
    if selfs or found:
        raise Fault(
            f"Something of the cross {cross.cross} is called a self, so its seed parent must be "
            "known.",
            Place(column="seed_parent"),
            "Name the seed parent, or take 'self' out of the odds and findings first.",
        )


def move_to_cross(
    edit: Edit, plants: Iterable[str], cross: str, *, date: str, why: str = ""
) -> tuple[Plant, ...]:
    """Say of many plants in one step that they came from another cross; gives them as changed.

    Plants that came from a pool, or were founders, get their parents by it.

    Raises
    ------
    Fault : a plant or cross that is not in the book, a parent of the cross among the plants or
        their progeny, a cutting or other clone, a date before the cross was made
    """
    held = cross_called(edit.book, cross)
    on = iso_date(date)
    codes = list(dict.fromkeys(plant_called(edit.book, code).plant for code in plants))
    candidates = [row.candidate for row in edit.book.pollen_candidates if row.cross == held.cross]
    refuse_loop(edit.book, codes, [held.seed_parent, held.pollen_parent, *candidates])
    if not held.seed_parent:
        _no_self_among(edit, codes, held)
    found = []
    with guarded(edit, crosses=(held.cross,), plants=codes):
        for code in codes:
            plant = edit.book.plants[code]
            if plant.cross == held.cross:
                found.append(plant)
                continue
            raised = edit.book.raised(plant)
            if raised in ("cutting_of", "doubled_of", "doubled_haploid_of"):
                raise Fault(
                    f"{code} is {raised.replace('_', ' ')} {plant.source}, not seed of a cross.",
                    Place(plant=code),
                    "Change how it was raised on its card first.",
                )
            was = f"the cross {plant.cross}" if plant.cross else plant.source or "no known parents"
            words = f"Came from {was} until this correction; now the cross {held.cross}. {why}"
            edit.add(Note(f"plant {code}", on, words.strip()))
            kind = edit.book.kind(plant)
            updated = edit.update(
                plant,
                cross=held.cross,
                source="",
                raised="cross",
                kind=kind,
                fixation=plant.fixation if kind == "variety" else None,
            )
            assert isinstance(updated, Plant)
            found.append(updated)
        if found and held.state != "made":
            edit.update(held, state="made")
    return tuple(found)


def _no_self_among(edit: Edit, codes: list[str], cross: Cross) -> None:
    wanted = set(codes)
    for row in edit.book.parent_findings:
        if row.plant in wanted and row.pollen_parent == SELF:
            raise Fault(
                f"{row.plant} was found to be a self, and the cross {cross.cross} has no seed "
                "parent.",
                Place(plant=row.plant),
                "Name the seed parent of the cross first.",
            )


def give_parent(
    edit: Edit,
    plants: Iterable[str],
    *,
    seed_parent: str | None = None,
    pollen_parent: str | None = None,
    today: datetime.date,
    date: str,
    why: str = "",
) -> tuple[Cross, ...]:
    """Give many plants another seed or pollen parent in one step; None leaves a side as it was.

    Each goes to the cross of its new parents, which is made where the book has none.  The cross
    that they came from, with its other progeny, stays as it is.

    Returns
    -------
    the crosses that they came to, each once

    Raises
    ------
    Fault : as for `move_to_cross`; plants without a cross when one side is left as it was
    """
    seed = plant_called(edit.book, seed_parent, "seed_parent").plant if seed_parent else seed_parent
    pollen = (
        plant_called(edit.book, pollen_parent, "pollen_parent").plant
        if pollen_parent
        else pollen_parent
    )
    by_pair: dict[tuple[str, str, str], list[str]] = {}
    for code in plants:
        plant = plant_called(edit.book, code)
        held = edit.book.crosses.get(plant.cross)
        if held is None and (seed is None or pollen is None):
            raise Fault(
                f"{plant.plant} has no cross, so both of its parents are wanted.",
                Place(plant=plant.plant),
                "Name the seed parent and the pollen parent.",
            )
        one = seed if seed is not None else held.seed_parent if held else ""
        two = pollen if pollen is not None else held.pollen_parent if held else ""
        made_on = held.made_on if held is not None else ""
        by_pair.setdefault((one, two, made_on), []).append(plant.plant)
    found: dict[str, Cross] = {}
    everyone = [code for codes in by_pair.values() for code in codes]
    with guarded(edit, plants=everyone):
        for (one, two, made_on), codes in by_pair.items():
            cross = _cross_of_pair(edit, one, two, made_on, today)
            move_to_cross(edit, codes, cross.cross, date=date, why=why)
            found[cross.cross] = edit.book.crosses[cross.cross]
    return tuple(found.values())


def _cross_of_pair(edit: Edit, seed: str, pollen: str, made_on: str, today: datetime.date) -> Cross:
    """The cross of two parents of that date, or with no date; else a new one."""
    if seed and pollen:
        held = [
            cross
            for cross in crosses_between(edit.book, seed, pollen).this_way
            if cross.state != "skipped" and cross.made_on in ("", made_on)
        ]
        if held:
            return held[-1]
    intended = "selfing" if seed and seed == pollen else "cross" if seed and pollen else ""
    code = propose_cross(edit.book, today, seed, pollen, intended=intended or "cross")
    cross = Cross(code, seed, pollen, intended=intended, made_on=made_on, state="made")
    edit.add(cross)
    return cross


def repoint(edit: Edit, plant: str, other: str, *, date: str = "", own_data: bool = True) -> Plant:
    """Put another plant in the place of one everywhere, and delete the one; gives the other.

    For two codes of one plant, or for a parent that was taken for another.

    own_data : whether scores, notes and the like go to the other plant, or are deleted

    Raises
    ------
    Fault : the same plant twice, the other descends from it, or is no pool where a pool is wanted
    """
    from pedigreeview.book.recording.deleting import delete

    gone = plant_called(edit.book, plant)
    kept = plant_called(edit.book, other, "other")
    if gone.plant == kept.plant:
        raise Fault(
            f"{gone.plant} cannot take its own place.", Place(column="other"), "Choose another."
        )
    book = edit.book
    progeny = [
        held.plant
        for held in book.plants.values()
        if held.source == gone.plant
        or (
            (cross := book.crosses.get(held.cross)) is not None
            and gone.plant in (cross.seed_parent, cross.pollen_parent)
        )
    ]
    if progeny:
        refuse_loop(book, progeny, [kept.plant])
    _fits_sources(edit, gone, kept)
    crosses = {
        cross.cross
        for cross in book.crosses.values()
        if gone.plant in (cross.seed_parent, cross.pollen_parent)
    }
    with guarded(edit, crosses=crosses, plants=(gone.plant, kept.plant)):
        _merge_candidates(edit, gone.plant, kept.plant)
        for record, columns in _namers(edit, gone.plant, own_data):
            changed: dict[str, Any] = {}
            for reference in columns:
                text = getattr(record, reference.column)
                new = renamed(reference, text, "plants", gone.plant, kept.plant)
                if reference.many:
                    new = "; ".join(dict.fromkeys(split_codes(new)))
                changed[reference.column] = new
            if isinstance(record, Cross):
                changed |= _intended(record, changed)
            edit.update(record, **changed)
        edit.add(Note(f"plant {kept.plant}", iso_date(date), f"Took the place of {gone.plant}."))
        delete(edit, edit.book.plants[gone.plant])
    return edit.book.plants[kept.plant]


def _namers(edit: Edit, code: str, own_data: bool) -> Iterator[tuple[Record, list[Reference]]]:
    """Each record that names a plant, with the columns in which it does; what the plant showed of
    its own parents is no finding on another and is left out."""
    found: dict[int, tuple[Record, list[Reference]]] = {}
    for reference, record in named_by(edit.book, "plants", code):
        of_itself = record.TABLE in _OWN and reference.column in ("plant", "about")
        finding = record.TABLE == "parent_findings" and reference.column == "plant"
        if reference.holds and not finding and (own_data or not of_itself):
            found.setdefault(id(record), (record, []))[1].append(reference)
    yield from found.values()


def _intended(cross: Cross, changed: dict[str, Any]) -> dict[str, Any]:
    """What a cross was meant as, once its parents have changed."""
    seed = changed.get("seed_parent", cross.seed_parent)
    pollen = changed.get("pollen_parent", cross.pollen_parent)
    if seed and seed == pollen:
        return {"intended": "selfing"}
    return {"intended": ""} if cross.intended == "selfing" else {}


def _merge_candidates(edit: Edit, gone: str, kept: str) -> None:
    by_cross: dict[str, list[PollenCandidate]] = {}
    for row in edit.book.pollen_candidates:
        by_cross.setdefault(row.cross, []).append(row)
    for rows in by_cross.values():
        old = next((row for row in rows if row.candidate == gone), None)
        same = next((row for row in rows if row.candidate == kept), None)
        if old is not None and same is not None:
            edit.remove(old)
            edit.update(same, odds=old.odds + same.odds)


def _fits_sources(edit: Edit, gone: Plant, kept: Plant) -> None:
    pool = edit.book.is_pool(kept)
    for held in edit.book.plants.values():
        if held.source == gone.plant and pool != (held.raised in ("seed_of", "sibbed_in")):
            raise Fault(
                f"{held.plant} is {held.raised.replace('_', ' ')} {gone.plant}, and {kept.plant} "
                f"is a {edit.book.kind(kept)}.",
                Place(plant=held.plant),
                "Choose a plant of the same kind.",
            )
