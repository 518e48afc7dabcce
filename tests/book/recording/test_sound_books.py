"""Whatever is recorded, in whatever order: a book without errors stays without errors."""

from __future__ import annotations

import datetime
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.checks import check_records
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.correcting import (
    amend,
    correct_cross,
    give_parent,
    move_to_cross,
    repoint,
)
from pedigreeview.book.recording.crosses import (
    record_backcross,
    record_cross,
    record_open,
    record_selfing,
    set_cross_state,
)
from pedigreeview.book.recording.deleting import (
    delete,
    delete_cross_with_progeny,
    delete_with_progeny,
    give_progeny_unknown_parent,
)
from pedigreeview.book.recording.doubt import accept_proposed_odds, set_candidates
from pedigreeview.book.recording.findings import record_finding
from pedigreeview.book.recording.harvests import record_harvest
from pedigreeview.book.recording.lookup import cross_called, plant_called
from pedigreeview.book.recording.naming import name_as_variety
from pedigreeview.book.recording.plants import clone, double, raise_plants, raise_row, set_status
from pedigreeview.book.recording.pollen import cross_with_mixed_pollen, record_pollen
from pedigreeview.book.recording.pollinations import record_fruits, record_pollination
from pedigreeview.book.recording.sowings import (
    correct_sown,
    record_seedlings,
    record_sowing,
    undo_sowing,
)
from pedigreeview.book.records import SELF, Plant
from pedigreeview.exchange.rules import faults
from pedigreeview.network import PedigreeNetwork

TODAY = datetime.date(2024, 6, 10)
DATES = ("", "2023", "2023-07-01", "2024-03-01", "2024-06-01", "2024-08", "2025-04-01")


class _Draws:
    """Draws records that are there, and values for them."""

    def __init__(self, data: st.DataObject, book: Book) -> None:
        self.data, self.book = data, book

    def one(self, table: str) -> str:
        held = list(getattr(self.book, table))
        return self.data.draw(st.sampled_from(held)) if held else ""

    def plant(self) -> str:
        return self.one("plants")

    def date(self) -> str:
        return self.data.draw(st.sampled_from(DATES))

    def count(self, most: int = 6) -> int:
        return self.data.draw(st.integers(0, most))

    def flag(self) -> bool:
        return self.data.draw(st.booleans())


def _ops():
    return {
        "cross": lambda e, d: record_cross(
            e, d.plant(), d.plant(), today=TODAY, both_ways=d.flag(), state="made",
            made_on=d.date(), repeat=d.flag(),
        ),
        "selfing": lambda e, d: record_selfing(e, d.plant(), today=TODAY, made_on=d.date()),
        "open": lambda e, d: record_open(e, d.plant(), today=TODAY, made_on=d.date()),
        "backcross": lambda e, d: record_backcross(e, d.plant(), d.plant(), today=TODAY),
        "state": lambda e, d: set_cross_state(e, [d.one("crosses")], "skipped"),
        "pollination": lambda e, d: record_pollination(
            e, d.one("crosses"), today=TODAY, date=d.date(), flowers=d.count(), bud="open",
            emasculated_on=d.date(), pollen_lot=d.one("pollen_lots"),
        ),
        "fruits": lambda e, d: record_fruits(
            e, d.one("pollinations"), fruits=d.count(), dropped=d.count()
        ),
        "odds": lambda e, d: accept_proposed_odds(e, d.one("crosses")),
        "candidates": lambda e, d: set_candidates(
            e, d.one("crosses"), {d.plant(): 0.5, d.plant(): 0.25, SELF: 0.25}
        ),
        "harvest": lambda e, d: record_harvest(
            e, d.one("crosses"), today=TODAY, date=d.date(), seeds=d.count(12), fruits=d.count(),
            into=d.one("packets") if d.flag() else "new",
        ),
        "sow": lambda e, d: record_sowing(
            e, today=TODAY, packet=d.one("packets"), date=d.date(), seeds=d.count(8),
            left_in_packet=d.count(20) if d.flag() else None,
        ),
        "sow from": lambda e, d: record_sowing(
            e, today=TODAY, sown_from=d.one("crosses"), date=d.date(), seeds=d.count()
        ),
        "seedlings": lambda e, d: record_seedlings(
            e, d.one("sowings"), up=d.count(), kept=d.count()
        ),
        "sown": lambda e, d: correct_sown(e, d.one("sowings"), d.count(9)),
        "unsown": lambda e, d: undo_sowing(e, d.one("sowings")),
        "raise": lambda e, d: raise_plants(
            e, d.one("crosses"), 2, today=TODAY, sown=d.date(), selfings=d.count(1)
        ),
        "raise sown": lambda e, d: raise_plants(e, "", 2, today=TODAY, sowing=d.one("sowings")),
        "row": lambda e, d: raise_row(
            e, d.one("plants" if d.flag() else "crosses"), today=TODAY, sown=d.date(),
            sibbed=d.flag(),
        ),
        "clone": lambda e, d: clone(e, d.plant(), today=TODAY, date=d.date()),
        "double": lambda e, d: double(e, d.plant(), today=TODAY, date=d.date()),
        "status": lambda e, d: set_status(e, [d.plant()], "culled", date=d.date()),
        "finding": lambda e, d: record_finding(e, d.plant(), d.plant(), date=d.date()),
        "pollen": lambda e, d: record_pollen(
            e, [d.plant(), d.plant()], today=TODAY, collected=d.date()
        ),
        "mixed": lambda e, d: cross_with_mixed_pollen(
            e, d.plant(), d.one("pollen_lots"), today=TODAY
        ),
        "variety": lambda e, d: name_as_variety(e, d.plant(), f"N{d.count(99)}", today=TODAY),
        "amend": lambda e, d: amend(e, plant_called(e.book, d.plant()), sown=d.date()),
        "amend date": lambda e, d: amend(
            e, cross_called(e.book, d.one("crosses")), made_on=d.date()
        ),
        "correct": lambda e, d: correct_cross(
            e, d.one("crosses"), seed_parent=d.plant() if d.flag() else "",
            pollen_parent=d.plant() if d.flag() else "", date="2024",
        ),
        "move": lambda e, d: move_to_cross(
            e, [d.plant(), d.plant()], d.one("crosses"), date="2024"
        ),
        "parent": lambda e, d: give_parent(
            e, [d.plant()], pollen_parent=d.plant(), today=TODAY, date="2024"
        ),
        "repoint": lambda e, d: repoint(e, d.plant(), d.plant()),
        "delete": lambda e, d: delete(e, plant_called(e.book, d.plant())),
        "unknown": lambda e, d: give_progeny_unknown_parent(e, d.plant()),
        "with progeny": lambda e, d: delete_with_progeny(e, d.plant()),
        "cross and progeny": lambda e, d: delete_cross_with_progeny(e, d.one("crosses")),
    }  # fmt: skip


OPS = _ops()
GROWING = [name for name in OPS if name not in ("delete", "with progeny", "cross and progeny")]


def _start() -> Book:
    """A book with something of every kind to draw from."""
    book = Book()
    book.settings.crop = "pea"
    for plant in (
        Plant("A", kind="variety"), Plant("B", kind="variety"),
        Plant("p", kind="plant", sown="2023-03-01"), Plant("q", kind="plant"),
    ):  # fmt: skip
        book.add(plant)
    edit = Edit(book, "start")
    (cross,) = record_cross(edit, "p", "q", today=TODAY)
    record_pollen(edit, "q", today=TODAY, collected="2023-05-30")
    record_pollen(edit, "q; A", today=TODAY)
    record_pollination(edit, cross.cross, today=TODAY, date="2023-06-01", flowers=5, bud="unsure")
    record_harvest(edit, cross.cross, today=TODAY, date="2023-07-01", seeds=12, fruits=3)
    record_sowing(edit, today=TODAY, packet="K23-1", date="2024-03-01", seeds=6)
    raise_plants(edit, "", 3, today=TODAY, sowing="B24-1")
    raise_row(edit, cross.cross, today=TODAY)
    record_cross(edit, "A", "B", today=TODAY, both_ways=True)
    record_selfing(edit, "24-01-01", today=TODAY)
    raise_plants(edit, "24-01-01 ⊗", 2, today=TODAY)
    clone(edit, "p", today=TODAY)
    return edit.book


START = _start()


def _errors(book: Book) -> list[str]:
    found = [p.message for p in check_records(book) if p.severity == "error"]
    found += [fault.sentence() for fault in faults(book, lambda record, column: Place())]
    network = PedigreeNetwork.from_records(book)
    found += [problem.message for problem in network.loop_problems()]
    for packet in book.packets.values():
        if packet.left is not None and packet.left < 0:
            found.append(f"{packet.packet} has {packet.left} left")
    return found


@settings(max_examples=50)
@given(st.lists(st.sampled_from([*OPS, *GROWING]), min_size=3, max_size=12), st.data())
def test_recording_leaves_no_error(names, data):
    book = START
    for name in names:
        edit = Edit(book, name)
        before = repr(book)
        try:
            OPS[name](edit, _Draws(data, book))
        except Fault:
            assert repr(book) == before
            continue
        assert repr(book) == before
        book = edit.book
        assert _errors(book) == [], name


def test_this_file_draws_every_module_that_changes_parents():
    """A new way to change parents is to be drawn above as well."""
    folder = Path(__file__).resolve().parents[3] / "pedigreeview" / "book" / "recording"
    text = Path(__file__).read_text(encoding="utf-8")
    for path in folder.glob("*.py"):
        if "edit.update(" in path.read_text(encoding="utf-8"):
            known = f"recording.{path.stem} import" in text
            assert known or path.stem in ("blooms", "compatibility", "moving", "packets",
                                          "scores", "traits", "typing_in"), path.stem  # fmt: skip
