"""No event handler of a journey through the window is at work for more than 50 ms.

A journey opens every page, form and dialog, works on the pages, brings in a table, edits, undoes,
and changes the look and the size of the text; over a large book a shorter one turns to every page
and edits.  It runs in a process of its own, for its application times every event; see `watchdog`.
No clock decides whether the test passes: what took longer is printed (`-s` shows it).
"""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

from tests.benchmarks.pedigrees import scaled

_ROOT = Path(__file__).parents[2]


def _driven(plants: int, *more: str) -> dict[str, Any]:
    """Drive the journey in a process of its own and print what was slow."""
    made = subprocess.run(
        [sys.executable, "-m", "tests.benchmarks.watchdog", "--plants", str(plants), *more],
        cwd=_ROOT,
        capture_output=True,
        text=True,
        timeout=1200,
        check=True,
    )
    told: dict[str, Any] = json.loads(made.stdout)
    slow, longest = told["slow"], told["longest"]
    print(f"\n{len(slow)} of {told['handled']:,} handlers over 50 ms, {plants:,} plants")
    print(f"  longest: {longest}")
    for one in slow:
        print(f"  {one['step']}: {one['event']} of {one['receiver']}, {one['worked']} ms")
    return told


def test_a_journey() -> None:
    plants = scaled(5000)
    told = _driven(plants)
    assert told["plants"] == plants
    assert told["handled"] > 500
    assert told["longest"]["step"]


def test_a_large_book() -> None:
    plants = scaled(100_000)
    told = _driven(plants, "--brief")
    assert told["plants"] == plants
    assert told["handled"] > 200
