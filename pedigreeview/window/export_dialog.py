"""Save as …: the book in any format, a matrix of its coefficients, or the table on show.

What a format cannot carry is listed before anything is written.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.exchange.formats import FORMATS
from pedigreeview.window.labels import (
    action_button,
    column,
    dialog_foot,
    heading,
    say_in,
    scrolled,
    sentence,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import count
from pedigreeview.window.writing_dialog import WritingDialog

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.book_page import Shown
    from pedigreeview.window.errands import Errands

__all__ = ["MATRIX", "TABLE", "ExportDialog"]

MATRIX, TABLE = "matrix", "shown"
"""The two kinds beside the formats of a whole book."""

_LOST, _SAVE = "ask:lost", "save:as"


class ExportDialog(WritingDialog):
    """The kinds at the left; what the chosen one carries, its choices and its file at the right."""

    def __init__(
        self,
        net: PedigreeNetwork,
        errands: Errands,
        opened: Path,
        parent: QWidget | None = None,
        *,
        shown: Shown | None = None,
        picked: Sequence[str] = (),
    ) -> None:
        """Offer the kinds.

        Parameters
        ----------
        opened : the file that lies open, which is never written over
        shown : the table of the page on show
        picked : plants that are picked together, for a matrix of them
        """
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Save as"))
        self._net, self._errands, self._opened = net, errands, opened
        self._table, self._picked = shown, tuple(one for one in picked if one in net.book.plants)
        self._over = ""
        self._own_place = False
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Save as"), 2))
        across = QHBoxLayout()
        across.setSpacing(3 * s)
        across.addWidget(self._kinds())
        across.addLayout(self._right(), 1)
        layout.addLayout(across, 1)
        self.save_button = action_button(self.tr("&Save"), self.save, main=True)
        layout.addLayout(dialog_foot(self, self.save_button))
        self.kinds.currentRowChanged.connect(lambda _: self._kind_changed())
        self.finished.connect(self._leave)
        self.kinds.setCurrentRow(0)
        self.resize(112 * s, 66 * s)
        self.kinds.setFocus()

    def _kinds(self) -> QListWidget:
        self.kinds = QListWidget()
        self.kinds.setAccessibleName(self.tr("What is written"))
        self.kinds.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for name, (title, _) in self._words().items():
            if name == TABLE and self._table is None:
                continue
            item = QListWidgetItem(title, self.kinds)
            item.setData(Qt.ItemDataRole.UserRole, name)
        wide = self.kinds.sizeHintForColumn(0) + 6 * step()
        self.kinds.setFixedWidth(min(wide, 36 * step()))
        return self.kinds

    def _words(self) -> dict[str, tuple[str, str]]:
        """Title and a sentence for each kind, in the order of the list."""
        words = {
            "book": (self.tr("Book"), self.tr("A copy of the book in one file.")),
            "folder": (
                self.tr("Folder of tables"),
                self.tr("A Data Package: every table as CSV, with photos, readable without us."),
            ),
            "table": (
                self.tr("Plant table, CSV"),
                self.tr("One row for each plant with its parents."),
            ),
            "xlsx": (
                self.tr("Plant table, spreadsheet"),
                self.tr("One row for each plant with its parents, as XLSX."),
            ),
            "brapi": (
                self.tr("Breeding API, JSON"),
                self.tr("Germplasm, crosses and pedigree after the open standard, version 2.1."),
            ),
            "passport": (
                self.tr("Passport data"),
                self.tr("Founders after the Multi-Crop Passport Descriptors, version 2.1."),
            ),
            "graphml": (
                "GraphML",
                self.tr("Plants and crosses as a network, for programs that draw networks."),
            ),
            "gexf": (
                "GEXF",
                self.tr("Plants and crosses as a network, for programs that draw networks."),
            ),
            "node-link": (
                self.tr("Node-link JSON"),
                self.tr("Plants and crosses as a network, for scripts."),
            ),
            "dot": ("DOT", self.tr("Plants and crosses as a network, for drawing alone.")),
        }
        formats = {
            name: words.get(name, (held.words, held.words))
            for name, held in FORMATS.items()
            if held.writes
        }
        title = self._table[0] if self._table is not None else ""
        rows = len(self._table[2]) if self._table is not None else 0
        return {
            **formats,
            MATRIX: (
                self.tr("Matrix of coefficients"),
                self.tr("How related each plant is to each other one, with codes on both sides."),
            ),
            TABLE: (
                self.tr("The table on show: {}").format(title),
                self.tr("{} as they are shown now, in their order.").format(
                    count(rows, self.tr("row"), self.tr("rows"))
                ),
            ),
        }

    def _right(self) -> QFormLayout:
        s = step()
        form = QFormLayout()
        form.setSpacing(s)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self.about = sentence("")
        form.addRow(self.about)
        self.coefficient = QComboBox()
        for name, text in (
            ("coancestry", self.tr("coancestry")),
            ("numerator", self.tr("numerator relationship, twice the coancestry")),
            ("relationship", self.tr("relationship, coancestry over the root of both")),
        ):
            self.coefficient.addItem(text, name)
        form.addRow(self.tr("&Coefficient"), self.coefficient)
        self.which = QComboBox()
        plants = (self.tr("plant"), self.tr("plants"))
        every = self.tr("the whole book, {}").format(count(len(self._net.codes), *plants))
        self.which.addItem(every, "all")
        if self._picked:
            those = self.tr("those that are picked, {}").format(count(len(self._picked), *plants))
            self.which.addItem(those, "picked")
        self.which.addItem(self.tr("those that I name"), "named")
        self.which.setCurrentIndex(1 if self._picked else 0)
        form.addRow(self.tr("&Plants"), self.which)
        self.named = QLineEdit()
        self.named.setPlaceholderText(self.tr("codes, parted by commas"))
        form.addRow(self.tr("C&odes"), self.named)
        self.ending = QComboBox()
        form.addRow(self.tr("&Ending"), self.ending)
        self.file = QLineEdit()
        self.file.setMinimumWidth(18 * s)
        self.file.textEdited.connect(self._typed)
        browse = action_button(self.tr("&Browse …"), self._browse)
        place = QHBoxLayout()
        place.setSpacing(s)
        place.addWidget(self.file, 1)
        place.addWidget(browse)
        label = QLabel(self.tr("&File"))
        label.setBuddy(self.file)
        form.addRow(label, place)
        for box in (self.coefficient, self.which, self.ending):
            policy = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            box.setSizeAdjustPolicy(policy)
            box.setMinimumContentsLength(14)
        self.which.currentIndexChanged.connect(lambda _: self._fit_rows())
        self.ending.activated.connect(lambda _: self._propose())
        self.message = sentence("", "fault")
        form.addRow(self.message)
        self.lost = sentence("")
        self.lost.setAlignment(Qt.AlignmentFlag.AlignTop)
        inner = QWidget()
        held = column()
        held.addWidget(self.lost)
        held.addStretch(1)
        inner.setLayout(held)
        area = scrolled(inner)
        area.setMinimumHeight(14 * s)
        area.setAccessibleName(self.tr("What cannot be carried"))
        form.addRow(area)
        self._form = form
        return form

    # What is chosen -----------------------------------------------------------------------------

    def kind(self) -> str:
        """The kind that is chosen: the name of a format, `MATRIX` or `TABLE`."""
        item = self.kinds.currentItem()
        return str(item.data(Qt.ItemDataRole.UserRole)) if item is not None else "book"

    def choose(self, kind: str) -> None:
        """Choose a kind."""
        for row in range(self.kinds.count()):
            if self.kinds.item(row).data(Qt.ItemDataRole.UserRole) == kind:
                self.kinds.setCurrentRow(row)

    def _endings(self) -> tuple[str, ...]:
        kind = self.kind()
        if kind == MATRIX:
            return (".csv", ".tsv", ".xlsx", ".npz")
        if kind == TABLE:
            return (".csv", ".tsv", ".xlsx")
        return FORMATS[kind].endings

    def _kind_changed(self) -> None:
        kind = self.kind()
        self.about.setText(self._words()[kind][1])
        self.ending.clear()
        self.ending.addItems(list(self._endings()))
        self._over = ""
        self._say("")
        self._fit_rows()
        self._propose()
        self._errands.drop(_LOST)
        if kind == TABLE:
            self._tell_lost([])
            return
        if kind == MATRIX:
            self.lost.setText(self._net.base_sentence())
            return
        self.lost.setText(self.tr("Looking what it cannot carry …"))
        book, held = self._net.book, FORMATS[kind]

        def work() -> list[str]:
            from pedigreeview.exchange.formats import lost

            return lost(book, held)

        self._errands.ask(_LOST, work, self._tell_lost)

    def _fit_rows(self) -> None:
        matrix = self.kind() == MATRIX
        self._form.setRowVisible(self.coefficient, matrix)
        self._form.setRowVisible(self.which, matrix)
        self._form.setRowVisible(self.named, matrix and self.which.currentData() == "named")
        self._form.setRowVisible(self.ending, len(self._endings()) > 1)

    def _tell_lost(self, lost: list[str]) -> None:
        if not lost:
            self.lost.setText(self.tr("It carries all of this."))
            return
        lines = [self.tr("It cannot carry:"), *(f"–  {one}" for one in lost)]
        self.lost.setText("\n".join(lines))

    def _propose(self) -> None:
        ending = self.ending.currentText()
        if self._own_place:
            path = Path(self.file.text().strip())
            name = path.name
            known = sorted(
                {one for held in FORMATS.values() for one in held.endings} | {".npz"}, key=len
            )
            for one in reversed(known):
                if name.lower().endswith(one):
                    name = name[: -len(one)]
                    break
            self.file.setText(str(path.with_name(name + ending)))
            return
        stem = self._opened.stem
        words = {MATRIX: self.tr("{} matrix"), TABLE: "{} " + self._title()}
        wanted = words.get(self.kind(), self.tr("{} copy")).format(stem)
        wanted = re.sub(r'[\\/:*?"<>|\x00-\x1f]+', " ", wanted).strip(" .")
        folder = self._opened.parent
        path, number = folder / f"{wanted}{ending}", 2
        while path.exists():
            path, number = folder / f"{wanted} {number}{ending}", number + 1
        self.file.setText(str(path))

    def _title(self) -> str:
        title = self._table[0].lower() if self._table is not None else ""
        return title.replace("{", "(").replace("}", ")")

    def _typed(self) -> None:
        self._own_place, self._over = True, ""
        self._say("")

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("Where to write"), self.file.text())
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        ending = self.ending.currentText()
        if ending:
            dialog.setNameFilters([f"*{ending}", self.tr("All files (*)")])
        dialog.selectFile(self.file.text())
        dialog.fileSelected.connect(self._chose)
        dialog.open()

    def _chose(self, text: str) -> None:
        # The file dialog has asked already whether a file of that name may go.
        self._over, self._own_place = text, True
        self.file.setText(text)

    def codes(self) -> list[str]:
        """The plants of a matrix.

        Raises
        ------
        Fault : a code that was named is no plant of the book
        """
        which = self.which.currentData()
        if which == "picked":
            return list(self._picked)
        if which == "all":
            return list(self._net.codes)
        wanted = [text.strip() for text in re.split(r"[,;\n]", self.named.text()) if text.strip()]
        wrong = [code for code in wanted if code not in self._net.book.plants]
        if wrong:
            raise Fault(
                self.tr("{} is no plant of this book.").format(wrong[0]),
                None,
                self.tr("Name plants by their codes, parted by commas."),
            )
        if not wanted:
            raise Fault(self.tr("No plant is named."), None, self.tr("Name at least one."))
        return list(dict.fromkeys(wanted))

    # Writing ------------------------------------------------------------------------------------

    def save(self) -> None:
        """Write off the window's thread; a file that stands there is replaced only when said."""
        text = self.file.text().strip()
        path = Path(text).expanduser()
        ending = self.ending.currentText()
        if not text or not path.name:
            self._say(self.tr("Say where to write it."))
            return
        if ending and not path.name.lower().endswith(ending):
            path = path.with_name(path.name + ending)
        if path.absolute() == self._opened.absolute():
            self._say(self.tr("That is the book that lies open. Choose another name."))
            return
        there = path.is_file() or (path.is_dir() and any(path.iterdir()))
        if there and self._over != text:
            self._over = text
            self._say(self.tr("{} is there already. Press again to replace it.").format(path.name))
            self.save_button.setText(self.tr("&Replace it"))
            return
        try:
            work = self._work(path)
        except Fault as fault:
            self._say(fault.sentence())
            return
        self._say(self.tr("Writing …"), "soft")
        self.save_button.setEnabled(False)
        self._errands.ask(_SAVE, work, self._done, self._failed)

    def _work(self, path: Path) -> Callable[[], Path]:
        net, kind, table = self._net, self.kind(), self._table
        if kind == MATRIX:
            codes, coefficient = self.codes(), str(self.coefficient.currentData())

            def matrix() -> Path:
                from pedigreeview.exchange.matrices import write_matrix

                write_matrix(net, path, codes, coefficient)
                return path

            return matrix
        if kind == TABLE and table is not None:
            title, headings, rows = table

            def shown() -> Path:
                from pedigreeview.exchange.spreadsheet_writing import write_table

                write_table(path, headings, rows, title=title)
                return path

            return shown
        held, over = FORMATS[kind], path.exists()

        def book() -> Path:
            from pedigreeview.exchange.formats import write_as

            write_as(net, path, held, replace=over)
            return path

        return book

    def _failed(self, fault: Fault) -> None:
        self.save_button.setEnabled(True)
        self._say(fault.sentence())

    def _say(self, text: str, role: str = "fault") -> None:
        self.save_button.setText(self.tr("&Save"))
        say_in(self.message, text, role)
        self.message.setVisible(bool(text))

    def _leave(self) -> None:
        self._errands.drop(_LOST)
        self._errands.drop(_SAVE)
