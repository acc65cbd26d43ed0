"""The joggle: an end of a raking timber let into another's side, with an abutment and a sole."""
