"""Save the picture: kind of file, what is on it, paper, with a preview; drawn off the thread."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QImage, QPixmap, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QCheckBox,
    QComboBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QSizePolicy,
    QSpinBox,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.view import Look
from pedigreeview.reports.chart import file_stem
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import (
    action_button,
    column,
    heading,
    scrolled,
    sentence,
    set_apart,
)
from pedigreeview.window.style import step
from pedigreeview.window.writing_dialog import WritingDialog

if TYPE_CHECKING:
    from pedigreeview.drawing.placing import Placed
    from pedigreeview.network import PedigreeNetwork

__all__ = ["SavePicture"]

_KINDS = ("svg", "pdf", "png", "dot", "graphml")
_NARROW = 92
"""Steps of the grid below which the preview stands under the fields."""
_PAPERS = ("A4", "A3", "A2", "A1", "A0", "A5", "Letter", "Legal", "Tabloid")


class _Preview(QLabel):
    """The sheets in small, as large as there is room."""

    def __init__(self) -> None:
        super().__init__()
        self._image = QImage()
        self.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)
        self.setWordWrap(True)
        self.setAccessibleName(self.tr("Preview"))

    def show_image(self, image: QImage) -> None:
        self._image = image
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        if self._image.isNull():
            return
        size = self.size().shrunkBy(self.contentsMargins())
        self.setPixmap(
            QPixmap.fromImage(self._image).scaled(
                size,
                Qt.AspectRatioMode.KeepAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
        )


class SavePicture(WritingDialog):
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
        super().__init__(parent)
        self.setWindowTitle(self.tr("Save the picture"))
        self._net, self._look, self._errands = net, look, errands
        self._lit_paths = [tuple(path) for path in lit_paths]
        self._placed: tuple[object, Placed] | None = None
        self._folder = folder
        s = step()
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Save the picture"), 2))
        self._row = row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        row.setSpacing(3 * s)
        fields = QWidget()
        fields.setLayout(self._form(title))
        self.running.setCurrentIndex(int(orientation == "right"))
        self._fields = area = scrolled(fields)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        row.addWidget(area, 3)
        self.preview = _Preview()
        self.preview.setObjectName("preview")
        self.preview.setMinimumHeight(8 * s)
        beside = column(s)
        beside.addWidget(self.preview, 1)
        self.sheets_note = sentence("", "soft")
        self.sheets_note.setObjectName("sheetsNote")
        beside.addWidget(self.sheets_note)
        row.addLayout(beside, 4)
        outer.addLayout(row, 1)
        self.message = sentence("", "soft")
        outer.addWidget(self.message)
        buttons = QHBoxLayout()
        buttons.setSpacing(s)
        buttons.addWidget(action_button(self.tr("Cancel"), self.reject))
        buttons.addStretch(1)
        self.save_button = action_button(self.tr("Save"), self.save, main=True)
        self.save_button.setDefault(True)
        buttons.addWidget(self.save_button)
        outer.addLayout(buttons)
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(150)
        self._delay.timeout.connect(self._draw_preview)
        self._kind_changed()
        self.resize(116 * s, 76 * s)
        self.finished.connect(self._leave)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        way = QBoxLayout.Direction
        narrow = self.width() < _NARROW * step()
        self._row.setDirection(way.TopToBottom if narrow else way.LeftToRight)
        self._row.setStretch(1, 1 if narrow else 4)

    def _form(self, title: str) -> QFormLayout:
        s = step()
        form = QFormLayout()
        form.setSpacing(s)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
        form.setContentsMargins(0, 0, s, 0)
        self.kind = self._combo(
            self.tr("Kind of file"),
            [
                self.tr("SVG, for a web page or a drawing program"),
                self.tr("PDF, for paper"),
                self.tr("PNG, for messages"),
                self.tr("DOT, the network as a graph"),
                self.tr("GraphML, the network as a graph"),
            ],
        )
        self.what = self._combo(
            self.tr("What"), [self.tr("as it is shown now"), self.tr("the whole book")]
        )
        if self._look.focus is None:
            self.what.setCurrentIndex(1)
        self.running = self._combo(
            self.tr("Generations run"),
            [self.tr("from top to bottom"), self.tr("from left to right")],
        )
        self.paper = self._combo(self.tr("Paper"), list(_PAPERS))
        self.landscape = QCheckBox(self.tr("Landscape"))
        self.landscape.setChecked(True)
        self.sheets = self._combo(
            self.tr("Sheets"),
            [self.tr("fit on one sheet"), self.tr("over several sheets, with marks")],
        )
        self.dpi = QSpinBox()
        set_apart(self.dpi)
        self.dpi.setRange(50, 1200)
        self.dpi.setValue(200)
        self.dpi.setAccessibleName(self.tr("Dots an inch"))
        self.grey = QCheckBox(self.tr("Grey, with patterns for founders"))
        self.title = QLineEdit(title)
        self.title.setAccessibleName(self.tr("Title"))
        self.file = QLineEdit()
        self.file.setAccessibleName(self.tr("File to write"))
        self.browse = action_button(self.tr("Browse …"), self._browse)
        form.addRow(self.tr("File"), self.file)
        form.addRow("", self.browse)
        form.addRow(self.tr("Kind"), self.kind)
        form.addRow(self.tr("What"), self.what)
        form.addRow(self.tr("Generations"), self.running)
        form.addRow(self.tr("Title"), self.title)
        form.addRow(self.tr("Paper"), self.paper)
        form.addRow("", self.landscape)
        form.addRow(self.tr("Sheets"), self.sheets)
        form.addRow(self.tr("Dots an inch"), self.dpi)
        form.addRow("", self.grey)
        self._form_layout = form
        for combo in (self.kind, self.what, self.running, self.paper, self.sheets):
            combo.currentIndexChanged.connect(self._kind_changed)
        for box in (self.landscape, self.grey):
            box.toggled.connect(self._kind_changed)
        self.title.textEdited.connect(self._later)
        return form

    def _combo(self, name: str, entries: list[str]) -> QComboBox:
        combo = QComboBox()
        combo.addItems(entries)
        combo.setAccessibleName(name)
        combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        combo.setMinimumContentsLength(8)
        return combo

    # What was chosen ----------------------------------------------------------------------------

    def suffix(self) -> str:
        """The ending of the chosen kind."""
        return _KINDS[self.kind.currentIndex()]

    def _kind_changed(self) -> None:
        kind = self.suffix()
        picture = kind in ("svg", "pdf", "png")
        form = self._form_layout
        form.setRowVisible(self.what, picture)
        form.setRowVisible(self.running, picture)
        form.setRowVisible(self.title, picture)
        form.setRowVisible(self.grey, picture)
        form.setRowVisible(self.paper, kind == "pdf")
        form.setRowVisible(self.landscape, kind == "pdf")
        form.setRowVisible(self.sheets, kind == "pdf")
        form.setRowVisible(self.dpi, kind == "png")
        path = Path(self.file.text().strip() or self._folder / file_stem(self._net))
        known = path.suffix.lower().lstrip(".") in _KINDS
        self.file.setText(str(path.with_suffix(f".{kind}") if known else Path(f"{path}.{kind}")))
        self.message.setText(
            ""
            if picture
            else self.tr("All plants and crosses of the book, with their parents' roles.")
        )
        self._later()

    def look(self) -> Look:
        """What the picture is to show."""
        if self.what.currentIndex() == 1:
            return replace(self._look, focus=None, unfolded=frozenset())
        return self._look

    def orientation(self) -> Literal["down", "right"]:
        """Where the generations are to run."""
        return "right" if self.running.currentIndex() == 1 else "down"

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("Save the picture as"), self.file.text())
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setDefaultSuffix(self.suffix())
        dialog.setNameFilter(f"{self.suffix().upper()} (*.{self.suffix()})")
        dialog.selectFile(self.file.text())
        dialog.fileSelected.connect(self.file.setText)
        dialog.open()

    # The preview --------------------------------------------------------------------------------

    def _later(self) -> None:
        if hasattr(self, "_delay"):
            self._delay.start()

    def _draw_preview(self) -> None:
        if self.suffix() not in ("svg", "pdf", "png"):
            self._errands.drop("preview")
            self.preview.clear()
            self.preview.setText(self.tr("No preview: a network, not a picture."))
            self.sheets_note.setText("")
            return
        net, look = self._net, self.look()
        title, grey, running = self.title.text(), self.grey.isChecked(), self.orientation()
        kind, tick = self.suffix(), self._errands.tick
        paper, landscape = self.paper.currentText(), self.landscape.isChecked()
        tiled, lit_paths = self.sheets.currentIndex() == 1, self._lit_paths
        held = self._placed

        def work() -> tuple[QImage, str, tuple[object, Placed]]:
            from pedigreeview.reports.chart import picture_of, preview_of

            # The same picture on other paper is not laid out again.
            if held is not None and held[0] == (look, running):
                placed = held[1]
            else:
                placed = picture_of(net, look, orientation=running, tick=tick)
            image, words = preview_of(
                net,
                placed,
                look,
                kind=kind,
                title=title,
                paper=paper,
                landscape=landscape,
                tiled=tiled,
                theme="grey" if grey else "light",
                lit_paths=lit_paths,
            )
            return image, words, ((look, running), placed)

        self._errands.ask("preview", work, self._previewed, self._preview_failed)

    def _previewed(self, answer: tuple[QImage, str, tuple[object, Placed]]) -> None:
        image, words, self._placed = answer
        self.preview.show_image(image)
        self.sheets_note.setText(words)

    def _preview_failed(self, fault: Fault) -> None:
        self.sheets_note.setText("")
        self.preview.clear()
        self.preview.setText(fault.sentence())

    # Saving -------------------------------------------------------------------------------------

    def save(self) -> None:
        """Write the file off the window's thread."""
        path = Path(self.file.text().strip()).expanduser()
        net, look, kind = self._net, self.look(), self.suffix()
        title, grey, running = self.title.text(), self.grey.isChecked(), self.orientation()
        tick = self._errands.tick
        paper, landscape = self.paper.currentText(), self.landscape.isChecked()
        tiled, dpi = self.sheets.currentIndex() == 1, self.dpi.value()
        lit_paths = self._lit_paths
        self.save_button.setEnabled(False)
        self.message.setText(self.tr("Writing …"))

        def work() -> Path:
            if kind in ("dot", "graphml"):
                from pedigreeview.exchange import graph_files

                write = graph_files.write_dot if kind == "dot" else graph_files.write_graphml
                write(net, path)
                return path
            from pedigreeview.reports.chart import save_picture

            save_picture(
                net,
                path,
                look=look,
                title=title,
                paper=paper,
                landscape=landscape,
                tiled=tiled,
                dpi=dpi,
                theme="grey" if grey else "light",
                orientation=running,
                lit_paths=lit_paths,
                tick=tick,
            )
            return path

        self._errands.ask("save", work, self._done, self._failed)

    def _leave(self) -> None:
        self._delay.stop()
        self._errands.drop("preview")
        self._errands.drop("save")
        self.deleteLater()
