"""A dict whose values are made when they are first asked for.

A large table is kept as columns; nobody looks at a million records, so a record is made when it is
asked for and is the same object from then on.  To all who use it, it is a dict.
"""

from __future__ import annotations

from collections.abc import Callable, ItemsView, Iterator, ValuesView
from typing import Any, TypeVar

__all__ = ["OnDemand"]

V = TypeVar("V")
_MISSING = object()


class OnDemand(dict[str, V]):
    """A dict by code that holds, for each value not yet made, its place among the columns.

    Parameters
    ----------
    places : the place of each code, in order; copied
    make : the value at a place; the values are no ints
    """

    __slots__ = ("_made", "_make", "_touched")

    def __init__(self, places: dict[str, int], make: Callable[[int], V]) -> None:
        super().__init__(places)  # type: ignore[arg-type]
        self._make = make
        self._made: dict[str, int] = {}
        self._touched = False

    def as_made(self) -> bool:
        """Whether every value is still what the columns say: none added, taken out or changed."""
        return not self._touched and all(
            super(OnDemand, self).__getitem__(code) == self._make(place)
            for code, place in self._made.items()
        )

    # Asked for ----------------------------------------------------------------------------------

    def __getitem__(self, code: str) -> V:
        held: Any = super().__getitem__(code)
        if type(held) is int:
            self._made[code] = held
            held = self._make(held)
            super().__setitem__(code, held)
        found: V = held
        return found

    def get(self, code: str, default: Any = None) -> Any:
        """The value of a code, or the default."""
        # dict.get would give the place of a value that is not made yet.
        return self[code] if code in self else default  # noqa: SIM401

    def values(self) -> ValuesView[V]:  # type: ignore[override]
        """All values, each made as it is reached."""
        return ValuesView(self)

    def items(self) -> ItemsView[str, V]:  # type: ignore[override]
        """All codes with their values, each made as it is reached."""
        return ItemsView(self)

    def __iter__(self) -> Iterator[str]:
        # Written out so that dict(...) and {**...} take the values from here, not the places.
        return super().__iter__()

    def copy(self) -> dict[str, V]:
        """A plain dict with every value made."""
        return dict(self)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, dict) and dict(self) == dict(other)

    def __ne__(self, other: object) -> bool:
        return not self == other

    def __repr__(self) -> str:
        return repr(dict(self))

    def __reduce__(self) -> tuple[Any, ...]:
        return dict, (dict(self),)

    def __or__(self, other: Any) -> Any:
        return dict(self) | other

    def __ror__(self, other: Any) -> Any:
        return other | dict(self)

    # Changed ------------------------------------------------------------------------------------

    def __setitem__(self, code: str, value: V) -> None:
        self._touched = True
        super().__setitem__(code, value)

    def __delitem__(self, code: str) -> None:
        self._touched = True
        super().__delitem__(code)

    def __ior__(self, other: Any) -> OnDemand[V]:  # type: ignore[override]
        self.update(other)
        return self

    def update(self, *more: Any, **named: Any) -> None:
        """Put in what another dict holds."""
        self._touched = True
        super().update(*more, **named)

    def setdefault(self, code: str, default: Any = None) -> Any:
        """The value of a code; put in where there is none."""
        if code not in self:
            self[code] = default
        return self[code]

    def pop(self, code: str, default: Any = _MISSING) -> Any:
        """Take a code out and give its value."""
        if code not in self and default is not _MISSING:
            return default
        value = self[code]
        del self[code]
        return value

    def popitem(self) -> tuple[str, V]:
        """Take the last code out, with its value."""
        if not self:
            raise KeyError("popitem(): dictionary is empty")
        code = next(reversed(self))
        return code, self.pop(code)

    def clear(self) -> None:
        """Take everything out."""
        self._touched = True
        super().clear()
