"""Writes the demo books; run it after a change of a scenario: `python tests/demos/make_demos.py`.

A further book is a module with `FOLDER` and `build()`, named in `SCENARIOS`.
"""

from __future__ import annotations

import sys
from pathlib import Path

_HERE = Path(__file__).resolve().parent
for _path in (_HERE, _HERE.parents[1]):
    if str(_path) not in sys.path:
        sys.path.insert(0, str(_path))

import newcomers_table  # noqa: E402
import scenario_daylily  # noqa: E402
import scenario_pea  # noqa: E402
import scenario_tomato  # noqa: E402

from pedigreeview.exchange import data_package  # noqa: E402

__all__ = ["SCENARIOS", "write_all"]

SCENARIOS = (scenario_pea, scenario_tomato, scenario_daylily)


def write_all(target: Path) -> list[Path]:
    """Write every demo into a folder; gives what was written."""
    written = []
    for scenario in SCENARIOS:
        folder = target / scenario.FOLDER
        data_package.write(scenario.build(), folder)
        written.append(folder)
    table = target / newcomers_table.FILE
    table.write_text(newcomers_table.text(), encoding="utf-8", newline="\n")
    written.append(table)
    return written


if __name__ == "__main__":
    for path in write_all(_HERE.parents[1] / "demo_pedigrees"):
        print(path.name)
