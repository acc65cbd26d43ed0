"""Two timbers that lap: crossing, at an end, at a corner, dovetailed or over a cog."""
