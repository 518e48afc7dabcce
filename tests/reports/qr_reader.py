"""A second route for QR codes: reads the squares back by the rules of ISO/IEC 18004 (from memory).

Enough for versions 1 and 2 without damage: format, mask, zigzag, and the three common modes.
"""

from __future__ import annotations

from collections.abc import Sequence

__all__ = ["read_qr"]

_ALNUM = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
_MASKS = (
    lambda x, y: (x + y) % 2,
    lambda x, y: y % 2,
    lambda x, y: x % 3,
    lambda x, y: (x + y) % 3,
    lambda x, y: (x // 3 + y // 2) % 2,
    lambda x, y: x * y % 2 + x * y % 3,
    lambda x, y: (x * y % 2 + x * y % 3) % 2,
    lambda x, y: ((x + y) % 2 + x * y % 3) % 2,
)


def read_qr(squares: Sequence[Sequence[bool]]) -> str:
    """The text of a code."""
    size = len(squares)
    assert size in (21, 25), "only versions 1 and 2"
    assert all(len(row) == size for row in squares)
    _finders(squares, size)
    spots = [(8, x) for x in (0, 1, 2, 3, 4, 5, 7, 8)] + [(y, 8) for y in (7, 5, 4, 3, 2, 1, 0)]
    form = int("".join(str(int(squares[y][x])) for y, x in spots), 2) ^ 0x5412
    mask = _MASKS[form >> 10 & 7]
    bits = "".join(str(int(squares[y][x]) ^ int(mask(x, y) == 0)) for y, x in _zigzag(size))
    return _text(bits)


def _finders(squares: Sequence[Sequence[bool]], size: int) -> None:
    for top, left in ((0, 0), (0, size - 7), (size - 7, 0)):
        for y in range(7):
            for x in range(7):
                ring = max(abs(y - 3), abs(x - 3))
                assert squares[top + y][left + x] == (ring != 2), "no finder"


def _fixed(y: int, x: int, size: int) -> bool:
    if 6 in (x, y):
        return True
    if y < 9 and (x < 9 or x >= size - 8):
        return True
    if y >= size - 8 and x < 9:
        return True
    return size == 25 and 16 <= y <= 20 and 16 <= x <= 20


def _zigzag(size: int) -> list[tuple[int, int]]:
    found = []
    up = True
    right = size - 1
    while right > 0:
        if right == 6:
            right -= 1
        for step in range(size):
            y = size - 1 - step if up else step
            found += [(y, x) for x in (right, right - 1) if not _fixed(y, x, size)]
        up = not up
        right -= 2
    return found


def _text(bits: str) -> str:
    def take(count: int) -> int:
        nonlocal bits
        value, bits = int(bits[:count], 2), bits[count:]
        return value

    mode = take(4)
    if mode == 4:
        length = take(8)
        return bytes(take(8) for _ in range(length)).decode("utf-8")
    if mode == 2:
        length, text = take(9), ""
        while length > 1:
            pair = take(11)
            text += _ALNUM[pair // 45] + _ALNUM[pair % 45]
            length -= 2
        return text + (_ALNUM[take(6)] if length else "")
    assert mode == 1, f"mode {mode}"
    length, text = take(10), ""
    while length:
        digits = min(3, length)
        text += f"{take((0, 4, 7, 10)[digits]):0{digits}d}"
        length -= digits
    return text
