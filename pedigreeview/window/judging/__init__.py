"""The parts of the Judging page: ratios, selfs, genes, stable lines and selection."""
