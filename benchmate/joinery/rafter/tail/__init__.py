"""The rafter tail: a free end of a rafter cut plumb or level."""
