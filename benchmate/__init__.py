"""benchmate: an offline layout companion for a timber framer at the horses."""

__version__ = "0.2.0"
