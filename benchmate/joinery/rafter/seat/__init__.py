"""The rafter seat: a rafter notched over a level timber that it crosses."""
