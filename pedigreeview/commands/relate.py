"""`relate`: how two plants are related, what their progeny would be, and through whom."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.coefficients import exact_text
from pedigreeview.commands.columns import indented, set_in_columns
from pedigreeview.commands.plants_named import plants_named
from pedigreeview.network.text import count_text

if TYPE_CHECKING:
    from pedigreeview.network import CommonAncestor, PedigreeNetwork

__all__ = ["relate"]

_PATHS_SHOWN = 8


def relate(net: PedigreeNetwork, a: str, b: str) -> Answer:
    """Coancestry of a and b, split over their common ancestors."""
    named = plants_named(net, [a, b])
    a, b = named[0], named[-1]
    document: dict[str, Any] = {
        "a": a,
        "b": b,
        "coancestry": None,
        "coancestry_exact": None,
        "numerator_relationship": None,
        "relationship": None,
        "progeny_inbreeding": None,
        "same_cytoplasm": net.same_cytoplasm(a, b),
        "common_ancestors": None,
    }
    kind = net.withheld.get(a) or net.withheld.get(b)
    if kind is not None:
        document["withheld"] = kind
        text = [_heading(net, a, b), "", f"Withheld because of {kind}; see check."]
        return Answer(text, document, net.problems(), net.base_sentence())
    ancestors = net.common_ancestors(a, b)
    document |= {
        "coancestry": net.coancestry(a, b),
        "coancestry_exact": exact_text(net.coancestry_exact(a, b)),
        "numerator_relationship": net.numerator_relationship(a, b),
        "relationship": net.relationship(a, b),
        "progeny_inbreeding": net.progeny_inbreeding(a, b),
        "common_ancestors": [_ancestor(ancestor) for ancestor in ancestors],
    }
    text = _text(net, document, ancestors)
    return Answer(text, document, net.problems(), net.base_sentence())


def _ancestor(ancestor: CommonAncestor) -> dict[str, Any]:
    return {
        "plant": ancestor.plant,
        "contribution": ancestor.contribution,
        "contribution_exact": exact_text(ancestor.contribution_exact),
        "paths": [
            {
                "through": list(path.through),
                "links": path.links,
                "weight_exact": exact_text(path.weight_exact),
            }
            for path in ancestor.paths
        ],
    }


def _heading(net: PedigreeNetwork, a: str, b: str) -> str:
    if a == b:
        many = net.book.is_pool(net.book.plants[a])
        return f"{a}, two members of it" if many else f"{a} and itself"
    return f"{a} and {b}"


def _text(
    net: PedigreeNetwork, found: dict[str, Any], ancestors: list[CommonAncestor]
) -> list[str]:
    from pedigreeview.network.text import decimal_text, fraction_text

    a, b = found["a"], found["b"]

    def decimal(name: str) -> str:
        return "none can be given" if found[name] is None else decimal_text(found[name])

    cytoplasm = {True: "the same", False: "different", None: "not known"}[found["same_cytoplasm"]]
    lines_end = f"{net.cytoplasm(a) or 'unknown'}, {net.cytoplasm(b) or 'unknown'}"
    theta = fraction_text(net.coancestry_exact(a, b), found["coancestry"])
    progeny = "F if selfed" if a == b else "F of their progeny"
    rows = [
        ["coancestry", theta],
        ["relationship", decimal("relationship")],
        ["numerator relationship", decimal("numerator_relationship")],
        [progeny, decimal("progeny_inbreeding")],
        ["cytoplasm", f"{cytoplasm} ({lines_end})"],
    ]
    text = [_heading(net, a, b), net.relationship_words(a, b), ""]
    text += indented(set_in_columns(rows))
    if not ancestors:
        return [*text, "", "No common ancestors in this book."]
    text += ["", "Common ancestors and what each brings to the coancestry:"]
    for ancestor in ancestors:
        brings = fraction_text(ancestor.contribution_exact, ancestor.contribution)
        paths = len(ancestor.paths) + ancestor.paths_left_out
        noun = "path" if paths == 1 else "paths"
        text += indented([f"{ancestor.plant}: {brings}, by {count_text(paths)} {noun}"])
        shown = [
            [" – ".join(path.through), counted(path.links, "link"), _weight(path.weight_exact)]
            for path in ancestor.paths[:_PATHS_SHOWN]
        ]
        text += indented(set_in_columns(shown), 6)
        if paths > _PATHS_SHOWN:
            text += indented([f"and {count_text(paths - _PATHS_SHOWN)} more"], 6)
    return text


def _weight(exact: Any) -> str:
    return f"weight {exact}" if exact is not None else ""
