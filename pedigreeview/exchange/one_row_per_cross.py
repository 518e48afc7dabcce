"""A foreign table with a row for each cross: what was crossed, worked and harvested."""

from __future__ import annotations

import datetime
from dataclasses import dataclass, field, replace

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.book.records import Cross, Harvest, Plant, Pollination, Record
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import Flaw, code_flaw, whole
from pedigreeview.exchange.import_cells import Gathered, as_date, cell_at, parent_of, rows_of
from pedigreeview.exchange.import_plan import ImportPlan
from pedigreeview.exchange.parentage_tree import Named
from pedigreeview.exchange.parents_in_one_cell import code_of, inner_crosses, read_cell
from pedigreeview.exchange.spreadsheets import Cell, Table, cell_text
from pedigreeview.exchange.table_parents import cross_name
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["read_crosses"]

_STATES = {
    "planned": "planned", "todo": "planned", "to do": "planned", "made": "made", "done": "made",
    "skipped": "skipped", "given up": "skipped",
}  # fmt: skip


@dataclass(slots=True)
class _Reader:
    table: Table
    plan: ImportPlan
    gathered: Gathered
    today: datetime.date
    book: Book = field(default_factory=Book)
    lines: dict[int, int] = field(default_factory=dict)
    parents: dict[str, int] = field(default_factory=dict)
    inner: dict[str, tuple[int, str, str, bool]] = field(default_factory=dict)
    names: dict[str, int] = field(default_factory=dict)
    """How far the names of crosses without a code have been numbered."""
    worked: dict[str, int] = field(default_factory=dict)
    """How many pollinations (by the cross) and harvests (by the cross and '/h') there are."""

    def heading(self, meaning: str) -> str:
        column = self.plan.of(meaning)
        return column.heading if column else ""

    def cell(self, cells: list[Cell], meaning: str) -> Cell:
        column = self.plan.of(meaning)
        return "" if column is None else cell_at(cells, column.index)

    def text(self, cells: list[Cell], meaning: str) -> str:
        return cell_text(self.cell(cells, meaning)).strip()

    def date(self, cells: list[Cell], meaning: str, line: int) -> str:
        found, flaw = as_date(self.cell(cells, meaning), self.plan.date_order, self.today)
        if flaw:
            self.gathered.fault(flaw, line, self.heading(meaning))
        return found

    def count(self, cells: list[Cell], meaning: str, line: int) -> int | None:
        text = self.text(cells, meaning)
        if not text or (self.plan.marks.get(text) == "unknown" and text != "0"):
            return None
        found, flaw = whole(text, meaning, 0)
        if flaw:
            self.gathered.fault(flaw, line, self.heading(meaning))
        return found

    def take(self, line: int, cells: list[Cell]) -> None:
        seed, pollen, intended, known = self._parents(line, cells)
        if not (seed or pollen):
            if any(cell_text(cell).strip() for cell in cells):
                self.gathered.leave("rows without any parent were left out")
            return
        if intended == "cross" and seed == pollen:
            intended = "selfing"
        code = self.text(cells, "cross")
        code = self.plan.same.get(code, code)
        if not code:
            code = self._name(seed, pollen)
        elif code in self.book.crosses:
            held = self.book.crosses[code]
            if (held.seed_parent, held.pollen_parent) != (seed, pollen):
                what = f"The cross {code!r} has other parents in row {self.lines[id(held)]}."
                todo = "Correct the parents, or give one of the two crosses another code."
                self.gathered.fault(Flaw(what, todo), line, self.heading("cross"))
                return
        if flaw := code_flaw(code, "cross code"):
            self.gathered.fault(flaw, line, self.heading("cross"))
        cross = self.book.crosses.get(code)
        if cross is None:
            cross = Cross(code, seed, pollen, "", intended, known)
            cross.note = self.text(cells, "note")
            self.book.add(cross)
            self.lines[id(cross)] = line
        made_on = self.date(cells, "made_on", line)
        cross.made_on = cross.made_on or made_on
        self._state(cross, cells)
        for column in self.plan.columns:
            if column.meaning == "kept" and (text := cell_text(cell_at(cells, column.index))):
                cross.extra.setdefault(column.heading, text)
        self._worked(cross, line, cells, made_on)

    def _name(self, seed: str, pollen: str) -> str:
        """The program's name of a cross without a code, unlike any other."""
        return cross_name(seed, pollen, (), taken=self.book.crosses, numbers=self.names)

    def _number(self, key: str) -> int:
        self.worked[key] = self.worked.get(key, 0) + 1
        return self.worked[key]

    def _state(self, cross: Cross, cells: list[Cell]) -> None:
        text = self.text(cells, "state")
        if not text:
            return
        state = _STATES.get(text.casefold(), "")
        if state:
            cross.state = state
        else:
            cross.extra.setdefault(self.heading("state"), text)
            self.gathered.guess("words for the state that are not known were kept as notes")

    def _worked(self, cross: Cross, line: int, cells: list[Cell], made_on: str) -> None:
        flowers, took = self.count(cells, "flowers", line), self.count(cells, "set", line)
        by = self.text(cells, "by")
        if flowers is not None or took is not None or by:
            key = f"{cross.cross}/{self._number(cross.cross)}"
            work = Pollination(key, cross.cross, made_on, flowers, set=took, by=by)
            self.book.add(work)
            self.lines[id(work)] = line
        fruits, seeds = self.count(cells, "fruits", line), self.count(cells, "seeds", line)
        harvested = self.date(cells, "harvested", line)
        if fruits is not None or seeds is not None or harvested:
            key = f"{cross.cross}/h{self._number(f'{cross.cross}/h')}"
            harvest = Harvest(key, cross.cross, harvested, fruits, seeds)
            self.book.add(harvest)
            self.lines[id(harvest)] = line

    def _parents(self, line: int, cells: list[Cell]) -> tuple[str, str, str, bool]:
        if self.plan.of("parents") is None:
            seed, _ = parent_of(self.plan, self.cell(cells, "seed_parent"))
            pollen, how = parent_of(self.plan, self.cell(cells, "pollen_parent"))
            intended = "open" if seed and not pollen and how == "open" else "cross"
            if seed and not pollen and how == "unknown":
                intended = ""
            self._known(seed, line)
            self._known(pollen, line)
            return seed, pollen, intended, True
        text = self.text(cells, "parents")
        if not text or self.plan.marks.get(text, "code") != "code":
            return "", "", "", True
        try:
            found = read_cell(text, seed_parent_first=self.plan.seed_parent_first is True)
            seed, pollen = (self._tree(tree, line) for tree in (found.seed, found.pollen))
        except Fault as fault:
            self.gathered.fault(Flaw(fault.what, fault.todo), line, self.heading("parents"))
            return "", "", "", True
        if seed and pollen and not found.direction_known:
            seed, pollen = sorted((seed, pollen), key=lambda code: (code.casefold(), code))
            self.gathered.guess(
                "the direction of crosses is not known, since the table does not say that the "
                "seed parent stands first"
            )
        intended = "" if found.intended == "unknown" else found.intended
        return seed, pollen, intended, found.direction_known

    def _known(self, code: str, line: int) -> None:
        if code:
            self.parents.setdefault(code, line)

    def _tree(self, tree: object, line: int) -> str:
        from pedigreeview.exchange.parentage_tree import Crossed

        if tree is None:
            return ""
        assert isinstance(tree, Named | Crossed)
        for part in inner_crosses(tree):
            seed, pollen = self._side(part.seed, line), self._side(part.pollen, line)
            self.inner.setdefault(
                code_of(part, self.plan.same), (line, seed, pollen, part.direction_known)
            )
        return self._side(tree, line)

    def _side(self, tree: object, line: int) -> str:
        if isinstance(tree, Named):
            code, _ = parent_of(self.plan, tree.name)
            self._known(code, line)
            return code
        return code_of(tree, self.plan.same)  # type: ignore[arg-type]

    def finish(self, tick: Tick) -> Book:
        book = self.book
        for code, (line, seed, pollen, known) in ticked(self.inner.items(), tick):
            if code in book.plants:
                continue
            name = self._name(seed, pollen)
            cross = Cross(name, seed, pollen, "", "selfing" if seed == pollen else "cross", known)
            plant = Plant(code, cross=name)
            for record in (cross, plant):
                book.add(record)
                self.lines[id(record)] = line
            self.gathered.guess("plants that the notation names without a row were added")
        for code, line in ticked(self.parents.items(), tick):
            if code in book.plants:
                continue
            if flaw := code_flaw(code):
                self.gathered.fault(flaw, line, self.heading("seed_parent"))
                continue
            plant = Plant(code)
            if code in book.crosses and book.crosses[code].seed_parent != code:
                # A parent that has the code of a cross: one plant of it that nobody recorded.
                plant = Plant(code, kind="plant", cross=code)
                self.gathered.guess(
                    "parents with the code of a cross were taken as a plant of that cross"
                )
            book.add(plant)
            self.lines[id(plant)] = line
        return book

    def where(self, record: Record, column: str) -> Place:
        shown = self.heading(column) or self.heading("parents") or column
        return Place(self.gathered.file, self.lines.get(id(record)), shown)


def read_crosses(
    table: Table,
    plan: ImportPlan,
    gathered: Gathered,
    today: datetime.date,
    tick: Tick = no_tick,
) -> Book:
    """Read a table with a row for each cross (see `import_reading.read_plants`).

    Raises
    ------
    FileFaults : with everything that is wrong, under the person's headings
    """
    reader = _Reader(table, plan, gathered, today)
    for line, cells in ticked(rows_of(table, plan), tick):
        reader.take(line, cells)
    book = reader.finish(tick)
    faults = list(gathered.faults)
    if not faults:
        faults = rules.faults(book, reader.where, tick=tick)
    if faults:
        faults.sort(key=lambda fault: fault.where.row or 0)
        raise FileFaults(
            gathered.file,
            [
                Fault(fault.what, replace(fault.where, file=gathered.file), fault.todo)
                for fault in faults
            ],
        )
    return book
