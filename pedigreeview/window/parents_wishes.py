"""What is wanted in one plant: traits with a value, or alleles of genes, each with its weight."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.labels import (
    action_button,
    clear,
    column,
    plain_button,
    sentence,
)
from pedigreeview.window.parents_sliders import WeightSlider
from pedigreeview.window.relatedness_choice import chooser
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.planning.wanted import Wanted

__all__ = ["WishesPanel"]

_TRAIT, _GENE = "trait:", "gene:"


class WishesPanel(QWidget):
    """The wishes, and a line to add one."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._book: Book | None = None
        self._wishes: list[tuple[str, str, float]] = []
        """What ('trait:height' or 'gene:Le'), the value wanted, its weight."""
        s = step()
        outer = column(s)
        self.setLayout(outer)
        self.listed = column(max(2, s // 2))
        outer.addLayout(self.listed)
        self.none = sentence(
            self.tr("Nothing yet: pairs are weighed by kinship, flowering and notes alone."), "soft"
        )
        outer.addWidget(self.none)
        self.of = chooser(self.tr("Trait or gene that is wanted"))
        self.want = chooser(self.tr("Value that is wanted"))
        self.add_button = action_button(self.tr("Add this wish"), self.add)
        self._adding = QWidget()
        adding = column(max(2, s // 2))
        self._adding.setLayout(adding)
        for widget in (self.of, self.want):
            adding.addWidget(widget)
        adding.addWidget(self.add_button)
        outer.addWidget(self._adding)
        self.of.currentIndexChanged.connect(lambda _: self._offer_values())
        self.rows: list[WeightSlider] = []

    def show_book(self, book: Book | None, *, keep: bool = False) -> None:
        """Another book; `keep`: the same one after an edit, with the wishes that still fit."""
        self._book = book
        if not keep:
            self._wishes = []
        held = self.of.currentData()
        self.of.blockSignals(True)
        self.of.clear()
        if book is not None:
            for name in book.traits:
                self.of.addItem(name, f"{_TRAIT}{name}")
            for name in book.loci:
                self.of.addItem(self.tr("gene {}").format(name), f"{_GENE}{name}")
        self.of.setCurrentIndex(max(0, self.of.findData(held)))
        self.of.blockSignals(False)
        self._offer_values()
        has = self.of.count() > 0
        self._adding.setVisible(has)
        if book is not None and not has:
            self.none.setText(
                self.tr(
                    "This book has no traits and no genes yet. Add a trait (Records, Traits) and "
                    "score plants, and what you want can be weighed here."
                )
            )
        self._wishes = [wish for wish in self._wishes if self._fits(wish)]
        self._list()

    def _fits(self, wish: tuple[str, str, float]) -> bool:
        try:
            return self._wanted(*wish) is not None
        except Fault:
            return False

    def _values(self, of: str) -> list[tuple[str, str]]:
        """Values of a trait or a gene that can be wanted, with their words."""
        book = self._book
        if book is None or not of:
            return []
        name = of.partition(":")[2]
        if of.startswith(_GENE):
            from pedigreeview.planning.loci import locus_model

            try:
                model = locus_model(book, name)
            except Fault:
                return []
            return [(allele, self.tr("allele {}").format(allele)) for allele in model.alleles]
        trait = book.traits[name]
        if trait.type in ("score", "measure"):
            both = [("high", self.tr("high")), ("low", self.tr("low"))]
            return both[::-1] if trait.better == "low" else both
        values = ["yes", "no"] if trait.type == "yes_no" else trait.values.split(";")
        return [(value.strip(), value.strip()) for value in values if value.strip()]

    def _offer_values(self) -> None:
        self.want.clear()
        for data, words in self._values(str(self.of.currentData() or "")):
            self.want.addItem(words, data)

    def add(self) -> None:
        """Add the wish that is chosen; one for the same trait and value counts once."""
        of, want = str(self.of.currentData() or ""), str(self.want.currentData() or "")
        if of and want:
            self.wish(of, want)

    def wish(self, of: str, want: str, weight: float = 1.0) -> None:
        """Add a wish: of 'trait:height' or 'gene:Le'."""
        if any((held[0], held[1]) == (of, want) for held in self._wishes):
            return
        # Of one trait two values cannot both be wanted.
        self._wishes = [held for held in self._wishes if held[0] != of]
        self._wishes.append((of, want, weight))
        self._list()
        self.changed.emit()

    def remove(self, at: int) -> None:
        """Take a wish out."""
        del self._wishes[at]
        self._list()
        self.of.setFocus()
        self.changed.emit()

    def state(self) -> list[list[object]]:
        """The wishes as they are kept: what, the value wanted, its weight."""
        return [list(wish) for wish in self._wishes]

    def restore(self, state: object) -> None:
        """Take up wishes that were kept, as far as they still fit the book."""
        self._wishes = []
        for wish in state if isinstance(state, list) else []:
            match wish:
                case [str() as of, str() as want, int() | float() as weight] if 0 <= weight <= 5:
                    held = (of, want, float(weight))
                    if self._fits(held) and not any(of == one[0] for one in self._wishes):
                        self._wishes.append(held)
        self._list()

    def wishes(self) -> list[Wanted]:
        """The wishes with their weights."""
        found = [self._wanted(*wish) for wish in self._wishes]
        return [wish for wish in found if wish is not None]

    def of_genes(self) -> list[tuple[str, str]]:
        """The wishes as (trait, value), of those traits whose gene is in the book."""
        from pedigreeview.planning.observations import gene_of_trait

        book = self._book
        if book is None:
            return []
        found = []
        for of, want, _ in self._wishes:
            kind, _, name = of.partition(":")
            if kind == "trait":
                gene = gene_of_trait(book, name)
                if gene is not None and want in gene.shows:
                    found.append((name, want))
                continue
            for trait in book.traits:
                gene = gene_of_trait(book, trait)
                if gene is not None and gene.locus == name:
                    value = gene.shows[0] if want == gene.recessive else gene.shows[2]
                    found.append((trait, value))
                    break
        return list(dict.fromkeys(found))

    def _wanted(self, of: str, want: str, weight: float) -> Wanted | None:
        from pedigreeview.planning.wanted import wanted_allele, wanted_trait

        if self._book is None:
            return None
        kind, _, name = of.partition(":")
        if kind == "gene":
            return wanted_allele(self._book, name, want, weight)
        return wanted_trait(self._book, name, want, weight)

    def words(self, of: str, want: str) -> str:
        """'height: dwarf', 'gene Le: allele le'."""
        kind, _, name = of.partition(":")
        what = self.tr("gene {}").format(name) if kind == "gene" else name
        shown = dict(self._values(of)).get(want, want)
        return self.tr("{}: {}").format(what, shown)

    def _list(self) -> None:
        clear(self.listed)
        self.rows = []
        self.none.setVisible(not self._wishes)
        s = step()
        for at, (of, want, weight) in enumerate(self._wishes):
            words = self.words(of, want)
            frame = QFrame()
            inner = column(max(1, s // 4))
            frame.setLayout(inner)
            head = QHBoxLayout()
            head.setSpacing(s)
            head.addWidget(sentence(words), 1)
            slider = WeightSlider(words, weight)
            slider.weighed.connect(lambda value, at=at: self._weigh(at, value))
            head.addWidget(slider.number)
            head.addWidget(
                plain_button(
                    "✕",
                    self.tr("Take out the wish {}").format(words),
                    partial(self.remove, at),
                )
            )
            inner.addLayout(head)
            inner.addWidget(slider)
            self.rows.append(slider)
            self.listed.addWidget(frame)

    def _weigh(self, at: int, weight: float) -> None:
        of, want, _ = self._wishes[at]
        self._wishes[at] = (of, want, weight)
        self.changed.emit()
