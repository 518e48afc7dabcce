"""Label stock: where the labels lie, by measures worked out by hand."""

from __future__ import annotations

import itertools

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from pedigreeview.book.faults import Fault
from pedigreeview.reports.label_content import KINDS
from pedigreeview.reports.label_sheets import (
    PAPER_MM,
    LabelSheet,
    label_sheets,
    sheet_named,
    usual_sheet,
)
from pedigreeview.reports.labels import cut_marks

NAMES = [sheet.name for sheet in label_sheets()]


def overlap(a, b) -> bool:
    return (
        a[0] < b[0] + b[2] - 1e-6
        and b[0] < a[0] + a[2] - 1e-6
        and a[1] < b[1] + b[3] - 1e-6
        and b[1] < a[1] + a[3] - 1e-6
    )


@pytest.mark.parametrize("name", NAMES)
def test_labels_lie_on_the_paper_and_apart(name):
    sheet = sheet_named(name)
    wide, high = sheet.page
    places = list(sheet.places())
    assert len(places) == sheet.columns * sheet.rows
    for left, top, width, height in places:
        assert (width, height) == (sheet.width, sheet.height)
        assert left >= -1e-6
        assert top >= -1e-6
        assert left + width <= wide + 1e-6
        assert top + height <= high + 1e-6
    assert not any(overlap(a, b) for a, b in itertools.combinations(places, 2))


@pytest.mark.parametrize("name", NAMES)
def test_what_is_printed_lies_within_its_label(name):
    sheet = sheet_named(name)
    wide, high = sheet.page
    for at in range(sheet.count):
        left, top, width, height = sheet.place(at)
        panels = sheet.panels(at)
        for x, y, w, h in panels:
            assert x >= left + 1.2 - 1e-6
            assert y >= top + 1.2 - 1e-6
            assert x + w <= left + width - 1.2 + 1e-6
            assert y + h <= top + height - 1.2 + 1e-6
            if sheet.paper:
                # Home printers leave about 4 mm of the paper white: common practice, no source.
                assert min(x, y, wide - x - w, high - y - h) >= 4.2 - 1e-6
        assert not any(overlap(a, b) for a, b in itertools.combinations(panels, 2))


def test_measures_of_stock():
    # Three labels of 70 mm fill the 210 mm of A4; eight of 36 mm leave 9 mm, half of it on top.
    sheet = sheet_named("a4-3x8")
    assert sheet.place(0) == (0, 4.5, 70, 36)
    assert sheet.place(23) == (140, 256.5, 70, 36)
    # 2 × 99.1 + 2.5 = 200.7, so 9.3 / 2 at each side; 7 × 38.1 = 266.7, so 30.3 / 2 on top.
    assert sheet_named("a4-2x7").place(0) == pytest.approx((4.65, 15.15, 99.1, 38.1))
    assert sheet_named("a4-2x7").place(3) == pytest.approx((106.25, 53.25, 99.1, 38.1))
    assert sheet_named("a4-5x13").count == 65
    assert sheet_named("letter-3x10").page == (215.9, 279.4)


def test_loop_tag_keeps_its_middle_free_and_a_stake_its_foot():
    loop = sheet_named("roll-loop")
    first, second = loop.panels(0)
    assert first[1] + first[3] == pytest.approx(60 - 13)
    assert second[1] == pytest.approx(60 + 13)
    assert first[2:] == pytest.approx(second[2:])
    stake = sheet_named("roll-stake")
    ((_, top, _, height),) = stake.panels(0)
    assert top + height == pytest.approx(130 - 45)
    assert "foot of 45 mm" in stake.words()


def test_a_sheet_is_described_by_its_measures():
    sheet = sheet_named("A4 3x8 70x36")
    assert (sheet.columns, sheet.rows, sheet.width, sheet.height) == (3, 8, 70, 36)
    assert sheet.place(0) == sheet_named("a4-3x8").place(0)
    sheet = sheet_named("letter 2 × 3 80,5 x 40 mm gap 5x4 margin 12x20")
    assert sheet.place(3) == pytest.approx((12 + 80.5 + 5, 20 + 40 + 4, 80.5, 40))
    roll = sheet_named("roll 25x60")
    assert (roll.roll, roll.turned, roll.page) == (True, True, (25, 60))
    assert not sheet_named("roll 60x25").turned


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ("A4 4x8 70x36", "does not hold so many"),
        ("A4 3x9 70x36", "does not hold so many"),
        ("A4 3x8 70x36 margin 1x4.5", "does not hold so many"),
        ("A4 0x8 70x36", "has no labels"),
        ("A4 20x20 5x5", "too small"),
        ("the blue ones", "There is no label sheet"),
    ],
)
def test_measures_that_cannot_be(words, says):
    with pytest.raises(Fault, match=says) as told:
        sheet_named(words)
    assert told.value.todo


def test_every_kind_has_a_usual_sheet():
    for paper in PAPER_MM:
        for kind in KINDS:
            assert usual_sheet(kind, paper).paper == paper


@pytest.mark.parametrize("name", NAMES)
def test_cut_marks_stand_on_edges_of_labels(name):
    sheet = sheet_named(name)
    wide, high = sheet.page
    used = list(range(sheet.count))
    xs = {round(x, 3) for left, _, w, _ in sheet.places() for x in (left, left + w)}
    ys = {round(y, 3) for _, top, _, h in sheet.places() for y in (top, top + h)}
    lines = cut_marks(sheet, used)
    assert len(lines) == len(set(lines))
    for x1, y1, x2, y2 in lines:
        assert min(x1, x2) >= 0 <= min(y1, y2)
        assert max(x1, x2) <= wide + 1e-6
        assert max(y1, y2) <= high + 1e-6
        if sheet.fold and not (x1 == x2 and x1 in xs) and not (y1 == y2 and y1 in ys):
            # The fold: three ticks at each edge, in the part that is kept free.
            middle = [sheet.place(0)[0] + sheet.width / 2, sheet.place(0)[1] + sheet.height / 2]
            at = y1 if sheet.turned else x1
            assert abs(at - middle[sheet.turned]) in (0, pytest.approx(sheet.fold / 2))
            continue
        assert (x1 == x2 and x1 in xs) or (y1 == y2 and y1 in ys)
        # None crosses what is printed.
        for place in used:
            for left, top, w, h in sheet.panels(place):
                assert not (
                    max(x1, x2) > left
                    and min(x1, x2) < left + w
                    and max(y1, y2) > top
                    and min(y1, y2) < top + h
                )
    assert bool(lines) == (not sheet.roll or bool(sheet.fold))


def test_every_edge_of_a_sheet_has_a_mark():
    sheet = sheet_named("a4-2x7")
    lines = cut_marks(sheet, range(sheet.count))
    upright = {x1 for x1, _, x2, _ in lines if x1 == x2}
    level = {y1 for _, y1, _, y2 in lines if y1 == y2}
    assert upright == {4.65, 103.75, 106.25, 205.35}
    assert level == {round(15.15 + 38.1 * at, 3) for at in range(8)}


def test_only_used_labels_have_marks():
    sheet = sheet_named("a4-2x7")
    left, top, width, height = sheet.place(13)
    for x1, y1, x2, y2 in cut_marks(sheet, [13]):
        assert x1 in (pytest.approx(left), pytest.approx(left + width)) or y1 == y2
        assert y1 in (pytest.approx(top), pytest.approx(top + height)) or x1 == x2


@given(
    st.integers(1, 6),
    st.integers(1, 14),
    st.floats(8, 200),
    st.floats(8, 200),
    st.floats(0, 6),
    st.floats(0, 6),
)
def test_any_sheet_that_is_taken_holds_its_labels(columns, rows, width, height, gap_x, gap_y):
    wide, high = PAPER_MM["A4"]
    words = f"A4 {columns}x{rows} {width:.1f}x{height:.1f} gap {gap_x:.1f}x{gap_y:.1f}"
    try:
        sheet = sheet_named(words)
    except Fault:
        need = columns * round(width, 1) + (columns - 1) * round(gap_x, 1)
        tall = rows * round(height, 1) + (rows - 1) * round(gap_y, 1)
        assert need > wide - 9 or tall > high - 9
        return
    assume(sheet.count < 80)
    places = list(sheet.places())
    assert not any(overlap(a, b) for a, b in itertools.combinations(places, 2))
    assert all(x >= -0.01 and y >= -0.01 for x, y, _, _ in places)
    assert all(x + w <= wide + 0.02 and y + h <= high + 0.02 for x, y, w, h in places)
    assert isinstance(sheet, LabelSheet)
