"""Save the picture: kind of file, what is on it, paper, with a preview; drawn off the thread."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtWidgets import QLineEdit, QSpinBox, QWidget

from pedigreeview.drawing.view import Look
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, set_apart
from pedigreeview.window.picture_dialog import PictureDialog
from pedigreeview.window.picture_fields import ask_file, choice

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["SavePicture"]

_PICTURES = ("svg", "pdf", "png")
_NETWORKS = {"dot": "dot", "graphml": "graphml", "gexf": "gexf", "json": "node-link"}
"""Endings of the files that hold the network, with the names of their formats."""
_KINDS = (*_PICTURES, *_NETWORKS)


class SavePicture(PictureDialog):
    """The dialog; `saved` brings the file that was written."""

    def __init__(
        self,
        net: PedigreeNetwork,
        look: Look,
        errands: Errands,
        folder: Path,
        title: str,
        orientation: Literal["down", "right"] = "down",
        parent: QWidget | None = None,
        *,
        lit_paths: Iterable[Sequence[str]] = (),
    ) -> None:
        super().__init__(net, look, errands, title, orientation, parent, lit_paths)
        self._folder = folder
        self.kind = choice(
            self.tr("Kind of file"),
            [
                self.tr("SVG, for a web page or a drawing program"),
                self.tr("PDF, for paper"),
                self.tr("PNG, for messages"),
                self.tr("DOT, the network as a graph"),
                self.tr("GraphML, the network as a graph"),
                self.tr("GEXF, the network as a graph"),
                self.tr("JSON, the network as nodes and links"),
            ],
        )
        self.running = choice(
            self.tr("Generations run"),
            [self.tr("from top to bottom"), self.tr("from left to right")],
        )
        self.running.setCurrentIndex(int(orientation == "right"))
        self.dpi = QSpinBox()
        set_apart(self.dpi)
        self.dpi.setRange(50, 1200)
        self.dpi.setValue(200)
        self.dpi.setAccessibleName(self.tr("Dots an inch"))
        self.file = QLineEdit()
        self.file.setAccessibleName(self.tr("File to write"))
        self.browse = action_button(self.tr("Browse …"), self._browse)
        for combo in (self.kind, self.running):
            combo.currentIndexChanged.connect(self._changed)
        self._lay(self.tr("Save the picture"), self.tr("Save"), self.save)

    def _rows(self) -> Sequence[tuple[str, QWidget]]:
        return (
            (self.tr("File"), self.file),
            ("", self.browse),
            (self.tr("Kind"), self.kind),
            (self.tr("What"), self.what),
            (self.tr("Generations"), self.running),
            *self._words_and_paper(),
            (self.tr("Dots an inch"), self.dpi),
            ("", self.grey),
        )

    # What was chosen ----------------------------------------------------------------------------

    def suffix(self) -> str:
        """The ending of the chosen kind."""
        return _KINDS[self.kind.currentIndex()]

    def picture_kind(self) -> str:
        kind = self.suffix()
        return kind if kind in _PICTURES else ""

    def orientation(self) -> Literal["down", "right"]:
        return "right" if self.running.currentIndex() == 1 else "down"

    def _changed(self) -> None:
        kind = self.suffix()
        picture, paper = kind in _PICTURES, kind == "pdf"
        form = self._fields
        for field in (self.what, self.running, self.title, self.caption, self.margin, self.grey):
            form.setRowVisible(field, picture)
        for field in (self.paper, self.way, self.sheets):
            form.setRowVisible(field, paper)
        form.setRowVisible(self.dpi, kind == "png")
        self.margin.set_for(paper=paper)
        from pedigreeview.reports.chart import file_stem

        path = Path(self.file.text().strip() or self._folder / file_stem(self._net))
        known = path.suffix.lower().lstrip(".") in _KINDS
        self.file.setText(str(path.with_suffix(f".{kind}") if known else Path(f"{path}.{kind}")))
        self.message.setText(
            ""
            if picture
            else self.tr("All plants and crosses of the book, with their parents' roles.")
        )
        super()._changed()

    def _browse(self) -> None:
        title = self.tr("Save the picture as")
        ask_file(self, title, self.file, self.suffix(), self.file.setText)

    # Saving -------------------------------------------------------------------------------------

    def save(self) -> None:
        """Write the file off the window's thread."""
        path = Path(self.file.text().strip()).expanduser()
        net, look, kind, dpi = self._net, self.look(), self.suffix(), self.dpi.value()
        finish, placing, tick = self.finish(), self._placing(), self._errands.tick
        self.save_button.setEnabled(False)
        self.message.setText(self.tr("Writing …"))

        def work() -> Path:
            if kind in _NETWORKS:
                from pedigreeview.exchange.formats import FORMATS, write_as

                write_as(net, path, FORMATS[_NETWORKS[kind]])
                return path
            from pedigreeview.reports.chart import write_picture

            return write_picture(net, placing(), look, path, finish, dpi=dpi, tick=tick)

        self._errands.ask(self.writing_errand, work, self._done, self._failed)
