"""Characters that no picture and no XML file can hold, found in cells.

Control characters other than tab and line ends, halves of surrogate pairs and U+FFFE and U+FFFF are
left out by XML 1.0, so a name with one in it could be kept but never drawn or sent on.
"""

from __future__ import annotations

import re

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.text_files import Sheet

__all__ = ["character_fault", "heading_faults", "unfit"]

_UNFIT = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")


def unfit(text: str) -> str:
    """The name of the first character that cannot be drawn, such as 'U+0007'; '' if none."""
    found = _UNFIT.search(text)
    return f"U+{ord(found[0]):04X}" if found else ""


def character_fault(text: str, place: Place, what: str = "cell") -> Fault | None:
    """The fault of a cell with a character that cannot be drawn, or None."""
    name = unfit(text)
    if not name:
        return None
    mend = _UNFIT.sub("", text).strip()
    return Fault(
        f"The {what} {text[:60]!r} has the character {name} in it, which no picture can show.",
        place,
        f"Delete that character: {mend[:60]!r}." if mend else "Clear the cell.",
    )


def heading_faults(found: Sheet, file: str) -> list[Fault]:
    """Faults of the headings of a sheet."""
    faults = [
        character_fault(heading, Place(file, found.heading_line, heading), "heading")
        for heading in found.headings
    ]
    return [fault for fault in faults if fault is not None]
