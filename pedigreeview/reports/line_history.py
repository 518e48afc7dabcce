"""The history of a line, from its founders to the selection, for a club, a seed swap or an office.

Every part stands only where the book has something to say of it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from math import sqrt
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.planning.observations import is_of_words, numbers_of, scored_traits, words_of
from pedigreeview.reports.line_steps import (
    Step,
    fixing_section,
    generations_section,
    line_steps,
    selection_section,
)
from pedigreeview.reports.plant_report import (
    below_words,
    generation_words,
    known_plant,
    notations,
)
from pedigreeview.reports.report_model import Item, Picture, Report, Section, Text
from pedigreeview.reports.report_parts import (
    base_section,
    cautions_section,
    doubt_section,
    f_items,
    facts_of,
    founders_behind,
    photos_section,
    section,
    sections_of,
    shares_table,
    table,
)
from pedigreeview.reports.report_words import (
    counted,
    kept_true_words,
    kind_words,
    listed,
    named,
    status_words,
    tr,
)

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["line_history", "pictured"]

_PICTURED = 120
"""Plants that a picture on one page can hold."""
_FOUNDERS_BESIDE = 3
"""Founders that are set beside the line in its description."""


def line_history(
    net: PedigreeNetwork, code: str, *, tick: Callable[..., None] | None = None
) -> Report:
    """The history of a line that ends in a plant, a family or a variety.

    Parameters
    ----------
    tick : called between parts; may raise `Cancelled`

    Raises
    ------
    Fault : there is no such plant, or nothing is recorded before it
    """
    known_plant(net, code)
    if net.parents(code).raised == "founder":
        raise Fault(
            f"{code} is a founder: nothing is recorded before it, so it has no history to tell.",
            Place(plant=code),
            "Take the report on the plant itself, or name a plant that was raised from a cross.",
        )
    steps = line_steps(net, code)
    way = [*founders_behind(net, code), *(plant for step in steps for plant in step.plants)]
    makers: tuple[Callable[[], Section | None], ...] = (
        lambda: _what(net, code, steps),
        lambda: section("parentage", notations(net, code)),
        lambda: _founders(net, code),
        lambda: _picture(net, code, way),
        lambda: generations_section(net, steps),
        lambda: selection_section(net, steps),
        lambda: _reciprocals(net, steps),
        lambda: _segregation(net, steps),
        lambda: fixing_section(net, code, steps),
        lambda: _stability(net, code),
        lambda: _traits(net, code),
        lambda: doubt_section(net, way),
        lambda: photos_section(net.book, reversed(way)),
        lambda: cautions_section(net, code),
        lambda: base_section(net, code),
    )
    sections = sections_of(makers, tick)
    title = tr("The history of {}").format(named(net.book, code))
    return Report("line", code, title, below_words(net.book, code), sections)


def _what(net: PedigreeNetwork, code: str, steps: Sequence[Step]) -> Section | None:
    book = net.book
    plant = book.plants[code]
    founders = [named(book, founder) for founder in founders_behind(net, code)]
    return section(
        "what",
        [
            facts_of(
                (
                    (tr("Code"), code),
                    (tr("Name"), plant.name if plant.name != code else ""),
                    (tr("It is"), kind_words(book, plant)),
                    (tr("Crop"), tr(book.crop(plant))),
                    (tr("From"), listed(founders, 12)),
                    (tr("Method"), _method(net, steps)),
                    (tr("Generation"), generation_words(net, code)),
                    *f_items(net, code),
                    (tr("Kept true"), kept_true_words(book, net.parents(code), plant)),
                    (tr("Status"), status_words(plant.status)),
                    (tr("Sown or struck"), plant.sown),
                )
            ),
            shares_table(net, code),
        ],
    )


def _method(net: PedigreeNetwork, steps: Sequence[Step]) -> str:
    """How it was bred, by what its records hold: crosses, selfings, cuttings, in counts."""
    kinds: Counter[str] = Counter()
    unwritten = 0
    for step in steps:
        held = step.held
        if held.raised != "cross":
            kinds[held.raised] += 1
        elif held.selfed:
            kinds["selfing"] += 1
        elif net.book.crosses[held.cross].intended == "open" and not held.pollen_parent:
            kinds["open"] += 1
        else:
            kinds["cross"] += 1
        unwritten += held.selfings
    words = (
        ("cross", tr("{} cross"), tr("{} crosses")),
        ("open", tr("{} open pollination"), tr("{} open pollinations")),
        ("selfing", tr("{} selfing"), tr("{} selfings")),
        ("seed_of", tr("{} time from seed of a pool"), tr("{} times from seed of a pool")),
        ("sibbed_in", tr("{} mating within a pool"), tr("{} matings within a pool")),
        ("cutting_of", tr("{} cutting or division"), tr("{} cuttings or divisions")),
        ("doubled_haploid_of", tr("{} doubled haploid"), tr("{} doubled haploids")),
        ("doubled_of", tr("{} doubling of the chromosomes"), tr("{} doublings of the chromosomes")),
    )  # fmt: skip
    said = [counted(kinds[kind], one, many) for kind, one, many in words if kinds[kind]]
    if unwritten:
        said.append(
            counted(unwritten, tr("{} selfing not recorded"), tr("{} selfings not recorded"))
        )
    return ", ".join(said)


def pictured(net: PedigreeNetwork, code: str, way: Sequence[str]) -> tuple[str, ...]:
    """The plants of the way that a picture holds, those nearest to the end of it first."""
    if len(way) <= _PICTURED:
        return tuple(way)
    kept, ahead = {code: None}, [code]
    for plant in ahead:
        for parent in net.parent_codes(plant):
            if parent not in kept and len(kept) < _PICTURED:
                kept[parent] = None
                ahead.append(parent)
    return tuple(plant for plant in way if plant in kept)


def _picture(net: PedigreeNetwork, code: str, way: Sequence[str]) -> Section | None:
    plants = pictured(net, code, way)
    words = tr(
        "The way from the founders to {}: the seed parent comes in by an unbroken line, the pollen "
        "parent by a line of grains."
    ).format(named(net.book, code))
    if len(plants) < len(way):
        words += " " + counted(
            len(way) - len(plants),
            tr("{} plant further back is left out."),
            tr("{} plants further back are left out."),
        )
    return section("picture", [Picture(code, plants, words)])


def _founders(net: PedigreeNetwork, code: str) -> Section | None:
    book = net.book
    rows = []
    for founder in founders_behind(net, code):
        plant = book.plants[founder]
        rows.append(
            (
                founder,
                plant.name if plant.name != founder else "",
                plant.obtained_from,
                kept_true_words(book, net.parents(founder), plant),
                plant.protected,
                plant.note,
            )
        )
    headings = (
        tr("Founder"), tr("Name"), tr("Obtained from"), tr("Kept true"), tr("Protected"),
        tr("Note"),
    )  # fmt: skip
    items: list[Item | None] = [table(headings, rows)]
    silent = [row[0] for row in rows if not row[4]]
    if silent:
        items.append(
            Text(
                tr("The book does not say whether these are protected: {}.").format(listed(silent)),
                soft=True,
            )
        )
    return section("founders", items)


def _reciprocals(net: PedigreeNetwork, steps: Sequence[Step]) -> Section | None:
    from pedigreeview.planning.reciprocal_report import reciprocal_report

    crosses = {step.cross for step in steps if step.cross}
    items: list[Item | None] = []
    for pair in net.reciprocal_pairs():
        if crosses & {code for side in pair.crosses for code in side}:
            report = reciprocal_report(net, pair)
            first, *said = (tr(one) for one in report.sentences())
            items.append(Text(first, strong=True))
            # One paragraph for fruit set, one for seeds, one for each trait; the rest after them.
            for own in (
                report.fruit_set.sentences(report.names) if report.fruit_set else said[:1],
                report.seeds.sentences(report.names),
                *(trait.sentences() for trait in report.traits),
            ):
                told = [tr(one) for one in own]
                items += [Text(" ".join(told))] if told else []
                said = [one for one in said if one not in told]
            items += [Text(one) for one in said]
    return section("reciprocals", items)


def _segregation(net: PedigreeNetwork, steps: Sequence[Step]) -> Section | None:
    from pedigreeview.planning.segregation_report import segregation_of

    items: list[Item | None] = []
    for step in steps:
        said: list[str] = []
        for trait in scored_traits(net.book, step.raised):
            if not is_of_words(net.book.traits.get(trait)) or len(step.raised) < 2:
                continue
            try:
                report = segregation_of(net, step.raised, trait)
            except Fault:
                continue
            if len(report.classes) > 1 and sum(count > 0 for count in report.counts) > 1:
                said.append(" ".join(tr(one) for one in report.sentences()))
        if said:
            items.append(Text(tr("The plants of {}").format(step.cross), strong=True))
            items += [Text(one) for one in said]
    return section("segregation", items)


def _stability(net: PedigreeNetwork, code: str) -> Section | None:
    """The verdict where plants of the line were grown to judge it by."""
    from pedigreeview.planning.stability import line_report

    if net.parents(code).raised == "cutting_of":
        return None
    report = line_report(net, code)
    if not report.plants:
        return None
    grown = counted(
        len(report.plants),
        tr("Judged by {} plant that stands for the line."),
        tr("Judged by {} plants that stand for the line."),
    )
    return section("stability", [Text(grown), *(Text(tr(one)) for one in report.sentences())])


# Description --------------------------------------------------------------------------------------


def _traits(net: PedigreeNetwork, code: str) -> Section | None:
    """Every trait scored on the line: how it is scored, what was found, the founders beside."""
    from pedigreeview.planning.stability import members_of

    book = net.book
    own = list(dict.fromkeys([code, *members_of(net, code)]))
    founders = founders_behind(net, code)
    beside = founders if len(founders) <= _FOUNDERS_BESIDE else []
    rows = []
    for trait in scored_traits(book, own):
        rows.append(
            (
                trait,
                _scale(book, trait),
                _found(book, trait, own),
                *(_found(book, trait, [founder]) for founder in beside),
            )
        )
    made = table((tr("Trait"), tr("Scored as"), code, *beside), rows)
    if made is None:
        return None
    said = tr("Scored on {} and the plants that stand for it; numbers are means over the plants.")
    return section("traits", [Text(said.format(code)), made])


def _scale(book: Book, trait: str) -> str:
    record = book.traits.get(trait)
    if record is None:
        return ""
    if record.type == "category":
        said = tr("one of: {}").format(", ".join(v.strip() for v in record.values.split(";")))
    elif record.type == "yes_no":
        said = tr("yes or no")
    elif record.type == "measure":
        said = record.unit
    elif record.low is not None and record.high is not None:
        better = {"high": tr(", the highest is best"), "low": tr(", the lowest is best")}
        said = tr("score {} to {}{}").format(
            f"{record.low:g}", f"{record.high:g}", better.get(record.better, "")
        )
    else:
        said = tr("score")
    return ", ".join(part for part in (said, record.note) if part)


def _found(book: Book, trait: str, plants: Sequence[str]) -> str:
    record = book.traits.get(trait)
    if is_of_words(record):
        counts = Counter(words_of(book, trait, plants).values())
        total = sum(counts.values())
        if len(counts) == 1:
            word = next(iter(counts))
            return tr("{} ({} of {})").format(word, total, total) if total > 1 else word
        return ", ".join(f"{count} {word}" for word, count in counts.most_common())
    means = [sum(held) / len(held) for held in numbers_of(book, trait, plants).values()]
    if not means:
        return ""
    middle = sum(means) / len(means)
    if len(means) == 1:
        return f"{middle:.4g}"
    spread = sqrt(sum((value - middle) ** 2 for value in means) / (len(means) - 1))
    return tr("{} (sd {}, {} plants)").format(f"{middle:.4g}", f"{spread:.2g}", len(means))
