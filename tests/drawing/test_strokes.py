"""Strokes: every stretch once, round corners, the lower line broken at a crossing."""

from __future__ import annotations

import itertools

import pytest

from pedigreeview import read
from pedigreeview.drawing.blocks import Link, View
from pedigreeview.drawing.placing import Line, Placed, place
from pedigreeview.drawing.strokes import BREAK, CLEAR, GRAIN_BREAK, strokes, strokes_of
from pedigreeview.drawing.view import Look, choose
from pedigreeview.places import demo


def line(key: str, role: str, *routes: tuple[tuple[float, float], ...]) -> Line:
    return Line(key, role, 1.0, True, False, tuple((Link("", "", role, ""), way) for way in routes))


def picture(*lines: Line) -> Placed:
    return Placed(View(None, (), (), (), ()), "down", (), lines, (), (), (0, 0, 0, 0))


def test_shared_beginning_of_a_family_is_drawn_once():
    ways = [((60.0, 0.0), (60.0, 24.0), (x, 24.0), (x, 60.0)) for x in (0.0, 120.0, 240.0)]
    made = strokes_of(line("x", "progeny", *ways))
    assert made.upright[0] == (0.0, 31.0, 60.0)
    assert [way for way in made.upright if way[0] == 60.0] == [(60.0, 0.0, 17.0)]
    assert made.level == [(24.0, 7.0, 53.0), (24.0, 67.0, 233.0)]


def test_lower_line_is_broken_where_a_seed_line_crosses_it():
    under = line("p", "progeny", ((0.0, 30.0), (120.0, 30.0)))
    over = line("s", "seed", ((60.0, 0.0), (60.0, 90.0)))
    found = {stroke.line.key: stroke for stroke in strokes(picture(over, under)).strokes}
    assert found["p"].level == [(30.0, 0.0, 60.0 - BREAK), (30.0, 60.0 + BREAK, 120.0)]
    assert found["s"].upright == [(60.0, 0.0, 90.0)]


def test_three_grains_are_left_out_where_grains_cross():
    level = line("a", "pollen", ((0.0, 30.0), (120.0, 30.0)))
    upright = line("b", "pollen", ((60.0, 0.0), (60.0, 90.0)))
    found = {stroke.line.key: stroke for stroke in strokes(picture(level, upright)).strokes}
    missing = {(54.0, 30.0), (60.0, 30.0), (66.0, 30.0)}
    assert not missing & set(found["a"].spots)
    assert {(48.0, 30.0), (72.0, 30.0)} <= set(found["a"].spots)
    assert len(found["b"].spots) == 16
    assert not set(found["a"].spots) & set(found["b"].spots)


def test_corners_of_grains_are_round_and_evenly_set():
    spots = strokes_of(line("a", "pollen", ((0.0, 0.0), (0.0, 60.0), (60.0, 60.0)))).spots
    assert (0.0, 60.0) not in spots
    ordered = sorted(spots, key=lambda spot: spot[0] + spot[1])
    steps = [
        ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5
        for (x0, y0), (x1, y1) in itertools.pairwise(ordered)
    ]
    assert max(steps) < 7.5
    assert min(steps) > 4.5


@pytest.mark.parametrize("name", ["two_peas_both_ways", "tansy_and_the_moths"])
def test_no_two_lines_of_a_demo_share_a_grain(name):
    net = read(demo(name))
    found = [
        stroke.spots
        for stroke in strokes(place(choose(net, Look()))).strokes
        if stroke.line.role == "pollen"
    ]
    everything = [spot for spots in found for spot in spots]
    assert len(everything) == len(set(everything))
    assert len(everything) > 100


def _joints(stroke_line: Line) -> set[tuple[float, float]]:
    return {spot for _, points in stroke_line.routes for spot in points}


@pytest.mark.parametrize(
    "name", ["two_peas_both_ways", "tansy_and_the_moths", "a_leaf_for_hollin_plate"]
)
def test_no_gap_near_an_end_or_a_bend_of_a_line_of_grains(name):
    """Bits of two or three grains beside a corner belong to no line that an eye can follow."""
    net = read(demo(name))
    made = strokes(place(choose(net, Look()))).strokes
    taken = {spot for stroke in made if stroke.line.role == "pollen" for spot in stroke.spots}
    gaps = 0
    for stroke in made:
        if stroke.line.role != "pollen":
            continue
        missing = set(strokes_of(stroke.line).spots) - set(stroke.spots)
        gaps += bool(missing)
        for x, y in missing:
            for jx, jy in _joints(stroke.line):
                if (jy == y and abs(jx - x) < CLEAR - GRAIN_BREAK) or (
                    jx == x and abs(jy - y) < CLEAR - GRAIN_BREAK
                ):
                    # Left out only where the grain of another line lies.
                    assert any(abs(tx - x) <= 3 and abs(ty - y) <= 3 for tx, ty in taken)
    assert gaps


def test_the_upper_line_is_broken_where_the_lower_one_bends():
    grains = line("p", "pollen", ((0.0, 30.0), (60.0, 30.0), (60.0, 90.0)))
    over = line("s", "seed", ((54.0, 0.0), (54.0, 90.0)))
    found = {stroke.line.key: stroke for stroke in strokes(picture(over, grains)).strokes}
    assert found["p"].spots == strokes_of(grains).spots
    assert found["s"].upright == [(54.0, 0.0, 30.0 - BREAK), (54.0, 30.0 + BREAK, 90.0)]


def test_grains_begin_at_the_port_and_go_on_evenly():
    spots = strokes_of(line("p", "pollen", ((0.0, 0.0), (0.0, 54.0)))).spots
    assert spots == [(0.0, 6.0 * at) for at in range(10)]
