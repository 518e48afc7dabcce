"""Starts the window."""

from __future__ import annotations

import os
import sys
from pathlib import Path

__all__ = ["run"]


def run(path: Path | None = None, *, founders_as: str = "", fixation: float | None = None) -> int:
    """Show the window, with a book if one is named, until it is closed.

    Parameters
    ----------
    path : a file or folder, or None for the first page
    founders_as, fixation : what founders that say nothing are; where given, nothing is asked

    Returns
    -------
    The exit status: 0.
    """
    from PySide6.QtWidgets import QApplication

    from pedigreeview.window.main_window import MainWindow
    from pedigreeview.window.opening import Stated

    held = QApplication.instance()
    app = held if isinstance(held, QApplication) else QApplication(sys.argv[:1])
    app.setApplicationName("Crossing Book")
    app.setOrganizationName("pedigreeview")
    app.setDesktopFileName("pedigreeview")
    window = MainWindow()
    window.show()
    if path is not None:
        said = founders_as or fixation is not None
        window.open_path(path, Stated(founders_as, fixation) if said else None)
    status = app.exec()
    if not window.errands.close():
        # A long computation cannot be interrupted; it only reads, so the process may just end.
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(status)
    return status
