"""The forms in which the work is written down, each on the bench at the window's edge."""
