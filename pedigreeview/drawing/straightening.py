"""Lines without needless bends: long ones run straight, small jogs go away.  Knows no Qt."""

from __future__ import annotations

from collections import defaultdict

from pedigreeview.drawing.layers import Item, Layers, Net
from pedigreeview.drawing.theme import Sizes

__all__ = ["apart", "straighten_ports", "straighten_trunks"]


def apart(one: Item, other: Item, sizes: Sizes) -> float:
    """Least distance between the middles of two neighbours."""
    if one.block is None and other.block is None:
        return 2 * sizes.grid
    gap = sizes.tag_gap
    if one.block is None or other.block is None:
        gap = 4 * sizes.grid
    elif one.knots or other.knots:
        gap = sizes.knot_gap
    return (one.width + other.width) / 2 + gap


def straighten_trunks(built: Layers, sizes: Sizes) -> None:
    """Bring the through places of each line onto one upright, as far as neighbours let them."""
    beside: dict[str, tuple[str, str]] = {}
    for row in built.rows:
        for at, key in enumerate(row):
            left = row[at - 1] if at else ""
            beside[key] = (left, row[at + 1] if at + 1 < len(row) else "")
    trunks = [trunk for net in built.nets.values() for trunk in _trunks(built, net)]
    trunks.sort(key=lambda trunk: (-len(trunk), trunk[0]))
    for trunk in trunks:
        start = 0
        while start < len(trunk):
            low, high, end = float("-inf"), float("inf"), start
            while end < len(trunk):
                least, most = _room(built, beside, trunk[end], sizes)
                if max(low, least) > min(high, most):
                    break
                low, high = max(low, least), min(high, most)
                end += 1
            end = max(end, start + 1)
            if low <= high:
                x = _best_x(built, trunk[start:end], low, high, sizes)
                for key in trunk[start:end]:
                    built.items[key].x = x
            start = end


def _trunks(built: Layers, net: Net) -> list[list[str]]:
    """The through places of a net, top to bottom; a net has one a layer."""
    through = [key for piece in net.pieces for key in piece if built.items[key].block is None]
    through = sorted(dict.fromkeys(through), key=lambda key: built.items[key].layer)
    return [through] if through else []


def _room(
    built: Layers, beside: dict[str, tuple[str, str]], key: str, sizes: Sizes
) -> tuple[float, float]:
    item = built.items[key]
    left, right = beside[key]
    low, high = float("-inf"), float("inf")
    if left:
        other = built.items[left]
        low = other.x + apart(other, item, sizes)
    if right:
        other = built.items[right]
        high = other.x - apart(item, other, sizes)
    return low, high


def _best_x(built: Layers, part: list[str], low: float, high: float, sizes: Sizes) -> float:
    """At one of the line's ends if there is room, else as near to both as there is."""
    grid = sizes.grid
    net = part[0].rsplit(" @", 1)[0]
    tops = [
        built.items[a].x + port.offset
        for a, b in built.nets[net].pieces
        if b == part[0]
        for port in built.items[a].below[net]
    ]
    ends = [
        built.items[b].x + port.offset
        for a, b in built.nets[net].pieces
        if a == part[-1]
        for port in built.items[b].above[net]
    ]
    for x in (*ends, *tops):
        if low <= x <= high:
            return x
    aims = [*ends, *tops] or [built.items[part[0]].x]
    x = min(max(sum(aims) / len(aims), low), high)
    for snapped in (round(x / grid) * grid, x // grid * grid, -(-x // grid) * grid):
        if low <= snapped <= high:
            return snapped
    return x


def straighten_ports(built: Layers, sizes: Sizes) -> None:
    """Shift ports of tags by a little where that makes a crooked line straight."""
    lines: dict[str, list[tuple[str, float]]] = defaultdict(list)
    for net, above, below in built.pieces():
        upper, lower = built.items[above], built.items[below]
        outs, intos = upper.below[net], lower.above[net]
        if len(outs) != 1 or len(intos) != 1:
            continue
        jog = upper.x + outs[0].offset - lower.x - intos[0].offset
        is_tag = lower.block is not None and not lower.knots
        if is_tag and len(lower.above) == 1 and 0 < abs(jog) <= 4 * sizes.grid:
            intos[0].offset += jog
        elif upper.block is not None and not upper.knots and _lone(built, net, above):
            lines[above].append((net, jog))
    for above, held in lines.items():
        item = built.items[above]
        jogs = {round(jog) for _, jog in held}
        if len(jogs) == 1:
            _shift(item, {net for net, _ in held}, held[0][1], sizes)
        else:
            for net, jog in held:
                _shift(item, {net}, jog, sizes)


def _shift(item: Item, nets: set[str], jog: float, sizes: Sizes) -> None:
    if not 0 < abs(jog) <= 4 * sizes.grid:
        return
    others = [port.offset for key, ports in item.below.items() if key not in nets for port in ports]
    for net in nets:
        now = item.below[net][0].offset
        aim = now - jog
        clear = all(abs(aim - o) >= 2 * sizes.grid and (aim < o) == (now < o) for o in others)
        if not clear or abs(aim) > item.width / 2 - 3 * sizes.grid:
            return
    for net in nets:
        item.below[net][0].offset -= jog


def _lone(built: Layers, net: str, above: str) -> bool:
    return sum(a == above for a, _ in built.nets[net].pieces) == 1
