"""Row ids: which row of the store each record is, and so its place in its table.

A record keeps its row id for life, also through a change of its code, and an id is never given
twice, so that a deletion that is undone comes back at the same place.  In every snapshot the
records of a table stand in ascending order of their ids.
"""

from __future__ import annotations

from collections.abc import Sized
from dataclasses import dataclass, field

__all__ = ["RowIds"]


@dataclass(slots=True)
class RowIds:
    """The row ids of a snapshot.

    Attributes
    ----------
    tables : by table, the id of each key, or for a table that is a list the ids in its order;
        a table that is missing here has the ids 1, 2, 3 ...
    following : by table, the id that the next new row gets
    """

    tables: dict[str, dict[str, int] | list[int]] = field(default_factory=dict)
    following: dict[str, int] = field(default_factory=dict)

    def copy(self) -> RowIds:
        """The same ids; those of a table are copied only when it is first changed."""
        return RowIds(dict(self.tables), dict(self.following))

    def take(self, table: str, held: Sized) -> None:
        """Make the ids of a table this snapshot's own, numbering rows that have none.

        held : the records of the table, a dict by key or a list
        """
        ids = self.tables.get(table)
        if ids is None or len(ids) != len(held):
            # No store has numbered it yet, or records were added past all edits.
            first = self.following.get(table, 1) if ids is not None else 1
            numbers = range(first, first + len(held))
            ids = dict(zip(held, numbers, strict=True)) if isinstance(held, dict) else list(numbers)
            self.following[table] = max(first + len(held), self.following.get(table, 1))
        else:
            ids = ids.copy()
        self.tables[table] = ids
        self.following.setdefault(table, len(held) + 1)

    def new(self, table: str) -> int:
        """An id that no row of the table ever had."""
        found = self.following.get(table, 1)
        self.following[table] = found + 1
        return found

    def seen(self, table: str, row_id: int) -> None:
        """Note that an id is in use."""
        self.following[table] = max(self.following.get(table, 1), row_id + 1)
