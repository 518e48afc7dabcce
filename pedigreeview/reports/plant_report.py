"""All that a book knows of one plant, as a report: what it is, whence it came, what came of it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.reciprocal_counts import RecordsByCross
from pedigreeview.network.text import fraction_text
from pedigreeview.reports.report_model import Item, Report, Section, Table, Text
from pedigreeview.reports.report_parts import (
    base_section,
    cautions_section,
    doubt_section,
    f_items,
    facts_of,
    founders_behind,
    notes_section,
    photos_section,
    section,
    sections_of,
    shares_table,
    table,
)
from pedigreeview.reports.report_words import (
    counted,
    cross_signs,
    crossed_words,
    kept_true_words,
    kind_words,
    listed,
    named,
    span,
    status_words,
    tr,
)

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["below_words", "generation_words", "known_plant", "notations", "plant_report"]

_RELATIVES = 24
"""Plants named in the table of relatives; of more the first."""
_PROGENY = 60
"""Crosses and kinds of progeny named one by one."""


def known_plant(net: PedigreeNetwork, code: str) -> None:
    """Refuse a code that the book does not have.

    Raises
    ------
    Fault : there is no such plant
    """
    if code not in net:
        from pedigreeview.exchange.cells import did_you_mean

        raise Fault(
            f"There is no plant {code!r} in this book.",
            Place(plant=code),
            did_you_mean(code, net.book.plants) or "Check the code.",
        )


def below_words(book: Book, code: str) -> str:
    """The line under the title: the book and the crop."""
    crop = tr(book.crop(book.plants[code]))
    said = [tr("From the book '{}'").format(book.settings.name)] if book.settings.name else []
    said += [tr("crop: {}").format(crop)] if crop else []
    line = ", ".join(said)
    return line[:1].upper() + line[1:]


def generation_words(net: PedigreeNetwork, code: str) -> str:
    """The trade's name of the generation with its number from the founders; '' in a loop."""
    number = net.generation(code)
    name = tr(net.generation_name(code) or "")
    if number is None:
        return ""
    if net.parents(code).raised == "founder":
        return tr("founder")
    counts = counted(
        number, tr("{} generation after the founders"), tr("{} generations after the founders")
    )
    return tr("{}; {}").format(name, counts) if name else counts


def notations(net: PedigreeNetwork, code: str) -> list[Item | None]:
    """The parentage as text in both notations, with what they leave out."""
    from pedigreeview.exchange.plant_notation import notation_of

    if net.withheld.get(code) == "own_ancestor":
        return [
            Text(tr("It cannot be written as text: a plant behind it is among its own ancestors."))
        ]
    try:
        signs = notation_of(net, code, "cross")
        slash = notation_of(net, code, "slash")
        by_name = notation_of(net, code, "cross", names=True)
    except Fault as fault:
        return [Text(tr(fault.sentence()))]
    rows = [(tr("With the sign ×"), signs.text)]
    if by_name.text != signs.text:
        rows.append((tr("The same by names"), by_name.text))
    rows.append((tr("Slash notation"), slash.text))
    said = [tr("The seed parent stands first, on the left.")]
    said += dict.fromkeys(tr(one) for one in (*signs.said, *slash.said))
    return [facts_of(rows), Text(" ".join(said), soft=True)]


def plant_report(
    net: PedigreeNetwork, code: str, *, tick: Callable[..., None] | None = None
) -> Report:
    """The report on one plant.

    Parameters
    ----------
    tick : called between parts; may raise `Cancelled`

    Raises
    ------
    Fault : there is no such plant
    """
    known_plant(net, code)
    makers: tuple[Callable[[], Section | None], ...] = (
        lambda: _what(net, code),
        lambda: _parentage(net, code),
        lambda: _numbers(net, code),
        lambda: _crosses(net, code),
        lambda: _progeny(net, code),
        lambda: _scores(net.book, code),
        lambda: doubt_section(net, [code]),
        lambda: notes_section(net.book, [code]),
        lambda: photos_section(net.book, [code]),
        lambda: cautions_section(net, code),
        lambda: base_section(net, code),
    )
    sections = sections_of(makers, tick)
    title = named(net.book, code)
    return Report("plant", code, title, below_words(net.book, code), sections)


def _what(net: PedigreeNetwork, code: str) -> Section | None:
    book = net.book
    plant = book.plants[code]
    chromosomes = ""
    facts = book.crop_facts(plant)
    if code not in net.withheld:
        sets = net.ploidy(code)
        chromosomes = f"{sets}x"
        if facts is not None and facts.chromosomes and sets == facts.ploidy:
            chromosomes = f"2n = {sets}x = {facts.chromosomes}"
    bloom = [
        tr("{} to {}").format(b.first_flower or "?", b.last_flower or "?")
        for b in book.blooms
        if b.plant == code and (b.first_flower or b.last_flower)
    ]
    return section(
        "what",
        [
            facts_of(
                (
                    (tr("Code"), code),
                    (tr("Name"), plant.name if plant.name != code else ""),
                    (tr("It is"), kind_words(book, plant)),
                    (tr("Crop"), tr(book.crop(plant))),
                    (tr("Sets of chromosomes"), chromosomes),
                    (tr("Generation"), generation_words(net, code)),
                    (tr("Kept true"), _kept_true(net, code)),
                    (tr("Status"), status_words(plant.status)),
                    (tr("Sown or struck"), plant.sown),
                    (tr("In flower"), "; ".join(bloom)),
                    (tr("Place"), plant.place),
                    (tr("Obtained from"), plant.obtained_from),
                    (tr("Protected"), plant.protected),
                )
            )
        ],
    )


def _kept_true(net: PedigreeNetwork, code: str) -> str:
    held = net.parents(code)
    said = kept_true_words(net.book, held, net.book.plants[code])
    if said:
        return said
    clones = [plant for plant in net.progeny(code) if net.parents(plant).raised == "cutting_of"]
    return tr("As a clone: it was divided, or cuttings were struck.") if clones else ""


def _parentage(net: PedigreeNetwork, code: str) -> Section | None:
    held = net.parents(code)
    if held.raised == "founder":
        return section("parentage", [Text(tr("A founder: nothing is recorded before it."))])
    said = crossed_words(net.book, held)
    if held.cross:
        said = tr("Grown from the cross {}. {}").format(held.cross, said)
    items: list[Item | None] = [Text(said)]
    if held.finding:
        items.append(Text(tr("Its own finding overrides what its cross says.")))
    if held.selfings:
        items.append(
            Text(
                counted(
                    held.selfings,
                    tr("Selfed {} time more, with no plant recorded in between."),
                    tr("Selfed {} times more, with no plants recorded in between."),
                )
            )
        )
    return section("parentage", [*items, *notations(net, code)])


def _numbers(net: PedigreeNetwork, code: str) -> Section | None:
    oldest = net.cytoplasm(code)
    cytoplasm = ""
    if net.parents(code).raised != "founder":
        cytoplasm = (
            tr("That of {}, through seed parents alone.").format(named(net.book, oldest))
            if oldest
            else tr("Not known: the line of seed parents ends in the unknown.")
        )
    facts = facts_of([*f_items(net, code), (tr("Cytoplasm"), cytoplasm)])
    if code in net.withheld:
        return section("numbers", [facts])
    return section(
        "numbers",
        [
            facts,
            shares_table(net, code),
            _relatives(net, code),
            Text(tr(net.base_sentence()), soft=True),
        ],
    )


def _relatives(net: PedigreeNetwork, code: str) -> Table | None:
    """Coancestry with its parents, its founders and its mates."""
    asked = dict.fromkeys([*net.parent_codes(code), *founders_behind(net, code), *net.mates(code)])
    asked.pop(code, None)
    rows = []
    for other in list(asked)[:_RELATIVES]:
        try:
            theta = fraction_text(net.coancestry_exact(code, other), net.coancestry(code, other))
            words = tr(net.relationship_words(code, other))
        except Fault:
            theta, words = tr("withheld"), ""
        rows.append((named(net.book, other), theta, words))
    return table((tr("With"), tr("Coancestry θ"), tr("That is")), rows, (1,))


def _number(value: int | None) -> str:
    return "" if value is None else f"{value:,}"


def _crosses(net: PedigreeNetwork, code: str) -> Section | None:
    book = net.book
    as_seed, as_pollen = net.crosses_of(code)
    records = RecordsByCross(book)
    rows = []
    made = list(dict.fromkeys([*as_seed, *as_pollen]))
    for cross in made[:_PROGENY]:
        record = book.crosses[cross]
        counts = records.direction((cross,))
        both = cross in as_seed and cross in as_pollen
        role = tr("selfed") if both else tr("seed parent") if cross in as_seed else tr("pollen")
        other = record.pollen_parent if cross in as_seed else record.seed_parent
        if record.intended == "open" and not record.pollen_parent:
            other = tr("open-pollinated")
        dates = [p.date for p in book.pollinations.values() if p.cross == cross]
        rows.append(
            (
                cross,
                role,
                "" if both else other,
                span(dates) or record.made_on,
                _number(counts.flowers),
                _number(counts.fruits_set if counts.fruits_set is not None else counts.fruits),
                _number(counts.seeds),
                _number(len(net.progeny_of_cross(cross)) or None),
                tr(record.state) if record.state in ("planned", "skipped") else "",
            )
        )
    headings = (
        tr("Cross"), tr("It was"), tr("With"), tr("Worked"), tr("Flowers"), tr("Fruits"),
        tr("Seeds"), tr("Plants"), tr("State"),
    )  # fmt: skip
    items: list[Item | None] = [table(headings, rows, (4, 5, 6, 7))]
    if len(made) > _PROGENY:
        items.append(_more(len(made) - _PROGENY))
    for row in book.compatibility:
        if row.plant == code:
            items.append(
                Text(_compatibility(book, row.partner, row.as_seed, row.as_pollen, row.note))
            )
    return section("crosses", items)


def _more(number: int) -> Text:
    return Text(
        counted(number, tr("{} more is in the book."), tr("{} more are in the book.")), soft=True
    )


def _compatibility(book: Book, partner: str, seed: str, pollen: str, note: str) -> str:
    said = [tr("as seed parent {}").format(tr(seed)) if seed else ""]
    said.append(tr("as pollen parent {}").format(tr(pollen)) if pollen else "")
    words = ", ".join(part for part in said if part)
    start = tr("With {}").format(named(book, partner)) if partner else tr("In general")
    line = tr("{}: {}.").format(start, words) if words else tr("{}.").format(start)
    return f"{line} {note}".strip()


def _progeny(net: PedigreeNetwork, code: str) -> Section | None:
    book = net.book
    groups: dict[str, list[str]] = {}
    for plant in net.progeny(code):
        held = net.parents(plant)
        groups.setdefault(held.cross or cross_signs(book, held), []).append(plant)
    rows = []
    for group, plants in list(groups.items())[:_PROGENY]:
        status = Counter(book.plants[plant].status for plant in plants)
        kept = [plant for plant in plants if book.plants[plant].status == "kept"]
        rows.append(
            (
                group,
                cross_signs(book, net.parents(plants[0])) if group in book.crosses else "",
                _number(len(plants)),
                *(_number(status[word] or None) for word in ("growing", "kept", "culled", "lost")),
                listed(kept or plants if len(plants) < 4 else kept, 6),
            )
        )
    headings = (
        tr("From"), tr("Parents"), tr("Plants"), tr("Growing"), tr("Kept"), tr("Culled"),
        tr("Lost"), tr("Of them"),
    )  # fmt: skip
    items: list[Item | None] = [table(headings, rows, (2, 3, 4, 5, 6))]
    if len(groups) > _PROGENY:
        items.append(_more(len(groups) - _PROGENY))
    return section("progeny", items)


def score_rows(book: Book, codes: Iterable[str]) -> list[tuple[str, ...]]:
    """Scores by trait and date: trait, date, value with its unit, of the plant or its seed, by,
    note."""
    wanted = set(codes)
    order = {trait: at for at, trait in enumerate(book.traits)}
    held = [score for score in book.scores if score.plant in wanted and score.value]
    held.sort(key=lambda s: (order.get(s.trait, len(order)), s.trait, s.date))
    rows: list[tuple[str, ...]] = []
    for score in held:
        trait = book.traits.get(score.trait)
        unit = f" {trait.unit}" if trait is not None and trait.unit else ""
        of = tr("its seed") if score.of == "seed" else ""
        rows.append((score.trait, score.date, f"{score.value}{unit}", of, score.by, score.note))
    return rows


def _scores(book: Book, code: str) -> Section | None:
    headings = (tr("Trait"), tr("Date"), tr("Value"), tr("Scored on"), tr("By"), tr("Note"))
    return section("scores", [table(headings, score_rows(book, [code]))])
