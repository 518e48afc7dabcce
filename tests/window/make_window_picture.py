"""Makes resources/window.png, the picture of the window in the README, from a demo.

Run from the project's folder:  python tests/window/make_window_picture.py
"""

from __future__ import annotations

import os
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEventLoop, QSettings, QTimer
from PySide6.QtWidgets import QApplication

from pedigreeview.places import demo, resource
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences

PINNED = ("23-07", "21-02-2")
FOCUS = "21-01-3"
SIZE = (1680, 960)


def rest(milliseconds: int) -> None:
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


def answered(window: MainWindow) -> None:
    while window.errands.awaits():
        rest(50)
    rest(600)


def main(target: Path) -> None:
    QApplication([])
    with TemporaryDirectory() as settings:
        show(target, QSettings(str(Path(settings) / "window.ini"), QSettings.Format.IniFormat))


def show(target: Path, settings: QSettings) -> None:
    preferences = Preferences(settings)
    preferences.look = "light"
    window = MainWindow(preferences)
    window.resize(*SIZE)
    window.show()
    window.open_path(demo("two_peas_both_ways"))
    answered(window)
    window.show_plant(FOCUS)
    for code in PINNED:
        window.pedigree.pin(code)
    answered(window)
    window.pedigree.fit()
    answered(window)
    window.grab().save(str(target))
    window.close()


if __name__ == "__main__":
    main(resource("window.png"))
