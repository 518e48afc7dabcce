"""A reciprocal pair as two mirrored columns: places, lines, selfs and packs."""

from __future__ import annotations

import itertools

import pytest

import pedigreeview
from pedigreeview.drawing.mirrored import mirrored
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo


@pytest.fixture(scope="module")
def peas() -> PedigreeNetwork:
    return pedigreeview.read(demo("two_peas_both_ways"))


@pytest.fixture(scope="module")
def tomatoes() -> PedigreeNetwork:
    return pedigreeview.read(demo("a_leaf_for_hollin_plate"))


PEA_PAIR = (("TP", "BA"), (("21-01",), ("21-02",)))


@pytest.mark.parametrize("columns", [1, 2, 3, 5])
def test_nothing_lies_on_anything_else(peas: PedigreeNetwork, columns: int) -> None:
    made = mirrored(peas, *PEA_PAIR, columns=columns).placed
    for one, other in itertools.combinations(made.blocks, 2):
        apart = (
            one.right <= other.x
            or other.right <= one.x
            or one.bottom <= other.y
            or other.bottom <= one.y
        )
        assert apart, (one.block.key, other.block.key)


def test_knots_mirror_each_other_and_the_seed_parent_stands_above_its_own(
    peas: PedigreeNetwork,
) -> None:
    made = mirrored(peas, *PEA_PAIR).placed
    frame = made.block("pair")
    assert frame is not None
    left, right = (spot.x + spot.width / 2 for spot in frame.knots)
    assert left == pytest.approx(-right)
    assert left < 0
    first, second = made.block("parent:TP"), made.block("parent:BA")
    assert first is not None
    assert second is not None
    assert first.middle[0] == pytest.approx(left)
    assert second.middle[0] == pytest.approx(right)


def test_seed_lines_come_in_outside_and_pollen_lines_inside(peas: PedigreeNetwork) -> None:
    made = mirrored(peas, *PEA_PAIR).placed
    ends = {
        (link.above, link.role): points[-1][0]
        for line in made.lines
        for link, points in line.routes
        if link.role in ("seed", "pollen")
    }
    assert ends["parent:TP", "seed"] < ends["parent:BA", "pollen"] < 0
    assert 0 < ends["parent:TP", "pollen"] < ends["parent:BA", "seed"]
    # The two pollen lines cross once and no other parent's lines meet.
    for line in made.lines:
        for _, points in line.routes:
            for (x0, y0), (x1, y1) in itertools.pairwise(points):
                assert x0 == x1 or y0 == y1


def test_found_selfs_hang_on_no_line_of_the_cross(peas: PedigreeNetwork) -> None:
    made = mirrored(peas, *PEA_PAIR)
    assert made.selfs == {"self:21-01-4", "self:21-02-5"}
    below = {link.below for line in made.placed.lines for link, _ in line.routes}
    assert below.isdisjoint(made.selfs)
    assert {f"plant:21-01-{n}" for n in (1, 2, 3, 5, 6, 7)} <= below


def test_many_progeny_are_packed_and_all_of_them_are_there(tomatoes: PedigreeNetwork) -> None:
    pair = (("HP", "17-02-5"), (("18-01",), ("18-02",)))
    folded = mirrored(tomatoes, *pair, columns=2)
    (pack,) = folded.more
    held = folded.placed.block(pack)
    assert held is not None
    shown = [b.block for b in folded.placed.blocks if b.block.key.startswith("plant:18-01-")]
    assert len(shown) == 8
    assert len(held.block.codes) == 24 - 8
    # The kept plant of the family is never folded away.
    assert "18-01-07" in {block.code for block in shown}
    opened = mirrored(tomatoes, *pair, columns=2, opened=frozenset({0}))
    codes = {b.block.code for b in opened.placed.blocks}
    assert codes >= set(tomatoes.progeny_of_cross("18-01"))
    assert opened.more == {}


def test_a_direction_that_was_never_made_has_a_knot_and_no_progeny(peas: PedigreeNetwork) -> None:
    made = mirrored(peas, ("TP", "BA"), (("21-01",), ()))
    frame = made.placed.block("pair")
    assert frame is not None
    ahead, back = frame.block.knots
    assert (ahead.cross, back.cross) == ("21-01", "")
    assert back.state == "planned"
    assert (back.seed, back.pollen[0][0]) == ("BA", "TP")
