"""The links of a whole book say what the network says plant by plant."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange import plant_table
from pedigreeview.network import PedigreeNetwork
from pedigreeview.network.links import links_of
from pedigreeview.network.plant_values import (
    founder_share_of_all,
    inbreeding_of_all,
    shares_by_code,
)
from pedigreeview.network.relatives import UnknownPlantFault
from tests.drawing.random_books import books


def _among(net: PedigreeNetwork, held: np.ndarray) -> set[str]:
    return {net.codes[row] for row in np.flatnonzero(held).tolist()}


@given(books())
def test_links_agree_with_the_relatives(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    links = links_of(net)
    row = {code: at for at, code in enumerate(net.codes)}
    assert [net.generation(code) for code in net.codes] == links.generation.tolist()
    for code in net.codes:
        assert _among(net, links.ancestors(row[code])) == net.ancestors(code)
        assert _among(net, links.descendants(row[code])) == net.descendants(code)
        line = int(links.cytoplasm[row[code]])
        assert (net.codes[line] if line >= 0 else None) == net.cytoplasm(code)
    assert [net.codes[at] for at in links.founders.tolist()] == list(net.founders)
    counted = links.descendants_of_founders().tolist()
    assert counted == [len(net.descendants(code)) for code in net.founders]


@given(books())
def test_values_of_all_plants_are_those_of_each(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    inbreeding = inbreeding_of_all(net)
    for at, code in enumerate(net.codes):
        assert inbreeding[at] == net.inbreeding(code)
    for founder in net.founders:
        shares = founder_share_of_all(net, founder)
        by_code = shares_by_code(net, founder)
        for at, code in enumerate(net.codes):
            expected = net.founder_shares(code).get(founder, 0.0)
            # Sums of the same products in another order.
            assert shares[at] == pytest.approx(expected, abs=1e-12)
            assert by_code[code] == shares[at]


def _loop() -> PedigreeNetwork:
    book = Book()
    for code, cross in (("A", ""), ("B", "y"), ("C", "x"), ("D", "z")):
        book.add(Plant(plant=code, cross=cross))
    book.add(Cross(cross="x", seed_parent="B", pollen_parent="A", intended="cross"))
    book.add(Cross(cross="y", seed_parent="C", pollen_parent="A", intended="cross"))
    book.add(Cross(cross="z", seed_parent="C", pollen_parent="C", intended="selfing"))
    return PedigreeNetwork.from_records(book)


def test_plants_in_loops_have_no_generation_and_no_share() -> None:
    net = _loop()
    links = links_of(net)
    row = {code: at for at, code in enumerate(net.codes)}
    assert links.generation[row["A"]] == 0
    assert {int(links.generation[row[code]]) for code in "BCD"} == {-1}
    assert _among(net, links.ancestors(row["B"])) == {"A", "B", "C"}
    assert links.descendants_of_founders().tolist() == [3]
    assert np.isnan(founder_share_of_all(net, "A")[row["B"]])
    assert np.isnan(inbreeding_of_all(net)[row["B"]])
    assert shares_by_code(net, "A") == {"A": 1.0}


def test_unknown_direction_has_a_cytoplasm_only_where_both_sides_agree() -> None:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    book.add(Cross(cross="x", seed_parent="A", pollen_parent="B", intended="cross"))
    book.crosses["x"].direction_known = False
    book.add(Cross(cross="s", seed_parent="A", pollen_parent="A", intended="selfing"))
    book.add(Cross(cross="y", seed_parent="S", pollen_parent="A", intended="cross"))
    book.crosses["y"].direction_known = False
    for code, cross in (("X", "x"), ("S", "s"), ("Y", "y")):
        book.add(Plant(plant=code, cross=cross))
    book.add(Cross(cross="z", seed_parent="Y", pollen_parent="X", intended="cross"))
    book.add(Plant(plant="Z", cross="z"))
    net = PedigreeNetwork.from_records(book)
    line = links_of(net).cytoplasm
    for at, code in enumerate(net.codes):
        found = net.codes[line[at]] if line[at] >= 0 else None
        assert found == net.cytoplasm(code)


def test_a_founder_that_is_not_there_is_named() -> None:
    with pytest.raises(UnknownPlantFault):
        founder_share_of_all(_loop(), "nobody")


_TABLE = """plant,seed_parent,pollen_parent,kind,raised,selfings
A,,,variety,,
B,,,plant,,
C,A,B,,,
D,C,C,,,2
E,D,,,,
F,A,,plant,seed_of,
G,F,,,cutting_of,
H,G,E,family,,
I,H,,family,sibbed_in,
J,C,,,doubled_haploid_of,
"""


def test_a_table_kept_as_columns_has_the_same_links(monkeypatch: pytest.MonkeyPatch) -> None:
    by_records = PedigreeNetwork.from_records(plant_table.parse(_TABLE, "small.csv"))
    monkeypatch.setattr(plant_table, "COLUMNS_FROM", 0)
    by_columns = PedigreeNetwork.from_records(plant_table.parse(_TABLE, "small.csv"))
    assert by_columns._columns is not None
    one, other = links_of(by_records), links_of(by_columns)
    ways = []
    for net, links in ((by_records, one), (by_columns, other)):
        codes = np.array(net.codes)
        ends = zip(
            codes[links.child].tolist(),
            codes[links.parent].tolist(),
            links.role.tolist(),
            links.odds.tolist(),
            strict=True,
        )
        families = {}
        for code, family in zip(net.codes, links.family.tolist(), strict=True):
            families.setdefault(family, set()).add(code)
        ways.append(
            (
                sorted(ends),
                sorted(map(sorted, families.values())),
                dict(zip(net.codes, links.generation.tolist(), strict=True)),
                codes[links.founders].tolist(),
            )
        )
    assert ways[0] == ways[1]


def test_the_compiled_count_is_that_of_the_plain_road() -> None:
    from pedigreeview.network.link_kernels import descendants_of_founders

    rng = np.random.default_rng(5)
    book = Book()
    codes = [f"V{number}" for number in range(70)]
    for code in codes:
        book.add(Plant(plant=code))
    for number in range(120):
        seed, pollen = rng.choice(codes, 2)
        book.add(Cross(cross=f"x{number}", seed_parent=seed, pollen_parent=pollen))
        book.add(Plant(plant=f"P{number}", cross=f"x{number}"))
        codes.append(f"P{number}")
    links = links_of(PedigreeNetwork.from_records(book))
    compiled = descendants_of_founders(links.weights.starts, links.weights.older, links.founders)
    assert compiled.tolist() == links.descendants_of_founders().tolist()
