"""The long run over every reader: `python tests/hardening/long_run.py --inputs 200000`.

Inputs are read in a child process, so that one that ends the process or hangs is named and the rest
go on.  Each is known by its reader and a number: `--reader XLSX --number 17` reads it alone again,
and with `--keep FOLDER` its files stay there.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
if str(ROOT) not in sys.path:
    sys.path.insert(0, str(ROOT))

from tests.hardening.readers import READERS, lay_out  # noqa: E402
from tests.hardening.trial import Finding, make, try_one  # noqa: E402

__all__ = ["run", "shares"]

_HANGS = 25
"""Seconds after which a child that says nothing is ended."""
_A_CHILD = 5_000
"""Inputs after which a new child begins, so that memory that is lost does not add up."""


def shares(inputs: int, readers: list[str]) -> dict[str, int]:
    """How many inputs each reader gets."""
    whole = sum(READERS[name].share for name in readers)
    return {name: max(inputs * READERS[name].share // whole, 1) for name in readers}


def _child(reader: str, first: int, last: int, room: Path) -> None:
    """Read inputs first to last - 1; a line for each is written before and after it."""
    for number in range(first, last):
        print(f"B {number}", flush=True)
        found = try_one(reader, number, room)
        if isinstance(found, Finding):
            said = [found.kind, found.words]
            print(f"F {number} {json.dumps(said)}", flush=True)
        else:
            print(f"D {number} {found}", flush=True)


def run(reader: str, first: int, last: int) -> tuple[Counter[str], list[Finding]]:
    """Read inputs of one reader in child processes; the results by kind, and what went wrong."""
    import select

    counts: Counter[str] = Counter()
    findings: list[Finding] = []
    at = first
    shm = Path("/dev/shm")
    base = str(shm) if shm.is_dir() and os.access(shm, os.W_OK) else None
    while at < last:
        until = min(last, at + _A_CHILD)
        with tempfile.TemporaryDirectory(dir=base) as room:
            command = [sys.executable, __file__, "--child", reader, str(at), str(until), room]
            child = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
            assert child.stdout is not None
            begun, hung, buffer = at, False, b""
            while True:
                ready, _, _ = select.select([child.stdout], [], [], _HANGS)
                if not ready:
                    hung = True
                    child.kill()
                    break
                data = os.read(child.stdout.fileno(), 65_536)
                if not data:
                    break
                *lines, buffer = (buffer + data).split(b"\n")
                for line in lines:
                    sign, number, *rest = line.decode("utf-8", "replace").split(" ", 2)
                    if sign == "B":
                        begun = int(number)
                        continue
                    at = int(number) + 1
                    if sign == "D":
                        counts[rest[0]] += 1
                    else:
                        kind, words = json.loads(rest[0])
                        counts[kind] += 1
                        findings.append(Finding(reader, int(number), kind, words))
            _, errors = child.communicate()
            if at < until:
                kind = "hang" if hung else f"ended the process ({child.returncode})"
                words = errors.decode("utf-8", "replace")[-300:].replace("\n", " | ")
                counts[kind] += 1
                findings.append(Finding(reader, begun, kind, words))
                at = begun + 1
    return counts, findings


def main() -> int:
    """Run as the words say; the status is 1 where something went wrong."""
    words = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else "")
    words.add_argument("--inputs", type=int, default=200_000, help="how many in all")
    words.add_argument("--reader", action="append", choices=list(READERS), help="this one alone")
    words.add_argument("--first", type=int, default=0, help="the number to begin with")
    words.add_argument("--number", type=int, help="read one input again, in this process")
    words.add_argument("--keep", type=Path, help="with --number: a new folder for its files")
    words.add_argument("--child", nargs=4, help=argparse.SUPPRESS)
    said = words.parse_args()
    if said.child:
        reader, first, last, room = said.child
        _child(reader, int(first), int(last), Path(room))
        return 0
    readers: list[str] = said.reader or list(READERS)
    if said.number is not None:
        with tempfile.TemporaryDirectory() as room_name:
            if said.keep:
                said.keep.mkdir()
                lay_out(make(readers[0], said.number, Path(room_name)), said.keep)
            found = try_one(readers[0], said.number, Path(room_name))
        print(found)
        return int(isinstance(found, Finding))
    total: Counter[str] = Counter()
    findings: list[Finding] = []
    for name, count in shares(said.inputs, readers).items():
        begun = time.perf_counter()
        counts, found_here = run(name, said.first, said.first + count)
        findings += found_here
        total += counts
        shown = ", ".join(f"{number:,} {kind}" for kind, number in sorted(counts.items()))
        seconds = time.perf_counter() - begun
        print(f"{name}: {counts.total():,} inputs in {seconds:,.0f} s: {shown}", flush=True)
        seen: Counter[tuple[str, str]] = Counter()
        for finding in found_here:
            key = (finding.kind, finding.words[-120:])
            seen[key] += 1
            if seen[key] <= 2:
                print(f"  {finding.kind}, number {finding.number}: {finding.words}", flush=True)
    print(f"In all {total.total():,} inputs, {len(findings)} that went wrong.", flush=True)
    return int(bool(findings))


if __name__ == "__main__":
    sys.exit(main())
