"""Long rows and wide families, from reading to writing: no recursion limit anywhere.

Smaller sizes stand where the full ones take long; each is past Python's limit of 1,000 calls.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.exchange import cross_notation, plant_table, slash_notation
from pedigreeview.exchange.formats import FORMATS, read_path_as, write_as
from pedigreeview.exchange.parents_in_one_cell import read_cell
from pedigreeview.exchange.plant_notation import notation_of
from pedigreeview.network import PedigreeNetwork
from pedigreeview.network.parentage import parents_by_plant

DEPTH = 5_000


def chain(count: int) -> str:
    """A backcross and a selfing in turn, as many generations as said."""
    rows = ["G0,,", "H,,"]
    rows += [f"G{at},G{at - 1},{'H' if at % 2 else f'G{at - 1}'}" for at in range(1, count + 1)]
    return "\n".join(["plant,seed_parent,pollen_parent", *rows, ""])


def sibs(count: int) -> str:
    """One cross with many progeny, the last two of them crossed."""
    rows = ["A,,", "B,,", *(f"S{at},A,B" for at in range(count)), f"L,S0,S{count - 1}"]
    return "\n".join(["plant,seed_parent,pollen_parent", *rows, ""])


@pytest.fixture(scope="module")
def deep() -> Book:
    return plant_table.parse(chain(DEPTH), "deep.csv")


@pytest.fixture(scope="module")
def deep_net(deep: Book) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(deep)


def test_five_thousand_generations_have_their_numbers(deep_net: PedigreeNetwork) -> None:
    last = f"G{DEPTH}"
    assert deep_net.generation(last) is not None
    assert deep_net.problems() is not None
    # Backcrossed to H every other time and never selfed twice, F comes to rest at a half.
    values = [deep_net.inbreeding(f"G{at}") for at in (2, DEPTH - 2, DEPTH)]
    assert 0 < values[0] <= values[1] <= 1
    assert values[1] == pytest.approx(values[2], abs=1e-12)
    assert deep_net.coancestry(last, "H") <= 1
    assert sum(deep_net.founder_shares(last).values()) == pytest.approx(1)
    assert deep_net.explain(f"G{DEPTH - 1}", last) is not None


def test_five_thousand_generations_are_written_as_text(deep: Book) -> None:
    parents = parents_by_plant(deep)
    whole = notation_of(deep, f"G{DEPTH}", most=4_000)
    assert whole.text.count("/")
    for at in (1, 2, DEPTH):
        asked = notation_of(deep, f"G{at}", parents=parents)
        assert asked == notation_of(deep, f"G{at}")


@pytest.mark.parametrize(
    "name", ["folder", "table", "book", "xlsx", "graphml", "node-link", "brapi"]
)
def test_a_long_row_goes_through_every_format(name: str, tmp_path: Path) -> None:
    book = plant_table.parse(chain(1_050), "deep.csv")
    held = FORMATS[name]
    path = tmp_path / f"out{(held.endings or ('',))[0]}"
    write_as(PedigreeNetwork.from_records(book), path, held)
    if held.reads:
        assert list(read_path_as(path, held).plants) == list(book.plants)


def test_a_loop_of_five_thousand_is_named() -> None:
    text = chain(DEPTH).replace("G0,,\n", f"G0,G{DEPTH},H\n")
    net = PedigreeNetwork.from_records(plant_table.parse(text, "loop.csv"))
    (problem,) = net.loop_problems()
    assert (problem.kind, len(problem.plants)) == ("own_ancestor", DEPTH + 1)
    # A sentence that names five thousand plants is none.
    assert len(problem.message) < 400
    assert "(4978 more)" in problem.message
    assert f"G{DEPTH}" in net.withheld


def test_many_sibs(tmp_path: Path) -> None:
    book = plant_table.parse(sibs(12_000), "wide.csv")
    net = PedigreeNetwork.from_records(book)
    assert net.inbreeding("S11999") == 0
    # Founders of a table are varieties unless it says otherwise: F of sibs' progeny is a half.
    assert net.inbreeding("L") == pytest.approx(0.5)
    assert len(book.crosses) == 2
    plant_table.write(book, tmp_path / "wide.csv")
    assert len(plant_table.read(tmp_path / "wide.csv").plants) == len(book.plants)


def _read_or_refused(read: Callable[[str], Any], text: str) -> bool:
    try:
        return read(text) is not None
    except Fault as fault:
        return bool(fault.todo)


@pytest.mark.parametrize(
    "text",
    [
        "A" + " " * 60_000 + "B",
        "A" + " " * 60_000 + "* ",
        " ".join("*" * 20_000),
        "A " + "self " * 15_000 + "x",
        "(" * 30_000 + "A × B" + ")" * 30_000,
        "A × (" * 8_000 + "B" + ")" * 8_000,
        "/".join("ABCDE") * 10_000,
        "A/B" + "".join(f"/{at}/C" for at in range(3, 5_000)),
    ],
)
def test_long_notations_are_read_or_refused_at_once(text: str) -> None:
    # The trap is a pattern that tries every one of many blanks; this would take hours.
    for read in (
        slash_notation.parse,
        cross_notation.parse,
        lambda said: read_cell(said, seed_parent_first=True),
    ):
        assert _read_or_refused(read, text)


@pytest.mark.parametrize(
    "rows",
    [
        "A,,,,1,family\nB,A,,seed_of,,\n",
        "A,,,,1,plant\nB,A,,cutting_of,,\n",
        "A,,,,1,plant\nB,A,,doubled_of,,\n",
    ],
)
def test_a_plant_with_one_set_of_chromosomes(rows: str) -> None:
    text = f"plant,seed_parent,pollen_parent,raised,ploidy,kind\n{rows}"
    net = PedigreeNetwork.from_records(
        plant_table.parse(text, "t.csv"),
    )
    for code in net.codes:
        if code not in net.withheld:
            assert 0 <= net.inbreeding(code) <= 1
