"""Plants: varieties got from elsewhere, plants raised, rows, cuttings, and their judgement."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import propose_plants
from pedigreeview.book.recording.naming import name_as_variety
from pedigreeview.book.recording.plants import clone, double, raise_plants, raise_row, set_status
from pedigreeview.book.recording.varieties import KEPT, record_variety
from pedigreeview.book.records import Plant
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.codes_typed import codes_typed
from pedigreeview.window.forms.fields import (
    ChoiceField,
    CountField,
    FlagField,
    LongTextField,
    NumberField,
    TextField,
)
from pedigreeview.window.forms.form import Form
from pedigreeview.window.forms.open_work import cross_of_sowing, open_sowings, still_to_raise
from pedigreeview.window.forms.pollinating import crosses_on
from pedigreeview.window.forms.record_field import RecordField
from pedigreeview.window.preferences import Preferences

__all__ = ["CloneForm", "NameLineForm", "RaiseForm", "StatusForm", "VarietyForm"]

_USUAL = "12"
"""Plants that are proposed where nobody counted."""


def _beds(book: Book) -> list[str]:
    return sorted({plant.place for plant in book.plants.values() if plant.place})[:2000]


class VarietyForm(Form):
    """A variety, or a plant, that came from elsewhere."""

    NAME = "variety"

    def __init__(self, desk: Desk, preferences: Preferences) -> None:
        super().__init__(desk, preferences, desk.tr("Variety from elsewhere"))
        self.name = self.add(self.tr("&Name"), TextField("name"))
        self.code = self.add(self.tr("&Code"), TextField("plant", self.tr("made of the name")))
        self.how = self.add(
            self.tr("How is it kept &true?"),
            ChoiceField("kept", tuple((word, self._true_by(word)) for word in KEPT)),
            kept=True,
        )
        self.source = self.add(self.tr("Obtained &from"), TextField("obtained_from"))
        self.protected = self.add(
            self.tr("Licence or &protection"),
            TextField("protected", self.tr("as the packet states it")),
        )
        self.crop = self.add(
            self.tr("C&rop"), TextField("crop", self.book.settings.crop), kept=True
        )
        self.ploidy = self.add(self.tr("Plo&idy, if another"), CountField("ploidy"))
        self.fixation = self.add(self.tr("Fi&xation, 0 to 1, if known"), NumberField("fixation"))
        self.sown = self.add(self.tr("&Sown"), self.date_field("sown"))
        self.place = self.add(
            self.tr("P&lace"), TextField("place", self.tr("Bed 2 / row 3 / 7"), _beds(self.book))
        )
        self.note = self.add(self.tr("N&ote"), LongTextField("note", 2))

    def _true_by(self, word: str) -> str:
        return {
            "seed": self.tr("by its own seed, true to type"),
            "mixed": self.tr("by its own seed, a mixed population"),
            "clone": self.tr("by cuttings, tubers, grafts or division"),
            "f1": self.tr("not at all: a bought F1 hybrid"),
        }.get(word, KEPT[word])

    def preview(self) -> str:
        if self.protected.value:
            return self.tr(
                "Breeding with a protected variety is often free, selling seed of it seldom; local "
                "rules and the licence come first."
            )
        return ""

    def words(self) -> str:
        return self.tr("variety {}").format(self.name.value or self.code.value or "?")

    def entry(self) -> Callable[[Edit], Plant]:
        values: dict[str, Any] = {
            "code": self.code.value,
            "name": self.name.value,
            "kept": self.how.value,
            "fixation": self.fixation.number,
            "obtained_from": self.source.value,
            "protected": self.protected.value,
            "crop": self.crop.value,
            "ploidy": self.ploidy.count,
            "sown": self.sown.value,
            "place": self.place.value,
            "note": self.note.value,
        }
        return lambda edit: record_variety(edit, **values)

    def done(self, given: Plant) -> str:
        return self.tr("{} is in the book.").format(given.plant)


class RaiseForm(Form):
    """Numbered plants of one cross in one go, or its seed kept together as a row."""

    NAME = "raise"

    def __init__(
        self, desk: Desk, preferences: Preferences, plant: str = "", cross: str = ""
    ) -> None:
        super().__init__(desk, preferences, desk.tr("Plants raised"))
        self.cross = self.add(
            self.tr("From &cross, or from seed of a variety or family"),
            RecordField("of", desk, "crosses", self._open_first(plant)),
        )
        self.sowing = self.add(
            self.tr("&Sowing, if recorded"), RecordField("sowing", desk, "sowings", self._sowings)
        )
        self.way = self.add(
            self.tr("&Kept as"),
            ChoiceField(
                "way",
                (
                    ("plants", self.tr("numbered plants")),
                    ("row", self.tr("one row or bulk, kept together")),
                    ("sibbed", self.tr("one row whose plants mated with each other")),
                ),
            ),
            kept=True,
        )
        self.number = self.add(self.tr("&How many"), CountField("count"))
        self.sown = self.add(self.tr("S&own"), self.date_field("sown"))
        self.place = self.add(
            self.tr("P&lace"), TextField("place", self.tr("Bed 2 / row 3"), _beds(self.book))
        )
        self.selfings = self.add(
            self.tr("Selfings in &between, not recorded"), CountField("selfings")
        )
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.number.set_text(_USUAL)
        self._offered = ("", _USUAL)
        """The sowing and the number that were proposed last."""
        self.cross.changed.connect(self._propose)
        self.cross.set_text(cross or self._likely(plant))
        self._propose()
        self.way.changed.connect(self._fit)
        self._fit()

    def _fit(self) -> None:
        self.show_field(self.number, self.way.value == "plants")
        self._changed()

    def _open_first(self, plant: str) -> Callable[[Book], list[str]]:
        """The crosses that the plant bears, of these those first that were sown and not raised."""

        def wanted(book: Book) -> list[str]:
            waiting = {cross_of_sowing(book, book.sowings[one]) for one in open_sowings(book)}
            held = crosses_on(plant)(book)
            return sorted(
                held,
                key=lambda code: (book.crosses[code].seed_parent != plant, code not in waiting),
            )

        return wanted

    def _likely(self, plant: str) -> str:
        """The latest cross borne by the plant that was sown and not raised; '' for none."""
        book = self.book
        for code in self.cross.offered()[:1]:
            if book.crosses[code].seed_parent == plant and open_sowings(book, code):
                return str(code)
        return ""

    def _sowings(self, book: Book) -> list[str]:
        """Sowings of the cross first, and of these those first that are not raised yet."""
        cross, waiting = self.cross.value, set(open_sowings(book))
        latest = list(reversed(book.sowings))
        return sorted(
            latest,
            key=lambda code: (
                cross_of_sowing(book, book.sowings[code]) != cross,
                code not in waiting,
            ),
        )

    def _propose(self) -> None:
        """Propose the one sowing of the cross that is not raised yet, and how many came up."""
        book, cross = self.book, self.cross.value
        sowing, number = self._offered
        held = open_sowings(book, cross) if cross in book.crosses else []
        found = held[0] if len(held) == 1 else ""
        left = still_to_raise(book, found) if found else None
        wanted = str(left) if left else _USUAL
        self._offered = (found, wanted)
        if self.sowing.value == sowing:
            self.sowing.set_text(found)
        if self.number.text() == number:
            self.number.set_text(wanted)

    def preview(self) -> str:
        count, code = self.number.count or 0, self.cross.value
        if self.way.value != "plants" or code not in self.book.crosses or not 0 < count <= 5000:
            return ""
        codes = propose_plants(self.book, code, count, self.today())
        if len(codes) == 1:
            return self.tr("It gets the code {}.").format(codes[0])
        return self.tr("They get the codes {} to {}.").format(codes[0], codes[-1])

    def words(self) -> str:
        of = self.cross.value or self.sowing.value or "?"
        if self.way.value == "plants":
            return self.tr("{} plants of {}").format(self.number.text() or "?", of)
        return self.tr("row of {}").format(of)

    def entry(self) -> Callable[[Edit], Any]:
        of, sowing, sown, place = (
            self.cross.value,
            self.sowing.value,
            self.sown.value,
            self.place.value,
        )
        count, selfings, note = self.number.count, self.selfings.count or 0, self.note.value
        way, today = self.way.value, self.today()
        if way == "plants" and not count:
            raise Fault(
                self.tr("It is not said how many plants."),
                Place(column="count"),
                self.tr("Type their number."),
            )

        def work(edit: Edit) -> Any:
            if way == "plants":
                return raise_plants(
                    edit,
                    of,
                    count or 0,
                    today=today,
                    sowing=sowing,
                    sown=sown,
                    place=place,
                    selfings=selfings,
                    note=note,
                )
            return (
                raise_row(
                    edit,
                    of,
                    today=today,
                    sowing=sowing,
                    sown=sown,
                    place=place,
                    selfings=selfings,
                    sibbed=way == "sibbed",
                    note=note,
                ),
            )

        return work

    def done(self, given: Sequence[Plant]) -> str:
        if len(given) == 1:
            return self.tr("{} is in the book.").format(given[0].plant)
        return self.tr("{} plants are in the book: {} to {}.").format(
            len(given), given[0].plant, given[-1].plant
        )


class CloneForm(Form):
    """Cuttings and the like: the same genotype again; or a doubled form."""

    NAME = "clone"

    def __init__(self, desk: Desk, preferences: Preferences, plant: str = "") -> None:
        super().__init__(desk, preferences, desk.tr("Cutting, division, sport"))
        self.source = self.add(self.tr("&Of"), self.plant_field("source"))
        self.way = self.add(
            self.tr("&Way"),
            ChoiceField(
                "way",
                (
                    ("cutting", self.tr("cutting")),
                    ("division", self.tr("division")),
                    ("graft", self.tr("graft")),
                    ("tuber", self.tr("tuber")),
                    ("sport", self.tr("sport: a changed shoot")),
                    ("haploid", self.tr("doubled haploid")),
                    ("doubled", self.tr("chromosomes doubled")),
                ),
            ),
            kept=True,
        )
        self.number = self.add(self.tr("&How many"), CountField("count"))
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.place = self.add(self.tr("P&lace"), TextField("place", proposals=_beds(self.book)))
        self.name = self.add(self.tr("&Name"), TextField("name"))
        self.note = self.add(self.tr("No&te"), TextField("note"))
        self.source.set_text(plant)
        self.number.set_text("1")
        self.date.set_text(self.tr("today"))

    def words(self) -> str:
        return self.tr("{} of {}").format(self.way.editor.currentText(), self.source.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        source, way, count = self.source.value, self.way.value, self.number.count or 1
        date, place, note, name = (
            self.date.value,
            self.place.value,
            self.note.value,
            self.name.value,
        )
        today = self.today()

        def work(edit: Edit) -> Any:
            if way in ("haploid", "doubled"):
                return double(
                    edit,
                    source,
                    count,
                    today=today,
                    haploid=way == "haploid",
                    date=date,
                    place=place,
                    note=note,
                )
            return clone(
                edit,
                source,
                count,
                today=today,
                way=way,
                date=date,
                place=place,
                name=name,
                note=note,
            )

        return work


class StatusForm(Form):
    """Selections kept, plants culled or lost: of one plant or of many."""

    NAME = "status"

    def __init__(
        self, desk: Desk, preferences: Preferences, plants: Sequence[str] = (), status: str = ""
    ) -> None:
        super().__init__(desk, preferences, desk.tr("Kept, culled or lost"))
        self.plants = self.add(
            self.tr("&Plants"), LongTextField("plants", 2 if len(plants) < 12 else 4)
        )
        self.status = self.add(
            self.tr("&Is"),
            ChoiceField(
                "status",
                (
                    ("kept", self.tr("kept on purpose")),
                    ("culled", self.tr("culled: decided against")),
                    ("lost", self.tr("lost: died or missing")),
                    ("finished", self.tr("finished")),
                    ("growing", self.tr("growing")),
                ),
            ),
        )
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.why = self.add(self.tr("&Why"), TextField("why"))
        self.plants.set_text(", ".join(plants))
        self.date.set_text(self.tr("today"))
        if status:
            self.status.set_text(status)

    def words(self) -> str:
        codes = codes_typed(self.plants.value)
        what = codes[0] if len(codes) == 1 else self.tr("{} plants").format(len(codes))
        return self.tr("{}: {}").format(what, self.status.editor.currentText())

    def entry(self) -> Callable[[Edit], Any]:
        codes, status = codes_typed(self.plants.value), self.status.value
        date, why = self.date.value, self.why.value
        return lambda edit: set_status(edit, codes, status, date=date, why=why)


class NameLineForm(Form):
    """A finished line becomes a variety of one's own."""

    NAME = "name_line"

    def __init__(self, desk: Desk, preferences: Preferences, plant: str = "") -> None:
        super().__init__(
            desk,
            preferences,
            desk.tr("Name a line as a variety"),
            desk.tr("The line keeps its parents; from here on it counts as a variety of its own."),
        )
        self.line = self.add(self.tr("&Line"), self.plant_field("line"))
        self.name = self.add(self.tr("&Name"), TextField("name"))
        self.code = self.add(self.tr("&Code"), TextField("plant", self.tr("made of the name")))
        self.fixed = self.add(
            "", FlagField("fixed", self.tr("It breeds &true: take it as fixed"), on=True)
        )
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.note = self.add(self.tr("N&ote"), TextField("note"))
        self.line.set_text(plant)
        self.date.set_text(self.tr("today"))

    def words(self) -> str:
        return self.tr("naming {} as {}").format(self.line.value or "?", self.name.value or "?")

    def entry(self) -> Callable[[Edit], Plant]:
        line, name, code = self.line.value, self.name.value, self.code.value
        fixed, date, note, today = (
            self.fixed.value,
            self.date.value,
            self.note.value,
            self.today(),
        )
        return lambda edit: name_as_variety(
            edit, line, name, today=today, code=code, fixed=fixed, date=date, note=note
        )
