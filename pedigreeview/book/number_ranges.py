"""The lowest and highest value of the numbers from which others are worked out."""

from __future__ import annotations

__all__ = ["RANGES", "SETTING_RANGES", "fits_range"]

Range = tuple[float | None, float | None]

RANGES: dict[tuple[str, str], Range] = {
    ("plants", "fixation"): (0, 1),
    ("plants", "ploidy"): (1, 64),
    ("plants", "selfings"): (0, 1000),
    ("pollen_candidates", "odds"): (0, 1),
    ("parent_findings", "odds"): (0, 1),
    ("packets", "germination"): (0, None),
}
"""Of columns, by table and name."""

SETTING_RANGES: dict[str, Range] = {
    "ploidy": RANGES["plants", "ploidy"],
    "variety_fixation": (0, 1),
    "plant_fixation": (0, 1),
    "double_reduction": (0, 1 / 6),
    "outcrossing": (0, 1),
}
"""Of the settings that are numbers."""


def fits_range(value: float | None, between: Range) -> bool:
    """Whether a number lies in a range, its ends counted in; None always does."""
    low, high = between
    return value is None or ((low is None or value >= low) and (high is None or value <= high))
