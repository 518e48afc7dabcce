"""Chances of genotypes by redrawing large blocks of plants, where weighted samples do not reach.

Some unknowns are held at their values and all others are redrawn together, exactly, by their
chances given those (block Gibbs sampling); then another set is held, so that each unknown is free
in turn.  Several chains start from independent draws that the true question allows.  Recessives
could shut one chain in; then the chains differ, and the error that is given is theirs.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.elimination import Tree, reduced, tree_of
from pedigreeview.planning.tables import Table

__all__ = ["redrawn"]

FloatArray = NDArray[np.float64]

_BLOCKINGS = 6
_DROPPED = 0.25
"""Share of the redraws at the start that is not counted."""


@dataclass(slots=True)
class _Blocking:
    held: list[int]
    tree: Tree


def redrawn(
    true: Sequence[Table],
    lengths: Sequence[int],
    starts: Sequence[dict[int, int]],
    wanted: Sequence[tuple[int, ...]],
    largest: int,
    samples: int,
    rng: np.random.Generator,
    tick: Callable[[int, int], None] | None = None,
) -> tuple[dict[tuple[int, ...], FloatArray], float, float]:
    """Chances of sets of unknowns, the largest standard error, the effective number of samples.

    Parameters
    ----------
    starts : two or more ways for all unknowns to be, each possible
    wanted : unknowns whose chances together are wanted; they stand in one table
    largest : numbers in the largest table allowed
    samples : how often a block is redrawn, all chains together
    """
    blockings = _blockings(true, lengths, largest, rng)
    rounds = max(2 * len(blockings), samples // len(starts))
    dropped = int(rounds * _DROPPED)
    means = []
    for chain, start in enumerate(starts):
        state = dict(start)
        sums = {names: np.zeros([lengths[name] for name in names]) for names in wanted}
        counts = dict.fromkeys(wanted, 0)
        for step in range(rounds):
            if tick is not None:
                tick(chain * rounds + step, len(starts) * rounds)
            blocking = blockings[step % len(blockings)]
            held = {name: state[name] for name in blocking.held}
            blocking.tree.run(reduced(true, held))
            if step >= dropped:
                for names in wanted:
                    if not held.keys() >= set(names):
                        sums[names] += blocking.tree.joint(names, held)
                        counts[names] += 1
            state.update(blocking.tree.draw(rng))
        for names in wanted:
            if not counts[names]:
                sums[names][tuple(state[name] for name in names)] = 1.0
        means.append({names: sums[names] / max(1, counts[names]) for names in wanted})
    found, error = {}, 0.0
    for names in wanted:
        values = np.array([mean[names] for mean in means])
        found[names] = values.mean(axis=0)
        error = max(error, float(values.std(axis=0, ddof=1).max()) / len(starts) ** 0.5)
    kept = len(starts) * (rounds - dropped)
    # Few chains show their spread roughly: never less than the same number of free samples.
    error = max(error, 0.5 / kept**0.5)
    return found, error, min(float(kept), 0.25 / error**2)


def _blockings(
    true: Sequence[Table], lengths: Sequence[int], largest: int, rng: np.random.Generator
) -> list[_Blocking]:
    """Sets to hold, each as unlike those before it as the widths allow."""
    found: list[_Blocking] = []
    before: set[int] = set()
    for _ in range(_BLOCKINGS):
        held: list[int] = []
        while True:
            gone = set(held)
            scopes = [tuple(n for n in table.names if n not in gone) for table in true]
            tree = tree_of(scopes, lengths)
            wide = [group.names for group in tree.wide(largest) if len(group.names) > 1]
            if not wide:
                break
            chosen: set[int] = set()
            for names in sorted(wide, key=len, reverse=True):
                if not chosen.intersection(names):
                    free = [name for name in names if name not in before] or list(names)
                    chosen.add(int(rng.choice(free)))
            held.extend(sorted(chosen))
        found.append(_Blocking(held, tree))
        before |= set(held)
    return found
