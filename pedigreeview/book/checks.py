"""What in the records cannot be right, found from the records alone.

A check speaks only when no reading of a date or a blank makes it right: a date that stops at the
year stands for all its days, and what is not known is never held against anyone.  Problems that
the person has accepted (`Book.accepted_checks`) are left out.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from pedigreeview.book.book import Book
from pedigreeview.book.counts import count_problems
from pedigreeview.book.date_order import bad_date_order, used_after_life
from pedigreeview.book.label_checks import near_duplicate_key, near_duplicate_name, tag_used_twice
from pedigreeview.book.look_alikes import near_duplicate_code, unknown_written_as_code
from pedigreeview.book.parent_checks import (
    genotype,
    not_in_flower,
    same_plant_twice,
    used_after_culling,
)
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import SELF, Cross, Plant

__all__ = ["KINDS", "acceptance_keys", "check_records", "without_accepted"]

KINDS: dict[str, str] = {
    "own_ancestor": "A plant stands among its own ancestors: a pedigree loop.",
    "ploidy_differs": "The parents of a cross have different numbers of chromosome sets.",
    "ploidy_odd": "A parent has an odd number of chromosome sets.",
    "fixation_too_low": "A line states a fixation that is lower than its parents allow.",
    "bad_date_order": "Something is dated before what must have come first.",
    "near_duplicate_code": "Two codes differ only by case, blanks, dashes or look-alike signs.",
    "near_duplicate_key": "Two crosses, packets or other records have codes that read as one.",
    "near_duplicate_name": "Two plants have names that differ only by case, blanks or dashes.",
    "unknown_written_as_code": "A word for 'not known' stands where a parent's code should.",
    "crop_differs": "The parents of a cross are of different crops.",
    "used_after_life": "An annual plant is a parent in a season after its last.",
    "culled_before_use": "A planned cross has a parent that is culled or lost.",
    "used_after_culling": "A cross was made with a plant after it was culled or lost.",
    "not_in_flower": "A cross was made when its seed parent was not in flower.",
    "same_plant_twice": "Both parents of a cross are one plant, or cuttings of one.",
    "tag_used_twice": "One flower tag stands on pollinations of different crosses in one year.",
    "more_fruits_than_flowers": "More fruits were set or harvested than flowers were pollinated.",
    "more_up_than_sown": "More seedlings came up than were sown, or more were kept than came up.",
    "more_left_than_seeds": "A packet has more seeds left than it held.",
    "more_sown_than_held": "More seeds were sown from a packet than it held.",
    "pollen_of_other_plant": "A pollination used pollen of a plant that is no parent of its cross.",
    "unknown_pollen_of_selfer": "Open-pollinated seed of a crop without an outcrossing rate.",
    "unlinked_plant": "A plant without parents is not the parent of any other.",
}
"""Every kind of problem with one sentence; the first four are found by the network."""


def acceptance_keys(problem: Problem) -> str:
    """What stands under `keys` of an accepted check for this problem."""
    return "; ".join(dict.fromkeys([*problem.plants, *(key for _, key in problem.about)]))


def _keys(text: str) -> frozenset[str]:
    return frozenset(part.strip() for part in text.split(";") if part.strip())


def without_accepted(book: Book, problems: Iterable[Problem]) -> list[Problem]:
    """The problems that the person has not accepted; the order of the keys does not matter.

    Keys that name the plants alone accept everything of that kind about exactly these plants.
    """
    accepted = {(check.kind, _keys(check.keys)) for check in book.accepted_checks}
    return [
        problem
        for problem in problems
        if (problem.kind, _keys(acceptance_keys(problem))) not in accepted
        and (not problem.plants or (problem.kind, frozenset(problem.plants)) not in accepted)
    ]


def check_records(book: Book) -> list[Problem]:
    """All problems that the records alone can show; errors first, else in the order of KINDS."""
    found = [
        *bad_date_order(book),
        *near_duplicate_code(book),
        *near_duplicate_key(book),
        *near_duplicate_name(book),
        *unknown_written_as_code(book),
        *_crop_differs(book),
        *used_after_life(book),
        *_culled_before_use(book),
        *used_after_culling(book),
        *not_in_flower(book),
        *same_plant_twice(book),
        *tag_used_twice(book),
        *count_problems(book),
        *_pollen_of_other_plant(book),
        *_unknown_pollen_of_selfer(book),
        *_unlinked_plant(book),
    ]
    order = {"error": 0, "warning": 1, "note": 2}
    return sorted(without_accepted(book, found), key=lambda problem: order[problem.severity])


def _crop_differs(book: Book) -> Iterator[Problem]:
    candidates = book.candidates()
    for cross in book.crosses.values():
        seed = book.plants.get(cross.seed_parent)
        if seed is None:
            continue
        others = [cross.pollen_parent, *(c.candidate for c in candidates.get(cross.cross, ()))]
        for code in others:
            pollen = book.plants.get(code)
            if pollen is not None and _crop(book, seed) and _crop(book, pollen):
                if _crop(book, seed) == _crop(book, pollen):
                    continue
                yield Problem(
                    "crop_differs",
                    "warning",
                    (seed.plant, pollen.plant),
                    f"The cross {cross.cross} is of {seed.plant} ({book.crop(seed)}) and "
                    f"{pollen.plant} ({book.crop(pollen)}), which are different crops.",
                    "Correct the crop of one of them or the parents of the cross; accept it if "
                    "the crops do cross.",
                    (("crosses", cross.cross),),
                )


def _crop(book: Book, plant: Plant) -> str:
    facts = book.crop_facts(plant)
    return (facts.name if facts is not None else book.crop(plant).strip()).casefold()


def _culled_before_use(book: Book) -> Iterator[Problem]:
    worked = {pollination.cross for pollination in book.pollinations.values()}
    stored = {code.strip() for lot in book.pollen_lots.values() for code in lot.plant.split(";")}
    for cross in book.crosses.values():
        if cross.state != "planned" or cross.cross in worked:
            continue
        for code in dict.fromkeys((cross.seed_parent, cross.pollen_parent)):
            plant = book.plants.get(code)
            if plant is None or plant.status not in ("culled", "lost") or book.is_pool(plant):
                continue
            # Stored pollen outlives its plant.
            if code != cross.seed_parent and code in stored:
                continue
            yield Problem(
                "culled_before_use",
                "warning",
                (code,),
                f"The cross {cross.cross} is planned with {code}, which is {plant.status}.",
                "Choose another parent, skip the cross, or correct the status.",
                (("crosses", cross.cross),),
            )


def _pollen_of_other_plant(book: Book) -> Iterator[Problem]:
    candidates = book.candidates()
    for pollination in book.pollinations.values():
        lot = book.pollen_lots.get(pollination.pollen_lot)
        cross = book.crosses.get(pollination.cross)
        if lot is None or cross is None or not lot.plant:
            continue
        named = {cross.pollen_parent, *(c.candidate for c in candidates.get(cross.cross, ()))}
        if SELF in named:
            named.add(cross.seed_parent)
        parents = {genotype(book, code) for code in named if code in book.plants}
        given = [code.strip() for code in lot.plant.split(";") if code.strip()]
        if not parents or any(_same_or_of(book, code, parents) for code in given):
            continue
        yield Problem(
            "pollen_of_other_plant",
            "warning",
            tuple(given),
            f"The pollination {pollination.pollination} of the cross {cross.cross} used the pollen "
            f"lot {lot.pollen_lot} of {', '.join(given)}, not of a pollen parent of the cross.",
            "Correct the pollen lot or the pollen parent of the cross.",
            (("pollinations", pollination.pollination), ("crosses", cross.cross)),
        )


def _same_or_of(book: Book, code: str, parents: set[str]) -> bool:
    """Whether a plant has the genotype of a parent, or was grown from the pool that is one."""
    plant = book.plants.get(code)
    if genotype(book, code) in parents or plant is None:
        return True
    return plant.source in parents


def _unknown_pollen_of_selfer(book: Book) -> Iterator[Problem]:
    candidates, findings = book.candidates(), book.findings()
    progeny: dict[str, list[str]] = {}
    for plant in book.plants.values():
        if plant.cross and plant.plant not in findings:
            progeny.setdefault(plant.cross, []).append(plant.plant)
    silent = [
        cross
        for cross in book.crosses.values()
        if cross.cross in progeny and _is_silent(book, cross, cross.cross in candidates)
    ]
    if not silent:
        return
    plants = [code for cross in silent for code in progeny[cross.cross]]
    names = ", ".join(cross.cross for cross in silent)
    one = len(silent) == 1
    yield Problem(
        "unknown_pollen_of_selfer",
        "warning",
        tuple(plants),
        f"The open-pollinated {'cross' if one else 'crosses'} {names} gave {', '.join(plants)}, "
        "and without a known crop the pollen parent counts as unknown, which is wrong for a crop "
        "that selfs.",
        "Name the crop: in a table add a column 'crop', for example 'pepper'; in a folder set the "
        "crop or the outcrossing rate of the book.",
    )


def _is_silent(book: Book, cross: Cross, has_candidates: bool) -> bool:
    """Whether an open-pollinated cross is of a crop of which nothing is known."""
    if cross.intended != "open" or cross.pollen_parent or has_candidates:
        return False
    seed = book.plants.get(cross.seed_parent)
    if seed is None:
        return False
    return book.crop_facts(seed) is None and book.outcrossing(seed) is None


def _unlinked_plant(book: Book) -> Iterator[Problem]:
    if not book.crosses:
        return
    used = {plant.source for plant in book.plants.values()}
    for cross in book.crosses.values():
        used.update((cross.seed_parent, cross.pollen_parent))
    used.update(candidate.candidate for candidate in book.pollen_candidates)
    used.update(finding.pollen_parent for finding in book.parent_findings)
    alone = [
        plant.plant
        for plant in book.plants.values()
        if not plant.cross and not plant.source and plant.plant not in used
    ]
    if alone:
        one = len(alone) == 1
        yield Problem(
            "unlinked_plant",
            "note",
            tuple(alone),
            f"{', '.join(alone)} {'has' if one else 'have'} no parents and no progeny.",
            "Name the parents if they are known; a plant that waits to be used can stay.",
        )
