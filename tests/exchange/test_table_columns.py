"""The road by columns gives the book, the faults and the network of the road row by row."""

from __future__ import annotations

import copy
import csv
import io
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.columns import columns_of
from pedigreeview.book.faults import Fault
from pedigreeview.book.on_demand import OnDemand
from pedigreeview.book.records import Plant
from pedigreeview.exchange import plant_table
from pedigreeview.network import PedigreeNetwork, sweeps

_FIELDS = (
    "origin",
    "seed",
    "option_starts",
    "options",
    "odds",
    "selfings",
    "pool",
    "fixation",
    "ploidy",
)


@pytest.fixture
def roads(monkeypatch: pytest.MonkeyPatch) -> Any:
    """Read a text by columns and row by row: each gives a book or the lines of its fault."""

    def read(text: str, **options: Any) -> tuple[Any, Any]:
        found: list[Any] = []
        for least in (0, 10**12):
            with monkeypatch.context() as patch:
                patch.setattr(plant_table, "COLUMNS_FROM", least)
                try:
                    found.append(plant_table.parse(text, "garden.csv", **options))
                except Fault as fault:
                    found.append(fault.lines())
        return found[0], found[1]

    return read


def _same_book(one: Book, other: Book) -> None:
    assert one == other
    assert other == one
    assert list(one.plants) == list(other.plants)
    assert list(one.crosses.items()) == list(other.crosses.items())
    assert one.remarks == other.remarks


def _same_network(one: PedigreeNetwork, other: PedigreeNetwork) -> None:
    assert one.codes == other.codes
    assert one.withheld == other.withheld
    for code in one.codes:
        assert one.parents(code) == other.parents(code)
    for name in _FIELDS:
        np.testing.assert_array_equal(getattr(one.arrays, name), getattr(other.arrays, name))
    for mine, theirs in zip(one._compiled[0].label, other._compiled[0].label, strict=True):
        assert mine == theirs
    assert one._compiled[0].hidden == other._compiled[0].hidden
    assert dict(one._compiled[0].of_plant) == dict(other._compiled[0].of_plant)
    for code in one.codes:
        if code not in one.withheld:
            np.testing.assert_array_equal(one.coancestry_with(code), other.coancestry_with(code))
            assert one.inbreeding(code) == other.inbreeding(code)
    _same_relatives(one, other)
    assert one.problems() == other.problems()
    assert one.base() == other.base()


def _same_relatives(one: PedigreeNetwork, other: PedigreeNetwork) -> None:
    assert one.founders == other.founders
    for code in one.codes:
        for ask in ("progeny", "sibs", "mates", "generation", "generation_name", "cytoplasm"):
            assert getattr(one, ask)(code) == getattr(other, ask)(code)
        assert one.descendants(code) == other.descendants(code)
        assert one.crosses_of(code) == other.crosses_of(code)
    counts = one.descendant_counts(one.codes)
    assert counts == other.descendant_counts(other.codes)
    assert counts == {code: len(other.descendants(code)) for code in other.codes}
    for cross in other.book.crosses:
        assert one.progeny_of_cross(cross) == other.progeny_of_cross(cross)
    assert one.loops() == other.loops()
    assert one.reciprocal_pairs() == other.reciprocal_pairs()


_HEADINGS = ("plant", "seed_parent", "pollen_parent")
_MORE = {
    "kind": ("", "", "variety", "plant", "family", "Family"),
    "raised": ("",) * 12 + ("cross", "founder", "seed_of", "cutting_of", "doubled_haploid_of"),
    "selfings": ("",) * 6 + ("0", "1", "2"),
    "fixation": ("",) * 8 + ("0", "0.5", "1"),
    "ploidy": ("",) * 20 + ("2", "4"),
    "cross": ("",) * 4 + ("X1", "X2", "A1 × A2"),
    "crop": ("",) * 8 + ("pea", "tomato"),
    "name": ("", "Blue", "Red, early", 'The "old" one'),
    "sown": ("", "2021", "2021-05"),
    "beds": ("", " 3 ", "4"),
}


@st.composite
def tables(draw: st.DrawFn) -> str:
    """A plant table, most often without a flaw, in any order of rows."""
    more = draw(st.lists(st.sampled_from(sorted(_MORE)), unique=True, max_size=5))
    rows: list[list[str]] = []
    count = draw(st.integers(1, 14))
    for number in range(count):
        known = [f"A{older}" for older in range(number)]
        some = st.sampled_from([*known, *known, "N1", "N2 ", ""])
        parents = ["", ""] if draw(st.integers(0, 2)) == 0 else [draw(some), draw(some)]
        if parents[0] and draw(st.integers(0, 4)) == 0:
            parents[1] = parents[0]
        code = f"A{number}" if draw(st.integers(0, 60)) else draw(st.sampled_from(("A0", "a:b")))
        cells = [draw(st.sampled_from(_MORE[name])) for name in more]
        rows.append([code, *parents, *cells])
        if "raised" in more and cells[more.index("raised")] not in ("", "cross", "founder"):
            rows[-1][2] = ""
    if draw(st.booleans()):
        rows = draw(st.permutations(rows))
    if draw(st.integers(0, 5)) == 0:
        # Blank cells at the end of a row may be missing.
        rows = [row[: 1 + max(at for at, cell in enumerate(row) if cell)] for row in rows]
    if draw(st.integers(0, 5)) == 0:
        rows.append([])
        rows.append([""] * (3 + len(more)))
    if draw(st.integers(0, 12)) == 0:
        # A loop, which is no fault of the file.
        rows.append(["L1", "L2", "A0", *[""] * len(more)])
        rows.append(["L2", "L1", "", *[""] * len(more)])
    text = io.StringIO()
    writer = csv.writer(text, lineterminator=draw(st.sampled_from(("\n", "\r\n"))))
    writer.writerows([[*_HEADINGS, *more], *rows])
    return text.getvalue()


_OPTIONS = st.fixed_dictionaries(
    {},
    optional={
        "founders_as": st.sampled_from(("variety", "plant")),
        "fixation": st.sampled_from((0.0, 0.5, 1.0)),
    },
)


@settings(max_examples=400, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(text=tables(), options=_OPTIONS)
@example(text="plant,seed_parent,pollen_parent\nA,,\nB,A\n\n", options={})
@example(text="plant;seed_parent;pollen_parent;fixation\nA;;;0,5\nB;A;A;\n", options={})
@example(text='plant,seed_parent,pollen_parent\nA,,\n"B,A,A\n', options={})
@example(text="plant,seed_parent,pollen_parent\nA × B,,\nC,A × B,D\nE,A,B × D\n", options={})
@example(text="plant,seed_parent,pollen_parent,\nA,,,\nB,A,C,x\n", options={})
@example(text="plant,seed_parent,pollen_parent\nA,,\nB,A,C,\n", options={})
@example(text="plant,seed_parent,pollen_parent\nA,Self,\n", options={})
@example(text="plant,seed_parent,pollen_parent,pollen_odds\nA,,,\nB,A,,self:0.5\n", options={})
@example(text="sep=;\nplant;seed_parent;pollen_parent\n", options={})
@example(text="plant,seed_parent,pollen_parent,name\nA,,,\nB,A,C,x\x07\n", options={})
@example(text="plant,seed_parent,pollen_parent,a\x07\nA,,,\nB,A\ufffe,C,\n", options={})
@example(text="plant,seed_parent,pollen_parent,selfings\nA,,,\nB,A,A,1001\n", options={})
@example(text="plant,seed_parent,pollen_parent,ploidy\nA,,,65\nB,A,A,\n", options={})
@example(text="plant,pollen_parent,ploidy\nA,,x\nB,A,\n", options={})
@example(text="plant,seed_parent,pollen_parent,drawn\nA,B,C,one\nD,B,C,\n", options={})
def test_both_roads_agree(roads: Any, text: str, options: dict[str, Any]) -> None:
    by_columns, by_rows = roads(text, **options)
    if isinstance(by_rows, list):
        assert by_columns == by_rows
        return
    for one in (copy.deepcopy(by_columns), by_columns):
        _same_network(PedigreeNetwork.from_records(one), PedigreeNetwork.from_records(by_rows))
    _same_book(by_columns, by_rows)


@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(text=tables())
def test_the_compiled_order_is_the_plain_one(
    roads: Any, monkeypatch: pytest.MonkeyPatch, text: str
) -> None:
    by_columns, by_rows = roads(text)
    if isinstance(by_rows, list):
        return
    plain = PedigreeNetwork.from_records(by_rows)
    with monkeypatch.context() as patch:
        patch.setattr("pedigreeview.network.order.COMPILED_FROM", 0)
        patch.setattr(sweeps, "COMPILED_FROM", 0)
        patch.setattr("pedigreeview.network.generations.COMPILED_FROM", 0)
        patch.setattr("pedigreeview.network.descent.COMPILED_FROM", 0)
        compiled = PedigreeNetwork.from_records(by_columns)
        assert compiled.codes == plain.codes
        assert compiled.descendant_counts(plain.codes) == {
            code: len(plain.descendants(code)) for code in plain.codes
        }
        assert list(map(compiled.generation, plain.codes)) == list(
            map(plain.generation, plain.codes)
        )


_CLEAN = "plant,seed_parent,pollen_parent,kind\nA,,,variety\nB,,,family\nC,A,B,\nD,A,B,\nE,C,C,\n"


def test_a_clean_table_is_kept_as_columns(roads: Any) -> None:
    by_columns, by_rows = roads(_CLEAN)
    assert columns_of(by_columns) is not None
    assert columns_of(by_rows) is None
    assert isinstance(by_columns.plants, OnDemand)


def test_records_made_on_demand_stay_the_same_object(roads: Any) -> None:
    book, _ = roads(_CLEAN)
    assert book.plants["C"] is book.plants["C"]
    assert next(iter(book.plants.values())) is book.plants["A"]


@pytest.mark.parametrize("change", ["field", "add", "take out", "cross"])
def test_a_changed_record_counts(roads: Any, change: str) -> None:
    books = roads(_CLEAN)
    for book in books:
        if change == "field":
            book.plants["E"].selfings = 2
        elif change == "add":
            book.add(Plant("F", raised="cutting_of", source="E"))
        elif change == "take out":
            del book.plants["E"]
        else:
            book.crosses["A × B"].pollen_parent = "A"
            book.crosses["A × B"].intended = "selfing"
    assert columns_of(books[0]) is None
    _same_network(*map(PedigreeNetwork.from_records, books))
    _same_book(*books)
