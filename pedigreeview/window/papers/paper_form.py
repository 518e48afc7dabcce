"""The fields of the printing dialog: which paper, for what, on which stock, and how.

`PaperForm.wish` gives what is to be printed.  Each paper shows the fields that it has, and
remembers the stock and the way it was printed on last.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFormLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QSpinBox,
    QWidget,
)

from pedigreeview.book.book import Book
from pedigreeview.book.dates import is_date
from pedigreeview.book.recording.lookup import split_codes
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.reports.label_content import KINDS
from pedigreeview.reports.label_sheets import LabelSheet, label_sheets, sheet_named, usual_sheet
from pedigreeview.reports.paper_choices import Chosen, codes_for
from pedigreeview.reports.papers import Wish
from pedigreeview.window.forms.fields import DateField
from pedigreeview.window.labels import sentence, set_apart
from pedigreeview.window.papers.words import paper_tips, paper_words, stock_words
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.style import step

__all__ = ["PaperForm"]

_DUE, _NAMED = "due", "named"
_OWN = "own"
_UPRIGHT = ("scores", "fruit sheet")
_SHEETS = ("pollinations", "fruit sheet", "rows", "scores")


class PaperForm(QWidget):
    """What to print; `changed` after every change.  Its fields come with `fill`."""

    changed = Signal()

    def __init__(
        self,
        book: Book,
        preferences: Preferences,
        offers: Mapping[str, Chosen],
        paper: str = "",
        codes: tuple[str, ...] = (),
        also: Mapping[str, Chosen] | None = None,
    ) -> None:
        super().__init__()
        self._book, self._preferences = book, preferences
        first = {text: chosen for text, chosen in offers.items() if chosen}
        # What was chosen stands before everything that is due, what is merely at hand behind it.
        self._first = tuple(first)
        self._offers = {**(also or {}), **first}
        self._codes = codes
        self._word = paper or "flowers"
        self._quiet = False

    def fill(self) -> None:
        """Make the fields, once the form lies in its place."""
        s = step()
        form = self._form = QFormLayout(self)
        form.setSpacing(s)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setContentsMargins(0, 0, s, 0)
        self.paper = self._combo(self.tr("What to print"))
        words = paper_words()
        for word, text in words.items():
            self.paper.addItem(text, word)
        for before in ("pollinations", "crossing"):
            self.paper.insertSeparator(self.paper.findData(before))
        self.tip = sentence("", "soft")
        self.source = self._combo(self.tr("What it is for"))
        self.codes = QLineEdit(self)
        self.codes.setAccessibleName(self.tr("Codes"))
        self.codes.setPlaceholderText(self.tr("codes, parted by commas"))
        self._labels_fields()
        self._lists_fields()
        for label, field in (
            (self.tr("&What to print"), self.paper),
            ("", self.tip),
            (self.tr("&For"), self.source),
            (self.tr("C&odes"), self.codes),
            (self.tr("&Day"), self.day),
            (self.tr("&Season"), self.season),
            (self.tr("Empty &rows"), self.rows),
            (self.tr("&Traits"), self.traits),
            (self.tr("&Labels on"), self.stock),
            (self.tr("&Measures of the stock"), self.measures),
            (self.tr("Begin with label &number"), self.start),
            (self.tr("Co&pies"), self.copies),
            ("", self.every),
            ("", self.marks),
            ("", self.qr),
            (self.tr("Pap&er"), self.size_of_paper),
            (self.tr("Way of the p&aper"), self.way),
        ):
            if label:
                shown = QLabel(label)
                shown.setBuddy(field)
                form.addRow(shown, field)
            else:
                form.addRow("", field)
        self.paper.setCurrentIndex(max(0, self.paper.findData(self._word)))
        self._turn()
        self._connect()

    def _combo(self, name: str) -> QComboBox:
        combo = QComboBox(self)
        combo.setAccessibleName(name)
        combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        combo.setMinimumContentsLength(10)
        return combo

    def _labels_fields(self) -> None:
        self.stock = self._combo(self.tr("Label stock"))
        for sheet in label_sheets():
            self.stock.addItem(stock_words(sheet), sheet.name)
        self.stock.addItem(self.tr("other stock, by its measures"), _OWN)
        self.measures = QLineEdit(self)
        self.measures.setAccessibleName(self.tr("Measures of the stock"))
        self.measures.setPlaceholderText("A4 3x8 70x36")
        self.measures.setToolTip(
            self.tr(
                "Columns x rows, then width x height of one label in millimetres, as in 'A4 3x8 "
                "70x36'; with 'gap 2.5x0' and 'margin 4.7x15' where they matter; or 'roll 60x25'."
            )
        )
        self.start = QSpinBox(self)
        set_apart(self.start)
        self.start.setAccessibleName(self.tr("Begin with label number"))
        self.start.setToolTip(
            self.tr("Counted row by row from the upper left, for a sheet that is partly used.")
        )
        self.copies = QSpinBox(self)
        set_apart(self.copies)
        self.copies.setRange(1, 99)
        self.copies.setAccessibleName(self.tr("Copies"))
        self.every = QCheckBox(self.tr("One for each flower or fruit"), self)
        self.marks = QCheckBox(self.tr("Marks where to cut and fold"), self)
        self.qr = QCheckBox(self.tr("QR code of the record"), self)
        self.marks.setChecked(True)

    def _lists_fields(self) -> None:
        order: Order = "month-day" if self._preferences.date_order == "month-day" else "day-month"
        self.day = DateField("date", datetime.date.today, order, "future")
        self.day.set_label(self.tr("Day of the list"))
        self.day.set_text(self.tr("today"))
        self.season = self._combo(self.tr("Season"))
        self.season.addItem(self.tr("the crosses planned"), "")
        years = {row.date[:4] for row in self._book.pollinations.values() if row.date}
        years |= {cross.made_on[:4] for cross in self._book.crosses.values() if cross.made_on}
        for year in sorted(years, reverse=True):
            self.season.addItem(year, year)
        self.rows = QSpinBox(self)
        set_apart(self.rows)
        self.rows.setRange(1, 500)
        self.rows.setValue(24)
        self.rows.setAccessibleName(self.tr("Empty rows"))
        self.traits = QListWidget(self)
        self.traits.setAccessibleName(self.tr("Traits to score"))
        for name in self._book.traits:
            item = QListWidgetItem(name)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Checked)
            self.traits.addItem(item)
        line = self.traits.fontMetrics().height() + step()
        self.traits.setFixedHeight(min(6, max(2, self.traits.count())) * line + step())
        self.size_of_paper = self._combo(self.tr("Paper"))
        self.size_of_paper.addItems(["A4", "Letter"])
        self.way = self._combo(self.tr("Way of the paper"))
        self.way.addItem(self.tr("lengthwise"), True)
        self.way.addItem(self.tr("upright"), False)

    def _connect(self) -> None:
        self.paper.currentIndexChanged.connect(self._turn_and_tell)
        self.source.currentIndexChanged.connect(self._fit_and_tell)
        self.stock.currentIndexChanged.connect(self._stock_changed)
        self.measures.textEdited.connect(self._stock_changed)
        self.codes.textEdited.connect(self._tell)
        for spin in (self.start, self.copies, self.rows):
            spin.valueChanged.connect(self._tell)
        for box in (self.every, self.marks, self.qr):
            box.toggled.connect(self._tell)
        for combo in (self.season, self.size_of_paper, self.way):
            combo.currentIndexChanged.connect(self._tell)
        self.traits.itemChanged.connect(self._tell)
        self.day.changed.connect(self._tell)

    # What was chosen ----------------------------------------------------------------------------

    def word(self) -> str:
        """The paper that is chosen."""
        return str(self.paper.currentData() or "flowers")

    def sheet(self) -> LabelSheet:
        """The label stock.

        Raises
        ------
        Fault : measures that cannot be read
        """
        word = str(self.stock.currentData())
        return sheet_named(self.measures.text() if word == _OWN else word)

    def wish(self) -> Wish:
        """What is to be printed."""
        word = self.word()
        stock = str(self.stock.currentData())
        size = self.size_of_paper.currentText()
        traits: tuple[str, ...] = ()
        if word == "scores":
            traits = tuple(
                self.traits.item(row).text()
                for row in range(self.traits.count())
                if self.traits.item(row).checkState() == Qt.CheckState.Checked
            )
        return Wish(
            word,
            self._wanted(word),
            stock=self.measures.text().strip() or "?" if stock == _OWN else stock,
            start=self.start.value(),
            copies=self.copies.value(),
            marks=self.marks.isChecked(),
            qr=self.qr.isChecked(),
            every=self.every.isChecked(),
            size=size,
            landscape=bool(self.way.currentData()),
            traits=traits,
            rows=self.rows.value(),
            day=self._day(),
            season=str(self.season.currentData() or ""),
        )

    def _day(self) -> str:
        from pedigreeview.book.faults import Fault

        try:
            value = self.day.value
        except Fault:
            return ""
        return value if is_date(value) and len(value) == 10 else ""

    def _wanted(self, word: str) -> tuple[str, ...]:
        source = str(self.source.currentData() or _DUE)
        if source == _NAMED:
            return tuple(split_codes(self.codes.text().replace(",", ";")))
        if source == _DUE:
            return ()
        return codes_for(self._book, word, self._offers[source])

    # The fields of a paper ----------------------------------------------------------------------

    def _turn_and_tell(self) -> None:
        self._turn()
        self._tell()

    def _turn(self) -> None:
        """Another paper: its own fields, its sources, and how it was printed last."""
        word, labels = self.word(), self.word() in KINDS
        self._quiet = True
        self.tip.setText(paper_tips()[word])
        self._fill_sources(word)
        held = self._preferences.last_used(f"paper {word}")
        form = self._form
        for field in (self.stock, self.start, self.copies, self.marks, self.qr):
            form.setRowVisible(field, labels)
        form.setRowVisible(self.every, word in ("flowers", "fruits"))
        self.every.setText(
            self.tr("One tag for each flower")
            if word == "flowers"
            else self.tr("One tag for each fruit that hangs")
        )
        self.every.setChecked(held.get("every", "yes" if word == "fruits" else "") == "yes")
        for field in (self.size_of_paper, self.way):
            form.setRowVisible(field, not labels)
        form.setRowVisible(self.day, word == "crossing")
        form.setRowVisible(self.season, word == "plan")
        form.setRowVisible(self.rows, word == "pollinations")
        form.setRowVisible(self.traits, word == "scores" and self.traits.count() > 0)
        form.setRowVisible(self.source, word != "pollinations")
        if labels:
            usual = usual_sheet(word, held.get("size", "A4")).name
            at = self.stock.findData(held.get("stock", usual))
            self.stock.setCurrentIndex(at if at >= 0 else self.stock.findData(usual))
            self.measures.setText(held.get("measures", ""))
            self.marks.setChecked(held.get("marks", "yes") == "yes")
            self.qr.setChecked(held.get("qr", "") == "yes")
        else:
            self.size_of_paper.setCurrentText(held.get("size", "A4"))
            upright = "upright" if word in _UPRIGHT else "lengthwise"
            self.way.setCurrentIndex(0 if held.get("way", upright) == "lengthwise" else 1)
        self._fit()
        self._fit_stock()
        self._quiet = False

    def _fill_sources(self, word: str) -> None:
        """What this paper can be made for; what was chosen before stands first."""
        due = {
            "flowers": self.tr("every pollination, and every planned cross"),
            "fruits": self.tr("every pollination that may have set fruit"),
            "packets": self.tr("every packet with seed left"),
            "pots": self.tr("every plant that grows"),
            "stakes": self.tr("every sowing"),
            "crossing": self.tr("every cross that is planned, or worked on that day"),
            "plan": self.tr("every cross of the season"),
            "beds": self.tr("every bed"),
            "fruit sheet": self.tr("every pollination whose fruits are not counted"),
            "rows": self.tr("the sowings of the latest year"),
            "scores": self.tr("every plant that grows"),
        }.get(word, self.tr("everything"))
        self.source.clear()
        also = [text for text in self._offers if text not in self._first]
        for text in (*self._first, _DUE, *also):
            if text == _DUE:
                self.source.addItem(due, _DUE)
                continue
            found = codes_for(self._book, word, self._offers[text])
            if found:
                self.source.addItem(self.tr("{}: {}").format(text, len(found)), text)
        self.source.addItem(self.tr("what I name by its codes"), _NAMED)
        if self._codes:
            self.codes.setText(", ".join(self._codes))
            self.source.setCurrentIndex(self.source.findData(_NAMED))
            self._codes = ()
        else:
            self.source.setCurrentIndex(0)

    def _fit_and_tell(self) -> None:
        self._fit()
        self._tell()

    def _fit(self) -> None:
        named = self.source.currentData() == _NAMED and self.word() != "pollinations"
        self._form.setRowVisible(self.codes, named)

    def _stock_changed(self) -> None:
        self._fit_stock()
        self._tell()

    def _fit_stock(self) -> None:
        """Measures where they are asked for; the first free label of the stock is proposed."""
        from pedigreeview.book.faults import Fault

        labels = self.word() in KINDS
        own = self.stock.currentData() == _OWN
        self._form.setRowVisible(self.measures, labels and own)
        try:
            sheet = self.sheet()
        except Fault:
            return
        self.start.setRange(1, sheet.count)
        self._form.setRowVisible(self.start, labels and not sheet.roll)
        free = self._preferences.last_used("label stock").get(sheet.name, "1")
        self.start.setValue(int(free) if free.isdigit() else 1)

    def _tell(self) -> None:
        if not self._quiet:
            self.changed.emit()

    def remember(self, next_free: int) -> None:
        """Keep how this paper was printed, and which label of its stock is the next."""
        word, yes = self.word(), {True: "yes", False: "no"}
        if word in KINDS:
            held = {
                "stock": str(self.stock.currentData()),
                "measures": self.measures.text(),
                "marks": yes[self.marks.isChecked()],
                "qr": yes[self.qr.isChecked()],
                "every": yes[self.every.isChecked()],
            }
            free = self._preferences.last_used("label stock")
            self._preferences.set_last_used(
                "label stock", {**free, self.sheet().name: str(next_free)}
            )
        else:
            held = {
                "size": self.size_of_paper.currentText(),
                "way": "lengthwise" if self.way.currentData() else "upright",
            }
        self._preferences.set_last_used(f"paper {word}", held)
