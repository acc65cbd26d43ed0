"""The use cases that the screen and the plain commands share."""
