"""A cross: two plants in one direction or both, a selfing, open-pollinated seed, a backcross."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.codes import propose_cross
from pedigreeview.book.recording.compatibility import remarks_on_pair
from pedigreeview.book.recording.crosses import (
    crosses_between,
    record_backcross,
    record_cross,
    record_open,
    record_selfing,
    recurrent_parents,
)
from pedigreeview.book.records import Cross
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import ChoiceField, FlagField, TextField
from pedigreeview.window.forms.form import Form
from pedigreeview.window.preferences import Preferences

__all__ = ["CrossForm"]


class CrossForm(Form):
    """What is crossed with what."""

    NAME = "cross"

    def __init__(
        self,
        desk: Desk,
        preferences: Preferences,
        plants: Sequence[str] = (),
        way: str = "cross",
    ) -> None:
        super().__init__(desk, preferences, desk.tr("Cross"))
        self.way = self.add(
            self.tr("&What"),
            ChoiceField(
                "intended",
                (
                    ("cross", self.tr("× two plants")),
                    ("selfing", self.tr("⊗ a plant with itself")),
                    ("backcross", self.tr("× back to a parent of its own")),
                    ("open", self.tr("○ open-pollinated seed")),
                ),
            ),
        )
        self.seed = self.add(self.tr("&Seed parent ♀"), self.plant_field("seed_parent"))
        self.pollen = self.add(self.tr("&Pollen parent ♂"), self.plant_field("pollen_parent"))
        self.both = self.add("", FlagField("both", self.tr("Make this pair &both ways ⇄")))
        self.repeat = self.add(
            "", FlagField("repeat", self.tr("Make it &anew, with a code of its own"))
        )
        self.show_field(self.repeat, False)
        self.state = self.add(
            self.tr("S&tate"),
            ChoiceField(
                "state", (("planned", self.tr("planned")), ("made", self.tr("made already")))
            ),
            kept=True,
        )
        self.date = self.add(self.tr("&Day"), self.date_field("made_on"))
        self.code = self.add(self.tr("&Code"), TextField("cross"))
        self.note = self.add(self.tr("&Note"), TextField("note"))
        self.way.set_text(way)
        for field, code in zip((self.seed, self.pollen), plants, strict=False):
            field.set_text(code)
        self.way.changed.connect(self._fit)
        self.state.changed.connect(self._fit)
        self._fit()

    def _fit(self) -> None:
        way = self.way.value
        self.show_field(self.pollen, way in ("cross", "backcross"))
        self.show_field(self.both, way in ("cross", "backcross"))
        self.show_field(self.date, self.state.value == "made")
        self._changed()

    def preview(self) -> str:
        book, seed, pollen = self.book, self.seed.value, self.pollen.value
        proposed = ""
        if seed in book.plants:
            other = pollen if self.way.value in ("cross", "backcross") else ""
            intended = {"backcross": "cross"}.get(self.way.value, self.way.value)
            proposed = propose_cross(book, self.today(), seed, other, intended=intended)
        self.code.editor.setPlaceholderText(proposed)
        two = self.way.value in ("cross", "backcross") and {seed, pollen} <= book.plants.keys()
        held_now = two and bool(crosses_between(book, seed, pollen).this_way)
        self.show_field(self.repeat, held_now and self.way.value == "cross")
        if not two:
            return ""
        said = list(remarks_on_pair(book, seed, pollen))
        held = crosses_between(book, seed, pollen)
        if held.this_way:
            codes = ", ".join(cross.cross for cross in held.this_way)
            said.append(self.tr("Recorded already, this way: {}.").format(codes))
        if held.other_way:
            codes = ", ".join(cross.cross for cross in held.other_way)
            said.append(self.tr("Recorded already, the other way: {}.").format(codes))
        return " ".join(said)

    def words(self) -> str:
        seed, pollen = self.seed.value or "?", self.pollen.value or "?"
        if self.way.value == "selfing":
            return self.tr("selfing of {}").format(seed)
        if self.way.value == "open":
            return self.tr("open-pollinated seed of {}").format(seed)
        sign = "⇄" if self.both.value else "×"
        return self.tr("cross {}").format(f"{seed} {sign} {pollen}")

    def entry(self) -> Callable[[Edit], tuple[Cross, ...]]:
        way, seed, pollen = self.way.value, self.seed.value, self.pollen.value
        state, code, note, today = self.state.value, self.code.value, self.note.value, self.today()
        made_on = self.date.value if state == "made" else ""
        both = self.both.value
        repeat = self.repeat.value and not self.repeat.isHidden()

        def work(edit: Edit) -> tuple[Cross, ...]:
            if way == "selfing":
                return (
                    record_selfing(
                        edit, seed, today=today, state=state, made_on=made_on, code=code, note=note
                    ),
                )
            if way == "open":
                return (
                    record_open(
                        edit, seed, today=today, state=state, made_on=made_on, code=code, note=note
                    ),
                )
            if way == "backcross":
                forward = pollen in recurrent_parents(edit.book, seed)
                hybrid, recurrent = (seed, pollen) if forward else (pollen, seed)
                return record_backcross(
                    edit,
                    hybrid,
                    recurrent,
                    today=today,
                    hybrid_as_seed_parent=hybrid == seed,
                    both_ways=both,
                    state=state,
                    made_on=made_on,
                    code=code,
                    note=note,
                )
            return record_cross(
                edit,
                seed,
                pollen,
                today=today,
                both_ways=both,
                state=state,
                made_on=made_on,
                code=code,
                repeat=repeat,
                note=note,
            )

        return work

    def done(self, given: tuple[Cross, ...]) -> str:
        codes = ", ".join(cross.cross for cross in given)
        return self.tr("Cross {} is in the book.").format(codes)
