"""One label as text: its large code, its parents, its facts, its cautions.  Knows no Qt."""

from __future__ import annotations

from dataclasses import dataclass

from pedigreeview.reports.matings import Mating

__all__ = ["Fact", "LabelText"]


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing that a label says; without a value there is a rule to write on."""

    what: str
    """The word before the value; may be blank."""
    value: str = ""
    after: str = ""
    """The word after it, such as 'flowers'."""
    room: float = 12.0
    """Millimetres of rule where there is no value."""
    spare: bool = False
    """May be left out where a label is too small."""
    joined: bool = False
    """Goes on from the fact before it, without a point between."""

    @property
    def writes(self) -> bool:
        """Whether there is a rule: no value, and no words such as 'covered / open' to mark."""
        return not self.value and " / " not in self.what

    @property
    def text(self) -> str:
        """The fact as words, with a blank for the rule."""
        value = "____" if self.writes else self.value
        return " ".join(part for part in (self.what, value, self.after) if part)


@dataclass(frozen=True, slots=True)
class LabelText:
    """One label, from its large code to the caution at its foot."""

    kind: str
    code: str
    badge: str = ""
    """Stands beside the code: the generation of the seed, 'pod 1 of 3'."""
    name: str = ""
    mating: Mating | None = None
    origin: str = ""
    facts: tuple[Fact, ...] = ()
    cautions: tuple[str, ...] = ()
    scan: str = ""
    """What the QR code holds."""

    def lines(self) -> list[str]:
        """Everything on the label as text, for screen readers and lists."""
        held = [self.code, self.badge, self.name, self.mating.shown if self.mating else ""]
        held += [self.origin, ", ".join(fact.text for fact in self.facts), *self.cautions]
        return [line for line in held if line]
