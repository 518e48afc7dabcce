"""The settings of the book: name, crop, what numbers rest on, and how codes are made."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QDialog, QLabel, QRadioButton, QWidget

from pedigreeview.book.book import BookSettings
from pedigreeview.book.crops import crop_named, crops
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.fields import number
from pedigreeview.window.code_fields import CodeFields
from pedigreeview.window.edit_dialog import say_refused
from pedigreeview.window.forms.fields import ChoiceField, Field, NumberField, TextField
from pedigreeview.window.labels import (
    action_button,
    column,
    dialog_foot,
    heading,
    scrolled,
    sentence,
)
from pedigreeview.window.slices import Slices
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.preferences import Preferences

__all__ = ["BookSettingsDialog"]

_PLOIDIES = (2, 3, 4, 5, 6, 8, 10)
_TALL = 110
"""Steps of the grid: less than what all parts need, more than the dialog shows at once."""


class BookSettingsDialog(QDialog):
    """One edit changes them all; the order of dates belongs to the person and not to the book."""

    def __init__(self, desk: Desk, preferences: Preferences, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Book settings"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._desk, self._preferences = desk, preferences
        book = desk.book
        assert book is not None
        self._shown: BookSettings = book.settings
        s = step()
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Book settings"), 2))
        # What is laid into its final place takes the style sheet once.
        self._inner = QWidget()
        self.area = scrolled(self._inner)
        outer.addWidget(self.area, 1)
        self._body = column(2 * s)
        self._body.setContentsMargins(0, 0, 2 * s, 0)
        self._inner.setLayout(self._body)
        # The bar at the side is there from the first, so that nothing moves when the rest comes.
        self._inner.setMinimumHeight(_TALL * s)
        self._fields: dict[str, Field] = {}
        self._book_part(self._shown)
        self._body.addStretch(1)
        self.message = sentence("", "fault")
        self.message.hide()
        outer.addWidget(self.message)
        self.save_button = action_button(self.tr("Keep these settings"), self.save, main=True)
        outer.addLayout(dialog_foot(self, self.save_button))
        self.resize(88 * s, 84 * s)
        self._fields["name"].setFocus()
        self._slices = Slices(self._rest(), self)

    def _rest(self) -> Iterator[None]:
        """What lies below the first fields, a part at a time."""
        body = self._body
        body.takeAt(body.count() - 1)
        yield from self._numbers_part(self._shown)
        self._part(self.tr("Codes"))
        self._codes = CodeFields(self._shown)
        body.addWidget(self._codes)
        yield
        self._dates_part()
        body.addStretch(1)
        self._inner.setMinimumHeight(0)

    @property
    def fields(self) -> dict[str, Field]:
        """The fields by their columns, all of them."""
        self._slices.finish()
        return self._fields

    @property
    def codes(self) -> CodeFields:
        """How codes are made."""
        self._slices.finish()
        return self._codes

    @property
    def orders(self) -> QButtonGroup:
        """How typed dates are read."""
        self._slices.finish()
        return self._orders

    def _part(self, title: str, text: str = "") -> None:
        self._body.addSpacing(step())
        self._body.addWidget(heading(title, 3))
        if text:
            self._body.addWidget(sentence(text, "soft"))

    def _add(self, label: str, field: Field, text: str) -> None:
        part = column(max(1, step() // 4))
        self._body.addLayout(part)
        shown = QLabel(label)
        shown.setBuddy(field)
        field.set_label(label.replace("&", ""))
        part.addWidget(shown)
        part.addWidget(field)
        field.set_text(text)
        self._fields[field.column] = field

    def _book_part(self, settings: BookSettings) -> None:
        self._add(self.tr("&Name of the book"), TextField("name"), settings.name)
        crop = TextField(
            "crop", self.tr("crop, or nothing for several"), [one.name for one in crops()]
        )
        self._add(self.tr("&Crop"), crop, settings.crop)
        crop.changed.connect(self._tell_crop)

    def _numbers_part(self, settings: BookSettings) -> Iterator[None]:
        self._part(
            self.tr("What the numbers rest on"),
            self.tr(
                "F and coancestry follow from these. What a plant's own record says always goes "
                "before."
            ),
        )
        sets = [("", self.tr("as the crop"))]
        sets += [(str(one), self.tr("{}x").format(one)) for one in _PLOIDIES]
        self._add(
            self.tr("&Ploidy"),
            ChoiceField("ploidy", sets),
            "" if settings.ploidy is None else str(settings.ploidy),
        )
        kinds = [
            ("", self.tr("a variety, until it is asked")),
            ("variety", self.tr("a variety")),
            ("plant", self.tr("one plant")),
        ]
        self._add(
            self.tr("A &founder that does not say counts as"),
            ChoiceField("founders_as", kinds),
            settings.founders_as,
        )
        yield
        self._add(
            self.tr("Fixation of a founder &variety, 0 to 1"),
            NumberField("variety_fixation", self.tr("1: breeds true")),
            f"{settings.variety_fixation:g}",
        )
        self._add(
            self.tr("Fixation of a founder that is one p&lant, 0 to 1"),
            NumberField("plant_fixation", self.tr("0: its two alleles count as unrelated")),
            f"{settings.plant_fixation:g}",
        )
        for name, label in (
            ("outcrossing", self.tr("&Outcrossing of open-pollinated seed, 0 to 1")),
            ("double_reduction", self.tr("&Double reduction of tetraploids, 0 to 1/6")),
        ):
            value = getattr(settings, name)
            self._add(label, NumberField(name), "" if value is None else f"{value:g}")
        self._tell_crop()
        yield

    def _tell_crop(self) -> None:
        """What a blank means with the crop that stands there."""
        facts = crop_named(self._fields["crop"].text())
        usual = {
            "outcrossing": None if facts is None else facts.outcrossing,
            "double_reduction": 0.0 if facts is None else facts.double_reduction,
        }
        for name, value in usual.items():
            field = self._fields.get(name)
            if isinstance(field, NumberField):
                field.editor.setPlaceholderText(
                    self.tr("not known")
                    if value is None
                    else self.tr("as the crop: {}").format(f"{value:g}")
                )

    def _dates_part(self) -> None:
        self._part(
            self.tr("Dates"),
            self.tr("How a typed 3/5 is read. This goes for you, in every book."),
        )
        self._orders = QButtonGroup(self)
        for word, text in (
            ("day-month", self.tr("3/5 is the 3rd of May: day, then month")),
            ("month-day", self.tr("3/5 is the 5th of March: month, then day")),
        ):
            button = QRadioButton(text)
            button.setObjectName(word)
            button.setChecked(self._preferences.date_order == word)
            self._orders.addButton(button)
            self._body.addWidget(button)

    def values(self) -> dict[str, Any]:
        """The settings as they stand in the fields.

        Raises
        ------
        Fault : a field cannot be read
        """
        found: dict[str, Any] = {
            name: self.fields[name].text() for name in ("name", "crop", "founders_as")
        }
        ploidy = self.fields["ploidy"].text()
        found["ploidy"] = int(ploidy) if ploidy else None
        for name, high, blank in (
            ("variety_fixation", 1.0, 1.0),
            ("plant_fixation", 1.0, 0.0),
            ("outcrossing", 1.0, None),
            ("double_reduction", 1 / 6, None),
        ):
            field = self.fields[name]
            assert isinstance(field, NumberField)
            value = field.number
            if value is not None and name == "double_reduction" and abs(value - high) < 5e-4:
                value = high
            found[name] = blank if value is None else number(value, name, 0, high)
        found["code_pattern"] = self.codes.setting()
        return found

    def save(self) -> None:
        """Record the settings that differ from those shown, as one edit."""
        self.message.hide()
        for field in self.fields.values():
            field.check()
        try:
            values = self.values()
        except Fault as fault:
            self._refused(fault)
            return
        chosen = self.orders.checkedButton()
        if chosen is not None:
            self._preferences.date_order = chosen.objectName()
        shown = self._shown
        wanted = {name: value for name, value in values.items() if value != getattr(shown, name)}
        if not wanted:
            self.accept()
            return

        what = self.tr("This setting was changed in another window meanwhile.")
        todo = self.tr("Close the settings and open them again to see it.")

        def change(edit: Edit) -> None:
            held = edit.book.settings
            for name, value in wanted.items():
                if getattr(held, name) not in (getattr(shown, name), value):
                    raise Fault(what, Place(column=name), todo)
            edit.set_settings(**wanted)

        self.save_button.setEnabled(False)
        self._desk.record(self.tr("Book settings"), change, lambda _: self.accept(), self._refused)

    def _refused(self, fault: Fault) -> None:
        self.save_button.setEnabled(True)
        say_refused(fault, self.fields.get(fault.where.column), self.area, self.message)
