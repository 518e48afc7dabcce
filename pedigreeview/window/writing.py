"""What can be written down: every form by its name, with its words and key, and how it begins.

A form begins with what is at hand: the plant that is marked, the plants that are picked or pinned,
or what the page that asks for it says.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QPoint, Qt
from PySide6.QtWidgets import QMenu

from pedigreeview.book.recording.crosses import record_cross
from pedigreeview.window.forms.form import Form
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit
    from pedigreeview.book.records import Plant
    from pedigreeview.window.main_window import MainWindow

__all__ = ["Entry", "Writing"]


@dataclass(frozen=True, slots=True)
class Entry:
    """One form as the menu offers it."""

    name: str
    text: str
    key: str = ""


class Writing(QObject):
    """Opens the forms on the bench of the window."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window

    def entries(self) -> tuple[tuple[Entry, ...], ...]:
        """The forms in groups, in the order in which the work runs."""
        return (
            (Entry("quick", self.tr("&Quick line …"), "Ctrl+Space"),),
            (
                Entry("variety", self.tr("&Variety from elsewhere …"), "F3"),
                Entry("cross", self.tr("&Cross …"), "F4"),
                Entry("pollination", self.tr("&Pollination …"), "F5"),
                Entry("fruits", self.tr("&Fruits set and lost …"), "F6"),
                Entry("harvest", self.tr("&Harvest …"), "F7"),
                Entry("sowing", self.tr("&Sowing …"), "F8"),
                Entry("seedlings", self.tr("Seed&lings …")),
                Entry("raise", self.tr("Plants &raised …"), "F9"),
            ),
            (
                Entry("status", self.tr("&Kept, culled or lost …"), "F11"),
                Entry("note", self.tr("&Note …"), "F12"),
                Entry("bloom", self.tr("Time of flo&wering …")),
                Entry("clone", self.tr("Cu&tting, division, sport …")),
                Entry("name_line", self.tr("N&ame a line as a variety …")),
            ),
            (
                Entry("finding", self.tr("Findin&g on a plant …")),
                Entry("doubt", self.tr("How sure is a parent? …")),
                Entry("pollen", self.tr("Pollen collected …")),
                Entry("mixed", self.tr("Cross with mixed pollen …")),
                Entry("compatibility", self.tr("Who sets with whom …")),
                Entry("packet", self.tr("Seed packet bought or given …")),
                Entry("count", self.tr("Count the seed of a packet …")),
            ),
            (
                Entry("trait", self.tr("Trait …")),
                Entry("gene", self.tr("Gene …")),
                Entry("genotype", self.tr("Known genotype …")),
            ),
        )

    # Opening ------------------------------------------------------------------------------------

    def open(self, name: str, **what: Any) -> None:
        """Open a form.

        Parameters
        ----------
        name : as in `entries`
        what : how it begins: `plants`, `plant`, `cross`, `packet`, `sowing`, `pollination`,
            `status`, `way`, `text`; what is not said comes from what is marked
        """
        window = self._window
        if window.opened is None:
            return
        if window.desk.file is None:
            # The form would be refused at its end; the book is kept first, with one click.
            window.door.keep_as_book(lambda: self.open(name, **what))
            return
        form = self._make(name, what)
        if name == "variety":
            form.recorded.connect(self._show_new)
        window.bench.lay(form)

    def begin(self, what: str) -> None:
        """Begin what an empty picture invites to: a form by its name, a selfing or a table."""
        if what == "table":
            self._window.asides.bring_in()
        elif what == "selfing":
            self.open("cross", way="selfing")
        else:
            self.open(what)

    def _show_new(self, plant: Plant) -> None:
        """A variety hangs on nothing yet: unless it comes into focus, it is nowhere to be seen."""
        if self._window.page() == "pedigree":
            self._window.pedigree.focus_on(plant.plant)

    def take_up(self, name: str, typed: Mapping[str, str]) -> Form | None:
        """Lay a form out again as it stood when the book was closed; None if it is no form."""
        if name not in {entry.name for group in self.entries() for entry in group}:
            return None
        form = self._make(name, {})
        self._window.bench.lay(form)
        form.take_up(typed)
        return form

    def words_of(self, name: str) -> str:
        """What a form is called, as the menu has it."""
        texts = {entry.name: entry.text for group in self.entries() for entry in group}
        return texts.get(name, "").replace("&", "").removesuffix("…").strip()

    def marked(self) -> str:
        """The plant that is marked."""
        return self._window.pedigree.selected

    def plants(self) -> tuple[str, ...]:
        """The plants at hand: picked ones, else pinned ones, else the marked one."""
        window = self._window
        picked = tuple(window.picked)
        pins = tuple(window.pedigree.pins)
        marked = (self.marked(),) if self.marked() else ()
        return picked or (pins if len(pins) > 1 else marked)

    def _make(self, name: str, what: dict[str, Any]) -> Form:
        from pedigreeview.window.forms import crossing, doubt, growing, other, pollinating, quick
        from pedigreeview.window.forms import seed as seeds

        desk, preferences = self._window.desk, self._window.preferences
        plants: Sequence[str] = what.pop("plants", None) or self.plants()
        plant = what.pop("plant", "") or (plants[0] if plants else "")
        book = desk.book
        assert book is not None
        cross = book.plants[plant].cross if plant in book.plants else ""
        makers: dict[str, Callable[[], Form]] = {
            "quick": lambda: quick.QuickForm(desk, preferences, **what),
            "variety": lambda: growing.VarietyForm(desk, preferences),
            "cross": lambda: crossing.CrossForm(desk, preferences, plants[:2], **what),
            "pollination": lambda: pollinating.PollinationForm(desk, preferences, plant, **what),
            "fruits": lambda: pollinating.FruitsForm(desk, preferences, plant, **what),
            "harvest": lambda: seeds.HarvestForm(desk, preferences, plant, **what),
            "sowing": lambda: seeds.SowingForm(desk, preferences, **what),
            "seedlings": lambda: seeds.SeedlingsForm(desk, preferences, **what),
            "packet": lambda: seeds.PacketForm(desk, preferences, plant),
            "count": lambda: seeds.CountForm(desk, preferences, **what),
            "raise": lambda: growing.RaiseForm(desk, preferences, plant, **what),
            "status": lambda: growing.StatusForm(desk, preferences, plants, **what),
            "note": lambda: other.NoteForm(desk, preferences, plant),
            "bloom": lambda: other.BloomForm(desk, preferences, plant),
            "clone": lambda: growing.CloneForm(desk, preferences, plant),
            "name_line": lambda: growing.NameLineForm(desk, preferences, plant),
            "finding": lambda: doubt.FindingForm(desk, preferences, plants),
            "doubt": lambda: doubt.DoubtForm(desk, preferences, what.get("cross", cross)),
            "pollen": lambda: other.PollenForm(desk, preferences, plants),
            "mixed": lambda: other.MixedPollenForm(desk, preferences, plant),
            "compatibility": lambda: other.CompatibilityForm(desk, preferences, plants[:2]),
            "trait": lambda: other.TraitForm(desk, preferences),
            "gene": lambda: other.GeneForm(desk, preferences),
            "genotype": lambda: other.GenotypeForm(desk, preferences, plant),
        }
        form = makers[name]()
        form.opened_as = name
        return form

    def for_table(self, table: str) -> str:
        """The form that makes a new record of a table; '' if none does."""
        return {
            "plants": "variety",
            "crosses": "cross",
            "pollinations": "pollination",
            "harvests": "harvest",
            "packets": "packet",
            "sowings": "sowing",
            "traits": "trait",
            "scores": "quick",
            "loci": "gene",
            "genotypes": "genotype",
            "pollen_candidates": "doubt",
            "evidence": "doubt",
            "parent_findings": "finding",
            "pollen_lots": "pollen",
            "blooms": "bloom",
            "compatibility": "compatibility",
            "notes": "note",
        }.get(table, "")

    # From the picture ---------------------------------------------------------------------------

    def offer_cross(self, seed: str, pollen: str, place: QPoint) -> None:
        """One tag was dragged on another: offer the cross, in one direction or both."""
        window = self._window
        book = window.desk.book
        if book is None or seed == pollen or not {seed, pollen} <= set(book.plants):
            return
        menu = QMenu(window)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        a, b = named(book, seed), named(book, pollen)
        for text, first, second, both in (
            (self.tr("Plan {} × {}").format(a, b), seed, pollen, False),
            (self.tr("Plan {} × {}").format(b, a), pollen, seed, False),
            (self.tr("Plan both directions ⇄"), seed, pollen, True),
        ):
            action = menu.addAction(text)
            action.triggered.connect(partial(self._plan, first, second, both))
        menu.addSeparator()
        more = menu.addAction(self.tr("More …"))
        more.triggered.connect(lambda: self.open("cross", plants=(seed, pollen)))
        menu.popup(place)

    def _plan(self, seed: str, pollen: str, both: bool, _: bool = False) -> None:
        import datetime

        today = datetime.date.today()

        def edit(edit: Edit) -> Any:
            return record_cross(edit, seed, pollen, today=today, both_ways=both)

        def done(given: Any) -> None:
            codes = ", ".join(cross.cross for cross in given)
            self._window.said.setText(self.tr("Cross {} is in the book.").format(codes))

        sign = "⇄" if both else "×"
        self._window.desk.record(self.tr("cross {}").format(f"{seed} {sign} {pollen}"), edit, done)

    def tag_entries(self, code: str) -> list[tuple[str, Callable[[], object]]]:
        """What the menu of a tag offers to write of its plant."""
        if self._window.opened is None:
            return []
        return [
            (self.tr("Cross it …"), lambda: self.open("cross", plants=(code,))),
            (self.tr("Self it ⊗ …"), lambda: self.open("cross", plants=(code,), way="selfing")),
            (self.tr("Pollination on it …"), lambda: self.open("pollination", plant=code)),
            (self.tr("Keep it"), lambda: self.open("status", plants=(code,), status="kept")),
            (self.tr("Cull it"), lambda: self.open("status", plants=(code,), status="culled")),
            (self.tr("Note on it …"), lambda: self.open("note", plant=code)),
            (self.tr("Plants raised from it …"), lambda: self.open("raise", plant=code)),
            (self.tr("Print its tag …"), lambda: self._print_tag(code)),
        ]

    def _print_tag(self, code: str) -> None:
        from pedigreeview.window.papers.opening import open_papers

        open_papers(self._window, "pots", codes=(code,))
