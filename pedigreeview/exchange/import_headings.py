"""What a heading of a foreign table probably means.

The words are those that growers write over their columns, in English with a few of other languages
(common practice, no source).  A guess is only proposed; the person sees it with its reason.
"""

from __future__ import annotations

import re
import unicodedata

__all__ = ["CROSS_MEANINGS", "MEANINGS", "known_meaning", "said_order"]

MEANINGS: dict[str, str] = {
    "plant": "code of the plant",
    "name": "name",
    "seed_parent": "seed parent",
    "pollen_parent": "pollen parent",
    "parents": "both parents in one cell, such as 'A x B' or 'A/B'",
    "pollen_odds": "odds of pollen parents",
    "drawn": "one pollen parent or one for each seed",
    "cross": "code of the cross",
    "kind": "variety, plant or family",
    "raised": "how the plant arose",
    "selfings": "selfings after the cross",
    "fixation": "fixation",
    "crop": "crop",
    "ploidy": "ploidy",
    "sown": "date of sowing",
    "status": "status",
    "place": "place",
    "obtained_from": "where it was obtained",
    "protected": "protection",
    "note": "note",
    "trait": "a trait, each cell a score",
    "kept": "kept as a note under its heading",
    "left_out": "left out",
}
"""What a column of a table with a row for each plant can mean, with its description."""

CROSS_MEANINGS: dict[str, str] = {
    "cross": "code of the cross",
    "seed_parent": "seed parent",
    "pollen_parent": "pollen parent",
    "parents": "both parents in one cell, such as 'A x B' or 'A/B'",
    "made_on": "date of the cross",
    "flowers": "flowers worked",
    "set": "flowers that set",
    "fruits": "fruits harvested",
    "seeds": "seeds harvested",
    "harvested": "date of the harvest",
    "by": "who worked it",
    "state": "planned, made or skipped",
    "note": "note",
    "kept": "kept as a note under its heading",
    "left_out": "left out",
}
"""The same of a table with a row for each cross."""

_WORDS: dict[str, tuple[str, ...]] = {
    "plant": (
        "plant", "code", "plant code", "id", "no", "number", "plant no", "plant number", "plant id",
        "label", "tag", "accession", "accession number", "accession no", "accenumb", "seedling",
        "seedling number", "seedling no", "selection", "line", "entry", "variety", "cultivar",
        "individual", "offspring", "progeny", "pflanze", "nummer", "sorte", "plante", "planta",
    ),
    "name": (
        "name", "plant name", "variety name", "cultivar name", "accename", "registered name",
        "nickname", "nom", "nombre",
    ),
    "seed_parent": (
        "seed parent", "seedparent", "pod parent", "mother", "female", "female parent", "dam",
        "maternal", "maternal parent", "mother plant", "seed", "♀", "parent 1", "parent1", "mutter",
        "mère", "mere", "madre", "moeder", "berry parent",
    ),
    "pollen_parent": (
        "pollen parent", "pollenparent", "father", "male", "male parent", "sire", "paternal",
        "paternal parent", "pollen", "pollen donor", "pollinator", "♂", "parent 2", "parent2",
        "vater", "père", "pere", "padre", "vader",
    ),
    "parents": (
        "parents", "parentage", "cross made", "pedigree", "crossing", "ancestry", "ancest",
        "seed parent x pollen parent", "mother x father", "female x male", "pod x pollen",
        "seed x pollen", "eltern", "kreuzung",
    ),
    "cross": ("cross", "cross code", "cross no", "cross number", "cross id", "family no"),
    "kind": ("kind", "kind of plant"),
    "raised": ("raised", "how raised"),
    "pollen_odds": ("pollen odds", "odds"),
    "drawn": ("drawn",),
    "selfings": ("selfings", "selfed"),
    "fixation": ("fixation",),
    "crop": ("crop", "cropname", "species", "kind of crop"),
    "ploidy": ("ploidy", "ploidy level"),
    "sown": ("sown", "sown on", "sowing date", "date sown", "planted", "date planted", "gesät"),
    "status": ("status", "fate"),
    "place": ("place", "bed", "location", "plot", "row", "pot", "where", "position", "beet"),
    "obtained_from": (
        "obtained from", "source", "origin", "from", "supplier", "donor", "obtained", "donorname",
    ),
    "protected": ("protected", "protection"),
    "note": ("note", "notes", "remarks", "remark", "comment", "comments", "description",
             "bemerkung", "notiz"),
    "made_on": (
        "made on", "date", "cross date", "date crossed", "date of cross", "crossed on",
        "pollinated", "pollinated on", "pollination date", "date pollinated", "datum",
    ),
    "flowers": ("flowers", "flowers worked", "blooms", "flowers pollinated", "pollinations"),
    "set": ("set", "takes", "take", "flowers set", "pods set", "fruits set"),
    "fruits": ("fruits", "pods", "hips", "berries", "fruits harvested", "pods harvested"),
    "seeds": ("seeds", "seed count", "number of seeds", "seeds harvested", "no of seeds"),
    "harvested": ("harvested", "harvest date", "date harvested", "harvested on"),
    "by": ("by", "who", "made by", "worked by"),
    "state": ("state",),
}  # fmt: skip

_KNOWN: dict[str, list[str]] = {}
for _meaning, _names in _WORDS.items():
    for _name in _names:
        _KNOWN.setdefault(_name, []).append(_meaning)

_FIRST = re.compile(r"(seed|mother|female|pod|♀).{0,12}(×| x |/).{0,4}(pollen|father|male|♂)")


def _folded(heading: str) -> str:
    text = unicodedata.normalize("NFKC", heading).casefold()
    text = re.sub(r"[_\-.:#()\[\]]+", " ", text)
    return " ".join(text.split())


def known_meaning(heading: str, form: str = "plants") -> str | None:
    """What a heading means in a table of this form ('plants' or 'crosses'), or None."""
    found = _KNOWN.get(_folded(heading), [])
    allowed = MEANINGS if form == "plants" else CROSS_MEANINGS
    for meaning in found:
        if meaning in allowed:
            return meaning
    if form == "crosses" and _folded(heading) in ("no", "number", "code", "id"):
        return "cross"
    return None


def said_order(heading: str) -> bool:
    """Whether a heading itself says that the seed parent stands first."""
    return _FIRST.search(_folded(heading)) is not None
