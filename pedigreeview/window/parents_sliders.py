"""A weight as a slider with its number beside it, moved by mouse or by keys."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QSlider, QWidget

from pedigreeview.planning.pairs import Weights
from pedigreeview.window.labels import action_button, column, sentence
from pedigreeview.window.style import step

__all__ = ["WeightSlider", "WeightsPanel", "weight_words"]

_PARTS = 4
"""Steps of the slider for a weight of 1."""
_MOST = 5


class WeightSlider(QSlider):
    """A weight from 0 to 5 in quarters."""

    weighed = Signal(float)

    def __init__(self, name: str, weight: float = 1.0) -> None:
        super().__init__(Qt.Orientation.Horizontal)
        self._name = name
        self.number = QLabel()
        self.number.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.setRange(0, _MOST * _PARTS)
        self.setPageStep(_PARTS)
        self.setMinimumWidth(8 * step())
        self.setValue(round(weight * _PARTS))
        self.say()
        self.valueChanged.connect(self._moved)

    @property
    def weight(self) -> float:
        """The weight that is set."""
        return self.value() / _PARTS

    def set_weight(self, weight: float) -> None:
        """Set the weight."""
        self.setValue(round(weight * _PARTS))

    def _moved(self) -> None:
        self.say()
        self.weighed.emit(self.weight)

    def say(self) -> None:
        """The weight in words, beside the slider and to a screen reader."""
        text = f"{self.weight:g}"
        self.number.setText(text)
        self.setAccessibleName(self.tr("{}: weight {}").format(self._name, text))
        self.setToolTip(self.tr("{}: weight {}; arrow keys move it").format(self._name, text))


def weight_words(panel: QWidget) -> dict[str, tuple[str, str]]:
    """What each part of the score is called, and what it means."""
    tr = panel.tr
    return {
        "complement": (
            tr("Have it between them"),
            tr("How much of all that is wanted the better of the two has, wish by wish."),
        ),
        "merit": (tr("Mid-parent"), tr("The mean of both over all wishes.")),
        "unrelated": (tr("Low F of progeny"), tr("1 less the F that their progeny would have.")),
        "flowering": (
            tr("In flower together"),
            tr("Full from seven days on; half where nothing is recorded."),
        ),
        "fertility": (
            tr("Noted as fertile"),
            tr("By the notes on who sets with whom: fertile 1, poor ½, sterile 0."),
        ),
        "new": (tr("Not made before"), tr("The pair was crossed in neither direction.")),
        "shown": (
            tr("Selfs show themselves"),
            tr("The chance that an accidental self of the seed parent can be seen in a seedling."),
        ),
    }


class WeightsPanel(QWidget):
    """How much each part of a pair's score counts."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        s = step()
        outer = column(max(2, s // 2))
        self.setLayout(outer)
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(s)
        grid.setVerticalSpacing(max(1, s // 4))
        grid.setColumnStretch(0, 1)
        self.sliders: dict[str, WeightSlider] = {}
        usual = Weights()
        for row, (name, (text, meaning)) in enumerate(weight_words(self).items()):
            slider = WeightSlider(text, getattr(usual, name))
            slider.weighed.connect(lambda _: self._moved())
            label = sentence(text)
            label.setToolTip(meaning)
            grid.addWidget(label, 2 * row, 0)
            grid.addWidget(slider.number, 2 * row, 1)
            grid.addWidget(slider, 2 * row + 1, 0, 1, 2)
            self.sliders[name] = slider
        outer.addLayout(grid)
        self.said = sentence("", "fault")
        self.said.hide()
        outer.addWidget(self.said)
        self.usual_button = action_button(self.tr("Usual weights"), self.reset)
        outer.addWidget(self.usual_button, 0, Qt.AlignmentFlag.AlignLeft)

    def weights(self) -> Weights | None:
        """The weights that are set; None where all are 0."""
        held = {name: slider.weight for name, slider in self.sliders.items()}
        return Weights(**held) if any(held.values()) else None

    def state(self) -> dict[str, float]:
        """The weights as they are kept."""
        return {name: slider.weight for name, slider in self.sliders.items()}

    def restore(self, state: object) -> None:
        """Take up weights that were kept; the usual one for each that was not."""
        held = state if isinstance(state, dict) else {}
        usual = Weights()
        for name, slider in self.sliders.items():
            weight = held.get(name)
            if not isinstance(weight, int | float) or not 0 <= weight <= _MOST:
                weight = getattr(usual, name)
            slider.blockSignals(True)
            slider.set_weight(weight)
            slider.blockSignals(False)
            slider.say()
        self._tell()

    def reset(self) -> None:
        """Back to the usual weights."""
        usual = Weights()
        for name, slider in self.sliders.items():
            slider.set_weight(getattr(usual, name))

    def _moved(self) -> None:
        if self._tell():
            self.changed.emit()

    def _tell(self) -> bool:
        """Say so where all weights are 0; whether the weights can be used."""
        none = self.weights() is None
        self.said.setText(self.tr("One weight at least is to be above 0.") if none else "")
        self.said.setVisible(none)
        return not none
