"""The window: pages, docks, dialogs and actions.  Asks and shows; computes no coefficient."""
