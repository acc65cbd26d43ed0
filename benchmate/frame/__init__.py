"""Levels and positions: what a name comes to, and who meets whom."""
