"""Seed: harvested into a packet, bought, sown, come up."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.harvests import record_harvest
from pedigreeview.book.recording.packets import correct_count, record_packet
from pedigreeview.book.recording.sowings import record_seedlings, record_sowing
from pedigreeview.book.records import Packet
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import ChoiceField, CountField, TextField
from pedigreeview.window.forms.form import Form
from pedigreeview.window.forms.open_work import unsown_packets
from pedigreeview.window.forms.pollinating import crosses_on
from pedigreeview.window.forms.record_field import RecordField
from pedigreeview.window.preferences import Preferences

__all__ = ["CountForm", "HarvestForm", "PacketForm", "SeedlingsForm", "SowingForm"]


def _places(book: Book) -> list[str]:
    places = {packet.place for packet in book.packets.values()}
    places |= {sowing.place for sowing in book.sowings.values()}
    return sorted(place for place in places if place)[:2000]


class HarvestForm(Form):
    """Fruits and seeds taken from a cross, and where the seed goes."""

    NAME = "harvest"

    def __init__(
        self, desk: Desk, preferences: Preferences, plant: str = "", cross: str = ""
    ) -> None:
        super().__init__(desk, preferences, desk.tr("Harvest"))
        self.cross = self.add(
            self.tr("&Cross"), RecordField("cross", desk, "crosses", crosses_on(plant))
        )
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.fruits = self.add(self.tr("&Fruits"), CountField("fruits"))
        self.seeds = self.add(self.tr("&Seeds"), CountField("seeds"))
        self.into = self.add(
            self.tr("The seed goes &into"),
            ChoiceField("into", (("new", self.tr("a new packet")), ("", self.tr("no packet yet")))),
        )
        self.place = self.add(
            self.tr("Where the packet &lies"),
            TextField("place", proposals=_places(self.book)),
            kept=True,
        )
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.date.set_text(self.tr("today"))
        self.cross.set_text(cross or self._likely(plant))

    def _likely(self, plant: str) -> str:
        """The latest cross borne by the plant that was worked and not harvested; '' for none."""
        book = self.book
        worked = {row.cross for row in book.pollinations.values()}
        worked -= {row.cross for row in book.harvests.values()}
        found = (code for code in self.cross.offered() if code in worked)
        return next((str(c) for c in found if book.crosses[c].seed_parent == plant), "")

    def words(self) -> str:
        return self.tr("harvest of {}").format(self.cross.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        code, date, today = self.cross.value, self.date.value, self.today()
        fruits, seeds = self.fruits.count, self.seeds.count
        into, place, note = self.into.value, self.place.value, self.note.value
        return lambda edit: record_harvest(
            edit,
            code,
            today=today,
            date=date,
            fruits=fruits,
            seeds=seeds,
            into=into,
            place=place if into else "",
            note=note,
        )

    def done(self, given: Any) -> str:
        harvest, packet = given
        if packet is None:
            return self.tr("Harvest {} is in the book.").format(harvest.harvest)
        return self.tr("Harvest {} is in the book; its seed is packet {}.").format(
            harvest.harvest, packet.packet
        )


class PacketForm(Form):
    """A packet that came from no harvest of this book."""

    NAME = "packet"

    def __init__(self, desk: Desk, preferences: Preferences, plant: str = "") -> None:
        super().__init__(
            desk,
            preferences,
            desk.tr("Seed packet"),
            desk.tr("Seed that was bought or given. Harvested seed gets its packet by itself."),
        )
        self.borne_on = self.add(self.tr("Seed &of"), self.plant_field("borne_on"))
        self.seeds = self.add(self.tr("&Seeds"), CountField("seeds"))
        self.generation = self.add(
            self.tr("&Generation of the seed"), TextField("generation", self.tr("such as F2"))
        )
        self.place = self.add(
            self.tr("Where it &lies"), TextField("place", proposals=_places(self.book)), kept=True
        )
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.borne_on.set_text(plant)

    def words(self) -> str:
        return self.tr("packet of seed of {}").format(self.borne_on.value or "?")

    def entry(self) -> Callable[[Edit], Packet]:
        borne_on, seeds, today = self.borne_on.value, self.seeds.count, self.today()
        generation, place, note = self.generation.value, self.place.value, self.note.value
        return lambda edit: record_packet(
            edit,
            today=today,
            borne_on=borne_on,
            generation=generation,
            seeds=seeds,
            place=place,
            note=note,
        )


class CountForm(Form):
    """How many seeds a packet has left, as counted."""

    NAME = "count"

    def __init__(self, desk: Desk, preferences: Preferences, packet: str = "") -> None:
        super().__init__(desk, preferences, desk.tr("Count the seed of a packet"))
        self.packet = self.add(self.tr("&Packet"), RecordField("packet", desk, "packets"))
        self.left = self.add(self.tr("Seeds &left"), CountField("left"))
        self.why = self.add(self.tr("&Why"), TextField("why"))
        self.packet.set_text(packet)

    def words(self) -> str:
        return self.tr("count of packet {}").format(self.packet.value or "?")

    def entry(self) -> Callable[[Edit], Packet]:
        packet, left, why = self.packet.value, self.left.count, self.why.value
        date = self.today().isoformat()
        return lambda edit: correct_count(edit, packet, left=left, date=date, why=why)


class SowingForm(Form):
    """Seed sown from a packet, whose count falls, or straight from a cross or plant."""

    NAME = "sowing"

    def __init__(
        self, desk: Desk, preferences: Preferences, packet: str = "", sown_from: str = ""
    ) -> None:
        super().__init__(desk, preferences, desk.tr("Sowing"))

        def with_seed(book: Book) -> list[str]:
            unsown = unsown_packets(book)
            rows = reversed(book.packets.values())
            held = [row.packet for row in rows if row.left is None or row.left > 0]
            return [*unsown, *(code for code in held if code not in set(unsown))]

        self.packet = self.add(
            self.tr("&Packet"), RecordField("packet", desk, "packets", with_seed)
        )
        self.sown_from = self.add(
            self.tr("or seed of a cross or plant &without a packet"), TextField("sown_from")
        )
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.seeds = self.add(self.tr("&Seeds"), CountField("seeds"))
        self.place = self.add(
            self.tr("P&lace"), TextField("place", proposals=_places(self.book)), kept=True
        )
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.date.set_text(self.tr("today"))
        # What waits to be sown is proposed where there is one such packet, never one sown from.
        waiting = unsown_packets(self.book)
        alone = waiting[0] if len(waiting) == 1 and not sown_from else ""
        self.packet.set_text(packet or alone)
        self.sown_from.set_text(sown_from)
        self.left = self.add(self.tr("Seeds in the packet &before"), CountField("left_in_packet"))
        self.show_field(self.left, False)

    def _refused(self, fault: Any) -> None:
        from pedigreeview.book.recording.packets import TooFewSeeds

        if isinstance(fault, TooFewSeeds):
            self.show_field(self.left, True)
        super()._refused(fault)

    def preview(self) -> str:
        row = self.book.packets.get(self.packet.value)
        if row is None or row.left is None:
            return ""
        return self.tr("{} seeds are left in the packet.").format(row.left)

    def words(self) -> str:
        return self.tr("sowing of {}").format(self.packet.value or self.sown_from.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        packet, source, date = self.packet.value, self.sown_from.value, self.date.value
        seeds, place, note, today = (
            self.seeds.count,
            self.place.value,
            self.note.value,
            self.today(),
        )
        left = self.left.count if not self.left.isHidden() else None
        return lambda edit: record_sowing(
            edit,
            today=today,
            packet=packet,
            sown_from="" if packet else source,
            date=date,
            seeds=seeds,
            place=place,
            note=note,
            left_in_packet=left,
        )

    def done(self, given: Any) -> str:
        return self.tr("Sowing {} is in the book.").format(given.sowing)


class SeedlingsForm(Form):
    """How many seedlings of a sowing came up and were kept."""

    NAME = "seedlings"

    def __init__(self, desk: Desk, preferences: Preferences, sowing: str = "") -> None:
        super().__init__(desk, preferences, desk.tr("Seedlings"))

        def waiting(book: Book) -> list[str]:
            latest = list(book.sowings.values())[::-1]
            rows = sorted(latest, key=lambda row: row.up is not None)
            return [row.sowing for row in rows]

        self.sowing = self.add(self.tr("S&owing"), RecordField("sowing", desk, "sowings", waiting))
        self.up = self.add(self.tr("Came &up"), CountField("up"))
        self.kept = self.add(self.tr("&Kept"), CountField("kept"))
        self.note = self.add(self.tr("&Note"), TextField("note"))
        open_yet = [row.sowing for row in self.book.sowings.values() if row.up is None]
        self.sowing.set_text(sowing or (open_yet[0] if len(open_yet) == 1 else ""))

    def words(self) -> str:
        return self.tr("seedlings of sowing {}").format(self.sowing.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        sowing, note = self.sowing.value, self.note.value
        up, kept = self.up.count, self.kept.count
        return lambda edit: record_seedlings(edit, sowing, up=up, kept=kept, note=note)
