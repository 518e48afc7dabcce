"""Painting the marks of labels and lists: text, signs, rules and boxes, black on white."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from pedigreeview.drawing.signs import colour, female, male, pen, sign
from pedigreeview.drawing.theme import Theme
from pedigreeview.reports.label_lines import Mark
from pedigreeview.reports.paper_type import paper_font

__all__ = ["paint_mark"]


def paint_mark(painter: QPainter, mark: Mark, theme: Theme) -> None:
    """One mark at its place, in tenths of a millimetre."""
    ink = theme["ink_soft"] if mark.soft else theme["ink"]
    if mark.what == "text":
        painter.setFont(paper_font(theme, mark.size, strong=mark.strong))
        painter.setPen(colour(ink))
        painter.drawText(QPointF(mark.x, mark.y + mark.baseline), mark.text)
        return
    if mark.what == "rule":
        painter.setPen(pen(ink, 1.2 if mark.soft else 1.6))
        painter.drawLine(QLineF(mark.x, mark.y, mark.x + mark.width, mark.y + mark.height))
        return
    if mark.what in ("box", "frame", "shade"):
        area = QRectF(mark.x, mark.y, mark.width, mark.height)
        if mark.what == "shade":
            painter.fillRect(area, colour(theme["paper_behind"]))
            return
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(pen(ink, 7.0 if mark.what == "frame" else 1.2))
        painter.drawRect(area)
        return
    x, y = mark.x + mark.width / 2, mark.y + mark.height / 2
    if mark.what in ("female", "male"):
        paint = female if mark.what == "female" else male
        # The signs are drawn for a screen at a height of about 12, with a line of 1.1.
        painter.save()
        painter.translate(x, y)
        scale = mark.height / 11.0
        painter.scale(scale, scale)
        paint(painter, 0.0, 0.0, 11.0, ink)
        painter.restore()
        return
    if mark.what == "cross" or mark.what == "selfing" or mark.what == "open":
        sign(painter, mark.what, x, y, mark.height / 2, ink)
