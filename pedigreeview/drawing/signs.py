"""The trade's signs as shapes, so that none depends on a font that may lack it.

× cross, ⊗ selfing, ○ open-pollinated, ⇄ reciprocal pair, ♀ and ♂, and plain ones for plants that
came from one other plant or pool.
"""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from pedigreeview.drawing.blocks import Sign

__all__ = ["chevron", "colour", "female", "male", "pen", "reciprocal", "sign"]


@lru_cache(maxsize=512)
def colour(value: str, opacity: float = 1.0) -> QColor:
    """A QColor of '#rrggbb', with an opacity."""
    found = QColor(value)
    found.setAlphaF(opacity)
    return found


def pen(value: str, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
    """A pen with round ends and joints."""
    return QPen(colour(value), width, style, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)


def sign(painter: QPainter, kind: Sign, x: float, y: float, size: float, ink: str) -> None:
    """The sign of a knot, about its middle; `size` is half its height."""
    painter.setPen(pen(ink, max(1.2, size * 0.26)))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    middle = QPointF(x, y)
    if kind == "cross":
        _saltire(painter, x, y, size * 0.68)
    elif kind == "selfing":
        painter.drawEllipse(middle, size, size)
        _saltire(painter, x, y, size * 0.5)
    elif kind == "open":
        painter.drawEllipse(middle, size * 0.82, size * 0.82)
    elif kind == "clone":
        for shift in (-0.32, 0.32):
            painter.drawLine(
                QPointF(x - size * 0.8, y + size * shift), QPointF(x + size * 0.8, y + size * shift)
            )
    elif kind == "seed":
        painter.setBrush(colour(ink))
        painter.drawPath(_seed(x, y, size * 0.85))
    elif kind == "sibbed":
        for shift in (-0.4, 0.4):
            painter.drawEllipse(QPointF(x + size * shift, y), size * 0.6, size * 0.6)
    else:
        for shift in (-0.34, 0.34):
            painter.drawLine(
                QPointF(x + size * shift, y - size * 0.8), QPointF(x + size * shift, y + size * 0.8)
            )


def _saltire(painter: QPainter, x: float, y: float, half: float) -> None:
    painter.drawLine(QLineF(x - half, y - half, x + half, y + half))
    painter.drawLine(QLineF(x - half, y + half, x + half, y - half))


def _seed(x: float, y: float, size: float) -> QPainterPath:
    path = QPainterPath(QPointF(x, y - size))
    path.cubicTo(x + size * 0.9, y - size * 0.1, x + size * 0.6, y + size, x, y + size)
    path.cubicTo(x - size * 0.6, y + size, x - size * 0.9, y - size * 0.1, x, y - size)
    return path


def reciprocal(painter: QPainter, x: float, y: float, size: float, ink: str) -> None:
    """⇄: two arrows, one each way."""
    painter.setPen(pen(ink, 1.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    head = size * 0.34
    for shift, way in ((-size * 0.36, 1), (size * 0.36, -1)):
        tip = QPointF(x + way * size, y + shift)
        painter.drawLine(QPointF(x - way * size, y + shift), tip)
        painter.drawPolyline(
            QPolygonF(
                [
                    QPointF(tip.x() - way * head, tip.y() - head),
                    tip,
                    QPointF(tip.x() - way * head, tip.y() + head),
                ]
            )
        )


def female(painter: QPainter, x: float, y: float, size: float, ink: str) -> None:
    """♀ about its middle; `size` is its whole height."""
    painter.setPen(pen(ink, 1.1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    radius = size * 0.29
    top = y - size / 2 + radius
    painter.drawEllipse(QPointF(x, top), radius, radius)
    painter.drawLine(QPointF(x, top + radius), QPointF(x, y + size / 2))
    arm = top + radius + (y + size / 2 - top - radius) * 0.5
    painter.drawLine(QPointF(x - radius * 0.8, arm), QPointF(x + radius * 0.8, arm))


def male(painter: QPainter, x: float, y: float, size: float, ink: str) -> None:
    """♂ about its middle; `size` is its whole height."""
    painter.setPen(pen(ink, 1.1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    radius = size * 0.29
    cx, cy = x - size * 0.12, y + size * 0.12
    painter.drawEllipse(QPointF(cx, cy), radius, radius)
    tip = QPointF(x + size * 0.42, y - size * 0.42)
    painter.drawLine(QPointF(cx + radius * 0.7, cy - radius * 0.7), tip)
    painter.drawLine(QPointF(tip.x() - size * 0.28, tip.y()), tip)
    painter.drawLine(QPointF(tip.x(), tip.y() + size * 0.28), tip)


def chevron(painter: QPainter, rect: QRectF, up: bool, ink: str, size: float = 1.0) -> None:
    """A small arrowhead that says more lies that way."""
    painter.setPen(pen(ink, 1.3 * size))
    x, y = rect.center().x(), rect.center().y()
    way = -size if up else size
    painter.drawPolyline(
        QPolygonF(
            [
                QPointF(x - 3 * size, y - 1.5 * way),
                QPointF(x, y + 1.5 * way),
                QPointF(x + 3 * size, y - 1.5 * way),
            ]
        )
    )
