"""Bringing in a table step by step; at the end all of it is one edit, or nothing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QSizePolicy, QSplitter, QWidget

from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.exchange.import_plan import ImportPlan, planned
from pedigreeview.window.importing.bring_in_step import BringInStep
from pedigreeview.window.importing.bringing_dialog import BringingDialog
from pedigreeview.window.importing.choices_kept import keep_choices
from pedigreeview.window.importing.columns_step import ColumnsStep
from pedigreeview.window.importing.guessing import guessed
from pedigreeview.window.importing.halt import Halt
from pedigreeview.window.importing.preview_panel import PreviewPanel
from pedigreeview.window.importing.questions_step import QuestionsStep
from pedigreeview.window.importing.report_view import ReportView
from pedigreeview.window.importing.rows_below import RowsBelow
from pedigreeview.window.importing.same_step import SameStep
from pedigreeview.window.importing.sheet_step import SheetStep
from pedigreeview.window.importing.source import (
    Draft,
    Source,
    bring_in_book,
    look_alikes_in,
    read_source,
)
from pedigreeview.window.importing.steps import Step
from pedigreeview.window.importing.trail import trail
from pedigreeview.window.importing.words import chosen_words
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit
    from pedigreeview.exchange.importing import Imported
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.errands import Errands
    from pedigreeview.window.preferences import Preferences

__all__ = ["ImportWizard"]

_WORK = "open:bring-in"


class ImportWizard(BringingDialog):
    """The steps, the rows of the file below them, and Back, Next and Cancel."""

    made = Signal(object)
    """The path of a new book that was made from the table."""

    def __init__(
        self,
        path: Path,
        errands: Errands,
        desk: Desk,
        preferences: Preferences,
        folder: Path,
        parent: QWidget | None = None,
        note: str = "",
    ) -> None:
        """Begin with a file.

        Parameters
        ----------
        folder : where a new book is proposed to go
        note : why the steps are shown, said on top
        """
        super().__init__(errands, parent)
        self._path, self._desk, self._preferences = path, desk, preferences
        self._chosen = False
        self._unread = False
        """Whether work began while the rows below had still to be read."""
        opened = desk.opened
        self._title = opened.title if opened is not None else ""
        self.draft = Draft(Source(path), desk.book)
        self.setWindowTitle(self.tr("Bring in a table"))
        s = step()
        layout = column(s, 2 * s)
        self.setLayout(layout)
        into = self.tr("into {}").format(self._title) if opened else self.tr("into a new book")
        layout.addWidget(heading(self.tr("Bring in {}, {}").format(path.name, into), 2))
        self.note = sentence(note)
        self.note.setVisible(bool(note))
        layout.addWidget(self.note)
        self.trail = sentence("", "soft")
        self.trail.setTextFormat(Qt.TextFormat.RichText)
        layout.addWidget(self.trail)
        # Each part is filled in its place: put there whole, Qt would dress it twice over.
        self.split = QSplitter(Qt.Orientation.Vertical)
        layout.addWidget(self.split, 1)
        self.split.setChildrenCollapsible(False)
        self.split.setHandleWidth(max(3, s // 3))
        self.split.addWidget(self.stack)
        self.sheet, self.columns = SheetStep(self.stack), ColumnsStep(self.stack)
        self.questions, self.same = QuestionsStep(self.stack), SameStep(self.stack)
        self.bring_in = BringInStep(folder, self._title, self.stack)
        self.steps: list[Step] = [
            self.sheet, self.columns, self.questions, self.same, self.bring_in,
        ]  # fmt: skip
        self._shares: dict[Step, int] = {self.sheet: 30, self.columns: 60, self.questions: 60}
        self._report: ReportView | None = None
        for page in (self._waiting, *self.steps):
            self.stack.addWidget(page)
        self.preview = PreviewPanel(self.split)
        self._rows = RowsBelow(self.preview, errands, lambda: self.draft)
        layout.addWidget(self.message)
        self.back_button = action_button(self.tr("&Back"), self.back)
        self.next_button = action_button(self.tr("&Next"), self.go_on, main=True)
        layout.addLayout(self._foot(self.back_button, self.next_button))
        self._connect()
        self.resize(150 * s, 100 * s)
        # As they will lie at the first step, so that they lie still when the file is read.
        self._share_out(self._shares[self.sheet])
        self._read()

    @property
    def report(self) -> ReportView:
        """What came in; made when it is first wanted."""
        if self._report is None:
            self._report = ReportView(self._errands, self._path.parent, self.stack)
            self.stack.addWidget(self._report)
        return self._report

    def _connect(self) -> None:
        self.sheet.layout_wanted.connect(self._lay_out)
        for held in (self.columns, self.questions):
            held.changed.connect(self._plan_changed)
        self.preview.row_taken.connect(self._row_taken)
        self.preview.read_again.connect(self._read)
        self.finished.connect(self._leave)

    # Reading ------------------------------------------------------------------------------------

    def _read(self) -> None:
        """Read the file, again where it was mended meanwhile."""
        path, memory, before = self._path, self._preferences.layouts(), self.draft.plan
        order, tick = self._preferences.date_order, self._errands.tick

        def work() -> tuple[Source, ImportPlan | None]:
            source = read_source(path, tick)
            if source.book is not None or source.sheets is None:
                return source, None
            again = before is not None and any(
                held.name == before.sheet
                and [one.heading for one in before.columns] == held.headings(before.heading)
                for held in source.sheets.tables
                if before.heading is None or before.heading < len(held.rows)
            )
            if again:
                return source, before
            return source, guessed(source, memory, order, "", "guess", "", tick)

        def done(answer: tuple[Source, ImportPlan | None]) -> None:
            first = self.current() is None
            self.draft = replace(self.draft, source=answer[0], plan=answer[1], imported=None)
            start = self._next_of(None)
            if start is self.bring_in:
                # A whole book says itself what its columns are.
                self._find_same()
            elif first:
                self._show(start)
            else:
                self._refresh()

        self._begin(self.tr("Reading {} …").format(path.name), work, done)

    def _lay_out(self, sheet: str, at: object, form: str) -> None:
        source, memory = self.draft.source, self._preferences.layouts()
        order, tick = self._preferences.date_order, self._errands.tick

        def work() -> ImportPlan:
            return guessed(source, memory, order, sheet, at, form, tick)

        def done(plan: ImportPlan) -> None:
            self.draft.plan = plan
            self._refresh()

        self._begin(self.tr("Looking at the columns …"), work, done)

    def _row_taken(self, row: int) -> None:
        if self.current() is self.sheet and not self.busy:
            self.sheet.take_row(row)

    # Work off the window's thread -----------------------------------------------------------------

    def _begin(
        self,
        words: str,
        work: Callable[[], Any],
        done: Callable[[Any], None],
        halt: Halt | None = None,
    ) -> None:
        self._halt = halt if halt is not None else Halt()
        # What the rows below have to say is not waited for.
        self._unread = self._rows.stop()
        self._set_busy(words)

        def came(answer: Any) -> None:
            self._set_busy("")
            done(answer)

        def failed(fault: Fault) -> None:
            self._set_busy("")
            self._read_rows_yet()
            self._say_fault(fault)

        self._errands.ask(_WORK, work, came, failed)

    def _read_rows_yet(self) -> None:
        if self._unread:
            self._refresh_preview()

    def _set_busy(self, words: str) -> None:
        super()._set_busy(words)
        for widget in (self.stack, self.back_button, self.next_button):
            widget.setEnabled(not self.busy)

    def _say_fault(self, fault: Fault) -> None:
        if isinstance(fault, FileFaults) and self.draft.plan is not None:
            if self.current() not in (self.sheet, self.columns, self.questions):
                self._show(self.columns)
            self.preview.show_faults(fault.faults)
            self._say(
                self.tr(
                    "Nothing has come in: the cells that are marked cannot be read. Mend them in "
                    "the file and read it again, or give their column another meaning."
                )
            )
            return
        self._say_lines(fault)

    def reject(self) -> None:
        """Stop what is under way; else leave, with nothing changed."""
        if self.busy:
            if not self._halt.stop():
                self._say(self._too_late())
                return
            self._errands.drop(_WORK)
            self._set_busy("")
            self._read_rows_yet()
            self._say(self.tr("Stopped; nothing has come in."))
            return
        super().reject()

    def _too_late(self) -> str:
        if self.draft.into is None:
            return self.tr("The new book is written already and cannot be stopped any more.")
        return self.tr(
            "It is being written in the book and cannot be stopped any more; afterwards undo takes "
            "it back."
        )

    def _leave(self) -> None:
        if self._chosen:
            keep_choices(self._preferences, self.draft)
        self._gone = True
        self._halt.stop()
        self._rows.stop()
        for kind in (_WORK, "save:report"):
            self._errands.drop(kind)

    # Steps --------------------------------------------------------------------------------------

    def current(self) -> Step | None:
        """The step on show; None while the file is read first, and for the report."""
        shown = self.stack.currentWidget()
        return shown if isinstance(shown, Step) else None

    def _next_of(self, held: Step | None) -> Step:
        at = self.steps.index(held) + 1 if held is not None else 0
        return next(
            one
            for one in self.steps[at:]
            if one is self.bring_in or (one is not self.same and one.wanted(self.draft))
        )

    def _show(self, held: Step) -> None:
        held.show_draft(self.draft)
        self._turn_to(held)
        self._refresh_preview()
        if held in self._shares:
            # The few fields of a sheet are never squeezed, however large the text is.
            least = held.heightForWidth(self.split.width()) + step() if held is self.sheet else 0
            self._share_out(self._shares[held], least)
        self._tell_trail()
        at = self.steps.index(held)
        self.back_button.setEnabled(any(one.wanted(self.draft) for one in self.steps[:at]))
        last = held is self.bring_in
        self.next_button.setText(self.tr("Bring &in") if last else self.tr("&Next"))
        held.first_field().setFocus()
        self._say("")

    def _share_out(self, percent: int, least: int = 0) -> None:
        """Give the step its part of the height, the rest to the rows of the file."""
        share = max(percent * self.split.height() // 100, least)
        self.split.setSizes([share, self.split.height() - share])

    def _turn_to(self, page: QWidget) -> None:
        """Show a page; only that one says how much room it needs."""
        for at in range(self.stack.count()):
            one = self.stack.widget(at)
            assert one is not None
            policy = QSizePolicy.Policy.Preferred if one is page else QSizePolicy.Policy.Ignored
            one.setSizePolicy(policy, policy)
        self.stack.setCurrentWidget(page)

    def _tell_trail(self) -> None:
        self.trail.setText(trail(self.steps, self.current(), self.draft))

    def _refresh(self) -> None:
        held = self.current()
        if held is not None:
            held.show_draft(self.draft)
            self._tell_trail()
        self._refresh_preview()

    def back(self) -> None:
        """The step before."""
        held = self.current()
        if held is None:
            return
        before = self.steps[: self.steps.index(held)]
        for one in reversed(before):
            if one.wanted(self.draft):
                self._show(one)
                return

    def go_on(self) -> None:
        """The next step; from the last one, bring it in."""
        held = self.current()
        if isinstance(self.stack.currentWidget(), ReportView):
            self.accept()
        elif held is self.bring_in:
            self._bring_in()
        elif held is None:
            self._read()
        elif held is self.same:
            self._carry_out()
        else:
            plan = self.draft.plan
            missing = planned(plan) if plan is not None and held is not self.sheet else []
            if missing:
                self._say(missing[0])
                return
            after = self._next_of(held)
            if after in (self.columns, self.questions):
                self._show(after)
            else:
                self._find_same()

    def _find_same(self) -> None:
        draft = self.draft

        def done(found: list[Any]) -> None:
            draft.spellings = found
            groups = {code for one in found for code in one.codes}
            draft.same = {code: to for code, to in draft.same.items() if code in groups}
            if draft.plan is not None:
                draft.plan = replace(draft.plan, same=draft.same)
            if found:
                self._show(self.same)
            else:
                self._carry_out()

        words = self.tr("Looking for spellings of the same plant …")
        self._begin(words, lambda: look_alikes_in(draft, self._errands.tick), done)

    def _carry_out(self) -> None:
        draft = self.draft
        source, plan, into = draft.source, draft.plan, draft.into
        tick = self._errands.tick

        def work() -> Imported:
            from pedigreeview.exchange.importing import carry_out

            if plan is None or source.sheets is None:
                return bring_in_book(draft, tick)
            return carry_out(source.sheets, plan, into, tick=tick)

        def done(found: Imported) -> None:
            draft.imported = found
            self._show(self.bring_in)

        self._begin(self.tr("Reading every row …"), work, done)

    # The rows below -----------------------------------------------------------------------------

    def _plan_changed(self) -> None:
        self._chosen = True
        self._say("")
        self._tell_trail()
        self._refresh_preview()

    def _refresh_preview(self) -> None:
        held = self.current()
        wanted = held in (self.sheet, self.columns, self.questions) and self.draft.table is not None
        self.preview.setVisible(wanted)
        if wanted:
            self._rows.show(below=held is not self.sheet)

    # Writing ------------------------------------------------------------------------------------

    def _bring_in(self) -> None:
        found = self.draft.imported
        assert found is not None
        self._halt = Halt()
        if self.draft.into is None:
            self._make_book(found)
        elif found.large and self._desk.file is not None:
            self._set_busy(self.tr("Making a backup …"))

            def failed(fault: Fault) -> None:
                if self.busy:
                    self._set_busy("")
                    self._say_fault(fault)

            def kept() -> None:
                if self.busy:
                    self._record(found)

            self._desk.back_up(kept, failed)
        else:
            self._record(found)

    def _record(self, found: Imported) -> None:
        halt, sides = Halt(), self.bring_in.differences.sides()
        self._halt = halt

        def work(edit: Edit) -> None:
            found.apply(edit, sides, tick=halt.tick)
            halt.pass_on()

        def refused(fault: Fault) -> None:
            if not halt.stopped:
                self._set_busy("")
                self._say_fault(fault)

        def then(_: object) -> None:
            if not self._gone:
                self._done(found)

        self._set_busy(self.tr("Bringing it in …"))
        words = self.tr("bringing in {}").format(self._path.name)
        self._desk.record(words, work, then, refused)

    def _make_book(self, found: Imported) -> None:
        place = self.bring_in.place
        path, settings = place.path(), place.settings()
        tick, halt = self._errands.tick, Halt()

        def work() -> Path:
            from pedigreeview.book.book import Book
            from pedigreeview.book.book_file import BookFile
            from pedigreeview.book.edits import Edit

            edit = Edit(Book(settings=settings), "")
            found.apply(edit, tick=tick)
            book = replace(edit.book, row_ids=None)
            BookFile.create(path, book, tick=tick).close()
            try:
                halt.pass_on()
            except Fault:
                # Stop came while the last of it was written.
                path.unlink(missing_ok=True)
                raise
            return path

        def done(made: Path) -> None:
            self._done(found)
            self.made.emit(made)

        self._begin(self.tr("Writing the new book …"), work, done, halt)

    def _done(self, found: Imported) -> None:
        self._set_busy("")
        sheets, plan = self.draft.source.sheets, self.draft.plan
        if sheets is not None and plan is not None:
            from pedigreeview.exchange.import_layouts import remember

            memory = remember(self._preferences.layouts(), sheets, plan)
            self._preferences.set_layouts(memory)
        sides = self.bring_in.differences.sides()
        report = replace(found.report, came_in=list(found.report.came_in))
        if found.differences:
            kept = [line for line in report.came_in if " differ from the book" not in line]
            report.came_in = kept + chosen_words(found.differences, sides)
        self.report.show_report(self.tr("{} came in").format(self._path.name), report.lines())
        self._turn_to(self.report)
        self.preview.hide()
        self.note.hide()
        self._tell_trail()
        self.back_button.hide()
        self.cancel_button.hide()
        self.next_button.setText(self.tr("Close"))
        self.next_button.setFocus()
