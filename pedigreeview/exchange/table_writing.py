"""The plant table, written, and what of a book it cannot carry.

What the book's settings say of founders, crop and ploidy is written into the cells, so that the
table alone gives the same numbers.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Container, Iterable
from pathlib import Path

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import SELF, TABLES, Cross, ParentFinding, Plant, PollenCandidate
from pedigreeview.exchange.cells import to_cell
from pedigreeview.exchange.text_files import plain, to_text
from pedigreeview.exchange.writing import replace_file

__all__ = ["DRAWN", "OFFICIAL", "PLANT_COLUMNS", "cross_name", "lost", "write"]

OFFICIAL = (
    "plant",
    "seed_parent",
    "pollen_parent",
    "pollen_odds",
    "drawn",
    "kind",
    "raised",
    "selfings",
    "fixation",
    "cross",
    "ploidy",
    "crop",
    "name",
    "status",
    "sown",
    "note",
)
"""The columns of the plant table, in the order in which they are written."""

PLANT_COLUMNS = ("place", "obtained_from", "protected")
"""Notes of a plant that have a column of their own in the folder: kept under the same names."""

DRAWN = ("one", "each")

_Odds = tuple[tuple[str, float], ...]


def cross_name(seed: str, pollen: str, odds: _Odds, *, taken: Container[str]) -> str:
    """The program's name of a cross without a code, such as 'TP × BA', unlike any that is taken."""
    mother = seed or "?"
    if seed and seed == pollen:
        name = f"{mother} ⊗"
    elif pollen:
        name = f"{mother} × {pollen}"
    elif odds:
        name = f"{mother} × {' or '.join(code for code, _ in sorted(odds))}"
    else:
        name = f"{mother} ○"
    free, count = name, 1
    while free in taken:
        count += 1
        free = f"{name} ({count})"
    return free


def write(book: Book, path: str | Path) -> None:
    """Write the plants of a book as a plant table: comma (tab for .tsv), UTF-8, LF.

    Raises
    ------
    Fault : the system does not let us write
    """
    candidates, findings = book.candidates(), book.findings()
    rows = [_cells(book, plant, candidates, findings) for plant in book.plants.values()]
    extras = dict.fromkeys(
        name for plant in book.plants.values() for name in plant.extra if not _clashes(name)
    )
    used = [
        column
        for column in (*OFFICIAL, *PLANT_COLUMNS)
        if column in OFFICIAL[:3] or any(row.get(column) for row in rows)
    ]
    lines = [
        [row.get(column, "") for column in used] + [plant.extra.get(name, "") for name in extras]
        for row, plant in zip(rows, book.plants.values(), strict=True)
    ]
    separator = "\t" if Path(path).suffix.lower() == ".tsv" else ","
    with replace_file(path) as beside:
        beside.write_text(
            to_text([*used, *extras], lines, separator), encoding="utf-8", newline="\n"
        )


def _clashes(name: str) -> bool:
    return plain(name) in {plain(column) for column in (*OFFICIAL, *PLANT_COLUMNS)}


def _cells(
    book: Book,
    plant: Plant,
    candidates: dict[str, list[PollenCandidate]],
    findings: dict[str, list[ParentFinding]],
) -> dict[str, str]:
    row = {
        name: to_cell(getattr(plant, name))
        for name in (*OFFICIAL, *PLANT_COLUMNS)
        if hasattr(plant, name) and name != "cross"
    }
    row["selfings"] = to_cell(plant.selfings, 0)
    raised = book.raised(plant)
    cross = book.crosses.get(plant.cross)
    if raised == "cross" and cross is not None:
        mating = candidates.get(cross.cross, [])
        if _parentless(cross, mating):
            row["raised"] = ""
            row["kind"] = plant.kind or "plant"
            row["selfings"] = ""
        else:
            _cross_cells(row, cross, mating, findings.get(plant.plant))
    elif raised != "founder":
        row["seed_parent"] = plant.source
    if raised == "founder":
        _founder_cells(book, plant, row)
    if not plant.crop:
        row["crop"] = book.settings.crop
    return row


def _parentless(cross: Cross, candidates: list[PollenCandidate]) -> bool:
    return not (cross.seed_parent or cross.pollen_parent or candidates)


def _founder_cells(book: Book, plant: Plant, row: dict[str, str]) -> None:
    settings, usual = book.settings, BookSettings()
    if settings.founders_as:
        row["kind"] = book.kind(plant)
    if (settings.variety_fixation, settings.plant_fixation) != (
        usual.variety_fixation,
        usual.plant_fixation,
    ):
        row["fixation"] = to_cell(book.founder_fixation(plant))
    if settings.ploidy is not None:
        row["ploidy"] = to_cell(book.founder_ploidy(plant))


def _cross_cells(
    row: dict[str, str],
    cross: Cross,
    candidates: list[PollenCandidate],
    finding: list[ParentFinding] | None,
) -> None:
    row["seed_parent"] = cross.seed_parent
    row["drawn"] = cross.drawn
    row["cross"] = cross.cross
    if finding is not None and not _confirms(cross, candidates, finding):
        _finding_cells(row, cross, candidates, finding)
        return
    row["pollen_odds"] = _odds_cell([(item.candidate, item.odds) for item in candidates])
    row["pollen_parent"] = cross.pollen_parent
    if candidates or cross.pollen_parent:
        return
    if cross.intended == "selfing":
        row["pollen_parent"] = cross.seed_parent
    elif cross.intended != "open":
        # Unknown is not open-pollinated: odds of 0 leave all of the pollen parent unknown.
        row["pollen_odds"] = f"{SELF}:0"
        row["drawn"] = cross.drawn or "one"


def _shares(pairs: Iterable[tuple[str, float]], seed: str) -> dict[str, float]:
    """Odds of each known pollen parent, 'self' resolved to the seed parent."""
    found: dict[str, float] = {}
    for code, share in pairs:
        if code:
            code = seed if code == SELF else code
            found[code] = found.get(code, 0) + share
    return found


def _found_odds(finding: list[ParentFinding]) -> list[tuple[str, float]]:
    return [
        (item.pollen_parent, 1.0 if item.odds is None else item.odds)
        for item in finding
        if item.pollen_parent
    ]


def _confirms(
    cross: Cross, candidates: list[PollenCandidate], finding: list[ParentFinding]
) -> bool:
    """Whether a finding says no more than the cross itself, which the row then names."""
    known = [(item.candidate, item.odds) for item in candidates]
    if cross.pollen_parent:
        known = [(cross.pollen_parent, 1.0)]
    seed = cross.seed_parent
    return bool(known) and _shares(known, seed) == _shares(_found_odds(finding), seed)


def _finding_cells(
    row: dict[str, str],
    cross: Cross,
    candidates: list[PollenCandidate],
    finding: list[ParentFinding],
) -> None:
    row["cross"] = ""
    if not cross.drawn and (
        cross.intended == "open" or any(item.candidate == SELF for item in candidates)
    ):
        row["drawn"] = "each"
    odds = _found_odds(finding)
    if len(odds) == 1 and odds[0][1] == 1:
        sure = odds[0][0]
        row["pollen_parent"] = cross.seed_parent if sure == SELF else sure
        return
    row["pollen_odds"] = _odds_cell(odds)
    if not odds:
        row["pollen_odds"] = f"{SELF}:0" if cross.seed_parent else ""
    # What one plant shows is of that plant alone, so no other shares its unseen pollen parent.
    row["drawn"] = "each"


def _odds_cell(odds: list[tuple[str, float]]) -> str:
    merged: dict[str, float] = {}
    for code, share in odds:
        merged[code] = merged.get(code, 0) + share
    return "; ".join(f"{code}:{to_cell(float(share))}" for code, share in merged.items())


# What is lost ------------------------------------------------------------------------------------


def lost(book: Book) -> list[str]:
    """What the plant table cannot carry, one sentence each with a count; empty if nothing."""
    return [
        *_settings_lost(book),
        *_crosses_lost(book),
        *_findings_lost(book),
        *_plants_lost(book),
        *_tables_lost(book),
    ]


def _count(number: int, one: str, many: str = "") -> str:
    return f"{number} {one if number == 1 else many or one + 's'}"


def _settings_lost(book: Book) -> list[str]:
    settings, usual = book.settings, BookSettings()
    said = []
    gone = [
        words
        for name, words in (
            ("name", "name"),
            ("code_pattern", "code pattern"),
            ("double_reduction", "double reduction"),
            ("outcrossing", "outcrossing rate"),
        )
        if getattr(settings, name) != getattr(usual, name)
    ]
    gone += [repr(name) for name in settings.extra]
    if gone:
        said.append(f"The book's settings {', '.join(gone)} are not written.")
    into = [
        words
        for name, words in (
            ("founders_as", "what founders are"),
            ("variety_fixation", "fixation of varieties"),
            ("plant_fixation", "fixation of plants"),
            ("crop", "crop"),
            ("ploidy", "ploidy"),
        )
        if getattr(settings, name) != getattr(usual, name)
    ]
    if into:
        said.append(
            f"The book's settings ({', '.join(into)}) are written into the cells of each plant."
        )
    return said


def _crosses_lost(book: Book) -> list[str]:
    used = {plant.cross for plant in book.plants.values() if book.raised(plant) == "cross"}
    candidates, own = book.candidates(), _own_parents(book)
    open_rows = {
        plant.cross
        for plant in book.plants.values()
        if plant.plant not in own and book.raised(plant) == "cross"
    }
    childless = [code for code in book.crosses if code not in used]
    said = []
    if childless:
        said.append(
            f"{_count(len(childless), 'cross', 'crosses')} without plants: {', '.join(childless)}."
        )
    kept = [cross for code, cross in book.crosses.items() if code in used]
    parentless = {
        cross.cross for cross in kept if _parentless(cross, candidates.get(cross.cross, []))
    }
    if parentless:
        plants = sum(plant.cross in parentless for plant in book.plants.values())
        said.append(
            f"{_count(plants, 'plant')} of crosses without any known parent: written as founders."
        )
    unnamed = [code for code in used if code not in open_rows and code not in parentless]
    if unnamed:
        said.append(
            f"The codes of {_count(len(unnamed), 'cross', 'crosses')} whose plants all have a "
            "finding of their own."
        )
    unsaid = [
        cross
        for cross in kept
        if not (cross.pollen_parent or candidates.get(cross.cross))
        and cross.intended not in ("open", "selfing")
        and cross.seed_parent
    ]
    if unsaid:
        said.append(
            f"{_count(len(unsaid), 'cross', 'crosses')} with a pollen parent that is unknown, not "
            f"open-pollinated: written as odds of 0 for '{SELF}'."
        )
    for words, count in (
        ("grade of doubt", sum(bool(c.seed_doubt) + bool(c.pollen_doubt) for c in kept)),
        ("state of a cross", sum(bool(c.state) for c in kept)),
        ("note of a cross", sum(bool(c.note) for c in kept)),
        ("date on which a cross was made", sum(bool(c.made_on) for c in kept)),
        ("cross whose direction is unknown", sum(not c.direction_known for c in kept)),
        ("cross with columns of its own", sum(bool(c.extra) for c in kept)),
    ):
        if count:
            first, _, rest = words.partition(" ")
            plural = {"cross": "crosses"}.get(first, first + "s")
            said.append(f"{_count(count, words, f'{plural} {rest}')}.")
    extras = sum(bool(item.extra) for item in book.pollen_candidates)
    if extras:
        said.append(f"The further columns of {_count(extras, 'candidate')} for pollen parent.")
    return said


def _own_parents(book: Book) -> set[str]:
    """Plants whose finding says something else than their cross."""
    candidates = book.candidates()
    return {
        code
        for code, rows in book.findings().items()
        if (plant := book.plants.get(code)) is not None
        and (cross := book.crosses.get(plant.cross)) is not None
        and not _confirms(cross, candidates.get(cross.cross, []), rows)
    }


def _findings_lost(book: Book) -> list[str]:
    holding = book.findings()
    own = len(_own_parents(book))
    said = []
    if own:
        said.append(
            f"{_count(own, 'plant')} with an own finding of the pollen parent: written with that "
            "pollen parent or odds, without grade, date and text of the finding and without the "
            "code of the cross."
        )
    confirmed = len(holding) - own
    if confirmed:
        said.append(
            f"{_count(confirmed, 'finding that confirms', 'findings that confirm')} the cross."
        )
    older = len(book.parent_findings) - sum(len(rows) for rows in holding.values())
    if older:
        said.append(f"{_count(older, 'older row', 'older rows')} of findings.")
    return said


def _plants_lost(book: Book) -> list[str]:
    clashing = Counter(
        name for plant in book.plants.values() for name in plant.extra if _clashes(name)
    )
    return [
        f"The further column {name!r} of {_count(count, 'plant')}, which has the name of a column "
        "of the plant table."
        for name, count in clashing.items()
    ]


_CARRIED = ("plants", "crosses", "pollen_candidates", "parent_findings")


def _tables_lost(book: Book) -> list[str]:
    said = []
    for table in TABLES:
        count = len(book.table(table))
        if table in _CARRIED or not count:
            continue
        rows = "row" if count == 1 else "rows"
        said.append(f"The table {table!r} with its {_count(count, rows, rows)}.")
    for name in book.unknown_tables:
        said.append(f"The table {name!r}, which this version does not know.")
    return said
