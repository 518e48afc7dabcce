"""Where a new book goes that is made from what comes in, and how its founders are kept true."""

from __future__ import annotations

import re
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QWidget,
)

from pedigreeview.book.book import BookSettings
from pedigreeview.book.crops import crops
from pedigreeview.window.keeping import BOOK_ENDING, free_place
from pedigreeview.window.labels import action_button
from pedigreeview.window.preferences import ANSWERS
from pedigreeview.window.style import step

__all__ = ["NewPlace"]


class NewPlace(QWidget):
    """Name, crop, founders and file of the new book."""

    def __init__(self, folder: Path) -> None:
        super().__init__()
        self._folder, self._own = folder, False
        s = step()
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setSpacing(s)
        self.name = QLineEdit()
        self.name.textChanged.connect(self._propose)
        form.addRow(self.tr("&Name of the new book"), self.name)
        self.crop = QComboBox()
        self.crop.setEditable(True)
        self.crop.addItem("")
        self.crop.addItems([crop.name for crop in crops()])
        line = self.crop.lineEdit()
        assert line is not None
        line.setPlaceholderText(self.tr("crop, or nothing for several"))
        form.addRow(self.tr("C&rop"), self.crop)
        self.founders = QComboBox()
        for word, text in (
            ("seed_true", self.tr("seed-true lines, each founder breeds true (fixation 1)")),
            ("open_pollinated", self.tr("open-pollinated varieties of unlike plants (fixation 0)")),
            ("clone", self.tr("single plants kept by cuttings, tubers or division (fixation 0)")),
        ):
            self.founders.addItem(text, word)
        policy = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        self.founders.setSizeAdjustPolicy(policy)
        self.founders.setMinimumContentsLength(24)
        form.addRow(self.tr("&Founders that say nothing"), self.founders)
        place = QHBoxLayout()
        place.setSpacing(s)
        self.file = QLineEdit()
        self.file.textEdited.connect(self._typed)
        place.addWidget(self.file, 1)
        place.addWidget(action_button(self.tr("Browse …"), self._browse))
        label = QLabel(self.tr("&Kept in"))
        label.setBuddy(self.file)
        form.addRow(label, place)

    def propose(self, stem: str) -> None:
        """Propose a name, unless one was typed."""
        if not self.name.text():
            self.name.setText(stem)

    def _typed(self) -> None:
        self._own = True

    def _propose(self) -> None:
        if not self._own:
            stem = re.sub(r'[\\/:*?"<>|\x00-\x1f]+', " ", self.name.text()).strip(" .")
            self.file.setText(str(free_place(self._folder, stem or self.tr("My crosses"))))

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("Where to keep the book"), self.file.text())
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(BOOK_ENDING[1:])
        dialog.selectFile(self.file.text())
        dialog.fileSelected.connect(self._chose)
        dialog.open()

    def _chose(self, text: str) -> None:
        self._own = True
        self.file.setText(text)

    def path(self) -> Path:
        """The file."""
        path = Path(self.file.text().strip()).expanduser()
        if path.suffix.lower() != BOOK_ENDING:
            path = path.with_name(path.name + BOOK_ENDING)
        return path

    def settings(self) -> BookSettings:
        """What numbers of the new book depend on."""
        answer = ANSWERS[str(self.founders.currentData())]
        return BookSettings(
            name=self.name.text().strip(),
            crop=self.crop.currentText().strip(),
            founders_as=answer.founders_as,
            variety_fixation=answer.variety_fixation,
        )
