"""Whether a window can be shown here, found out before Qt would end the process.

Qt's platform plugins do not raise: without a screen, or without a system library that a plugin is
linked to, making the application aborts.  So the plugin is loaded and the screen is asked first.
"""

from __future__ import annotations

import ctypes
import importlib
import os
import re
import sys
from collections.abc import Mapping
from pathlib import Path

__all__ = ["library_missing_for", "why_no_window"]

_DEBIAN = {
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libgthread-2.0.so.0": "libglib2.0-0",
    "libwayland-client.so.0": "libwayland-client0",
    "libwayland-cursor.so.0": "libwayland-cursor0",
    "libwayland-egl.so.1": "libwayland-egl1",
    "libX11-xcb.so.1": "libx11-xcb1",
    "libX11.so.6": "libx11-6",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-util.so.1": "libxcb-util1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxcb.so.1": "libxcb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxkbcommon.so.0": "libxkbcommon0",
}


def _missing(error: Exception) -> str:
    """What an import or a load lacked, in words."""
    found = re.search(r"([\w.+-]+\.so[.\d]*): cannot open shared object file", str(error))
    if found:
        library = found[1]
        package = _DEBIAN.get(library)
        hint = f" (Debian, Ubuntu: sudo apt install {package})" if package else ""
        return f"the desktop library {library} is missing{hint}"
    if isinstance(error, ModuleNotFoundError) and error.name:
        return f"the Python package {error.name.partition('.')[0]} is missing"
    return f"a desktop library cannot be loaded ({error})"


def library_missing_for(*modules: str) -> str | None:
    """What modules of Qt lack here, such as 'the desktop library libEGL.so.1 is missing'.

    None where they all load.
    """
    for module in modules:
        try:
            importlib.import_module(module)
        except ImportError as error:
            return _missing(error)
    return None


def why_no_window(environment: Mapping[str, str] = os.environ) -> str | None:
    """Why no window can be shown, as a clause without a full stop; None where one can."""
    unix = os.name == "posix" and sys.platform != "darwin"
    chosen = environment.get("QT_QPA_PLATFORM", "")
    platforms = [name.partition(":")[0] for name in chosen.split(";") if name]
    if unix and not platforms:
        if environment.get("WAYLAND_DISPLAY"):
            platforms.append("wayland")
        if environment.get("DISPLAY"):
            platforms.append("xcb")
        if not platforms:
            return "there is no screen here (neither DISPLAY nor WAYLAND_DISPLAY is set)"
    missing = library_missing_for("PySide6.QtWidgets")
    if missing or not unix:
        return missing
    reasons = [_why_not(platform) for platform in platforms]
    return None if None in reasons else reasons[-1]


def _why_not(platform: str) -> str | None:
    from PySide6.QtCore import QLibraryInfo

    plugins = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.PluginsPath), "platforms")
    for plugin in plugins.glob(f"libq{platform}.so"):
        try:
            ctypes.CDLL(str(plugin))
        except OSError as error:
            return _missing(error)
    if platform == "xcb" and not _answers("libxcb.so.1", "xcb_connect", "xcb_connection_has_error"):
        return "the screen named by DISPLAY does not answer"
    if platform == "wayland" and not _answers("libwayland-client.so.0", "wl_display_connect"):
        return "the screen named by WAYLAND_DISPLAY does not answer"
    return None


def _answers(library: str, connect: str, failed: str = "") -> bool:
    """Whether a screen can be reached; a library that cannot be asked counts as yes."""
    try:
        loaded = ctypes.CDLL(library)
        open_screen = getattr(loaded, connect)
        open_screen.restype = ctypes.c_void_p
        # xcb takes a second argument for the screen's number; C ignores one too many.
        screen = open_screen(None, None)
        if not screen:
            return False
        pointer = ctypes.c_void_p(screen)
        broken = bool(failed) and bool(getattr(loaded, failed)(pointer))
        close = "xcb_disconnect" if failed else "wl_display_disconnect"
        getattr(loaded, close)(pointer)
    except (OSError, AttributeError):
        return True
    return not broken
