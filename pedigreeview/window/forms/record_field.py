"""A field that names a record by its key: a cross, a pollination, a packet, a sowing, a trait."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QStringListModel, Qt
from PySide6.QtGui import QKeyEvent

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Harvest, Packet, Pollination, Record, Sowing
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import OfferingField
from pedigreeview.window.words import cross_line

__all__ = ["RecordField", "describe"]

_SHOWN = 60


def describe(book: Book, record: Record) -> str:
    """A few words that tell one record from another: its parents, date and counts."""
    parts: list[str] = []
    cross: Cross | None = None
    if isinstance(record, Cross):
        cross = record
    elif isinstance(record, Pollination | Harvest):
        cross = book.crosses.get(record.cross)
    elif isinstance(record, Packet):
        harvest = book.harvests.get(record.harvest)
        cross = book.crosses.get(harvest.cross) if harvest is not None else None
    if cross is not None:
        parts.append(cross_line(book, cross, False))
    if isinstance(record, Packet):
        parts += [record.generation, record.borne_on if cross is None else ""]
        if record.left is not None:
            parts.append(f"{record.left} left")
    elif isinstance(record, Sowing):
        parts += [record.packet or record.sown_from, record.date]
    elif isinstance(record, Pollination):
        parts += [record.date, record.tag]
    elif isinstance(record, Harvest):
        parts.append(record.date)
    return ", ".join(part for part in parts if part)


class RecordField(OfferingField):
    """The key of a record of one table; the records that fit are offered as one types.

    Parameters
    ----------
    table : whose records are named
    wanted : which of them are offered, the likeliest first; None offers all, the latest first
    """

    def __init__(
        self,
        name: str,
        desk: Desk,
        table: str,
        wanted: Callable[[Book], list[str]] | None = None,
        hint: str = "",
    ) -> None:
        self._desk, self._table, self._wanted = desk, table, wanted
        super().__init__(name)
        self._keys: list[str] = []
        self._picked = False
        self._model = QStringListModel(self)
        self._offer_from(self._model, hint or self.tr("code"), self.tr("What fits"))

    def offered(self) -> list[str]:
        """The keys that are offered, the likeliest first."""
        book = self._desk.book
        if book is None:
            return []
        if self._wanted is not None:
            return self._wanted(book)
        return list(reversed(list(getattr(book, self._table))))

    def search(self, typed: str) -> None:
        """Show what fits; a blank shows what is likeliest."""
        book = self._desk.book
        if book is None:
            return
        wanted = typed.strip().casefold()
        held = getattr(book, self._table)
        keys, texts = [], []
        for key in self.offered():
            text = describe(book, held[key])
            if wanted in f"{key} {text}".casefold():
                keys.append(key)
                texts.append(f"{key}   {text}" if text else key)
                if len(keys) == _SHOWN:
                    break
        self._keys, self._picked = keys, False
        if not keys or keys == [typed.strip()]:
            self.found.hide()
            return
        self._model.setStringList(texts)
        self._open()

    def _meant(self) -> bool:
        """Whether Tab takes the row: it was picked, or nothing else begins as it was typed.

        Some fields take codes of other tables too, which must stay as they were typed.
        """
        typed = self.text().casefold()
        alone = len(self._keys) == 1 and self._keys[0].casefold().startswith(typed)
        return self._picked or (bool(typed) and alone)

    def code_in(self, row: int) -> str:
        """The key in a row of the list."""
        return self._keys[row]

    def _step(self, by: int) -> None:
        super()._step(by)
        self._picked = True

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        pressed = event.type() == QEvent.Type.KeyPress and self.found.isHidden()
        if pressed and isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Down:
            self.search(self.text())
            return True
        return super().eventFilter(watched, event)

    @property
    def value(self) -> str:
        """The key that stands in the field."""
        return self.text()

    def check(self) -> None:
        book = self._desk.book
        record = getattr(book, self._table).get(self.text()) if book is not None else None
        self.say(describe(book, record) if book is not None and record is not None else "")
