"""The pedigree of a report: the line alone, placed whichever way comes out larger, as a painter or
as SVG text for HTML."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize
from PySide6.QtGui import QPainter
from PySide6.QtSvg import QSvgGenerator

from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.blocks import View
from pedigreeview.drawing.folding import Picked, build
from pedigreeview.drawing.legend import legend_height, paint_legend
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.tags import FAR
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.report_model import Picture
from pedigreeview.reports.sheets import Matter, matter

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Fitted", "LinePicture", "line_picture", "line_view", "picture_svg"]

_LEGEND = 0.62
"""Size of the legend on paper; of the picture 1 is full size."""
_GAP = 16.0
_FULL = 0.72
"""The largest size of a picture on paper: beyond it a tag is larger than it need be."""
_NAMES = 44.0
"""Room for the names of the generations, which keep their size in a smaller picture."""
_EASY = 0.62
"""Size of a picture at which its codes have 7 points."""
_SVG_WIDTH = 900.0


def line_view(net: PedigreeNetwork, picture: Picture) -> View:
    """Some plants with the crosses between them and nothing else; none is folded away."""
    plants = list(picture.plants)
    held = set(plants)
    whole = {code for code in plants if held.issuperset(net.parent_codes(code))}
    view = build(net, Picked(plants, whole, [], tuple(plants)), None, (), frozenset(), also=held)
    # On paper nothing can be clicked, so no tab says that there is more.
    return replace(
        view, blocks=tuple(replace(block, more_up=0, more_down=0) for block in view.blocks)
    )


@dataclass(frozen=True, slots=True)
class LinePicture:
    """The pedigree placed in both directions; which is taken depends on the room."""

    ways: tuple[Matter, ...]

    def fitted(self, width: float, height: float) -> Fitted:
        """The way that takes the least of a page where its text is easily read, else the larger.

        Lengths in picture units; the legend is within the height.
        """
        choice = []
        for held in self.ways:
            _, _, wide, high = held.placed.bounds
            legend = legend_height(held.entries, width / _LEGEND) * _LEGEND + _GAP
            scale = min(
                (width - _NAMES) / max(wide, 1.0), (height - legend) / max(high, 1.0), _FULL
            )
            choice.append(Fitted(held, max(scale, 0.01), width, legend))
        easy = [made for made in choice if made.scale >= _EASY]
        if easy:
            return min(easy, key=lambda made: made.height)
        return max(choice, key=lambda made: made.scale)


@dataclass(frozen=True, slots=True)
class Fitted:
    """A picture with its size on paper."""

    held: Matter
    scale: float
    width: float
    legend: float

    @property
    def height(self) -> float:
        """Height with the legend, in picture units."""
        return self.held.placed.bounds[3] * self.scale + self.legend

    def paint(self, painter: QPainter) -> None:
        """Paint picture and legend from the upper left, a unit being one of the picture."""
        left, top, wide, high = self.held.placed.bounds
        # The strips of the generations run from edge to edge, so that their names stand clear.
        across = self.width / self.scale
        before = (across - wide + _NAMES / self.scale) / 2
        clip = QRectF(left - before, top, across, high)
        painter.save()
        painter.scale(self.scale, self.scale)
        painter.translate(-clip.left(), -top)
        painter.setClipRect(clip)
        self.held.paint_picture(painter, detail=max(self.scale, FAR), clip=clip)
        painter.restore()
        painter.save()
        painter.translate(0, high * self.scale + _GAP)
        painter.scale(_LEGEND, _LEGEND)
        paint_legend(painter, self.held.entries, self.held.theme, 0, 0, self.width / _LEGEND)
        painter.restore()


def line_picture(net: PedigreeNetwork, picture: Picture, theme: str = "grey") -> LinePicture:
    """The pedigree of a report, placed."""
    ensure_gui()
    view = line_view(net, picture)
    return LinePicture(tuple(_matter(net, p, theme) for p in _placed(view)))


def _placed(view: View) -> list[Placed]:
    return [place(view, orientation="down"), place(view, orientation="right")]


def _matter(net: PedigreeNetwork, placed: Placed, theme: str) -> Matter:
    # The date is that of the report; the picture's own is not painted.
    return matter(placed, theme_named(theme), title=net.book.settings.name, date="-")


def picture_svg(made: LinePicture, words: str) -> str:
    """The picture with its legend as an SVG element, as it stands in the middle of HTML.

    words : for a person who does not see it
    """
    fitted = made.fitted(_SVG_WIDTH, 1200.0)
    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QSvgGenerator()
    writer.setOutputDevice(buffer)
    writer.setResolution(96)
    writer.setSize(QSize(round(fitted.width), round(fitted.height)))
    writer.setViewBox(QRectF(0, 0, fitted.width, fitted.height))
    writer.setTitle(words)
    writer.setDescription("")
    painter = QPainter(writer)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        fitted.paint(painter)
    finally:
        painter.end()
        buffer.close()
    text = bytes(held.data()).decode("utf-8")
    families = ", ".join(f"'{name}'" if " " in name else name for name in fitted.held.theme.fonts)
    text = re.sub(r'font-family="[^"]*"', f'font-family="{families}, sans-serif"', text)
    text = text[text.index("<svg") :]
    # A width in millimetres would not shrink with a narrow window.
    return re.sub(r'(<svg\b[^>]*?) width="[^"]*" height="[^"]*"', r'\1 role="img"', text, count=1)
