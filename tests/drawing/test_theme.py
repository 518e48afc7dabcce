"""Colours that can be read, sizes on the grid."""

from __future__ import annotations

import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.founders import PALETTE_SIZE
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


def _seen(colour: str, matrix: tuple[tuple[float, ...], ...]) -> tuple[float, ...]:
    """Oklab of a colour as seen with a deficiency (matrix on linear RGB)."""
    raw = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    line = [v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4 for v in raw]
    r, g, b = (max(0.0, sum(m * v for m, v in zip(row, line, strict=True))) for row in matrix)
    l_ = (0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b) ** (1 / 3)
    m_ = (0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b) ** (1 / 3)
    s_ = (0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b) ** (1 / 3)
    return (
        0.2104542553 * l_ + 0.7936177850 * m_ - 0.0040720468 * s_,
        1.9779984951 * l_ - 2.4285922050 * m_ + 0.4505937099 * s_,
        0.0259040371 * l_ + 0.7827717662 * m_ - 0.8086757660 * s_,
    )


# Machado, Oliveira and Fernandes 2009, severity 1 (coefficients from memory, no text read).
EYES = {
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


@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("name", ["light", "dark"])
def test_founder_colours_differ_for_all_eyes(name, eyes):
    """Most pictures need the first six: by a wide step; all twelve by a step (own limits)."""
    seen = [_seen(colour, EYES[eyes]) for colour in theme(name).founders]
    for number, one in enumerate(seen):
        for at, other in enumerate(seen[:number]):
            far = sum((a - b) ** 2 for a, b in zip(one, other, strict=True)) ** 0.5
            assert far >= (0.15 if number < 6 else 0.08), (number, at)


def test_unknown_theme_is_a_fault():
    with pytest.raises(Fault, match="no theme 'pink'"):
        theme("pink")


def test_sizes_lie_on_the_grid():
    measures = sizes()
    for name in ("tag_height", "track", "gap_pad", "note_room", "knot_height", "band_pad"):
        assert getattr(measures, name) % measures.grid == 0


def test_longer_text_is_wider():
    assert text_width("18-01-07-3", 15) > text_width("18-01", 15) > 0
