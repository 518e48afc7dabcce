"""The table of relatedness: values, order, tree, near-duplicates, nearest and farthest."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Cancelled
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork, UnknownPlantFault
from pedigreeview.planning.clustering import cluster, relationship_table
from pedigreeview.planning.near_duplicates import near_duplicates
from pedigreeview.planning.relatedness import (
    farthest_relatives,
    nearest_relatives,
    relatedness,
)
from tests.network.random_books import books


def _two_families() -> PedigreeNetwork:
    """Two unrelated families of three sibs each, named so that codes mix them."""
    book = Book(settings=BookSettings(ploidy=2, founders_as="plant"))
    for code in ("P", "Q", "R", "S"):
        book.add(Plant(code, kind="plant"))
    book.add(Cross("PQ", "P", "Q"))
    book.add(Cross("RS", "R", "S"))
    for number, cross in enumerate(("PQ", "RS") * 3):
        book.add(Plant(f"k{number}", kind="plant", cross=cross))
    book.add(Plant("k0c", kind="plant", raised="cutting_of", source="k0"))
    return PedigreeNetwork.from_records(book)


def test_clustering_brings_each_family_together() -> None:
    net = _two_families()
    found = relatedness(net, [f"k{number}" for number in range(6)])
    first = {code[1:] for code in found.codes[:3]}
    assert first in ({"0", "2", "4"}, {"1", "3", "5"})
    assert found.dendrogram is not None
    # Sibs of unrelated plants: θ = 1/4 to each other, 1/2 to themselves, so R = 1/2; then 0.
    heights = [merge.height for merge in found.dendrogram.merges]
    assert heights == pytest.approx([0.5, 0.5, 0.5, 0.5, 1.0])
    last = found.dendrogram.merges[-1]
    assert (last.plants, last.left_height, last.right_height) == (6, *[pytest.approx(0.5)] * 2)
    assert 0 <= last.left < 3 <= last.right + 0.5


@settings(max_examples=40)
@given(books(most=12))
def test_values_are_those_of_the_network_whatever_the_order(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    for order in ("clustering", "generation", "given"):
        found = relatedness(net, net.codes, order=order)
        assert set(found.codes) | set(found.left_out) == set(net.codes)
        for at, code in enumerate(found.codes):
            theta = [net.coancestry(code, other) for other in found.codes]
            np.testing.assert_allclose(found.values[at], theta, atol=1e-12)
    related = relatedness(net, net.codes, measure="relationship", order="given")
    assert ((related.values >= 0) & (related.values <= 1)).all()


def test_generations_come_in_order() -> None:
    net = _two_families()
    found = relatedness(net, ["k3", "S", "k0c", "P"], order="generation")
    assert found.codes == ("P", "S", "k0c", "k3")
    assert found.dendrogram is None
    assert found.rows()[0] == ["plant", "P", "S", "k0c", "k3"]
    assert found.rows()[1][:2] == ["P", 0.5]
    # P with k0c 1/4, S with k3 1/4; the other four pairs 0.
    assert found.mean == pytest.approx(1 / 12)


def test_near_duplicates_are_named() -> None:
    net = _two_families()
    found = relatedness(net, net.codes)
    (group,) = found.duplicates
    assert set(group.plants) == {"k0", "k0c"}
    assert (group.least, group.why) == (1.0, "cuttings of one plant")
    table = relationship_table(np.array([[1.0, 1.0], [1.0, 1.0]]))
    assert near_duplicates(net, ["P", "Q"], table)[0].why == "alike at every locus by descent"
    table[0, 1] = table[1, 0] = 0.96
    assert near_duplicates(net, ["P", "Q"], table)[0].why == "nearly alike by descent"


def test_nearest_and_farthest() -> None:
    net = _two_families()
    nearest = nearest_relatives(net, "k0", count=4)
    assert [item.code for item in nearest] == ["k0c", "P", "Q", "k2"]
    assert (nearest[0].relationship, nearest[1].coancestry) == (1.0, 0.25)
    farthest = farthest_relatives(net, "k0", count=3, among=["P", "k1", "S", "k0"])
    assert [item.code for item in farthest] == ["S", "k1", "P"]


def test_unknown_plants_and_nobody() -> None:
    net = _two_families()
    with pytest.raises(UnknownPlantFault):
        relatedness(net, ["P", "nobody"])
    nothing = relatedness(net, [])
    assert nothing.codes == ()
    assert np.isnan(nothing.mean)
    assert cluster(np.ones((1, 1))).merges == ()


def test_cancelled() -> None:
    def tick(done: int, of: int) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        relatedness(_two_families(), ["P"], tick=tick)
