"""Crosses made one way only, against the three demos and small books."""

from __future__ import annotations

import pytest

import pedigreeview
from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.planning.one_way import OneWay, crosses_one_way


def network(*crosses: Cross) -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B", "C"):
        book.plants[code] = Plant(code, kind="variety", raised="founder")
    for cross in crosses:
        book.crosses[cross.cross] = cross
    return PedigreeNetwork.from_records(book)


def test_only_what_lacks_its_other_direction_is_listed() -> None:
    net = network(
        Cross("1", seed_parent="A", pollen_parent="B"),
        Cross("2", seed_parent="B", pollen_parent="A"),
        Cross("3", seed_parent="A", pollen_parent="C"),
        Cross("4", seed_parent="A", pollen_parent="C"),
        Cross("5", seed_parent="C", pollen_parent="C"),
        Cross("6", seed_parent="C"),
    )
    assert crosses_one_way(net) == [OneWay("A", "C", ("3", "4"))]


def test_the_peas_have_two() -> None:
    net = pedigreeview.read(demo("two_peas_both_ways"))
    assert [(one.seed, one.pollen) for one in crosses_one_way(net)] == [
        ("21-01-3", "TP"),
        ("19-4-2 row", "61-2-5 row"),
    ]


def test_it_can_be_cancelled() -> None:
    def stop() -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        crosses_one_way(network(Cross("1", seed_parent="A", pollen_parent="B")), stop)
