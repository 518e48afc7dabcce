"""Starts the window."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["run", "telling"]

_Hook = Callable[[type[BaseException], BaseException, TracebackType | None], None]


def telling(window: MainWindow) -> _Hook:
    """What Python is to do with a mistake of the program that nothing else caught.

    A click that ends in one would else do nothing at all: Qt goes on, and the traceback goes to a
    terminal that most people do not have.
    """

    def tell(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        from pedigreeview.window.errands import OwnFault

        if not isinstance(error, Exception) or os.environ.get("PEDIGREEVIEW_DEBUG"):
            sys.__excepthook__(kind, error, trace)
        # One dialog is enough: what is painted anew would else open one after the other.
        if isinstance(error, Exception) and window.dialog is None:
            window.show_fault(OwnFault(error, kept=window.desk.showing))

    return tell


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
    from pedigreeview.window.tidying import Tidying

    held = QApplication.instance()
    app = held if isinstance(held, QApplication) else QApplication(sys.argv[:1])
    app.setApplicationName("Crossing Book")
    app.setOrganizationName("pedigreeview")
    app.setDesktopFileName("pedigreeview")
    window = MainWindow()
    sys.excepthook = telling(window)
    tidying = Tidying(app, window.errands.awaits)
    window.show()
    if path is not None:
        said = founders_as or fixation is not None
        window.open_path(path, Stated(founders_as, fixation) if said else None)
    status = app.exec()
    tidying.end()
    if not window.errands.close():
        # A long computation cannot be interrupted; it only reads, so the process may just end.
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(status)
    return status
