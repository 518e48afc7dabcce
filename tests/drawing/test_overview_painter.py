"""The map painted: which lines, which marks, at every zoom and in every theme."""

from __future__ import annotations

from dataclasses import replace
from unittest.mock import patch

import numpy as np
import pytest
from PySide6.QtGui import QImage, QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.overview import Overview, overview_of
from pedigreeview.drawing.overview_painter import (
    MOST_LINES,
    Drawn,
    OverviewPainter,
    _dashes,
    band_name,
)
from pedigreeview.drawing.overview_raster import Frame, Showing
from pedigreeview.drawing.tags import elided
from pedigreeview.drawing.theme import THEMES, theme
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross


def _book(plants: int) -> Overview:
    """Founders, then each plant from two of those before it."""
    book, codes = Book(), []
    rng = np.random.default_rng(11)
    for number in range(plants):
        code = f"K{number}"
        if number < 14:
            book.add(Plant(plant=code))
        else:
            add_cross(book, f"x{number}", *rng.choice(codes, 2).tolist())
            book.add(Plant(plant=code, cross=f"x{number}"))
        codes.append(code)
    return overview_of(PedigreeNetwork.from_records(book))


@pytest.fixture(scope="module")
def overview() -> Overview:
    return _book(900)


def _fitted(overview: Overview) -> Frame:
    return Frame(0, -0.2, 900 / overview.width, 500 / len(overview.counts), 1000, 520, 100)


def _painted(
    painter: OverviewPainter, frame: Frame, showing: Showing | None = None, ratio: float = 1.0
) -> QImage:
    image = QImage(
        round(frame.width * ratio), round(frame.height * ratio), QImage.Format.Format_RGB32
    )
    image.setDevicePixelRatio(ratio)
    on = QPainter(image)
    try:
        painter.paint(on, frame, showing, ratio)
    finally:
        on.end()
    return image


def _hues(image: QImage, wanted: str) -> int:
    """How many pixels have just that colour."""
    held = np.frombuffer(image.constBits(), np.uint32)
    return int((held & 0xFFFFFF == int(wanted[1:], 16)).sum())


@pytest.mark.parametrize("name", THEMES)
@pytest.mark.parametrize("across", [1.0, 6.0, 60.0, 900.0])
@pytest.mark.parametrize("down", [0.2, 1.0, 4.0])
def test_it_paints_at_every_zoom_in_every_theme(
    gui: object, overview: Overview, name: str, across: float, down: float
) -> None:
    fitted = _fitted(overview)
    frame = Frame(
        overview.width / 3, 0.5, fitted.across * across, fitted.down * down, 700, 400, 100
    )
    links = overview.links
    row = len(overview) // 2
    showing = Showing(row, links.ancestors(row), links.descendants(row), hover=3)
    painter = OverviewPainter(overview, theme(name))
    for shown in (None, showing):
        image = _painted(painter, frame, shown)
        assert _hues(image, theme(name)["ground"]) > 0


def test_lines_are_capped_far_away_and_all_there_near(gui: object, overview: Overview) -> None:
    painter = OverviewPainter(overview, theme("light"))
    _painted(painter, _fitted(overview))
    drawn, there = painter.drawn.lines, painter.drawn.there
    assert len(overview.above) > MOST_LINES
    assert drawn == MOST_LINES
    assert there == len(overview.above)
    near = Frame(overview.width / 2, 1.0, 60.0, 120.0, 700, 400, 100)
    _painted(painter, near)
    drawn, there = painter.drawn.lines, painter.drawn.there
    assert drawn == there > 0


def test_lines_stand_where_they_were_when_the_map_is_panned(
    gui: object, overview: Overview
) -> None:
    painter = OverviewPainter(overview, theme("light"))
    fitted = _fitted(overview)
    whole = Frame(-1, -0.2, fitted.across * 0.9, fitted.down, 1000, 520, 100)
    moved = Frame(-2, -0.2, fitted.across * 0.9, fitted.down, 1000, 520, 100)
    one, other = (painter._chosen(frame, Showing()) for frame in (whole, moved))
    assert np.array_equal(one[1], other[1])
    assert other[0][:, 0] == pytest.approx(one[0][:, 0] + fitted.across * 0.9)


def test_lines_of_what_is_hidden_are_left_out(gui: object, overview: Overview) -> None:
    painter = OverviewPainter(overview, theme("light"))
    hidden = np.ones(len(overview), bool)
    _painted(painter, _fitted(overview), Showing(hidden=hidden))
    assert painter.drawn == Drawn()
    hidden[:] = overview.band > 1
    _painted(painter, _fitted(overview), Showing(hidden=hidden))
    kept = ~hidden[overview.above] & (overview.family_band[overview.below] <= 1)
    assert painter.drawn.there == int(kept.sum())


def test_the_mark_and_its_relatives_are_drawn(gui: object, overview: Overview) -> None:
    light = theme("light")
    painter = OverviewPainter(overview, light)
    row = int(np.argmax(overview.band))
    plain = _painted(painter, _fitted(overview))
    showing = Showing(row, overview.links.ancestors(row), overview.links.descendants(row))
    lit = _painted(painter, _fitted(overview), showing)
    assert _hues(plain, light["accent"]) == 0
    assert _hues(lit, light["accent"]) > 100


def _steps_away(overview: Overview, row: int, *, upwards: bool) -> list[set[int]]:
    """Rows one step away, and two, walked from plant to plant."""
    links = overview.links
    pairs = list(zip(links.parent.tolist(), links.child.tolist(), strict=True))
    found, last = [], {row}
    for _ in range(2):
        last = {a if upwards else b for a, b in pairs if (b if upwards else a) in last}
        found.append(last)
    return found


def test_with_many_relatives_lines_lead_to_the_near_ones_only(
    gui: object, overview: Overview
) -> None:
    painter = OverviewPainter(overview, theme("light"))
    links = overview.links
    many = [links.ancestors(at).sum() + links.descendants(at).sum() for at in range(200, 300)]
    row = 200 + int(np.argmax(many))
    showing = Showing(row, links.ancestors(row), links.descendants(row))
    _painted(painter, _fitted(overview), showing)
    kin = painter.kin(showing)
    assert kin.near
    assert painter.drawn.near
    assert painter.drawn.kin == len(kin.upper) + len(kin.lower) < painter.drawn.kin_there
    one, two = _steps_away(overview, row, upwards=True)
    assert set(painter._above[kin.upper].tolist()) == one | two
    one, two = _steps_away(overview, row, upwards=False)
    families = {int(overview.family[child]) for child in one | two}
    assert set(painter._below[kin.lower].tolist()) == families
    # No other lines lie behind them, so the window says of none that it is left out.
    assert (painter.drawn.lines, painter.drawn.there) == (0, 0)


def test_with_few_relatives_all_their_lines_are_drawn(gui: object) -> None:
    overview = _book(60)
    painter = OverviewPainter(overview, theme("light"))
    row = int(np.argmax(overview.band))
    showing = Showing(row, overview.links.ancestors(row), overview.links.descendants(row))
    _painted(painter, _fitted(overview), showing)
    assert not painter.drawn.near
    assert painter.drawn.kin == painter.drawn.kin_there > 2


def test_tags_print_the_value_of_a_tint(gui: object, overview: Overview) -> None:
    painter = OverviewPainter(overview, theme("light"))
    asked: list[int] = []
    tint = np.full((len(overview), 3), 220.0)
    frame = Frame(float(overview.edges_of(1)[0]), 0.9, 120.0, 120.0, 900, 400, 100)

    def words(row: int) -> str:
        asked.append(row)
        return "0.25"

    with_words = _painted(painter, frame, Showing(tint=tint, words=words))
    without = _painted(painter, frame, Showing(tint=tint))
    assert asked
    assert with_words != without


def test_a_dense_screen_shows_the_same_at_twice_the_pixels(gui: object, overview: Overview) -> None:
    painter = OverviewPainter(overview, theme("light"))
    image = _painted(painter, _fitted(overview), ratio=2.0)
    assert (image.width(), image.height()) == (2000, 1040)
    # Below the last band there is ground in either.
    assert image.pixelColor(1990, 1036).name() == theme("light")["ground"]


def test_the_small_map_shows_every_band(gui: object, overview: Overview) -> None:
    image = OverviewPainter(overview, theme("light")).locator(160, 90)
    ground = theme("light")["ground"]
    for band in range(len(overview.counts)):
        y = int((band + 0.3) * 90 / len(overview.counts))
        colours = {image.pixelColor(x, y).name() for x in range(160)}
        assert colours - {ground, theme("light")["band"]}


def test_a_map_of_nothing_and_of_one_plant(gui: object) -> None:
    for overview in (overview_of(PedigreeNetwork.from_records(Book())), _book(1)):
        painter = OverviewPainter(overview, theme("dark"))
        frame = Frame(0, 0, 10, 10, 200, 100, 40)
        assert _hues(_painted(painter, frame), theme("dark")["ground"]) > 0
        assert painter.locator(40, 20).width() == 40


def test_bands_are_named() -> None:
    assert [band_name(number) for number in (0, 3, -1)] == ["Founders", "Generation 3", "In loops"]


def test_the_words_of_all_names_are_cut_short_or_of_none(gui: object) -> None:
    """One column: also the names that alone would have room, as that of a single plant."""
    overview = _book(900)
    painter = OverviewPainter(overview, theme("light"))
    counts = sorted({int(count) for count in overview.counts})
    assert len(counts) > 3
    seen = set()
    for margin in range(60, 200, 4):
        frame = replace(_fitted(overview), margin=margin)
        with patch("pedigreeview.drawing.overview_painter.elided", wraps=elided) as wrote:
            _painted(painter, frame)
        names = [call.args[2] for call in wrote.call_args_list]
        words = {name.split()[0] for name in names} - {"Founders"}
        assert len(words) == 1
        seen |= words
    assert seen == {"Gen.", "Generation"}


def test_dashes_lie_along_their_lines_with_gaps_between() -> None:
    parts = np.array([[0.0, 0.0, 30.0, 40.0], [5.0, 5.0, 5.0, 9.0], [3.0, 3.0, 3.0, 3.0]])
    found = _dashes(parts)
    # 50 long: dashes of 7 begin at 0, 11, 22, 33 and 44; the last is cut off at 50.
    first = found[:5]
    begins, ends = (np.hypot(first[:, at], first[:, at + 1]) for at in (0, 2))
    assert begins == pytest.approx([0, 11, 22, 33, 44])
    assert ends == pytest.approx([7, 18, 29, 40, 50])
    assert found[5] == pytest.approx([5, 5, 5, 9])
    assert found[6] == pytest.approx([3, 3, 3, 3])
    assert len(found) == 7
