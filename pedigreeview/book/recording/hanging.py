"""What hangs on a record: everything that names it, counted, and what can be done with it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant, Record
from pedigreeview.book.references import ONE, named_by

__all__ = ["Hanging", "HangsOn", "certain_progeny", "descendants", "what_hangs_on"]

_FEW = 5
_OWN = ("scores", "genotypes", "blooms", "notes", "photos", "compatibility", "parent_findings")


@dataclass(frozen=True, slots=True)
class Hanging:
    """Records of one kind that name the record.

    what : such as 'progeny', 'crosses as seed parent', 'scores'
    count : how many
    examples : codes of the first few; empty where such records have none
    own : whether they are data of the record itself and go with it
    table : where they stand, if they are told by that alone; else ''
    """

    what: str
    count: int
    examples: tuple[str, ...]
    own: bool
    table: str = ""


@dataclass(frozen=True, slots=True)
class HangsOn:
    """Everything that hangs on a record, and the ways out.

    ways : words for functions of `deleting`: 'delete' (nothing but its own data hangs on it),
        'cull', 'with_progeny', 'unknown_parent', 'repoint' for a plant; 'delete', 'skip',
        'with_progeny', 'move' for a cross; 'delete', 'let_go' for any other record
    """

    hanging: tuple[Hanging, ...]
    ways: tuple[str, ...]

    @property
    def free(self) -> bool:
        """Whether nothing hangs on it but its own data."""
        return all(one.own for one in self.hanging)

    def sentence(self, key: str) -> str:
        """What hangs on it as one sentence."""
        if not self.hanging:
            return f"Nothing hangs on {key}."
        parts = []
        for one in self.hanging:
            shown = ", ".join(one.examples)
            more = ", ..." if one.examples and one.count > len(one.examples) else ""
            parts.append(f"{one.count} {one.what}{f' ({shown}{more})' if shown else ''}")
        return f"On {key} hang {'; '.join(parts)}."


def _hanging(
    what: str, records: Iterable[Record], *, own: bool = False, table: str = ""
) -> list[Hanging]:
    held = list(records)
    if not held:
        return []
    keys = [str(getattr(record, record.KEY[0])) for record in held if len(record.KEY) == 1]
    return [Hanging(what, len(held), tuple(keys[:_FEW]), own, table)]


def certain_progeny(book: Book, plant: str) -> list[Plant]:
    """Plants of a cross of which the plant is the seed or pollen parent, and those made from it."""
    crosses = {
        cross.cross
        for cross in book.crosses.values()
        if plant and plant in (cross.seed_parent, cross.pollen_parent)
    }
    return [
        other
        for other in book.plants.values()
        if other.cross in crosses or (plant and other.source == plant)
    ]


def descendants(book: Book, plants: Iterable[str]) -> set[str]:
    """The plants themselves and all that certainly come from them."""
    by_parent: dict[str, list[str]] = {}
    for cross in book.crosses.values():
        for code in {cross.seed_parent, cross.pollen_parent} - {""}:
            by_parent.setdefault(code, []).append(cross.cross)
    by_cross: dict[str, list[str]] = {}
    by_source: dict[str, list[str]] = {}
    for plant in book.plants.values():
        if plant.cross:
            by_cross.setdefault(plant.cross, []).append(plant.plant)
        if plant.source:
            by_source.setdefault(plant.source, []).append(plant.plant)
    found: set[str] = set()
    waiting = list(plants)
    while waiting:
        code = waiting.pop()
        if code in found:
            continue
        found.add(code)
        waiting += by_source.get(code, [])
        for cross_code in by_parent.get(code, ()):
            waiting += by_cross.get(cross_code, [])
    return found


def what_hangs_on(book: Book, record: Record) -> HangsOn:
    """What names a record, and the ways to be rid of it."""
    if isinstance(record, Plant):
        return _on_plant(book, record)
    if isinstance(record, Cross):
        return _on_cross(book, record)
    if len(record.KEY) != 1:
        return HangsOn((), ("delete",))
    key = getattr(record, record.KEY[0])
    found = _by_table(book, record.TABLE, key, skip=())
    own = all(one.own for one in found)
    return HangsOn(tuple(found), ("delete",) if own else ("let_go",))


def _by_table(book: Book, table: str, key: str, skip: Iterable[str]) -> list[Hanging]:
    by_table: dict[str, list[Record]] = {}
    for reference, record in named_by(book, table, key):
        if not reference.holds or reference.table in skip:
            continue
        held = by_table.setdefault(reference.table, [])
        if not any(other is record for other in held):
            held.append(record)
    found: list[Hanging] = []
    for name, records in by_table.items():
        what = ONE[name] if len(records) == 1 else name.replace("_", " ")
        found += _hanging(what, records, own=name in _OWN, table=name)
    return found


def _on_plant(book: Book, plant: Plant) -> HangsOn:
    code = plant.plant
    crosses = list(book.crosses.values())
    found = _hanging("progeny", certain_progeny(book, code))
    for side in ("seed", "pollen"):
        held = [cross for cross in crosses if getattr(cross, f"{side}_parent") == code]
        found += _hanging(f"{'cross' if len(held) == 1 else 'crosses'} as {side} parent", held)
    found += _by_table(
        book, "plants", code, skip=("plants", "crosses", "parent_findings", "compatibility")
    )
    own = [row for row in book.parent_findings if row.plant == code]
    what = "parent finding of its own" if len(own) == 1 else "parent findings of its own"
    found += _hanging(what, own, own=True)
    others = [r for r in book.parent_findings if r.pollen_parent == code and r.plant != code]
    what = "parent finding that names it" if len(others) == 1 else "parent findings that name it"
    found += _hanging(what, others)
    pairs = [row for row in book.compatibility if code in (row.plant, row.partner)]
    what = "compatibility record" if len(pairs) == 1 else "compatibility records"
    found += _hanging(what, pairs, own=True, table="compatibility")
    hangs = HangsOn(tuple(found), ())
    ways = ("delete",) if hangs.free else ("cull", "repoint", "unknown_parent", "with_progeny")
    return HangsOn(hangs.hanging, ways)


def _on_cross(book: Book, cross: Cross) -> HangsOn:
    code = cross.cross
    found = _hanging("progeny", (p for p in book.plants.values() if p.cross == code))
    found += _by_table(book, "crosses", code, skip=("plants",))
    work = [one for one in found if one.what not in ("note", "notes", "evidence")]
    if not work:
        return HangsOn(tuple(found), ("delete", "skip"))
    progeny = any(one.what == "progeny" for one in found)
    return HangsOn(tuple(found), ("move", "with_progeny") if progeny else ("delete",))
