"""Which cross next, how many to grow, what a difference means.  Knows no Qt and no SQL."""
