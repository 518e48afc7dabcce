"""The lines of a label: its code, its parents with their signs, its facts with room to write.

Each line holds marks placed from its own upper left, in tenths of a millimetre.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from pedigreeview.drawing.theme import Theme
from pedigreeview.reports.label_text import Fact
from pedigreeview.reports.matings import Mating
from pedigreeview.reports.paper_type import rise, shortened, width_of, wrapped
from pedigreeview.reports.report_words import tr

__all__ = [
    "Line",
    "Mark",
    "code_lines",
    "fact_lines",
    "mating_lines",
    "signed_line",
    "text_lines",
    "text_mark",
]

What = Literal[
    "text", "rule", "box", "frame", "shade", "female", "male", "cross", "selfing", "open"
]

_SIGNS: dict[str, What] = {"×": "cross", "⊗": "selfing", "○": "open", "♀": "female", "♂": "male"}
_LEADING = 1.2
_PEN_ROOM = 44.0
"""Height of a line to write on: 4.4 mm."""
_LEAST_CODE = 17.0
_RIM = 10.0
"""Part of the free rim around a label into which the ink of rare letters may reach."""
_LARGEST_CODE = 120
"""12 mm, read from across a bed."""
_LEAST_PARENT = 15.0


@dataclass(frozen=True, slots=True)
class Mark:
    """A piece of text, a sign, a rule, a box (`frame`: a strong one) or a shade.

    `x` and `y` are its upper left corner.
    """

    what: What
    x: float
    y: float
    width: float
    height: float
    text: str = ""
    size: float = 0.0
    strong: bool = False
    soft: bool = False
    baseline: float = 0.0
    """Of a text, below its upper edge."""

    def moved(self, x: float, y: float) -> Mark:
        """The same elsewhere."""
        return replace(self, x=self.x + x, y=self.y + y)


@dataclass(frozen=True, slots=True)
class Line:
    """One line; `gap` is kept above it unless it is the first."""

    marks: tuple[Mark, ...]
    width: float
    height: float
    gap: float = 0.0


def text_mark(
    theme: Theme,
    text: str,
    size: float,
    x: float = 0.0,
    *,
    strong: bool = False,
    soft: bool = False,
) -> Mark:
    """A piece of text in a line of its own height."""
    size = round(size)
    wide = width_of(theme, size, text, strong=strong)
    # Accents of capitals may reach above the line; the room that the leading leaves is shared out.
    base = _baseline(size)
    return Mark("text", x, 0.0, wide, _LEADING * size, text, size, strong, soft, base)


def _baseline(size: float) -> float:
    return (_LEADING - 1.0) / 2 * size + 0.8 * size


def text_lines(
    theme: Theme, text: str, width: float, size: float, *, strong: bool = False
) -> list[Line]:
    """A text, wrapped."""
    return [
        Line((mark,), mark.width, mark.height, 0.1 * size if at == 0 else 0.0)
        for at, line in enumerate(wrapped(theme, size, text, width, strong=strong))
        for mark in (text_mark(theme, line, size, strong=strong),)
    ]


def code_lines(
    theme: Theme, code: str, badge: str, width: float, size: float, small: float
) -> list[Line]:
    """The code as large as it may be, in several lines only where the smallest type is too wide.

    badge : small words at the right of the code, or below it where they would crowd it
    """
    small = round(1.1 * small)
    side = width_of(theme, small, badge, strong=True) + small if badge else 0.0
    own_line = bool(badge) and side > 0.5 * width
    room = width if own_line else width - side
    size = min(round(size), _LARGEST_CODE)
    row = _code_row(theme, code, size)
    if row.x > room:
        size = min(size, max(int(_LEAST_CODE), int(size * room / row.x) + 1))
        row = _code_row(theme, code, size)
    while size > _LEAST_CODE and row.x > room:
        size -= 1
        row = _code_row(theme, code, size)
    parts = [row]
    if row.x > room:
        parts = [_code_row(theme, part, size) for part in _broken(theme, code, room, size)]
    lines = [_tight(theme, part) for part in parts]
    if badge and own_line:
        held = text_mark(
            theme, shortened(theme, small, badge, width, strong=True), small, strong=True
        )
        lines.append(Line((held,), held.width, held.height))
    elif badge:
        own = text_mark(theme, badge, small, strong=True)
        first = lines[0]
        down = max(0.0, _baseline(size) - 0.05 * size - own.baseline)
        own = own.moved(width - own.width, down)
        tall = max(first.height, own.y + own.height)
        lines[0] = Line((*first.marks, own), width, tall)
    return lines


def _tight(theme: Theme, row: _Row) -> Line:
    """A row with less room above and below than text has: a code is one line, and large."""
    cut = 0.05 * row.size
    texts = [mark for mark in row.marks if mark.what == "text" and not mark.text.isascii()]
    inks = [rise(theme, m.size, m.text, strong=m.strong) - m.baseline + cut for m in texts]
    # Letters with two accents, one upon the other, want room of their own above the line.
    down = max([0.0, *(over - _RIM for over in inks)])
    marks = [
        replace(mark, height=1.1 * row.size, baseline=mark.baseline - cut).moved(0, down)
        if mark.what == "text"
        else mark.moved(0, down - cut)
        for mark in row.marks
    ]
    return Line(tuple(marks), row.x, 1.1 * row.size + down)


def _code_row(theme: Theme, code: str, size: float) -> _Row:
    """A code, the trade's signs in it drawn: few types have them."""
    row = _Row(theme, size)
    for part in re.split("([×⊗○♀♂])", code):
        if part in _SIGNS:
            row.sign(_SIGNS[part])
        elif part.strip():
            row.parent(part.strip() if row.x else part.rstrip(), None)
    return row


def signed_line(theme: Theme, text: str, size: float) -> Line:
    """One line of strong text, the trade's signs in it drawn."""
    return _code_row(theme, text, size).line(0.0)


def _broken(theme: Theme, code: str, width: float, size: float) -> list[str]:
    """A code in lines, broken behind dashes, strokes and blanks where there are any."""
    parts = [part for part in re.split(r"(?<=[-/ ×])", code) if part]
    lines: list[str] = []
    for part in parts:
        trial = f"{lines[-1]}{part}" if lines else part
        if lines and width_of(theme, size, trial.rstrip(), strong=True) <= width:
            lines[-1] = trial
        else:
            while len(part) > 1 and width_of(theme, size, part.rstrip(), strong=True) > width:
                kept = len(part) - 1
                while kept > 1 and width_of(theme, size, part[:kept], strong=True) > width:
                    kept -= 1
                lines.append(part[:kept])
                part = part[kept:]
            lines.append(part)
    return [line.strip() for line in lines if line.strip()]


def mating_lines(
    theme: Theme, mating: Mating, width: float, size: float, *, names: bool
) -> list[Line]:
    """Seed parent, sign and pollen parent: in one line, or in two where that is too wide."""
    size = float(round(size))
    named = names and bool(mating.seed_name or mating.pollen_name)
    signs = mating.direction_known
    if mating.sign != "cross":
        word = tr("selfed") if mating.sign == "selfing" else tr("open-pollinated")
        female = mating.sign == "open"
        row = _Row(theme, size).parent(mating.seed, "female" if female else None)
        row.sign(mating.sign)
        if names:
            wide = row.x + width_of(theme, 0.8 * size, word) + 0.4 * size
            if wide <= width:
                row.words(word)
            elif mating.seed_name:
                row.words("")
        return _fitted(theme, mating, width, size, row)
    whole = _Row(theme, size).parent(mating.seed, "female" if signs else None).sign("cross")
    whole.parent(mating.pollen, "male" if signs else None)
    if not named and whole.x <= width:
        return [whole.line()]
    if named:
        long = _Row(theme, size).parent(mating.seed, "female" if signs else None)
        long.words(mating.seed_name).sign("cross")
        long.parent(mating.pollen, "male" if signs else None).words(mating.pollen_name)
        if long.x <= width:
            return [long.line()]
    lines = []
    for female, code, name in (
        (True, mating.seed, mating.seed_name),
        (False, mating.pollen, mating.pollen_name),
    ):
        row = _Row(theme, size)
        if not female:
            row.sign("cross")
        sex: What | None = ("female" if female else "male") if signs else None
        least = size
        start = row.x
        row.parent(code, sex)
        while row.x > width and least > _LEAST_PARENT:
            least -= 1
            row = _Row(theme, least)
            if not female:
                row.sign("cross")
            row.parent(code, sex)
        if row.x > width:
            row = _Row(theme, least)
            if not female:
                row.sign("cross")
            room = width - row.x - (0.95 * least if signs else 0.0)
            row.parent(shortened(theme, least, code, room, strong=True), sex)
        if named and name and name != code:
            room = width - row.x - 0.4 * size
            held = shortened(theme, 0.8 * size, name, room) if room > 2 * size else ""
            row.words(held)
        lines.append(row.line(gap=0.0 if start else 0.15 * size))
    return lines


def _fitted(theme: Theme, mating: Mating, width: float, size: float, row: _Row) -> list[Line]:
    while row.x > width and size > _LEAST_PARENT:
        size -= 1
        row = _Row(theme, size).parent(mating.seed, "female" if mating.sign == "open" else None)
        row.sign(mating.sign)
    if row.x > width:
        room = width - 2.3 * size
        row = _Row(theme, size).parent(
            shortened(theme, size, mating.seed, room, strong=True),
            "female" if mating.sign == "open" else None,
        )
        row.sign(mating.sign)
    return [row.line(gap=0.15 * size)]


class _Row:
    """Marks set one after the other."""

    def __init__(self, theme: Theme, size: float) -> None:
        self.theme = theme
        self.size = size
        self.x = 0.0
        self.marks: list[Mark] = []

    def parent(self, code: str, sex: What | None) -> _Row:
        """A parent's code behind its sign."""
        size = self.size
        if sex is not None:
            tall = 0.86 * size
            top = (_LEADING * size - tall) / 2
            self.marks.append(Mark(sex, self.x, top, 0.62 * size, tall))
            self.x += (0.9 if sex == "male" else 0.8) * size
        mark = text_mark(self.theme, code, size, self.x, strong=True)
        self.marks.append(mark)
        self.x += mark.width
        return self

    def sign(self, what: What) -> _Row:
        """×, ⊗ or ○ with room around it."""
        size = self.size
        if what in ("female", "male"):
            self.marks.append(Mark(what, self.x, 0.17 * size, 0.62 * size, 0.86 * size))
            self.x += (0.98 if what == "male" else 0.82) * size
            return self
        wide = 0.62 * size if what == "cross" else 0.7 * size
        before = 0.3 * size if self.x else 0.0
        top = (_LEADING * size - wide) / 2
        self.marks.append(Mark(what, self.x + before, top, wide, wide))
        self.x += before + wide + (0.36 * size if what == "cross" else 0.0)
        return self

    def words(self, text: str) -> _Row:
        """Smaller words behind."""
        if text:
            size = round(0.8 * self.size)
            mark = text_mark(self.theme, text, size, self.x + 0.4 * self.size)
            self.marks.append(mark.moved(0, _baseline(self.size) - mark.baseline))
            self.x = mark.x + mark.width
        return self

    def line(self, gap: float | None = None) -> Line:
        """The row as a line."""
        gap = 0.15 * self.size if gap is None else gap
        return Line(tuple(self.marks), self.x, _LEADING * self.size, gap)


def fact_lines(theme: Theme, facts: Iterable[Fact], width: float, size: float) -> list[Line]:
    """Facts one after the other, with a point between; one that is blank gets a rule."""
    size = float(round(size))
    rows: list[list[Mark]] = []
    x = 0.0
    point, blank = width_of(theme, size, " · "), width_of(theme, size, "i") * 1.4
    for fact in facts:
        for at, chunk in enumerate(_chunks(theme, fact, width, size)):
            wide = chunk[-1].x + chunk[-1].width
            writes = any(mark.what == "rule" for mark in chunk)
            gap = blank if fact.joined else 1.6 * point if writes else point
            if rows and rows[-1] and x + gap + wide <= width and not at:
                if not fact.joined and not writes:
                    rows[-1].append(text_mark(theme, "·", size, x + 0.36 * point, soft=True))
                rows[-1] += [mark.moved(x + gap, 0) for mark in chunk]
                x += gap + wide
            else:
                rows.append(list(chunk))
                x = wide
    return [_fact_line(row, size, first=not at) for at, row in enumerate(rows)]


def _fact_line(row: Sequence[Mark], size: float, *, first: bool) -> Line:
    width = max(mark.x + mark.width for mark in row)
    writes = any(mark.what == "rule" for mark in row)
    height = max(_LEADING * size, _PEN_ROOM if writes else 0.0)
    gap = 0.2 * size if first else 0.0
    down = height - _LEADING * size
    return Line(tuple(mark.moved(0, down) for mark in row), width, height, gap)


def _chunks(theme: Theme, fact: Fact, width: float, size: float) -> list[list[Mark]]:
    """The fact in one piece, or in as many lines as it takes."""
    marks: list[Mark] = []
    x = 0.0
    space = width_of(theme, size, "i") * 1.2
    if fact.what:
        marks.append(text_mark(theme, fact.what, size, x, soft=bool(fact.value) or fact.writes))
        x += marks[-1].width + space
    if fact.value:
        marks.append(text_mark(theme, fact.value, size, x))
        x += marks[-1].width + space
    elif fact.writes:
        rule = min(10.0 * fact.room, width)
        marks.append(Mark("rule", x, _base(size), rule, 0.0))
        x += rule + space
    if fact.after:
        marks.append(text_mark(theme, fact.after, size, x, soft=True))
    if marks[-1].x + marks[-1].width <= width:
        return [marks]
    lines: list[list[Mark]] = []
    for line in wrapped(theme, size, fact.text.replace("____", ""), width):
        lines.append([text_mark(theme, line, size)])
    if fact.writes:
        lines.append([Mark("rule", 0.0, _base(size), min(10.0 * fact.room, width), 0.0)])
    return lines


def _base(size: float) -> float:
    return _baseline(size) + 2.0
