"""Texts that can be searched at once: one run of bytes a field, whose places are found by NumPy.

A search looks for the rarest byte of what was typed in the whole run and then, at these places
alone, for the bytes beside it, so that 100,000 texts take a few milliseconds.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

__all__ = ["TextField", "folded"]

_LINE = 10

Flags = NDArray[np.bool_]


def folded(text: str) -> str:
    """The text as it is compared: case does not matter, nor how many blanks part the words."""
    return " ".join(text.casefold().split())


class TextField:
    """Texts of one kind, such as the names of all plants.

    Parameters
    ----------
    texts : as they are shown
    rows : the plant that each is of, ascending; None: text by text one plant
    """

    def __init__(self, texts: Sequence[str], rows: Sequence[int] | None = None) -> None:
        self.texts = list(texts)
        self.rows = np.asarray(
            range(len(self.texts)) if rows is None else rows, dtype=np.int64
        ).reshape(-1)
        held = "".join(f"{folded(text)}\n" for text in self.texts)
        self._bytes = np.frombuffer(held.encode(), np.uint8)
        ends = np.flatnonzero(self._bytes == _LINE)
        self._starts = np.concatenate([[0], ends[:-1] + 1]) if len(ends) else np.empty(0, np.int64)
        self._lengths = ends - self._starts
        self._bounds = np.append(self._starts, len(self._bytes))
        self._often = np.bincount(self._bytes, minlength=256)

    def __len__(self) -> int:
        return len(self.texts)

    def holding(self, typed: str) -> Flags:
        """(n,) whether each text holds what was typed, which is folded."""
        word = np.frombuffer(typed.encode(), np.uint8)
        if not len(word) or not len(self):
            return np.full(len(self), not len(word))
        by_rarity = sorted(range(len(word)), key=lambda at: int(self._often[word[at]]))
        first = by_rarity[0]
        spots = np.flatnonzero(self._bytes == word[first]) - first
        inside = (spots >= 0) & (spots <= len(self._bytes) - len(word))
        spots = spots[inside]
        for at in by_rarity[1:]:
            spots = spots[self._bytes[spots + at] == word[at]]
        found: Flags = np.diff(np.searchsorted(spots, self._bounds)) > 0
        return found

    def beginning(self, typed: str) -> Flags:
        """(n,) whether each text begins with what was typed, which is folded."""
        word = np.frombuffer(typed.encode(), np.uint8)
        found: Flags = self._lengths >= len(word)
        for at, letter in enumerate(word):
            left = np.flatnonzero(found)
            found[left] = self._bytes[self._starts[left] + at] == letter
        return found

    def being(self, typed: str) -> Flags:
        """(n,) whether each text is what was typed, which is folded."""
        found: Flags = self.beginning(typed) & (self._lengths == len(typed.encode()))
        return found

    def of_row(self, row: int) -> list[str]:
        """The texts of one plant."""
        first, last = np.searchsorted(self.rows, [row, row + 1]).tolist()
        return self.texts[first:last]
