"""Demo book 'Two peas, both ways': a pea cross made in both directions and selfed to the F5.

Codes: '21-01' is the first cross of 2021 and '21-01-3' its third plant; '23-19' is F2 plant 19 of
2023; from the F3 on a row goes by its F2 plant, so '19-4-2' is plant 2 of the row of plant
4 of the row of 23-19.  Three genes in three linkage groups: Le tall, le dwarf; A purple, a white
flower; Gp green, gp yellow pod.
"""

from __future__ import annotations

from dataclasses import dataclass

from garden_book import GardenBook, days_after

from pedigreeview.book.book import Book, BookSettings

__all__ = ["FOLDER", "build"]

FOLDER = "two_peas_both_ways"

_SOWN = {
    "F1": "2022-03-29",
    "F2": "2023-03-27",
    "F3": "2024-04-02",
    "F4": "2025-03-30",
    "F5": "2026-03-28",
}
# Sweetness, pods and day of first flower of the five dwarf plants with yellow pods.
_CHOSEN_F2 = {
    7: (6, 22, 55),
    19: (7, 27, 54),
    33: (4, 31, 58),
    61: (8, 19, 53),
    88: (6, 25, 56),
}
_FLOWER_F2 = {7: "purple", 19: "white", 33: "purple", 61: "purple", 88: "white"}
_CHOSEN_LATER = {
    "19-4": (8, 29, 54),
    "61-2": (8, 23, 52),
    "88-6": (7, 26, 55),
    "19-4-2": (8, 31, 53),
    "61-2-5": (9, 25, 52),
}


@dataclass
class _Look:
    """What one plant shows."""

    height: str
    flower: str
    pod: str
    sweet: int | None
    pods: int | None
    day: int


def build() -> Book:
    """The whole book, the same on every call."""
    garden = GardenBook(
        BookSettings(name="Two peas, both ways", crop="pea", ploidy=2), seed=210614, by="RW"
    )
    _traits(garden)
    _parents(garden)
    _crosses(garden)
    _f1(garden)
    _f2(garden)
    _f3(garden)
    _f4(garden)
    _f5(garden)
    _marks(garden)
    return garden.book


def _traits(garden: GardenBook) -> None:
    garden.trait("height", "category", values="tall;dwarf", better="none")
    garden.trait("flower", "category", values="purple;white", better="none")
    garden.trait("pod", "category", values="green;yellow", better="none")
    garden.trait("sweet", "score", low=1, high=9, better="high", note="young peas eaten raw")
    garden.trait("pods", "measure", unit="pods", low=0, better="high", note="ripe pods on a plant")
    garden.trait("first flower", "measure", unit="days from sowing", low=0, better="low")
    garden.trait(
        "seed weight", "measure", unit="g per 100", low=0, better="none", note="of dry seed"
    )
    garden.locus("Le", "Le;le", "tall;dwarf", chromosome="III")
    garden.locus("A", "A;a", "purple flower;white flower", chromosome="II")
    garden.locus("Gp", "Gp;gp", "green pod;yellow pod", chromosome="V")


def _look(garden: GardenBook, plant: str, sown: str, look: _Look) -> None:
    garden.score(plant, "height", look.height, days_after(sown, 60))
    garden.score(plant, "flower", look.flower, days_after(sown, look.day))
    garden.score(plant, "first flower", look.day, days_after(sown, look.day))
    if look.pod:
        garden.score(plant, "pod", look.pod, days_after(sown, 80))
    if look.sweet is not None:
        garden.score(plant, "sweet", look.sweet, days_after(sown, 84))
    if look.pods is not None:
        garden.score(plant, "pods", look.pods, days_after(sown, 118))


def _genotypes(garden: GardenBook, plant: str, known_by: str, le: str, a: str, gp: str) -> None:
    for locus, genotype in (("Le", le), ("A", a), ("Gp", gp)):
        if genotype:
            garden.genotype(plant, locus, genotype, known_by)


def _parents(garden: GardenBook) -> None:
    garden.variety(
        "TP",
        "Tarnwick Pale",
        fixation=1.0,
        status="growing",
        place="bed 1",
        obtained_from="seed swap at Tarnwick hall, 2019",
        note="Dwarf, white flower, green pod; the sweetest of the old peas here.",
    )
    garden.variety(
        "BA",
        "Brockle Amber",
        status="growing",
        place="bed 1, on netting",
        obtained_from="a neighbour's row, kept by seed for forty years",
        note="Tall, purple flower, yellow pod, heavy cropper; starchy.",
    )
    garden.sow_variety("TP", "2021-04-18", 24, 22, 22, "bed 1")
    garden.sow_variety("BA", "2021-04-07", 20, 17, 17, "bed 1, on netting")
    _look(garden, "TP", "2021-04-18", _Look("dwarf", "white", "green", 8, 24, 52))
    _look(garden, "BA", "2021-04-07", _Look("tall", "purple", "yellow", 5, 41, 63))
    garden.score("TP", "seed weight", 23.1, "2021-09-02", of="seed")
    garden.score("BA", "seed weight", 27.8, "2021-09-02", of="seed")
    garden.bloom("TP", "2021-06-09", "2021-06-27")
    garden.bloom("BA", "2021-06-09", "2021-07-04")
    _genotypes(garden, "TP", "breeds true", "le/le", "a/a", "Gp/Gp")
    _genotypes(garden, "BA", "breeds true", "Le/Le", "A/A", "gp/gp")
    garden.compatibility("TP", "BA", "fertile", "fertile", "Seven pods of twelve buds.")
    garden.compatibility("BA", "", "fertile", "fertile", "The keel is tight; easily torn.")


def _crosses(garden: GardenBook) -> None:
    garden.cross(
        "21-01",
        "TP",
        "BA",
        made_on="2021-06-11",
        seed_doubt="certain",
        pollen_doubt="certain",
        note="Goal of both: dwarf, yellow pod, sweet.",
    )
    garden.cross(
        "21-02", "BA", "TP", made_on="2021-06-12", seed_doubt="certain", pollen_doubt="certain"
    )
    lots = [garden.pollen("BA", "2021-06-11"), garden.pollen("BA", "2021-06-15")]
    garden.pollination("21-01", "2021-06-11", 5, 3, pollen_lot=lots[0], cover="tape")
    garden.pollination(
        "21-01",
        "2021-06-15",
        4,
        3,
        pollen_lot=lots[1],
        cover="tape",
        bud="unsure",
        note="One bud was paler than the rest.",
    )
    garden.pollination("21-01", "2021-06-21", 3, 1, cover="bag", note="Hot noon; two withered.")
    lots = [garden.pollen("TP", "2021-06-12"), garden.pollen("TP", "2021-06-18")]
    garden.pollination("21-02", "2021-06-12", 6, 2, pollen_lot=lots[0], cover="tape", bud="unsure")
    garden.pollination("21-02", "2021-06-18", 4, 2, pollen_lot=lots[1], cover="bag")
    garden.evidence(
        "21-01", "pollen", "for", "2022-06-20", "Six of seven F1 plants are tall and purple."
    )
    garden.evidence("21-01", "pollen", "against", "2022-06-20", "One F1 plant is dwarf and white.")
    garden.evidence(
        "21-02", "pollen", "for", "2022-07-02", "Five of six F1 plants have green pods."
    )
    garden.evidence(
        "21-02", "pollen", "against", "2022-07-02", "One F1 plant has the yellow pod of BA."
    )


def _f1(garden: GardenBook) -> None:
    sown = _SOWN["F1"]
    first = garden.packet("21-01", "2021-08-02", 7, 24, "F1", covered=True)
    second = garden.packet("21-02", "2021-08-05", 4, 13, "F1", covered=True)
    garden.sow(first, sown, 8, 7, 6, "bed 2, north end", "One culled: dwarf and white.")
    garden.sow(second, sown, 6, 6, 5, "bed 2, south end", "One culled: yellow pod.")
    for cross, count, self_number, used in (("21-01", 7, 4, 3), ("21-02", 6, 5, 2)):
        for number in range(1, count + 1):
            code = f"{cross}-{number}"
            true = number != self_number
            status = "kept" if number == used else "finished" if true else "culled"
            garden.plant(code, cross, sown=sown, status=status, place="bed 2")
            if true:
                look = _Look(
                    "tall",
                    "purple",
                    "green",
                    garden.near(6.2, 0.7, 1, 9),
                    garden.near(39, 4, 20, 55),
                    garden.near(58, 1.5, 50, 66),
                )
                _genotypes(garden, code, "F1 of two pure lines", "Le/le", "A/a", "Gp/gp")
            elif cross == "21-01":
                look = _Look("dwarf", "white", "green", None, None, 52)
            else:
                look = _Look("tall", "purple", "yellow", 5, 38, 63)
            _look(garden, code, sown, look)
            if number == used:
                garden.bloom(code, days_after(sown, look.day), days_after(sown, look.day + 24))
    garden.finding(
        "21-01-4", "self", "certain", "2022-06-20", "Dwarf and white: a self of Tarnwick Pale."
    )
    garden.finding(
        "21-02-5",
        "self",
        "certain",
        "2022-07-02",
        "Yellow pod: a self of Brockle Amber; height and flower could not tell.",
    )
    garden.cross(
        "22-01",
        "21-01-3",
        "TP",
        state="skipped",
        note="Back to TP was thought of; Tarnwick Pale was over before the F1 flowered.",
    )


def _f2(garden: GardenBook) -> None:
    sown = _SOWN["F2"]
    families = (
        ("21-01-3", range(1, 49), {("tall", "green"): 27, ("tall", "yellow"): 9}, 9, 14, 71),
        ("21-02-2", range(49, 97), {("tall", "green"): 25, ("tall", "yellow"): 10}, 11, 15, 66),
    )
    for parent, numbers, tall, dwarf_green, pods, seeds in families:
        cross = garden.selfing(parent, "2022-06", note="Left to itself; peas self in the bud.")
        packet = garden.packet(cross, "2022-08-09", pods, seeds, "F2", covered=False)
        garden.sow(packet, sown, 53, 48, 48, "beds 3 and 4")
        looks = {f"{height} {pod}": count for (height, pod), count in tall.items()}
        order = garden.shuffled({**looks, "dwarf green": dwarf_green})
        for number in numbers:
            if number in _CHOSEN_F2:
                sweet, count, day = _CHOSEN_F2[number]
                look = _Look("dwarf", _FLOWER_F2[number], "yellow", sweet, count, day)
                status = "culled" if number == 33 else "kept"
            else:
                height, pod = order.pop().split()
                flower = "purple" if garden.rng.random() < 0.75 else "white"
                look = _Look(
                    height,
                    flower,
                    pod,
                    garden.near(6.3, 1.2, 2, 9),
                    garden.near(36 if height == "tall" else 25, 5, 8, 60),
                    garden.near(58, 2.6, 50, 67),
                )
                status = "culled"
            code = f"23-{number:02d}"
            garden.plant(code, cross, sown=sown, status=status, place=f"stake {number}")
            _look(garden, code, sown, look)
            _genotypes(
                garden,
                code,
                "recessive, so seen",
                "le/le" if look.height == "dwarf" else "",
                "a/a" if look.flower == "white" else "",
                "gp/gp" if look.pod == "yellow" else "",
            )
            if number in _CHOSEN_F2:
                garden.bloom(code, days_after(sown, look.day), days_after(sown, look.day + 19))
    garden.genotype("23-61", "A", "A/a", "its F3 row is purple and white")
    garden.genotype("23-07", "A", "A/A", "its F3 row is all purple")
    garden.note("plant 23-33", "2023-07-28", "Most pods of the five, but no sweetness: let go.")


def _row(
    garden: GardenBook,
    parent: str,
    head: str,
    sown: str,
    generation: str,
    seeds: tuple[int, int, int],
    flowers: list[str],
    means: tuple[float, float, float],
    kept: set[str],
) -> str:
    """One row grown from one plant; gives the code of the selfing."""
    year = int(sown[:4]) - 1
    pods, harvested, put_in = seeds
    cross = garden.selfing(parent, f"{year}-06")
    packet = garden.packet(cross, f"{year}-08-06", pods, harvested, generation, covered=False)
    garden.sow(packet, sown, put_in, len(flowers), len(flowers), f"row {head}")
    for number, flower in enumerate(flowers, 1):
        code = f"{head}-{number}"
        if code in _CHOSEN_LATER:
            sweet, count, day = _CHOSEN_LATER[code]
        else:
            sweet = garden.near(means[0], 0.8, 2, 9)
            count = garden.near(means[1], 3.5, 6, 50)
            day = garden.near(means[2], 1.2, 48, 64)
        status = "kept" if code in kept else "culled"
        garden.plant(code, cross, sown=sown, status=status, place=f"row {head}")
        _look(garden, code, sown, _Look("dwarf", flower, "yellow", sweet, count, day))
        if code in kept:
            garden.bloom(code, days_after(sown, day), days_after(sown, day + 18))
            _genotypes(
                garden, code, "recessive, so seen", "le/le", "a/a" * (flower == "white"), "gp/gp"
            )
    return cross


def _f3(garden: GardenBook) -> None:
    sown = _SOWN["F3"]
    purple, white = ["purple"] * 12, ["white"] * 12
    # Plant 2 of row 61 is one of its three whites: it founds the white-flowered line.
    mixed = ["purple", "white", *garden.shuffled({"purple": 8, "white": 2})]
    kept = {"19-4", "61-2", "88-6"}
    for parent, flowers, pods, seeds in (
        ("23-07", purple, 22, 84),
        ("23-19", white, 27, 116),
        ("23-61", mixed, 19, 71),
        ("23-88", white, 25, 98),
    ):
        number = int(parent[3:])
        sweet, count, day = _CHOSEN_F2[number]
        means = (0.6 * sweet + 2.5, 0.7 * count + 8, 0.7 * day + 16)
        _row(garden, parent, parent[3:], sown, "F3", (pods, seeds, 14), flowers, means, kept)
    garden.note("plant 23-61", "2024-06-05", "Its row flowers 9 purple to 3 white.")
    garden.note("plant 23-19", "2024-06-05", "Its row is white throughout.")
    for lost in ("07-9", "88-11"):
        plant = garden.book.plants[lost]
        plant.status = "lost"
        plant.note = "Eaten by pigeons in July, after it had been scored."
        pods = [row for row in garden.book.scores if row.plant == lost and row.trait == "pods"]
        for row in pods:
            garden.book.scores.remove(row)


def _f4(garden: GardenBook) -> None:
    for parent, pods, seeds, means in (
        ("19-4", 29, 128, (7.6, 29, 54)),
        ("61-2", 23, 88, (7.9, 23, 52.5)),
        ("88-6", 26, 104, (6.6, 26, 55)),
    ):
        _row(
            garden,
            parent,
            parent,
            _SOWN["F4"],
            "F4",
            (pods, seeds, 13),
            ["white"] * 12,
            means,
            {"19-4-2", "61-2-5"},
        )
    garden.note("plant 88-6", "2025-08-10", "Good, never better than 19-4: its row ends here.")


def _f5(garden: GardenBook) -> None:
    sown = _SOWN["F5"]
    for parent, pods, seeds, means in (
        ("19-4-2", 31, 139, (7.9, 30, 53.5)),
        ("61-2-5", 25, 97, (8.4, 25, 52)),
    ):
        whole_row = {f"{parent}-{number}" for number in range(1, 21)}
        cross = _row(
            garden,
            parent,
            parent,
            sown,
            "F5",
            (pods, seeds, 23),
            ["white"] * 20,
            means,
            set(),
        )
        for code in whole_row:
            garden.book.plants[code].status = "finished"
        garden.plant(
            f"{parent} row",
            cross,
            kind="family",
            sown=sown,
            status="kept",
            place=f"row {parent}",
            note="The row as a whole, its seed put together in August 2026.",
        )
        garden.score(
            f"{parent} row",
            "seed weight",
            garden.near(240, 6, 0, 300) / 10,
            "2026-08-20",
            of="seed",
        )
    _off_type(garden, "61-2-5-14", sown)
    garden.note("plant 19-4-2 row", "2026-07-20", "Twenty plants and no off-type.")
    garden.cross(
        "27-01",
        "19-4-2 row",
        "61-2-5 row",
        state="planned",
        drawn="one",
        note="To bring the yield of the one and the sweetness of the other together.",
    )


def _off_type(garden: GardenBook, code: str, sown: str) -> None:
    plant = garden.book.plants[code]
    plant.status = "culled"
    plant.note = "The one tall plant of its row; pulled before it set a pod."
    for score in [row for row in garden.book.scores if row.plant == code]:
        garden.book.scores.remove(score)
    _look(garden, code, sown, _Look("tall", "purple", "", None, None, 60))
    garden.finding(
        code,
        "",
        "unknown",
        days_after(sown, 60),
        "Tall out of a dwarf parent cannot be: foreign pollen, or a volunteer.",
    )


def _marks(garden: GardenBook) -> None:
    garden.note("cross 21-01", "2021-06-21", "Fat green buds take best; the keel just showing.")
    garden.note("cross 21-02", "2021-06-18", "Worked after rain; petals torn twice.")
    garden.note("plant TP", "2021-07-10", "Sown eleven days after BA so that both flower together.")
    garden.bookmark("Both directions", "21-01-3", ("21-01-3", "21-02-2"))
    garden.bookmark("The two lines", "19-4-2", ("19-4-2", "61-2-5"))
    garden.bookmark("The tall one", "61-2-5-14")
