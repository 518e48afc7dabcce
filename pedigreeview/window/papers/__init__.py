"""Printing tags, packets, lists and garden sheets: the dialog, its preview and the printer."""
