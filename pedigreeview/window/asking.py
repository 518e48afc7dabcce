"""The questions that the Pedigree page sends to the network, and where their answers go."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from pedigreeview.book.problems import Problem
from pedigreeview.window.answers import (
    PlantAnswer,
    ask_coancestry_why,
    ask_inbreeding_why,
    ask_pair,
    ask_plant,
    ask_progeny_why,
)
from pedigreeview.window.chances import Chances, ask_chances
from pedigreeview.window.errands import Errands
from pedigreeview.window.pair_slip import PairSlip

if TYPE_CHECKING:
    from pedigreeview.network import Explanation, PedigreeNetwork

__all__ = ["Asking"]

_OF_PAIR = ("pair", "paths", "progeny_why")


class Asking:
    """Asks about the plants of one book."""

    def __init__(
        self,
        errands: Errands,
        slip: PairSlip,
        net: PedigreeNetwork,
        problems: Sequence[Problem] = (),
    ) -> None:
        self._errands, self._slip, self._net = errands, slip, net
        self._problems = tuple(problems)

    def plant(self, code: str, come: Callable[[PlantAnswer], None]) -> None:
        """F and founder shares of a plant."""
        net, problems = self._net, self._problems
        self._errands.ask("plant", lambda: ask_plant(net, code, problems), come)

    def chances(self, code: str, come: Callable[[Chances], None]) -> None:
        """What plants raised like this one are like."""
        net, tick = self._net, self._errands.tick
        self._errands.ask("chances", lambda: ask_chances(net, code, tick), come)

    def why(self, code: str, come: Callable[[Explanation], None]) -> None:
        """Why F of a plant is what it is."""
        net, tick = self._net, self._errands.tick
        self._errands.ask("why", lambda: ask_inbreeding_why(net, code, tick), come)

    def pair(self, a: str, b: str) -> None:
        """The numbers of a pair, for the slip."""
        net, problems = self._net, self._problems
        self.drop_pair()
        self._errands.ask("pair", lambda: ask_pair(net, a, b, problems), self._slip.show_answer)

    def coancestry_why(self, a: str, b: str) -> None:
        """Why the coancestry of a pair is what it is."""
        net, tick = self._net, self._errands.tick
        come = self._slip.show_coancestry_why
        self._errands.ask("paths", lambda: ask_coancestry_why(net, a, b, tick), come)

    def progeny_why(self, a: str, b: str) -> None:
        """Why F of the progeny of a pair would be what it is."""
        net, tick = self._net, self._errands.tick
        come = self._slip.show_progeny_why
        self._errands.ask("progeny_why", lambda: ask_progeny_why(net, a, b, tick), come)

    def drop_pair(self) -> None:
        """Await nothing of a pair any longer."""
        for kind in _OF_PAIR:
            self._errands.drop(kind)

    def drop(self) -> None:
        """Await nothing of this book any longer."""
        self.drop_pair()
        for kind in ("plant", "why", "chances"):
            self._errands.drop(kind)
