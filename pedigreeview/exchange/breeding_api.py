"""The open Breeding API standard, version 2.1, as JSON: germplasm, crosses, planned crosses and
pedigree.

A file holds the standard's answers to these four questions side by side, under the names of the
questions; a single answer, its bare list or one object, as pasted from anywhere, is read as well.
Field names and the words for kinds of cross and parent were read in the published schema of the
standard (germplasm part: Cross, CrossParent, CrossType, ParentType, PedigreeNode, PlannedCross);
those of Germplasm, and the envelope of an answer, are from memory.

What the standard has no field for goes into `additionalInfo`, which it leaves free.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange.breeding_api_reading import (
    OURS,
    QUESTIONS,
    SETTINGS,
    STATUS,
    parse,
    read,
)
from pedigreeview.exchange.checked_records import record_values
from pedigreeview.exchange.json_files import write_json
from pedigreeview.exchange.left_out import tables_left_out
from pedigreeview.exchange.plant_notation import notation_of
from pedigreeview.exchange.writing import replace_file

__all__ = ["QUESTIONS", "lost", "parse", "read", "to_text", "write"]

_TYPES = {"cross": "BIPARENTAL", "selfing": "SELF", "open": "OPEN_POLLINATED"}
_CARRIED = ("plants", "crosses", "pollen_candidates", "pollinations")
_CLONAL = ("cutting_of",)


def lost(book: Book) -> list[str]:
    """What of a book the standard's four answers do not carry, one sentence each."""
    said = tables_left_out(book, _CARRIED)
    if any(item.extra for item in book.pollen_candidates):
        said.append("The further columns of candidates for pollen parent.")
    if any(item.pollen_lot for item in book.pollinations.values()):
        said.append("The lots of pollen that pollinations name.")
    settings = [*(["name"] if book.settings.name else []), *book.settings.extra]
    if book.settings.code_pattern:
        settings.append("code_pattern")
    if settings:
        said.append(f"The book's settings {', '.join(settings)}.")
    return said


def write(book: Book, path: str | Path) -> None:
    """Write a book as one JSON file of four answers."""
    text = to_text(book)
    with replace_file(path) as beside:
        beside.write_text(text, encoding="utf-8", newline="\n")


# Out ---------------------------------------------------------------------------------------------


def to_text(book: Book) -> str:
    """The four answers as one JSON text."""
    from pedigreeview.network.parentage import parents_by_plant

    parents = parents_by_plant(book)
    answers: dict[str, list[dict[str, Any]]] = {
        "germplasm": [_germplasm(book, plant, parents) for plant in book.plants.values()],
        "crosses": [],
        "plannedcrosses": [],
        "pedigree": [_node(book, plant) for plant in book.plants.values()],
    }
    worked: dict[str, list[dict[str, Any]]] = {}
    for record in book.pollinations.values():
        worked.setdefault(record.cross, []).append(
            {
                "pollinationNumber": record.pollination,
                "pollinationSuccessful": None if record.set is None else record.set > 0,
                "pollinationTimeStamp": _stamp(record.date),
                OURS: {**record_values(record), **_extra(record.extra)},
            }
        )
    candidates = book.candidates()
    for cross in book.crosses.values():
        planned = cross.state in ("planned", "skipped")
        held = _cross(book, cross, candidates.get(cross.cross, []), planned)
        if not planned or worked.get(cross.cross):
            held["pollinationEvents"] = [
                {k: v for k, v in event.items() if k != OURS}
                for event in worked.get(cross.cross, [])
            ]
            details = {e["pollinationNumber"]: e[OURS] for e in worked.get(cross.cross, [])}
            if details:
                held["additionalInfo"]["pollinations"] = details
        answers["plannedcrosses" if planned else "crosses"].append(held)
    settings = {
        name: getattr(book.settings, name)
        for name in SETTINGS
        if getattr(book.settings, name) not in (None, "")
    }
    document: dict[str, Any] = {name: _answer(data) for name, data in answers.items()}
    document["germplasm"]["metadata"]["additionalInfo"] = {"settings": settings}
    return write_json(document)


def _answer(data: list[dict[str, Any]]) -> dict[str, Any]:
    pages = {
        "currentPage": 0, "pageSize": max(len(data), 1), "totalCount": len(data),
        "totalPages": 1 if data else 0,
    }  # fmt: skip
    return {
        "metadata": {"datafiles": [], "pagination": pages, "status": []},
        "result": {"data": data},
    }


def _extra(extra: Mapping[str, str]) -> dict[str, Any]:
    return {"extra": dict(extra)} if extra else {}


def _stamp(date: str) -> str | None:
    return f"{date}T00:00:00Z" if len(date) == 10 else None


def _germplasm(book: Book, plant: Plant, parents: dict[str, Any]) -> dict[str, Any]:
    said = record_values(plant)
    notation, known = "", True
    try:
        notation = notation_of(book, plant.plant, most=32, parents=parents).text
    except Fault:
        # A plant among its own ancestors has no notation; its records are written all the same.
        known = False
    founder = book.raised(plant) == "founder"
    return {
        "germplasmDbId": plant.plant,
        "germplasmName": plant.name or plant.plant,
        "defaultDisplayName": plant.name or plant.plant,
        "accessionNumber": plant.plant,
        "commonCropName": book.crop(plant),
        "pedigree": "" if founder or not known else notation,
        "seedSource": plant.obtained_from,
        "acquisitionDate": None,
        "biologicalStatusOfAccessionCode": "500" if book.kind(plant) == "variety" else "410",
        "synonyms": [],
        "additionalInfo": {OURS: {**said, **_extra(plant.extra)}},
    }


def _parent(book: Book, code: str, kind: str) -> dict[str, Any] | None:
    if not code:
        return None
    plant = book.plants.get(code)
    name = plant.name if plant is not None and plant.name else code
    return {"germplasmDbId": code, "germplasmName": name, "parentType": kind}


def _cross(book: Book, cross: Cross, candidates: Iterable[Any], planned: bool) -> dict[str, Any]:
    said = record_values(cross)
    odds = [{"candidate": item.candidate, "odds": float(item.odds)} for item in candidates]
    selfed = cross.seed_parent and cross.seed_parent == cross.pollen_parent
    kind = "SELF" if selfed else _TYPES.get(cross.intended, "BIPARENTAL")
    one, two = ("SELF", "SELF") if selfed else ("FEMALE", "MALE")
    what = "plannedCross" if planned else "cross"
    held: dict[str, Any] = {
        f"{what}DbId": cross.cross,
        f"{what}Name": cross.cross,
        "crossType": kind,
        "parent1": _parent(book, cross.seed_parent, one),
        "parent2": _parent(book, cross.pollen_parent, two),
        "additionalInfo": {OURS: {**said, **_extra(cross.extra)}},
    }
    if odds:
        held["additionalInfo"]["pollenCandidates"] = odds
    if planned:
        held["status"] = STATUS[cross.state]
    return held


def _node(book: Book, plant: Plant) -> dict[str, Any]:
    cross = book.crosses.get(plant.cross)
    parents: list[dict[str, Any]] = []
    if cross is not None:
        for side in (
            _parent(book, cross.seed_parent, "FEMALE"),
            _parent(book, cross.pollen_parent, "MALE"),
        ):
            if side is not None:
                parents.append(side)
        if cross.seed_parent and cross.seed_parent == cross.pollen_parent:
            parents = parents[:1]
            parents[0]["parentType"] = "SELF"
    elif plant.source:
        clonal = book.raised(plant) in _CLONAL
        source = _parent(book, plant.source, "CLONAL" if clonal else "POPULATION")
        parents = [] if source is None else [source]
    year = cross.made_on[:4] if cross is not None else ""
    return {
        "germplasmDbId": plant.plant,
        "germplasmName": plant.name or plant.plant,
        "defaultDisplayName": plant.name or plant.plant,
        "crossingYear": int(year) if year.isdigit() else None,
        "familyCode": plant.cross or None,
        "parents": parents,
    }
