"""What goes on paper: the picture as a chart with title, legend, base and date.

Draws by `drawing`; knows no widgets.
"""
