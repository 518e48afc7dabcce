"""Which labels there are: tags for flowers and fruits, pot labels, row stakes, seed packets.

Plain data made from the records; knows no Qt, no sizes and no places.
"""

from __future__ import annotations

from collections.abc import Iterable

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.reports.label_makers import NOT_FOR_EATING, LabelMaker
from pedigreeview.reports.label_text import Fact, LabelText

__all__ = ["KINDS", "NOT_FOR_EATING", "Fact", "LabelText", "labels_for"]

KINDS = ("flowers", "fruits", "pots", "stakes", "packets")
_DUE = {
    "flowers": "neither pollinations nor planned crosses",
    "fruits": "no pollination that may have set fruit",
    "pots": "no plants that still grow",
    "stakes": "no sowings",
    "packets": "no packets with seed left",
}
_MOST = 5_000


def labels_for(
    book: Book,
    kind: str,
    codes: Iterable[str] = (),
    *,
    every: bool | None = None,
    each: int = 1,
) -> list[LabelText]:
    """The labels of one kind for the records named, in the order in which they are named.

    kind : one of `KINDS`
    codes : of what is labelled; none means all that are due:
        flowers, fruits: pollinations or crosses (each pollination of it; a planned cross gives a
        tag to fill in); stakes: crosses, sowings, families or varieties; pots: plants, or a cross
        for all its plants that still grow; packets: packets or harvests
    every : one tag for every flower or fruit, not one a pollination; usual for fruits
    each : labels for each of them, one to put beside the other

    Raises
    ------
    Fault : an unknown kind or code, nothing to label, or more than 5,000 labels
    """
    if kind not in KINDS:
        raise Fault(
            f"There are no labels for '{kind}'.", Place(), f"Choose one of {', '.join(KINDS)}."
        )
    if each < 1:
        raise Fault("There must be at least one label for each.", Place(), "Write 1 or more.")
    maker = LabelMaker(book, kind == "fruits" if every is None else every)
    make = {
        "flowers": maker.flowers,
        "fruits": maker.fruits,
        "pots": maker.pots,
        "stakes": maker.stakes,
        "packets": maker.packets,
    }[kind]
    wanted = list(dict.fromkeys(code.strip() for code in codes if code.strip()))
    if not wanted:
        wanted = maker.due(kind)
        if not wanted:
            raise Fault(
                f"The book has {_DUE[kind]}.",
                Place(),
                "Name the codes of what is to be labelled all the same.",
            )
    found: list[LabelText] = []
    for code in wanted:
        for text in make(code):
            found.extend([text] * each)
            if len(found) > _MOST:
                raise Fault(
                    f"These would be more than {_MOST:,} labels.",
                    Place(),
                    "Name fewer of them and print the rest afterwards.",
                )
    return found
