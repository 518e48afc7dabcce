"""Parents and progeny of the plant in focus as a tree that opens step by step.

A plant can stand in it many times, once for each way to it; where it stands below itself, which a
faulty book can hold, the tree ends.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Literal

from PySide6.QtCore import (
    QAbstractItemModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)

from pedigreeview.drawing.wording import plant_words
from pedigreeview.window.plant_facts import parents_line
from pedigreeview.window.saying import say_list
from pedigreeview.window.words import count
from pedigreeview.window.words import number as written

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Relation", "RelativesTree"]

_Index = QModelIndex | QPersistentModelIndex
Way = Literal["self", "up", "down"]

_AT_ONCE = 200
"""So many plants are listed at a time; a last line asks for more."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("RelativesTree", text)


@dataclass(eq=False, slots=True)
class Relation:
    """One line: a plant as it is reached from the focus, or the line that asks for more."""

    way: Way
    code: str
    role: str = ""
    above: Relation | None = None
    row: int = 0
    loop: bool = False
    """The plant stands above itself already."""
    children: list[Relation] | None = field(default=None, repr=False)
    rest: list[tuple[str, str]] = field(default_factory=list, repr=False)
    """Plants that are not listed yet, with their parts."""

    @property
    def more(self) -> bool:
        """Whether it is the line that asks for more."""
        return self.role == "more"

    def above_it(self, code: str) -> bool:
        """Whether a plant stands in the way from the root to here, this line included."""
        line: Relation | None = self
        while line is not None:
            if line.code == code:
                return True
            line = line.above
        return False


class RelativesTree(QAbstractItemModel):
    """The tree of one focus: itself, its parents upwards, its progeny downwards."""

    CodeRole = Qt.ItemDataRole.UserRole + 1

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._net: PedigreeNetwork | None = None
        self._tops: list[Relation] = []

    # What it is of ------------------------------------------------------------------------------

    def show_focus(self, net: PedigreeNetwork | None, code: str) -> None:
        """Show the relatives of another plant; '' for none."""
        self.beginResetModel()
        self._net = net
        known = net is not None and code in net.book.plants
        self._tops = []
        if known:
            self._tops = [
                Relation("self", code, "focus", row=0),
                Relation("up", code, "head", row=1),
                Relation("down", code, "head", row=2),
            ]
        self.endResetModel()

    @property
    def focus(self) -> str:
        """The plant that it is of, or ''."""
        return self._tops[0].code if self._tops else ""

    @property
    def net(self) -> PedigreeNetwork | None:
        """The network that it asks."""
        return self._net

    def relation(self, index: _Index) -> Relation | None:
        """The line of an index."""
        held = index.internalPointer() if index.isValid() else None
        return held if isinstance(held, Relation) else None

    def index_of(self, relation: Relation) -> QModelIndex:
        """The index of a line."""
        return self.createIndex(relation.row, 0, relation)

    def heads(self) -> list[QModelIndex]:
        """The lines 'Parents' and 'Progeny'."""
        return [self.index_of(one) for one in self._tops if one.role == "head"]

    def listed(self, code: str) -> QModelIndex:
        """The first line of a plant among those made so far; an invalid index where it is not."""
        waiting = list(self._tops)
        while waiting:
            one = waiting.pop(0)
            if one.code == code and one.role not in ("head", "more"):
                return self.index_of(one)
            waiting.extend(one.children or ())
        return QModelIndex()

    # Lines and their children -------------------------------------------------------------------

    def _kin(self, one: Relation) -> list[tuple[str, str]]:
        net = self._net
        if net is None or one.loop or one.role in ("focus", "more"):
            return []
        if one.way == "down":
            return [(code, "progeny") for code in net.progeny(one.code)]
        held = net.parents(one.code)
        if held.source:
            return [(held.source, "source")]
        if held.selfed:
            return [(held.seed_parent, "selfed")]
        found = [(held.seed_parent, "seed")] if held.seed_parent else []
        givers = [giver for giver, _ in held.pollen if giver]
        role = "pollen" if len(held.pollen) <= 1 else "perhaps"
        return found + [(giver, role) for giver in givers]

    def _made(self, one: Relation) -> list[Relation]:
        if one.children is None:
            one.rest = self._kin(one)
            one.children = []
            self._take(one)
        return one.children

    def _take(self, one: Relation) -> None:
        """List the next plants of a line."""
        assert one.children is not None
        next_ones, one.rest = one.rest[:_AT_ONCE], one.rest[_AT_ONCE:]
        for code, role in next_ones:
            at = len(one.children)
            one.children.append(Relation(one.way, code, role, one, at, one.above_it(code)))
        if one.rest:
            one.children.append(Relation(one.way, one.code, "more", one, len(one.children)))

    def list_more(self, index: _Index) -> None:
        """Let a line that asks for more give way to the plants behind it."""
        one = self.relation(index)
        above = one.above if one is not None and one.more else None
        if above is None or above.children is None:
            return
        place = self.index_of(above)
        last = len(above.children) - 1
        self.beginRemoveRows(place, last, last)
        above.children.pop()
        self.endRemoveRows()
        more = min(_AT_ONCE, len(above.rest)) + (1 if len(above.rest) > _AT_ONCE else 0)
        self.beginInsertRows(place, last, last + more - 1)
        self._take(above)
        self.endInsertRows()

    def index(self, row: int, column: int, parent: _Index = QModelIndex()) -> QModelIndex:  # noqa: B008
        above = self.relation(parent)
        lines = self._tops if above is None else above.children or ()
        if column != 0 or not 0 <= row < len(lines):
            return QModelIndex()
        return self.createIndex(row, 0, lines[row])

    def parent(self, child: _Index = QModelIndex()) -> Any:  # noqa: B008
        one = self.relation(child)
        if one is None or one.above is None:
            return QModelIndex()
        return self.index_of(one.above)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        above = self.relation(parent)
        if not parent.isValid():
            return len(self._tops)
        # Children are made when the line is opened, not when Qt only asks how many there are.
        return len(above.children) if above is not None and above.children is not None else 0

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 1

    def hasChildren(self, parent: _Index = QModelIndex()) -> bool:  # noqa: B008
        above = self.relation(parent)
        if above is None:
            return bool(self._tops) and not parent.isValid()
        return bool(above.children) if above.children is not None else bool(self._kin(above))

    def canFetchMore(self, parent: _Index) -> bool:
        above = self.relation(parent)
        return above is not None and above.children is None and bool(self._kin(above))

    def fetchMore(self, parent: _Index) -> None:
        above = self.relation(parent)
        if above is None or above.children is not None:
            return
        kin = self._kin(above)
        lines = min(len(kin), _AT_ONCE) + (1 if len(kin) > _AT_ONCE else 0)
        if not lines:
            above.children = []
            return
        self.beginInsertRows(self.index_of(above), 0, lines - 1)
        self._made(above)
        self.endInsertRows()

    # Words --------------------------------------------------------------------------------------

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        one = self.relation(index)
        if one is None or self._net is None:
            return None
        if role == self.CodeRole:
            return "" if one.more or one.role == "head" else one.code
        if role == Qt.ItemDataRole.DisplayRole:
            return self._line(one)
        if role in (Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.ToolTipRole):
            return self._spoken(one)
        return None

    def _line(self, one: Relation) -> str:
        net = self._net
        assert net is not None
        if one.role == "head":
            if one.way == "up":
                line = parents_line(net, one.code)
                return _tr("Parents: {}").format(line)
            return _tr("Progeny: {}").format(written(len(net.progeny(one.code))))
        if one.more:
            rest = len(one.above.rest) if one.above is not None else 0
            return _tr("… and {} more").format(written(rest))
        sign = {"seed": "♀ ", "pollen": "♂ ", "perhaps": "♂? ", "selfed": "⊗ "}
        plant = net.book.plants.get(one.code)
        said = [sign.get(one.role, "") + one.code]
        if plant is not None and plant.name and plant.name != one.code:
            said.append(plant.name)
        name = net.generation_name(one.code)
        if name:
            said.append(name)
        if plant is not None and plant.status:
            said.append(f"· {plant.status}")
        text = "  ".join(said)
        return _tr("{} (again: a loop)").format(text) if one.loop else text

    def _spoken(self, one: Relation) -> str:
        net = self._net
        assert net is not None
        if one.role == "head" and one.way == "down":
            number = len(net.progeny(one.code))
            return _tr("Progeny of {}: {}").format(
                one.code, count(number, _tr("plant"), _tr("plants"))
            )
        if one.role == "head":
            return _tr("Parents of {}").format(one.code)
        if one.more:
            return _tr("List more plants")
        words = say_list(plant_words(net, one.code))
        part = {
            "seed": _tr("seed parent: {}"),
            "pollen": _tr("pollen parent: {}"),
            "perhaps": _tr("perhaps the pollen parent: {}"),
            "selfed": _tr("seed parent and pollen parent: {}"),
            "source": _tr("came from: {}"),
        }.get(one.role, "{}")
        said = part.format(words)
        return _tr("{}; listed above already, a loop").format(said) if one.loop else said
