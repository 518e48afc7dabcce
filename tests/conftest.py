"""Every test starts clean: no screen, settings and home folder of its own, warnings are errors."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from PySide6.QtWidgets import QApplication

# Before Qt starts: the window's tests need no screen and must not take the person's.
os.environ["QT_QPA_PLATFORM"] = "offscreen"
for name in ("DISPLAY", "WAYLAND_DISPLAY"):
    os.environ.pop(name, None)

ROOT = Path(__file__).resolve().parent.parent

settings.register_profile("desk", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.register_profile("ci", settings.get_profile("desk"), derandomize=True, database=None)
settings.load_profile("ci" if os.environ.get("CI") else "desk")


@pytest.fixture(scope="session")
def root() -> Path:
    """The folder that holds the project."""
    return ROOT


@pytest.fixture(autouse=True)
def own_home(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A home folder and settings that hold nothing of the person's or of another test's."""
    home = tmp_path_factory.mktemp("home")
    # Fonts are cached by the system's library; a new cache for each test would cost seconds.
    monkeypatch.setenv("XDG_CACHE_HOME", os.environ.get("XDG_CACHE_HOME") or _usual_cache())
    for name in ("HOME", "USERPROFILE", "APPDATA", "LOCALAPPDATA"):
        monkeypatch.setenv(name, str(home))
    for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME"):
        monkeypatch.setenv(name, str(home / name.lower()))
    return home


def _usual_cache() -> str:
    return str(Path.home() / ".cache")


@pytest.fixture(autouse=True)
def own_settings(own_home: Path) -> None:
    """Qt remembers where its settings lie once it has looked, so it is told for each test."""
    if "PySide6.QtCore" in sys.modules:
        from PySide6.QtCore import QSettings

        for form in (QSettings.Format.NativeFormat, QSettings.Format.IniFormat):
            QSettings.setPath(form, QSettings.Scope.UserScope, str(own_home / "settings"))


@pytest.fixture(scope="session", autouse=True)
def one_application(qapp: QApplication) -> QApplication:
    """The application of the window's tests, made first: drawing alone would make a lesser one."""
    return qapp


@pytest.fixture(autouse=True)
def plain_clothes(one_application: QApplication) -> Iterator[None]:
    """Language, look and size of the text that a test put on are taken off again after it."""
    yield
    translating = sys.modules.get("pedigreeview.window.translating")
    if translating is not None and translating.spoken() != "en":
        translating.speak(one_application, "en")
    telling = sys.modules.get("pedigreeview.drawing.telling")
    if telling is not None:
        telling.tell_with(None)
    style = sys.modules.get("pedigreeview.window.style")
    if style is not None and style.worn() not in (None, ("light", 100)):
        style.dress(one_application, "light", 100)
