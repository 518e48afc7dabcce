"""Starts the window."""

from __future__ import annotations

import os
import sys
from pathlib import Path

__all__ = ["run"]


def run(path: Path | None = None) -> int:
    """Show the window, with a book if one is named, until it is closed.

    Returns
    -------
    The exit status: 0.
    """
    from PySide6.QtWidgets import QApplication

    from pedigreeview.window.main_window import MainWindow

    held = QApplication.instance()
    app = held if isinstance(held, QApplication) else QApplication(sys.argv[:1])
    app.setApplicationName("Crossing Book")
    app.setOrganizationName("pedigreeview")
    app.setDesktopFileName("pedigreeview")
    window = MainWindow()
    window.show()
    if path is not None:
        window.open_path(path)
    status = app.exec()
    if not window.errands.close():
        # A long computation cannot be interrupted; it only reads, so the process may just end.
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(status)
    return status
