"""What in the records cannot be right, as data: the same on the command line and in the window."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

__all__ = ["Problem", "Severity", "counts_as_problem"]

Severity = Literal["error", "warning", "note"]


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that looks wrong.

    kind : its documented name, such as 'own_ancestor'
    severity : error (cannot be), warning (unlikely, or changes numbers), note (worth knowing)
    plants : codes it is about; for a loop the cycle in order, parents before progeny
    message : one sentence
    mend : what to do about it, one sentence
    about : table and key of the records it is about beside plants, such as ('crosses', '24-01')
    """

    kind: str
    severity: Severity
    plants: tuple[str, ...]
    message: str
    mend: str
    about: tuple[tuple[str, str], ...] = ()

    def as_json(self) -> dict[str, Any]:
        """The keys of `check --json`."""
        return {
            "kind": self.kind,
            "severity": self.severity,
            "plants": list(self.plants),
            "message": self.message,
            "mend": self.mend,
        }


def counts_as_problem(problem: Problem) -> bool:
    """Whether the command line ends with status 1 because of it."""
    return problem.severity in ("error", "warning")
