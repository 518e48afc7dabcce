"""Marks that tell the founders of a picture apart where no colour does.  Knows no Qt.

A mark is the beginning or the ending of the founder's code, as short as tells all of them apart:
'V001' and 'V013' are '1' and '3'.  Where none of up to three signs does, they are numbered; the key
to the signs names them either way.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from pedigreeview.drawing.founders import OTHERS

__all__ = ["MOST", "founder_marks", "marks_of"]

MOST = 3
"""Signs of the longest mark; more would not fit on the edge of a tag."""


@lru_cache(maxsize=64)
def founder_marks(codes: tuple[str, ...]) -> dict[str, str]:
    """The mark of each founder, in the order given; all differ, capitals aside.

    Parameters
    ----------
    codes : different codes, in the order in which they are to be numbered if need be
    """
    for length in range(1, MOST + 1):
        for cut in (slice(None, length), slice(-length, None)):
            parts = [code[cut] for code in codes]
            plain = all(part.isalnum() for part in parts)
            if plain and len({part.casefold() for part in parts}) == len(parts):
                return dict(zip(codes, parts, strict=True))
    return {code: str(at + 1) for at, code in enumerate(codes)}


def marks_of(founders: Iterable[tuple[str, int]]) -> dict[str, str]:
    """The marks of the founders that have a number in the palette of their own.

    founders : code and number, as `View.founders` or its dictionary's items
    """
    return founder_marks(tuple(code for code, number in founders if number != OTHERS))
