"""What the map says in words: what its colours, bars and lines mean as it is drawn right now, the
names of its bands, and what a tint tells of a plant."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QRectF, Qt
from PySide6.QtGui import QPainter

from pedigreeview.drawing.overview_painter import Drawn
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import font
from pedigreeview.drawing.theme import Theme
from pedigreeview.drawing.tinting import TintKey
from pedigreeview.window.saying import say
from pedigreeview.window.words import number

__all__ = ["band_words", "foot_words", "paint_foot", "tint_words"]

_EDGE = 12.0


def _tr(text: str) -> str:
    return QCoreApplication.translate("MapFoot", text)


def band_words(generation: int) -> str:
    """What a band is called."""
    if generation < 0:
        return _tr("In loops")
    return _tr("Founders") if generation == 0 else _tr("Generation {}").format(generation)


def tint_words(key: TintKey, value: str) -> str:
    """What a tint tells of one plant, as a whole phrase.

    value : as the plant's tag prints it; '' where it has none
    """
    locus, allele = key.gene
    if not allele:
        return _tr("{}: {}").format(say(key.title), say(value) or _tr("no value"))
    if not value:
        return _tr("no chance to carry {} of {} can be given").format(allele, locus)
    if value == "100%":
        return _tr("surely carries {} of {}").format(allele, locus)
    if value == "0%":
        return _tr("surely does not carry {} of {}").format(allele, locus)
    return _tr("carries {} of {} with a chance of {}").format(allele, locus, value)


def foot_words(drawn: Drawn, key: TintKey | None = None, marked: str = "") -> str:
    """Sentences about the map as it was drawn last.

    key : of the tint; None for the founders' colours
    marked : code of the plant whose relatives are brought out
    """
    said = []
    if key is None:
        said.append(
            _tr("Colours are the founders' shares of each plant, pale grey what is unknown.")
        )
    elif key.entries:
        said.append(_tr("Patterns tell classes apart without colour; dots stand for no value."))
    else:
        said.append(_tr("Dots stand for no value."))
    if marked:
        said.append(
            _tr(
                "A bar over a plant: ancestor of {}; a bar under it: descendant; other plants are "
                "paler."
            ).format(marked)
        )
        said += _kin_words(drawn)
    if drawn.there > drawn.lines:
        said.append(
            _tr("{} of about {} lines to parents are drawn; come nearer to see all.").format(
                number(drawn.lines), number(drawn.there)
            )
        )
    if drawn.grains:
        said.append(_tr("Dotted lines come from pollen parents."))
    return " ".join(said)


def _kin_words(drawn: Drawn) -> list[str]:
    if not drawn.kin:
        return []
    if not drawn.near:
        return [_tr("Full lines lead to its ancestors, dashed ones to its descendants.")]
    text = _tr(
        "Lines lead two generations up (full) and down (dashed) only: {} of {} to relatives."
    )
    return [text.format(number(drawn.kin), number(drawn.kin_there))]


def paint_foot(painter: QPainter, area: QRectF, words: str, look: Theme, text: float) -> float:
    """Write the words at the foot of an area, over its ground; gives the height they take."""
    painter.setFont(font(look, 11.0 * text))
    room = area.adjusted(_EDGE, 0, -_EDGE, 0)
    flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
    high = painter.boundingRect(room, flags, words).height()
    strip = QRectF(area.left(), area.bottom() - high - 8, area.width(), high + 8)
    painter.fillRect(strip, colour(look["ground"]))
    painter.setPen(colour(look["band_text"]))
    painter.drawText(strip.adjusted(_EDGE, 3, -_EDGE, 0), flags, words)
    return strip.height()
