"""benchmate: an offline layout companion for a timber framer at the horses."""

__version__ = "0.3.0"
