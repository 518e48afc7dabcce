"""Standard output and standard error: results on the one, messages on the other.

A terminal or a file that cannot show the trade's signs gets them in plain letters; a reader that
stops early (`| head`) or an output that was closed is no fault.
"""

from __future__ import annotations

import codecs
import io
import json
import os
import sys
import unicodedata
from collections.abc import Iterable
from contextlib import suppress
from typing import Any, TextIO

__all__ = ["prepare", "say", "silence", "write_document", "write_lines"]

_PLAIN = {
    "×": "x",
    "⊗": "(x)",
    "○": "(o)",
    "⇄": "<->",
    "♀": "(seed)",
    "♂": "(pollen)",
    "→": "->",
    "–": "-",
    "—": "-",
    "−": "-",
    "‘": "'",
    "’": "'",
    "“": '"',
    "”": '"',
    "…": "...",
    "θ": "theta",
    "√": "root ",
    "Σ": "sum ",
    "·": ".",
    "⁄": "/",
}
_HANDLER = "pedigreeview.plain_signs"


def _in_plain_letters(error: UnicodeError) -> tuple[str, int]:
    if not isinstance(error, UnicodeEncodeError):
        raise error
    plain = []
    for sign in error.object[error.start : error.end]:
        shown = _PLAIN.get(sign)
        if shown is None:
            parts = unicodedata.normalize("NFKD", sign)
            shown = "".join(_PLAIN.get(part, part) for part in parts)
            shown = shown.encode("ascii", "ignore").decode("ascii") or "?"
        plain.append(shown)
    return "".join(plain), error.end


def prepare() -> None:
    """Make both streams write what they can show, whatever their encoding."""
    codecs.register_error(_HANDLER, _in_plain_letters)
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors=_HANDLER)


def say(message: str) -> None:
    """One message for the person, on standard error; a full or closed one changes no status."""
    with suppress(OSError):
        _write(sys.stderr, [message])


def write_lines(lines: Iterable[str]) -> None:
    """A result for a person, on standard output."""
    _write(sys.stdout, lines)


def write_document(document: dict[str, Any]) -> None:
    """A result for a program: one JSON document on standard output."""
    encoding = (getattr(sys.stdout, "encoding", None) or "").lower().replace("-", "")
    plain = not encoding.startswith("utf")
    _write(sys.stdout, [json.dumps(document, indent=2, ensure_ascii=plain, allow_nan=False)])


def _write(stream: TextIO | None, lines: Iterable[str]) -> None:
    if stream is None:
        return
    try:
        stream.write("".join(f"{line}\n" for line in lines))
        stream.flush()
    except BrokenPipeError:
        silence(stream)


def silence(stream: TextIO) -> None:
    """Send what is left in a stream nowhere, so that the interpreter's end does not complain."""
    try:
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, stream.fileno())
        os.close(nowhere)
    except (OSError, ValueError):
        pass
