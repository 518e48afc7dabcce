"""What a screen reader finds on the map: the marked plant, then the plants in the window, or bands.

Where the window shows more plants than anybody would step through, the generations stand for them,
each with the number of its plants.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QLocale, QPoint, QRect, QRectF

from pedigreeview.drawing.overview_picks import codes_inside
from pedigreeview.window.canvas_access import Spoken
from pedigreeview.window.overview_words import band_words

if TYPE_CHECKING:
    from pedigreeview.window.overview import BookMap

__all__ = ["spoken_of_map"]

_MOST = 200
_BAND = "band:"


def _tr(text: str) -> str:
    return QCoreApplication.translate("MapAccess", text)


class _MapWords:
    """Names and places of what the map shows."""

    def __init__(self, shown: BookMap) -> None:
        self._map = shown
        self._key: object = None
        self._keys: list[str] = []

    def listed(self) -> list[str]:
        """The marked plant, then plants in reading order, or bands from the oldest."""
        overview = self._map.overview
        if overview is None:
            return []
        marked = self._map.selected_code()
        key = (id(overview), self._map.frame(), marked)
        if key == self._key:
            return self._keys
        rest = codes_inside(overview, self._map.frame(), self._map.viewport().rect())
        if len(rest) > _MOST:
            rest = [f"{_BAND}{at}" for at in range(len(overview.counts))]
        first = [marked] if marked else []
        self._key, self._keys = key, first + [code for code in rest if code != marked]
        return self._keys

    def words(self, key: str) -> str:
        """'P-12, F2, from 21-01 selfed, F one half', or 'F2, 1,204 plants'."""
        overview = self._map.overview
        if overview is None:
            return ""
        if key.startswith(_BAND):
            at = int(key[len(_BAND) :])
            many = int(overview.counts[at])
            name = band_words(int(overview.generations[at]))
            return (_tr("{}: {} plant") if many == 1 else _tr("{}: {} plants")).format(
                name, QLocale().toString(many)
            )
        row = overview.row(key)
        return (self._map.spoken_words(key) or self._map.words_of(row)) if row >= 0 else ""

    def rect(self, key: str) -> QRect:
        """Where it lies in the viewport."""
        overview = self._map.overview
        if overview is None or not key.startswith(_BAND):
            return self._map.rect_of(key)
        shown = self._map.frame()
        top = shown.top(int(key[len(_BAND) :]))
        return QRectF(shown.margin, top, shown.width - shown.margin, shown.tall).toRect()

    def at(self, spot: QPoint) -> str:
        """The plant there, or its band where bands stand for plants."""
        keys, code = self.listed(), self._map.at(spot)
        if not code or code in keys or self._map.overview is None:
            return code
        overview = self._map.overview
        return f"{_BAND}{int(overview.band[overview.row(code)])}"


def spoken_of_map(shown: BookMap) -> Spoken:
    """What the map tells a screen reader."""
    words = _MapWords(shown)
    return Spoken(
        words.listed,
        words.words,
        shown.spoken_more,
        words.rect,
        words.at,
        shown.selected_code,
        shown.picking.holds,
    )
