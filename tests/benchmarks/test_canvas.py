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


def _largest() -> Any:
    """The folded picture of a large book with the most blocks, of twelve focuses."""
    from pedigreeview.drawing.placing import place
    from pedigreeview.drawing.view import Look, choose

    net = PedigreeNetwork.from_records(garden(scaled(5000)))
    looks = [Look(focus=code, up=6, down=6) for code in focuses(net.book, 12)]
    return max((place(choose(net, look)) for look in looks), key=lambda one: len(one.blocks))


def _picture(placed: Any) -> Any:
    from pedigreeview.window.canvas import PedigreeCanvas

    canvas = _shown(PedigreeCanvas())
    canvas.show_placed(placed, animate=False)
    return canvas


def _work(job: Any) -> float:
    """Milliseconds that this thread is at work on a job: other programs share the cores."""
    begun = time.thread_time()
    job()
    return (time.thread_time() - begun) * 1000


def _pushed(canvas: Any, across: int, down: int = 0) -> None:
    """Two fingers push the picture by so many pixels, and it is painted at once."""
    from PySide6.QtCore import QPoint, QPointF, Qt
    from PySide6.QtGui import QWheelEvent

    spot = QPointF(canvas.viewport().rect().center())
    event = QWheelEvent(
        spot,
        spot,
        QPoint(across, down),
        QPoint(0, 0),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.ScrollUpdate,
        False,
    )
    _app().sendEvent(canvas.viewport(), event)
    canvas.viewport().repaint()


def test_panning_and_pointing_in_the_picture(bench: Any) -> None:
    """The folded picture of a large book: repaints as it is pushed, and the tag at a point."""
    from PySide6.QtCore import QPoint

    app, bare = _app(), _bare()
    placed = _largest()
    canvas = _picture(placed)
    first = _work(canvas.viewport().repaint)
    first_push = _work(lambda: _pushed(canvas, -11))
    taken: list[float] = []

    def pan() -> int:
        taken.clear()
        for at in range(_FRAMES):
            way = 1 if at < _FRAMES // 2 else -1
            taken.append(_work(lambda way=way: _pushed(canvas, -11 * way, -3 * way)))
        return len(taken)

    pan()
    # What lies under the names of the generations cannot be pointed at.
    clear = canvas.clear_area().toRect()
    codes = [code for code in canvas.visible_codes() if clear.contains(canvas.where(code))]
    spots: list[QPoint] = [canvas.where(code) for code in codes]
    begun = time.thread_time()
    found = [canvas.at(spot) for spot in spots]
    hit = (time.thread_time() - begun) * 1000 / max(len(spots), 1)
    middle, slowest = (float(np.percentile(taken, part)) for part in (50, 95))
    frames, expected = bench(
        f"{_FRAMES} times a picture of {len(placed.blocks)} blocks moved and repainted",
        pan,
        reference="an empty widget repainted as often",
        run_reference=lambda: sum(bare.viewport().repaint() is None for _ in range(_FRAMES)),
        reach=f"95 of 100 within 16 ms, here {slowest:.1f} ms, median {middle:.1f} ms; first "
        f"painted in {first:.1f} ms, the first move in {first_push:.1f} ms; what lies at a point "
        f"within 0.1 ms, here {hit:.4f} ms",
    )
    assert frames == expected
    assert found == codes
    assert codes
    assert app is not None


def test_what_repaints_the_picture(bench: Any) -> None:
    """Zoom, the tag under the pointer, a filter: nothing, little or all is painted afresh."""
    app, bare = _app(), _bare()
    placed = _largest()
    canvas = _picture(placed)
    canvas.viewport().repaint()
    codes = canvas.visible_codes()
    taken: dict[str, list[float]] = {}

    def acts(at: int) -> dict[str, Any]:
        return {
            "zoom": lambda: canvas.zoom_by(1.03 if at % 2 else 1 / 1.03),
            "another tag marked": lambda: canvas.set_selected(codes[at % len(codes)]),
            "a filter": lambda: canvas.set_faded(codes[at % 3 :: 3]),
        }

    def run() -> int:
        taken.clear()
        for at in range(_FRAMES // 3):
            for name, act in acts(at).items():
                taken.setdefault(name, []).append(
                    _work(lambda act=act: (act(), canvas.viewport().repaint()))
                )
        return sum(map(len, taken.values()))

    run()
    said = "; ".join(
        f"{name}: median {np.median(times):.1f} ms, 95 of 100 {np.percentile(times, 95):.1f} ms"
        for name, times in taken.items()
    )
    frames, expected = bench(
        f"{_FRAMES} times a picture of {len(placed.blocks)} blocks changed and repainted",
        run,
        reference="an empty widget repainted as often",
        run_reference=lambda: sum(bare.viewport().repaint() is None for _ in range(_FRAMES)),
        reach=f"95 of 100 within 16 ms; {said}",
    )
    assert frames == expected
    assert app is not None


def test_memory_of_the_picture() -> None:
    """The picture that is kept takes four bytes a pixel of the window, and no more is kept."""
    from pedigreeview.drawing.kept_picture import MOST_PIXELS

    canvas = _picture(_largest())
    for at in range(20):
        _pushed(canvas, -40, 7 * (at % 3))
        canvas.zoom_by(1.01)
        canvas.viewport().repaint()
    sheet = canvas._kept._sheet
    assert sheet.size() == canvas.viewport().size()
    assert sheet.depth() == 32
    assert MOST_PIXELS * 4 < 60e6


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
