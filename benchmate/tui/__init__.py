"""The full-screen companion: panes, screens, keys and one stylesheet."""
