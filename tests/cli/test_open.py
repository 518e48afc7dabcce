"""`open` without a screen, and how the program finds out that there is none."""

from __future__ import annotations

import sys
import xml.etree.ElementTree as ET
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.commands import desktop
from pedigreeview.commands.desktop import library_missing_for, why_no_window

Call = Callable[..., Any]


@pytest.mark.parametrize("words", [(), ("open",)])
def test_a_book_without_a_screen(
    process: Call, table: Call, tmp_path: Path, words: tuple[str, ...]
) -> None:
    ended = process(*words, table())
    assert ended.status == 0
    assert ended.err.splitlines()[0] == (
        "The window cannot be shown: there is no screen here (neither DISPLAY nor WAYLAND_DISPLAY "
        "is set); here are the summary and a picture of the book."
    )
    assert "plants       6" in ended.out
    assert "Picture of the whole book: peas-pedigree.svg" in ended.out
    texts = {
        "".join(item.itertext()).strip()
        for item in ET.parse(tmp_path / "peas-pedigree.svg").iter()
        if item.tag.endswith("text")
    }
    assert {"TP", "BA", "F1", "F2"} <= texts


def test_a_folder_that_takes_no_picture(process: Call, table: Call, tmp_path: Path) -> None:
    (tmp_path / "peas-pedigree.svg").mkdir()
    ended = process(table())
    assert "plants       6" in ended.out
    assert "No picture was written." in ended.out
    assert "peas-pedigree.svg: There is a folder of this name." in ended.err


def test_problems_without_a_screen(process: Call, loop: Path) -> None:
    ended = process(loop)
    assert ended.status == 1
    assert "own_ancestor" in ended.err


def test_the_welcome_page_without_a_screen_names_the_demos(process: Call) -> None:
    ended = process()
    assert ended.status == 0
    assert "The window cannot be shown" in ended.err
    assert "two_peas_both_ways" in ended.out


def without(library: str, folder: Path) -> None:
    """A Qt that lacks a system library, as on a machine without a desktop."""
    package = folder / "bare" / "PySide6"
    package.mkdir(parents=True)
    text = f'raise ImportError("{library}: cannot open shared object file: No such file")\n'
    (package / "__init__.py").write_text("", encoding="utf-8")
    for name in ("QtCore", "QtGui", "QtSvg", "QtWidgets"):
        (package / f"{name}.py").write_text(text, encoding="utf-8")


def bare_path(root: Path, folder: Path) -> str:
    import os

    return os.pathsep.join((str(folder / "bare"), str(root)))


def test_a_library_that_qt_needs_is_named(
    process: Call, table: Call, root: Path, tmp_path: Path
) -> None:
    without("libEGL.so.1", tmp_path)
    path = bare_path(root, tmp_path)
    ended = process(table(), PYTHONPATH=path, DISPLAY=":0")
    assert ended.status == 0
    assert "the desktop library libEGL.so.1 is missing (Debian, Ubuntu: " in ended.err
    assert "plants       6" in ended.out
    assert (tmp_path / "peas-pedigree.dot").read_text(encoding="utf-8").strip()
    assert ET.parse(tmp_path / "peas-pedigree.svg").getroot().tag.endswith("svg")

    drawn = process("diagram", table(), "--out", "peas.pdf", PYTHONPATH=path)
    assert drawn.status == 2
    assert "libEGL.so.1" in drawn.err
    assert ".graphml" in drawn.err
    assert process("diagram", table(), "--out", "peas.graphml", PYTHONPATH=path).status == 0


def test_a_screen_that_does_not_answer() -> None:
    said = why_no_window({"DISPLAY": ":7654"})
    assert said is not None
    assert "DISPLAY" in said or "desktop library" in said


def test_a_platform_that_was_chosen_is_respected() -> None:
    assert why_no_window({"QT_QPA_PLATFORM": "offscreen"}) is None
    assert why_no_window({"QT_QPA_PLATFORM": "xcb;offscreen"}) is None
    assert why_no_window({"QT_QPA_PLATFORM": "xcb", "DISPLAY": ":7654"}) is not None


def test_a_library_that_the_screen_plugin_needs_is_named(monkeypatch: pytest.MonkeyPatch) -> None:
    def lacking(path: str) -> None:
        raise OSError(f"libxcb-cursor.so.0: cannot open shared object file ({path})")

    monkeypatch.setattr(desktop.ctypes, "CDLL", lacking)
    said = why_no_window({"DISPLAY": ":0"})
    assert said == (
        "the desktop library libxcb-cursor.so.0 is missing "
        "(Debian, Ubuntu: sudo apt install libxcb-cursor0)"
    )


def test_elsewhere_a_window_can_be_shown(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "platform", "darwin")
    assert why_no_window({}) is None


def test_a_package_that_is_not_installed_is_named() -> None:
    assert library_missing_for("no_such_package.part") == (
        "the Python package no_such_package is missing"
    )
    assert library_missing_for("PySide6.QtGui", "PySide6.QtSvg") is None


def test_with_a_screen_the_window_is_shown(
    call: Call, table: Call, monkeypatch: pytest.MonkeyPatch
) -> None:
    import pedigreeview.window.app as app

    opened: list[Path | None] = []

    said: list[tuple[str, float | None]] = []

    def run(path: Path | None, *, founders_as: str, fixation: float | None) -> int:
        opened.append(path)
        said.append((founders_as, fixation))
        return 0

    monkeypatch.setattr(app, "run", run)
    path = table()
    assert call(path).status == 0
    assert call("open").status == 0
    assert call().status == 0
    assert opened == [path, None, None]
    assert call("open", path, "--founders-as", "plant", "--fixation", "0.5").status == 0
    assert said == [*3 * [("", None)], ("plant", 0.5)]
