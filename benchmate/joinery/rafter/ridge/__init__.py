"""The rafter at a ridge: its head cut plumb against the side of a level timber."""
