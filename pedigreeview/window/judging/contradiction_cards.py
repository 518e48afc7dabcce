"""Groups of records that cannot be true together, each as a card with what may be wrong."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QPushButton, QWidget

from pedigreeview.book.recording.findings import record_finding
from pedigreeview.window.desk import Desk
from pedigreeview.window.labels import (
    Flow,
    LinkLabel,
    action_button,
    clear,
    column,
    heading,
    sentence,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import count, links

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.contradictions import Contradiction, Proposal
    from pedigreeview.window.judging.panel import Write

__all__ = ["ContradictionCards"]

_PROPOSALS = 4


class ContradictionCards(QWidget):
    """One card for each group."""

    plant_wanted = Signal(str)

    def __init__(self, net: PedigreeNetwork, desk: Desk, write: Write | None) -> None:
        super().__init__()
        self._net, self._desk, self._write = net, desk, write
        self._body = column(step())
        self.setLayout(self._body)
        self.buttons: list[QPushButton] = []

    def say(self, text: str) -> None:
        """One sentence in place of cards."""
        clear(self._body)
        self._body.addWidget(sentence(text, "soft"))

    def show_found(self, found: Sequence[Contradiction]) -> None:
        """The groups; none is good news and said so."""
        clear(self._body)
        self.buttons = []
        if not found:
            self._body.addWidget(
                sentence(
                    self.tr("None: every score and genotype of this gene can be true."), "soft"
                )
            )
            return
        one, many = self.tr("group"), self.tr("groups")
        text = self.tr("{}; in each one of the records must be wrong.")
        self._body.addWidget(sentence(text.format(count(len(found), one, many))))
        for group in found:
            self._body.addWidget(self._card(group))

    def _card(self, group: Contradiction) -> QWidget:
        s = step()
        card = QFrame()
        card.setProperty("role", "sheet")
        part = column(max(2, s // 2), 2 * s)
        card.setLayout(part)
        title = group.proposals[0].sentence if group.proposals else group.sentence
        part.addWidget(heading(title, 3))
        for record in group.records:
            part.addWidget(sentence(record.sentence()))
        who = LinkLabel(self.tr("Go there: {}").format(links(group.plants, 12)))
        who.followed.connect(self.plant_wanted)
        part.addWidget(who)
        if group.proposals:
            part.addWidget(sentence(self.tr("With these the records could be true"), "caption"))
        for proposal in group.proposals[:_PROPOSALS]:
            mends = "" if proposal.mends_all else self.tr(" (not all records of the gene)")
            text = self.tr("{}: {}{}").format(proposal.plant, proposal.instead, mends)
            part.addWidget(sentence(text))
        row = Flow(s)
        selfed = self._self_proposal(group.proposals)
        if selfed is not None:
            button = action_button(
                self.tr("Write down: {} is a selfing of {}").format(
                    selfed.plant, self._net.parents(selfed.plant).seed_parent
                ),
                lambda: self._record(selfed, group),
                main=True,
            )
            self.buttons.append(button)
            row.addWidget(button)
        if self._write is not None:
            write, plant = self._write, group.plants[-1]
            row.addWidget(
                action_button(
                    self.tr("Another finding …"), lambda: write("finding", plants=(plant,))
                )
            )
        part.addLayout(row)
        return card

    def _self_proposal(self, proposals: Sequence[Proposal]) -> Proposal | None:
        """The first that a finding of a selfing of the seed parent would carry out."""
        for proposal in proposals:
            parents = self._net.parents(proposal.plant)
            open_to_it = parents.cross and parents.seed_parent and not parents.selfed
            if open_to_it and proposal.instead == f"a selfing of {parents.seed_parent}":
                return proposal
        return None

    def _record(self, proposal: Proposal, group: Contradiction) -> None:
        """Write the finding, with the records that speak for it."""
        plant, today = proposal.plant, date.today().isoformat()
        text = "; ".join(record.sentence() for record in group.records)

        def work(edit: Edit) -> None:
            record_finding(edit, plant, "self", date=today, grade="possible", text=text)

        self._desk.record(self.tr("finding on {}").format(plant), work)
