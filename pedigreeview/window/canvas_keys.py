"""The keys of the picture, as the words of a walk."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

__all__ = ["WALKS", "walk_word"]

WALKS = (
    "seed",
    "pollen",
    "progeny",
    "left",
    "right",
    "mate",
    "reciprocal",
    "focus",
    "unfold",
    "fold",
    "pin",
)

_PLAIN = {
    Qt.Key.Key_Up: "seed",
    Qt.Key.Key_Down: "progeny",
    Qt.Key.Key_Left: "left",
    Qt.Key.Key_Right: "right",
    Qt.Key.Key_M: "mate",
    Qt.Key.Key_R: "reciprocal",
    Qt.Key.Key_Return: "focus",
    Qt.Key.Key_Enter: "focus",
    Qt.Key.Key_Plus: "unfold",
    Qt.Key.Key_Equal: "unfold",
    Qt.Key.Key_Minus: "fold",
    Qt.Key.Key_P: "pin",
}


def walk_word(event: QKeyEvent) -> str:
    """The word for a pressed key, or '' for a key that means no walk."""
    modifiers = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
    if modifiers & (Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier):
        return ""
    shift = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
    if event.key() == Qt.Key.Key_Up and shift:
        return "pollen"
    return _PLAIN.get(Qt.Key(event.key()), "")
