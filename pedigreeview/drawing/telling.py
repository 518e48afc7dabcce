"""How the words of a picture are told: as they are, or in the language of who shows it.

The words of the picture are made here, in English.  A window that speaks another language says so
once by `tell_with`; then every text that is painted goes through its function.
"""

from __future__ import annotations

from collections.abc import Callable

__all__ = ["tell", "tell_with"]

_told: list[Callable[[str], str]] = []


def tell(text: str) -> str:
    """The text as it is to be painted."""
    return _told[-1](text) if _told else text


def tell_with(function: Callable[[str], str] | None) -> None:
    """Let every text go through a function from now on; None: as it is."""
    _told.clear()
    if function is not None:
        _told.append(function)
