"""The far picture as numbers: what colour lies where, and lines cut to a box."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.overview import Overview, overview_of
from pedigreeview.drawing.overview_raster import (
    Band,
    Frame,
    Showing,
    bar_of,
    clipped,
    pattern,
)
from pedigreeview.drawing.theme import mixed, theme
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross

LIGHT = theme("light")
ROWS = 20


@pytest.fixture(scope="module")
def overview() -> Overview:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    add_cross(book, "s", "A", "A")
    for number in range(4):
        book.add(Plant(plant=f"P{number}", cross="x"))
    book.add(Plant(plant="S", cross="s"))
    return overview_of(PedigreeNetwork.from_records(book))


def _frame(overview: Overview, pixels: float) -> Frame:
    """A plant of the fullest band takes so many pixels."""
    return Frame(0.0, 0.0, pixels, 60.0, round(overview.width * pixels), 200)


def _column(overview: Overview, code: str, pixels: float, showing: Showing) -> list[str]:
    """Colours of the middle column of a plant, from top to bottom."""
    frame = _frame(overview, pixels)
    row = overview.row(code)
    band = int(overview.band[row])
    image = Band(overview, LIGHT).pixels(band, frame, frame.width, ROWS, showing)
    middle = (overview.left[row] + overview.pitch[band] / 2) * pixels
    return [f"#{int(pixel) & 0xFFFFFF:06x}" for pixel in image[:, int(middle)].tolist()]


@pytest.mark.parametrize("pixels", [5.0, 7.0])
def test_a_founder_has_its_own_colour(overview: Overview, pixels: float) -> None:
    assert set(_column(overview, "A", pixels, Showing())) == {LIGHT.founder(0)}
    assert set(_column(overview, "B", pixels, Showing())) == {LIGHT.founder(1)}


def test_a_hybrid_is_parted_by_its_shares(overview: Overview) -> None:
    column = _column(overview, "P0", 8.0, Showing())
    assert column == [LIGHT.founder(0)] * (ROWS // 2) + [LIGHT.founder(1)] * (ROWS // 2)
    assert set(_column(overview, "S", 8.0, Showing())) == {LIGHT.founder(0)}


def test_a_far_band_is_a_mix_of_what_lies_in_each_pixel(overview: Overview) -> None:
    frame = replace(_frame(overview, 1.0), width=3, across=3 / overview.width)
    image = Band(overview, LIGHT).pixels(1, frame, 3, ROWS, Showing())
    assert image.shape == (ROWS, 3)
    assert len(np.unique(image)) > 1


def test_between_the_plants_lies_the_band(overview: Overview) -> None:
    frame = _frame(overview, 8.0)
    image = Band(overview, LIGHT).pixels(1, frame, frame.width + 40, ROWS, Showing())
    assert f"#{int(image[3, -1]) & 0xFFFFFF:06x}" == LIGHT["band"]


def test_near_plants_are_paper_with_a_stripe(overview: Overview) -> None:
    frame = _frame(overview, 30.0)
    row = overview.row("P0")
    image = Band(overview, LIGHT).pixels(1, frame, frame.width, ROWS, Showing())
    left = round(float(overview.left[row]) * 30)
    inside = f"#{int(image[ROWS // 2, left + 20]) & 0xFFFFFF:06x}"
    stripe = f"#{int(image[3, left + 2]) & 0xFFFFFF:06x}"
    assert (inside, stripe) == (LIGHT["paper"], LIGHT.founder(0))


def _mask(overview: Overview, *codes: str) -> np.ndarray:
    return overview.rows_of(set(codes))


def test_relatives_are_told_apart_by_place_and_keep_their_colours(overview: Overview) -> None:
    showing = Showing(
        selected=overview.row("P0"),
        ancestors=_mask(overview, "A", "P2"),
        descendants=_mask(overview, "P1", "P2"),
    )
    over = _column(overview, "A", 8.0, showing)
    thick = bar_of(ROWS)
    assert over[:thick] == [LIGHT["accent"]] * thick
    assert set(over[thick:]) == {LIGHT.founder(0)}
    under = _column(overview, "P1", 8.0, showing)
    assert under[-thick:] == [LIGHT["select"]] * thick
    assert set(under[:-thick]) == {LIGHT.founder(0), LIGHT.founder(1)}
    both = _column(overview, "P2", 8.0, showing)
    assert (both[0], both[-1]) == (LIGHT["accent"], LIGHT["select"])
    # The plant itself keeps its colours; others have them, but paler.
    assert set(_column(overview, "P0", 8.0, showing)) == {LIGHT.founder(0), LIGHT.founder(1)}
    others = set(_column(overview, "B", 8.0, showing))
    assert others == {mixed(LIGHT["band"], LIGHT.founder(1), 0.5)}


def test_what_does_not_fit_is_fainter_than_what_is_beside_relatives(overview: Overview) -> None:
    showing = Showing(
        selected=overview.row("P0"),
        ancestors=_mask(overview, "A"),
        descendants=_mask(overview),
        faded=_mask(overview, "B"),
    )
    assert set(_column(overview, "B", 8.0, showing)) == {
        mixed(LIGHT["band"], LIGHT.founder(1), 0.24)
    }


@pytest.mark.parametrize("pixels", [0.5, 2.0, 8.0, 20.0])
def test_no_two_neighbouring_columns_of_a_relative_differ_by_a_texture(
    overview: Overview, pixels: float
) -> None:
    below = np.ones(len(overview), bool)
    showing = Showing(0, np.zeros(len(overview), bool), below)
    frame = _frame(overview, pixels)
    image = Band(overview, LIGHT).pixels(1, frame, frame.width, ROWS, showing)
    last = {f"#{int(pixel) & 0xFFFFFF:06x}" for pixel in image[-1].tolist()}
    assert last <= {LIGHT["select"], LIGHT["band"]}


def test_what_is_hidden_is_not_drawn_and_what_is_faded_is_put_back(overview: Overview) -> None:
    showing = Showing(hidden=_mask(overview, "A"), faded=_mask(overview, "B"))
    assert set(_column(overview, "A", 8.0, showing)) == {LIGHT["band"]}
    assert set(_column(overview, "B", 8.0, showing)) == {
        mixed(LIGHT["band"], LIGHT.founder(1), 0.24)
    }


def test_a_tint_takes_the_place_of_founders(overview: Overview) -> None:
    tint = np.full((len(overview), 3), np.nan)
    tint[overview.row("P0")] = (10, 200, 30)
    showing = Showing(tint=tint)
    assert set(_column(overview, "P0", 8.0, showing)) == {"#0ac81e"}
    none = set(_column(overview, "P1", 8.0, showing))
    assert LIGHT["band"] in none
    assert "#0ac81e" not in none


def test_classes_carry_a_pattern_besides_their_colour(overview: Overview) -> None:
    tint = np.full((len(overview), 3), 200.0)
    plain = Showing(tint=tint, classes=np.zeros(len(overview), np.int64))
    marked = Showing(tint=tint, classes=np.full(len(overview), 2))
    assert set(_column(overview, "P0", 8.0, plain)) == {"#c8c8c8"}
    assert set(_column(overview, "P0", 8.0, marked)) == {"#c8c8c8", "#646464"}


def test_patterns_of_the_first_classes_differ() -> None:
    drawn = [pattern(number, 24, 24).tobytes() for number in range(11)]
    assert len(set(drawn)) == 11
    assert not pattern(0, 24, 24).any()
    assert not pattern(-1, 24, 24).any()


def test_the_screen_can_have_more_pixels(overview: Overview) -> None:
    frame = _frame(overview, 8.0)
    image = Band(overview, LIGHT).pixels(1, frame, frame.width * 2, ROWS * 2, Showing(), 2.0)
    row = overview.row("S")
    middle = int((overview.left[row] + overview.pitch[1] / 2) * 16)
    found = {f"#{int(pixel) & 0xFFFFFF:06x}" for pixel in image[:, middle].tolist()}
    assert found == {LIGHT.founder(0)}


def test_a_frame_goes_there_and_back() -> None:
    frame = Frame(3.0, 1.5, 4.0, 50.0, 800, 600, 100)
    assert frame.to_view(3.0, 1.5) == (100.0, 0.0)
    assert frame.to_map(*frame.to_view(7.25, 4.0)) == (7.25, 4.0)
    assert list(frame.bands(100)) == list(range(1, 15))


_number = st.floats(-300, 300, allow_nan=False).map(lambda value: round(value, 3))


@given(st.lists(st.tuples(_number, _number, _number, _number), min_size=1, max_size=12))
def test_lines_are_cut_to_the_box(segments: list[tuple[float, float, float, float]]) -> None:
    ends = np.array(segments).T
    box = (-100.0, -50.0, 120.0, 80.0)
    parts, which = clipped(*ends, box)
    assert which.tolist() == sorted(set(which.tolist()))
    for part, index in zip(parts, which.tolist(), strict=True):
        x0, y0, x1, y1 = segments[index]
        for x, y in (part[:2], part[2:]):
            assert box[0] - 1e-6 <= x <= box[2] + 1e-6
            assert box[1] - 1e-6 <= y <= box[3] + 1e-6
            # On the line: no area between the three points.
            assert abs((x1 - x0) * (y - y0) - (y1 - y0) * (x - x0)) < 1e-3
    # What is left out has no point inside, as far as close steps along it show.
    along = np.linspace(0, 1, 400)
    for index, (x0, y0, x1, y1) in enumerate(segments):
        x, y = x0 + (x1 - x0) * along, y0 + (y1 - y0) * along
        inside = ((x > box[0]) & (x < box[2]) & (y > box[1]) & (y < box[3])).any()
        assert not inside or index in which
