"""The ways of the building, as a test that turns a frame round needs them."""

OPPOSITE = {"east": "west", "north": "south", "up": "down"}
OPPOSITE |= {there: here for here, there in OPPOSITE.items()}
"""The way straight back."""

ALONG = {"east": "east", "west": "east", "north": "north", "south": "north", "up": "up"}
"""The coordinate that changes along each."""

SENSE = {"east": 1, "north": 1, "west": -1, "south": -1}
"""Whether that grows or shrinks."""
