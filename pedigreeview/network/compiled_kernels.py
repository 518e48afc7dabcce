# mypy: disable-error-code="no-untyped-def"
"""numba kernels over the arrays; see `kernels` for when they are used.

Conventions: rows parents first; `starts`, `older`, `weight` are the weights in compressed rows.
"""

from __future__ import annotations

import numba
import numpy as np

__all__ = [
    "by_traversal",
    "count_ancestors",
    "descendant_counts",
    "generation_counts",
    "halves_down",
    "halves_up",
    "levels",
    "new_rows",
    "parents_first",
    "sweep_down",
    "sweep_up",
]

_jit = numba.njit(cache=True, nogil=True, boundscheck=False)


@_jit
def levels(starts, older):
    """Longest number of steps from each row up to one without older rows."""
    n = len(starts) - 1
    found = np.zeros(n, np.int64)
    for row in range(n):
        top = -1
        for at in range(starts[row], starts[row + 1]):
            if found[older[at]] > top:
                top = found[older[at]]
        found[row] = top + 1
    return found


@_jit
def parents_first(first, second):
    """Plants whose parents all come before them, in the order of `order.parents_first`."""
    n = len(first)
    starts = np.zeros(n + 1, np.int64)
    waiting = np.zeros(n, np.int64)
    for place in range(n):
        for parent in (first[place], second[place]):
            if parent >= 0:
                starts[parent + 1] += 1
                waiting[place] += 1
    for place in range(n):
        starts[place + 1] += starts[place]
    progeny = np.empty(starts[n], np.int64)
    filled = starts[:n].copy()
    for place in range(n):
        for parent in (first[place], second[place]):
            if parent >= 0:
                progeny[filled[parent]] = place
                filled[parent] += 1
    order = np.empty(n, np.int64)
    size = 0
    for place in range(n):
        if waiting[place] == 0:
            order[size] = place
            size += 1
    done = 0
    while done < size:
        parent = order[done]
        done += 1
        for at in range(starts[parent], starts[parent + 1]):
            child = progeny[at]
            waiting[child] -= 1
            if waiting[child] == 0:
                order[size] = child
                size += 1
    return order[:size]


@_jit
def sweep_up(starts, older, weight, values):
    """values ← Tᵀ values, in place; (n, k)."""
    n, columns = values.shape
    if columns == 1:
        flat = values[:, 0]
        for row in range(n - 1, -1, -1):
            value = flat[row]
            if value != 0.0:
                for at in range(starts[row], starts[row + 1]):
                    flat[older[at]] += weight[at] * value
        return
    for row in range(n - 1, -1, -1):
        for at in range(starts[row], starts[row + 1]):
            w = weight[at]
            parent = older[at]
            for column in range(columns):
                values[parent, column] += w * values[row, column]


@_jit
def sweep_down(starts, older, weight, values):
    """values ← T values, in place; (n, k)."""
    n, columns = values.shape
    if columns == 1:
        flat = values[:, 0]
        for row in range(n):
            total = flat[row]
            for at in range(starts[row], starts[row + 1]):
                total += weight[at] * flat[older[at]]
            flat[row] = total
        return
    for row in range(n):
        for at in range(starts[row], starts[row + 1]):
            w = weight[at]
            parent = older[at]
            for column in range(columns):
                values[row, column] += w * values[parent, column]


@_jit
def _follow(starts, older, own, reached, first):
    """One pass of `descendant_counts` from row `first` on; whether anything new came by."""
    changed = False
    for row in range(first, len(reached)):
        found = reached[row]
        for at in range(starts[row], starts[row + 1]):
            found |= reached[older[at]] | own[older[at]]
        if found != reached[row]:
            reached[row] = found
            changed = True
    return changed


@_jit
def descendant_counts(starts, older, asked, ordered):
    """Number of descendants of each asked row, 64 followed at once, one binary digit for each."""
    n = len(starts) - 1
    counts = np.zeros(len(asked), np.int64)
    own = np.zeros(n, np.uint64)
    reached = np.zeros(n, np.uint64)
    one = np.uint64(1)
    for begin in range(0, len(asked), 64):
        end = min(begin + 64, len(asked))
        reached[:] = 0
        for index in range(begin, end):
            own[asked[index]] = one << np.uint64(index - begin)
        _follow(starts, older, own, reached, 0)
        while ordered < n and _follow(starts, older, own, reached, ordered):
            pass
        for row in range(n):
            left = reached[row]
            index = begin
            while left:
                # Past runs of eight digits of which none is set.
                while left & np.uint64(255) == 0:
                    left >>= np.uint64(8)
                    index += 8
                counts[index] += np.int64(left & one)
                left >>= one
                index += 1
        for index in range(begin, end):
            own[asked[index]] = 0
    return counts


@_jit
def generation_counts(order, first, second, step):
    """Generation of every plant, −1 for those not in `order`."""
    found = np.full(len(first), -1, np.int64)
    for place in order:
        eldest = 0
        for parent in (first[place], second[place]):
            if parent >= 0:
                eldest = max(eldest, found[parent])
        found[place] = eldest + step[place]
    return found


@_jit
def halves_up(first, second, start, values):
    """`sweep_up` of one column from row `start`, where each older row gives one half."""
    for row in range(start, -1, -1):
        half = 0.5 * values[row]
        if half != 0.0:
            if first[row] >= 0:
                values[first[row]] += half
            if second[row] >= 0:
                values[second[row]] += half


@_jit
def halves_down(first, second, values):
    """`sweep_down` of one column, where each older row gives one half."""
    for row in range(len(values)):
        total = 0.0
        if first[row] >= 0:
            total += values[first[row]]
        if second[row] >= 0:
            total += values[second[row]]
        values[row] += 0.5 * total


@_jit
def new_rows(block, first, second, first_weight, second_weight, staying, out):
    """Coancestries of new rows with the staying rows of the block and with each other.

    `out` is (new, staying + new); the diagonal among the new ones is left to the caller.
    """
    count, width, stay = len(first), block.shape[1], len(staying)
    line = np.zeros(width + 1)
    for row in range(count):
        a, b = first[row], second[row]
        wa, wb = first_weight[row], second_weight[row]
        for column in range(width):
            line[column] = wa * block[a, column] + wb * block[b, column]
        for column in range(stay):
            out[row, column] = line[staying[column]]
        for other in range(count):
            out[row, stay + other] = (
                first_weight[other] * line[first[other]]
                + second_weight[other] * line[second[other]]
            )


@_jit
def count_ancestors(starts, older, rows, most):
    """How many rows stand behind each asked row, itself included; counting stops at `most`."""
    seen = np.full(len(starts) - 1, -1, np.int64)
    stack = np.empty(len(starts), np.int64)
    found = np.zeros(len(rows), np.int64)
    for index in range(len(rows)):
        size = 1
        stack[0] = rows[index]
        seen[rows[index]] = index
        while size > 0 and found[index] < most:
            size -= 1
            row = stack[size]
            found[index] += 1
            for at in range(starts[row], starts[row + 1]):
                parent = older[at]
                if seen[parent] != index:
                    seen[parent] = index
                    stack[size] = parent
                    size += 1
    return found


@_jit
def by_traversal(graph, asked_seed, starts, options, odds, found, state):
    """θ(s, q) and θ(q, q) of each asked seed parent s and mix q of candidates for pollen parent.

    One walk over the ancestors of both, level by level from the youngest, with the share of each
    side in hand: θ(s, q) = Σ_k T(s, k) T(q, k) D(k) (after Meuwissen & Luo 1992, from memory).

    graph : starts, older, weight, level and innovation of the rows that are parents
    state : first row waiting at each level (−1 none), the next one waiting (−2 not waiting), and
        the shares of both sides; left as found
    """
    edge_starts, older, weight, level, innovation = graph
    waiting, following, share = state
    for index in range(len(asked_seed)):
        seed = asked_seed[index]
        top = -1
        if seed >= 0:
            share[seed, 0] = 1.0
            top = level[seed]
            following[seed] = waiting[top]
            waiting[top] = seed
        for at in range(starts[index], starts[index + 1]):
            parent = options[at]
            share[parent, 1] += odds[at]
            if following[parent] == -2:
                step = level[parent]
                following[parent] = waiting[step]
                waiting[step] = parent
                top = max(top, step)
        with_seed = 0.0
        with_itself = 0.0
        for step in range(top, -1, -1):
            row = waiting[step]
            waiting[step] = -1
            while row >= 0:
                a, b = share[row, 0], share[row, 1]
                share[row, 0] = 0.0
                share[row, 1] = 0.0
                with_seed += a * b * innovation[row]
                with_itself += b * b * innovation[row]
                for at in range(edge_starts[row], edge_starts[row + 1]):
                    parent = older[at]
                    share[parent, 0] += weight[at] * a
                    share[parent, 1] += weight[at] * b
                    if following[parent] == -2:
                        above = level[parent]
                        following[parent] = waiting[above]
                        waiting[above] = parent
                done = row
                row = following[row]
                following[done] = -2
        found[index, 0] = with_seed
        found[index, 1] = with_itself
