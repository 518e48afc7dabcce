"""What the canvas of the Pedigree page asks to be kept clear of the card.

The ground itself, and the spots on it, are worked out by `drawing.free_ground` and
`drawing.free_spots`; here it is asked for once for a picture at a place.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QPointF, QRectF, QSizeF

from pedigreeview.drawing.free_ground import Ground, ground_of
from pedigreeview.drawing.placing import Placed
from pedigreeview.window.canvas_edges import sign_rects
from pedigreeview.window.canvas_places import CanvasPlaces

__all__ = ["ground"]


def ground(
    canvas: CanvasPlaces,
    placed: Placed | None,
    code: str,
    kept_clear: Iterable[str],
    paths: Iterable[Sequence[str]],
    shift: QPointF,
    around: QRectF,
) -> Ground:
    """What the picture on a canvas asks to be kept clear of the card of a plant.

    kept_clear : plants that must stay in sight, as parents and pins
    paths : lines of descent that are lit
    shift : from the places of the canvas to those of the stage
    around : all of the stage that the card may lie on
    """
    if placed is None:
        return Ground(around, QRectF(around.center(), QSizeF(1, 1)))
    kept, lit = tuple(dict.fromkeys(kept_clear)), tuple(tuple(path) for path in paths)
    start, scale, text = canvas.to_view(0.0, 0.0) + shift, canvas.zoom(), canvas.text_scale()
    size = canvas.viewport().size().toTuple()
    asked = (code, kept, lit, start.toTuple(), scale, text, size, around.getRect())
    # The card is laid several times for one act, mostly on the ground of the time before.
    held = placed.held.get("card ground")
    if held is None or held[0] != asked:
        signs = [rect.translated(shift) for rect, _ in sign_rects(canvas).values()]
        found = ground_of(
            placed,
            code,
            kept,
            lit,
            start=start,
            scale=scale,
            around=around,
            signs=signs,
            text=text,
        )
        held = placed.held["card ground"] = (asked, found)
    answer: Ground = held[1]
    return answer
