"""The outside check values of checks.json as books of this program.

Each entry of checks.json names its source (`source`), how its figures are known (`how_known`,
`read_level`) and its tolerance.  In them a founder is one unrelated plant that is not inbred unless
the entry says otherwise, so it is recorded here as kind 'plant'.
"""

from __future__ import annotations

import json
from fractions import Fraction
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, Plant

CHECKS: dict[str, dict[str, Any]] = {
    entry["id"]: entry
    for entry in json.loads(Path(__file__).with_name("checks.json").read_text(encoding="utf-8"))
}


def of_kind(kind: str) -> list[str]:
    """Ids of the entries whose input is of that kind."""
    return [key for key, entry in CHECKS.items() if entry["input"]["kind"] == kind]


def tolerance(entry: dict[str, Any]) -> float:
    """The absolute tolerance of an entry; 0 means equal as fractions, so here to 1e-12."""
    return max(float(Fraction(entry["tolerance"])), 1e-12)


def pedigree_book(
    rows: list[list[Any]], founder_fixation: dict[str, str] | None = None, ploidy: int = 2
) -> Book:
    """A book from rows of id, seed parent, pollen parent and optional kind (line, dh, clone)."""
    book = Book(settings=BookSettings(founders_as="plant", ploidy=ploidy))
    fixation = {k: float(Fraction(v)) for k, v in (founder_fixation or {}).items()}

    def ensure(code: str | None) -> None:
        if code and code not in book.plants:
            book.add(Plant(code, kind="plant", fixation=fixation.get(code)))

    own = {row[0] for row in rows}
    for code, seed, pollen, *kind in rows:
        for parent in (seed, pollen):
            if parent not in own:
                ensure(parent)
        what = kind[0] if kind else ""
        if what == "clone":
            book.add(Plant(code, kind="plant", raised="cutting_of", source=seed))
        elif what == "dh":
            book.add(Plant(code, kind="plant", raised="doubled_haploid_of", source=seed))
        elif seed or pollen:
            cross = f"{seed or '?'} × {pollen or '?'}"
            if cross not in book.crosses:
                book.add(Cross(cross, seed or "", pollen or ""))
            made = "variety" if what == "line" else "plant"
            book.add(Plant(code, kind=made, raised="cross", cross=cross))
        else:
            book.add(Plant(code, kind="plant", fixation=fixation.get(code)))
    return book
