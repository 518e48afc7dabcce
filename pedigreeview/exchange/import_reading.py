"""A foreign table with a row for each plant, turned into the plant table by its plan, then read.

The plant table's own reader does the rest, so that every rule of the book holds for a foreign table
too; its faults come back under the person's own headings.
"""

from __future__ import annotations

import datetime
from dataclasses import dataclass, field, replace

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.book.records import KINDS, RAISED, SELF, STATUSES, Score, Trait
from pedigreeview.exchange import plant_table
from pedigreeview.exchange.cells import Flaw
from pedigreeview.exchange.import_cells import (
    Gathered,
    as_date,
    as_ploidy,
    cell_at,
    parent_of,
    rows_of,
)
from pedigreeview.exchange.import_plan import ColumnPlan, ImportPlan
from pedigreeview.exchange.parents_in_one_cell import CellParents, code_of, inner_crosses, read_cell
from pedigreeview.exchange.spreadsheets import Cell, Table, cell_text
from pedigreeview.exchange.table_headings import KNOWN
from pedigreeview.exchange.table_parents import cross_name
from pedigreeview.exchange.text_files import Sheet, plain
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["MOST_INNER", "read_plants"]

MOST_INNER = 200_000
"""Plants without a row that the notation of one table may name."""

_LOST_POLLEN = f"{SELF}:0"
_WORDS = {"status": STATUSES, "kind": KINDS, "raised": RAISED}
_PLANT_WORDS = {"yes": "yes", "no": "no", "y": "yes", "n": "no", "true": "yes", "false": "no"}


@dataclass(slots=True)
class _Rows:
    """The rows of the plant table to be, by column, in order."""

    plan: ImportPlan
    gathered: Gathered
    today: datetime.date
    rows: list[tuple[int, dict[str, str]]] = field(default_factory=list)
    inner: dict[str, tuple[int, dict[str, str]]] = field(default_factory=dict)
    own: set[str] = field(default_factory=set)
    no_direction: set[tuple[str, str]] = field(default_factory=set)
    undirected_rows: list[dict[str, str]] = field(default_factory=list)
    directed: set[tuple[str, str]] = field(default_factory=set)
    seen: dict[tuple[str, ...], int] = field(default_factory=dict)
    scores: list[Score] = field(default_factory=list)

    def take(self, line: int, cells: list[Cell]) -> None:
        plan = self.plan
        texts = tuple(cell_text(cell).strip() for cell in cells)
        if texts in self.seen:
            self.gathered.leave("rows that stand twice, word for word, were taken once")
            return
        self.seen[texts] = line
        row: dict[str, str] = {}
        code = ""
        scores: list[tuple[ColumnPlan, str]] = []
        for column in plan.columns:
            cell = cell_at(cells, column.index)
            text = cell_text(cell).strip()
            if column.meaning == "plant":
                code = plan.same.get(text, text)
                row["plant"] = code
            elif column.meaning in ("left_out", "seed_parent", "pollen_parent", "parents"):
                continue
            elif column.meaning == "trait":
                if text:
                    scores.append((column, text))
            elif column.meaning == "kept":
                if text:
                    row[f"\0{column.index}"] = cell_text(cell)
            elif column.meaning == "sown":
                row["sown"] = self._date(cell, line, column)
            elif column.meaning == "ploidy":
                row["ploidy"] = as_ploidy(text)
            elif column.meaning in _WORDS and text:
                self._word(row, column, text)
            elif text:
                row[column.meaning] = text
        if not code:
            if any(texts):
                plant = plan.of("plant")
                heading = plant.heading if plant else ""
                self.gathered.fault(
                    Flaw("The row has no code of a plant.", "Fill in the cell or clear the row."),
                    line,
                    heading,
                )
            return
        self._parents(row, line, cells)
        self.own.add(code)
        self.rows.append((line, row))
        self.scores += [Score(code, column.trait, value=text) for column, text in scores]

    def _date(self, cell: Cell, line: int, column: ColumnPlan) -> str:
        date, flaw = as_date(cell, self.plan.date_order, self.today)
        if flaw:
            self.gathered.fault(flaw, line, column.heading)
        return date

    def _word(self, row: dict[str, str], column: ColumnPlan, text: str) -> None:
        folded = "_".join(text.casefold().replace("-", " ").split())
        if folded in _WORDS[column.meaning]:
            row[column.meaning] = folded
            return
        row[f"\0{column.index}"] = text
        self.gathered.guess(
            f"the column {column.heading!r} has words of its own, which were kept as notes"
        )

    def _parents(self, row: dict[str, str], line: int, cells: list[Cell]) -> None:
        plan = self.plan
        both = plan.of("parents")
        if both is not None:
            self._both(row, line, cell_at(cells, both.index), both)
            return
        seed_column, pollen_column = plan.of("seed_parent"), plan.of("pollen_parent")
        seed, how_seed = "", "unknown"
        if seed_column is not None:
            seed, how_seed = parent_of(plan, cell_at(cells, seed_column.index))
        pollen, how_pollen = "", "unknown"
        if pollen_column is not None:
            pollen, how_pollen = parent_of(plan, cell_at(cells, pollen_column.index))
        if how_seed == "open":
            self.gathered.guess("open pollination under a seed parent was taken as not known")
        if row.get("raised") in ("seed_of", "sibbed_in", "cutting_of") or (
            row.get("raised", "").startswith("doubled")
        ):
            row["seed_parent"] = seed
            return
        self._set(row, seed, pollen, how_pollen)

    def _set(self, row: dict[str, str], seed: str, pollen: str, how_pollen: str) -> None:
        row["seed_parent"], row["pollen_parent"] = seed, pollen
        if seed and not pollen and how_pollen == "unknown" and not row.get("pollen_odds"):
            row["pollen_odds"], row["drawn"] = _LOST_POLLEN, "one"
        elif seed and pollen:
            self.directed.add((seed, pollen))

    def _both(self, row: dict[str, str], line: int, cell: Cell, column: ColumnPlan) -> None:
        plan = self.plan
        text = cell_text(cell).strip()
        if not text or plan.marks.get(text, "code") != "code":
            return
        try:
            found = read_cell(text, seed_parent_first=plan.seed_parent_first is True)
            seed = self._tree(found.seed, line)
            pollen = self._tree(found.pollen, line)
        except Fault as fault:
            self.gathered.fault(Flaw(fault.what, fault.todo), line, column.heading)
            return
        self._placed(row, found, seed, pollen)

    def _placed(self, row: dict[str, str], found: CellParents, seed: str, pollen: str) -> None:
        if found.intended == "unknown":
            self._set(row, seed, "", "unknown")
        elif found.intended == "open":
            self._set(row, seed, "", "open")
        elif found.direction_known or not (seed and pollen):
            self._set(row, seed, pollen, "unknown")
        else:
            seed, pollen = sorted((seed, pollen), key=lambda code: (code.casefold(), code))
            row["seed_parent"], row["pollen_parent"] = seed, pollen
            self.no_direction.add((seed, pollen))
            self.undirected_rows.append(row)

    def _tree(self, tree: object, line: int) -> str:
        """The code of a parent; the crosses inside it become plants without a row."""
        from pedigreeview.exchange.parentage_tree import Crossed, Named

        if tree is None:
            return ""
        assert isinstance(tree, Named | Crossed)
        if isinstance(tree, Named):
            return parent_of(self.plan, tree.name)[0]
        for part in inner_crosses(tree):
            code = code_of(part, self.plan.same)
            if code in self.inner:
                continue
            if len(self.inner) >= MOST_INNER:
                raise Fault(
                    f"The table names more than {MOST_INNER} plants without a row.",
                    None,
                    "Split the table.",
                )
            row = {"plant": code}
            self.inner[code] = line, row
            seed, pollen = (
                parent_of(self.plan, side.name)[0]
                if isinstance(side, Named)
                else code_of(side, self.plan.same)
                for side in (part.seed, part.pollen)
            )
            self._placed(row, CellParents(None, None, "cross", part.direction_known), seed, pollen)
        return code_of(tree, self.plan.same)


def read_plants(
    table: Table,
    plan: ImportPlan,
    gathered: Gathered,
    today: datetime.date,
    tick: Tick = no_tick,
) -> Book:
    """Read a table with a row for each plant.

    Parameters
    ----------
    table, plan : the sheet, and how it is to be read
    gathered : takes what is guessed and what is left out
    today : for dates with two digits of the year
    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    FileFaults : with everything that is wrong, under the person's headings
    """
    rows = _Rows(plan, gathered, today)
    for line, cells in ticked(rows_of(table, plan), tick):
        rows.take(line, cells)
    for row in rows.undirected_rows:
        pair = row["seed_parent"], row["pollen_parent"]
        if pair in rows.directed and not row.get("cross"):
            # The same two with a known direction are another cross.
            row["cross"] = f"{cross_name(*pair, (), taken=())} (direction not known)"
    inner = [(line, row) for code, (line, row) in rows.inner.items() if code not in rows.own]
    if inner:
        one = len(inner) == 1
        gathered.guess(
            f"{len(inner)} {'plant' if one else 'plants'} that the notation names without a row "
            f"{'was' if one else 'were'} added, such as {inner[0][1]['plant'][:40]!r}"
        )
    found, headings = _sheet([*rows.rows, *inner], plan, table, tick)
    try:
        book = plant_table.parse_sheet(found, gathered.file, tick=tick)
    except FileFaults as error:
        gathered.faults += [_renamed(fault, headings) for fault in error.faults]
        raise _all(gathered) from None
    except Fault as fault:
        gathered.faults.append(fault)
        raise _all(gathered) from None
    if gathered.faults:
        raise _all(gathered)
    _mend(book, rows)
    _add_scores(book, rows.scores, tick)
    return book


def _all(gathered: Gathered) -> FileFaults:
    return FileFaults(
        gathered.file, sorted(gathered.faults, key=lambda fault: fault.where.row or 0)
    )


def _renamed(fault: Fault, headings: dict[str, str]) -> Fault:
    column = headings.get(fault.where.column, fault.where.column)
    return Fault(fault.what, replace(fault.where, column=column), fault.todo)


def _sheet(
    rows: list[tuple[int, dict[str, str]]], plan: ImportPlan, table: Table, tick: Tick
) -> tuple[Sheet, dict[str, str]]:
    """The rows as a plant table, and the person's heading of each of its columns."""
    official = {plain(name) for name in KNOWN}
    used: dict[str, None] = dict.fromkeys(("plant", "seed_parent", "pollen_parent"))
    for _, row in ticked(rows, tick):
        used.update(dict.fromkeys(row))
    both = plan.of("parents")
    headings = {column.meaning: column.heading for column in plan.columns}
    if both is not None:
        headings.update(seed_parent=both.heading, pollen_parent=both.heading)
    names: dict[str, str] = {}
    taken = set(official)
    for key in used:
        name = key
        if key.startswith("\0"):
            column = next(c for c in plan.columns if c.index == int(key[1:]))
            base = column.heading or f"Column {column.index + 1}"
            name, count = base, 1
            while plain(name) in taken:
                count += 1
                name = f"{base} (note)" if count == 2 else f"{base} (note {count - 1})"
            headings[name] = column.heading
        taken.add(plain(name))
        names[key] = name
    found = Sheet(list(names.values()), 1, [], ";" if table.decimal_comma else ",")
    for line, row in ticked(rows, tick):
        found.rows.append((line, [row.get(key, "") for key in names]))
    return found, headings


def _mend(book: Book, rows: _Rows) -> None:
    """Give crosses what the plant table cannot say: an unknown direction or pollen parent."""
    lost = {
        item.cross for item in book.pollen_candidates if item.candidate == SELF and item.odds == 0
    }
    held = book.candidates()
    for code in lost:
        if len(held[code]) == 1:
            book.crosses[code].intended = ""
            book.crosses[code].drawn = ""
            book.pollen_candidates = [c for c in book.pollen_candidates if c.cross != code]
    for row in rows.undirected_rows:
        pair = row["seed_parent"], row["pollen_parent"]
        plant = book.plants.get(row["plant"])
        cross = book.crosses.get(plant.cross) if plant is not None else None
        if cross is not None and (cross.seed_parent, cross.pollen_parent) == pair:
            cross.direction_known = False
    if rows.undirected_rows:
        count = len({(row["seed_parent"], row["pollen_parent"]) for row in rows.undirected_rows})
        one = count == 1
        rows.gathered.guess(
            f"the direction of {count} {'cross' if one else 'crosses'} is not known, since the "
            "table does not say that the seed parent stands first"
        )


def _add_scores(book: Book, scores: list[Score], tick: Tick) -> None:
    values: dict[str, list[str]] = {}
    for score in scores:
        values.setdefault(score.trait, []).append(score.value)
    for name, held in ticked(values.items(), tick, 1):
        book.add(_trait(name, held))
    for score in ticked(scores, tick):
        if book.traits[score.trait].type == "yes_no":
            score.value = _PLANT_WORDS.get(score.value.casefold(), score.value)
        elif book.traits[score.trait].type == "measure":
            score.value = score.value.replace(",", ".")
        book.add(score)


def _trait(name: str, values: list[str]) -> Trait:
    numbers = [text.replace(",", ".") for text in values]
    try:
        found = [float(text) for text in numbers]
    except ValueError:
        found = []
    if found:
        return Trait(name, "measure")
    if {text.casefold() for text in values} <= set(_PLANT_WORDS):
        return Trait(name, "yes_no")
    return Trait(
        name, "category", values=";".join(dict.fromkeys(v.replace(";", ",") for v in values))
    )
