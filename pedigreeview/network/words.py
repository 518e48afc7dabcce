"""One plain sentence for a coefficient, for a person who knows no genetics."""

from __future__ import annotations

from bisect import bisect_left

__all__ = ["inbreeding_sentence", "relatedness_sentence"]

# Coancestry of familiar diploid relatives among unrelated plants that are not inbred: the
# definitions of any handbook (parent and child 1/4, full sibs 1/4, half sibs 1/8, first cousins
# 1/16).  With P sets of chromosomes a plant that is not inbred has 1/P with itself, so all of these
# are 2/P of that; plants that breed true are alike whatever their ploidy.
_LANDMARKS: tuple[tuple[float, str], ...] = (
    (1 / 64, "second cousins of unrelated plants"),
    (1 / 32, "half first cousins of unrelated plants"),
    (1 / 16, "first cousins of unrelated plants"),
    (1 / 8, "half sibs of unrelated plants"),
    (1 / 4, "full sibs, or parent and child, of unrelated plants"),
    (1 / 2, "two cuttings of one plant that is not inbred"),
    (3 / 4, "two plants of one family after much selfing"),
    (1.0, "two plants of one pure line"),
)


def _landmarks(ploidy: int) -> list[tuple[float, str]]:
    return [(value * 2 / ploidy if value <= 1 / 2 else value, who) for value, who in _LANDMARKS]


def relatedness_sentence(coancestry: float, ploidy: int = 2) -> str:
    """What a coancestry means beside relatives, of the same ploidy, that everyone knows."""
    if coancestry == 0:
        return "Not related by anything in this book."
    landmarks = _landmarks(ploidy)
    values = [value for value, _ in landmarks]
    place = bisect_left(values, coancestry - 1e-12)
    if place < len(values) and abs(values[place] - coancestry) < 1e-9:
        return f"The same as {landmarks[place][1]}."
    if place == 0:
        return f"Less than {landmarks[0][1]}."
    below, above = landmarks[place - 1], landmarks[place]
    if coancestry / below[0] < above[0] / coancestry:
        return f"A little more than {below[1]}."
    return f"A little less than {above[1]}."


def inbreeding_sentence(inbreeding: float) -> str:
    """What an inbreeding coefficient means for the plant's genes and for its seed."""
    if inbreeding == 0:
        return (
            "None of its gene pairs are alike by descent; its seed will vary as its parents differ."
        )
    if inbreeding == 1:
        return "All of its gene pairs are alike by descent: it breeds true."
    share = 100 * inbreeding
    shown = f"{share:.0f}%" if share >= 1 else "Less than 1%"
    about = "About " if shown[0].isdigit() else ""
    return f"{about}{shown} of its gene pairs are expected to be alike by descent."
