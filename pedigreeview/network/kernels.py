"""Compiled kernels for large pedigrees; imported only when a pedigree is large.

Each has a plain road beside it that gives the same numbers where numba is missing.
"""

from __future__ import annotations

import importlib.util
from functools import cache
from types import ModuleType

__all__ = ["available", "compiled"]


@cache
def available() -> bool:
    """Whether numba is installed."""
    return importlib.util.find_spec("numba") is not None


@cache
def compiled() -> ModuleType:
    """The module of compiled kernels, loaded on first use."""
    from pedigreeview.network import compiled_kernels

    return compiled_kernels
