"""The book: all records in memory, with the meaning of what a record leaves blank.

A `Book` is plain data.  Readers fill it, the network is compiled from it, the checks read it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, fields
from pathlib import Path
from typing import TYPE_CHECKING, Any, cast

from pedigreeview.book.crops import Crop, crop_named
from pedigreeview.book.records import (
    TABLES,
    AcceptedCheck,
    Bloom,
    Bookmark,
    Compatibility,
    Cross,
    Evidence,
    Genotype,
    Harvest,
    Locus,
    Note,
    Packet,
    ParentFinding,
    Photo,
    Plant,
    PollenCandidate,
    PollenLot,
    Pollination,
    Record,
    Score,
    Sowing,
    Trait,
)

if TYPE_CHECKING:
    from pedigreeview.book.columns import PlantColumns
    from pedigreeview.book.row_ids import RowIds
    from pedigreeview.book.row_images import StoredFile

__all__ = ["Book", "BookSettings"]


@dataclass(slots=True)
class BookSettings:
    """What numbers depend on, and the book's name; stored in the book, never among preferences."""

    name: str = ""
    crop: str = ""
    ploidy: int | None = None
    founders_as: str = ""
    """Kind of a founder that does not say: 'variety' or 'plant'; blank: variety, not asked yet."""
    variety_fixation: float = 1.0
    """Fixation of a founder variety that does not say: 1 is a pure line."""
    plant_fixation: float = 0.0
    double_reduction: float | None = None
    """Double reduction α of tetraploids, 0 to 1/6; None: the crop's, else 0."""
    outcrossing: float | None = None
    """Outcrossing rate of open-pollinated seed, 0 to 1; None: the crop's."""
    code_pattern: str = ""
    extra: dict[str, str] = field(default_factory=dict)


@dataclass(slots=True)
class Book:
    """Everything recorded; tables with a key are dicts by code, the others lists in file order."""

    settings: BookSettings = field(default_factory=BookSettings)
    plants: dict[str, Plant] = field(default_factory=dict)
    crosses: dict[str, Cross] = field(default_factory=dict)
    pollen_candidates: list[PollenCandidate] = field(default_factory=list)
    evidence: list[Evidence] = field(default_factory=list)
    parent_findings: list[ParentFinding] = field(default_factory=list)
    pollinations: dict[str, Pollination] = field(default_factory=dict)
    harvests: dict[str, Harvest] = field(default_factory=dict)
    packets: dict[str, Packet] = field(default_factory=dict)
    sowings: dict[str, Sowing] = field(default_factory=dict)
    traits: dict[str, Trait] = field(default_factory=dict)
    scores: list[Score] = field(default_factory=list)
    loci: dict[str, Locus] = field(default_factory=dict)
    genotypes: list[Genotype] = field(default_factory=list)
    pollen_lots: dict[str, PollenLot] = field(default_factory=dict)
    blooms: list[Bloom] = field(default_factory=list)
    compatibility: list[Compatibility] = field(default_factory=list)
    notes: list[Note] = field(default_factory=list)
    bookmarks: dict[str, Bookmark] = field(default_factory=dict)
    accepted_checks: list[AcceptedCheck] = field(default_factory=list)
    photos: dict[str, Photo] = field(default_factory=dict)
    unknown_tables: dict[str, str] = field(default_factory=dict)
    """Tables of a folder that this version does not know: name to CSV text, written back as is."""
    descriptor: dict[str, Any] = field(default_factory=dict, repr=False)
    """What the `datapackage.json` of the folder that was read says beside the tables, kept to be
    written back."""
    path: Path | None = None
    """The file or folder that the book was read from."""
    remarks: list[str] = field(default_factory=list)
    """What the reader did that the person should know, one sentence each ('kept as notes ...')."""
    columns: PlantColumns | None = field(default=None, repr=False, compare=False)
    """The columns of a large table, from which its records are made (`book.columns.columns_of`)."""
    files: dict[str, StoredFile] = field(default_factory=dict, repr=False, compare=False)
    """Photos and other files that the book's own file holds, by their path in a folder
    ('photos/a.jpg'); `BookFile.file` gives their bytes.  Empty for a table or a folder."""
    row_ids: RowIds | None = field(default=None, repr=False, compare=False)
    """The row ids that the store keeps; None where nothing was written in the book yet."""

    def table(self, name: str) -> list[Record]:
        """All records of one table, in file order."""
        held = getattr(self, name)
        return list(held.values()) if isinstance(held, dict) else list(held)

    def add(self, record: Record) -> None:
        """Put a record in its table.

        Raises
        ------
        ValueError : the table has a record with the same key
        """
        held = getattr(self, record.TABLE)
        if isinstance(held, dict):
            key = getattr(record, record.KEY[0])
            if key in held:
                raise ValueError(f"{record.TABLE} already has {key!r}")
            held[key] = record
        else:
            held.append(record)

    def records(self) -> Iterator[Record]:
        """Every record of every table."""
        for name in TABLES:
            yield from self.table(name)

    # What a blank means -------------------------------------------------------------------------

    def raised(self, plant: Plant) -> str:
        """How the plant arose; blank in the record means by its cross, else founder."""
        return plant.raised or ("cross" if plant.cross else "founder")

    def kind(self, plant: Plant) -> str:
        """variety, plant or family; a founder that does not say takes the book's setting."""
        if plant.kind:
            return plant.kind
        if self.raised(plant) == "founder":
            return self.settings.founders_as or "variety"
        return "plant"

    def is_pool(self, plant: Plant) -> bool:
        """Whether the plant's code stands for many: a variety or a family."""
        return self.kind(plant) in ("variety", "family")

    def founder_fixation(self, plant: Plant) -> float:
        """Fixation of a founder, 0 to 1: its own, else the setting for its kind."""
        if plant.fixation is not None:
            return plant.fixation
        if self.kind(plant) == "variety":
            return self.settings.variety_fixation
        return self.settings.plant_fixation

    def crop(self, plant: Plant) -> str:
        """Name of the plant's crop: its own, else the book's; may be blank."""
        return plant.crop or self.settings.crop

    def crop_facts(self, plant: Plant) -> Crop | None:
        """What is known of the plant's crop, or None."""
        return crop_named(self.crop(plant))

    def founder_ploidy(self, plant: Plant) -> int:
        """Ploidy of a plant that comes from no other: its own, else the crop's, else the book's."""
        if plant.ploidy is not None:
            return plant.ploidy
        facts = self.crop_facts(plant)
        if facts is not None and not facts.several_ploidies:
            return facts.ploidy
        return self.settings.ploidy if self.settings.ploidy is not None else 2

    def outcrossing(self, plant: Plant) -> float | None:
        """Outcrossing rate of open-pollinated seed borne on the plant, or None if not known."""
        if self.settings.outcrossing is not None:
            return self.settings.outcrossing
        facts = self.crop_facts(plant)
        return facts.outcrossing if facts is not None else None

    def double_reduction(self) -> float:
        """Double reduction α of tetraploids: the book's, else that of its crop, else 0."""
        if self.settings.double_reduction is not None:
            return self.settings.double_reduction
        facts = crop_named(self.settings.crop)
        return facts.double_reduction if facts is not None else 0.0

    def silent_founders(self) -> list[str]:
        """Codes of founders that say neither kind nor fixation."""
        return [
            plant.plant
            for plant in self.plants.values()
            if self.raised(plant) == "founder" and not plant.kind and plant.fixation is None
        ]

    # Look-ups -----------------------------------------------------------------------------------

    def candidates(self) -> dict[str, list[PollenCandidate]]:
        """Candidates for pollen parent by cross."""
        found: dict[str, list[PollenCandidate]] = {}
        for candidate in self.pollen_candidates:
            found.setdefault(candidate.cross, []).append(candidate)
        return found

    def findings(self) -> dict[str, list[ParentFinding]]:
        """The finding that holds for each plant that has one: the rows of its latest date."""
        latest: dict[str, list[ParentFinding]] = {}
        for row in self.parent_findings:
            held = latest.get(row.plant)
            if held is None or row.date > held[0].date:
                latest[row.plant] = [row]
            elif row.date == held[0].date:
                held.append(row)
        return latest


def _assert_every_table_has_a_field() -> None:
    names = {item.name for item in fields(Book)}
    missing = cast("set[str]", set(TABLES)) - names
    assert not missing, f"Book lacks {missing}"


_assert_every_table_has_a_field()
