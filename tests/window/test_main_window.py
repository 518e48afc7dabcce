"""Journeys through the window with real clicks and keys: open, walk, find, back and forward."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import QApplication, QMenu
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.faults_dialog import FaultsDialog
from pedigreeview.window.founders_question import FoundersQuestion
from pedigreeview.window.labels import LinkLabel
from pedigreeview.window.legend_panel import Legend
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.opening import Stated
from pedigreeview.window.pages import page_words
from pedigreeview.window.preferences import ANSWERS, Preferences
from pedigreeview.window.save_picture import SavePicture

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
SILENT = "plant,seed_parent,pollen_parent\nF1,Red,White\nBC1,F1,Red\n"


def drop(window: MainWindow, path: Path) -> None:
    """Drop a file on the window as a file manager does."""
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    action, none = Qt.DropAction.CopyAction, Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(QPoint(400, 300), action, data, LEFT, none)
    QApplication.sendEvent(window, enter)
    assert enter.isAccepted()
    QApplication.sendEvent(window, QDropEvent(QPointF(400, 300), action, data, LEFT, none))
    QApplication.processEvents()


def click_plant(qtbot: QtBot, window: MainWindow, code: str) -> None:
    canvas = window.pedigree.canvas
    at = canvas.where(code)
    assert at != QPoint(-1, -1), f"{code} is not in the picture"
    qtbot.mouseClick(canvas.viewport(), LEFT, pos=at)


def rest(qtbot: QtBot, window: MainWindow) -> None:
    """Wait until the picture has come to rest, with the card out of the way."""
    if window.pedigree.card.isVisible():
        qtbot.mouseClick(window.pedigree.card.close_button, LEFT)
    with qtbot.waitSignal(window.pedigree.came_to_rest, timeout=3000):
        window.pedigree.fit()


def test_a_demo_opens_by_a_click_on_the_first_page(
    qtbot: QtBot, window: MainWindow, settle: Settle
) -> None:
    assert window.page() == ""
    card = next(c for c in window.welcome.demo_cards if c.entry.path.name == "two_peas_both_ways")
    qtbot.mouseClick(card, LEFT)
    settle()
    assert window.page() == "pedigree"
    assert window.book_name.text() == "Two peas, both ways"
    assert window.pedigree.focus in window.pedigree.canvas.visible_codes()


def test_walk_to_a_founder_by_keys(qtbot: QtBot, peas: MainWindow) -> None:
    canvas = peas.pedigree.canvas
    peas.show_plant("23-07")
    qtbot.keyClick(canvas, Qt.Key.Key_Up)
    assert peas.pedigree.selected == "21-01-3"
    qtbot.keyClick(canvas, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert peas.pedigree.selected == "BA"
    assert peas.pedigree.focus == "23-07"
    qtbot.keyClick(canvas, Qt.Key.Key_Return)
    assert peas.pedigree.focus == "BA"


def test_walk_to_mate_partner_and_neighbour(qtbot: QtBot, peas: MainWindow) -> None:
    canvas = peas.pedigree.canvas
    peas.show_plant("TP")
    qtbot.keyClick(canvas, Qt.Key.Key_M)
    assert peas.pedigree.selected == "BA"
    qtbot.keyClick(canvas, Qt.Key.Key_R)
    assert peas.pedigree.selected == "TP"
    qtbot.keyClick(canvas, Qt.Key.Key_Up)
    assert peas.pedigree.selected == "TP"
    assert "No seed parent" in peas.said.text()
    row = [code for code in canvas.visible_codes() if code in ("TP", "BA")]
    qtbot.keyClick(canvas, Qt.Key.Key_Right if row[0] == "TP" else Qt.Key.Key_Left)
    assert peas.pedigree.selected == "BA"


def test_a_click_on_a_tag_focuses_it_and_back_returns(qtbot: QtBot, peas: MainWindow) -> None:
    first = peas.pedigree.focus
    rest(qtbot, peas)
    click_plant(qtbot, peas, "TP")
    assert peas.pedigree.focus == "TP"
    qtbot.waitUntil(lambda: peas.pedigree.card.code == "TP", timeout=3000)
    assert peas.pedigree.card.isVisible()
    qtbot.keyClick(peas, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert peas.pedigree.focus == first
    qtbot.mouseClick(peas.forward_button, LEFT)
    assert peas.pedigree.focus == "TP"
    assert not peas.forward_button.isEnabled()


def test_back_crosses_pages(qtbot: QtBot, peas: MainWindow) -> None:
    qtbot.mouseClick(peas.rail.tag("reciprocals"), LEFT)
    assert peas.page() == "reciprocals"
    assert peas.base_line.isVisible()
    place = [words.name for words in page_words()].index("checks") + 1
    key = Qt.Key(Qt.Key.Key_0.value + place)
    qtbot.keyClick(peas, key, Qt.KeyboardModifier.ControlModifier)
    assert peas.page() == "checks"
    qtbot.mouseClick(peas.back_button, LEFT)
    assert peas.page() == "reciprocals"


def test_find_as_you_type(qtbot: QtBot, peas: MainWindow) -> None:
    qtbot.keyClick(peas, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    assert peas.find_field.hasFocus()
    qtbot.keyClicks(peas.find_field, "brock")
    assert peas.find_field.found.isVisible()
    assert peas.find_field.model.code(0) == "BA"
    qtbot.keyClick(peas.find_field, Qt.Key.Key_Return)
    assert peas.pedigree.focus == "BA"
    assert not peas.find_field.found.isVisible()
    assert peas.pedigree.canvas.hasFocus()


def test_index_drawer_filters(qtbot: QtBot, peas: MainWindow) -> None:
    qtbot.mouseClick(peas.pedigree.index_button, LEFT)
    drawer = peas.pedigree.drawer
    assert drawer.isVisible()
    qtbot.keyClicks(drawer.filter, "21-02-")
    codes = [drawer.model.code(row) for row in range(drawer.model.rowCount())]
    assert codes[:6] == [f"21-02-{n}" for n in range(1, 7)]
    place = drawer.list.visualRect(drawer.model.index(2, 0)).center()
    qtbot.mouseClick(drawer.list.viewport(), LEFT, pos=place)
    assert peas.pedigree.focus == "21-02-3"


def test_card_links_lead_on(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    peas.show_plant("21-01-3")
    settle()
    labels = peas.pedigree.card.findChildren(LinkLabel)
    parents = next(
        label for label in labels if label.accessibleName() == "Parents" and label.isVisible()
    )
    parents.setFocus()
    qtbot.keyClick(parents, Qt.Key.Key_Tab)
    qtbot.keyClick(parents, Qt.Key.Key_Return)
    assert peas.pedigree.focus in ("TP", "BA")


def test_a_table_with_silent_founders_asks_once(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "mine.csv"
    path.write_text(SILENT, encoding="utf-8")
    drop(window, path)
    settle()
    question = window.dialog
    assert isinstance(question, FoundersQuestion)
    assert window.opened is None
    qtbot.mouseClick(question.choices["clone"], LEFT, pos=QPoint(8, 8))
    qtbot.mouseClick(question.use, LEFT)
    settle()
    assert window.opened is not None
    assert window.opened.net.inbreeding("BC1") == 0.25
    window.close_book()
    window.open_path(path)
    settle()
    assert window.dialog is None
    assert window.opened.net.inbreeding("BC1") == 0.25


def test_the_answer_can_be_changed_from_the_base_line(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "mine.csv"
    path.write_text(SILENT, encoding="utf-8")
    drop(window, path)
    settle()
    assert isinstance(window.dialog, FoundersQuestion)
    qtbot.mouseClick(window.dialog.use, LEFT)
    settle()
    assert window.opened is not None
    assert window.opened.net.inbreeding("BC1") == 0.5
    qtbot.mouseClick(window.base_line, LEFT)
    qtbot.mouseClick(window.dialog.change, LEFT)  # type: ignore[union-attr]
    settle()
    assert isinstance(window.dialog, FoundersQuestion)
    assert window.dialog.choices["seed_true"].isChecked()
    qtbot.mouseClick(window.dialog.choices["open_pollinated"], LEFT, pos=QPoint(8, 8))
    qtbot.mouseClick(window.dialog.use, LEFT)
    settle()
    assert window.opened.net.inbreeding("BC1") == 0.0


def test_escape_at_the_question_opens_nothing(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "mine.csv"
    path.write_text(SILENT, encoding="utf-8")
    drop(peas, path)
    settle()
    assert isinstance(peas.dialog, FoundersQuestion)
    qtbot.keyClick(peas.dialog, Qt.Key.Key_Escape)
    settle()
    assert peas.book_name.text() == "Two peas, both ways"


def test_a_faulty_file_shows_all_faults_and_keeps_the_former_book(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "wrong.csv"
    path.write_text(
        "plant,seed_parent,pollen_parent,selfings\nA,,,\nB,A,A,many\nB,A,A,\nC,A,B,-2\n",
        encoding="utf-8",
    )
    drop(peas, path)
    settle()
    dialog = peas.dialog
    assert isinstance(dialog, FaultsDialog)
    shown = [dialog.list.item(row).text() for row in range(dialog.list.count())]
    assert len(shown) == 3
    assert all("wrong.csv" in line and "Traceback" not in line for line in shown)
    dialog.copy()
    assert "wrong.csv" in QGuiApplication.clipboard().text()
    qtbot.mouseClick(dialog.close_button, LEFT)
    assert peas.book_name.text() == "Two peas, both ways"
    assert peas.preferences.recent() == [peas.opened.path]  # type: ignore[union-attr]


def test_a_missing_file_is_a_sentence(window: MainWindow, settle: Settle, tmp_path: Path) -> None:
    window.open_path(tmp_path / "gone.csv")
    settle()
    assert isinstance(window.dialog, FaultsDialog)
    assert window.dialog.list.count() == 1
    assert window.page() == ""


def test_cancel_drops_the_answer(qtbot: QtBot, window: MainWindow, settle: Settle) -> None:
    window.open_path(Path(__file__).parent)
    window.door.cancel()
    settle()
    window.errands.close()
    QApplication.processEvents()
    assert window.dialog is None
    assert window.opened is None


def test_recent_files_are_listed_and_missing_ones_can_be_taken_out(
    window: MainWindow, tmp_path: Path
) -> None:
    there, gone = tmp_path / "there.csv", tmp_path / "gone.csv"
    there.write_text(SILENT, encoding="utf-8")
    for path in (gone, there):
        window.preferences.note_recent(path)
    window.close_book()
    assert window.preferences.recent() == [there, gone]
    window.welcome.forget.emit(gone)
    assert window.preferences.recent() == [there]


def test_every_control_has_a_name(peas: MainWindow) -> None:
    from PySide6.QtWidgets import QAbstractButton, QComboBox, QLineEdit, QSpinBox

    for sort in (QAbstractButton, QComboBox, QSpinBox):
        for control in peas.findChildren(sort):
            if control.objectName().startswith("qt_") or not control.isVisible():
                continue
            text = control.text() if isinstance(control, QAbstractButton) else ""
            assert control.accessibleName() or len(text) > 1, control
    assert all(
        field.accessibleName()
        for field in (peas.find_field, *peas.findChildren(QLineEdit))
        if not field.objectName().startswith("qt_")
    )


@pytest.mark.parametrize("look", ["dark", "light"])
def test_light_and_dark(peas: MainWindow, settle: Settle, look: str) -> None:
    peas.set_look(look)
    settle()
    lightness = peas.grab().toImage().pixelColor(700, 60).lightness()
    assert (lightness < 80) == (look == "dark")
    assert peas.preferences.look == look


def test_text_at_200_percent_keeps_within_the_window(peas: MainWindow, settle: Settle) -> None:
    peas.set_text_size(200)
    settle()
    QApplication.processEvents()
    assert peas.minimumSizeHint().width() <= 1280
    tools = peas.pedigree.tools
    shown = [item for item in tools.items if item.isVisible()]
    for button in (*shown, tools.more, peas.look_button):
        corner = button.mapTo(peas, QPoint(button.width(), button.height()))
        assert corner.x() <= peas.width()
        assert button.width() >= button.sizeHint().width()
    assert tools.index in shown
    assert {item.y() for item in shown if item is not tools.trail} <= set(range(tools.height()))
    assert "Sideways" in tools.left_out()
    assert peas.pedigree.canvas.text_scale() == 2.0
    peas.set_text_size(100)


def test_the_menu_of_a_tag(qtbot: QtBot, peas: MainWindow) -> None:
    peas.pedigree.canvas.menu_wanted.emit("TP", QPoint(200, 200))
    menu = peas.pedigree.stage.findChild(QMenu, options=Qt.FindChildOption.FindDirectChildrenOnly)
    assert menu is not None
    texts = [action.text() for action in menu.actions()]
    assert texts[:2] == ["Write down", "Look at"]
    menu.actions()[texts.index("Focus on Tarnwick Pale (TP)")].trigger()
    menu.close()
    assert peas.pedigree.focus == "TP"


def test_the_whole_book_and_back_to_the_focus(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    before = peas.pedigree.focus
    qtbot.mouseClick(peas.pedigree.whole_button, LEFT)
    settle()
    placed = peas.pedigree.canvas.placed
    assert placed is not None
    assert placed.view.focus is None
    assert placed.view.shown() == set(peas.opened.net.codes)  # type: ignore[union-attr]
    qtbot.mouseClick(peas.pedigree.whole_button, LEFT)
    assert peas.pedigree.focus == before


def test_work_under_way_shows_after_a_while_with_cancel(qtbot: QtBot, window: MainWindow) -> None:
    window.work.begin("Opening")
    assert not window.work.isVisible()
    qtbot.waitUntil(window.work.isVisible, timeout=3000)
    qtbot.mouseClick(window.work.cancel, LEFT)
    assert not window.work.isVisible()


def test_settings_of_the_command_line_leave_nothing_to_ask(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    table = tmp_path / "book.csv"
    table.write_text(SILENT, encoding="utf-8")
    window.open_path(table, Stated("plant"))
    settle()
    assert window.dialog is None
    assert window.opened is not None
    assert window.opened.net.inbreeding("BC1") == 0.25


def test_a_cutting_of_a_silent_founder_is_no_fault_before_the_question(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    table = tmp_path / "book.csv"
    table.write_text(
        "plant,seed_parent,pollen_parent,raised\nF1,Red,White,\npiece,Red,,cutting_of\n",
        encoding="utf-8",
    )
    window.open_path(table)
    settle()
    assert isinstance(window.dialog, FoundersQuestion)
    window.dialog.answered.emit(ANSWERS["clone"])
    settle()
    assert window.opened is not None
    assert window.opened.net.parents("piece").source == "Red"


def test_the_picture_is_fitted_beside_the_card(qtbot: QtBot, peas: MainWindow) -> None:
    page = peas.pedigree
    peas.resize(1600, 900)
    with qtbot.waitSignal(page.came_to_rest, timeout=3000):
        page.fit()
    assert page.card.isVisible()
    card = page.card.geometry()
    blocks = [rect.toRect() for rect in page.canvas.rects_shown()]
    assert len(blocks) > 10
    assert not any(card.intersects(block) for block in blocks)


def test_ctrl_e_saves_and_escape_returns_from_the_find_field(
    qtbot: QtBot, peas: MainWindow
) -> None:
    peas.go_find()
    qtbot.keyClicks(peas.find_field, "23-0")
    qtbot.keyClick(peas.find_field, Qt.Key.Key_Escape)
    assert peas.pedigree.canvas.hasFocus()
    assert peas.find_field.text() == ""
    peas.go_find()
    qtbot.keyClick(peas.find_field, Qt.Key.Key_E, Qt.KeyboardModifier.ControlModifier)
    assert isinstance(peas.dialog, SavePicture)


def test_the_pair_stays_lit_while_the_focus_changes(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    page.pin("TP")
    page.pin("21-01-3")
    settle()
    assert page.canvas._lit.blocks
    peas.show_plant("23-07")
    settle()
    assert page.canvas.placed is not None
    view = page.canvas.placed.view
    assert {view.block_of(code) for code in ("TP", "21-01-3")} <= page.canvas._lit.blocks


def test_index_and_slip_take_turns(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    page = peas.pedigree
    page.pin("TP")
    assert page.slip.isVisible()
    qtbot.mouseClick(page.index_button, LEFT)
    assert page.drawer.isVisible()
    assert not page.slip.isVisible()
    qtbot.keyClick(page.drawer.filter, Qt.Key.Key_Escape)
    assert not page.drawer.isVisible()
    assert page.slip.isVisible()
    page.index_button.click()
    page.pin("BA")
    assert page.slip.isVisible()
    assert not page.drawer.isVisible()


def test_the_key_shows_the_signs_over_the_picture(qtbot: QtBot, peas: MainWindow) -> None:
    page = peas.pedigree
    qtbot.mouseClick(page.key_button, LEFT)
    assert page.key.isVisible()
    assert "Selfing" in page.key.legend.accessibleName()
    qtbot.keyClick(page.key.close_button, Qt.Key.Key_Escape)
    assert not page.key.isVisible()
    assert not page.key_button.isChecked()


def test_help_draws_every_sign(peas: MainWindow) -> None:
    peas.asides.help_signs()
    (legend,) = peas.dialog.findChildren(Legend)  # type: ignore[union-attr]
    assert "Reciprocal pair" in legend.accessibleName()
    image = legend.grab().toImage()
    seen = {image.pixel(x, y) for x in range(0, image.width(), 7) for y in range(0, 60, 3)}
    assert len(seen) > 3


def test_the_trail_says_what_it_is(peas: MainWindow) -> None:
    peas.show_plant("TP")
    peas.show_plant("BA")
    text = peas.pedigree.tools.trail.text()
    assert text.startswith("Visited: ")
    assert " › " not in text


def test_demos_begin_with_the_peas(window: MainWindow) -> None:
    names = [card.entry.path.name for card in window.welcome.demo_cards]
    assert names[:2] == ["two_peas_both_ways", "newcomers_table.csv"]


def test_large_text_keeps_the_first_focus_in_sight(
    window: MainWindow, preferences: Preferences, settle: Settle
) -> None:
    window.set_text_size(200)
    window.open_path(demo("a_leaf_for_hollin_plate"))
    settle()
    canvas = window.pedigree.canvas
    shown = canvas.rect_of(window.pedigree.focus)
    window.set_text_size(100)
    assert canvas.viewport().rect().contains(shown.center())


def test_an_empty_book_says_what_to_do_and_shows_no_former_picture(
    qtbot: QtBot, peas: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    table = tmp_path / "empty.csv"
    table.write_text("plant,seed_parent,pollen_parent\n", encoding="utf-8")
    peas.open_path(table)
    settle()
    canvas = peas.pedigree.canvas
    assert canvas.placed is None
    assert canvas.visible_codes() == []
    ground = canvas.grab().toImage()
    colours = {
        ground.pixel(x, y)
        for x in range(200, ground.width() - 200, 3)
        for y in range(ground.height() // 2 - 60, ground.height() // 2 + 60, 3)
    }
    assert len(colours) > 3, "nothing is written on the empty ground"
    assert not peas.pedigree.card.isVisible()
