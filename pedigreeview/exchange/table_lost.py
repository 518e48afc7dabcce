"""What of a book the plant table cannot carry, one sentence each."""

from __future__ import annotations

from collections import Counter

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import SELF, TABLES
from pedigreeview.exchange.table_parents import TableParents
from pedigreeview.exchange.text_files import plain

__all__ = ["OFFICIAL", "PLANT_COLUMNS", "clashes", "lost"]

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

_SHOWN = 8


def lost(book: Book) -> list[str]:
    """What the plant table cannot carry, one sentence each with a count; empty if nothing."""
    parents = TableParents(book)
    return [
        *_settings_lost(book, parents),
        *_crosses_lost(book, parents),
        *_findings_lost(book, parents),
        *_plants_lost(book),
        *_tables_lost(book),
    ]


def _shown(codes: list[str]) -> str:
    more = f" and {len(codes) - _SHOWN} more" if len(codes) > _SHOWN else ""
    return ", ".join(codes[:_SHOWN]) + more


def _count(number: int, one: str, many: str = "") -> str:
    return f"{number} {one if number == 1 else many or one + 's'}"


def _settings_lost(book: Book, parents: TableParents) -> list[str]:
    settings, usual = book.settings, BookSettings()
    said = []
    gone = [
        words
        for name, words in (
            ("name", "name"),
            ("code_pattern", "code pattern"),
        )
        if getattr(settings, name) != getattr(usual, name)
    ]
    # Without the setting a table counts with none.
    if book.double_reduction():
        gone.append("double reduction")
    if settings.outcrossing is not None and not any(map(parents.by_rate, book.crosses.values())):
        gone.append("outcrossing rate")
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


def _crosses_lost(book: Book, parents: TableParents) -> list[str]:
    plants = [plant for plant in book.plants.values() if book.raised(plant) == "cross"]
    used = {plant.cross for plant in plants}
    childless = [code for code in book.crosses if code not in used]
    said = []
    if childless:
        said.append(
            f"{_count(len(childless), 'cross', 'crosses')} without plants: {', '.join(childless)}."
        )
    kept = [cross for code, cross in book.crosses.items() if code in used]
    parentless = [plant.plant for plant in plants if parents.of(plant) is None]
    if parentless:
        said.append(
            f"{_count(len(parentless), 'plant')} of crosses without any known parent "
            f"({_shown(parentless)}): written as founders of the same inbreeding, so they count "
            "as founders of what descends from them and share no unseen parent."
        )
    named = {mating.cross for plant in plants if (mating := parents.of(plant)) is not None}
    unnamed = [
        cross.cross
        for cross in kept
        if cross.cross not in named and parents.cells_of(cross) is not None
    ]
    if unnamed:
        said.append(
            f"The codes of {_count(len(unnamed), 'cross', 'crosses')} whose plants all have a "
            "finding of their own."
        )
    unsaid = [
        cross
        for cross in kept
        if not (cross.pollen_parent or parents.candidates.get(cross.cross))
        and cross.intended not in ("open", "selfing")
        and cross.seed_parent
    ]
    if unsaid:
        said.append(
            f"{_count(len(unsaid), 'cross', 'crosses')} with a pollen parent that is unknown, not "
            f"open-pollinated: written as odds of 0 for '{SELF}'."
        )
    blank = [
        cross
        for cross in kept
        if not cross.intended and (cross.pollen_parent or parents.candidates.get(cross.cross))
    ]
    if blank:
        said.append(
            f"That {_count(len(blank), 'cross does', 'crosses do')} not say what was intended: "
            "read again as what the parents make of it."
        )
    called = [
        cross
        for cross in kept
        if cross.intended in ("open", "selfing") and parents.candidates.get(cross.cross)
    ]
    if called:
        said.append(
            f"The intention of {_count(len(called), 'cross', 'crosses')} with odds, which alone "
            "are written."
        )
    rated = sum(parents.by_rate(cross) for cross in kept)
    if rated:
        said.append(
            f"The book's outcrossing rate, in {_count(rated, 'cross', 'crosses')} left to open "
            f"pollination: written as odds of '{SELF}'."
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


def _findings_lost(book: Book, parents: TableParents) -> list[str]:
    holding = book.findings()
    own = [code for code in holding if code in book.plants and parents.is_own(code)]
    said = []
    if own:
        said.append(
            f"{_count(len(own), 'plant')} with an own finding of the pollen parent: written with "
            "that pollen parent or odds, without grade, date and text of the finding and without "
            "the code of the cross."
        )
    apart = parents.apart()
    if apart:
        said.append(
            f"{_count(len(apart), 'plant')} with an own finding ({_shown(apart)}): written as "
            "progeny of another member of the pool than that of their sibs."
        )
    confirmed = len(holding) - len(own)
    if confirmed:
        said.append(
            f"{_count(confirmed, 'finding that confirms', 'findings that confirm')} the cross."
        )
    older = len(book.parent_findings) - sum(len(rows) for rows in holding.values())
    if older:
        said.append(f"{_count(older, 'older row', 'older rows')} of findings.")
    return said


def clashes(name: str) -> bool:
    """Whether a further column has the name of a column of the plant table."""
    return plain(name) in {plain(column) for column in (*OFFICIAL, *PLANT_COLUMNS)}


def _plants_lost(book: Book) -> list[str]:
    clashing = Counter(
        name for plant in book.plants.values() for name in plant.extra if clashes(name)
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
