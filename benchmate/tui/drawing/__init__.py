"""Drawings of a timber's sides in characters: pure functions, no screen library."""
