"""Several codes typed into one field."""

from __future__ import annotations

import re

__all__ = ["codes_typed"]


def codes_typed(text: str) -> list[str]:
    """The codes, parted by commas, semicolons or lines, each once; blanks belong to a code."""
    parts = (part.strip() for part in re.split(r"[,;\n]", text))
    return list(dict.fromkeys(part for part in parts if part))
