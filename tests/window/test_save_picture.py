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


def _previewed(dialog: SavePicture, settle: Settle) -> str:
    dialog._delay.stop()
    dialog._draw_preview()
    settle()
    return dialog.sheets_note.text()


def test_a_caption_and_a_margin_of_the_persons_own(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    peas.show_plant("21-01-3")
    dialog = dialog_of(qtbot, peas)
    usual = _previewed(dialog, settle)
    shown = dialog.preview.image.copy()
    assert dialog.margin.value() == 8
    dialog.margin.selectAll()
    qtbot.keyClicks(dialog.margin, "20")
    dialog.caption.setFocus()
    qtbot.keyClicks(dialog.caption, "Made <by hand>")
    qtbot.keyClick(dialog.caption, Qt.Key.Key_Return)
    qtbot.keyClicks(dialog.caption, "in June")
    assert dialog.isVisible()
    assert dialog._delay.isActive()
    said = _previewed(dialog, settle)
    wide, usually = (int(words.split()[0]) for words in (said, usual))
    assert wide - usually == 2 * (76 - 30)
    assert dialog.preview.image != shown
    path = tmp_path / "out.svg"
    dialog.file.setText(str(path))
    with qtbot.waitSignal(dialog.saved, timeout=15000):
        qtbot.mouseClick(dialog.save_button, LEFT)
    root = ElementTree.parse(path).getroot()
    assert {"Made <by hand>", "in June"} <= {"".join(one.itertext()) for one in root.iter()}
    assert root.get("viewBox", "").split()[2] == str(wide)


def test_what_was_chosen_stays_while_the_dialog_is_open(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    dialog = dialog_of(qtbot, peas)
    dialog.kind.setCurrentIndex(1)
    assert (dialog.margin.value(), dialog.margin.minimum()) == (10, 5)
    assert dialog.paper.isVisible()
    dialog.kind.setCurrentIndex(2)
    assert (dialog.margin.value(), dialog.margin.minimum()) == (8, 0)
    dialog.caption.setPlainText("Of my own")
    dialog.margin.setValue(17)
    dialog.kind.setCurrentIndex(5)
    assert not dialog.caption.isVisible()
    assert not dialog.margin.isVisible()
    assert _previewed(dialog, settle) == ""
    dialog.kind.setCurrentIndex(1)
    assert dialog.caption.isVisible()
    assert (dialog.caption.text(), dialog.margin.value()) == ("Of my own", 17)
    dialog.kind.setCurrentIndex(0)
    dialog.margin.setValue(2)
    dialog.kind.setCurrentIndex(1)
    assert dialog.margin.value() == 5
    assert dialog.finish().margin == 5


def test_what_does_not_fit_is_said_in_place_of_the_preview(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    dialog = dialog_of(qtbot, peas)
    dialog.kind.setCurrentIndex(1)
    dialog.paper.setCurrentText("A5")
    dialog.margin.setValue(50)
    assert _previewed(dialog, settle) == ""
    words = "Margins of 50 mm leave no room for the picture on A5."
    assert dialog.preview.accessibleDescription().startswith(words)
    dialog.file.setText(str(tmp_path / "out.pdf"))
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert dialog.message.text().startswith(words)
    assert dialog.save_button.isEnabled()
    assert list(tmp_path.glob("out*")) == []


def test_what_was_said_of_a_caption_goes_when_it_is_mended(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    dialog = dialog_of(qtbot, peas)
    dialog.file.setText(str(tmp_path / "out.svg"))
    dialog.caption.setPlainText("x" * 2001)
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert "2000 are the most" in dialog.message.text()
    dialog.caption.setPlainText("x")
    assert dialog.message.text() == ""


def test_the_network_as_gexf_and_as_json(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    dialog = dialog_of(qtbot, peas)
    dialog.kind.setCurrentIndex(6)
    assert dialog.file.text().endswith(".json")
    dialog.kind.setCurrentIndex(5)
    path = tmp_path / "out.gexf"
    dialog.file.setText(str(path))
    with qtbot.waitSignal(dialog.saved, timeout=15000):
        qtbot.mouseClick(dialog.save_button, LEFT)
    assert ElementTree.parse(path).getroot().tag.endswith("gexf")


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
