"""The map of a whole book: made, painted, pointed at, beside plain Python over the same plants."""

from __future__ import annotations

import os
import time
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import pedigreeview
from pedigreeview.network import PedigreeNetwork
from tests.benchmarks import pedigrees
from tests.benchmarks.pedigrees import scaled

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

SIZES = ((5_000, "200 ms", "16 ms"), (20_000, "500 ms", "33 ms"), (100_000, "1.5 s", "33 ms"))
SHAPES = ("wide", "deep")
_FRAMES = 60


def _net(tmp_path: Path, plants: int, shape: str) -> PedigreeNetwork:
    path = tmp_path / "book.csv"
    pedigrees.table(path, *getattr(pedigrees, shape)(plants))
    net: PedigreeNetwork = pedigreeview.read(path)
    return net


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize(("full", "within", "_"), SIZES)
def test_making(bench: Any, tmp_path: Path, full: int, within: str, _: str, shape: str) -> None:
    from pedigreeview.drawing.overview import overview_of

    plants = scaled(full)
    net = _net(tmp_path, plants, shape)

    def fresh() -> PedigreeNetwork:
        # Links and ranks are kept with a network, so each round has a new one.
        return PedigreeNetwork.from_records(net.book)

    def by_hand() -> int:
        return sum(len(net.parent_codes(code)) for code in net.codes)

    overview, links = bench(
        f"map of {plants:,} plants ({shape})",
        overview_of,
        setup=fresh,
        reference="asking every plant for its parents",
        run_reference=by_hand,
        reach=f"at most {within} at full size",
    )
    assert len(overview) == plants
    assert links >= len(overview.above)


def _painting(net: PedigreeNetwork) -> tuple[Any, Any, Any, Any]:
    from PySide6.QtGui import QGuiApplication, QImage

    from pedigreeview.drawing.overview import overview_of
    from pedigreeview.drawing.overview_painter import OverviewPainter
    from pedigreeview.drawing.theme import theme

    app = QGuiApplication.instance() or QGuiApplication([])
    overview = overview_of(net)
    image = QImage(1200, 800, QImage.Format.Format_RGB32)
    return app, overview, OverviewPainter(overview, theme("light")), image


@pytest.mark.parametrize("zoom", [1.0, 6.0, 60.0])
@pytest.mark.parametrize(("full", "_", "within"), SIZES)
def test_panning(bench: Any, tmp_path: Path, full: int, _: str, within: str, zoom: float) -> None:
    from PySide6.QtGui import QPainter

    from pedigreeview.drawing.overview_raster import Frame

    plants = scaled(full)
    _app, overview, painter, image = _painting(_net(tmp_path, plants, "deep"))
    bands = len(overview.counts)
    across, down = 1080 / overview.width * zoom, 780 / bands * min(zoom, 3.0)
    taken: list[float] = []

    def pan() -> int:
        taken.clear()
        for at in range(_FRAMES):
            part = at / _FRAMES
            x, y = overview.width * part * (1 - 1 / zoom), bands * part * (1 - 1 / min(zoom, 3.0))
            begun = time.perf_counter()
            on = QPainter(image)
            try:
                painter.paint(on, Frame(x, y - 0.2, across, down, 1200, 800, 112))
            finally:
                on.end()
            taken.append(time.perf_counter() - begun)
        return len(taken)

    def bare() -> int:
        for _ in range(_FRAMES):
            on = QPainter(image)
            try:
                on.fillRect(0, 0, 1200, 800, 0)
            finally:
                on.end()
        return _FRAMES

    pan()
    slowest = float(np.percentile(taken, 95)) * 1000
    frames, expected = bench(
        f"{_FRAMES} frames of panning over {plants:,} plants at {zoom:g} times the fitted width",
        pan,
        reference="filling the same picture as often",
        run_reference=bare,
        reach=f"95 of 100 frames within {within} each; here within {slowest:.1f} ms",
    )
    assert frames == expected


@pytest.mark.parametrize(("full", "_", "__"), SIZES)
def test_pointing(bench: Any, tmp_path: Path, full: int, _: str, __: str) -> None:
    plants = scaled(full)
    _app, overview, _painter, _image = _painting(_net(tmp_path, plants, "deep"))
    rng = np.random.default_rng(3)
    spots = [
        (float(x), int(band))
        for x, band in zip(
            rng.uniform(0, overview.width, 1000),
            rng.integers(0, len(overview.counts), 1000),
            strict=True,
        )
    ]

    def point() -> list[int]:
        return [overview.at(x, band) for x, band in spots]

    def slowly() -> list[int]:
        found = []
        for x, band in spots[:20]:
            edges = overview.edges_of(band)
            inside = np.flatnonzero((edges <= x) & (x < edges + overview.pitch[band]))
            place = int(overview.starts[band]) + int(inside[0]) if len(inside) else -1
            found.append(int(overview.order[place]) if place >= 0 else -1)
        return found

    found, expected = bench(
        f"1,000 places of {plants:,} plants pointed at",
        point,
        reference="20 places by looking at the whole band",
        run_reference=slowly,
        reach="at most 0.1 s",
    )
    assert found[:20] == expected


@pytest.mark.parametrize(("full", "_", "__"), SIZES[2:])
def test_relatives_and_tints(bench: Any, tmp_path: Path, full: int, _: str, __: str) -> None:
    from pedigreeview.drawing.theme import theme
    from pedigreeview.drawing.tinting import Wanted, tint
    from pedigreeview.network.links import links_of

    plants = scaled(full)
    net = _net(tmp_path, plants, "deep")
    links, light = links_of(net), theme("light")
    row = plants // 2
    code = net.codes[row]

    def light_up() -> tuple[int, int, int]:
        above, below = links.ancestors(row), links.descendants(row)
        held = tint(net, Wanted("coancestry", code), light)
        return int(above.sum()), int(below.sum()), int((held.step > 0).sum())

    def by_sets() -> tuple[int, int]:
        return len(net.ancestors(code)), len(net.descendants(code))

    found, expected = bench(
        f"relatives of one of {plants:,} plants and the tint by coancestry with it",
        light_up,
        reference="its relatives as sets of codes",
        run_reference=by_sets,
        reach="at most 50 ms",
    )
    assert found[:2] == expected
