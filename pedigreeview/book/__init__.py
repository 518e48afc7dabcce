"""Records, the book that holds them, and what the records alone can show to be wrong.

Knows no Qt and no NetworkX.
"""
