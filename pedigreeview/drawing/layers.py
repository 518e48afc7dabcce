"""A view as layers of items joined by nets: what the ordering and the routing work on.  No Qt.

Layers alternate: tags of row r lie in layer 2r + 1, the knots that hang below them in layer 2r + 2.
A net is all lines of one kind from one place: the seed line of one parent to all its knots, its
pollen line, one uncertain candidate, the progeny of one knot.  Where a net passes a layer without
stopping it has an item of its own there, so that every piece joins two neighbouring layers.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass, field
from typing import Any

from pedigreeview.drawing.blocks import Block, Knot, Link, Role, View
from pedigreeview.drawing.theme import Sizes

__all__ = ["Item", "KnotPlace", "Layers", "Net", "Port", "layers"]


@dataclass(slots=True)
class KnotPlace:
    """Where a knot lies within its block, from the block's middle."""

    knot: Knot
    middle: float
    width: float


@dataclass(slots=True)
class Port:
    """One end of a net at an item: how far from the item's middle, and at which knot."""

    offset: float = 0.0
    knot: str = ""


@dataclass(slots=True)
class Item:
    """A block, or the place where a net passes through a layer."""

    key: str
    layer: int
    width: float
    height: float
    block: Block | None = None
    x: float = 0.0
    knots: list[KnotPlace] = field(default_factory=list)
    above: dict[str, list[Port]] = field(default_factory=dict)
    """Ports on the upper side by net; on the lower side in `below`.  Only a frame has several."""
    below: dict[str, list[Port]] = field(default_factory=dict)


@dataclass(slots=True)
class Net:
    """Lines of one kind from one place, as pieces between neighbouring layers."""

    key: str
    role: Role
    start: str
    """Item at the upper end."""
    odds: float = 1.0
    sure: bool = True
    back: bool = False
    pieces: list[tuple[str, str]] = field(default_factory=list)
    ends: list[tuple[str, Link]] = field(default_factory=list)
    """The items where the net stops, with the link that each is."""

    def add(self, piece: tuple[str, str]) -> None:
        """Add a piece that another end of the net may have added before."""
        if piece not in self.pieces:
            self.pieces.append(piece)


@dataclass(slots=True)
class Layers:
    """Everything that gets a place."""

    items: dict[str, Item]
    nets: dict[str, Net]
    rows: list[list[str]]
    """Keys of the items of each layer, left to right."""
    held: dict[str, Any] = field(default_factory=dict)
    """What was looked up once, for it follows from items and nets alone."""

    def back_column(self, net: Net) -> list[Item]:
        """The places that a line back to an ancestor passes, top to bottom."""
        _, link = net.ends[0]
        layers = range(self.items[link.below].layer, self.items[link.above].layer + 1)
        return [self.items[f"{net.key} @{layer}"] for layer in layers]

    def pieces(self) -> list[tuple[str, str, str]]:
        """All pieces as (net, upper item, lower item)."""
        return [(net.key, a, b) for net in self.nets.values() for a, b in net.pieces]


def layers(view: View, sizes: Sizes, *, sideways: bool = False) -> Layers:
    """Items and nets of a view, each layer in the order of the view.

    sideways : generations run left to right, so that a tag takes its height along the layer
    """
    width = sizes.tag_width(view.blocks)
    items: dict[str, Item] = {}
    for block in view.blocks:
        item = _item(block, sizes, width, sideways)
        items[item.key] = item
    nets: dict[str, Net] = {}
    rows: list[list[str]] = [[] for _ in range(2 * len(view.rows) + 2)]
    for item in items.values():
        rows[item.layer].append(item.key)
    built = Layers(items, nets, rows)
    for link in view.links:
        _run(built, link, sizes)
    return built


def _item(block: Block, sizes: Sizes, width: float, sideways: bool) -> Item:
    if block.sort in ("tag", "pack", "chain"):
        across, along = (sizes.tag_height, width) if sideways else (width, sizes.tag_height)
        return Item(block.key, 2 * block.row + 1, across, along, block)
    places: list[KnotPlace] = []
    at = 0.0
    for number, knot in enumerate(block.knots):
        own = sizes.knot_span(knot) if not sideways else sizes.knot_side(knot)
        if number:
            at += sizes.pair_gap if number == block.turn else sizes.grid * 2
        places.append(KnotPlace(knot, at + own / 2, own))
        at += own
    for place in places:
        place.middle -= at / 2
    frame = 2 * sizes.frame_pad if block.sort == "pair" else 0.0
    height = sizes.knot_height
    if sideways:
        height = max(sizes.knot_span(knot) for knot in block.knots)
    item = Item(block.key, 2 * block.row + 2, at + frame, height + frame, block)
    item.knots = places
    return item


def _run(built: Layers, link: Link, sizes: Sizes) -> None:
    """Lead one link through the layers, sharing what its net has already."""
    above, below = built.items[link.above], built.items[link.below]
    if link.role == "progeny":
        name = f"progeny {link.knot}"
    elif link.back:
        name = f"back {link.role} {link.above} {link.knot}"
    elif not link.sure:
        name = f"{link.role} {link.above} {link.knot}"
    else:
        name = f"{link.role} {link.above}"
    net = built.nets.get(name)
    if net is None:
        net = Net(name, link.role, above.key, link.odds, link.sure, link.back)
        built.nets[name] = net
    if link.back:
        _run_back(built, net, link, above, below, sizes)
        return
    upper = above
    for layer in range(above.layer + 1, below.layer):
        key = f"{name} @{layer}"
        if key not in built.items:
            built.items[key] = Item(key, layer, sizes.grid, 0.0)
            built.rows[layer].append(key)
        _join(net, upper, built.items[key])
        upper = built.items[key]
    _join(net, upper, below, link)
    net.ends.append((below.key, link))


def _run_back(built: Layers, net: Net, link: Link, parent: Item, knot: Item, sizes: Sizes) -> None:
    """A line from a parent up to a knot that stands above it: out below, up beside, in above.

    It has a place in every layer that it passes, those of its two ends too.
    """
    column = []
    for layer in range(knot.layer, parent.layer + 1):
        item = Item(f"{net.key} @{layer}", layer, sizes.grid, 0.0)
        built.items[item.key] = item
        built.rows[layer].append(item.key)
        column.append(item)
    for upper, lower in itertools.pairwise(column):
        _join(net, upper, lower)
    column[0].above.setdefault(net.key, []).append(Port())
    column[-1].below.setdefault(net.key, []).append(Port())
    knot.above[net.key] = [Port(knot=link.knot)]
    parent.below.setdefault(net.key, [Port()])
    net.ends.append((knot.key, link))


def _join(net: Net, upper: Item, lower: Item, link: Link | None = None) -> None:
    net.add((upper.key, lower.key))
    for item, side in ((upper, upper.below), (lower, lower.above)):
        ports = side.setdefault(net.key, [])
        knot = ""
        if item.knots:
            knot = link.knot if link is not None else net.key.removeprefix("progeny ")
        if all(port.knot != knot for port in ports):
            ports.append(Port(knot=knot))
