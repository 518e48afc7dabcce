"""What each kind of label says, made from the records.

A fact that is not recorded becomes room to write it.  Knows no Qt, no sizes and no places.
"""

from __future__ import annotations

import datetime
import difflib
from collections.abc import Mapping
from dataclasses import replace

from pedigreeview.book.book import Book
from pedigreeview.book.crops import Crop, crop_named
from pedigreeview.book.dates import earliest, is_date
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import Cross, Harvest, Packet, Plant, Pollination, Sowing
from pedigreeview.reports.label_text import Fact, LabelText
from pedigreeview.reports.matings import (
    Mating,
    cautions_about_seed,
    crop_of,
    mating_of,
    named,
    origin_of,
)
from pedigreeview.reports.report_words import tr

__all__ = ["NOT_FOR_EATING", "LabelMaker"]

NOT_FOR_EATING = "For sowing, not for eating."
_LEGUMES = ("pea", "sweet pea", "common bean")


def _fruit_words(crop: Crop | None) -> tuple[str, str]:
    """A crop's word for its fruit, one and several, in the language spoken."""
    word = str(crop.facts.get("fruit", "")) if crop is not None else ""
    if word == "pod" and crop is not None and crop.name not in _LEGUMES:
        # One word in English, two in others: the pod of a daylily is the capsule of a botanist.
        return tr("seed pod"), tr("seed pods")
    return {
        "berry": (tr("berry"), tr("berries")),
        "ear": (tr("ear"), tr("ears")),
        "head": (tr("head"), tr("heads")),
        "hip": (tr("hip"), tr("hips")),
        "pod": (tr("pod"), tr("pods")),
    }.get(word, (tr("fruit"), tr("fruits")))


class LabelMaker:
    """Makes the labels of one book; each method takes the code of what is labelled.

    every : one tag for every flower or fruit, not one a pollination
    """

    def __init__(self, book: Book, every: bool) -> None:
        self.book = book
        self.every = every
        self.candidates = book.candidates()
        self.worked: dict[str, list[Pollination]] = {}
        for pollination in book.pollinations.values():
            self.worked.setdefault(pollination.cross, []).append(pollination)
        self.raised: dict[str, list[Plant]] = {}
        for plant in book.plants.values():
            if plant.cross:
                self.raised.setdefault(plant.cross, []).append(plant)
        self.sown: dict[str, list[Sowing]] = {}
        for sowing in book.sowings.values():
            self.sown.setdefault(sowing.packet, []).append(sowing)

    def due(self, kind: str) -> list[str]:
        """What is labelled when nothing is named."""
        book = self.book
        if kind == "flowers":
            planned = [c.cross for c in book.crosses.values() if c.state == "planned"]
            return [*book.pollinations, *(c for c in planned if c not in self.worked)]
        if kind == "fruits":
            # A pollination that set nothing has no fruit to carry a tag.
            return [p.pollination for p in book.pollinations.values() if p.set != 0]
        if kind == "pots":
            return [p.plant for p in book.plants.values() if _grows(p) and not book.is_pool(p)]
        if kind == "stakes":
            return list(book.sowings)
        return [p.packet for p in book.packets.values() if p.left != 0]

    def flowers(self, code: str) -> list[LabelText]:
        """Tags for the flowers of a pollination, or of all pollinations of a cross."""
        return [text for p, cross in self._worked(code) for text in self._flower(p, cross)]

    def _flower(self, worked: Pollination, cross: Cross) -> list[LabelText]:
        tag = worked.tag
        code = tag if cross.cross in tag else cross.cross
        count = worked.flowers if self.every else None
        facts = [
            Fact("" if worked.date else tr("date"), worked.date, room=12),
            Fact("", _number(worked.flowers), _flowers(worked.flowers), room=5),
            *([] if code == tag else [Fact(tr("tag"), tag, room=9)]),
            Fact(tr("by"), worked.by, room=9),
        ]
        if worked.cover:
            facts.append(Fact("", tr("cover: {}").format(worked.cover), spare=True))
        made = LabelText(
            "flowers",
            code,
            mating=self._mating(cross),
            facts=tuple(facts),
            scan=worked.pollination or cross.cross,
        )
        return _numbered(made, tr("flower"), count)

    def fruits(self, code: str) -> list[LabelText]:
        """Tags for the fruits of a pollination, or of all pollinations of a cross."""
        return [text for p, cross in self._worked(code) for text in self._fruit(p, cross)]

    def _fruit(self, worked: Pollination, cross: Cross) -> list[LabelText]:
        crop = crop_named(crop_of(self.book, cross.seed_parent))
        one, many = _fruit_words(crop)
        set_count = None if worked.set is None else worked.set - (worked.dropped or 0)
        left = set_count if self.every else None
        facts = [Fact(tr("pollinated"), worked.date, room=20)]
        ripe = _ripe_from(worked.date, crop.facts if crop is not None else {})
        if ripe:
            facts.append(Fact(tr("ripe from about"), ripe))
        if left is None:
            facts.append(Fact("", _number(set_count), one if set_count == 1 else many, room=8))
        facts.append(Fact(tr("picked"), room=16))
        made = LabelText(
            "fruits",
            cross.cross,
            mating=self._mating(cross),
            facts=tuple(facts),
            scan=worked.pollination or cross.cross,
        )
        return _numbered(made, one, left)

    def _worked(self, code: str) -> list[tuple[Pollination, Cross]]:
        book = self.book
        if code in book.pollinations:
            held = [book.pollinations[code]]
        elif code in book.crosses:
            held = self.worked.get(code) or [Pollination("", code)]
        else:
            raise self._unknown(code, "cross or pollination", book.pollinations, book.crosses)
        return [(p, book.crosses.get(p.cross) or Cross(p.cross)) for p in held]

    def pots(self, code: str) -> list[LabelText]:
        """Labels for a plant, or for the plants of a cross that still grow."""
        book = self.book
        if code in book.plants:
            return [self._pot(book.plants[code])]
        if code in book.crosses:
            plants = [p for p in self.raised.get(code, []) if _grows(p)]
            if not plants:
                raise Fault(
                    f"The cross {code} has no plants that still grow.",
                    Place(),
                    "Name its plants, or print row stakes for it.",
                )
            return [self._pot(plant) for plant in plants]
        raise self._unknown(code, "plant or cross", book.plants, book.crosses)

    def _pot(self, plant: Plant) -> LabelText:
        facts = [Fact(tr("sown"), plant.sown)] if plant.sown else []
        if plant.place:
            facts.append(Fact("", plant.place, spare=True))
        return LabelText(
            "pots",
            plant.plant,
            name=plant.name,
            mating=self._mating_of_plant(plant),
            origin=origin_of(self.book, plant),
            facts=tuple(facts),
            scan=plant.plant,
        )

    def stakes(self, code: str) -> list[LabelText]:
        """The stake of a sowing, a cross, a family or a variety."""
        book = self.book
        if code in book.sowings:
            return [self._stake_of_sowing(book.sowings[code])]
        if code in book.crosses:
            plants = [p for p in self.raised.get(code, []) if _grows(p)]
            sown = min((p.sown for p in plants if p.sown), default="")
            count = len(plants) or None
            mating = self._mating(book.crosses[code])
            return [_stake(code, "", "", mating, "", sown, _plants(count), code)]
        if code in book.plants:
            plant = book.plants[code]
            return [
                _stake(
                    code,
                    "",
                    plant.name,
                    self._mating_of_plant(plant),
                    origin_of(book, plant),
                    plant.sown,
                    _plants(None if book.is_pool(plant) else 1),
                    code,
                )
            ]
        raise self._unknown(code, "cross, sowing or plant", book.crosses, book.sowings, book.plants)

    def _stake_of_sowing(self, sowing: Sowing) -> LabelText:
        book = self.book
        packet = book.packets.get(sowing.packet)
        harvest = book.harvests.get(packet.harvest) if packet is not None else None
        source = harvest.cross if harvest is not None else sowing.sown_from
        cross, plant = book.crosses.get(source), book.plants.get(source)
        grown = sowing.up if sowing.kept is None else sowing.kept
        counted = _plants(grown)
        if grown is None and sowing.seeds is not None:
            counted = Fact("", _number(sowing.seeds), _seeds(sowing.seeds), room=10)
        mating = origin = name = None
        if cross is not None:
            mating = self._mating(cross)
        elif plant is not None:
            name, origin = plant.name, origin_of(book, plant)
            mating = self._mating_of_plant(plant)
        made = _stake(
            source or sowing.packet or sowing.sowing,
            packet.generation if packet is not None else "",
            name or "",
            mating,
            origin or "",
            sowing.date,
            counted,
            sowing.sowing,
        )
        facts = list(made.facts)
        if packet is not None:
            facts.append(Fact(tr("packet"), packet.packet))
        if sowing.place:
            facts.append(Fact("", sowing.place, spare=True))
        return replace(made, facts=tuple(facts))

    def packets(self, code: str) -> list[LabelText]:
        """The label of a packet, or of a harvest that has none yet."""
        book = self.book
        if code in book.packets:
            packet = book.packets[code]
            return [self._packet(packet, book.harvests.get(packet.harvest))]
        if code in book.harvests:
            harvest = book.harvests[code]
            packet = book.packets.get(harvest.packet) or Packet(harvest.packet or code, code)
            return [self._packet(packet, harvest)]
        raise self._unknown(code, "packet or harvest", book.packets, book.harvests)

    def _packet(self, packet: Packet, harvest: Harvest | None) -> LabelText:
        book = self.book
        cross = book.crosses.get(harvest.cross) if harvest is not None else None
        borne = packet.borne_on or (cross.seed_parent if cross is not None else "")
        plant = book.plants.get(borne)
        seeds = packet.seeds
        if seeds is None and harvest is not None:
            seeds = harvest.seeds
        counted = Fact("", _number(seeds), _seeds(seeds), room=10)
        if packet.left is not None and packet.left != seeds:
            held = _number(packet.left)
            if seeds is not None:
                held = tr("{} of {}").format(held, seeds)
            counted = Fact("", held, tr("seed left") if seeds == 1 else tr("seeds left"))
        covered = {True: tr("covered"), False: tr("open"), None: ""}[packet.covered]
        mating = self._mating(cross) if cross is not None else None
        facts = [
            Fact("", covered, room=14) if covered else Fact(tr("covered / open")),
            Fact(tr("harvested"), harvest.date if harvest is not None else "", room=20),
            counted,
        ]
        if not _is_short(packet.generation):
            # A few words fit beside no code; they stand in front instead.
            what = "" if "seed" in packet.generation else tr("generation of the seed")
            facts.insert(0, Fact(what, tr(packet.generation), room=14))
        share = packet.germination
        if share is None:
            facts.append(Fact(tr("germination"), after="%", room=9))
            facts.append(Fact(tr("on"), room=15, joined=True))
        else:
            facts.append(Fact(tr("germination"), f"{100 * share:.3g}%"))
            facts.append(Fact(tr("on"), self._tried_on(packet), room=15, joined=True))
        if packet.place:
            facts.append(Fact("", packet.place, spare=True))
        return LabelText(
            "packets",
            packet.packet,
            badge=tr("{} seed").format(packet.generation) if _is_short(packet.generation) else "",
            mating=mating,
            origin=_borne(mating, borne, plant.name if plant is not None else ""),
            facts=tuple(facts),
            cautions=(
                tr(NOT_FOR_EATING),
                *(tr(said) for said in cautions_about_seed(crop_of(book, borne))),
            ),
            scan=packet.packet,
        )

    def _tried_on(self, packet: Packet) -> str:
        """The day of the latest sowing that gave the packet's germination, or ''."""
        held = [
            sowing.date
            for sowing in self.sown.get(packet.packet, [])
            if sowing.up is not None
            and sowing.seeds
            and packet.germination is not None
            and abs(sowing.up / sowing.seeds - packet.germination) < 0.0051
        ]
        return max(held, default="")

    def _mating(self, cross: Cross) -> Mating:
        return mating_of(self.book, cross, self.candidates)

    def _mating_of_plant(self, plant: Plant) -> Mating | None:
        cross = self.book.crosses.get(plant.cross)
        if cross is None or self.book.raised(plant) != "cross":
            return None
        return self._mating(cross)

    def _unknown(self, code: str, what: str, *tables: Mapping[str, object]) -> Fault:
        known = [str(key) for table in tables for key in table]
        near = difflib.get_close_matches(code, known, 3)
        todo = (
            f"Did you mean {' or '.join(near)}?" if near else "See how it is written in the book."
        )
        return Fault(f"There is no {what} '{code}' in the book.", Place(), todo)


def _stake(
    code: str,
    generation: str,
    name: str,
    mating: Mating | None,
    origin: str,
    sown: str,
    counted: Fact,
    scan: str,
) -> LabelText:
    short = _is_short(generation)
    if mating is not None and mating.sign != "cross" and code == mating.text:
        # The code that the program made of a selfing says it already.
        origin, mating = mating.words, None
    facts = [
        *([Fact("", tr(generation))] if generation and not short else []),
        Fact(tr("sown"), sown, room=20),
        counted,
    ]
    badge = generation if short else ""
    return LabelText("stakes", code, badge, name, mating, origin, tuple(facts), (), scan)


def _numbered(made: LabelText, word: str, count: int | None) -> list[LabelText]:
    if count is None:
        return [made]
    badge = tr("{} {} of {}")
    return [replace(made, badge=badge.format(word, at, count)) for at in range(1, count + 1)]


def _borne(mating: Mating | None, plant: str, name: str) -> str:
    """On which plant the seed grew and what gave the pollen: the direction in words."""
    bore = tr("Borne on {}").format(named(plant, name))
    if not plant:
        bore = tr("Which plant bore it is not known")
    if mating is None:
        return bore
    if (plant and mating.seed not in (plant, "?")) or not mating.direction_known:
        return f"{bore}; {mating.words}"
    if mating.sign == "selfing":
        return tr("{}, selfed").format(bore)
    if mating.sign == "open":
        return tr("{}, open-pollinated").format(bore)
    if mating.pollen == "?":
        return tr("{}, pollen parent not known").format(bore)
    return tr("{}, pollen of {}").format(bore, named(mating.pollen, mating.pollen_name))


def _grows(plant: Plant) -> bool:
    return plant.status in ("", "growing", "kept")


def _is_short(generation: str) -> bool:
    return 0 < len(generation) <= 8 and " " not in generation


def _number(count: int | None) -> str:
    return "" if count is None else f"{count}"


def _flowers(count: int | None) -> str:
    return tr("flower") if count == 1 else tr("flowers")


def _seeds(count: int | None) -> str:
    return tr("seed") if count == 1 else tr("seeds")


def _plants(count: int | None) -> Fact:
    return Fact("", _number(count), tr("plant") if count == 1 else tr("plants"), room=10)


def _ripe_from(pollinated: str, facts: dict[str, object]) -> str:
    days = facts.get("days_to_ripe")
    if not isinstance(days, dict) or not is_date(pollinated) or len(pollinated) < 10:
        return ""
    least = days.get("low", days.get("value"))
    if least is None:
        return ""
    return (earliest(pollinated) + datetime.timedelta(days=float(least))).isoformat()
