"""What the screen has to know of a framer's settings before it is first painted."""

from benchmate.store.preference_place import glance

__all__ = ["glance"]
