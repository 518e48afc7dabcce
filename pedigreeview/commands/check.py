"""`check`: what in the records cannot be right, each with a way to mend it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.columns import indented

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["check"]


def check(net: PedigreeNetwork) -> Answer:
    """All problems of a book, errors first."""
    grave = {"error": 0, "warning": 1, "note": 2}
    problems = sorted(net.problems(), key=lambda problem: grave[problem.severity])
    text = []
    for problem in problems:
        text += [f"{problem.severity}  {problem.kind}"]
        text += indented([problem.message, problem.mend], 4)
        text += [""]
    counts = [
        counted(number, severity)
        for severity in grave
        if (number := sum(problem.severity == severity for problem in problems))
    ]
    text.append(f"{', '.join(counts)}." if counts else "Nothing looks wrong.")
    document = {"problems": [problem.as_json() for problem in problems]}
    return Answer(text, document, problems, names_problems=True)
