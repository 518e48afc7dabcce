"""Bars of different nets never share a place on a track."""

from __future__ import annotations

import itertools

from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.drawing.spread import spread
from pedigreeview.drawing.tracks import Bar, assign_tracks

X = st.integers(0, 40).map(lambda x: 6.0 * x)


@given(st.lists(st.tuples(X, st.lists(X, min_size=1, max_size=4)), max_size=8))
def test_bars_on_one_track_are_well_apart(ends):
    bars = [Bar(str(number), [top], bottoms) for number, (top, bottoms) in enumerate(ends)]
    count = assign_tracks(bars, 24.0)
    for one, other in itertools.combinations(bars, 2):
        if one.track == other.track and one.track >= 0:
            assert one.right + 24 <= other.left or other.right + 24 <= one.left
    assert all((bar.track < 0) == bar.straight for bar in bars)
    assert count == 1 + max((bar.track for bar in bars), default=-1)


def test_line_that_comes_down_where_another_leaves_lies_above_it():
    first, second = Bar("a", [60.0], [120.0]), Bar("b", [0.0], [60.0])
    assign_tracks([second, first], 24.0)
    assert first.track < second.track


def test_bar_takes_the_track_that_saves_crossings():
    # The seed line comes from the left past the stem of the pollen line: below it nothing crosses.
    seed, pollen = Bar("seed", [0.0], [120.0]), Bar("pollen", [108.0], [144.0])
    assign_tracks([seed, pollen], 24.0)
    assert pollen.track < seed.track


@given(st.lists(st.tuples(st.floats(-500, 500), st.floats(0.1, 9), st.floats(0, 50)), min_size=1))
def test_spread_keeps_the_distances(rows):
    wanted, weights, apart = (list(column) for column in zip(*rows, strict=True))
    places = spread(wanted, weights, apart[1:])
    for (a, b), least in zip(itertools.pairwise(places), apart[1:], strict=True):
        assert b - a >= least - 1e-6


def test_spread_leaves_what_fits_where_it_is():
    assert spread([0.0, 50.0, 90.0], [1, 1, 1], [40, 40]) == [0.0, 50.0, 90.0]
    assert spread([0.0, 0.0], [1, 1], [10]) == [-5.0, 5.0]
    assert spread([0.0, 0.0], [3, 1], [8]) == [-2.0, 6.0]
