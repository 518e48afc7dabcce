"""Where a view of a large picture lies: nothing bare beside what is cut off, the most in sight."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, QSizeF

from pedigreeview.drawing.in_sight import Edges, Ground, families, lineage, outstanding
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.drawing.ways import Way
from pedigreeview.network import PedigreeNetwork
from tests.benchmarks.garden import garden

FOCUS = "V003"


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(garden(400))


def test_a_view_is_filled_by_the_least_move(net: PedigreeNetwork) -> None:
    placed = place(choose(net, Look(focus=FOCUS, up=1, down=1)))
    ground, first = Ground(placed), placed.blocks[0]
    left = min(item.x for item in placed.blocks)
    right = max(item.right for item in placed.blocks)
    low = min(item.y for item in placed.blocks) - 10
    high = max(item.bottom for item in placed.blocks) - low + 10
    room = QSizeF((right - left) / 2, high)
    inside = QPointF((left + right) / 2 - room.width() / 2, low)
    assert ground.filled(inside, room, 24.0) == inside
    beyond_left = QPointF(left - 100, low)
    assert ground.filled(beyond_left, room, 24.0) == QPointF(left - 24, low)
    assert ground.filled(beyond_left, room, 24.0, least=120.0) == beyond_left
    beyond_right = QPointF(right + 100 - room.width(), low)
    assert ground.filled(beyond_right, room, 24.0) == QPointF(right + 24 - room.width(), low)
    assert first.width < room.width()


def seen(placed: Placed, spot: QPointF, room: QSizeF, edge: float) -> float:
    """What counts of the tags and crosses in sight, by looking at each."""
    total = 0.0
    for item in placed.blocks:
        across = spot.x() <= item.x - edge + 0.5 and item.right + edge <= spot.x() + room.width()
        down = spot.y() <= item.y - edge + 0.5 and item.bottom + edge <= spot.y() + room.height()
        if across and down:
            total += 1.0 if item.block.codes else 0.3
    return total


@pytest.mark.parametrize("part", [0.3, 0.5, 0.8])
def test_the_fullest_view_shows_no_less_than_any_other(net: PedigreeNetwork, part: float) -> None:
    placed = place(choose(net, Look(focus=FOCUS, up=3, down=3)))
    left = min(item.x for item in placed.blocks) - 20
    wide = max(item.right for item in placed.blocks) + 20 - left
    top = min(item.y for item in placed.blocks) - 20
    high = max(item.bottom for item in placed.blocks) + 20 - top
    room = QSizeF(wide * part, high * part)
    spans = ((left, left + wide * (1 - part)), (top, top + high * (1 - part)))
    edges = Edges(20.0, 20.0, 20.0)
    middle = QPointF(left + wide * (1 - part) / 2, top + high * (1 - part) / 2)
    found = Ground(placed).fullest(middle, room, spans, edges)
    best = seen(placed, found, room, 19.5)
    steps = 12
    for column in range(steps + 1):
        for row in range(steps + 1):
            spot = QPointF(
                left + wide * (1 - part) * column / steps, top + high * (1 - part) * row / steps
            )
            away = abs(spot.x() - middle.x()) / room.width()
            away += abs(spot.y() - middle.y()) / room.height()
            own = abs(found.x() - middle.x()) / room.width()
            own += abs(found.y() - middle.y()) / room.height()
            # A view a whole view further off has to show one and a half tags more.
            worth = seen(placed, spot, room, 20.0) - 1.5 * away
            assert worth <= best - 1.5 * own + 0.05


def test_the_other_plant_comes_before_pins_and_these_before_where_lines_meet(
    net: PedigreeNetwork,
) -> None:
    look = Look(focus="06-0054-1", pins=("06-0054-1",), way=Way("connection", other="04-0034-1"))
    view = choose(net, look)
    placed = place(view)
    meeting = [view.block_of(code) for code in view.meeting]
    keys = outstanding(placed)
    assert keys[:2] == [view.block_of("04-0034-1"), view.block_of("06-0054-1")]
    assert set(keys[2:]) == set(meeting) - set(keys[:2])
    rows = {item.block.key: item.block.row for item in placed.blocks}
    assert [rows[key] for key in keys[2:]] == sorted((rows[key] for key in keys[2:]), reverse=True)


def test_each_cross_of_the_focus_has_its_knot_and_a_progeny(net: PedigreeNetwork) -> None:
    placed = place(choose(net, Look(focus=FOCUS, up=1, down=1)))
    focus = placed.block_of(FOCUS)
    assert focus is not None
    found = families(placed)
    below = {link.below for link in placed.view.links if link.above == focus.block.key}
    assert set().union(*found) & below == below
    far = []
    for family in found:
        knot = placed.block(next(iter(family & below)))
        assert knot is not None
        far.append(abs(knot.middle[0] - focus.middle[0]) + abs(knot.middle[1] - focus.middle[1]))
        assert len(family) == 2
    assert far == sorted(far)


def test_each_parent_of_the_focus_has_its_knot(net: PedigreeNetwork) -> None:
    code = "06-0054-1"
    view = choose(net, Look(focus=code, up=2, down=1))
    placed = place(view)
    parents = {view.block_of(parent) for parent in net.parent_codes(code)}
    found = lineage(placed)
    assert len(found) == len(parents)
    for one in found:
        knot = next(iter(one - parents))
        pairs = {(link.above, link.below) for link in view.links}
        assert (knot, view.block_of(code)) in pairs
        assert (next(iter(one & parents)), knot) in pairs
