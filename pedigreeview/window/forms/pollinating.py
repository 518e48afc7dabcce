"""A pollination, and later its fruits: flowers worked on one day, how many set, what dropped."""

from __future__ import annotations

from collections.abc import Callable

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.crosses import record_cross
from pedigreeview.book.recording.pollen import age_of_pollen
from pedigreeview.book.recording.pollinations import (
    COVERS,
    record_fruits,
    record_pollination,
)
from pedigreeview.book.records import Pollination
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import ChoiceField, CountField, FlagField, TextField
from pedigreeview.window.forms.form import Form
from pedigreeview.window.forms.record_field import RecordField
from pedigreeview.window.preferences import Preferences

__all__ = ["FruitsForm", "PollinationForm", "crosses_on"]


def crosses_on(code: str) -> Callable[[Book], list[str]]:
    """The crosses of a book, those that the plant bears first, planned ones before made ones."""

    def wanted(book: Book) -> list[str]:
        held = list(reversed(book.crosses.values()))

        def place(cross: object) -> tuple[bool, bool]:
            return (
                getattr(cross, "seed_parent", "") != code,
                getattr(cross, "state", "") != "planned",
            )

        return [cross.cross for cross in sorted(held, key=place) if cross.state != "skipped"]

    return wanted


class PollinationForm(Form):
    """Written at the plant, in seconds: what was used last is proposed."""

    NAME = "pollination"

    def __init__(
        self, desk: Desk, preferences: Preferences, plant: str = "", cross: str = ""
    ) -> None:
        super().__init__(desk, preferences, desk.tr("Pollination"))
        self.cross = self.add(
            self.tr("&Cross"), RecordField("cross", desk, "crosses", crosses_on(plant))
        )
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.flowers = self.add(self.tr("&Flowers"), CountField("flowers"), kept=True)
        self.bud = self.add(
            self.tr("The bud was &still closed"),
            ChoiceField(
                "bud",
                (
                    ("", self.tr("not noted")),
                    ("closed", self.tr("yes, closed")),
                    ("unsure", self.tr("not sure")),
                    ("open", self.tr("no, it was open")),
                ),
            ),
            kept=True,
        )
        self.cover = self.add(
            self.tr("C&over"),
            TextField("cover", self.tr("bag, tape, cage, petals off, none"), COVERS),
            kept=True,
        )
        self.tag = self.add(self.tr("&Tag"), TextField("tag"))
        self.by = self.add(self.tr("&By"), TextField("by", self.tr("initials")), kept=True)
        self.emasculated = self.add(self.tr("&Emasculated on"), self.date_field("emasculated_on"))
        self.lot = self.add(
            self.tr("&Pollen kept, if any"), RecordField("pollen_lot", desk, "pollen_lots")
        )
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.other_way = self.add(
            "", FlagField("both", self.tr("The &other direction was worked as well ⇄"))
        )
        self.date.set_text(self.tr("today"))
        if cross:
            self.cross.set_text(cross)
        elif plant:
            likely = [c for c in self.cross.offered()[:1] if self._bears(c, plant)]
            self.cross.set_text(likely[0] if likely else "")
        for field in (self.emasculated, self.lot, self.note):
            self.show_field(field, False)
        self.more = self.add("", FlagField("more", self.tr("&More: pollen kept, notes")))
        self.more.changed.connect(self._fit)

    def _bears(self, cross: str, plant: str) -> bool:
        return self.book.crosses[cross].seed_parent == plant

    def _fit(self) -> None:
        for field in (self.emasculated, self.lot, self.note):
            self.show_field(field, self.more.value)

    def preview(self) -> str:
        cross = self.book.crosses.get(self.cross.value)
        two = cross is not None and cross.pollen_parent not in ("", cross.seed_parent)
        self.show_field(self.other_way, two)
        if self.lot.value in self.book.pollen_lots:
            age = age_of_pollen(self.book, self.lot.value, self.date.value)
            if age is not None:
                return self.tr("That pollen is {} days old.").format(age.most)
        odds = {"unsure": "0.1", "open": "0.2"}.get(self.bud.value)
        if odds is not None:
            return self.tr(
                "A bud that was not surely closed may have selfed: odds of {} are proposed."
            ).format(odds)
        return ""

    def words(self) -> str:
        return self.tr("pollination of {}").format(self.cross.value or "?")

    def entry(self) -> Callable[[Edit], tuple[Pollination, ...]]:
        code, date, today = self.cross.value, self.date.value, self.today()
        flowers, bud, cover = self.flowers.count, self.bud.value, self.cover.value
        tag, by, note, lot = self.tag.value, self.by.value, self.note.value, self.lot.value
        emasculated, other_way = self.emasculated.value, self.other_way.value

        def one(edit: Edit, cross: str, tag: str, lot: str) -> Pollination:
            return record_pollination(
                edit,
                cross,
                today=today,
                date=date,
                flowers=flowers,
                emasculated_on=emasculated,
                pollen_lot=lot,
                cover=cover,
                tag=tag,
                by=by,
                bud=bud,
                note=note,
            )

        def work(edit: Edit) -> tuple[Pollination, ...]:
            made = [one(edit, code, tag, lot)]
            if other_way:
                held = edit.book.crosses[made[0].cross]
                _, back = record_cross(
                    edit, held.seed_parent, held.pollen_parent, today=today, both_ways=True
                )[:2]
                made.append(one(edit, back.cross, "", ""))
            return tuple(made)

        return work

    def done(self, given: tuple[Pollination, ...]) -> str:
        codes = ", ".join(row.pollination for row in given)
        return self.tr("Pollination {} is in the book.").format(codes)


class FruitsForm(Form):
    """What became of the flowers of one pollination."""

    NAME = "fruits"

    def __init__(
        self, desk: Desk, preferences: Preferences, plant: str = "", pollination: str = ""
    ) -> None:
        super().__init__(desk, preferences, desk.tr("Fruits set and lost"))

        def wanted(book: Book) -> list[str]:
            rows = list(reversed(book.pollinations.values()))
            crosses = book.crosses

            def place(row: Pollination) -> tuple[bool, bool]:
                held = crosses.get(row.cross)
                return (held is None or held.seed_parent != plant, row.set is not None)

            return [row.pollination for row in sorted(rows, key=place)]

        self.pollination = self.add(
            self.tr("&Pollination"), RecordField("pollination", desk, "pollinations", wanted)
        )
        self.fruits = self.add(self.tr("Fruits &set"), CountField("set"))
        self.dropped = self.add(self.tr("Of these &lost since"), CountField("dropped"))
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.pollination.set_text(pollination or self._likely(plant))

    def _likely(self, plant: str) -> str:
        """The latest pollination on the plant whose fruits are not counted yet; '' for none."""
        for code in self.pollination.offered()[:1]:
            row = self.book.pollinations[code]
            held = self.book.crosses.get(row.cross)
            if held is not None and held.seed_parent == plant and row.set is None:
                return str(code)
        return ""

    def preview(self) -> str:
        row = self.book.pollinations.get(self.pollination.value)
        if row is None or row.flowers is None:
            return ""
        return self.tr("{} flowers were pollinated.").format(row.flowers)

    def words(self) -> str:
        return self.tr("fruits of pollination {}").format(self.pollination.value or "?")

    def entry(self) -> Callable[[Edit], Pollination]:
        code, note = self.pollination.value, self.note.value
        fruits, dropped = self.fruits.count, self.dropped.count
        return lambda edit: record_fruits(edit, code, fruits=fruits, dropped=dropped, note=note)
