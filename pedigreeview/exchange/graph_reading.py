"""Graph files of this program, read again: GraphML, GEXF and node-link JSON.

A graph of another program does not say what its edges mean, so only our own nodes are read, each of
which carries its record.  Edges that were changed in between would contradict the records, and are
named instead of being believed.  XML that declares a document type or entities is refused before it
is parsed.
"""

from __future__ import annotations

import io
import warnings
from collections import Counter
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.archive_guard import check_xml
from pedigreeview.exchange.checked_records import Gathering, settings_from
from pedigreeview.exchange.graph_files import graph_edges, node_id
from pedigreeview.exchange.json_files import read_json
from pedigreeview.exchange.text_files import decode, read_bytes
from pedigreeview.exchange.ticking import Tick, no_tick

__all__ = ["is_node_link", "parse", "read"]

_LARGEST = 60_000_000
_Nodes = list[tuple[str, dict[str, Any]]]
_Edges = list[tuple[str, str, str]]


def is_node_link(document: Any) -> bool:
    """Whether a JSON document is a node-link graph."""
    return (
        isinstance(document, dict)
        and isinstance(document.get("nodes"), list)
        and ("links" in document or "edges" in document)
    )


def read(path: str | Path) -> Book:
    """Read a graph file of this program; its ending says which kind it is.

    Raises
    ------
    FileFaults : its records break rules of the book
    Fault : it cannot be read, or was not written by this program
    """
    path = Path(path)
    book = parse(read_bytes(path), path.suffix.lower(), str(path))
    book.path = path
    return book


def parse(data: bytes, suffix: str, name: str, tick: Tick = no_tick) -> Book:
    """Read a graph from bytes; `suffix` is '.graphml', '.gexf' or '.json' (see `read`)."""
    if len(data) > _LARGEST:
        raise Fault(
            f"The graph is larger than {_LARGEST // 1_000_000} MB.",
            Place(file=name),
            "Write the book as a folder or as its own file instead.",
        )
    if suffix == ".json":
        text, _ = decode(data, name)
        settings, nodes, edges = _node_link(read_json(text, name), name)
    else:
        settings, nodes, edges = _xml(data, suffix, name)
    return _book(settings, nodes, edges, name, tick)


def _foreign(name: str) -> Fault:
    return Fault(
        "The graph was not written by this program, so its nodes say nothing of plants.",
        Place(file=name),
        "Make a table of it with a row for each plant and import that.",
    )


def _node_link(document: Any, name: str) -> tuple[str, _Nodes, _Edges]:
    if not is_node_link(document):
        raise _foreign(name)
    nodes: _Nodes = []
    for item in document["nodes"]:
        if not isinstance(item, dict) or not isinstance(item.get("id"), str):
            raise _foreign(name)
        nodes.append((item["id"], item))
    listed = document.get("links", document.get("edges"))
    edges: _Edges = []
    for item in listed if isinstance(listed, list) else []:
        if not isinstance(item, dict):
            raise _foreign(name)
        edges.append((str(item.get("source")), str(item.get("target")), str(item.get("role", ""))))
    held = document.get("graph")
    settings = held.get("settings", "") if isinstance(held, dict) else ""
    return str(settings), nodes, edges


def _xml(data: bytes, suffix: str, name: str) -> tuple[str, _Nodes, _Edges]:
    check_xml(data, name)
    import networkx

    try:
        with warnings.catch_warnings():
            # What the reader only warns of is looked at below, record by record.
            warnings.simplefilter("ignore")
            if suffix == ".gexf":
                graph = networkx.read_gexf(io.BytesIO(data))
            else:
                graph = networkx.parse_graphml(data.decode("utf-8-sig"), force_multigraph=True)
    except Exception as error:
        # The reader of NetworkX raises whatever comes of a file that it did not expect.
        raise Fault(
            f"The graph cannot be read: {type(error).__name__}: {error}.",
            Place(file=name),
            "Write it anew with the program that made it.",
        ) from None
    nodes: _Nodes = [(str(node), held) for node, held in graph.nodes(data=True)]
    settings = str(graph.graph.get("settings", ""))
    if suffix == ".gexf":
        settings = next(
            (str(held.get("record", "")) for node, held in nodes if node == "settings"), settings
        )
        nodes = [(node, held) for node, held in nodes if node != "settings"]
    edges = [(str(a), str(b), str(held.get("role", ""))) for a, b, held in graph.edges(data=True)]
    return settings, nodes, edges


def _object(text: Any, name: str) -> dict[str, Any]:
    if not isinstance(text, str):
        raise _foreign(name)
    found = read_json(text, name)
    if not isinstance(found, dict):
        raise _foreign(name)
    return found


def _texts(held: Any) -> tuple[dict[str, Any], dict[str, str]]:
    if not isinstance(held, dict):
        return {}, {}
    extra = held.get("extra")
    cells = {str(key): text for key, text in held.items() if isinstance(text, str)}
    return cells, {str(k): str(v) for k, v in extra.items()} if isinstance(extra, dict) else {}


def _book(settings: str, nodes: _Nodes, edges: _Edges, name: str, tick: Tick) -> Book:
    if not any("record" in held for _, held in nodes) and nodes:
        raise _foreign(name)
    gathering = Gathering(name, tick=tick)
    later: list[tuple[str, Any]] = []
    for node, held in nodes:
        kind = held.get("type")
        if "record" not in held:
            # A cross that the graph draws for a finding of one plant has no record of its own.
            if kind == "cross":
                continue
            raise _foreign(name)
        said = _object(held["record"], name)
        table = {"plant": "plants", "cross": "crosses"}.get(str(kind))
        if table is None:
            raise _foreign(name)
        cells, extra = _texts(said)
        record = gathering.add(table, cells, extra)
        if record is not None and node_id((str(kind), str(cells.get(str(kind))))) != node:
            gathering.fault(
                f"The node {node!r} has the record of another.", "Write the graph anew."
            )
        for more in ("pollen_candidates", "parent_findings"):
            items = said.get(more)
            later += [(more, item) for item in (items if isinstance(items, list) else [])]
    for table, item in later:
        cells, extra = _texts(item)
        gathering.add(table, cells, extra)
    if settings:
        gathering.book.settings = settings_from(_object(settings, name))
    book = gathering.finish()
    _check_edges(book, edges, name)
    return book


def _check_edges(book: Book, edges: Iterable[tuple[str, str, str]], name: str) -> None:
    from pedigreeview.network import PedigreeNetwork

    wanted = Counter(graph_edges(PedigreeNetwork.from_records(book)))
    found = Counter(edges)
    if wanted == found:
        return
    odd = next(iter((found - wanted) or (wanted - found)))
    raise Fault(
        f"The edges of the graph do not fit its records, such as that from {odd[0]!r} to "
        f"{odd[1]!r}.",
        Place(file=name),
        "They were changed in another program; change the records in the book instead.",
    )
