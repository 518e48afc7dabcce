"""What a clone and what a wheel hold."""

from __future__ import annotations

import subprocess
import tomllib
from pathlib import Path

import pedigreeview
from pedigreeview.places import demo, demos, resource

TOP_LEVEL = {
    "README.md",
    "DEVELOPERS.md",
    "pyproject.toml",
    "pedigreeview",
    "resources",
    "tests",
    "demo_pedigrees",
}
MADE_BY_TOOLS = {"build", "dist"}


def _project(root: Path) -> dict[str, object]:
    return tomllib.loads((root / "pyproject.toml").read_text(encoding="utf-8"))


def _visible(root: Path) -> set[str]:
    if (root / ".git").exists():
        # The clone may belong to another user than the one who tests it.
        git = ["git", "-c", "safe.directory=*", "ls-files", "-z", "--cached", "--others"]
        done = subprocess.run(
            [*git, "--exclude-standard"], cwd=root, capture_output=True, check=True
        )
        listed = done.stdout.decode("utf-8")
        names = {name.partition("/")[0] for name in listed.split("\0") if name}
        names = {name for name in names if (root / name).exists()}
    else:
        names = {path.name for path in root.iterdir()} - MADE_BY_TOOLS
    return {name for name in names if not name.startswith(".")}


def test_the_top_level_is_the_one_agreed(root: Path) -> None:
    assert _visible(root) == TOP_LEVEL


def test_resources_and_demos_are_found_from_here() -> None:
    assert resource("crops.json").is_file()
    assert demo("two_peas_both_ways").joinpath("datapackage.json").is_file()
    assert (demos() / "newcomers_table.csv").is_file()


def test_the_wheel_carries_resources_and_demos(root: Path) -> None:
    wheel = _project(root)["tool"]["hatch"]["build"]["targets"]["wheel"]  # type: ignore[index]
    assert wheel["packages"] == ["pedigreeview"]
    assert wheel["force-include"] == {
        "resources": "pedigreeview/resources",
        "demo_pedigrees": "pedigreeview/demo_pedigrees",
    }
    for folder in wheel["force-include"]:
        assert (root / folder).is_dir()
        assert not (root / "pedigreeview" / folder).exists()


def test_qt_stays_below_the_version_that_breaks_this_python(root: Path) -> None:
    # PySide6 6.12.0 drops a reference to None with every call that returns nothing (Python 3.11).
    project = _project(root)["project"]
    assert "PySide6-Essentials>=6.10,<6.12" in project["dependencies"]  # type: ignore[index]


def test_python_and_the_command(root: Path) -> None:
    project = _project(root)["project"]
    assert project["requires-python"] == ">=3.11"  # type: ignore[index]
    assert project["scripts"] == {"pedigreeview": "pedigreeview.cli:main"}  # type: ignore[index]


def test_there_is_one_version(root: Path) -> None:
    held = _project(root)
    assert held["project"]["dynamic"] == ["version"]  # type: ignore[index]
    assert held["tool"]["hatch"]["version"]["path"] == "pedigreeview/__init__.py"  # type: ignore[index]
    assert pedigreeview.__version__.count(".") == 2
