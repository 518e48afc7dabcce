"""Checks of what stands on labels: names and codes of records that a person would read as one."""

from __future__ import annotations

from collections.abc import Iterator

from pedigreeview.book.book import Book
from pedigreeview.book.look_alikes import sight
from pedigreeview.book.problems import Problem
from pedigreeview.book.references import ONE

__all__ = ["near_duplicate_key", "near_duplicate_name", "tag_used_twice"]

_KEYED = (
    "crosses",
    "pollinations",
    "harvests",
    "packets",
    "sowings",
    "traits",
    "loci",
    "pollen_lots",
)


def near_duplicate_key(book: Book) -> Iterator[Problem]:
    """Two records of one table, other than plants, whose codes differ only by case and the like.

    Loci are left out where they differ by case alone: 'R' and 'r' are two genes to some.
    """
    for table in _KEYED:
        alike: dict[str, list[str]] = {}
        for key in getattr(book, table):
            shown = "".join(key.split()) if table == "loci" else sight(key)
            alike.setdefault(shown, []).append(key)
        for keys in alike.values():
            if len(keys) < 2:
                continue
            shown = " and ".join(f"'{key}'" for key in keys)
            yield Problem(
                "near_duplicate_key",
                "warning",
                (),
                f"The {table.replace('_', ' ')} {shown} would be read as one {ONE[table]}.",
                "Give one of them another code, or make them one.",
                tuple((table, key) for key in keys),
            )


def near_duplicate_name(book: Book) -> Iterator[Problem]:
    """Varieties and plants of different codes whose names would be read as one.

    Cuttings carry the name of their plant, and a seed lot that of its variety.
    """
    alike: dict[str, list[str]] = {}
    for plant in book.plants.values():
        if plant.name.strip():
            alike.setdefault(sight(plant.name), []).append(plant.plant)
    for codes in alike.values():
        own = [code for code in codes if not book.plants[code].source]
        if len(own) < 2:
            continue
        shown = " and ".join(f"{code} '{book.plants[code].name}'" for code in own)
        yield Problem(
            "near_duplicate_name",
            "note",
            tuple(own),
            f"The names of {shown} would be read as one.",
            "Make them one plant if they are; else give one another name.",
        )


def tag_used_twice(book: Book) -> Iterator[Problem]:
    """One tag on pollinations of different crosses in one year."""
    tags: dict[tuple[str, str], list[str]] = {}
    for row in book.pollinations.values():
        if row.tag.strip() and row.date:
            tags.setdefault((row.date[:4], sight(row.tag)), []).append(row.pollination)
    for (year, _), rows in tags.items():
        crosses = list(dict.fromkeys(book.pollinations[row].cross for row in rows))
        if len(crosses) < 2:
            continue
        yield Problem(
            "tag_used_twice",
            "note",
            (),
            f"The tag {book.pollinations[rows[0]].tag} stands on {', '.join(rows)} of {year}, "
            f"which are of the crosses {' and '.join(crosses)}.",
            "Correct the tag, or the cross of one of them.",
            tuple(("pollinations", row) for row in rows),
        )
