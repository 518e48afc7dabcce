"""A way of looking lights its own lines: of a cytoplasm those of seed parents alone."""

from __future__ import annotations

import pytest
from hypothesis import given, settings

from pedigreeview import read
from pedigreeview.drawing.lighting import NO_LIT, lit_way, way_up
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.drawing.ways import Way
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from tests.drawing.random_books import books


@pytest.fixture(scope="module")
def tomato() -> PedigreeNetwork:
    return read(demo("a_leaf_for_hollin_plate"))


def test_the_neighbourhood_lights_nothing(tomato):
    assert lit_way(place(choose(tomato, Look(focus="18-01-07")))) == NO_LIT
    assert way_up(place(choose(tomato, Look(focus="18-01-07")))) == set()


def test_a_connection_lights_its_plants_and_their_lines(tomato):
    way = Way("connection", other="17-01-1")
    placed = place(choose(tomato, Look(focus="18-01-07", way=way)))
    lit = lit_way(placed)
    for code in ("18-01-07", "17-01-1", "17-02-5", "HP", "MB"):
        assert placed.view.block_of(code) in lit.blocks
    assert {role for _, _, role, _ in lit.links} == {"seed", "pollen", "progeny"}
    on_way = {placed.view.block_of(code) for code in ("18-01-07", "17-01-1", "HP")}
    assert on_way <= way_up(placed)


def test_a_mate_beside_the_way_stays_soft(tomato):
    placed = place(choose(tomato, Look(focus="18-01-07-3", way=Way("cytoplasm"))))
    lit = lit_way(placed)
    mate = placed.view.block_of("17-02-5")
    assert mate
    assert mate not in lit.blocks
    assert not any(mate in (above, below) for above, below, _, _ in lit.links)
    assert "pollen" not in {role for _, _, role, _ in lit.links}
    # From the focus by seed parents to the founder of the line.
    line = {placed.view.block_of(code) for code in ("18-01-07-3", "18-01-07", "HP")}
    assert line <= way_up(placed)


@settings(max_examples=25, deadline=None)
@given(books())
def test_a_cytoplasm_goes_down_by_seed_parents(book):
    net = PedigreeNetwork.from_records(book)
    focus = net.codes[-1]
    placed = place(choose(net, Look(focus=focus, way=Way("cytoplasm"))))
    for above, _, role, _ in lit_way(placed).links:
        assert role in ("seed", "source", "progeny")
        if role != "progeny":
            code = next(b.code for b in placed.view.blocks if b.key == above)
            assert net.cytoplasm(code) == net.cytoplasm(focus)
