"""What the command line does, one module a command; stands above all layers.

A command takes its words and gives an `Answer`; `cli` prints it and ends with its status.
"""
