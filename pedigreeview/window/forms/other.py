"""Smaller records: pollen kept, flowering, who sets with whom, notes, traits, genes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.blooms import record_bloom
from pedigreeview.book.recording.compatibility import record_compatibility
from pedigreeview.book.recording.notes import record_note
from pedigreeview.book.recording.pollen import cross_with_mixed_pollen, record_pollen
from pedigreeview.book.recording.traits import record_trait
from pedigreeview.book.records import Genotype, Locus
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.codes_typed import codes_typed
from pedigreeview.window.forms.fields import ChoiceField, LongTextField, NumberField, TextField
from pedigreeview.window.forms.form import Form
from pedigreeview.window.forms.record_field import RecordField
from pedigreeview.window.preferences import Preferences

__all__ = [
    "BloomForm",
    "CompatibilityForm",
    "GeneForm",
    "GenotypeForm",
    "MixedPollenForm",
    "NoteForm",
    "PollenForm",
    "TraitForm",
]


class PollenForm(Form):
    """Pollen collected on one day, of one plant or mixed from several."""

    NAME = "pollen"

    def __init__(self, desk: Desk, preferences: Preferences, plants: Sequence[str] = ()) -> None:
        super().__init__(desk, preferences, desk.tr("Pollen collected"))
        self.plants = self.add(
            self.tr("&Of"), TextField("plant", self.tr("one plant, or several with commas"))
        )
        self.date = self.add(self.tr("&Day"), self.date_field("collected"))
        self.stored = self.add(
            self.tr("How it is &kept"), TextField("stored", self.tr("dry, in the refrigerator"))
        )
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.plants.set_text(", ".join(plants))
        self.date.set_text(self.tr("today"))

    def words(self) -> str:
        return self.tr("pollen of {}").format(self.plants.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        codes, date, today = codes_typed(self.plants.value), self.date.value, self.today()
        stored, note = self.stored.value, self.note.value
        return lambda edit: record_pollen(
            edit, codes, today=today, collected=date, stored=stored, note=note
        )


class MixedPollenForm(Form):
    """A cross with pollen of several plants: each is a candidate."""

    NAME = "mixed"

    def __init__(self, desk: Desk, preferences: Preferences, plant: str = "") -> None:
        super().__init__(desk, preferences, desk.tr("Cross with mixed pollen"))
        self.seed = self.add(self.tr("&Seed parent ♀"), self.plant_field("seed_parent"))
        self.lot = self.add(
            self.tr("&Mixed pollen"), RecordField("pollen_lot", desk, "pollen_lots")
        )
        self.date = self.add(self.tr("&Day"), self.date_field("made_on"))
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.seed.set_text(plant)
        self.date.set_text(self.tr("today"))

    def words(self) -> str:
        return self.tr("cross of {} with mixed pollen").format(self.seed.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        seed, lot, date, today = (
            self.seed.value,
            self.lot.value,
            self.date.value,
            self.today(),
        )
        note = self.note.value
        return lambda edit: cross_with_mixed_pollen(
            edit, seed, lot, today=today, made_on=date, note=note
        )


class BloomForm(Form):
    """The first and the last flower of a plant."""

    NAME = "bloom"

    def __init__(self, desk: Desk, preferences: Preferences, plant: str = "") -> None:
        super().__init__(desk, preferences, desk.tr("Time of flowering"))
        self.plant = self.add(self.tr("&Plant"), self.plant_field("plant"))
        self.first = self.add(self.tr("&First flower"), self.date_field("first_flower"))
        self.last = self.add(self.tr("&Last flower"), self.date_field("last_flower"))
        self.plant.set_text(plant)

    def words(self) -> str:
        return self.tr("flowering of {}").format(self.plant.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        plant, first, last = self.plant.value, self.first.value, self.last.value
        return lambda edit: record_bloom(edit, plant, first=first, last=last)


class CompatibilityForm(Form):
    """Sterile plants, and plants that refuse each other or themselves."""

    NAME = "compatibility"

    def __init__(self, desk: Desk, preferences: Preferences, plants: Sequence[str] = ()) -> None:
        super().__init__(desk, preferences, desk.tr("Who sets with whom"))
        words = (
            ("", self.tr("not known")),
            ("fertile", self.tr("fertile")),
            ("poor", self.tr("poor")),
            ("sterile", self.tr("sterile")),
        )
        self.plant = self.add(self.tr("&Plant"), self.plant_field("plant"))
        self.partner = self.add(self.tr("&With, or blank for any"), self.plant_field("partner"))
        self.as_seed = self.add(self.tr("As &seed parent"), ChoiceField("as_seed", words))
        self.as_pollen = self.add(self.tr("As p&ollen parent"), ChoiceField("as_pollen", words))
        self.note = self.add(self.tr("&Note"), TextField("note"))
        for field, code in zip((self.plant, self.partner), plants, strict=False):
            field.set_text(code)

    def words(self) -> str:
        return self.tr("fertility of {}").format(self.plant.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        plant, partner, note = self.plant.value, self.partner.value, self.note.value
        as_seed, as_pollen = self.as_seed.value, self.as_pollen.value
        return lambda edit: record_compatibility(
            edit, plant, partner, as_seed=as_seed, as_pollen=as_pollen, note=note
        )


class NoteForm(Form):
    """A dated text about a plant."""

    NAME = "note"

    def __init__(self, desk: Desk, preferences: Preferences, plant: str = "") -> None:
        super().__init__(desk, preferences, desk.tr("Note"))
        self.plant = self.add(self.tr("About &plant"), self.plant_field("plant"))
        self.text = self.add(self.tr("&Text"), LongTextField("text", 5))
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.plant.set_text(plant)
        self.date.set_text(self.tr("today"))

    def words(self) -> str:
        return self.tr("note on {}").format(self.plant.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        plant, text, date = self.plant.value, self.text.value, self.date.value
        return lambda edit: record_note(edit, "plants", plant, text, date=date)


class TraitForm(Form):
    """Something that will be scored."""

    NAME = "trait"

    def __init__(self, desk: Desk, preferences: Preferences) -> None:
        super().__init__(desk, preferences, desk.tr("Trait"))
        self.name = self.add(self.tr("&Name"), TextField("trait"))
        self.type = self.add(
            self.tr("&Type"),
            ChoiceField(
                "type",
                (
                    ("score", self.tr("score on a scale")),
                    ("measure", self.tr("measure with a unit")),
                    ("category", self.tr("category, one of some words")),
                    ("yes_no", self.tr("yes or no")),
                ),
            ),
            kept=True,
        )
        self.low = self.add(self.tr("&Lowest"), NumberField("low", self.tr("such as 1")))
        self.high = self.add(self.tr("&Highest"), NumberField("high", self.tr("such as 9")))
        self.unit = self.add(self.tr("&Unit"), TextField("unit", "g, cm"))
        self.values = self.add(self.tr("&Values"), TextField("values", self.tr("tall; dwarf")))
        self.better = self.add(
            self.tr("&Better is"),
            ChoiceField(
                "better",
                (
                    ("none", self.tr("neither")),
                    ("high", self.tr("high")),
                    ("low", self.tr("low")),
                ),
            ),
        )
        self.note = self.add(self.tr("N&ote"), TextField("note"))
        self.type.changed.connect(self._fit)
        self._fit()

    def _fit(self) -> None:
        kind = self.type.value
        self.show_field(self.low, kind in ("score", "measure"))
        self.show_field(self.high, kind in ("score", "measure"))
        self.show_field(self.unit, kind == "measure")
        self.show_field(self.values, kind == "category")
        self.show_field(self.better, kind in ("score", "measure"))

    def words(self) -> str:
        return self.tr("trait {}").format(self.name.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        name, kind = self.name.value, self.type.value
        numeric = kind in ("score", "measure")
        values: dict[str, Any] = {
            "unit": self.unit.value if kind == "measure" else "",
            "low": self.low.number if numeric else None,
            "high": self.high.number if numeric else None,
            "better": self.better.value if numeric else "",
            "values": self.values.value if kind == "category" else "",
            "note": self.note.value,
        }
        return lambda edit: record_trait(edit, name, kind, **values)


class GeneForm(Form):
    """A gene with named alleles, the dominant one first."""

    NAME = "gene"

    def __init__(self, desk: Desk, preferences: Preferences) -> None:
        super().__init__(desk, preferences, desk.tr("Gene"))
        self.locus = self.add(self.tr("&Gene"), TextField("locus", "Le"))
        self.alleles = self.add(self.tr("&Alleles, dominant first"), TextField("alleles", "Le; le"))
        self.phenotypes = self.add(
            self.tr("What it &shows"), TextField("phenotypes", self.tr("tall; dwarf"))
        )
        self.chromosome = self.add(self.tr("&Chromosome"), TextField("chromosome"))
        self.position = self.add(self.tr("&Place in cM"), NumberField("position_cM"))
        self.note = self.add(self.tr("&Note"), TextField("note"))

    def words(self) -> str:
        return self.tr("gene {}").format(self.locus.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        row = Locus(
            locus=self.locus.value,
            alleles=self.alleles.value,
            phenotypes=self.phenotypes.value,
            chromosome=self.chromosome.value,
            position_cM=self.position.number,
            note=self.note.value,
        )
        return lambda edit: edit.add(row)


class GenotypeForm(Form):
    """The alleles of one plant, known by a test or by its progeny."""

    NAME = "genotype"

    def __init__(self, desk: Desk, preferences: Preferences, plant: str = "") -> None:
        super().__init__(desk, preferences, desk.tr("Known genotype"))
        self.plant = self.add(self.tr("&Plant"), self.plant_field("plant"))
        self.locus = self.add(self.tr("&Gene"), RecordField("locus", desk, "loci"), kept=True)
        self.genotype = self.add(self.tr("Ge&notype"), TextField("genotype", "Le/le"))
        self.known_by = self.add(
            self.tr("&Known by"),
            TextField("known_by", self.tr("marker, progeny test")),
            kept=True,
        )
        self.plant.set_text(plant)

    def words(self) -> str:
        return self.tr("genotype of {}").format(self.plant.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        row = Genotype(
            plant=self.plant.value,
            locus=self.locus.value,
            genotype=self.genotype.value,
            known_by=self.known_by.value,
        )
        return lambda edit: edit.add(row)
