"""Tags while a picture moves: each is painted once and then carried along as an image.

A frame of a move is due every few milliseconds, and the outline of a tag takes long to paint.
"""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.tags import Dress, draw_tag
from pedigreeview.drawing.theme import Theme

__all__ = ["draw_moving", "rested"]

_HELD = "moving"
_EDGE = 36.0
"""Room around a tag for its rings, its tabs and the edges behind it, in picture units."""


def draw_moving(
    painter: QPainter,
    placed: Placed,
    block: Block,
    rect: QRectF,
    theme: Theme,
    numbers: dict[str, int],
    detail: float,
    dress: Dress,
) -> None:
    """One tag of a picture that moves; the scale may change on the way, the image does not."""
    held: dict[tuple[str, str, Dress], QImage] = placed.held.setdefault(_HELD, {})
    around = rect.adjusted(-_EDGE, -_EDGE, _EDGE, _EDGE)
    key = (block.key, theme.name, dress)
    image = held.get(key)
    if image is None:
        scale = detail * painter.device().devicePixelRatio()
        wide, high = round(around.width() * scale), round(around.height() * scale)
        image = QImage(max(wide, 1), max(high, 1), QImage.Format.Format_ARGB32_Premultiplied)
        image.fill(0)
        inner = QPainter(image)
        try:
            inner.setRenderHint(QPainter.RenderHint.Antialiasing)
            inner.setRenderHint(QPainter.RenderHint.TextAntialiasing)
            inner.scale(image.width() / around.width(), image.height() / around.height())
            inner.translate(-around.left(), -around.top())
            draw_tag(inner, block, rect, theme, numbers, detail=detail, dress=dress)
        finally:
            inner.end()
        held[key] = image
    painter.drawImage(around, image)


def rested(placed: Placed) -> None:
    """Let go of the images of a picture that moves no longer."""
    placed.held.pop(_HELD, None)
