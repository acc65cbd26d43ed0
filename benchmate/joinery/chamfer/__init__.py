"""The stopped chamfer on one arris or more."""
