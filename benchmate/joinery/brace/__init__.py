"""The brace: an end of a raking timber tenoned into the side of an upright or a level one."""
