"""JSON in and out: refused where it is too large or nested too deep, written the same each time."""

from __future__ import annotations

import json
import re
from typing import Any

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.archive_guard import MOST_UNPACKED

__all__ = ["read_json", "write_json"]

_MOST_DEPTH = 100
_OPENS = re.compile(r'"(?:[^"\\]|\\.)*"|[\[{]|[\]}]', re.S)


def read_json(text: str, name: str) -> Any:
    """What a JSON text holds.

    Raises
    ------
    Fault : it is no JSON, too large or nested too deep
    """
    where = Place(file=name)
    if len(text) > MOST_UNPACKED:
        raise Fault(f"The file is larger than {MOST_UNPACKED // 1_000_000} MB.", where, "Split it.")
    depth = 0
    for found in _OPENS.finditer(text):
        sign = found[0]
        depth += (sign in "[{") - (sign in "]}") if len(sign) == 1 else 0
        if depth > _MOST_DEPTH:
            raise Fault("The JSON is nested too deep to be a list of plants.", where, "Check it.")
    try:
        return json.loads(text.removeprefix("\ufeff"), parse_constant=_no_constant)
    except json.JSONDecodeError as error:
        raise Fault(
            f"The file is no JSON: {error.msg}.", Place(name, error.lineno), "Check that line."
        ) from None
    except (ValueError, RecursionError) as error:
        raise Fault(f"The file is no JSON: {error}.", where, "Check it.") from None


def _no_constant(word: str) -> Any:
    raise ValueError(f"{word} is no number of JSON")


def write_json(document: Any) -> str:
    """A document as text, the same bytes for the same document."""
    text = json.dumps(document, ensure_ascii=False, indent=2, allow_nan=False)
    # Half a surrogate pair cannot be written in UTF-8.
    return text.encode("utf-8", "replace").decode("utf-8") + "\n"
