"""The parentage of a plant as one line of text, to copy onto a label or into a letter."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, get_args

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QDialog,
    QHBoxLayout,
    QPlainTextEdit,
    QRadioButton,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.exchange.plant_notation import Style, notation_of
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["NotationDialog"]


class _ParentsOf(dict[str, Any]):
    """The parents of the plants that are asked for, out of the network that knows them already."""

    def __init__(self, net: PedigreeNetwork) -> None:
        super().__init__()
        self._net = net

    def __missing__(self, code: str) -> Any:
        found = self[code] = self._net.parents(code)
        return found


class NotationDialog(QDialog):
    """The text in the way of writing that is chosen, with what it leaves out."""

    def __init__(self, net: PedigreeNetwork, code: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Parentage as text"))
        self._net, self._code, self._parents = net, code, _ParentsOf(net)
        s = step()
        layout = column(s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("The parentage of {}").format(named(net.book, code)), 2))
        self._group = QButtonGroup(self)
        self.styles: dict[str, QRadioButton] = {}
        words = {
            "slash": self.tr("&Slashes, as cereal breeders write: the seed parent left"),
            "cross": self.tr("&Multiplication signs, the seed parent first"),
            "alphabetical": self.tr("Multiplication signs, in &alphabetical order"),
        }
        for style in get_args(Style):
            button = QRadioButton(words.get(style, style))
            button.toggled.connect(self._write)
            self._group.addButton(button)
            self.styles[style] = button
            layout.addWidget(button)
        self.names = QCheckBox(self.tr("&Names in place of codes, where a plant has one"))
        self.names.toggled.connect(self._write)
        layout.addWidget(self.names)
        self.text = QPlainTextEdit()
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(self.tr("The parentage as text"))
        self.text.setMinimumHeight(8 * s)
        layout.addWidget(self.text, 1)
        self.said = sentence("", "soft")
        layout.addWidget(self.said)
        row = QHBoxLayout()
        row.setSpacing(s)
        row.addWidget(action_button(self.tr("Close"), self.reject))
        self.copied = sentence("", "soft")
        row.addWidget(self.copied, 1)
        self.copy_button = action_button(self.tr("&Copy"), self.copy, main=True)
        self.copy_button.setDefault(True)
        row.addWidget(self.copy_button)
        layout.addLayout(row)
        self.styles["slash"].setChecked(True)
        self.resize(80 * s, 52 * s)
        self.styles["slash"].setFocus()

    def style_chosen(self) -> Style:
        """The way of writing."""
        held: tuple[Style, ...] = get_args(Style)
        return next((style for style in held if self.styles[style].isChecked()), held[0])

    def _write(self) -> None:
        self.copied.setText("")
        try:
            found = notation_of(
                self._net.book,
                self._code,
                self.style_chosen(),
                names=self.names.isChecked(),
                parents=self._parents,
            )
        except Fault as fault:
            self.text.setPlainText("")
            self.said.setText(fault.sentence())
            self.copy_button.setEnabled(False)
            return
        self.text.setPlainText(found.text)
        self.said.setText(" ".join(found.said))
        self.said.setVisible(bool(found.said))
        self.copy_button.setEnabled(True)

    def copy(self) -> None:
        """Put the text on the clipboard."""
        QGuiApplication.clipboard().setText(self.text.toPlainText())
        self.copied.setText(self.tr("It is on the clipboard."))
