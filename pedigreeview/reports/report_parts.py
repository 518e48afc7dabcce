"""Parts that the report on a plant and the history of a line have in common."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.problems import counts_as_problem
from pedigreeview.book.records import GRADES, Note, ParentFinding
from pedigreeview.network.text import decimal_text, fraction_text
from pedigreeview.network.words import inbreeding_sentence
from pedigreeview.reports.report_model import Facts, Item, PhotoOf, Section, Table, Text
from pedigreeview.reports.report_words import cross_signs, doubt_words, named, part_words, tr

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "Notes",
    "base_section",
    "cautions_section",
    "doubt_section",
    "f_items",
    "f_text",
    "facts_of",
    "founders_behind",
    "notes_section",
    "photos_section",
    "section",
    "sections_of",
    "shares_table",
    "table",
]


_FRACTIONS = 60
"""Generations after which a fraction is too long to be read, and slow to come by."""


def section(part: str, items: Iterable[Item | None]) -> Section | None:
    """A part with what there is to say; None where that is nothing."""
    kept = tuple(item for item in items if item is not None)
    return Section(part, part_words()[part], kept) if kept else None


def sections_of(
    makers: Sequence[Callable[[], Section | None]], tick: Callable[..., None] | None
) -> tuple[Section, ...]:
    """Make the parts of a report one by one; those that have nothing to say are left out.

    tick : called between parts; may raise `Cancelled`
    """
    found = []
    for at, make in enumerate(makers):
        if tick is not None:
            tick(at, len(makers))
        found.append(make())
    return tuple(part for part in found if part is not None)


def facts_of(rows: Iterable[tuple[str, str]]) -> Facts | None:
    """The facts that have a value; None without any."""
    kept = tuple((name, value) for name, value in rows if value)
    return Facts(kept) if kept else None


def table(
    headings: Sequence[str], rows: Sequence[Sequence[str]], numbers: Iterable[int] = ()
) -> Table | None:
    """A table without the columns that are blank throughout; None without rows."""
    kept = [at for at in range(len(headings)) if any(row[at] for row in rows)]
    if not rows or not kept:
        return None
    right = set(numbers)
    return Table(
        tuple(headings[at] for at in kept),
        tuple(tuple(row[at] for at in kept) for row in rows),
        frozenset(number for number, at in enumerate(kept) if at in right),
    )


def f_text(net: PedigreeNetwork, code: str) -> str:
    """F of a plant as a person reads it: '15/16 = 0.9375'; a word where it is withheld."""
    try:
        if (net.generation(code) or 0) > _FRACTIONS:
            return decimal_text(net.inbreeding(code))
        return fraction_text(net.inbreeding_exact(code), net.inbreeding(code))
    except Fault:
        return tr("withheld")


def founders_behind(net: PedigreeNetwork, code: str) -> list[str]:
    """The founders that a plant descends from (itself, if it is one), in the book's order."""
    behind = net.ancestors(code) | {code}
    return [founder for founder in net.founders if founder in behind]


def shares_table(net: PedigreeNetwork, code: str) -> Table | None:
    """Expected founder shares, the largest first, with what comes from parents not known."""
    try:
        shares = net.founder_shares(code)
        unknown = net.unknown_share(code)
    except Fault:
        return None
    if list(shares) == [code]:
        return None
    rows = [(named(net.book, founder), _share(share)) for founder, share in shares.items()]
    if unknown > 1e-9:
        rows.append((tr("parents not known"), _share(unknown)))
    return table((tr("Founder"), tr("Expected share of its heredity")), rows, (1,))


def _share(share: float) -> str:
    return f"{100 * share:.4g}%"


def f_items(net: PedigreeNetwork, code: str) -> list[tuple[str, str]]:
    """F and what it means, as facts."""
    try:
        meaning = inbreeding_sentence(net.inbreeding(code))
    except Fault as fault:
        return [(tr("Inbreeding F"), tr(fault.what))]
    return [(tr("Inbreeding F"), tr("{}. {}").format(f_text(net, code), tr(meaning)))]


# The base -----------------------------------------------------------------------------------------


def base_section(net: PedigreeNetwork, code: str) -> Section | None:
    """What every number of the report was computed from."""
    book = net.book
    stated = {held["plant"]: held for held in net.base()["founders"]}
    rows = []
    for founder in founders_behind(net, code):
        held = stated[founder]
        taken = {
            1: tr("pure line: all gene pairs alike"),
            0: tr("not inbred: no gene pair alike by descent"),
        }.get(held["fixation"], tr("gene pairs alike in part"))
        how = tr("its own record says so") if held["stated"] else tr("taken by the book's setting")
        rows.append((named(book, founder), decimal_text(held["fixation"]), taken, how))
    return section(
        "base",
        [
            Text(tr(net.base_sentence())),
            table((tr("Founder"), tr("Fixation"), tr("Taken as"), tr("From")), rows, (1,)),
            Text(
                tr(
                    "F, the inbreeding coefficient, is the chance that the two alleles of a plant "
                    "at one gene came down from the same allele of a founder. Coancestry θ is the "
                    "same chance for one allele drawn from each of two plants. Founders count as "
                    "unrelated with one another."
                )
            ),
            Text(
                tr(
                    "These numbers are expectations from the recorded parents; they were not "
                    "measured, and selection can shift them. A wrong parent makes wrong numbers."
                )
            ),
        ],
    )


# Cautions -----------------------------------------------------------------------------------------


def cautions_section(net: PedigreeNetwork, code: str) -> Section | None:
    """Rights, borders and what is known to harm; local rules and licensed practice come first."""
    book = net.book
    behind = [*founders_behind(net, code), code]
    protected = [
        tr("{}: {}").format(named(book, plant), book.plants[plant].protected)
        for plant in dict.fromkeys(behind)
        if book.plants[plant].protected
    ]
    items: list[Item | None] = [
        Text(
            tr(
                "The rules of the place come first, then licensed advice and practice; nothing in "
                "this report stands in for either."
            )
        ),
        Text(
            tr(
                "Plant-variety rights: parents may be protected. Breeding with them and private "
                "use are often free, but patents and the licence on a packet may say otherwise; "
                "ask before anything is sold or passed on."
            )
        ),
    ]
    if protected:
        items.append(Text(tr("On record as protected: {}.").format("; ".join(protected))))
    items.append(
        Text(
            tr(
                "Plant health: seed, cuttings and plants that cross a border need papers, in a "
                "letter too; the plant-health service says which."
            )
        )
    )
    for said in _crop_cautions(book, behind):
        items.append(Text(said))
    return section("cautions", items)


def _crop_cautions(book: Book, codes: Iterable[str]) -> list[str]:
    found: dict[str, None] = {}
    for code in codes:
        crop = book.crop_facts(book.plants[code])
        if crop is None:
            continue
        name = tr(crop.name)
        name = name[:1].upper() + name[1:]
        for caution in crop.facts.get("cautions", ()):
            said = tr("{}: {} Source: {}.")
            found[said.format(name, tr(caution["text"]), tr(caution["source"]))] = None
    return list(found)


# Doubt --------------------------------------------------------------------------------------------


def doubt_section(net: PedigreeNetwork, plants: Sequence[str]) -> Section | None:
    """Grades, evidence, findings and open questions of the checks behind some plants."""
    book = net.book
    # A cross is shown by a plant of the line: a sib's own finding may name other parents.
    first = {net.parents(p).cross: p for p in reversed(plants) if net.parents(p).cross}
    crosses = [net.parents(p).cross for p in plants if first.get(net.parents(p).cross) == p]
    rows, silent = [], []
    grades: set[str] = set()
    for code in crosses:
        cross = book.crosses[code]
        if not cross.seed_doubt and not cross.pollen_doubt:
            silent.append(code)
            continue
        signs = cross_signs(book, net.parents(first[code]))
        rows.append((code, signs, tr(cross.seed_doubt), tr(cross.pollen_doubt)))
        grades |= {cross.seed_doubt, cross.pollen_doubt}
    evidence = [
        tr("{}, {}: {}").format(
            row.cross,
            {
                ("seed", "for"): tr("for the seed parent"),
                ("seed", "against"): tr("against the seed parent"),
                ("pollen", "for"): tr("for the pollen parent"),
                ("pollen", "against"): tr("against the pollen parent"),
            }[row.side, row.for_or_against],
            _dated(row.text, row.date),
        )
        for row in book.evidence
        if row.cross in crosses
    ]
    wanted = set(plants)
    held = book.findings()
    findings = [_finding(net, plant, held[plant]) for plant in plants if plant in held]
    asked = [
        tr(problem.message)
        for problem in net.problems()
        if counts_as_problem(problem) and wanted & set(problem.plants)
    ]
    if not rows and not evidence and not findings and not asked:
        return None
    items: list[Item | None] = [
        table((tr("Cross"), tr("Parents"), tr("Seed parent is"), tr("Pollen parent is")), rows)
    ]
    key = [doubt_words(grade) for grade in GRADES if grade in grades]
    if key:
        items.append(Text(" ".join(key), soft=True))
    if rows and silent:
        items.append(
            Text(tr("No grade is on record for: {}.").format(", ".join(silent)), soft=True)
        )
    for head, said in (
        (tr("Evidence"), evidence),
        (tr("Findings on single plants"), findings),
        (tr("Open questions of the book's checks"), asked),
    ):
        if said:
            items += [Text(head, strong=True), *(Text(one) for one in said)]
    return section("doubt", items)


def _finding(net: PedigreeNetwork, plant: str, rows: Sequence[ParentFinding]) -> str:
    givers = []
    for row in rows:
        giver = {"": tr("not known"), "self": tr("its seed parent itself")}.get(
            row.pollen_parent, named(net.book, row.pollen_parent)
        )
        odds = "" if row.odds is None else tr(" with odds {}").format(f"{row.odds:g}")
        grade = f" ({tr(row.grade)})" if row.grade else ""
        text = f" {row.text}" if row.text else ""
        givers.append(f"{giver}{odds}{grade}.{text}")
    return _dated(tr("{}: pollen parent {}").format(plant, " ".join(givers)), rows[0].date)


def _dated(text: str, date: str) -> str:
    return tr("{} ({})").format(text, date) if date else text


# Notes and photos ---------------------------------------------------------------------------------


class Notes:
    """What is written about records, sorted once so that many can be asked for."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._notes: dict[str, list[Note]] = {}
        for note in sorted(book.notes, key=lambda note: note.date):
            if note.text:
                self._notes.setdefault(note.about, []).append(note)
        self._findings = book.findings()

    def about(self, kind: str, code: str) -> list[str]:
        """The notes about one record, each with its date."""
        return [
            tr("{}: {}").format(note.date, note.text) if note.date else note.text
            for note in self._notes.get(f"{kind} {code}", ())
        ]

    def of_cross(self, cross: str) -> list[str]:
        """The cross's own note and the notes about it."""
        note = self._book.crosses[cross].note if cross in self._book.crosses else ""
        return [*([note] if note else []), *self.about("cross", cross)]

    def of_plant(self, plant: str) -> list[str]:
        """The plant's own note, the notes about it, and what a finding on it says."""
        note = self._book.plants[plant].note
        found = [row.text for row in self._findings.get(plant, ()) if row.text]
        return [*([note] if note else []), *self.about("plant", plant), *found]


def notes_section(book: Book, codes: Sequence[str]) -> Section | None:
    """Notes on plants and their crosses, of one plant without its code before each."""
    items: list[Item | None] = []
    notes = Notes(book)
    for code in codes:
        plant = book.plants[code]
        said = [*([plant.note] if plant.note else []), *notes.about("plant", code)]
        if plant.cross:
            about = tr("On its cross {}: {}")
            said += [about.format(plant.cross, text) for text in notes.of_cross(plant.cross)]
        items += [Text(text) for text in said]
    return section("notes", items)


def photos_section(book: Book, codes: Iterable[str]) -> Section | None:
    """The photos of some plants."""
    wanted = {code: at for at, code in enumerate(codes)}
    held = [photo for photo in book.photos.values() if photo.plant in wanted]
    held.sort(key=lambda photo: (wanted[photo.plant], photo.date, photo.photo))
    items: list[Item | None] = []
    for photo in held:
        parts = [named(book, photo.plant), photo.caption, photo.date]
        items.append(PhotoOf(photo.photo, ", ".join(part for part in parts if part)))
    return section("photos", items)
