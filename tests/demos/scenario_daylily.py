"""Demo book 'Tansy and the moths': tetraploid daylilies, their divisions, a doubled form and a bee.

Named daylilies are kept by division, so each is one genotype: a founder plant, not a pool of seed.
Gene E, dominant, gives the eye; a tetraploid carries it four times, 'E/E/e/e'.  Seedlings bloom in
their second or third year and are scored year by year.
"""

from __future__ import annotations

from garden_book import GardenBook

from pedigreeview.book.book import Book, BookSettings

__all__ = ["FOLDER", "build"]

FOLDER = "tansy_and_the_moths"

_LAST_YEAR = 2025


def build() -> Book:
    """The whole book, the same on every call."""
    garden = GardenBook(
        BookSettings(name="Tansy and the moths", crop="daylily", ploidy=4), seed=160705, by="OL"
    )
    _traits(garden)
    _parents(garden)
    _crosses_of_2016(garden)
    _bee_pod(garden)
    _crosses_of_2019(garden)
    _clones(garden)
    _marks(garden)
    return garden.book


def _traits(garden: GardenBook) -> None:
    garden.trait("eye", "category", values="eye;no eye", better="none")
    garden.trait("colour", "category", values="gold;pale;rose;violet", better="none")
    garden.trait("buds", "measure", unit="buds", low=0, better="high", note="on the best scape")
    garden.trait("scape", "measure", unit="cm", low=0, better="none")
    garden.trait("vigour", "score", low=1, high=9, better="high")
    garden.locus("E", "E;e", "eye;no eye", note="Dose not seen: one E is enough for an eye.")


def _bloomed(
    garden: GardenBook,
    plant: str,
    first_year: int,
    eye: str,
    colour: str,
    buds: float,
    last_year: int = _LAST_YEAR,
) -> None:
    """Bloom dates and scores of every year from the first bloom on; buds rise with the clump."""
    scape = garden.near(72, 9, 40, 110)
    for year in range(first_year, last_year + 1):
        age = min(year - first_year, 3)
        first = f"{year}-07-{garden.near(4, 2, 1, 9):02d}"
        garden.bloom(plant, first, f"{year}-08-{garden.near(3, 3, 1, 14):02d}")
        if year == first_year:
            garden.score(plant, "eye", eye, first)
            garden.score(plant, "colour", colour, first)
        garden.score(plant, "buds", garden.near(buds - 4 + 1.3 * age, 1.2, 3, 40), first)
        garden.score(plant, "scape", garden.near(scape, 2, 30, 120), first)
        garden.score(plant, "vigour", garden.near(6.2, 0.8, 1, 9), f"{year}-08-20")


def _parents(garden: GardenBook) -> None:
    for code, name, fields, eye, colour, buds, genotype, known_by in (
        (
            "SL",
            "Saltmarket Lamp",
            {"note": "Gold, no eye, the best branching of all."},
            "no eye",
            "gold",
            22,
            "e/e/e/e",
            "recessive, so seen",
        ),
        (
            "GM",
            "Grisedale Moth",
            {"note": "Pale, with a plum eye."},
            "eye",
            "pale",
            17,
            "E/E/E/E",
            "no seedling of it without an eye",
        ),
        ("NT", "Ninefold Tansy", {"note": "Gold with an eye."}, "eye", "gold", 19, "", ""),
        (
            "WC",
            "Wren Cobalt",
            {"ploidy": 2, "note": "Diploid; the nearest to blue here."},
            "no eye",
            "violet",
            15,
            "e/e",
            "recessive, so seen",
        ),
    ):
        garden.plant(
            code,
            name=name,
            status="growing",
            place="long border",
            obtained_from="a division from a friend's border",
            **fields,
        )
        garden.score(code, "eye", eye, "2016-07-06")
        garden.score(code, "colour", colour, "2016-07-06")
        for year in range(2016, _LAST_YEAR + 1):
            seen = f"{year}-07-{garden.near(5, 1, 2, 8):02d}"
            value = buds if year == 2016 else garden.near(buds, 1.1, 5, 40)
            garden.score(code, "buds", value, seen)
            garden.bloom(code, seen, f"{year}-08-05")
        if genotype:
            garden.genotype(code, "E", genotype, known_by)
    garden.plant(
        "WC4",
        name="Wren Cobalt, doubled",
        raised="doubled_of",
        source="WC",
        ploidy=4,
        status="growing",
        place="long border",
        obtained_from="bought as a doubled division, 2014",
    )
    garden.genotype("WC4", "E", "e/e/e/e", "doubled from e/e")
    _bloomed(garden, "WC4", 2016, "no eye", "violet", 15)
    garden.compatibility("WC", "SL", "sterile", "sterile", "2x with 4x: six flowers, no pod.")
    garden.compatibility("GM", "", "poor", "fertile", "Pods seldom.")
    garden.compatibility("NT", "", "fertile", "fertile", "Pods readily, also for the bees.")


def _seedlings(
    garden: GardenBook, cross: str, harvest: tuple[str, int, int], sown: tuple[str, int, int]
) -> list[str]:
    """Harvest, sowing and plants of one cross; gives the plants' codes."""
    day, fruits, seeds = harvest
    sown_on, put_in, up = sown
    packet = garden.packet(cross, day, fruits, seeds, "seed of the cross", place="refrigerator")
    garden.sow(packet, sown_on, put_in, up, up, "cold frame")
    codes = [f"{cross}-{number}" for number in range(1, up + 1)]
    for code in codes:
        garden.plant(code, cross, sown=sown_on, status="growing", place="seedling bed")
    return codes


def _crosses_of_2016(garden: GardenBook) -> None:
    rows = (
        ("16-01", "SL", "GM", (("07-05", 4, 2), ("07-08", 3, 1), ("07-13", 2, 0))),
        ("16-02", "GM", "SL", (("07-06", 5, 1), ("07-11", 3, 0))),
        ("16-03", "NT", "WC4", (("07-07", 6, 2), ("07-10", 6, 2))),
        ("16-04", "SL", "WC", (("07-09", 6, 0),)),
    )
    for code, seed_parent, pollen_parent, days in rows:
        garden.cross(
            code,
            seed_parent,
            pollen_parent,
            made_on=f"2016-{days[0][0]}",
            seed_doubt="certain",
            pollen_doubt="probable",
            note="Diploid pollen on a tetraploid: tried all the same." if code == "16-04" else "",
        )
        lot = garden.pollen(pollen_parent, f"2016-{days[0][0]}", "envelope, refrigerator")
        for day, flowers, taken in days:
            date = f"2016-{day}"
            garden.pollination(
                code,
                date,
                flowers,
                taken,
                emasculated_on=date,
                pollen_lot=lot,
                cover="petals off",
                note="All dropped within four days." if code == "16-04" else "",
            )
    sown = "2017-03-06"
    lamps = _seedlings(garden, "16-01", ("2016-08-29", 3, 11), (sown, 11, 8))
    moths = _seedlings(garden, "16-02", ("2016-09-01", 1, 3), (sown, 3, 2))
    tansies = _seedlings(garden, "16-03", ("2016-09-02", 4, 14), (sown, 14, 9))
    for code in (*lamps, *moths):
        first = 2018 if code in ("16-01-2", "16-01-5") else garden.rng.choice((2018, 2019))
        buds = 23 if code == "16-01-2" else garden.near(18, 2.5, 10, 28)
        _bloomed(garden, code, first, "eye", garden.rng.choice(("gold", "pale")), buds)
        garden.genotype(code, "E", "E/E/e/e", "E/E/E/E with e/e/e/e gives nothing else")
    for code in tansies:
        first = 2018 if code == "16-03-4" else garden.rng.choice((2018, 2019))
        _bloomed(garden, code, first, "eye", garden.rng.choice(("rose", "violet")), 16)
    for code in ("16-01-2", "16-01-5", "16-03-4"):
        garden.book.plants[code].status = "kept"
    for code in ("16-01-7", "16-03-1", "16-03-8"):
        _end(garden, code, "culled", 2021)
    _end(garden, "16-01-8", "lost", 2020)


def _end(garden: GardenBook, code: str, status: str, year: int) -> None:
    """Nothing is seen of a plant after the year it went."""
    book = garden.book
    book.plants[code].status = status
    book.scores = [row for row in book.scores if row.plant != code or row.date < f"{year + 1}"]
    book.blooms = [
        row for row in book.blooms if row.plant != code or row.first_flower < f"{year + 1}"
    ]
    text = "Rotted in a wet winter." if status == "lost" else "Room was wanted for better ones."
    garden.note(f"plant {code}", f"{year}-11-04", text)


def _bee_pod(garden: GardenBook) -> None:
    garden.cross(
        "18-01",
        "NT",
        "",
        intended="open",
        made_on="2018-07",
        seed_doubt="certain",
        pollen_doubt="unknown",
        note="A pod that nobody made: a bee did.",
    )
    codes = _seedlings(garden, "18-01", ("2018-09-04", 1, 6), ("2019-03-08", 6, 6))
    for number, code in enumerate(codes):
        eye = "no eye" if number == 2 else "eye"
        _bloomed(garden, code, 2021, eye, garden.rng.choice(("gold", "rose")), 15)
    _end(garden, codes[3], "culled", 2022)


def _crosses_of_2019(garden: GardenBook) -> None:
    """The four roads from 16-01-2: to a sib, to itself, back to Saltmarket Lamp, and out."""
    rows = (
        ("19-01", "16-01-5", (("07-05", 4, 1), ("07-09", 3, 2)), 10, 7),
        (
            "19-02",
            "16-01-2",
            tuple((f"07-{day:02d}", 4, taken) for day, taken in _selfing_days()),
            46,
            36,
        ),
        ("19-03", "SL", (("07-06", 4, 1), ("07-11", 3, 1)), 8, 6),
        ("19-04", "16-03-4", (("07-07", 4, 2), ("07-12", 2, 0)), 8, 6),
    )
    for code, pollen_parent, days, seeds, up in rows:
        is_self = pollen_parent == "16-01-2"
        garden.cross(
            code,
            "16-01-2",
            pollen_parent,
            intended="selfing" if is_self else "cross",
            made_on=f"2019-{days[0][0]}",
            seed_doubt="certain",
            pollen_doubt="probable",
        )
        lot = garden.pollen(pollen_parent, f"2019-{days[0][0]}", "envelope, refrigerator")
        for day, flowers, taken in days:
            date = f"2019-{day}"
            garden.pollination(
                code,
                date,
                flowers,
                taken,
                emasculated_on="" if is_self else date,
                pollen_lot=lot,
                cover="none" if is_self else "petals off",
            )
        pods = sum(taken for _, _, taken in days)
        codes = _seedlings(garden, code, ("2019-09-03", pods, seeds), ("2020-03-09", seeds, up))
        eyeless = {"19-02-23", "19-03-4"}
        for plant in codes:
            first = garden.rng.choice((2022, 2022, 2023))
            eye = "no eye" if plant in eyeless else "eye"
            colour = garden.rng.choice(("rose", "violet") if code == "19-04" else ("gold", "pale"))
            _bloomed(garden, plant, first, eye, colour, 17 if is_self else 19)
            if plant in eyeless:
                garden.genotype(plant, "E", "e/e/e/e", "recessive, so seen")
    for plant in ("19-01-3", "19-02-23", "19-04-5"):
        garden.book.plants[plant].status = "kept"
    for number in range(1, 37):
        if number % 4 == 1:
            _end(garden, f"19-02-{number}", "culled", 2024)


def _selfing_days() -> list[tuple[int, int]]:
    """Ten July days of four flowers each, with the pods they gave: 13 of 40."""
    return list(zip(range(5, 25, 2), (2, 1, 1, 2, 0, 2, 1, 1, 2, 1), strict=True))


def _clones(garden: GardenBook) -> None:
    for letter, place in zip("abc", ("long border", "gate", "a friend's garden"), strict=True):
        garden.cutting(
            f"16-01-2{letter}",
            "16-01-2",
            "2021-09-14",
            status="growing",
            place=place,
            note="One of three clumps that 16-01-2 was divided into.",
        )
    garden.cutting(
        "GM striped",
        "GM",
        "2020-08-30",
        name="striped sport of Grisedale Moth",
        status="growing",
        place="pot by the door",
        note="A side fan with white-striped leaves, taken off and grown on.",
    )
    _bloomed(garden, "GM striped", 2022, "eye", "pale", 14)
    garden.cross(
        "26-01",
        "16-01-2b",
        "19-02-23",
        state="planned",
        note="EEee to an eyeless plant: 1 in 6 without an eye, where the selfing gave 1 in 36.",
    )


def _marks(garden: GardenBook) -> None:
    garden.evidence(
        "16-02", "pollen", "for", "2019-07-15", "Both seedlings are gold in the throat, as SL is."
    )
    garden.finding(
        "18-01-3",
        "",
        "unknown",
        "2021-07-20",
        "No eye: whatever the bee brought, it was not the pollen of Grisedale Moth.",
    )
    garden.note("cross 16-02", "2016-09-01", "One pod of eight against three of nine: too few.")
    garden.note("cross 19-02", "2023-07-20", "35 with an eye, 1 without.")
    garden.note("plant 16-01-2", "2021-09-14", "Divided into three clumps.")
    garden.bookmark("The four roads", "16-01-2", ("16-01-2", "16-01-5"))
    garden.bookmark("Doubled", "WC4", ("WC", "WC4"))
    garden.bookmark("The bee's pod", "18-01-3")
