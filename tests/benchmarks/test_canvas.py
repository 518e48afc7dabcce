"""The real widgets: first overview painted, panning, what lies under the pointer, memory.

Qt paints into the memory of the process here, without a screen; `viewport().repaint()` paints at
once.  Beside each stands the same with an empty widget of the same size.
"""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from pedigreeview.network import PedigreeNetwork
from tests.benchmarks.garden import focuses, garden
from tests.benchmarks.pedigrees import scaled

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

_ROOT = Path(__file__).parents[2]
_FRAMES = 60
_SIZES = ((5_000, "200 ms", "16 ms"), (20_000, "500 ms", "33 ms"), (100_000, "1.5 s", "33 ms"))


def _app() -> Any:
    from PySide6.QtWidgets import QApplication

    return QApplication.instance() or QApplication([])


def _shown(widget: Any) -> Any:
    widget.resize(1280, 800)
    widget.show()
    _app().processEvents()
    return widget


def _bare() -> Any:
    from PySide6.QtWidgets import QAbstractScrollArea

    return _shown(QAbstractScrollArea())


def _map(net: PedigreeNetwork) -> Any:
    from pedigreeview.drawing.overview import overview_of
    from pedigreeview.window.overview import BookMap

    made = _shown(BookMap())
    made.show_overview(overview_of(net))
    made.viewport().repaint()
    return made


@pytest.mark.parametrize(("full", "within", "_"), _SIZES)
def test_the_first_overview(bench: Any, full: int, within: str, _: str) -> None:
    """From a book in memory, with its network, to the first picture of all of it."""
    plants = scaled(full)
    book = garden(plants)
    app, bare = _app(), _bare()

    def fresh() -> PedigreeNetwork:
        # What pictures work out is kept with a network, so each round has a new one.
        return PedigreeNetwork.from_records(book)

    made, painted = bench(
        f"first overview of {plants:,} plants laid out and painted",
        _map,
        setup=fresh,
        reference="an empty widget of the same size painted",
        run_reference=lambda: bare.viewport().repaint() is None,
        reach=f"at most {within}",
    )
    assert len(made.overview) == plants
    assert painted
    assert app is not None


@pytest.mark.parametrize("zoom", [1.0, 8.0])
@pytest.mark.parametrize(("full", "_", "within"), _SIZES)
def test_panning_the_map(bench: Any, full: int, _: str, within: str, zoom: float) -> None:
    from PySide6.QtCore import QPointF

    plants = scaled(full)
    app, bare = _app(), _bare()
    shown = _map(PedigreeNetwork.from_records(garden(plants)))
    if zoom > 1:
        shown.zoom_by(zoom)
    taken: list[float] = []

    def pan() -> int:
        taken.clear()
        for at in range(_FRAMES):
            shown.pan_by(QPointF(-9 if at < _FRAMES // 2 else 9, 2 if at % 2 else -2))
            begun = time.thread_time()
            shown.viewport().repaint()
            taken.append((time.thread_time() - begun) * 1000)
        return len(taken)

    pan()
    slowest = float(np.percentile(taken, 95))
    frames, expected = bench(
        f"{_FRAMES} times the map of {plants:,} plants moved and repainted, zoom {zoom:g}",
        pan,
        reference="an empty widget repainted as often",
        run_reference=lambda: sum(bare.viewport().repaint() is None for _ in range(_FRAMES)),
        reach=f"95 of 100 within {within}, here {slowest:.1f} ms",
    )
    assert frames == expected
    assert app is not None


def test_panning_and_pointing_in_the_picture(bench: Any) -> None:
    """The folded picture of a large book: repaints as it is dragged, and the tag at a point."""
    from PySide6.QtCore import QPoint

    from pedigreeview.drawing.placing import place
    from pedigreeview.drawing.view import Look, choose
    from pedigreeview.window.canvas import PedigreeCanvas

    app, bare = _app(), _bare()
    net = PedigreeNetwork.from_records(garden(scaled(5000)))
    looks = [Look(focus=code, up=6, down=6) for code in focuses(net.book, 12)]
    placed = max((place(choose(net, look)) for look in looks), key=lambda one: len(one.blocks))
    canvas = _shown(PedigreeCanvas())
    canvas.show_placed(placed, animate=False)
    across = canvas.horizontalScrollBar()
    taken: list[float] = []

    def pan() -> int:
        taken.clear()
        for at in range(_FRAMES):
            across.setValue(across.value() + (11 if at < _FRAMES // 2 else -11))
            begun = time.thread_time()
            canvas.viewport().repaint()
            taken.append((time.thread_time() - begun) * 1000)
        return len(taken)

    pan()
    codes = [
        c for c in canvas.visible_codes() if canvas.viewport().rect().contains(canvas.where(c))
    ]
    spots: list[QPoint] = [canvas.where(code) for code in codes]
    begun = time.thread_time()
    found = [canvas.at(spot) for spot in spots]
    hit = (time.thread_time() - begun) * 1000 / max(len(spots), 1)
    slowest = float(np.percentile(taken, 95))
    frames, expected = bench(
        f"{_FRAMES} times a picture of {len(placed.blocks)} blocks moved and repainted",
        pan,
        reference="an empty widget repainted as often",
        run_reference=lambda: sum(bare.viewport().repaint() is None for _ in range(_FRAMES)),
        reach=f"95 of 100 within 16 ms, here {slowest:.1f} ms; what lies at a point within 0.1 ms, "
        f"here {hit:.4f} ms",
    )
    assert frames == expected
    assert found == codes
    assert codes
    assert app is not None


_MEMORY = """
import gc, os, sys, tracemalloc
from PySide6.QtWidgets import QApplication
from pedigreeview.drawing.overview import overview_of
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.overview import BookMap
from tests.benchmarks.garden import garden
def held():
    gc.collect()
    with open("/proc/self/statm") as told:
        return int(told.read().split()[1]) * os.sysconf("SC_PAGE_SIZE")
app = QApplication([])
def shown(overview):
    made = BookMap()
    made.resize(1280, 800)
    made.show()
    made.show_overview(overview)
    made.viewport().repaint()
    made.zoom_by(6)
    made.viewport().repaint()
    return made
book = garden(int(sys.argv[1]))
# Once before, so that no module is loaded while memory is looked at.
overview_of(PedigreeNetwork.from_records(book))
first = shown(overview_of(PedigreeNetwork.from_records(garden(50))))
net = PedigreeNetwork.from_records(book)
tracemalloc.start()
overview = overview_of(net)
gc.collect()
arrays = tracemalloc.get_traced_memory()[0]
tracemalloc.stop()
before = held()
second = shown(overview)
print((arrays + held() - before) / 1e6, flush=True)
os._exit(0)
"""


@pytest.mark.skipif(not Path("/proc/self/statm").exists(), reason="no such account of memory here")
def test_memory(bench: Any) -> None:
    """What a map of the whole book adds to a process of its own.

    Its arrays as Python counts them, and by how much the process grows for the widget.
    """
    plants = scaled(20_000)
    env = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(_ROOT)}

    def run(count: int) -> float:
        made = subprocess.run(
            [sys.executable, "-c", _MEMORY, str(count)],
            env=env,
            cwd=_ROOT,
            capture_output=True,
            text=True,
            timeout=300,
            check=True,
        )
        return float(made.stdout.strip())

    added = run(plants)
    found, small = bench(
        f"a process that shows the map of {plants:,} plants",
        lambda: run(plants),
        reference="the same of 50 plants",
        run_reference=lambda: run(50),
        reach="at most 60 MB added at 20,000 plants",
        rounds=1,
        reference_rounds=1,
        memory=f"{added:.0f} MB",
    )
    assert found < 60
    assert small < 60
