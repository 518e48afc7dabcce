"""No event handler of a journey through the window is at work for more than 50 ms.

The journey runs in a process of its own, for its application times every event; see `watchdog`.
No clock decides whether the test passes: what took longer is printed (`-s` shows it).
"""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

from tests.benchmarks.pedigrees import scaled

_ROOT = Path(__file__).parents[2]


def test_a_journey() -> None:
    plants = scaled(5000)
    made = subprocess.run(
        [sys.executable, "-m", "tests.benchmarks.watchdog", "--plants", str(plants)],
        cwd=_ROOT,
        capture_output=True,
        text=True,
        timeout=600,
        check=True,
    )
    told = json.loads(made.stdout)
    slow, longest = told["slow"], told["longest"]
    print(f"\n{len(slow)} of {told['handled']:,} handlers over 50 ms, {plants:,} plants")
    print(f"  longest: {longest}")
    for one in slow:
        print(f"  {one['step']}: {one['event']} of {one['receiver']}, {one['worked']} ms")
    assert told["plants"] == plants
    assert told["handled"] > 500
    assert longest["step"]
