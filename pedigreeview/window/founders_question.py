"""Asked once for a table whose founders say nothing: how are they kept true?

A table of codes cannot tell a seed-true line from a bought hybrid, and the numbers differ.  The
three answers stand side by side with a live example that the network itself works out.
"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QButtonGroup, QDialog, QFrame, QRadioButton, QWidget

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, Plant
from pedigreeview.window.labels import (
    action_button,
    column,
    dialog_foot,
    heading,
    scrolled,
    sentence,
)
from pedigreeview.window.preferences import ANSWERS, FoundersAnswer
from pedigreeview.window.style import step

__all__ = ["Example", "FoundersQuestion", "examples"]

Example = tuple[str, str]
"""F of the backcross (A × B) × A, and F of a seedling of A selfed, as text."""


def examples() -> dict[str, Example]:
    """For each answer the F of two plain examples, worked out by the network."""
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.network.text import fraction_text

    found = {}
    for word, answer in ANSWERS.items():
        book = Book(
            BookSettings(founders_as=answer.founders_as, variety_fixation=answer.variety_fixation)
        )
        for plant in (
            Plant("A"),
            Plant("B"),
            Plant("F1", raised="cross", cross="A × B"),
            Plant("BC1", raised="cross", cross="F1 × A"),
            Plant("S1", raised="cross", cross="A ⊗"),
        ):
            book.add(plant)
        for cross in (
            Cross("A × B", "A", "B", intended="cross"),
            Cross("F1 × A", "F1", "A", intended="cross"),
            Cross("A ⊗", "A", "A", intended="selfing"),
        ):
            book.add(cross)
        net = PedigreeNetwork.from_records(book)
        found[word] = (
            fraction_text(net.inbreeding_exact("BC1"), net.inbreeding("BC1")),
            fraction_text(net.inbreeding_exact("S1"), net.inbreeding("S1")),
        )
    return found


class FoundersQuestion(QDialog):
    """The question; `answered` brings the choice, closing it otherwise opens nothing."""

    answered = Signal(object)

    def __init__(
        self,
        file: str,
        founders: list[str],
        worked: dict[str, Example],
        chosen: str = "seed_true",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("How are the founders kept true?"))
        s = step()
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("How are the founders kept true?"), 2))
        shown = ", ".join(founders[:6])
        if len(founders) > 6:
            shown = self.tr("{} and {} more").format(shown, len(founders) - 6)
        outer.addWidget(
            sentence(
                self.tr(
                    "{} does not say how these are kept: {}. The numbers of relationship depend "
                    "on it, through the fixation of each founder: 1 = breeds true, 0 = not fixed "
                    "at all. The answer is remembered for this file and can be changed from the "
                    "line at the foot of the window."
                ).format(file, shown)
            )
        )
        inner = QWidget()
        body = column(s)
        inner.setLayout(body)
        self._group = QButtonGroup(self)
        self.choices: dict[str, QRadioButton] = {}
        for word, title, text in self._texts():
            body.addWidget(self._choice(word, title, text, worked.get(word)))
        body.addStretch(1)
        self.choices[chosen].setChecked(True)
        outer.addWidget(scrolled(inner), 1)
        self.use = action_button(self.tr("Use this"), self._use, main=True)
        outer.addLayout(dialog_foot(self, self.use))
        width = 34 * QFontMetrics(self.font()).averageCharWidth() * 2
        self.resize(max(70 * s, width), 68 * s)

    def _texts(self) -> list[tuple[str, str, str]]:
        return [
            (
                "seed_true",
                self.tr("Seed-true lines"),
                self.tr(
                    "Selfed on until they breed true, as most peas, beans, tomatoes and lettuces "
                    "from a packet. Each founder counts as breeding true (fixation 1), and all its "
                    "plants as alike."
                ),
            ),
            (
                "open_pollinated",
                self.tr("Open-pollinated varieties"),
                self.tr(
                    "Kept by seed with bees or wind at work, as squash, maize or cabbage. Each "
                    "founder counts as a variety of unlike plants (fixation 0), and two crosses "
                    "with it use two different plants."
                ),
            ),
            (
                "clone",
                self.tr("Cuttings, tubers, division, or a bought hybrid"),
                self.tr(
                    "One genotype multiplied, as potato, dahlia, rose, or an F1 from the shop. "
                    "Each founder counts as one single plant that is not fixed (fixation 0)."
                ),
            ),
        ]

    def _choice(self, word: str, title: str, text: str, worked: Example | None) -> QWidget:
        s = step()
        frame = QFrame()
        frame.setProperty("role", "sheet")
        layout = column(max(2, s // 2), s)
        frame.setLayout(layout)
        button = QRadioButton(title)
        button.setProperty("role", "choice")
        button.setAccessibleDescription(text)
        self._group.addButton(button)
        self.choices[word] = button
        layout.addWidget(button)
        layout.addWidget(sentence(text))
        if worked is not None:
            layout.addWidget(
                sentence(
                    self.tr(
                        "So the backcross (A × B) × A has F = {}, and a seedling of A selfed "
                        "has F = {}."
                    ).format(*worked),
                    "soft",
                )
            )
        for label in frame.findChildren(QWidget):
            if label is not button:
                label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        frame.mousePressEvent = lambda event: button.setChecked(True)  # type: ignore[method-assign]
        return frame

    def answer(self) -> FoundersAnswer:
        """The choice that is marked."""
        word = next(word for word, button in self.choices.items() if button.isChecked())
        return ANSWERS[word]

    def _use(self) -> None:
        self.answered.emit(self.answer())
        self.accept()
