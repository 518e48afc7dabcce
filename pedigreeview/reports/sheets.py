"""A picture made ready to be shown: title, picture, legend, what the numbers stand on, the date."""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from pedigreeview.drawing.captions import caption_height, caption_of, paint_caption, wrapped
from pedigreeview.drawing.legend import Entry, legend_entries, legend_height, paint_legend
from pedigreeview.drawing.lighting import Lit, light
from pedigreeview.drawing.margins import UNITS_PER_MM, picture_margin
from pedigreeview.drawing.painter import Scene, paint
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import elided, font
from pedigreeview.drawing.theme import Theme
from pedigreeview.drawing.tinting import Tint
from pedigreeview.reports.report_words import tr

__all__ = [
    "Matter",
    "Sheet",
    "compose",
    "head_height",
    "matter",
    "notes_height",
    "on_paper",
    "paint_head",
    "paint_notes",
]

_LEAST_WIDTH = 600.0
"""Room that title and legend want between the margins."""
_NOTE = 12.0
_LEGEND_MOST = 1600.0
"""A legend wider than this is a row that nobody reads."""
_NO_LIT = Lit(frozenset(), frozenset())


def on_paper(theme: Theme) -> Theme:
    """The theme for paper: the light one on white, with bands that are only just seen."""
    if theme.name != "light":
        return theme
    white = {"ground": "#ffffff", "band": "#f6f5f2", "frame": "#fdfcf9"}
    return replace(theme, colours={**theme.colours, **white})


@dataclass(frozen=True, slots=True)
class Matter:
    """What goes on paper, before it has a size."""

    placed: Placed
    theme: Theme
    title: str
    below: str
    caption: tuple[str, ...]
    notes: tuple[str, ...]
    entries: tuple[Entry, ...]
    pins: tuple[str, ...] = ()
    lit: Lit = _NO_LIT
    faded: frozenset[str] = frozenset()
    tint: Tint | None = None

    def paint_picture(
        self, painter: QPainter, *, detail: float, clip: QRectF, bands: bool = True
    ) -> None:
        """The picture in its own units, with pins, lit paths, tint and what is put back."""
        tint, codes = self.tint, tuple(self.placed.view.shown())
        paint(
            painter,
            self.placed,
            self.theme,
            detail=detail,
            clip=clip,
            lit=self.lit,
            scene=Scene(
                pins=self.pins,
                faded=self.faded,
                tints=tint.by_code(codes) if tint is not None else None,
                tint_words=tint.words_by_code(codes) if tint is not None else {},
                tint_marks=tint.marks_by_code(codes) if tint is not None else {},
            ),
            bands=bands,
        )


def matter(
    placed: Placed,
    theme: Theme,
    *,
    title: str,
    below: str = "",
    caption: str = "",
    date: str = "",
    pins: Sequence[str] = (),
    lit_paths: Iterable[Sequence[str]] = (),
    faded: Iterable[str] = (),
    tint: Tint | None = None,
) -> Matter:
    """Everything that belongs with a picture.

    caption : in the words of the person, below the title
    pins : plants marked A, B, C and so on
    lit_paths : lines of descent to bring out, each as codes from plant to plant
    faded : plants put back by a filter
    tint : what the tags are tinted by
    """
    paths = [tuple(path) for path in lit_paths]
    put_back = frozenset(faded) & placed.view.shown()
    shown = [
        *(["pin"] if pins else []),
        *(["lit"] if paths else []),
        *(["aside"] if put_back else []),
    ]
    view = placed.view
    notes = [n for n in (view.base, view.way_words(), view.hidden_words(), view.away_words()) if n]
    if tint is not None:
        notes.append(tint.key.words())
        shown += tint.also(item.block.codes for item in placed.blocks if item.block.codes)
    entries = legend_entries(placed, shown=shown, key=tint.key if tint is not None else None)
    drawn = tr("Drawn on {}.").format(date or datetime.date.today().isoformat())
    return Matter(
        placed,
        on_paper(theme),
        title,
        below,
        caption_of(caption),
        (*(tr(note) for note in notes), drawn),
        tuple(replace(entry, words=tr(entry.words)) for entry in entries),
        tuple(pins),
        light(placed, paths) if paths else _NO_LIT,
        put_back,
        tint,
    )


@dataclass(frozen=True, slots=True)
class Sheet:
    """Everything on one drawing area that is as large as the picture needs, in picture units."""

    matter: Matter
    width: float
    height: float
    margin: float

    def paint(self, painter: QPainter) -> None:
        """Paint the whole sheet from its upper left corner."""
        held = self.matter
        theme, placed = held.theme, held.placed
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        painter.fillRect(QRectF(0, 0, self.width, self.height), colour(theme["ground"]))
        margin = self.margin
        inner = self.width - 2 * margin
        y = margin + paint_head(painter, held, margin, margin, inner)
        left, top, width, height = placed.bounds
        painter.save()
        painter.translate((self.width - width) / 2 - left, y - top)
        # The strips of the generations run from margin to margin.
        clip = QRectF(left - (inner - width) / 2, top, inner, height)
        held.paint_picture(painter, detail=1.0, clip=clip)
        painter.restore()
        y += height + 24
        _rule(painter, theme, margin, y, inner)
        across = min(inner, _LEGEND_MOST)
        paint_legend(painter, held.entries, theme, margin, y + 14, across)
        y += 14 + legend_height(held.entries, across) + 8
        _rule(painter, theme, margin, y, inner)
        paint_notes(painter, held, margin, y + 8, across)


def _rule(painter: QPainter, theme: Theme, x: float, y: float, width: float) -> None:
    painter.setPen(pen(theme["paper_edge"], 0.8))
    painter.drawLine(QPointF(x, y), QPointF(x + width, y))


def paint_head(painter: QPainter, held: Matter, x: float, y: float, width: float) -> float:
    """Title, the line below it and the caption; the height that they take."""
    theme = held.theme
    size = theme.type["title"]
    painter.setPen(colour(theme["ink"]))
    painter.setFont(font(theme, size, strong=True))
    painter.drawText(QPointF(x, y + size), elided(theme, size, held.title, width, strong=True))
    painter.setPen(colour(theme["ink_soft"]))
    painter.setFont(font(theme, 13))
    painter.drawText(QPointF(x, y + size + 22), elided(theme, 13, held.below, width))
    caption = paint_caption(painter, theme, held.caption, x, y + size + 32, width)
    return size + 42 + caption


def head_height(held: Matter, width: float) -> float:
    """Height that the head takes at a width."""
    return held.theme.type["title"] + 42 + caption_height(held.theme, held.caption, width)


def paint_notes(painter: QPainter, held: Matter, x: float, y: float, width: float) -> float:
    """What the numbers stand on, what was left out, the date; the height that they take."""
    theme = held.theme
    painter.setPen(colour(theme["ink_soft"]))
    painter.setFont(font(theme, _NOTE))
    top = y
    for note in held.notes:
        lines = wrapped(font(theme, _NOTE), note, width)
        for at, line in enumerate(lines):
            painter.drawText(QPointF(x, y + 14 + 16 * at), line)
        y += 16 * len(lines) + 4
    return y - top


def notes_height(held: Matter, width: float) -> float:
    """Height that the notes take at a width."""
    face = font(held.theme, _NOTE)
    return sum(16.0 * len(wrapped(face, note, width)) + 4 for note in held.notes)


def compose(held: Matter, margin: float | None = None) -> Sheet:
    """One sheet for a picture, at its full size.

    margin : blank space round it in mm; None: the usual one

    Raises
    ------
    Fault : a margin that is too wide
    """
    # To the whole unit: lines that lie between two pixels of a PNG would blur.
    edge = float(round(picture_margin(margin) * UNITS_PER_MM))
    _, _, width, height = held.placed.bounds
    inner = max(width, _LEAST_WIDTH)
    across = min(inner, _LEGEND_MOST)
    height += (
        head_height(held, inner)
        + 24
        + 14
        + legend_height(held.entries, across)
        + 8
        + 8
        + notes_height(held, across)
    )
    return Sheet(held, inner + 2 * edge, height + 2 * edge, edge)
