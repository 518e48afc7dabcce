"""How a benchmark is run: beside its reference, in the same process, on the same pedigree.

    python -m pytest tests/benchmarks
    PEDIGREEVIEW_BENCHMARK_SCALE=1 python -m pytest tests/benchmarks

The first runs each once at a hundredth of the full size, in seconds; the second is the table of
DEVELOPERS.md, which is printed at the end in Markdown.  No clock decides whether a test passes.
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import pytest

from tests.benchmarks.pedigrees import SCALE

ROUNDS = int(os.environ.get("PEDIGREEVIEW_BENCHMARK_ROUNDS", "3" if SCALE >= 1 else "1"))

_RESULTS = pytest.StashKey[list["Result"]]()


@dataclass(frozen=True, slots=True)
class Result:
    """One line of the table; times are the best of the rounds, in seconds."""

    what: str
    reach: str
    seconds: float
    reference: str
    reference_seconds: float
    memory: str

    def line(self) -> str:
        """The line in Markdown."""
        faster = self.reference_seconds / self.seconds
        ratio = f"{faster:.1f} times as fast" if faster >= 1 else f"{1 / faster:.1f} times as long"
        cells = (
            self.what,
            _seconds(self.seconds),
            self.reference,
            _seconds(self.reference_seconds),
            ratio,
            self.memory,
            self.reach,
        )
        return f"| {' | '.join(cells)} |"


def _seconds(value: float) -> str:
    return f"{value:.2f} s" if value >= 0.1 else f"{value * 1000:.2f} ms"


class Bench:
    """Runs one benchmark and its reference, and keeps what came of it."""

    def __init__(self, benchmark: Any, results: list[Result]) -> None:
        self._benchmark = benchmark
        self._results = results

    def __call__(
        self,
        what: str,
        run: Callable[..., Any],
        *,
        reference: str,
        run_reference: Callable[[], Any],
        reach: str,
        setup: Callable[[], Any] | None = None,
        rounds: int = ROUNDS,
        reference_rounds: int = ROUNDS,
        memory: str = "",
    ) -> tuple[Any, Any]:
        """Time both, the first round of each left out as warm-up; what each returned.

        Parameters
        ----------
        what, reference, reach, memory : cells of the table
        run : gets what `setup` returns, if there is one, outside the time taken
        """
        taken: list[float] = []

        def timed(*given: Any) -> Any:
            begun = time.perf_counter()
            got = run(*given)
            taken.append(time.perf_counter() - begun)
            return got

        prepared = (lambda: ((setup(),), {})) if setup is not None else None
        found = self._benchmark.pedantic(timed, setup=prepared, rounds=rounds, warmup_rounds=1)
        seconds = min(taken[1:] or taken)
        behind = []
        for _ in range(reference_rounds):
            begun = time.perf_counter()
            expected = run_reference()
            behind.append(time.perf_counter() - begun)
        result = Result(what, reach, seconds, reference, min(behind), memory)
        self._benchmark.extra_info.update(
            scale=SCALE,
            reference=reference,
            reference_seconds=min(behind),
            ratio=min(behind) / seconds,
            reach=reach,
            memory=memory,
        )
        self._results.append(result)
        return found, expected


@pytest.fixture
def bench(benchmark: Any, request: pytest.FixtureRequest) -> Bench:
    """The runner for one benchmark."""
    return Bench(benchmark, request.config.stash.setdefault(_RESULTS, []))


def pytest_terminal_summary(terminalreporter: Any, config: pytest.Config) -> None:
    """Print the table in Markdown."""
    results = config.stash.get(_RESULTS, [])
    if not results:
        return
    terminalreporter.section(f"benchmarks at {SCALE:g} of the full size, {ROUNDS} rounds")
    terminalreporter.line("| what | time | reference | its time | ratio | memory | to reach |")
    terminalreporter.line("| --- | --- | --- | --- | --- | --- | --- |")
    for result in results:
        terminalreporter.line(result.line())
