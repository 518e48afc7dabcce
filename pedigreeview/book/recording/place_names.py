"""Places in the garden as text: 'Bed 2 / row 3 / 7' is bed, row and position in the row.

Any text may stand as a place; one with slashes is read from the largest part to the smallest.  A
last part that is a number is the position counted from the stake.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

__all__ = ["GardenPlace", "numbered_places", "read_place"]

_POSITION = re.compile(r"(?:plant|place|no\.?|position)?\s*([0-9]{1,6})\Z", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class GardenPlace:
    """A place, read.

    bed : the first part; row : what stands between, '' for none; position : from 1, None for none
    """

    bed: str
    row: str = ""
    position: int | None = None

    def text(self) -> str:
        """The place as it is written in a record."""
        parts = [self.bed, self.row, "" if self.position is None else str(self.position)]
        return " / ".join(part for part in parts if part)


def read_place(text: str) -> GardenPlace | None:
    """Read a place; None for a blank."""
    parts = [part for piece in text.split("/") if (part := " ".join(piece.split()))]
    if not parts:
        return None
    position = _POSITION.match(parts[-1]) if len(parts) > 1 else None
    if position is not None:
        parts.pop()
    return GardenPlace(
        parts[0], " / ".join(parts[1:]), int(position[1]) if position is not None else None
    )


def numbered_places(place: str, first: int, count: int) -> list[str]:
    """The places of plants that stand one after another in a row.

    A single plant, and plants at a place without slashes, get the place as it is written.
    """
    read = read_place(place)
    if read is None:
        return [""] * count
    if read.position is not None:
        first = read.position
    elif count == 1 or not read.row:
        return [place.strip()] * count
    return [GardenPlace(read.bed, read.row, first + step).text() for step in range(count)]
