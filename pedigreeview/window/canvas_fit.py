"""How large the canvas shows its picture, and from where on: fit, zoom, what stays in sight.

Codes stay readable unless all of the picture is asked for.  What goes first where not all has room:
see `canvas_aim`.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, QSizeF
from PySide6.QtWidgets import QWidget

from pedigreeview.drawing.placing import Placed
from pedigreeview.window.canvas_aim import CanvasAim

__all__ = ["CanvasFit"]

_LEAST, _MOST = 0.04, 4.0
_READABLE = 0.6
"""A focused picture is not fitted smaller than this when it is first shown."""

_NEAR_EDGE = 28.0
"""Pixels from the edge that are left free where the picture moves by the least."""

_SIZES = 24
"""Sizes of type and window for which it is known what was shown."""


@dataclass(frozen=True, slots=True)
class _Sight:
    """What was in sight with a size of type, and how it came to be."""

    scale: float
    origin: QPointF
    fitted: bool
    partly: bool
    first: bool
    by_hand: bool


class CanvasFit(CanvasAim):
    """A canvas that chooses scale and place."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: dict[tuple[float, int, int], _Sight] = {}
        """What was shown by size of type, width and height, as long as nobody moves the picture."""
        self._first = False
        """Whether the picture is as a first look has shown it."""
        self._by_hand = False
        """Whether somebody has chosen scale or place."""
        self._asked = 0.0
        """The scale at which the first picture is to be looked at; 0 for its own."""
        self._outer_was = QSize()

    def set_text_scale(self, factor: float) -> None:
        """Make the picture's type as much larger as that of the window; 1 is the usual size."""
        if factor <= 0 or factor == self._text:
            return
        shown = self._keep_sight()
        change, self._text = factor / self._text, factor
        if not self._by_hand or self._placed is None:
            self.first_look()
        elif self._fitted:
            self._scale *= change
            self.refit()
        else:
            self.zoom_by(change)
        self._shown = shown
        self._as_before()

    def _keep_sight(self) -> dict[tuple[float, int, int], _Sight]:
        """Remember what is shown before the size of the type or of the window changes it."""
        if self._placed is not None:
            with self.at_rest():
                place = self._scale, QPointF(self._origin)
            state = self._fitted, self._partly, self._first, self._by_hand
            self._shown[self._text, *self._outer_was.toTuple()] = _Sight(*place, *state)
        # A window that is drawn larger has many sizes.
        while len(self._shown) > _SIZES:
            del self._shown[next(iter(self._shown))]
        return dict(self._shown)

    def _as_before(self) -> bool:
        """With a size of type and in a window as before, show what was shown then."""
        was = self._shown.get((self._text, *self._outer().toTuple()))
        if was is None or self._placed is None:
            return False
        self._go_to(was.scale, was.origin, fitted=was.fitted, partly=was.partly)
        self._first, self._by_hand = was.first, was.by_hand
        return True

    def fit(self) -> None:
        """Show the whole picture, as large as it goes but not blown up.

        Where its codes could not be read so, the part about the focus is shown at a scale at which
        they can; asked once more, the whole is shown all the same.
        """
        target = self._fit_target()
        if target is None:
            return
        again = self._fitted and self._partly
        near = None if again else self._about_focus(target[0], self.least_scale())
        self._go_to(*(near or target), fitted=True, partly=near is not None)
        self._touched()

    def refit(self) -> None:
        """Fit again what is fitted, as after a change of size: the whole, or about the focus."""
        target = self._fit_target()
        if not self._fitted or target is None:
            return
        # What was shown whole though it cannot be read so was asked for.
        least = self.least_scale()
        keep = not self._partly and self._scale < least
        near = None if keep else self._about_focus(target[0], least)
        self._go_to(*(near or target), fitted=True, partly=near is not None)

    def hold_still(self) -> None:
        """Keep scale and place when the size changes from now on."""
        self._fitted = False

    def _fit_target(self) -> tuple[float, QPointF] | None:
        """Scale and origin at which the whole picture shows."""
        if self._placed is None:
            return None
        content, room = self._content(), self._room()
        if content.isEmpty() or room.isEmpty():
            return None
        scale = max(_LEAST, self._fitting(room))
        left, above = self._gutter()
        middle = content.center()
        return scale, QPointF(
            middle.x() - (room.width() + left) / scale / 2,
            middle.y() - (room.height() + above) / scale / 2,
        )

    def first_look(self) -> None:
        """The whole picture if it can be read so, else its focus at a size that can."""
        target = self._first_target()
        self._first, self._by_hand = True, False
        if target is not None:
            self._go_to(*target[:2], fitted=target[2])

    def look_at(self, scale: float) -> None:
        """Show the focus and its nearest at a scale, or at a smaller one if they need it.

        Of a picture that is still being laid out as soon as it is there.
        """
        self._asked = scale if self._placed is None else 0.0
        target = self._about_focus(0.0, scale)
        if target is not None and abs(self._scale - scale) > 1e-9:
            self._go_to(*target, fitted=False)
        self._touched()

    def _touched(self) -> None:
        """From now on scale and place are somebody's choice: no first look in their stead."""
        self._first, self._by_hand = False, True
        self._shown.clear()

    def _outer(self) -> QSize:
        """Size of what the canvas lies in; it may leave room in it for a card."""
        around = self.parentWidget()
        return self.size() if around is None else around.size()

    def sized(self, before: QSize) -> None:
        """Show what was shown after a change of size: afresh what nobody has moved yet."""
        outer = self._outer()
        other = outer != self._outer_was
        if other:
            self._keep_sight()
        self._outer_was = outer
        if other and self._as_before():
            return
        if other and self._first and self._placed is not None:
            self.first_look()
            return
        self.refit()
        self.stay_in_sight(before)

    def _first_target(self) -> tuple[float, QPointF, bool] | None:
        found = self._fit_target()
        if found is None:
            return None
        near = self._about_focus(found[0], _READABLE * self._text)
        return (*near, False) if near is not None else (*found, True)

    def _go_to(self, scale: float, origin: QPointF, *, fitted: bool, partly: bool = False) -> None:
        self._scale, self._origin, self._partly = scale, origin, partly
        self._fitted = fitted
        self._settle_pan()
        self.zoomed.emit(self._scale)
        self.viewport().update()

    def _settle_pan(self) -> None:
        self._pan = (QPointF(self._origin), QPointF(self._origin))
        self._zooming = (self._scale, self._scale)

    def zoom_by(self, factor: float, about: QPointF | QPoint | None = None) -> None:
        """Zoom, keeping one viewport place (the middle by default) where it is."""
        spot = QPointF(about) if about is not None else QPointF(self.viewport().rect().center())
        held = self.to_picture(spot)
        scale = min(_MOST, max(_LEAST, self._scale * factor))
        origin = QPointF(held.x() - spot.x() / scale, held.y() - spot.y() / scale)
        self._go_to(scale, origin, fitted=False)
        self._touched()

    def show_code(self, code: str) -> None:
        """Pan by as little as brings the plant into view; not at all if it can be seen well."""
        found = self._find(code)
        if found is None or self.shows_all():
            return
        with self.at_rest():
            target = self._brought_in(found, self._origin)
            if target != self._origin:
                self._shown.clear()
        if self._part < 1.0:
            self._pan = (self._pan[0], target)
        else:
            self._origin = target
            self._settle_pan()
        self.viewport().update()

    def _shows_all(self, scale: float, origin: QPointF) -> bool:
        """Whether all tags are in sight from a place in the picture on."""
        if self._placed is None:
            return False
        left, above = (part / scale for part in self._gutter())
        size = QSizeF(self.viewport().size()) / scale
        seen = QRectF(origin, size).adjusted(left, above, 0, 0)
        everything = self._everything()
        clear = seen.adjusted(0, 0, -self._covered / scale, 0)
        return (clear if everything.width() <= clear.width() else seen).contains(everything)

    def shows_all(self) -> bool:
        """Whether the picture is fitted as a whole."""
        return self._fitted and not self._partly

    def may_narrow(self, less: float) -> bool:
        """Whether, with less width, all that was fitted can be seen as large as it is now.

        Else whether focus, parents and their knot can.
        """
        with self.at_rest():
            area = self._everything() if self.shows_all() else self._with_parents()
            return area is None or self._fits(area, less)

    def stay_in_sight(self, before: QSize) -> None:
        """Move by the least after a change of size: all tags stay in sight if they can.

        Else the focus, its parents and their knot do, where they were in sight before; at a smaller
        scale if need be, as long as codes can be read.
        """
        if self._placed is None or self._fitted or before.isEmpty():
            return
        with self.at_rest():
            found = self._kept_in_sight(before)
        if found is None:
            return
        scale, origin = found
        if self._part < 1.0:
            self._pan, self._zooming = (self._pan[0], origin), (self._zooming[0], scale)
        else:
            self._go_to(scale, origin, fitted=False)

    def _kept_in_sight(self, before: QSize) -> tuple[float, QPointF] | None:
        assert self._placed is not None
        everything = self._everything()
        if self._fits(everything):
            return self._scale, self._brought(everything, self._origin, _NEAR_EDGE)
        area = self._with_parents()
        if area is None:
            return None
        left, above = self._gutter()
        seen = QRectF(
            self.to_picture(QPointF(left - 1, above - 1)),
            self.to_picture(QPointF(before.width() + 1, before.height() + 1)),
        )
        if not seen.contains(area):
            item = self._find(self._placed.view.focus or "")
            if item is None or not seen.contains(QPointF(*item.middle)):
                return None
            return self._scale, self._brought_in(item, self._origin)
        if self._scale_for(area, self.viewport().size(), _NEAR_EDGE) >= self._scale:
            return self._scale, self._brought(area, self._origin, _NEAR_EDGE)
        return self._about_focus(0.0, min(self._scale, _READABLE * self._text))

    def _wanted_view(self, placed: Placed, before: Placed) -> tuple[float, QPointF, bool]:
        """Where the view goes for a new picture: as little as shows the focus and its nearest.

        It stays as it is when the focus, its parents and its first progeny can be seen.  Where they
        cannot be seen together, or nothing can be read, the picture is fitted.
        """
        scale, origin, fitted = self._next_view(placed)
        self._first = False
        self._shown.clear()
        old, new = before.view, placed.view
        pinned = old.pins != new.pins and (old.focus, old.way) == (new.focus, new.way)
        if scale != self._scale:
            # What was too small to read is looked at as for the first time.
            self._first, self._by_hand = True, False
        elif pinned and not self._by_hand:
            origin = self._with_bare_filled(origin)
        return scale, origin, fitted

    def _next_view(self, placed: Placed) -> tuple[float, QPointF, bool]:
        now = (self._scale, self._origin, False)
        readable = self._scale >= self.least_scale() - 1e-6
        if readable and self._shows_all(self._scale, self._origin):
            return now
        everything = self._everything()
        if readable and self._covered and self._fits(everything, self._covered):
            return self._scale, self._brought(everything, self._origin, _NEAR_EDGE), False
        area = self._near_focus()
        if placed.view.focus is None or area is None:
            return now
        if readable and self._fits(area):
            return self._scale, self._brought(area, self._origin), False
        return self._first_target() or now
