"""Where the ink of a PDF lies, read from its page descriptions without any other program.

ISO 32000-1, 8.4 and 8.5 (from memory): operators follow their numbers; `cm` changes the matrix, `q`
and `Q` keep and restore it with the clip, a path is built by `m l c re h`, painted by `f S B` and
made a clip by `W`.
"""

from __future__ import annotations

import re
import zlib
from dataclasses import dataclass
from pathlib import Path

POINTS_PER_MM = 72 / 25.4
Box = tuple[float, float, float, float]
_PAINTS = {"f", "f*", "F", "S", "s", "B", "B*", "b", "b*"}
_TOKEN = re.compile(r"<[^>]*>|\([^)]*\)|\[[^\]]*\]|/[^\s/<\[(]+|[^\s/<\[(]+")
_PAGE = re.compile(rb"/Type /Page\b.*?endobj", re.S)
_CONTENTS = re.compile(rb"/Contents (\d+) 0 R")
_SIZE = re.compile(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)")


@dataclass
class Ink:
    """One page in points: its size, and the boxes of all that is painted on it."""

    width: float
    height: float
    boxes: list[Box]
    letters: list[tuple[float, float]]
    """Where letters begin, on their baseline."""

    def blank_mm(self) -> tuple[float, float, float, float]:
        """Blank to the left, below, to the right and above, in mm."""
        points = [(x, y) for a, b, c, d in self.boxes for x, y in ((a, b), (c, d))] + self.letters
        xs, ys = [x for x, _ in points], [y for _, y in points]
        sides = (min(xs), min(ys), self.width - max(xs), self.height - max(ys))
        left, below, right, above = (side / POINTS_PER_MM for side in sides)
        return left, below, right, above


def inked(path: Path) -> list[Ink]:
    """Every page of a PDF that Qt wrote."""
    data = path.read_bytes()
    found = []
    for page in _PAGE.findall(data):
        number, size = _CONTENTS.search(page), _SIZE.search(page)
        assert number is not None
        assert size is not None
        width, height = map(float, size.groups())
        found.append(_page(_contents(data, int(number[1])), width, height))
    assert found
    return found


def _contents(data: bytes, number: int) -> str:
    at = data.index(b"\n%d 0 obj" % number)
    at = data.index(b"stream\n", at) + len(b"stream\n")
    return zlib.decompressobj().decompress(data[at:]).decode("latin-1")


def _times(a: list[float], b: list[float]) -> list[float]:
    return [
        a[0] * b[0] + a[1] * b[2],
        a[0] * b[1] + a[1] * b[3],
        a[2] * b[0] + a[3] * b[2],
        a[2] * b[1] + a[3] * b[3],
        a[4] * b[0] + a[5] * b[2] + b[4],
        a[4] * b[1] + a[5] * b[3] + b[5],
    ]


def _page(text: str, width: float, height: float) -> Ink:
    ink = Ink(width, height, [], [])
    matrix, clip = [1.0, 0.0, 0.0, 1.0, 0.0, 0.0], (0.0, 0.0, width, height)
    kept: list[tuple[list[float], Box]] = []
    path: list[tuple[float, float]] = []
    numbers: list[float] = []
    line, clips = [1.0, 0.0, 0.0, 1.0, 0.0, 0.0], False

    def put(x: float, y: float) -> None:
        m = matrix
        path.append((m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]))

    for token in _TOKEN.findall(text):
        try:
            numbers.append(float(token))
            continue
        except ValueError:
            pass
        if token == "q":
            kept.append((matrix, clip))
        elif token == "Q":
            matrix, clip = kept.pop()
        elif token == "cm":
            matrix = _times(numbers[-6:], matrix)
        elif token in ("m", "l"):
            put(*numbers[-2:])
        elif token == "c":
            for at in (-6, -4, -2):
                put(numbers[at], numbers[at + 1])
        elif token == "re":
            x, y, wide, high = numbers[-4:]
            for corner in ((x, y), (x + wide, y), (x, y + high), (x + wide, y + high)):
                put(*corner)
        elif token == "Tm":
            line = numbers[-6:]
        elif token == "Td":
            line = _times([1, 0, 0, 1, *numbers[-2:]], line)
        elif token == "Tj":
            at = _times(line, matrix)
            if clip[0] <= at[4] <= clip[2] and clip[1] <= at[5] <= clip[3]:
                ink.letters.append((at[4], at[5]))
        elif token in ("W", "W*"):
            clips = True
        if token in _PAINTS or token == "n":
            if path:
                xs, ys = [x for x, _ in path], [y for _, y in path]
                box = (
                    max(min(xs), clip[0]),
                    max(min(ys), clip[1]),
                    min(max(xs), clip[2]),
                    min(max(ys), clip[3]),
                )
                seen = box[0] <= box[2] and box[1] <= box[3]
                if token in _PAINTS and seen:
                    ink.boxes.append(box)
                if clips:
                    clip = box
            path, clips = [], False
        if not token.startswith(("<", "(", "[", "/")):
            numbers = []
    return ink
