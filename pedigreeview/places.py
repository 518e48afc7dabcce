"""Where the files that come with the program lie, from a clone and from a wheel alike."""

from __future__ import annotations

from pathlib import Path

__all__ = ["demo", "demos", "resource"]

_PACKAGE = Path(__file__).resolve().parent


def _folder(name: str) -> Path:
    inside = _PACKAGE / name
    return inside if inside.is_dir() else _PACKAGE.parent / name


def resource(*parts: str) -> Path:
    """Path of a file in `resources/`."""
    return _folder("resources").joinpath(*parts)


def demos() -> Path:
    """The folder that holds the demo books."""
    return _folder("demo_pedigrees")


def demo(name: str) -> Path:
    """Path of one demo, by the name of its folder or file."""
    return demos() / name
