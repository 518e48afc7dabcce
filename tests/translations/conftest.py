"""Settings of its own for each window, as the tests of the window have them."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QSettings

from pedigreeview.window.preferences import Preferences


@pytest.fixture
def preferences(tmp_path: Path) -> Preferences:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    found = Preferences(settings)
    found.look = "light"
    found.language = "en"
    return found
