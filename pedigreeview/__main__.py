"""`python -m pedigreeview` is the command `pedigreeview`."""

from __future__ import annotations

import sys

from pedigreeview.cli import main

if __name__ == "__main__":
    sys.exit(main())
