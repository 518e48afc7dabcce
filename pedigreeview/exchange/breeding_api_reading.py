"""Answers of the Breeding API standard, read into a book (see `breeding_api`)."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.dates import is_date
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import SELF, Plant
from pedigreeview.exchange.checked_records import Gathering, settings_from
from pedigreeview.exchange.json_files import read_json
from pedigreeview.exchange.table_parents import cross_name
from pedigreeview.exchange.text_files import decode, read_bytes
from pedigreeview.exchange.ticking import Tick, no_tick

__all__ = ["OURS", "QUESTIONS", "SETTINGS", "STATUS", "parse", "read"]

QUESTIONS = ("germplasm", "crosses", "plannedcrosses", "pedigree")
"""The standard's questions whose answers are read and written."""

STATUS = {"planned": "TODO", "made": "DONE", "skipped": "SKIPPED"}
"""The standard's word for each state of a cross."""

SETTINGS = (
    "crop", "ploidy", "founders_as", "variety_fixation", "plant_fixation", "double_reduction",
    "outcrossing",
)  # fmt: skip
"""Settings of a book that go along with the germplasm."""

OURS = "crossingBook"
"""The name of our own cells in `additionalInfo`, which the standard leaves free."""

_STATE = {status: state for state, status in STATUS.items()}
_INTENDED = {
    "BIPARENTAL": "cross", "SELF": "selfing", "OPEN_POLLINATED": "open",
    "BULK_SELFED": "selfing", "BULK_OPEN_POLLINATED": "open",
}  # fmt: skip


def read(path: str | Path) -> Book:
    """Read a book from a JSON file.

    Raises
    ------
    FileFaults : with everything that is wrong
    Fault : it is none of the standard's answers
    """
    text, remarks = decode(read_bytes(Path(path)), str(path))
    book = parse(text, str(path))
    book.remarks[:0] = remarks
    book.path = Path(path)
    return book


def parse(text: str, name: str = "pasted text", tick: Tick = no_tick) -> Book:
    """Read a book from JSON text (see `read`)."""
    answers = _answers(read_json(text, name), name)
    gathering = Gathering(name, tick=tick)
    names: dict[str, str] = {}
    for item in answers["germplasm"]:
        _read_germplasm(gathering, item, names)
    for question in ("crosses", "plannedcrosses"):
        for item in answers[question]:
            _read_cross(gathering, item, question == "plannedcrosses", names)
    for item in answers["pedigree"]:
        _read_node(gathering, item)
    _add_missing(gathering, names)
    book = gathering.book
    settings = answers["settings"]
    if isinstance(settings, dict):
        known = {key: value for key, value in settings.items() if key in SETTINGS}
        book.settings = settings_from(known)
    return gathering.finish()


def _answers(document: Any, name: str) -> dict[str, Any]:
    found: dict[str, Any] = {question: [] for question in QUESTIONS}
    found["settings"] = None
    waiting: list[tuple[str, Any]] = [("", document)]
    while waiting:
        question, part = waiting.pop()
        if isinstance(part, list):
            objects = [item for item in part if isinstance(item, dict)]
            if len(objects) < len(part):
                raise Fault(
                    "The list holds something other than objects.", Place(file=name), "Check it."
                )
            for item in objects:
                found[question or _question(item, name)].append(item)
        elif isinstance(part, dict):
            said = part.get("metadata")
            if isinstance(said, dict) and isinstance(said.get("additionalInfo"), dict):
                found["settings"] = said["additionalInfo"].get("settings")
            if any(key in part for key in QUESTIONS):
                waiting += [(key, part[key]) for key in QUESTIONS if key in part]
            elif "result" in part:
                waiting.append((question, part["result"]))
            elif isinstance(part.get("data"), list):
                waiting.append((question, part["data"]))
            else:
                found[question or _question(part, name)].append(part)
        else:
            raise Fault(
                "This is no answer of the Breeding API standard.",
                Place(file=name),
                "Choose a file of germplasm, crosses, planned crosses or pedigree.",
            )
    return found


def _question(item: dict[str, Any], name: str) -> str:
    if "crossDbId" in item or "crossName" in item:
        return "crosses"
    if "plannedCrossDbId" in item or "plannedCrossName" in item:
        return "plannedcrosses"
    if "parents" in item or "pedigreeString" in item or "progeny" in item:
        return "pedigree"
    if "germplasmDbId" in item or "germplasmName" in item:
        return "germplasm"
    raise Fault(
        "An object is neither germplasm nor a cross nor a node of a pedigree.",
        Place(file=name),
        "It wants a germplasmDbId, a crossDbId or a plannedCrossDbId.",
    )


def _text(held: Any) -> str:
    if isinstance(held, bool):
        return "true" if held else "false"
    if isinstance(held, int | float):
        return repr(held)
    return held if isinstance(held, str) else ""


def _said(item: dict[str, Any]) -> tuple[dict[str, str], dict[str, str]]:
    """Our own cells and further columns in the free part of an object."""
    free = item.get("additionalInfo")
    ours = free.get(OURS) if isinstance(free, dict) else None
    if not isinstance(ours, dict):
        return {}, {}
    extra = ours.get("extra")
    further = {str(k): _text(v) for k, v in extra.items()} if isinstance(extra, dict) else {}
    return {str(k): _text(v) for k, v in ours.items() if k != "extra"}, further


def _read_germplasm(gathering: Gathering, item: dict[str, Any], names: dict[str, str]) -> None:
    code = _text(item.get("germplasmDbId")) or _text(item.get("germplasmName"))
    name = _text(item.get("germplasmName"))
    cells, extra = _said(item)
    if not cells:
        shown = _text(item.get("defaultDisplayName")) or name
        status = _text(item.get("biologicalStatusOfAccessionCode"))
        cells = {
            "name": shown if shown != code else "",
            "crop": _text(item.get("commonCropName")),
            "obtained_from": _text(item.get("seedSource")),
            "kind": "variety" if status[:1] in ("3", "5") and status else "",
        }
        extra = {
            key: _text(item.get(key))
            for key in ("germplasmPUI", "genus", "species", "pedigree", "countryOfOriginCode",
                        "instituteCode", "acquisitionDate")
            if _text(item.get(key))
        }  # fmt: skip
    cells["plant"] = code
    record = gathering.add("plants", cells, extra)
    if record is not None and name:
        names.setdefault(name, code)


def _parent_code(item: Any, names: Mapping[str, str]) -> tuple[str, str]:
    if not isinstance(item, dict):
        return "", ""
    name = _text(item.get("germplasmName"))
    code = _text(item.get("germplasmDbId")) or names.get(name, name)
    return code or _text(item.get("observationUnitName")), _text(item.get("parentType"))


def _read_cross(
    gathering: Gathering, item: dict[str, Any], planned: bool, names: Mapping[str, str]
) -> None:
    what = "plannedCross" if planned else "cross"
    code = _text(item.get(f"{what}DbId")) or _text(item.get(f"{what}Name"))
    one, one_is = _parent_code(item.get("parent1"), names)
    two, two_is = _parent_code(item.get("parent2"), names)
    known = True
    if one_is == "MALE" and two_is != "MALE":
        one, two = two, one
    elif "FEMALE" not in (one_is, two_is) and one != two:
        known = two_is == "MALE" or not (one and two)
    cells, extra = _said(item)
    if not cells:
        kind = _text(item.get("crossType"))
        selfed = bool(one) and one == two
        cells = {
            "intended": "selfing" if selfed else _INTENDED.get(kind, ""),
            "direction_known": "true" if known else "false",
            "note": "" if kind in (*_INTENDED, "") else f"kind of cross: {kind}",
        }
        if kind == "SELF" and not two:
            two = one
        name = _text(item.get(f"{what}Name"))
        if name and name != code:
            extra = {"name": name}
    if cells.get("intended") == "selfing" and one and two and one != two:
        cells["intended"] = ""
    if planned and not cells.get("state"):
        cells["state"] = _STATE.get(_text(item.get("status")), "planned")
    cells.update(cross=code, seed_parent=one, pollen_parent=two)
    events = item.get("pollinationEvents")
    stamps = [
        _text(event.get("pollinationTimeStamp"))[:10]
        for event in (events if isinstance(events, list) else [])
        if isinstance(event, dict)
    ]
    if not cells.get("made_on") and stamps and not _said(item)[0] and is_date(stamps[0]):
        cells["made_on"] = stamps[0]
    if gathering.add("crosses", cells, extra) is None:
        return
    free = item.get("additionalInfo")
    odds = free.get("pollenCandidates") if isinstance(free, dict) else None
    for held in odds if isinstance(odds, list) else []:
        if isinstance(held, dict):
            gathering.add("pollen_candidates", {
                "cross": code, "candidate": _text(held.get("candidate")),
                "odds": _text(held.get("odds")),
            })  # fmt: skip
    details = free.get("pollinations") if isinstance(free, dict) else None
    _read_events(gathering, code, events, details if isinstance(details, dict) else {})


def _read_events(gathering: Gathering, cross: str, events: Any, details: Mapping[str, Any]) -> None:
    for at, event in enumerate(events if isinstance(events, list) else [], start=1):
        if not isinstance(event, dict):
            continue
        number = _text(event.get("pollinationNumber")) or f"{cross}/{at}"
        if number not in details and number in gathering.book.pollinations:
            number = f"{cross}/{number}"
        ours = details.get(number)
        cells: dict[str, Any] = {}
        extra: dict[str, str] = {}
        if isinstance(ours, dict):
            cells = {str(k): _text(v) for k, v in ours.items() if k != "extra"}
            # A lot of pollen does not go along.
            cells.pop("pollen_lot", None)
            held = ours.get("extra")
            extra = {str(k): _text(v) for k, v in held.items()} if isinstance(held, dict) else {}
        else:
            stamp = _text(event.get("pollinationTimeStamp"))
            date = re.match(r"[0-9]{4}-[0-9]{2}-[0-9]{2}", stamp)
            cells["date"] = date[0] if date and is_date(date[0]) else ""
            success = event.get("pollinationSuccessful")
            if isinstance(success, bool):
                cells["note"] = "it took" if success else "it did not take"
        gathering.add("pollinations", {**cells, "pollination": number, "cross": cross}, extra)


def _read_node(gathering: Gathering, item: dict[str, Any]) -> None:
    """Parents of a plant that the crosses do not tell already."""
    code = _text(item.get("germplasmDbId")) or _text(item.get("germplasmName"))
    if not code:
        gathering.fault("A node of the pedigree has no germplasmDbId.", "Give it one.")
        return
    plant = gathering.book.plants.get(code)
    if plant is None:
        name = _text(item.get("defaultDisplayName")) or _text(item.get("germplasmName"))
        plant_record = gathering.add(
            "plants", {"plant": code, "name": name if name != code else ""}
        )
        if not isinstance(plant_record, Plant):
            return
        plant = plant_record
    listed = item.get("parents")
    parents = [
        (_parent_code(held, {})[0], _text(held.get("parentType")))
        for held in (listed if isinstance(listed, list) else [])
        if isinstance(held, dict)
    ]
    parents = [(parent, kind) for parent, kind in parents if parent]
    if not parents or plant.cross or plant.source or plant.raised:
        return
    seed = next((parent for parent, kind in parents if kind == "FEMALE"), "")
    pollen = next((parent for parent, kind in parents if kind == "MALE"), "")
    only = parents[0]
    if len(parents) == 1 and only[1] == "CLONAL":
        plant.source, plant.raised = only[0], "cutting_of"
        return
    known = True
    if len(parents) == 1 and only[1] == "SELF":
        seed = pollen = only[0]
    elif len(parents) == 2 and not (seed or pollen):
        (seed, _), (pollen, _) = sorted(parents)
        known = False
    elif len(parents) == 1 and only[1] == "POPULATION":
        seed, pollen = only[0], ""
    elif len(parents) > 2:
        gathering.book.remarks.append(
            f"{code!r} has {len(parents)} parents; those without a part in the cross were left out."
        )
    family = _text(item.get("familyCode"))
    pair = (seed, pollen)
    name = family if family else cross_name(seed, pollen, (), taken=())
    held_cross = gathering.book.crosses.get(name)
    if held_cross is not None and (held_cross.seed_parent, held_cross.pollen_parent) != pair:
        name = cross_name(seed, pollen, (), taken=gathering.book.crosses)
        held_cross = None
    if held_cross is None:
        cells = {
            "cross": name, "seed_parent": seed, "pollen_parent": pollen,
            "direction_known": "true" if known else "false",
            "intended": "selfing" if seed and seed == pollen else "",
        }  # fmt: skip
        gathering.add("crosses", cells)
    plant.cross = name


def _add_missing(gathering: Gathering, names: Mapping[str, str]) -> None:
    book = gathering.book
    wanted: dict[str, None] = {}
    for cross in book.crosses.values():
        wanted.update(dict.fromkeys((cross.seed_parent, cross.pollen_parent)))
    wanted.update((plant.source, None) for plant in book.plants.values())
    wanted.update(
        (item.candidate, None) for item in book.pollen_candidates if item.candidate != SELF
    )
    added = [code for code in wanted if code and code not in book.plants]
    for code in added:
        gathering.add("plants", {"plant": code})
    if added:
        shown = ", ".join(repr(code) for code in added[:8])
        book.remarks.append(
            f"{len(added)} parents are not listed and were taken as founders: {shown}."
        )
