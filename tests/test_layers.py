"""Who may import whom (DEVELOPERS.md, 'Layers'): seen in the text of every module, also inside
functions, and in what a fresh interpreter has loaded after importing a whole layer."""

from __future__ import annotations

import ast
import json
import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

PACKAGE = Path(__file__).resolve().parent.parent / "pedigreeview"
LAYERS = ("book", "network", "planning", "exchange", "drawing", "reports", "window")
ABOVE_ALL = ("cli", "commands", "__main__", "__init__")
FOR_ALL = ("places",)

BANNED = {
    "book": ("PySide6", "shiboken6", "networkx", "pygraphviz"),
    "network": ("PySide6", "shiboken6", "sqlite3"),
    "planning": ("PySide6", "shiboken6", "sqlite3"),
    "exchange": ("PySide6", "shiboken6"),
    "drawing": ("PySide6.QtWidgets", "PySide6.QtPrintSupport", "sqlite3"),
    "reports": ("PySide6.QtWidgets", "sqlite3"),
    "window": ("sqlite3",),
}
QT_FOR_DRAWING = ("PySide6.QtCore", "PySide6.QtGui", "PySide6.QtSvg")


def modules() -> list[Path]:
    return sorted(PACKAGE.rglob("*.py"))


def layer_of(path: Path) -> str:
    first = path.relative_to(PACKAGE).parts[0]
    return first.removesuffix(".py")


def imported(path: Path) -> Iterator[tuple[int, str]]:
    """Line and full name of everything that a module imports, wherever in it."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    here = ("pedigreeview", *path.relative_to(PACKAGE).parts[:-1])
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            for name in node.names:
                yield node.lineno, name.name
        elif isinstance(node, ast.ImportFrom):
            base = node.module or ""
            if node.level:
                above = here[: len(here) - node.level + 1]
                base = ".".join([*above, *([base] if base else [])])
            for name in node.names:
                yield node.lineno, f"{base}.{name.name}"
        elif isinstance(node, ast.Call) and node.args:
            called = node.func
            word = called.attr if isinstance(called, ast.Attribute) else getattr(called, "id", "")
            named = node.args[0]
            if word in ("import_module", "__import__") and isinstance(named, ast.Constant):
                yield node.lineno, str(named.value)


def within(name: str, package: str) -> bool:
    return name == package or name.startswith(package + ".")


def faults_of(path: Path) -> list[str]:
    layer = layer_of(path)
    if layer in ABOVE_ALL or layer in FOR_ALL:
        return []
    lower = (*LAYERS[: LAYERS.index(layer) + 1], *FOR_ALL)
    faults = []
    for line, name in imported(path):
        place = f"{path.relative_to(PACKAGE)}:{line} imports {name}"
        if within(name, "pedigreeview") and name != "pedigreeview.__version__":
            part = name.split(".")[1] if "." in name else ""
            if part not in lower:
                faults.append(f"{place}, which stands above {layer}")
        if any(within(name, banned) for banned in BANNED[layer]):
            faults.append(f"{place}, which {layer} does without")
        of_qt = layer == "drawing" and within(name, "PySide6")
        if of_qt and not any(within(name, allowed) for allowed in QT_FOR_DRAWING):
            faults.append(f"{place}; drawing uses QtCore, QtGui and QtSvg alone")
    return faults


def test_every_module_belongs_to_a_layer() -> None:
    known = {*LAYERS, *ABOVE_ALL, *FOR_ALL}
    assert {layer_of(path) for path in modules()} <= known
    assert {path.name for path in PACKAGE.iterdir() if path.is_dir()} >= set(LAYERS)


def test_no_import_points_up() -> None:
    assert [fault for path in modules() for fault in faults_of(path)] == []


def test_places_stands_below_everything() -> None:
    names = [name for _, name in imported(PACKAGE / "places.py")]
    assert not any(within(name, "pedigreeview") for name in names)


def test_the_window_computes_no_coefficient() -> None:
    banned = ("numpy", "scipy", "networkx", "numba")
    internals = tuple(
        f"pedigreeview.network.{path.stem}"
        for path in (PACKAGE / "network").glob("*.py")
        if path.stem not in ("__init__", "text", "words", "pedigree", "reciprocals")
    )
    found = [
        f"{path.name}:{line} {name}"
        for path in (PACKAGE / "window").rglob("*.py")
        for line, name in imported(path)
        if any(within(name, other) for other in (*banned, *internals))
    ]
    assert found == []


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("from pedigreeview.window import app", "above network"),
        ("def f():\n    import pedigreeview.exchange.plant_table", "above network"),
        ("def f():\n    from ..drawing.view import Look", "above network"),
        ("from pedigreeview import read", "above network"),
        ("import PySide6.QtCore", "does without"),
        ("import importlib\nimportlib.import_module('PySide6')", "does without"),
        ("if True:\n    import sqlite3 as s", "does without"),
    ],
)
def test_the_test_itself_cannot_be_fooled(
    text: str, fault: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "network").mkdir()
    module = tmp_path / "network" / "sly.py"
    module.write_text(text, encoding="utf-8")
    monkeypatch.setitem(globals(), "PACKAGE", tmp_path)
    found = faults_of(module)
    assert len(found) == 1
    assert fault in found[0]


def loaded_after(*statements: str) -> set[str]:
    """Modules that a fresh interpreter holds after some statements."""
    code = "\n".join(("import json, sys", *statements, "print(json.dumps(list(sys.modules)))"))
    environment = {**os.environ, "PYTHONPATH": str(PACKAGE.parent)}
    done = subprocess.run(
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        env=environment,
        stdin=subprocess.DEVNULL,
    )
    assert done.returncode == 0, done.stderr
    return set(json.loads(done.stdout))


def every_module_of(layer: str) -> list[str]:
    names = []
    for path in sorted((PACKAGE / layer).rglob("*.py")):
        parts = path.relative_to(PACKAGE.parent).with_suffix("").parts
        names.append(".".join(parts[:-1] if parts[-1] == "__init__" else parts))
    return [f"import {name}" for name in names]


@pytest.mark.parametrize("layer", ["book", "network", "planning", "exchange", "drawing"])
def test_a_layer_alone_loads_nothing_of_another_kind(layer: str) -> None:
    loaded = loaded_after(*every_module_of(layer))
    assert f"pedigreeview.{layer}" in loaded
    assert sorted(n for n in loaded if any(within(n, banned) for banned in BANNED[layer])) == []


def test_help_starts_without_anything_slow() -> None:
    loaded = loaded_after("import pedigreeview.cli", "pedigreeview.cli.parser()")
    slow = ("numpy", "scipy", "networkx", "pygraphviz", "numba", "PySide6")
    assert sorted(name for name in loaded if name in slow) == []


def test_the_library_starts_without_anything_slow() -> None:
    loaded = loaded_after("import pedigreeview", "pedigreeview.read")
    assert "numpy" not in loaded
    assert "PySide6" not in loaded
