"""Chances of genotypes where exact inference is too wide: weighted samples, with their error.

A few unknowns that make the question wide are held at a value; given them the rest is computed
exactly.  Their values are drawn from a looser question, in which each table below such a plant has
a copy of it to itself, and weighted by how much likelier the true question makes them:
w = P(values, records) / Q(values, records), both exact sums.  Every value that the true question
allows can be drawn, so the estimates tend to the true chances however the pedigree is tied up.
Where few samples carry all the weight, large blocks are redrawn instead, from several starts
(`block_sampler`).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import exp, inf
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault
from pedigreeview.planning.block_sampler import redrawn
from pedigreeview.planning.elimination import Impossible, Tree, leaves_of, reduced, tree_of
from pedigreeview.planning.tables import Table

if TYPE_CHECKING:
    from pedigreeview.planning.inference import Question

__all__ = ["sampled"]

FloatArray = NDArray[np.float64]
_Answer = dict[tuple[int, ...], FloatArray]
"""Chances of some unknowns together, by their numbers."""

_MOST_CUTS = 400
_FEW = 30
_LOOK = 60
_CHAINS = 4
_SPREAD = 0.1
"""Share of the copies' chances that is spread over all values that are possible."""


@dataclass(slots=True)
class _Plan:
    """What is held at a value, and the trees of what is left of both questions."""

    held: list[int]
    loose: list[Table]
    loose_tree: Tree
    loose_held_tree: Tree
    true_tree: Tree
    copies: list[tuple[int, int]]
    """(number of the copy's own table in `loose`, the unknown that it copies)."""


def sampled(
    question: Question,
    largest: int,
    samples: int,
    seed: int,
    tick: Callable[[int, int], None] | None = None,
) -> tuple[dict[str, FloatArray], float, float]:
    """Chances of the genotypes of the plants that are asked about.

    Parameters
    ----------
    largest : numbers in the largest table allowed
    samples : how many values of the held unknowns are drawn
    tick : called with (drawn, samples); may raise `Cancelled`

    Returns
    -------
    chances by plant, the largest standard error among them, and the effective number of samples

    Raises
    ------
    Fault : no drawn value was possible
    """
    true, leaves = _folded(question.tables())
    scopes = {
        plant: leaves[name].names[:-1] if name in leaves else (name,)
        for plant, name in ((plant, question.unknown(plant)) for plant in question.plants)
    }
    wanted = list(dict.fromkeys(scopes.values()))
    plan = _plan(true, question.lengths, largest)
    rng = np.random.default_rng(seed)
    weights, answers, drawn = _drawn(true, plan, wanted, samples, rng, tick)
    total = weights.sum()
    effective = float(total**2 / (weights**2).sum())
    if effective < min(_FEW, samples / 4):
        starts = _starts(true, plan, weights, drawn, rng)
        chances, error, effective = redrawn(
            true, question.lengths, starts, wanted, largest, samples, rng, tick
        )
    else:
        chances, error = {}, 0.0
        for names in wanted:
            values = np.array([answer[names] for answer in answers])
            chances[names] = np.tensordot(weights, values, 1) / total
            apart = values - chances[names]
            spread = np.sqrt(np.tensordot(weights**2, apart**2, 1)).max() / total
            error = max(error, float(spread))
    found = {}
    for plant, names in scopes.items():
        leaf = leaves.get(question.unknown(plant))
        found[plant] = chances[names] if leaf is None else _given(chances[names], leaf.values)
    return found, error, effective


def _folded(tables: list[Table]) -> tuple[list[Table], dict[int, Table]]:
    """Plants without progeny taken off: what they say of their parents is kept, once for all.

    Returns
    -------
    the tables that are left, and for each plant taken off its own table with its records
    """
    ends = leaves_of([table.names for table in tables])
    own = {name: tables[number] for number, name in ends.items()}
    left = []
    for number, table in enumerate(tables):
        if number in ends:
            continue
        if len(table.names) == 1 and table.names[0] in own:
            held = own[table.names[0]]
            own[table.names[0]] = Table(held.names, held.values * table.values)
        else:
            left.append(table)
    said: dict[tuple[int, ...], FloatArray] = {}
    for table in own.values():
        message = table.values.sum(axis=-1)
        names = table.names[:-1]
        merged = message * said[names] if names in said else message
        said[names] = merged / max(float(merged.max()), 1e-300)
    return [*left, *(Table(names, values) for names, values in said.items())], own


def _given(parents: FloatArray, own: FloatArray) -> FloatArray:
    """Chances of a plant without progeny from those of its parents together."""
    whole = own.sum(axis=-1, keepdims=True)
    by_parents = np.divide(own, whole, out=np.zeros_like(own), where=whole > 0)
    found: FloatArray = np.tensordot(parents, by_parents, parents.ndim)
    return found / found.sum()


def _starts(
    true: list[Table],
    plan: _Plan,
    weights: FloatArray,
    drawn: list[dict[int, int]],
    rng: np.random.Generator,
) -> list[dict[int, int]]:
    """Ways for all unknowns to be, from drawn values of those that are held."""
    # Half by weight, half any that is possible: chains that start apart show it if they stay so.
    heavy = rng.choice(len(drawn), _CHAINS // 2, p=weights / weights.sum())
    any_ = rng.choice(len(drawn), _CHAINS - _CHAINS // 2)
    found = []
    for at in [*heavy.tolist(), *any_.tolist()]:
        plan.true_tree.run(reduced(true, drawn[at]))
        found.append({**drawn[at], **plan.true_tree.draw(rng)})
    return found


def _drawn(
    true: list[Table],
    plan: _Plan,
    wanted: list[tuple[int, ...]],
    samples: int,
    rng: np.random.Generator,
    tick: Callable[[int, int], None] | None,
) -> tuple[FloatArray, list[_Answer], list[dict[int, int]]]:
    """Weight of each possible drawn value, the chances of all unknowns given it, and the value."""
    plan.loose_tree.run(plan.loose)
    for number, original in plan.copies:
        chances = plan.loose_tree.chances(original)
        allowed = (chances > 0) / (chances > 0).sum()
        name = plan.loose[number].names
        plan.loose[number] = Table(name, (1 - _SPREAD) * chances + _SPREAD * allowed)
    plan.loose_tree.run(plan.loose)
    known: dict[tuple[int, ...], tuple[float, _Answer] | None] = {}
    logs: list[float] = []
    answers: list[_Answer] = []
    drawn: list[dict[int, int]] = []
    for step in range(samples):
        if tick is not None:
            tick(step, samples)
        if step == _LOOK and _effective(logs) < _LOOK / 20:
            # Hopeless by weights: what was drawn serves as a start for `redrawn`.
            break
        values = plan.loose_tree.draw(rng)
        key = tuple(values[name] for name in plan.held)
        if key not in known:
            known[key] = _weighed(true, plan, wanted, dict(zip(plan.held, key, strict=True)))
        found = known[key]
        if found is not None:
            logs.append(found[0])
            answers.append(found[1])
            drawn.append(dict(zip(plan.held, key, strict=True)))
    if not logs:
        raise Fault(
            "This pedigree is too tangled for the chances of its genotypes.",
            None,
            "Ask about fewer plants, or allow a rate of misread phenotypes.",
        )
    highest = max(logs)
    return np.array([exp(value - highest) for value in logs]), answers, drawn


def _effective(logs: list[float]) -> float:
    """Effective number of samples by their logarithmic weights; endless with none yet."""
    if not logs:
        return inf
    weights = np.exp(np.array(logs) - max(logs))
    return float(weights.sum() ** 2 / (weights**2).sum())


def _weighed(
    true: list[Table], plan: _Plan, wanted: list[tuple[int, ...]], values: dict[int, int]
) -> tuple[float, _Answer] | None:
    """Logarithm of the weight of some values, with the chances that are wanted given them."""
    try:
        true_log = plan.true_tree.run(reduced(true, values))
    except Impossible:
        return None
    loose_log = plan.loose_held_tree.run(reduced(plan.loose, values), back=False)
    answer = {names: plan.true_tree.joint(names, values) for names in wanted}
    return true_log - loose_log, answer


def _plan(true: list[Table], lengths: list[int], largest: int) -> _Plan:
    """Hold unknowns until nothing is too wide: each time one of the widest group."""
    held: list[int] = []
    while True:
        loose, longer, copies = _loosened(true, lengths, held)
        loose_tree = tree_of([table.names for table in loose], longer)
        scopes = [tuple(n for n in table.names if n not in held) for table in true]
        true_tree = tree_of(scopes, longer)
        widest = max((loose_tree, true_tree), key=lambda tree: tree.largest)
        if widest.largest <= largest or len(held) >= _MOST_CUTS:
            break
        more = _next_held(widest, len(lengths), held, largest)
        if not more:
            break
        held.extend(more)
    left = [tuple(n for n in table.names if n not in held) for table in loose]
    return _Plan(held, loose, loose_tree, tree_of(left, longer), true_tree, copies)


def _next_held(tree: Tree, originals: int, held: list[int], largest: int) -> list[int]:
    """For each group that is too wide, the unknown of it that stands in most groups."""
    counts: dict[int, int] = {}
    for group in tree.groups:
        for name in group.names:
            counts[name] = counts.get(name, 0) + 1
    chosen: list[int] = []
    for group in sorted(tree.wide(largest), key=lambda group: -len(group.names)):
        if not set(chosen).intersection(group.names):
            free = [name for name in group.names if name < originals and name not in held]
            if free:
                chosen.append(max(free, key=lambda name: (counts[name], -name)))
    return chosen


def _loosened(
    true: list[Table], lengths: list[int], held: list[int]
) -> tuple[list[Table], list[int], list[tuple[int, int]]]:
    """The looser question: each table below a held unknown gets a copy of it to itself."""
    loose: list[Table] = []
    longer = list(lengths)
    copied: list[tuple[int, int]] = []
    for table in true:
        names = list(table.names)
        # The last name is the unknown that the table is of; one name alone is a record.
        for place, name in enumerate(names[:-1]):
            if name in held:
                names[place] = len(longer)
                copied.append((len(longer), name))
                longer.append(lengths[name])
        loose.append(Table(tuple(names), table.values))
    copies = []
    for copy, name in copied:
        copies.append((len(loose), name))
        loose.append(Table((copy,), np.full(lengths[name], 1.0 / lengths[name])))
    return loose, longer, copies
