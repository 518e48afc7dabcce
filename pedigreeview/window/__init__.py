"""The window 'Crossing Book': pages, dialogs and actions.  Holds no genetics and no SQL.

`app.run` starts it.  Everything that may take time goes through `errands`, off the window's thread.
"""
