"""The picture saved from the window and read back."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.save_picture import SavePicture

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


def dialog_of(qtbot: QtBot, window: MainWindow) -> SavePicture:
    qtbot.keyClick(window, Qt.Key.Key_E, Qt.KeyboardModifier.ControlModifier)
    found = window.dialog
    assert isinstance(found, SavePicture)
    return found


def test_an_svg_is_written_and_its_text_can_be_read(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    peas.show_plant("21-01-3")
    dialog = dialog_of(qtbot, peas)
    path = tmp_path / "out.svg"
    dialog.file.selectAll()
    qtbot.keyClicks(dialog.file, str(path))
    dialog.title.selectAll()
    qtbot.keyClicks(dialog.title, "My peas")
    with qtbot.waitSignal(dialog.saved, timeout=15000):
        qtbot.mouseClick(dialog.save_button, LEFT)
    root = ElementTree.parse(path).getroot()
    text = "".join(root.itertext())
    assert "My peas" in text
    assert "21-01-3" in text
    assert "fixation 1" in text
    assert path.name in peas.said.text()


def test_graph_files_and_a_fault_in_a_sentence(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    dialog = dialog_of(qtbot, peas)
    dialog.kind.setCurrentIndex(4)
    assert dialog.file.text().endswith(".graphml")
    dialog.file.setText(str(tmp_path / "nowhere" / "out.graphml"))
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert dialog.isVisible()
    assert "Traceback" not in dialog.message.text()
    assert len(dialog.message.text()) > 10
    dialog.file.setText(str(tmp_path / "out.graphml"))
    with qtbot.waitSignal(dialog.saved, timeout=15000):
        qtbot.mouseClick(dialog.save_button, LEFT)
    assert (tmp_path / "out.graphml").read_text(encoding="utf-8").count("<node ") > 200
