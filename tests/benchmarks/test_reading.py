"""From a plant table on the disk to a network that answers, beside Python's own csv.reader."""

from __future__ import annotations

import csv
import subprocess
import sys
from pathlib import Path
from typing import Any

import numpy as np

import pedigreeview
from tests.benchmarks import pedigrees
from tests.benchmarks.pedigrees import scaled

_ALONE = """
import sys, time
begun = time.perf_counter()
import pedigreeview
net = pedigreeview.read(sys.argv[1])
net.inbreeding(sys.argv[2])
net.coancestry_with(sys.argv[2])
print(time.perf_counter() - begun)
try:
    with open("/proc/self/status", encoding="ascii") as file:
        print(next(int(line.split()[1]) for line in file if line.startswith("VmHWM")))
except OSError:
    import resource
    print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss)
"""


def _run_through(path: Path) -> int:
    with path.open(encoding="utf-8", newline="") as file:
        return sum(1 for _ in csv.reader(file))


def test_reading(bench: Any, tmp_path: Path) -> None:
    count = scaled(1_000_000)
    path = tmp_path / "large.csv"
    codes = pedigrees.table(path, *pedigrees.wide(count))

    def ready() -> Any:
        net = pedigreeview.read(path)
        return net.inbreeding(codes[-1]), net.coancestry_with(codes[-1])

    # A process of its own: how much memory it takes, and the time with every import in it.
    said = subprocess.run(
        [sys.executable, "-c", _ALONE, str(path), codes[-1]],
        capture_output=True,
        text=True,
        check=True,
    ).stdout.split()
    (inbreeding, column), lines = bench(
        f"reading {count:,} rows to ready for questions",
        ready,
        reference="csv.reader through the same file",
        run_reference=lambda: _run_through(path),
        reach="at most 12 times as long, under 1.5 GB",
        memory=f"{int(said[1]) / 1024:.0f} MB peak; {float(said[0]):.1f} s alone with imports",
    )
    assert lines == count + 1
    assert len(column) == count
    assert 0.0 <= inbreeding <= 1.0
    assert np.nanmax(column) <= 1.0
