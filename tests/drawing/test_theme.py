"""Colours that can be read, sizes on the grid."""

from __future__ import annotations

import itertools
import math

import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.founders import PALETTE_SIZE
from pedigreeview.drawing.patterns import outlined
from pedigreeview.drawing.theme import THEMES, contrast, sizes, text_width, theme

TEXT = (
    ("ink", "paper"),
    ("ink_soft", "paper"),
    ("ink_soft", "paper_behind"),
    ("ink", "knot"),
    ("ink", "ground"),
    ("ink", "band"),
    ("ink_soft", "ground"),
    ("ink_soft", "band"),
    ("band_text", "band"),
    ("band_text", "ground"),
    ("ground", "select"),
)
SIGNS = (("line", "ground"), ("line", "band"), ("accent", "band"), ("select", "band"))


@pytest.mark.parametrize("name", THEMES)
@pytest.mark.parametrize(("ink", "ground"), TEXT)
def test_text_can_be_read(name, ink, ground):
    """4.5 : 1 for text (WCAG 2.1, success criterion 1.4.3)."""
    colours = theme(name)
    assert contrast(colours[ink], colours[ground]) >= 4.5


@pytest.mark.parametrize("name", THEMES)
@pytest.mark.parametrize(("ink", "ground"), SIGNS)
def test_lines_and_rings_can_be_seen(name, ink, ground):
    """3 : 1 for what is needed to understand a picture (WCAG 2.1, 1.4.11)."""
    colours = theme(name)
    assert contrast(colours[ink], colours[ground]) >= 3


def test_contrast_of_black_and_white_is_21():
    """WCAG 2.1, definition of contrast ratio."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21)


@pytest.mark.parametrize("name", THEMES)
def test_every_theme_has_all_tokens_and_founders(name):
    assert set(theme(name).colours) == set(theme("light").colours)
    assert len(theme(name).founders) == PALETTE_SIZE
    assert theme(name).founder(-1) == theme(name)["others"]


Matrix = tuple[tuple[float, ...], ...]


def _linear(colour: str, matrix: Matrix) -> list[float]:
    """Linear RGB of a colour as seen with a deficiency."""
    raw = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    line = [v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in raw]
    return [max(0.0, sum(m * v for m, v in zip(row, line, strict=True))) for row in matrix]


def _seen(colour: str, matrix: Matrix) -> tuple[float, ...]:
    """Oklab of a colour as seen with a deficiency (matrix on linear RGB)."""
    r, g, b = _linear(colour, matrix)
    l_ = (0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b) ** (1 / 3)
    m_ = (0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b) ** (1 / 3)
    s_ = (0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b) ** (1 / 3)
    return (
        0.2104542553 * l_ + 0.7936177850 * m_ - 0.0040720468 * s_,
        1.9779984951 * l_ - 2.4285922050 * m_ + 0.4505937099 * s_,
        0.0259040371 * l_ + 0.7827717662 * m_ - 0.8086757660 * s_,
    )


# Machado, Oliveira and Fernandes 2009, severity 1 (coefficients from memory, no text read).
EYES: dict[str, Matrix] = {
    "usual": ((1, 0, 0), (0, 1, 0), (0, 0, 1)),
    "no red cones": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "no green cones": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "no blue cones": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}


# Viénot, Brettel and Mollon 1999 on linear sRGB (coefficients from memory, no text read).
OTHER_EYES: dict[str, Matrix] = {
    **EYES,
    "no red cones, by another model": (
        (0.11238, 0.88762, 0.0),
        (0.11238, 0.88762, 0.0),
        (0.00401, -0.00401, 1.0),
    ),
    "no green cones, by another model": (
        (0.29275, 0.70725, 0.0),
        (0.29275, 0.70725, 0.0),
        (-0.02234, 0.02234, 1.0),
    ),
}


@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("name", ["light", "dark"])
def test_founder_colours_differ_for_all_eyes(name, eyes):
    """Most pictures need the first six: by a wide step; all twelve by a step (own limits)."""
    seen = [_seen(colour, EYES[eyes]) for colour in theme(name).founders]
    for number, one in enumerate(seen):
        for at, other in enumerate(seen[:number]):
            far = sum((a - b) ** 2 for a, b in zip(one, other, strict=True)) ** 0.5
            assert far >= (0.15 if number < 6 else 0.08), (number, at)


def _ciede2000(one: tuple[float, float, float], other: tuple[float, float, float]) -> float:
    """Difference of two CIELAB colours (CIE 142-2001, from memory); 1 can just be seen."""
    (l1, a1, b1), (l2, a2, b2) = one, other
    c7 = ((math.hypot(a1, b1) + math.hypot(a2, b2)) / 2) ** 7
    more = 1.5 - 0.5 * math.sqrt(c7 / (c7 + 25.0**7))
    c1, c2 = math.hypot(a1 * more, b1), math.hypot(a2 * more, b2)
    h1, h2 = (math.degrees(math.atan2(b, a * more)) % 360 for a, b in ((a1, b1), (a2, b2)))
    turn = (h2 - h1 + 180) % 360 - 180 if c1 * c2 else 0.0
    hue = math.radians(h1 + turn / 2 if c1 * c2 else h1 + h2)
    light, deep = (l1 + l2) / 2, (c1 + c2) / 2
    weight = 1 - 0.17 * math.cos(hue - math.radians(30)) + 0.24 * math.cos(2 * hue)
    weight += 0.32 * math.cos(3 * hue + math.radians(6))
    weight -= 0.2 * math.cos(4 * hue - math.radians(63))
    around = math.exp(-(((math.degrees(hue) % 360 - 275) / 25) ** 2))
    blue = -2 * math.sqrt(deep**7 / (deep**7 + 25.0**7)) * math.sin(math.radians(60 * around))
    by_light = (l2 - l1) / (1 + 0.015 * (light - 50) ** 2 / math.sqrt(20 + (light - 50) ** 2))
    by_depth = (c2 - c1) / (1 + 0.045 * deep)
    by_hue = 2 * math.sqrt(c1 * c2) * math.sin(math.radians(turn / 2)) / (1 + 0.015 * deep * weight)
    return math.sqrt(by_light**2 + by_depth**2 + by_hue**2 + blue * by_depth * by_hue)


def test_the_difference_of_colours_is_that_of_the_tables():
    """Pairs 1, 13 and 17 of Sharma, Wu and Dalal 2005 (from memory)."""
    assert _ciede2000((50, 2.6772, -79.7751), (50, 0, -82.7485)) == pytest.approx(2.0425, abs=1e-4)
    assert _ciede2000((50, -0.001, 2.49), (50, 0.0011, -2.49)) == pytest.approx(4.7461, abs=1e-4)
    assert _ciede2000((50, 2.5, 0), (73, 25, -18)) == pytest.approx(27.1492, abs=1e-4)


@pytest.mark.parametrize("eyes", OTHER_EYES)
@pytest.mark.parametrize("name", ["light", "dark"])
def test_founders_others_and_statuses_are_apart_for_all_eyes(name, eyes):
    """CIEDE2000 of each pair, with limits of our own.

    8 for two founders (12 for two of the first six, which most pictures need), 9 for a founder and
    the tone that all others share, or the paper of a status; 5 for the papers of two statuses or of
    one and plain paper, which are wide and lie side by side.
    """
    held, matrix = theme(name), OTHER_EYES[eyes]

    def lab(colour: str) -> tuple[float, float, float]:
        return _lab_of(*(min(1.0, part) for part in _linear(colour, matrix)))

    founders = [lab(colour) for colour in held.founders]
    others, paper = lab(held["others"]), lab(held["paper"])
    statuses = {word: lab(colour) for word, colour in held.statuses.items()}
    for number, one in enumerate(founders):
        for at, other in enumerate(founders[:number]):
            assert _ciede2000(one, other) >= (12 if number < 6 else 8), (number, at)
        assert _ciede2000(one, others) >= 9, number
        for word, status in statuses.items():
            assert _ciede2000(one, status) >= 9, (number, word)
    for (word, one), (also, other) in itertools.combinations(statuses.items(), 2):
        assert _ciede2000(one, other) >= 5, (word, also)
    for word, status in statuses.items():
        assert _ciede2000(status, paper) >= 5, word


@pytest.mark.parametrize("name", ["light", "dark"])
def test_ink_can_be_read_on_the_paper_of_every_status(name):
    """Else a tint would be mixed with paper, and no longer be what was measured here."""
    held = theme(name)
    for colour in held.statuses.values():
        assert contrast(held["ink"], colour) >= 4.5


def test_unknown_theme_is_a_fault():
    with pytest.raises(Fault, match="no theme 'pink'"):
        theme("pink")


def test_sizes_lie_on_the_grid():
    measures = sizes()
    for name in ("tag_height", "track", "gap_pad", "note_room", "knot_height", "band_pad"):
        assert getattr(measures, name) % measures.grid == 0


def test_longer_text_is_wider():
    assert text_width("18-01-07-3", 15) > text_width("18-01", 15) > 0


def _lab(colour: str) -> tuple[float, float, float]:
    """CIELAB of a colour under daylight (CIE 15, from memory)."""
    return _lab_of(*_linear(colour, EYES["usual"]))


def _lab_of(r: float, g: float, b: float) -> tuple[float, float, float]:
    """CIELAB of linear RGB."""
    x = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505
    y = 0.2126 * r + 0.7152 * g + 0.0722 * b
    z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089
    fx, fy, fz = (v ** (1 / 3) if v > 0.008856 else 7.787 * v + 16 / 116 for v in (x, y, z))
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


@pytest.mark.parametrize("number", range(PALETTE_SIZE))
def test_a_founder_keeps_its_hue_in_light_and_dark(number):
    """Only lightness and depth shift; 30 degrees are the width of one name of a colour (own)."""
    hues = []
    for name in ("light", "dark"):
        _, a, b = _lab(theme(name).founders[number])
        assert math.hypot(a, b) > 15, "a grey has no hue"
        hues.append(math.degrees(math.atan2(b, a)))
    apart = abs(hues[0] - hues[1]) % 360
    assert min(apart, 360 - apart) <= 30


@pytest.mark.parametrize("name", ["light", "dark"])
def test_a_founder_can_be_seen_on_paper_or_has_an_outline_that_can(name):
    """3 : 1 for what is needed to understand a picture (WCAG 2.1, 1.4.11)."""
    held = theme(name)
    assert contrast(held["line_soft"], held["paper"]) >= 3
    for founder in held.founders:
        assert (contrast(founder, held["paper"]) >= 3) != outlined(founder, held["paper"])
    assert sum(outlined(founder, held["paper"]) for founder in held.founders) <= 4


@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("name", ["light", "dark"])
def test_papers_differ_from_founders(name, eyes):
    """Distances in Oklab, limits of our own; statuses lie beside the stripes of founders."""
    held, matrix = theme(name), EYES[eyes]
    founders = [_seen(colour, matrix) for colour in held.founders]
    for papers, least in ((held.classes, 0.045), (tuple(held.statuses.values()), 0.08)):
        for paper in papers:
            seen = _seen(paper, matrix)
            assert min(math.dist(seen, other) for other in founders) >= least, paper


@pytest.mark.parametrize("eyes", ["usual", "no red cones", "no green cones"])
@pytest.mark.parametrize("name", ["light", "dark"])
def test_papers_of_classes_differ_from_each_other(name, eyes):
    held, matrix = theme(name), EYES[eyes]
    for papers in (held.classes, tuple(held.statuses.values())):
        seen = [_seen(colour, matrix) for colour in papers]
        for at, one in enumerate(seen):
            # The last class is for all others, and is the same grey in any company.
            least = 0.015 if at == 11 else 0.03
            for other in seen[:at]:
                assert math.dist(one, other) >= least, papers[at]


@pytest.mark.parametrize("name", THEMES)
def test_statuses_grow_paler_and_a_culled_plant_is_nearly_grey(name):
    held = theme(name)
    away = [contrast(held.statuses[word], held["paper"]) for word in ("kept", "growing")]
    if name != "dark":
        away.append(contrast(held.statuses["finished"], held["paper"]))
        assert away == sorted(away, reverse=True)
    assert away[0] > away[1]
    for word in ("culled", "lost"):
        _, a, b = _lab(held.statuses[word])
        assert math.hypot(a, b) < 8
    assert set(held.statuses) == {"kept", "growing", "finished", "culled", "lost"}


def test_few_classes_take_papers_far_apart():
    held = theme("light")
    assert held.class_papers(1) == held.classes[:1]
    assert held.class_papers(2) == (held.classes[0], held.classes[10])
    for count in range(1, 12):
        assert len(set(held.class_papers(count))) == count


@pytest.mark.parametrize(
    ("one", "other", "least"),
    [("paper", "band", 1.4), ("band", "ground", 1.1), ("bar_empty", "paper", 1.9)],
)
def test_the_dark_theme_is_not_flat(one, other, least):
    held = theme("dark")
    assert contrast(held[one], held[other]) >= least


@pytest.mark.parametrize("name", THEMES)
@pytest.mark.parametrize("ground", ["band", "ground", "frame"])
def test_the_frame_of_a_reciprocal_pair_can_be_seen(name, ground):
    assert contrast(theme(name)["frame_edge"], theme(name)[ground]) >= 3
