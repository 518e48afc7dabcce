"""The network for other programs: GraphML and DOT.

Plants and crosses are nodes, seed and pollen links and descent are edges, as in `net.graph`.  A
node's id is made from its code alone, so it stays the same from one writing to the next, and is
made of letters that need no escaping anywhere.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

from pedigreeview.exchange.writing import replace_file

__all__ = ["node_id", "write_dot", "write_graphml"]

# Characters that XML 1.0 cannot hold, even escaped.
_NOT_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")


def node_id(node: tuple[str, str]) -> str:
    """The id of a node: 'plant_' or 'cross_' and the code, other than ASCII letters as '_d7_'."""
    kind, code = node
    return f"{kind}_" + "".join(
        char if char.isascii() and char.isalnum() else f"_{ord(char):x}_" for char in code
    )


def _plant(net: Any, code: str) -> dict[str, Any]:
    plant = net.book.plants[code]
    found: dict[str, Any] = {
        "type": "plant",
        "code": code,
        "name": plant.name,
        "kind": net.book.kind(plant),
        "raised": net.book.raised(plant),
        "crop": net.book.crop(plant),
        "status": plant.status,
        "sown": plant.sown,
    }
    if code in net.withheld:
        found["withheld"] = net.withheld[code]
    else:
        found["inbreeding"] = float(net.inbreeding(code))
        generation = net.generation(code)
        if generation is not None:
            found["generation"] = int(generation)
    return found


def _cross(net: Any, code: str) -> dict[str, Any]:
    found: dict[str, Any] = {"type": "cross", "code": code}
    cross = net.book.crosses.get(code)
    if cross is not None:
        found.update(
            intended=cross.intended,
            drawn=cross.drawn,
            direction_known=cross.direction_known,
            made_on=cross.made_on,
            state=cross.state,
        )
    return found


def _said(held: dict[str, Any]) -> dict[str, Any]:
    """Attributes that say something, of types that every reader of GraphML knows."""
    found: dict[str, Any] = {}
    for name, said in held.items():
        if said is None or said == "":
            continue
        if isinstance(said, bool | int):
            found[name] = said
        elif isinstance(said, float):
            found[name] = float(said)
        else:
            found[name] = _NOT_XML.sub("\ufffd", str(said))
    return found


def _nodes(net: Any) -> list[tuple[tuple[str, str], dict[str, Any]]]:
    return [
        (node, _said(_plant(net, node[1]) if node[0] == "plant" else _cross(net, node[1])))
        for node in net.graph.nodes
    ]


def _edges(net: Any) -> list[tuple[tuple[str, str], tuple[str, str], dict[str, Any]]]:
    found = []
    for start, end, held in net.graph.edges(data=True):
        said = {name: held[name] for name in ("role", "odds", "grade") if name in held}
        if said.get("odds") is not None:
            said["odds"] = float(said["odds"])
        found.append((start, end, _said(said)))
    return found


def write_graphml(net: Any, path: str | Path) -> None:
    """Write the network as GraphML.

    Parameters
    ----------
    net : a PedigreeNetwork
    path : the file; what stood there is replaced only when all is written
    """
    import networkx

    graph = networkx.MultiDiGraph()
    for node, said in _nodes(net):
        graph.add_node(node_id(node), **said)
    for start, end, said in _edges(net):
        graph.add_edge(node_id(start), node_id(end), **said)
    with replace_file(path) as beside:
        networkx.write_graphml(graph, beside)


def _quoted(text: str) -> str:
    escaped = text.replace("\\", "\\\\").replace('"', '\\"')
    return '"' + re.sub(r"\r\n|\r|\n", r"\\n", escaped).replace("\0", "\ufffd") + '"'


_SIGNS = {"selfing": "⊗", "open": "○"}


def write_dot(net: Any, path: str | Path) -> None:
    """Write the network as a DOT file, to be drawn by Graphviz (see `write_graphml`)."""
    lines = ["digraph pedigree {", '  charset="UTF-8";', "  node [shape=box];"]
    for node, said in _nodes(net):
        attributes = {"type": said["type"]}
        if said["type"] == "plant":
            label = said["code"] + (f"\n{said['name']}" if said.get("name") else "")
            attributes.update(label=label, kind=said["kind"])
            for name in ("inbreeding", "generation"):
                if name in said:
                    attributes[name] = repr(said[name])
        else:
            sign = _SIGNS.get(said.get("intended", ""), "×")
            attributes.update(label=sign, tooltip=said["code"], shape="circle")
        lines.append(f"  {node_id(node)} [{_attributes(attributes)}];")
    for start, end, said in _edges(net):
        attributes = {name: str(held) for name, held in said.items()}
        if said.get("role") == "pollen":
            attributes["style"] = "dotted"
        lines.append(f"  {node_id(start)} -> {node_id(end)} [{_attributes(attributes)}];")
    lines.append("}")
    with replace_file(path) as beside:
        beside.write_text("\n".join(lines) + "\n", encoding="utf-8", newline="\n")


def _attributes(held: dict[str, str]) -> str:
    return ", ".join(f"{name}={_quoted(text)}" for name, text in held.items())
