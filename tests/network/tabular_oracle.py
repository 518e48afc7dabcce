"""The exact oracle: coancestries by the tabular method in fractions, written apart from the engine.

It reads a Book by the table of origins alone (tabular method: Emik & Terrill 1949, from memory).
It knows no arrays, no T, no D and no doubles: a dictionary of pairs, oldest plants first.
"""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from pedigreeview.book.book import Book

HALF = Fraction(1, 2)


def exactly(value: float) -> Fraction:
    return Fraction(str(value))


class TabularOracle:
    """θ and F of every plant of a book without loops, as fractions."""

    def __init__(self, book: Book) -> None:
        self.book = book
        self.theta: dict[tuple[Any, Any], Fraction] = {}
        self.f: dict[Any, Fraction] = {}
        self.ploidy: dict[Any, int] = {}
        self.order: list[Any] = []
        self.alpha = exactly(book.settings.double_reduction or 0)
        waiting = list(book.plants)
        while waiting:
            ready = [code for code in waiting if all(p in self.f for p in self.known_parents(code))]
            assert ready, "the oracle is for books without loops"
            for code in ready:
                self.enter(code)
            waiting = [code for code in waiting if code not in self.f]

    # What the records say -----------------------------------------------------------------------

    def options(self, code: str) -> tuple[str, list[tuple[str, Fraction]], bool]:
        """Seed parent, candidates with odds, and whether each seed has a father of its own."""
        plant = self.book.plants[code]
        cross = self.book.crosses[plant.cross]
        seed = cross.seed_parent
        rows = [c for c in self.book.pollen_candidates if c.cross == cross.cross]
        if rows:
            given = [
                (seed if c.candidate == "self" else c.candidate, exactly(c.odds)) for c in rows
            ]
            usual = cross.intended == "open" or any(candidate == seed for candidate, _ in given)
        elif cross.intended == "selfing" or (seed and seed == cross.pollen_parent):
            # A selfed pool is each member selfed, unless the cross says that it was one plant.
            given, usual = [(seed, Fraction(1))], self.is_pool(seed)
        elif cross.pollen_parent:
            given, usual = [(cross.pollen_parent, Fraction(1))], False
        else:
            rate = self.book.outcrossing(self.book.plants[seed]) if seed else None
            usual = cross.intended == "open"
            given = []
            if usual and rate is not None and rate < 1:
                given = [(seed, 1 - exactly(rate))]
        each = usual if not cross.drawn else cross.drawn == "each"
        found = [f for f in self.book.parent_findings if f.plant == code]
        if found:
            last = max(f.date for f in found)
            given = [
                (
                    seed if f.pollen_parent == "self" else f.pollen_parent,
                    Fraction(1) if f.odds is None else exactly(f.odds),
                )
                for f in found
                if f.date == last and f.pollen_parent
            ]
        return seed, given, each

    def known_parents(self, code: str) -> list[str]:
        plant = self.book.plants[code]
        if plant.source:
            return [plant.source]
        if not plant.cross:
            return []
        seed, given, _ = self.options(code)
        return [p for p in (seed, *(c for c, _ in given)) if p]

    # Rules --------------------------------------------------------------------------------------

    def gamma(self, f: Fraction, ploidy: int) -> Fraction:
        alpha = self.alpha if ploidy == 4 else Fraction(0)
        return alpha + (1 - alpha) * f

    def own(self, f: Fraction, ploidy: int) -> Fraction:
        return Fraction(1, ploidy) + Fraction(ploidy - 1, ploidy) * f

    def crossed(self, fs: Fraction, fp: Fraction, between: Fraction, ploidy: int) -> Fraction:
        m = Fraction(ploidy, 2)
        c = (m - 1) / (ploidy - 1)
        return c * HALF * (self.gamma(fs, ploidy) + self.gamma(fp, ploidy)) + (1 - c) * between

    def selfed(self, f: Fraction, ploidy: int) -> Fraction:
        return self.crossed(f, f, self.own(f, ploidy), ploidy)

    def at(self, a: Any, b: Any) -> Fraction:
        return self.theta[a, b]

    def put(
        self,
        key: Any,
        weights: list[tuple[Any, Fraction]],
        f: Fraction,
        itself: Fraction | None,
        ploidy: int,
    ) -> None:
        """Enter a node; `itself` None means two members of a pool: w Θ wᵀ."""
        for other in self.order:
            value = sum((w * self.at(k, other) for k, w in weights), Fraction(0))
            self.theta[key, other] = self.theta[other, key] = value
        if itself is None:
            itself = sum((w * self.theta[key, k] for k, w in weights), Fraction(0))
        self.theta[key, key] = itself
        self.f[key] = f
        self.ploidy[key] = ploidy
        self.order.append(key)

    def is_pool(self, code: Any) -> bool:
        return isinstance(code, str) and self.book.is_pool(self.book.plants[code])

    def gives(self, cross: str, side: str, code: str, each: bool) -> Any:
        """The node that gives gametes; one hidden member of a pool for a whole cross."""
        if each or not self.is_pool(code):
            return code
        key = ("member", cross, side, code)
        if key not in self.f:
            f, ploidy = self.f[code], self.ploidy[code]
            self.put(key, [(code, Fraction(1))], f, self.own(f, ploidy), ploidy)
        return key

    def enter(self, code: str) -> None:
        plant = self.book.plants[code]
        kind = self.book.kind(plant)
        pool = kind in ("variety", "family")
        raised = plant.raised or ("cross" if plant.cross else "founder")
        if raised == "founder":
            f = exactly(self.book.founder_fixation(plant))
            ploidy = self.book.founder_ploidy(plant)
            self.put(code, [], f, f if pool else self.own(f, ploidy), ploidy)
            return
        if raised == "cross":
            weights, f, ploidy = self.by_cross(code)
        else:
            weights, f, ploidy = [(plant.source, Fraction(1))], Fraction(0), 0
            f, ploidy = self.by_source(raised, plant.source)
        for _ in range(plant.selfings):
            f = self.selfed(f, ploidy)
        if kind == "variety" and (
            plant.fixation is not None or raised not in ("cutting_of", "doubled_of")
        ):
            f = Fraction(1) if plant.fixation is None else exactly(plant.fixation)
            self.put(code, weights, f, f, ploidy)
        elif raised == "cutting_of":
            self.put(code, weights, f, self.at(plant.source, plant.source), ploidy)
        elif pool and raised != "doubled_of":
            self.put(code, weights, f, None, ploidy)
        else:
            self.put(code, weights, f, self.own(f, ploidy), ploidy)

    def by_source(self, raised: str, source: str) -> tuple[Fraction, int]:
        f, ploidy = self.f[source], self.ploidy[source]
        if raised in ("seed_of", "cutting_of"):
            return f, ploidy
        if raised == "sibbed_in":
            return self.crossed(f, f, self.at(source, source), ploidy), ploidy
        if raised == "doubled_of":
            e = Fraction(1, 2 * ploidy - 1)
            return e + (1 - e) * f, 2 * ploidy
        e = Fraction(1, ploidy - 1)
        return e + (1 - e) * self.gamma(f, ploidy), ploidy

    def by_cross(self, code: str) -> tuple[list[tuple[Any, Fraction]], Fraction, int]:
        plant = self.book.plants[code]
        seed_code, given, each = self.options(code)
        cross = plant.cross
        any_parent = seed_code or given[0][0]
        ploidy = self.ploidy[any_parent]
        selfing = len(given) == 1 and given[0] == (seed_code, 1)
        if selfing:
            s = self.gives(cross, "seed", seed_code, each)
            return [(s, Fraction(1))], self.selfed(self.f[s], ploidy), ploidy
        s = self.gives(cross, "seed", seed_code, each) if seed_code else None
        nodes = [
            (s if c == seed_code else self.gives(cross, "pollen", c, each), odds)
            for c, odds in given
        ]
        certain = len(nodes) == 1 and nodes[0][1] == 1
        found = any(f.plant == code for f in self.book.parent_findings)
        if not each and not certain and (nodes or not found):
            key = ("father", cross, code if found else "")
            if key not in self.f:
                rest = 1 - sum((odds for _, odds in nodes), Fraction(0))
                f = sum((odds * self.f[p] for p, odds in nodes), Fraction(0))
                itself = sum((odds * self.at(p, p) for p, odds in nodes), rest / ploidy)
                self.put(key, nodes, f, itself, ploidy)
            nodes = [(key, Fraction(1))]
        weights = [(s, HALF)] if s is not None else []
        total, left = Fraction(0), Fraction(1)
        fs = self.f[s] if s is not None else Fraction(0)
        for p, odds in nodes:
            weights.append((p, HALF * odds))
            left -= odds
            if p == s:
                total += odds * self.selfed(fs, ploidy)
            else:
                between = self.at(s, p) if s is not None else Fraction(0)
                total += odds * self.crossed(fs, self.f[p], between, ploidy)
        return weights, total + left * self.crossed(fs, Fraction(0), Fraction(0), ploidy), ploidy
