"""The seed tag: a paper label with one clipped corner and a punched hole; packs and chains too."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPainterPath

from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.patterns import hatch, share
from pedigreeview.drawing.signs import chevron, colour, pen, sign
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, sizes

__all__ = [
    "FAR",
    "MIDDLE",
    "NEAR",
    "Dress",
    "draw_tag",
    "elided",
    "font",
    "pin_letter",
    "tab_rects",
    "tag_path",
]

FAR = 0.16
"""Scale below which a tag is a filled shape."""
MIDDLE = 0.6
"""Scale below which a tag carries its code alone, in larger type."""
NEAR = 0.55
"""Scale from which the signs of the sexes and small figures show."""


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
    """The text, shortened with an ellipsis to the width."""
    return _elided(theme.fonts, size, strong, tell(text), width)


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


def tab_rects(block: Block, rect: QRectF) -> tuple[QRectF | None, QRectF | None]:
    """The small tabs that say there is more above and below, where the tag has them."""
    up = down = None
    if block.more_up:
        up = QRectF(rect.left() + sizes().stripe + 6, rect.top() - 11, 22, 11)
    if block.more_down:
        wide = 16.0 + 6.0 * len(str(block.more_down))
        down = QRectF(rect.right() - wide - 8, rect.bottom(), wide, 13)
    return up, down


def draw_tag(
    painter: QPainter,
    block: Block,
    rect: QRectF,
    theme: Theme,
    numbers: dict[str, int],
    *,
    detail: float = 1.0,
    dress: Dress | None = None,
) -> None:
    """One tag, pack or chain.

    numbers : each founder's number in the palette
    detail : scale of the picture, which decides what is worth drawing
    """
    dress = dress or Dress()
    before = painter.opacity()
    faded = block.status in ("culled", "lost")
    if (dress.faint or dress.back or faded) and detail >= FAR:
        # An opaque sheet beneath, or the lines behind the tag would shine through.
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour(theme["band"]))
        painter.drawPath(tag_path(rect, sizes().corner, notch=block.status == "kept"))
    if block.ghost:
        _ghost(painter, block, rect, theme, numbers, dress, detail)
        _rings(painter, rect, theme, dress, detail)
        return
    if dress.faint:
        painter.setOpacity(before * 0.28)
    elif dress.back:
        before = before * 0.4
        painter.setOpacity(before)
    elif faded:
        painter.setOpacity(before * 0.5)
    if detail < FAR:
        _far(painter, block, rect, theme, numbers, dress)
    else:
        _paper(painter, block, rect, theme, dress, hole=detail >= MIDDLE)
        if not dress.faint:
            # Faded, one founder's stripe could pass for another's.
            painter.setOpacity(before)
        _stripe(painter, block, rect, theme, numbers)
        if faded and not dress.faint:
            painter.setOpacity(before * 0.5)
        _fixation_bar(painter, block, rect, theme)
        if faded and not dress.faint:
            painter.setOpacity(before * 0.9)
        _text(painter, block, rect, theme, detail, dress)
        if detail >= 0.35:
            _tabs(painter, block, rect, theme)
    painter.setOpacity(before / 0.4 if dress.back and not dress.faint else before)
    _rings(painter, rect, theme, dress, detail)


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
    fill = dress.tint or theme["paper"]
    painter.fillRect(rect, colour(fill))
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
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(theme["paper_shadow"]))
    painter.drawPath(tag_path(rect.translated(0, 1.6), corner, notch=block.status == "kept"))
    painter.setPen(pen(edge, 1.6 if dress.hover else 1.0))
    painter.setBrush(colour(dress.tint or theme["paper"]))
    painter.drawPath(tag_path(rect, corner, notch=block.status == "kept"))
    if not hole:
        # Larger type takes its place.
        return
    spot = QPointF(rect.right() - 15, rect.top() + 15)
    painter.setBrush(colour(theme["ground"]))
    painter.drawEllipse(spot, 3.2, 3.2)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(spot, 5.6, 5.6)


def _stripe(
    painter: QPainter, block: Block, rect: QRectF, theme: Theme, numbers: dict[str, int]
) -> None:
    inner = QRectF(rect.left() + 0.5, rect.top() + 0.5, sizes().stripe, rect.height() - 1.0)
    if block.withheld:
        hatch(painter, inner, theme["ink_soft"], 4.0, way=1, width=0.8)
        return
    y = inner.top()
    shares = sorted(block.shares, key=lambda item: numbers.get(item[0], 99) % 99)
    for at, (founder, part) in enumerate(shares):
        high = inner.height() * part
        if at == len(shares) - 1 and block.unknown_share < 1e-9:
            high = inner.bottom() - y
        part_rect = QRectF(inner.left(), y, inner.width(), high)
        share(painter, part_rect, numbers.get(founder, -1), theme, initial=founder[:1])
        y += high
        if y < inner.bottom() - 0.5:
            painter.fillRect(
                QRectF(inner.left(), y - 0.5, inner.width(), 1.0), colour(theme["paper"])
            )
    if block.unknown_share > 1e-9:
        rest = QRectF(inner.left(), y, inner.width(), inner.bottom() - y)
        painter.fillRect(rest, colour(theme["unknown"]))
        hatch(painter, rest, theme["line_soft"], 5.0, way=1, width=0.7)
    painter.setPen(pen(theme["paper_edge"], 0.8))
    painter.drawLine(QPointF(inner.right(), rect.top()), QPointF(inner.right(), rect.bottom()))


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
        size, line = (20.0, 28.0) if dress.word else (22.0, 35.0)
        room = rect.right() - left - 6
        painter.setFont(font(theme, size, strong=True))
        painter.drawText(
            QPointF(left, rect.top() + line), elided(theme, size, block.title, room, strong=True)
        )
        if dress.word:
            painter.setFont(font(theme, 16.0))
            painter.drawText(QPointF(left, rect.top() + 47), elided(theme, 16.0, dress.word, room))
        return
    size = measures.code_type
    painter.setFont(font(theme, size, strong=True))
    painter.drawText(
        QPointF(left, rect.top() + 23), elided(theme, size, block.title, room, strong=True)
    )
    size = measures.name_type
    line = rect.top() + 40
    below = block.subtitle or block.generation_name
    room = rect.right() - left - (14 if block.status == "kept" else 8)
    room -= _value(painter, theme, dress, QPointF(left + room, line), room)
    # On a deep tint the softer ink could not be read.
    ink = theme["ink"] if dress.tint else theme["ink_soft"]
    painter.setPen(colour(ink))
    if block.sort == "chain":
        sign(painter, "selfing", left + 5, line - 4, 5, ink)
        painter.setPen(colour(ink))
        below = f"{block.selfings} selfings"
        left, room = left + 15, room - 15
    painter.setFont(font(theme, size))
    if below:
        painter.drawText(QPointF(left, line), elided(theme, size, below, room))


def _value(painter: QPainter, theme: Theme, dress: Dress, end: QPointF, room: float) -> float:
    """The value behind the tint, at the right end of the second line; the room that it takes."""
    if not dress.word:
        return 0.0
    size = sizes().name_type
    patched = theme.patterned and dress.mark >= 0
    patch = 16.0 if patched else 0.0
    text = elided(theme, size, dress.word, room * 0.62 - patch, strong=True)
    type_ = font(theme, size, strong=True)
    wide = QFontMetricsF(type_).horizontalAdvance(text)
    painter.setFont(type_)
    painter.setPen(colour(theme["ink"]))
    painter.drawText(QPointF(end.x() - wide, end.y()), text)
    if patched:
        spot = QRectF(end.x() - wide - patch, end.y() - 9.5, 12, 10)
        share(painter, spot, dress.mark, theme)
    return wide + patch + 8.0


def _tabs(painter: QPainter, block: Block, rect: QRectF, theme: Theme) -> None:
    up, down = tab_rects(block, rect)
    for tab, upwards in ((up, True), (down, False)):
        if tab is None:
            continue
        painter.setPen(pen(theme["paper_edge"], 1.0))
        painter.setBrush(colour(theme["paper_behind"]))
        painter.drawRoundedRect(tab, 3, 3)
        head = QRectF(tab.left(), tab.top(), 14 if not upwards else tab.width(), tab.height())
        chevron(painter, head, upwards, theme["ink_soft"])
        if not upwards:
            painter.setFont(font(theme, 9.5))
            painter.setPen(colour(theme["ink_soft"]))
            painter.drawText(QPointF(tab.left() + 13, tab.bottom() - 3), str(block.more_down))


def _rings(painter: QPainter, rect: QRectF, theme: Theme, dress: Dress, detail: float) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    thick = max(2.4, 1.4 / max(detail, 0.02))
    if dress.focus:
        painter.setPen(pen(theme["accent"], thick))
        painter.drawPath(tag_path(rect.adjusted(-5, -5, 5, 5), sizes().corner + 3))
    marked = dress.selected and not dress.focus
    if marked or dress.lit:
        wide = 9 if dress.focus else 5
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
