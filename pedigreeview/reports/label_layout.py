"""Where everything stands on one label: the largest type in which all of it fits.

Lengths are in tenths of a millimetre, from the upper left of the part of the label that is printed
on.  What fits at no size that can be read is shortened, never cut off, and is told.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from pedigreeview.drawing.theme import Theme
from pedigreeview.reports.label_lines import (
    Line,
    Mark,
    code_lines,
    fact_lines,
    mating_lines,
    text_lines,
)
from pedigreeview.reports.label_text import Fact, LabelText
from pedigreeview.reports.paper_type import UNITS_PER_MM, shortened
from pedigreeview.reports.qr import LEAST_MODULE, QUIET, Squares, qr_squares
from pedigreeview.reports.report_words import tr

__all__ = ["LabelLayout", "lay_out_label"]

_LARGEST, _READABLE, _LEAST = 42, 20, 15
"""Sizes of the small type: about 12, 5.7 and 4.3 points."""
_RATIOS = (4.0, 3.6, 3.2, 2.8, 2.4, 2.0, 1.7, 1.4, 1.2)
"""Size of the code against that of the small type, the largest that fits being taken."""
_WANTED = (2.8, 2.0, 1.4, 1.2)
"""Ratios that are worth smaller type to reach: a code is read from where one stands."""
_SIDE_BY_SIDE = 4.4
"""A label this much wider than high has the code at the left and the rest beside it."""
_MODULE_MOST = 6.0


@dataclass(frozen=True, slots=True)
class LabelLayout:
    """One label, placed."""

    width: float
    height: float
    marks: tuple[Mark, ...]
    qr: tuple[float, float, float] | None
    """Left, top and side of the code's squares."""
    squares: Squares
    small: float
    """Size of the small type."""
    left_out: tuple[str, ...]
    """What there was no room for."""

    @property
    def smallest_points(self) -> float:
        """Size of the smallest type, in points of 1/72 inch."""
        return min((m.size for m in self.marks if m.text), default=0.0) / 254 * 72


@dataclass(frozen=True, slots=True)
class _Fill:
    """How much of a label's text is shown."""

    names: bool
    spare: bool
    least: int
    facts: int | None = None
    """How many facts; None: all."""
    cautions: int | None = None


def lay_out_label(
    text: LabelText,
    width: float,
    height: float,
    theme: Theme,
    *,
    qr: bool = False,
    largest: float = _LARGEST,
) -> LabelLayout:
    """Place one label's text in a room.

    largest : size that the small type is not to pass, so that the labels of a sheet look alike

    Names of parents and spare facts give way before the type becomes hard to read; after them the
    last facts.  The code, the parents and the first caution always stay.
    """
    left_out: list[str] = []
    squares: Squares = ()
    spot: tuple[float, float, float] | None = None
    room = width
    if qr and text.scan:
        squares = qr_squares(text.scan)
        spot = _qr_spot(len(squares), width, height)
        if spot is None:
            squares = ()
            left_out.append(tr("the QR code"))
        else:
            module = spot[2] / len(squares)
            room = spot[0] - QUIET * module
    for fill in _fills(text):
        found = _largest(text, room, height, theme, fill, int(largest))
        if found is None:
            continue
        marks, small = found
        left_out += _missing(text, fill)
        return LabelLayout(width, height, tuple(marks), spot, squares, small, tuple(left_out))
    # No real label comes here: the code alone, its middle left out if need be.
    held = shortened(theme, _LEAST, text.code, room, strong=True)
    code = text_lines(theme, held, room, _LEAST, strong=True)[:1]
    left_out.append(tr("all but the code"))
    return LabelLayout(
        width, height, tuple(_stacked(code, height)), spot, squares, _LEAST, tuple(left_out)
    )


def _fills(text: LabelText) -> list[_Fill]:
    facts = sum(not fact.spare for fact in text.facts)
    cautions = len(text.cautions)
    found = [
        _Fill(True, True, _READABLE),
        _Fill(False, True, _READABLE),
        _Fill(False, False, _READABLE),
        _Fill(False, False, _LEAST),
    ]
    found += [_Fill(False, False, _LEAST, facts - gone) for gone in range(1, facts + 1)]
    found += [_Fill(False, False, _LEAST, 0, cautions - gone) for gone in range(1, cautions)]
    return found


def _missing(text: LabelText, fill: _Fill) -> list[str]:
    """What should have stood on the label; names and spare facts are no loss."""
    shown = _facts(text, fill)
    found = [fact.text for fact in text.facts if not fact.spare and fact not in shown]
    return found + list(text.cautions[fill.cautions :] if fill.cautions is not None else ())


def _facts(text: LabelText, fill: _Fill) -> list[Fact]:
    held = [fact for fact in text.facts if fill.spare or not fact.spare]
    return held if fill.facts is None else held[: fill.facts]


def _largest(
    text: LabelText, width: float, height: float, theme: Theme, fill: _Fill, most: int
) -> tuple[list[Mark], float] | None:
    """The marks at the largest size at which all fits, or None."""
    for wanted in _WANTED:
        if _placed(text, width, height, theme, fill, fill.least, wanted) is None:
            continue
        low, high = fill.least, max(most, fill.least)
        while low < high:
            middle = (low + high + 1) // 2
            if _placed(text, width, height, theme, fill, middle, wanted) is None:
                high = middle - 1
            else:
                low = middle
        found = _placed(text, width, height, theme, fill, low, wanted)
        if found is not None:
            return found, float(low)
    return None


def _placed(
    text: LabelText,
    width: float,
    height: float,
    theme: Theme,
    fill: _Fill,
    small: int,
    wanted: float,
) -> list[Mark] | None:
    """The marks at one size of the small type, the code at least `wanted` times as large."""
    if width / height > _SIDE_BY_SIDE:
        return _beside(text, width, height, theme, fill, small, wanted)
    foot = _foot(text, width, theme, fill, small)
    below = _height(foot) + (0.5 * small if foot else 0.0)
    rest = _rest(text, width, theme, fill, small)
    for ratio in _RATIOS:
        if ratio < wanted:
            break
        lines = [*code_lines(theme, text.code, text.badge, width, ratio * small, small), *rest]
        if _height(lines) + below <= height and _widest(lines) <= width + 0.01:
            return _with_foot(lines, foot, width, height, small)
    return None


def _beside(
    text: LabelText,
    width: float,
    height: float,
    theme: Theme,
    fill: _Fill,
    small: int,
    wanted: float,
) -> list[Mark] | None:
    """Code and name at the left, the rest at the right."""
    gap = 1.6 * small
    name = [replace(line, gap=0.2 * small) for line in _name(text, width * 0.42, theme, small)]
    for ratio in _RATIOS:
        if ratio < wanted:
            break
        head = [*code_lines(theme, text.code, "", width * 0.42, ratio * small, small), *name]
        if text.badge:
            head += text_lines(theme, text.badge, width * 0.42, small, strong=True)
        left = max(_widest(head), 0.2 * width)
        room = width - left - gap
        foot = _foot(text, room, theme, fill, small)
        below = _height(foot) + (0.5 * small if foot else 0.0)
        rest = _rest(replace(text, name=""), room, theme, fill, small)
        if max(_height(head), _height(rest) + below) <= height and _widest(rest) <= room + 0.01:
            beside = _with_foot(rest, foot, room, height, small)
            rule = Mark("rule", left + gap / 2, 0.04 * height, 0.0, 0.92 * height, soft=True)
            return [*_stacked(head, height), rule, *(m.moved(left + gap, 0) for m in beside)]
    return None


def _name(text: LabelText, width: float, theme: Theme, small: float) -> list[Line]:
    return text_lines(theme, text.name, width, 1.1 * small) if text.name else []


def _rest(text: LabelText, width: float, theme: Theme, fill: _Fill, small: float) -> list[Line]:
    lines = _name(text, width, theme, small)
    if text.mating is not None:
        # Where the mating stands in words as well, its names stand there.
        names = fill.names and not text.origin
        lines += mating_lines(theme, text.mating, width, 1.3 * small, names=names)
    if text.origin:
        lines += text_lines(theme, text.origin, width, small)
    return lines + fact_lines(theme, _facts(text, fill), width, small)


def _foot(text: LabelText, width: float, theme: Theme, fill: _Fill, small: float) -> list[Line]:
    shown = text.cautions if fill.cautions is None else text.cautions[: fill.cautions]
    lines: list[Line] = []
    for at, caution in enumerate(shown):
        lines += text_lines(theme, caution, width, small, strong=at == 0)
    return lines


def _height(lines: Sequence[Line]) -> float:
    return sum(line.height + (line.gap if at else 0.0) for at, line in enumerate(lines))


def _widest(lines: Sequence[Line]) -> float:
    return max((line.width for line in lines), default=0.0)


def _with_foot(
    lines: Sequence[Line], foot: Sequence[Line], width: float, height: float, small: float
) -> list[Mark]:
    if not foot:
        return _stacked(lines, height)
    under = height - _height(foot)
    rule = Mark("rule", 0.0, under - 0.25 * small, width, 0.0, soft=True)
    above = _stacked(lines, under - 0.5 * small, spread=True)
    return [*above, rule, *(m.moved(0, under) for m in _stacked(foot, _height(foot)))]


def _stacked(lines: Sequence[Line], height: float, *, spread: bool = False) -> list[Mark]:
    """Lines one below the other, what is left of the height shared out around and between them."""
    spare = max(0.0, height - _height(lines))
    between = min(spare / max(1, len(lines)), 6.0 if spread else 5.0) if len(lines) > 1 else 0.0
    y = 0.0 if spread else (spare - between * (len(lines) - 1)) / 2
    found: list[Mark] = []
    for at, line in enumerate(lines):
        y += line.gap + between if at else 0.0
        found += [mark.moved(0, y) for mark in line.marks]
        y += line.height
    return found


def _qr_spot(modules: int, width: float, height: float) -> tuple[float, float, float] | None:
    # The edge of the label is white as well, so that a rim of two squares is kept on that side.
    side = min(height, 0.4 * width, (modules + 4) * _MODULE_MOST)
    module = side / (modules + 4)
    if module < LEAST_MODULE * UNITS_PER_MM:
        return None
    whole = modules * module
    return (width - 2 * module - whole, (height - whole) / 2, whole)
