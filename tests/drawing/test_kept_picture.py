"""The kept picture is at all times what would be painted afresh, and little of it is painted."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtGui import QImage, QPainter

from pedigreeview import read
from pedigreeview.drawing import kept_picture
from pedigreeview.drawing.kept_picture import KeptPicture, Sight, ready
from pedigreeview.drawing.lighting import light
from pedigreeview.drawing.painter import Scene
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.telling import tell_with
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.places import demo

pytestmark = pytest.mark.usefixtures("gui")

_SIZE = (760, 480)
_ALIKE = 24
"""Levels by which a pixel may differ: the smoothing of a strip's rim."""


@pytest.fixture(scope="module")
def placed() -> Placed:
    net = read(demo("two_peas_both_ways"))
    return place(choose(net, Look(focus=net.codes[len(net.codes) // 2], up=3, down=3)))


def middle_of(placed: Placed) -> tuple[float, float]:
    """A corner from which the focus is about in the middle of the window."""
    x, y = placed.block_of(placed.view.focus).middle
    return x - _SIZE[0] / 2, y - _SIZE[1] / 2


def sight(placed: Placed, **more) -> Sight:
    values = {"scale": 1.0, "origin": middle_of(placed), "size": _SIZE}
    return Sight(placed, theme("light"), **(values | more))


def screen(kept: KeptPicture, wanted: Sight, ratio: float = 1.0, *, exact: bool = True) -> QImage:
    wide, high = (round(side * ratio) for side in wanted.size)
    image = QImage(wide, high, QImage.Format.Format_RGB32)
    image.fill(0)
    image.setDevicePixelRatio(ratio)
    painter = QPainter(image)
    try:
        kept.show(painter, wanted, exact=exact)
    finally:
        painter.end()
    return image


def levels(image: QImage) -> NDArray[np.int64]:
    held = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.width(), 4)
    return held[:, :, :3].astype(np.int64)


def apart(one: QImage, other: QImage) -> int:
    """The largest difference of two pixels."""
    return int(np.abs(levels(one) - levels(other)).max())


def afresh(wanted: Sight, ratio: float = 1.0) -> QImage:
    return screen(KeptPicture(), wanted, ratio)


def codes(placed: Placed) -> list[str]:
    """Plants whose tags lie in the middle of the window first."""
    x, y = placed.block_of(placed.view.focus).middle
    near = sorted(placed.blocks, key=lambda one: abs(one.x - x) + abs(one.y - y))
    return [one.block.code for one in near if one.block.sort == "tag" and one.block.code]


@pytest.mark.parametrize("ratio", [1.0, 2.0, 1.25])
@pytest.mark.parametrize("scale", [0.5, 0.6, 1.0, 1.6])
def test_moved_about_it_is_what_is_painted_afresh(placed, scale, ratio):
    kept, ways = KeptPicture(), random.Random(7)
    wanted = sight(placed, scale=scale, origin=middle_of(placed))
    screen(kept, wanted, ratio)
    whole, painted = round(_SIZE[0] * ratio) * round(_SIZE[1] * ratio), []
    for _ in range(6):
        across, down = ways.randint(-30, 30) * 4 / scale, ways.choice((0, 8, -12)) / scale
        wanted = replace(wanted, origin=(wanted.origin[0] + across, wanted.origin[1] + down))
        image = screen(kept, wanted, ratio)
        painted.append(kept.painted)
        assert apart(image, afresh(wanted, ratio)) <= _ALIKE
    assert 0 < sum(painted) < 0.5 * whole * len(painted)


def test_what_has_not_changed_is_not_painted(placed):
    kept = KeptPicture()
    wanted = sight(placed, scene=Scene(tints={"A": "#ffccaa"}))
    first = screen(kept, wanted)
    assert kept.painted == _SIZE[0] * _SIZE[1]
    assert screen(kept, sight(placed, scene=Scene(tints={"A": "#ffccaa"}))) == first
    assert kept.painted == 0


def _lit(one: Sight) -> Sight:
    near = codes(one.placed)
    return replace(one, lit=light(one.placed, [near[:2]]))


_CHANGES: dict[str, Callable[[Sight, list[str]], Sight]] = {
    "selected": lambda one, near: replace(one, scene=Scene(selected=near[1])),
    "hover": lambda one, near: replace(one, scene=Scene(hover=near[1])),
    "pins": lambda one, near: replace(one, scene=Scene(pins=(near[2], near[1]))),
    "pair": lambda one, near: replace(one, scene=Scene(pair=(near[0], near[1]))),
    "tints": lambda one, near: replace(one, scene=Scene(tints={near[1]: "#c08040"})),
    "words": lambda one, near: replace(one, scene=Scene(tint_words={near[1]: "7 g"})),
    "faded": lambda one, near: replace(one, scene=Scene(faded=frozenset(near[1:3]))),
    "look": lambda one, near: replace(one, theme=theme("dark")),
    "lit": lambda one, near: _lit(one),
    "scale": lambda one, near: replace(one, scale=1.1),
    "size": lambda one, near: replace(one, size=(400, 360)),
}


@pytest.mark.parametrize("change", list(_CHANGES))
def test_whatever_changes_is_painted_at_once_and_taken_back(placed, change):
    kept, plain = KeptPicture(), sight(placed)
    before = screen(kept, plain)
    wanted = _CHANGES[change](plain, codes(placed))
    after = screen(kept, wanted)
    assert apart(after, afresh(wanted)) <= _ALIKE
    if after.size() == before.size():
        assert apart(after, before) > 60
    # With the change and a move in one, and back.
    x, y = wanted.origin
    moved = replace(wanted, origin=(x + 24 / wanted.scale, y))
    assert apart(screen(kept, moved), afresh(moved)) <= _ALIKE
    assert apart(screen(kept, plain), before) <= _ALIKE


@pytest.mark.parametrize("mark", ["selected", "hover", "pins"])
def test_of_a_mark_only_its_tag_is_painted(placed, mark):
    kept, plain = KeptPicture(), sight(placed)
    screen(kept, plain)
    screen(kept, _CHANGES[mark](plain, codes(placed)))
    assert 0 < kept.painted < 0.6 * _SIZE[0] * _SIZE[1]


def test_a_table_of_tints_that_is_changed_itself_shows(placed):
    kept, tints = KeptPicture(), {codes(placed)[0]: "#c08040"}
    wanted = sight(placed, scene=Scene(tints=tints))
    screen(kept, wanted)
    tints[codes(placed)[0]] = "#4080c0"
    assert screen(kept, wanted) == afresh(wanted)


def test_another_picture_of_the_same_book_shows(placed):
    kept = KeptPicture()
    screen(kept, sight(placed))
    focus = codes(placed)[-1]
    other = place(choose(read(demo("two_peas_both_ways")), Look(focus=focus, up=1, down=1)))
    assert screen(kept, sight(other)) == afresh(sight(other))


def test_another_language_shows(placed):
    kept, wanted = KeptPicture(), sight(placed)
    screen(kept, wanted)
    tell_with(lambda text: text.upper() + "!")
    try:
        assert screen(kept, wanted) == afresh(wanted)
        assert kept.painted
    finally:
        tell_with(None)
    assert screen(kept, wanted) == afresh(wanted)


def test_by_part_of_a_pixel_it_goes_along_while_it_moves_and_lies_exactly_at_rest(placed):
    kept, wanted = KeptPicture(), sight(placed)
    screen(kept, wanted)
    x, y = wanted.origin
    aside = replace(wanted, origin=(x + 7.4, y))
    on_its_way = screen(kept, aside, exact=False)
    assert 0 < kept.painted < 0.1 * _SIZE[0] * _SIZE[1]
    # As far as whole pixels go.
    assert apart(on_its_way, afresh(replace(wanted, origin=(x + 7, y)))) <= _ALIKE
    assert screen(kept, aside) == afresh(aside)


def test_too_large_a_picture_is_not_kept_and_looks_the_same(placed, monkeypatch):
    kept, wanted = KeptPicture(), sight(placed)
    first = screen(kept, wanted)
    monkeypatch.setattr(kept_picture, "MOST_PIXELS", 1000)
    for _ in range(2):
        assert apart(screen(kept, wanted), first) <= _ALIKE
        assert kept.painted == _SIZE[0] * _SIZE[1]


def test_from_afar_dots_are_where_they_would_be_painted_afresh(placed):
    """Dots set as pixels begin at the edge of what is painted: strips would not fit together."""
    kept, wanted = KeptPicture(), sight(placed, scale=0.1)
    screen(kept, wanted)
    for _ in range(3):
        wanted = replace(wanted, origin=(wanted.origin[0] + 50, wanted.origin[1] + 30))
        assert screen(kept, wanted) == afresh(wanted)


def test_what_is_readied_ahead_is_what_painting_works_out():
    net = read(demo("two_peas_both_ways"))
    look = Look(focus=net.codes[len(net.codes) // 2], up=3, down=3)
    one, other = place(choose(net, look)), place(choose(net, look))
    ready(one)
    held = set(one.held)
    assert {"cull", "strokes", "blocks", "lit"} <= held
    assert afresh(sight(one)) == afresh(sight(other))
