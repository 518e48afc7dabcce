"""Texts that do harm where they are not expected: what the mutators put into cells and files."""

from __future__ import annotations

__all__ = ["CODES", "MARKUP", "NUMBERS", "PATHS", "TEXTS"]

MARKUP = (
    "<script>alert(1)</script>",
    "</text><script xlink:href='data:,x'/>",
    '"><img src=x onerror=alert(1)>',
    "]]><!-- & --><![CDATA[",
    "&amp;&#0;&lt;&nbsp;&x;",
    "=cmd|'/C calc'!A0",
    "+1+1",
    "-2+3+cmd|' /C calc'!A0",
    "@SUM(A1)",
    "'=1",
    "\t=1",
    '=HYPERLINK("http://x","y")',
    "%s%n{0}{x.__class__}",
    '\\N \\" \\u0000 $(x) `x`',
    "'; DROP TABLE plants; --",
)
"""What a page, a picture, a spreadsheet or a query would run."""

NUMBERS = (
    "0", "-1", "1e309", "1e-400", "NaN", "inf", "-inf", "9" * 400, "0x10", "1_000", "1,5",
    "1.000,5", "٣", "²", "1/0", "1/3", "50%", "64", "1", "3", "2.0", "-0", "+5", "1e3", "00012",
    "0.1666666666667",
)  # fmt: skip
"""Numbers that are none, too large, or not written in ASCII."""

PATHS = (
    "../../etc/passwd", "/etc/passwd", "C:\\Windows\\win.ini", "\\\\host\\share\\x", "..", ".", "/",
    "plants.csv/../../x", "photos/../../x", "file:///etc/passwd", "http://localhost/x", "CON",
    "a\0b", "/dev/zero", "/dev/stdin", "datapackage.json", "~/x", "$HOME/x", "x" * 300,
    "%2e%2e/x",
)  # fmt: skip
"""Paths that lead out of a folder, and names that are none."""

CODES = (
    "self", "Self", "?", "OP", "unknown", "A", "B", "V", "W", "D", "L", "А", "Β", "Ⅴ", "A\u200b",
    "A\u00a0", "\u00a0A", "A\u2003B", "\u202eA", "\u2066A\u2069", "A\u0301", "Á", "ﬁ", "A\u00ad",
    "\ufeffA", "A;B", "A:0.5", "A:0.5; B:0.5", "V:1e400", "W:0.6; self:0.6", ":", ";", "A:B:C",
    "V × W", "V x W", "V/W", "V//W", "V/3/W", "3*V/W", "V*3/W*3", "(V", "V)", "♀V × ♂W", "V ⊗",
    "V OP",     "\U0001f33c", "\ud800".encode("utf-8", "replace").decode(), "\ufffe", "a" * 5_000,
)  # fmt: skip
"""Codes of parents: words with a meaning, look-alikes, look-alike spaces, other directions."""

TEXTS = (
    *MARKUP, *NUMBERS, *PATHS, *CODES,
    "", " ", "\n", "\r", "\r\n", "\0", "\x07", "\x1b[2J", "\x7f", "\x85", "\u2028", "\u2029", '"',
    '""', '"""', "'", ",", ";", "\t", "|", "sep=;", "sep=,\n", "\ufeff", "2021", "2021-02-30",
    "0000-01-01", "9999-12-31", "10000-01-01", "2021-13", "2021-5-7", "17.5.2021", "5/17/2021",
    "tomorrow", "true", "FALSE", "variety", "plant", "family", "founder", "cross", "seed_of",
    "sibbed_in", "cutting_of", "doubled_haploid_of", "doubled_of", "one", "each", "culled", "kept",
    "plant", "seed_parent", "pollen_parent", "source", "record", "x" * 70_000,
)  # fmt: skip
"""All of them, and blanks, line ends, quotes, dates and words of the tables."""
