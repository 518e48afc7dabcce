"""The records of a book: one dataclass for each table, the same words in code, window and files.

Every field that stands in a file is declared with `column`, which carries what the file formats
need: type, choices, the table whose key it names.  The readers and writers, the schema of the Data
Package and the checks all work from these declarations, so a column is written down once.

Conventions: text fields are never None (blank = not known); dates are ISO 8601 text that may stop
at the month or the year ('2021', '2021-05', '2021-05-17'), blank = not known; numbers that are not
known are None.  `extra` keeps columns of a file that this version does not know, so that they are
written back.
"""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from functools import cache
from typing import Any, ClassVar, Literal

__all__ = [
    "KINDS",
    "RAISED",
    "SELF",
    "TABLES",
    "AcceptedCheck",
    "Bloom",
    "Bookmark",
    "Column",
    "Compatibility",
    "Cross",
    "Evidence",
    "Genotype",
    "Harvest",
    "Locus",
    "Note",
    "Packet",
    "ParentFinding",
    "Photo",
    "Plant",
    "PollenCandidate",
    "PollenLot",
    "Pollination",
    "Record",
    "Score",
    "Sowing",
    "Trait",
    "columns",
]

SELF = "self"
"""The word that stands for the seed parent itself among the candidates for pollen parent."""

KINDS = ("variety", "plant", "family")
RAISED = (
    "founder",
    "cross",
    "seed_of",
    "sibbed_in",
    "cutting_of",
    "doubled_haploid_of",
    "doubled_of",
)
STATUSES = ("growing", "kept", "culled", "lost", "finished")
GRADES = ("certain", "probable", "possible", "unknown")
FERTILITY = ("fertile", "poor", "sterile")

Kind = Literal["text", "whole", "number", "date", "flag"]


@dataclass(frozen=True, slots=True)
class Column:
    """One column of a table as files know it."""

    name: str
    kind: Kind
    choices: tuple[str, ...]
    names: str
    """The table whose key the cell names, or ''."""
    required: bool
    default: Any


def column(
    kind: Kind = "text",
    *,
    default: Any = "",
    choices: tuple[str, ...] = (),
    names: str = "",
    required: bool = False,
) -> Any:
    """Declare a field that stands in files (see `Column`)."""
    meta = {"column": (kind, choices, names, required)}
    if required:
        return field(metadata=meta)
    return field(default=default, metadata=meta)


@dataclass(slots=True)
class Record:
    """Base of all records."""

    TABLE: ClassVar[str] = ""
    KEY: ClassVar[tuple[str, ...]] = ()


def _extra() -> dict[str, str]:
    return {}


@dataclass(slots=True)
class Plant(Record):
    """One node that can be a parent: a variety, a single plant or a family kept as a pool.

    `kind` and `raised` may be blank in a file; the book says what they then mean (`Book.kind`,
    `Book.raised`).
    """

    TABLE: ClassVar[str] = "plants"
    KEY: ClassVar[tuple[str, ...]] = ("plant",)

    plant: str = column(required=True)
    name: str = column()
    kind: str = column(choices=KINDS)
    raised: str = column(choices=RAISED)
    cross: str = column(names="crosses")
    source: str = column(names="plants")
    selfings: int = column("whole", default=0)
    fixation: float | None = column("number", default=None)
    crop: str = column()
    ploidy: int | None = column("whole", default=None)
    sown: str = column("date")
    status: str = column(choices=STATUSES)
    place: str = column()
    obtained_from: str = column()
    protected: str = column()
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Cross(Record):
    """One intended mating with its own code.

    A blank `pollen_parent` with candidates is an uncertain pollen parent; without candidates it is
    open-pollinated (`intended` 'open') or unknown.  A selfing names the same plant twice.
    """

    TABLE: ClassVar[str] = "crosses"
    KEY: ClassVar[tuple[str, ...]] = ("cross",)

    cross: str = column(required=True)
    seed_parent: str = column(names="plants")
    pollen_parent: str = column(names="plants")
    drawn: str = column(choices=("one", "each"))
    intended: str = column(choices=("cross", "selfing", "open"))
    direction_known: bool = column("flag", default=True)
    made_on: str = column("date")
    seed_doubt: str = column(choices=GRADES)
    pollen_doubt: str = column(choices=GRADES)
    state: str = column(choices=("planned", "made", "skipped"))
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class PollenCandidate(Record):
    """One plant, or 'self', that may have given the pollen of a cross, with its odds (0 to 1)."""

    TABLE: ClassVar[str] = "pollen_candidates"
    KEY: ClassVar[tuple[str, ...]] = ("cross", "candidate")

    cross: str = column(names="crosses", required=True)
    candidate: str = column(required=True)
    odds: float = column("number", required=True)
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Evidence(Record):
    """What speaks for or against one parent link of a cross."""

    TABLE: ClassVar[str] = "evidence"

    cross: str = column(names="crosses", required=True)
    side: str = column(choices=("seed", "pollen"), required=True)
    for_or_against: str = column(choices=("for", "against"), required=True)
    date: str = column("date")
    text: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class ParentFinding(Record):
    """What one plant shows of its own pollen parent; overrides the odds of its cross for it alone.

    `pollen_parent` is a code, 'self', or blank for unknown.  Several rows of one plant and date are
    the candidates of one finding, each with its `odds` (blank = 1); the latest date holds.
    """

    TABLE: ClassVar[str] = "parent_findings"

    plant: str = column(names="plants", required=True)
    pollen_parent: str = column()
    odds: float | None = column("number", default=None)
    grade: str = column(choices=GRADES)
    date: str = column("date")
    text: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Pollination(Record):
    """One working of a cross on one day."""

    TABLE: ClassVar[str] = "pollinations"
    KEY: ClassVar[tuple[str, ...]] = ("pollination",)

    pollination: str = column(required=True)
    cross: str = column(names="crosses", required=True)
    date: str = column("date")
    flowers: int | None = column("whole", default=None)
    emasculated_on: str = column("date")
    pollen_lot: str = column(names="pollen_lots")
    cover: str = column()
    tag: str = column()
    by: str = column()
    bud: str = column(choices=("closed", "unsure", "open"))
    set: int | None = column("whole", default=None)
    dropped: int | None = column("whole", default=None)
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Harvest(Record):
    """Fruits and seeds taken from one cross on one day."""

    TABLE: ClassVar[str] = "harvests"
    KEY: ClassVar[tuple[str, ...]] = ("harvest",)

    harvest: str = column(required=True)
    cross: str = column(names="crosses", required=True)
    date: str = column("date")
    fruits: int | None = column("whole", default=None)
    seeds: int | None = column("whole", default=None)
    packet: str = column(names="packets")
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Packet(Record):
    """A seed packet; `generation` is that of the seed, one ahead of the plant that bore it."""

    TABLE: ClassVar[str] = "packets"
    KEY: ClassVar[tuple[str, ...]] = ("packet",)

    packet: str = column(required=True)
    harvest: str = column(names="harvests")
    generation: str = column()
    borne_on: str = column(names="plants")
    covered: bool | None = column("flag", default=None)
    seeds: int | None = column("whole", default=None)
    left: int | None = column("whole", default=None)
    germination: float | None = column("number", default=None)
    place: str = column()
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Sowing(Record):
    """Seed sown from a packet, or straight from a cross or plant (`sown_from`)."""

    TABLE: ClassVar[str] = "sowings"
    KEY: ClassVar[tuple[str, ...]] = ("sowing",)

    sowing: str = column(required=True)
    packet: str = column(names="packets")
    sown_from: str = column()
    date: str = column("date")
    seeds: int | None = column("whole", default=None)
    up: int | None = column("whole", default=None)
    kept: int | None = column("whole", default=None)
    place: str = column()
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Trait(Record):
    """Something scored: a score on a scale, a measure with a unit, a category or yes/no."""

    TABLE: ClassVar[str] = "traits"
    KEY: ClassVar[tuple[str, ...]] = ("trait",)

    trait: str = column(required=True)
    type: str = column(choices=("score", "measure", "category", "yes_no"), required=True)
    unit: str = column()
    low: float | None = column("number", default=None)
    high: float | None = column("number", default=None)
    better: str = column(choices=("high", "low", "none"))
    values: str = column()
    """The values of a category, parted by ';'."""
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Score(Record):
    """One value of one trait, of the plant itself or of the seed that it bore (`of`)."""

    TABLE: ClassVar[str] = "scores"

    plant: str = column(names="plants", required=True)
    trait: str = column(names="traits", required=True)
    date: str = column("date")
    of: str = column(choices=("plant", "seed"))
    value: str = column()
    by: str = column()
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Locus(Record):
    """A gene with named alleles, best (dominant) first, parted by ';'."""

    TABLE: ClassVar[str] = "loci"
    KEY: ClassVar[tuple[str, ...]] = ("locus",)

    locus: str = column(required=True)
    alleles: str = column()
    dominance: str = column()
    phenotypes: str = column()
    chromosome: str = column()
    position_cM: float | None = column("number", default=None)  # noqa: N815 - the unit as files write it
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Genotype(Record):
    """The alleles of one plant at one locus, and how that is known."""

    TABLE: ClassVar[str] = "genotypes"

    plant: str = column(names="plants", required=True)
    locus: str = column(names="loci", required=True)
    genotype: str = column()
    known_by: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class PollenLot(Record):
    """Pollen collected on one day; several plants, parted by ';', for a mix."""

    TABLE: ClassVar[str] = "pollen_lots"
    KEY: ClassVar[tuple[str, ...]] = ("pollen_lot",)

    pollen_lot: str = column(required=True)
    plant: str = column()
    collected: str = column("date")
    stored: str = column()
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Bloom(Record):
    """First and last flower of a plant in one season."""

    TABLE: ClassVar[str] = "blooms"

    plant: str = column(names="plants", required=True)
    first_flower: str = column("date")
    last_flower: str = column("date")
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Compatibility(Record):
    """How a plant behaves as seed and as pollen parent, with one partner or with any (blank)."""

    TABLE: ClassVar[str] = "compatibility"

    plant: str = column(names="plants", required=True)
    partner: str = column(names="plants")
    as_seed: str = column(choices=FERTILITY)
    as_pollen: str = column(choices=FERTILITY)
    note: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Note(Record):
    """A dated text about any record: `about` is its kind and key, such as 'plant K17'."""

    TABLE: ClassVar[str] = "notes"

    about: str = column(required=True)
    date: str = column("date")
    text: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Bookmark(Record):
    """A named place in the picture: the focus and the pinned plants (parted by ';')."""

    TABLE: ClassVar[str] = "bookmarks"
    KEY: ClassVar[tuple[str, ...]] = ("name",)

    name: str = column(required=True)
    focus: str = column(names="plants")
    pinned: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class AcceptedCheck(Record):
    """A problem that the person has looked at and called right."""

    TABLE: ClassVar[str] = "accepted_checks"

    kind: str = column(required=True)
    keys: str = column()
    date: str = column("date")
    why: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


@dataclass(slots=True)
class Photo(Record):
    """A picture of a plant; `photo` is the file's name in the folder's `photos/`."""

    TABLE: ClassVar[str] = "photos"
    KEY: ClassVar[tuple[str, ...]] = ("photo",)

    photo: str = column(required=True)
    plant: str = column(names="plants")
    date: str = column("date")
    caption: str = column()
    extra: dict[str, str] = field(default_factory=_extra)


TABLES: dict[str, type[Record]] = {
    record.TABLE: record
    for record in (
        Plant,
        Cross,
        PollenCandidate,
        Evidence,
        ParentFinding,
        Pollination,
        Harvest,
        Packet,
        Sowing,
        Trait,
        Score,
        Locus,
        Genotype,
        PollenLot,
        Bloom,
        Compatibility,
        Note,
        Bookmark,
        AcceptedCheck,
        Photo,
    )
}
"""Every table of a book but `book` itself, by its name, in the order in which files are written."""


@cache
def columns(record: type[Record]) -> tuple[Column, ...]:
    """The columns of a record in the order of its table."""
    found = []
    for item in fields(record):
        if "column" in item.metadata:
            kind, choices, names, required = item.metadata["column"]
            default = None if required else item.default
            found.append(Column(item.name, kind, choices, names, required, default))
    return tuple(found)
