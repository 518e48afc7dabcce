"""Lines: every net bent on tracks of its own in every gap, and the heights that this takes."""

from __future__ import annotations

from dataclasses import dataclass

from pedigreeview.drawing.blocks import Link
from pedigreeview.drawing.layers import Item, Layers, Net, Port
from pedigreeview.drawing.theme import Sizes
from pedigreeview.drawing.tracks import Bar, assign_tracks

__all__ = ["RoutedNet", "gap_bars", "route"]

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class RoutedNet:
    """A net with the way of each of its links, from its upper end down."""

    net: Net
    routes: tuple[tuple[Link, tuple[Point, ...]], ...]


def route(built: Layers, sizes: Sizes) -> tuple[list[RoutedNet], list[tuple[float, float]]]:
    """Ways of all nets, and upper and lower edge of each layer."""
    bars: dict[int, dict[str, Bar]] = {}
    counts: dict[int, int] = {}
    for layer in range(-1, len(built.rows) - 1):
        bars[layer], counts[layer] = gap_bars(built, layer, sizes)
    heights = _heights(built, counts, sizes)
    routed = []
    for net in built.nets.values():
        ways = tuple(
            (link, _way(built, net, end, link, bars, heights, sizes)) for end, link in net.ends
        )
        routed.append(RoutedNet(net, ways))
    return routed, heights


def gap_bars(built: Layers, layer: int, sizes: Sizes) -> tuple[dict[str, Bar], int]:
    """The bars of the gap below a layer, one a net, on their tracks; and how many tracks."""
    found: dict[str, Bar] = {}
    for key in built.rows[layer] if layer >= 0 else ():
        item = built.items[key]
        for net, ports in item.below.items():
            bar = found.setdefault(net, Bar(net, [], []))
            bar.tops += [item.x + port.offset for port in ports]
    for key in built.rows[layer + 1]:
        item = built.items[key]
        for net, ports in item.above.items():
            bar = found.setdefault(net, Bar(net, [], []))
            bar.bottoms += [item.x + port.offset for port in ports]
    count = assign_tracks(list(found.values()), 4 * sizes.grid)
    return found, count


def _heights(built: Layers, counts: dict[int, int], sizes: Sizes) -> list[tuple[float, float]]:
    heights: list[tuple[float, float]] = []
    noted = {
        built.items[end].layer
        for net in built.nets.values()
        for end, link in net.ends
        if link.selfings
    }
    y = 0.0 if not counts[-1] else _gap(built, -1, counts[-1], sizes, noted)
    for layer, row in enumerate(built.rows):
        items = [built.items[key] for key in row]
        high = max((item.height for item in items), default=0.0)
        high = -(-high // (2 * sizes.grid)) * 2 * sizes.grid
        heights.append((y, y + high))
        y += high
        if layer == len(built.rows) - 1:
            break
        y += _gap(built, layer, counts.get(layer, 0), sizes, noted)
    return heights


def _gap(built: Layers, layer: int, tracks: int, sizes: Sizes, noted: set[int]) -> float:
    """Room between two layers: the edge of the band, the tracks, signs and notes at the ends.

    noted : layers in which lines end that say how many selfings went unrecorded
    """
    if layer < 0:
        return 2 * sizes.grid + tracks * sizes.track + sizes.note_room
    here = any(built.items[key].block is not None for key in built.rows[layer])
    following = any(built.items[key].block is not None for key in built.rows[layer + 1])
    if layer % 2 == 1:
        if not built.rows[layer + 1]:
            return sizes.gap_pad + tracks * sizes.track
        below = sizes.note_room if following else 0.0
        return sizes.gap_pad + tracks * sizes.track + below
    if not built.rows[layer + 1] or (not built.rows[layer] and layer == 0):
        return 0.0
    above = 2 * sizes.grid if here else sizes.gap_pad
    below = sizes.band_pad + (sizes.grid if layer + 1 in noted else 0.0)
    return above + tracks * sizes.track + below


def _edge(item: Item, heights: list[tuple[float, float]], sizes: Sizes, *, lower: bool) -> float:
    """Where a line leaves or reaches an item; in a frame that is at the knot inside."""
    top, bottom = heights[item.layer]
    if item.block is None:
        return bottom if lower else top
    middle = (top + bottom) / 2
    half = item.height / 2
    if item.block.sort == "pair":
        half -= sizes.frame_pad
    return middle + half if lower else middle - half


def _way(
    built: Layers,
    net: Net,
    end: str,
    link: Link,
    bars: dict[int, dict[str, Bar]],
    heights: list[tuple[float, float]],
    sizes: Sizes,
) -> tuple[Point, ...]:
    if net.back:
        return _way_back(built, net, link, bars, heights, sizes)
    above = {lower: upper for upper, lower in net.pieces}
    steps = []
    at = end
    while at != net.start:
        steps.append((above[at], at))
        at = above[at]
    points: list[Point] = []
    for upper_key, lower_key in reversed(steps):
        upper, lower = built.items[upper_key], built.items[lower_key]
        out = _port(upper.below[net.key], link)
        into = _port(lower.above[net.key], link)
        x0, x1 = upper.x + out.offset, lower.x + into.offset
        points.append((x0, _edge(upper, heights, sizes, lower=True)))
        if abs(x0 - x1) > 0.01:
            bar = bars[upper.layer][net.key]
            y = _track_y(upper.layer, bar.track, heights, sizes)
            points += [(x0, y), (x1, y)]
        points.append((x1, _edge(lower, heights, sizes, lower=False)))
    return _plain(points)


def _way_back(
    built: Layers,
    net: Net,
    link: Link,
    bars: dict[int, dict[str, Bar]],
    heights: list[tuple[float, float]],
    sizes: Sizes,
) -> tuple[Point, ...]:
    """Out of the parent below, up beside everything, into the knot from above."""
    parent, knot = built.items[link.above], built.items[link.below]

    def bar_y(gap: int) -> float:
        return _track_y(gap, max(bars[gap][net.key].track, 0), heights, sizes)

    x = parent.x + parent.below[net.key][0].offset
    points: list[Point] = [(x, _edge(parent, heights, sizes, lower=True)), (x, bar_y(parent.layer))]
    for item in reversed(built.back_column(net)):
        if item.x != points[-1][0]:
            y = bar_y(item.layer)
            points += [(points[-1][0], y), (item.x, y)]
        points.append((item.x, heights[item.layer][0]))
    x = knot.x + _port(knot.above[net.key], link).offset
    y = bar_y(knot.layer - 1)
    points += [(points[-1][0], y), (x, y), (x, _edge(knot, heights, sizes, lower=False))]
    return _plain(points)


def _port(ports: list[Port], link: Link) -> Port:
    return next((port for port in ports if port.knot == link.knot), ports[0])


def _track_y(layer: int, track: int, heights: list[tuple[float, float]], sizes: Sizes) -> float:
    if layer < 0:
        return 2 * sizes.grid + track * sizes.track
    pad = sizes.gap_pad if layer % 2 == 1 else 2 * sizes.grid
    return heights[layer][1] + pad + track * sizes.track


def _plain(points: list[Point]) -> tuple[Point, ...]:
    """Without points that lie on the straight way between their neighbours."""
    kept: list[Point] = []
    for point in points:
        if kept and kept[-1] == point:
            continue
        if len(kept) >= 2 and (
            kept[-2][0] == kept[-1][0] == point[0] or kept[-2][1] == kept[-1][1] == point[1]
        ):
            kept[-1] = point
        else:
            kept.append(point)
    return tuple(kept)
