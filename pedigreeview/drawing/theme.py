"""Colours, sizes and type of the picture, all from `resources/tokens.json`.  Knows no Qt.

Three themes: light and dark for the screen, grey for paper.  In grey founders are told apart by
patterns.  Sizes are in picture units, one a pixel at full scale, on a grid of six.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from typing import Any

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.blocks import Block, Knot
from pedigreeview.places import resource

__all__ = [
    "THEMES",
    "Sizes",
    "Theme",
    "contrast",
    "mixed",
    "sizes",
    "softened",
    "text_width",
    "theme",
]

THEMES = ("light", "dark", "grey")


@dataclass(frozen=True, slots=True)
class Theme:
    """One set of colours; every colour is '#rrggbb'."""

    name: str
    colours: dict[str, str]
    founders: tuple[str, ...]
    classes: tuple[str, ...]
    """Muted papers for the classes of a tint, the deepest first; the last for all other classes."""
    statuses: dict[str, str]
    """The same for what became of a plant."""
    patterned: bool
    """Founders are drawn as patterns, not as plain colour."""
    fonts: tuple[str, ...]
    type: dict[str, float]
    """Sizes of type by use."""

    def __getitem__(self, token: str) -> str:
        return self.colours[token]

    def founder(self, number: int) -> str:
        """Colour of a founder's number in the palette; -1 is that of the others."""
        return self.founders[number] if 0 <= number < len(self.founders) else self["others"]

    def class_papers(self, count: int) -> tuple[str, ...]:
        """Papers for so many classes in their order, as far apart as can be, the deepest first."""
        own = self.classes[:-1]
        if count < 2:
            return own[:count]
        return tuple(own[round(at * (len(own) - 1) / (count - 1))] for at in range(count))


@dataclass(frozen=True, slots=True)
class Sizes:
    """Measures of the picture."""

    grid: float
    tag_height: float
    tag_least: float
    tag_most: float
    tag_gap: float
    stripe: float
    corner: float
    bar: float
    knot_height: float
    knot_gap: float
    pair_gap: float
    frame_pad: float
    track: float
    gap_pad: float
    note_room: float
    band_pad: float
    band_label: float
    line: float
    grain: float
    code_type: float
    name_type: float
    small_type: float

    def tag_width(self, blocks: Iterable[Block]) -> float:
        """One width for all tags of a picture: that of the widest code, within bounds."""
        widest = self.tag_least
        for block in blocks:
            if block.sort in ("tag", "pack", "chain"):
                room = self.stripe + 8 + 30
                code = text_width(block.title, self.code_type, strong=True) + room
                name = text_width(block.subtitle, self.name_type) + self.stripe + 20
                widest = max(widest, code, name)
        step = 2 * self.grid
        return min(self.tag_most, -(-widest // step) * step)

    def knot_span(self, knot: Knot) -> float:
        """Width of a knot: its sign, its code, room for the ends of its pollen lines."""
        width = self.knot_height
        if knot.label:
            width += text_width(knot.label, self.small_type, strong=True) + 12
        if len(knot.pollen) > 1:
            width = max(width, 24 + 36.0 * len(knot.pollen))
        width = max(width, self.knot_height + 2 * self.grid)
        step = 2 * self.grid
        return -(-width // step) * step

    def knot_side(self, knot: Knot) -> float:
        """Height of a knot where generations run to the right."""
        return self.knot_height if len(knot.pollen) < 2 else 24.0 + 24.0 * len(knot.pollen)


def text_width(text: str, size: float, *, strong: bool = False) -> float:
    """Width of a text in a common sans serif type, on the generous side."""
    total = 0.0
    for letter in text:
        if letter in "ijlI.,:;'|!()[]- ":
            total += 0.36
        elif letter in "mwMW×@%":
            total += 0.92
        elif letter.isupper() or letter.isdigit():
            total += 0.66
        else:
            total += 0.58
    return total * size * (1.06 if strong else 1.0)


@cache
def _tokens() -> dict[str, Any]:
    found: dict[str, Any] = json.loads(resource("tokens.json").read_text(encoding="utf-8"))
    return found


@cache
def theme(name: str = "light") -> Theme:
    """The theme of that name.

    Raises
    ------
    Fault : there is no such theme
    """
    tokens = _tokens()
    if name not in tokens["themes"]:
        raise Fault(f"There is no theme '{name}'.", Place(), f"Choose one of: {', '.join(THEMES)}.")
    own = tokens["themes"][name]
    return Theme(
        name,
        dict(own["colours"]),
        tuple(own["founders"]),
        tuple(own["classes"]),
        dict(own["statuses"]),
        bool(own["patterned"]),
        tuple(tokens["type"]["families"]),
        dict(tokens["type"]["sizes"]),
    )


@cache
def sizes() -> Sizes:
    """The measures, the same in every theme."""
    tokens = _tokens()
    type_sizes = tokens["type"]["sizes"]
    return Sizes(
        **tokens["sizes"],
        code_type=type_sizes["code"],
        name_type=type_sizes["name"],
        small_type=type_sizes["small"],
    )


@lru_cache(maxsize=1024)
def mixed(one: str, other: str, share: float) -> str:
    """A colour between two, with a share of the other, 0 to 1."""
    parts = []
    for at in (1, 3, 5):
        a, b = int(one[at : at + 2], 16), int(other[at : at + 2], 16)
        parts.append(round(a + (b - a) * share))
    return "#{:02x}{:02x}{:02x}".format(*parts)


_SOFTENED: dict[tuple[str, str, float], Theme] = {}


def softened(held: Theme, share: float) -> Theme:
    """The theme as it looks on a band at an opacity; faster to paint with than see-through."""
    key = (held.name, held["band"], share)
    found = _SOFTENED.get(key)
    if found is None:
        band = held["band"]
        found = _SOFTENED[key] = replace(
            held,
            colours={name: mixed(band, one, share) for name, one in held.colours.items()},
            founders=tuple(mixed(band, one, share) for one in held.founders),
        )
    return found


def contrast(one: str, other: str) -> float:
    """Contrast of two colours, 1 to 21, as WCAG 2 defines it (relative luminance)."""
    lighter, darker = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def _luminance(colour: str) -> float:
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
