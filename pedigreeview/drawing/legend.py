"""The legend: every mark of the picture with a sentence, drawn by the same code as the picture."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.drawing.blocks import Block, Link, Role, Sign
from pedigreeview.drawing.founder_marks import marks_of
from pedigreeview.drawing.founders import OTHERS
from pedigreeview.drawing.legend_picks import RESERVE, pick_out
from pedigreeview.drawing.lines import draw_loop_words, draw_open_end, draw_route, draw_stroke
from pedigreeview.drawing.patterns import share
from pedigreeview.drawing.placing import Line, OpenEnd, Placed
from pedigreeview.drawing.signs import colour, pen, reciprocal, sign
from pedigreeview.drawing.strokes import strokes_of
from pedigreeview.drawing.tags import Dress, draw_swatch, draw_tag, font, shortened
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, sizes
from pedigreeview.drawing.tinting import TintKey

__all__ = [
    "Entry",
    "draw_count",
    "draw_sample",
    "group_of",
    "legend_entries",
    "legend_height",
    "paint_legend",
    "tint_entries",
]

_COLUMN = 300.0
_ROW = 42.0
_SAMPLE = 66.0

_WORDS = {
    "tag": "A plant: code, name, generation",
    "stripe": "Left edge: founders' shares",
    "unknown share": "Hatched edge: parents not known",
    "bar": "Lower bar: inbreeding F, 0 to 1",
    "withheld": "Hatched bar: F is withheld",
    "pool": "Second edge: variety or family",
    "kept": "Notch: kept selection",
    "culled": "Faded: culled or lost",
    "pack": "Sibs folded into a pack",
    "chain": "Selfings of one plant each, folded",
    "tabs": "Tab: more parents or progeny; a click shows them",
    "focus": "Ring: the focus",
    "selected": "Dashed ring: the plant whose card lies open",
    "pin": "A, B, C ...: pinned to compare",
    "aside": "Faint: beside what is looked at, or not fitting the filter",
    "ghost": "Dashed tag: a cross only tried out, not in the book",
    "seed line": "Unbroken line: seed parent",
    "pollen line": "Grains: pollen parent",
    "odds": "Lighter, with odds: perhaps its pollen",
    "open end": "Open end: parent not known",
    "selfings": "Selfings that were not recorded",
    "lit": "Lines lit up: the paths that are looked at",
    "loop": "Arrow back to an ancestor: an impossible loop, see Checks",
    "cross": "Cross",
    "selfing": "Selfing",
    "open": "Open-pollinated",
    "clone": "Cutting, division or other clone",
    "seed": "Grown from seed of a variety or family",
    "sibbed": "Members mated with each other",
    "doubled": "Doubled form or doubled haploid",
    "pair": "Reciprocal pair: both directions",
    "planned": "Dotted sign: a cross planned or skipped, no seed yet",
    "found": "Found: the plants' own parentage, not what the cross was meant to be",
}
_SIGNS: tuple[Sign, ...] = ("cross", "selfing", "open", "clone", "seed", "sibbed", "doubled")


_LINES = ("seed line", "pollen line", "odds", "open end", "selfings", "loop", "lit")
_ALSO = ("mixed", "blend", "no value")
_KNOTS = (*_SIGNS, "pair", "planned", "found")


@dataclass(frozen=True, slots=True)
class Entry:
    """One mark and what it means.

    founder : number of the palette, for a founder's entry and for a class of a tint
    shade : colour of a class of a tint
    ramp, ends : colours of a scale and the numbers at its ends
    """

    mark: str
    words: str
    count: str = ""
    """How many plants there are of it."""
    founder: int | None = None
    initial: str = ""
    shade: str = ""
    ramp: tuple[str, ...] = ()
    ends: tuple[str, str] = ("", "")
    mixed: tuple[tuple[str, float], ...] = ()
    """Tints side by side with their parts, for packs of plants that differ."""

    @property
    def said(self) -> str:
        """The words with the count, for one who hears them."""
        return f"{self.words} ({self.count})" if self.count else self.words


def tint_entries(key: TintKey | None, shown: Iterable[str] = ()) -> tuple[Entry, ...]:
    """What the colours of a tint mean: a scale, or its classes below a heading of their own.

    shown : what else of the tint occurs, as `Tint.also` says it
    """
    if key is None:
        return ()
    also = _also(key, frozenset(shown))
    if key.ramp:
        ends = (key.ticks[0][1], key.ticks[-1][1]) if key.ticks else ("", "")
        words = tell(f"Tint: {key.title}, pale to deep")
        return (Entry("ramp", words, ramp=key.ramp, ends=ends), *also)
    head = Entry("tint", tell(f"Tint: {key.title}"))
    return (
        head,
        *(
            Entry("class", tell(item.words), f"{item.plants:,}", number, shade=item.colour)
            for number, item in enumerate(key.entries)
        ),
        *also,
    )


def _also(key: TintKey, shown: frozenset[str]) -> list[Entry]:
    """Packs whose plants differ, and plants without a value, where there are any."""
    shades = key.ramp or tuple(item.colour for item in key.entries)
    found = []
    if "mixed" in shown and shades:
        parts = ((shades[-1 if key.ramp else 0], 0.5), (shades[0 if key.ramp else -1], 0.5))
        mark = "blend" if key.ramp else "mixed"
        found.append(Entry(mark, tell("Mixed: the plants of the pack differ"), mixed=parts))
    if "no value" in shown:
        missing = f"{key.missing:,}" if key.missing else ""
        found.append(Entry("no value", tell("No value: plain paper"), missing))
    return found


def legend_entries(
    placed: Placed,
    *,
    everything: bool = False,
    shown: Iterable[str] = (),
    key: TintKey | None = None,
) -> tuple[Entry, ...]:
    """What the tint means, founders, then the marks that occur in the picture (or all marks).

    shown : further marks that the caller draws: selected, pin, lit, aside, mixed, no value
    """
    view = placed.view
    names = dict(view.names)
    marks = marks_of(view.founders)
    found = [
        Entry("founder", f"{code} {names.get(code, '')}".rstrip(), "", number, marks[code])
        for code, number in view.founders
        if number != OTHERS
    ]
    others = sum(number == OTHERS for _, number in view.founders)
    if others:
        found.append(Entry("founder", tell(f"{others} other founders"), "", OTHERS))
    shown = frozenset(shown)
    held = set(_WORDS) if everything else _marks(placed) | shown
    found += [Entry(mark, tell(words)) for mark, words in _WORDS.items() if mark in held]
    return (*tint_entries(key, shown), *found)


def group_of(entry: Entry) -> str:
    """The heading under which a mark stands: Tint, Founders, Tags, Lines or Crosses."""
    if entry.ramp or entry.shade or entry.mark in ("tint", *_ALSO):
        return "Tint"
    if entry.founder is not None:
        return "Founders"
    if entry.mark in _LINES:
        return "Lines"
    return "Crosses" if entry.mark in _KNOTS else "Tags"


def _marks(placed: Placed) -> set[str]:
    held = {"tag", "stripe", "bar"}
    for item in placed.blocks:
        block = item.block
        if block.sort in ("pack", "chain", "pair"):
            held.add(block.sort)
        held.update(knot.sign for knot in block.knots)
        held.update("found" for knot in block.knots if knot.found)
        held.update("planned" for knot in block.knots if knot.state in ("planned", "skipped"))
        for mark, seen in (
            ("pool", block.pool),
            ("kept", block.status == "kept"),
            ("culled", block.status in ("culled", "lost")),
            ("withheld", bool(block.withheld)),
            ("unknown share", block.unknown_share > 1e-9),
            ("ghost", block.ghost and block.sort == "tag"),
            ("tabs", bool(block.more_up or block.more_down)),
            ("selfings", block.sort == "tag" and block.selfings > 0),
        ):
            if seen:
                held.add(mark)
    for line in placed.lines:
        if line.role in ("seed", "pollen"):
            held.add(f"{line.role} line")
        if line.back:
            held.add("loop")
        if not line.sure:
            held.add("odds")
    if placed.open_ends:
        held.add("open end")
    if placed.view.aside:
        held.add("aside")
    if placed.view.way is not None and placed.view.way.mode in ("connection", "cytoplasm"):
        held.add("lit")
    if placed.view.focus:
        held.add("focus")
    return held


def _columns(width: float) -> int:
    return max(1, int(width // _COLUMN))


def legend_height(entries: Sequence[Entry], width: float) -> float:
    """Height that the legend takes at a width."""
    return -(-len(entries) // _columns(width)) * _ROW


def paint_legend(
    painter: QPainter, entries: Sequence[Entry], theme: Theme, x: float, y: float, width: float
) -> None:
    """Paint the legend, column after column."""
    columns = _columns(width)
    rows = -(-len(entries) // columns)
    for at, entry in enumerate(entries):
        left = x + (at // rows) * (width / columns)
        top = y + (at % rows) * _ROW
        _row_sample(painter, entry, theme, QRectF(left, top, _SAMPLE, _ROW - 8))
        painter.setPen(colour(theme["ink"]))
        size = theme.type["legend"]
        painter.setFont(font(theme, size))
        room = width / columns - _SAMPLE - 18
        lines = _two_lines(entry.words, theme, size, room)
        middle = top + (_ROW - 8) / 2 + size * 0.36
        for number, text in enumerate(lines):
            shift = (number - (len(lines) - 1) / 2) * size * 1.2
            painter.drawText(QPointF(left + _SAMPLE + 10, middle + shift), text)
        if entry.count:
            draw_count(painter, entry, theme, left + _SAMPLE + 10, middle)


def draw_count(painter: QPainter, entry: Entry, theme: Theme, x: float, y: float) -> None:
    """How many plants, in softer ink, apart from the words that begin at a place."""
    type_ = font(theme, theme.type["legend"])
    painter.setFont(type_)
    painter.setPen(colour(theme["ink_soft"]))
    wide = QFontMetricsF(type_).horizontalAdvance(entry.words)
    painter.drawText(QPointF(x + wide + 8, y), entry.count)


def _two_lines(words: str, theme: Theme, size: float, room: float) -> list[str]:
    """The words on one line or two, the second shortened if it must be."""
    metrics = QFontMetricsF(font(theme, size))
    if metrics.horizontalAdvance(words) <= room:
        return [words]
    first, rest = "", words.split()
    while rest and metrics.horizontalAdvance(f"{first} {rest[0]}".strip()) <= room:
        first = f"{first} {rest.pop(0)}".strip()
    lines = [first, " ".join(rest)] if first else [words]
    return [shortened(theme, size, line, room) for line in lines]


def _row_sample(painter: QPainter, entry: Entry, theme: Theme, rect: QRectF) -> None:
    """The mark of an entry with what of it is meant; what hangs below its tag keeps in its row."""
    below = RESERVE["tabs"] if entry.mark == "tabs" else 0.0
    scale = rect.height() / (rect.height() + below)
    painter.save()
    painter.translate(rect.topLeft())
    painter.scale(scale, scale)
    held = QRectF(0, 0, rect.width(), rect.height())
    draw_sample(painter, entry, theme, held)
    pick_out(painter, entry.mark, theme, 4.0, held.center().y() - 16, 0.54)
    painter.restore()


def draw_sample(painter: QPainter, entry: Entry, theme: Theme, rect: QRectF) -> None:
    """The mark of an entry, in the middle of a rectangle of the legend's own size."""
    middle = rect.center()
    if entry.ramp:
        _ramp(painter, entry, theme, rect)
        return
    if entry.shade or entry.mark in _ALSO:
        # On paper without colours a pack of different classes is plain, and says 'mixed'.
        plain = theme.patterned and entry.mark == "mixed"
        dress = Dress(
            tint="" if theme.patterned else entry.shade,
            mixed=() if plain else entry.mixed,
            mark=-1 if entry.founder is None else entry.founder,
        )
        draw_swatch(painter, QRectF(middle.x() - 15, rect.top() + 6, 30, 22), theme, dress)
        return
    if entry.founder is not None:
        swatch = QRectF(middle.x() - 11, rect.top() + 3, 22, rect.height() - 6)
        share(painter, swatch, entry.founder, theme, initial=entry.initial)
        return
    mark = entry.mark
    if mark in ("planned", "found"):
        _pill(
            painter,
            theme,
            middle.x(),
            middle.y(),
            "cross" if mark == "planned" else "selfing",
            dotted=mark == "planned",
        )
    elif mark in _SIGNS:
        _pill(painter, theme, middle.x(), middle.y(), mark)
    elif mark == "pair":
        painter.setPen(pen(theme["frame_edge"], 1.2))
        painter.setBrush(colour(theme["frame"]))
        painter.drawRoundedRect(rect.adjusted(0, 2, 0, -2), 10, 10)
        reciprocal(painter, middle.x(), middle.y(), 9, theme["ink_soft"])
    elif mark in ("seed line", "pollen line", "odds", "loop", "lit"):
        _line(painter, mark, theme, rect)
    elif mark == "open end":
        end = OpenEnd("", "pollen", 1.0, middle.x(), rect.bottom(), 20)
        draw_open_end(painter, end, theme, detail=1.0, orientation="down")
    elif mark == "selfings":
        sign(painter, "selfing", middle.x() - 6, middle.y(), 5, theme["ink_soft"])
        painter.setFont(font(theme, 11, strong=True))
        painter.setPen(colour(theme["ink_soft"]))
        painter.drawText(QPointF(middle.x() + 3, middle.y() + 4), "4")
    else:
        _tag(painter, mark, theme, rect)


def _ramp(painter: QPainter, entry: Entry, theme: Theme, rect: QRectF) -> None:
    """A scale with the numbers at its ends."""
    bar = QRectF(rect.left() + 2, rect.top() + 3, rect.width() - 4, 13)
    each = bar.width() / len(entry.ramp)
    for at, shade in enumerate(entry.ramp):
        part = QRectF(bar.left() + at * each, bar.top(), each + 0.6, bar.height())
        painter.fillRect(part.intersected(bar), colour(shade))
    painter.setPen(pen(theme["paper_edge"], 0.8))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(bar)
    painter.setFont(font(theme, 10))
    painter.setPen(colour(theme["ink_soft"]))
    below = QRectF(bar.left(), bar.bottom() + 2, bar.width(), 13)
    for text, side in zip(
        entry.ends, (Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignRight), strict=True
    ):
        painter.drawText(below, side | Qt.AlignmentFlag.AlignTop, text)


def _pill(
    painter: QPainter, theme: Theme, x: float, y: float, kind: Sign, *, dotted: bool = False
) -> None:
    half = sizes().knot_height / 2
    style = Qt.PenStyle.DotLine if dotted else Qt.PenStyle.SolidLine
    painter.setPen(pen(theme["knot_edge"], 1.3, style))
    painter.setBrush(colour(theme["knot"]))
    painter.drawRoundedRect(QRectF(x - half, y - half, 2 * half, 2 * half), 6, 6)
    sign(painter, kind, x, y, 6.6, theme["ink"])


def _line(painter: QPainter, mark: str, theme: Theme, rect: QRectF) -> None:
    y = rect.center().y()
    role: Role = "seed" if mark in ("seed line", "lit") else "pollen"
    points = ((rect.left() + 3, y), (rect.right() - 3, y))
    link = Link("", "", role, "")
    line = Line("", role, 1.0, mark != "odds", mark == "loop", ((link, points),))
    if mark == "lit":
        draw_route(painter, line, points, theme, 1.0)
        return
    draw_stroke(painter, strokes_of(line), theme, detail=1.0)
    if mark == "loop":
        draw_loop_words(painter, points, theme, detail=0.3, orientation="right")
    if mark == "odds":
        painter.setFont(font(theme, 10, strong=True))
        painter.setPen(colour(theme["ink_soft"]))
        painter.drawText(QPointF(rect.center().x() - 8, y - 5), "0.5")


_TAGS: dict[str, dict[str, object]] = {
    "pool": {"pool": True},
    "kept": {"status": "kept"},
    "culled": {"status": "culled"},
    "withheld": {"withheld": "own_ancestor", "inbreeding": None},
    "unknown share": {"shares": (("a", 0.4),), "unknown_share": 0.6},
    "pack": {"sort": "pack", "title": "12", "subtitle": ""},
    "chain": {"sort": "chain", "selfings": 5},
    "tabs": {"more_down": 4},
    "ghost": {"ghost": True},
}


def _tag(painter: QPainter, mark: str, theme: Theme, rect: QRectF) -> None:
    values: dict[str, object] = {
        "key": "",
        "sort": "tag",
        "row": 0,
        "codes": ("P-12",),
        "title": "P-12",
        "subtitle": "F2",
        "inbreeding": 0.5,
        "shares": (("a", 0.5), ("b", 0.5)),
    }
    values.update(_TAGS.get(mark, {}))
    block = Block(**values)  # type: ignore[arg-type]
    scale = 0.54
    painter.save()
    painter.translate(rect.left() + 4, rect.center().y() - 16)
    painter.scale(scale, scale)
    draw_tag(
        painter,
        block,
        QRectF(0, 0, 108, 60),
        theme,
        {"a": 0, "b": 1},
        detail=0.75 if mark == "chain" else 0.5,
        dress=Dress(
            focus=mark == "focus",
            selected=mark == "selected",
            pin=int(mark == "pin"),
            back=mark == "aside",
            tint=theme["bar_empty"] if mark == "tint" else "",
        ),
    )
    painter.restore()
