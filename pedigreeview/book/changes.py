"""What an edit changed, for those who show the book: which records, and whether the pedigree."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from pedigreeview.book.references import ONE
from pedigreeview.book.row_images import ROW_TYPES, SETTINGS, RowChange, table_columns

__all__ = ["Change", "change_of"]

_PEDIGREE: dict[str, frozenset[str]] = {
    "plants": frozenset(
        ("plant", "kind", "raised", "cross", "source", "selfings", "fixation", "crop", "ploidy")
    ),
    "crosses": frozenset(
        ("cross", "seed_parent", "pollen_parent", "drawn", "intended", "direction_known")
    ),
    "pollen_candidates": frozenset(("cross", "candidate", "odds")),
    "parent_findings": frozenset(("plant", "pollen_parent", "odds", "date")),
    SETTINGS: frozenset(
        (
            "crop",
            "ploidy",
            "founders_as",
            "variety_fixation",
            "plant_fixation",
            "double_reduction",
            "outcrossing",
        )
    ),
}
"""Columns from which the network is built."""


@dataclass(frozen=True)
class Change:
    """What one edit, or several, changed.

    Attributes
    ----------
    words : as the menu says it after 'Undo'
    keys : by table, the keys that were touched; for a table without a key the plants and crosses
        that its records are about; for the settings ('book') their names
    pedigree : whether the network must be built anew
    """

    words: str
    keys: Mapping[str, frozenset[str]]
    pedigree: bool

    def then(self, other: Change) -> Change:
        """This change and another after it, under the words of the later."""
        keys = {
            table: self.keys.get(table, frozenset()) | other.keys.get(table, frozenset())
            for table in {**self.keys, **other.keys}
        }
        return Change(other.words, keys, self.pedigree or other.pedigree)


def change_of(words: str, changes: Iterable[RowChange]) -> Change:
    """The change that rows make up; rows of an update must be whole."""
    keys: dict[str, set[str]] = {}
    pedigree = False
    for change in changes:
        differing = change.differing()
        found = keys.setdefault(change.table, set())
        if change.table == SETTINGS:
            found |= differing
        else:
            for row in (change.before, change.after):
                if row is not None:
                    found |= _about(change.table, row)
        pedigree = pedigree or bool(differing & _PEDIGREE.get(change.table, frozenset()))
    return Change(words, {table: frozenset(found) for table, found in keys.items()}, pedigree)


def _about(table: str, row: Mapping[str, Any]) -> set[str]:
    """The keys that a row of a table stands for."""
    record_type = ROW_TYPES[table]
    if len(record_type.KEY) == 1:
        found = {row[record_type.KEY[0]]}
    elif table == "notes":
        found = {_said_key(row["about"])}
    elif table == "accepted_checks":
        found = {part.strip() for part in row["keys"].split(";")}
    else:
        found = {
            row[column.name]
            for column in table_columns(table)
            if column.names in ("plants", "crosses")
        }
    return {key for key in found if key}


def _said_key(about: str) -> str:
    for one in sorted(ONE.values(), key=len, reverse=True):
        for word in (one, one.replace(" ", "_")):
            if about.startswith(f"{word} "):
                return about[len(word) + 1 :]
    return about
