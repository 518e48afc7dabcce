"""Random books of every origin, for the property tests."""

from __future__ import annotations

from hypothesis import strategies as st

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, ParentFinding, Plant, PollenCandidate

FIXATIONS = (None, 0.0, 0.25, 0.5, 0.9, 1.0)
ODDS = ((0.8, 0.2), (0.5, 0.3), (0.5,), (0.25, 0.75), (0.1, 0.2, 0.3), (1.0,))


@st.composite
def books(draw: st.DrawFn, *, most: int = 24, ploidies: tuple[int, ...] = (2,)) -> Book:
    """A book without loops: founders, then plants of every origin from those before them."""
    ploidy = draw(st.sampled_from(ploidies))
    settings = BookSettings(
        ploidy=ploidy,
        founders_as=draw(st.sampled_from(("", "variety", "plant"))),
        variety_fixation=draw(st.sampled_from((1.0, 0.0, 0.5))),
        double_reduction=draw(st.sampled_from((0.0, 0.125))) if ploidy == 4 else 0.0,
        outcrossing=draw(st.sampled_from((None, 0.0, 0.25, 1.0))),
    )
    book = Book(settings=settings)
    of_ploidy: dict[int, list[str]] = {}
    made = 0

    def add(plant: Plant, level: int) -> None:
        book.add(plant)
        of_ploidy.setdefault(level, []).append(plant.plant)

    def one_of(pool: bool | None, level: int) -> str | None:
        fitting = [
            code
            for code in of_ploidy[level]
            if pool is None or book.is_pool(book.plants[code]) is pool
        ]
        return draw(st.sampled_from(fitting)) if fitting else None

    for _ in range(draw(st.integers(2, 4))):
        made += 1
        kind = draw(st.sampled_from(("", "variety", "plant", "family")))
        add(Plant(f"A{made}", kind=kind, fixation=draw(st.sampled_from(FIXATIONS))), ploidy)
    for _ in range(draw(st.integers(1, most))):
        made += 1
        code = f"A{made}"
        level = draw(st.sampled_from(sorted(of_ploidy)))
        kind = draw(st.sampled_from(("", "plant", "plant", "family")))
        raised = draw(
            st.sampled_from(
                ("cross",) * 8
                + ("seed_of", "sibbed_in", "cutting_of", "doubled_haploid_of", "doubled_of", "line")
            )
        )
        if raised in ("seed_of", "sibbed_in"):
            source = one_of(True, level)
            if source:
                add(Plant(code, kind=kind, raised=raised, source=source), level)
            continue
        if raised in ("cutting_of", "doubled_haploid_of", "doubled_of"):
            source = one_of(False, level)
            if source and (raised != "doubled_of" or level < 2 * ploidy):
                add(
                    Plant(code, kind="plant", raised=raised, source=source),
                    level * (2 if raised == "doubled_of" else 1),
                )
            continue
        if raised == "line":
            kind = "variety"
        old = [
            name
            for name, cross in book.crosses.items()
            if (cross.seed_parent or cross.pollen_parent or cross_any(book, name))
            in of_ploidy[level]
        ]
        if old and draw(st.booleans()):
            cross_code = draw(st.sampled_from(old))
        else:
            cross_code = f"X{made}"
            _add_cross(draw, book, cross_code, of_ploidy[level])
        selfings = draw(st.sampled_from((0, 0, 0, 1, 2)))
        add(Plant(code, kind=kind, raised="cross", cross=cross_code, selfings=selfings), level)
        if draw(st.integers(0, 7)) == 0 and book.crosses[cross_code].seed_parent:
            _add_finding(draw, book, code, of_ploidy[level][:-1])
    return book


def cross_any(book: Book, cross: str) -> str:
    """Any plant named by a cross of which neither parent is certain."""
    named = [c.candidate for c in book.pollen_candidates if c.cross == cross]
    return named[0] if named else ""


def _add_cross(draw: st.DrawFn, book: Book, code: str, plants: list[str]) -> None:
    seed = draw(st.sampled_from(plants))
    drawn = draw(st.sampled_from(("", "", "one", "each")))
    how = draw(
        st.sampled_from(("cross", "cross", "cross", "self", "odds", "open", "lost", "no seed"))
    )
    if how == "cross":
        pollen = draw(st.sampled_from(plants))
        book.add(Cross(code, seed, pollen, drawn))
    elif how == "self":
        book.add(Cross(code, seed, seed, drawn, "selfing"))
    elif how == "no seed":
        book.add(Cross(code, "", seed, drawn))
    elif how == "open":
        book.add(Cross(code, seed, "", drawn, "open"))
    elif how == "lost":
        book.add(Cross(code, seed, "", drawn))
    else:
        book.add(Cross(code, seed, "", drawn, draw(st.sampled_from(("", "", "open")))))
        for candidate, odds in _candidates(draw, plants):
            book.add(PollenCandidate(code, candidate, odds))


def _candidates(draw: st.DrawFn, plants: list[str]) -> list[tuple[str, float]]:
    odds = draw(st.sampled_from(ODDS))
    names = draw(
        st.lists(st.sampled_from(["self", *plants]), min_size=1, max_size=len(odds), unique=True)
    )
    return list(zip(names, odds, strict=False))


def _add_finding(draw: st.DrawFn, book: Book, code: str, plants: list[str]) -> None:
    # A plant cannot be among its own candidates: only those before it are offered.
    for candidate, odds in _candidates(draw, plants):
        book.add(ParentFinding(code, candidate, odds))
