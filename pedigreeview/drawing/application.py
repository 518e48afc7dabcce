"""A Qt application to draw with, made when it is needed, with or without a display."""

from __future__ import annotations

import os
import sys
from typing import Any

from pedigreeview.book.faults import Fault

__all__ = ["ensure_gui"]

_HELD: list[Any] = []


def ensure_gui() -> Any:
    """The running QGuiApplication, or a new one.

    Raises
    ------
    Fault : Qt cannot be loaded, with the name of the library that is missing
    """
    try:
        from PySide6.QtGui import QGuiApplication
    except ImportError as missing:
        raise Fault(
            f"Pictures cannot be drawn: a library of the desktop is missing ({missing}).",
            None,
            "Install it with the package manager of the system and try again.",
        ) from missing
    running = QGuiApplication.instance()
    if running is not None:
        return running
    shown = os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")
    if sys.platform.startswith("linux") and not shown:
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    made = QGuiApplication(sys.argv[:1] or ["pedigreeview"])
    _HELD.append(made)
    return made
