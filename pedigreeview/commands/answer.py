"""What a command answers: the result to print, and the problems of the file."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from pedigreeview.book.problems import Problem, counts_as_problem

__all__ = ["DONE", "NOT_DONE", "PROBLEMS", "Answer", "counted", "problem_lines"]

DONE, PROBLEMS, NOT_DONE = 0, 1, 2
"""Exit statuses: done; done, and the file has problems; not done."""


@dataclass(frozen=True, slots=True)
class Answer:
    """The result of a command.

    text : lines for a person
    document : the same for a program (`--json`), None where the command has no such form
    problems : all problems of the file
    base : what the numbers rest on, in one line; '' where there are none
    names_problems : whether the result itself lists the problems, so that nothing else need do it
    """

    text: Sequence[str]
    document: dict[str, Any] | None = None
    problems: Sequence[Problem] = ()
    base: str = ""
    names_problems: bool = False

    @property
    def status(self) -> int:
        """The exit status."""
        return PROBLEMS if any(map(counts_as_problem, self.problems)) else DONE

    def messages(self) -> list[str]:
        """What goes to standard error: the problems that make the status 1."""
        if self.names_problems:
            return []
        return [line for p in self.problems if counts_as_problem(p) for line in problem_lines(p)]


def problem_lines(problem: Problem) -> list[str]:
    """One problem as a line: how grave, its kind, what it is, what to do."""
    said = f"{problem.severity.capitalize()} {problem.kind}: {problem.message} {problem.mend}"
    return [said.strip()]


def counted(number: int, one: str, many: str = "") -> str:
    """'1 plant', '12 plants'."""
    return f"{number} {one if number == 1 else many or one + 's'}"
