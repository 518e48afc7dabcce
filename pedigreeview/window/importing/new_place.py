"""Where a new book goes that is made from what comes in, and how its founders are kept true."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QComboBox

from pedigreeview.book.book import BookSettings
from pedigreeview.window.book_place import BookPlace
from pedigreeview.window.preferences import ANSWERS

__all__ = ["NewPlace"]


class NewPlace(BookPlace):
    """Name, crop, founders and file of the new book."""

    def __init__(self, folder: Path) -> None:
        super().__init__(folder, self.tr("&Name of the new book"), self.tr("C&rop"))
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
        self.add_row(self.tr("&Founders that say nothing"), self.founders)

    def settings(self) -> BookSettings:
        """What numbers of the new book depend on."""
        answer = ANSWERS[str(self.founders.currentData())]
        return BookSettings(
            name=self.name.text().strip(),
            crop=self.crop.currentText().strip(),
            founders_as=answer.founders_as,
            variety_fixation=answer.variety_fixation,
        )
