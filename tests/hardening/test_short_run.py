"""A short run over every reader: a book or a fault, in time, in memory, whole.

The long one is `python tests/hardening/long_run.py --inputs 200000`.
"""

from __future__ import annotations

import json
from pathlib import Path
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.faults import Fault
from pedigreeview.exchange import read_book
from pedigreeview.exchange.formats import FORMATS, format_of_bytes, read_bytes_as
from tests.hardening import mutators, trial
from tests.hardening.hostile import TEXTS
from tests.hardening.long_run import shares
from tests.hardening.readers import READERS, Input, Reader
from tests.hardening.trial import Finding, make, try_one

COUNT = 250
"""Inputs of all readers in the suite."""


@pytest.mark.parametrize("reader", READERS)
def test_mutated_inputs_give_a_book_or_a_fault(reader: str, tmp_path: Path) -> None:
    results = []
    # Other numbers than the long run begins with.
    for number in range(10**9, 10**9 + max(shares(COUNT, list(READERS))[reader], 5)):
        found = try_one(reader, number, tmp_path)
        assert isinstance(found, str), found
        results.append(found)
    assert results
    assert list(tmp_path.iterdir()) == []


def test_an_input_is_the_same_each_time(tmp_path: Path) -> None:
    for reader in ("plant table", "folder", "XLSX", "Breeding API JSON"):
        assert make(reader, 7, tmp_path) == make(reader, 7, tmp_path)
        assert make(reader, 7, tmp_path) != make(reader, 8, tmp_path)


def _raises(error: BaseException) -> Reader:
    def read(_path: Path, _rng: Random) -> None:
        raise error

    return Reader("broken", lambda _rng, _room: Input({"t.csv": b"x"}), read, 1)


@pytest.mark.parametrize(
    ("error", "kind"),
    [
        (KeyError("x"), "crash"),
        (RecursionError("deep"), "crash"),
        (MemoryError(), "crash"),
        (trial.OutOfTime(), "out of time"),
        (trial.NotWhole("half"), "not whole"),
        (Fault(""), "a fault without words"),
    ],
)
def test_a_reader_that_is_broken_is_found(
    error: BaseException, kind: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(READERS, "broken", _raises(error))
    found = try_one("broken", 1, tmp_path)
    assert isinstance(found, Finding)
    assert found.kind == kind


def test_memory_is_measured(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    if not Path("/proc/self/clear_refs").exists():
        pytest.skip("the system tells no peak of the memory")

    def read(_path: Path, _rng: Random) -> None:
        assert len(bytearray(b"x") * 130_000_000)

    greedy = Reader("greedy", lambda _rng, _room: Input({"t.csv": b"x"}), read, 1)
    monkeypatch.setitem(READERS, "greedy", greedy)
    found = try_one("greedy", 1, tmp_path)
    assert isinstance(found, Finding)
    assert found.kind == "memory"


cells = st.one_of(st.sampled_from(TEXTS), st.text(max_size=8))
tables = st.lists(st.lists(cells, max_size=6), max_size=6)


@settings(max_examples=60)
@given(
    st.lists(
        st.sampled_from(("plant", "seed_parent", "pollen_parent", "pollen_odds", "raised", "sown")),
        min_size=1,
        max_size=6,
    ),
    tables,
    st.sampled_from((",", ";", "\t")),
)
def test_tables_of_hostile_cells(headings: list[str], rows: list[list[str]], parted: str) -> None:
    text = "\n".join(parted.join(row) for row in [headings, *rows])
    data = text.encode("utf-8", "replace")
    try:
        book = read_bytes_as(data, format_of_bytes(data, "t"), "t")
    except Fault:
        return
    assert all(code == plant.plant for code, plant in book.plants.items())


json_values = st.recursive(
    st.one_of(st.none(), st.booleans(), st.floats(), st.integers(), cells),
    lambda part: st.one_of(
        st.lists(part, max_size=3),
        st.dictionaries(
            st.sampled_from(
                ("germplasmDbId", "crossDbId", "parents", "parent1", "additionalInfo", "result",
                 "crossingBook", "data", "nodes", "links", "id", "record", "type", "graph")
            ),
            part,
            max_size=5,
        ),
    ),
    max_leaves=15,
)  # fmt: skip


@settings(max_examples=60)
@given(json_values)
def test_json_of_any_shape(value: object) -> None:
    data = json.dumps(value).encode("utf-8", "replace")
    for ending in ("brapi", "node-link"):
        try:
            book = read_bytes_as(data, FORMATS[ending], "t.json")
        except Fault:
            continue
        assert all(code == plant.plant for code, plant in book.plants.items())


@pytest.mark.parametrize("size", [210_000_000, 30_000_000])
def test_a_zip_bomb(size: int, tmp_path: Path) -> None:
    path = tmp_path / "bomb.xlsx"
    path.write_bytes(mutators.bomb(size))
    assert path.stat().st_size < size // 500
    given = Input({path.name: path.read_bytes()})
    room = tmp_path / "room"
    room.mkdir()
    assert try_one("XLSX", 0, room, given) == "fault"


def test_a_list_of_sizes_that_lies(tmp_path: Path) -> None:
    data = mutators.lying_archive(b"<worksheet>" + b" " * 5_000_000 + b"</worksheet>")
    assert len(data) < 50_000
    assert try_one("XLSX", 0, tmp_path, Input({"t.xlsx": data})) == "fault"


def test_a_row_of_a_million_columns(tmp_path: Path) -> None:
    heading = ("plant,seed_parent,pollen_parent" + "," * 1_000_000).encode()
    for text in (heading + b"\nA,,\n", b"plant,seed_parent\nA," + b"x," * 1_000_000 + b"\n"):
        for reader in ("plant table", "table import"):
            assert try_one(reader, 0, tmp_path, Input({"t.csv": text})) == "fault"


@pytest.mark.parametrize("link", ["/etc/passwd", "../outside.csv", "plants.csv", ".."])
def test_links_that_lead_outside(link: str, tmp_path: Path) -> None:
    room = tmp_path / "room"
    room.mkdir()
    (tmp_path / "outside.csv").write_text("plant\nStolen\n", encoding="utf-8")
    given = make("folder", 0, room)
    files = {"": b"", "datapackage.json": json.dumps(
        {"resources": [{"name": "plants", "path": "plants.csv"}]}
    ).encode()}  # fmt: skip
    given.files, given.links = files, {"plants.csv": link}
    assert try_one("folder", 0, room, given) == "fault"


@pytest.mark.parametrize(
    "path", ["../outside.csv", "/etc/passwd", "a/../../outside.csv", "..\\outside.csv", ".."]
)
def test_paths_that_lead_outside(path: str, tmp_path: Path) -> None:
    (tmp_path / "outside.csv").write_text("plant\nStolen\n", encoding="utf-8")
    folder = tmp_path / "book"
    folder.mkdir()
    (folder / "plants.csv").write_text("plant\nA\n", encoding="utf-8")
    for name in ("plants", "rain"):
        resources = [{"name": "plants", "path": "plants.csv"}, {"name": name, "path": path}]
        if name == "plants":
            del resources[0]
        (folder / "datapackage.json").write_text(json.dumps({"resources": resources}), "utf-8")
        if name == "plants":
            with pytest.raises(Fault) as caught:
                read_book(folder)
            assert "nothing outside the folder is read" in str(caught.value.lines())
        else:
            book = read_book(folder)
            assert list(book.plants) == ["A"]
            assert "was not read" in str(book.remarks)
            assert not book.unknown_tables
