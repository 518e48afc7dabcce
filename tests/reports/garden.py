"""A small book for tests of labels and lists: every kind of mating, packets known and unknown."""

from __future__ import annotations

from pedigreeview.book.book import Book
from pedigreeview.book.records import (
    Bloom,
    Compatibility,
    Cross,
    Harvest,
    Packet,
    Plant,
    PollenCandidate,
    Pollination,
    Sowing,
    Trait,
)


def garden() -> Book:
    """Two peas crossed both ways, a selfing, a stray bee and one doubtful pollen parent."""
    book = Book()
    book.settings.name = "Two rows"
    book.settings.crop = "pea"
    book.add(Plant("TP", name="Tarnwick Pale", kind="variety", place="bed 1, row 1"))
    book.add(Plant("BA", name="Brockle Amber", kind="variety", place="bed 1, row 2"))
    book.add(Plant("WC", name="Wren Cobalt", kind="plant", place="bed 1, row 3, plant 2"))
    book.add(Cross("21-01", "TP", "BA", made_on="2021-06-11", state="made"))
    book.add(Cross("21-02", "BA", "TP", made_on="2021-06-12", state="made"))
    book.add(Cross("22-01", "21-01-1", "21-01-1", intended="selfing", state="made"))
    book.add(Cross("22-02", "BA", "", intended="open", state="made"))
    book.add(Cross("22-03", "TP", "", state="made"))
    book.add(PollenCandidate("22-03", "WC", 0.3))
    book.add(PollenCandidate("22-03", "BA", 0.7))
    book.add(Cross("23-01", "WC", "TP", state="planned"))
    book.add(Cross("23-02", "WC", "BA", state="skipped"))
    for number, status in ((1, "kept"), (2, "culled"), (3, "growing")):
        book.add(
            Plant(
                f"21-01-{number}",
                cross="21-01",
                sown="2022-03-29",
                status=status,
                place=f"bed 2, row 1, plant {number + 1}",
            )
        )
    book.add(
        Pollination(
            "P1", "21-01", "2021-06-11", 5, cover="tape", tag="21-01/a", by="RW", set=3, dropped=1
        )
    )
    book.add(Pollination("P2", "21-01", "2021-06-15", 4, tag="7", by="RW", set=0))
    book.add(Pollination("P3", "21-02", "2021-06-12", None, by="RW"))
    book.add(Harvest("H1", "21-01", "2021-08-02", 2, 24, "K1"))
    book.add(Harvest("H2", "22-01", "2022-08-09", 14, 71, "K2"))
    book.add(Harvest("H3", "22-02", "2022-08-10", 3, None, "K3"))
    book.add(Packet("K1", "H1", "F1", "TP", True, 24, 16, 0.88, "tin"))
    book.add(Packet("K2", "H2", "F2", "21-01-1", False, 71, 0))
    book.add(Packet("K3", "H3", "seed of the cross", "BA"))
    book.add(Sowing("S1", "K1", "", "2022-03-29", 8, 7, 6, "bed 2, row 1"))
    book.add(Sowing("S2", "", "TP", "2023-04-01", 20, None, None, "bed 1, row 1"))
    book.add(Trait("height", "category", values="tall;dwarf"))
    book.add(Trait("sweet", "score", low=1, high=9, better="high"))
    book.add(Trait("pods", "measure", unit="pods"))
    book.add(Bloom("TP", "2021-06-09", "2021-06-27"))
    book.add(Bloom("BA", "2020-06-01", "2020-07-04"))
    book.add(Compatibility("WC", "TP", "poor", "", "Pods seldom."))
    return book
