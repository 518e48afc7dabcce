"""A choice of plants: picked, kept, in flower on a day, founders, living, progeny, typed, all."""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import (
    QAbstractListModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)
from PySide6.QtWidgets import QBoxLayout, QComboBox, QHBoxLayout, QListView, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.window.forms.fields import DateField, TextField
from pedigreeview.window.labels import column
from pedigreeview.window.relatedness_sets import (
    SETS,
    crosses_with_progeny,
    last_flowering_day,
    plants_of_set,
    typed_codes,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import cross_line

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["SetChoice", "chooser", "set_words"]

_Index = QModelIndex | QPersistentModelIndex


def _tr(text: str) -> str:
    return QCoreApplication.translate("SetChoice", text)


def set_words(name: str) -> str:
    """What a set is called."""
    return {
        "picked": _tr("The picked plants"),
        "kept": _tr("All plants kept"),
        "flowering": _tr("In flower on a day"),
        "founders": _tr("All founders"),
        "living": _tr("All living plants"),
        "cross": _tr("Progeny of a cross"),
        "typed": _tr("Plants typed in"),
        "all": _tr("The whole book"),
    }[name]


def chooser(name: str, entries: Iterable[tuple[str, str]] = ()) -> QComboBox:
    """A box to choose from that gives way where there is little room; entries: data and words."""
    box = QComboBox()
    box.setAccessibleName(name)
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setMinimumContentsLength(6)
    for data, words in entries:
        box.addItem(words, data)
    return box


class _Crosses(QAbstractListModel):
    """The crosses of a book to choose from; a line is put in words when it is looked at."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._net: PedigreeNetwork | None = None
        self._codes: list[str] = []
        self._places: dict[str, int] = {}
        self._doubtful: frozenset[str] = frozenset()

    def show_network(self, net: PedigreeNetwork | None) -> None:
        """The crosses of another book."""
        self.beginResetModel()
        self._net = net
        self._codes = crosses_with_progeny(net) if net is not None else []
        self._places = {code: at for at, code in enumerate(self._codes)}
        self._doubtful = frozenset(net.book.candidates() if net is not None else ())
        self.endResetModel()

    def place(self, code: str) -> int:
        """The row of a cross, or -1."""
        return self._places.get(code, -1)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._codes)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid() or self._net is None:
            return None
        code = self._codes[index.row()]
        if role == Qt.ItemDataRole.UserRole:
            return code
        if role == Qt.ItemDataRole.DisplayRole:
            book = self._net.book
            return f"{code}  {cross_line(book, book.crosses[code], code in self._doubtful)}"
        return None


class SetChoice(QWidget):
    """The choice with the day, the cross or the codes that it goes by."""

    changed = Signal()

    def __init__(
        self,
        name: str,
        order: Order = "day-month",
        sets: Iterable[str] = SETS,
        *,
        across: bool = False,
    ) -> None:
        super().__init__()
        self._net: PedigreeNetwork | None = None
        self._picked: tuple[str, ...] = ()
        layout: QBoxLayout = QHBoxLayout() if across else column()
        layout.setSpacing(step() if across else max(2, step() // 2))
        layout.setContentsMargins(0, 0, 0, 0)
        self.setLayout(layout)
        self.which = chooser(name, ((one, set_words(one)) for one in sets))
        self.day = DateField("day", order=order)
        self.day.set_label(self.tr("Day on which the plants are in flower"))
        self.cross = chooser(self.tr("Cross whose progeny is meant"))
        self._crosses = _Crosses(self.cross)
        self.cross.setModel(self._crosses)
        listed = self.cross.view()
        if isinstance(listed, QListView):
            listed.setUniformItemSizes(True)
        self._listed = True
        self.typed = TextField("codes", self.tr("codes, with commas; 23-* for all that begin so"))
        self.typed.set_label(self.tr("Codes of the plants"))
        for widget in (self.which, self.day, self.cross, self.typed):
            layout.addWidget(widget)
        self.setFocusProxy(self.which)
        self.which.currentIndexChanged.connect(self._turn)
        self.cross.currentIndexChanged.connect(lambda _: self.changed.emit())
        for field in (self.day, self.typed):
            field.editor.editingFinished.connect(self._typed)
        self._last = ("", "")
        self._show()

    @property
    def name(self) -> str:
        """The set that is chosen, one of `SETS`."""
        return str(self.which.currentData())

    def show_network(self, net: PedigreeNetwork | None, name: str = "") -> None:
        """Another book, with the set to begin with; '' leaves what was chosen."""
        self._net, self._listed = net, False
        if net is not None and not self.day.text():
            self.day.set_text(last_flowering_day(net).isoformat())
        if name:
            self.choose(name)
        else:
            self._show()

    def choose(self, name: str) -> None:
        """Choose a set without saying that it changed."""
        self.which.blockSignals(True)
        self.which.setCurrentIndex(max(0, self.which.findData(name)))
        self.which.blockSignals(False)
        self._show()

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants were picked on another page."""
        self._picked = codes
        if self.name == "picked":
            self.changed.emit()

    def question(self) -> tuple[str, dict[str, object]]:
        """What `plants_of_set` is to be asked, for a thread.

        Raises
        ------
        Fault : the day cannot be read
        """
        if self.name == "flowering":
            value = self.day.value
            day = datetime.date.fromisoformat(value) if len(value) == 10 else None
            if day is None:
                raise Fault(self.tr("Say the day on which the plants are in flower."))
            return self.name, {"day": day}
        if self.name == "cross":
            return self.name, {"cross": str(self.cross.currentData() or "")}
        if self.name == "typed":
            return self.name, {"typed": self.typed.text()}
        return self.name, {"picked": self._picked}

    def plants(self) -> list[str]:
        """The plants of the set, now.

        Raises
        ------
        Fault : the day cannot be read
        """
        if self._net is None:
            return []
        name, by = self.question()
        return plants_of_set(self._net, name, **by)  # type: ignore[arg-type]

    def words(self) -> str:
        """The set in words."""
        words = set_words(self.name)
        if self.name == "flowering":
            return self.tr("In flower on {}").format(self.day.text())
        if self.name == "cross":
            return self.tr("Progeny of {}").format(self.cross.currentData() or "")
        return words

    def advice(self) -> str:
        """What to do where the set holds too few plants."""
        if self._net is not None and not self._net.book.plants:
            return self.tr("F3 writes down a variety from elsewhere.")
        return {
            "picked": self.tr(
                "Pick plants in the picture or on the map (Shift and a click), or choose another "
                "set of plants."
            ),
            "kept": self.tr("Mark plants as kept, or choose another set of plants."),
            "flowering": self.tr(
                "Write down when plants flower, or choose another day or another set."
            ),
            "typed": self.tr("Type the codes of two plants or more, with commas between them."),
            "cross": self.tr("Choose a cross of which plants are in the book."),
        }.get(self.name, self.tr("Choose another set of plants."))

    def _turn(self) -> None:
        self._show()
        self.changed.emit()

    def _list_crosses(self) -> None:
        """The crosses to choose from, first listed when a cross is what the set goes by."""
        if self._listed:
            return
        self._listed = True
        held = self.cross.currentData()
        self.cross.blockSignals(True)
        self._crosses.show_network(self._net)
        self.cross.setCurrentIndex(max(0, self._crosses.place(str(held or ""))))
        self.cross.blockSignals(False)

    def _show(self) -> None:
        if self.name == "cross":
            self._list_crosses()
        self.day.setVisible(self.name == "flowering")
        self.cross.setVisible(self.name == "cross")
        self.typed.setVisible(self.name == "typed")

    def _typed(self) -> None:
        said = (self.day.text(), self.typed.text())
        if said == self._last:
            return
        self._last = said
        if self._net is not None and self.typed.text():
            others = typed_codes(self._net, self.typed.text())[1]
            self.typed.say(
                self.tr("Not in this book: {}.").format(", ".join(others)) if others else "",
                wrong=True,
            )
        self.changed.emit()
