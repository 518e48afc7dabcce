"""What there is to judge in a book: families with scores, crosses, lines.  Knows no widgets.

Nothing is computed here beyond counting who is scored.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault
from pedigreeview.planning.ratios import Ratio, named_ratios
from pedigreeview.window.words import count, cross_line

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "Group",
    "crosses_to_judge",
    "groups_to_count",
    "lines_to_judge",
    "read_ratio",
    "word_traits",
]

Tick = Callable[..., None]
_LEAST = 2


def _tr(text: str) -> str:
    return QCoreApplication.translate("Judging", text)


@dataclass(frozen=True, slots=True)
class Group:
    """Plants that are judged together.

    key : 'cross:22-01', 'generation:F2' or 'picked'
    words : as the list shows it
    plants : single plants of it
    """

    key: str
    words: str
    plants: tuple[str, ...]


def word_traits(net: PedigreeNetwork, plants: Iterable[str]) -> list[str]:
    """Traits with words that are scored of any of these plants."""
    from pedigreeview.planning.observations import is_of_words, scored_traits

    return [t for t in scored_traits(net.book, plants) if is_of_words(net.book.traits.get(t))]


def groups_to_count(
    net: PedigreeNetwork, picked: tuple[str, ...] = (), tick: Tick | None = None
) -> list[Group]:
    """The picked plants, all families of one generation together, then each family.

    Only plants with a trait in words count; a group has two of them or more.
    """
    from pedigreeview.planning.observations import is_of_words

    book = net.book
    scored = {
        score.plant
        for score in book.scores
        if score.of != "seed" and score.value and is_of_words(book.traits.get(score.trait))
    }
    alone = [code for code in scored if code in book.plants and not _pool(net, code)]
    chosen = tuple(code for code in picked if code in scored and not _pool(net, code))
    families: list[Group] = []
    generations: dict[str, list[str]] = {}
    held = set(alone)
    families_in: dict[str, int] = {}
    for at, cross in enumerate(book.crosses):
        if tick is not None and at % 500 == 0:
            tick()
        plants = tuple(code for code in net.progeny_of_cross(cross) if code in held)
        if len(plants) < _LEAST:
            continue
        families.append(Group(f"cross:{cross}", _cross_words(net, cross, len(plants)), plants))
        names = {net.generation_name(code) for code in plants}
        name = names.pop() if len(names) == 1 else None
        if name:
            generations.setdefault(name, []).extend(plants)
            families_in[name] = families_in.get(name, 0) + 1
    found = []
    if len(chosen) >= _LEAST:
        words = _tr("The picked plants: {}").format(_plants(len(chosen)))
        found.append(Group("picked", words, chosen))
    for name, codes in generations.items():
        if families_in[name] > 1:
            words = _tr("All {} together: {} of {} families").format(
                name, _plants(len(codes)), families_in[name]
            )
            found.append(Group(f"generation:{name}", words, tuple(codes)))
    return found + families


def _pool(net: PedigreeNetwork, code: str) -> bool:
    return net.book.is_pool(net.book.plants[code])


def _plants(number: int) -> str:
    return count(number, _tr("plant"), _tr("plants"))


def _cross_words(net: PedigreeNetwork, cross: str, plants: int) -> str:
    record = net.book.crosses[cross]
    made = cross_line(net.book, record, bool(net.book.candidates().get(cross)))
    start = cross if made in cross else f"{cross}: {made}"
    return f"{start} · {_plants(plants)}"


def crosses_to_judge(net: PedigreeNetwork, tick: Tick | None = None) -> list[Group]:
    """Crosses of two different parents with single plants raised, those with scores first."""
    book = net.book
    scored = {score.plant for score in book.scores if score.of != "seed" and score.value}
    found: list[tuple[bool, int, Group]] = []
    for at, (code, cross) in enumerate(book.crosses.items()):
        if tick is not None and at % 500 == 0:
            tick()
        if not cross.pollen_parent or cross.pollen_parent == cross.seed_parent:
            continue
        plants = tuple(p for p in net.progeny_of_cross(code) if not _pool(net, p))
        if plants and cross.seed_parent:
            bare = scored.isdisjoint(plants)
            group = Group(f"cross:{code}", _cross_words(net, code, len(plants)), plants)
            found.append((bare, at, group))
    found.sort(key=lambda item: item[:2])
    return [group for _, _, group in found]


def lines_to_judge(net: PedigreeNetwork, tick: Tick | None = None) -> list[str]:
    """Families, varieties and plants with a row grown from them, of two plants or more.

    Varieties from elsewhere with nothing grown from their seed have no row to judge.
    """
    from pedigreeview.planning.stability import members_of

    found = []
    for at, code in enumerate(net.codes):
        if tick is not None and at % 500 == 0:
            tick()
        if not _pool(net, code) and not net.crosses_of(code)[0]:
            continue
        if len(members_of(net, code)) >= _LEAST:
            found.append(code)
    return found


def read_ratio(text: str, classes: int) -> Ratio:
    """'9:3:4' as a ratio of so many classes.

    Raises
    ------
    Fault : no ratio, or one of another number of classes
    """
    try:
        parts = tuple(int(part) for part in text.replace(" ", "").split(":"))
        ratio = Ratio(parts, _tr("typed in"))
        meant = [held.meaning for held in named_ratios(len(parts)) if held.name == ratio.name]
        ratio = Ratio(parts, meant[0] if meant else ratio.meaning)
    except ValueError:
        raise Fault(
            _tr("'{}' is no ratio.").format(text.strip()), None, _tr("Write it as 9:3:4.")
        ) from None
    if len(parts) != classes:
        raise Fault(
            _tr("{} has {} parts, but {} classes were seen.").format(
                ratio.name, len(parts), classes
            ),
            None,
            _tr("Write one part for each class, in the order of the table."),
        )
    return ratio
