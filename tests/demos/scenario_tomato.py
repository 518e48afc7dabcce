"""Demo book 'A leaf for Hollin Plate': potato leaf brought into a tomato by backcrossing.

Tomatoes are annual, so a plant that is wanted in a later year lives on by a cutting rooted each
autumn: '17-02-5c18' is the cutting taken of 17-02-5 in the autumn of 2018.  Gene C, with c for the
potato leaf; T with t for orange; Gf with gf for the dark fruit that stays green inside.

One error is planted, as it may happen in a winter of typing: the pollen parent of 20-01 is given as
20-01-4-11, which is its own grandchild, where the tag says 18-01-07-3.
"""

from __future__ import annotations

from garden_book import GardenBook, days_after

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import PollenCandidate

__all__ = ["FOLDER", "PLANTED", "TRUE_POLLEN_PARENT", "build", "mend"]

FOLDER = "a_leaf_for_hollin_plate"
PLANTED = "20-01-4-11"
TRUE_POLLEN_PARENT = "18-01-07-3"

_SEEDLINGS = 12
_CARRIERS = 13


def build() -> Book:
    """The whole book with its planted error, the same on every call."""
    garden = GardenBook(
        BookSettings(name="A leaf for Hollin Plate", crop="tomato", ploidy=2), seed=170628, by="ME"
    )
    _traits(garden)
    _parents(garden)
    _first_crosses(garden)
    _f1(garden)
    _first_backcross(garden)
    carriers = _bc1(garden)
    _lost_label(garden)
    _seedling_tests(garden, carriers)
    _selected(garden)
    _second_backcross(garden)
    _stray_fruit(garden)
    _sib_cross(garden)
    _third_backcross(garden)
    _marks(garden)
    garden.book.crosses["20-01"].pollen_parent = PLANTED
    return garden.book


def mend(book: Book) -> None:
    """Put the planted error right."""
    book.crosses["20-01"].pollen_parent = TRUE_POLLEN_PARENT


def _traits(garden: GardenBook) -> None:
    garden.trait("leaf", "category", values="regular;potato", better="none")
    garden.trait("fruit weight", "measure", unit="g", low=0, better="high", note="mean of five")
    garden.trait("colour", "category", values="red;orange;dark", better="none")
    garden.trait("ripe day", "measure", unit="days from planting out", low=0, better="low")
    garden.trait("Brix", "measure", unit="°Bx", low=0, high=20, better="high")
    garden.trait("taste", "score", low=1, high=9, better="high")
    garden.trait(
        "seed weight", "measure", unit="g per 1000", low=0, better="none", note="of dry seed"
    )
    garden.locus("C", "C;c", "regular leaf;potato leaf", chromosome="6")
    garden.locus("T", "T;t", "red fruit;orange fruit", chromosome="10")
    garden.locus("Gf", "Gf;gf", "clear fruit;dark fruit", chromosome="8")


def _fruit(
    garden: GardenBook,
    plant: str,
    year: str,
    weight: float,
    colour: str,
    ripe: float,
    brix: float,
    taste: float,
) -> None:
    """Scatter about the means that are given."""
    rng = garden.rng
    ripe_day = garden.near(ripe, 1.8, 50, 100)
    seen = days_after(f"{year}-05-20", ripe_day)
    garden.score(plant, "fruit weight", garden.near(weight, weight * 0.09, 5, 400), seen)
    garden.score(plant, "colour", colour, seen)
    garden.score(plant, "ripe day", ripe_day, seen)
    garden.score(plant, "Brix", f"{rng.gauss(brix, 0.25):.1f}", seen)
    garden.score(plant, "taste", garden.near(taste, 0.8, 1, 9), days_after(seen, 5))


def _genotypes(garden: GardenBook, plant: str, known_by: str, *genotypes: str) -> None:
    for locus, genotype in zip(("C", "T", "Gf"), genotypes, strict=False):
        if genotype:
            garden.genotype(plant, locus, genotype, known_by)


def _parents(garden: GardenBook) -> None:
    for code, name, fixation, source, note, measured, genes in (
        (
            "HP",
            "Hollin Plate",
            1.0,
            "bought seed, 2015; kept by seed since",
            "The best slicer here; wants the potato leaf, which shows early and sheds rain.",
            (240, "red", 82, 5.1, 7, 3.4),
            ("C/C", "T/T", "Gf/Gf"),
        ),
        (
            "MB",
            "Merrowby Bead",
            None,
            "from the allotment at Merrowby, 2016",
            "Tiny, early, potato leaf.",
            (14, "orange", 58, 7.8, 6, 2.2),
            ("c/c", "t/t", "Gf/Gf"),
        ),
        (
            "SO",
            "Scaur Oxblood",
            1.0,
            "a gift, spring 2019",
            "Dark and very sweet; regular leaf.",
            (90, "dark", 71, 9.1, 8, 2.9),
            ("C/C", "T/T", "gf/gf"),
        ),
    ):
        weight, colour, ripe, brix, taste, seed_weight = measured
        garden.variety(
            code, name, fixation=fixation, status="growing", obtained_from=source, note=note
        )
        year = "2019" if code == "SO" else "2017"
        seen = days_after(f"{year}-05-20", ripe)
        garden.score(code, "leaf", "potato" if code == "MB" else "regular", f"{year}-04-20")
        garden.score(code, "fruit weight", weight, seen)
        garden.score(code, "colour", colour, seen)
        garden.score(code, "ripe day", ripe, seen)
        garden.score(code, "Brix", brix, seen)
        garden.score(code, "taste", taste, seen)
        garden.score(code, "seed weight", seed_weight, f"{year}-10-20", of="seed")
        _genotypes(garden, code, "breeds true", *genes)
        for sown in range(int(year), 2024):
            garden.sow_variety(code, f"{sown}-03-12", 8, 7, 3, "tunnel")
    garden.compatibility("HP", "", "poor", "fertile", "First flowers are fused: use later ones.")
    garden.compatibility("MB", "HP", "fertile", "fertile", "Takes nearly every time.")
    garden.bloom("HP", "2017-06-22", "2017-08-10")
    garden.bloom("MB", "2017-06-10", "2017-09-20")
    garden.bloom("SO", "2023-06-18", "2023-08-28")


def _first_crosses(garden: GardenBook) -> None:
    garden.cross(
        "17-01",
        "HP",
        "MB",
        made_on="2017-06-28",
        seed_doubt="certain",
        pollen_doubt="probable",
        note="A self of HP has the regular leaf as well: nothing shows in the seedling.",
    )
    garden.cross(
        "17-02",
        "MB",
        "HP",
        made_on="2017-06-29",
        seed_doubt="certain",
        pollen_doubt="certain",
        note="A self of MB has the potato leaf: here the seedlings prove themselves.",
    )
    lot = garden.pollen("MB", "2017-06-28", "gelatine capsule, refrigerator, to 6 July")
    for day, flowers, taken, cover in (
        ("2017-06-28", 4, 2, "bag"),
        ("2017-07-02", 3, 2, "bag"),
        ("2017-07-06", 2, 1, "petals off"),
    ):
        garden.pollination("17-01", day, flowers, taken, pollen_lot=lot, cover=cover)
    lot = garden.pollen("HP", "2017-06-29", "gelatine capsule, refrigerator, to 7 July")
    for day, flowers, taken, bud in (
        ("2017-06-29", 3, 2, "closed"),
        ("2017-07-03", 4, 3, "unsure"),
        ("2017-07-07", 2, 1, "closed"),
    ):
        garden.pollination(
            "17-02", day, flowers, taken, pollen_lot=lot, cover="petals off", bud=bud
        )
    garden.packet("17-01", "2017-08-27", 3, 128, "F1", covered=True)
    garden.packet("17-01", "2017-09-04", 2, 82, "F1", covered=True)
    garden.packet("17-02", "2017-08-31", 6, 88, "F1", covered=True)
    garden.evidence(
        "17-02", "pollen", "for", "2018-04-15", "17 of 18 seedlings have the regular leaf."
    )
    garden.evidence("17-02", "pollen", "against", "2018-04-15", "One seedling has the potato leaf.")


def _f1(garden: GardenBook) -> None:
    day = "2018-03-12"
    garden.sow("K17-1", day, 3, 2, 2, "tunnel")
    garden.sow("K17-3", day, 20, 18, 17, "tunnel", "One potato-leaf seedling culled.")
    for cross, count in (("17-01", 2), ("17-02", 18)):
        for number in range(1, count + 1):
            code = f"{cross}-{number}"
            is_self = code == "17-02-12"
            status = "culled" if is_self else "kept" if code == "17-02-5" else "finished"
            garden.plant(code, cross, sown=day, status=status, place="tunnel")
            garden.score(code, "leaf", "potato" if is_self else "regular", "2018-04-15")
            if is_self:
                continue
            if cross == "17-01" or number <= 6:
                _fruit(garden, code, "2018", 56, "red", 68, 6.3, 6)
            if cross == "17-02":
                garden.genotype(code, "C", "C/c", "regular leaf on a potato-leaf seed parent")
    _genotypes(garden, "17-02-5", "F1 of two pure lines", "", "T/t", "Gf/Gf")
    garden.finding(
        "17-02-12", "self", "certain", "2018-04-15", "Potato leaf: a self of Merrowby Bead."
    )
    garden.bloom("17-02-5", "2018-06-15", "2018-09-10")
    source = "17-02-5"
    for year in (2018, 2019, 2020):
        code = f"17-02-5c{year % 100}"
        garden.cutting(
            code, source, f"{year}-09-22", status="finished", place="kitchen window, then tunnel"
        )
        source = code


def _first_backcross(garden: GardenBook) -> None:
    garden.cross(
        "18-01",
        "HP",
        "17-02-5",
        made_on="2018-07-04",
        seed_doubt="certain",
        pollen_doubt="probable",
        note="Cytoplasm of HP.",
    )
    garden.cross(
        "18-02",
        "17-02-5",
        "HP",
        made_on="2018-07-05",
        seed_doubt="certain",
        pollen_doubt="probable",
        note="The same coancestry as 18-01, with the cytoplasm of MB.",
    )
    lot = garden.pollen("17-02-5", "2018-07-04")
    garden.pollination("18-01", "2018-07-04", 4, 2, pollen_lot=lot, cover="bag")
    garden.pollination("18-01", "2018-07-09", 4, 3, dropped=1, cover="bag")
    lot = garden.pollen("HP", "2018-07-05")
    garden.pollination("18-02", "2018-07-05", 5, 4, pollen_lot=lot, cover="petals off")
    garden.pollination("18-02", "2018-07-10", 3, 1, cover="petals off")
    first = garden.packet("18-01", "2018-09-03", 4, 152, "BC1F1", covered=True)
    second = garden.packet("18-02", "2018-09-01", 5, 131, "BC1F1", covered=True)
    garden.sow(first, "2019-03-10", 26, 24, 24, "tunnel")
    garden.sow(second, "2019-03-10", 3, 2, 2, "tunnel")


def _bc1(garden: GardenBook) -> set[str]:
    """24 plants, all of regular leaf; gives the carriers of c, which their seedlings will show."""
    numbers = [number for number in range(1, 25) if number != 7]
    carriers = {"18-01-07"} | {
        f"18-01-{number:02d}" for number in garden.rng.sample(numbers, _CARRIERS - 1)
    }
    for number in range(1, 25):
        code = f"18-01-{number:02d}"
        carrier = code in carriers
        status = "kept" if number == 7 else "finished" if carrier else "culled"
        garden.plant(code, "18-01", sown="2019-03-10", status=status, place="tunnel")
        garden.score(code, "leaf", "regular", "2019-04-16")
        weight = 168 if number == 7 else garden.near(118, 24, 60, 200)
        _fruit(garden, code, "2019", weight, "red", 75, 5.6, 6.3)
        garden.genotype(
            code,
            "C",
            "C/c" if carrier else "C/C",
            "potato leaf among its twelve seedlings"
            if carrier
            else "no potato leaf among its twelve seedlings",
        )
    for number in range(1, 3):
        code = f"18-02-{number}"
        garden.plant(code, "18-02", sown="2019-03-10", status="finished", place="tunnel")
        garden.score(code, "leaf", "regular", "2019-04-16")
        _fruit(garden, code, "2019", 115, "red", 74, 5.6, 6)
    garden.bloom("18-01-07", "2019-06-18", "2019-08-30")
    return carriers


def _lost_label(garden: GardenBook) -> None:
    """A capsule of pollen whose label washed off: one pollen parent, and nobody knows which."""
    garden.cross(
        "19-02",
        "HP",
        "",
        drawn="one",
        made_on="2019-07-08",
        seed_doubt="certain",
        pollen_doubt="possible",
        note="The label of the capsule was washed off; it held MB or SO.",
    )
    for candidate, odds in (("MB", 0.5), ("SO", 0.5)):
        garden.book.add(PollenCandidate("19-02", candidate, odds))
    garden.pollination("19-02", "2019-07-08", 4, 1, cover="bag")
    garden.pollination("19-02", "2019-07-12", 3, 0, cover="none", note="No take; cold nights.")
    garden.evidence(
        "19-02", "pollen", "for", "2020-08-20", "Fruit of 19-02-1 is small: more like MB than SO."
    )
    packet = garden.packet("19-02", "2019-09-06", 1, 39, "F1", covered=True)
    garden.sow(packet, "2020-03-10", 3, 2, 2, "tunnel")
    for number in (1, 2):
        code = f"19-02-{number}"
        garden.plant(code, "19-02", sown="2020-03-10", status="finished", place="tunnel")
        garden.score(code, "leaf", "regular", "2020-04-20")
        _fruit(garden, code, "2020", 60, "red", 68, 6.4, 6)


def _seedling_tests(garden: GardenBook, carriers: set[str]) -> None:
    """Twelve seedlings of each BC1 plant; of 18-01-07 two dozen more are raised."""
    rng = garden.rng
    for number in range(1, 25):
        parent = f"18-01-{number:02d}"
        cross = garden.selfing(parent, "2019-07", note="One truss bagged.")
        packet = garden.packet(
            cross, "2019-09-05", 1, garden.near(46, 8, 44, 70), "BC1F2", covered=True
        )
        garden.sow(packet, "2020-03-10", 13, _SEEDLINGS, _SEEDLINGS, "seed tray")
        count = _SEEDLINGS
        if parent == "18-01-07":
            garden.sow(packet, "2020-03-28", 26, 24, 24, "seed tray")
            count = 36
            potato = {3, 8, 11, *rng.sample(range(13, 37), 6)}
        elif parent in carriers:
            found = 0
            while not found:
                found = sum(rng.random() < 0.25 for _ in range(_SEEDLINGS))
            potato = set(rng.sample(range(1, _SEEDLINGS + 1), found))
        else:
            potato = set()
        for seedling in range(1, count + 1):
            code = f"{parent}-{seedling}"
            chosen = code in (TRUE_POLLEN_PARENT, "18-01-07-8")
            garden.plant(
                code,
                cross,
                sown="2020-03-10" if seedling <= _SEEDLINGS else "2020-03-28",
                status="kept" if chosen else "culled",
                place="tunnel" if chosen else "seed tray",
            )
            is_potato = seedling in potato
            garden.score(code, "leaf", "potato" if is_potato else "regular", "2020-04-20")
            if is_potato:
                garden.genotype(code, "C", "c/c", "recessive, so seen")


def _selected(garden: GardenBook) -> None:
    for code, weight in ((TRUE_POLLEN_PARENT, 152), ("18-01-07-8", 139)):
        _fruit(garden, code, "2020", weight, "red", 75, 5.7, 7)
        garden.bloom(code, "2020-06-20", "2020-08-25")
        source = code
        for year in (2020, 2021):
            cutting = f"{code}c{year % 100}"
            garden.cutting(
                cutting,
                source,
                f"{year}-09-20",
                status="finished",
                place="kitchen window, then tunnel",
            )
            source = cutting


def _second_backcross(garden: GardenBook) -> None:
    garden.cross(
        "20-01",
        "HP",
        TRUE_POLLEN_PARENT,
        made_on="2020-07-01",
        seed_doubt="certain",
        pollen_doubt="probable",
        note="Typed in the winter of 2022 from the tags in the tin.",
    )
    garden.pollination("20-01", "2020-07-01", 4, 2, cover="bag", tag="HP × 18-01-07-3")
    garden.pollination("20-01", "2020-07-06", 3, 1, cover="bag", tag="HP × 18-01-07-3")
    garden.evidence(
        "20-01", "pollen", "against", "2022-12-11", "Both tags in the tin read HP × 18-01-07-3."
    )
    packet = garden.packet("20-01", "2020-09-02", 3, 96, "BC2F1", covered=True)
    garden.sow(packet, "2021-03-14", 5, 4, 4, "tunnel")
    for number in range(1, 5):
        code = f"20-01-{number}"
        status = "kept" if number == 4 else "finished"
        garden.plant(code, "20-01", sown="2021-03-14", status=status, place="tunnel")
        garden.score(code, "leaf", "regular", "2021-04-18")
        _fruit(garden, code, "2021", 205 if number == 4 else 178, "red", 79, 5.3, 7)
        garden.genotype(code, "C", "C/c", "regular leaf, of a potato-leaf pollen parent")
    garden.bloom("20-01-4", "2021-06-24", "2021-08-20")

    cross = garden.selfing("20-01-4", "2021-07", note="Two trusses bagged.")
    packet = garden.packet(cross, "2021-09-03", 2, 88, "BC2F2", covered=True)
    garden.sow(packet, "2022-03-12", 43, 40, 40, "seed trays")
    potato = {11, *garden.rng.sample([n for n in range(1, 41) if n != 11], 8)}
    for number in range(1, 41):
        code = f"20-01-4-{number}"
        is_potato = number in potato
        status = "kept" if number == 11 else "finished" if is_potato else "culled"
        garden.plant(
            code,
            cross,
            sown="2022-03-12",
            status=status,
            place="tunnel" if is_potato else "seed trays",
        )
        garden.score(code, "leaf", "potato" if is_potato else "regular", "2022-04-19")
        if is_potato:
            garden.genotype(code, "C", "c/c", "recessive, so seen")
            _fruit(garden, code, "2022", 226 if number == 11 else 190, "red", 79, 5.3, 7)
    garden.bloom(PLANTED, "2022-06-22", "2022-08-22")
    garden.cutting(
        "20-01-4-11c22",
        PLANTED,
        "2022-09-18",
        status="finished",
        place="kitchen window, then tunnel",
    )


def _stray_fruit(garden: GardenBook) -> None:
    garden.cross(
        "21-09",
        "MB",
        "",
        intended="open",
        made_on="2021-07",
        seed_doubt="probable",
        pollen_doubt="unknown",
        note="A fruit of Merrowby Bead that lost its tag, or never had one.",
    )
    packet = garden.packet("21-09", "2021-08-29", 1, 17, "unknown", covered=False)
    garden.sow(packet, "2022-03-20", 17, 15, 15, "seed tray")
    for number in range(1, 16):
        code = f"21-09-{number}"
        regular = number == 6
        garden.plant(
            code,
            "21-09",
            sown="2022-03-20",
            status="kept" if regular else "culled",
            place="tunnel" if regular else "seed tray",
        )
        garden.score(code, "leaf", "regular" if regular else "potato", "2022-04-22")
        if not regular:
            garden.finding(
                code, "self", "probable", "2022-04-22", "Potato leaf: a self of Merrowby Bead."
            )
    for candidate, odds, text in (
        ("HP", 0.5, "Stood next to it; regular leaf."),
        ("SO", 0.3, "In the same tunnel; regular leaf."),
        ("17-02-5c20", 0.1, "One plant by the door; half of its pollen has C."),
    ):
        garden.finding("21-09-6", candidate, "possible", "2022-04-22", text, odds)
    garden.genotype("21-09-6", "C", "C/c", "regular leaf on a potato-leaf seed parent")
    _fruit(garden, "21-09-6", "2022", 49, "red", 66, 6.8, 7)


def _sib_cross(garden: GardenBook) -> None:
    seed_parent, pollen_parent = "18-01-07-3c21", "18-01-07-8c21"
    garden.cross(
        "22-01",
        seed_parent,
        pollen_parent,
        made_on="2022-07-02",
        seed_doubt="certain",
        pollen_doubt="probable",
        note="Two sibs, both of potato leaf, so all seedlings are.",
    )
    lot = garden.pollen(pollen_parent, "2022-07-02")
    garden.pollination("22-01", "2022-07-02", 4, 3, pollen_lot=lot, cover="bag")
    garden.pollination("22-01", "2022-07-08", 3, 1, cover="bag")
    packet = garden.packet("22-01", "2022-09-02", 4, 120, "sib cross", covered=True)
    garden.sow(packet, "2023-03-12", 4, 3, 3, "tunnel")
    for number in range(1, 4):
        code = f"22-01-{number}"
        garden.plant(code, "22-01", sown="2023-03-12", status="finished", place="tunnel")
        garden.score(code, "leaf", "potato", "2023-04-18")
        garden.genotype(code, "C", "c/c", "recessive, so seen")
        _fruit(garden, code, "2023", 148, "red", 75, 5.7, 6.5)


def _third_backcross(garden: GardenBook) -> None:
    stock = "20-01-4-11c22"
    garden.cross(
        "23-01",
        stock,
        "HP",
        made_on="2023-07-01",
        seed_doubt="certain",
        pollen_doubt="probable",
    )
    garden.cross(
        "23-02",
        "SO",
        stock,
        made_on="2023-07-03",
        seed_doubt="certain",
        pollen_doubt="probable",
        note="A dark fruit for the potato leaf: the next tomato.",
    )
    lot = garden.pollen("HP", "2023-07-01")
    garden.pollination("23-01", "2023-07-01", 5, 3, pollen_lot=lot, cover="petals off")
    garden.pollination("23-01", "2023-07-06", 3, 2, dropped=1, cover="petals off")
    lot = garden.pollen(stock, "2023-07-03")
    garden.pollination("23-02", "2023-07-03", 6, 3, pollen_lot=lot, cover="bag")
    third = garden.packet("23-01", "2023-09-05", 4, 141, "BC3F1", covered=True)
    dark = garden.packet("23-02", "2023-09-04", 3, 77, "F1", covered=True)
    garden.sow(third, "2024-03-12", 4, 3, 3, "tunnel")
    garden.sow(dark, "2024-03-12", 4, 3, 3, "tunnel")
    for number in range(1, 4):
        code = f"23-01-{number}"
        status = "kept" if number == 2 else "finished"
        garden.plant(code, "23-01", sown="2024-03-12", status=status, place="tunnel")
        garden.score(code, "leaf", "regular", "2024-04-18")
        garden.genotype(code, "C", "C/c", "regular leaf on a potato-leaf seed parent")
        _fruit(garden, code, "2024", 232 if number == 2 else 220, "red", 81, 5.2, 7)
    for number in range(1, 4):
        code = f"23-02-{number}"
        garden.plant(code, "23-02", sown="2024-03-12", status="finished", place="tunnel")
        garden.score(code, "leaf", "regular", "2024-04-18")
        _genotypes(garden, code, "its two parents", "C/c", "", "Gf/gf")
        _fruit(garden, code, "2024", 142, "red", 74, 7.1, 8)

    cross = garden.selfing("23-01-2", "2024-07", note="Two trusses bagged.")
    packet = garden.packet(cross, "2024-09-04", 2, 61, "BC3F2", covered=True)
    garden.sow(packet, "2025-03-12", 26, 24, 6, "tunnel", "18 regular, 6 potato; the 6 planted.")
    garden.plant(
        "23-01-2 row",
        cross,
        kind="family",
        sown="2025-03-12",
        status="growing",
        place="tunnel",
        note="Six plants of potato leaf out of 24 seedlings, kept together.",
    )
    garden.score("23-01-2 row", "leaf", "potato", "2025-04-18")
    _fruit(garden, "23-01-2 row", "2025", 230, "red", 81, 5.2, 7.5)
    garden.cross(
        "26-01",
        "SO",
        "23-01-2 row",
        state="planned",
        drawn="one",
        note="As 23-02, now with a stock that is one backcross nearer.",
    )


def _marks(garden: GardenBook) -> None:
    garden.note("cross 17-02", "2018-04-15", "20 sown, 18 up: 17 regular and 1 potato.")
    garden.note("cross 18-01", "2020-04-20", "13 of 24 BC1 plants carry c, 11 show none.")
    garden.note("plant 18-01-07", "2020-04-24", "Its seedlings: 27 regular, 9 potato.")
    garden.note("plant 20-01-4", "2022-04-19", "Its seedlings: 31 regular, 9 potato.")
    garden.note("plant 20-01-4-11", "2022-08-20", "Nearly the plate of old, on potato leaf.")
    garden.note("cross 21-09", "2022-04-22", "One regular leaf in fifteen: a bee was here.")
    garden.bookmark("Two cytoplasms", "17-02-5", ("18-01-07", "18-02-1"))
    garden.bookmark("The two sibs", "18-01-07", ("18-01-07-3", "18-01-07-8"))
    garden.bookmark("One stray bee", "21-09-6", ("21-09-6", "HP"))
    garden.bookmark("Where the book is wrong", "20-01-4-11", ("HP", "20-01-4-11"))
