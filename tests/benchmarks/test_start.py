"""From the start of the process to a window with a book in it, beside a bare Qt window."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from typing import Any

from pedigreeview.book.book_file import BookFile
from tests.benchmarks.garden import garden

_ROOT = Path(__file__).parents[2]
_PLANTS = 500

_BARE = """
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMainWindow
app = QApplication([])
window = QMainWindow()
window.resize(1280, 800)
window.show()
QTimer.singleShot(0, app.quit)
app.exec()
"""

_WHOLE = """
import os, sys
from pathlib import Path
from PySide6.QtCore import QSettings, QTimer
from PySide6.QtWidgets import QApplication
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
app = QApplication([])
book = Path(sys.argv[1])
settings = QSettings(str(book.with_suffix(".ini")), QSettings.Format.IniFormat)
window = MainWindow(Preferences(settings))
window.resize(1280, 800)
window.show()
window.open_path(book)
def look():
    if window.pedigree.placed is not None and window.pedigree.isVisible():
        print(len(window.opened.net.codes), flush=True)
        os._exit(0)
    QTimer.singleShot(1, look)
look()
app.exec()
"""


def test_start(bench: Any, tmp_path: Path) -> None:
    """The compiled modules are kept, as they are where a program is installed."""
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(_ROOT)}
    env.pop("PYTHONDONTWRITEBYTECODE", None)
    env["PYTHONPYCACHEPREFIX"] = str(tmp_path / "compiled")
    path = tmp_path / "book.pedbook"
    BookFile.create(path, garden(_PLANTS)).close()

    def run(code: str) -> str:
        command = [sys.executable, "-c", code, str(path)]
        made = subprocess.run(
            command, env=env, cwd=tmp_path, capture_output=True, text=True, timeout=120, check=True
        )
        return made.stdout.strip()

    run(_BARE)
    shown, nothing = bench(
        f"process start to a window with a book of {_PLANTS} plants",
        lambda: run(_WHOLE),
        reference="process start to a bare Qt window of the same size",
        run_reference=lambda: run(_BARE),
        reach="at most 8 times as long",
        rounds=5,
        reference_rounds=5,
    )
    assert (shown, nothing) == (str(_PLANTS), "")
