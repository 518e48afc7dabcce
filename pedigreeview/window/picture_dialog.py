"""What saving and printing a picture have in common: fields, and the sheets in small beside them.

What the sheets hold is made by `reports`, off the window's thread.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QSize, Qt, QTimer
from PySide6.QtGui import QImage, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QCheckBox,
    QFormLayout,
    QLineEdit,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.picture_files import PAPERS
from pedigreeview.drawing.view import Look
from pedigreeview.reports.chart import Finish, picture_of, preview_of
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import (
    action_button,
    column,
    dialog_foot,
    heading,
    scrolled,
    sentence,
)
from pedigreeview.window.picture_fields import CaptionField, MarginField, choice
from pedigreeview.window.saying import say
from pedigreeview.window.sheet_preview import SheetPreview
from pedigreeview.window.style import step
from pedigreeview.window.writing_dialog import WritingDialog

if TYPE_CHECKING:
    from pedigreeview.drawing.placing import Placed
    from pedigreeview.network import PedigreeNetwork

__all__ = ["PictureDialog"]

_NARROW, _WIDE = 68, 92
"""Steps of the grid below which the preview stands under the fields, or is as wide as they are."""


class _Beside(SheetPreview):
    """A preview that leaves the fields their room where there is little."""

    def sizeHint(self) -> QSize:
        return QSize(40 * step(), 8 * step())


class PictureDialog(WritingDialog):
    """Fields to the left, the sheets to the right; `_rows` says which fields in which order."""

    preview_errand = "preview"
    writing_errand = "save"

    def __init__(
        self,
        net: PedigreeNetwork,
        look: Look,
        errands: Errands,
        title: str,
        orientation: Literal["down", "right"],
        parent: QWidget | None,
        lit_paths: Iterable[Sequence[str]],
    ) -> None:
        super().__init__(parent)
        self._net, self._look, self._errands = net, look, errands
        self._orientation = orientation
        self._lit_paths = [tuple(path) for path in lit_paths]
        self._placed: tuple[object, Placed] | None = None
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(150)
        self._delay.timeout.connect(self._draw_preview)
        self.what = choice(
            self.tr("What"), [self.tr("as it is shown now"), self.tr("the whole book")]
        )
        if look.focus is None:
            self.what.setCurrentIndex(1)
            self.what.setEnabled(False)
        self.title = QLineEdit(title)
        self.title.setAccessibleName(self.tr("Title"))
        self.caption = CaptionField()
        self.paper = choice(self.tr("Paper"), PAPERS)
        self.way = choice(
            self.tr("Way of the paper"),
            [self.tr("as it fits better"), self.tr("upright"), self.tr("lengthwise")],
        )
        self.margin = MarginField()
        self.sheets = choice(
            self.tr("Sheets"),
            [self.tr("all on one sheet"), self.tr("full size, over several sheets to join")],
        )
        self.grey = QCheckBox(self.tr("In grey, founders told apart by pattern"))
        for combo in (self.what, self.paper, self.way, self.sheets):
            combo.currentIndexChanged.connect(self._changed)
        self.grey.toggled.connect(self._changed)
        for changed in (self.title.textEdited, self.caption.textChanged, self.margin.valueChanged):
            changed.connect(self._retyped)
        self.finished.connect(lambda _: self._leave())

    def _lay(self, words: str, act: str, on_act: Callable[[], object]) -> None:
        """Lay out the dialog; its fields stand already.

        words : what it does
        act, on_act : the button that does it
        """
        s = step()
        self.setWindowTitle(words)
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(words, 2))
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        outer.addLayout(self._row, 1)
        self._row.setSpacing(3 * s)
        fields = QWidget()
        area = scrolled(fields)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        self._row.addWidget(area, 3)
        # Filled in their place: put there whole, Qt would dress the fields twice over.
        self._fill(fields)
        self.preview = _Beside()
        self.preview.setMinimumHeight(8 * s)
        beside = column(s)
        self._row.addLayout(beside, 4)
        beside.addWidget(self.preview, 1)
        self.sheets_note = sentence("", "soft")
        beside.addWidget(self.sheets_note)
        self.message = sentence("", "soft")
        outer.addWidget(self.message)
        self.save_button = action_button(act, on_act, main=True)
        outer.addLayout(dialog_foot(self, self.save_button))
        self.resize(116 * s, 84 * s)
        self._changed()

    def _rows(self) -> Sequence[tuple[str, QWidget]]:
        """The fields in their order, each with its name."""
        raise NotImplementedError

    def _words_and_paper(self) -> Sequence[tuple[str, QWidget]]:
        """The fields that every picture has."""
        return (
            (self.tr("Title"), self.title),
            (self.tr("Caption"), self.caption),
            (self.tr("Paper"), self.paper),
            (self.tr("Way of the paper"), self.way),
            (self.tr("Margins"), self.margin),
            (self.tr("Sheets"), self.sheets),
        )

    def _fill(self, fields: QWidget) -> None:
        s = step()
        form = self._fields = QFormLayout(fields)
        form.setSpacing(s)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
        form.setContentsMargins(0, 0, s, 0)
        for name, field in self._rows():
            form.addRow(name, field)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        way = QBoxLayout.Direction
        width = self.width() / step()
        narrow = width < _NARROW
        self._row.setDirection(way.TopToBottom if narrow else way.LeftToRight)
        self._row.setStretch(1, 1 if narrow else 3 if width < _WIDE else 4)

    # What was chosen ----------------------------------------------------------------------------

    def picture_kind(self) -> str:
        """'pdf' for paper, 'svg' or 'png', or '' where it is no picture."""
        return "pdf"

    def look(self) -> Look:
        """What the picture is to show."""
        if self.what.currentIndex() == 1:
            return replace(self._look, focus=None, unfolded=frozenset())
        return self._look

    def orientation(self) -> Literal["down", "right"]:
        """Where the generations are to run."""
        return self._orientation

    def finish(self) -> Finish:
        """Words, paper, margin and colours."""
        return Finish(
            title=self.title.text(),
            caption=self.caption.text(),
            paper=self.paper.currentText(),
            landscape=(None, False, True)[self.way.currentIndex()],
            tiled=self.sheets.currentIndex() == 1,
            margin=float(self.margin.value()),
            theme="grey" if self.grey.isChecked() else "light",
            lit_paths=self._lit_paths,
        )

    def _changed(self) -> None:
        """Another choice was made: show the fields that go with it."""
        self._delay.start()

    def _retyped(self) -> None:
        """What was said of the words before no longer holds."""
        self.message.setText("")
        self._delay.start()

    # The sheets ---------------------------------------------------------------------------------

    def _placing(self) -> Callable[[], Placed]:
        """A function that gives the placed picture; the same on other paper is not laid again."""
        net, look, running = self._net, self.look(), self.orientation()
        held, tick = self._placed, self._errands.tick

        def placed() -> Placed:
            if held is not None and held[0] == (look, running):
                return held[1]
            return picture_of(net, look, orientation=running, tick=tick)

        return placed

    def _draw_preview(self) -> None:
        kind = self.picture_kind()
        if not kind:
            self._errands.drop(self.preview_errand)
            self._say_instead(self.tr("No preview: a network, not a picture."))
            return
        net, look, finish = self._net, self.look(), self.finish()
        shown, placing = (look, self.orientation()), self._placing()

        def work() -> tuple[QImage, str, tuple[object, Placed]]:
            placed = placing()
            image, words = preview_of(net, placed, look, finish, kind=kind)
            return image, words, (shown, placed)

        self._errands.ask(self.preview_errand, work, self._previewed, self._no_preview)

    def _previewed(self, answer: tuple[QImage, str, tuple[object, Placed]]) -> None:
        image, words, self._placed = answer
        self.preview.show_image(image)
        self.sheets_note.setText(words)
        self.preview.setAccessibleDescription(say(words))

    def _no_preview(self, fault: Fault) -> None:
        self._say_instead(fault.sentence())

    def _say_instead(self, words: str) -> None:
        self.preview.show_words(words)
        self.preview.setAccessibleDescription(say(words))
        self.sheets_note.setText("")

    def _leave(self) -> None:
        self._delay.stop()
        self._errands.drop(self.preview_errand)
        self._errands.drop(self.writing_errand)
        self.deleteLater()
