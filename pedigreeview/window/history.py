"""Back and forward as in a browser: the places visited, and where one stands among them."""

from __future__ import annotations

from dataclasses import dataclass

from pedigreeview.drawing.ways import NEAR, Way

__all__ = ["History", "Visit"]


@dataclass(frozen=True, slots=True)
class Visit:
    """One place: a page, the plant in focus there and the plant whose card lay open."""

    page: str
    focus: str = ""
    selected: str = ""
    way: Way = NEAR
    """How the picture was looked at."""


class History:
    """Visits in order; a new one cuts off what lay ahead."""

    def __init__(self, longest: int = 200) -> None:
        self._visits: list[Visit] = []
        self._at = -1
        self._longest = longest

    def clear(self) -> None:
        """Forget everything."""
        self._visits.clear()
        self._at = -1

    def go(self, visit: Visit) -> None:
        """Note a new place; the place where one stands is not noted twice."""
        if self._at >= 0 and self._visits[self._at] == visit:
            return
        del self._visits[self._at + 1 :]
        self._visits.append(visit)
        del self._visits[: max(0, len(self._visits) - self._longest)]
        self._at = len(self._visits) - 1

    def can_go_back(self) -> bool:
        """Whether there is a place before this one."""
        return self._at > 0

    def can_go_forward(self) -> bool:
        """Whether there is a place after this one."""
        return self._at < len(self._visits) - 1

    def back(self) -> Visit | None:
        """Step back; None at the first place."""
        if not self.can_go_back():
            return None
        self._at -= 1
        return self._visits[self._at]

    def forward(self) -> Visit | None:
        """Step forward; None at the last place."""
        if not self.can_go_forward():
            return None
        self._at += 1
        return self._visits[self._at]

    def trail(self, length: int) -> list[str]:
        """The plants last stood at, oldest first, the present one last, each once."""
        codes: list[str] = []
        for visit in reversed(self._visits[: self._at + 1]):
            code = visit.selected or visit.focus
            if code and code not in codes:
                codes.append(code)
            if len(codes) == length:
                break
        return codes[::-1]
