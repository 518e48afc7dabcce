"""How sure each parent of a cross is: grades, evidence, candidates with odds.

A grade is a word beside the link and changes no number; odds do.  Evidence is dated and stays when
the grade changes, so that the book shows what was once believed and why.

The bud proposes odds that the seed parent pollinated itself: closed 0, unsure 0.1, open 0.2.  They
have no source and are a starting value; the cross takes the mean over its pollinations.  They are
only ever proposed, and never where the person has set odds.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.ancestry import refuse_loop
from pedigreeview.book.recording.fields import choice, iso_date, share
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import cross_called, plant_called
from pedigreeview.book.records import GRADES, SELF, Cross, Evidence, PollenCandidate, Pollination

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "ODDS_OF_ITSELF",
    "OddsProposed",
    "accept_proposed_odds",
    "odds_of_itself",
    "record_evidence",
    "set_candidates",
    "set_doubt",
]

ODDS_OF_ITSELF = {"closed": 0.0, "unsure": 0.1, "open": 0.2}
"""Odds of an accidental selfing by the state of the bud: common practice, no source."""

_SLACK = 1e-9


@dataclass(frozen=True, slots=True)
class OddsProposed:
    """Odds of 'itself' for a cross, with what they rest on.

    odds : 0 to 1, the weighted mean over the pollinations that say how the bud was
    by : 'seeds', 'flowers' or 'pollinations', what each pollination counts by
    weights : (pollination, weight, odds of its bud)
    left_out : pollinations that do not say how the bud was
    """

    odds: float
    by: str
    weights: tuple[tuple[str, float, float], ...]
    left_out: tuple[str, ...]


def odds_of_itself(book: Book, cross: str) -> OddsProposed | None:
    """The odds of an accidental selfing that the buds of a cross propose.

    Each pollination counts by its seeds (fruits set times the seeds a fruit of the cross) where the
    records tell them, else by its flowers, else all count alike.  None where no bud was noted,
    where the cross is a selfing or open-pollinated, or where the person has set candidates.
    """
    held = book.crosses.get(cross)
    if held is None or not held.seed_parent or not held.pollen_parent:
        return None
    if held.seed_parent == held.pollen_parent:
        return None
    if any(row.cross == cross for row in book.pollen_candidates):
        return None
    rows = [row for row in book.pollinations.values() if row.cross == cross]
    noted = [row for row in rows if row.bud in ODDS_OF_ITSELF]
    if not noted:
        return None
    by, weights = _weights(book, cross, noted)
    odds = [ODDS_OF_ITSELF[row.bud] for row in noted]
    total = math.fsum(weights)
    mean = math.fsum(w * o for w, o in zip(weights, odds, strict=True)) / total
    return OddsProposed(
        mean,
        by,
        tuple(
            (row.pollination, weight, one)
            for row, weight, one in zip(noted, weights, odds, strict=True)
        ),
        tuple(row.pollination for row in rows if row.bud not in ODDS_OF_ITSELF),
    )


def _weights(book: Book, cross: str, rows: list[Pollination]) -> tuple[str, list[float]]:
    flowers = [row.flowers for row in rows]
    if all(count is not None for count in flowers) and any(flowers):
        took = [row.set for row in rows]
        if all(count is not None for count in took) and any(took):
            per_fruit = _seeds_per_fruit(book, cross)
            if per_fruit is not None:
                return "seeds", [per_fruit * (count or 0) for count in took]
        return "flowers", [float(count or 0) for count in flowers]
    return "pollinations", [1.0] * len(rows)


def _seeds_per_fruit(book: Book, cross: str) -> float | None:
    rows = [row for row in book.harvests.values() if row.cross == cross]
    fruits, seeds = sum(row.fruits or 0 for row in rows), sum(row.seeds or 0 for row in rows)
    return seeds / fruits if fruits and seeds else None


def accept_proposed_odds(edit: Edit, cross: str) -> tuple[PollenCandidate, ...]:
    """Take the odds that the buds propose: 'self' and the intended pollen parent as candidates.

    Odds of 0 change nothing and make no candidates.

    Raises
    ------
    Fault : nothing is proposed for the cross
    """
    code = cross_called(edit.book, cross).cross
    proposed = odds_of_itself(edit.book, code)
    if proposed is None:
        raise Fault(
            f"No odds are proposed for the cross {code}.",
            Place(column="odds"),
            "Say of its pollinations how the bud was, or set the odds yourself.",
        )
    if proposed.odds == 0:
        return ()
    intended = edit.book.crosses[code].pollen_parent
    return set_candidates(edit, code, {intended: 1 - proposed.odds, SELF: proposed.odds})


def set_candidates(
    edit: Edit, cross: str, odds: Mapping[str, float], *, drawn: str | None = None
) -> tuple[PollenCandidate, ...]:
    """Name who may have given the pollen of a cross, each with odds; what is missing to 1 is
    unknown.

    A cross that named its pollen parent names it among the candidates from then on.  Without
    candidates the odds are taken away; one certain candidate becomes the pollen parent.

    Raises
    ------
    Fault : a candidate that is not in the book or descends from the cross, odds outside 0 to 1 or
        over 1 together
    """
    held = cross_called(edit.book, cross)
    wanted: dict[str, float] = {}
    for name, value in odds.items():
        code = SELF if name.strip().casefold() == SELF else plant_called(
            edit.book, name, "candidate"
        ).plant  # fmt: skip
        if code == held.seed_parent:
            code = SELF
        found = share(value, "odds")
        if not found:
            continue
        wanted[code] = wanted.get(code, 0.0) + found
    total = math.fsum(wanted.values())
    if total > 1 + _SLACK:
        raise Fault(
            f"The odds of the cross {held.cross} add up to {total:g}, over 1.",
            Place(column="odds"),
            "Lower them; what is missing to 1 is left unknown.",
        )
    if SELF in wanted and not held.seed_parent:
        raise Fault(
            f"The cross {held.cross} has no seed parent, so 'self' can be no candidate.",
            Place(column="candidate"),
            "Name the seed parent first.",
        )
    progeny = [plant.plant for plant in edit.book.plants.values() if plant.cross == held.cross]
    if progeny:
        refuse_loop(edit.book, progeny, wanted)
    with guarded(edit, crosses=(held.cross,)):
        for row in [row for row in edit.book.pollen_candidates if row.cross == held.cross]:
            edit.remove(row)
        if len(wanted) == 1 and abs(total - 1) <= _SLACK:
            (only,) = wanted
            parent = held.seed_parent if only == SELF else only
            _name_pollen_parent(edit, held, parent, drawn)
            return ()
        if wanted:
            _name_pollen_parent(edit, held, "", drawn)
        rows = tuple(PollenCandidate(held.cross, code, value) for code, value in wanted.items())
        for row in rows:
            edit.add(row)
    return rows


def _name_pollen_parent(edit: Edit, cross: Cross, parent: str, drawn: str | None) -> None:
    changed: dict[str, object] = {"pollen_parent": parent}
    if drawn is not None:
        changed["drawn"] = choice(drawn, ("one", "each"), "drawn")
    if parent:
        changed["intended"] = "selfing" if parent == cross.seed_parent else "cross"
    elif cross.intended == "selfing":
        # What was meant as a selfing and may be something else is no certain selfing.
        changed["intended"] = ""
    edit.update(cross, **changed)


def record_evidence(
    edit: Edit, cross: str, side: str, for_or_against: str, text: str, *, date: str
) -> Evidence:
    """Write down what speaks for or against a parent of a cross; nothing older is changed.

    Raises
    ------
    Fault : no such cross, a side other than 'seed' and 'pollen', or no words
    """
    held = cross_called(edit.book, cross)
    if not text.strip():
        raise Fault("The evidence says nothing.", Place(column="text"), "Write what was seen.")
    for value, column in ((side, "side"), (for_or_against, "for_or_against")):
        if not value:
            raise Fault(f"The {column.replace('_', ' ')} is blank.", Place(column=column))
    row = Evidence(
        held.cross,
        choice(side, ("seed", "pollen"), "side"),
        choice(for_or_against, ("for", "against"), "for_or_against"),
        iso_date(date),
        text.strip(),
    )
    edit.add(row)
    return row


def set_doubt(
    edit: Edit,
    cross: str,
    side: str,
    grade: str,
    *,
    date: str,
    because: str = "",
    speaks: str = "for",
) -> Cross:
    """Give the grade of doubt of one parent of a cross; gives the cross.

    The grade that stood there, and the reason for the new one, are kept as evidence of that date.

    Raises
    ------
    Fault : a word that is no grade or no side
    """
    held = cross_called(edit.book, cross)
    if side not in ("seed", "pollen"):
        raise Fault(
            f"The side {side!r} is neither seed nor pollen.", Place(column="side"),
            "Choose 'seed' for the seed parent or 'pollen' for the pollen parent.",
        )  # fmt: skip
    column = f"{side}_doubt"
    wanted = choice(grade, GRADES, column)
    before = getattr(held, column)
    if wanted == before and not because.strip():
        return held
    said = because.strip()
    if before and before != wanted:
        said = f"{said} (Was {before} before.)".strip()
    if said:
        record_evidence(edit, held.cross, side, speaks, said, date=date)
    if wanted == before:
        return held
    updated = edit.update(held, **{column: wanted})
    assert isinstance(updated, Cross)
    return updated
