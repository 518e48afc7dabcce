"""Long reading, importing and merging stop at once when they are told to, and leave no trace."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.exchange import plant_table
from pedigreeview.exchange.formats import FORMATS, read_path_as, write_as
from pedigreeview.exchange.import_plan import guess_plan, unknown_marks
from pedigreeview.exchange.importing import carry_out, preview
from pedigreeview.exchange.merging import compare, merge, proposed_names
from pedigreeview.exchange.same_plants import look_alikes
from pedigreeview.exchange.spreadsheet_writing import workbook_bytes
from pedigreeview.exchange.spreadsheets import Sheets, open_table, read_table
from pedigreeview.exchange.ticking import EACH, Tick, no_tick, ticked
from pedigreeview.network import PedigreeNetwork
from tests.book.garden import content

DATA = Path(__file__).parent / "data"
ROWS = 900


def plants(count: int = ROWS, *, note: str = "n", turned: bool = False) -> str:
    """A plant table in which every plant has two parents, the other way round if `turned`."""
    order = (3, 2) if turned else (2, 3)
    rows = [f"P{at},P{at // order[0]},P{at // order[1]},{note}" for at in range(6, count)]
    return "\n".join(["plant,seed_parent,pollen_parent,note", *rows, ""])


FOREIGN = "\n".join(
    ["Code;Parents;sown;height"]
    + [f"P{at};P{at // 2} x Q{at // 3};3/5/2024;{at % 17}" for at in range(ROWS)]
)
CROSSES = "\n".join(
    ["cross,seed parent,pollen parent,seeds,flowers,date"]
    + [f"{at % 7 or ''},A,B,{at},3,2024-05-01" for at in range(ROWS) if at % 7 == 0]
    + [f"c{at},A,P{at},{at},3,2024-05-01" for at in range(ROWS)]
)


@cache
def sheets(text: str) -> Sheets:
    return read_table(text.encode(), "t.csv")


@cache
def mine() -> Book:
    return plant_table.parse(plants(), "mine.csv")


@cache
def theirs() -> Book:
    return plant_table.parse(plants(note="x", turned=True), "theirs.csv")


def _imported(text: str, into: Book | None = None) -> Callable[[Tick], Any]:
    return lambda tick: carry_out(sheets(text), guess_plan(sheets(text)), into, tick=tick)


def _applied(choose: Any) -> Callable[[Tick], Any]:
    def work(tick: Tick) -> Book:
        edit = Edit(mine(), "trial")
        compare(mine(), theirs()).apply(edit, choose, tick=tick)
        return edit.book

    return work


def _brought_in(tick: Tick) -> Book:
    found = carry_out(sheets(FOREIGN), guess_plan(sheets(FOREIGN)))
    edit = Edit(Book(), "trial")
    found.apply(edit, tick=tick)
    return edit.book


WORK: dict[str, Callable[[Tick], Any]] = {
    "text of a table": lambda tick: read_table(FOREIGN.encode(), "t.csv", tick),
    "text in UTF-16": lambda tick: read_table(FOREIGN.encode("utf-16"), "t.csv", tick),
    "plant table by rows": lambda tick: plant_table.parse(plants(), "t", tick=tick),
    "plant table by columns": lambda tick: plant_table.parse(plants(14_000), "t", tick=tick),
    "marks": lambda tick: unknown_marks(
        sheets(FOREIGN).named(""), guess_plan(sheets(FOREIGN)), tick
    ),
    "spellings": lambda tick: look_alikes(
        sheets(FOREIGN), guess_plan(sheets(FOREIGN)), mine(), tick
    ),
    "preview": lambda tick: preview(sheets(FOREIGN), guess_plan(sheets(FOREIGN)), tick=tick),
    "rows of plants": _imported(FOREIGN),
    "rows of crosses": _imported(CROSSES),
    "beside a book": _imported(FOREIGN, mine()),
    "brought in": _brought_in,
    "clashing codes": lambda tick: proposed_names(mine(), theirs(), None, tick),
    "comparing": lambda tick: compare(mine(), theirs(), tick=tick),
    "mine stays": _applied(None),
    "theirs is taken": _applied("theirs"),
    "merging": lambda tick: merge(mine(), theirs(), tick=tick),
}


class Stopper:
    """A tick that raises when it is called for the last time that is allowed."""

    def __init__(self, at: int | None = None) -> None:
        self.at, self.calls = at, 0

    def __call__(self) -> None:
        self.calls += 1
        if self.at is not None and self.calls >= self.at:
            raise Cancelled


@pytest.mark.parametrize("name", WORK)
def test_it_stops_wherever_it_is_told_to(name: str) -> None:
    work = WORK[name]
    before = content(mine()), content(theirs())
    counted = Stopper()
    work(counted)
    least = 3 if name == "plant table by columns" else ROWS // EACH
    assert counted.calls >= least
    for at in sorted({1, 2, counted.calls // 2, counted.calls - 1, counted.calls} - {0}):
        stopper = Stopper(at)
        with pytest.raises(Cancelled):
            work(stopper)
        # Nothing goes on after it, and no fault comes in the place of it.
        assert stopper.calls == at
    assert (content(mine()), content(theirs())) == before


def test_a_plan_of_many_columns_stops() -> None:
    text = ",".join(f"h{at}" for at in range(3_000)) + "\n" + ",".join("x" * 3_000)
    wide = read_table(text.encode(), "t.csv")
    counted = Stopper()
    guess_plan(wide, tick=counted)
    assert counted.calls > 2_900
    with pytest.raises(Cancelled):
        guess_plan(wide, tick=Stopper(counted.calls // 2))


@pytest.mark.parametrize("name", [name for name, held in FORMATS.items() if held.reads])
def test_every_format_stops_while_it_is_read(name: str, tmp_path: Path) -> None:
    held = FORMATS[name]
    path = tmp_path / f"t{(held.endings or ('',))[0]}"
    book = plant_table.parse(plants(400), "t.csv")
    if held.writes:
        write_as(PedigreeNetwork.from_records(book), path, held)
    else:
        path.write_bytes((DATA / "peas.ods").read_bytes())
    counted = Stopper()
    read_path_as(path, held, tick=counted)
    assert counted.calls >= 2
    before = path.read_bytes() if path.is_file() else None
    for at in (1, counted.calls):
        with pytest.raises(Cancelled):
            read_path_as(path, held, tick=Stopper(at))
    assert path.is_dir() or path.read_bytes() == before
    assert [one.name for one in tmp_path.iterdir()] == [path.name]


def test_a_spreadsheet_stops(tmp_path: Path) -> None:
    rows = [[f"P{at}", "", ""] for at in range(2_000)]
    path = tmp_path / "t.xlsx"
    path.write_bytes(workbook_bytes([("plants", ["plant", "a", "b"], rows)]))
    counted = Stopper()
    open_table(path, counted)
    assert counted.calls > 2_000 // EACH
    with pytest.raises(Cancelled):
        open_table(path, Stopper(counted.calls - 1))


def test_a_stop_that_is_a_fault_is_passed_on() -> None:
    """What the window raises while it writes is a fault; none of the readers may swallow it."""

    def tick() -> None:
        raise Fault("Stopped.")

    for name in ("brought in", "mine stays", "merging", "comparing"):
        with pytest.raises(Fault, match=r"^Stopped"):
            WORK[name](tick)


@pytest.mark.parametrize(("count", "each", "calls"), [(0, 3, 0), (1, 3, 1), (7, 3, 3), (6, 3, 2)])
def test_how_often(count: int, each: int, calls: int) -> None:
    counted = Stopper()
    assert list(ticked(range(count), counted, each)) == list(range(count))
    assert counted.calls == calls
    assert list(ticked("abc", no_tick)) == ["a", "b", "c"]
