"""`summary`: what a book holds, its selfings and its reciprocal pairs."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from pedigreeview.book.problems import counts_as_problem
from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.columns import indented, set_in_columns

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["file_title", "generations_count", "summary", "title"]

_MOST_LISTED = 12


def file_title(net: PedigreeNetwork) -> str:
    """The name of the book's file without its ending, or of its folder."""
    if net.book.path is None:
        return "book"
    path = net.book.path.resolve()
    if path.name == "datapackage.json":
        path = path.parent
    return (path.name if path.is_dir() else path.stem) or "book"


def title(net: PedigreeNetwork) -> str:
    """The book's name, else that of its file."""
    return net.book.settings.name or file_title(net)


def generations_count(net: PedigreeNetwork) -> int:
    """How many generations there are, that of the founders included; plants in loops left out."""
    known = [number for number in map(net.generation, net.codes) if number is not None]
    return max(known) + 1 if known else 0


def _document(net: PedigreeNetwork) -> dict[str, Any]:
    return {
        "plants": len(net.codes),
        "crosses": len(net.book.crosses),
        "founders": len(net.founders),
        "generations": generations_count(net),
        "selfings": net.selfings(),
        "reciprocal_pairs": [
            {
                "level": pair.level,
                "parents": list(pair.parents),
                "crosses": [list(side) for side in pair.crosses],
            }
            for pair in net.reciprocal_pairs()
        ],
    }


def _some(codes: list[str]) -> str:
    shown = ", ".join(codes[:_MOST_LISTED])
    more = len(codes) - _MOST_LISTED
    return f"{shown} and {more} more" if more > 0 else shown


def summary(net: PedigreeNetwork) -> Answer:
    """Counts, selfings, reciprocal pairs, and the base that the book's numbers rest on."""
    document = _document(net)
    problems = net.problems()
    grave = sum(map(counts_as_problem, problems))
    counts = [
        [name, str(document[name])] for name in ("plants", "crosses", "founders", "generations")
    ]
    counts.append(["problems", str(grave)])
    text = [title(net), "", *indented(set_in_columns(counts, right=(1,)))]
    founders = [_named(net, code) for code in net.founders]
    text += ["", f"Founders: {_some(founders) or 'none'}"]
    selfings = document["selfings"]
    text += [f"Selfings: {counted(len(selfings), 'cross', 'crosses')}"]
    if selfings:
        text += indented([_some(selfings)])
    pairs = net.reciprocal_pairs()
    text += [f"Reciprocal pairs: {len(pairs) or 'none'}"]
    rows = []
    for pair in pairs:
        a, b = pair.parents
        there, back = (", ".join(side) for side in pair.crosses)
        rows.append([f"{a} ⇄ {b}", f"by {pair.level}", f"{a} × {b}: {there}", f"{b} × {a}: {back}"])
    text += [*indented(set_in_columns(rows))]
    return Answer(text, document, problems, net.base_sentence())


def _named(net: PedigreeNetwork, code: str) -> str:
    name = net.book.plants[code].name
    return f"{name} ({code})" if name and name != code else code
