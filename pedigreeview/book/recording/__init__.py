"""Writing the work down: one function for each thing a person records.

Each takes an `Edit` first, changes it and gives back the new records.  What cannot be is refused
with a `Fault` before anything is kept; a book without errors stays without errors.
"""
