"""The rows of a plant table, cell by cell, before crosses are shared out.

A cell that cannot be read hides nothing but what follows from it: the other cells of its row are
looked at all the same, also where the row has no code of its own or the table lacks a column.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import SELF, Plant, Record, columns
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import Flaw, code_flaw, number, value, word
from pedigreeview.exchange.characters import character_fault
from pedigreeview.exchange.table_headings import Headings
from pedigreeview.exchange.table_writing import DRAWN
from pedigreeview.exchange.text_files import Sheet
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["Odds", "Reading", "Row", "read_rows"]

_BY_NAME = {column.name: column for column in columns(Plant)}

Odds = tuple[tuple[str, float], ...]
_Note = Callable[..., None]


@dataclass(slots=True)
class Row:
    """A row that has been read, before crosses are shared out."""

    line: int
    plant: Plant
    seed: str = ""
    pollen: str = ""
    odds: Odds = ()
    drawn: str = ""
    cross: str = ""

    @property
    def mating(self) -> tuple[str, str, Odds]:
        """The parents, by which rows without a cross code share a cross."""
        return self.seed, self.pollen, tuple(sorted(self.odds))


@dataclass(slots=True)
class Reading:
    """A table on its way into a book, with everything that is wrong with it."""

    name: str
    book: Book
    faults: list[Fault] = field(default_factory=list)
    lines: dict[int, int] = field(default_factory=dict)
    """Line of a record, by its `id`."""
    doubt: rules.Doubt = field(default_factory=rules.Doubt)
    rows: list[Row] = field(default_factory=list)
    suspect: bool = False
    """Whether some cell has a character that cannot be drawn."""
    left_out: list[Plant] = field(default_factory=list)
    """Kept alive, so that no other record takes over the `id` of one."""

    def fault(self, flaw: Flaw, line: int, column: str = "", plant: str = "") -> None:
        """Note what is wrong."""
        self.faults.append(Fault(flaw.what, Place(self.name, line, column, plant), flaw.todo))

    def where(self, record: Record, column: str) -> Place:
        """The place of a column of a record (see `rules.Where`)."""
        shown = {
            "source": "seed_parent",
            "candidate": "pollen_odds",
            "odds": "pollen_odds",
            "intended": "pollen_parent",
        }.get(column, column)
        plant = record.plant if isinstance(record, Plant) else ""
        return Place(self.name, self.lines.get(id(record)), shown, plant)


def read_rows(reading: Reading, found: Sheet, headings: Headings, tick: Tick = no_tick) -> None:
    """Read every row; those with a code of their own become plants of the book.

    tick : called now and then; may raise `Cancelled`
    """
    official = headings.official
    first: dict[str, tuple[int, list[str]]] = {}
    plain_columns = [
        (column, official[name])
        for name, column in _BY_NAME.items()
        if name in official and name not in ("plant", "cross", "source")
    ]
    for line, raw in ticked(found.rows, tick):
        cells = [cell.strip() for cell in raw]
        code = cells[official["plant"]] if "plant" in official else ""
        before, same = first.get(code, (0, cells))
        if code and not before:
            first[code] = (line, cells)
        elif "plant" in official:
            reading.fault(_no_code_of_its_own(code, before, cells == same), line, "plant", code)
            if code and cells == same:
                # Whatever is wrong with it is said of the first of the two.
                continue
        plant = Plant(plant=code)
        reading.lines[id(plant)] = line
        if code and not before and (wrong_code := code_flaw(code)):
            reading.fault(wrong_code, line, "plant", code)
        for column, index in plain_columns:
            text = cells[index]
            if text:
                got, flaw = value("plants", column, text, comma=found.decimal_comma, lenient=True)
                setattr(plant, column.name, got)
                if flaw:
                    reading.fault(flaw, line, column.name, code)
                    reading.doubt.add(plant, column.name)
                elif reading.suspect:
                    _look_at_characters(reading, text, line, column.name, code)
        plant.extra = {name: cells[index] for name, index in headings.extra.items() if cells[index]}
        if reading.suspect:
            for name, text in plant.extra.items():
                _look_at_characters(reading, text, line, name, code)
        row = _parents(
            reading,
            plant,
            line,
            cells,
            official,
            comma=found.decimal_comma,
            whole=headings.complete,
        )
        if code and not before:
            reading.book.plants[code] = plant
            reading.rows.append(row)
        else:
            reading.left_out.append(plant)


def _no_code_of_its_own(code: str, before: int, same: bool) -> Flaw:
    if not code:
        return Flaw("The row has no plant code.", "Give the plant a code.")
    if same:
        return Flaw(f"The row is the same as row {before}.", "Delete one of them.")
    return Flaw(
        f"The code {code!r} stands in row {before} already.",
        "Give one of the two plants another code.",
    )


def _look_at_characters(reading: Reading, text: str, line: int, column: str, plant: str) -> None:
    fault = character_fault(text, Place(reading.name, line, column, plant))
    if fault is not None:
        reading.faults.append(fault)


def _parents(
    reading: Reading,
    plant: Plant,
    line: int,
    cells: list[str],
    official: dict[str, int],
    *,
    comma: bool,
    whole: bool,
) -> Row:
    """The parents of a row; `whole` says whether all columns of parents are there."""

    def cell(name: str) -> str:
        return cells[official[name]] if name in official else ""

    def note(flaw: Flaw, column: str, *, doubt: bool = True) -> None:
        reading.fault(flaw, line, column, plant.plant)
        if doubt:
            reading.doubt.add(plant, column)

    row = Row(line, plant, cell("seed_parent"), cell("pollen_parent"), cross=cell("cross"))
    for name in ("seed_parent", "pollen_parent"):
        parent = cell(name)
        if parent and (flaw := code_flaw(parent, name)):
            note(flaw, name)
    if row.cross and (flaw := code_flaw(row.cross, "cross code")):
        reading.fault(flaw, line, "cross", plant.plant)
    if text := cell("pollen_odds"):
        row.odds, flaws = _candidates(text, comma)
        for flaw in flaws:
            note(flaw, "pollen_odds")
        if flaws and not (row.seed or row.pollen or row.odds):
            # Its cross is not known, so nothing is said of how it arose.
            reading.doubt.add(plant, "cross")
        if row.pollen:
            note(
                Flaw(
                    "The row has a pollen parent and odds of pollen parents as well.",
                    "Clear the one or the other; with odds the pollen parent stands among them.",
                ),
                "pollen_odds",
            )
    if text := cell("drawn"):
        row.drawn, flaw_or_none = word(text, "drawn", DRAWN, lenient=True)
        if flaw_or_none:
            note(flaw_or_none, "drawn")
    if whole:
        _arose(row, cell("pollen_odds"), note)
    return row


def _arose(row: Row, odds: str, note: _Note) -> None:
    """Faults of how the plant arose that show in its own row; sets the source.

    odds : the cell, whether or not it could be read
    """
    plant = row.plant
    parents = bool(row.seed or row.pollen or odds)
    if plant.raised in rules.FROM_SOURCE:
        if row.pollen or row.odds:
            note(
                Flaw(
                    f"A plant raised {plant.raised!r} has no pollen parent.",
                    "Clear the pollen parent and its odds, or the cell 'raised'.",
                ),
                "pollen_parent" if row.pollen else "pollen_odds",
            )
        if row.cross or row.drawn:
            column = "cross" if row.cross else "drawn"
            note(
                Flaw(f"A plant raised {plant.raised!r} comes from no cross.", "Clear the cell."),
                column,
                # The cell counts for nothing, so all else that is wrong with its source is said.
                doubt=False,
            )
        plant.source = row.seed
        row.seed = row.pollen = row.cross = row.drawn = ""
        row.odds = ()
    elif plant.raised == "founder" and parents:
        note(
            Flaw("A founder has no parents.", "Clear the parents, or the cell 'raised'."), "raised"
        )
    elif not parents and plant.raised != "cross" and (row.cross or row.drawn):
        column = "cross" if row.cross else "drawn"
        note(
            Flaw(
                f"The row has a {column} but no parents.",
                "Name the parents, or clear the cell.",
            ),
            column,
        )


def _candidates(text: str, comma: bool) -> tuple[Odds, list[Flaw]]:
    """Candidates with odds from 'TP:0.8; self:0.2'."""
    found: dict[str, float] = {}
    flaws: list[Flaw] = []
    for part in text.split(";"):
        if not part.strip():
            continue
        code, colon, odds = (piece.strip() for piece in part.partition(":"))
        if not colon or not code or not odds:
            flaws.append(
                Flaw(
                    f"The odds {part.strip()!r} are not a code, ':' and a number.",
                    "Write them as TP:0.8; self:0.2.",
                )
            )
            continue
        if code != SELF and (flaw := code_flaw(code, "candidate")):
            flaws.append(
                Flaw(flaw.what, "Did you mean 'self'?") if code.casefold() == SELF else flaw
            )
            continue
        got, flaw_or_none = number(odds, f"odds of {code!r}", 0, 1, comma=comma)
        if flaw_or_none or got is None:
            flaws.append(flaw_or_none or Flaw("The odds are no number."))
        elif code in found:
            flaws.append(Flaw(f"The candidate {code!r} stands twice.", "Add its odds up."))
        else:
            found[code] = got
    return tuple(found.items()), flaws
