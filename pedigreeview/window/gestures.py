"""Two fingers on a touchpad or a touch screen: how far on, how much nearer, about which place."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QInputDevice, QNativeGestureEvent, QWheelEvent
from PySide6.QtWidgets import QAbstractScrollArea, QGestureEvent, QPinchGesture

__all__ = ["listen_to_pinches", "pan_of", "pinch_of"]


def listen_to_pinches(area: QAbstractScrollArea) -> None:
    """Let a view be told of pinches.

    A touch screen's fingers reach the viewport, the gesture itself the widget that asked for it.
    """
    area.viewport().grabGesture(Qt.GestureType.PinchGesture)


def pan_of(event: QWheelEvent) -> QPointF | None:
    """By how many pixels two fingers on a touchpad push a view; None for the turn of a wheel."""
    pixels = event.pixelDelta()
    if not pixels.isNull():
        return QPointF(pixels)
    if event.device().type() == QInputDevice.DeviceType.TouchPad:
        return QPointF(event.angleDelta() / 4)
    return None


def pinch_of(event: QEvent, area: QAbstractScrollArea) -> tuple[float, QPointF] | None:
    """Factor and viewport place of a step of a pinch; None for any other event.

    A pinch that is just beginning has the factor 1 and is taken all the same.
    """
    if isinstance(event, QNativeGestureEvent):
        if event.gestureType() == Qt.NativeGestureType.ZoomNativeGesture:
            return max(0.05, 1.0 + event.value()), event.position()
        return None
    if not isinstance(event, QGestureEvent):
        return None
    found = event.gesture(Qt.GestureType.PinchGesture)
    if not isinstance(found, QPinchGesture):
        return None
    return found.scaleFactor() or 1.0, QPointF(
        area.viewport().mapFromGlobal(found.centerPoint().toPoint())
    )
