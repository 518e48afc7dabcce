"""The seed tag: a paper label with one clipped corner and a punched hole; packs and chains too."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QLinearGradient,
    QPainter,
    QPainterPath,
)

from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.founder_marks import marks_of
from pedigreeview.drawing.patterns import hatch, outlined, share
from pedigreeview.drawing.signs import chevron, colour, pen, sign
from pedigreeview.drawing.tabs import TAB_TYPE, has_chevron, tab_number, tab_rects
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, mixed, sizes, softened

__all__ = [
    "BACK",
    "FAR",
    "FAR_CODE",
    "MIDDLE",
    "NEAR",
    "Dress",
    "draw_swatch",
    "draw_tabs",
    "draw_tag",
    "elided",
    "font",
    "pin_letter",
    "shortened",
    "tab_rects",
    "tag_path",
]

FAR = 0.16
"""Scale below which a tag is a filled shape."""
MIDDLE = 0.6
"""Scale below which a tag carries its code alone, in larger type."""
FAR_CODE = 22.0
"""Type of the code on a tag that carries nothing else."""
_TABS = 0.35
"""Scale from which tabs are drawn."""
NEAR = 0.55
"""Scale from which the signs of the sexes and small figures show."""


_FAINT = 0.28
"""Strength of a tag beside the paths that are lit."""
BACK = 0.4
"""Strength of what is put back."""
_RING = 3.2
"""Pixels that the ring about the focus is thick at least."""


@dataclass(frozen=True, slots=True)
class Dress:
    """How one tag is shown at the moment."""

    focus: bool = False
    selected: bool = False
    hover: bool = False
    pin: int = 0
    """1 or more: the number of the pin."""
    faint: bool = False
    """Not on the paths that are lit."""
    lit: bool = False
    tint: str = ""
    mixed: tuple[tuple[str, float], ...] = ()
    """Of a pack whose plants differ: their tints with their parts of it, in place of one tint."""
    back: bool = False
    """Put back by a filter, or beside the way that is looked along."""
    word: str = ""
    """The value behind the tint."""
    mark: int = -1
    """Number of the pattern that stands for the tint in the grey theme; -1 for none."""


@lru_cache(maxsize=256)
def _font(families: tuple[str, ...], size: float, strong: bool) -> QFont:
    found = QFont()
    found.setFamilies(list(families))
    # Pixels, not points: a point is another size on each device that the picture is painted on.
    found.setPixelSize(max(1, round(size)))
    found.setWeight(QFont.Weight.Bold if strong else QFont.Weight.Normal)
    return found


def font(theme: Theme, size: float, *, strong: bool = False) -> QFont:
    """The type of the picture in one size, in picture units."""
    return _font(theme.fonts, size, strong)


@lru_cache(maxsize=4096)
def _elided(families: tuple[str, ...], size: float, strong: bool, text: str, width: float) -> str:
    metrics = QFontMetricsF(_font(families, size, strong))
    return metrics.elidedText(text, Qt.TextElideMode.ElideRight, width)


def elided(theme: Theme, size: float, text: str, width: float, *, strong: bool = False) -> str:
    """The program's text as it is told, shortened with an ellipsis to the width."""
    return _elided(theme.fonts, size, strong, tell(text), width)


def shortened(theme: Theme, size: float, text: str, width: float, *, strong: bool = False) -> str:
    """The same of a text that is the person's own, as a code or a name: it is never translated."""
    return _elided(theme.fonts, size, strong, text, width)


def pin_letter(at: int) -> str:
    """The letter of a pin, A for the first: beyond Z it goes on with AA."""
    letters = ""
    at += 1
    while at > 0:
        at, rest = divmod(at - 1, 26)
        letters = chr(65 + rest) + letters
    return letters


def tag_path(rect: QRectF, corner: float, *, notch: bool = False) -> QPainterPath:
    """Outline of a tag: the upper right corner clipped; a notch in the right edge when kept."""
    path = QPainterPath(rect.topLeft())
    path.lineTo(rect.right() - corner, rect.top())
    path.lineTo(rect.right(), rect.top() + corner)
    if notch:
        y = rect.top() + rect.height() * 0.62
        path.lineTo(rect.right(), y - 7)
        path.lineTo(rect.right() - 9, y)
        path.lineTo(rect.right(), y + 7)
    path.lineTo(rect.right(), rect.bottom() - 3)
    path.quadTo(rect.right(), rect.bottom(), rect.right() - 3, rect.bottom())
    path.lineTo(rect.left(), rect.bottom())
    path.closeSubpath()
    return path


def draw_swatch(painter: QPainter, rect: QRectF, theme: Theme, dress: Dress) -> None:
    """A small tag as one of a class of a tint looks, for a key: drawn as the tags are."""
    painter.setPen(pen(theme["paper_edge"], 1.0))
    painter.setBrush(_tinted(rect, theme, dress))
    painter.drawPath(tag_path(rect, min(6.0, rect.height() * 0.3)))
    if theme.patterned and dress.mark >= 0:
        _mark(painter, rect.center(), theme, dress.mark)


def _tinted(rect: QRectF, theme: Theme, dress: Dress) -> QBrush:
    """The paper of a tag: plain, of one tint, or parted among several side by side."""
    if not dress.mixed:
        return QBrush(colour(dress.tint or theme["paper"]))
    found = QLinearGradient(rect.left(), 0, rect.right(), 0)
    start = 0.0
    for shade, part in dress.mixed:
        end = min(start + part, 1.0)
        found.setColorAt(min(start + 1e-4, end), colour(shade))
        found.setColorAt(end, colour(shade))
        start = end
    return QBrush(found)


def _mark(painter: QPainter, middle: QPointF, theme: Theme, number: int) -> None:
    """The pattern that stands for a class where colours cannot."""
    share(painter, QRectF(middle.x() - 6, middle.y() - 5, 12, 10), number, theme)


def draw_tag(
    painter: QPainter,
    block: Block,
    rect: QRectF,
    theme: Theme,
    numbers: dict[str, int],
    *,
    detail: float = 1.0,
    dress: Dress | None = None,
    tabs: bool = True,
) -> None:
    """One tag, pack or chain.

    numbers : each founder's number in the palette
    detail : scale of the picture, which decides what is worth drawing
    tabs : whether with its tabs; else `draw_tabs` draws them, above the rings of its neighbours
    """
    dress = dress or Dress()
    if block.ghost:
        _ghost(painter, block, rect, theme, numbers, dress, detail)
        _rings(painter, rect, theme, dress, detail)
        return
    # The focus is never faded, whatever became of it.
    faded = block.status in ("culled", "lost") and not dress.focus
    most = _strength(dress)
    # A tint stays as the key shows it.
    plain_paper = not (dress.tint or dress.mixed)
    paper = 0.5 if faded and plain_paper and most == 1.0 else most
    if paper < 1.0:
        shades = tuple((mixed(theme["band"], one, paper), part) for one, part in dress.mixed)
        tint = mixed(theme["band"], dress.tint, paper) if dress.tint else ""
        dress = replace(dress, tint=tint, mixed=shades)
    sheet, plain = _soft(theme, paper), _soft(theme, most)
    gone = faded and not dress.faint
    if detail < FAR:
        _far(painter, block, rect, sheet, numbers, dress)
    else:
        _paper(painter, block, rect, sheet, dress, hole=detail >= MIDDLE)
        # Faded because it is culled, one founder's stripe could pass for another's.
        _stripe(painter, block, rect, plain, numbers, apart=_apart(dress, detail))
        _fixation_bar(painter, block, rect, _soft(theme, most * (0.5 if gone else 1.0)))
        _text(painter, block, rect, _soft(theme, most * (0.9 if gone else 1.0)), detail, dress)
    _rings(painter, rect, theme, dress, detail)
    if tabs:
        # On the rings, which would run through their numbers.
        draw_tabs(painter, block, rect, theme, detail=detail, dress=dress)


def _strength(dress: Dress) -> float:
    return _FAINT if dress.faint else BACK if dress.back else 1.0


def _soft(theme: Theme, share: float) -> Theme:
    return theme if share >= 1.0 else softened(theme, round(share, 3))


def _ghost(
    painter: QPainter,
    block: Block,
    rect: QRectF,
    theme: Theme,
    numbers: dict[str, int],
    dress: Dress,
    detail: float,
) -> None:
    """A tag that is only thought of: no paper, a dashed edge, its numbers in words."""
    painter.setPen(pen(theme["select"], max(1.4, 1.0 / max(detail, 0.05)), Qt.PenStyle.DashLine))
    painter.setBrush(colour(theme["band"]))
    painter.drawPath(tag_path(rect, sizes().corner))
    if detail < FAR:
        return
    _stripe(painter, block, rect, theme, numbers)
    _fixation_bar(painter, block, rect, theme)
    _text(painter, block, rect, theme, detail, dress)


def _far(
    painter: QPainter,
    block: Block,
    rect: QRectF,
    theme: Theme,
    numbers: dict[str, int],
    dress: Dress,
) -> None:
    painter.fillRect(rect, _tinted(rect, theme, dress))
    if block.shares:
        top = max(block.shares, key=lambda item: item[1])[0]
        edge = QRectF(rect.left(), rect.top(), rect.width() * 0.3, rect.height())
        painter.fillRect(edge, colour(theme.founder(numbers.get(top, -1))))


def _paper(
    painter: QPainter, block: Block, rect: QRectF, theme: Theme, dress: Dress, *, hole: bool
) -> None:
    corner = sizes().corner
    edge = theme["ink_soft"] if dress.hover else theme["paper_edge"]
    behind = 2 if block.sort == "pack" else 1 if block.pool else 0
    for step in range(behind, 0, -1):
        moved = rect.translated(4.0 * step, -4.0 * step)
        painter.setPen(pen(theme["paper_edge"], 1.0))
        painter.setBrush(colour(theme["paper_behind"]))
        painter.drawPath(tag_path(moved, corner))
    # Of a shadow below only this rim would show; outlines are dear to paint.
    rim = QRectF(rect.left() + 0.5, rect.bottom(), rect.width() - 3.0, 1.6)
    painter.fillRect(rim, colour(theme["paper_shadow"]))
    painter.setPen(pen(edge, 1.6 if dress.hover else 1.0))
    painter.setBrush(_tinted(rect, theme, dress))
    painter.drawPath(tag_path(rect, corner, notch=block.status == "kept"))
    if not hole:
        # Larger type takes its place.
        return
    spot = QPointF(rect.right() - 15, rect.top() + 15)
    painter.setBrush(colour(theme["ground"]))
    painter.drawEllipse(spot, 3.2, 3.2)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(spot, 5.6, 5.6)


def _apart(dress: Dress, detail: float) -> float:
    """Width of the paper left free between the founders' edge and a tint, a pixel at least."""
    return max(1.2, 1.0 / max(detail, 0.1)) if dress.tint or dress.mixed else 0.0


def _stripe(
    painter: QPainter,
    block: Block,
    rect: QRectF,
    theme: Theme,
    numbers: dict[str, int],
    *,
    apart: float = 0.0,
) -> None:
    inner = QRectF(rect.left() + 0.5, rect.top() + 0.5, sizes().stripe, rect.height() - 1.0)
    if apart:
        gap = QRectF(inner.right(), inner.top(), apart, inner.height())
        painter.fillRect(gap, colour(theme["paper"]))
    if block.withheld:
        hatch(painter, inner, theme["ink_soft"], 4.0, way=1, width=0.8)
        return
    y, known = inner.top(), block.unknown_share < 1e-9
    left, wide, bottom, whole = inner.left(), inner.width(), inner.bottom(), inner.height()
    marks = marks_of(numbers.items()) if theme.patterned else {}
    own = tuple([numbers.get(founder, _NO_NUMBER) for founder, _ in block.shares])
    parts = _parts(block.shares, own, theme.founders, theme["others"], theme["paper"])
    last, paper = len(parts) - 1, colour(theme["paper"])
    for at, one in enumerate(parts):
        high = bottom - y if at == last and known else whole * one.part
        part_rect = QRectF(left, y, wide, high)
        if (theme.patterned and one.number >= 0) or (one.edged and high > 2):
            initial = marks.get(one.founder, "")
            share(painter, part_rect, one.number, theme, initial=initial)
        else:
            painter.fillRect(part_rect, one.fill)
        y += high
        if y < bottom - 0.5:
            painter.fillRect(QRectF(left, y - 0.5, wide, 1.0), paper)
    if block.unknown_share > 1e-9:
        rest = QRectF(inner.left(), y, inner.width(), inner.bottom() - y)
        painter.fillRect(rest, colour(theme["unknown"]))
        hatch(painter, rest, theme["line_soft"], 5.0, way=1, width=0.7)
    painter.setPen(pen(theme["paper_edge"], 0.8))
    painter.drawLine(QPointF(inner.right(), rect.top()), QPointF(inner.right(), rect.bottom()))


_NO_NUMBER = 99
"""Stands for a founder without a number of its own in the palette."""


@dataclass(frozen=True, slots=True)
class _Part:
    """One founder's part of an edge."""

    founder: str
    number: int
    part: float
    fill: QColor
    edged: bool
    """Whether its colour needs an outline on the paper."""


@lru_cache(maxsize=2048)
def _parts(
    shares: tuple[tuple[str, float], ...],
    numbers: tuple[int, ...],
    inks: tuple[str, ...],
    others: str,
    paper: str,
) -> tuple[_Part, ...]:
    """The parts of an edge from above, the others last.

    numbers : of the founders of `shares` in the palette
    inks, others, paper : of the theme
    """
    found = []
    for (founder, part), number in sorted(
        zip(shares, numbers, strict=True), key=lambda one: one[1] % _NO_NUMBER
    ):
        number = -1 if number == _NO_NUMBER else number
        ink = inks[number] if 0 <= number < len(inks) else others
        found.append(_Part(founder, number, part, colour(ink), outlined(ink, paper)))
    return tuple(found)


def _fixation_bar(painter: QPainter, block: Block, rect: QRectF, theme: Theme) -> None:
    measures = sizes()
    left = rect.left() + measures.stripe + 8
    bar = QRectF(left, rect.bottom() - measures.bar - 5, rect.right() - 9 - left, measures.bar)
    if block.inbreeding is None:
        painter.fillRect(bar, colour(theme["paper"]))
        hatch(painter, bar, theme["ink_soft"], 4.0, way=1, width=0.9)
        painter.setPen(pen(theme["ink_soft"], 0.7))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(bar)
        return
    painter.fillRect(bar, colour(theme["bar_empty"]))
    part = min(max(block.inbreeding, 0.0), 1.0)
    if part:
        painter.fillRect(
            QRectF(bar.left(), bar.top(), bar.width() * part, bar.height()),
            colour(theme["bar_full"]),
        )


def _text(
    painter: QPainter, block: Block, rect: QRectF, theme: Theme, detail: float, dress: Dress
) -> None:
    measures = sizes()
    left = rect.left() + measures.stripe + 8
    room = rect.right() - left - 26
    painter.setPen(colour(theme["ink"]))
    if detail < MIDDLE:
        size, line = (20.0, 28.0) if dress.word else (FAR_CODE, 35.0)
        room = rect.right() - left - 6
        painter.setFont(font(theme, size, strong=True))
        painter.drawText(QPointF(left, rect.top() + line), _title(block, theme, size, room))
        if dress.word:
            painter.setFont(font(theme, 16.0))
            painter.drawText(QPointF(left, rect.top() + 47), elided(theme, 16.0, dress.word, room))
        return
    size = measures.code_type
    painter.setFont(font(theme, size, strong=True))
    painter.drawText(QPointF(left, rect.top() + 23), _title(block, theme, size, room))
    size = measures.name_type
    line = rect.top() + 40
    below = _second_line(block)
    room = rect.right() - left - (14 if block.status == "kept" else 8)
    wide = _value(painter, theme, dress, QPointF(left, line), room * 0.62 if below else room)
    left, room = left + wide, room - wide
    # On a deep tint the softer ink could not be read.
    ink = theme["ink"] if dress.tint or dress.mixed else theme["ink_soft"]
    painter.setPen(colour(ink))
    if block.sort == "chain":
        sign(painter, "selfing", left + 5, line - 4, 5, ink)
        painter.setPen(colour(ink))
        below = tell(f"{block.selfings} selfings")
        left, room = left + 15, room - 15
    painter.setFont(font(theme, size))
    if below and room > size:
        painter.drawText(QPointF(left, line), shortened(theme, size, below, room))


def _title(block: Block, theme: Theme, size: float, room: float) -> str:
    """The code as it is; what a pack is called, in short where that has no room."""
    if block.sort != "pack":
        return shortened(theme, size, block.title, room, strong=True)
    told = tell(block.title)
    if QFontMetricsF(font(theme, size, strong=True)).horizontalAdvance(told) > room:
        count, _, rest = block.title.partition(" ")
        return f"+{count}" if rest.startswith("more") else f"{count} …"
    return told


def _second_line(block: Block) -> str:
    """Name or generation of a plant; of a founder that it is one; what a pack holds."""
    if not block.subtitle:
        return block.generation_name
    if block.sort == "pack":
        return tell(block.subtitle)
    word, mark, name = block.subtitle.partition(" · ")
    return tell(word) + mark + name if word == "founder" else block.subtitle


def _value(painter: QPainter, theme: Theme, dress: Dress, start: QPointF, room: float) -> float:
    """The value behind the tint, always first on the second line; the room that it takes."""
    if not dress.word:
        return 0.0
    size = sizes().name_type
    patched = theme.patterned and dress.mark >= 0
    patch = 16.0 if patched else 0.0
    text = elided(theme, size, dress.word, room - patch, strong=True)
    type_ = font(theme, size, strong=True)
    wide = QFontMetricsF(type_).horizontalAdvance(text)
    painter.setFont(type_)
    painter.setPen(colour(theme["ink"]))
    painter.drawText(QPointF(start.x() + patch, start.y()), text)
    if patched:
        _mark(painter, QPointF(start.x() + 6, start.y() - 4.5), theme, dress.mark)
    return wide + patch + 8.0


def draw_tabs(
    painter: QPainter,
    block: Block,
    rect: QRectF,
    theme: Theme,
    *,
    detail: float = 1.0,
    dress: Dress | None = None,
) -> None:
    """The tabs of one tag, pack or chain; none on one that is only thought of."""
    if detail < _TABS or block.ghost or not (block.more_up or block.more_down):
        return
    theme = _soft(theme, _strength(dress or Dress()))
    up, down = tab_rects(block, rect, detail)
    for tab, upwards in ((up, True), (down, False)):
        if tab is None:
            continue
        large = tab.height() / (11 if upwards else 14)
        painter.setPen(pen(theme["paper_edge"], 1.0))
        painter.setBrush(colour(theme["paper_behind"]))
        painter.drawRoundedRect(tab, 3 * large, 3 * large)
        if upwards:
            chevron(painter, tab, upwards, theme["ink_soft"], large)
            continue
        room = tab
        if has_chevron(detail):
            head = QRectF(tab.left() + large, tab.top(), 11 * large, tab.height())
            chevron(painter, head, upwards, theme["ink_soft"], large)
            room = tab.adjusted(11.5 * large, 0, -large, 0)
        _number(painter, block, room, theme, detail)


def _number(painter: QPainter, block: Block, room: QRectF, theme: Theme, detail: float) -> None:
    """How much more there is, in the middle of its room; set narrower where it is wide."""
    number = tab_number(block.more_down, detail)
    type_ = font(theme, TAB_TYPE * number.large)
    # In the types of most machines digits are narrower than they may be.
    wide = QFontMetricsF(type_).horizontalAdvance(number.text)
    narrow = min(1.0, (room.width() - 1.8 * number.large) / max(wide, 1.0))
    painter.save()
    painter.translate(room.center())
    painter.scale(narrow, 1.0)
    painter.setFont(type_)
    painter.setPen(colour(theme["ink_soft"]))
    painter.drawText(
        QRectF(-room.width(), -room.height() / 2, 2 * room.width(), room.height()),
        Qt.AlignmentFlag.AlignCenter,
        number.text,
    )
    painter.restore()


def _focus_ring(painter: QPainter, rect: QRectF, theme: Theme, detail: float) -> None:
    """A ring with heavy corners on a faint glow: like no other line of the picture."""
    thick = max(_RING, _RING / max(detail, 0.03))
    around = rect.adjusted(-5, -5, 5, 5)
    outline = tag_path(around, sizes().corner + 3)
    if detail >= FAR:
        glow = pen(theme["accent"], thick + 12)
        glow.setColor(colour(theme["accent"], 0.26))
        painter.setPen(glow)
        painter.drawPath(outline)
    painter.setPen(pen(theme["accent"], thick))
    painter.drawPath(outline)
    if detail < FAR:
        return
    corner, arm = sizes().corner + 3, 13.0
    left, top, right, bottom = around.left(), around.top(), around.right(), around.bottom()
    heavy = QPainterPath(QPointF(left, top + arm))
    heavy.lineTo(left, top)
    heavy.lineTo(left + arm, top)
    heavy.moveTo(left, bottom - arm)
    heavy.lineTo(left, bottom)
    heavy.lineTo(left + arm, bottom)
    heavy.moveTo(right - arm, bottom)
    heavy.lineTo(right, bottom)
    heavy.lineTo(right, bottom - arm)
    heavy.moveTo(right - corner, top)
    heavy.lineTo(right, top + corner)
    painter.setPen(pen(theme["accent"], 1.7 * thick))
    painter.drawPath(heavy)


def _rings(painter: QPainter, rect: QRectF, theme: Theme, dress: Dress, detail: float) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    thick = max(2.4, 1.4 / max(detail, 0.02))
    if dress.focus:
        _focus_ring(painter, rect, theme, detail)
    marked = dress.selected and not dress.focus
    if marked or dress.lit:
        wide = 11 if dress.focus else 5
        painter.setPen(
            pen(
                theme["select"],
                thick * 0.8,
                Qt.PenStyle.DashLine if marked else Qt.PenStyle.SolidLine,
            )
        )
        painter.drawPath(
            tag_path(rect.adjusted(-wide, -wide, wide, wide), sizes().corner + wide / 2)
        )
    if dress.pin and detail >= FAR:
        spot = QPointF(rect.left() + 1, rect.top() - 1)
        painter.setPen(pen(theme["ground"], 1.5))
        painter.setBrush(colour(theme["select"]))
        painter.drawEllipse(spot, 8, 8)
        painter.setFont(font(theme, 10, strong=True))
        painter.setPen(colour(theme["ground"]))
        around = QRectF(spot.x() - 8, spot.y() - 8, 16, 16)
        painter.drawText(around, Qt.AlignmentFlag.AlignCenter, pin_letter(dress.pin - 1))
