"""Deleting, and the ways out where something hangs on what is to be deleted.

Culling is the usual way: a culled plant stays, since its progeny need it.  Deleting is for what was
recorded by mistake.  The code of a deleted plant or cross is kept, so that it is never proposed
again.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import GIVEN_UP, given_up
from pedigreeview.book.recording.crosses import set_cross_state
from pedigreeview.book.recording.hanging import descendants, what_hangs_on
from pedigreeview.book.recording.lookup import cross_called, plant_called, split_codes
from pedigreeview.book.recording.plants import set_status
from pedigreeview.book.records import SELF, Cross, Note, Plant, PollenLot, Record
from pedigreeview.book.references import about, named_by

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "cull_instead",
    "delete",
    "delete_cross_with_progeny",
    "delete_with_progeny",
    "give_progeny_unknown_parent",
    "skip_instead",
]


def _remember(edit: Edit, codes: Iterable[str]) -> None:
    known = given_up(edit.book)
    listed = ";".join(dict.fromkeys([*known, *codes]))
    edit.set_settings(extra={**edit.book.settings.extra, GIVEN_UP: listed})


def cull_instead(edit: Edit, plant: str, *, date: str = "", why: str = "") -> Plant:
    """Set the plant to culled and delete nothing."""
    return set_status(edit, [plant], "culled", date=date, why=why)[0]


def skip_instead(edit: Edit, cross: str, *, why: str = "") -> Cross:
    """Set the cross to skipped and delete nothing."""
    return set_cross_state(edit, [cross], "skipped", why=why)[0]


def delete(edit: Edit, record: Record) -> None:
    """Delete a record on which nothing hangs but data of its own, such as notes and scores.

    Raises
    ------
    Fault : something hangs on it, with how much
    """
    hangs = what_hangs_on(edit.book, record)
    if "delete" not in hangs.ways:
        key = str(getattr(record, record.KEY[0]))
        raise Fault(
            hangs.sentence(key),
            Place(plant=key) if isinstance(record, Plant) else None,
            "Choose what is to become of it first.",
        )
    if isinstance(record, Plant):
        _delete_plant(edit, record.plant)
    elif isinstance(record, Cross):
        _delete_cross(edit, record.cross)
    else:
        if len(record.KEY) == 1:
            _remove_notes(edit, record.TABLE, str(getattr(record, record.KEY[0])))
        edit.remove(record)


def _remove_notes(edit: Edit, table: str, key: str) -> None:
    wanted = (about(table, key), f"{about(table, '').strip().replace(' ', '_')} {key}")
    for note in [note for note in edit.book.notes if note.about in wanted]:
        edit.remove(note)


def _delete_plant(edit: Edit, code: str) -> None:
    """Delete a plant that is named by nothing but its own data and by lists."""
    _remove_notes(edit, "plants", code)
    for reference, record in list(named_by(edit.book, "plants", code)):
        if not reference.holds or record.TABLE in ("plants", "crosses"):
            continue
        if record.TABLE == "bookmarks":
            _off_bookmark(edit, str(getattr(record, "name", "")), code)
        elif isinstance(record, PollenLot):
            _off_lot(edit, record.pollen_lot, code)
        elif record.TABLE in ("packets", "sowings"):
            edit.update(record, **{reference.column: ""})
        elif reference.column in ("plant", "partner", "candidate") and _is_there(edit, record):
            edit.remove(record)
    edit.remove(edit.book.plants[code])
    _remember(edit, [code])


def _is_there(edit: Edit, record: Record) -> bool:
    held = getattr(edit.book, record.TABLE)
    rows = held.values() if isinstance(held, dict) else held
    return any(row is record for row in rows)


def _off_bookmark(edit: Edit, name: str, code: str) -> None:
    held = edit.book.bookmarks.get(name)
    if held is None:
        return
    left = [pinned for pinned in split_codes(held.pinned) if pinned != code]
    focus = "" if held.focus == code else held.focus
    edit.update(held, focus=focus, pinned=";".join(left))


def _off_lot(edit: Edit, lot: str, code: str) -> None:
    held = edit.book.pollen_lots[lot]
    left = [plant for plant in split_codes(held.plant) if plant != code]
    note = f"{held.note} Also of {code}, which was deleted.".strip()
    edit.update(held, plant="; ".join(left), note=note)


def _delete_cross(edit: Edit, code: str) -> None:
    """Delete a cross without progeny, with everything that was recorded of it."""
    book = edit.book
    harvests = {row.harvest for row in book.harvests.values() if row.cross == code}
    packets = {row.packet for row in book.packets.values() if row.harvest in harvests}
    for sowing in [
        row for row in book.sowings.values() if row.packet in packets or row.sown_from == code
    ]:
        _remove_notes(edit, "sowings", sowing.sowing)
        edit.remove(sowing)
    for harvest in list(book.harvests.values()):
        if harvest.packet and (harvest.harvest in harvests or harvest.packet in packets):
            edit.update(harvest, packet="")
    for name in packets:
        _remove_notes(edit, "packets", name)
        edit.remove(edit.book.packets[name])
    for name in harvests:
        _remove_notes(edit, "harvests", name)
        edit.remove(edit.book.harvests[name])
    for row in [row for row in edit.book.pollinations.values() if row.cross == code]:
        _remove_notes(edit, "pollinations", row.pollination)
        edit.remove(row)
    for held in [row for row in edit.book.evidence if row.cross == code]:
        edit.remove(held)
    for candidate in [row for row in edit.book.pollen_candidates if row.cross == code]:
        edit.remove(candidate)
    _remove_notes(edit, "crosses", code)
    edit.remove(edit.book.crosses[code])
    _remember(edit, [code])


def delete_with_progeny(edit: Edit, plant: str) -> tuple[str, ...]:
    """Delete a plant with all that certainly come from it and their crosses; gives their codes.

    Where it is only a candidate for pollen parent, its odds are left unknown.
    """
    code = plant_called(edit.book, plant).plant
    return _delete_all(edit, [code], ())


def delete_cross_with_progeny(edit: Edit, cross: str) -> tuple[str, ...]:
    """Delete a cross with its progeny and all that comes from them; gives the plants' codes."""
    code = cross_called(edit.book, cross).cross
    progeny = [held.plant for held in edit.book.plants.values() if held.cross == code]
    return _delete_all(edit, progeny, (code,))


def _delete_all(edit: Edit, plants: Iterable[str], crosses: Iterable[str]) -> tuple[str, ...]:
    doomed = descendants(edit.book, plants)
    order = [code for code in edit.book.plants if code in doomed]
    gone = dict.fromkeys(crosses)
    gone.update(
        dict.fromkeys(
            held.cross
            for held in edit.book.crosses.values()
            if held.seed_parent in doomed or held.pollen_parent in doomed
        )
    )
    for code in order:
        _unknown_in_doubt(edit, code, doomed)
        for finding in [row for row in edit.book.parent_findings if row.plant == code]:
            edit.remove(finding)
    for code in order:
        edit.update(
            edit.book.plants[code], cross="", source="", raised="founder", selfings=0,
            fixation=None,
        )  # fmt: skip
    for name in gone:
        _delete_cross(edit, name)
    for code in order:
        _delete_plant(edit, code)
    return tuple(order)


def _unknown_in_doubt(edit: Edit, code: str, but: Iterable[str] = ()) -> None:
    """Take a plant out of candidates and findings of others; its odds are left unknown."""
    for row in [row for row in edit.book.pollen_candidates if row.candidate == code]:
        edit.remove(row)
    left_out = set(but)
    for finding in [row for row in edit.book.parent_findings if row.pollen_parent == code]:
        if finding.plant in left_out:
            continue
        same = [
            row
            for row in edit.book.parent_findings
            if (row.plant, row.date) == (finding.plant, finding.date) and not row.pollen_parent
        ]
        text = f"{finding.text} Was {code}, which was deleted.".strip()
        if same:
            edit.remove(finding)
        else:
            edit.update(finding, pollen_parent="", odds=None, grade="unknown", text=text)


def give_progeny_unknown_parent(edit: Edit, plant: str, *, date: str = "") -> None:
    """Delete a plant and leave its place empty: an unknown parent in its crosses.

    Cuttings and seed of it become founders.  What was there stands in dated notes.
    """
    code = plant_called(edit.book, plant).plant
    for cross in list(edit.book.crosses.values()):
        sides = [
            side
            for side in ("seed", "pollen")
            if getattr(cross, f"{side}_parent") == code
        ]  # fmt: skip
        if sides:
            _empty_sides(edit, cross, sides, code, date)
    _unknown_in_doubt(edit, code)
    for held in [other for other in edit.book.plants.values() if other.source == code]:
        words = f"Was {held.raised.replace('_', ' ')} {code}, which was deleted."
        edit.add(Note(f"plant {held.plant}", date, words))
        kind = edit.book.kind(held)
        edit.update(held, source="", raised="founder", kind=kind)
    _delete_plant(edit, code)


def _empty_sides(edit: Edit, cross: Cross, sides: list[str], code: str, date: str) -> None:
    changed: dict[str, object] = {}
    for side in sides:
        changed[f"{side}_parent"] = ""
        if getattr(cross, f"{side}_doubt"):
            changed[f"{side}_doubt"] = "unknown"
    if cross.intended == "selfing":
        changed["intended"] = ""
    words = " and ".join(f"{side} parent" for side in sides)
    edit.add(Note(f"cross {cross.cross}", date, f"The {words} was {code}, which was deleted."))
    if "seed" in sides:
        # Without a seed parent nothing can be said of 'itself'.
        for row in list(edit.book.pollen_candidates):
            if row.cross == cross.cross and row.candidate == SELF:
                edit.remove(row)
        progeny = {held.plant for held in edit.book.plants.values() if held.cross == cross.cross}
        for finding in list(edit.book.parent_findings):
            if finding.plant in progeny and finding.pollen_parent == SELF:
                text = f"{finding.text} Was a self of {code}, which was deleted.".strip()
                edit.update(finding, **_emptied(finding.odds), text=text)
    edit.update(replace(cross), **changed)


def _emptied(odds: float | None) -> dict[str, object]:
    return {"pollen_parent": "", "odds": odds, "grade": "unknown"}
