"""Bringing in what people already have: a table of any layout, step by step."""
