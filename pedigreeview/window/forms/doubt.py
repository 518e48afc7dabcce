"""Doubt about parents: a finding on one plant; grade, candidates and evidence of a cross."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.doubt import (
    accept_proposed_odds,
    odds_of_itself,
    record_evidence,
    set_candidates,
    set_doubt,
)
from pedigreeview.book.recording.findings import record_finding
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.codes_typed import codes_typed
from pedigreeview.window.forms.fields import ChoiceField, FlagField, LongTextField, TextField
from pedigreeview.window.forms.form import Form
from pedigreeview.window.forms.record_field import RecordField
from pedigreeview.window.preferences import Preferences

__all__ = ["DoubtForm", "FindingForm", "read_odds"]


def read_odds(text: str, column: str) -> dict[str, float]:
    """'TP:0.8; self:0.2' as odds by code.

    Raises
    ------
    Fault : a part without a number
    """
    found: dict[str, float] = {}
    for part in text.split(";"):
        if not part.strip():
            continue
        code, colon, odds = part.rpartition(":")
        try:
            found[code.strip()] = float(odds.replace(",", "."))
        except ValueError:
            colon = ""
        if not colon or not code.strip():
            raise Fault(
                f"'{part.strip()}' is not a candidate with its odds.",
                Place(column=column),
                "Write it as 'TP: 0.8; self: 0.2'.",
            )
    return found


class FindingForm(Form):
    """What one plant shows of its own pollen parent; it overrides what its cross says."""

    NAME = "finding"

    def __init__(self, desk: Desk, preferences: Preferences, plants: Sequence[str] = ()) -> None:
        super().__init__(
            desk,
            preferences,
            desk.tr("Finding on a plant"),
            desk.tr("Such as: this one is plainly a selfing. It holds for these plants alone."),
        )
        self.plants = self.add(self.tr("&Plants"), TextField("plant"))
        self.way = self.add(
            self.tr("The pollen &came from"),
            ChoiceField(
                "way",
                (
                    ("self", self.tr("the seed parent itself: a selfing")),
                    ("plant", self.tr("another plant")),
                    ("odds", self.tr("one of several, with odds")),
                    ("", self.tr("nobody knows")),
                ),
            ),
        )
        self.giver = self.add(self.tr("That &plant"), self.plant_field("pollen_parent"))
        self.odds = self.add(
            self.tr("Candidates with &odds"), TextField("odds", "TP: 0.8; self: 0.2")
        )
        self.grade = self.add(
            self.tr("&How sure"),
            ChoiceField(
                "grade",
                (
                    ("certain", self.tr("certain")),
                    ("probable", self.tr("probable")),
                    ("possible", self.tr("possible")),
                ),
            ),
            kept=True,
        )
        self.text = self.add(
            self.tr("What was &seen"), TextField("text", self.tr("dwarf and white like TP"))
        )
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.plants.set_text(", ".join(plants))
        self.date.set_text(self.tr("today"))
        self.way.changed.connect(self._fit)
        self._fit()

    def _fit(self) -> None:
        self.show_field(self.giver, self.way.value == "plant")
        self.show_field(self.odds, self.way.value == "odds")

    def words(self) -> str:
        return self.tr("finding on {}").format(self.plants.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        codes, way, date = codes_typed(self.plants.value), self.way.value, self.date.value
        grade, text = self.grade.value, self.text.value
        parent: str | dict[str, float] = way if way in ("self", "") else self.giver.value
        if way == "odds":
            parent = read_odds(self.odds.value, "odds")
        return lambda edit: record_finding(
            edit, codes, parent, date=date, grade=grade if way else "unknown", text=text
        )


class DoubtForm(Form):
    """How sure a parent of a cross is, with the evidence, and who else it may have been."""

    NAME = "doubt"

    def __init__(self, desk: Desk, preferences: Preferences, cross: str = "") -> None:
        super().__init__(
            desk,
            preferences,
            desk.tr("How sure is a parent?"),
            desk.tr("Grades are words; only odds change numbers. Nothing older is written over."),
        )
        self.cross = self.add(self.tr("&Cross"), RecordField("cross", desk, "crosses"))
        self.side = self.add(
            self.tr("&Parent"),
            ChoiceField(
                "side",
                (("pollen", self.tr("pollen parent ♂")), ("seed", self.tr("seed parent ♀"))),
            ),
        )
        self.grade = self.add(
            self.tr("&Grade"),
            ChoiceField(
                "grade",
                (
                    ("", self.tr("leave as it is")),
                    ("certain", self.tr("certain: covered, tagged, a marker showed it")),
                    ("probable", self.tr("probable: worked by hand, tag read")),
                    ("possible", self.tr("possible: one of named candidates")),
                    ("unknown", self.tr("unknown: nobody saw")),
                ),
            ),
        )
        self.speaks = self.add(
            self.tr("What was seen &speaks"),
            ChoiceField(
                "for_or_against", (("for", self.tr("for it")), ("against", self.tr("against it")))
            ),
        )
        self.text = self.add(self.tr("&Evidence"), LongTextField("text", 2))
        self.odds = self.add(
            self.tr("Candidates with &odds"),
            TextField("odds", self.tr("TP: 0.8; self: 0.2 – blank leaves them")),
        )
        self.accept = self.add("", FlagField("accept", ""))
        self.date = self.add(self.tr("&Day"), self.date_field())
        self.date.set_text(self.tr("today"))
        self.cross.set_text(cross)
        self.side.changed.connect(self._fit)
        self._fit()

    def _fit(self) -> None:
        pollen = self.side.value == "pollen"
        self.show_field(self.odds, pollen)
        self._changed()

    def preview(self) -> str:
        code = self.cross.value
        known = code in self.book.crosses
        proposed = odds_of_itself(self.book, code) if known else None
        show = proposed is not None and proposed.odds > 0 and self.side.value == "pollen"
        self.show_field(self.accept, show)
        if proposed is not None and show:
            self.accept.editor.setText(
                self.tr("Take the odds that the buds propose: itself {}").format(
                    f"{proposed.odds:.2g}"
                )
            )
        if not known:
            return ""
        cross = self.book.crosses[code]
        held = cross.pollen_doubt if self.side.value == "pollen" else cross.seed_doubt
        rows = [
            row for row in self.book.evidence if row.cross == code and row.side == self.side.value
        ]
        said = [self.tr("Now: {}.").format(held)] if held else []
        said += [f"{row.date} {row.for_or_against}: {row.text}" for row in rows[-3:]]
        return " ".join(said)

    def words(self) -> str:
        return self.tr("doubt about {}").format(self.cross.value or "?")

    def entry(self) -> Callable[[Edit], Any]:
        cross, side, grade = self.cross.value, self.side.value, self.grade.value
        speaks, text, date = self.speaks.value, self.text.value, self.date.value
        odds = read_odds(self.odds.value, "odds") if side == "pollen" else {}
        accept = self.accept.value and not self.accept.isHidden()
        if not (grade or text or odds or accept):
            raise Fault(
                self.tr("Nothing is said yet."),
                None,
                self.tr("Choose a grade, write evidence, or name candidates."),
            )

        def work(edit: Edit) -> None:
            if grade:
                set_doubt(edit, cross, side, grade, date=date, because=text, speaks=speaks)
            elif text:
                record_evidence(edit, cross, side, speaks, text, date=date)
            if odds:
                set_candidates(edit, cross, odds)
            elif accept:
                accept_proposed_odds(edit, cross)

        return work
