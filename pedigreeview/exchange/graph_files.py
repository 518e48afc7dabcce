"""The network for other programs: GraphML, GEXF, node-link JSON and DOT.

Plants and crosses are nodes, seed and pollen links and descent are edges, as in `net.graph`.  A
node's id is made from its code alone, so it stays the same from one writing to the next, and is
made of letters that need no escaping anywhere.  Beside what other programs may show, every node
carries its whole record (`record`, as JSON), so that `graph_reading` can read the file again.
"""

from __future__ import annotations

import json
import re
from dataclasses import asdict
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.records import Record
from pedigreeview.exchange.checked_records import record_values
from pedigreeview.exchange.json_files import write_json
from pedigreeview.exchange.left_out import tables_left_out
from pedigreeview.exchange.writing import replace_file

__all__ = [
    "graph_edges",
    "lost",
    "node_id",
    "write_dot",
    "write_gexf",
    "write_graphml",
    "write_node_link",
]

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


def _cells(record: Record) -> dict[str, Any]:
    extra = getattr(record, "extra", {})
    return {**record_values(record), **({"extra": dict(extra)} if extra else {})}


def _records(book: Book) -> dict[tuple[str, str], str]:
    """The record of every node as JSON, with what is said of its pollen parents."""
    held: dict[tuple[str, str], dict[str, Any]] = {}
    for plant in book.plants.values():
        held["plant", plant.plant] = _cells(plant)
    for cross in book.crosses.values():
        held["cross", cross.cross] = _cells(cross)
    for finding in book.parent_findings:
        held["plant", finding.plant].setdefault("parent_findings", []).append(_cells(finding))
    for item in book.pollen_candidates:
        held["cross", item.cross].setdefault("pollen_candidates", []).append(_cells(item))
    return {node: json.dumps(cells, ensure_ascii=False) for node, cells in held.items()}


def _settings(book: Book) -> str:
    return json.dumps(
        {name: said for name, said in asdict(book.settings).items() if said not in (None, "", {})},
        ensure_ascii=False,
    )


_CARRIED = ("plants", "crosses", "pollen_candidates", "parent_findings")


def lost(book: Book) -> list[str]:
    """What of a book a graph file that can be read again does not carry, one sentence each."""
    return tables_left_out(book, _CARRIED)


def graph_edges(net: Any) -> list[tuple[str, str, str]]:
    """Start, end and role of every edge, as ids of nodes."""
    return sorted(
        (node_id(start), node_id(end), str(held.get("role", "")))
        for start, end, held in net.graph.edges(data=True)
    )


def _graph(net: Any) -> Any:
    """The network as a graph of plain values, to be written by NetworkX."""
    import networkx

    graph = networkx.MultiDiGraph(settings=_NOT_XML.sub("\ufffd", _settings(net.book)))
    records = _records(net.book)
    for node, said in _nodes(net):
        if node in records:
            said["record"] = _NOT_XML.sub("\ufffd", records[node])
        graph.add_node(node_id(node), label=said["code"], **said)
    for start, end, said in _edges(net):
        graph.add_edge(node_id(start), node_id(end), **said)
    return graph


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

    with replace_file(path) as beside:
        networkx.write_graphml(_graph(net), beside)


def write_gexf(net: Any, path: str | Path) -> None:
    """Write the network as GEXF 1.2 (see `write_graphml`)."""
    import networkx

    graph = _graph(net)
    # GEXF has no attributes of the graph; the settings stand with one node of their own kind.
    settings = graph.graph.pop("settings")
    graph.add_node("settings", label="settings", type="settings", record=settings)
    text = "\n".join(networkx.generate_gexf(graph, version="1.2draft"))
    # The day of writing would make every file differ from the one before.
    text = re.sub(r' lastmodifieddate="[^"]*"', "", text, count=1)
    with replace_file(path) as beside:
        beside.write_text(
            '<?xml version="1.0" encoding="UTF-8"?>\n' + text + "\n", encoding="utf-8", newline="\n"
        )


def node_link_text(net: Any) -> str:
    """The network as node-link JSON, in the form that NetworkX reads."""
    graph = _graph(net)
    return write_json(
        {
            "directed": True,
            "multigraph": True,
            "graph": dict(graph.graph),
            "nodes": [{"id": node, **held} for node, held in graph.nodes(data=True)],
            "links": [
                {"source": start, "target": end, "key": key, **held}
                for start, end, key, held in graph.edges(keys=True, data=True)
            ],
        }
    )


def write_node_link(net: Any, path: str | Path) -> None:
    """Write the network as node-link JSON (see `write_graphml`)."""
    text = node_link_text(net)
    with replace_file(path) as beside:
        beside.write_text(text, encoding="utf-8", newline="\n")


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
