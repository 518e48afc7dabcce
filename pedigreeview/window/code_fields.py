"""The patterns of codes as fields: each with an example and the pattern in words below it."""

from __future__ import annotations

import datetime

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from pedigreeview.book.book import BookSettings
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.code_patterns import (
    CODE_KINDS,
    DEFAULTS,
    CodePattern,
    code_patterns,
    preview,
    read_pattern,
    setting_text,
)
from pedigreeview.window.forms.fields import TextField
from pedigreeview.window.labels import action_button, column, sentence
from pedigreeview.window.saying import say_list
from pedigreeview.window.style import step

__all__ = ["CodeFields", "kind_words"]

_FIRST = ("cross", "plant", "selection", "selfing", "open")
"""The kinds that are shown without asking for more."""


def kind_words() -> dict[str, str]:
    """What each kind of code stands on."""

    def tr(text: str) -> str:
        return QCoreApplication.translate("CodeFields", text)

    return {
        "cross": tr("Cross"),
        "selfing": tr("Selfing"),
        "open": tr("Open-pollinated seed"),
        "plant": tr("Plant of a cross"),
        "selection": tr("Selection from a plant"),
        "row": tr("Row kept together"),
        "clone": tr("Cutting or division"),
        "doubled_haploid": tr("Doubled haploid"),
        "doubled": tr("Doubled plant"),
        "pollination": tr("Pollination"),
        "harvest": tr("Harvest"),
        "packet": tr("Seed packet"),
        "sowing": tr("Sowing"),
        "pollen_lot": tr("Pollen kept"),
    }


class CodeFields(QWidget):
    """A field for each kind of code."""

    changed = Signal()

    def __init__(self, settings: BookSettings) -> None:
        super().__init__()
        s = step()
        layout = column(s)
        self.setLayout(layout)
        text = self.tr(
            "Parts in braces are filled in: {{yy}} the year, {{cross}} a cross, {{plant}} a "
            "running number; {{plant:2}} gives it two digits."
        ).format()
        layout.addWidget(sentence(text, "soft"))
        self.fields: dict[str, TextField] = {}
        held = code_patterns(settings)
        self._more = QWidget()
        kinds = [*_FIRST, *(kind for kind in CODE_KINDS if kind not in _FIRST)]
        grids = {True: QGridLayout(), False: QGridLayout()}
        for kind in kinds:
            grid = grids[kind in _FIRST]
            field = TextField(f"code_{kind}", DEFAULTS[kind])
            label = QLabel(kind_words()[kind])
            label.setBuddy(field)
            field.set_label(kind_words()[kind])
            field.set_text(held[kind].text)
            field.changed.connect(self._typed)
            self.fields[kind] = field
            row = grid.rowCount()
            label.setContentsMargins(0, round(0.7 * s), 0, 0)
            grid.addWidget(label, row, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(field, row, 1)
        for grid in grids.values():
            grid.setSpacing(s)
            grid.setContentsMargins(0, 0, 0, 0)
            grid.setColumnMinimumWidth(0, 20 * s)
            grid.setColumnStretch(1, 1)
        layout.addLayout(grids[True])
        self.more_button = action_button(self.tr("Codes of &other records"), self._unfold)
        layout.addWidget(self.more_button, 0, Qt.AlignmentFlag.AlignLeft)
        self._more.setLayout(grids[False])
        self._more.hide()
        layout.addWidget(self._more)
        self._typed()

    def _unfold(self) -> None:
        self.more_button.hide()
        self._more.show()
        first = next(kind for kind in self.fields if kind not in _FIRST)
        self.fields[first].setFocus()

    def _typed(self) -> None:
        """Show under each field what it gives, or what is wrong with it."""
        found: dict[str, CodePattern] = {}
        for kind, field in self.fields.items():
            try:
                found[kind] = read_pattern(kind, field.text() or DEFAULTS[kind])
            except Fault as fault:
                field.say(f"{fault.what} {fault.todo}", wrong=True)
        usual = {kind: read_pattern(kind, text) for kind, text in DEFAULTS.items()}
        shown = preview({**usual, **found}, datetime.date.today())
        for kind, pattern in found.items():
            text = self.tr("gives {}: {}").format(shown[kind], say_list(pattern.words()))
            self.fields[kind].say(text)
        self.changed.emit()

    def setting(self) -> str:
        """The patterns as the book keeps them.

        Raises
        ------
        Fault : a pattern that cannot be read; its field says so already
        """
        wanted = {kind: field.text() or DEFAULTS[kind] for kind, field in self.fields.items()}
        return setting_text(wanted)
