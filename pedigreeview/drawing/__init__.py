"""The picture: what is shown and folded, where it lies, and the one painter for screen and paper.

QtCore, QtGui and QtSvg alone, and only where something is painted.
"""
