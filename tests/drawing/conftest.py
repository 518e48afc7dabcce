"""A Qt application for the tests that paint."""

from __future__ import annotations

import pytest


@pytest.fixture(scope="session")
def gui(qapp):
    """The application that pytest-qt makes; painting needs no window."""
    return qapp
