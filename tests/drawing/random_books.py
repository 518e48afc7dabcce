"""Random small books of all origins, for the properties of the picture."""

from __future__ import annotations

from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant, PollenCandidate

STATUSES = ("", "growing", "kept", "culled")


def add_cross(book: Book, code: str, seed: str, pollen: str) -> None:
    intended = "selfing" if seed and seed == pollen else "cross" if pollen else "open"
    book.add(Cross(cross=code, seed_parent=seed, pollen_parent=pollen, intended=intended))


@st.composite
def books(draw: st.DrawFn, most: int = 14) -> Book:
    """Founders, then steps: a cross, both directions, a selfing, odds, an unknown, a clone."""
    book = Book()
    codes = [f"V{number}" for number in range(draw(st.integers(1, 4)))]
    for code in codes:
        book.add(Plant(plant=code, kind=draw(st.sampled_from(("variety", "plant")))))
    for step in range(draw(st.integers(0, most))):
        seed = draw(st.sampled_from(codes))
        pollen = draw(st.sampled_from(codes))
        way = draw(st.sampled_from(("cross", "both", "self", "odds", "open", "unknown", "clone")))
        if way == "clone":
            if book.is_pool(book.plants[seed]):
                continue
            book.add(Plant(plant=f"c{step}", raised="cutting_of", source=seed))
            codes.append(f"c{step}")
            continue
        if way == "both" and seed == pollen:
            way = "self"
        crosses = [f"x{step}"]
        if way == "odds":
            add_cross(book, crosses[0], seed, "")
            book.crosses[crosses[0]].intended = "cross"
            book.pollen_candidates.append(PollenCandidate(crosses[0], pollen, 0.5))
            if pollen != seed:
                book.pollen_candidates.append(PollenCandidate(crosses[0], "self", 0.3))
        elif way == "open":
            add_cross(book, crosses[0], seed, "")
        elif way == "unknown":
            book.add(Cross(cross=crosses[0], pollen_parent=pollen, intended="cross"))
        else:
            add_cross(book, crosses[0], seed, seed if way == "self" else pollen)
            if way == "both":
                crosses.append(f"x{step}r")
                add_cross(book, crosses[1], pollen, seed)
        for cross in crosses:
            for number in range(draw(st.integers(0, 6))):
                code = f"{cross}-{number}"
                selfings = draw(st.sampled_from((0, 0, 0, 2)))
                status = draw(st.sampled_from(STATUSES))
                book.add(Plant(plant=code, cross=cross, selfings=selfings, status=status))
                if number < 2:
                    codes.append(code)
    return book
